//! What the report tells of each finding: its code, how grave it is, its source, and the figures that it has.

use super::{field, house, power_told, with, without};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};
use wellwright_core::evaluate::{evaluate, report};
use wellwright_core::finding::Finding;
use wellwright_core::job::{DemandBy, Field, Job, Part};
use wellwright_core::standards::conductor::Metal;
use wellwright_core::standards::pipe::{Nominal, Series};

/// A code, and the names of what is told of it beside code, severity and source.
pub type Told = (&'static str, &'static [&'static str]);

/// A price book with cable in it, and no equipment.
const NO_EQUIPMENT: &str =
    "item,kind,metal,unit,price\ncurrency,USD,,,\ndate,2026-11-01,,,\ncable_fixed,,,$/ft,0.5\nmetal,,copper,$/lb,9\n";

fn of_prices() -> Vec<(Job, &'static [Told])> {
    let mut no_book = house();
    no_book.book = "x".into();
    let mut no_price = without(house(), &[Field::ExtraEquipment]);
    no_price.book = NO_EQUIPMENT.into();
    let duty = |text: &str| {
        let mut job = house();
        job.duty = text.into();
        job
    };
    vec![
        (no_book, &[("BOOK_UNREADABLE", &[])]),
        (no_price, &[("PRICE_MISSING", &["way"])]),
        (duty("x"), &[("DUTY_UNREADABLE", &[])]),
        (duty("25 100\n19000 1"), &[("DUTY_NOT_MET", &["actual"])]),
        (with(house(), &[(Field::MonthsOfUse, 4.5)]), &[("TARIFF_CONTRADICTS", &[])]),
    ]
}

/// Jobs that together raise every finding, each with the codes that it is made for.
fn jobs() -> Vec<(Job, &'static [Told])> {
    const PAIR: &[&str] = &["actual", "limit"];
    let curved = |text: &str, figures: &[(Field, f64)]| {
        let mut job = with(house(), figures);
        job.curve = text.into();
        job
    };
    let mut aluminum = with(house(), &[(Field::MotorPower, 200.0)]);
    aluminum.choices.metal = Some(Metal::Aluminum);
    let bottom = [(Field::WellDepth, 471.0), (Field::PumpSetting, 470.0), (Field::ScreenTop, 470.0)];
    let curve = "0.1,820,1\n25,676,60\n40,362,44\n";
    vec![
        (
            house(),
            &[("GROUND_WIRE_GREW", &["way"]), ("DEADHEAD_OVER_RATING", PAIR), ("BEYOND_USUAL", &["field", "usual"])],
        ),
        (aluminum, &[("CABLE_NO_SIZE", &["way"]), ("ALUMINIUM_IN_WELL", &[])]),
        (
            with(house(), &bottom),
            &[
                ("PUMPING_LEVEL_AT_PUMP", PAIR),
                ("PUMP_NEAR_BOTTOM", PAIR),
                ("LEVEL_BELOW_BOTTOM", PAIR),
                ("PUMP_IN_SCREEN", &["limit"]),
            ],
        ),
        (with(house(), &[(Field::TestedYield, 20.0)]), &[("DEMAND_NOT_MET", &["actual", "limit", "by"])]),
        (curved("x", &[]), &[("CURVE_UNUSABLE", &[])]),
        (
            curved(curve, &[(Field::StaticLevel, 10.0), (Field::Pressure, 0.0), (Field::PumpSetting, 60.0)]),
            &[("CURVE_ODD", &["why"]), ("PUMP_BEYOND_CURVE", &["limit"])],
        ),
        (curved(curve, &[(Field::Flow, 14.0)]), &[("FAR_FROM_BEST", &["actual"])]),
        (
            with(field(), &[(Field::NpshRequired, 30.0), (Field::SuctionInside, 5.0)]),
            &[("NPSH_SHORT", PAIR), ("PIPE_FAST", &["actual", "limit", "part"])],
        ),
        (
            with(without(house(), &[Field::NameplateAmps460]), &[(Field::LeastFlow, 5.0), (Field::MotorPower, 5.0)]),
            &[
                ("MOTOR_COOLING_LOW", PAIR),
                ("MOTOR_OVERLOADED", PAIR),
                ("NAMEPLATE_DISAGREES", &["actual", "limit", "way"]),
            ],
        ),
        (with(house(), &[(Field::MostFrequency, 52.0)]), &[("SPEED_BAND_NARROW", PAIR)]),
        (with(house(), &[(Field::CutIn, 61.0)]), &[("BEYOND_FORMULAS", &[])]),
        (curved("", &[(Field::MotorDiameter, 7.0)]), &[("MOTOR_DOES_NOT_FIT", PAIR)]),
        (house(), &[("COOLS_ABOVE", &["limit"])]),
        (with(house(), &[(Field::Rise, -900.0)]), &[("RUNS_BY_ITSELF", &["actual"])]),
    ]
}

/// Jobs of the pressure and of the pipes that hold it.
fn of_pressure() -> Vec<(Job, &'static [Told])> {
    const PAIR: &[&str] = &["actual", "limit"];
    const OF_PART: &[&str] = &["actual", "limit", "part"];
    let mut plastic = house();
    let pick = &mut plastic.choices.pipes[Part::Drop as usize];
    (pick.series, pick.size) = (Some(Series::PvcSchedule40), Nominal::named("1-1/2"));
    let mut people = with(house(), &[(Field::People, 40.0)]);
    people.choices.demand = Some(DemandBy::PeopleAndStock);
    vec![
        (plastic, &[("PIPE_OVER_RATING", OF_PART), ("SURGE_OVER_RATING", OF_PART)]),
        (with(house(), &[(Field::Pressure, 130.0)]), &[("SETPOINT_OVER_RATING", PAIR)]),
        (without(house(), &[Field::ShutOffHead]), &[("DEADHEAD_UNKNOWN", &["limit"])]),
        (people, &[("DAY_AVERAGE", &["actual"]), ("HOUSE_PRESSURE_HIGH", PAIR)]),
    ]
}

fn all() -> impl Iterator<Item = (Job, &'static [Told])> {
    jobs().into_iter().chain(of_pressure()).chain(of_prices()).chain(power_told::jobs())
}

/// Every code of the water, the pump and the lead.
const CODES: [&str; 37] = [
    "CABLE_NO_SIZE",
    "ALUMINIUM_IN_WELL",
    "GROUND_WIRE_GREW",
    "PUMPING_LEVEL_AT_PUMP",
    "PUMP_NEAR_BOTTOM",
    "LEVEL_BELOW_BOTTOM",
    "DEMAND_NOT_MET",
    "PUMP_BEYOND_CURVE",
    "CURVE_UNUSABLE",
    "CURVE_ODD",
    "FAR_FROM_BEST",
    "NPSH_SHORT",
    "DEADHEAD_OVER_RATING",
    "MOTOR_COOLING_LOW",
    "MOTOR_OVERLOADED",
    "SPEED_BAND_NARROW",
    "PIPE_FAST",
    "PUMP_IN_SCREEN",
    "BEYOND_FORMULAS",
    "NAMEPLATE_DISAGREES",
    "BEYOND_USUAL",
    "PIPE_OVER_RATING",
    "SURGE_OVER_RATING",
    "DEADHEAD_UNKNOWN",
    "SETPOINT_OVER_RATING",
    "HOUSE_PRESSURE_HIGH",
    "MOTOR_DOES_NOT_FIT",
    "DAY_AVERAGE",
    "COOLS_ABOVE",
    "RUNS_BY_ITSELF",
    "BOOK_UNREADABLE",
    "PRICE_MISSING",
    "DUTY_UNREADABLE",
    "DUTY_NOT_MET",
    "TARIFF_CONTRADICTS",
    "SENSOR_RANGE",
    "SENSOR_FREEZES",
];

#[test]
fn every_finding_is_raised_and_told_with_its_figures() {
    let mut met = BTreeSet::new();
    for (job, codes) in all() {
        let answer = evaluate(&job);
        let told = report("", &answer);
        let told = told["findings"].as_array().unwrap();
        assert_eq!(told.len(), answer.findings.len());
        for (code, figures) in codes {
            let finding = told.iter().find(|finding| finding["code"] == *code);
            let finding = finding.unwrap_or_else(|| panic!("{code} is not among {:?}", answer.findings));
            assert!(["note", "caution", "stop"].contains(&finding["severity"].as_str().unwrap()));
            assert!(!finding["source"].as_str().unwrap().is_empty());
            let held = finding.as_object().unwrap().iter().filter(|(_, value)| !value.is_null());
            let held: BTreeSet<&str> = held.map(|(name, _)| name.as_str()).collect();
            let expected: BTreeSet<&str> = ["code", "severity", "source"].iter().chain(*figures).copied().collect();
            assert_eq!(held, expected, "{code}");
            for name in ["usual", "actual", "limit"].iter().filter(|name| figures.contains(name)) {
                assert!(finding[name]["value"].is_number() && finding[name]["unit"].is_string(), "{code}: {finding}");
            }
            met.insert(*code);
        }
    }
    let all: BTreeSet<&str> = CODES.into_iter().chain(power_told::CODES).collect();
    assert_eq!(met, all);
    // One is of the ranking, which works a job again and again, one of readings.
    let all: BTreeSet<&str> = all.into_iter().chain(["ASSUMPTION_DECIDES", "READING_STOP"]).collect();
    // No code of core is left out.
    let text = std::fs::read_to_string(wellwright_tests::root().join("core/src/finding/code.rs")).unwrap();
    let codes = text.split("pub fn code(").nth(1).unwrap().split("pub fn source(").next().unwrap();
    assert_eq!(codes.split('"').skip(1).step_by(2).collect::<BTreeSet<_>>(), all);
}

#[test]
fn an_odd_curve_says_why() {
    for (curve, why) in [
        ("0.1,820,1\n25,676,60\n40,362,44", "no_shut_off"),
        ("0,800,0\n10,820,40\n25,676,60\n40,362,44", "droop"),
        ("0,820,0\n25,676,97\n40,362,44", "best_efficiency_unlikely"),
        ("gpm,ft,%,hp\n0,820,0,3\n25,676,60,9\n40,362,44,7", "efficiency_against_power"),
    ] {
        let mut job = house();
        job.curve = curve.into();
        let told = report("", &evaluate(&job));
        let all = told["findings"].as_array().unwrap();
        let found: Vec<_> = all.iter().filter(|one| one["code"] == "CURVE_ODD").map(|one| &one["why"]).collect();
        assert_eq!(found, [why], "{curve:?}");
    }
}

/// The gravest stands first, whatever is found.
#[test]
fn the_gravest_stands_first() {
    for (job, _) in all() {
        let severities: Vec<_> = evaluate(&job).findings.iter().map(|finding| finding.severity()).collect();
        assert!(severities.windows(2).all(|pair| pair[0] >= pair[1]), "{severities:?}");
    }
}

/// Each source of a finding is a key of the list of sources.
#[test]
fn every_source_of_a_finding_is_listed() {
    let sources = std::fs::read_to_string(wellwright_tests::root().join("core/SOURCES.md")).unwrap();
    for (job, _) in all() {
        for finding in evaluate(&job).findings {
            assert!(sources.contains(&format!("\n## {}\n", finding.source())), "{}", finding.source());
        }
    }
}

/// Findings that rest on a rule of their own; the others are practice.
const RULES: [(&str, &str); 23] = [
    ("CABLE_NO_SIZE", "nec-2023-310.16"),
    ("GROUND_WIRE_GREW", "nec-2023-250.122"),
    ("NPSH_SHORT", "hi-9.6.1"),
    ("MOTOR_OVERLOADED", "nema-mg1-2016"),
    ("UNBALANCE_DERATES", "nema-mg1-2016"),
    ("MOTOR_VOLTS_LOW", "nema-mg1-2016"),
    ("ENCLOSURE_WRONG", "nema-250"),
    ("PIPE_OVER_RATING", "astm-d1785"),
    ("SURGE_OVER_RATING", "joukowsky-1898"),
    ("HOUSE_PRESSURE_HIGH", "upc-608.2"),
    ("LEAD_PEAK_HIGH", "nema-mg1-30"),
    ("LEAD_NEEDS_FILTER", "nema-mg1-30"),
    ("COOLER_WATER_IDLE", "nec-2023-310.14"),
    ("SUPPLY_NO_SIZE", "nec-2023-430.122"),
    ("DEVICE_PROVISIONAL", "nec-2023-430.122"),
    ("HARMONICS_OVER", "ieee-519-2022"),
    ("DEVICE_OVER", "nec-2023-430.52"),
    ("FAULT_OVER_SCCR", "nec-2023-110.9-10"),
    ("FAULT_ASSUMED", "nec-2023-110.9-10"),
    ("PUMP_BEYOND_CURVE", "pump-handbook"),
    ("DEMAND_NOT_MET", "pump-handbook"),
    ("CURVE_UNUSABLE", "pump-handbook"),
    ("DEADHEAD_OVER_RATING", "practice"),
];

#[test]
fn a_finding_names_its_own_rule() {
    let rules = BTreeMap::from(RULES);
    let mut met = BTreeSet::new();
    for (job, _) in all() {
        let answer = evaluate(&job);
        let of_ways = answer.ways.all.iter().flat_map(|way| &way.findings);
        for finding in answer.findings.iter().chain(of_ways) {
            let code = finding.code();
            assert_eq!(finding.source(), rules.get(code).copied().unwrap_or("practice"), "{code}");
            met.insert(code);
        }
    }
    let missed: Vec<_> = rules.keys().filter(|code| !met.contains(*code)).collect();
    assert!(missed.is_empty(), "{missed:?}");
    let decides = Finding::AssumptionDecides { field: Field::Ambient };
    assert_eq!((decides.code(), decides.source()), ("ASSUMPTION_DECIDES", "practice"));
}

/// A figure that a finding tells is the one that the answer holds.
#[test]
fn a_finding_and_the_answer_tell_the_same_figure() {
    let told = report("", &evaluate(&house()));
    let finding = told["findings"].as_array().unwrap().iter().find(|one| one["code"] == "DEADHEAD_OVER_RATING");
    assert_eq!(Some(&finding.unwrap()["actual"]), told.pointer("/water/dead_head/gauge"));
    let rating = serde_json::json!({"value": 125.0, "unit": "psi"});
    assert_eq!(wellwright_tests::difference(&finding.unwrap()["limit"], &rating, 1e-12, 0.0), None);
    assert_ne!(told.pointer("/water/dead_head/gauge"), Some(&Value::Null));
}
