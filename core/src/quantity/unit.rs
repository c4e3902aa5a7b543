//! The units that figures are entered and shown in, and the kinds of quantity that they measure.

use super::{
    CUBIC_METER_PER_GALLON, KILOGRAM_PER_POUND, METER_PER_FOOT, PASCAL_PER_PSI, SQUARE_METER_PER_ACRE,
    SQUARE_MILLIMETER_PER_KCMIL, WATT_PER_HORSEPOWER,
};
use serde::{Deserialize, Serialize};

/// Kinds of quantity, each with the unit in which the US and the SI system show it.
macro_rules! kinds {
    ($($(#[$doc:meta])* $kind:ident: $us:ident, $si:ident;)*) => {
        /// What kind of quantity a number is; two units convert only within one kind.
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub enum Kind { $($(#[$doc])* $kind,)* }

        impl UnitSystem {
            /// The unit in which this system shows a kind of quantity.
            #[must_use]
            pub fn unit(self, kind: Kind) -> Unit {
                match (kind, self) { $(
                    (Kind::$kind, Self::Us) => Unit::$us,
                    (Kind::$kind, Self::Si) => Unit::$si,
                )* }
            }
        }
    };
}

kinds! {
    /// Mechanical or electrical power.
    Power: Horsepower, Kilowatt;
    /// Electric current.
    Current: Ampere, Ampere;
    /// Length or depth.
    Length: Foot, Meter;
    /// Temperature.
    Temperature: DegreeFahrenheit, DegreeCelsius;
    /// A share, entered in percent.
    Share: Percent, Percent;
    /// A plain number.
    Number: One, One;
    /// Money.
    Money: Dollar, Dollar;
    /// Money per length.
    MoneyPerLength: DollarPerFoot, DollarPerMeter;
    /// Money per mass.
    MoneyPerMass: DollarPerPound, DollarPerKilogram;
    /// Electric potential.
    Voltage: Volt, Volt;
    /// Drop of electric potential per length.
    VoltagePerLength: VoltPerFoot, VoltPerMeter;
    /// Resistance or reactance of one conductor per length.
    ResistancePerLength: OhmPerKilofoot, OhmPerKilometer;
    /// Mass.
    Mass: Pound, Kilogram;
    /// Mass per length.
    MassPerLength: PoundPerFoot, KilogramPerMeter;
    /// Cross-section of metal.
    Area: Kcmil, SquareMillimeter;
    /// Mass per length and cross-section.
    Density: PoundPerKilofootKcmil, GramPerCubicCentimeter;
    /// Heat given off.
    Heat: Watt, Watt;
    /// Flow of water.
    Flow: GallonPerMinute, LiterPerSecond;
    /// A volume of water.
    Volume: Gallon, Liter;
    /// Water used in a day.
    DailyVolume: GallonPerDay, LiterPerDay;
    /// A span of time.
    Time: Hour, Hour;
    /// Land.
    Land: Acre, Hectare;
    /// Depth of water spread in a day.
    Spread: InchPerDay, MillimeterPerDay;
    /// Flow of a well per length of drawdown.
    SpecificCapacity: GallonPerMinutePerFoot, LiterPerSecondPerMeter;
    /// Flow through an aquifer per width and slope.
    Transmissivity: GallonPerDayPerFoot, SquareMeterPerDay;
    /// Drawdown per square of the flow.
    WellLoss: FootPerSquareGallonPerMinute, SecondSquaredPerMeterToTheFifth;
    /// A diameter, or the roughness of a wall.
    Diameter: Inch, Millimeter;
    /// Pressure.
    Pressure: PoundPerSquareInch, Kilopascal;
    /// Frequency of the motor's supply.
    Frequency: Hertz, Hertz;
    /// Speed of water.
    Velocity: FootPerSecond, MeterPerSecond;
    /// Viscosity over density.
    Viscosity: SquareMillimeterPerSecond, SquareMillimeterPerSecond;
    /// Mass of water per volume.
    WaterDensity: PoundPerCubicFoot, KilogramPerCubicMeter;
    /// Voltage times current.
    ApparentPower: KilovoltAmpere, KilovoltAmpere;
    /// Current of a fault.
    FaultCurrent: Kiloampere, Kiloampere;
    /// A difference of temperatures.
    Warming: FahrenheitDegree, Kelvin;
    /// Resistance or impedance.
    Resistance: Ohm, Ohm;
    /// Time in which a pulse rises.
    RiseTime: Microsecond, Microsecond;
    /// Speed of a pulse along a lead.
    PulseSpeed: FootPerMicrosecond, MeterPerMicrosecond;
    /// Money for energy.
    EnergyPrice: DollarPerKilowattHour, DollarPerKilowattHour;
    /// Money for the largest power of a month.
    DemandPrice: DollarPerKilowatt, DollarPerKilowatt;
    /// Money for each month.
    MonthlyPrice: DollarPerMonth, DollarPerMonth;
    /// Months of a year.
    Months: Month, Month;
    /// Carbon dioxide for energy.
    Emission: PoundPerKilowattHour, KilogramPerKilowattHour;
    /// A life in years.
    Life: Year, Year;
    /// Resistance of insulation.
    Insulation: Megohm, Megohm;
    /// Current of a transducer.
    Signal: Milliampere, Milliampere;
    /// A short while.
    Delay: Second, Second;
}

/// Units, each with its name in files, its kind, and how many of the kind's first unit it is.
macro_rules! units {
    ($($(#[$doc:meta])* $unit:ident = $name:literal, $kind:ident, $factor:expr;)*) => {
        /// A unit that a figure can be entered or shown in.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
        #[non_exhaustive]
        pub enum Unit { $($(#[$doc])* #[serde(rename = $name)] $unit,)* }

        impl Unit {
            /// Every unit.
            pub const ALL: [Self; [$($name),*].len()] = [$(Self::$unit),*];

            /// The kind of quantity that the unit measures.
            #[must_use]
            pub fn kind(self) -> Kind {
                match self { $(Self::$unit => Kind::$kind,)* }
            }

            /// How many of the kind's first unit one of this unit is; temperature is handled apart, having an offset.
            fn factor(self) -> f64 {
                match self { $(Self::$unit => $factor,)* }
            }
        }
    };
}

const LITER_PER_GALLON: f64 = 1000.0 * CUBIC_METER_PER_GALLON;
const GPM_PER_LITER_PER_SECOND: f64 = 60.0 / LITER_PER_GALLON;
const CUBIC_FOOT: f64 = METER_PER_FOOT * METER_PER_FOOT * METER_PER_FOOT;

units! {
    /// Mechanical horsepower, 745.7 W.
    Horsepower = "hp", Power, 1.0;
    /// Kilowatt.
    Kilowatt = "kW", Power, 1000.0 / WATT_PER_HORSEPOWER;
    /// Ampere.
    Ampere = "A", Current, 1.0;
    /// International foot.
    Foot = "ft", Length, 1.0;
    /// Meter.
    Meter = "m", Length, 1.0 / METER_PER_FOOT;
    /// Degree Celsius.
    DegreeCelsius = "degC", Temperature, 1.0;
    /// Degree Fahrenheit.
    DegreeFahrenheit = "degF", Temperature, 1.0;
    /// Percent.
    Percent = "%", Share, 1.0;
    /// No unit.
    One = "1", Number, 1.0;
    /// The price book's currency.
    Dollar = "$", Money, 1.0;
    /// Currency per foot.
    DollarPerFoot = "$/ft", MoneyPerLength, 1.0;
    /// Currency per meter.
    DollarPerMeter = "$/m", MoneyPerLength, METER_PER_FOOT;
    /// Currency per pound of metal.
    DollarPerPound = "$/lb", MoneyPerMass, 1.0;
    /// Currency per kilogram of metal.
    DollarPerKilogram = "$/kg", MoneyPerMass, KILOGRAM_PER_POUND;
    /// Volt.
    Volt = "V", Voltage, 1.0;
    /// Ohm in a thousand feet.
    OhmPerKilofoot = "ohm/1000 ft", ResistancePerLength, 1.0;
    /// Ohm in a kilometer.
    OhmPerKilometer = "ohm/km", ResistancePerLength, METER_PER_FOOT;
    /// International pound.
    Pound = "lb", Mass, 1.0;
    /// Kilogram.
    Kilogram = "kg", Mass, 1.0 / KILOGRAM_PER_POUND;
    /// Volt per foot.
    VoltPerFoot = "V/ft", VoltagePerLength, 1.0;
    /// Volt per meter.
    VoltPerMeter = "V/m", VoltagePerLength, METER_PER_FOOT;
    /// Pound per foot.
    PoundPerFoot = "lb/ft", MassPerLength, 1.0;
    /// Kilogram per meter.
    KilogramPerMeter = "kg/m", MassPerLength, METER_PER_FOOT / KILOGRAM_PER_POUND;
    /// A thousand circular mils.
    Kcmil = "kcmil", Area, 1.0;
    /// Square millimeter.
    SquareMillimeter = "mm2", Area, 1.0 / SQUARE_MILLIMETER_PER_KCMIL;
    /// Pound in a thousand feet of a thousand circular mils.
    PoundPerKilofootKcmil = "lb/(1000 ft kcmil)", Density, 1.0;
    /// Gram per cubic centimeter: kilogram in a kilometer of one square millimeter.
    GramPerCubicCentimeter = "g/cm3", Density, SQUARE_MILLIMETER_PER_KCMIL * METER_PER_FOOT / KILOGRAM_PER_POUND;
    /// Watt of heat.
    Watt = "W", Heat, 1.0;
    /// US gallon in a minute.
    GallonPerMinute = "gpm", Flow, 1.0;
    /// Liter in a second.
    LiterPerSecond = "L/s", Flow, GPM_PER_LITER_PER_SECOND;
    /// Cubic meter in an hour.
    CubicMeterPerHour = "m3/h", Flow, GPM_PER_LITER_PER_SECOND / 3.6;
    /// US gallon, 231 cubic inches.
    Gallon = "gal", Volume, 1.0;
    /// Liter.
    Liter = "L", Volume, 1.0 / LITER_PER_GALLON;
    /// US gallon in a day.
    GallonPerDay = "gal/d", DailyVolume, 1.0;
    /// Liter in a day.
    LiterPerDay = "L/d", DailyVolume, 1.0 / LITER_PER_GALLON;
    /// Hour.
    Hour = "h", Time, 1.0;
    /// Acre of 43,560 square feet.
    Acre = "acre", Land, 1.0;
    /// Hectare.
    Hectare = "ha", Land, 1e4 / SQUARE_METER_PER_ACRE;
    /// Inch of water in a day.
    InchPerDay = "in/d", Spread, 1.0;
    /// Millimeter of water in a day.
    MillimeterPerDay = "mm/d", Spread, 1.0 / 25.4;
    /// Gallon in a minute for each foot of drawdown.
    GallonPerMinutePerFoot = "gpm/ft", SpecificCapacity, 1.0;
    /// Liter in a second for each meter of drawdown.
    LiterPerSecondPerMeter = "L/(s m)", SpecificCapacity, GPM_PER_LITER_PER_SECOND * METER_PER_FOOT;
    /// Gallon in a day for each foot of width.
    GallonPerDayPerFoot = "gal/(d ft)", Transmissivity, 1.0;
    /// Square meter in a day.
    SquareMeterPerDay = "m2/d", Transmissivity, METER_PER_FOOT / CUBIC_METER_PER_GALLON;
    /// Foot of drawdown for the square of a gallon in a minute.
    FootPerSquareGallonPerMinute = "ft/gpm2", WellLoss, 1.0;
    /// Meter of drawdown for the square of a cubic meter in a second.
    SecondSquaredPerMeterToTheFifth = "s2/m5", WellLoss,
        (CUBIC_METER_PER_GALLON / 60.0) * (CUBIC_METER_PER_GALLON / 60.0) / METER_PER_FOOT;
    /// Inch.
    Inch = "in", Diameter, 1.0;
    /// Millimeter.
    Millimeter = "mm", Diameter, 1.0 / 25.4;
    /// Pound-force per square inch.
    PoundPerSquareInch = "psi", Pressure, 1.0;
    /// Kilopascal.
    Kilopascal = "kPa", Pressure, 1000.0 / PASCAL_PER_PSI;
    /// Bar.
    Bar = "bar", Pressure, 1e5 / PASCAL_PER_PSI;
    /// Hertz.
    Hertz = "Hz", Frequency, 1.0;
    /// Foot in a second.
    FootPerSecond = "ft/s", Velocity, 1.0;
    /// Meter in a second.
    MeterPerSecond = "m/s", Velocity, 1.0 / METER_PER_FOOT;
    /// Square millimeter in a second.
    SquareMillimeterPerSecond = "mm2/s", Viscosity, 1.0;
    /// Pound in a cubic foot.
    PoundPerCubicFoot = "lb/ft3", WaterDensity, 1.0;
    /// Kilogram in a cubic meter.
    KilogramPerCubicMeter = "kg/m3", WaterDensity, CUBIC_FOOT / KILOGRAM_PER_POUND;
    /// Kilovolt-ampere.
    KilovoltAmpere = "kVA", ApparentPower, 1.0;
    /// Kiloampere.
    Kiloampere = "kA", FaultCurrent, 1.0;
    /// One degree of the Fahrenheit scale, as a difference.
    FahrenheitDegree = "degF difference", Warming, 1.0;
    /// One degree of the Celsius scale, as a difference.
    Kelvin = "degC difference", Warming, 1.8;
    /// Ohm.
    Ohm = "ohm", Resistance, 1.0;
    /// Microsecond.
    Microsecond = "us", RiseTime, 1.0;
    /// Foot in a microsecond.
    FootPerMicrosecond = "ft/us", PulseSpeed, 1.0;
    /// Meter in a microsecond.
    MeterPerMicrosecond = "m/us", PulseSpeed, 1.0 / METER_PER_FOOT;
    /// Currency per kilowatt-hour.
    DollarPerKilowattHour = "$/kWh", EnergyPrice, 1.0;
    /// Year.
    Year = "yr", Life, 1.0;
    /// Megohm.
    Megohm = "Mohm", Insulation, 1.0;
    /// Milliampere.
    Milliampere = "mA", Signal, 1.0;
    /// Second.
    Second = "s", Delay, 1.0;
    /// Currency per kilowatt of a month's largest power.
    DollarPerKilowatt = "$/kW", DemandPrice, 1.0;
    /// Currency per month.
    DollarPerMonth = "$/month", MonthlyPrice, 1.0;
    /// Month.
    Month = "month", Months, 1.0;
    /// Pound per kilowatt-hour.
    PoundPerKilowattHour = "lb/kWh", Emission, 1.0;
    /// Kilogram per kilowatt-hour.
    KilogramPerKilowattHour = "kg/kWh", Emission, 1.0 / KILOGRAM_PER_POUND;
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
            // A gallon is 231 in³ = 3.785411784 L.
            (Entry::new(1.0, Unit::Gallon), Unit::Liter, 3.785_411_784),
            (Entry::new(60.0, Unit::GallonPerMinute), Unit::LiterPerSecond, 3.785_411_784),
            (Entry::new(1.0, Unit::LiterPerSecond), Unit::CubicMeterPerHour, 3.6),
            (Entry::new(100.0, Unit::GallonPerDay), Unit::LiterPerDay, 378.541_178_4),
            (Entry::new(1.0, Unit::Acre), Unit::Hectare, 0.404_685_642_24),
            (Entry::new(1.0, Unit::InchPerDay), Unit::MillimeterPerDay, 25.4),
            (Entry::new(1.0, Unit::Inch), Unit::Millimeter, 25.4),
            // 3.785411784 L in 60 s for each 0.3048 m.
            (Entry::new(0.3048 * 60.0, Unit::GallonPerMinutePerFoot), Unit::LiterPerSecondPerMeter, 3.785_411_784),
            // 0.003785411784 m³ in a day for each 0.3048 m.
            (Entry::new(304.8, Unit::GallonPerDayPerFoot), Unit::SquareMeterPerDay, 3.785_411_784),
            // 0.3048 m for the square of 0.003785411784/60 m³/s.
            (
                Entry::new(1.0, Unit::FootPerSquareGallonPerMinute),
                Unit::SecondSquaredPerMeterToTheFifth,
                0.3048 * 3600.0 / (0.003_785_411_784 * 0.003_785_411_784),
            ),
            // A pound-force over a square inch: 0.45359237 · 9.80665/0.0254² Pa.
            (Entry::new(1.0, Unit::PoundPerSquareInch), Unit::Kilopascal, 6.894_757_293_168_361),
            (Entry::new(1.0, Unit::Bar), Unit::Kilopascal, 100.0),
            (Entry::new(10.0, Unit::FootPerSecond), Unit::MeterPerSecond, 3.048),
            (Entry::new(10.0, Unit::Kelvin), Unit::FahrenheitDegree, 18.0),
            (Entry::new(150.0, Unit::MeterPerMicrosecond), Unit::FootPerMicrosecond, 150.0 / 0.3048),
            // 0.45359237/0.3048³.
            (Entry::new(1.0, Unit::PoundPerCubicFoot), Unit::KilogramPerCubicMeter, 16.018_463_373_960_14),
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
