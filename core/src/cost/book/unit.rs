//! The units that prices are quoted in.

use super::words::words;
use crate::quantity::{KILOGRAM_PER_POUND, METER_PER_FOOT, WATT_PER_HORSEPOWER};

words! {
    /// A unit of a price, of a size or of a length. `$` is the book's currency, whatever it is.
    BookUnit {
        /// For the piece, or for the whole.
        Each = "$",
        /// For a foot.
        PerFoot = "$/ft",
        /// For a meter.
        PerMeter = "$/m",
        /// For a thousand feet.
        PerKilofoot = "$/kft",
        /// For a kilometer.
        PerKilometer = "$/km",
        /// For a pound.
        PerPound = "$/lb",
        /// For a kilogram.
        PerKilogram = "$/kg",
        /// For a horsepower.
        PerHorsepower = "$/hp",
        /// For a kilowatt.
        PerKilowatt = "$/kW",
        /// For a kilovolt-ampere.
        PerKilovoltAmpere = "$/kVA",
        /// A plain number.
        One = "1",
        /// Foot.
        Foot = "ft",
        /// Meter.
        Meter = "m",
        /// Horsepower.
        Horsepower = "hp",
        /// Kilowatt of a motor.
        Kilowatt = "kW",
        /// Kilovolt-ampere.
        KilovoltAmpere = "kVA",
    }
}

const KILOWATT_PER_HORSEPOWER: f64 = WATT_PER_HORSEPOWER / 1000.0;

impl BookUnit {
    /// An amount in the plain unit of the same kind: money, meter, kilogram, horsepower, kilovolt-ampere.
    pub(super) fn to_plain(self, amount: f64) -> f64 {
        match self {
            Self::PerFoot => amount / METER_PER_FOOT,
            Self::PerKilofoot => amount / (1000.0 * METER_PER_FOOT),
            Self::PerKilometer => amount / 1000.0,
            Self::PerPound => amount / KILOGRAM_PER_POUND,
            Self::PerKilowatt => amount * KILOWATT_PER_HORSEPOWER,
            Self::Foot => amount * METER_PER_FOOT,
            Self::Kilowatt => amount / KILOWATT_PER_HORSEPOWER,
            Self::Each
            | Self::PerMeter
            | Self::PerKilogram
            | Self::PerHorsepower
            | Self::PerKilovoltAmpere
            | Self::One
            | Self::Meter
            | Self::Horsepower
            | Self::KilovoltAmpere => amount,
        }
    }

    /// The amount in this unit of one in the plain unit.
    pub(super) fn of_plain(self, amount: f64) -> f64 {
        match self {
            Self::PerFoot => amount * METER_PER_FOOT,
            Self::PerKilofoot => amount * (1000.0 * METER_PER_FOOT),
            Self::PerKilometer => amount * 1000.0,
            Self::PerPound => amount * KILOGRAM_PER_POUND,
            Self::PerKilowatt => amount / KILOWATT_PER_HORSEPOWER,
            Self::Foot => amount / METER_PER_FOOT,
            Self::Kilowatt => amount * KILOWATT_PER_HORSEPOWER,
            _ => self.to_plain(amount),
        }
    }
}

pub(super) const PER_LENGTH: &[BookUnit] =
    &[BookUnit::PerFoot, BookUnit::PerMeter, BookUnit::PerKilofoot, BookUnit::PerKilometer];
pub(super) const PER_MASS: &[BookUnit] = &[BookUnit::PerPound, BookUnit::PerKilogram];
pub(super) const PER_POWER: &[BookUnit] = &[BookUnit::PerHorsepower, BookUnit::PerKilowatt];
pub(super) const PER_KVA: &[BookUnit] = &[BookUnit::PerKilovoltAmpere];
pub(super) const EACH: &[BookUnit] = &[BookUnit::Each];
pub(super) const ONE: &[BookUnit] = &[BookUnit::One];
pub(super) const LENGTH: &[BookUnit] = &[BookUnit::Foot, BookUnit::Meter];
pub(super) const POWER: &[BookUnit] = &[BookUnit::Horsepower, BookUnit::Kilowatt];
pub(super) const KVA: &[BookUnit] = &[BookUnit::KilovoltAmpere];
