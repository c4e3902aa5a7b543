//! What stands in for a figure is that figure: entered, it changes nothing. And a figure that does not count changes
//! nothing, whatever it is.

use super::finite::absurd;
use super::jobs::{plain, supplied};
use super::tried;
use proptest::prelude::*;
use serde_json::Value;
use wellwright_core::evaluate::{Evaluation, evaluate, report};
use wellwright_core::job::{Field, Job, Part};
use wellwright_core::quantity::{Entry, UnitSystem};
use wellwright_core::standards::pipe::{Nominal, PipeSize, Series};
use wellwright_tests::difference;

/// Fields of the water, the line and the pump.
fn of_the_water(field: Field) -> bool {
    let group = field.path().split('.').next().unwrap();
    ["demand", "well", "line", "pump"].contains(&group)
        || [Field::MinimumSubmergence, Field::Altitude, Field::ServiceFactor].contains(&field)
}

/// Fields of the supply, the equipment and the energy.
fn of_the_supply(field: Field) -> bool {
    use Field as F;
    let group = field.path().split('.').next().unwrap();
    let of_pulses = [F::RiseTime, F::WaveSpeed, F::CableImpedance, F::MotorImpedance, F::MotorPeakLimit];
    let others = [F::LineFixed, F::LinePrice, F::LineFree];
    ["supply", "energy"].contains(&group) || of_pulses.contains(&field) || others.contains(&field)
}

/// Fields whose figure is judged, or holds for every way, once it is entered: what stands in for them is that of the way
/// that is picked alone.
const OF_ONE_WAY: [Field; 3] = [Field::TransformerRating, Field::MarkedShortCircuit, Field::MotorPeakLimit];

/// The job with its assumed pipes picked and all that stands in entered.
fn entered(job: &Job, answer: &Evaluation) -> (Job, usize) {
    let (mut typed, mut count) = (job.clone(), 0);
    for pipe in answer.water.system.iter().flat_map(|system| &system.pipes) {
        let pick = &mut typed.choices.pipes[pipe.part as usize];
        pick.series = Some(job.choices.series(pipe.part));
        pick.size = pipe.size.map(PipeSize::size).or(pick.size);
    }
    for field in Field::ALL.into_iter().filter(|field| of_the_water(*field) && field.counts(job)) {
        if job.get(field).is_none()
            && let Some(entry) = answer.inputs.stand_in(field)
        {
            typed.set(field, Some(entry));
            count += 1;
        }
    }
    (typed, count)
}

proptest! {
    #![proptest_config(tried(400))]

    #[test]
    fn what_stands_in_is_what_would_be_entered(plain in plain(), own_motor in any::<bool>()) {
        let mut job = plain.job(UnitSystem::Us);
        if !own_motor {
            job.set(Field::MotorPower, None);
        }
        let answer = evaluate(&job);
        let (typed, count) = entered(&job, &answer);
        prop_assert!(count >= 2, "hardly anything stands in");
        let (told, again) = (report("", &answer), report("", &evaluate(&typed)));
        prop_assert_eq!(difference(&told, &again, 1e-9, 1.0), None);
        // What was entered stands in for itself.
        let (twice, more) = entered(&typed, &evaluate(&typed));
        prop_assert_eq!((more, twice == typed), (0, true));
    }

    #[test]
    fn what_stands_in_for_the_supply_is_what_would_be_entered(plain in supplied()) {
        let job = plain.job(UnitSystem::Us);
        let answer = evaluate(&job);
        let mut typed = job.clone();
        for field in Field::ALL.into_iter().filter(|field| of_the_supply(*field) && !OF_ONE_WAY.contains(field)) {
            if job.get(field).is_none() {
                typed.set(field, answer.inputs.stand_in(field));
            }
        }
        prop_assert!(typed != job);
        // That an entry is unusual is told of what was entered alone, that a transformer stands in of what was not.
        let told = |answer: &Evaluation| {
            let mut told = report("", answer);
            told["findings"].as_array_mut().unwrap().retain(|finding| {
                !["BEYOND_USUAL", "FAULT_ASSUMED"].contains(&finding["code"].as_str().unwrap())
            });
            // A motor's impedance that was entered counts for the motors of deeper water too.
            for way in told["ways_in_deeper_water"].as_array_mut().into_iter().flatten() {
                way["outfits"] = Value::Null;
            }
            told
        };
        let (told, again) = (told(&answer), told(&evaluate(&typed)));
        prop_assert_eq!(difference(&told, &again, 1e-9, 1.0), None);
    }

    #[test]
    fn a_figure_that_does_not_count_changes_nothing(job in absurd(), at in any::<prop::sample::Index>(), value in any::<f64>(), fits in any::<bool>()) {
        let idle: Vec<Field> = Field::ALL.into_iter().filter(|field| !field.counts(&job)).collect();
        prop_assert!(idle.len() > 5);
        let field = idle[at.index(idle.len())];
        let accepted = field.spec().accepted;
        let value = if fits { accepted.min + (accepted.max - accepted.min) * (value.abs() % 1.0) } else { value };
        // By their words: a figure that was entered as no number is not even equal to itself.
        let answered = |job: &Job| format!("{:?}", evaluate(job));
        let mut other = job.clone();
        other.set(field, Some(Entry::new(value, accepted.unit)));
        prop_assert!(answered(&job) == answered(&other), "{field:?}");
        other.set(field, None);
        prop_assert!(answered(&job) == answered(&other), "{field:?}");
    }
}

/// The law holds idly where nothing stands in: over random jobs every kind of figure must.
#[test]
fn every_figure_that_follows_or_is_assumed_stands_in_somewhere() {
    use proptest::strategy::ValueTree as _;
    use wellwright_core::job::Stand;
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let mut met = std::collections::BTreeSet::new();
    for _ in 0..600 {
        let job = supplied().new_tree(&mut runner).unwrap().current().job(UnitSystem::Us);
        let answer = evaluate(&job);
        let stands =
            |field: &Field| field.counts(&job) && job.get(*field).is_none() && answer.inputs.stand_in(*field).is_some();
        met.extend(Field::ALL.into_iter().filter(stands));
    }
    for field in Field::ALL.into_iter().filter(|field| of_the_water(*field) || of_the_supply(*field)) {
        let expected = matches!(field.spec().default, Stand::Assumed(_) | Stand::Follows);
        assert_eq!(met.contains(&field), expected, "{field:?}");
    }
}

/// A pipe that is picked stands in without a flow too: schedule 40 steel of 1-1/2 in. has 1.610 in. inside (ASME B36.10),
/// new commercial steel is rough by 0.0018 in. (Moody).
#[test]
fn a_pipe_that_is_picked_stands_in_without_a_flow() {
    let mut job = Job::default();
    let pick = &mut job.choices.pipes[Part::Drop as usize];
    (pick.series, pick.size) = (Some(Series::SteelSchedule40), Nominal::named("1-1/2"));
    let answer = evaluate(&job);
    for (field, expected) in [(Field::DropInside, 1.610), (Field::DropRoughness, 0.0018)] {
        let stands = answer.inputs.stand_in(field).unwrap();
        assert!((stands.value - expected).abs() < 1e-9, "{field:?}: {stands:?}");
    }
}
