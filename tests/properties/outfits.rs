//! What a way needs beyond its lead, along the curve of a longer lead: at each depth the curve costs what the same
//! equipment costs in the same job moved there, above and below the end of every conductor and of every filter too.

use super::jobs::{Plain, supplied};
use super::supplies::Supplies;
use super::tried;
use proptest::prelude::*;
use proptest::strategy::ValueTree as _;
use std::collections::BTreeSet;
use wellwright_core::cable::filter::{Practice, Remedy, remedies, remedy};
use wellwright_core::cable::long_lead::{Wave, peak};
use wellwright_core::evaluate::{Basis, Evaluation, evaluate};
use wellwright_core::job::{Field, Job, Way, WayKey};
use wellwright_core::power::family::Kind;
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{
    ElectricPotential, Entry, Unit, UnitSystem, feet, in_feet, in_meters, meters, meters_per_second, ohms, seconds,
    volts,
};

/// Feet to either side of an end.
const BESIDE: f64 = 1e-6;

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
}

/// A job whose equipment is priced by its own, with the pole's distance and a device that all ways share.
fn fitted() -> impl Strategy<Value = Plain> {
    (supplied(), 0.0..800.0f64, 15.0..400.0f64, any::<bool>()).prop_map(|(plain, distance, device, chosen)| {
        let told = |field: &Field| matches!(field, Field::PoleDistance | Field::DeviceAmps);
        let mut supply = Supplies { ..plain.supply.clone() };
        supply.figures.retain(|(field, _)| !told(field));
        supply.figures.push((Field::PoleDistance, distance));
        if !chosen {
            supply.choices.remedy = None;
        }
        Plain { device: Some(device), supply, ..plain }
    })
}

fn job(plain: &Plain) -> Job {
    let mut job = plain.job(UnitSystem::Us);
    job.set(Field::ExtraEquipment, None);
    job
}

/// The same job with its pump, or the motor at the end of its lead on the surface, at another depth.
fn at(plain: &Plain, depth: f64) -> Evaluation {
    let mut moved = job(plain);
    let field = match plain.kind {
        MotorKind::Submersible => Field::PumpSetting,
        MotorKind::Surface => Field::SurfaceRun,
    };
    moved.set(field, Some(Entry::new(depth, Unit::Foot)));
    evaluate(&moved)
}

/// Depths beside every end of a piece of either way.
fn ends(answer: &Evaluation) -> Vec<f64> {
    let Some(sweep) = &answer.sweep else { return Vec::new() };
    let ends = sweep.ways.iter().flat_map(|way| way.pieces.iter().map(|piece| in_feet(piece.to)));
    let beside = ends.flat_map(|end| [end - BESIDE, end + BESIDE]);
    beside.filter(|depth| (0.0..3000.0).contains(depth)).collect()
}

/// How many costs were compared at a depth; an error where the curve and the job moved there disagree.
fn agree(plain: &Plain, answer: &Evaluation, depth: f64) -> Result<usize, TestCaseError> {
    let Some(sweep) = &answer.sweep else { return Ok(0) };
    let there = at(plain, depth);
    let mut compared = 0;
    for way in Way::ALL {
        let curve = sweep.way(way);
        let Some(place) = curve.place.filter(|_| curve.priced) else { continue };
        let (here, moved) = (&answer.ways.all[place], &there.ways.all[place]);
        let conductor = |run: Option<wellwright_core::evaluate::SupplyRun>| run.map(|run| run.run);
        // What a longer lead loses may ask for larger supply conductors; the curve keeps the job's own.
        let same = conductor(here.supply) == conductor(moved.supply) && here.frame == moved.frame;
        let (Some(cost), true) = (moved.cost, same) else { continue };
        let told = |basis| curve.cost_at(feet(depth), basis).map(|cost| cost.0);
        let piece = curve.piece_at(feet(depth));
        prop_assert!(
            told(Basis::Installed).is_some_and(|told| close(told, cost.first.0)),
            "{way:?} at {depth} ft: {:?} on the curve, {cost:?}\n{piece:?}",
            told(Basis::Installed)
        );
        if let (true, Some(lifetime)) = (sweep.has_lifetime(), cost.lifetime) {
            prop_assert!(
                told(Basis::Lifetime).is_some_and(|told| close(told, lifetime.0)),
                "{way:?} at {depth} ft: {:?} over the years, {cost:?}\n{piece:?}",
                told(Basis::Lifetime)
            );
        }
        compared += 1;
    }
    Ok(compared)
}

proptest! {
    #![proptest_config(tried(60))]

    #[test]
    fn the_curve_costs_what_the_job_moved_there_costs(plain in fitted(), depths in prop::collection::vec(0.0..3000.0, 4)) {
        let answer = evaluate(&job(&plain));
        for depth in depths.into_iter().chain(ends(&answer)) {
            agree(&plain, &answer, depth)?;
        }
    }
}

/// The law above would hold idly over curves of one piece.
#[test]
fn the_random_curves_have_every_remedy() {
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let (mut met, mut compared, mut steps) = (BTreeSet::new(), 0, 0);
    for _ in 0..60 {
        let plain = fitted().new_tree(&mut runner).unwrap().current();
        let answer = evaluate(&job(&plain));
        let Some(sweep) = &answer.sweep else { continue };
        for way in &sweep.ways {
            met.extend(way.pieces.iter().map(|piece| piece.outfit.remedy));
            let changes = way.pieces.windows(2).filter(|pair| pair[0].outfit.remedy != pair[1].outfit.remedy);
            steps += changes.count();
        }
        compared += agree(&plain, &answer, plain.own_depth()).unwrap();
    }
    assert!(met.len() == 4 && steps > 20 && compared > 40, "{met:?}, {steps} steps, {compared} compared");
}

/// Beyond the reach of the last filter none helps: its price stands on the curve and on the way, and a finding stops.
#[test]
fn a_lead_beyond_every_filter_costs_the_last_one() {
    let mut job =
        wellwright_core::job::wire::read_text(include_str!("../../core/examples/jobs/house_and_stock_well.json"))
            .unwrap();
    job.way = Some(WayKey::Generic(Kind::ConvertingActive));
    job.set(Field::SupplyVolts, Some(Entry::new(480.0, Unit::Volt)));
    job.set(Field::ExtraEquipment, None);
    job.set(Field::SurfaceRun, Some(Entry::new(3000.0, Unit::Foot)));
    for setting in [1990.0, 2010.0] {
        job.set(Field::PumpSetting, Some(Entry::new(setting, Unit::Foot)));
        let answer = evaluate(&job);
        let sweep = answer.sweep.as_ref().unwrap();
        let piece = sweep.way(Way::V480).piece_at(feet(setting)).unwrap();
        let way = &answer.ways.all[sweep.way(Way::V480).place.unwrap()];
        assert_eq!(piece.outfit.remedy, Remedy::SineFilter);
        let (on_curve, first) =
            (sweep.way(Way::V480).cost_at(feet(setting), Basis::Installed), way.cost.unwrap().first);
        assert!(close(on_curve.unwrap().0, first.0), "{setting} ft: {on_curve:?} {first:?} {:?}", way.cost);
        assert_eq!(way.stress.unwrap().cured, setting < 2000.0);
    }
}

/// A motor's surge impedance is above its lead's, so that the pulse grows.
fn pulses() -> impl Strategy<Value = (ElectricPotential, Wave, ElectricPotential)> {
    let wave = (100.0..250.0f64, 0.02..5.0f64, 20.0..300.0f64, 0.0..10_000.0f64);
    (280.0..900.0f64, wave, 600.0..3000.0f64).prop_map(|(bus, (speed, rise, cable, more), limit)| {
        let (speed, rise) = (meters_per_second(1e6 * speed), seconds(1e-6 * rise));
        (volts(bus), Wave { speed, rise, cable: ohms(cable), motor: ohms(cable + more) }, volts(limit))
    })
}

proptest! {
    #![proptest_config(tried(2000))]

    #[test]
    fn the_remedies_by_length_are_those_of_each_length(
        (bus, wave, limit) in pulses(),
        lengths in prop::collection::vec(0.0..2000.0f64, 6),
    ) {
        let practice = Practice::default();
        let found = remedies(bus, wave, limit, &practice).unwrap();
        let ends = found.iter().map(|(to, _)| in_meters(*to)).filter(|to| to.is_finite());
        let beside = ends.flat_map(|to| [to * (1.0 - 1e-9), to * (1.0 + 1e-9)]);
        let reach = in_meters(practice.sine.longest);
        for length in lengths.into_iter().chain(beside).chain([0.0, reach * (1.0 + 1e-9)]) {
            let told = found.iter().find(|(to, _)| length <= in_meters(*to)).map(|(_, remedy)| *remedy);
            let grown = peak(bus, wave, meters(length)).unwrap();
            let least = remedy((grown, bus), limit, meters(length), &practice).unwrap();
            // Beyond the reach of the last one, or where it leaves too much, none helps, and the last one is told.
            let least = if length > reach || bus * practice.sine_leaves > limit { least.or(Some(Remedy::SineFilter)) } else { least };
            prop_assert_eq!(told, least, "{} m: {:?}", length, found);
        }
        prop_assert!(found.windows(2).all(|pair| pair[0].0 < pair[1].0 && pair[0].1 < pair[1].1), "{:?}", found);
    }
}
