//! Break-even depths against a scan by hand: each one is a true change of the cheaper way, and none is missed.

use super::jobs::{Plain, plain};
use super::tried;
use super::years_by_hand::equipment;
use proptest::prelude::*;
use proptest::strategy::ValueTree as _;
use wellwright_core::evaluate::{Basis, BreakEven, Evaluation, Sweep, evaluate};
use wellwright_core::job::Way;
use wellwright_core::quantity::{UnitSystem, in_feet};

/// What both ways cost at a depth by hand, where both have a lead: on the cable, installed, over the years.
pub type ByHand<'a> = &'a dyn Fn(f64) -> Option<[[f64; 2]; 3]>;

/// The costs of a job by hand, less what both ways need alike.
pub fn costs(job: &Plain, answer: &Evaluation, depth: f64) -> Option<[[f64; 2]; 3]> {
    let (low, high) = (job.lead(0, depth)?, job.lead(1, depth)?);
    let years = match equipment(answer, answer.sweep.as_ref()?) {
        Some([a, b]) => [job.years(answer, 0, &low, depth, a), job.years(answer, 1, &high, depth, b)],
        None => [0.0; 2],
    };
    let installed = [low.installed, high.installed];
    Some([[low.cable, high.cable], installed, [installed[0] + years[0], installed[1] + years[1]]])
}

/// What a curve can be judged on.
pub fn bases(sweep: &Sweep) -> impl Iterator<Item = Basis> {
    let years = sweep.has_lifetime();
    Basis::ALL.into_iter().filter(move |basis| years || *basis != Basis::Lifetime)
}

/// The cheaper way at a depth by hand; `None` where the costs tie to the last digits, or a way has no lead.
fn cheaper(hand: ByHand, basis: Basis, depth: f64) -> Option<Way> {
    let costs = hand(depth)?;
    let [low, high] = costs[basis as usize];
    let noise = 1e-11 * costs.as_flattened().iter().fold(0.0, |most: f64, cost| most.max(cost.abs()));
    if (low - high).abs() <= noise { None } else { Some(if low > high { Way::V480 } else { Way::V240 }) }
}

/// The cheaper way just beside a depth: the nearest distance at which the costs differ, or `None` where they tie.
fn beside(hand: ByHand, basis: Basis, depth: f64, side: f64) -> Option<Way> {
    [1e-7, 1e-6, 1e-5, 1e-4, 1e-3].into_iter().find_map(|step| cheaper(hand, basis, depth + side * step))
}

fn swept(job: &Plain) -> Option<(Evaluation, Sweep)> {
    let answer = evaluate(&job.job(UnitSystem::Us));
    let sweep = answer.sweep.clone()?;
    Some((answer, sweep))
}

/// From where to where both ways have a lead, feet.
pub fn reach(sweep: &Sweep) -> (f64, f64) {
    let [low, high] = Way::ALL.map(|way| sweep.way(way));
    (in_feet(low.start().max(high.start())), in_feet(low.reach().min(high.reach())))
}

pub fn changes_are_true(hand: ByHand, basis: Basis, found: &BreakEven) -> Result<(), TestCaseError> {
    let mut ahead = found.first;
    for crossing in &found.crossings {
        let depth = in_feet(crossing.depth);
        let (before, after) = (beside(hand, basis, depth, -1.0), beside(hand, basis, depth, 1.0));
        prop_assert_eq!(after, Some(crossing.below), "below {} ft on {:?}: {:?}", depth, basis, found);
        // Above a step the costs may tie; where they differ, the other way is ahead.
        prop_assert!(before != Some(crossing.below), "above {} ft on {:?}: {:?}", depth, basis, found);
        prop_assert!(ahead.is_some_and(|way| way != crossing.below), "{:?}", found);
        ahead = Some(crossing.below);
    }
    Ok(())
}

pub fn none_is_missed(
    hand: ByHand,
    basis: Basis,
    found: &BreakEven,
    (from, to): (f64, f64),
) -> Result<(), TestCaseError> {
    // Ways that serve at no depth both are not compared.
    if to <= from {
        prop_assert!(found.first.is_none() && found.crossings.is_empty(), "{:?}", found);
        return Ok(());
    }
    let mut ahead = found.first;
    let mut crossings = found.crossings.iter().peekable();
    // An odd count of steps, so that the scan does not fall on round depths.
    for step in 1..1501 {
        let depth = from + (to - from) * f64::from(step) / 1501.0;
        while let Some(crossing) = crossings.next_if(|crossing| in_feet(crossing.depth) < depth) {
            ahead = Some(crossing.below);
        }
        let near = found.crossings.iter().any(|crossing| (in_feet(crossing.depth) - depth).abs() < 1e-6);
        let cheaper = cheaper(hand, basis, depth);
        if cheaper.is_some() && !near {
            prop_assert_eq!(cheaper, ahead, "at {} ft on {:?}: {:?}", depth, basis, found);
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(tried(120))]

    #[test]
    fn each_change_is_true(job in plain()) {
        let Some((answer, sweep)) = swept(&job) else { return Ok(()) };
        for basis in bases(&sweep) {
            changes_are_true(&|depth| costs(&job, &answer, depth), basis, sweep.break_even(basis))?;
        }
    }
}

proptest! {
    #![proptest_config(tried(40))]

    #[test]
    fn no_change_is_missed(job in plain()) {
        let Some((answer, sweep)) = swept(&job) else { return Ok(()) };
        for basis in bases(&sweep) {
            none_is_missed(&|depth| costs(&job, &answer, depth), basis, sweep.break_even(basis), reach(&sweep))?;
        }
    }
}

/// The laws above hold idly where nothing changes; over these jobs the way must change on runs and at steps.
#[test]
fn the_random_jobs_do_change_their_cheaper_way() {
    let (mut on_runs, mut at_steps) = (0, 0);
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    for _ in 0..200 {
        let job = plain().new_tree(&mut runner).unwrap().current();
        let Some((_, sweep)) = swept(&job) else { continue };
        for crossing in Basis::ALL.into_iter().flat_map(|basis| sweep.break_even(basis).crossings.clone()) {
            match crossing.place {
                wellwright_core::evaluate::Place::Run => on_runs += 1,
                wellwright_core::evaluate::Place::Step => at_steps += 1,
            }
        }
    }
    assert!(on_runs > 10 && at_steps > 10, "{on_runs} on runs, {at_steps} at steps");
}
