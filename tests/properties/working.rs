//! The working behind an answer leads to that answer: every step worked again from the numbers that it shows.

mod figures;
mod outlook;
mod water;
mod ways;

use super::arithmetic::{numbers, work};
use super::jobs::{Plain, plain};
use super::tried;
use figures::{of_the_lead, own, place, topics};
use proptest::prelude::*;
use proptest::strategy::ValueTree as _;
use std::collections::{BTreeMap, BTreeSet};
use wellwright_core::evaluate::{Basis, DeviceBy, Evaluation, Place, evaluate};
use wellwright_core::finding::{Finding, Supplier};
use wellwright_core::job::{Origin, Way};
use wellwright_core::papers::{
    Conversion, EnteredValue, LimitKind, Math, Measured, Name, Step, Topic, Working, working,
};
use wellwright_core::quantity::{Unit, UnitSystem};
use wellwright_core::standards::conductor::Metal;

const SYSTEMS: [UnitSystem; 2] = [UnitSystem::Us, UnitSystem::Si];

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
    let mut sources = found.sources.clone();
    sources.sort_unstable();
    sources.dedup();
    prop_assert_eq!(sources.len(), found.sources.len(), "{:?}", found.sources);
    for number in shown(&found) {
        prop_assert!(number.value.is_finite(), "{found:?}");
        prop_assert_eq!(number.unit, system.unit(number.unit.kind()), "{:?}", found);
    }
    steps_hold(&found)?;
    Ok(Some(found))
}

/// Which side a topic's limit is on, and the finding that says that it is not kept.
type Judged = (LimitKind, fn(&Finding, Topic) -> bool);

fn judged(topic: Topic) -> Option<Judged> {
    use LimitKind::{AtLeast, AtMost};
    Some(match topic {
        Topic::Ampacity(_) => (AtLeast, |_, _| false),
        Topic::Drop(_) => (AtMost, |_, _| false),
        Topic::Submergence => (AtLeast, |finding, _| matches!(finding, Finding::PumpingLevelAtPump { .. })),
        Topic::WellGives => (AtLeast, |finding, _| matches!(finding, Finding::DemandNotMet { by: Supplier::Well, .. })),
        Topic::Friction(_) => (
            AtMost,
            |finding, topic| matches!(finding, Finding::PipeFast { part, .. } if topic == Topic::Friction(*part)),
        ),
        Topic::SuctionHead => (AtLeast, |finding, _| matches!(finding, Finding::NpshShort { .. })),
        Topic::DeadHead => (AtMost, |finding, _| matches!(finding, Finding::DeadheadOverRating { .. })),
        Topic::Cooling | Topic::CoolingFlow => {
            (AtLeast, |finding, _| matches!(finding, Finding::MotorCoolingLow { .. }))
        }
        Topic::PumpSpeed => (AtMost, |finding, _| matches!(finding, Finding::DemandNotMet { by: Supplier::Pump, .. })),
        Topic::LowestSpeed => (AtMost, |finding, _| matches!(finding, Finding::SpeedBandNarrow { .. })),
        Topic::MotorLoad => (AtMost, |finding, _| matches!(finding, Finding::MotorOverloaded { .. })),
        _ => return judged_of_a_way(topic),
    })
}

fn judged_of_a_way(topic: Topic) -> Option<Judged> {
    use LimitKind::{AtLeast, AtMost};
    Some(match topic {
        Topic::WayFrame(_) => {
            (AtLeast, |finding, _| matches!(finding, Finding::DriveAmpsShort { .. } | Finding::DriveSizeShort { .. }))
        }
        Topic::WaySupply(_) => (AtLeast, |_, _| false),
        Topic::WaySupplyDrop(_) => (AtMost, |_, _| false),
        Topic::WayVolts(_) => (AtLeast, |finding, _| matches!(finding, Finding::MotorVoltsLow { .. })),
        Topic::WayPeak(_) => (AtMost, |finding, _| match finding {
            Finding::LeadPeakHigh { peak, limit, .. } | Finding::LeadNeedsFilter { peak, limit, .. } => peak > limit,
            _ => false,
        }),
        Topic::WayLoading(_) => (AtMost, |finding, _| matches!(finding, Finding::TransformerLoaded { .. })),
        Topic::WayHarmonics(_) => (AtMost, |finding, _| matches!(finding, Finding::HarmonicsOver { .. })),
        Topic::WayFault(_) => {
            (AtMost, |finding, _| matches!(finding, Finding::FaultOverSccr { fault, marked } if fault > marked))
        }
        Topic::WayStart(_) => (AtMost, |finding, _| matches!(finding, Finding::StartDipHigh { .. })),
        Topic::WayGenerator(_) => (AtMost, |finding, _| matches!(finding, Finding::GeneratorShort { .. })),
        _ => return None,
    })
}

/// The findings that judge an answer: of its way, else of the job.
fn judging(answer: &Evaluation, topic: Topic) -> &[Finding] {
    match place(topic) {
        Some(place) => &answer.ways.all[place].findings,
        None => &answer.findings,
    }
}

/// A device is judged by the figures alone: the job tells that it is small of the way that it goes by.
fn device_agrees(answer: &Evaluation, place: usize, working: &Working) -> Result<(), TestCaseError> {
    let draw = answer.ways.all[place].draw.unwrap();
    prop_assert_eq!(working.limit.is_none(), draw.device_by == DeviceBy::Converters, "{:?}", working);
    if matches!(draw.device_by, DeviceBy::Entered | DeviceBy::Marked) {
        let small = draw.device < draw.ampacity.min(1.25 * draw.rated);
        prop_assert_eq!(working.limit.map(|limit| limit.holds), Some(!small), "{:?}", working);
        let told = |finding: &&Finding| matches!(finding, Finding::DeviceSmall { .. });
        let told = answer.findings.iter().find(told).map(Finding::severity);
        if answer.ways.pick == Some(place) {
            prop_assert_eq!(working.limit.unwrap().severity, told, "{:?}", working);
        }
    } else {
        prop_assert!(working.limit.is_none_or(|limit| limit.holds), "{working:?}");
    }
    Ok(())
}

fn limits_agree(answer: &Evaluation, working: &Working) -> Result<(), TestCaseError> {
    let topic = working.topic;
    if let Topic::WayDevice(place) = topic {
        return device_agrees(answer, place, working);
    }
    let Some((kind, is)) = judged(topic) else {
        prop_assert!(working.limit.is_none(), "{working:?}");
        return Ok(());
    };
    let grave = judging(answer, topic).iter().find(|finding| is(finding, topic)).map(Finding::severity);
    let Some(limit) = working.limit else {
        // Where nothing was entered to judge by, no finding judges.
        let spared = match topic {
            Topic::WayLoading(place) => answer.ways.all[place].pole.unwrap().assumed,
            Topic::WayFault(place) => answer.ways.all[place].supply.is_none(),
            Topic::WayGenerator(_) => answer.ways.site.unwrap().set.is_none(),
            _ => matches!(topic, Topic::Friction(_) | Topic::SuctionHead | Topic::LowestSpeed | Topic::WellGives),
        };
        prop_assert!(spared && grave.is_none(), "{:?}", working);
        return Ok(());
    };
    // The lowest speed has a limit on either side.
    prop_assert!(limit.kind == kind || topic == Topic::LowestSpeed, "{working:?}");
    let by_speed = topic == Topic::PumpSpeed;
    prop_assert!(limit.severity == grave || (by_speed && limit.holds && limit.severity.is_none()), "{working:?}");
    prop_assert!(limit.holds == grave.is_none() || by_speed, "{working:?}");
    let (actual, bound) = (limit.actual.value, limit.limit.value);
    let noise = 2e-9 * actual.abs().max(bound.abs()).max(1.0);
    let (over, under) = match limit.kind {
        LimitKind::AtLeast => (actual - bound, bound - actual),
        LimitKind::AtMost => (bound - actual, actual - bound),
    };
    // Water that just reaches the pump is too little, even where none is asked for.
    let dry = topic == Topic::Submergence && actual <= 0.0;
    prop_assert!(if limit.holds { over >= -noise } else { under >= -noise || dry }, "{working:?}");
    Ok(())
}

/// The same values and steps in both families of units. What makes units agree differs, and where it does, the formulas
/// may; the trade's own formula of the power stands in US units only.
fn same_in_both(us: &Working, si: &Working) -> Result<(), TestCaseError> {
    let formulas = |working: &Working| working.steps.iter().map(|step| step.formula.clone()).collect::<Vec<_>>();
    if !us.values.iter().chain(&si.values).any(|put| matches!(put.name, Name::Conversion(..))) {
        prop_assert_eq!(formulas(us), formulas(si));
    }
    prop_assert_eq!(steps_of(us), steps_of(si));
    prop_assert_eq!(values_of(us), values_of(si));
    let both = |us: &[Measured], si: &[Measured]| -> Result<(), TestCaseError> {
        prop_assert_eq!(us.len(), si.len());
        for (us, si) in us.iter().zip(si) {
            let there = us.to(si.unit);
            prop_assert!(there.is_some_and(|there| close(there, si.value, 1e-12)), "{us:?} is not {si:?}");
        }
        Ok(())
    };
    both(&shared(us), &shared(si))?;
    for working in [us, si] {
        conversions_are_true(working)?;
    }
    prop_assert_eq!((&us.sources, &us.caveats), (&si.sources, &si.caveats));
    Ok(())
}

fn of_the_trade(step: &Step) -> bool {
    step.symbol.text() == "P_t"
}

fn steps_of(working: &Working) -> Vec<String> {
    working.steps.iter().filter(|step| !of_the_trade(step)).map(|step| step.symbol.text()).collect()
}

fn values_of(working: &Working) -> Vec<String> {
    let values = working.values.iter().filter(|put| !matches!(put.name, Name::Conversion(..)));
    values.map(|put| format!("{} {:?} {:?}", put.symbol.text(), put.name, put.origin)).collect()
}

/// The numbers that a working shows in both families of units.
fn shared(working: &Working) -> Vec<Measured> {
    let mut alike = working.clone();
    alike.values.retain(|put| !matches!(put.name, Name::Conversion(..)));
    alike.steps.retain(|step| !of_the_trade(step));
    shown(&alike)
}

/// What makes units agree, by definition of the units: foot 0.3048 m, gallon 231 in³, pound 0.453 592 37 kg, acre
/// 43,560 ft², standard gravity 9.806 65 m/s², and the horsepower of 745.7 W.
fn conversions_are_true(working: &Working) -> Result<(), TestCaseError> {
    for put in &working.values {
        let Name::Conversion(conversion, system) = put.name else { continue };
        let (us, si) = match conversion {
            Conversion::Diameter => (12.0, 1000.0),
            Conversion::TradeDiameter => (1.0, 25.4),
            Conversion::Flow => (1728.0 / 231.0 * 60.0, 1000.0),
            Conversion::TradeFlow => (1.0, 60.0 / 3.785_411_784),
            Conversion::DailyFlow => (24.0 * 60.0, 24.0 * 3.6),
            Conversion::Viscosity => (92_903.04, 1e6),
            Conversion::Pressure => (144.0, 1000.0),
            Conversion::Power => (745.7 / (0.3048 * 0.453_592_37 * 9.806_65), 1000.0),
            Conversion::Watts => (745.7, 1000.0),
            Conversion::Volume => (1728.0 / 231.0, 1.0),
            Conversion::Spread => (43_560.0 * 144.0 / 231.0, 10_000.0),
            Conversion::Hour => (60.0, 3600.0),
            Conversion::Gravity => (9.806_65 / 0.3048, 9.806_65),
            Conversion::Warming => (9.0 / 5.0, 1.0),
            Conversion::HundredMeters => (100.0 / 0.3048, 100.0),
            Conversion::Horsepower => (1.0, 1000.0 / 745.7),
            Conversion::Kilofoot => (304.8, 1000.0),
        };
        let true_value = if system == UnitSystem::Us { us } else { si };
        prop_assert!(close(put.value.value, true_value, 0.0), "{put:?} is not {true_value}");
        prop_assert_eq!((put.symbol, put.value.unit), (conversion.symbol(), Unit::One));
        prop_assert_eq!(put.origin, Origin::Definition);
    }
    Ok(())
}

fn all_hold(job: &Plain) -> Result<(), TestCaseError> {
    SYSTEMS.into_iter().try_for_each(|entered| every_topic_holds(&evaluate(&job.job(entered))))
}

/// Every answer of an evaluation has its working, and each working its answer, in both families of units.
pub fn every_topic_holds(answer: &Evaluation) -> Result<(), TestCaseError> {
    for topic in topics() {
        let [us, si] = [holds(answer, topic, SYSTEMS[0])?, holds(answer, topic, SYSTEMS[1])?];
        let (Some(us), Some(si)) = (us, si) else { continue };
        limits_agree(answer, &us)?;
        limits_agree(answer, &si)?;
        same_in_both(&us, &si)?;
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
    for topic in of_the_lead().into_iter().filter(|topic| *topic != Topic::BreakEven(Basis::Cable)) {
        assert!(met.contains(&format!("{topic:?}")), "{topic:?}");
    }
    // On the cable alone a cheaper way hardly ever changes: a test of its own has that.
    let steps = [
        "MotorCurrent I_t",
        "MotorCurrent I_n",
        "Drop R",
        "Drop X",
        "Ampacity I_z",
        "BreakEven C′_240+",
        "BreakEven C″_240+",
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
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let random = (0..100).map(|_| plain().new_tree(&mut runner).unwrap().current().job(UnitSystem::Us));
    let jobs: Vec<_> = random.chain(water::jobs()).chain(ways::jobs()).collect();
    let glossary = std::fs::read_to_string(wellwright_tests::root().join("core/GLOSSARY.md")).unwrap();
    let table = glossary.split("## Terms").next().unwrap();
    let rows = table.lines().filter_map(|line| line.strip_prefix("| ")?.split(" | ").next());
    let explained: BTreeSet<&str> = rows.flat_map(|symbols| symbols.split(", ")).collect();
    let mut missing = BTreeSet::new();
    for answer in jobs.iter().map(evaluate) {
        let both = SYSTEMS.into_iter().flat_map(|system| topics().into_iter().map(move |topic| (topic, system)));
        for found in both.filter_map(|(topic, system)| working(&answer, topic, system)) {
            let steps = found.steps.iter().map(|step| step.symbol);
            for symbol in found.values.iter().map(|put| put.symbol).chain(steps) {
                let of_a_way = symbol.index.starts_with("240") || symbol.index.starts_with("480");
                let text = if of_a_way { symbol.letter.to_owned() } else { symbol.text() };
                if !explained.contains(text.as_str()) {
                    missing.insert(text);
                }
            }
        }
    }
    assert!(missing.is_empty(), "not in the glossary: {missing:?}");
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
