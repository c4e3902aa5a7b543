//! Power in the water, at the shaft, and what is assumed of a pump without a curve.

use super::affinity::check_ratio;
use super::curve::PumpCurve;
use crate::error::OutsideRange;
use crate::quantity::{
    Length, MassDensity, Power, VolumeRate, horsepower, in_feet, in_gpm, in_kilograms_per_cubic_meter, in_watts,
    standard_gravity, watts,
};
use uom::si::volume_rate::cubic_meter_per_second;

/// Parts that a stretch between two points of a curve is searched in for its largest power.
const PARTS: u32 = 16;

/// Power that water takes up: P = ρ g Q H.
///
/// # Units
/// `density` of the water, `flow`, `head`; the result a power.
/// # Range
/// Density 500 to 1,500 kg/m³; flow 0 to 100 m³/s; head 0 to 10 km.
/// # Errors
/// [`OutsideRange`] names `density`, `flow` or `head` (SI units).
/// # Source
/// First principles; standard gravity of [nist-sp-811].
pub fn water_power(density: MassDensity, flow: VolumeRate, head: Length) -> Result<Power, OutsideRange> {
    let density = OutsideRange::check("density", in_kilograms_per_cubic_meter(density), 500.0, 1500.0)?;
    let flow = OutsideRange::check("flow", flow.value, 0.0, 100.0)?;
    let head = OutsideRange::check("head", head.value, 0.0, 1e4)?;
    Ok(watts(density * standard_gravity().value * flow * head))
}

/// Power at a pump's shaft: P = P_water / η.
///
/// # Units
/// `water` a power, `efficiency` of the pump alone, a share; the result a power.
/// # Range
/// Water power 0 to 10 MW; efficiency 0.01 to 1.
/// # Errors
/// [`OutsideRange`] names `water` (W) or `efficiency`.
/// # Source
/// Definition of efficiency.
/// # Example
/// ```
/// # use wellwright_core::{pump::power::*, quantity::*};
/// let water = water_power(kilograms_per_cubic_meter(999.017), gpm(25.0), feet(647.35))?;
/// assert!((in_horsepower(shaft_power(water, 0.60)?) - 6.8145).abs() < 0.00005);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn shaft_power(water: Power, efficiency: f64) -> Result<Power, OutsideRange> {
    let water = OutsideRange::check("water", in_watts(water), 0.0, 1e7)?;
    let efficiency = OutsideRange::check("efficiency", efficiency, 0.01, 1.0)?;
    Ok(watts(water / efficiency))
}

/// Shaft power as the trade works it, to be shown beside the exact one: hp = gpm · ft · SG / (3960 η).
///
/// # Units
/// `flow`, `head`; specific gravity and efficiency dimensionless; the result a power.
/// # Range
/// Flow 0 to 100 m³/s; head 0 to 10 km; specific gravity 0.5 to 1.5; efficiency 0.01 to 1. Within 0.2 % of the exact
/// power of cold water.
/// # Errors
/// [`OutsideRange`] names `flow`, `head` (SI units), `specific_gravity` or `efficiency`.
/// # Source
/// [pump-handbook]; 3960 is 33,000 ft·lb/min in a horsepower over 8.33 lb in a gallon, rounded.
pub fn trade_shaft_power(
    flow: VolumeRate,
    head: Length,
    specific_gravity: f64,
    efficiency: f64,
) -> Result<Power, OutsideRange> {
    OutsideRange::check("flow", flow.value, 0.0, 100.0)?;
    OutsideRange::check("head", head.value, 0.0, 1e4)?;
    let gravity = OutsideRange::check("specific_gravity", specific_gravity, 0.5, 1.5)?;
    let efficiency = OutsideRange::check("efficiency", efficiency, 0.01, 1.0)?;
    Ok(horsepower(in_gpm(flow) * in_feet(head) * gravity / (3960.0 * efficiency)))
}

/// Efficiency from the supply to the water: η = P_water / P_input.
///
/// # Units
/// Powers; the result a share.
/// # Range
/// Water power 0 to 10 MW; input above 0 to 10 MW, and not below the water's.
/// # Errors
/// [`OutsideRange`] names `water` or `input` (W).
/// # Source
/// Definition of efficiency.
pub fn overall_efficiency(water: Power, input: Power) -> Result<f64, OutsideRange> {
    let water = OutsideRange::check("water", in_watts(water), 0.0, 1e7)?;
    let input = OutsideRange::check("input", in_watts(input), water.max(1e-3), 1e7)?;
    Ok(water / input)
}

/// Shaft power of a pump at a flow and a speed: P = r³ p(Q / r), with p the power at rated speed; `None` where the curve
/// tells neither efficiency nor power.
///
/// # Units
/// `flow` at that speed; `ratio` that speed over the rated one; `density` of the water; the result a power.
/// # Range
/// Ratio 0.1 to 2.5, close from about half speed up; Q / r within the curve's flows; density 500 to 1,500 kg/m³.
/// # Errors
/// [`OutsideRange`] names `ratio`, `density` (kg/m³), or `flow` as it is at rated speed (m³/s).
/// # Source
/// [pump-handbook], the third affinity law.
pub fn shaft_power_of(
    curve: &PumpCurve,
    flow: VolumeRate,
    ratio: f64,
    density: MassDensity,
) -> Result<Option<Power>, OutsideRange> {
    let r = check_ratio(ratio)?;
    curve.shaft_power(flow / r, density).map(|power| power.map(|power| power * (r * r * r)))
}

/// The largest shaft power of a pump at a speed, anywhere on its curve, and the flow where it stands; `None` where the
/// curve tells neither efficiency nor power. It bounds the motor's load at that speed and below.
///
/// # Units
/// `ratio` the speed over the rated one; `density` of the water; the results a flow at that speed and a power.
/// # Range
/// Ratio 0.1 to 2.5; density 500 to 1,500 kg/m³. Every peak that shows among sixteenths of the
/// stretches between points is found to 1 part in 10⁹.
/// # Errors
/// [`OutsideRange`] names `ratio` or `density` (kg/m³).
/// # Source
/// [pump-handbook], the third affinity law; search by golden section.
pub fn largest_shaft_power(
    curve: &PumpCurve,
    ratio: f64,
    density: MassDensity,
) -> Result<Option<(VolumeRate, Power)>, OutsideRange> {
    let r = check_ratio(ratio)?;
    let power = |flow: f64| {
        let power = curve.shaft_power(VolumeRate::new::<cubic_meter_per_second>(flow), density)?;
        Ok::<Option<f64>, OutsideRange>(power.map(in_watts))
    };
    let flows = stations(curve);
    let mut powers = Vec::with_capacity(flows.len());
    for flow in &flows {
        let Some(here) = power(*flow)? else { return Ok(None) };
        powers.push(here);
    }
    let mut best = (0.0, 0.0);
    for (index, (&flow, &here)) in flows.iter().zip(&powers).enumerate() {
        let (before, after) = (index.saturating_sub(1), (index + 1).min(flows.len() - 1));
        // A curve may have several peaks; each is looked at between the stations beside it.
        if here >= powers[before] && here >= powers[after] {
            let peak = golden(flows[before], flows[after], |flow| Ok(power(flow)?.unwrap_or(here)))?;
            for (flow, power) in [(flow, here), (peak, power(peak)?.unwrap_or(here))] {
                best = if power > best.1 { (flow, power) } else { best };
            }
        }
    }
    Ok(Some((VolumeRate::new::<cubic_meter_per_second>(best.0) * r, watts(best.1) * (r * r * r))))
}

/// Efficiency assumed of a pump whose curve is not known: 0.60 below 50 gpm, 0.68 from there to 200 gpm, 0.75 above. An
/// assumption, to be shown as one.
///
/// A flow within 10⁻⁹ of a limit is that limit, so that a change of units never moves it across.
///
/// # Units
/// `flow` at the operating point; the result a share.
/// # Range
/// Flow 0 to 20,000 gpm, near the pump's best efficiency.
/// # Errors
/// [`OutsideRange`] names `flow` (gpm).
/// # Source
/// Common practice, no single source.
pub fn assumed_efficiency(flow: VolumeRate) -> Result<f64, OutsideRange> {
    let flow = OutsideRange::check("flow", in_gpm(flow), 0.0, 20_000.0 * (1.0 + 1e-9))?;
    Ok(match flow {
        flow if flow < 50.0 * (1.0 - 1e-9) => 0.60,
        flow if flow <= 200.0 * (1.0 + 1e-9) => 0.68,
        _ => 0.75,
    })
}

/// Flows at rated speed to look at: the points and parts of the stretches between.
fn stations(curve: &PumpCurve) -> Vec<f64> {
    let points = curve.points();
    let between = points.windows(2).flat_map(|pair| {
        let (from, to) = (pair[0].flow.value, pair[1].flow.value);
        (0..PARTS).map(move |part| from + (to - from) * f64::from(part) / f64::from(PARTS))
    });
    between.chain(points.last().map(|point| point.flow.value)).collect()
}

/// Where a function of one peak between two ends has it.
fn golden(low: f64, high: f64, value: impl Fn(f64) -> Result<f64, OutsideRange>) -> Result<f64, OutsideRange> {
    let share = (5f64.sqrt() - 1.0) / 2.0;
    let (mut low, mut high) = (low, high);
    for _ in 0..60 {
        let width = share * (high - low);
        let (left, right) = (high - width, low + width);
        if value(left)? > value(right)? { high = right } else { low = left }
    }
    Ok(0.5 * (low + high))
}
