//! The sweep over depth against a scan that tries every candidate at one depth, worked by hand.

use super::jobs::{Plain, plain};
use super::tried;
use super::years_by_hand::equipment;
use proptest::prelude::*;
use wellwright_core::evaluate::{Basis, Evaluation, evaluate};
use wellwright_core::job::{Field, Way};
use wellwright_core::quantity::{Entry, Unit, UnitSystem, feet, in_volts};
use wellwright_core::standards::conductor::Size;

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
}

fn agree_at(job: &Plain, answer: &Evaluation, depth: f64) -> Result<(), TestCaseError> {
    let Some(sweep) = answer.sweep.as_ref() else {
        prop_assert_eq!(job.device(), None, "no sweep, though every figure is good");
        return Ok(());
    };
    for way in Way::ALL {
        let core = sweep.way(way);
        let found = core.run_at(feet(depth));
        let hand = job.lead(way as usize, depth);
        let (Some(found), Some(hand)) = (found, hand) else {
            prop_assert_eq!(found.is_some(), hand.is_some(), "{:?} at {} ft", way, depth);
            continue;
        };
        let conductor = (found.run.conductor.sets, found.run.conductor.size as usize);
        prop_assert_eq!(conductor, hand.candidate, "{:?} at {} ft", way, depth);
        prop_assert_eq!(found.run.ground, Size::ALL[hand.ground], "{:?} at {} ft", way, depth);
        let cost = |basis| core.cost_at(feet(depth), basis).unwrap().0;
        prop_assert!(close(cost(Basis::Cable), hand.cable), "{:?} at {} ft: {:?}", way, depth, hand);
        // Both ways need the same beyond what was entered as the extra equipment of the one.
        let beyond = core.piece_at(feet(depth)).unwrap().outfit.cost;
        let alike = beyond.total().0 - beyond.extra.0;
        let other = sweep.way(Way::V240).piece_at(feet(depth)).map(|piece| piece.outfit.cost.total().0);
        prop_assert!(other.is_none_or(|other| close(other, alike)), "{alike} and {other:?}");
        prop_assert!(close(cost(Basis::Installed), hand.installed + alike), "{:?} at {} ft: {:?}", way, depth, hand);
        if let Some(equipment) = equipment(answer, sweep) {
            let years = job.years(answer, way as usize, &hand, depth, equipment[way as usize]);
            let whole = hand.installed + alike + years;
            prop_assert!(
                close(cost(Basis::Lifetime), whole),
                "{:?} at {} ft: {} {}",
                way,
                depth,
                cost(Basis::Lifetime),
                whole
            );
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(tried(200))]

    // 200 jobs, 6 depths each.
    #[test]
    fn the_sweep_is_what_a_scan_by_hand_finds(job in plain(), depths in prop::collection::vec(0.0..3000.0, 6)) {
        let answer = evaluate(&job.job(UnitSystem::Us));
        for depth in depths {
            agree_at(&job, &answer, depth)?;
        }
    }

    #[test]
    fn the_lead_at_the_depth_is_the_sweep_at_that_depth(job in plain()) {
        let answer = evaluate(&job.job(UnitSystem::Us));
        let (Some(sweep), Some(here)) = (&answer.sweep, &answer.here) else { return Ok(()) };
        for way in Way::ALL {
            let run = sweep.way(way).run_at(feet(job.own_depth()));
            prop_assert_eq!(here.way(way).map(|lead| lead.run), run.copied());
            let Some(lead) = here.way(way) else { continue };
            prop_assert_eq!(Some(lead.cable), sweep.way(way).cost_at(feet(job.own_depth()), Basis::Cable));
            let candidate = (lead.run.run.conductor.sets, lead.run.run.conductor.size as usize);
            let feet = job.lead_feet(job.own_depth());
            let hand = job.circuit(way as usize).drop(job.ohms(candidate, feet)).unwrap();
            prop_assert!((in_volts(lead.drop) - hand).abs() <= 1e-9 * 240.0, "{} and {hand}", in_volts(lead.drop));
        }
        if let (Some(saving), Some(low), Some(high)) = (here.saving, here.way(Way::V240), here.way(Way::V480)) {
            prop_assert_eq!(saving.cable, low.cable - high.cable);
            prop_assert!((saving.net.0 - (saving.cable.0 - job.extra)).abs() <= 1e-6);
        } else {
            prop_assert!(here.ways.iter().any(Option::is_none) && here.saving.is_none());
        }
    }

    // At the end of a run its conductor still serves; the next one serves just below it.
    #[test]
    fn a_run_ends_where_its_drop_reaches_the_limit(job in plain()) {
        let answer = evaluate(&job.job(UnitSystem::Us));
        let Some(sweep) = &answer.sweep else { return Ok(()) };
        for way in Way::ALL {
            let runs = &sweep.way(way).runs;
            for (run, next) in runs.iter().zip(runs.iter().skip(1)) {
                prop_assert_eq!(run.to, next.from);
                prop_assert_eq!(sweep.way(way).run_at(run.to), Some(run));
                prop_assert_eq!(sweep.way(way).run_at(run.to + feet(1e-6)), Some(next));
                let ends_at = job.lead_feet(run.to.value / 0.3048);
                let candidate = (run.run.conductor.sets, run.run.conductor.size as usize);
                let circuit = job.circuit(way as usize);
                let drop = circuit.drop(job.ohms(candidate, ends_at)).unwrap();
                let limit = job.drop / 100.0 * circuit.volts;
                prop_assert!(close(drop, limit), "{drop} V at the end of {run:?}, limit {limit}");
            }
        }
    }
}

/// A depth at the very end of what the field accepts still has its lead, in either unit.
#[test]
fn the_deepest_accepted_setting_is_served() {
    for entry in
        [Entry::new(3000.0, Unit::Foot), Entry::new(914.4, Unit::Meter), Entry::new(914.400_000_9, Unit::Meter)]
    {
        let mut job = wellwright_core::job::Job::default();
        job.set(Field::MotorPower, Some(Entry::new(1.0, Unit::Horsepower)));
        job.set(Field::PumpSetting, Some(entry));
        let answer = evaluate(&job);
        assert!(answer.errors.is_empty(), "{entry:?}: {:?}", answer.errors);
        let here = answer.here.unwrap();
        assert!(here.ways.iter().all(Option::is_some), "{entry:?}: {:?}", answer.findings);
    }
}
