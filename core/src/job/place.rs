//! What is chosen of the supply, the place of the equipment, and the way to run the motor.

use crate::power::family::Kind;
use crate::standards::enclosure::Demand;
use serde::{Deserialize, Serialize};

/// Where the equipment stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Place {
    /// In a clean, dry room.
    Indoors,
    /// In a room with dust in its air.
    IndoorsDusty,
    /// Outdoors, in rain and snow.
    #[default]
    Outdoors,
    /// Outdoors, in blown dust.
    OutdoorsDusty,
    /// Where a hose is used.
    Washdown,
    /// In corrosive air: salt, manure, fertilizer.
    Corrosive,
}

impl Place {
    /// Every place.
    pub const ALL: [Self; 6] =
        [Self::Indoors, Self::IndoorsDusty, Self::Outdoors, Self::OutdoorsDusty, Self::Washdown, Self::Corrosive];

    /// What the place asks of an enclosure.
    #[must_use]
    pub fn demands(self) -> &'static [Demand] {
        match self {
            Self::Indoors => &[],
            Self::IndoorsDusty => &[Demand::SettlingDust, Demand::BlownDust],
            Self::Outdoors => &[Demand::Weather],
            Self::OutdoorsDusty => &[Demand::Weather, Demand::BlownDust],
            Self::Washdown => &[Demand::Weather, Demand::Hose],
            Self::Corrosive => &[Demand::Weather, Demand::Corrosion],
        }
    }

    /// Whether the sun can reach the cabinet.
    #[must_use]
    pub fn outdoors(self) -> bool {
        !matches!(self, Self::Indoors | Self::IndoorsDusty)
    }
}

/// How a single-phase supply is grounded.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Grounding {
    /// At the middle of the winding: three wires, each line half the voltage from ground.
    Midpoint,
    /// At one line: the other stands the whole voltage from ground.
    OneLine,
}

/// A way to run the motor, as it is chosen.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum WayKey {
    /// By generic equipment of a kind.
    Generic(Kind),
    /// By equipment of the user's own, by its name.
    Own(String),
}
