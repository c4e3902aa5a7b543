//! A rotary phase converter: its size, what it wastes while nothing runs, how uneven its lines are.

use crate::error::OutsideRange;
use crate::quantity::{Power, in_horsepower, in_watts, watts};

/// Idler over motor for a pump, which starts under load.
pub const IDLER_RATIO: f64 = 1.5;
/// Power that an idler takes while nothing runs, over its rating; 3 to 8 % are met.
pub const IDLE_SHARE: f64 = 0.05;
/// Voltage unbalance at the motor at full load; 1 to 5 % are met. The chapter of the pump derates the motor by it.
pub const UNBALANCE: f64 = 0.03;

/// Rated power that the converter's idler needs: ratio · motor.
///
/// # Units
/// Powers.
/// # Range
/// Motor above 0 to 250 hp; ratio 1 to 3.
/// # Errors
/// [`OutsideRange`] names `motor` (hp) or `ratio`.
/// # Source
/// Common practice, no single source: 1.5 to 2 times a motor that starts under load.
pub fn idler_power(motor: Power, ratio: f64) -> Result<Power, OutsideRange> {
    OutsideRange::check("motor", in_horsepower(motor), 1e-3, 250.0)?;
    Ok(motor * OutsideRange::check("ratio", ratio, 1.0, 3.0)?)
}

/// Power that the converter takes while nothing runs: share · idler.
///
/// # Units
/// Powers.
/// # Range
/// Idler 0 to 1 MW; share 0 to 0.3.
/// # Errors
/// [`OutsideRange`] names `idler` (W) or `share`.
/// # Source
/// Common practice, no single source.
pub fn idle_loss(idler: Power, share: f64) -> Result<Power, OutsideRange> {
    let idler = OutsideRange::check("idler", in_watts(idler), 0.0, 1e6)?;
    Ok(watts(idler * OutsideRange::check("share", share, 0.0, 0.3)?))
}
