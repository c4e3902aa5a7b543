//! Where an answer of the water or the pump is missing, something says why: a figure that is waited for, an error, or a
//! finding that stops.

use super::finite::absurd;
use super::tried;
use proptest::prelude::*;
use wellwright_core::evaluate::{Evaluation, evaluate};
use wellwright_core::finding::{Finding, Severity, Supplier};
use wellwright_core::job::{Field, Job, Origin};
use wellwright_core::pump::motor::{MotorKind, next_standard_power};
use wellwright_core::quantity::Power;

/// An error of a figure in one of these groups of the file.
fn wrong(answer: &Evaluation, groups: &[&str]) -> bool {
    let group = |field: Field| field.path().split('.').next().unwrap();
    answer.errors.iter().any(|error| groups.contains(&group(error.field())))
}

/// An error of one of these figures.
fn blamed(answer: &Evaluation, fields: &[Field]) -> bool {
    answer.errors.iter().any(|error| fields.contains(&error.field()))
}

fn beyond(answer: &Evaluation) -> bool {
    answer.findings.contains(&Finding::BeyondFormulas)
}

/// A finding that says why the pump does not do what is asked.
fn of_the_pump(answer: &Evaluation) -> bool {
    let of_pump = |finding: &Finding| {
        matches!(
            finding,
            Finding::DemandNotMet { by: Supplier::Pump, .. }
                | Finding::PumpBeyondCurve { .. }
                | Finding::CurveUnusable
                | Finding::BeyondFormulas
        )
    };
    answer.findings.iter().any(|finding| of_pump(finding) && finding.severity() == Severity::Stop)
}

fn of_the_water(job: &Job, answer: &Evaluation) -> Result<(), TestCaseError> {
    let water = &answer.water;
    let told = wrong(answer, &["site", "demand", "well", "line"]) || beyond(answer);
    if water.head.is_none() {
        prop_assert!(told || !water.waits_for.is_empty(), "no head: {:?}", water);
    }
    if told {
        return Ok(());
    }
    prop_assert_eq!(water.head.is_none(), !water.waits_for.is_empty(), "{:?}", water.waits_for);
    let submersible = job.choices.motor_kind() == MotorKind::Submersible;
    prop_assert_eq!(water.suction.is_some(), !submersible && water.head.is_some());
    prop_assert_eq!(water.tank.is_some(), job.get(Field::TankVolume).is_some());
    let outer = job.get(Field::SleeveInside).or(job.get(Field::CasingInside));
    let cooled = submersible && outer.is_some() && water.demand.is_some() && job.get(Field::MotorDiameter).is_some();
    let fits = answer.findings.iter().all(|finding| !matches!(finding, Finding::MotorDoesNotFit { .. }));
    let cooled = cooled && !blamed(answer, &[Field::MotorDiameter, Field::SleeveInside, Field::LeastFlow]);
    // What does not fit is told; a sleeve that fits the motor and not the casing leaves water past the motor.
    if !fits {
        return Ok(());
    }
    prop_assert_eq!(water.cooling.is_some(), cooled, "{:?}", water.cooling);
    Ok(())
}

/// The power that chooses the motor: that of the duty, or what makes the service factor bear the whole curve.
fn needed(job: &Job, answer: &Evaluation, shaft: Power) -> Power {
    let factor = match job.choices.motor_kind() {
        MotorKind::Submersible => job.get(Field::ServiceFactor).map_or(1.15, |entry| entry.value),
        MotorKind::Surface => 1.0,
    };
    let largest = answer.water.pump.as_ref().and_then(|pump| pump.largest);
    largest.map_or(shaft, |(_, power)| shaft.max(power / factor))
}

fn of_the_duty(job: &Job, answer: &Evaluation) -> Result<(), TestCaseError> {
    let shaft = answer.water.shaft();
    if answer.water.head.is_some() && shaft.is_none() {
        prop_assert!(of_the_pump(answer) || wrong(answer, &["pump"]), "{:?}", answer.findings);
    }
    let motor = answer.inputs.motor_power.as_ref();
    // A motor on the surface has no service factor to spare, whatever was entered.
    let factor = job.choices.motor_kind() == MotorKind::Surface || !blamed(answer, &[Field::ServiceFactor]);
    let none_chosen = || {
        let missing = motor.is_err_and(|error| error.code() == "missing" && error.field() == Field::MotorPower);
        prop_assert!(missing && answer.motor.is_none() && answer.here.is_none());
        Ok(())
    };
    match (job.get(Field::MotorPower), shaft) {
        (Some(_), _) => {}
        // No power at the shaft chooses no motor, nor does one beside a service factor that can't be used; none is made up.
        (None, None) => none_chosen()?,
        (None, Some(_)) if !factor => none_chosen()?,
        (None, Some(shaft)) => match (motor, next_standard_power(needed(job, answer, shaft))) {
            (Ok(known), Ok(standard)) => {
                prop_assert_eq!((known.value, known.origin), (standard, Origin::WorkedOut));
            }
            (Err(error), Err(_)) => prop_assert_eq!(error.code(), "out_of_range"),
            other => prop_assert!(false, "{:?}", other),
        },
    }
    prop_assert_eq!(answer.motor.is_some(), shaft.is_some() && motor.is_ok() && factor);
    Ok(())
}

proptest! {
    #![proptest_config(tried(1000))]

    #[test]
    fn a_missing_head_says_why(job in absurd()) {
        of_the_water(&job, &evaluate(&job))?;
    }

    #[test]
    fn a_missing_power_at_the_shaft_says_why_and_chooses_no_motor(job in absurd()) {
        of_the_duty(&job, &evaluate(&job))?;
    }
}

/// The laws above hold idly where nothing is missing or all is: each must come up.
#[test]
fn the_random_jobs_meet_what_the_laws_speak_of() {
    use proptest::strategy::ValueTree as _;
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let mut met = [0; 8];
    for _ in 0..1000 {
        let job = absurd().new_tree(&mut runner).unwrap().current();
        let answer = evaluate(&job);
        let pump = answer.water.pump.as_ref();
        let cases = [
            answer.water.head.is_some(),
            !answer.water.waits_for.is_empty(),
            beyond(&answer),
            answer.findings.contains(&Finding::CurveUnusable),
            pump.is_some_and(|pump| pump.duty.is_err()),
            pump.is_some_and(|pump| pump.curve.is_some() && pump.duty.is_ok()),
            answer.inputs.motor_power.as_ref().is_ok_and(|power| power.origin == Origin::WorkedOut),
            answer.deeper.is_some(),
        ];
        for (met, case) in met.iter_mut().zip(cases) {
            *met += usize::from(case);
        }
    }
    assert!(met.iter().all(|times| *times >= 20), "{met:?}");
}
