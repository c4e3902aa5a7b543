//! The pump at work: the speed and power at which it gives what is asked, and what it gives at most.

use super::Water;
use super::line::System;
use crate::error::OutsideRange;
use crate::job::{Control, Entered, Field, Job, Known, Origin};
use crate::pump::affinity::{efficiency_of, head_of, speed_ratio};
use crate::pump::curve::{CurveError, PumpCurve};
use crate::pump::operating_point::{
    NoOperatingPoint, OperatingPoint, lowest_speed, operating_point, share_of_best, speed_for,
};
use crate::pump::paste::{Column, ColumnUnit, PasteError, read};
use crate::pump::power::{assumed_efficiency, largest_shaft_power, shaft_power, shaft_power_of, water_power};
use crate::quantity::{Frequency, Length, Power, VolumeRate, feet, hertz};
use crate::water::head::pressure_head;

/// Why the text of a curve makes no curve.
#[derive(Debug, Clone, PartialEq)]
pub enum CurveProblem {
    /// It can't be read.
    Text(PasteError),
    /// Its points make no curve.
    Points(CurveError),
}

/// A curve as it was read.
#[derive(Debug, Clone, PartialEq)]
pub struct CurveRead {
    /// The curve.
    pub curve: PumpCurve,
    /// The columns of its text.
    pub columns: Vec<Column>,
}

/// The pump at the flow that is asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Duty {
    /// The flow that it gives: as asked, or at full speed what the system lets through.
    pub flow: VolumeRate,
    /// Its head.
    pub head: Length,
    /// Its speed over that of the curve; nothing without a curve.
    pub ratio: Option<f64>,
    /// Its efficiency.
    pub efficiency: Known<f64>,
    /// Power in the water.
    pub water: Power,
    /// Power at the shaft.
    pub shaft: Power,
}

/// Why the pump can't do what is asked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NoDuty {
    /// It would have to run faster than it may.
    Faster {
        /// The frequency that it would take.
        needed: Frequency,
    },
    /// No speed serves.
    NoPoint(NoOperatingPoint),
}

/// The pump of a job.
#[derive(Debug, Clone, PartialEq)]
pub struct Pumping {
    /// Its curve.
    pub curve: Option<PumpCurve>,
    /// Frequency that the curve holds for.
    pub curve_frequency: Frequency,
    /// Lowest and highest frequency that it may run at.
    pub band: (Frequency, Frequency),
    /// What it does at the flow that is asked for.
    pub duty: Result<Duty, NoDuty>,
    /// What it gives at most through the system; nothing without a curve.
    pub most: Option<Result<OperatingPoint, NoOperatingPoint>>,
    /// Head against a shut valve at the highest frequency.
    pub shut_off: Option<Known<Length>>,
    /// The frequency at which it just holds the pressure with nothing drawn.
    pub lowest: Option<Frequency>,
    /// Flow at the duty as a share of the flow of best efficiency at that speed.
    pub share_of_best: Option<f64>,
    /// The largest power at the shaft anywhere on the curve at the highest frequency, and its flow.
    pub largest: Option<(VolumeRate, Power)>,
}

/// Flow and head along a curve that is drawn.
pub type Trace = Vec<(VolumeRate, Length)>;

impl Pumping {
    /// The frequency of the duty.
    #[must_use]
    pub fn frequency(&self) -> Option<Frequency> {
        Some(self.curve_frequency * self.duty.ok()?.ratio?)
    }

    /// Speed over that of the curve at a frequency.
    ///
    /// # Errors
    /// As [`speed_ratio`].
    pub fn ratio(&self, frequency: Frequency) -> Result<f64, OutsideRange> {
        speed_ratio(frequency, self.curve_frequency)
    }

    /// Points of the curve for a table, at the frequency of the duty, or at the highest where there is no duty.
    #[must_use]
    pub fn points(&self) -> (Frequency, Trace) {
        let at = self.frequency().unwrap_or(self.band.1);
        (at, self.trace(at, TABLE_STEPS))
    }

    /// The curve at a frequency in this many steps; empty without a curve.
    #[must_use]
    pub fn trace(&self, frequency: Frequency, steps: u32) -> Trace {
        let (Some(curve), Ok(ratio)) = (&self.curve, self.ratio(frequency)) else { return Vec::new() };
        let (least, most) = curve.flows();
        let flow = |step: u32| (least + (most - least) * (f64::from(step) / f64::from(steps.max(1)))) * ratio;
        (0..=steps).filter_map(|step| Some((flow(step), head_of(curve, flow(step), ratio).ok()?))).collect()
    }
}

/// Steps from the least to the largest flow of a table.
const TABLE_STEPS: u32 = 8;

impl System {
    /// The head that it takes, up to a flow, in this many steps.
    #[must_use]
    pub fn trace(&self, most: VolumeRate, steps: u32) -> Trace {
        let flow = |step: u32| most * (f64::from(step) / f64::from(steps.max(1)));
        (0..=steps).filter_map(|step| Some((flow(step), self.head(flow(step)).ok()?.total()))).collect()
    }
}

/// Reads the curve of a job; nothing where none was entered.
pub(super) fn curve(job: &Job) -> Option<Result<CurveRead, CurveProblem>> {
    if job.curve.trim().is_empty() {
        return None;
    }
    Some(read(&job.curve, ColumnUnit::Gpm, ColumnUnit::Foot).map_err(CurveProblem::Text).and_then(|pasted| {
        let curve = PumpCurve::new(pasted.points).map_err(CurveProblem::Points)?;
        Ok(CurveRead { curve, columns: pasted.columns })
    }))
}

/// The pump of a job at a flow. `curve` is nothing where none was entered, and a curve that can't be used is no pump.
pub(super) fn pumping(
    job: &Job,
    entered: &Entered,
    curve: Option<&PumpCurve>,
    flow: VolumeRate,
    system: &System,
) -> Option<Pumping> {
    let curve_frequency = entered.get(Field::CurveFrequency, hertz)?;
    let band = (entered.get(Field::LeastFrequency, hertz)?, entered.get(Field::MostFrequency, hertz)?);
    let efficiency = entered.take(Field::PumpEfficiency, |share| share).ok()?;
    let at = At { curve, curve_frequency, most: band.1, flow, system, efficiency };
    let duty = match (curve, job.choices.control()) {
        (None, _) => at.estimated(),
        (Some(curve), Control::ConstantPressure) => at.at_any_speed(curve),
        (Some(curve), Control::OnOff) => at.at_full_speed(curve),
    };
    let most = curve.map(|curve| at.full_point(curve));
    let shut_off = at.shut_off(entered);
    let lowest = shut_off.and_then(|known| at.lowest(known.value));
    let best = curve.and_then(PumpCurve::best_efficiency).map(|best| best.0);
    let share = |duty: Duty| share_of_best(duty.flow, duty.ratio?, best?).ok();
    let largest =
        curve.and_then(|curve| largest_shaft_power(curve, at.ratio().ok()?, system.liquid.density).ok().flatten());
    let share_of_best = duty.ok().and_then(share);
    Some(Pumping { curve: curve.cloned(), curve_frequency, band, duty, most, shut_off, lowest, share_of_best, largest })
}

/// What the pump does at another flow than the one that is asked for, by how it is run; `None` while it is not known.
pub(in crate::evaluate) fn duty_at(
    entered: &Entered,
    water: &Water,
    control: Control,
    flow: VolumeRate,
) -> Option<Result<Duty, NoDuty>> {
    let (pump, system) = (water.pump.as_ref()?, water.system.as_ref()?);
    let efficiency = entered.take(Field::PumpEfficiency, |share| share).ok()?;
    let curve = pump.curve.as_ref();
    let at = At { curve, curve_frequency: pump.curve_frequency, most: pump.band.1, flow, system, efficiency };
    Some(match (curve, control) {
        (None, _) => at.estimated(),
        (Some(curve), Control::ConstantPressure) => at.at_any_speed(curve),
        (Some(curve), Control::OnOff) => at.at_full_speed(curve),
    })
}

fn outside(outside: OutsideRange) -> NoDuty {
    NoDuty::NoPoint(outside.into())
}

/// What the pump is looked at with.
struct At<'a> {
    curve: Option<&'a PumpCurve>,
    curve_frequency: Frequency,
    most: Frequency,
    flow: VolumeRate,
    system: &'a System,
    /// Efficiency as it was entered, for a pump whose curve tells none.
    efficiency: Option<Known<f64>>,
}

impl At<'_> {
    /// The highest speed over that of the curve.
    fn ratio(&self) -> Result<f64, OutsideRange> {
        speed_ratio(self.most, self.curve_frequency)
    }

    /// Where pump and system meet at the highest speed.
    fn full_point(&self, curve: &PumpCurve) -> Result<OperatingPoint, NoOperatingPoint> {
        operating_point(curve, self.ratio()?, |flow| self.system.head(flow).map(|head| head.total()))
    }

    /// Without a curve: the power by an efficiency that is entered or assumed.
    fn estimated(&self) -> Result<Duty, NoDuty> {
        let head = self.system.head(self.flow).map_err(outside)?.total();
        self.bare(self.flow, head, None).map_err(outside)
    }

    /// With a curve: the speed at which it gives the flow that is asked for.
    fn at_any_speed(&self, curve: &PumpCurve) -> Result<Duty, NoDuty> {
        let head = self.system.head(self.flow).map_err(outside)?.total();
        let ratio = speed_for(curve, self.flow, head).map_err(NoDuty::NoPoint)?;
        let needed = self.curve_frequency * ratio;
        // A change of units may move a speed off its end by the last digits.
        if needed > self.most * (1.0 + 1e-9) {
            return Err(NoDuty::Faster { needed });
        }
        self.on_curve(curve, self.flow, head, ratio).map_err(outside)
    }

    /// With a curve and no choice of speed: where it meets the system.
    fn at_full_speed(&self, curve: &PumpCurve) -> Result<Duty, NoDuty> {
        let point = self.full_point(curve).map_err(NoDuty::NoPoint)?;
        let ratio = self.ratio().map_err(outside)?;
        self.on_curve(curve, point.flow, point.head, ratio).map_err(outside)
    }

    fn on_curve(&self, curve: &PumpCurve, flow: VolumeRate, head: Length, ratio: f64) -> Result<Duty, OutsideRange> {
        let density = self.system.liquid.density;
        match (efficiency_of(curve, flow, ratio)?, shaft_power_of(curve, flow, ratio, density)?) {
            (Some(efficiency), Some(shaft)) => {
                let water = water_power(density, flow, head)?;
                let efficiency = Known::worked_out(efficiency);
                Ok(Duty { flow, head, ratio: Some(ratio), efficiency, water, shaft })
            }
            // A curve of head alone.
            _ => self.bare(flow, head, Some(ratio)),
        }
    }

    /// The power by an efficiency that no curve tells.
    fn bare(&self, flow: VolumeRate, head: Length, ratio: Option<f64>) -> Result<Duty, OutsideRange> {
        let assumed = || assumed_efficiency(flow).map(Known::assumed);
        let efficiency = self.efficiency.map_or_else(assumed, Ok)?;
        // Water that runs by itself takes no power.
        let water = water_power(self.system.liquid.density, flow, head.max(feet(0.0)))?;
        Ok(Duty { flow, head, ratio, efficiency, water, shaft: shaft_power(water, efficiency.value)? })
    }

    /// Head against a shut valve at the highest frequency: of the curve, or entered.
    fn shut_off(&self, entered: &Entered) -> Option<Known<Length>> {
        let ratio = self.ratio().ok()?;
        let rated = match self.curve.and_then(PumpCurve::shut_off_head) {
            Some(value) => Known { value, origin: Origin::WorkedOut },
            None => entered.take(Field::ShutOffHead, feet).ok().flatten()?,
        };
        crate::pump::affinity::head_at(rated.value, ratio).ok().map(|value| Known { value, origin: rated.origin })
    }

    /// The frequency at which the pump just holds the pressure with nothing drawn. `shut_off` at the highest frequency.
    fn lowest(&self, shut_off: Length) -> Option<Frequency> {
        let System { lift, rise, pressure, liquid, .. } = self.system;
        let setpoint = pressure_head(*pressure, liquid.density).ok()?;
        let ratio = lowest_speed(shut_off, lift.at_rest() + *rise, setpoint).ok()?;
        Some(self.most * ratio)
    }
}
