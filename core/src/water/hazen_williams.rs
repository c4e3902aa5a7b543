//! Friction by the formula of Hazen and Williams, as the trade's tables have it.

use crate::error::OutsideRange;
use crate::quantity::{Length, VolumeRate, in_gpm, in_inches};

/// Head lost in a straight pipe (Hazen-Williams), in the form by which the trade's tables of friction are worked out:
/// h/L = 0.002083 (100/C)^1.852 Q^1.852 / d^4.8655, with Q in gpm and d in inches.
///
/// The law itself, v = 1.318 C R^0.63 S^0.54 in feet and seconds, gives 1 to 2 % less in pipe of 1/2 to 12 in.
///
/// # Units
/// Flow, true inside diameter, length; `c` the coefficient of the pipe, dimensionless by custom; the result head.
/// # Range
/// Flow 0 to 2 m³/s; diameter 5 mm to 2 m; length 0 to 100 km; C 40 to 160. Water near 60 °F in turbulent flow only: it
/// knows neither temperature nor roughness, and reads some 10 % low in half-inch plastic pipe.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [williams-hazen-1933].
/// # Example
/// ```
/// # use wellwright_core::{quantity::*, water::hazen_williams::*};
/// let head = hazen_williams_loss(gpm(300.0), inches(4.026), feet(100.0), 140.0)?;
/// assert!((in_feet(head) - 4.928).abs() < 0.001);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn hazen_williams_loss(
    flow: VolumeRate,
    inside_diameter: Length,
    length: Length,
    c: f64,
) -> Result<Length, OutsideRange> {
    OutsideRange::check("flow", flow.value, 0.0, 2.0)?;
    OutsideRange::check("inside_diameter", inside_diameter.value, 0.005, 2.0)?;
    OutsideRange::check("length", length.value, 0.0, 1e5)?;
    let c = OutsideRange::check("c", c, 40.0, 160.0)?;
    let slope = 0.002_083 * (100.0 / c * in_gpm(flow)).powf(1.852) / in_inches(inside_diameter).powf(4.8655);
    Ok(length * slope)
}
