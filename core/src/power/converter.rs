//! Supply conductors and device of a phase converter, by its own article of the code.

use crate::error::OutsideRange;
use crate::quantity::{ElectricCurrent, ElectricPotential, amperes, in_amperes, in_volts};
use crate::standards::overcurrent::next_standard_rating;

/// Ampacity of the conductors ahead of a converter: 1.25 times its nameplate's single-phase input current; for loads that
/// never change 2.5 times their three-phase current, times output over input volts, serves where that is less.
///
/// # Units
/// `nameplate` input current; `fixed` full-load current of the three-phase loads, `None` where other loads may be put on.
/// # Range
/// Currents 0 to 10,000 A; volts 100 to 1,000.
/// # Errors
/// [`OutsideRange`] names `nameplate`, `fixed` (A), `output` or `input` (V).
/// # Source
/// [nec-2023-455] 455.6(A).
pub fn supply_ampacity(
    nameplate: ElectricCurrent,
    fixed: Option<ElectricCurrent>,
    output: ElectricPotential,
    input: ElectricPotential,
) -> Result<ElectricCurrent, OutsideRange> {
    let variable = 1.25 * OutsideRange::check("nameplate", in_amperes(nameplate), 0.0, 1e4)?;
    let output = OutsideRange::check("output", in_volts(output), 100.0, 1000.0)?;
    let ratio = output / OutsideRange::check("input", in_volts(input), 100.0, 1000.0)?;
    let Some(fixed) = fixed else { return Ok(amperes(variable)) };
    let fixed = 2.5 * ratio * OutsideRange::check("fixed", in_amperes(fixed), 0.0, 1e4)?;
    Ok(amperes(fixed.min(variable)))
}

/// The largest device ahead of a converter: 1.25 times its nameplate's single-phase input current, or the next standard
/// rating above.
///
/// # Units
/// `nameplate` input current; the result a rating.
/// # Range
/// 0 to 4,800 A.
/// # Errors
/// [`OutsideRange`] names `nameplate` (A).
/// # Source
/// [nec-2023-455] 455.7; [nec-2023-240.6].
pub fn largest_device(nameplate: ElectricCurrent) -> Result<ElectricCurrent, OutsideRange> {
    let amps = OutsideRange::check("nameplate", in_amperes(nameplate), 0.0, 4800.0)?;
    let outside = OutsideRange { argument: "nameplate", given: amps, min: 0.0, max: 4800.0 };
    next_standard_rating(1.25 * amps).map(amperes).ok_or(outside)
}
