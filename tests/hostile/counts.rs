//! Which figures count, by what is chosen: the others are kept, but neither shown nor judged.

use std::collections::BTreeSet;
use wellwright_core::job::{Choices, DemandBy, DepthOf, DrawdownBy, Field, Job, Place};
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{Entry, Unit};
use wellwright_core::water::line::FrictionMethod;

type Fields = BTreeSet<&'static str>;

fn idle(job: &Job) -> Fields {
    Field::ALL.into_iter().filter(|field| !field.counts(job)).map(|field| field.path()).collect()
}

fn chosen(choose: impl FnOnce(&mut Choices)) -> Job {
    let mut job = Job::default();
    choose(&mut job.choices);
    job
}

/// The fields that come to count, and those that no longer do, beside a job in which nothing is chosen.
fn moves(job: &Job) -> (Vec<&'static str>, Vec<&'static str>) {
    let (before, now) = (idle(&Job::default()), idle(job));
    (before.difference(&now).copied().collect(), now.difference(&before).copied().collect())
}

/// Without a choice: a flow, a submersible pump with its drawdown, friction by its roughness, equipment in the sun.
#[test]
fn nothing_chosen_has_its_figures() {
    let expected = [
        "demand.application_efficiency",
        "demand.area",
        "demand.beef",
        "demand.beef_daily",
        "demand.dairy",
        "demand.dairy_daily",
        "demand.depth",
        "demand.horse_daily",
        "demand.horses",
        "demand.people",
        "demand.person_daily",
        "energy.season_demand_price",
        "energy.season_price",
        "energy.season_share",
        "line.drop_hazen_williams",
        "line.suction_fittings",
        "line.suction_hazen_williams",
        "line.suction_inside",
        "line.suction_length",
        "line.suction_lift",
        "line.suction_roughness",
        "line.surface_hazen_williams",
        "pump.npsh_margin",
        "pump.npsh_required",
        "well.bore_diameter",
        "well.loss",
        "well.pumping_time",
        "well.specific_capacity",
        "well.storage",
        "well.transmissivity",
    ];
    assert_eq!(idle(&Job::default()), BTreeSet::from(expected));
}

#[test]
fn each_choice_of_the_water_has_its_figures() {
    let land = chosen(|choices| choices.demand = Some(DemandBy::Land));
    assert_eq!(moves(&land), (vec!["demand.area", "demand.depth"], vec!["demand.flow"]));
    let net = chosen(|choices| (choices.demand, choices.depth_of) = (Some(DemandBy::Land), Some(DepthOf::Net)));
    let of_land = vec!["demand.application_efficiency", "demand.area", "demand.depth"];
    assert_eq!(moves(&net), (of_land, vec!["demand.flow"]));
    assert_eq!(moves(&chosen(|choices| choices.depth_of = Some(DepthOf::Net))), (vec![], vec![]));
    let people = chosen(|choices| choices.demand = Some(DemandBy::PeopleAndStock));
    let heads = [
        "demand.beef",
        "demand.beef_daily",
        "demand.dairy",
        "demand.dairy_daily",
        "demand.horse_daily",
        "demand.horses",
        "demand.people",
        "demand.person_daily",
    ];
    assert_eq!(moves(&people), (heads.to_vec(), vec!["demand.flow"]));
    let capacity = chosen(|choices| choices.drawdown = Some(DrawdownBy::SpecificCapacity));
    assert_eq!(moves(&capacity), (vec!["well.specific_capacity"], vec!["site.drawdown"]));
    let aquifer = chosen(|choices| choices.drawdown = Some(DrawdownBy::Aquifer));
    let of_aquifer =
        ["well.bore_diameter", "well.loss", "well.pumping_time", "well.storage", "well.transmissivity"].to_vec();
    assert_eq!(moves(&aquifer), (of_aquifer, vec!["site.drawdown"]));
    let hazen_williams = chosen(|choices| choices.friction = Some(FrictionMethod::HazenWilliams));
    let by = ["line.drop_hazen_williams", "line.surface_hazen_williams"].to_vec();
    assert_eq!(moves(&hazen_williams), (by, vec!["line.drop_roughness", "line.surface_roughness"]));
}

#[test]
fn a_motor_on_the_surface_has_a_suction_and_no_well() {
    let surface = chosen(|choices| choices.motor_kind = Some(MotorKind::Surface));
    let suction = [
        "line.suction_fittings",
        "line.suction_inside",
        "line.suction_length",
        "line.suction_lift",
        "line.suction_roughness",
        "pump.npsh_margin",
        "pump.npsh_required",
    ];
    let well = [
        "line.drop_fittings",
        "line.drop_inside",
        "line.drop_roughness",
        "pump.least_flow",
        "pump.mass",
        "pump.motor_diameter",
        "pump.sleeve_inside",
        "site.drawdown",
        "site.minimum_submergence",
        "site.pump_setting",
        "site.static_level",
        "site.well_depth",
        "well.casing_inside",
        "well.screen_top",
        "well.tested_yield",
    ];
    assert_eq!(moves(&surface), (suction.to_vec(), well.to_vec()));
    for drawdown in [DrawdownBy::SpecificCapacity, DrawdownBy::Aquifer] {
        let mut other = surface.clone();
        other.choices.drawdown = Some(drawdown);
        assert_eq!(moves(&other), moves(&surface), "{drawdown:?}");
    }
}

#[test]
fn shade_seasons_and_a_table_of_duty_have_their_figures() {
    for job in [chosen(|choices| choices.place = Some(Place::Indoors)), chosen(|choices| choices.shaded = Some(true))] {
        assert_eq!(moves(&job), (vec![], vec!["supply.sun"]));
    }
    let of_season = ["energy.season_demand_price", "energy.season_price", "energy.season_share"];
    for (months, counts) in [(0.0, [].as_slice()), (5.0, of_season.as_slice())] {
        let mut job = Job::default();
        job.set(Field::SeasonMonths, Some(Entry::new(months, Unit::Month)));
        assert_eq!(moves(&job), (counts.to_vec(), vec![]), "{months} months");
    }
    let mut duty = Job::default();
    duty.duty = "25 100".into();
    let hours: Vec<_> = [Field::YearlyHours, Field::HoursLow, Field::HoursHigh].map(Field::path).to_vec();
    let mut idle = moves(&duty).1;
    idle.sort_unstable();
    let mut expected = hours;
    expected.sort_unstable();
    assert_eq!(idle, expected);
}
