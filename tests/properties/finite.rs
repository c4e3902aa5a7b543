//! Whatever a person enters, every figure of the answer is a number.

use super::jobs::supplied;
use super::tried;
use proptest::prelude::*;
use wellwright_core::evaluate::{Evaluation, evaluate, report};
use wellwright_core::job::{Field, Inputs, Job, Sets};
use wellwright_core::quantity::{Entry, Unit, UnitSystem};

/// Any number at all, with the sizes that hurt more often than chance gives them.
fn number() -> impl Strategy<Value = f64> {
    prop_oneof![
        any::<f64>(),
        prop::num::f64::ANY,
        -10.0..4000.0,
        prop::sample::select(vec![
            0.0,
            -0.0,
            1e308,
            -1e308,
            f64::MIN_POSITIVE,
            f64::MAX,
            f64::NAN,
            f64::INFINITY,
            f64::NEG_INFINITY,
            0.5,
            3000.0,
        ]),
    ]
}

/// Characters of curves, and some that are in none.
const SIGNS: [char; 24] = [
    '0', '1', '2', '5', '9', '.', ',', ';', '-', '+', 'e', ' ', '\t', '\n', '\r', '%', '#', 'm', 'f', 't', 'g', 'p',
    'h', '³',
];

/// Any text of a curve: none, noise, rows of any numbers.
fn text() -> impl Strategy<Value = String> {
    let noise = prop::collection::vec(prop::sample::select(&SIGNS[..]), 0..60).prop_map(String::from_iter);
    let row = (number(), number(), number()).prop_map(|(flow, head, share)| format!("{flow}\t{head}\t{share}\n"));
    let likely = (0.0..400.0f64, 0.0..900.0f64, 0.0..100.0f64);
    let likely = likely.prop_map(|(flow, head, share)| format!("{flow}\t{head}\t{share}\n"));
    let rows = prop::collection::vec(prop_oneof![1 => row, 6 => likely], 0..8).prop_map(|rows| rows.concat());
    prop_oneof![1 => Just(String::new()), 1 => noise, 2 => rows]
}

/// A good job in which some figures are replaced by anything in any unit, or cleared, and the curve by any text.
pub fn absurd() -> impl Strategy<Value = Job> {
    let field = || prop::sample::select(&Field::ALL[..]);
    let unit = prop_oneof![Just(None), prop::sample::select(&Unit::ALL[..]).prop_map(Some)];
    let edit = (field(), prop::option::weighted(0.9, (number(), unit)));
    let sets = prop::option::of(1..=Sets::LIMIT);
    let curve = prop::option::weighted(0.2, text());
    let edits = prop::collection::vec(edit, 0..5);
    (supplied(), edits, sets, curve, any::<bool>()).prop_map(|(plain, edits, sets, curve, own_motor)| {
        let mut job = plain.job(UnitSystem::Us);
        if !own_motor {
            job.set(Field::MotorPower, None);
        }
        for (field, entry) in edits {
            let entry = entry.map(|(value, unit)| Entry::new(value, unit.unwrap_or(field.spec().accepted.unit)));
            job.set(field, entry);
        }
        job.choices.most_sets = sets.and_then(Sets::new).or(job.choices.most_sets);
        job.curve = curve.unwrap_or(job.curve);
        job
    })
}

/// Names the first figure that is not a number, by the words of its debug form.
fn not_a_number(shown: &str) -> Option<&str> {
    let mut words = shown.split(|c: char| !(c.is_alphanumeric() || c == '.' || c == '_' || c == '-'));
    let at = words.find(|word| matches!(word.trim_start_matches('-'), "NaN" | "inf"))?;
    let place = at.as_ptr() as usize - shown.as_ptr() as usize;
    let start = shown[..place].char_indices().rev().nth(80).map_or(0, |(index, _)| index);
    Some(&shown[start..place + at.len()])
}

/// The figures of an answer, less the errors and a curve that can't be read, which repeat what was entered.
fn figures(answer: &Evaluation) -> String {
    let Inputs { pump_setting, surface_run, motor_power, motor_current, power_factor, .. } = &answer.inputs;
    let Inputs { efficiency, ambient, allowed_drop, device, prices, entered, .. } = &answer.inputs;
    let inputs = (
        (pump_setting.as_ref().ok(), surface_run.as_ref().ok(), motor_power.as_ref().ok(), power_factor.as_ref().ok()),
        motor_current.each_ref().map(|current| current.as_ref().ok()),
        (efficiency.as_ref().ok(), ambient.as_ref().ok(), allowed_drop.as_ref().ok(), device.as_ref().ok()),
        prices.as_ref().ok(),
        Field::ALL.map(|field| entered.get(field, |value| value)),
        Field::ALL.map(|field| answer.inputs.stand_in(field)),
    );
    let sweeps = (&answer.sweep, &answer.deeper, &answer.here);
    let mut water = answer.water.clone();
    water.curve = water.curve.filter(Result::is_ok);
    format!("{inputs:?} {water:?} {:?} {sweeps:?} {:?} {}", answer.motor, answer.findings, of_the_ways(answer))
}

/// The figures of the ways and of the leads in service, less the names of equipment and the limits that are none: a lead
/// of any length may do without a remedy.
fn of_the_ways(answer: &Evaluation) -> String {
    let mut ways = answer.ways.clone();
    ways.table = None;
    for way in &mut ways.all {
        way.family.name.clear();
        for stress in [&mut way.stress, &mut way.bare].into_iter().flatten() {
            if stress.bare.value == f64::INFINITY {
                stress.bare = stress.length;
            }
        }
    }
    format!("{ways:?} {:?}", answer.service)
}

/// Fields without which there is no lead.
const OF_THE_LEAD: [Field; 11] = [
    Field::SurfaceRun,
    Field::Ambient,
    Field::MotorPower,
    Field::NameplateAmps230,
    Field::NameplateAmps460,
    Field::MotorPowerFactor,
    Field::AllowedDrop,
    Field::DeviceAmps,
    Field::CableFixed,
    Field::CableMetal,
    Field::ExtraEquipment,
];

/// A sweep over depth waits for these; for the efficiency only where the device is not typed.
fn needed(field: Field, job: &Job) -> bool {
    OF_THE_LEAD.contains(&field) || (field == Field::MotorEfficiency && job.get(Field::DeviceAmps).is_none())
}

proptest! {
    #![proptest_config(tried(1000))]

    #[test]
    fn every_figure_is_finite(job in absurd()) {
        let answer = evaluate(&job);
        let shown = figures(&answer);
        prop_assert_eq!(not_a_number(&shown), None);
        let text = report(&job.name, &answer).to_string();
        prop_assert!(serde_json::from_str::<serde_json::Value>(&text).is_ok());
    }

    // A missing answer always has an error that says why: no silence.
    #[test]
    fn where_there_is_no_answer_there_is_an_error(job in absurd()) {
        let answer = evaluate(&job);
        let blamed: Vec<Field> = answer.errors.iter().map(|error| error.field()).collect();
        let lead = blamed.iter().any(|field| needed(*field, &job));
        prop_assert_eq!(answer.sweep.is_none(), lead, "{:?}", answer.errors);
        let here = answer.sweep.is_some() && !blamed.contains(&Field::PumpSetting);
        prop_assert_eq!(answer.here.is_some(), here, "{:?}", answer.errors);
        let mut sorted = blamed.clone();
        sorted.sort();
        sorted.dedup();
        prop_assert_eq!(blamed, sorted, "each field once, in the order of the page");
        for error in &answer.errors {
            let accepted = error.accepted();
            // A figure that may not pass another has a narrower range.
            let spec = error.field().spec().accepted;
            prop_assert!(accepted.min == spec.min && accepted.max <= spec.max && accepted.unit == spec.unit);
            prop_assert!(accepted.min.is_finite() && accepted.max.is_finite());
            prop_assert!(error.field().counts(&job), "{:?} does not count", error);
        }
    }
}

/// A motor so poor that its drive would need a device beyond the ground table: the device's field says so.
#[test]
fn a_device_beyond_the_table_is_an_error_and_no_silence() {
    let mut job = Job::default();
    job.set(Field::PumpSetting, Some(Entry::new(100.0, Unit::Foot)));
    job.set(Field::MotorPower, Some(Entry::new(200.0, Unit::Horsepower)));
    job.set(Field::MotorEfficiency, Some(Entry::new(0.4, Unit::One)));
    let answer = evaluate(&job);
    let [error] = &answer.errors[..] else { panic!("{:?}", answer.errors) };
    assert_eq!((error.field(), error.code()), (Field::DeviceAmps, "out_of_range"));
    assert_eq!(error.given(), Some(Entry::new(2500.0, Unit::Ampere)));
    assert!(answer.sweep.is_none());
    job.set(Field::DeviceAmps, Some(Entry::new(2000.0, Unit::Ampere)));
    assert!(evaluate(&job).errors.is_empty() && evaluate(&job).here.is_some());
}

#[test]
fn a_figure_that_is_no_number_is_found() {
    assert_eq!(not_a_number("Known { value: 1.5, origin: Inf, name: info }"), None);
    assert!(not_a_number("Known { value: NaN, origin: Typed }").is_some());
    assert!(not_a_number("Known { value: -inf }").is_some_and(|text| text.ends_with("-inf")));
}
