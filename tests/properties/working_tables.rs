//! What a working says its tables were entered with gives the values that it read from them, and its sources and limits
//! are those of the case.

use super::jobs::{LEVELS, Plain, plain};
use super::tried;
use proptest::prelude::*;
use wellwright_core::cable::reactance::Build;
use wellwright_core::evaluate::{Basis, Evaluation, evaluate};
use wellwright_core::finding::Severity;
use wellwright_core::job::{Field, Job, Way};
use wellwright_core::papers::{EnteredValue, Name, Topic, Working, working};
use wellwright_core::quantity::{Entry, Unit, UnitSystem};
use wellwright_core::standards::ampacity::{ALUMINUM, COPPER, Rating};
use wellwright_core::standards::conductor::{Metal, Size, TABLE_8};
use wellwright_core::standards::reactance::TABLE_9;

fn entered(working: &Working, name: Name) -> Option<EnteredValue> {
    working.entered.iter().find(|entered| entered.name == name).map(|entered| entered.value)
}

fn size(working: &Working, name: Name) -> usize {
    let Some(EnteredValue::Size(size)) = entered(working, name) else { panic!("no size: {working:?}") };
    size as usize
}

fn rating(working: &Working, name: Name) -> Rating {
    let Some(EnteredValue::Rating(rating)) = entered(working, name) else { panic!("no rating: {working:?}") };
    rating
}

fn metal(working: &Working) -> Metal {
    let Some(EnteredValue::Metal(metal)) = entered(working, Name::ConductorMetal) else { panic!("{working:?}") };
    metal
}

/// A value that was put in.
fn put(working: &Working, name: Name) -> Entry {
    working.values.iter().find(|put| put.name == name).unwrap().value
}

/// Sets in parallel: entered where there is one, among the values where there are several.
fn sets(working: &Working) -> u8 {
    let value = working.values.iter().find(|put| put.name == Name::ParallelSets).map(|put| put.value.value);
    match (entered(working, Name::ParallelSets), value) {
        (Some(EnteredValue::Sets(1)), None) => 1,
        (None, Some(sets)) if sets > 1.0 => sets as u8,
        other => panic!("{other:?}"),
    }
}

/// The tables read again where the working says that they were entered.
fn tables_say_so(answer: &Evaluation, way: Way) {
    let Some(lead) = answer.here.as_ref().and_then(|here| here.way(way)) else { return };
    let of = |topic| working(answer, topic, UnitSystem::Us).unwrap();
    let [ampacity, drop] = [Topic::Ampacity(way), Topic::Drop(way)].map(of);
    let cost = of(Topic::CableCost(way, Basis::Cable));
    for working in [&ampacity, &drop, &cost] {
        assert_eq!(size(working, Name::ConductorSize), lead.run.run.conductor.size as usize);
        assert_eq!(sets(working), lead.run.run.conductor.sets);
        assert_eq!(metal(working), metal(&ampacity));
    }
    let (row, copper) = (size(&ampacity, Name::ConductorSize), metal(&ampacity) == Metal::Copper);
    let amperes = |rating: Rating| if copper { COPPER[row] } else { ALUMINUM[row - 1] }[rating as usize];
    let (insulation, terminals) = (Name::InsulationRating, Name::TerminalRating);
    assert_eq!(put(&ampacity, Name::InsulationAmpacity).value, amperes(rating(&ampacity, insulation)));
    assert_eq!(put(&ampacity, Name::TerminalAmpacity).value, amperes(rating(&ampacity, terminals)));

    let close = |entry: Entry, value: f64, unit: Unit| {
        assert!(
            entry.unit == unit && (entry.value - value).abs() <= 1e-12 * value,
            "{entry:?} is not {value} {unit:?}"
        );
    };
    let resistance = if copper { TABLE_8[row].copper } else { TABLE_8[row].aluminum };
    close(put(&drop, Name::Resistance), resistance, Unit::OhmPerKilofoot);
    match entered(&drop, Name::LeadBuild) {
        Some(EnteredValue::Build(Build::PlasticConduit)) => assert!(reads(&drop, TABLE_9[row].plastic)),
        Some(EnteredValue::Build(Build::SteelConduit)) => assert!(reads(&drop, TABLE_9[row].steel)),
        Some(EnteredValue::Build(_)) => assert!(drop.sources.contains(&"grainger-stevenson-1994")),
        other => panic!("{other:?}"),
    }
    // 75 °C are 167 °F.
    let temperature = entered(&drop, Name::ConductorTemperature);
    assert_eq!(temperature, Some(EnteredValue::Temperature(Entry::new(167.0, Unit::DegreeFahrenheit))));

    let ground = size(&cost, Name::GroundSize);
    assert_eq!(ground, lead.run.run.ground as usize);
    close(put(&cost, Name::PhaseArea), TABLE_8[row].cmil / 1000.0, Unit::Kcmil);
    close(put(&cost, Name::GroundArea), TABLE_8[ground].cmil / 1000.0, Unit::Kcmil);
    let si = working(answer, Topic::CableCost(way, Basis::Cable), UnitSystem::Si).unwrap();
    close(put(&si, Name::MetalDensity), if copper { 8.89 } else { 2.705 }, Unit::GramPerCubicCentimeter);
    // The density of the metal that was taken, and of no other (ASTM B3 is of copper, B230 of aluminum).
    let (own, other) = if copper { ("astm-b3", "astm-b230") } else { ("astm-b230", "astm-b3") };
    assert!(cost.sources.contains(&own) && !cost.sources.contains(&other), "{:?}", cost.sources);
}

/// The reactance of a conductor, ohms in a thousand feet, from table 9.
fn reads(drop: &Working, ohms: f64) -> bool {
    let table = drop.sources.contains(&"nec-2023-ch9-t9");
    table && (put(drop, Name::Reactance).value - ohms).abs() <= 1e-12 * ohms
}

proptest! {
    #![proptest_config(tried(300))]

    #[test]
    fn the_tables_give_the_values_where_they_were_entered(job in plain()) {
        let answer = evaluate(&job.job(UnitSystem::Us));
        for way in Way::ALL {
            tables_say_so(&answer, way);
        }
    }
}

/// The jobs above hold every build, both metals and several sets.
#[test]
fn one_set_and_several_of_both_metals_are_met() {
    let base: Plain = {
        use proptest::strategy::ValueTree as _;
        plain().new_tree(&mut proptest::test_runner::TestRunner::deterministic()).unwrap().current()
    };
    for (metal, hp, most, several) in [(Metal::Copper, 5.0, 1, false), (Metal::Aluminum, 150.0, 4, true)] {
        let mut job = Plain { metal, hp, sets: most, depth: 600.0, drop: 5.0, surface: 20.0, ..base.clone() };
        (job.nameplate, job.power_factor, job.ambient, job.device) = ([None, None], None, 30.0, Some(800.0));
        let answer = evaluate(&job.job(UnitSystem::Us));
        let lead = answer.here.as_ref().unwrap().way(Way::V240).unwrap();
        assert_eq!(lead.run.run.conductor.sets > 1, several, "{lead:?}");
        assert!(!several || lead.run.run.conductor.size >= Size::Awg1_0);
        tables_say_so(&answer, Way::V240);
    }
}

/// A job of 7.5 hp, without a nameplate: pump setting, static level, drawdown, well depth, least submergence in feet.
fn job(hp: f64, levels: [Option<f64>; 5]) -> Job {
    let mut job = Job::default();
    job.set(Field::MotorPower, Some(Entry::new(hp, Unit::Horsepower)));
    for (field, level) in [Field::PumpSetting].into_iter().chain(LEVELS).zip(levels) {
        job.set(field, level.map(|level| Entry::new(level, Unit::Foot)));
    }
    job
}

/// A current that is a row of the table is no sum; between two rows it is one, and the table's current is the answer.
#[test]
fn a_current_from_the_table_alone_has_no_idle_step() {
    let of = |hp: f64| working(&evaluate(&job(hp, [None; 5])), Topic::MotorCurrent(Way::V240), UnitSystem::Us).unwrap();
    let row = of(20.0);
    // Table 430.250: 54 A for 20 hp, 42 A for 15 hp at 230 V.
    assert_eq!((row.steps.len(), row.result), (0, Entry::new(54.0, Unit::Ampere)));
    assert_eq!(put(&row, Name::TableCurrent), row.result);
    let between = of(17.5);
    let [step] = &between.steps[..] else { panic!("{between:?}") };
    assert_eq!((step.symbol.text().as_str(), step.result), ("I_t", between.result));
    assert!((between.result.value - 48.0).abs() < 1e-9, "{between:?}");
}

/// The limit of the water above the pump is as grave as its finding.
#[test]
fn a_limit_says_how_grave_it_is() {
    let of = |setting: f64| {
        let levels = [Some(setting), Some(430.0), Some(40.0), None, Some(10.0)];
        working(&evaluate(&job(7.5, levels)), Topic::Submergence, UnitSystem::Us).unwrap().limit.unwrap()
    };
    for (setting, severity) in
        [(480.0, None), (475.0, Some(Severity::Caution)), (470.0, Some(Severity::Stop)), (400.0, Some(Severity::Stop))]
    {
        let limit = of(setting);
        assert_eq!((limit.holds, limit.severity), (severity.is_none(), severity), "{setting} ft");
    }
    // A lead that is chosen keeps its limits.
    for topic in [Topic::Ampacity(Way::V240), Topic::Drop(Way::V240)] {
        let answer = evaluate(&job(7.5, [Some(480.0), None, None, None, None]));
        let limit = working(&answer, topic, UnitSystem::Us).unwrap().limit.unwrap();
        assert_eq!((limit.holds, limit.severity), (true, None));
    }
}

/// The lead is the output of a drive: both rules ask for 125 % of the motor's current.
#[test]
fn the_ampacity_names_the_rule_for_the_output_of_a_drive() {
    let answer = evaluate(&job(7.5, [Some(480.0), None, None, None, None]));
    let found = working(&answer, Topic::Ampacity(Way::V480), UnitSystem::Us).unwrap();
    let at = |key: &str| found.sources.iter().position(|source| *source == key).unwrap();
    assert_eq!(at("nec-2023-430.122"), at("nec-2023-430.22") + 1);
}
