//! The choice of a conductor: monotone in length and voltage, within both limits, and never larger than needed.

use super::jobs::{Plain, plain};
use super::tried;
use proptest::prelude::*;
use wellwright_core::cable::ampacity::ampacity;
use wellwright_core::cable::drop::voltage_drop;
use wellwright_core::cable::lead::{Conductor, Demands, Governs, impedance, run_for, runs};
use wellwright_core::evaluate::{Sweep, evaluate};
use wellwright_core::job::Way;
use wellwright_core::quantity::{Length, UnitSystem, feet, in_amperes, meters};
use wellwright_core::standards::conductor::Size;

fn sweep(job: &Plain) -> Option<Sweep> {
    evaluate(&job.job(UnitSystem::Us)).sweep
}

/// Every candidate, in the order of the choice.
fn candidates(demands: &Demands) -> Vec<Conductor> {
    let parallel = |sets: u8, size: Size| sets == 1 || size >= Size::Awg1_0;
    let all = (1..=demands.most_sets).flat_map(|sets| Size::ALL.map(|size| Conductor { sets, size }));
    all.filter(|candidate| parallel(candidate.sets, candidate.size)).collect()
}

fn carries(demands: &Demands, candidate: Conductor) -> bool {
    let one = ampacity(candidate.size, demands.setting, 3 * usize::from(candidate.sets));
    one.is_some_and(|one| in_amperes(one) * f64::from(candidate.sets) >= in_amperes(demands.required))
}

/// Drop over the limit: above 1 the limit is passed; infinite where the motor can't be fed at all.
fn drop_over_limit(demands: &Demands, candidate: Conductor, length: Length) -> f64 {
    let (r, x) = impedance(candidate, demands.setting.metal, demands.build);
    let drop = voltage_drop(demands.load, r, x, length).unwrap();
    drop.map_or(f64::INFINITY, |drop| (drop / demands.load.sending).value / demands.allowed_drop)
}

proptest! {
    #![proptest_config(tried(300))]

    #[test]
    fn a_longer_lead_never_takes_a_smaller_conductor(job in plain(), a in 0.0..6000.0, b in 0.0..6000.0) {
        let Some(sweep) = sweep(&job) else { return Ok(()) };
        let (short, long) = (feet(f64::min(a, b)), feet(f64::max(a, b)));
        for way in Way::ALL {
            let runs = runs(&sweep.way(way).demands).unwrap();
            match (run_for(&runs, short), run_for(&runs, long)) {
                (Some(short), Some(long)) => prop_assert!(short.conductor <= long.conductor, "{short:?} {long:?}"),
                (None, Some(long)) => prop_assert!(false, "only the longer lead is served: {long:?}"),
                _ => {}
            }
            prop_assert!(runs.windows(2).all(|pair| pair[0].conductor < pair[1].conductor));
            prop_assert!(runs.windows(2).all(|pair| pair[0].longest < pair[1].longest));
        }
    }

    #[test]
    fn a_higher_voltage_never_takes_a_larger_conductor(job in plain()) {
        // One nameplate current at most: two that disagree are not one motor at equal power.
        let job = Plain { nameplate: [job.nameplate[0], None], ..job };
        let answer = evaluate(&job.job(UnitSystem::Us));
        let Some(here) = answer.here else { return Ok(()) };
        match (here.way(Way::V240), here.way(Way::V480)) {
            (Some(low), Some(high)) => prop_assert!(high.run.run.conductor <= low.run.run.conductor),
            (Some(low), None) => prop_assert!(false, "only 240 V is served: {low:?}"),
            _ => {}
        }
    }

    #[test]
    fn the_conductor_meets_both_limits_and_no_smaller_one_does(job in plain(), length in 0.0..6000.0) {
        let Some(sweep) = sweep(&job) else { return Ok(()) };
        for way in Way::ALL {
            let demands = &sweep.way(way).demands;
            let runs = runs(demands).unwrap();
            let chosen = run_for(&runs, feet(length));
            if let Some(chosen) = chosen {
                prop_assert!(carries(demands, chosen.conductor), "{chosen:?} can't carry the current");
                let share = drop_over_limit(demands, chosen.conductor, feet(length));
                prop_assert!(share <= 1.0 + 1e-9, "{chosen:?} drops {share} of the limit");
                let least = candidates(demands).into_iter().find(|candidate| carries(demands, *candidate)).unwrap();
                prop_assert_eq!(chosen.governs == Governs::Ampacity, chosen.conductor == least);
            }
            let smaller = |candidate: &Conductor| chosen.is_none_or(|chosen| *candidate < chosen.conductor);
            for candidate in candidates(demands).into_iter().filter(smaller) {
                let fails = !carries(demands, candidate)
                    || drop_over_limit(demands, candidate, feet(length)) > 1.0 - 1e-9;
                prop_assert!(fails, "{candidate:?} serves too, chosen {chosen:?}");
            }
        }
    }

    #[test]
    fn at_the_longest_lead_the_drop_is_the_limit(job in plain()) {
        let Some(sweep) = sweep(&job) else { return Ok(()) };
        for way in Way::ALL {
            let demands = &sweep.way(way).demands;
            let runs = runs(demands).unwrap();
            for run in &runs {
                prop_assert_eq!(run_for(&runs, run.longest), Some(run));
                // Beyond 1,000 km no drop is worked out.
                if run.longest > meters(1e6) {
                    continue;
                }
                let share = drop_over_limit(demands, run.conductor, run.longest);
                prop_assert!((share - 1.0).abs() <= 1e-9, "{run:?}: {share}");
            }
        }
    }
}
