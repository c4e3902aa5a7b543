//! Unequal volts or amperes on a motor's three lines, and what the motor may carry then.

use crate::error::OutsideRange;
use crate::quantity::{ElectricCurrent, ElectricPotential, Power, in_amperes, in_volts};
use crate::standards::unbalance::{MOST_PERCENT, derating_factor};

/// Voltage unbalance of three line-to-line voltages: the largest deviation from the mean over the mean.
///
/// # Units
/// Voltages; the result a share.
/// # Range
/// Each 1 to 100,000 V.
/// # Errors
/// [`OutsideRange`] names `voltage` (V) that is outside.
/// # Source
/// [nema-mg1-14.36].
/// # Example
/// ```
/// # use wellwright_core::{pump::unbalance::*, quantity::*};
/// let share = voltage_unbalance([462.0, 463.0, 455.0].map(volts))?;
/// assert!((100.0 * share - 1.087).abs() < 0.0005);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn voltage_unbalance(voltages: [ElectricPotential; 3]) -> Result<f64, OutsideRange> {
    unbalance("voltage", voltages.map(in_volts), 1.0)
}

/// Current unbalance of three line currents: the largest deviation from the mean over the mean.
///
/// # Units
/// Currents; the result a share: 2 where one line carries all.
/// # Range
/// Each 0 to 100,000 A, together at least 0.001 A.
/// # Errors
/// [`OutsideRange`] names `current` (A) that is outside, or `mean`.
/// # Source
/// The definition of [nema-mg1-14.36], used for currents as the trade does (common practice).
pub fn current_unbalance(currents: [ElectricCurrent; 3]) -> Result<f64, OutsideRange> {
    unbalance("current", currents.map(in_amperes), 0.0)
}

/// What a motor may carry under unbalanced voltages: its rated power times the factor of figure 14-1.
///
/// # Units
/// `rated` power; `unbalance` a share; the result a power.
/// # Range
/// Unbalance 0 to 0.05; to 0.01 nothing is taken off, and beyond 0.05 no motor should run. The factor is good to 0.015.
/// # Errors
/// [`OutsideRange`] names `unbalance`.
/// # Source
/// [nema-mg1-14.36].
pub fn derated_power(rated: Power, unbalance: f64) -> Result<Power, OutsideRange> {
    let outside = OutsideRange { argument: "unbalance", given: unbalance, min: 0.0, max: MOST_PERCENT / 100.0 };
    derating_factor(100.0 * unbalance).map(|factor| rated * factor).ok_or(outside)
}

fn unbalance(argument: &'static str, lines: [f64; 3], least: f64) -> Result<f64, OutsideRange> {
    for line in lines {
        OutsideRange::check(argument, line, least, 1e5)?;
    }
    let mean = OutsideRange::check("mean", lines.iter().sum::<f64>() / 3.0, 1e-3 / 3.0, 1e5)?;
    Ok(lines.iter().map(|line| (line - mean).abs()).fold(0.0, f64::max) / mean)
}
