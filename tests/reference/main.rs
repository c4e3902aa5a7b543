//! Published values, walked: each row of the CSV files beside this file is computed by core and compared.
//!
//! An expected value is a standard's table, a published example or a law worked apart from core, never our own output;
//! `origin` says which, and how it was read. The tolerance is the one that the value was published with. Rows that are
//! known and not walked yet stand in `not_walked.csv`, each with the reason.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::print_stdout)]

mod book;
mod by_hand;
mod cable_jobs;
mod cable_laws;
mod checked;
mod circuit;
mod conductor;
mod inputs;
mod job_a;
mod lesson;
mod money;
mod power;
mod power_family;
mod power_jobs;
mod pump;
mod rows;
mod second;
mod service;
mod startup;
mod sums;
mod water;
mod water_flow;
mod water_jobs;
mod water_lift;
mod whole_jobs;
mod whole_jobs_power;

use inputs::Inputs;
use rows::{Row, not_walked, rows};
use std::collections::BTreeSet;

/// What core answers to a row.
#[derive(Debug, Clone, PartialEq)]
pub enum Answer {
    /// A number in the row's unit.
    Number(f64),
    /// A size, or `none` where a table lists nothing.
    Text(String),
}

/// Why a row can't be answered, or the answer.
pub type Answered = Result<Answer, String>;

const CHAPTERS: [(&str, &str); 24] = [
    ("startup", include_str!("startup.csv")),
    ("water", include_str!("water.csv")),
    ("water_properties", include_str!("water_properties.csv")),
    ("water_friction", include_str!("water_friction.csv")),
    ("water_pipe", include_str!("water_pipe.csv")),
    ("water_well", include_str!("water_well.csv")),
    ("water_lift", include_str!("water_lift.csv")),
    ("conductor", include_str!("conductor.csv")),
    ("ampacity", include_str!("ampacity.csv")),
    ("ground_and_devices", include_str!("ground_and_devices.csv")),
    ("motor_current", include_str!("motor_current.csv")),
    ("drop", include_str!("drop.csv")),
    ("ac_resistance", include_str!("ac_resistance.csv")),
    ("cable_service", include_str!("cable_service.csv")),
    ("annuity", include_str!("annuity.csv")),
    ("supply", include_str!("supply.csv")),
    ("money_mass", include_str!("money_mass.csv")),
    ("money", include_str!("money.csv")),
    ("pump_curve", include_str!("pump_curve.csv")),
    ("pump_power", include_str!("pump_power.csv")),
    ("pump_motor", include_str!("pump_motor.csv")),
    ("power", include_str!("power.csv")),
    ("power_family", include_str!("power_family.csv")),
    ("power_tables", include_str!("power_tables.csv")),
];

/// Numbers of the published set that this package covers: walked, or listed as not walked.
const COVERED: [(u16, u16); 1] = [(1, 231)];

fn answer(row: &Row) -> Answered {
    let inputs = Inputs::parse(&row.inputs)?;
    let answer = water::answer(&row.quantity, &row.unit, &inputs)
        .or_else(|| water_flow::answer(&row.quantity, &row.unit, &inputs))
        .or_else(|| water_lift::answer(&row.quantity, &row.unit, &inputs))
        .or_else(|| conductor::answer(&row.quantity, &row.unit, &inputs))
        .or_else(|| book::answer(&row.quantity, &row.unit, &inputs))
        .or_else(|| circuit::answer(&row.quantity, &row.unit, &inputs))
        .or_else(|| service::answer(&row.quantity, &row.unit, &inputs))
        .or_else(|| startup::answer(&row.quantity, &row.unit, &inputs))
        .or_else(|| money::answer(&row.quantity, &row.unit, &inputs))
        .or_else(|| sums::answer(&row.quantity, &row.unit, &inputs))
        .or_else(|| pump::answer(&row.quantity, &row.unit, &inputs))
        .or_else(|| power::answer(&row.quantity, &row.unit, &inputs))
        .or_else(|| power_family::answer(&row.quantity, &row.unit, &inputs))
        .unwrap_or_else(|| Err(format!("no sum for {} in {}", row.quantity, row.unit)))?;
    inputs.all_read()?;
    Ok(answer)
}

/// What is wrong with a row, with all that is needed to look it up.
fn fault(row: &Row) -> Option<String> {
    let trouble = match answer(row) {
        Ok(found) => row.tolerance.miss(&row.expected, &found)?,
        Err(trouble) => trouble,
    };
    Some(format!("{} {} ({}): {trouble}\n    origin: {}", row.id, row.quantity, row.inputs, row.origin))
}

fn walk(chapter: &str) {
    let text = CHAPTERS.iter().find(|(name, _)| *name == chapter).unwrap().1;
    let rows = rows(text).unwrap();
    let faults: Vec<String> = rows.iter().filter_map(fault).collect();
    println!("{chapter}: {} values walked", rows.len());
    assert!(faults.is_empty(), "{} of {} {chapter} values miss:\n{}", faults.len(), rows.len(), faults.join("\n"));
}

#[test]
fn settings_and_tests_of_the_start_up() {
    walk("startup");
}

#[test]
fn levels_in_the_well() {
    walk("water");
}

#[test]
fn water_as_a_fluid() {
    walk("water_properties");
}

#[test]
fn friction_and_fittings() {
    walk("water_friction");
}

#[test]
fn pipe_sizes() {
    walk("water_pipe");
}

#[test]
fn wells_and_demand() {
    walk("water_well");
}

#[test]
fn tanks_surges_and_suction() {
    walk("water_lift");
}

#[test]
fn conductors() {
    walk("conductor");
}

#[test]
fn ampacities() {
    walk("ampacity");
}

#[test]
fn grounds_and_devices() {
    walk("ground_and_devices");
}

#[test]
fn motor_currents() {
    walk("motor_current");
}

#[test]
fn voltage_drops() {
    walk("drop");
}

#[test]
fn alternating_current_resistances() {
    walk("ac_resistance");
}

#[test]
fn conductors_in_service_and_long_leads() {
    walk("cable_service");
}

#[test]
fn annuities_and_lost_energy() {
    walk("annuity");
}

#[test]
fn supply() {
    walk("supply");
}

#[test]
fn money_and_mass() {
    walk("money_mass");
}

#[test]
fn worth_bills_and_estimates() {
    walk("money");
}

#[test]
fn pump_curves() {
    walk("pump_curve");
}

#[test]
fn pump_power_and_speed() {
    walk("pump_power");
}

#[test]
fn motor_load_and_unbalance() {
    walk("pump_motor");
}

#[test]
fn power_from_the_pole() {
    walk("power");
}

#[test]
fn families_of_equipment() {
    walk("power_family");
}

#[test]
fn tables_of_power() {
    walk("power_tables");
}

#[test]
fn enough_values_are_published_and_each_names_its_origin() {
    let all: Vec<Row> = CHAPTERS.iter().flat_map(|(_, text)| rows(text).unwrap()).collect();
    let remembered = all.iter().filter(|row| row.origin.starts_with("from memory")).count();
    println!("{} values walked, {remembered} of them from memory", all.len());
    assert!(all.len() - remembered >= 60, "{} values, {remembered} from memory", all.len());
    for row in &all {
        assert!(row.origin.len() > 8, "{} names no origin", row.id);
    }
    let ids: BTreeSet<&str> = all.iter().map(|row| row.id.as_str()).collect();
    assert_eq!(ids.len(), all.len(), "an id stands twice");
}

#[test]
fn every_published_value_is_walked_or_says_why_not() {
    let walked: BTreeSet<String> =
        CHAPTERS.iter().flat_map(|(_, text)| rows(text).unwrap()).map(|row| row.id).collect();
    let left = not_walked(include_str!("not_walked.csv")).unwrap();
    for (id, why) in &left {
        assert!(!walked.contains(id), "{id} is walked and listed as not walked");
        assert!(why.len() > 20, "{id} gives no reason");
    }
    let known = |number: &str| {
        let mut ids = walked.iter().chain(left.iter().map(|(id, _)| id));
        ids.any(|id| id.split('-').next() == Some(number))
    };
    for number in COVERED.iter().flat_map(|(first, last)| *first..=*last) {
        let number = format!("O{number:03}");
        assert!(known(&number), "{number} is neither walked nor listed");
    }
}

#[test]
fn a_wrong_value_is_caught_with_its_inputs_and_origin() {
    let text = "id,quantity,inputs,expected,unit,tolerance,origin\n\
        X1,solid diameter,gauge=10,0.1021,in,0.05 %,made up for this test\n\
        X2,solid diameter,gauge=10; gouge=1,0.1019,in,0.05 %,made up for this test\n\
        X3,solid diameter,gauge=10,0.1019,mm,0.05 %,made up for this test\n\
        X4,equipment ground,device_a=60; metal=copper,8 AWG,size,exact,made up for this test\n";
    let faults: Vec<String> = rows(text).unwrap().iter().filter_map(fault).collect();
    assert_eq!(faults.len(), 4, "{faults:?}");
    assert!(faults[0].contains("gauge=10") && faults[0].contains("made up for this test"), "{}", faults[0]);
    assert!(faults[1].contains("gouge"), "{}", faults[1]);
}
