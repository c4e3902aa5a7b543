//! What is told of both ways at the depth of the job, by what each of them costs there.

use super::jobs::{house, plain};
use super::tried;
use proptest::prelude::*;
use wellwright_core::evaluate::{Basis, Evaluation, Here, WayHere, evaluate};
use wellwright_core::job::{Field, Way};
use wellwright_core::quantity::{Entry, Unit, UnitSystem};

fn cost(lead: &WayHere, basis: Basis) -> Option<f64> {
    let cost = match basis {
        Basis::Cable => Some(lead.cable),
        Basis::Installed => Some(lead.installed),
        Basis::Lifetime => lead.lifetime,
    };
    cost.map(|cost| cost.0)
}

/// The cheaper way, and what it leaves of the dearer one's cost, taken from the whole.
fn share(here: &Here, basis: Basis) -> Option<(Way, f64)> {
    let [low, high] = Way::ALL.map(|way| here.way(way).and_then(|lead| cost(lead, basis)));
    let (low, high) = (low?, high?);
    if high == low {
        return None;
    }
    Some(if high < low { (Way::V480, 1.0 - high / low) } else { (Way::V240, 1.0 - low / high) })
}

fn is_told(answer: &Evaluation) -> Result<usize, TestCaseError> {
    let Some(here) = &answer.here else { return Ok(0) };
    let mut told = 0;
    for basis in Basis::ALL {
        for lead in Way::ALL.into_iter().filter_map(|way| here.way(way)) {
            prop_assert_eq!(lead.cost(basis).map(|cost| cost.0), cost(lead, basis));
        }
        match (here.share_saved(basis), share(here, basis)) {
            (None, None) => {}
            (Some((way, found)), Some((cheap, expected))) => {
                prop_assert!(way == cheap && (found - expected).abs() < 1e-9, "{basis:?}: {way:?} {found}, {expected}");
                told += 1;
            }
            other => prop_assert!(false, "{basis:?}: {other:?}"),
        }
    }
    Ok(told)
}

proptest! {
    #![proptest_config(tried(64))]

    #[test]
    fn the_share_saved_is_of_the_dearer_way(job in plain()) {
        is_told(&evaluate(&job.job(UnitSystem::Us)))?;
    }
}

#[test]
fn the_share_saved_of_a_whole_job_is_told_on_every_basis() {
    let answer = evaluate(&house());
    assert_eq!(is_told(&answer).unwrap(), 3);
    // Where the ways cost the same there is no cheaper one, and no share of nothing.
    let mut here = answer.here.unwrap();
    let [Some(low), Some(high)] = &mut here.ways else { panic!("a way has no lead") };
    high.installed = low.installed;
    assert_eq!(here.share_saved(Basis::Installed), None);
}

/// What may be entered as more that 480 V needs is what its equipment costs more.
#[test]
fn more_equipment_is_what_the_equipment_costs_more() {
    let mut job = house();
    job.set(Field::ExtraEquipment, None);
    let answer = evaluate(&job);
    let here = answer.here.as_ref().unwrap();
    let [low, high] = Way::ALL.map(|way| here.way(way).unwrap().outfit.cost.total().0);
    assert!(low > 0.0 && low != high);
    assert_eq!(answer.inputs.stand_in(Field::ExtraEquipment), Some(Entry::new(high - low, Unit::Dollar)));
}
