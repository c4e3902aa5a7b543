//! Quantities of water and of the pump, to the digits that the eye needs.

use super::quantity::{Shown, shown, unit_name};
use wellwright_core::quantity::{
    Frequency, Length, Pressure, Unit, UnitSystem, VolumeRate, in_feet, in_gpm, in_hertz, in_kilopascals,
    in_liters_per_second, in_meters, in_psi,
};

/// A flow: whole gallons a minute, below ten with tenths unless they are nought; tenths of a liter a second, hundredths
/// below ten.
#[must_use]
pub fn flow(flow: VolumeRate, system: UnitSystem) -> Shown {
    match system {
        UnitSystem::Us => {
            let value = in_gpm(flow);
            let tenths = value.abs() < 9.95 && (value - value.round()).abs() >= 0.05;
            shown(value, usize::from(tenths), unit_name(Unit::GallonPerMinute))
        }
        UnitSystem::Si => {
            let value = in_liters_per_second(flow);
            shown(value, 1 + usize::from(value.abs() < 9.995), unit_name(Unit::LiterPerSecond))
        }
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

/// A frequency: tenths, whole ones without.
#[must_use]
pub fn frequency(frequency: Frequency) -> Shown {
    let value = in_hertz(frequency);
    let whole = (value - value.round()).abs() < 0.05;
    shown(value, usize::from(!whole), unit_name(Unit::Hertz))
}

/// A head: whole feet, tenths of a meter.
#[must_use]
pub fn head(head: Length, system: UnitSystem) -> Shown {
    match system {
        UnitSystem::Us => shown(in_feet(head), 0, unit_name(Unit::Foot)),
        UnitSystem::Si => shown(in_meters(head), 1, unit_name(Unit::Meter)),
    }
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
        assert_eq!(both(&|system| flow(gpm(4.25), system)), ["4.2\u{a0}gpm", "0.27\u{a0}L/s"]);
        assert_eq!(flow(gpm(5.0), UnitSystem::Us).text(), "5\u{a0}gpm");
        assert_eq!(both(&|system| pressure(psi(60.0), system)), ["60\u{a0}psi", "414\u{a0}kPa"]);
        assert_eq!(both(&|system| head(feet(645.0), system)), ["645\u{a0}ft", "196.6\u{a0}m"]);
        let text = |value: f64| frequency(hertz(value)).text();
        assert_eq!([text(60.0), text(58.87), text(59.97)], ["60\u{a0}Hz", "58.9\u{a0}Hz", "60\u{a0}Hz"]);
    }
}
