//! Figures set in a job directly, past the file reader: not numbers, endless, beyond the range, in another kind of unit.

use super::jobs::{counting, house};
use wellwright_core::cable::lead::{Run, runs};
use wellwright_core::error::InputError;
use wellwright_core::evaluate::{Evaluation, error_report, evaluate};
use wellwright_core::job::{Field, Job, Sets};
use wellwright_core::quantity::{Entry, Money, MoneyPerLength, Unit};

/// The answer to a good job in which a field counts and holds this.
fn with(field: Field, entry: Entry) -> Evaluation {
    let mut job = counting(field);
    job.set(field, Some(entry));
    evaluate(&job)
}

/// The one error of an answer, about this field and with its range; what it says in a file agrees.
fn only(answer: &Evaluation, field: Field, code: &str) -> InputError {
    let [error] = &answer.errors[..] else { panic!("{field:?}: {:?}", answer.errors) };
    let accepted = field.spec().accepted;
    assert_eq!((error.field(), error.code(), error.accepted()), (field, code, accepted));
    let told = error_report(error);
    assert_eq!(told["field"], field.path());
    assert_eq!(told["code"], code);
    assert_eq!(told["accepted"]["min"].as_f64(), Some(accepted.min), "{field:?}");
    assert_eq!(told["accepted"]["max"].as_f64(), Some(accepted.max), "{field:?}");
    assert_eq!(told["accepted"]["unit"], serde_json::to_value(accepted.unit).unwrap());
    error.clone()
}

#[test]
fn what_is_no_number_is_refused_in_every_field() {
    for field in Field::ALL {
        for value in [f64::NAN, -f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            let error = only(&with(field, Entry::new(value, field.spec().accepted.unit)), field, "not_finite");
            assert_eq!(error, InputError::NotFinite { field, accepted: field.spec().accepted });
            assert_eq!(error.given(), None);
        }
    }
}

#[test]
fn what_lies_beyond_the_range_is_refused_in_every_field() {
    for field in Field::ALL {
        let accepted = field.spec().accepted;
        let hair = 1e-6 * accepted.max.abs().max(1.0);
        for value in [accepted.min - hair, accepted.max + hair, 1e308, -1e308, f64::MAX, f64::MIN] {
            let given = Entry::new(value, accepted.unit);
            let error = only(&with(field, given), field, "out_of_range");
            assert_eq!(error, InputError::OutOfRange { field, given, accepted });
            assert_eq!(error_report(&error)["given"]["value"].as_f64(), Some(value));
        }
        for value in [accepted.min, accepted.max] {
            let mut job = counting(field);
            job.set(field, Some(Entry::new(value, accepted.unit)));
            // The lowest frequency may not pass the highest.
            if field == Field::LeastFrequency {
                job.set(Field::MostFrequency, job.get(field));
            }
            let answer = evaluate(&job);
            assert!(answer.errors.is_empty(), "{field:?} refuses its own end {value}: {:?}", answer.errors);
        }
    }
}

#[test]
fn another_kind_of_unit_is_refused_in_every_field() {
    for field in Field::ALL {
        for unit in Unit::ALL.into_iter().filter(|unit| unit.kind() != field.kind()) {
            let given = Entry::new(1.0, unit);
            let error = only(&with(field, given), field, "wrong_unit");
            assert_eq!(error, InputError::WrongUnit { field, given, accepted: field.spec().accepted });
        }
    }
}

#[test]
fn what_must_be_entered_is_asked_for() {
    let answer = evaluate(&Job::default());
    let asked: Vec<_> = answer.errors.iter().map(|error| (error.field(), error.code(), error.given())).collect();
    assert_eq!(asked, [(Field::PumpSetting, "missing", None), (Field::MotorPower, "missing", None)]);
    let mut job = house();
    job.set(Field::PumpSetting, None);
    only(&evaluate(&job), Field::PumpSetting, "missing");
    // The motor follows from the water; without it, it is asked for.
    let mut job = house();
    job.set(Field::MotorPower, None);
    assert_eq!(evaluate(&job).errors, []);
    job.set(Field::Flow, None);
    only(&evaluate(&job), Field::MotorPower, "missing");
}

/// The conductors of both leads and their price over depth; what stands ahead of them may be other equipment.
fn leads(answer: &Evaluation) -> Vec<(Run, MoneyPerLength)> {
    let runs = answer.sweep.iter().flat_map(|sweep| sweep.ways.iter().flat_map(|way| way.runs.clone()));
    runs.map(|run| (run.run, run.price)).collect()
}

/// Both leads at the job's depth.
fn leads_here(answer: &Evaluation) -> Option<[Option<(Run, Money)>; 2]> {
    answer.here.as_ref().map(|here| here.ways.map(|way| way.map(|way| (way.run.run, way.cable))))
}

/// One bad figure takes away only what depends on it.
#[test]
fn the_rest_of_the_answer_stays_alive() {
    let whole = evaluate(&house());
    let bad = |field: Field| with(field, Entry::new(f64::NAN, field.spec().accepted.unit));
    let no_depth = bad(Field::PumpSetting);
    assert_eq!(leads(&no_depth), leads(&whole));
    assert!(no_depth.here.is_none());
    let no_price = bad(Field::CableMetal);
    assert!(no_price.sweep.is_none() && no_price.inputs.motor_current.iter().all(Result::is_ok));
    assert_eq!(no_price.water, whole.water);
    // The device of this job is typed, so that nothing of the lead depends on the motor's efficiency.
    assert_eq!(leads_here(&bad(Field::MotorEfficiency)), leads_here(&whole));
    // No flow, no head; the lead of a typed motor stands, and so do the levels that no flow is needed for.
    let no_flow = bad(Field::Flow);
    assert_eq!((leads_here(&no_flow), no_flow.water.static_level), (leads_here(&whole), whole.water.static_level));
    assert!(no_flow.water.head.is_none() && no_flow.motor.is_none() && no_flow.water.tank.is_some());
    // A part of the line that can't be used takes the head; the cooling of the motor does not hang on it.
    let no_pipe = bad(Field::DropFittings);
    assert!(no_pipe.water.head.is_none() && no_pipe.water.pump.is_none());
    assert_eq!((no_pipe.water.cooling, leads_here(&no_pipe)), (whole.water.cooling, leads_here(&whole)));
    // An efficiency that can't be used is not replaced by an assumed one.
    let no_efficiency = bad(Field::PumpEfficiency);
    assert!(no_efficiency.water.head == whole.water.head && no_efficiency.water.shaft().is_none());
    let no_rating = bad(Field::PressureRating);
    assert!(no_rating.water.dead_head.is_none() && no_rating.water.shaft() == whole.water.shaft());
}

/// A figure that does not count is kept, and neither judged nor used, however bad it is.
#[test]
fn a_figure_that_does_not_count_is_not_judged() {
    let mut counted = 0;
    for field in Field::ALL.into_iter().filter(|field| !field.counts(&house())) {
        let mut job = house();
        job.set(field, Some(Entry::new(f64::NAN, Unit::Volt)));
        assert_eq!(evaluate(&job), evaluate(&house()), "{field:?}");
        assert!(job.get(field).is_some());
        counted += 1;
    }
    assert!(counted >= 20, "{counted} fields");
}

/// No other number of sets can be held, so that none is taken for another in silence.
#[test]
fn a_number_of_sets_that_no_sum_holds_for_can_not_be_set() {
    for sets in 0..=u8::MAX {
        let held = Sets::new(sets).map(Sets::get);
        assert_eq!(held, (1..=4).contains(&sets).then_some(sets));
    }
}

/// The same at the formula, which takes a plain number.
#[test]
fn a_lead_of_no_sets_is_refused() {
    let answer = evaluate(&house());
    let mut demands = answer.sweep.unwrap().ways[0].demands;
    assert!(runs(&demands).is_ok_and(|runs| !runs.is_empty()));
    demands.most_sets = 0;
    assert_eq!(runs(&demands).unwrap_err().argument, "most_sets");
}

/// The lowest frequency may be the highest, but not above it; one that stands in gives way.
#[test]
fn the_lowest_frequency_is_not_above_the_highest() {
    let errors = |least: Option<f64>, most: f64| {
        let mut job = Job::default();
        job.set(Field::LeastFrequency, least.map(|least| Entry::new(least, Unit::Hertz)));
        job.set(Field::MostFrequency, Some(Entry::new(most, Unit::Hertz)));
        let of_least = |error: &&InputError| error.field() == Field::LeastFrequency;
        evaluate(&job).errors.iter().find(of_least).cloned()
    };
    assert_eq!([errors(Some(40.0), 60.0), errors(Some(45.0), 45.0)], [None, None]);
    let Some(InputError::OutOfRange { given, accepted, .. }) = errors(Some(50.0), 45.0) else { panic!("none is told") };
    assert_eq!((given.value, accepted.max, accepted.unit), (50.0, 45.0, Unit::Hertz));
}

/// A figure that can't be used was typed all the same; one that is missing was not.
#[test]
fn what_was_typed_is_typed() {
    let mut job = Job::default();
    let typed = |job: &Job, field| evaluate(job).inputs.entered.is_typed(field);
    assert!(!typed(&job, Field::PumpSetting) && !typed(&job, Field::Ambient));
    job.set(Field::PumpSetting, Some(Entry::new(-5.0, Unit::Foot)));
    job.set(Field::Ambient, Some(Entry::new(20.0, Unit::DegreeCelsius)));
    assert!(typed(&job, Field::PumpSetting) && typed(&job, Field::Ambient));
}

#[test]
fn a_line_extension_costs_nothing_or_more() {
    let accepted = Field::LineFixed.spec().accepted;
    assert_eq!((accepted.min, accepted.max, accepted.unit), (0.0, 1e7, Unit::Dollar));
    let other = Field::ExtraEquipment.spec().accepted;
    assert_eq!((other.min, other.max, other.unit), (-1e6, 1e6, Unit::Dollar));
}
