//! Typed quantities and the units that people enter them in.
//!
//! Inside the crate a dimensioned value is a `uom` quantity (SI inside). What a person enters is an [`Entry`]: the
//! number and the unit exactly as given, so that switching units on the screen never changes the job.

use core::ops::{Add, Div, Mul, Sub};
pub use uom::si::f64::{Area, ElectricCurrent, ElectricPotential, ElectricalResistance, Length, Mass, Power};
use uom::si::{
    area::square_millimeter,
    electric_current::ampere,
    electric_potential::volt,
    electrical_resistance::ohm,
    length::{foot, inch, meter},
    mass::kilogram,
    power::watt,
};

/// Resistance or reactance of one conductor per length.
pub type OhmsPerLength = <ElectricalResistance as Div<Length>>::Output;
/// Mass of metal per length.
pub type MassPerLength = <Mass as Div<Length>>::Output;

/// Watts in one mechanical horsepower, as the trade rounds it (NIST SP 811: 745.699 9).
pub const WATT_PER_HORSEPOWER: f64 = 745.7;
/// Meters in one foot, exact (international foot, 1959).
pub const METER_PER_FOOT: f64 = 0.3048;
/// Kilograms in one pound, exact (international pound, 1959).
pub const KILOGRAM_PER_POUND: f64 = 0.453_592_37;
/// Square millimeters in one circular mil: π/4 · (25.4/1000)².
pub const SQUARE_MILLIMETER_PER_CIRCULAR_MIL: f64 = core::f64::consts::FRAC_PI_4 * 0.0254 * 0.0254;
const SQUARE_MILLIMETER_PER_KCMIL: f64 = 1000.0 * SQUARE_MILLIMETER_PER_CIRCULAR_MIL;

/// A length from feet.
#[must_use]
pub fn feet(value: f64) -> Length {
    Length::new::<foot>(value)
}
/// A length from inches.
#[must_use]
pub fn inches(value: f64) -> Length {
    Length::new::<inch>(value)
}
/// A length in feet.
#[must_use]
pub fn in_feet(length: Length) -> f64 {
    length.get::<meter>() / METER_PER_FOOT
}
/// A current from amperes.
#[must_use]
pub fn amperes(value: f64) -> ElectricCurrent {
    ElectricCurrent::new::<ampere>(value)
}
/// A current in amperes.
#[must_use]
pub fn in_amperes(current: ElectricCurrent) -> f64 {
    current.get::<ampere>()
}
/// A voltage from volts.
#[must_use]
pub fn volts(value: f64) -> ElectricPotential {
    ElectricPotential::new::<volt>(value)
}
/// A voltage in volts.
#[must_use]
pub fn in_volts(potential: ElectricPotential) -> f64 {
    potential.get::<volt>()
}
/// A power from watts.
#[must_use]
pub fn watts(value: f64) -> Power {
    Power::new::<watt>(value)
}
/// A power in watts.
#[must_use]
pub fn in_watts(power: Power) -> f64 {
    power.get::<watt>()
}
/// A power from horsepower.
#[must_use]
pub fn horsepower(value: f64) -> Power {
    watts(value * WATT_PER_HORSEPOWER)
}
/// A power in horsepower.
#[must_use]
pub fn in_horsepower(power: Power) -> f64 {
    in_watts(power) / WATT_PER_HORSEPOWER
}
/// A mass in pounds.
#[must_use]
pub fn in_pounds(mass: Mass) -> f64 {
    mass.get::<kilogram>() / KILOGRAM_PER_POUND
}
/// A mass per length in pounds per foot.
#[must_use]
pub fn in_pounds_per_foot(mass: MassPerLength) -> f64 {
    in_pounds(mass * feet(1.0))
}
/// A cross-section from circular mils.
#[must_use]
pub fn circular_mils(value: f64) -> Area {
    Area::new::<square_millimeter>(value * SQUARE_MILLIMETER_PER_CIRCULAR_MIL)
}
/// A cross-section in circular mils.
#[must_use]
pub fn in_circular_mils(area: Area) -> f64 {
    area.get::<square_millimeter>() / SQUARE_MILLIMETER_PER_CIRCULAR_MIL
}
/// Resistance or reactance per length, from ohms in a thousand feet.
#[must_use]
pub fn ohms_per_kilofoot(value: f64) -> OhmsPerLength {
    ElectricalResistance::new::<ohm>(value) / feet(1000.0)
}
/// Resistance or reactance per length, in ohms in a thousand feet.
#[must_use]
pub fn in_ohms_per_kilofoot(value: OhmsPerLength) -> f64 {
    (value * feet(1000.0)).get::<ohm>()
}

mod electric;
mod fluid;
mod unit;
pub use electric::*;
pub use fluid::*;
pub use unit::{Entry, Kind, Unit, UnitSystem};

/// A temperature in degrees Celsius. The code's tables step in whole degrees, so equality matters here and kelvins,
/// which spoil it by rounding, are not used.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Celsius(pub f64);

/// Money, in the currency of the job's price book.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct Money(pub f64);

impl Money {
    /// The amount without its sign.
    #[must_use]
    pub fn size(self) -> Self {
        Self(self.0.abs())
    }
}

impl Add for Money {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}
impl Sub for Money {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0)
    }
}

/// Money per meter.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct MoneyPerLength(pub f64);

/// A price that grows with the size of a piece.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct PieceAndSize {
    /// For the piece.
    pub fixed: Money,
    /// For each horsepower of its size.
    pub per_hp: Money,
}

impl MoneyPerLength {
    /// The price of one foot.
    #[must_use]
    pub fn per_foot(self) -> f64 {
        self.0 * METER_PER_FOOT
    }
}

impl MoneyPerMass {
    /// The price of one pound.
    #[must_use]
    pub fn per_pound(self) -> f64 {
        self.0 * KILOGRAM_PER_POUND
    }
}

impl Mul<Length> for MoneyPerLength {
    type Output = Money;
    fn mul(self, length: Length) -> Money {
        Money(self.0 * length.get::<meter>())
    }
}
impl Add for MoneyPerLength {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

/// Money per kilogram.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct MoneyPerMass(pub f64);

impl Mul<MassPerLength> for MoneyPerMass {
    type Output = MoneyPerLength;
    fn mul(self, mass: MassPerLength) -> MoneyPerLength {
        MoneyPerLength(self.0 * mass.value)
    }
}
