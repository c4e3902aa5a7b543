//! The metal that a lead needs for its drop, before real sizes come in steps.

use super::conductor::{STRAND_LAY, resistance_from_geometry};
use super::drop::Load;
use crate::error::OutsideRange;
use crate::quantity::{Area, Length, OhmsPerLength, circular_mils};
use crate::standards::conductor::{Metal, TABLE_8_AT};

/// Resistance per length of a stranded wire of an area at 75 °C, where the tables of wires give theirs.
///
/// R = ρ · lay/A · (1 + α (75 °C − 20 °C))
///
/// # Units
/// `area` of metal; the result ohms per length. The trade's K is this at one circular mil, in ohms a foot.
/// # Range
/// As [`resistance_from_geometry`].
/// # Errors
/// [`OutsideRange`] names `area` (mm²).
/// # Source
/// [iec-60028], [astm-b230], [astm-b8]; within 0.5 % of [nec-2023-ch9-t8].
pub fn warm_resistance(metal: Metal, area: Area) -> Result<OhmsPerLength, OutsideRange> {
    resistance_from_geometry(metal, area, STRAND_LAY, TABLE_8_AT)
}

/// The resistance per length that a lead may have for its drop, its reactance left out: R = d V / (k I L cos φ).
///
/// # Units
/// `length` one way; `allowed` the drop as a share of the sending voltage; the result ohms per length of one conductor.
/// # Range
/// 0 < allowed < 1; current 0.001 to 100,000 A, length 0.001 to 10⁶ m; the rest as
/// [`super::drop::voltage_drop`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [ieee-141-1993] section 3.11, the usual approximation with X = 0. Reactance only adds to the drop, so no real
/// lead gets by with more.
pub fn allowed_resistance(load: Load, length: Length, allowed: f64) -> Result<OhmsPerLength, OutsideRange> {
    let cos = OutsideRange::check("power_factor", load.power_factor, 0.01, 1.0)?;
    OutsideRange::check("current", load.current.value, 1e-3, 1e5)?;
    OutsideRange::check("sending", load.sending.value, 1.0, 1e5)?;
    OutsideRange::check("length", length.value, 1e-3, 1e6)?;
    let share = OutsideRange::check("allowed", allowed, 1e-9, 1.0 - 1e-9)?;
    Ok(load.sending * share / (load.current * load.phases.factor() * cos) / length)
}

/// The area of metal that one conductor needs for its drop, real sizes and reactance left out: A = A₀ R₀ / R.
///
/// Half the current leaves half of it; twice the voltage at the same share of drop leaves half of that again.
///
/// # Units
/// As [`allowed_resistance`]; the result an area.
/// # Range
/// As [`allowed_resistance`].
/// # Errors
/// As [`allowed_resistance`].
/// # Source
/// Resistance goes as one over the area ([`warm_resistance`]); the trade's rule A = √3 K I L / ΔV, with the power factor.
/// # Example
/// ```
/// # use wellwright_core::{cable::drop::*, cable::needed::needed_area, quantity::*, standards::conductor::Metal};
/// let load = Load { sending: volts(240.0), current: amperes(28.0), power_factor: 1.0, phases: Phases::Three };
/// let area = in_circular_mils(needed_area(load, feet(500.0), 0.05, Metal::Copper)?);
/// // √3 · 12.9 · 28 · 500 / 12
/// assert!((area / 26_067.0 - 1.0).abs() < 0.005);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn needed_area(load: Load, length: Length, allowed: f64, metal: Metal) -> Result<Area, OutsideRange> {
    let one = circular_mils(1000.0);
    Ok(one * (warm_resistance(metal, one)? / allowed_resistance(load, length, allowed)?).value)
}
