//! Where a pump and a system meet, and the speed that makes them meet where it is wanted.

use super::affinity::check_ratio;
use super::curve::PumpCurve;
use crate::error::OutsideRange;
use crate::quantity::{Length, VolumeRate, meters};
use uom::si::volume_rate::cubic_meter_per_second;

/// Parts that a stretch of rising head is searched in, where a pump and a system may meet twice.
const PARTS: u32 = 16;

/// Why a pump and a system do not meet.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum NoOperatingPoint {
    /// Wherever the pump's curve is known it gives less head than the system takes; told at the pump's least flow.
    HeadShort {
        /// The least flow at that speed.
        flow: VolumeRate,
        /// Head of the pump there.
        pump: Length,
        /// Head that the system takes there.
        system: Length,
    },
    /// At the end of its curve the pump still gives more head than the system takes.
    BeyondRunOut {
        /// The largest flow at that speed.
        flow: VolumeRate,
        /// Head of the pump there.
        pump: Length,
        /// Head that the system takes there.
        system: Length,
    },
    /// The curve begins above zero flow: its shut-off head is not known.
    NoShutOff {
        /// Least flow of the curve.
        first: VolumeRate,
    },
    /// A figure outside the range of a formula, the system's own formulas included.
    Outside(OutsideRange),
}

impl From<OutsideRange> for NoOperatingPoint {
    fn from(outside: OutsideRange) -> Self {
        Self::Outside(outside)
    }
}

/// A system of one static head and one law of loss: H = H₀ + k (Q / Q₀)ⁿ.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SystemCurve {
    /// Head at no flow: lift and pressure; below zero where water runs by itself.
    pub static_head: Length,
    /// Head lost at the flow `at`.
    pub loss: Length,
    /// The flow that `loss` belongs to.
    pub at: VolumeRate,
    /// Exponent of the loss: 2 for rough pipes and fittings, 1.852 after Hazen-Williams.
    pub exponent: f64,
}

impl SystemCurve {
    /// Head that the system takes at a flow.
    ///
    /// # Units
    /// `flow` a flow; the result a length.
    /// # Range
    /// Flow 0 to 100 m³/s; static head ±10 km; loss 0 to 10 km at a flow above 0; exponent 0.5 to 3.
    /// # Errors
    /// [`OutsideRange`] names `flow`, `static_head`, `loss`, `at` (SI units) or `exponent`.
    /// # Source
    /// [pump-handbook]: loss in proportion to a power of flow.
    pub fn head(&self, flow: VolumeRate) -> Result<Length, OutsideRange> {
        let flow = OutsideRange::check("flow", flow.value, 0.0, 100.0)?;
        let fixed = OutsideRange::check("static_head", self.static_head.value, -1e4, 1e4)?;
        let loss = OutsideRange::check("loss", self.loss.value, 0.0, 1e4)?;
        let at = OutsideRange::check("at", self.at.value, 1e-9, 100.0)?;
        let exponent = OutsideRange::check("exponent", self.exponent, 0.5, 3.0)?;
        Ok(meters(fixed + loss * (flow / at).powf(exponent)))
    }
}

/// Where a pump and a system meet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OperatingPoint {
    /// Flow.
    pub flow: VolumeRate,
    /// Head.
    pub head: Length,
    /// True where the pump at its least flow gives less than the system takes there: a drooping curve meets the system
    /// twice, and from rest the pump may not come up.
    pub short_at_least_flow: bool,
}

/// The flow and head at which a pump at a speed meets a system: r² h(Q / r) = H_system(Q).
///
/// Where they meet twice, as a drooping curve may, the larger flow is the one that holds itself.
///
/// # Units
/// `ratio` the speed over the rated one; `system` gives the head that the system takes at a flow.
/// # Range
/// Ratio 0.1 to 2.5; a system whose head does not fall as flow rises.
/// # Errors
/// [`NoOperatingPoint`] with the heads of both where they come closest to meeting, or what `system` could not compute.
/// # Source
/// Definition; [pump-handbook] for the speed.
/// # Example
/// ```
/// # use wellwright_core::{pump::{demo, operating_point::*}, quantity::*};
/// let pump = demo::HOUSE_WELL.curve().unwrap();
/// let system = SystemCurve { static_head: feet(610.0), loss: feet(33.0), at: gpm(25.0), exponent: 2.0 };
/// let point = operating_point(&pump, 1.0, |flow| system.head(flow))?;
/// assert!(in_gpm(point.flow) > 25.0 && in_gpm(point.flow) < 30.0);
/// # Ok::<(), NoOperatingPoint>(())
/// ```
pub fn operating_point(
    curve: &PumpCurve,
    ratio: f64,
    system: impl Fn(VolumeRate) -> Result<Length, OutsideRange>,
) -> Result<OperatingPoint, NoOperatingPoint> {
    let r = check_ratio(ratio)?;
    // Everything is searched at rated speed; both heads are told at the speed asked.
    let heads = |flow: f64| -> Result<(Length, Length), OutsideRange> {
        let rated = cubic_meters(flow);
        Ok((curve.head(rated)? * (r * r), system(rated * r)?))
    };
    let over = |flow: f64| heads(flow).map(|(pump, system)| (pump - system).value);
    let (least, most) = curve.flows();
    let short_at_least_flow = over(least.value)? < 0.0;
    if over(most.value)? > 0.0 {
        let (pump, system) = heads(most.value)?;
        return Err(NoOperatingPoint::BeyondRunOut { flow: most * r, pump, system });
    }
    let Some((low, high)) = last_fall(&stations(curve), over)? else {
        let (pump, system) = heads(least.value)?;
        return Err(NoOperatingPoint::HeadShort { flow: least * r, pump, system });
    };
    let flow = halve(low, high, over)?;
    Ok(OperatingPoint { flow: cubic_meters(flow) * r, head: heads(flow)?.0, short_at_least_flow })
}

/// The speed at which a pump gives a wanted flow at a wanted head: r = Q / q, where q is the flow at which the rated
/// curve crosses the parabola of similar points, h(q) = H (q / Q)²; at no flow, r = √(H / H_shut-off).
///
/// The speed for a flow through a system is that at the head which the system takes there.
///
/// # Units
/// `flow` and `head` as wanted; the result the speed over the rated one.
/// # Range
/// Flow 0, or 10⁻⁹ to 100 m³/s; head 0 to 3,000 m; the result 0.1 to 2.5. Where a curve droops so much that several
/// speeds serve, the lowest.
/// # Errors
/// [`NoOperatingPoint`]: on the parabola no point of the curve is large or small enough (told at rated speed), the
/// curve has no shut-off head, or an argument or `ratio` is outside its range.
/// # Source
/// [pump-handbook], the affinity laws.
/// # Example
/// ```
/// # use wellwright_core::{pump::{demo, operating_point::*}, quantity::*};
/// let ratio = speed_for(&demo::HOUSE_WELL.curve().unwrap(), gpm(25.0), feet(647.35))?;
/// assert!(ratio > 0.95 && ratio < 1.0);
/// # Ok::<(), NoOperatingPoint>(())
/// ```
pub fn speed_for(curve: &PumpCurve, flow: VolumeRate, head: Length) -> Result<f64, NoOperatingPoint> {
    let least_flow = if flow.value == 0.0 { 0.0 } else { 1e-9 };
    let wanted = OutsideRange::check("flow", flow.value, least_flow, 100.0)?;
    OutsideRange::check("head", head.value, 0.0, 3000.0)?;
    let (least, most) = curve.flows();
    if wanted == 0.0 {
        let shut_off = curve.shut_off_head().ok_or(NoOperatingPoint::NoShutOff { first: least })?;
        return Ok(check_ratio(lowest_speed(shut_off, meters(0.0), head)?)?);
    }
    let similar = |q: f64| head * (q / wanted) * (q / wanted);
    let over = |q: f64| curve.head(cubic_meters(q)).map(|pump| (pump - similar(q)).value);
    if over(most.value)? > 0.0 {
        let (pump, system) = (curve.head(most)?, similar(most.value));
        return Err(NoOperatingPoint::BeyondRunOut { flow: most, pump, system });
    }
    let Some((low, high)) = last_fall(&stations(curve), over)? else {
        let (pump, system) = (curve.head(least)?, similar(least.value));
        return Err(NoOperatingPoint::HeadShort { flow: least, pump, system });
    };
    Ok(check_ratio(wanted / halve(low, high, over)?)?)
}

/// The lowest useful speed: where the head at no flow just reaches static lift and pressure, r = √((z + p) / H_shut-off).
///
/// # Units
/// `shut_off` head at rated speed; `static_lift` from the static level, not the pumping level, up to the gauge;
/// `setpoint` the pressure there as a head; the result the speed over the rated one, above 1 where the rated speed does
/// not reach.
/// # Range
/// Shut-off head 0.1 to 3,000 m; lift −3,000 to 3,000 m and setpoint 0 to 3,000 m, together not below 0.
/// # Errors
/// [`OutsideRange`] names `shut_off`, `static_lift`, `setpoint`, or `required`, their sum (m).
/// # Source
/// [pump-handbook], the second affinity law.
/// # Example
/// ```
/// # use wellwright_core::{pump::operating_point::*, quantity::*};
/// let ratio = lowest_speed(feet(300.0), feet(180.0), feet(0.0))?;
/// assert!((60.0 * ratio - 46.476).abs() < 0.001);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn lowest_speed(shut_off: Length, static_lift: Length, setpoint: Length) -> Result<f64, OutsideRange> {
    let shut_off = OutsideRange::check("shut_off", shut_off.value, 0.1, 3000.0)?;
    let lift = OutsideRange::check("static_lift", static_lift.value, -3000.0, 3000.0)?;
    let setpoint = OutsideRange::check("setpoint", setpoint.value, 0.0, 3000.0)?;
    let required = OutsideRange::check("required", lift + setpoint, 0.0, 6000.0)?;
    Ok((required / shut_off).sqrt())
}

/// Flow as a share of the flow of best efficiency at the same speed: Q / (r Q_best).
///
/// # Units
/// `flow` at the speed; `ratio` that speed over the rated one; `best` the flow of best efficiency at rated speed; the
/// result a share.
/// # Range
/// Flow 0 to 100 m³/s; ratio 0.1 to 2.5; best above 0.
/// # Errors
/// [`OutsideRange`] names `flow`, `best` (m³/s) or `ratio`.
/// # Source
/// [pump-handbook]: the flow of best efficiency follows the first affinity law.
pub fn share_of_best(flow: VolumeRate, ratio: f64, best: VolumeRate) -> Result<f64, OutsideRange> {
    let flow = OutsideRange::check("flow", flow.value, 0.0, 100.0)?;
    let best = OutsideRange::check("best", best.value, 1e-9, 100.0)?;
    Ok(flow / (check_ratio(ratio)? * best))
}

fn cubic_meters(flow: f64) -> VolumeRate {
    VolumeRate::new::<cubic_meter_per_second>(flow)
}

/// Flows to look at: the points, and parts of the stretches where head rises. On a stretch where head falls and the
/// system's does not, they meet once at most.
fn stations(curve: &PumpCurve) -> Vec<f64> {
    let points = curve.points();
    let mut flows: Vec<f64> = points.first().map(|point| point.flow.value).into_iter().collect();
    for pair in points.windows(2) {
        let (from, to) = (pair[0].flow.value, pair[1].flow.value);
        if pair[1].head > pair[0].head {
            flows.extend((1..PARTS).map(|part| from + (to - from) * f64::from(part) / f64::from(PARTS)));
        }
        flows.push(to);
    }
    flows
}

/// The last two stations between which the excess falls from at least zero to at most zero.
fn last_fall(
    stations: &[f64],
    over: impl Fn(f64) -> Result<f64, OutsideRange>,
) -> Result<Option<(f64, f64)>, OutsideRange> {
    for pair in stations.windows(2).rev() {
        if over(pair[0])? >= 0.0 {
            return Ok(Some((pair[0], pair[1])));
        }
    }
    Ok(None)
}

/// Where the excess passes zero between `low`, where it is not below, and `high`, where it is not above, by halving down
/// to the last digit. The bracketed root of all chapters would stop at a zero of `low` itself and has no road for an error
/// of `over`.
fn halve(low: f64, high: f64, over: impl Fn(f64) -> Result<f64, OutsideRange>) -> Result<f64, OutsideRange> {
    let (mut low, mut high) = (low, high);
    // A thousand and some halvings pass through all numbers down to the smallest.
    for _ in 0..1100 {
        let middle = low + 0.5 * (high - low);
        if middle <= low || middle >= high {
            break;
        }
        if over(middle)? > 0.0 { low = middle } else { high = middle }
    }
    Ok(high)
}
