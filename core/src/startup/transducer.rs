//! A pressure transducer of two wires: 4 mA at no pressure, 20 mA at its span.

use crate::error::OutsideRange;
use crate::quantity::{ElectricCurrent, Pressure, amperes, in_amperes, in_psi, psi};

/// Current at no pressure and at the span, mA.
const ZERO: f64 = 4.0;
const FULL: f64 = 20.0;

/// Current of a transducer at a pressure: I = 4 mA + 16 mA p/p_s.
///
/// # Units
/// Gauge pressures; the result a current.
/// # Range
/// Span 1 to 10,000 psi; pressure 0 to the span.
/// # Errors
/// [`OutsideRange`] names `span` or `pressure` (psi).
/// # Source
/// The live-zero loop of [isa-50.00.01].
/// # Example
/// ```
/// # use wellwright_core::{quantity::*, startup::transducer::signal};
/// let current = signal(psi(60.0), psi(150.0))?;
/// assert!((in_amperes(current) * 1000.0 - 10.4).abs() < 1e-9);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn signal(pressure: Pressure, span: Pressure) -> Result<ElectricCurrent, OutsideRange> {
    let span = OutsideRange::check("span", in_psi(span), 1.0, 1e4)?;
    let pressure = OutsideRange::check("pressure", in_psi(pressure), 0.0, span)?;
    Ok(amperes((ZERO + (FULL - ZERO) * pressure / span) / 1000.0))
}

/// Pressure that a transducer's current tells: p = p_s (I − 4 mA)/16 mA.
///
/// # Units
/// Gauge pressures and a current.
/// # Range
/// Span 1 to 10,000 psi; current 4 to 20 mA: less is a broken wire, more a pressure beyond the span.
/// # Errors
/// [`OutsideRange`] names `span` (psi) or `current` (mA).
/// # Source
/// [`signal`] solved for the pressure.
pub fn pressure_of(current: ElectricCurrent, span: Pressure) -> Result<Pressure, OutsideRange> {
    let span = OutsideRange::check("span", in_psi(span), 1.0, 1e4)?;
    let current = OutsideRange::check("current", in_amperes(current) * 1000.0, ZERO, FULL)?;
    Ok(psi(span * (current - ZERO) / (FULL - ZERO)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn arguments_outside_are_named() {
        let wrong = |pressure: f64, span: f64| signal(psi(pressure), psi(span)).unwrap_err().argument;
        assert_eq!(wrong(-1.0, 150.0), "pressure");
        assert_eq!(wrong(151.0, 150.0), "pressure");
        assert_eq!(wrong(f64::NAN, 150.0), "pressure");
        assert_eq!(wrong(60.0, 0.0), "span");
        let back = |milliamperes: f64| pressure_of(amperes(milliamperes / 1000.0), psi(150.0));
        assert_eq!(back(3.9).unwrap_err().argument, "current");
        assert_eq!(back(20.1).unwrap_err().argument, "current");
        assert!((in_psi(back(10.4).unwrap()) - 60.0).abs() < 1e-9);
    }
}
