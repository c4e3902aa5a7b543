//! Well, pipe, pump and motor.

use super::near;
use wellwright_core::pump::affinity::{curve_at, efficiency_of, head_of};
use wellwright_core::pump::curve::{CurveWarning, Point, PumpCurve};
use wellwright_core::pump::motor::{MotorKind, assumed_efficiency_and_power_factor, volts_share};
use wellwright_core::pump::power::{assumed_efficiency, trade_shaft_power};
use wellwright_core::quantity::{
    feet, feet_per_second, feet_per_square_gallon_per_minute, gpm, hertz, horsepower, in_feet, in_feet_per_second,
    in_gpm, in_horsepower, in_inches, in_psi, inches, kilograms_per_cubic_meter, meters, seconds,
    square_meters_per_second,
};
use wellwright_core::standards::fittings::Fitting;
use wellwright_core::standards::pipe::{Material, Series};
use wellwright_core::water::dead_head::house_limit;
use wellwright_core::water::fittings::coefficient_in;
use wellwright_core::water::level::short_of;
use wellwright_core::water::line::{size_for, usual_speed};
use wellwright_core::water::pipe_rating::rating_in_service;
use wellwright_core::water::well::{Aquifer, cooper_jacob_holds, drawdown_in_proportion, flow_for_aquifer_drawdown};

/// Schedule 80 pipe of 1-1/2 in: 471 psi at 73 °F; handbooks of plastic plumbing print for it at 90 to 140 °F 353, 292,
/// 235, 188, 141 and 104 psi (from memory). Threads take half.
#[test]
fn plastic_pipe_in_warm_water() {
    let pipe =
        Series::PvcSchedule80.sizes().find(|size| (in_inches(size.outside_diameter()) - 1.900).abs() < 1e-9).unwrap();
    for (water, printed) in
        [(73.0, 471.0), (90.0, 353.0), (100.0, 292.0), (110.0, 235.0), (120.0, 188.0), (130.0, 141.0), (140.0, 104.0)]
    {
        let plain = in_psi(rating_in_service(pipe, water, false).unwrap().unwrap());
        // Tables round the rating to whole pounds, and then what is left of it.
        near(plain, printed, 0.005 * printed + 1.0);
        near(in_psi(rating_in_service(pipe, water, true).unwrap().unwrap()), plain / 2.0, 1e-9);
    }
}

/// A threaded elbow has 1.5 in any pipe, by the text table.
#[test]
fn fittings_in_a_pipe() {
    near(coefficient_in(Fitting::Elbow90Threaded, None).unwrap().unwrap(), 1.5, 1e-12);
    near(coefficient_in(Fitting::Elbow90Threaded, Some(inches(2.067))).unwrap().unwrap(), 1.5, 1e-12);
    // A hinged foot valve: 75 f_T, and f_T of 2 in. is 0.019 (Crane TP-410, from memory).
    near(coefficient_in(Fitting::FootValveHinged, Some(inches(2.067))).unwrap().unwrap(), 75.0 * 0.019, 0.03);
    assert_eq!(coefficient_in(Fitting::FootValveHinged, None), Ok(None));
}

/// Affinity laws at 50 of 60 Hz: flow 5/6, head 25/36, power 125/216.
#[test]
fn a_curve_at_another_speed() {
    let point = |flow: f64, head: f64| Point { flow: gpm(flow), head: feet(head), efficiency: None, power: None };
    let curve = PumpCurve::new(vec![point(0.0, 360.0), point(24.0, 288.0), point(48.0, 72.0)]).unwrap();
    let slow = curve_at(&curve, 50.0 / 60.0).unwrap();
    let found: Vec<(f64, f64)> = slow.points().iter().map(|point| (in_gpm(point.flow), in_feet(point.head))).collect();
    for ((flow, head), (by_hand, above)) in found.iter().zip([(0.0, 250.0), (20.0, 200.0), (40.0, 50.0)]) {
        near(*flow, by_hand, 1e-9);
        near(*head, above, 1e-9);
    }
}

/// Constant volts per hertz: 50 of 60 Hz have 5/6 of the volts; above 60 Hz the supply gives no more.
#[test]
fn volts_by_frequency() {
    near(volts_share(hertz(50.0), hertz(60.0)).unwrap(), 5.0 / 6.0, 1e-12);
    near(volts_share(hertz(60.0), hertz(60.0)).unwrap(), 1.0, 1e-12);
    near(volts_share(hertz(75.0), hertz(60.0)).unwrap(), 1.0, 1e-12);
}

/// 25 gpm run at 5.36 ft/s in pipe of 1.380 in and at 3.94 ft/s in 1.610 in: 5 ft/s, usual in plastic, ask for the wider one,
/// 8 ft/s, usual in steel, do not (both common practice).
#[test]
fn pipe_by_speed() {
    let inside =
        |most| in_inches(size_for(Series::SteelSchedule40, gpm(25.0), most).unwrap().unwrap().inside_diameter());
    near(inside(feet_per_second(5.0)), 1.610, 0.001);
    near(inside(feet_per_second(8.0)), 1.380, 0.001);
    near(in_feet_per_second(usual_speed(Material::Steel)), 8.0, 1e-9);
    near(in_feet_per_second(usual_speed(Material::Pvc)), 5.0, 1e-9);
}

/// 41.667 ft at 25 gpm are 83.333 ft at 50. Theis: with u = r²S/(4 T t) = 100 · 0.001/(4 · 0.001 · 2,500) = 0.01 the table of
/// the well function has W = 4.0379, and 1 m of drawdown is 4π · 0.001/4.0379 = 0.0031121 m³/s (49.33 gpm).
#[test]
fn wells() {
    near(in_feet(drawdown_in_proportion(feet(41.667), gpm(25.0), gpm(50.0)).unwrap()), 83.334, 1e-9);
    let aquifer = Aquifer {
        transmissivity: square_meters_per_second(0.001),
        storage: 0.001,
        radius: meters(10.0),
        time: seconds(2500.0),
    };
    let none = feet_per_square_gallon_per_minute(0.0);
    near(in_gpm(flow_for_aquifer_drawdown(meters(1.0), aquifer, none).unwrap()), 49.328, 0.002);
    assert!(cooper_jacob_holds(0.0099) && !cooper_jacob_holds(0.0101));
    assert!(short_of(feet(9.99), feet(10.0), feet(10.0)) && !short_of(feet(10.0), feet(10.0), feet(10.0)));
}

/// At 50 of 60 Hz the point of 24 gpm, 288 ft, 60 % comes to 20 gpm, 200 ft, 60 %.
#[test]
fn a_point_of_a_curve_at_another_speed() {
    let point = |flow: f64, head: f64, share: f64| Point {
        flow: gpm(flow),
        head: feet(head),
        efficiency: Some(share),
        power: None,
    };
    let curve = PumpCurve::new(vec![point(0.0, 360.0, 0.0), point(24.0, 288.0, 0.6), point(48.0, 72.0, 0.3)]).unwrap();
    near(in_feet(head_of(&curve, gpm(20.0), 50.0 / 60.0).unwrap()), 200.0, 1e-9);
    near(efficiency_of(&curve, gpm(20.0), 50.0 / 60.0).unwrap().unwrap(), 0.6, 1e-12);
    near(in_feet(curve.shut_off_head().unwrap()), 360.0, 1e-9);
    let (flow, best) = curve.best_efficiency().unwrap();
    near(in_gpm(flow), 24.0, 1e-6);
    near(best, 0.6, 1e-9);
}

/// Usual figures of motors without a nameplate: common practice, no single source.
#[test]
fn motors_without_a_nameplate() {
    for (kind, power, usual) in [
        (MotorKind::Submersible, 7.5, (0.78, 0.80)),
        (MotorKind::Submersible, 20.0, (0.82, 0.84)),
        (MotorKind::Submersible, 60.0, (0.86, 0.85)),
        (MotorKind::Surface, 60.0, (0.92, 0.86)),
    ] {
        assert_eq!(assumed_efficiency_and_power_factor(kind, horsepower(power)), usual, "{kind:?} {power}");
    }
}

/// Plumbing codes of houses: above 80 psi a regulator is due.
#[test]
fn pressures_of_a_house() {
    near(in_psi(house_limit()), 80.0, 1e-9);
}

/// 50 gpm at 250 ft are 50 · 250/3,960 = 3.157 hp of water; of 6 hp at the shaft that is 52.6 %. Water a tenth heavier takes a
/// tenth more, half the speed an eighth.
#[test]
fn a_curve_with_its_power() {
    let point = |flow: f64, head: f64, power: f64, share: Option<f64>| Point {
        flow: gpm(flow),
        head: feet(head),
        efficiency: share,
        power: Some(horsepower(power)),
    };
    let with = |share| {
        PumpCurve::new(vec![
            point(0.0, 300.0, 5.0, None),
            point(50.0, 250.0, 6.0, share),
            point(100.0, 150.0, 7.0, None),
        ])
    };
    let curve = with(None).unwrap();
    near(curve.efficiency(gpm(50.0)).unwrap().unwrap(), 0.526, 0.001);
    let power = |curve: &PumpCurve, flow: f64, density: f64| {
        in_horsepower(curve.shaft_power(gpm(flow), kilograms_per_cubic_meter(density)).unwrap().unwrap())
    };
    near(power(&curve, 50.0, 998.2), 6.0, 1e-9);
    near(power(&curve, 50.0, 1.1 * 998.2), 6.6, 1e-9);
    near(power(&curve_at(&curve, 0.5).unwrap(), 25.0, 998.2), 0.75, 1e-9);
    // An efficiency that is told beside it may be a tenth off: 0.526 and 0.58 are, 0.526 and 0.59 are not, nor 0.47.
    for (told, off) in [(0.526, false), (0.58, false), (0.59, true), (0.48, false), (0.47, true)] {
        let warned = PumpCurve::new(vec![
            point(0.0, 300.0, 5.0, Some(0.0)),
            point(50.0, 250.0, 6.0, Some(told)),
            point(100.0, 150.0, 7.0, Some(0.541)),
        ]);
        let warned = warned.unwrap().warnings();
        let found = warned
            .iter()
            .any(|one| matches!(one, CurveWarning::EfficiencyAgainstPower { point: 1, given, .. } if *given == told));
        assert_eq!(found, off, "{told}: {warned:?}");
    }
}

/// Where no water flows, and where none is lifted well, power is the limit ρ g (Q H)′/η′. 300 ft falling by 1 ft a gpm, η rising
/// by 0.005: 300/0.005 = 60,000 gpm ft, 15.15 hp. At the end no head, falling by 3 ft a gpm, η
/// falling by 0.02: 100 · (−3)/(−0.02) = 15,000 gpm ft, 3.788 hp.
#[test]
fn power_where_the_efficiency_is_none() {
    let point = |flow: f64, head: f64, share: f64| Point {
        flow: gpm(flow),
        head: feet(head),
        efficiency: Some(share),
        power: None,
    };
    let power = |curve: &PumpCurve, flow: f64| {
        in_horsepower(curve.shaft_power(gpm(flow), kilograms_per_cubic_meter(998.2)).unwrap().unwrap())
    };
    let start =
        PumpCurve::new(vec![point(0.0, 300.0, 0.0), point(50.0, 250.0, 0.25), point(100.0, 200.0, 0.5)]).unwrap();
    near(power(&start, 0.0), 15.15, 0.05);
    let end = PumpCurve::new(vec![point(0.0, 300.0, 0.0), point(50.0, 150.0, 0.5), point(100.0, 0.0, 0.0)]).unwrap();
    near(power(&end, 100.0), 3.788, 0.015);
}

/// 50 gpm, 100 ft, 1.2 times as heavy as water, 60 %: 50 · 100 · 1.2/(3,960 · 0.6) = 2.525 hp.
#[test]
fn the_trades_power() {
    near(in_horsepower(trade_shaft_power(gpm(50.0), feet(100.0), 1.2, 0.6).unwrap()), 2.5253, 1e-4);
}

/// Usual pumps: 60 % below 50 gpm, 68 % to 200 gpm, 75 % above (common practice, no single source).
#[test]
fn pumps_of_which_nothing_is_known() {
    for (flow, share) in [(49.9, 0.60), (50.0, 0.68), (200.0, 0.68), (200.1, 0.75), (20_000.0, 0.75)] {
        near(assumed_efficiency(gpm(flow)).unwrap(), share, 1e-12);
    }
}
