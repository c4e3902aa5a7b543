//! The one road from a job to its answer.
//!
//! The answer keeps what does not depend on a bad figure: without a depth the curves still stand, without a motor the
//! errors still say what is missing.

mod break_even;
mod cooler;
mod deeper;
mod here;
mod motor;
mod report;
mod service;
mod sweep;
mod water;
mod ways;

pub use break_even::{BreakEven, Crossing, Place};
pub use here::{Here, Saving, WayHere};
pub use motor::MotorLoad;
pub use report::{error as error_report, report};
pub use service::LeadInService;
pub use sweep::{Basis, DEEPEST_FEET, DepthRun, Sweep, WaySweep};
pub use water::*;
pub(crate) use water::{LEAST_BAND, counted_service_factor, largest_load};
pub use ways::*;

use crate::error::InputError;
use crate::finding::Finding;
use crate::job::{Checked, Entered, Field, Inputs, Job, Way};
use crate::power::family::{Class, USUAL_SUPPLY_BAND};
use crate::pump::motor::MotorKind;
use crate::quantity::{Entry, Length, feet, in_volts, volts};
use crate::standards::conductor::Metal;
use cooler::Cooler;

/// What depth means along the curve of cost.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Sense {
    /// The lead is longer; the motor stays.
    #[default]
    LongerLead,
    /// The water is deeper; head, power and motor follow.
    DeeperWater,
}

/// Everything that follows from a job.
#[derive(Debug, Clone, PartialEq)]
pub struct Evaluation {
    /// Where the motor works.
    pub kind: MotorKind,
    /// The job's figures after checking.
    pub inputs: Inputs,
    /// Figures that can't be used, in the order of the page.
    pub errors: Vec<InputError>,
    /// The water, the head and the pump.
    pub water: Water,
    /// The motor's load; `None` while the power at the shaft is not known.
    pub motor: Option<MotorLoad>,
    /// Every way to run the motor.
    pub ways: Ways,
    /// Cost against depth; `None` while a figure that it needs is missing or wrong.
    pub sweep: Option<Sweep>,
    /// Cost against the depth of the water; `None` while the power at the shaft is not known.
    pub deeper: Option<Sweep>,
    /// The job's place on the curve of cost: the depth of a pump in a well, or the length of the lead to a motor on the
    /// surface.
    pub depth: Option<Length>,
    /// The lead at the job's depth; `None` without a sweep or a depth.
    pub here: Option<Here>,
    /// The 240 V and the 480 V lead in service.
    pub service: [Option<LeadInService>; 2],
    /// What is unwise or unsafe, gravest first.
    pub findings: Vec<Finding>,
}

impl Evaluation {
    /// The evaluation as it is seen in a sense of depth: the cost against depth is that of the sense. Where deeper water is
    /// not known it stays as it is.
    #[must_use]
    pub fn in_sense(&self, sense: Sense) -> Self {
        let mut seen = self.clone();
        if let (Sense::DeeperWater, Some(deeper)) = (sense, &self.deeper) {
            seen.sweep = Some(deeper.clone());
        }
        seen
    }
}

/// Evaluates a job.
///
/// # Range
/// Any job; what can't be used is an [`InputError`] in the answer.
#[must_use]
pub fn evaluate(job: &Job) -> Evaluation {
    let entered = Entered::of(job);
    let water = water::water(job, &entered);
    let factor = water::counted_service_factor(&entered, job.choices.motor_kind());
    let mut inputs = Inputs::of(job, entered, factor.and_then(|factor| water.motor_for(factor)));
    water::follows(&mut inputs, job, &water);
    let motor = motor::motor_load(job, &inputs, &water);
    let kind = job.choices.motor_kind();
    let (depth, surface) = lead(kind, &inputs);
    let cooler = Cooler::of(&job.choices, &inputs, &water);
    let laid = depth.zip(surface).map(|(depth, surface)| Laid { depth, surface, cooler });
    let ways = ways::ways(job, &inputs, &water, laid);
    ways::follows(&mut inputs, &job.choices, &ways);
    let sweep = surface.and_then(|surface| sweep::sweep(&inputs, &job.choices, surface, cooler));
    let here = sweep.as_ref().and_then(|sweep| Some(here::here(sweep, depth?)));
    let deeper = deeper::deeper(job, &inputs, &water, cooler);
    let service = service::service(job, &inputs, &water, motor.as_ref(), here.as_ref());
    let mut findings = water::findings(job, &inputs, &water);
    findings.extend(in_the_lead(job, here.as_ref()));
    findings.extend(cooler.zip(depth).and_then(|(cooler, depth)| cooler.not_counted(depth)));
    // A lead without a conductor may be told twice, by its voltage and by the way that it belongs to.
    let of_ways = ways::of_job(job, &ways).into_iter().filter(|finding| !findings.contains(finding));
    findings.extend(of_ways.collect::<Vec<_>>());
    findings.sort_by_key(|finding| core::cmp::Reverse(finding.severity()));
    let errors = inputs.errors.clone();
    Evaluation { errors, kind, inputs, water, motor, ways, sweep, deeper, depth, here, service, findings }
}

/// Depth of the job, and the lead on the surface beyond it. The lead of a motor on the surface is told whole as a
/// surface run: along its curve depth stands for the length of the lead.
fn lead(kind: MotorKind, inputs: &Inputs) -> (Option<Length>, Option<Length>) {
    let value = |length: &Checked<Length>| length.as_ref().ok().map(|known| known.value);
    let surface = value(&inputs.surface_run);
    match kind {
        MotorKind::Submersible => (value(&inputs.pump_setting), surface),
        MotorKind::Surface => (surface, surface.map(|_| feet(0.0))),
    }
}

/// How the lead is laid: the depth of the pump, what lies on the surface, and whether the water cools it.
#[derive(Debug, Clone, Copy)]
struct Laid {
    depth: Length,
    surface: Length,
    cooler: Option<Cooler>,
}

fn in_the_lead(job: &Job, here: Option<&Here>) -> Vec<Finding> {
    let mut found = Vec::new();
    for way in Way::ALL {
        match here.map(|here| &here.ways[way as usize]) {
            Some(None) => found.push(Finding::CableNoSize { way }),
            Some(Some(lead)) if lead.run.run.ground_grew => found.push(Finding::GroundWireGrew { way }),
            _ => {}
        }
    }
    if job.choices.metal() == Metal::Aluminum && job.choices.motor_kind() == MotorKind::Submersible {
        found.push(Finding::AluminumInWell);
    }
    found.extend(Field::ALL.into_iter().filter_map(|field| beyond_usual(job, field)));
    found
}

/// Volts that a supply usually has: near its nominal ones.
fn usual_supply(supply: f64) -> (f64, f64) {
    let nominal = in_volts(Class::of_supply(volts(supply)).nominal());
    (nominal * (1.0 - USUAL_SUPPLY_BAND), nominal * (1.0 + USUAL_SUPPLY_BAND))
}

fn beyond_usual(job: &Job, field: Field) -> Option<Finding> {
    let spec = field.spec();
    let value = field.check(job.get(field).filter(|_| field.counts(job))?).ok()?;
    let (least, most) = match field {
        Field::SupplyVolts => usual_supply(value),
        _ => spec.usual,
    };
    // A change of units may move a value off a bound by its last digits.
    let slack = 1e-9 * value.abs();
    let bound = if value > most + slack {
        most
    } else if value < least - slack {
        least
    } else {
        return None;
    };
    Some(Finding::BeyondUsual { field, usual: Entry::new(bound, spec.accepted.unit) })
}
