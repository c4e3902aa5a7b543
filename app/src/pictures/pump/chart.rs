//! What the picture of the pump holds, in quantities: curves, points, the setpoint. All heads and flows are core's.

use wellwright_core::evaluate::{Evaluation, Pumping, System, Trace};
use wellwright_core::job::{Control, Field, Origin};
use wellwright_core::numeric::order::by_number;
use wellwright_core::pump::affinity::{flow_at, head_of};
use wellwright_core::quantity::{Frequency, Length, MassDensity, Pressure, VolumeRate, feet, gpm, hertz, in_hertz};

/// Steps of a drawn curve.
const STEPS: u32 = 36;
/// Steps along the line of best efficiency.
const BEST_STEPS: u32 = 8;
/// Frequencies nearer than this are one, in hertz.
const SAME_HERTZ: f64 = 0.05;
/// Steps that the frequencies between may have, in hertz; about two of them are drawn.
const BETWEEN_STEPS: [f64; 4] = [10.0, 5.0, 2.0, 1.0];
const BETWEEN: usize = 2;
/// A flow less than what is asked for by no more than this share is the same.
const SAME_FLOW: f64 = 1e-6;
/// Flow axis beyond what is asked for: with a pump that falls short, and without a curve.
const BEYOND_ASKED: f64 = 1.1;
const WITHOUT_CURVE: f64 = 1.5;

/// A flow and a head.
pub type Spot = (VolumeRate, Length);

/// What a curve's speed is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Speed {
    /// The highest.
    Most,
    /// That of the duty.
    Duty,
    /// Between the others.
    Between,
    /// The least that gives water against the pressure.
    Lowest,
}

/// The pump at one speed.
#[derive(Debug, Clone, PartialEq)]
pub struct Curve {
    /// Its frequency.
    pub frequency: Frequency,
    /// What it is.
    pub speed: Speed,
    /// Whether the pump runs at it.
    pub at_work: bool,
    /// Flow and head, from the least flow on.
    pub points: Trace,
}

/// The flow and head that are asked for, where the pump does not give them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Asked {
    /// Flow and head.
    pub spot: Spot,
    /// Whether a pump is known that can't; else there is none to judge.
    pub missed: bool,
}

/// The system at no flow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Foot {
    /// Head that it takes.
    pub head: Length,
    /// The same without the pressure at the gauge.
    pub base: Length,
    /// The pressure at the gauge.
    pub pressure: Pressure,
    /// Whether that is assumed.
    pub assumed: bool,
    /// Density of the water.
    pub density: MassDensity,
}

/// What is drawn.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Chart {
    /// The system.
    pub system: Trace,
    /// The pump at its speeds, the highest first; none without a curve.
    pub curves: Vec<Curve>,
    /// Where its efficiency is best, from the lowest of its speeds to the highest.
    pub best: Trace,
    /// The pump at work.
    pub duty: Option<Spot>,
    /// What is asked for and not given.
    pub asked: Option<Asked>,
    /// What full speed gives.
    pub full: Option<Spot>,
    /// The pump against a shut valve at full speed.
    pub dead_head: Option<Length>,
    /// The system at no flow.
    pub foot: Option<Foot>,
}

impl Chart {
    /// The chart of an evaluation; empty while there is no system.
    #[must_use]
    pub fn of(answer: &Evaluation, control: Control) -> Self {
        let water = &answer.water;
        let Some(system) = &water.system else { return Self::default() };
        let pump = water.pump.as_ref();
        let wanted = water.demand.and_then(|demand| {
            let head = water.system.as_ref()?.head(demand.flow.value).ok()?;
            Some((demand.flow.value, head.total()))
        });
        let duty = pump.and_then(|pump| pump.duty.ok()).map(|duty| (duty.flow, duty.head));
        let short = |spot: &Spot| duty.is_none_or(|duty| duty.0 < spot.0 * (1.0 - SAME_FLOW));
        let asked = wanted.filter(short).map(|spot| Asked { spot, missed: pump.is_some() });
        let with_curve = pump.filter(|pump| pump.curve.is_some());
        let curves = with_curve.map_or_else(Vec::new, |pump| curves(pump, control));
        let mut chart = Self {
            best: with_curve.map_or_else(Vec::new, |pump| best(pump, &curves)),
            full: with_curve.and_then(|pump| pump.most?.ok()).map(|point| (point.flow, point.head)),
            dead_head: with_curve.and_then(|pump| pump.shut_off).map(|known| known.value),
            foot: foot(answer, system),
            curves,
            duty,
            asked,
            ..Self::default()
        };
        chart.system = system.trace(chart.most_flow(), STEPS);
        chart
    }

    /// Where the full-speed curve ends.
    #[must_use]
    pub fn run_out(&self) -> Option<Spot> {
        self.curves.first()?.points.last().copied()
    }

    /// Whether there is anything to draw.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.system.is_empty()
    }

    /// The largest flow that the picture shows.
    #[must_use]
    pub fn most_flow(&self) -> VolumeRate {
        let run_out = self.run_out().map(|end| end.0);
        let beyond = if run_out.is_some() { BEYOND_ASKED } else { WITHOUT_CURVE };
        let asked = self.asked.map(|asked| asked.spot.0 * beyond);
        let duty = self.duty.map(|duty| duty.0 * if run_out.is_some() { 1.0 } else { WITHOUT_CURVE });
        [run_out, asked, duty].into_iter().flatten().fold(gpm(0.1), VolumeRate::max)
    }
}

/// The pump at the speeds that are drawn, the highest first. One that is switched on and off has one speed.
fn curves(pump: &Pumping, control: Control) -> Vec<Curve> {
    let most = pump.band.1;
    let duty = pump.frequency().filter(|_| control == Control::ConstantPressure);
    let near = |a: Frequency, b: Frequency| in_hertz(a - b).abs() < SAME_HERTZ;
    let mut speeds = vec![(most, Speed::Most)];
    if control == Control::ConstantPressure {
        speeds.extend(duty.filter(|duty| !near(*duty, most)).map(|duty| (duty, Speed::Duty)));
        let lowest = pump.lowest.map(|lowest| lowest.max(pump.band.0));
        let own = lowest.filter(|low| *low < most && !speeds.iter().any(|(other, _)| near(*low, *other)));
        speeds.extend(own.map(|lowest| (lowest, Speed::Lowest)));
        // Where full speed does not hold the pressure, less does not either.
        let from = lowest.unwrap_or(pump.band.0);
        let between = between(in_hertz(from), in_hertz(most), duty.map(in_hertz));
        speeds.extend(between.into_iter().map(|frequency| (hertz(frequency), Speed::Between)));
    }
    by_number(&mut speeds, |(frequency, _)| -in_hertz(*frequency));
    let at_work = pump.frequency();
    let curve = |(frequency, speed)| Curve {
        frequency,
        speed,
        at_work: at_work.is_some_and(|duty| near(duty, frequency)),
        points: pump.trace(frequency, STEPS),
    };
    speeds.into_iter().map(curve).filter(|curve| curve.points.len() > 1).collect()
}

/// About two round frequencies between two others and off a third, in hertz.
fn between(from: f64, to: f64, off: Option<f64>) -> Vec<f64> {
    let inside = |step: f64| -> Vec<f64> {
        let apart = |value: f64, other: f64| (value - other).abs() > 0.35 * step;
        let steps = (1..200).map(|n| f64::from(n) * step);
        let inside = steps.skip_while(|value| *value <= from).take_while(|value| *value < to);
        let free = |value: &f64| apart(*value, from) && apart(*value, to) && off.is_none_or(|off| apart(*value, off));
        inside.filter(free).collect()
    };
    let all = BETWEEN_STEPS.into_iter().map(inside);
    all.min_by_key(|found| found.len().abs_diff(BETWEEN)).unwrap_or_default()
}

/// Where the efficiency is best at each speed, from the lowest curve to the highest.
fn best(pump: &Pumping, curves: &[Curve]) -> Trace {
    let (Some(most), Some(lowest)) = (curves.first(), curves.last()) else { return Vec::new() };
    let at = |step: u32| {
        let curve = pump.curve.as_ref()?;
        let share = f64::from(step) / f64::from(BEST_STEPS);
        let ratio = pump.ratio(lowest.frequency + (most.frequency - lowest.frequency) * share).ok()?;
        let flow = flow_at(curve.best_efficiency()?.0, ratio).ok()?;
        Some((flow, head_of(curve, flow, ratio).ok()?))
    };
    (0..=BEST_STEPS).filter_map(at).collect()
}

fn foot(answer: &Evaluation, system: &System) -> Option<Foot> {
    let head = system.head(gpm(0.0)).ok()?;
    Some(Foot {
        head: head.total(),
        base: head.total() - head.pressure,
        pressure: system.pressure,
        assumed: answer.inputs.origin(Field::Pressure) == Origin::Assumed,
        density: system.liquid.density,
    })
}

/// The heads and flows that the axes show. It stays as it is while the setpoint is held.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Extent {
    /// Flow at the right end of the curves.
    pub flow: VolumeRate,
    /// Least head; zero, or below it where water runs by itself.
    pub low: Length,
    /// Largest head.
    pub high: Length,
}

/// Room above the largest head, as a share of all heads; more where only the system is drawn.
const ABOVE: f64 = 1.07;
const ABOVE_SYSTEM: f64 = 1.3;

impl Extent {
    /// The extent of a chart.
    #[must_use]
    pub fn of(chart: &Chart) -> Self {
        let curve = chart.curves.first().map(|curve| curve.points.as_slice()).unwrap_or_default();
        let spots = [chart.duty, chart.full, chart.asked.map(|asked| asked.spot)];
        let foot = chart.foot.iter().flat_map(|foot| [foot.head, foot.base]);
        let heads = curve.iter().map(|point| point.1).chain(spots.into_iter().flatten().map(|spot| spot.1));
        let heads: Vec<Length> = heads.chain(chart.dead_head).chain(foot).collect();
        let system = chart.system.iter().map(|point| point.1);
        let low = heads.iter().copied().chain(system).fold(feet(0.0), Length::min);
        let most = heads.iter().copied().fold(low + feet(1.0), Length::max);
        let above = if chart.curves.is_empty() { ABOVE_SYSTEM } else { ABOVE };
        Self { flow: chart.most_flow(), low, high: low + (most - low) * above }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn about_two_round_frequencies_stand_between() {
        assert_eq!(between(30.0, 60.0, None), [40.0, 50.0]);
        assert_eq!(between(49.6, 60.0, Some(58.9)), [55.0]);
        assert_eq!(between(53.0, 60.0, Some(56.2)), [54.0, 58.0]);
        assert_eq!(between(59.5, 60.0, None), [0.0; 0]);
        assert_eq!(between(61.0, 60.0, None), [0.0; 0]);
    }
}
