//! Pump curves, speeds and readings that can't be used: refused with the numbers, never a panic, never NaN.

use super::arguments::bad;
use super::tried;
use proptest::prelude::*;
use wellwright_core::error::OutsideRange;
use wellwright_core::pump::affinity::{curve_at, efficiency_of, flow_at, head_at, head_of, power_at, speed_ratio};
use wellwright_core::pump::curve::{CurveError, CurveWarning, Point, PumpCurve, Quantity};
use wellwright_core::pump::operating_point::{
    NoOperatingPoint, SystemCurve, lowest_speed, operating_point, share_of_best, speed_for,
};
use wellwright_core::pump::power::{
    assumed_efficiency, largest_shaft_power, overall_efficiency, shaft_power, shaft_power_of, trade_shaft_power,
    water_power,
};
use wellwright_core::pump::unbalance::{current_unbalance, derated_power, voltage_unbalance};
use wellwright_core::pump::{demo, motor};
use wellwright_core::quantity::{
    Length, Power, amperes, cubic_meters_per_hour, feet, gpm, hertz, horsepower, in_feet, in_gpm,
    kilograms_per_cubic_meter, meters, volts, watts,
};

fn point(flow: f64, head: f64) -> Point {
    Point { flow: gpm(flow), head: feet(head), efficiency: None, power: None }
}

fn points(rows: &[(f64, f64)]) -> Vec<Point> {
    rows.iter().map(|&(flow, head)| point(flow, head)).collect()
}

fn with_efficiency(rows: &[(f64, f64, f64)]) -> Vec<Point> {
    rows.iter().map(|&(flow, head, efficiency)| Point { efficiency: Some(efficiency), ..point(flow, head) }).collect()
}

fn with_power(rows: &[(f64, f64, f64)]) -> Vec<Point> {
    rows.iter().map(|&(flow, head, hp)| Point { power: Some(horsepower(hp)), ..point(flow, head) }).collect()
}

const GOOD: [(f64, f64); 3] = [(0.0, 100.0), (10.0, 90.0), (20.0, 60.0)];

#[test]
fn too_few_points() {
    for count in 0..3 {
        assert_eq!(PumpCurve::new(points(&GOOD[..count])), Err(CurveError::TooFew { given: count }));
    }
    assert!(PumpCurve::new(points(&GOOD)).is_ok());
}

#[test]
fn figures_that_are_none() {
    for bad in [-1e-9, f64::INFINITY, f64::NEG_INFINITY, f64::NAN, 1e9] {
        for index in 0..3 {
            let mut flow = points(&GOOD);
            flow[index].flow = gpm(bad);
            let mut head = points(&GOOD);
            head[index].head = feet(bad);
            let mut efficiency = with_efficiency(&[(0.0, 100.0, 0.0), (10.0, 90.0, 0.5), (20.0, 60.0, 0.6)]);
            efficiency[index].efficiency = Some(bad);
            let mut power = with_power(&[(0.0, 100.0, 1.0), (10.0, 90.0, 1.0), (20.0, 60.0, 1.0)]);
            power[index].power = Some(horsepower(bad));
            for (points, wanted) in [
                (flow, Quantity::Flow),
                (head, Quantity::Head),
                (efficiency, Quantity::Efficiency),
                (power, Quantity::Power),
            ] {
                let error = PumpCurve::new(points).unwrap_err();
                assert!(
                    matches!(error, CurveError::Figure { point, quantity, .. } if point == index && quantity == wanted),
                    "{bad} at {index}: {error:?}"
                );
            }
        }
    }
}

#[test]
fn flow_that_does_not_rise() {
    for (second, third, at) in [(0.0, 20.0, 1), (10.0, 10.0, 2), (10.0, 5.0, 2)] {
        let rows = [(0.0, 100.0), (second, 90.0), (third, 60.0)];
        let before = gpm(rows[at - 1].0);
        let given = gpm(rows[at].0);
        assert_eq!(PumpCurve::new(points(&rows)), Err(CurveError::FlowNotRising { point: at, given, before }));
    }
}

#[test]
fn head_that_never_falls() {
    for heads in [[50.0, 60.0, 70.0], [50.0, 50.0, 50.0], [50.0, 50.0, 70.0]] {
        let rows: Vec<(f64, f64)> = [0.0, 10.0, 20.0].into_iter().zip(heads).collect();
        let wanted = CurveError::HeadNeverFalls { first: feet(heads[0]), last: feet(heads[2]) };
        assert_eq!(PumpCurve::new(points(&rows)), Err(wanted));
    }
}

#[test]
fn a_column_with_gaps() {
    let mut rows = with_efficiency(&[(0.0, 100.0, 0.0), (10.0, 90.0, 0.5), (20.0, 60.0, 0.6)]);
    rows[1].efficiency = None;
    assert_eq!(PumpCurve::new(rows), Err(CurveError::Gap { point: 1, quantity: Quantity::Efficiency }));
    let mut rows = with_power(&[(0.0, 100.0, 1.0), (10.0, 90.0, 1.0), (20.0, 60.0, 1.0)]);
    rows[0].power = None;
    assert_eq!(PumpCurve::new(rows), Err(CurveError::Gap { point: 0, quantity: Quantity::Power }));
}

#[test]
fn efficiency_against_sense() {
    let at_rest = with_efficiency(&[(0.0, 100.0, 0.1), (10.0, 90.0, 0.5), (20.0, 60.0, 0.6)]);
    assert_eq!(PumpCurve::new(at_rest), Err(CurveError::EfficiencyAgainstHead { point: 0, given: 0.1 }));
    let lifting = with_efficiency(&[(0.0, 100.0, 0.0), (10.0, 90.0, 0.0), (20.0, 60.0, 0.6)]);
    assert_eq!(PumpCurve::new(lifting), Err(CurveError::EfficiencyAgainstHead { point: 1, given: 0.0 }));
    let flat = with_efficiency(&[(0.0, 100.0, 0.0), (10.0, 90.0, 0.05), (20.0, 60.0, 0.6)]);
    assert_eq!(PumpCurve::new(flat), Err(CurveError::EfficiencyFlat { point: 0 }));
}

// 20 gpm against 60 ft are 0.303 hp; 0.3 hp would be more than whole, and so would a shaft without power at rest.
#[test]
fn power_short_of_the_water() {
    let error = PumpCurve::new(with_power(&[(0.0, 100.0, 1.0), (10.0, 90.0, 1.0), (20.0, 60.0, 0.3)])).unwrap_err();
    let CurveError::PowerShort { point: 2, given, water } = error else { panic!("{error:?}") };
    assert_eq!(given, horsepower(0.3));
    assert!((water / horsepower(0.303)).value > 0.999 && (water / horsepower(0.303)).value < 1.001);
    let error = PumpCurve::new(with_power(&[(0.0, 100.0, 0.0), (10.0, 90.0, 1.0), (20.0, 60.0, 1.0)])).unwrap_err();
    assert!(matches!(error, CurveError::PowerShort { point: 0, .. }), "{error:?}");
}

#[test]
fn oddities_are_warned_of() {
    let curve = PumpCurve::new(points(&[(0.0, 80.0), (10.0, 90.0), (20.0, 60.0)])).unwrap();
    assert_eq!(curve.warnings(), [CurveWarning::Droop { from: feet(80.0), to: feet(90.0), flow: gpm(10.0) }]);
    let curve = PumpCurve::new(points(&[(5.0, 100.0), (10.0, 90.0), (20.0, 60.0)])).unwrap();
    assert_eq!(curve.warnings(), [CurveWarning::NoShutOff { first: gpm(5.0) }]);
    assert_eq!(curve.shut_off_head(), None);
    let curve = PumpCurve::new(with_efficiency(&[(0.0, 100.0, 0.0), (10.0, 90.0, 0.06), (20.0, 60.0, 0.05)])).unwrap();
    assert_eq!(curve.warnings(), [CurveWarning::BestEfficiencyUnlikely { best: 0.06 }]);
    let mut rows = with_power(&[(0.0, 100.0, 0.4), (10.0, 90.0, 0.5), (20.0, 60.0, 0.6)]);
    for (row, efficiency) in rows.iter_mut().zip([0.0, 0.45, 0.8]) {
        row.efficiency = Some(efficiency);
    }
    let warnings = PumpCurve::new(rows).unwrap().warnings();
    let [CurveWarning::EfficiencyAgainstPower { point: 2, given: 0.8, by_power }] = warnings[..] else {
        panic!("{warnings:?}")
    };
    assert!((by_power - 0.505).abs() < 0.001, "{by_power}");
}

#[test]
fn the_demo_pumps_are_curves() {
    for pump in demo::ALL {
        let curve = pump.curve().unwrap();
        let droops = curve.warnings().iter().all(|warning| matches!(warning, CurveWarning::Droop { .. }));
        assert!(droops && curve.warnings().len() == usize::from(pump.key == "field_well"), "{:?}", curve.warnings());
        assert!(largest_shaft_power(&curve, 1.0, kilograms_per_cubic_meter(998.0)).unwrap().is_some());
    }
}

// A drooping pump of 520 ft at rest and 526 ft at 50 gpm against 523 ft: it meets the system twice.
#[test]
fn a_droop_meets_twice_and_says_so() {
    let curve = demo::FIELD_WELL.curve().unwrap();
    let system =
        |flow| SystemCurve { static_head: feet(523.0), loss: feet(1.0), at: gpm(100.0), exponent: 2.0 }.head(flow);
    let point = operating_point(&curve, 1.0, system).unwrap();
    assert!(point.short_at_least_flow && in_gpm(point.flow) > 50.0, "{point:?}");
    let steep =
        |flow| SystemCurve { static_head: feet(527.0), loss: feet(1.0), at: gpm(100.0), exponent: 2.0 }.head(flow);
    let short = operating_point(&curve, 1.0, steep).unwrap_err();
    let wanted = NoOperatingPoint::HeadShort { flow: gpm(0.0), pump: feet(520.0), system: feet(527.0) };
    assert_eq!(short, wanted);
}

#[test]
fn a_flow_beyond_every_speed_is_refused() {
    let curve = demo::HOUSE_WELL.curve().unwrap();
    let error = speed_for(&curve, gpm(25.0), feet(100.0)).unwrap_err();
    let NoOperatingPoint::BeyondRunOut { flow, pump, system } = error else { panic!("{error:?}") };
    assert!((in_gpm(flow) - 40.0).abs() < 1e-9 && (in_feet(pump) - 362.0).abs() < 1e-9);
    // 100 ft at 25 gpm are 256 ft at 40 gpm.
    assert!((in_feet(system) - 256.0).abs() < 1e-9);
    let error = speed_for(&curve, gpm(25.0), feet(9000.0)).unwrap_err();
    assert!(matches!(error, NoOperatingPoint::Outside(OutsideRange { argument: "ratio", .. })), "{error:?}");
    let begun = PumpCurve::new(points(&[(5.0, 100.0), (10.0, 90.0), (20.0, 60.0)])).unwrap();
    assert_eq!(speed_for(&begun, gpm(0.0), feet(50.0)), Err(NoOperatingPoint::NoShutOff { first: gpm(5.0) }));
    assert!(matches!(speed_for(&begun, gpm(1.0), feet(50.0)), Err(NoOperatingPoint::HeadShort { .. })));
}

#[test]
fn what_the_system_can_not_compute_is_passed_on() {
    let trouble = OutsideRange { argument: "reynolds", given: 1.0, min: 2.0, max: 3.0 };
    let curve = demo::HOUSE_WELL.curve().unwrap();
    assert_eq!(operating_point(&curve, 1.0, |_| Err(trouble)), Err(NoOperatingPoint::Outside(trouble)));
}

fn names<T: std::fmt::Debug>(argument: &str, results: Vec<Result<T, OutsideRange>>) -> Result<(), TestCaseError> {
    for (index, result) in results.into_iter().enumerate() {
        match result {
            Ok(value) => prop_assert!(false, "{argument}, call {index}: gave {value:?}"),
            Err(error) => prop_assert_eq!(error.argument, argument, "call {}", index),
        }
    }
    Ok(())
}

fn outside<T: std::fmt::Debug>(argument: &str, result: Result<T, NoOperatingPoint>) -> Result<(), TestCaseError> {
    match result {
        Err(NoOperatingPoint::Outside(error)) => prop_assert_eq!(error.argument, argument),
        other => prop_assert!(false, "{argument}: {other:?}"),
    }
    Ok(())
}

proptest! {
    #![proptest_config(tried(100))]

    #[test]
    fn speeds_refuse(bad in bad()) {
        let curve = demo::HOUSE_WELL.curve().unwrap();
        let density = kilograms_per_cubic_meter(998.0);
        names("ratio", vec![
            flow_at(gpm(1.0), bad).map(|_| ()),
            head_at(feet(1.0), bad).map(|_| ()),
            power_at(watts(1.0), bad).map(|_| ()),
            head_of(&curve, gpm(1.0), bad).map(|_| ()),
            efficiency_of(&curve, gpm(1.0), bad).map(|_| ()),
            shaft_power_of(&curve, gpm(1.0), bad, density).map(|_| ()),
            largest_shaft_power(&curve, bad, density).map(|_| ()),
            share_of_best(gpm(1.0), bad, gpm(1.0)).map(|_| ()),
            speed_ratio(hertz(bad), hertz(60.0)).map(|_| ()),
        ])?;
        names("rated", vec![speed_ratio(hertz(60.0), hertz(bad))])?;
        prop_assert!(matches!(curve_at(&curve, bad), Err(CurveError::Speed(_))));
        outside("ratio", operating_point(&curve, bad, |_| Ok(feet(1.0))))?;
        outside("flow", speed_for(&curve, gpm(bad), feet(100.0)))?;
        outside("head", speed_for(&curve, gpm(10.0), feet(bad)))?;
        names("shut_off", vec![lowest_speed(feet(bad), feet(1.0), feet(1.0))])?;
        names("setpoint", vec![lowest_speed(feet(100.0), feet(1.0), feet(bad))])?;
        let lift = lowest_speed(feet(100.0), feet(bad), feet(0.0));
        prop_assert!(lift.is_err_and(|error| ["static_lift", "required"].contains(&error.argument)));
    }

    #[test]
    fn curves_and_systems_refuse(bad in bad()) {
        let curve = demo::HOUSE_WELL.curve().unwrap();
        let density = kilograms_per_cubic_meter(998.0);
        names("flow", vec![
            curve.head(gpm(bad)).map(|_| ()),
            curve.efficiency(gpm(bad)).map(|_| ()),
            curve.shaft_power(gpm(bad), density).map(|_| ()),
            head_of(&curve, gpm(bad), 0.9).map(|_| ()),
        ])?;
        let dense = kilograms_per_cubic_meter(bad);
        names("density", vec![
            curve.shaft_power(gpm(10.0), dense).map(|_| ()),
            largest_shaft_power(&curve, 1.0, dense).map(|_| ()),
            water_power(dense, gpm(1.0), feet(1.0)).map(|_| ()),
        ])?;
        let good = SystemCurve { static_head: feet(100.0), loss: feet(10.0), at: gpm(10.0), exponent: 2.0 };
        names("flow", vec![good.head(gpm(bad))])?;
        names("loss", vec![SystemCurve { loss: feet(bad), ..good }.head(gpm(1.0))])?;
        names("at", vec![SystemCurve { at: gpm(bad), ..good }.head(gpm(1.0))])?;
        names("exponent", vec![SystemCurve { exponent: bad, ..good }.head(gpm(1.0))])?;
        let sunk = if bad < 0.0 { bad - 1e5 } else { bad };
        names("static_head", vec![SystemCurve { static_head: meters(sunk), ..good }.head(gpm(1.0))])?;
    }

    #[test]
    fn power_and_motors_refuse(bad in bad()) {
        let density = kilograms_per_cubic_meter(998.0);
        names("flow", vec![
            water_power(density, gpm(bad), feet(1.0)).map(|_| ()),
            trade_shaft_power(gpm(bad), feet(1.0), 1.0, 0.6).map(|_| ()),
            assumed_efficiency(gpm(bad)).map(|_| ()),
            share_of_best(gpm(bad), 1.0, gpm(1.0)).map(|_| ()),
        ])?;
        names("head", vec![water_power(density, gpm(1.0), feet(bad)), trade_shaft_power(gpm(1.0), feet(bad), 1.0, 0.6)])?;
        names("efficiency", vec![
            shaft_power(watts(1.0), bad).map(|_| ()),
            trade_shaft_power(gpm(1.0), feet(1.0), 1.0, bad).map(|_| ()),
            motor::running_current(watts(1.0), volts(230.0), bad, 0.8).map(|_| ()),
        ])?;
        names("specific_gravity", vec![trade_shaft_power(gpm(1.0), feet(1.0), bad, 0.6)])?;
        names("water", vec![shaft_power(watts(bad), 0.6).map(|_| ()), overall_efficiency(watts(bad), watts(1.0)).map(|_| ())])?;
        names("input", vec![overall_efficiency(watts(1.0), watts(bad)), overall_efficiency(watts(2.0), watts(1.0))])?;
        names("best", vec![share_of_best(gpm(1.0), 1.0, gpm(bad))])?;
        names("shaft", vec![
            motor::next_standard_power(watts(bad)).map(|_| ()),
            motor::load_share(watts(bad), horsepower(10.0), 1.15).map(|_| ()),
            motor::running_current(watts(bad), volts(230.0), 0.8, 0.8).map(|_| ()),
        ])?;
        names("rated", vec![motor::load_share(watts(1.0), watts(bad), 1.15)])?;
        names("service_factor", vec![motor::load_share(watts(1.0), horsepower(10.0), bad)])?;
        names("voltage", vec![motor::running_current(watts(1.0), volts(bad), 0.8, 0.8)])?;
        names("power_factor", vec![motor::running_current(watts(1.0), volts(230.0), 0.8, bad)])?;
        names("running", vec![motor::share_of_service_factor_current(amperes(bad), amperes(1.0))])?;
        names("service_factor_current", vec![motor::share_of_service_factor_current(amperes(1.0), amperes(bad))])?;
        for leg in 0..3 {
            let mut lines = [230.0; 3];
            lines[leg] = bad;
            names("voltage", vec![voltage_unbalance(lines.map(volts))])?;
            names("current", vec![current_unbalance(lines.map(amperes))])?;
        }
        names("mean", vec![current_unbalance([0.0; 3].map(amperes))])?;
        names("unbalance", vec![derated_power(horsepower(10.0), bad), derated_power(horsepower(10.0), 0.0501)])?;
    }

    // Whatever points are given, there is an error, or a curve whose every reading is a finite number.
    #[test]
    fn any_points_make_a_curve_or_an_error(rows in prop::collection::vec((figure(), figure(), figure(), figure(), any::<bool>(), any::<bool>()), 0..8)) {
        let point = |(flow, head, efficiency, power, with, other): (f64, f64, f64, f64, bool, bool)| Point {
            flow: cubic_meters_per_hour(flow),
            head: meters(head),
            efficiency: with.then_some(efficiency / 100.0),
            power: other.then_some(watts(power * 1000.0)),
        };
        let Ok(curve) = PumpCurve::new(rows.into_iter().map(point).collect()) else { return Ok(()) };
        every_reading_is_finite(&curve)?;
    }

    // The same over points in order, so that most of them make a curve.
    #[test]
    fn any_rising_flow_makes_finite_readings(rows in prop::collection::vec((1e-9..300.0f64, 0.0..500.0f64, 1e-9..1.0f64, any::<bool>()), 3..8), power in any::<bool>()) {
        let mut flow = 0.0;
        let points = rows.into_iter().enumerate().map(|(index, (step, head, share, begin))| {
            if index > 0 || begin { flow += step }
            let lifts = flow > 0.0 && head > 0.0;
            let water = 1000.0 * 9.80665 * flow / 3600.0 * head;
            Point {
                flow: cubic_meters_per_hour(flow),
                head: meters(head),
                efficiency: (!power).then_some(if lifts { share } else { 0.0 }),
                power: power.then_some(watts(water / share + 1.0)),
            }
        });
        if let Ok(curve) = PumpCurve::new(points.collect()) {
            every_reading_is_finite(&curve)?;
        }
    }
}

fn figure() -> impl Strategy<Value = f64> {
    prop_oneof![4 => 0.0..100.0f64, 1 => Just(0.0), 1 => any::<f64>(), 1 => Just(f64::NAN)]
}

fn every_reading_is_finite(curve: &PumpCurve) -> Result<(), TestCaseError> {
    let (least, most) = curve.flows();
    let density = kilograms_per_cubic_meter(998.0);
    for part in 0..=60 {
        let flow = (least + (most - least) * (f64::from(part) / 60.0)).min(most);
        let head: Length = curve.head(flow).unwrap();
        prop_assert!(head.value.is_finite() && head.value >= -1e-9);
        if let Ok(Some(efficiency)) = curve.efficiency(flow) {
            prop_assert!((0.0..=1.0 + 1e-12).contains(&efficiency), "{efficiency}");
        }
        if let Some(power) = curve.shaft_power(flow, density).unwrap() {
            let power: Power = power;
            prop_assert!(power.value.is_finite() && power.value >= -1e-9, "{power:?} at {flow:?}");
        }
    }
    prop_assert!(
        largest_shaft_power(curve, 1.0, density)
            .is_ok_and(|most| most.is_none_or(|(_, power)| power.value.is_finite()))
    );
    prop_assert!(curve.warnings().len() <= curve.points().len() + 3);
    Ok(())
}
