//! The one road from a job to its answer.
//!
//! The answer keeps what does not depend on a bad figure: without a depth the curves still stand, without a motor the
//! errors still say what is missing.

mod break_even;
mod here;
mod report;
mod sweep;
mod water;

pub use break_even::{BreakEven, Crossing, Place};
pub use here::{Here, Saving, WayHere};
pub use report::{error as error_report, report};
pub use sweep::{Basis, DEEPEST_FEET, DepthRun, Sweep, WaySweep};
pub use water::{NEAR_BOTTOM_FEET, Water};

use crate::error::InputError;
use crate::finding::Finding;
use crate::job::{Field, Inputs, Job, Way};
use crate::quantity::Entry;
use crate::standards::conductor::Metal;

/// Everything that follows from a job.
#[derive(Debug, Clone, PartialEq)]
pub struct Evaluation {
    /// The job's figures after checking.
    pub inputs: Inputs,
    /// Figures that can't be used, in the order of the page.
    pub errors: Vec<InputError>,
    /// The levels in the well.
    pub water: Water,
    /// Cost against depth; `None` while a figure that it needs is missing or wrong.
    pub sweep: Option<Sweep>,
    /// The lead at the job's depth; `None` without a sweep or a depth.
    pub here: Option<Here>,
    /// What is unwise or unsafe, gravest first.
    pub findings: Vec<Finding>,
}

/// Evaluates a job.
///
/// # Range
/// Any job; what can't be used is an [`InputError`] in the answer.
#[must_use]
pub fn evaluate(job: &Job) -> Evaluation {
    let inputs = Inputs::of(job);
    let sweep = sweep::sweep(&inputs, &job.choices);
    let here = sweep.as_ref().and_then(|sweep| Some(here::here(sweep, inputs.pump_setting.as_ref().ok()?.value)));
    let water = water::water(&inputs);
    let mut findings = water::findings(&inputs, &water);
    findings.extend(in_the_lead(job, here.as_ref()));
    findings.sort_by_key(|finding| core::cmp::Reverse(finding.severity()));
    Evaluation { errors: inputs.errors.clone(), inputs, water, sweep, here, findings }
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
    // Whatever the kind of motor: its lead is counted down the well.
    if job.choices.metal() == Metal::Aluminum {
        found.push(Finding::AluminumInWell);
    }
    found.extend(Field::ALL.into_iter().filter_map(|field| beyond_usual(job, field)));
    found
}

fn beyond_usual(job: &Job, field: Field) -> Option<Finding> {
    let spec = field.spec();
    let value = field.check(job.get(field)?).ok()?;
    let (least, most) = spec.usual;
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
