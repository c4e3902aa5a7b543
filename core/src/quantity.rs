//! Typed quantities and the units that people enter them in.
//!
//! Inside the crate a dimensioned value is a `uom` quantity (SI inside). What a person enters is an [`Entry`]: the
//! number and the unit exactly as given, so that switching units on the screen never changes the job.

use core::ops::{Add, Div, Mul, Sub};
use serde::{Deserialize, Serialize};
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

mod fluid;
pub use fluid::*;

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

/// What kind of quantity a number is; two units convert only within one kind.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// Mechanical or electrical power.
    Power,
    /// Electric current.
    Current,
    /// Length or depth.
    Length,
    /// Temperature.
    Temperature,
    /// A share, entered in percent.
    Share,
    /// A plain number.
    Number,
    /// Money.
    Money,
    /// Money per length.
    MoneyPerLength,
    /// Money per mass.
    MoneyPerMass,
    /// Electric potential.
    Voltage,
    /// Resistance or reactance of one conductor per length.
    ResistancePerLength,
    /// Mass.
    Mass,
    /// Mass per length.
    MassPerLength,
    /// Cross-section of metal.
    Area,
    /// Mass per length and cross-section.
    Density,
    /// Heat given off.
    Heat,
}

/// A unit that a figure can be entered or shown in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[non_exhaustive]
pub enum Unit {
    /// Mechanical horsepower, 745.7 W.
    #[serde(rename = "hp")]
    Horsepower,
    /// Kilowatt.
    #[serde(rename = "kW")]
    Kilowatt,
    /// Ampere.
    #[serde(rename = "A")]
    Ampere,
    /// International foot.
    #[serde(rename = "ft")]
    Foot,
    /// Meter.
    #[serde(rename = "m")]
    Meter,
    /// Degree Celsius.
    #[serde(rename = "degC")]
    DegreeCelsius,
    /// Degree Fahrenheit.
    #[serde(rename = "degF")]
    DegreeFahrenheit,
    /// Percent.
    #[serde(rename = "%")]
    Percent,
    /// No unit.
    #[serde(rename = "1")]
    One,
    /// The price book's currency.
    #[serde(rename = "$")]
    Dollar,
    /// Currency per foot.
    #[serde(rename = "$/ft")]
    DollarPerFoot,
    /// Currency per meter.
    #[serde(rename = "$/m")]
    DollarPerMeter,
    /// Currency per pound of metal.
    #[serde(rename = "$/lb")]
    DollarPerPound,
    /// Currency per kilogram of metal.
    #[serde(rename = "$/kg")]
    DollarPerKilogram,
    /// Volt.
    #[serde(rename = "V")]
    Volt,
    /// Ohm in a thousand feet.
    #[serde(rename = "ohm/1000 ft")]
    OhmPerKilofoot,
    /// Ohm in a kilometer.
    #[serde(rename = "ohm/km")]
    OhmPerKilometer,
    /// International pound.
    #[serde(rename = "lb")]
    Pound,
    /// Kilogram.
    #[serde(rename = "kg")]
    Kilogram,
    /// Pound per foot.
    #[serde(rename = "lb/ft")]
    PoundPerFoot,
    /// Kilogram per meter.
    #[serde(rename = "kg/m")]
    KilogramPerMeter,
    /// A thousand circular mils.
    #[serde(rename = "kcmil")]
    Kcmil,
    /// Square millimeter.
    #[serde(rename = "mm2")]
    SquareMillimeter,
    /// Pound in a thousand feet of a thousand circular mils.
    #[serde(rename = "lb/(1000 ft kcmil)")]
    PoundPerKilofootKcmil,
    /// Gram per cubic centimeter: kilogram in a kilometer of one square millimeter.
    #[serde(rename = "g/cm3")]
    GramPerCubicCentimeter,
    /// Watt of heat.
    #[serde(rename = "W")]
    Watt,
}

impl Unit {
    /// The kind of quantity that the unit measures.
    #[must_use]
    pub fn kind(self) -> Kind {
        match self {
            Self::Horsepower | Self::Kilowatt => Kind::Power,
            Self::Ampere => Kind::Current,
            Self::Foot | Self::Meter => Kind::Length,
            Self::DegreeCelsius | Self::DegreeFahrenheit => Kind::Temperature,
            Self::Percent => Kind::Share,
            Self::One => Kind::Number,
            Self::Dollar => Kind::Money,
            Self::DollarPerFoot | Self::DollarPerMeter => Kind::MoneyPerLength,
            Self::DollarPerPound | Self::DollarPerKilogram => Kind::MoneyPerMass,
            Self::Volt => Kind::Voltage,
            Self::OhmPerKilofoot | Self::OhmPerKilometer => Kind::ResistancePerLength,
            Self::Pound | Self::Kilogram => Kind::Mass,
            Self::PoundPerFoot | Self::KilogramPerMeter => Kind::MassPerLength,
            Self::Kcmil | Self::SquareMillimeter => Kind::Area,
            Self::PoundPerKilofootKcmil | Self::GramPerCubicCentimeter => Kind::Density,
            Self::Watt => Kind::Heat,
        }
    }

    /// How many of the kind's first unit one of this unit is; temperature is handled apart, having an offset.
    fn factor(self) -> f64 {
        match self {
            Self::Kilowatt => 1000.0 / WATT_PER_HORSEPOWER,
            Self::Meter => 1.0 / METER_PER_FOOT,
            Self::DollarPerMeter => METER_PER_FOOT,
            Self::DollarPerKilogram => KILOGRAM_PER_POUND,
            Self::OhmPerKilometer => METER_PER_FOOT,
            Self::Kilogram => 1.0 / KILOGRAM_PER_POUND,
            Self::KilogramPerMeter => METER_PER_FOOT / KILOGRAM_PER_POUND,
            Self::SquareMillimeter => 1.0 / SQUARE_MILLIMETER_PER_KCMIL,
            Self::GramPerCubicCentimeter => SQUARE_MILLIMETER_PER_KCMIL * METER_PER_FOOT / KILOGRAM_PER_POUND,
            _ => 1.0,
        }
    }
}

/// The two families of units on the screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum UnitSystem {
    /// Feet, horsepower, pounds, degrees Fahrenheit.
    #[default]
    Us,
    /// Meters, kilowatts, kilograms, degrees Celsius.
    Si,
}

impl UnitSystem {
    /// The unit in which this system shows a kind of quantity.
    #[must_use]
    pub fn unit(self, kind: Kind) -> Unit {
        match (kind, self) {
            (Kind::Power, Self::Us) => Unit::Horsepower,
            (Kind::Power, Self::Si) => Unit::Kilowatt,
            (Kind::Current, _) => Unit::Ampere,
            (Kind::Length, Self::Us) => Unit::Foot,
            (Kind::Length, Self::Si) => Unit::Meter,
            (Kind::Temperature, Self::Us) => Unit::DegreeFahrenheit,
            (Kind::Temperature, Self::Si) => Unit::DegreeCelsius,
            (Kind::Share, _) => Unit::Percent,
            (Kind::Number, _) => Unit::One,
            (Kind::Money, _) => Unit::Dollar,
            (Kind::MoneyPerLength, Self::Us) => Unit::DollarPerFoot,
            (Kind::MoneyPerLength, Self::Si) => Unit::DollarPerMeter,
            (Kind::MoneyPerMass, Self::Us) => Unit::DollarPerPound,
            (Kind::MoneyPerMass, Self::Si) => Unit::DollarPerKilogram,
            (Kind::Voltage, _) => Unit::Volt,
            (Kind::ResistancePerLength, Self::Us) => Unit::OhmPerKilofoot,
            (Kind::ResistancePerLength, Self::Si) => Unit::OhmPerKilometer,
            (Kind::Mass, Self::Us) => Unit::Pound,
            (Kind::Mass, Self::Si) => Unit::Kilogram,
            (Kind::MassPerLength, Self::Us) => Unit::PoundPerFoot,
            (Kind::MassPerLength, Self::Si) => Unit::KilogramPerMeter,
            (Kind::Area, Self::Us) => Unit::Kcmil,
            (Kind::Area, Self::Si) => Unit::SquareMillimeter,
            (Kind::Density, Self::Us) => Unit::PoundPerKilofootKcmil,
            (Kind::Density, Self::Si) => Unit::GramPerCubicCentimeter,
            (Kind::Heat, _) => Unit::Watt,
        }
    }
}

/// A number and its unit: a figure as a person entered it, untouched, or one that is shown.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// The number.
    pub value: f64,
    /// Its unit.
    pub unit: Unit,
}

impl Entry {
    /// An entry of a number in a unit.
    #[must_use]
    pub const fn new(value: f64, unit: Unit) -> Self {
        Self { value, unit }
    }

    /// The same quantity in another unit, or `None` where the two units measure different kinds.
    ///
    /// In its own unit an entry is returned bit for bit.
    #[must_use]
    pub fn to(self, unit: Unit) -> Option<f64> {
        use Unit::{DegreeCelsius, DegreeFahrenheit};
        if unit == self.unit {
            return Some(self.value);
        }
        match (self.unit, unit) {
            (DegreeFahrenheit, DegreeCelsius) => Some((self.value - 32.0) * 5.0 / 9.0),
            (DegreeCelsius, DegreeFahrenheit) => Some(self.value * 9.0 / 5.0 + 32.0),
            (from, to) if from.kind() == to.kind() => Some(self.value * from.factor() / to.factor()),
            _ => None,
        }
    }

    /// The same quantity in the unit in which a system shows it.
    #[must_use]
    pub fn shown_in(self, system: UnitSystem) -> Self {
        let unit = system.unit(self.unit.kind());
        self.to(unit).map_or(self, |value| Self { value, unit })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // Exact by definition of the units (NIST SP 811, appendix B).
    #[test]
    fn units_convert_by_definition() {
        let cases = [
            (Entry::new(1.0, Unit::Foot), Unit::Meter, 0.3048),
            (Entry::new(1.0, Unit::Kilowatt), Unit::Horsepower, 1000.0 / 745.7),
            (Entry::new(113.0, Unit::DegreeFahrenheit), Unit::DegreeCelsius, 45.0),
            (Entry::new(-40.0, Unit::DegreeCelsius), Unit::DegreeFahrenheit, -40.0),
            (Entry::new(1.0, Unit::DollarPerPound), Unit::DollarPerKilogram, 2.204_622_621_848_776),
            (Entry::new(1.0, Unit::DollarPerMeter), Unit::DollarPerFoot, 0.3048),
            // 1,000 ft are 0.3048 km.
            (Entry::new(0.3048, Unit::OhmPerKilofoot), Unit::OhmPerKilometer, 1.0),
            (Entry::new(1.0, Unit::Pound), Unit::Kilogram, 0.453_592_37),
            // 0.453 592 37 kg in 0.3048 m.
            (Entry::new(1.0, Unit::PoundPerFoot), Unit::KilogramPerMeter, 1.488_163_943_569_553_8),
            // π/4 · (25.4 mm)²/1000.
            (Entry::new(1.0, Unit::Kcmil), Unit::SquareMillimeter, 0.506_707_479_097_497_7),
            // 1 kg in a kilometer of 1 mm²: 0.3048/0.453 592 37 lb in a thousand feet, times the mm² of a kcmil.
            (Entry::new(1.0, Unit::GramPerCubicCentimeter), Unit::PoundPerKilofootKcmil, 0.340_491_705_424_668_6),
        ];
        for (entry, unit, expected) in cases {
            let got = entry.to(unit).unwrap();
            assert!((got - expected).abs() <= 1e-14 * expected.abs(), "{entry:?} in {unit:?}: {got}");
        }
    }

    #[test]
    fn kinds_do_not_mix() {
        assert_eq!(Entry::new(1.0, Unit::Foot).to(Unit::Horsepower), None);
    }

    #[test]
    fn whole_degrees_fahrenheit_on_table_edges_stay_whole() {
        for (f, c) in [(104.0, 40.0), (113.0, 45.0), (122.0, 50.0), (86.0, 30.0), (140.0, 60.0)] {
            assert_eq!(Entry::new(f, Unit::DegreeFahrenheit).to(Unit::DegreeCelsius), Some(c));
        }
    }
}
