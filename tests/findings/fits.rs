//! What a pipe bears, what fits in the well, and what an average or a low flow hides.

use super::{OVER, UNDER, found, house, of_code, raised, with, without};
use wellwright_core::evaluate::evaluate;
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{Control, DemandBy, Field, Part};
use wellwright_core::quantity::{in_feet, in_feet_per_second, in_gpm};
use wellwright_core::standards::pipe::{Nominal, Series};

#[test]
fn a_drop_pipe_that_a_shut_valve_bursts() {
    const CODE: &str = "PIPE_OVER_RATING";
    // PVC schedule 40, 1-1/2 in: 2 · 2,000 psi · 0.145 in/(1.900 in − 0.145 in), by hand; water of 62.366 56 lb/ft³.
    let rating: f64 = 4000.0 * 0.145 / (1.900 - 0.145);
    let head = rating * 144.0 / 62.366_56;
    let hung = |series, shut_off: f64| {
        let mut job = with(house(), &[(Field::ShutOffHead, shut_off)]);
        let pick = &mut job.choices.pipes[Part::Drop as usize];
        (pick.series, pick.size) = (Some(series), Nominal::named("1-1/2"));
        job
    };
    assert!(!raised(&hung(Series::PvcSchedule40, head * UNDER), CODE));
    assert_eq!(found(&hung(Series::PvcSchedule40, head * OVER), CODE), [Severity::Stop]);
    // Of steel nothing is known.
    assert!(!raised(&hung(Series::SteelSchedule40, 2.0 * head), CODE));
}

#[test]
fn what_is_wider_than_its_place() {
    const CODE: &str = "MOTOR_DOES_NOT_FIT";
    // Motor 3.75 in in a casing of 6.065 in; a sleeve around the one and in the other.
    for (field, good, bad) in [
        (Field::CasingInside, 3.75 * (1.0 + 2e-6), 3.75),
        (Field::MotorDiameter, 6.065 * (1.0 - 2e-6), 6.065),
        (Field::SleeveInside, 3.75 * (1.0 + 2e-6), 3.75),
        (Field::SleeveInside, 6.065 * (1.0 - 2e-6), 6.065),
    ] {
        assert!(!raised(&with(house(), &[(field, good)]), CODE), "{field:?} {good}");
        assert_eq!(found(&with(house(), &[(field, bad)]), CODE), [Severity::Stop], "{field:?} {bad}");
    }
    assert!(!raised(&without(house(), &[Field::CasingInside]), CODE));
}

#[test]
fn a_sleeve_that_is_too_tight_is_not_told() {
    // A gap of a quarter inch on each side of 3.75 in: π/4 (4.25² − 3.75²) in² at 0.25 ft/s, 231 in³ in a gallon.
    let gap = core::f64::consts::FRAC_PI_4 * (4.25 * 4.25 - 3.75 * 3.75);
    let limit = 0.25 * 12.0 * gap * 60.0 / 231.0;
    let sleeve = |flow: f64| {
        let answer = evaluate(&with(house(), &[(Field::LeastFlow, flow)]));
        let told = of_code(&answer, "MOTOR_COOLING_LOW");
        let [Finding::MotorCoolingLow { sleeve, speed, .. }] = told[..] else { panic!("{told:?}") };
        assert!(in_feet_per_second(speed) < 0.25);
        sleeve.is_some()
    };
    assert!(sleeve(limit * OVER) && !sleeve(limit * UNDER) && !sleeve(0.0));
}

#[test]
fn a_flow_that_may_fall_below_the_cooling_one() {
    const CODE: &str = "COOLS_ABOVE";
    assert_eq!(found(&house(), CODE), [Severity::Note]);
    let [Finding::CoolsAbove { least_flow }] = of_code(&evaluate(&house()), CODE)[..] else { panic!() };
    assert!((in_gpm(least_flow) - 13.9057).abs() < 1e-3);
    // A least flow that was entered is judged itself; a pump that is switched runs at its own flow.
    assert!(!raised(&with(house(), &[(Field::LeastFlow, 20.0)]), CODE));
    let mut switched = house();
    switched.choices.control = Some(Control::OnOff);
    assert!(!raised(&switched, CODE));
}

#[test]
fn the_average_of_a_day() {
    const CODE: &str = "DAY_AVERAGE";
    let mut home = with(house(), &[(Field::People, 4.0), (Field::BeefCattle, 100.0)]);
    assert!(!raised(&home, CODE));
    home.choices.demand = Some(DemandBy::PeopleAndStock);
    // 4 · 75 + 100 · 15 = 1,800 gal over 22 h.
    assert_eq!(found(&home, CODE), [Severity::Caution]);
    let [Finding::DayAverage { flow }] = of_code(&evaluate(&home), CODE)[..] else { panic!() };
    assert!((in_gpm(flow) - 1800.0 / 22.0 / 60.0).abs() < 1e-9);
}

#[test]
fn water_that_runs_by_itself() {
    const CODE: &str = "RUNS_BY_ITSELF";
    let low = |rise: f64| with(house(), &[(Field::StaticLevel, 20.0), (Field::Pressure, 0.0), (Field::Rise, rise)]);
    let total = in_feet(evaluate(&low(0.0)).water.head.unwrap().total());
    // Every foot down the hill is one foot of head less.
    assert!(!raised(&low(-total + 0.01), CODE));
    assert_eq!(found(&low(-total - 0.01), CODE), [Severity::Caution]);
    let [Finding::RunsByItself { head }] = of_code(&evaluate(&low(-total - 10.0)), CODE)[..] else { panic!() };
    assert!((in_feet(head) + 10.0).abs() < 1e-6);
}
