//! Water and pumps that can't be: bad curves, dry wells, broken suctions, more flow than there is. Each gets a clear
//! verdict, and none a power, a motor or a cost that looks fine.

use super::jobs::house;
use wellwright_core::evaluate::{Evaluation, NoDuty, evaluate, report};
use wellwright_core::finding::{Finding, Severity, Supplier};
use wellwright_core::job::{Control, DemandBy, Field, Job, Origin, Way};
use wellwright_core::pump::demo::HOUSE_WELL;
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{Entry, Unit, gpm, in_feet, in_gpm, in_hertz};

/// The house's job, its motor left to follow.
fn left() -> Job {
    let mut job = house();
    for field in Field::ALL.into_iter().filter(|field| field.path().starts_with("motor.")) {
        job.set(field, None);
    }
    job
}

fn with(figures: &[(Field, f64)]) -> Job {
    let mut job = left();
    enter(&mut job, figures);
    job
}

/// Enters figures in the units of their ranges.
fn enter(job: &mut Job, figures: &[(Field, f64)]) {
    for (field, value) in figures {
        job.set(*field, Some(Entry::new(*value, field.spec().accepted.unit)));
    }
}

fn stops(answer: &Evaluation) -> Vec<&'static str> {
    let stops = answer.findings.iter().filter(|finding| finding.severity() == Severity::Stop);
    stops.map(Finding::code).collect()
}

/// No power at the shaft: no motor, no lead, no cost, and the motor's field says that it waits.
#[track_caller]
fn no_motor(answer: &Evaluation) {
    assert_eq!(answer.water.shaft(), None);
    assert!(answer.motor.is_none() && answer.here.is_none() && answer.sweep.is_none() && answer.deeper.is_none());
    let [error] = &answer.errors[..] else { panic!("{:?}", answer.errors) };
    assert_eq!((error.field(), error.code()), (Field::MotorPower, "missing"));
    assert_eq!(answer.inputs.stand_in(Field::MotorPower), None);
    assert_eq!(answer.inputs.stand_in(Field::PumpEfficiency), None);
    assert!(answer.inputs.motor_current.iter().all(Result::is_err));
    let told = report("", answer);
    assert!(told["motor"].is_null() && told["at_depth"].is_null() && told["ways"].is_null(), "{told}");
    assert!(told["ways_in_deeper_water"].is_null() && told["break_even"].is_null());
    assert!(told.pointer("/water/pump/duty").is_none_or(serde_json::Value::is_null), "{told}");
}

#[test]
fn the_job_itself_is_sound() {
    let answer = evaluate(&left());
    assert!(answer.errors.is_empty() && answer.here.is_some() && answer.deeper.is_some());
    assert!(answer.inputs.motor_power.as_ref().is_ok_and(|power| power.origin == Origin::WorkedOut));
    let mut curved = left();
    curved.curve = HOUSE_WELL.text();
    assert!(evaluate(&curved).water.shaft().is_some_and(|shaft| shaft.value > 0.0));
}

#[test]
fn a_text_that_makes_no_curve_is_no_pump() {
    let texts = [
        "x",
        "gpm,ft\n",
        "# 0,820\n# 25,676\n# 40,362\n",
        "0,820",
        "0,820\n25,676",
        "0,820\n25,676\n25,362",
        "0,820\n25,676\n20,700",
        "0,820\n25,830\n40,840",
        "0,820\n25,820\n40,820",
        "0,820\n25,NaN\n40,362",
        "0,820\n25,inf\n40,362",
        "0,820\n25,-676\n40,362",
        "-5,820\n25,676\n40,362",
        "0,820\n25,676\n40,1e300",
        "0,820\n25,676\n1e6,362",
        "0,820,0\n25,676,60\n40,362",
        "0,820,0\n25,676,160\n40,362,44",
        "0,820,0\n25,676,0\n40,362,44",
        "0,820,10\n25,676,60\n40,362,44",
        "gpm,ft,hp\n0,820,2\n25,676,0.1\n40,362,6",
        "gpm,psi\n0,355\n25,290\n40,150",
        "gpm,ft,ft\n0,820,1\n25,676,1\n40,362,1",
        "1,234,5\n2,345,6\n3,456",
    ];
    for text in texts {
        // A head against a shut valve and an efficiency that were entered are no pump beside it.
        let mut job = with(&[(Field::ShutOffHead, 820.0), (Field::PumpEfficiency, 0.6)]);
        job.curve = text.into();
        let answer = evaluate(&job);
        no_motor(&answer);
        assert_eq!(stops(&answer), ["CURVE_UNUSABLE"], "{text:?}");
        assert!(answer.water.curve.as_ref().is_some_and(Result::is_err) && answer.water.pump.is_none(), "{text:?}");
        // The water stands all the same.
        assert!(answer.water.head.is_some() && answer.water.tank.is_some(), "{text:?}");
        assert!(answer.water.dead_head.is_none(), "{text:?}");
    }
    // A text of nothing but blanks is no curve, and none was meant.
    for text in [" ", "\n\n\t"] {
        let mut job = left();
        job.curve = text.into();
        assert_eq!(evaluate(&job).water, evaluate(&left()).water, "{text:?}");
    }
}

#[test]
fn more_than_the_pump_gives() {
    for control in [Control::ConstantPressure, Control::OnOff] {
        let mut job = with(&[(Field::Flow, 35.0)]);
        (job.curve, job.choices.control) = (HOUSE_WELL.text(), Some(control));
        let answer = evaluate(&job);
        assert!(stops(&answer).contains(&"DEMAND_NOT_MET"), "{:?}", answer.findings);
        let told = answer.findings.iter().find_map(|finding| match finding {
            Finding::DemandNotMet { asked, gives, by: Supplier::Pump } => Some((*asked, *gives)),
            _ => None,
        });
        let (asked, gives) = told.unwrap();
        assert!((in_gpm(asked) - 35.0).abs() < 1e-9 && in_gpm(gives) > 20.0 && in_gpm(gives) < 30.0, "{gives:?}");
        let duty = answer.water.pump.as_ref().unwrap().duty;
        if control == Control::OnOff {
            // Switched on, it runs where it meets the system, and that is what its motor carries.
            assert!(duty.is_ok_and(|duty| duty.flow == gives));
            continue;
        }
        assert!(matches!(duty, Err(NoDuty::Faster { needed }) if in_hertz(needed) > 60.0), "{duty:?}");
        no_motor(&answer);
    }
}

#[test]
fn a_lift_that_the_pump_does_not_reach() {
    for control in [Control::ConstantPressure, Control::OnOff] {
        let mut job = with(&[(Field::StaticLevel, 900.0), (Field::PumpSetting, 1100.0)]);
        (job.curve, job.choices.control) = (HOUSE_WELL.text(), Some(control));
        let answer = evaluate(&job);
        let nothing = |finding: &Finding| matches!(finding, Finding::DemandNotMet { gives, by: Supplier::Pump, .. } if *gives == gpm(0.0));
        assert!(answer.findings.iter().any(nothing), "{control:?}: {:?}", answer.findings);
        no_motor(&answer);
    }
}

#[test]
fn a_pump_past_the_end_of_its_curve() {
    for control in [Control::ConstantPressure, Control::OnOff] {
        let mut job = with(&[(Field::StaticLevel, 10.0), (Field::Pressure, 0.0), (Field::PumpSetting, 100.0)]);
        (job.curve, job.choices.control) = (HOUSE_WELL.text(), Some(control));
        let answer = evaluate(&job);
        let told = answer.findings.iter().find_map(|finding| match finding {
            Finding::PumpBeyondCurve { most } => Some(in_gpm(*most)),
            _ => None,
        });
        assert!(told.is_some_and(|most| (most - 40.0).abs() < 1e-9), "{control:?}: {:?}", answer.findings);
        no_motor(&answer);
    }
}

/// A curve that begins above the flow that is asked for: what the pump does there is not known.
#[test]
fn a_flow_below_the_beginning_of_the_curve() {
    let mut job = with(&[(Field::Flow, 6.0)]);
    job.curve = HOUSE_WELL.text().lines().skip(4).collect::<Vec<_>>().join("\n");
    let answer = evaluate(&job);
    // The shut-off head that was entered apart counts, and it is too much for the tank.
    assert_eq!(stops(&answer), ["BEYOND_FORMULAS", "DEADHEAD_OVER_RATING"], "{:?}", answer.findings);
    assert!(answer.findings.iter().any(|finding| finding.code() == "CURVE_ODD"));
    no_motor(&answer);
}

/// A speed that no curve can be carried to.
#[test]
fn a_speed_far_from_the_curve_s() {
    for control in [Control::ConstantPressure, Control::OnOff] {
        let mut job = with(&[(Field::CurveFrequency, 20.0), (Field::MostFrequency, 60.0)]);
        (job.curve, job.choices.control) = (HOUSE_WELL.text(), Some(control));
        assert!(stops(&evaluate(&job)).contains(&"BEYOND_FORMULAS"), "{control:?}");
    }
    // Without a curve nothing hangs on the speeds but the shut-off head.
    let speeds = [(Field::CurveFrequency, 20.0), (Field::MostFrequency, 60.0)];
    let mut job = with(&speeds);
    assert!(stops(&evaluate(&job)).contains(&"BEYOND_FORMULAS"));
    job.set(Field::ShutOffHead, None);
    assert_eq!(stops(&evaluate(&job)), [""; 0]);
}

#[test]
fn a_dry_well() {
    // At rest below the pump; while the pump runs; at the pump itself.
    for figures in [
        [(Field::StaticLevel, 700.0), (Field::SpecificCapacity, 0.6)],
        [(Field::StaticLevel, 600.0), (Field::SpecificCapacity, 0.6)],
        [(Field::StaticLevel, 620.0), (Field::SpecificCapacity, 1000.0)],
    ] {
        let answer = evaluate(&with(&figures));
        assert_eq!(answer.findings[0].severity(), Severity::Stop);
        assert!(stops(&answer).contains(&"PUMPING_LEVEL_AT_PUMP"), "{:?}", answer.findings);
        assert!(answer.water.submergence.is_some_and(|above| in_feet(above) <= 0.0));
    }
    // A well that gives less than is asked for, long before that.
    let answer = evaluate(&with(&[(Field::StaticLevel, 600.0), (Field::SpecificCapacity, 0.6)]));
    let well = answer.findings.iter().find_map(|finding| match finding {
        Finding::DemandNotMet { gives, by: Supplier::Well, .. } => Some(in_gpm(*gives)),
        _ => None,
    });
    // 20 ft at 0.6 gpm/ft.
    assert!(well.is_some_and(|gives| (gives - 12.0).abs() < 1e-9), "{well:?}");
}

/// A pump that is switched draws more than was asked for, and may draw a well dry that gives what was asked for.
#[test]
fn a_switched_pump_that_draws_the_well_dry() {
    let mut job = with(&[(Field::Flow, 20.0), (Field::PumpSetting, 470.0), (Field::Pressure, 40.0)]);
    (job.curve, job.choices.control) = (HOUSE_WELL.text(), Some(Control::OnOff));
    // 40 ft at 0.6 gpm/ft are 24 gpm.
    let answer = evaluate(&job);
    assert!(in_gpm(answer.water.well_gives.unwrap()) > 20.0);
    let told = answer.findings.iter().find_map(|finding| match finding {
        Finding::DemandNotMet { asked, gives, by: Supplier::Well } => Some((in_gpm(*asked), in_gpm(*gives))),
        _ => None,
    });
    let (drawn, gives) = told.unwrap();
    assert!((gives - 24.0).abs() < 1e-9 && drawn > 24.0);
    assert_eq!(drawn, in_gpm(answer.water.pump.as_ref().unwrap().duty.unwrap().flow));
    // On a drive it gives 20 gpm and no more.
    job.choices.control = None;
    assert!(!stops(&evaluate(&job)).contains(&"DEMAND_NOT_MET"));
}

#[test]
fn a_suction_that_breaks() {
    let mut job = with(&[(Field::SuctionLift, 30.0), (Field::Altitude, 3000.0), (Field::WaterTemperature, 100.0)]);
    job.choices.motor_kind = Some(MotorKind::Surface);
    let answer = evaluate(&job);
    assert!(answer.water.suction.is_some_and(|suction| in_feet(suction.available()) < 0.0));
    assert_eq!(answer.findings[0].severity(), Severity::Stop);
    assert!(stops(&answer).contains(&"NPSH_SHORT"), "whatever the pump requires: {:?}", answer.findings);
}

/// Each figure is good by itself, yet no formula holds for them together.
#[test]
fn figures_that_are_too_much_together() {
    let land = |acres: f64, inches: f64, hours: f64| {
        let figures = [(Field::IrrigatedArea, acres), (Field::WaterDepth, inches), (Field::PumpingHours, hours)];
        let mut job = with(&figures);
        job.choices.demand = Some(DemandBy::Land);
        job
    };
    // 10,000 acres under 2 in are 2 million m³; under 0.5 in within half an hour 290 m³/s; 2,500 acres 23,600 gpm.
    for job in [land(10_000.0, 2.0, 24.0), land(10_000.0, 0.5, 0.5), land(2500.0, 0.5, 24.0)] {
        let answer = evaluate(&job);
        assert!(stops(&answer).contains(&"BEYOND_FORMULAS"), "{:?}", answer.findings);
        assert!(answer.water.waits_for.is_empty() && answer.water.head.is_none());
        no_motor(&answer);
    }
    // The flow through a pipe no wider than a straw.
    let mut straw = with(&[(Field::Flow, 100.0), (Field::DropInside, 0.25)]);
    straw.choices.pipes = Default::default();
    assert_eq!(stops(&evaluate(&straw)), ["BEYOND_FORMULAS"]);
    no_motor(&evaluate(&straw));
}

#[test]
fn figures_that_contradict_one_another() {
    for (figures, code) in [
        (&[(Field::CutIn, 61.0)][..], "BEYOND_FORMULAS"),
        (&[(Field::TankPrecharge, 55.1)], "BEYOND_FORMULAS"),
        (&[(Field::CasingInside, 3.75)], "MOTOR_DOES_NOT_FIT"),
        (&[(Field::SleeveInside, 3.7)], "MOTOR_DOES_NOT_FIT"),
        (&[(Field::MotorDiameter, 6.065)], "MOTOR_DOES_NOT_FIT"),
    ] {
        let answer = evaluate(&with(figures));
        assert!(stops(&answer).contains(&code), "{figures:?}: {:?}", answer.findings);
        assert!(answer.water.tank.is_none() || answer.water.cooling.is_none(), "{figures:?}");
    }
}

/// Nobody who drinks asks for no water: the head waits for people or stock.
#[test]
fn a_house_of_nobody() {
    for people in [None, Some(0.0)] {
        let mut job = left();
        job.choices.demand = Some(DemandBy::PeopleAndStock);
        enter(&mut job, &people.map(|people| (Field::People, people)).into_iter().collect::<Vec<_>>());
        let answer = evaluate(&job);
        assert_eq!(answer.water.waits_for, [Field::People], "{people:?}");
        assert!(answer.water.demand.is_none() && answer.water.head.is_none());
        no_motor(&answer);
    }
}

/// More power than any listed motor has is an error of the motor's field, with the power that it takes.
#[test]
fn more_power_than_any_motor_has() {
    let mut job = with(&[(Field::Flow, 1500.0), (Field::SpecificCapacity, 100.0)]);
    job.choices.pipes = Default::default();
    job.set(Field::SurfaceInside, None);
    let answer = evaluate(&job);
    assert!(answer.water.shaft().is_some_and(|shaft| shaft.value > 200.0 * 745.7));
    let [error] = &answer.errors[..] else { panic!("{:?}", answer.errors) };
    assert_eq!((error.field(), error.code()), (Field::MotorPower, "out_of_range"));
    assert!(error.given().is_some_and(|given| given.unit == Unit::Horsepower && given.value > 200.0));
    assert!(answer.motor.is_none() && answer.here.is_none() && answer.deeper.is_none());
}

/// A motor that was typed stays where the pump's power is not known, but nothing is told of its load.
#[test]
fn a_motor_that_was_typed_carries_no_load_that_is_not_known() {
    let mut job = house();
    job.curve = "0,820".into();
    let answer = evaluate(&job);
    assert!(answer.errors.is_empty() && answer.here.is_some());
    assert!(answer.motor.is_none() && answer.deeper.is_none() && answer.water.shaft().is_none());
    let whole = evaluate(&house());
    for way in Way::ALL {
        assert_eq!(answer.here.as_ref().unwrap().way(way), whole.here.as_ref().unwrap().way(way));
    }
}

/// Beside a curve of head alone the efficiency counts: entered, or assumed; beside one that tells it, it does not.
#[test]
fn an_efficiency_that_the_curve_does_not_tell() {
    let head_alone: String = HOUSE_WELL.rows.iter().map(|(flow, head, _)| format!("{flow},{head}\n")).collect();
    for control in [Control::ConstantPressure, Control::OnOff] {
        let mut job = with(&[(Field::PumpEfficiency, 0.5)]);
        (job.curve, job.choices.control) = (head_alone.clone(), Some(control));
        assert!(Field::PumpEfficiency.counts(&job) && !Field::ShutOffHead.counts(&job));
        let duty = |job: &Job| evaluate(job).water.pump.unwrap().duty.unwrap();
        let half = duty(&job);
        assert_eq!((half.efficiency.value, half.efficiency.origin), (0.5, Origin::Typed));
        assert!((half.shaft.value / half.water.value - 2.0).abs() < 1e-12);
        job.set(Field::PumpEfficiency, None);
        let assumed = duty(&job);
        assert_eq!((assumed.efficiency.value, assumed.efficiency.origin), (0.6, Origin::Assumed));
        assert_eq!((assumed.flow, assumed.head), (half.flow, half.head));
        // One that can't be used is not replaced by an assumed one.
        enter(&mut job, &[(Field::PumpEfficiency, 1.5)]);
        let answer = evaluate(&job);
        assert!(answer.water.shaft().is_none() && answer.here.is_none());
        assert_eq!(answer.errors.iter().map(|error| error.field()).next(), Some(Field::PumpEfficiency));
        job.curve = HOUSE_WELL.text();
        assert!(!Field::PumpEfficiency.counts(&job));
        assert!(evaluate(&job).errors.is_empty() && duty(&job).efficiency.origin == Origin::WorkedOut);
    }
}

/// A pressure that leaves nothing between cut-in and the air of the place: the tank holds no more air than that.
#[test]
fn a_pressure_too_low_to_be_switched() {
    let mut job = with(&[(Field::Pressure, 15.0)]);
    job.set(Field::CutIn, None);
    job.choices.control = Some(Control::OnOff);
    let answer = evaluate(&job);
    assert_eq!(stops(&answer), ["DEADHEAD_OVER_RATING"; 1]);
    let tank = answer.water.tank.unwrap();
    assert_eq!((tank.band.cut_in.value, tank.band.precharge.value), (0.0, 0.0));
    // 44 gal · (1 − 12.416/27.416), by hand.
    let drawdown = wellwright_core::quantity::in_gallons(tank.drawdown);
    assert!((drawdown - 24.07).abs() < 0.01, "{drawdown}");
    assert_eq!(answer.inputs.stand_in(Field::CutIn), Some(Entry::new(0.0, Unit::PoundPerSquareInch)));
}
