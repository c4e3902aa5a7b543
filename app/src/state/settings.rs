//! How the screen looks and speaks: units, theme, language.

use crate::locale::Language;
use serde::{Deserialize, Serialize};
use wellwright_core::quantity::UnitSystem;

/// The look for the light that falls on the screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Theme {
    /// As the system asks.
    #[default]
    System,
    /// Dark ink on warm paper.
    Light,
    /// Light ink on dark.
    Dark,
    /// Black on white, heavier lines, for direct sunlight.
    Sun,
}

impl Theme {
    /// The theme's name in the style sheets; empty for the system's.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::System => "",
            Self::Light => "light",
            Self::Dark => "dark",
            Self::Sun => "sun",
        }
    }
}

/// The paper in the printer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum PaperSize {
    /// 8.5 by 11 inches.
    #[default]
    Letter,
    /// 210 by 297 millimeters.
    A4,
}

impl PaperSize {
    /// Its name in the style sheets, and to who reads it.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Letter => "Letter",
            Self::A4 => "A4",
        }
    }
}

/// What the user set.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Settings {
    /// Units shown and entered.
    pub units: UnitSystem,
    /// Theme.
    pub theme: Theme,
    /// Language; the browser's until one is chosen.
    pub language: Option<Language>,
    /// Paper that is printed on.
    pub paper: PaperSize,
    /// Whether prices are hidden from the customer's side of the table.
    pub prices_hidden: bool,
}
