//! What a pump can do against a shut valve.

use crate::error::OutsideRange;
use crate::quantity::{Length, MassDensity, Pressure, psi};
use crate::water::head::{pressure_head, pressure_of_head};

/// Highest pressure that plumbing codes let into a house without a pressure regulator. Source: [upc-608.2].
pub const HOUSE_PSI: f64 = 80.0;

/// [`HOUSE_PSI`] as a pressure.
///
/// # Units
/// Gauge pressure.
/// # Range
/// One figure.
/// # Source
/// [upc-608.2].
#[must_use]
pub fn house_limit() -> Pressure {
    psi(HOUSE_PSI)
}

/// Gauge pressure at the surface with the valve shut: p = ρ g (H_0 − h_0 − z).
///
/// The static level counts, not the pumping level: nothing is drawn. Below zero the pump does not lift the water to the
/// gauge.
///
/// # Units
/// Shut-off head at full speed, static level below the datum, rise from the datum to the gauge; the result a pressure.
/// # Range
/// Each −10 to 10 km; density as [`pressure_of_head`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Hydrostatics.
/// # Example
/// ```
/// # use wellwright_core::{quantity::*, water::{dead_head::*, properties::density}};
/// let gauge = dead_head_at_gauge(feet(820.0), feet(430.0), feet(4.0), density(fahrenheit(60.0))?)?;
/// assert_eq!(in_psi(gauge).round(), 167.0);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn dead_head_at_gauge(
    shut_off: Length,
    static_level: Length,
    rise: Length,
    density: MassDensity,
) -> Result<Pressure, OutsideRange> {
    lengths(&[("shut_off", shut_off), ("static_level", static_level), ("rise", rise)])?;
    pressure_of_head(shut_off - static_level - rise, density)
}

/// Gauge pressure inside the pipe just above the pump with the valve shut: p = ρ g (H_0 + D − h_0), the shut-off head on
/// top of the water that stands above the pump.
///
/// What the pipe itself holds back is less by that water outside of it: [`dead_head_on_pipe`].
///
/// # Units
/// Shut-off head at full speed, pump setting and static level below the datum; the result a pressure.
/// # Range
/// Each −10 to 10 km; density as [`pressure_of_head`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Hydrostatics.
pub fn dead_head_at_pump(
    shut_off: Length,
    setting: Length,
    static_level: Length,
    density: MassDensity,
) -> Result<Pressure, OutsideRange> {
    lengths(&[("shut_off", shut_off), ("setting", setting), ("static_level", static_level)])?;
    pressure_of_head(shut_off + setting - static_level, density)
}

/// Most that the drop pipe holds back with the valve shut: p = ρ g H_0, at every depth under the static level; less above.
///
/// # Units
/// Shut-off head at full speed; the result a difference of pressures.
/// # Range
/// As [`pressure_of_head`]. The pump hangs under water.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Hydrostatics: inside and outside rise alike with depth.
pub fn dead_head_on_pipe(shut_off: Length, density: MassDensity) -> Result<Pressure, OutsideRange> {
    pressure_of_head(shut_off, density)
}

/// True where the pump alone can burst the weakest part: a relief valve for its full flow belongs before any valve.
/// Equality passes.
///
/// # Units
/// Gauge pressures at the same place.
/// # Range
/// Any.
/// # Source
/// Comparison.
#[must_use]
pub fn needs_relief(dead_head: Pressure, least_rating: Pressure) -> bool {
    dead_head > least_rating
}

/// Head that the pump works against while a relief valve at the gauge holds its set pressure: H = h + z + p/(ρ g). The flow
/// at this head on the pump's curve is what the valve has to pass; friction is left out, which makes it larger.
///
/// # Units
/// Level in the well and rise to the valve; set pressure; the result head.
/// # Range
/// Levels −10 to 10 km; the rest as [`pressure_head`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Hydrostatics.
pub fn relief_head(
    level: Length,
    rise: Length,
    set_pressure: Pressure,
    density: MassDensity,
) -> Result<Length, OutsideRange> {
    lengths(&[("level", level), ("rise", rise)])?;
    Ok(level + rise + pressure_head(set_pressure, density)?)
}

fn lengths(given: &[(&'static str, Length)]) -> Result<(), OutsideRange> {
    given.iter().try_for_each(|(name, length)| OutsideRange::check(name, length.value, -1e4, 1e4).map(|_| ()))
}
