//! Colors, pens and lettering of the theme, read from the style sheets once per theme.

use super::mark::{Lettering, Pen, Tint};
use leptos::prelude::{document, window};
use plotters::style::{Color as _, RGBAColor, RGBColor};
use wellwright_core::job::Way;

/// What a theme draws with.
#[derive(Debug, Clone, PartialEq)]
pub struct Ink {
    /// Names of the type faces.
    pub face: String,
    /// Sizes of the lettering.
    pub lettering: Lettering,
    colors: [RGBColor; 7],
    hatch: f64,
    band: f64,
    pens: [f64; 5],
    /// Dash and gap of the 240 V way.
    pub dash: (f64, f64),
}

/// Custom properties that hold colors, in the order of [`Ink::color`].
pub const COLORS: [&str; 7] = ["--ink", "--hair", "--act", "--on-act", "--sheet", "--way-240", "--way-480"];
/// Size of the root's letters where the browser does not say.
const ROOT: f64 = 16.0;
/// Custom properties that hold pens, thinnest first.
const PENS: [(&str, f64); 5] =
    [("--pen-hair", 1.0), ("--pen-thin", 1.25), ("--pen-mid", 1.75), ("--pen-heavy", 2.75), ("--pen-way", 3.0)];

impl Ink {
    /// Reads the theme in force; `None` until the style sheets are there.
    #[must_use]
    pub fn read() -> Option<Self> {
        let root = document().document_element()?;
        let style = window().get_computed_style(&root).ok().flatten()?;
        Self::from(&|name| style.get_property_value(name).unwrap_or_default().trim().to_owned())
    }

    /// The ink whose properties a lookup gives: `None` without its colors; a pen or a size that is missing or can't be
    /// read has a plain default.
    #[must_use]
    pub fn from(get: &dyn Fn(&str) -> String) -> Option<Self> {
        let colors: Option<Vec<RGBColor>> = COLORS.iter().map(|name| color(&get(name))).collect();
        let colors = colors?.try_into().ok()?;
        let root = pixels(&get("font-size"), ROOT).unwrap_or(ROOT);
        let pixels = |name: &str, default: f64| pixels(&get(name), root).unwrap_or(default);
        let usual = Lettering::USUAL;
        let dash = get("--dash-240");
        let mut dashes = dash.split_whitespace().filter_map(number);
        Some(Self {
            face: Some(get("--face")).filter(|face| !face.is_empty()).unwrap_or_else(|| "sans-serif".to_owned()),
            lettering: Lettering {
                small: pixels("--draw-s", usual.small),
                plain: pixels("--draw", usual.plain),
                large: pixels("--draw-l", usual.large),
            },
            colors,
            hatch: pixels("--hatch", 0.5),
            band: pixels("--band", 0.2),
            pens: PENS.map(|(name, default)| pixels(name, default)),
            dash: (dashes.next().unwrap_or(11.0), dashes.next().unwrap_or(5.0)),
        })
    }

    /// The color of a role.
    #[must_use]
    pub fn color(&self, tint: Tint) -> RGBAColor {
        let solid = |index: usize| self.colors[index].to_rgba();
        match tint {
            Tint::Ink => solid(0),
            Tint::Hatch => self.colors[0].mix(self.hatch),
            Tint::Hair => solid(1),
            Tint::Act => solid(2),
            Tint::OnAct => solid(3),
            Tint::Sheet => solid(4),
            Tint::Band(way) => self.colors[5 + way as usize].mix(self.band),
            Tint::Way(Way::V240) => solid(5),
            Tint::Way(Way::V480) => solid(6),
        }
    }

    /// The width of a pen.
    #[must_use]
    pub fn pen(&self, pen: Pen) -> f64 {
        self.pens[pen as usize]
    }
}

/// A length such as `13px`, or `.8rem` of a root whose letters have this size.
fn pixels(text: &str, root: f64) -> Option<f64> {
    let text = text.trim();
    match text.strip_suffix("rem") {
        Some(letters) => letters.trim().parse::<f64>().ok().map(|letters| letters * root),
        None => number(text),
    }
}

/// The number at the start of a text such as `13px`.
fn number(text: &str) -> Option<f64> {
    text.trim().trim_end_matches(|c: char| c.is_ascii_alphabetic()).parse().ok()
}

/// A color written `#rrggbb`.
fn color(text: &str) -> Option<RGBColor> {
    let hex = text.trim().strip_prefix('#')?;
    let part = |range| u8::from_str_radix(hex.get(range)?, 16).ok();
    (hex.len() == 6).then_some(())?;
    Some(RGBColor(part(0..2)?, part(2..4)?, part(4..6)?))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn properties_are_read_as_written_in_style_sheets() {
        assert_eq!(color(" #d55e00"), Some(RGBColor(0xd5, 0x5e, 0)));
        assert_eq!(color("red"), None);
        assert_eq!(color("#ééé"), None);
        assert_eq!(number("1.25px"), Some(1.25));
        assert_eq!(number(".55"), Some(0.55));
        assert_eq!(pixels("1.25px", 16.0), Some(1.25));
        assert_eq!(pixels(".8125rem", 32.0), Some(26.0));
        assert_eq!(pixels("large", 16.0), None);
        let ink = Ink::from(&|name| theme(name, "8 3")).unwrap();
        assert_eq!(ink.dash, (8.0, 3.0));
        assert_eq!(ink.face, "sans-serif");
        assert_eq!((ink.lettering.small, ink.lettering.plain), (26.0, 14.0));
    }

    /// A theme in which every color is written, and the small lettering in letters of the root.
    fn theme(name: &str, dash: &str) -> String {
        match name {
            "--dash-240" => dash,
            "--draw-s" => ".8125rem",
            "font-size" => "32px",
            _ if COLORS.contains(&name) => "#1b2322",
            _ => "",
        }
        .to_owned()
    }

    #[test]
    fn without_its_colors_there_is_no_ink() {
        assert_eq!(Ink::from(&|_| String::new()), None);
        assert_eq!(Ink::from(&|name| if name == "--way-480" { String::new() } else { theme(name, "") }), None);
    }
}
