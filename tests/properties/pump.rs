//! Random pumps that fall all along, and the laws of curves, speeds and operating points.

use super::tried;
use proptest::prelude::*;
use wellwright_core::numeric::pchip::Pchip;
use wellwright_core::pump::affinity::{curve_at, efficiency_of, flow_at, head_at, head_of, power_at};
use wellwright_core::pump::curve::{Point, PumpCurve};
use wellwright_core::pump::operating_point::{
    NoOperatingPoint, SystemCurve, lowest_speed, operating_point, share_of_best, speed_for,
};
use wellwright_core::pump::power::{largest_shaft_power, shaft_power, shaft_power_of, water_power};
use wellwright_core::quantity::{
    Length, MassDensity, VolumeRate, feet, gpm, in_feet, in_gpm, kilograms_per_cubic_meter, watts,
};

/// Steps of flow, falls of head between them as shares, and what is left at the end.
#[derive(Debug, Clone)]
pub struct Made {
    pub flows: Vec<f64>,
    pub heads: Vec<f64>,
    pub efficiencies: Vec<f64>,
}

impl Made {
    pub fn curve(&self) -> PumpCurve {
        let rows = self.flows.iter().zip(&self.heads).zip(&self.efficiencies);
        let point = |((&flow, &head), &efficiency): ((&f64, &f64), &f64)| Point {
            flow: gpm(flow),
            head: feet(head),
            efficiency: Some(efficiency),
            power: None,
        };
        PumpCurve::new(rows.map(point).collect()).unwrap()
    }
    pub fn run_out(&self) -> f64 {
        *self.flows.last().unwrap()
    }
    /// A flow well inside the curve, by a share of it.
    fn flow(&self, share: f64) -> f64 {
        share * self.run_out()
    }
}

/// A pump that falls from each point to the next, with an efficiency that rises and falls as a pump's does.
pub fn pump() -> impl Strategy<Value = Made> {
    let steps = prop::collection::vec((0.2..1.0f64, 0.05..1.0f64), 3..10);
    (steps, 5.0..2000.0f64, 30.0..2000.0f64, 0.3..0.85f64).prop_map(|(steps, most, shut_off, best)| {
        let (width, fall): (f64, f64) = (steps.iter().map(|s| s.0).sum(), steps.iter().map(|s| s.1).sum());
        let (mut flow, mut head) = (0.0, shut_off);
        let (mut flows, mut heads) = (vec![0.0], vec![shut_off]);
        for (step, drop) in &steps {
            flow += step / width * most;
            head -= drop / fall * 0.7 * shut_off;
            flows.push(flow);
            heads.push(head);
        }
        let efficiencies = flows.iter().map(|flow| best * (4.0 / 3.0) * flow / most * (1.75 - flow / most)).collect();
        Made { flows, heads, efficiencies }
    })
}

fn system(
    static_head: f64,
    loss: f64,
    at: f64,
) -> impl Fn(VolumeRate) -> Result<Length, wellwright_core::error::OutsideRange> {
    let system = SystemCurve { static_head: feet(static_head), loss: feet(loss), at: gpm(at), exponent: 1.9 };
    move |flow| system.head(flow)
}

fn water() -> MassDensity {
    kilograms_per_cubic_meter(999.0)
}

fn near(a: f64, b: f64, share: f64) -> bool {
    (a - b).abs() <= share * a.abs().max(b.abs())
}

proptest! {
    #![proptest_config(tried(500))]

    #[test]
    fn a_monotone_curve_stays_monotone(steps in prop::collection::vec((0.01..100.0f64, 0.0..50.0f64), 1..12), up in any::<bool>()) {
        let sign = if up { 1.0 } else { -1.0 };
        let (mut x, mut y) = (-3.0, 7.0);
        let mut points = vec![(x, y)];
        for (width, rise) in steps {
            x += width;
            y += sign * rise;
            points.push((x, y));
        }
        let curve = Pchip::through(&points).unwrap();
        for pair in points.windows(2) {
            let ((from, low), (to, high)) = (pair[0], pair[1]);
            let size = low.abs().max(high.abs());
            let mut before = low;
            for part in 1..=50 {
                let value = curve.value((from + (to - from) * f64::from(part) / 50.0).min(to)).unwrap();
                prop_assert!(sign * (value - before) >= -1e-12 * size, "{before} then {value} in {pair:?}");
                before = value;
            }
            prop_assert_eq!(curve.value(from), Some(low));
            prop_assert!(near(before, high, 1e-12));
        }
    }

    #[test]
    fn between_any_two_points_the_curve_stays_between(points in prop::collection::vec((0.01..10.0f64, -50.0..50.0f64), 2..12)) {
        let mut x = 0.0;
        let points: Vec<(f64, f64)> = points.into_iter().map(|(width, y)| { x += width; (x, y) }).collect();
        let curve = Pchip::through(&points).unwrap();
        for pair in points.windows(2) {
            let (low, high) = (pair[0].1.min(pair[1].1), pair[0].1.max(pair[1].1));
            for part in 0..=40 {
                let at = (pair[0].0 + (pair[1].0 - pair[0].0) * f64::from(part) / 40.0).min(pair[1].0);
                let value = curve.value(at).unwrap();
                prop_assert!(value >= low - 1e-12 * 50.0 && value <= high + 1e-12 * 50.0, "{value} at {at} in {pair:?}");
            }
        }
    }

    #[test]
    fn the_operating_point_lies_on_both_curves(pump in pump(), lift in 0.0..0.9f64, loss in 0.05..2.0f64, r in 0.4..1.2f64) {
        let curve = pump.curve();
        let rest = r * r * pump.heads[0];
        let system = system(lift * rest, loss * rest, r * pump.run_out());
        match operating_point(&curve, r, &system) {
            Ok(point) => {
                let (of_pump, of_system) = (head_of(&curve, point.flow, r).unwrap(), system(point.flow).unwrap());
                prop_assert!(near(in_feet(of_pump), in_feet(of_system), 1e-9), "{point:?}: {of_pump:?} and {of_system:?}");
                prop_assert!(near(in_feet(point.head), in_feet(of_pump), 1e-12));
                prop_assert!(!point.short_at_least_flow);
            }
            Err(NoOperatingPoint::BeyondRunOut { flow, pump: of_pump, system: of_system }) => {
                prop_assert!(of_pump > of_system && near(in_gpm(flow), r * pump.run_out(), 1e-12));
                prop_assert!(near(in_feet(of_system), in_feet(system(flow).unwrap()), 1e-12));
            }
            Err(other) => prop_assert!(false, "{other:?}"),
        }
    }

    #[test]
    fn a_lift_above_shut_off_is_refused_with_its_numbers(pump in pump(), over in 1.001..3.0f64, r in 0.4..1.2f64) {
        let lift = over * r * r * pump.heads[0];
        let refused = operating_point(&pump.curve(), r, system(lift, 10.0, pump.run_out())).unwrap_err();
        let NoOperatingPoint::HeadShort { flow, pump: of_pump, system: of_system } = refused else {
            return Err(TestCaseError::fail(format!("{refused:?}")));
        };
        prop_assert_eq!(in_gpm(flow), 0.0);
        prop_assert!(near(in_feet(of_pump), r * r * pump.heads[0], 1e-12) && near(in_feet(of_system), lift, 1e-12));
    }

    #[test]
    fn the_found_speed_gives_back_the_wanted_flow(pump in pump(), share in 0.1..0.95f64, r in 0.4..1.2f64, lift in 0.0..0.9f64) {
        let curve = pump.curve();
        let flow = gpm(pump.flow(share) * r);
        let head = head_of(&curve, flow, r).unwrap();
        let found = speed_for(&curve, flow, head).unwrap();
        prop_assert!(near(found, r, 1e-9), "{found} for {r}");
        // A system through the wanted point, steep enough that the meeting is sharp.
        let there = system(lift * in_feet(head), (1.0 - lift) * in_feet(head), in_gpm(flow));
        let back = operating_point(&curve, found, there).unwrap();
        prop_assert!(near(in_gpm(back.flow), in_gpm(flow), 1e-9), "{} for {}", in_gpm(back.flow), in_gpm(flow));
    }

    #[test]
    fn affinity_composes_and_turns_back(flow in 0.0..5000.0f64, head in 0.0..3000.0f64, power in 0.0..1e6f64, a in 0.4..1.5f64, b in 0.4..1.5f64) {
        let (q, h, p) = (gpm(flow), feet(head), watts(power));
        let twice = |x: f64, y: f64| near(x, y, 1e-14);
        prop_assert!(twice(flow_at(flow_at(q, a).unwrap(), b).unwrap().value, flow_at(q, a * b).unwrap().value));
        prop_assert!(twice(head_at(head_at(h, a).unwrap(), b).unwrap().value, head_at(h, a * b).unwrap().value));
        prop_assert!(twice(power_at(power_at(p, a).unwrap(), b).unwrap().value, power_at(p, a * b).unwrap().value));
        prop_assert!(twice(head_at(head_at(h, a).unwrap(), 1.0 / a).unwrap().value, h.value));
        // H/Q² and P/Q³ do not change.
        prop_assert!(twice(head_at(h, a).unwrap().value * q.value.powi(2), h.value * flow_at(q, a).unwrap().value.powi(2)));
        prop_assert!(twice(power_at(p, a).unwrap().value * q.value.powi(3), p.value * flow_at(q, a).unwrap().value.powi(3)));
    }

    #[test]
    fn a_curve_carried_over_and_a_curve_read_at_speed_agree(pump in pump(), r in 0.5..1.2f64, share in 0.0..1.0f64) {
        let (curve, flow) = (pump.curve(), gpm(0.999_999 * pump.flow(share) * r));
        let carried = curve_at(&curve, r).unwrap();
        prop_assert!(near(in_feet(carried.head(flow).unwrap()), in_feet(head_of(&curve, flow, r).unwrap()), 1e-11));
        let (here, there) = (carried.efficiency(flow).unwrap().unwrap(), efficiency_of(&curve, flow, r).unwrap().unwrap());
        prop_assert!(near(here, there, 1e-9), "{here} and {there}");
        let (here, there) = (carried.shaft_power(flow, water()).unwrap().unwrap(), shaft_power_of(&curve, flow, r, water()).unwrap().unwrap());
        prop_assert!(near(here.value, there.value, 1e-9), "{here:?} and {there:?}");
    }

    #[test]
    fn power_on_the_curve_is_water_power_over_efficiency(pump in pump(), share in 0.05..1.0f64, r in 0.5..1.2f64) {
        let (curve, flow) = (pump.curve(), gpm(0.999_999 * pump.flow(share) * r));
        let lifted = water_power(water(), flow, head_of(&curve, flow, r).unwrap()).unwrap();
        let by_hand = shaft_power(lifted, efficiency_of(&curve, flow, r).unwrap().unwrap()).unwrap();
        let read = shaft_power_of(&curve, flow, r, water()).unwrap().unwrap();
        prop_assert!(near(by_hand.value, read.value, 1e-9));
        let (at, most) = largest_shaft_power(&curve, r, water()).unwrap().unwrap();
        prop_assert!(read.value <= most.value * (1.0 + 1e-9), "{read:?} over {most:?}");
        let there = shaft_power_of(&curve, at * (1.0 - 1e-12), r, water()).unwrap().unwrap();
        prop_assert!(near(there.value, most.value, 1e-6), "{there:?} at the flow of {most:?}");
    }

    // The shaft power at rest is the limit of what it is close to rest.
    #[test]
    fn power_at_rest_is_the_limit(pump in pump()) {
        let curve = pump.curve();
        let at = |flow: f64| curve.shaft_power(gpm(flow), water()).unwrap().unwrap().value;
        prop_assert!(at(0.0) > 0.0 && near(at(0.0), at(1e-7 * pump.run_out()), 1e-5), "{} and {}", at(0.0), at(1e-7 * pump.run_out()));
    }

    #[test]
    fn at_the_lowest_speed_the_pump_just_holds_the_lift(pump in pump(), lift in -0.3..0.6f64, setpoint in 0.31..0.5f64) {
        let (curve, rest) = (pump.curve(), pump.heads[0]);
        let shut_off = curve.shut_off_head().unwrap();
        let ratio = lowest_speed(shut_off, feet(lift * rest), feet(setpoint * rest)).unwrap();
        prop_assert!(near(in_feet(shut_off) * ratio * ratio, (lift + setpoint) * rest, 1e-12));
        prop_assume!((0.15..2.0).contains(&ratio));
        let held = speed_for(&curve, gpm(0.0), feet((lift + setpoint) * rest)).unwrap();
        prop_assert!(near(held, ratio, 1e-12));
        let lift = system((lift + setpoint) * rest, 5.0, pump.run_out());
        prop_assert!(operating_point(&curve, ratio * 0.999, &lift).is_err());
        let flow = operating_point(&curve, ratio * 1.0001, &lift).map(|point| in_gpm(point.flow));
        prop_assert!(flow.is_ok_and(|flow| flow > 0.0), "{flow:?}");
    }

    #[test]
    fn the_best_point_is_the_best(pump in pump(), share in 0.0..1.0f64, r in 0.5..1.2f64) {
        let curve = pump.curve();
        let (best, most) = curve.best_efficiency().unwrap();
        let here = curve.efficiency(gpm(0.999_999 * pump.flow(share))).unwrap().unwrap();
        prop_assert!(here <= most * (1.0 + 1e-12), "{here} over {most}");
        prop_assert!(near(share_of_best(best * r, r, best).unwrap(), 1.0, 1e-14));
    }
}

// An invented pump whose shaft power has two peaks close together; the larger is not beside the best of the stations.
/// Where a curve rises, the system's may meet it twice between two points at which it lies above. From 10 gpm to 20 the
/// head is 100 + 10 (3 t² − 2 t³) ft, level at both ends; the system's 100.5 + 10 t meets it last at t = 0.939443, solved
/// by hand.
#[test]
fn a_rising_stretch_is_looked_into() {
    let points = [(0.0, 120.0), (10.0, 100.0), (20.0, 110.0), (30.0, 60.0)];
    let point = |(flow, head)| Point { flow: gpm(flow), head: feet(head), efficiency: None, power: None };
    let curve = PumpCurve::new(points.map(point).to_vec()).unwrap();
    let system = |flow: VolumeRate| {
        let q = in_gpm(flow);
        Ok(feet(if q < 10.0 { 125.0 - 2.45 * q } else { 100.5 + (q - 10.0) }))
    };
    let found = operating_point(&curve, 1.0, system).unwrap();
    assert!((in_gpm(found.flow) - 19.394_425).abs() < 1e-5, "{found:?}");
    assert!(found.short_at_least_flow);
}

/// A curve that begins at 10 gpm begins at 8 gpm at four fifths of its speed: below that nothing is told of it.
#[test]
fn a_lift_above_the_first_point_is_told_at_its_flow() {
    let point = |(flow, head)| Point { flow: gpm(flow), head: feet(head), efficiency: None, power: None };
    let curve = PumpCurve::new([(10.0, 100.0), (20.0, 90.0), (30.0, 60.0)].map(point).to_vec()).unwrap();
    match operating_point(&curve, 0.8, |_| Ok(feet(80.0))) {
        Err(NoOperatingPoint::HeadShort { flow, pump, system }) => {
            assert!(near(in_gpm(flow), 8.0, 1e-12) && near(in_feet(pump), 64.0, 1e-12));
            assert!(near(in_feet(system), 80.0, 1e-12));
        }
        other => panic!("{other:?}"),
    }
}

#[test]
fn every_peak_of_power_is_looked_at() {
    let pump = Made {
        flows: vec![0.0, 0.734_091_7, 2.452_365_3, 3.320_137_4, 5.0],
        heads: vec![30.0, 27.363_473_8, 18.950_201_4, 17.005_668_4, 9.0],
        efficiencies: vec![0.0, 0.094_150_6, 0.247_105_6, 0.288_446_2, 0.3],
    };
    let curve = pump.curve();
    let (_, most) = largest_shaft_power(&curve, 1.0, water()).unwrap().unwrap();
    for part in 0..=20_000 {
        let flow = gpm(0.999_999 * pump.flow(f64::from(part) / 20_000.0));
        let here = curve.shaft_power(flow, water()).unwrap().unwrap();
        assert!(here.value <= most.value * (1.0 + 1e-9), "{here:?} at {} gpm over {most:?}", in_gpm(flow));
    }
}
