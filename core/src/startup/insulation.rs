//! Resistance of insulation to ground, tested with direct volts for a minute.

use crate::error::OutsideRange;
use crate::quantity::{Celsius, ElectricalResistance, in_ohms, ohms};

/// Least resistance of a new motor with its cable in the well, Ω: common practice, no single source. A winding alone, below
/// 1 kV, has [`LEAST_AT_40`].
pub const LEAST_IN_WELL: f64 = 2e6;
/// Least resistance at 40 °C of a random winding below 1 kV, by itself, Ω: [ieee-43].
pub const LEAST_AT_40: f64 = 5e6;
/// Resistance below which nobody may start, Ω: common practice, no single source.
pub const STOP: f64 = 0.5e6;
/// Share of the resistance before lowering that may be lost on the way down: common practice, no single source.
pub const MOST_LOST: f64 = 0.9;

/// Resistance of insulation at 40 °C, from a test at another temperature: it halves for every 10 °C up,
/// R_40 = R 2^((T − 40 °C)/10 °C).
///
/// # Units
/// Resistance; temperature of the winding; the result a resistance.
/// # Range
/// Resistance 0 to 10¹² Ω; winding −20 to 120 °C. The rule is that of older thermoplastic insulation; newer keeps more
/// of its resistance, and the standard's later edition has curves by kind.
/// # Errors
/// [`OutsideRange`] names `resistance` (Ω) or `winding` (°C).
/// # Source
/// [ieee-43].
/// # Example
/// ```
/// # use wellwright_core::{quantity::*, startup::insulation::at_40};
/// assert!((in_ohms(at_40(ohms(100e6), Celsius(20.0))?) - 25e6).abs() < 1.0);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn at_40(resistance: ElectricalResistance, winding: Celsius) -> Result<ElectricalResistance, OutsideRange> {
    let resistance = OutsideRange::check("resistance", in_ohms(resistance), 0.0, 1e12)?;
    let winding = OutsideRange::check("winding", winding.0, -20.0, 120.0)?;
    Ok(ohms(resistance * ((winding - 40.0) / 10.0).exp2()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn arguments_outside_are_named() {
        let wrong = |resistance: f64, winding: f64| at_40(ohms(resistance), Celsius(winding)).unwrap_err().argument;
        assert_eq!(wrong(-1.0, 20.0), "resistance");
        assert_eq!(wrong(f64::NAN, 20.0), "resistance");
        assert_eq!(wrong(1e6, 121.0), "winding");
    }
}
