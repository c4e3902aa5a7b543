//! What is asked for, the well, the pipes, the formulas.

use super::{OVER, UNDER, field, found, house, of_code, raised, with, without};
use std::f64::consts::PI;
use wellwright_core::evaluate::evaluate;
use wellwright_core::finding::{Finding, Severity, Supplier};
use wellwright_core::job::{DemandBy, DrawdownBy, Field, Job, Part};
use wellwright_core::quantity::{in_feet, in_feet_per_second, in_gpm};
use wellwright_core::standards::pipe::Series;

const DEMAND: &str = "DEMAND_NOT_MET";

/// Who does not give what is asked for.
fn suppliers(job: &Job) -> Vec<Supplier> {
    let by = |finding: Finding| match finding {
        Finding::DemandNotMet { by, .. } => by,
        other => panic!("{other:?}"),
    };
    of_code(&evaluate(job), DEMAND).into_iter().map(by).collect()
}

#[test]
fn a_well_that_gives_too_little() {
    // 190 ft of water above the pump at 0.60 gpm/ft: 114 gpm.
    for (flow, gives) in [(114.0 * UNDER, true), (114.0, true), (114.0 * OVER, false)] {
        let job = with(house(), &[(Field::Flow, flow)]);
        assert_eq!(suppliers(&job), if gives { vec![] } else { vec![Supplier::Well] }, "{flow} gpm");
        assert!(gives || found(&job, DEMAND) == [Severity::Stop]);
    }
    // Measured: 25 gpm draw it down 40 ft, and it gives in proportion 25 · 190/40 gpm.
    let mut measured = with(house(), &[(Field::Drawdown, 40.0)]);
    measured.choices.drawdown = Some(DrawdownBy::Measured);
    assert!((in_gpm(evaluate(&measured).water.well_gives.unwrap()) - 118.75).abs() < 1e-9);
    for (fall, gives) in [(190.0 * UNDER, true), (190.0, true), (190.0 * OVER, false)] {
        let job = with(measured.clone(), &[(Field::Drawdown, fall)]);
        assert_eq!(suppliers(&job).is_empty(), gives, "{fall} ft");
    }
    // Without a drawdown it is not known what the well gives.
    assert!(!raised(&without(with(house(), &[(Field::Flow, 500.0)]), &[Field::SpecificCapacity]), DEMAND));
}

/// By the aquifer and the well's own loss the flow that draws 190 ft draws just so much back.
#[test]
fn an_aquifer_that_gives_too_little() {
    let figures =
        [(Field::Transmissivity, 900.0), (Field::Storage, 1e-3), (Field::AquiferTime, 100.0), (Field::WellLoss, 0.002)];
    let mut job = with(house(), &figures);
    job.choices.drawdown = Some(DrawdownBy::Aquifer);
    let gives = in_gpm(evaluate(&job).water.well_gives.unwrap());
    let at = with(job.clone(), &[(Field::Flow, gives)]);
    assert!((in_feet(evaluate(&at).water.drawdown.unwrap()) / 190.0 - 1.0).abs() < 1e-9);
    for (flow, met) in [(gives * UNDER, true), (gives * OVER, false)] {
        assert_eq!(suppliers(&with(job.clone(), &[(Field::Flow, flow)])).is_empty(), met);
    }
}

#[test]
fn a_test_that_gave_less() {
    for (tested, gives) in [(25.0 * OVER, true), (25.0, true), (25.0 * UNDER, false)] {
        let job = with(house(), &[(Field::TestedYield, tested)]);
        assert_eq!(suppliers(&job), if gives { vec![] } else { vec![Supplier::Test] }, "{tested} gpm");
        assert!(gives || found(&job, DEMAND) == [Severity::Caution], "a longer test may give more");
    }
    // A surface pump draws from no well.
    assert!(!raised(&with(field(), &[(Field::TestedYield, 1.0)]), DEMAND));
    // The well by its capacity, and its test, each for itself.
    let both = with(house(), &[(Field::Flow, 115.0), (Field::TestedYield, 20.0)]);
    assert_eq!(suppliers(&both), [Supplier::Well, Supplier::Test]);
}

/// Demand by land meets the same limit: 10 acres of 0.30 in a day within 22 h are 61.714 gpm.
#[test]
fn land_that_asks_too_much() {
    let land = [(Field::IrrigatedArea, 10.0), (Field::WaterDepth, 0.30), (Field::PumpingHours, 22.0)];
    let mut job = with(house(), &land);
    job.choices.demand = Some(DemandBy::Land);
    for (tested, gives) in [(61.715, true), (61.713, false)] {
        assert_eq!(suppliers(&with(job.clone(), &[(Field::TestedYield, tested)])).is_empty(), gives);
    }
}

#[test]
fn the_screen_at_the_pump() {
    const CODE: &str = "PUMP_IN_SCREEN";
    for (top, in_screen) in [(620.0 * OVER, false), (620.0, true), (600.0, true)] {
        let job = with(house(), &[(Field::ScreenTop, top)]);
        assert_eq!(found(&job, CODE), if in_screen { vec![Severity::Caution] } else { vec![] }, "{top} ft");
    }
    let told = of_code(&evaluate(&with(house(), &[(Field::ScreenTop, 600.0)])), CODE);
    assert!(matches!(told[..], [Finding::PumpInScreen { top }] if (in_feet(top) - 600.0).abs() < 1e-9));
    assert!(!raised(&house(), CODE) && !raised(&with(field(), &[(Field::ScreenTop, 1.0)]), CODE));
}

/// Inside diameter in inches at which a flow runs at a speed: d = √(4 Q/(π v)); a gallon is 231 in³.
fn bore(gpm: f64, feet_per_second: f64) -> f64 {
    (4.0 * gpm * 231.0 / 60.0 / (PI * 12.0 * feet_per_second)).sqrt()
}

#[test]
fn water_that_runs_fast() {
    const CODE: &str = "PIPE_FAST";
    let fast = |job: &Job| -> Vec<(Part, f64, f64)> {
        let told = of_code(&evaluate(job), CODE).into_iter().map(|finding| match finding {
            Finding::PipeFast { part, velocity, usual } => {
                (part, in_feet_per_second(velocity), in_feet_per_second(usual))
            }
            other => panic!("{other:?}"),
        });
        told.collect()
    };
    assert_eq!(fast(&house()), []);
    // 8 ft/s in steel, 5 ft/s in plastic, by the part's series, whether its size or its bore was told.
    for (part, inside, usual) in [(Part::Drop, Field::DropInside, 8.0), (Part::Surface, Field::SurfaceInside, 5.0)] {
        let limit = bore(25.0, usual);
        for (inches, passes) in [(limit * OVER, true), (limit, true), (limit * UNDER, false)] {
            let job = with(house(), &[(inside, inches)]);
            let told = fast(&job);
            assert_eq!(told.is_empty(), passes, "{part:?} of {inches} in: {told:?}");
            if let [(at, velocity, held_to)] = told[..] {
                assert!(at == part && (velocity / usual - 1.0).abs() < 1e-5 && held_to == usual);
                assert_eq!(found(&job, CODE), [Severity::Caution]);
            }
        }
    }
    // The same bore in another series has the limit of that series.
    let mut steel = with(house(), &[(Field::SurfaceInside, bore(25.0, 7.9))]);
    steel.choices.pipes[Part::Surface as usize].series = Some(Series::SteelSchedule40);
    assert_eq!(fast(&steel), []);
    steel.choices.pipes[Part::Surface as usize].series = Some(Series::PvcSchedule80);
    assert_eq!(fast(&steel).len(), 1);
    // A pipe of no length is none.
    let none = with(house(), &[(Field::SurfaceInside, 0.8), (Field::SurfaceLength, 0.0)]);
    assert_eq!(fast(&none), []);
    // The suction of a surface pump, 800 gpm.
    let suction = |inches: f64| with(field(), &[(Field::SuctionInside, inches), (Field::SurfaceInside, 10.0)]);
    assert_eq!(fast(&suction(bore(800.0, 8.0) * OVER)), []);
    assert_eq!(fast(&suction(bore(800.0, 8.0) * UNDER)).len(), 1);
}

/// The formulas hold to 100 m/s in a pipe.
#[test]
fn a_flow_that_no_formula_holds_for() {
    const CODE: &str = "BEYOND_FORMULAS";
    let limit = bore(100.0, 100.0 / 0.3048);
    // So short that the head, a mile of water, is no trouble itself.
    let short =
        [(Field::Flow, 100.0), (Field::PumpSetting, 1.0), (Field::StaticLevel, 0.0), (Field::DropFittings, 0.0)];
    let straw = |inches: f64| with(with(house(), &short), &[(Field::DropInside, inches)]);
    assert!(!raised(&straw(limit * OVER), CODE));
    assert_eq!(found(&straw(limit * UNDER), CODE), [Severity::Stop]);
    // A million cubic meters a day: 1e6/(0.3048² · 43,560 · 0.0254) acres under an inch, by hand.
    let land = |acres: f64| {
        let mut job = with(house(), &[(Field::IrrigatedArea, acres), (Field::WaterDepth, 1.0)]);
        job.choices.demand = Some(DemandBy::Land);
        job
    };
    let limit = 1e6 / (0.3048 * 0.3048 * 43_560.0 * 0.0254);
    assert!(evaluate(&land(limit * UNDER)).water.demand.is_some());
    assert!(evaluate(&land(limit * OVER)).water.demand.is_none() && raised(&land(limit * OVER), CODE));
    // A tank that starts below its precharge.
    for (field, good, bad) in [(Field::TankPrecharge, 55.0, 55.0 * OVER), (Field::CutIn, 60.0, 60.0 * OVER)] {
        assert!(!raised(&with(house(), &[(field, good)]), CODE), "{field:?}");
        assert_eq!(found(&with(house(), &[(field, bad)]), CODE), [Severity::Stop], "{field:?}");
    }
    // Without a tank there is no band to be wrong.
    assert!(!raised(&without(with(house(), &[(Field::CutIn, 61.0)]), &[Field::TankVolume]), CODE));
}
