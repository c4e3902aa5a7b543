//! Quantities of water and of pumps, as people write them: to the digits that matter.

use super::number::NO_BREAK;
use super::quantity::{Shown, in_digits, shown, unit_name};
use super::words;
use wellwright_core::quantity::{
    Entry, Frequency, Length, Mass, Power, Pressure, Time, Unit, UnitSystem, Velocity, Volume, VolumeRate, in_feet,
    in_feet_per_second, in_gallons, in_gpm, in_hertz, in_horsepower, in_inches, in_kilopascals, in_liters_per_second,
    in_meters, in_per_hour, in_pounds, in_psi, in_seconds,
};
use wellwright_core::standards::pipe::{Nominal, Series};

/// Digits that are shown of what was worked out.
const DIGITS: i32 = 4;

fn of(value: f64, unit: Unit, system: UnitSystem, digits: i32) -> Shown {
    in_digits(Entry::new(value, unit).shown_in(system), digits)
}

/// A figure with fewer decimals the larger it is: two below ten, one below a hundred; whole ones without.
pub(super) fn eased(value: f64, unit: Unit) -> Shown {
    let decimals = match value.abs() {
        size if (size - size.round()).abs() < 0.005 => 0,
        size if size < 9.995 => 2,
        size if size < 99.95 => 1,
        _ => 0,
    };
    shown(value, decimals, unit_name(unit))
}

/// A flow.
#[must_use]
pub fn flow(flow: VolumeRate, system: UnitSystem) -> Shown {
    match system {
        UnitSystem::Us => eased(in_gpm(flow), Unit::GallonPerMinute),
        UnitSystem::Si => eased(in_liters_per_second(flow), Unit::LiterPerSecond),
    }
}

/// A pressure: whole psi or kilopascals.
#[must_use]
pub fn pressure(pressure: Pressure, system: UnitSystem) -> Shown {
    match system {
        UnitSystem::Us => shown(in_psi(pressure), 0, unit_name(Unit::PoundPerSquareInch)),
        UnitSystem::Si => shown(in_kilopascals(pressure), 0, unit_name(Unit::Kilopascal)),
    }
}

/// A head: whole feet, tenths of a meter; in feet tenths where it is small.
#[must_use]
pub fn head(head: Length, system: UnitSystem) -> Shown {
    match system {
        UnitSystem::Us => eased(in_feet(head), Unit::Foot),
        UnitSystem::Si => shown(in_meters(head), 1, unit_name(Unit::Meter)),
    }
}

/// A frequency: tenths, whole ones without.
#[must_use]
pub fn frequency(frequency: Frequency) -> Shown {
    let value = in_hertz(frequency);
    let whole = (value - value.round()).abs() < 0.05;
    shown(value, usize::from(!whole), unit_name(Unit::Hertz))
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
    shown(in_seconds(time), 0, "s")
}

/// Starts in an hour, to tenths.
#[must_use]
pub fn per_hour(starts: Frequency) -> Shown {
    shown(in_per_hour(starts), 1, words().flow.per_hour)
}

/// A figure in the units of a system, whole.
#[must_use]
pub fn whole(given: Entry, system: UnitSystem) -> Shown {
    let given = given.shown_in(system);
    shown(given.value, 0, unit_name(given.unit))
}

/// A plain figure, as it is written in a list.
#[must_use]
pub fn plain_figure(value: f64) -> String {
    super::number::figure_of(value, 3)
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
    format!("{}{NO_BREAK}{}", size.name(), unit_name(Unit::Inch))
}

#[cfg(test)]
mod tests {
    use super::*;
    use wellwright_core::quantity::{feet, gpm, hertz, psi};

    // 25 gpm = 1.577 L/s, 60 psi = 413.7 kPa, 645 ft = 196.6 m: by definition of the units.
    #[test]
    fn water_is_shown_in_either_system() {
        let both =
            |show: &dyn Fn(UnitSystem) -> Shown| [UnitSystem::Us, UnitSystem::Si].map(|system| show(system).text());
        assert_eq!(both(&|system| flow(gpm(25.0), system)), ["25\u{a0}gpm", "1.58\u{a0}L/s"]);
        assert_eq!(both(&|system| flow(gpm(4.256), system)), ["4.26\u{a0}gpm", "0.27\u{a0}L/s"]);
        assert_eq!(flow(gpm(13.9057), UnitSystem::Us).text(), "13.9\u{a0}gpm");
        assert_eq!(both(&|system| pressure(psi(60.0), system)), ["60\u{a0}psi", "414\u{a0}kPa"]);
        assert_eq!(both(&|system| head(feet(645.3), system)), ["645\u{a0}ft", "196.7\u{a0}m"]);
        assert_eq!(head(feet(41.667), UnitSystem::Us).text(), "41.7\u{a0}ft");
        let text = |value: f64| frequency(hertz(value)).text();
        assert_eq!([text(60.0), text(58.87), text(59.97)], ["60\u{a0}Hz", "58.9\u{a0}Hz", "60\u{a0}Hz"]);
    }
}
