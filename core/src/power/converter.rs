//! Supply conductors and device of a phase converter, by its own article of the code.

use crate::error::OutsideRange;
use crate::quantity::{ElectricCurrent, ElectricPotential, amperes, in_amperes, in_volts};
use crate::standards::overcurrent::{next_standard_rating, standard_rating_below};

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

/// The device ahead of a converter: what protects its conductors, and never more than 1.25 times its nameplate's
/// single-phase input current; each rounded up to a standard rating.
///
/// # Units
/// `nameplate` input current; `ampacity` that the conductors must have, by [`supply_ampacity`]; the result a rating.
/// # Range
/// Nameplate 0 to 4,800 A; ampacity 0 to 6,000 A. Conductors that the rule for fixed loads lets be smaller are protected
/// at their ampacity; above 800 A the next rating up no longer protects them, and the one below is taken.
/// # Errors
/// [`OutsideRange`] names `nameplate` or `ampacity` (A).
/// # Source
/// [nec-2023-455] 455.7(A) and (B); [nec-2023-240.4] (B) and (C); [nec-2023-240.6].
pub fn device(nameplate: ElectricCurrent, ampacity: ElectricCurrent) -> Result<ElectricCurrent, OutsideRange> {
    let of_nameplate = largest_device(nameplate)?;
    let amps = OutsideRange::check("ampacity", in_amperes(ampacity), 0.0, 6000.0)?;
    let outside = OutsideRange { argument: "ampacity", given: amps, min: 0.0, max: 6000.0 };
    let protects = if amps > NEXT_RATING_UP_TO { standard_rating_below(amps) } else { next_standard_rating(amps) };
    Ok(amperes(protects.ok_or(outside)?).min(of_nameplate))
}

/// Largest device that may be the next standard rating above its conductors' ampacity, A: 240.4(B).
const NEXT_RATING_UP_TO: f64 = 800.0;

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
fn largest_device(nameplate: ElectricCurrent) -> Result<ElectricCurrent, OutsideRange> {
    let amps = OutsideRange::check("nameplate", in_amperes(nameplate), 0.0, 4800.0)?;
    let outside = OutsideRange { argument: "nameplate", given: amps, min: 0.0, max: 4800.0 };
    next_standard_rating(1.25 * amps).map(amperes).ok_or(outside)
}
