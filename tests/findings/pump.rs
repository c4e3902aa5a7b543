//! The pump without a curve: suction, shut valve, cooling, speeds.

use super::{OVER, UNDER, field, found, house, of_code, raised, with, without};
use std::f64::consts::PI;
use wellwright_core::evaluate::evaluate;
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{Control, Field};
use wellwright_core::quantity::{in_feet, in_feet_per_second, in_gpm, in_hertz, in_psi};

#[test]
fn a_suction_that_is_too_weak() {
    const CODE: &str = "NPSH_SHORT";
    let available = in_feet(evaluate(&field()).water.suction.unwrap().available());
    for (required, enough) in
        [((available - 3.0) * UNDER, true), (available - 3.0, true), ((available - 3.0) * OVER, false)]
    {
        let job = with(field(), &[(Field::NpshRequired, required)]);
        assert_eq!(found(&job, CODE), if enough { vec![] } else { vec![Severity::Stop] }, "{required} ft");
    }
    // The margin counts: 3 ft unless it is entered.
    let margin = |margin: f64| with(field(), &[(Field::NpshRequired, 10.0), (Field::NpshMargin, margin)]);
    assert!(!raised(&margin((available - 10.0) * UNDER), CODE) && raised(&margin((available - 10.0) * OVER), CODE));
    // What the pump requires may not be known; a suction that breaks is known all the same.
    assert!(!raised(&field(), CODE));
    let lifted = |lift: f64| with(field(), &[(Field::SuctionLift, lift), (Field::Altitude, 5000.0)]);
    let left = in_feet(evaluate(&lifted(0.0)).water.suction.unwrap().available());
    assert!(left > 5.0 && left < 25.0, "{left} ft");
    assert!(!raised(&lifted(left * UNDER), CODE));
    assert_eq!(found(&lifted(left * OVER), CODE), [Severity::Stop]);
    let told = of_code(&evaluate(&lifted(left + 2.0)), CODE);
    assert!(matches!(told[..], [Finding::NpshShort { available, .. }] if (in_feet(available) + 2.0).abs() < 1e-9));
    // A pump in a well is under water.
    assert!(!raised(&with(house(), &[(Field::NpshRequired, 60.0)]), CODE));
}

#[test]
fn a_shut_valve() {
    const CODE: &str = "DEADHEAD_OVER_RATING";
    let gauge = in_psi(evaluate(&house()).water.dead_head.unwrap().gauge);
    for (rating, holds) in [(gauge * OVER, true), (gauge * UNDER, false)] {
        let job = with(house(), &[(Field::PressureRating, rating)]);
        assert_eq!(found(&job, CODE), if holds { vec![] } else { vec![Severity::Stop] }, "{rating} psi");
    }
    // The shut-off head that comes to 125 psi at the gauge: 430 ft and 4 ft, and 125/60 of the head of 60 psi.
    let head = evaluate(&house()).water.head.unwrap();
    let limit = 430.0 + 4.0 + in_feet(head.pressure) / 60.0 * 125.0;
    let shut_off = |feet: f64| with(house(), &[(Field::ShutOffHead, feet)]);
    assert!(!raised(&shut_off(limit * UNDER), CODE) && raised(&shut_off(limit * OVER), CODE));
    // At a lower top speed the head is less by the square of it.
    let slow = |hertz: f64| with(shut_off(820.0), &[(Field::MostFrequency, hertz)]);
    let hertz = 60.0 * (limit / 820.0).sqrt();
    assert!(!raised(&slow(hertz * UNDER), CODE) && raised(&slow(hertz * OVER), CODE));
    // Without a shut-off head there is no verdict.
    let unknown = without(house(), &[Field::ShutOffHead]);
    assert!(evaluate(&unknown).water.dead_head.is_none() && !raised(&unknown, CODE));
}

#[test]
fn water_that_passes_the_motor_slowly() {
    const CODE: &str = "MOTOR_COOLING_LOW";
    // The gap in square inches, a gallon of 231 in³, 12 in a foot.
    let gap = |outer: f64, motor: f64| PI / 4.0 * (outer * outer - motor * motor);
    let least = |outer: f64, motor: f64, speed: f64| speed * 12.0 * gap(outer, motor) * 60.0 / 231.0;
    let at = |flow: f64, outer: f64, motor: f64| {
        with(house(), &[(Field::LeastFlow, flow), (Field::CasingInside, outer), (Field::MotorDiameter, motor)])
    };
    // 0.25 ft/s past motors for 4 in wells, 0.5 ft/s past larger ones; the line is drawn at 4.5 in.
    for (outer, motor, speed) in [(6.065, 3.75, 0.25), (6.065, 4.499, 0.25), (6.065, 4.5, 0.5), (7.981, 5.4, 0.5)] {
        let limit = least(outer, motor, speed);
        for (flow, cool) in [(limit * OVER, true), (limit, true), (limit * UNDER, false)] {
            let job = at(flow, outer, motor);
            assert_eq!(
                found(&job, CODE),
                if cool { vec![] } else { vec![Severity::Caution] },
                "{motor} in, {flow} gpm"
            );
        }
        let told = of_code(&evaluate(&at(0.5 * limit, outer, motor)), CODE);
        let [Finding::MotorCoolingLow { speed: slow, advised, least_flow, .. }] = told[..] else { panic!("{told:?}") };
        assert!((in_feet_per_second(slow) / (0.5 * speed) - 1.0).abs() < 1e-9);
        assert!((in_feet_per_second(advised) - speed).abs() < 1e-12);
        assert!((in_gpm(least_flow) / limit - 1.0).abs() < 1e-9);
    }
    // The flow that is asked for where no least was entered; a sleeve before the casing.
    let asked = without(with(house(), &[(Field::Flow, 13.0)]), &[Field::LeastFlow]);
    assert!(raised(&asked, CODE) && !raised(&with(asked.clone(), &[(Field::SleeveInside, 5.5)]), CODE));
    assert!(raised(&with(house(), &[(Field::SleeveInside, 9.0)]), CODE));
    // Without the motor's diameter, or what it hangs in, there is no verdict.
    for field in [Field::MotorDiameter, Field::CasingInside] {
        assert!(!raised(&without(asked.clone(), &[field]), CODE));
    }
}

#[test]
fn a_narrow_band_of_speeds() {
    const CODE: &str = "SPEED_BAND_NARROW";
    // Just holding the pressure with nothing drawn: 60 √(z/H₀) Hz, z the level at rest, the rise and the pressure.
    let head = evaluate(&house()).water.head.unwrap();
    let lowest = 60.0 * ((430.0 + 4.0 + in_feet(head.pressure)) / 820.0).sqrt();
    assert!(!raised(&house(), CODE));
    for (most, wide) in [((lowest + 5.0) * OVER, true), (lowest + 5.0, true), ((lowest + 5.0) * UNDER, false)] {
        let job = with(house(), &[(Field::MostFrequency, most)]);
        assert_eq!(found(&job, CODE), if wide { vec![] } else { vec![Severity::Caution] }, "{most} Hz");
    }
    for (least, passes) in [(lowest * UNDER, true), (lowest, true), (lowest * OVER, false)] {
        let job = with(house(), &[(Field::LeastFrequency, least)]);
        assert_eq!(raised(&job, CODE), !passes, "{least} Hz");
    }
    let told = of_code(&evaluate(&with(house(), &[(Field::MostFrequency, 52.0)])), CODE);
    let [Finding::SpeedBandNarrow { lowest: told, most, least }] = told[..] else { panic!("{told:?}") };
    assert!((in_hertz(told) / lowest - 1.0).abs() < 1e-9 && in_hertz(most) == 52.0 && in_hertz(least) == 30.0);
    // A pump that never reaches the pressure has no band at all; one that is switched needs none.
    let weak = with(house(), &[(Field::ShutOffHead, 400.0)]);
    assert!(raised(&weak, CODE));
    let mut switched = weak;
    switched.choices.control = Some(Control::OnOff);
    assert!(!raised(&switched, CODE));
}
