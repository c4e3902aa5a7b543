//! The water around the lead, counted as cooler where the code lets it: no more than 10 ft in the warmer air, and no more
//! than a tenth of the rest (NEC 310.14(A)(2), its exception, from memory).

use super::{by, found, house, of_code, with};
use wellwright_core::evaluate::{Evaluation, evaluate};
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{Field, Job, Way};
use wellwright_core::papers::{Topic, working};
use wellwright_core::power::family::Kind;
use wellwright_core::quantity::{Celsius, Length, Unit, UnitSystem, feet, in_feet};
use wellwright_core::standards::conductor::Size;

const CODE: &str = "COOLER_WATER_IDLE";

/// A well whose water stands 6 ft deep while the pump runs, in air of 45 °C, with `surface` feet of lead above it. The
/// motor takes 26 A: 32.5 A with the quarter. 10 AWG of 75 °C carries 35 A: 28.7 A in that air, all of it in water.
fn shallow(surface: f64, setting: f64) -> Job {
    let mut job = with(
        house(),
        &[
            (Field::StaticLevel, 5.0),
            (Field::SpecificCapacity, 25.0),
            (Field::SurfaceRun, surface),
            (Field::PumpSetting, setting),
            (Field::WellDepth, 2500.0),
            (Field::NameplateAmps230, 26.0),
            (Field::AllowedDrop, 15.0),
            (Field::WaterTemperature, 60.0),
        ],
    );
    job.choices.terminals_marked_75 = Some(true);
    job.choices.cooler_water = Some(true);
    job
}

fn size(answer: &Evaluation) -> Size {
    answer.here.as_ref().unwrap().way(Way::V240).unwrap().run.run.conductor.size
}

/// The conductor of the way with an active front end, which is judged by itself.
fn of_way(answer: &Evaluation) -> Size {
    let way = answer.ways.all.iter().find(|way| way.family.kind == Kind::ConvertingActive).unwrap();
    way.lead.unwrap().run.conductor.size
}

#[test]
fn a_short_stretch_in_warm_air() {
    let level = in_feet(evaluate(&shallow(4.0, 150.0)).water.pumping_level.unwrap());
    assert!((level - 6.0).abs() < 1e-9, "{level} ft");
    // 4 ft above ground and 6 ft down to the water are 10 ft: they ask for 100 ft in the water.
    for (surface, setting, counts) in
        [(4.0, 106.5, true), (4.0, 105.5, false), (4.1, 500.0, false), (3.0, 96.5, true), (3.0, 95.5, false)]
    {
        let job = shallow(surface, setting);
        let answer = evaluate(&job);
        let (expected, around) =
            if counts { (Size::Awg10, Celsius((60.0 - 32.0) / 1.8)) } else { (Size::Awg8, Celsius(45.0)) };
        assert_eq!((size(&answer), of_way(&answer)), (expected, expected), "{surface} ft, {setting} ft");
        let run = answer.here.as_ref().unwrap().way(Way::V240).unwrap().run;
        assert!((run.ambient.0 - around.0).abs() < 1e-9, "{surface} ft, {setting} ft: {run:?}");
        assert_eq!(found(&job, CODE), if counts { vec![] } else { vec![Severity::Note] }, "{surface} ft, {setting} ft");
        let mut without = job.clone();
        without.choices.cooler_water = None;
        assert_eq!((size(&evaluate(&without)), found(&without, CODE)), (Size::Awg8, vec![]));
    }
}

/// The working of the ampacity goes by the water, 60 °F, where it counts, and by the air where it does not.
#[test]
fn the_working_tells_what_surrounds_the_lead() {
    for (setting, fahrenheit) in [(106.5, 60.0), (105.5, 113.0)] {
        let answer = evaluate(&shallow(4.0, setting));
        let found = working(&answer, Topic::Ampacity(Way::V240), UnitSystem::Us).unwrap();
        let told: Vec<f64> = found
            .values
            .iter()
            .filter(|put| put.value.unit == Unit::DegreeFahrenheit)
            .map(|put| put.value.value)
            .collect();
        assert!(told.len() == 1 && (told[0] - fahrenheit).abs() < 1e-9, "{setting} ft: {told:?}");
    }
}

#[test]
fn what_is_told() {
    let told = of_code(&evaluate(&shallow(4.1, 500.0)), CODE);
    let [Finding::CoolerWaterIdle { warm, most }] = told[..] else { panic!("{told:?}") };
    assert!((in_feet(warm) - 10.1).abs() < 1e-9 && (in_feet(most) - 10.0).abs() < 1e-9);
    let told = of_code(&evaluate(&shallow(4.0, 56.0)), CODE);
    let [Finding::CoolerWaterIdle { warm, most }] = told[..] else { panic!("{told:?}") };
    assert!((in_feet(warm) - 10.0).abs() < 1e-9 && (in_feet(most) - 5.0).abs() < 1e-9);
    // Water as warm as the air is no cooler.
    let warm = with(shallow(4.1, 500.0), &[(Field::WaterTemperature, 114.0)]);
    assert_eq!(found(&warm, CODE), []);
}

/// Along the curve of a longer lead the conductor at each depth is the one of a job at that depth.
#[test]
fn along_the_curve() {
    let whole = evaluate(&shallow(3.0, 150.0));
    let sweep = whole.sweep.as_ref().unwrap().way(Way::V240);
    for depth in [20.0, 60.0, 95.9, 96.1, 130.0, 400.0, 900.0] {
        let there = evaluate(&shallow(3.0, depth));
        let run = sweep.run_at(feet(depth)).unwrap();
        let here = there.here.as_ref().unwrap().way(Way::V240).unwrap().run;
        assert_eq!((run.run.conductor, run.ambient), (here.run.conductor, here.ambient), "{depth} ft");
    }
    let ends: Vec<(Length, Length)> = sweep.runs.iter().map(|run| (run.from, run.to)).collect();
    assert!(ends.windows(2).all(|pair| pair[0].1 == pair[1].0), "{ends:?}");
}

/// Where it is the water that lies deeper, the stretch in the air grows: a well 100 ft in the water has 7 ft in the air,
/// and 3 ft more end it.
#[test]
fn along_the_curve_of_deeper_water() {
    let answer = evaluate(&shallow(1.0, 106.0));
    let sweep = answer.deeper.as_ref().unwrap().way(Way::V240);
    let water = (60.0 - 32.0) / 1.8;
    for (depth, around) in [(101.1, water), (106.0, water), (108.9, water), (109.1, 45.0), (300.0, 45.0)] {
        let run = sweep.run_at(feet(depth)).unwrap();
        assert!((run.ambient.0 - around).abs() < 1e-9, "{depth} ft: {run:?}");
    }
}

/// 80 ft in the water allow 8 ft in the air, of which 6 are there.
#[test]
fn along_the_curve_of_deeper_water_by_a_tenth() {
    let answer = evaluate(&shallow(0.0, 86.0));
    let sweep = answer.deeper.as_ref().unwrap().way(Way::V240);
    let water = (60.0 - 32.0) / 1.8;
    for (depth, around) in [(82.0, water), (87.9, water), (88.1, 45.0)] {
        let run = sweep.run_at(feet(depth)).unwrap();
        assert!((run.ambient.0 - around).abs() < 1e-9, "{depth} ft: {run:?}");
    }
}

/// A motor that stands for its own equipment has a lead of its own: where no conductor serves that, it is told, though
/// one serves the three-phase motor.
#[test]
fn the_lead_of_the_way_that_was_chosen() {
    const NO_SIZE: &str = "CABLE_NO_SIZE";
    let drop = (Field::AllowedDrop, 2.0);
    let far = |setting: f64| by(with(house(), &[(Field::PumpSetting, setting), drop]), Kind::SinglePhaseMotor);
    let mut settings = (620..2500).step_by(20).map(f64::from);
    let last = settings.find(|setting| !found(&far(*setting), NO_SIZE).is_empty()).unwrap();
    let answer = evaluate(&far(last));
    assert!(answer.here.as_ref().unwrap().way(Way::V240).is_some(), "three-phase serves at {last} ft");
    assert_eq!(of_code(&answer, NO_SIZE), [Finding::CableNoSize { way: Way::V240 }]);
    // Where neither serves it is told once.
    let neither = with(far(2900.0), &[(Field::AllowedDrop, 0.5)]);
    let of_low = |finding: &&Finding| **finding == Finding::CableNoSize { way: Way::V240 };
    assert_eq!(of_code(&evaluate(&neither), NO_SIZE).iter().filter(of_low).count(), 1);
}

/// A supply is usually within 5 % of 240 or 480 V (ANSI C84.1, range A).
#[test]
fn unusual_volts_of_a_supply() {
    const CODE: &str = "BEYOND_USUAL";
    let at = |volts: f64| found(&with(house(), &[(Field::SupplyVolts, volts)]), CODE).len();
    let usual = at(240.0);
    for (volts, more) in
        [(228.0, 0), (252.0, 0), (227.9, 1), (252.1, 1), (456.0, 0), (504.0, 0), (455.9, 1), (504.1, 1), (300.0, 1)]
    {
        assert_eq!(at(volts), usual + more, "{volts} V");
    }
}

/// Air of -10 to 40 °C is usual around a lead, equipment and a feeder.
#[test]
fn unusual_air() {
    const CODE: &str = "BEYOND_USUAL";
    for field in [Field::Ambient, Field::DriveAmbient, Field::FeederAmbient] {
        let at = |celsius: f64| found(&with(house(), &[(field, celsius)]), CODE).len();
        let usual = at(20.0);
        for (celsius, more) in [(-10.0, 0), (-10.1, 1), (5.0, 0)] {
            assert_eq!(at(celsius), usual + more, "{field:?} {celsius} °C");
        }
    }
}
