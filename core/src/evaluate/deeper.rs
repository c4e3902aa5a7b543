//! Cost against depth where the water itself is deeper: head, power and motor follow.
//!
//! The well is moved down whole: water at rest, pump and drop pipe by as much. Flow, drawdown and the pump's efficiency
//! stay, as of a pump with more stages of the same kind. Head is then a straight line over depth, and so is the power at
//! the shaft; each depth where it passes a standard motor is solved, not searched. The job's own motor keeps its
//! nameplate; others are taken from the table, with efficiency, power factor and device as they are assumed.

use super::cooler::Cooler;
use super::sweep::{DEEPEST_FEET, DepthRun, Stretch, Sweep, WaySweep, demands, demands_of, depth_runs};
use super::water::Water;
use crate::cable::lead::Demands;
use crate::job::{Inputs, Job, MotorCurrent, Way, provisional};
use crate::power::supply::provisional_device;
use crate::pump::motor::{MotorKind, assumed_efficiency_and_power_factor, next_standard_power, table_current};
use crate::pump::power::{shaft_power, water_power};
use crate::quantity::{ElectricCurrent, Length, Power, feet, horsepower, in_horsepower, watts};
use crate::standards::motor_current::TABLE;

/// Depth over which the slope of the power is taken.
const SPAN_FEET: f64 = 100.0;

/// The power at the shaft over depth.
#[derive(Debug, Clone, Copy)]
struct Line {
    at: Length,
    power: Power,
    rise: Power,
}

impl Line {
    fn power_at(self, depth: Length) -> Power {
        self.power + self.rise * ((depth - self.at) / feet(SPAN_FEET)).value
    }
    fn depth_of(self, power: Power) -> Length {
        self.at + feet(SPAN_FEET) * ((power - self.power) / self.rise).value
    }
}

/// A motor over a stretch of depths.
#[derive(Debug, Clone, Copy)]
struct Segment {
    motor: Power,
    from: Length,
    to: Length,
}

/// Sweeps both ways over deeper water, or `None` while the power at the shaft is not known.
pub(super) fn deeper(job: &Job, inputs: &Inputs, water: &Water, cooler: Option<Cooler>) -> Option<Sweep> {
    if job.choices.motor_kind() != MotorKind::Submersible {
        return None;
    }
    let surface_run = inputs.surface_run.as_ref().ok()?.value;
    let prices = inputs.prices.as_ref().ok()?;
    let setting = inputs.pump_setting.as_ref().ok()?.value;
    let line = line(water, setting)?;
    let shallowest = (setting - water.static_level?).max(feet(0.0));
    let segments = segments(line, shallowest);
    let one = |way| {
        let mut runs: Vec<DepthRun> = Vec::new();
        for segment in &segments {
            let from = runs.last().map_or(segment.from, |last| last.to);
            // Past the depth that a motor's lead can serve, no larger motor's can.
            if from < segment.from {
                break;
            }
            let demands = demands_for(way, job, inputs, segment.motor)?;
            let ends = cooler.map_or(from, |cooler| cooler.ends(setting).max(from).min(segment.to));
            let part = |from, to| Stretch { from, to, surface_run };
            if let Some(cooler) = cooler.filter(|_| ends > from) {
                let in_water = demands.around(cooler.water);
                runs.extend(depth_runs(&in_water, prices, segment.motor, part(from, ends))?);
            }
            if segment.to > ends || ends == from {
                runs.extend(depth_runs(&demands, prices, segment.motor, part(ends, segment.to))?);
            }
        }
        let demands = demands(way, inputs, &job.choices)?;
        let current: MotorCurrent = *inputs.motor_current[way as usize].as_ref().ok()?;
        Some(WaySweep::of(way, current, demands, prices, surface_run, runs))
    };
    Some(Sweep::of([one(Way::V240)?, one(Way::V480)?], surface_run))
}

fn line(water: &Water, setting: Length) -> Option<Line> {
    let (system, duty) = (water.system.as_ref()?, water.pump.as_ref()?.duty.ok()?);
    let span = feet(SPAN_FEET);
    let water = water_power(system.liquid.density, duty.flow, span).ok()?;
    let of_span = shaft_power(water, duty.efficiency.value).ok()?;
    // Below zero where the water runs by itself: so far the line is no power, but it is straight.
    let power = |by: Length| Some(of_span * (system.deeper(by).head(duty.flow).ok()?.total() / span).value);
    let here = power(feet(0.0))?;
    let rise = power(span)? - here;
    (rise > watts(0.0)).then_some(Line { at: setting, power: here, rise })
}

fn segments(line: Line, shallowest: Length) -> Vec<Segment> {
    let mut found: Vec<Segment> = Vec::new();
    let mut from = shallowest;
    let Ok(first) = next_standard_power(line.power_at(shallowest).max(watts(0.0))) else { return found };
    for row in TABLE.iter().filter(|row| row.hp >= in_horsepower(first) * (1.0 - 1e-9)) {
        let motor = horsepower(row.hp);
        let to = line.depth_of(motor).min(feet(DEEPEST_FEET));
        if to >= from {
            found.push(Segment { motor, from, to });
            from = to;
        }
        if to >= feet(DEEPEST_FEET) {
            break;
        }
    }
    found
}

/// What the choice of a way's lead depends on, with a motor.
fn demands_for(way: Way, job: &Job, inputs: &Inputs, motor: Power) -> Option<Demands> {
    let own = inputs.motor_power.as_ref().ok()?.value;
    if ((own / motor).value - 1.0).abs() < 1e-9 {
        demands(way, inputs, &job.choices)
    } else {
        let (efficiency, power_factor) = assumed_efficiency_and_power_factor(job.choices.motor_kind(), motor);
        let current = table_current(motor, way.rated()).ok()?;
        demands_of(way, inputs, &job.choices, current, power_factor, device(inputs, motor, efficiency)?)
    }
}

/// The device ahead of another motor: by the rated input of the job's way, which grows with the motor; without one as it
/// is assumed.
fn device(inputs: &Inputs, motor: Power, efficiency: f64) -> Option<ElectricCurrent> {
    let own = inputs.motor_power.as_ref().ok()?.value;
    match inputs.rated_input {
        Some(rated) => provisional_device(rated * (motor / own).value).ok(),
        None => provisional(motor, efficiency).ok(),
    }
}
