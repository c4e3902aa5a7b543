//! The pump by its curve.

use super::{OVER, UNDER, edge, found, house, of_code, raised, with};
use wellwright_core::evaluate::evaluate;
use wellwright_core::finding::{Finding, Severity, Supplier};
use wellwright_core::job::{Control, Field, Job};
use wellwright_core::pump::curve::{CurveWarning, PumpCurve};
use wellwright_core::pump::paste::{ColumnUnit, read};
use wellwright_core::quantity::{gpm, in_feet, in_gpm, in_horsepower};

/// An invented pump, best at 25 gpm; 17.5 and 30 gpm are points of it.
const CURVE: &str = "0,830,0\n10,800,40\n17.5,750,55\n25,680,60\n30,600,58\n40,380,45\n";

fn curved(text: &str, figures: &[(Field, f64)]) -> Job {
    let mut job = with(house(), figures);
    job.curve = text.into();
    job
}

fn switched(mut job: Job) -> Job {
    job.choices.control = Some(Control::OnOff);
    job
}

/// Total head in feet at the flow of a job, without a look at its curve.
fn head(figures: &[(Field, f64)]) -> f64 {
    in_feet(evaluate(&with(house(), figures)).water.head.unwrap().total())
}

/// The static level at which a job's total head at a flow is this; the setting stands 200 ft deeper.
fn at_head(flow: f64, wanted: f64) -> Vec<(Field, f64)> {
    let figures = |level: f64| {
        vec![
            (Field::Flow, flow),
            (Field::SpecificCapacity, 100.0),
            (Field::Pressure, 10.0),
            (Field::StaticLevel, level),
            (Field::PumpSetting, level + 200.0),
        ]
    };
    figures(edge(0.0, 2500.0, |level| head(&figures(level)) < wanted))
}

#[test]
fn more_than_the_pump_gives() {
    const CODE: &str = "DEMAND_NOT_MET";
    let pasted = read(CURVE, ColumnUnit::Gpm, ColumnUnit::Foot).unwrap();
    let curve = PumpCurve::new(pasted.points).unwrap();
    // Where the curve at full speed meets the head, both read apart.
    let meet = edge(5.0, 39.0, |flow| in_feet(curve.head(gpm(flow)).unwrap()) > head(&[(Field::Flow, flow)]));
    for (flow, met) in [(meet * UNDER, true), (meet * OVER, false)] {
        for job in [curved(CURVE, &[(Field::Flow, flow)]), switched(curved(CURVE, &[(Field::Flow, flow)]))] {
            assert_eq!(found(&job, CODE), if met { vec![] } else { vec![Severity::Stop] }, "{flow} gpm");
        }
    }
    let told = of_code(&evaluate(&curved(CURVE, &[(Field::Flow, 35.0)])), CODE);
    let [Finding::DemandNotMet { asked, gives, by: Supplier::Pump }] = told[..] else { panic!("{told:?}") };
    assert!((in_gpm(asked) - 35.0).abs() < 1e-9 && (in_gpm(gives) / meet - 1.0).abs() < 1e-9);
    // A faster pump gives more, a slower one less.
    let at = |hertz: f64| curved(CURVE, &[(Field::Flow, meet), (Field::MostFrequency, hertz)]);
    assert!(!raised(&at(60.01), CODE) && raised(&at(59.99), CODE));
}

/// On a drive 25 gpm run past the end of the curve, 40 gpm at 380 ft, where the head is under 380 ft · (25/40)²; a pump
/// that is switched, where it is under 380 ft at 40 gpm.
#[test]
fn past_the_end_of_the_curve() {
    const CODE: &str = "PUMP_BEYOND_CURVE";
    let limit = 380.0 * (25.0f64 / 40.0).powi(2);
    for (wanted, on_curve) in [(limit * OVER, true), (limit * UNDER, false)] {
        let job = curved(CURVE, &at_head(25.0, wanted));
        assert_eq!(found(&job, CODE), if on_curve { vec![] } else { vec![Severity::Stop] }, "{wanted} ft");
        assert_eq!(evaluate(&job).water.shaft().is_some(), on_curve);
    }
    for (wanted, on_curve) in [(380.0 * OVER, true), (380.0 * UNDER, false)] {
        let mut figures = at_head(40.0, wanted);
        figures[0] = (Field::Flow, 20.0);
        assert_eq!(raised(&switched(curved(CURVE, &figures)), CODE), !on_curve, "{wanted} ft");
    }
    let told = of_code(&evaluate(&curved(CURVE, &at_head(25.0, 100.0))), CODE);
    assert!(matches!(told[..], [Finding::PumpBeyondCurve { most }] if (in_gpm(most) - 40.0).abs() < 1e-9));
    // A curve of 50 Hz goes on to 6/5 of its flow at 60 Hz.
    let mut faster = at_head(25.0, 100.0).to_vec();
    faster.push((Field::CurveFrequency, 50.0));
    let told = of_code(&evaluate(&curved(CURVE, &faster)), CODE);
    assert!(matches!(told[..], [Finding::PumpBeyondCurve { most }] if (in_gpm(most) - 48.0).abs() < 1e-9), "{told:?}");
    assert!(!raised(&curved(CURVE, &[]), CODE) && !raised(&house(), CODE));
}

#[test]
fn a_text_that_makes_no_curve() {
    const CODE: &str = "CURVE_UNUSABLE";
    for (text, usable) in [
        ("", true),
        ("0,820\n25,676", false),
        ("0,820\n25,676\n40,362", true),
        ("0,820\n25,676\n25,362", false),
        ("0,820\n25,820\n40,820", false),
        ("0,820\n25,820\n40,819.9", true),
        ("0,820,0\n25,676,100\n40,362,100", true),
        ("0,820,0\n25,676,100.1\n40,362,100", false),
        ("0,820,0\n25,676,60\n40,362,", false),
        ("gpm,ft,hp\n0,820,2\n25,676,7\n40,362,6", true),
        ("gpm,ft,lb\n0,820,2\n25,676,7\n40,362,6", false),
    ] {
        let expected = if usable { vec![] } else { vec![Severity::Stop] };
        assert_eq!(found(&curved(text, &[]), CODE), expected, "{text:?}");
    }
}

#[test]
fn a_curve_that_is_odd() {
    const CODE: &str = "CURVE_ODD";
    let odd = |text: &str| -> Vec<&'static str> {
        let job = curved(text, &[]);
        assert!(found(&job, CODE).iter().all(|severity| *severity == Severity::Caution));
        let told = of_code(&evaluate(&job), CODE).into_iter().map(|finding| match finding {
            Finding::CurveOdd { warning: CurveWarning::Droop { .. } } => "droop",
            Finding::CurveOdd { warning: CurveWarning::NoShutOff { .. } } => "no shut-off",
            Finding::CurveOdd { warning: CurveWarning::BestEfficiencyUnlikely { .. } } => "best",
            Finding::CurveOdd { warning: CurveWarning::EfficiencyAgainstPower { .. } } => "power",
            other => panic!("{other:?}"),
        });
        told.collect()
    };
    assert_eq!(odd(CURVE), [""; 0]);
    assert_eq!(odd("0,820\n10,820\n40,362"), [""; 0], "level is not rising");
    assert_eq!(odd("0,820\n10,820.01\n40,362"), ["droop"]);
    assert_eq!(odd("0.01,820\n10,800\n40,362"), ["no shut-off"]);
    for (percent, likely) in [("90", true), ("90.1", false), ("20", true), ("19.9", false)] {
        let text = format!("0,820,0\n25,676,{percent}\n40,362,15");
        assert_eq!(odd(&text), if likely { vec![] } else { vec!["best"] }, "{percent} %");
    }
    // 25 gpm at 676 ft are 4.26 hp in the water: of 7.1 hp at the shaft 60 %.
    let text = |percent: f64| format!("gpm,ft,hp,%\n0,820,3,0\n25,676,7.1,{percent}\n40,362,8,45.6");
    assert_eq!(odd(&text(60.0)), [""; 0]);
    assert_eq!(odd(&text(66.0)), [""; 0]);
    assert_eq!(odd(&text(67.0)), ["power"]);
    assert_eq!(odd(&text(53.0)), ["power"]);
}

/// The flow of best efficiency goes with the speed: at a speed r, 25 r gpm. Points of the curve at 17.5 and 30 gpm are the
/// limits, 0.7 and 1.2 of it.
#[test]
fn far_from_the_best_flow() {
    const CODE: &str = "FAR_FROM_BEST";
    for (flow, point, at_point, far_with_more_head) in [(15.0, 17.5, 750.0, true), (26.0, 30.0, 600.0, false)] {
        // Of more head the pump has to run faster, and its best flow is larger.
        let limit = at_point * (flow / point) * (flow / point);
        for (wanted, more) in [(limit * OVER, true), (limit * UNDER, false)] {
            let job = curved(CURVE, &at_head(flow, wanted));
            let expected = if more == far_with_more_head { vec![Severity::Caution] } else { vec![] };
            assert_eq!(found(&job, CODE), expected, "{flow} gpm at {wanted} ft");
            let share = evaluate(&job).water.pump.unwrap().share_of_best.unwrap();
            assert!((share / (point / 25.0) - 1.0).abs() < 1e-5, "{share}");
        }
    }
    // A curve of head alone has no best flow.
    let alone = "0,830\n10,800\n17.5,750\n25,680\n30,600\n40,380\n";
    assert!(!raised(&curved(alone, &at_head(10.0, 300.0)), CODE));
}

/// Anywhere on the curve at the highest frequency, not only at what is asked for.
#[test]
fn the_motor_carries_the_whole_curve() {
    const CODE: &str = "MOTOR_OVERLOADED";
    let job = |hp: f64| curved(CURVE, &[(Field::Flow, 8.0), (Field::MotorPower, hp)]);
    let pump = evaluate(&job(7.5)).water.pump.unwrap();
    let (at_duty, largest) = (in_horsepower(pump.duty.unwrap().shaft), in_horsepower(pump.largest.unwrap().1));
    assert!(largest > 1.3 * at_duty, "{at_duty} and {largest} hp");
    // By hand the points take Q H/(3,960 η) hp or a little less: 7.16 hp at 25 gpm, 7.84 hp at 30 gpm.
    assert!(largest > 7.7 && largest < 9.5, "{largest} hp");
    for (hp, expected) in [
        (largest * OVER, vec![]),
        (largest * UNDER, vec![Severity::Caution]),
        (largest / 1.15 * UNDER, vec![Severity::Stop]),
    ] {
        assert_eq!(found(&job(hp), CODE), expected, "{hp} hp");
    }
    // Held to a lower frequency it takes less, by the cube.
    let slow = with(job(largest * UNDER), &[(Field::MostFrequency, 59.0)]);
    assert!(!raised(&slow, CODE));
}

/// Against a shut valve by the curve's own shut-off head: 830 ft, where 820 ft were entered.
#[test]
fn the_curve_s_shut_off_head_counts() {
    let answer = evaluate(&curved(CURVE, &[]));
    let dead = answer.water.dead_head.unwrap();
    assert!((in_feet(dead.shut_off.value) - 830.0).abs() < 1e-9);
    assert_eq!(of_code(&answer, "DEADHEAD_OVER_RATING").len(), 1);
    // A relief valve set to the rating has to pass what the pump gives against it.
    let against = 430.0 + 4.0 + in_feet(answer.water.head.unwrap().pressure) / 60.0 * 125.0;
    let curve = PumpCurve::new(read(CURVE, ColumnUnit::Gpm, ColumnUnit::Foot).unwrap().points).unwrap();
    let passes = edge(0.0, 40.0, |flow| in_feet(curve.head(gpm(flow)).unwrap()) > against);
    assert!((in_gpm(dead.relief.unwrap()) / passes - 1.0).abs() < 1e-9);
}
