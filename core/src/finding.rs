//! What is computed but unwise or unsafe: codes and quantities, no sentences.

use crate::job::{Field, Way};
use crate::quantity::{Entry, Length, feet};
use serde::Serialize;

/// How grave a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Severity {
    /// Worth knowing.
    Note,
    /// Look before going on.
    Caution,
    /// Do not go on.
    Stop,
}

/// What was found.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Finding {
    /// No listed size meets ampacity and voltage drop on this way at this depth.
    CableNoSize {
        /// The way concerned.
        way: Way,
    },
    /// Aluminum chosen for a lead that hangs in the well.
    AluminumInWell,
    /// The equipment ground grew with the phase conductors (NEC 250.122(B)).
    GroundWireGrew {
        /// The way concerned.
        way: Way,
    },
    /// The water above the pump is less than the least: while it runs, or at rest where the drawdown is not known. At
    /// zero and below, the pump hangs dry.
    PumpingLevelAtPump {
        /// Depth of water above the pump.
        submergence: Length,
        /// The least.
        minimum: Length,
    },
    /// The pump hangs near the well's bottom, or is set at it or deeper.
    PumpNearBottom {
        /// Distance above the bottom; zero or below, the setting reaches the bottom.
        off_bottom: Length,
    },
    /// The water stands at the well's bottom or below it: at rest, or while the pump runs.
    LevelBelowBottom {
        /// Depth of the water below ground.
        level: Length,
        /// Depth of the bottom.
        bottom: Length,
    },
    /// An entry beyond what is usual, though inside what the sums hold for.
    BeyondUsual {
        /// The field.
        field: Field,
        /// The usual bound that was passed.
        usual: Entry,
    },
}

impl Finding {
    /// How grave it is.
    #[must_use]
    pub fn severity(&self) -> Severity {
        match self {
            Self::CableNoSize { .. } | Self::AluminumInWell | Self::LevelBelowBottom { .. } => Severity::Stop,
            Self::PumpingLevelAtPump { submergence, .. } if *submergence <= feet(0.0) => Severity::Stop,
            Self::PumpNearBottom { off_bottom } if *off_bottom <= feet(0.0) => Severity::Stop,
            Self::PumpingLevelAtPump { .. } | Self::PumpNearBottom { .. } => Severity::Caution,
            Self::GroundWireGrew { .. } => Severity::Note,
            Self::BeyondUsual { .. } => Severity::Caution,
        }
    }

    /// A stable code for files.
    #[must_use]
    pub fn code(&self) -> &'static str {
        match self {
            Self::CableNoSize { .. } => "CABLE_NO_SIZE",
            Self::AluminumInWell => "ALUMINIUM_IN_WELL",
            Self::GroundWireGrew { .. } => "GROUND_WIRE_GREW",
            Self::PumpingLevelAtPump { .. } => "PUMPING_LEVEL_AT_PUMP",
            Self::PumpNearBottom { .. } => "PUMP_NEAR_BOTTOM",
            Self::LevelBelowBottom { .. } => "LEVEL_BELOW_BOTTOM",
            Self::BeyondUsual { .. } => "BEYOND_USUAL",
        }
    }

    /// The rule behind it, a key of `SOURCES.md`.
    #[must_use]
    pub fn source(&self) -> &'static str {
        match self {
            Self::CableNoSize { .. } => "nec-2023-310.16",
            Self::AluminumInWell
            | Self::PumpingLevelAtPump { .. }
            | Self::PumpNearBottom { .. }
            | Self::LevelBelowBottom { .. }
            | Self::BeyondUsual { .. } => "practice",
            Self::GroundWireGrew { .. } => "nec-2023-250.122",
        }
    }
}
