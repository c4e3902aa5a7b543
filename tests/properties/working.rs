//! The working behind an answer leads to that answer: every step worked again from the numbers that it shows.

use super::arithmetic::{numbers, work};
use super::jobs::{Plain, plain};
use super::tried;
use proptest::prelude::*;
use proptest::strategy::ValueTree as _;
use std::collections::{BTreeMap, BTreeSet};
use wellwright_core::evaluate::{Basis, Evaluation, Place, evaluate};
use wellwright_core::finding::Finding;
use wellwright_core::job::Way;
use wellwright_core::papers::{EnteredValue, LimitKind, Math, Measured, Topic, Working, working};
use wellwright_core::quantity::{Entry, Unit, UnitSystem, in_amperes, in_feet, in_volts};
use wellwright_core::standards::conductor::Metal;

const SYSTEMS: [UnitSystem; 2] = [UnitSystem::Us, UnitSystem::Si];

fn topics() -> Vec<Topic> {
    let ways = Way::ALL.into_iter();
    let mut all: Vec<Topic> =
        ways.flat_map(|way| [Topic::MotorCurrent(way), Topic::Ampacity(way), Topic::Drop(way)]).collect();
    for basis in Basis::ALL {
        all.extend(Way::ALL.map(|way| Topic::CableCost(way, basis)));
        all.extend([Topic::Saving(basis), Topic::BreakEven(basis)]);
    }
    all.extend([Topic::PumpingLevel, Topic::Submergence]);
    all
}

/// The figure that the evaluation itself holds for a topic.
fn own(answer: &Evaluation, topic: Topic) -> Option<Entry> {
    let lead = |way: Way| answer.here.as_ref().and_then(|here| here.way(way));
    Some(match topic {
        Topic::MotorCurrent(way) => {
            let current = answer.inputs.motor_current[way as usize].as_ref().ok()?;
            Entry::new(in_amperes(current.sizing), Unit::Ampere)
        }
        Topic::Ampacity(way) => Entry::new(in_amperes(lead(way)?.run.run.ampacity), Unit::Ampere),
        Topic::Drop(way) => Entry::new(in_volts(lead(way)?.drop), Unit::Volt),
        Topic::CableCost(way, Basis::Cable) => Entry::new(lead(way)?.cable.0, Unit::Dollar),
        Topic::CableCost(way, Basis::Installed) => Entry::new(lead(way)?.installed.0, Unit::Dollar),
        Topic::Saving(basis) => Entry::new(answer.here.as_ref()?.saving?.on(basis).0, Unit::Dollar),
        Topic::BreakEven(basis) => {
            Entry::new(in_feet(answer.sweep.as_ref()?.break_even(basis).lasting()?.depth), Unit::Foot)
        }
        Topic::PumpingLevel => Entry::new(in_feet(answer.water.pumping_level?), Unit::Foot),
        Topic::Submergence => Entry::new(in_feet(answer.water.submergence?), Unit::Foot),
        _ => return None,
    })
}

fn close(a: f64, b: f64, off: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()) + off
}

/// All numbers that a working shows.
fn shown(working: &Working) -> Vec<Measured> {
    let mut found = vec![working.result];
    found.extend(working.more.iter().copied());
    found.extend(working.values.iter().map(|put| put.value));
    found.extend(working.steps.iter().map(|step| step.result));
    found.extend(working.entered.iter().filter_map(|entered| match entered.value {
        EnteredValue::Temperature(temperature) => Some(temperature),
        _ => None,
    }));
    found.extend(working.limit.iter().flat_map(|limit| [limit.actual, limit.limit]));
    found
}

/// Each step, from the numbers that it shows and from the values of its symbols.
fn steps_hold(working: &Working) -> Result<(), TestCaseError> {
    let mut known: BTreeMap<_, f64> = working.values.iter().map(|put| (put.symbol, put.value.value)).collect();
    prop_assert_eq!(known.len(), working.values.len(), "a symbol stands for two values: {:?}", working.values);
    for step in &working.steps {
        prop_assert!(!matches!(step.formula[..], [Math::Symbol(_)]), "{step:?} says nothing");
        let told = |trouble: String| TestCaseError::fail(format!("{trouble} in {step:?} of {:?}", working.topic));
        let from_numbers = numbers(&step.filled).map_err(told)?;
        let told = |trouble: String| TestCaseError::fail(format!("{trouble} in {step:?} of {:?}", working.topic));
        let from_symbols = work(&step.formula, &|symbol| known.get(&symbol).copied()).map_err(told)?;
        prop_assert_eq!(from_numbers.value, from_symbols.value);
        let result = step.result.value;
        prop_assert!(
            close(from_numbers.value, result, from_numbers.off),
            "{from_numbers:?} is not {result}: {step:?} of {:?}",
            working.topic
        );
        prop_assert!(known.insert(step.symbol, result).is_none(), "{} stands twice", step.symbol.text());
    }
    Ok(())
}

fn holds(answer: &Evaluation, topic: Topic, system: UnitSystem) -> Result<Option<Working>, TestCaseError> {
    let (found, own) = (working(answer, topic, system), own(answer, topic));
    prop_assert_eq!(found.is_some(), own.is_some(), "{:?}", topic);
    let (Some(found), Some(own)) = (found, own) else { return Ok(None) };
    prop_assert_eq!(found.topic, topic);
    let own = own.shown_in(system);
    prop_assert_eq!(found.result.unit, own.unit);
    prop_assert!(close(found.result.value, own.value, 0.0), "{:?} is not {own:?}: {topic:?}", found.result);
    // The answer is the result of one of its steps, or what a step was written for.
    let reached = found.steps.iter().map(|step| step.result).chain(found.values.iter().map(|put| put.value));
    prop_assert!(reached.into_iter().any(|reached| reached == found.result), "{found:?}");
    for number in shown(&found) {
        prop_assert!(number.value.is_finite(), "{found:?}");
        prop_assert_eq!(number.unit, system.unit(number.unit.kind()), "{:?}", found);
    }
    steps_hold(&found)?;
    Ok(Some(found))
}

fn limits_agree(answer: &Evaluation, working: &Working) -> Result<(), TestCaseError> {
    let little = |finding: &&Finding| matches!(finding, Finding::PumpingLevelAtPump { .. });
    let little = answer.findings.iter().find(little).map(Finding::severity);
    let kind = match working.topic {
        Topic::Ampacity(_) | Topic::Submergence => Some(LimitKind::AtLeast),
        Topic::Drop(_) => Some(LimitKind::AtMost),
        _ => None,
    };
    prop_assert_eq!(working.limit.map(|limit| limit.kind), kind, "{:?}", working.topic);
    let grave = working.limit.and_then(|limit| limit.severity);
    prop_assert_eq!(grave, little.filter(|_| working.topic == Topic::Submergence), "{:?}", working);
    match (working.topic, working.limit) {
        (Topic::Ampacity(_), Some(limit)) => {
            prop_assert!(limit.holds && limit.actual.value >= limit.limit.value, "{working:?}");
        }
        (Topic::Drop(_), Some(limit)) => {
            prop_assert!(limit.holds && limit.actual.value <= limit.limit.value * (1.0 + 1e-9), "{working:?}");
        }
        (Topic::Submergence, Some(limit)) => prop_assert_eq!(limit.holds, little.is_none(), "{:?}", working),
        _ => {}
    }
    Ok(())
}

/// The same values and steps in both families of units.
fn same_in_both(us: &Working, si: &Working) -> Result<(), TestCaseError> {
    let formulas = |working: &Working| working.steps.iter().map(|step| step.formula.clone()).collect::<Vec<_>>();
    prop_assert_eq!(formulas(us), formulas(si));
    let (us, si) = (shown(us), shown(si));
    prop_assert_eq!(us.len(), si.len());
    for (us, si) in us.into_iter().zip(si) {
        let there = us.to(si.unit);
        prop_assert!(there.is_some_and(|there| close(there, si.value, 1e-12)), "{us:?} is not {si:?}");
    }
    Ok(())
}

fn all_hold(job: &Plain) -> Result<(), TestCaseError> {
    for entered in SYSTEMS {
        let answer = evaluate(&job.job(entered));
        for topic in topics() {
            let [us, si] = [holds(&answer, topic, SYSTEMS[0])?, holds(&answer, topic, SYSTEMS[1])?];
            let (Some(us), Some(si)) = (us, si) else { continue };
            limits_agree(&answer, &us)?;
            limits_agree(&answer, &si)?;
            same_in_both(&us, &si)?;
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(tried(300))]

    #[test]
    fn every_step_leads_to_its_result(job in plain()) {
        all_hold(&job)?;
    }

    #[test]
    fn the_costs_at_a_break_even_are_equal_or_change_places(job in plain()) {
        costs_change_places(&job)?;
    }
}

/// At a break-even depth on a run both costs are equal; at a step the cheaper way changes over it.
fn costs_change_places(job: &Plain) -> Result<(), TestCaseError> {
    let answer = evaluate(&job.job(UnitSystem::Us));
    for basis in Basis::ALL {
        let Some(found) = working(&answer, Topic::BreakEven(basis), UnitSystem::Us) else { continue };
        let costs: Vec<_> = found.steps.iter().filter(|step| step.symbol.letter.starts_with('C')).collect();
        let of = |index: &str| costs.iter().find(|step| step.symbol.index == index).map(|step| step.result.value);
        let (low, high) = (of("240").unwrap(), of("480").unwrap());
        let noise = 1e-9 * low.abs().max(high.abs()).max(job.extra.abs());
        let crossing = answer.sweep.as_ref().unwrap().break_even(basis).lasting().unwrap();
        if crossing.place == Place::Run {
            prop_assert!((low - high).abs() <= noise, "{found:?}");
            continue;
        }
        let (low_after, high_after) = (of("240+").unwrap_or(low), of("480+").unwrap_or(high));
        prop_assert!(costs.len() > 2, "no way steps: {found:?}");
        let gap = match crossing.below {
            Way::V240 => [high - low, high_after - low_after],
            Way::V480 => [low - high, low_after - high_after],
        };
        prop_assert!(gap[0] <= noise && gap[1] >= -noise, "{found:?}");
    }
    Ok(())
}

/// A nameplate that says more amperes at 460 V than at 230 V: its ways break even where random jobs hardly ever do, on
/// the cable alone and at a step of the 480 V way.
#[test]
fn the_rare_break_evens_are_worked_too() {
    let mut job: Plain = plain().new_tree(&mut proptest::test_runner::TestRunner::deterministic()).unwrap().current();
    (job.hp, job.nameplate, job.power_factor) = (7.5, [Some(22.5), Some(40.0)], None);
    (job.drop, job.surface, job.ambient, job.device) = (5.0, 40.0, 30.0, Some(60.0));
    (job.metal, job.metal_price, job.extra) = (Metal::Copper, 9.0, 6050.0);
    let answer = evaluate(&job.job(UnitSystem::Us));
    let found = Basis::ALL.map(|basis| working(&answer, Topic::BreakEven(basis), UnitSystem::Us).unwrap());
    assert!(found[1].steps.iter().any(|step| step.symbol.text() == "C′_480+"), "{:?}", found[1]);
    all_hold(&job).unwrap();
    costs_change_places(&job).unwrap();
}

/// The kinds of working that the laws above must have met: they hold idly where none comes up.
#[test]
fn the_random_jobs_meet_every_kind_of_working() {
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let mut met = BTreeSet::new();
    for _ in 0..300 {
        let job: Plain = plain().new_tree(&mut runner).unwrap().current();
        let answer = evaluate(&job.job(UnitSystem::Us));
        for topic in topics() {
            let Some(found) = working(&answer, topic, UnitSystem::Us) else { continue };
            met.insert(format!("{topic:?}"));
            for step in found.steps {
                met.insert(format!("{} {}", kind(topic), step.symbol.text()));
            }
            if let Some(limit) = found.limit {
                met.insert(format!("{} {}", kind(topic), limit.holds));
            }
        }
    }
    for topic in topics().into_iter().filter(|topic| *topic != Topic::BreakEven(Basis::Cable)) {
        assert!(met.contains(&format!("{topic:?}")), "{topic:?}");
    }
    let steps = [
        "MotorCurrent I_t",
        "MotorCurrent I_n",
        "Drop R",
        "Drop X",
        "Ampacity I_z",
        "BreakEven C_240+",
        "BreakEven D",
        "Submergence true",
        "Submergence false",
        "CableCost C′_480",
    ];
    for step in steps {
        assert!(met.contains(step), "{step} is not among {met:?}");
    }
}

/// Every symbol of a working stands in the glossary, those with a way's voltage below them by their letter.
#[test]
fn every_symbol_is_explained() {
    let glossary = std::fs::read_to_string(wellwright_tests::root().join("core/GLOSSARY.md")).unwrap();
    let table = glossary.split("## Terms").next().unwrap();
    let rows = table.lines().filter_map(|line| line.strip_prefix("| ")?.split(" | ").next());
    let explained: BTreeSet<&str> = rows.flat_map(|symbols| symbols.split(", ")).collect();
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    for _ in 0..100 {
        let answer = evaluate(&plain().new_tree(&mut runner).unwrap().current().job(UnitSystem::Us));
        for found in topics().into_iter().filter_map(|topic| working(&answer, topic, UnitSystem::Us)) {
            let steps = found.steps.iter().map(|step| step.symbol);
            for symbol in found.values.iter().map(|put| put.symbol).chain(steps) {
                let of_a_way = symbol.index.starts_with("240") || symbol.index.starts_with("480");
                let text = if of_a_way { symbol.letter.to_owned() } else { symbol.text() };
                assert!(explained.contains(text.as_str()), "{text} is not in the glossary");
            }
        }
    }
}

fn kind(topic: Topic) -> String {
    format!("{topic:?}").split('(').next().unwrap().to_owned()
}

/// A number that is not the one in the formula is noticed.
#[test]
fn a_wrong_number_in_a_step_is_noticed() {
    let mut job: Plain = plain().new_tree(&mut proptest::test_runner::TestRunner::deterministic()).unwrap().current();
    (job.hp, job.depth, job.nameplate) = (7.5, 300.0, [None, None]);
    let answer = evaluate(&job.job(UnitSystem::Us));
    let good = working(&answer, Topic::Drop(Way::V480), UnitSystem::Us).unwrap();
    assert!(steps_hold(&good).is_ok());
    for index in 0..good.steps.len() {
        let mut wrong = good.clone();
        wrong.steps[index].result.value *= 1.0 + 1e-6;
        assert!(steps_hold(&wrong).is_err(), "step {index} of {good:?}");
    }
    let mut unfilled = good.clone();
    unfilled.steps[0].filled = good.steps[0].formula.clone();
    assert!(steps_hold(&unfilled).is_err());
    let mut other = good;
    other.steps[0].filled.extend(["+".into(), Math::from(1.0)]);
    assert!(steps_hold(&other).is_err());
}
