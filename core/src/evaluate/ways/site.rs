//! The supply and the place, as the job tells them.

use crate::cost::book::PriceBook;
use crate::job::{Choices, Entered, Field};
use crate::power::derating::cabinet_ambient;
use crate::power::family::{Class, Feed};
use crate::power::line_extension::Tariff;
use crate::power::start::DipLimits;
use crate::quantity::{
    Celsius, ElectricCurrent, ElectricPotential, Length, METER_PER_FOOT, Money, MoneyPerLength, Power, amperes, feet,
    kilovolt_amperes, meters, volts,
};

/// The supply and the place of the equipment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Site {
    /// Voltage of the single-phase supply.
    pub supply: ElectricPotential,
    /// Its class.
    pub class: Class,
    /// Class of a three-phase line or set.
    pub three_phase: Class,
    /// Rating of the transformer, where it was entered.
    pub transformer: Option<Power>,
    /// Its impedance, as a share.
    pub impedance: f64,
    /// Other load on it.
    pub other: Power,
    /// Largest current that the utility lets a motor draw, where it is known.
    pub utility: Option<ElectricCurrent>,
    /// From the transformer to the equipment; nothing until it is entered.
    pub distance: Option<Length>,
    /// Warmest surroundings along the supply conductors.
    pub feeder_ambient: Celsius,
    /// Warmest air around the equipment, sun and all.
    pub ambient: Celsius,
    /// Height above the sea.
    pub altitude: Length,
    /// Largest drop along the supply conductors, as a share.
    pub allowed_drop: f64,
    /// Largest drop of supply conductors and lead together, as a share.
    pub allowed_whole: f64,
    /// Dips that a start may cause.
    pub dips: DipLimits,
    /// Short-circuit rating marked on the equipment, where it was entered.
    pub marked: Option<ElectricCurrent>,
    /// Distance of the nearest three-phase line, where it was entered.
    pub line: Option<Length>,
    /// What the utility asks for extending it, where it is known.
    pub tariff: Option<Tariff>,
    /// Rating of a generator set, where it was entered.
    pub set: Option<Power>,
    /// Share of that rating which the site leaves.
    pub set_share: f64,
}

impl Site {
    /// The site of a job; nothing where one of its figures can't be used.
    pub(super) fn of(choices: &Choices, entered: &Entered, book: &PriceBook) -> Option<Self> {
        let percent = |percent: f64| percent / 100.0;
        let known = |field, make| optional::<Power>(entered, field, make);
        let lead = entered.get(Field::Ambient, Celsius)?;
        let or_lead = |field| entered.take(field, Celsius).ok().map(|known| known.map_or(lead, |known| known.value));
        let sun = if choices.out_of_the_sun() { 0.0 } else { entered.get(Field::SunRise, |degrees| degrees)? };
        let supply = entered.get(Field::SupplyVolts, volts)?;
        let kiloamperes = |kiloamperes: f64| amperes(1000.0 * kiloamperes);
        Some(Self {
            supply,
            class: Class::of_supply(supply),
            three_phase: choices.three_phase(),
            transformer: known(Field::TransformerRating, kilovolt_amperes)?,
            impedance: entered.get(Field::TransformerImpedance, percent)?,
            other: known(Field::OtherLoad, kilovolt_amperes)?.unwrap_or_default(),
            utility: optional(entered, Field::UtilityLimit, amperes)?,
            distance: optional(entered, Field::PoleDistance, feet)?,
            feeder_ambient: or_lead(Field::FeederAmbient)?,
            ambient: cabinet_ambient(or_lead(Field::DriveAmbient)?, sun).ok()?,
            altitude: entered.get(Field::Altitude, meters)?,
            allowed_drop: entered.get(Field::AllowedSupplyDrop, percent)?,
            allowed_whole: entered.get(Field::AllowedWholeDrop, percent)?,
            dips: DipLimits {
                motor: entered.get(Field::StartDipMotor, percent)?,
                pole: entered.get(Field::StartDipPole, percent)?,
            },
            marked: optional(entered, Field::MarkedShortCircuit, kiloamperes)?,
            line: optional(entered, Field::LineDistance, feet)?,
            tariff: tariff(entered, book)?,
            set: known(Field::GeneratorRating, kilovolt_amperes)?,
            set_share: entered.get(Field::GeneratorSite, |share| share)?,
        })
    }

    /// Class and voltage of the supply of equipment that takes this many lines.
    pub(super) fn fed(&self, feed: Feed) -> (Class, ElectricPotential) {
        match feed {
            Feed::SinglePhase => (self.class, self.supply),
            Feed::ThreePhase => (self.three_phase, self.three_phase.nominal()),
        }
    }
}

/// What a utility asks for a line: as entered, else by the book. A part that neither tells counts nothing, as in the book;
/// nothing is told where no part is, or one can't be used.
fn tariff(entered: &Entered, book: &PriceBook) -> Option<Option<Tariff>> {
    let of_book = book.line_extension();
    let fixed = optional(entered, Field::LineFixed, Money)?;
    let per_length = optional(entered, Field::LinePrice, |price| MoneyPerLength(price / METER_PER_FOOT))?;
    let free = optional(entered, Field::LineFree, feet)?;
    if of_book.is_none() && fixed.is_none() && per_length.is_none() {
        return Some(None);
    }
    Some(Some(Tariff {
        fixed: fixed.or(of_book.map(|line| line.fixed)).unwrap_or(Money(0.0)),
        per_length: per_length.or(of_book.map(|line| line.per_length)).unwrap_or(MoneyPerLength(0.0)),
        free: free.or(of_book.map(|line| line.free)).unwrap_or(feet(0.0)),
    }))
}

/// A figure that may be left out; nothing where its entry can't be used.
fn optional<Q>(entered: &Entered, field: Field, make: fn(f64) -> Q) -> Option<Option<Q>> {
    entered.take(field, make).ok().map(|figure| figure.map(|known| known.value))
}
