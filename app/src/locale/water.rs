//! Quantities of water and of pumps, as people write them: to the digits that matter.

use super::number::NO_BREAK;
use super::quantity::{Shown, in_digits};
use super::words;
use wellwright_core::quantity::{
    Entry, Frequency, Length, Mass, Power, Pressure, Time, Unit, UnitSystem, Velocity, Volume, VolumeRate, in_feet,
    in_feet_per_second, in_gallons, in_gpm, in_hertz, in_horsepower, in_inches, in_per_hour, in_pounds, in_psi,
    in_seconds,
};
use wellwright_core::standards::pipe::{Nominal, Series};

/// Digits that are shown of what was worked out.
const DIGITS: i32 = 4;

fn of(value: f64, unit: Unit, system: UnitSystem, digits: i32) -> Shown {
    in_digits(Entry::new(value, unit).shown_in(system), digits)
}

/// A flow.
#[must_use]
pub fn flow(flow: VolumeRate, system: UnitSystem) -> Shown {
    of(in_gpm(flow), Unit::GallonPerMinute, system, DIGITS)
}

/// A pressure.
#[must_use]
pub fn pressure(pressure: Pressure, system: UnitSystem) -> Shown {
    of(in_psi(pressure), Unit::PoundPerSquareInch, system, DIGITS)
}

/// A head.
#[must_use]
pub fn head(head: Length, system: UnitSystem) -> Shown {
    of(in_feet(head), Unit::Foot, system, DIGITS)
}

/// A frequency.
#[must_use]
pub fn frequency(frequency: Frequency) -> Shown {
    of(in_hertz(frequency), Unit::Hertz, UnitSystem::Us, 3)
}

/// A speed of water.
#[must_use]
pub fn velocity(velocity: Velocity, system: UnitSystem) -> Shown {
    of(in_feet_per_second(velocity), Unit::FootPerSecond, system, 3)
}

/// A volume of water.
#[must_use]
pub fn volume(volume: Volume, system: UnitSystem) -> Shown {
    of(in_gallons(volume), Unit::Gallon, system, DIGITS)
}

/// A diameter.
#[must_use]
pub fn diameter(diameter: Length, system: UnitSystem) -> Shown {
    of(in_inches(diameter), Unit::Inch, system, DIGITS)
}

/// Power at a shaft, as it was worked out.
#[must_use]
pub fn shaft(power: Power, system: UnitSystem) -> Shown {
    of(in_horsepower(power), Unit::Horsepower, system, 3)
}

/// A weight on the hook.
#[must_use]
pub fn weight(mass: Mass, system: UnitSystem) -> Shown {
    of(in_pounds(mass), Unit::Pound, system, DIGITS)
}

/// A short time.
#[must_use]
pub fn seconds(time: Time) -> Shown {
    super::quantity::shown(in_seconds(time), 0, "s")
}

/// Starts in an hour, to tenths.
#[must_use]
pub fn per_hour(starts: Frequency) -> Shown {
    super::quantity::shown(in_per_hour(starts), 1, words().flow.per_hour)
}

/// A figure in the units of a system, whole.
#[must_use]
pub fn whole(given: Entry, system: UnitSystem) -> Shown {
    let shown = given.shown_in(system);
    super::quantity::shown(shown.value, 0, super::quantity::unit_name(shown.unit))
}

/// A plain figure, as it is written in a list.
#[must_use]
pub fn plain_figure(value: f64) -> String {
    super::number::figure(value)
}

/// What a pipe is made of.
#[must_use]
pub fn series_name(series: Series) -> String {
    let words = &words().flow;
    match series {
        Series::SteelSchedule40 => (words.steel)("40"),
        Series::PvcSchedule40 => (words.pvc_schedule)("40"),
        Series::PvcSchedule80 => (words.pvc_schedule)("80"),
        Series::PvcSdr21 => (words.pvc_sdr)("21"),
        Series::PvcSdr26 => (words.pvc_sdr)("26"),
        Series::PolyethyleneDr(ratio) => (words.pe_dr)(&plain_figure(ratio.value())),
        Series::PolyethyleneSidr(ratio) => (words.pe_sidr)(&plain_figure(ratio.value())),
    }
}

/// A nominal size: the trade's inches in every system.
#[must_use]
pub fn size_name(size: Nominal) -> String {
    format!("{}{NO_BREAK}{}", size.name(), super::quantity::unit_name(Unit::Inch))
}

#[cfg(test)]
mod tests {
    use super::*;
    use wellwright_core::quantity::{gpm, psi};

    #[test]
    fn figures_have_the_digits_that_matter() {
        assert_eq!(flow(gpm(13.9057), UnitSystem::Us).text(), "13.91\u{a0}gpm");
        assert_eq!(flow(gpm(25.0), UnitSystem::Si).text(), "1.577\u{a0}L/s");
        assert_eq!(pressure(psi(167.177), UnitSystem::Us).text(), "167.2\u{a0}psi");
        assert_eq!(head(wellwright_core::quantity::feet(647.353), UnitSystem::Us).text(), "647.4\u{a0}ft");
    }
}
