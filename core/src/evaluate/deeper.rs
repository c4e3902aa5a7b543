//! Cost against depth where the water itself is deeper: head, power and motor follow.
//!
//! The well is moved down whole: water at rest, pump and drop pipe by as much. Flow, drawdown and the pump's efficiency
//! stay, as of a pump with more stages of the same kind. Head is then a straight line over depth, and so is the power at
//! the shaft; each depth where it passes a standard motor is solved, not searched. The job's own motor keeps its
//! nameplate; others are taken from the table, with efficiency, power factor and device as they are assumed.

use super::cooler::Cooler;
use super::runs::{Priced, Stretch, Swept, demands, demands_of, depth_runs};
use super::sweep::{DEEPEST_FEET, DepthRun, Parts, Sweep, WaySweep};
use super::water::Water;
use super::ways::{Fitted, Outfit, is_same};
use crate::cable::lead::Demands;
use crate::job::{Choices, Inputs, Way, provisional};
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
pub(super) fn deeper(swept: &Swept, water: &Water) -> Option<Sweep> {
    let one = |way| alone(swept, water, way);
    Some(Sweep::of([one(Way::V240)?, one(Way::V480)?], swept.surface_run))
}

/// Sweeps the one way that stands for a voltage over deeper water.
pub(super) fn alone(swept: &Swept, water: &Water, way: Way) -> Option<WaySweep> {
    if swept.choices.motor_kind() != MotorKind::Submersible {
        return None;
    }
    let setting = swept.inputs.pump_setting.as_ref().ok()?.value;
    let line = line(water, setting)?;
    let shallowest = (setting - water.static_level?).max(feet(0.0));
    of_way(way, swept, &segments(line, shallowest), setting)
}

fn of_way(way: Way, swept: &Swept, segments: &[Segment], setting: Length) -> Option<WaySweep> {
    let Swept { inputs, choices, surface_run, cooler, .. } = *swept;
    let mut runs: Vec<DepthRun> = Vec::new();
    let mut outfits: Vec<Outfit> = Vec::new();
    let mut priced = true;
    for segment in segments {
        let from = runs.last().map_or(segment.from, |last| last.to);
        // Past the depth that a motor's lead can serve, no larger motor's can.
        if from < segment.from {
            break;
        }
        let fitted = Way::ALL.map(|way| fitted_for(way, swept, segment.motor));
        let own = fitted[way as usize].as_ref();
        let prices = inputs.prices.as_ref().ok()?;
        let with = Priced { prices, motor: segment.motor, fitted: own, energy: swept.energy() };
        let demands = demands_for(way, choices, inputs, segment.motor)?;
        let part = Part { demands, priced: with, surface_run, setting, cooler };
        runs.extend(part.runs(from, segment.to)?);
        priced = priced && swept.is_priced(way, own, fitted[0].as_ref());
        outfits.extend(swept.outfits(way, own, fitted[0].as_ref(), segment.to).into_iter().filter(|to| to.to > from));
    }
    Some(WaySweep::of(Parts {
        way,
        place: swept.place(way),
        priced,
        current: *inputs.motor_current[way as usize].as_ref().ok()?,
        demands: demands(way, inputs, choices)?,
        energy: swept.energy(),
        surface_run,
        labor: inputs.prices.as_ref().ok()?.book.labor_per_length(),
        runs,
        outfits,
    }))
}

/// The equipment that stands for a voltage, fitted out for a motor.
fn fitted_for(way: Way, swept: &Swept, motor: Power) -> Option<Fitted> {
    let (base, stands) = (swept.base?, swept.ways.all.get(swept.place(way)?)?);
    let own = swept.inputs.motor_power.as_ref().ok()?.value;
    if is_same(own, motor) { base.fitted(stands) } else { base.fitted_for(&stands.family, way, motor) }
}

/// A way with one motor, over a stretch of depths.
struct Part<'a> {
    demands: Demands,
    priced: Priced<'a>,
    surface_run: Length,
    setting: Length,
    cooler: Option<Cooler>,
}

impl Part<'_> {
    fn runs(&self, from: Length, to: Length) -> Option<Vec<DepthRun>> {
        let stretch = |from, to| Stretch { from, to, surface_run: self.surface_run };
        let ends = self.cooler.map_or(from, |cooler| cooler.ends(self.setting).max(from).min(to));
        let mut runs = Vec::new();
        if let Some(cooler) = self.cooler.filter(|_| ends > from) {
            runs.extend(depth_runs(&self.demands.around(cooler.water), self.priced, stretch(from, ends))?);
        }
        if to > ends || ends == from {
            runs.extend(depth_runs(&self.demands, self.priced, stretch(ends, to))?);
        }
        Some(runs)
    }
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
fn demands_for(way: Way, choices: &Choices, inputs: &Inputs, motor: Power) -> Option<Demands> {
    let own = inputs.motor_power.as_ref().ok()?.value;
    if is_same(own, motor) {
        demands(way, inputs, choices)
    } else {
        let (efficiency, power_factor) = assumed_efficiency_and_power_factor(choices.motor_kind(), motor);
        let current = table_current(motor, way.rated()).ok()?;
        demands_of(way, inputs, choices, current, power_factor, device(inputs, motor, efficiency)?)
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
