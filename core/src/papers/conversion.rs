//! How many of one unit make another, where a formula mixes units as the trade does. True by definition of the units.

use super::math::Symbol;
use crate::quantity::{
    CUBIC_METER_PER_GALLON, KILOGRAM_PER_POUND, METER_PER_FOOT, SQUARE_METER_PER_ACRE, STANDARD_GRAVITY, UnitSystem,
    WATT_PER_HORSEPOWER,
};

/// A number that makes units agree. Those of both systems play the same part, in their own units.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Conversion {
    /// Inches in a foot; millimeters in a meter.
    Diameter,
    /// Inches in an inch; millimeters in an inch.
    TradeDiameter,
    /// Gallons a minute in a cubic foot a second; liters a second in a cubic meter a second.
    Flow,
    /// Gallons a minute in a gallon a minute; in a liter a second.
    TradeFlow,
    /// Gallons a day in a gallon a minute; cubic meters a day in a liter a second.
    DailyFlow,
    /// Square millimeters in a square foot; in a square meter.
    Viscosity,
    /// Square inches in a square foot; pascals in a kilopascal.
    Pressure,
    /// Foot-pounds a second in a horsepower; watts in a kilowatt.
    Power,
    /// Watts in a horsepower; in a kilowatt.
    Watts,
    /// Gallons in a cubic foot; cubic meters in a cubic meter.
    Volume,
    /// Gallons in an inch of water on an acre; liters in a millimeter on a hectare.
    Spread,
    /// Minutes in an hour; seconds in an hour.
    Hour,
    /// Standard acceleration of free fall, feet or meters in a second in a second.
    Gravity,
    /// Fahrenheit degrees in a kelvin; kelvins in a kelvin.
    Warming,
    /// Feet in a hundred meters; meters in a hundred meters.
    HundredMeters,
    /// Horsepower in a horsepower; in a kilowatt.
    Horsepower,
    /// Meters in a thousand feet; in a kilometer.
    Kilofoot,
}

impl Conversion {
    /// Its symbol.
    #[must_use]
    pub fn symbol(self) -> Symbol {
        match self {
            Self::Diameter => Symbol::of("N", "D"),
            Self::TradeDiameter => Symbol::of("N", "i"),
            Self::Flow => Symbol::of("N", "Q"),
            Self::TradeFlow => Symbol::of("N", "g"),
            Self::DailyFlow => Symbol::of("N", "d"),
            Self::Viscosity => Symbol::of("N", "ν"),
            Self::Pressure => Symbol::of("N", "p"),
            Self::Power => Symbol::of("N", "P"),
            Self::Watts => Symbol::of("N", "W"),
            Self::Volume => Symbol::of("N", "V"),
            Self::Spread => Symbol::of("N", "A"),
            Self::Hour => Symbol::of("N", "t"),
            Self::Gravity => Symbol::plain("g"),
            Self::Warming => Symbol::of("N", "T"),
            Self::HundredMeters => Symbol::of("N", "h"),
            Self::Horsepower => Symbol::of("N", "H"),
            Self::Kilofoot => Symbol::of("N", "R"),
        }
    }

    /// Its number in a system.
    #[must_use]
    pub fn value(self, system: UnitSystem) -> f64 {
        const CUBIC_FOOT: f64 = METER_PER_FOOT * METER_PER_FOOT * METER_PER_FOOT;
        const GALLONS_IN_CUBIC_FOOT: f64 = CUBIC_FOOT / CUBIC_METER_PER_GALLON;
        const FOOT_POUND: f64 = METER_PER_FOOT * KILOGRAM_PER_POUND * STANDARD_GRAVITY;
        let (us, si) = match self {
            Self::Diameter => (12.0, 1000.0),
            Self::TradeDiameter => (1.0, 25.4),
            Self::Flow => (60.0 * GALLONS_IN_CUBIC_FOOT, 1000.0),
            Self::TradeFlow => (1.0, 0.06 / CUBIC_METER_PER_GALLON),
            Self::DailyFlow => (1440.0, 86.4),
            Self::Viscosity => (304.8 * 304.8, 1e6),
            Self::Pressure => (144.0, 1000.0),
            Self::Power => (WATT_PER_HORSEPOWER / FOOT_POUND, 1000.0),
            Self::Watts => (WATT_PER_HORSEPOWER, 1000.0),
            Self::Volume => (GALLONS_IN_CUBIC_FOOT, 1.0),
            Self::Spread => (SQUARE_METER_PER_ACRE * 0.0254 / CUBIC_METER_PER_GALLON, 1e4),
            Self::Hour => (60.0, 3600.0),
            Self::Gravity => (STANDARD_GRAVITY / METER_PER_FOOT, STANDARD_GRAVITY),
            Self::Warming => (1.8, 1.0),
            Self::HundredMeters => (100.0 / METER_PER_FOOT, 100.0),
            Self::Horsepower => (1.0, 1000.0 / WATT_PER_HORSEPOWER),
            Self::Kilofoot => (1000.0 * METER_PER_FOOT, 1000.0),
        };
        match system {
            UnitSystem::Us => us,
            UnitSystem::Si => si,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Rounded as handbooks print them (NIST SP 811, appendix B.8).
    #[test]
    fn the_numbers_are_those_of_the_handbook() {
        use Conversion as C;
        for (conversion, us, si) in [
            (C::Diameter, 12.0, 1000.0),
            (C::TradeDiameter, 1.0, 25.4),
            (C::Flow, 448.831, 1000.0),
            (C::TradeFlow, 1.0, 15.8503),
            (C::DailyFlow, 1440.0, 86.4),
            (C::Viscosity, 92_903.0, 1e6),
            (C::Pressure, 144.0, 1000.0),
            (C::Power, 550.0, 1000.0),
            (C::Watts, 745.7, 1000.0),
            (C::Volume, 7.480_52, 1.0),
            (C::Spread, 27_154.3, 1e4),
            (C::Hour, 60.0, 3600.0),
            (C::Gravity, 32.1740, 9.806_65),
            (C::Warming, 1.8, 1.0),
            (C::HundredMeters, 328.084, 100.0),
            (C::Horsepower, 1.0, 1.341_02),
            (C::Kilofoot, 304.8, 1000.0),
        ] {
            for (system, expected) in [(UnitSystem::Us, us), (UnitSystem::Si, si)] {
                let value = conversion.value(system);
                assert!((value / expected - 1.0).abs() < 5e-6, "{:?} {system:?}: {value}", conversion.symbol());
            }
        }
    }
}
