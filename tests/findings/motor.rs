//! The motor's load, its nameplate, and the metal of its lead.

use super::{OVER, UNDER, field, found, house, of_code, raised, with, without};
use wellwright_core::evaluate::evaluate;
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{Field, Job, Reading, Way, wire};
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{in_amperes, in_hertz, in_horsepower, in_watts};
use wellwright_core::standards::conductor::Metal;
use wellwright_core::startup::{SettingCode, Value, Word, predicted, settings};

const OVERLOAD: &str = "MOTOR_OVERLOADED";

fn shaft(job: &Job) -> f64 {
    in_horsepower(evaluate(job).water.shaft().unwrap())
}

#[test]
fn a_motor_in_a_well_has_its_service_factor_to_spare() {
    let shaft = shaft(&house());
    let motor = |hp: f64, factor: Option<f64>| {
        let job = with(house(), &[(Field::MotorPower, hp)]);
        match factor {
            Some(factor) => with(job, &[(Field::ServiceFactor, factor)]),
            None => without(job, &[Field::ServiceFactor]),
        }
    };
    use Severity::{Caution, Stop};
    // 1.15 is assumed.
    for (factor, counts) in [(Some(1.15), 1.15), (None, 1.15), (Some(1.3), 1.3)] {
        for (hp, expected) in [
            (shaft * OVER, vec![]),
            (shaft, vec![]),
            (shaft * UNDER, vec![Caution]),
            (shaft / counts * OVER, vec![Caution]),
            (shaft / counts, vec![Caution]),
            (shaft / counts * UNDER, vec![Stop]),
        ] {
            assert_eq!(found(&motor(hp, factor), OVERLOAD), expected, "{hp} hp, service factor {factor:?}");
        }
    }
    // Without anything to spare the rating is the end.
    assert_eq!(found(&motor(shaft * UNDER, Some(1.0)), OVERLOAD), [Stop]);
    let told = of_code(&evaluate(&motor(6.0, None)), OVERLOAD);
    let [Finding::MotorOverloaded { shaft: carries, rated, beyond_service_factor }] = told[..] else {
        panic!("{told:?}")
    };
    assert!((in_horsepower(carries) - shaft).abs() < 1e-9 && (in_horsepower(rated) - 6.0).abs() < 1e-9);
    assert!(!beyond_service_factor);
}

#[test]
fn a_motor_on_the_surface_has_nothing_to_spare() {
    let shaft = shaft(&field());
    for factor in [None, Some(1.15), Some(1.4)] {
        let mut job = field();
        if let Some(factor) = factor {
            job = with(job, &[(Field::ServiceFactor, factor)]);
        }
        for (hp, fits) in [(shaft * OVER, true), (shaft, true), (shaft * UNDER, false)] {
            let found = found(&with(job.clone(), &[(Field::MotorPower, hp)]), OVERLOAD);
            assert_eq!(found, if fits { vec![] } else { vec![Severity::Stop] }, "{hp} hp, {factor:?}");
        }
    }
}

/// The motor that the power at the shaft chooses carries that power, whatever it is.
#[test]
fn a_motor_that_follows_is_not_overloaded_at_its_duty() {
    let left = without(house(), &[Field::MotorPower, Field::NameplateAmps230, Field::NameplateAmps460]);
    for flow in [2.0, 10.0, 24.9, 27.6, 40.0, 80.0] {
        assert!(!raised(&with(left.clone(), &[(Field::Flow, flow)]), OVERLOAD), "{flow} gpm");
    }
}

#[test]
fn a_nameplate_against_its_own_figures() {
    const CODE: &str = "NAMEPLATE_DISAGREES";
    // P/(√3 V η cos φ) of 7.5 hp with 0.78 and 0.80, by hand.
    let amps = |volts: f64| 7.5 * 745.7 / (3f64.sqrt() * volts * 0.78 * 0.80);
    assert!(!raised(&house(), CODE));
    for (field, way, volts) in
        [(Field::NameplateAmps230, Way::V240, 230.0), (Field::NameplateAmps460, Way::V480, 460.0)]
    {
        let expected = amps(volts);
        for (share, agrees) in [
            (1.1 * UNDER, true),
            (1.1, true),
            (1.1 * OVER, false),
            (0.9 * OVER, true),
            (0.9, true),
            (0.9 * UNDER, false),
        ] {
            let job = with(house(), &[(field, share * expected)]);
            assert_eq!(found(&job, CODE), if agrees { vec![] } else { vec![Severity::Caution] }, "{way:?}: {share}");
        }
        let told = of_code(&evaluate(&with(house(), &[(field, 2.0 * expected)])), CODE);
        let [Finding::NameplateDisagrees { way: at, expected: told, nameplate }] = told[..] else { panic!("{told:?}") };
        assert!(at == way && (in_amperes(told) / expected - 1.0).abs() < 1e-12);
        assert!((in_amperes(nameplate) / (2.0 * expected) - 1.0).abs() < 1e-12);
        // Only what was entered is judged: the other voltage follows from it and says nothing of its own.
        let other = way.other().nameplate_field();
        let alone = without(with(house(), &[(field, 2.0 * expected)]), &[other]);
        assert_eq!(found(&alone, CODE).len(), 1);
    }
    // The table's current is no nameplate.
    let none = [Field::NameplateAmps230, Field::NameplateAmps460];
    assert!(!raised(&with(without(house(), &none), &[(Field::MotorEfficiency, 0.5)]), CODE));
}

#[test]
fn aluminum_hangs_in_no_well() {
    const CODE: &str = "ALUMINIUM_IN_WELL";
    for (kind, metal, stopped) in [
        (MotorKind::Submersible, Metal::Aluminum, true),
        (MotorKind::Submersible, Metal::Copper, false),
        (MotorKind::Surface, Metal::Aluminum, false),
        (MotorKind::Surface, Metal::Copper, false),
    ] {
        for mut job in [house(), field()] {
            (job.choices.motor_kind, job.choices.metal) = (Some(kind), Some(metal));
            assert_eq!(found(&job, CODE), if stopped { vec![Severity::Stop] } else { vec![] }, "{kind:?} {metal:?}");
        }
    }
    // Aluminum is a lead as any other for a motor on the surface: thicker, and with a price.
    let mut aluminum = field();
    aluminum.choices.metal = Some(Metal::Aluminum);
    let (copper, aluminum) = (evaluate(&field()).here.unwrap(), evaluate(&aluminum).here.unwrap());
    for way in Way::ALL {
        let (copper, aluminum) = (copper.way(way).unwrap(), aluminum.way(way).unwrap());
        assert!(aluminum.run.run.conductor > copper.run.run.conductor && aluminum.metal < copper.metal);
    }
}

/// With constant volts per hertz (NEMA MG 1 part 30) a motor has the less volts the slower it turns, and draws the more
/// for its power: I = P/(√3 · 460 V · f/60 · η · cos φ).
#[test]
fn a_motor_that_turns_slower_draws_more_for_its_power() {
    let job = wire::read_text(include_str!("../golden/v1/pump_curve_with_a_year.job.json")).unwrap();
    let answer = evaluate(&job);
    let motor = answer.motor.unwrap();
    let (hertz, efficiency, cos) =
        (in_hertz(motor.frequency.unwrap()), &answer.inputs.efficiency, &answer.inputs.power_factor);
    assert!((50.0..51.0).contains(&hertz), "{hertz}");
    let (efficiency, cos) = (efficiency.as_ref().unwrap().value, cos.as_ref().unwrap().value);
    for (way, rated) in [(Way::V240, 230.0), (Way::V480, 460.0)] {
        let by_hand = in_watts(motor.shaft) / (3f64.sqrt() * rated * hertz / 60.0 * efficiency * cos);
        assert!((in_amperes(motor.running[way as usize].unwrap()) / by_hand - 1.0).abs() < 1e-12, "{way:?}");
    }
    // 46.6 % of its power at 84.2 % of its volts are 55.3 % of its load: the nameplate does not tell what it draws.
    assert!((motor.load() - 0.553).abs() < 1e-3 && motor.light, "{}", motor.load());
    assert_eq!(found(&job, LIGHT), [Severity::Note]);
    // No reading is judged by it, and no trip is told from it.
    assert_eq!(predicted(&job, &answer, Reading::Amps1), None);
    assert_eq!(dry_run_of(&job), Some(Value::Word(Word::Learned)));
}

const LIGHT: &str = "MOTOR_LIGHT";

fn dry_run_of(job: &Job) -> Option<Value> {
    let all = settings(job, &evaluate(job));
    all.into_iter().find(|setting| setting.code == SettingCode::DryRun).map(|setting| setting.value)
}

/// Three quarters of the load (common practice); equality holds.
#[test]
fn a_motor_at_light_load() {
    let full = shaft(&house()) / 0.75;
    let at = |hp: f64| with(house(), &[(Field::MotorPower, hp), (Field::NameplateAmps460, 13.0)]);
    assert_eq!((found(&at(full * UNDER), LIGHT), found(&at(full * OVER), LIGHT)), (vec![], vec![Severity::Note]));
    assert!(matches!(dry_run_of(&at(full * UNDER)), Some(Value::Figure(_))));
    assert_eq!(dry_run_of(&at(full * OVER)), Some(Value::Word(Word::Learned)));
}
