//! Quantities of water, of the ground and of pumps, and the units of the trade.
//!
//! The factors are exact by definition of the units, where `uom` keeps six or seven digits of some.

use super::{Celsius, KILOGRAM_PER_POUND, Length, METER_PER_FOOT, Mass, MassPerLength, Power};
use core::ops::{Div, Mul};
pub use uom::si::f64::{
    Acceleration, DynamicViscosity, Frequency, MassDensity, Pressure, Time, Velocity, Volume, VolumeRate,
};
use uom::si::{
    acceleration::meter_per_second_squared, area::square_meter, f64::Area, frequency::hertz as per_second,
    length::meter, mass_density::kilogram_per_cubic_meter, power::watt, pressure::pascal, time::second,
    velocity::meter_per_second, volume::cubic_meter, volume_rate::cubic_meter_per_second,
};

/// Viscosity over density.
pub type KinematicViscosity = <Area as Div<Time>>::Output;
/// Flow of a well per length of drawdown.
pub type SpecificCapacity = <VolumeRate as Div<Length>>::Output;
/// Flow through the whole thickness of an aquifer, per width and slope.
pub type Transmissivity = <Area as Div<Time>>::Output;
/// Drawdown per square of the flow.
pub type WellLossCoefficient = <Length as Div<<VolumeRate as Mul<VolumeRate>>::Output>>::Output;

/// Standard acceleration of free fall, m/s², exact (3rd CGPM, 1901).
pub const STANDARD_GRAVITY: f64 = 9.806_65;
/// Cubic meters in one US gallon, exact: 231 cubic inches.
pub const CUBIC_METER_PER_GALLON: f64 = 231.0 * 0.0254 * 0.0254 * 0.0254;
/// Pascals in one pound-force per square inch: the weight of an international pound over a square inch.
pub const PASCAL_PER_PSI: f64 = KILOGRAM_PER_POUND * STANDARD_GRAVITY / (0.0254 * 0.0254);
/// Square meters in one acre, exact: 43,560 square feet (international).
pub const SQUARE_METER_PER_ACRE: f64 = 43_560.0 * METER_PER_FOOT * METER_PER_FOOT;

/// The standard acceleration of free fall.
#[must_use]
pub fn standard_gravity() -> Acceleration {
    Acceleration::new::<meter_per_second_squared>(STANDARD_GRAVITY)
}

/// For each unit a function that makes the quantity, and one that tells it in the unit.
macro_rules! units {
    ($($kind:ident in $base:ident { $($from:ident, $into:ident = $factor:expr, $name:literal;)* })*) => { $($(
        #[doc = concat!("A quantity from ", $name, ".")]
        #[must_use]
        pub fn $from(value: f64) -> $kind {
            $kind::new::<$base>(value * $factor)
        }
        #[doc = concat!("A quantity in ", $name, ".")]
        #[must_use]
        pub fn $into(quantity: $kind) -> f64 {
            quantity.get::<$base>() / $factor
        }
    )*)* };
}

units! {
    Length in meter {
        meters, in_meters = 1.0, "meters";
        millimeters, in_millimeters = 1e-3, "millimeters";
    }
    Area in square_meter {
        acres, in_acres = SQUARE_METER_PER_ACRE, "acres";
        hectares, in_hectares = 1e4, "hectares";
    }
    Power in watt {
        kilowatts, in_kilowatts = 1e3, "kilowatts";
    }
    Frequency in per_second {
        hertz, in_hertz = 1.0, "hertz";
        per_hour, in_per_hour = 1.0 / 3600.0, "times in an hour";
    }
    Volume in cubic_meter {
        gallons, in_gallons = CUBIC_METER_PER_GALLON, "US gallons";
        liters, in_liters = 1e-3, "liters";
    }
    Time in second {
        seconds, in_seconds = 1.0, "seconds";
        minutes, in_minutes = 60.0, "minutes";
        hours, in_hours = 3600.0, "hours";
        days, in_days = 86_400.0, "days";
    }
    VolumeRate in cubic_meter_per_second {
        gpm, in_gpm = CUBIC_METER_PER_GALLON / 60.0, "US gallons in a minute";
        liters_per_second, in_liters_per_second = 1e-3, "liters in a second";
        cubic_meters_per_hour, in_cubic_meters_per_hour = 1.0 / 3600.0, "cubic meters in an hour";
    }
    Velocity in meter_per_second {
        feet_per_second, in_feet_per_second = METER_PER_FOOT, "feet in a second";
        meters_per_second, in_meters_per_second = 1.0, "meters in a second";
    }
    Pressure in pascal {
        psi, in_psi = PASCAL_PER_PSI, "pounds-force per square inch";
        kilopascals, in_kilopascals = 1e3, "kilopascals";
        bars, in_bars = 1e5, "bars";
    }
    MassDensity in kilogram_per_cubic_meter {
        kilograms_per_cubic_meter, in_kilograms_per_cubic_meter = 1.0, "kilograms in a cubic meter";
    }
}

/// A length in inches.
#[must_use]
pub fn in_inches(length: Length) -> f64 {
    in_meters(length) / 0.0254
}
/// A mass from pounds.
#[must_use]
pub fn pounds(value: f64) -> Mass {
    Mass::new::<uom::si::mass::kilogram>(value * KILOGRAM_PER_POUND)
}
/// A mass per length from pounds in a foot.
#[must_use]
pub fn pounds_per_foot(value: f64) -> MassPerLength {
    pounds(value) / super::feet(1.0)
}
/// A viscosity over density, from square meters in a second.
#[must_use]
pub fn square_meters_per_second(value: f64) -> KinematicViscosity {
    Area::new::<square_meter>(value) / seconds(1.0)
}
/// A specific capacity from gallons a minute for each foot of drawdown.
#[must_use]
pub fn gallons_per_minute_per_foot(value: f64) -> SpecificCapacity {
    gpm(value) / super::feet(1.0)
}
/// A specific capacity in gallons a minute for each foot of drawdown.
#[must_use]
pub fn in_gallons_per_minute_per_foot(capacity: SpecificCapacity) -> f64 {
    in_gpm(capacity * super::feet(1.0))
}
/// A transmissivity from square meters in a day.
#[must_use]
pub fn square_meters_per_day(value: f64) -> Transmissivity {
    Area::new::<square_meter>(value) / days(1.0)
}
/// A transmissivity from gallons a day for each foot of width.
#[must_use]
pub fn gallons_per_day_per_foot(value: f64) -> Transmissivity {
    gallons(value) / days(1.0) / super::feet(1.0)
}
/// A well-loss coefficient from feet for the square of a gallon a minute.
#[must_use]
pub fn feet_per_square_gallon_per_minute(value: f64) -> WellLossCoefficient {
    super::feet(value) / (gpm(1.0) * gpm(1.0))
}
/// A temperature from degrees Fahrenheit.
#[must_use]
pub fn fahrenheit(value: f64) -> Celsius {
    Celsius((value - 32.0) * 5.0 / 9.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{feet, inches};

    fn close(found: f64, expected: f64) {
        assert!((found / expected - 1.0).abs() < 1e-14, "{found}, expected {expected}");
    }

    // NIST SP 811 (2008), appendix B.9, to the seven digits that it prints.
    #[test]
    fn factors_agree_with_the_published_ones() {
        let cases: [(f64, f64); 3] = [
            (CUBIC_METER_PER_GALLON, 3.785_412e-3),
            (CUBIC_METER_PER_GALLON / 60.0, 6.309_020e-5),
            (PASCAL_PER_PSI, 6.894_757e3),
        ];
        for (found, printed) in cases {
            let half_a_digit = 5e-7 / printed * 10f64.powf(printed.log10().floor());
            assert!((found / printed - 1.0).abs() <= half_a_digit, "{found}, printed {printed}");
        }
    }

    // The international acre is 4 parts in a million less than the survey acre that SP 811 gives, 4.046 873e3.
    #[test]
    fn the_acre_is_the_international_one() {
        close(SQUARE_METER_PER_ACRE, 4_046.856_422_4);
        assert!((SQUARE_METER_PER_ACRE / 4.046_873e3 - 1.0 + 4e-6).abs() < 3e-7);
    }

    // A cubic meter is 1,000 liters; an hour has 3,600 seconds; a bar is 100 kPa; a hectare is 100 m by 100 m.
    #[test]
    fn units_convert_by_definition() {
        close(in_liters_per_second(cubic_meters_per_hour(3.6)), 1.0);
        close(in_gpm(gallons(7.0) / hours(1.0)), 7.0 / 60.0);
        close(in_kilopascals(bars(2.0)), 200.0);
        close(in_hectares(meters(100.0) * meters(100.0)), 1.0);
        close(in_acres(feet(660.0) * feet(66.0)), 1.0);
        close(in_inches(feet(1.0)), 12.0);
        close(in_millimeters(inches(1.0)), 25.4);
        close(in_days(hours(24.0)), in_minutes(minutes(1.0)));
        close(in_feet_per_second(feet(10.0) / seconds(5.0)), 2.0);
        // 7.48 gallons in a cubic foot: 1728/231.
        close(in_gallons(feet(1.0) * feet(1.0) * feet(1.0)), 1728.0 / 231.0);
        // A pound on a square inch.
        close(in_psi(pounds(1.0) * standard_gravity() / (inches(1.0) * inches(1.0))), 1.0);
        close(in_gallons_per_minute_per_foot(gallons_per_minute_per_foot(0.6)), 0.6);
        close((gallons_per_day_per_foot(1440.0) / gallons_per_minute_per_foot(1.0)).value, 1.0);
    }
}
