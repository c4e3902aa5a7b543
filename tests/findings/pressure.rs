//! The pressure: a setpoint, a shut valve of which nothing is known, a house, and plastic pipe in service.

use super::{OVER, UNDER, evaluate, found, house, of_code, raised, with, without};
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{DemandBy, Field, Job, Part};
use wellwright_core::quantity::{in_psi, psi};
use wellwright_core::standards::pipe::{DimensionRatio, Nominal, Series};
use wellwright_core::water::pipe_rating::rating_in_service;

use Severity::{Caution, Stop};

const OVER_RATING: &str = "PIPE_OVER_RATING";

fn piped(mut job: Job, part: Part, series: Series) -> Job {
    let pick = &mut job.choices.pipes[part as usize];
    (pick.series, pick.size) = (Some(series), Nominal::named("1-1/2"));
    job
}

/// Schedule 80 of 1-1/2 in: 2 · 2,000 psi · 0.200 in/(1.900 in − 0.200 in) = 470.6 psi, half of it at threads, and against
/// a shut valve the house's well has 355.1 psi (both by hand).
#[test]
fn threads_halve_a_drop_pipe_of_schedule_80() {
    let job = piped(house(), Part::Drop, Series::PvcSchedule80);
    let told = of_code(&evaluate(&job), OVER_RATING);
    let [Finding::PipeOverRating { part: Part::Drop, pressure, rating }] = told[..] else { panic!("{told:?}") };
    assert!((in_psi(rating) - 4000.0 * 0.2 / 1.7 / 2.0).abs() < 1e-9 && (in_psi(pressure) - 355.1).abs() < 0.05);
    assert_eq!(found(&job, OVER_RATING), [Stop]);
    let head = 4000.0 * 0.2 / 1.7 / 2.0 * 144.0 / 62.366_56;
    let shut = |feet: f64| with(job.clone(), &[(Field::ShutOffHead, feet)]);
    assert_eq!((found(&shut(head * UNDER), OVER_RATING), found(&shut(head * OVER), OVER_RATING)), (vec![], vec![Stop]));
}

/// SDR 26 has 160 psi at 73 °F and, by the tables of plumbing handbooks, 0.62 of it at 100 °F and 0.22 at 140 °F; 0.75 and
/// 0.62 meet at 95 °F in the middle. Polyethylene keeps half at 140 °F.
#[test]
fn warm_water_weakens_plastic() {
    let size = |series: Series| series.named("6").unwrap();
    for (series, cool, water, share) in [
        (Series::PvcSdr26, 160.0, 40.0, 1.00),
        (Series::PvcSdr26, 160.0, 73.0, 1.00),
        (Series::PvcSdr26, 160.0, 95.0, 0.685),
        (Series::PvcSdr26, 160.0, 100.0, 0.62),
        (Series::PvcSdr26, 160.0, 140.0, 0.22),
        (Series::PolyethyleneDr(DimensionRatio::Dr11), 200.0, 80.0, 1.00),
        (Series::PolyethyleneDr(DimensionRatio::Dr11), 200.0, 140.0, 0.50),
    ] {
        let left = in_psi(rating_in_service(size(series), water, true).unwrap().unwrap());
        assert!((left / (cool * share) - 1.0).abs() < 0.01, "{series:?} at {water} °F: {left} psi");
    }
    for water in [31.9, 140.1, f64::NAN] {
        assert_eq!(rating_in_service(size(Series::PvcSdr26), water, false).unwrap_err().argument, "water");
    }
    assert_eq!(rating_in_service(size(Series::SteelSchedule40), 200.0, false), Ok(None));
}

#[test]
fn a_surface_pipe_is_judged_too() {
    // 167 psi stand at the gauge against a shut valve, and SDR 26 of 1-1/2 in has 4,000 · 0.073/(1.900 − 0.073) psi; at
    // 60 °F all of it is left, at 140 °F 0.22.
    let job = piped(house(), Part::Surface, Series::PvcSdr26);
    let rating = 4000.0 * 0.073 / (1.9 - 0.073);
    let told = of_code(&evaluate(&job), OVER_RATING);
    let [Finding::PipeOverRating { part: Part::Surface, pressure, rating: told }] = told[..] else {
        panic!("{told:?}")
    };
    assert!((in_psi(told) - rating).abs() < 1e-9 && (in_psi(pressure) - 167.2).abs() < 0.1, "{pressure:?}");
    // Where a shut valve is not known, the pressure that is held counts.
    let held = |held: f64| {
        let job = without(
            with(job.clone(), &[(Field::Pressure, held), (Field::PressureRating, 900.0)]),
            &[Field::ShutOffHead],
        );
        found(&job, OVER_RATING)
    };
    assert_eq!((held(rating * UNDER), held(rating * OVER)), (vec![], vec![Stop]));
}

#[test]
fn water_that_stops_at_once() {
    const CODE: &str = "SURGE_OVER_RATING";
    // The drop pipe is the longest, and the wave runs in it: what the pump's head holds, and the wave.
    let job = piped(house(), Part::Drop, Series::PvcSchedule80);
    let answer = evaluate(&job);
    let (surge, duty) = (answer.water.surge.unwrap(), answer.water.pump.as_ref().unwrap().duty.unwrap());
    assert_eq!(surge.part, Part::Drop);
    let told = of_code(&answer, CODE);
    let [Finding::SurgeOverRating { part: Part::Drop, pressure, .. }] = told[..] else { panic!("{told:?}") };
    let held = duty.head.value * 62.366_56 * 16.018_463_37 * 9.806_65 / 6894.757;
    assert!((in_psi(pressure) / (held + in_psi(surge.rise)) - 1.0).abs() < 1e-4, "{pressure:?}");
    assert_eq!(found(&job, CODE), [Caution]);
    // Little flow makes a small wave, and of steel nothing is known.
    let small = with(job, &[(Field::Flow, 1.0), (Field::StaticLevel, 20.0), (Field::Pressure, 20.0)]);
    assert_eq!(found(&small, CODE), []);
    assert!(!raised(&piped(house(), Part::Drop, Series::SteelSchedule40), CODE));
}

#[test]
fn a_setpoint_that_reaches_the_rating() {
    const CODE: &str = "SETPOINT_OVER_RATING";
    let at = |setpoint: f64| with(house(), &[(Field::Pressure, setpoint), (Field::PressureRating, 125.0)]);
    assert_eq!((found(&at(125.0 * UNDER), CODE), found(&at(125.0), CODE)), (vec![], vec![Stop]));
}

#[test]
fn a_shut_valve_of_which_nothing_is_known() {
    const CODE: &str = "DEADHEAD_UNKNOWN";
    assert!(!raised(&house(), CODE));
    let unknown = without(house(), &[Field::ShutOffHead]);
    assert_eq!(of_code(&evaluate(&unknown), CODE), [Finding::DeadheadUnknown { rating: psi(125.0) }]);
    assert_eq!(found(&unknown, CODE), [Caution]);
}

/// 80 psi are let into a house (UPC 608.2).
#[test]
fn a_house_that_is_served() {
    const CODE: &str = "HOUSE_PRESSURE_HIGH";
    let job = |by: DemandBy, held: f64| {
        let mut job = with(house(), &[(Field::Pressure, held), (Field::People, 4.0)]);
        job.set(Field::ShutOffHead, None);
        job.choices.demand = Some(by);
        found(&job, CODE)
    };
    assert_eq!(
        (job(DemandBy::PeopleAndStock, 80.0), job(DemandBy::PeopleAndStock, 80.0 * OVER)),
        (vec![], vec![Caution])
    );
    assert_eq!(job(DemandBy::Flow, 100.0), []);
    // A shut valve counts too: 167 psi.
    let mut shut = with(house(), &[(Field::People, 4.0)]);
    shut.choices.demand = Some(DemandBy::PeopleAndStock);
    assert_eq!(found(&shut, CODE), [Caution]);
}

/// A shut-off head that can't be used has an error of its own: nothing says beside it that none is known.
#[test]
fn a_wrong_shut_off_head_is_no_unknown_one() {
    const CODE: &str = "DEADHEAD_UNKNOWN";
    assert!(raised(&without(house(), &[Field::ShutOffHead]), CODE));
    assert!(!raised(&with(house(), &[(Field::ShutOffHead, -5.0)]), CODE));
}
