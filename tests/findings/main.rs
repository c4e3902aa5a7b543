//! Each finding of the water, the pump and the motor, raised on one side of its limit and not on the other.
//!
//! Where a limit lies is worked by hand or read off the job's own figures that other tests prove. Equality passes: a limit
//! is tried a millionth to either side, and where rounding allows it at the very figure.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod cooler;
mod curve;
mod fits;
mod motor;
mod power_frame;
mod power_job;
mod power_kinds;
mod power_motor;
mod power_own;
mod power_pole;
mod power_supply;
mod power_told;
mod pressure;
mod pump;
mod ranking;
mod startup;
mod told;
mod water;

use wellwright_core::evaluate::{Evaluation, PoweredWay, evaluate};
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{Field, Job, WayKey, wire};
use wellwright_core::power::family::Kind;
use wellwright_core::quantity::Entry;

/// The house's well, its motor entered.
pub fn house() -> Job {
    wire::read_text(include_str!("../../core/examples/jobs/house_and_stock_well.json")).unwrap()
}

/// The field's surface pump.
pub fn field() -> Job {
    wire::read_text(include_str!("../../core/examples/jobs/field_surface_pump.json")).unwrap()
}

/// A job with figures entered in the units of their ranges.
pub fn with(mut job: Job, figures: &[(Field, f64)]) -> Job {
    for (field, value) in figures {
        job.set(*field, Some(Entry::new(*value, field.spec().accepted.unit)));
    }
    job
}

/// A job without some figures.
pub fn without(mut job: Job, fields: &[Field]) -> Job {
    for field in fields {
        job.set(*field, None);
    }
    job
}

/// The findings of a code.
pub fn of_code(answer: &Evaluation, code: &str) -> Vec<Finding> {
    answer.findings.iter().filter(|finding| finding.code() == code).copied().collect()
}

/// How grave the findings of a code are, and how many.
pub fn found(job: &Job, code: &str) -> Vec<Severity> {
    of_code(&evaluate(job), code).iter().map(Finding::severity).collect()
}

/// Whether a code is raised.
pub fn raised(job: &Job, code: &str) -> bool {
    !found(job, code).is_empty()
}

/// The job with a way of this kind chosen.
pub fn by(mut job: Job, kind: Kind) -> Job {
    job.way = Some(WayKey::Generic(kind));
    job
}

/// The generic way of a kind.
pub fn way(job: &Job, kind: Kind) -> PoweredWay {
    let ways = evaluate(job).ways.all;
    ways.into_iter().find(|way| way.family.kind == kind && way.family.name.is_empty()).unwrap()
}

/// What the generic way of a kind says of a code.
pub fn of_way(job: &Job, kind: Kind, code: &str) -> Vec<Finding> {
    way(job, kind).findings.into_iter().filter(|finding| finding.code() == code).collect()
}

/// How grave that is.
pub fn grave(job: &Job, kind: Kind, code: &str) -> Vec<Severity> {
    of_way(job, kind, code).iter().map(Finding::severity).collect()
}

/// A little under and over a limit.
pub const UNDER: f64 = 1.0 - 1e-6;
/// As [`UNDER`], to the other side.
pub const OVER: f64 = 1.0 + 1e-6;

/// Where a condition that holds at `low` and not at `high` ends.
pub fn edge(low: f64, high: f64, holds: impl Fn(f64) -> bool) -> f64 {
    let (mut low, mut high) = (low, high);
    assert!(holds(low) && !holds(high), "no edge between {low} and {high}");
    // Halved so often, no two numbers lie between the ends.
    for _ in 0..70 {
        let middle = 0.5 * (low + high);
        if holds(middle) { low = middle } else { high = middle }
    }
    0.5 * (low + high)
}
