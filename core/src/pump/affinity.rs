//! A pump at another speed: flow in proportion, head with the square, power with the cube.
//!
//! Speed is told by the ratio r of the motor's frequency to the one that the curve was measured at; slip is taken to
//! change with it. Efficiency goes along with its flow unchanged, which is close down to about half speed.

use super::curve::{CurveError, Point, PumpCurve};
use crate::error::OutsideRange;
use crate::quantity::{Frequency, Length, Power, VolumeRate, in_hertz};

/// Least and largest speed ratio: 10 to 120 Hz of a motor for 50 or 60 Hz, and a little.
pub const RATIO: (f64, f64) = (0.1, 2.5);

/// Speed ratio of a frequency: r = f / f_rated.
///
/// # Units
/// Frequencies; the result a ratio.
/// # Range
/// Rated 10 to 400 Hz; ratio 0.1 to 2.5.
/// # Errors
/// [`OutsideRange`] names `rated` (Hz) or `ratio`.
/// # Source
/// [pump-handbook]; the speed of an induction motor follows its frequency, slip in proportion.
pub fn speed_ratio(frequency: Frequency, rated: Frequency) -> Result<f64, OutsideRange> {
    let rated = OutsideRange::check("rated", in_hertz(rated), 10.0, 400.0)?;
    check_ratio(in_hertz(frequency) / rated)
}

/// Lets a speed ratio that the laws are used for through.
pub(super) fn check_ratio(ratio: f64) -> Result<f64, OutsideRange> {
    OutsideRange::check("ratio", ratio, RATIO.0, RATIO.1)
}

/// Flow at another speed: Q₂ = r Q₁.
///
/// # Units
/// `flow` at the first speed; `ratio` the second speed over the first.
/// # Range
/// Ratio 0.1 to 2.5.
/// # Errors
/// [`OutsideRange`] names `ratio`.
/// # Source
/// [pump-handbook], the first affinity law.
pub fn flow_at(flow: VolumeRate, ratio: f64) -> Result<VolumeRate, OutsideRange> {
    check_ratio(ratio).map(|r| flow * r)
}

/// Head at another speed: H₂ = r² H₁.
///
/// # Units
/// `head` at the first speed; `ratio` the second speed over the first.
/// # Range
/// Ratio 0.1 to 2.5.
/// # Errors
/// [`OutsideRange`] names `ratio`.
/// # Source
/// [pump-handbook], the second affinity law.
pub fn head_at(head: Length, ratio: f64) -> Result<Length, OutsideRange> {
    check_ratio(ratio).map(|r| head * (r * r))
}

/// Shaft power at another speed: P₂ = r³ P₁.
///
/// # Units
/// `power` at the first speed; `ratio` the second speed over the first.
/// # Range
/// Ratio 0.1 to 2.5.
/// # Errors
/// [`OutsideRange`] names `ratio`.
/// # Source
/// [pump-handbook], the third affinity law.
/// # Example
/// ```
/// # use wellwright_core::{pump::affinity::*, quantity::*};
/// let power = power_at(kilowatts(45.0), 3600.0 / 1800.0)?;
/// assert_eq!(in_watts(power), 360_000.0);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn power_at(power: Power, ratio: f64) -> Result<Power, OutsideRange> {
    check_ratio(ratio).map(|r| power * (r * r * r))
}

/// Head of a pump at a flow and a speed: H = r² h(Q / r), with h the curve at rated speed.
///
/// # Units
/// `flow` at that speed; `ratio` that speed over the rated one; the result a length.
/// # Range
/// Ratio 0.1 to 2.5; Q / r within the curve's flows.
/// # Errors
/// [`OutsideRange`] names `ratio`, or `flow` as it is at rated speed (m³/s).
/// # Source
/// [pump-handbook], the affinity laws.
pub fn head_of(curve: &PumpCurve, flow: VolumeRate, ratio: f64) -> Result<Length, OutsideRange> {
    let r = check_ratio(ratio)?;
    curve.head(flow / r).map(|head| head * (r * r))
}

/// Efficiency of a pump at a flow and a speed: η(Q / r); `None` where the curve tells none.
///
/// # Units
/// `flow` at that speed; `ratio` that speed over the rated one; the result a share.
/// # Range
/// Ratio 0.1 to 2.5, close from about half speed up; Q / r within the curve's flows.
/// # Errors
/// [`OutsideRange`] names `ratio`, or `flow` as it is at rated speed (m³/s).
/// # Source
/// [pump-handbook], the affinity laws.
pub fn efficiency_of(curve: &PumpCurve, flow: VolumeRate, ratio: f64) -> Result<Option<f64>, OutsideRange> {
    curve.efficiency(flow / check_ratio(ratio)?)
}

/// The whole curve at another speed.
///
/// # Units
/// `ratio` the speed over the rated one.
/// # Range
/// Ratio 0.1 to 2.5.
/// # Errors
/// [`CurveError`] names `ratio`, or the point that leaves the range of curves at that speed.
/// # Source
/// [pump-handbook], the affinity laws.
pub fn curve_at(curve: &PumpCurve, ratio: f64) -> Result<PumpCurve, CurveError> {
    let r = check_ratio(ratio).map_err(CurveError::Speed)?;
    let point = |point: &Point| Point {
        flow: point.flow * r,
        head: point.head * (r * r),
        efficiency: point.efficiency,
        power: point.power.map(|power| power * (r * r * r)),
    };
    PumpCurve::new(curve.points().iter().map(point).collect())
}
