//! What stops the motor before it is hurt.

use crate::error::OutsideRange;
use crate::quantity::{ElectricCurrent, Pressure, amperes, in_amperes, in_psi, psi};

/// Least service factor that allows the larger overload setting.
const LARGER_FROM: f64 = 1.15;
/// Share of the current at the duty below which the pump is taken for dry, and how far that may be moved: common practice,
/// no single source.
pub const DRY: f64 = 0.75;
/// See [`DRY`].
pub const DRY_RANGE: [f64; 2] = [0.60, 0.85];
/// Share of the way from the setpoint to the least rating at which high pressure stops the pump: common practice, no
/// single source.
pub const HIGH: f64 = 0.5;

/// Largest setting of a separate overload device: 125 % of the nameplate's amperes where the service factor is 1.15 or
/// more, else 115 %.
///
/// # Units
/// Nameplate current; service factor dimensionless; the result a current.
/// # Range
/// Nameplate 0 to 10,000 A; service factor 1 to 1.4. A motor marked for 40 °C rise or less may have 125 % too; a
/// submersible motor needs a quick-trip device (class 10) whatever the setting.
/// # Errors
/// [`OutsideRange`] names `nameplate` (A) or `service_factor`.
/// # Source
/// [nec-2023-430.32].
/// # Example
/// ```
/// # use wellwright_core::{quantity::*, startup::protection::overload};
/// assert_eq!(in_amperes(overload(amperes(12.0), 1.15)?), 15.0);
/// assert!((in_amperes(overload(amperes(20.0), 1.0)?) - 23.0).abs() < 1e-12);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn overload(nameplate: ElectricCurrent, service_factor: f64) -> Result<ElectricCurrent, OutsideRange> {
    let nameplate = OutsideRange::check("nameplate", in_amperes(nameplate), 0.0, 1e4)?;
    let factor = OutsideRange::check("service_factor", service_factor, 1.0, 1.4)?;
    Ok(amperes(nameplate * if factor >= LARGER_FROM { 1.25 } else { 1.15 }))
}

/// Current below which the pump is taken for dry: 0.75 of what the motor draws at the duty.
///
/// # Units
/// Currents.
/// # Range
/// Current at the duty 0 to 10,000 A. It holds at the speed of the duty; a drive that compares power, or learns the
/// load at several speeds, does better.
/// # Errors
/// [`OutsideRange`] names `running` (A).
/// # Source
/// [practice].
pub fn dry_run(running: ElectricCurrent) -> Result<ElectricCurrent, OutsideRange> {
    Ok(amperes(DRY * OutsideRange::check("running", in_amperes(running), 0.0, 1e4)?))
}

/// Pressure at which the pump is stopped: halfway from the setpoint to the least rating.
///
/// # Units
/// Gauge pressures.
/// # Range
/// Rating 1 to 10,000 psi; setpoint 0 to the rating. It is no relief valve: that stands whatever the drive does.
/// # Errors
/// [`OutsideRange`] names `rating` or `setpoint` (psi).
/// # Source
/// [practice].
pub fn high_pressure(setpoint: Pressure, rating: Pressure) -> Result<Pressure, OutsideRange> {
    let rating = OutsideRange::check("rating", in_psi(rating), 1.0, 1e4)?;
    let setpoint = OutsideRange::check("setpoint", in_psi(setpoint), 0.0, rating)?;
    Ok(psi(setpoint + HIGH * (rating - setpoint)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn arguments_outside_are_named() {
        assert_eq!(overload(amperes(-1.0), 1.0).unwrap_err().argument, "nameplate");
        assert_eq!(overload(amperes(1.0), 0.9).unwrap_err().argument, "service_factor");
        assert_eq!(dry_run(amperes(f64::NAN)).unwrap_err().argument, "running");
        assert_eq!(high_pressure(psi(60.0), psi(50.0)).unwrap_err().argument, "setpoint");
        assert_eq!(high_pressure(psi(60.0), psi(0.0)).unwrap_err().argument, "rating");
    }

    #[test]
    fn the_service_factor_of_the_rule_is_inside() {
        assert_eq!(in_amperes(overload(amperes(100.0), 1.15).unwrap()), 125.0);
        assert!((in_amperes(overload(amperes(100.0), 1.1499).unwrap()) - 115.0).abs() < 1e-9);
    }
}
