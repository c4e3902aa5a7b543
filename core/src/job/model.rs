//! A job as it was entered.

use super::{Choices, Field, Part, Record, WayKey};
use crate::pump::motor::RatedVoltage;
use crate::quantity::{ElectricPotential, Entry, Unit, volts};
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

    /// The field that holds the motor's service-factor current on this way.
    #[must_use]
    pub fn service_amps_field(self) -> Field {
        match self {
            Self::V240 => Field::ServiceAmps230,
            Self::V480 => Field::ServiceAmps460,
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
    /// The price book, as a table in text; the built-in one, which is invented, stands in for an empty one.
    pub book: String,
    /// A year's duty, as text: hours at each flow. Empty without one.
    pub duty: String,
    /// Points of the pump's curve, as text: one point a line, flow in gpm and head in feet unless a first line names
    /// the units. Empty without a curve.
    pub curve: String,
    /// The user's own families of equipment, as a table in text, a row for each frame. Empty without any.
    pub families: String,
    /// The way that was chosen to run the motor; until one is, the cheapest that serves stands in.
    pub way: Option<WayKey>,
    /// The ways that stand for 240 V and for 480 V along the curve of cost; until one is chosen, the job's own where it has
    /// that voltage, else the one that serves at the least cost.
    pub pair: [Option<WayKey>; 2],
    /// What was done and measured on the site.
    pub record: Record,
    figures: BTreeMap<Field, Entry>,
}

impl Job {
    /// Most bytes of a curve's text.
    pub const MOST_CURVE: usize = 50_000;
    /// Most bytes of the text of a duty.
    pub const MOST_DUTY: usize = 5_000;
    /// Most bytes of the text of the user's own families.
    pub const MOST_FAMILIES: usize = 50_000;

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

    /// Adds a fitting to those of a part of the line: its loss coefficient to their sum, to three decimals.
    pub fn add_fitting(&mut self, part: Part, coefficient: f64) {
        let [.., field] = part.fields();
        let sum = self.get(field).map(|entry| entry.value).filter(|sum| sum.is_finite()).unwrap_or(0.0);
        let sum = ((sum + coefficient) * 1e3).round() / 1e3;
        self.set(field, Some(Entry::new(sum, Unit::One)));
    }

    /// Whether nothing was entered yet but a name.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        let texts = self.curve.is_empty() && self.families.is_empty() && self.book.is_empty() && self.duty.is_empty();
        self.figures.is_empty()
            && self.choices == Choices::default()
            && self.record.is_empty()
            && self.way.is_none()
            && self.pair == [None, None]
            && texts
    }

    /// Enters a figure, or clears the field.
    pub fn set(&mut self, field: Field, entry: Option<Entry>) {
        match entry {
            Some(entry) => self.figures.insert(field, entry),
            None => self.figures.remove(&field),
        };
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::power::family::Kind;

    #[test]
    fn a_job_is_blank_until_something_is_entered() {
        let blank = Job { name: "Well".to_owned(), note: "by the gate".to_owned(), ..Job::default() };
        assert!(blank.is_blank());
        let entered: [fn(&mut Job); 9] = [
            |job| job.set(Field::PumpSetting, Some(Entry::new(620.0, Unit::Foot))),
            |job| job.choices.restart = Some(true),
            |job| job.record.begin("RG", "a").unwrap_or_default(),
            |job| job.way = Some(WayKey::Generic(Kind::Doubling)),
            |job| job.pair[1] = Some(WayKey::Generic(Kind::Doubling)),
            |job| job.curve = "0 300".to_owned(),
            |job| job.families = "name;kind".to_owned(),
            |job| job.book = "item;price".to_owned(),
            |job| job.duty = "25 1000".to_owned(),
        ];
        for (at, enter) in entered.into_iter().enumerate() {
            let mut job = blank.clone();
            enter(&mut job);
            assert!(!job.is_blank(), "{at}");
        }
        assert!(blank.choices.restart.is_none() && !blank.choices.restart() && blank.choices.feeder_sets() == 1);
    }

    #[test]
    fn fittings_add_up_to_three_decimals() {
        let mut job = Job::default();
        let field = Part::Surface.fields()[3];
        let sum = |job: &Job| job.get(field).map(|entry| entry.value);
        job.add_fitting(Part::Surface, 1.5);
        job.add_fitting(Part::Surface, 0.300_4);
        assert_eq!(sum(&job), Some(1.8));
        job.set(field, Some(Entry::new(f64::NAN, Unit::One)));
        job.add_fitting(Part::Surface, 0.9);
        assert_eq!(sum(&job), Some(0.9));
        assert_eq!(job.get(Part::Drop.fields()[3]), None);
    }
}
