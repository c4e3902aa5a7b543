//! Levels in the well: laws, and where a finding begins.

use super::jobs::{LEVELS, plain};
use super::tried;
use proptest::prelude::*;
use wellwright_core::evaluate::{Basis, DepthRun, Evaluation, evaluate, report};
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{DrawdownBy, Field, Job};
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{Entry, Length, Unit, UnitSystem, feet, in_feet};
use wellwright_core::standards::conductor::Metal;
use wellwright_core::water::level::{off_bottom, pumping_level, submergence};

fn close(a: Length, b: f64) -> bool {
    (in_feet(a) - b).abs() <= 1e-9 * 5000.0
}

/// What is found about the water.
fn found(answer: &Evaluation) -> Vec<Finding> {
    let codes = ["PUMPING_LEVEL_AT_PUMP", "PUMP_NEAR_BOTTOM", "LEVEL_BELOW_BOTTOM"];
    answer.findings.iter().filter(|finding| codes.contains(&finding.code())).copied().collect()
}

proptest! {
    #![proptest_config(tried(300))]

    // The datum is a matter of taste: moved for both, nothing lies between them that did not before.
    #[test]
    fn a_moved_datum_moves_no_difference(setting in 0.0..3000.0, rest in 0.0..3000.0, fall in 0.0..300.0, up in 0.0..500.0) {
        let plain = submergence(feet(setting), pumping_level(feet(rest), feet(fall)));
        let moved = submergence(feet(setting + up), pumping_level(feet(rest + up), feet(fall)));
        prop_assert!(close(plain, in_feet(moved)));
        prop_assert!(close(off_bottom(feet(setting + fall), feet(setting)), fall));
        prop_assert_eq!(submergence(feet(setting), feet(rest)), -submergence(feet(rest), feet(setting)));
    }

    // More drawdown leaves as much less water above the pump.
    #[test]
    fn what_the_water_falls_is_missing_above_the_pump(setting in 0.0..3000.0, rest in 0.0..3000.0, fall in 0.0..300.0, more in 0.0..300.0) {
        let above = |fall: f64| submergence(feet(setting), pumping_level(feet(rest), feet(fall)));
        prop_assert!(close(above(fall) - above(fall + more), more));
        let level = pumping_level(feet(rest), feet(fall));
        prop_assert!(level >= feet(rest));
        prop_assert!(close(submergence(feet(setting), level) + level, setting));
    }

    // The answer by hand, over random jobs; a level that was not entered takes away only what needs it.
    #[test]
    fn levels_are_what_they_are_by_hand(job in plain()) {
        let answer = evaluate(&job.job(UnitSystem::Us));
        // A motor on the surface lifts from no well.
        let [rest, fall, well, least] = if job.kind == MotorKind::Surface { [None; 4] } else { job.levels };
        let fall = match job.water.drawdown {
            // A pump at full speed draws what the line lets through: the drawdown grows in proportion.
            DrawdownBy::Measured if answer.water.running.is_some() => {
                let share = answer.water.running.unwrap() / answer.water.demand.unwrap().flow.value;
                fall.map(|fall| fall * share.value)
            }
            // A flow too small for any formula has no drawdown.
            DrawdownBy::Measured if !answer.findings.contains(&Finding::BeyondFormulas) => fall,
            // Worked out from the flow: the law of the drawdown is tried elsewhere.
            _ => answer.water.drawdown.map(in_feet),
        };
        let near = |found: Option<Length>, hand: Option<f64>| match (found, hand) {
            (Some(found), Some(hand)) => close(found, hand),
            (found, hand) => found.is_none() && hand.is_none(),
        };
        let pumping = rest.zip(fall).map(|(rest, fall)| rest + fall);
        prop_assert!(near(answer.water.static_level, rest) && near(answer.water.well_depth, well));
        prop_assert!(near(answer.water.pumping_level, pumping));
        prop_assert!(near(answer.water.submergence, pumping.map(|level| job.depth - level)));
        let least = least.unwrap_or(10.0);
        let mut hand = Vec::new();
        // Far enough off the limit that rounding is no matter; the limits themselves are tried below.
        // At rest the water stands higher than while the pump runs: too little then is too little always.
        let above = pumping.or(rest).map(|level| job.depth - level);
        if let Some(above) = above.filter(|above| *above < 1e-5 || *above < least - 1e-5) {
            hand.push(if above < 1e-5 { Severity::Stop } else { Severity::Caution });
        }
        if let Some(off) = well.map(|well| well - job.depth).filter(|off| *off < 10.0 - 1e-5) {
            hand.push(if off < 1e-5 { Severity::Stop } else { Severity::Caution });
        }
        if rest.zip(well).is_some_and(|(rest, well)| pumping.unwrap_or(rest) > well - 1e-5) {
            hand.push(Severity::Stop);
        }
        hand.sort_by_key(|severity| std::cmp::Reverse(*severity));
        prop_assert_eq!(found(&answer).iter().map(Finding::severity).collect::<Vec<_>>(), hand, "{:?}", answer.water);
    }

    // Nothing of the lead hangs on the levels, whatever they are.
    #[test]
    fn the_lead_does_not_depend_on_the_levels(job in plain(), bad in prop::sample::select(&LEVELS[..])) {
        let with = job.job(UnitSystem::Us);
        let mut without = with.clone();
        for field in LEVELS {
            without.set(field, None);
        }
        let mut wrong = with.clone();
        wrong.set(bad, Some(Entry::new(f64::NAN, Unit::Foot)));
        let [with, without, wrong] = [with, without, wrong].map(|job| evaluate(&job));
        // The equipment that stands for a voltage may be another, where the pump's power is another.
        let leads = |answer: &Evaluation| {
            let runs = answer.sweep.clone().map(|sweep| sweep.ways.map(|way| way.runs));
            let runs = runs.map(|ways| ways.map(|runs| runs.into_iter().map(|run| DepthRun { energy: None, yearly: None, ..run }).collect::<Vec<_>>()));
            let cheaper = answer.sweep.as_ref().map(|sweep| sweep.break_even(Basis::Cable).clone());
            let here = answer.here.as_ref().map(|here| here.ways.map(|way| way.map(|way| (way.cable, way.drop, way.loss))));
            (runs, cheaper, here)
        };
        prop_assert_eq!(leads(&with), leads(&without));
        prop_assert_eq!(leads(&with), leads(&wrong));
        prop_assert_eq!(&with.errors, &without.errors);
        let told = wrong.errors.iter().any(|error| error.field() == bad && error.code() == "not_finite");
        prop_assert_eq!(told, bad.counts(&job.job(UnitSystem::Us)));
    }
}

/// A job with levels: pump setting, static level, drawdown, well depth, least submergence, in one unit.
fn job(unit: Unit, levels: [Option<f64>; 5]) -> Job {
    let mut job = Job::default();
    job.set(Field::MotorPower, Some(Entry::new(7.5, Unit::Horsepower)));
    for (field, level) in [Field::PumpSetting].into_iter().chain(LEVELS).zip(levels) {
        job.set(field, level.map(|level| Entry::new(level, unit)));
    }
    job
}

/// Codes and severities of what is found about the water, at these levels in feet and at the same in meters.
fn at(levels: [Option<f64>; 5]) -> Vec<(&'static str, Severity)> {
    let told = |job: &Job| -> Vec<_> {
        found(&evaluate(job)).iter().map(|finding| (finding.code(), finding.severity())).collect()
    };
    let us = told(&job(Unit::Foot, levels));
    let si = told(&job(Unit::Meter, levels.map(|level| level.map(|level| level * 0.3048))));
    assert_eq!(us, si, "{levels:?} ft in meters");
    us
}

#[test]
fn the_water_above_the_pump_is_judged_at_its_limits() {
    let above = |setting: f64, least: Option<f64>| at([Some(setting), Some(430.1), Some(41.7), None, least]);
    let (stop, caution) = (("PUMPING_LEVEL_AT_PUMP", Severity::Stop), ("PUMPING_LEVEL_AT_PUMP", Severity::Caution));
    assert_eq!(above(481.8, None), [], "ten feet, equality passes");
    assert_eq!(above(481.7, None), [caution]);
    assert_eq!(above(471.801, None), [caution]);
    assert_eq!(above(471.8, None), [stop], "the water at the pump");
    assert_eq!(above(0.0, None), [stop]);
    assert_eq!(above(471.801, Some(0.0)), [], "nothing asked above the pump");
    assert_eq!(above(471.8, Some(0.0)), [stop], "dry whatever is asked");
    assert_eq!(above(496.8, Some(25.0)), []);
    assert_eq!(above(496.7, Some(25.0)), [caution]);
    // What was not entered is not judged.
    assert_eq!(at([Some(100.0), None, Some(430.0), None, None]), []);
    assert_eq!(at([None, Some(430.0), Some(40.0), None, None]), []);
}

/// Without a drawdown the level at rest is judged: while the pump runs, no more water stands above it than at rest.
#[test]
fn the_water_at_rest_is_judged_where_the_drawdown_is_not_known() {
    let above = |setting: f64, least: Option<f64>| at([Some(setting), Some(430.1), None, None, least]);
    let (stop, caution) = (("PUMPING_LEVEL_AT_PUMP", Severity::Stop), ("PUMPING_LEVEL_AT_PUMP", Severity::Caution));
    assert_eq!(above(440.1, None), [], "ten feet, equality passes");
    assert_eq!(above(440.0, None), [caution]);
    assert_eq!(above(430.2, None), [caution]);
    assert_eq!(above(430.2, Some(0.0)), []);
    assert_eq!(above(430.1, None), [stop], "the water at the pump");
    assert_eq!(above(430.1, Some(0.0)), [stop]);
    assert_eq!(at([Some(620.0), Some(700.0), None, None, None]), [stop]);
    // A drawdown that can't be used is no drawdown.
    let mut wrong = job(Unit::Foot, [Some(620.0), Some(700.0), None, None, None]);
    wrong.set(Field::Drawdown, Some(Entry::new(-1.0, Unit::Foot)));
    assert_eq!(found(&evaluate(&wrong)).len(), 1);
    // With one, the level while the pump runs is judged, once.
    let answer = evaluate(&job(Unit::Foot, [Some(620.0), Some(700.0), Some(5.0), None, None]));
    let [Finding::PumpingLevelAtPump { submergence, minimum }] = found(&answer)[..] else { panic!("{answer:?}") };
    assert!(close(submergence, -85.0) && close(minimum, 10.0));
}

#[test]
fn a_level_at_the_bottom_is_judged_at_its_limits() {
    let stop = ("LEVEL_BELOW_BOTTOM", Severity::Stop);
    let at_rest = |well: f64| at([None, Some(430.1), None, Some(well), None]);
    assert_eq!(at_rest(430.2), []);
    assert_eq!(at_rest(430.1), [stop], "no water above the bottom");
    assert_eq!(at_rest(430.0), [stop]);
    let running = |well: f64| at([None, Some(430.1), Some(41.7), Some(well), None]);
    assert_eq!(running(471.9), []);
    assert_eq!(running(471.8), [stop], "no water above the bottom");
    assert_eq!(running(430.0), [stop], "both levels, one finding");
    assert_eq!(at([None, None, Some(41.7), Some(10.0), None]), []);
    // The level at rest is told where it reaches the bottom itself, else the pumping level.
    for (well, told) in [(440.0, 471.8), (430.0, 430.1)] {
        let answer = evaluate(&job(Unit::Foot, [None, Some(430.1), Some(41.7), Some(well), None]));
        let [Finding::LevelBelowBottom { level, bottom }] = found(&answer)[..] else { panic!("{answer:?}") };
        assert!(close(level, told) && close(bottom, well), "{level:?}");
    }
}

#[test]
fn the_bottom_below_the_pump_is_judged_at_its_limits() {
    let well = |depth: f64| at([Some(610.3), None, None, Some(depth), None]);
    let (stop, caution) = (("PUMP_NEAR_BOTTOM", Severity::Stop), ("PUMP_NEAR_BOTTOM", Severity::Caution));
    assert_eq!(well(620.3), [], "ten feet off, equality passes");
    assert_eq!(well(620.2), [caution]);
    assert_eq!(well(610.301), [caution]);
    assert_eq!(well(610.3), [stop], "on the bottom");
    assert_eq!(well(600.0), [stop]);
    assert_eq!(well(0.0), [stop]);
    // Water deeper than the well, and all at ground level.
    assert_eq!(at([Some(610.3), Some(3000.0), Some(3000.0), Some(0.0), Some(200.0)]).len(), 3);
    let all = at([Some(0.0), Some(0.0), Some(0.0), Some(0.0), Some(0.0)]);
    assert!(all.len() == 3 && all.contains(&stop) && all.iter().all(|(_, severity)| *severity == Severity::Stop));
}

#[test]
fn a_finding_about_the_water_is_reported_with_its_figures() {
    let told = report("", &evaluate(&job(Unit::Foot, [Some(480.0), Some(430.0), Some(41.5), Some(485.0), None])));
    let figure = |value: f64| serde_json::json!({"value": value, "unit": "ft"});
    let levels = told["levels"].as_object().unwrap();
    for (name, value) in
        [("static_level", 430.0), ("pumping_level", 471.5), ("submergence", 8.5), ("well_depth", 485.0)]
    {
        assert_eq!(wellwright_tests::difference(&levels[name], &figure(value), 1e-9, 0.0), None, "{name}");
    }
    let findings = told["findings"].as_array().unwrap();
    for (code, actual, limit) in [("PUMPING_LEVEL_AT_PUMP", 8.5, 10.0), ("PUMP_NEAR_BOTTOM", 5.0, 10.0)] {
        let finding = findings.iter().find(|finding| finding["code"] == code).unwrap();
        assert_eq!((&finding["severity"], &finding["source"]), (&"caution".into(), &"practice".into()));
        assert_eq!(wellwright_tests::difference(&finding["actual"], &figure(actual), 1e-9, 0.0), None, "{code}");
        assert_eq!(wellwright_tests::difference(&finding["limit"], &figure(limit), 1e-9, 0.0), None, "{code}");
    }
    let told = report("", &evaluate(&job(Unit::Foot, [None, Some(430.0), Some(41.5), Some(440.0), None])));
    let [finding] = &told["findings"].as_array().unwrap()[..] else { panic!("{told}") };
    assert_eq!((&finding["code"], &finding["severity"]), (&"LEVEL_BELOW_BOTTOM".into(), &"stop".into()));
    assert_eq!(finding["source"], "practice");
    assert_eq!(wellwright_tests::difference(&finding["actual"], &figure(471.5), 1e-9, 0.0), None);
    assert_eq!(wellwright_tests::difference(&finding["limit"], &figure(440.0), 1e-9, 0.0), None);
}

/// Less than five feet asked for above the pump is unusual, five is not.
#[test]
fn little_water_asked_for_is_unusual() {
    let told = |least: f64| {
        let answer = evaluate(&job(Unit::Foot, [Some(620.0), None, None, None, Some(least)]));
        answer
            .findings
            .iter()
            .any(|finding| matches!(finding, Finding::BeyondUsual { field: Field::MinimumSubmergence, .. }))
    };
    assert!(told(4.9) && told(0.0) && !told(5.0) && !told(200.0));
}

/// Aluminum is a stop down the well; the lead of a motor on the surface hangs in none.
#[test]
fn aluminum_is_stopped_in_a_well() {
    let stopped = |kind: Option<MotorKind>, metal: Option<Metal>| {
        let mut job = job(Unit::Foot, [Some(300.0), None, None, None, None]);
        (job.choices.motor_kind, job.choices.metal) = (kind, metal);
        evaluate(&job).findings.contains(&Finding::AluminumInWell)
    };
    assert!(stopped(None, Some(Metal::Aluminum)), "a submersible motor is assumed");
    assert!(stopped(Some(MotorKind::Submersible), Some(Metal::Aluminum)));
    assert!(!stopped(Some(MotorKind::Submersible), Some(Metal::Copper)) && !stopped(None, None));
    assert!(!stopped(Some(MotorKind::Surface), Some(Metal::Aluminum)));
    assert!(!stopped(Some(MotorKind::Surface), Some(Metal::Copper)));
}
