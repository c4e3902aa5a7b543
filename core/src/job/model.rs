//! A job as it was entered.

use super::Field;
use crate::cable::reactance::Build;
use crate::pump::motor::{MotorKind, RatedVoltage};
use crate::quantity::{ElectricPotential, Entry, volts};
use crate::standards::ampacity::Rating;
use crate::standards::conductor::Metal;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// A way to run the motor, by the voltage of its lead.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Way {
    /// 240 V to a motor rated 230 V.
    #[serde(rename = "240 V")]
    V240,
    /// 480 V to a motor rated 460 V.
    #[serde(rename = "480 V")]
    V480,
}

impl Way {
    /// Both ways, the lower voltage first.
    pub const ALL: [Self; 2] = [Self::V240, Self::V480];

    /// Nominal voltage at the sending end of the lead, line to line.
    #[must_use]
    pub fn sending(self) -> ElectricPotential {
        volts(match self {
            Self::V240 => 240.0,
            Self::V480 => 480.0,
        })
    }

    /// Rated voltage of the motor.
    #[must_use]
    pub fn rated(self) -> RatedVoltage {
        match self {
            Self::V240 => RatedVoltage::V230,
            Self::V480 => RatedVoltage::V460,
        }
    }

    /// Rated voltage of the motor in volts.
    #[must_use]
    pub fn rated_volts(self) -> f64 {
        match self {
            Self::V240 => 230.0,
            Self::V480 => 460.0,
        }
    }

    /// The other way.
    #[must_use]
    pub fn other(self) -> Self {
        match self {
            Self::V240 => Self::V480,
            Self::V480 => Self::V240,
        }
    }

    /// The field that holds the motor's nameplate current on this way.
    #[must_use]
    pub fn nameplate_field(self) -> Field {
        match self {
            Self::V240 => Field::NameplateAmps230,
            Self::V480 => Field::NameplateAmps460,
        }
    }
}

/// Parallel sets of conductors that may be asked for: 1 to [`Sets::LIMIT`], never anything else.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Sets(u8);

impl Sets {
    /// Most parallel sets that can be asked for.
    pub const LIMIT: u8 = 4;
    /// One set: an ordinary lead.
    pub const ONE: Self = Self(1);

    /// A number of sets, or `None` outside 1 to [`Self::LIMIT`].
    #[must_use]
    pub fn new(sets: u8) -> Option<Self> {
        (1..=Self::LIMIT).contains(&sets).then_some(Self(sets))
    }

    /// The number.
    #[must_use]
    pub fn get(self) -> u8 {
        self.0
    }
}

/// What is chosen rather than measured; `None` until the user chooses, and the assumed choice stands in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Choices {
    /// Where the motor works. Assumed: submersible.
    pub motor_kind: Option<MotorKind>,
    /// Metal of the lead. Assumed: copper.
    pub metal: Option<Metal>,
    /// Build of the lead. Assumed: plastic conduit, the safe side for reactance.
    pub build: Option<Build>,
    /// Insulation rating of the lead. Assumed: 75 °C.
    pub insulation: Option<Rating>,
    /// True where the terminals at both ends are marked 75 °C. Assumed: not marked.
    pub terminals_marked_75: Option<bool>,
    /// Most parallel sets of conductors. Assumed: 1.
    pub most_sets: Option<Sets>,
}

impl Choices {
    /// Most parallel sets that can be asked for.
    pub const SETS_LIMIT: u8 = Sets::LIMIT;

    /// Where the motor works.
    #[must_use]
    pub fn motor_kind(&self) -> MotorKind {
        self.motor_kind.unwrap_or(MotorKind::Submersible)
    }
    /// Metal of the lead.
    #[must_use]
    pub fn metal(&self) -> Metal {
        self.metal.unwrap_or(Metal::Copper)
    }
    /// Build of the lead.
    #[must_use]
    pub fn build(&self) -> Build {
        self.build.unwrap_or(Build::PlasticConduit)
    }
    /// Insulation rating of the lead.
    #[must_use]
    pub fn insulation(&self) -> Rating {
        self.insulation.unwrap_or(Rating::C75)
    }
    /// Whether the terminals are marked 75 °C.
    #[must_use]
    pub fn terminals_marked_75(&self) -> bool {
        self.terminals_marked_75.unwrap_or(false)
    }
    /// Most parallel sets, 1 to [`Self::SETS_LIMIT`].
    #[must_use]
    pub fn most_sets(&self) -> u8 {
        self.most_sets.unwrap_or(Sets::ONE).get()
    }
}

/// One job.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Job {
    /// What the user calls it.
    pub name: String,
    /// A line about the site, free text.
    pub note: String,
    /// True for the invented jobs that come with the page.
    pub demo: bool,
    /// Where the prices come from, free text.
    pub price_source: String,
    /// What is chosen.
    pub choices: Choices,
    figures: BTreeMap<Field, Entry>,
}

impl Job {
    /// A job with a name and nothing entered.
    #[must_use]
    pub fn named(name: &str) -> Self {
        Self { name: name.to_owned(), ..Self::default() }
    }

    /// The figure entered in a field, if any.
    #[must_use]
    pub fn get(&self, field: Field) -> Option<Entry> {
        self.figures.get(&field).copied()
    }

    /// Whether nothing was entered yet but a name.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        self.figures.is_empty() && self.choices == Choices::default()
    }

    /// Enters a figure, or clears the field.
    pub fn set(&mut self, field: Field, entry: Option<Entry>) {
        match entry {
            Some(entry) => self.figures.insert(field, entry),
            None => self.figures.remove(&field),
        };
    }
}
