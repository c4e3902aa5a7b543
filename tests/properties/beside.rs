//! Further ways along the curve: each as if it stood for its voltage, and compared with any other to the foot.

use super::jobs::supplied;
use proptest::prelude::*;
use std::collections::BTreeMap;
use wellwright_core::evaluate::{Basis, Evaluation, Place, Sense, WaySweep, Whose, evaluate};
use wellwright_core::job::{Field, Job, Way, WayKey};
use wellwright_core::quantity::{UnitSystem, feet, in_feet};

/// The further ways of a job whose equipment is priced by its own, and all of their keys.
fn seen(job: &Job, sense: Sense) -> (Evaluation, Evaluation, Vec<WayKey>) {
    let answer = evaluate(job);
    let keys: Vec<WayKey> = answer.can_be_beside().iter().map(|place| answer.ways.all[*place].key()).collect();
    let seen = answer.with_beside(job, sense, &keys);
    (answer, seen, keys)
}

/// The cheaper of two ways at a depth, where they differ by more than a rounding.
fn cheaper(one: &WaySweep, other: &WaySweep, depth: f64, basis: Basis) -> Option<Whose> {
    let [one, other] = [one, other].map(|way| way.cost_at(feet(depth), basis));
    let (one, other) = (one?.0, other?.0);
    let slack = 1e-9 * one.abs().max(other.abs());
    if one < other - slack {
        Some(Whose::This)
    } else if one > other + slack {
        Some(Whose::Other)
    } else {
        None
    }
}

/// At depths close to one another, the cheaper way is the one that the changes above tell.
fn agrees(one: &WaySweep, other: &WaySweep, basis: Basis) -> Result<(), TestCaseError> {
    let found = one.even_with(other, basis);
    let from = in_feet(one.start()).max(in_feet(other.start()));
    let to = in_feet(one.reach()).min(in_feet(other.reach()));
    for step in 1..400 {
        let depth = from + (to - from) * f64::from(step) / 400.0;
        let Some(told) = cheaper(one, other, depth, basis) else { continue };
        let above = found.crossings.iter().rev().find(|change| in_feet(change.depth) < depth);
        let ahead = above.map(|change| change.below).or(found.first);
        // At a step the depth itself still belongs to the part above it.
        let near = found.crossings.iter().any(|change| (in_feet(change.depth) - depth).abs() < 1e-6);
        prop_assert!(near || ahead == Some(told), "{told:?} at {depth} ft, {found:?}");
    }
    for change in found.crossings.iter().filter(|change| change.place == Place::Run) {
        let depth = in_feet(change.depth);
        let costs = [one, other].map(|way| way.cost_at(feet(depth), basis).map_or(f64::NAN, |cost| cost.0));
        prop_assert!((costs[0] - costs[1]).abs() < 1e-6 * costs[0].abs().max(1.0), "{costs:?} at {depth} ft");
    }
    Ok(())
}

/// Whether each further way is what it would be in the place of its voltage; how many there are.
fn is_what_it_would_be(job: &Job, sense: Sense) -> Result<usize, TestCaseError> {
    let (_, seen, keys) = seen(job, sense);
    let Some(sweep) = &seen.sweep else { return Ok(0) };
    let beside: BTreeMap<usize, &WaySweep> = sweep.beside.iter().filter_map(|way| Some((way.place?, way))).collect();
    prop_assert_eq!(beside.len(), keys.len());
    for (place, way) in beside {
        let mut moved = job.clone();
        // The way that the job goes by stays: what follows from it counts for all.
        moved.way = seen.ways.picked().map(|way| way.key());
        moved.pair[way.way as usize] = Some(seen.ways.all[place].key());
        let alone = evaluate(&moved).in_sense(sense);
        prop_assert_eq!(alone.sweep.as_ref().map(|sweep| sweep.way(way.way)), Some(way));
    }
    Ok(keys.len())
}

fn bases(sweeps: [&WaySweep; 2]) -> Vec<Basis> {
    let whole = sweeps.iter().all(|way| way.has_lifetime());
    Basis::ALL.into_iter().filter(|basis| whole || *basis != Basis::Lifetime).collect()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, ..ProptestConfig::default() })]

    #[test]
    fn a_further_way_is_what_it_would_be_in_the_place_of_its_voltage(plain in supplied(), deeper in any::<bool>()) {
        let sense = if deeper { Sense::DeeperWater } else { Sense::LongerLead };
        let mut job = plain.job(UnitSystem::Us);
        job.set(Field::ExtraEquipment, None);
        is_what_it_would_be(&job, sense).map(|_| ())?;
    }

    #[test]
    fn any_two_ways_change_places_where_it_is_told_and_nowhere_else(plain in supplied(), deeper in any::<bool>()) {
        let sense = if deeper { Sense::DeeperWater } else { Sense::LongerLead };
        let (_, seen, _) = seen(&plain.job(UnitSystem::Us), sense);
        let Some(sweep) = &seen.sweep else { return Ok(()) };
        let all: Vec<&WaySweep> = sweep.ways.iter().chain(&sweep.beside).collect();
        for (index, one) in all.iter().enumerate() {
            for other in &all[..index] {
                for basis in bases([one, other]) {
                    agrees(one, other, basis)?;
                }
            }
        }
    }
}

#[test]
fn the_pair_compared_as_any_two_is_the_curve_itself() {
    let text = include_str!("../golden/v1/house_and_stock_well_in_whole.job.json");
    let job = wellwright_core::job::wire::read_text(text).unwrap();
    let answer = evaluate(&job);
    let sweep = answer.sweep.as_ref().unwrap();
    for basis in Basis::ALL {
        let (curve, both) = (sweep.break_even(basis), sweep.way(Way::V240).even_with(sweep.way(Way::V480), basis));
        let name = |whose| if whose == Whose::This { Way::V240 } else { Way::V480 };
        assert_eq!(both.first.map(name), curve.first);
        let told: Vec<_> =
            both.crossings.iter().map(|change| (change.depth, name(change.below), change.place)).collect();
        let stood: Vec<_> = curve.crossings.iter().map(|change| (change.depth, change.below, change.place)).collect();
        assert_eq!(told, stood);
        assert!(!stood.is_empty() || basis == Basis::Cable, "{basis:?}");
    }
    // Nothing more is asked for, nothing more is there.
    assert!(sweep.beside.is_empty());
    assert!(answer.with_beside(&job, Sense::LongerLead, &[]).sweep.is_some_and(|sweep| sweep.beside.is_empty()));
}

#[test]
fn a_job_with_its_water_has_further_ways_as_it_gets_deeper_too() {
    let text = include_str!("../golden/v1/house_and_stock_well_in_whole.job.json");
    let mut job = wellwright_core::job::wire::read_text(text).unwrap();
    // What is entered as the extra of one way is not that of another.
    job.set(Field::ExtraEquipment, None);
    let answer = evaluate(&job);
    assert!(answer.deeper.is_some());
    // Every way that serves and does not stand for its voltage already.
    let sweep = answer.sweep.as_ref().unwrap();
    let served = answer.ways.all.iter().filter(|way| way.way.is_some_and(|voltage| way.stands_for(voltage))).count();
    assert_eq!(sweep.ways.iter().filter(|way| way.place.is_some()).count(), 2);
    for sense in [Sense::LongerLead, Sense::DeeperWater] {
        assert_eq!(is_what_it_would_be(&job, sense).unwrap(), served - 2);
    }
    assert!(served > 2);
}
