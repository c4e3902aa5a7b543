//! Wells and tanks: the well function against its integral, and laws of drawdown, demand and air.

use super::tried;
use proptest::prelude::*;
use wellwright_core::quantity::{
    days, feet, gallons, gallons_per_minute_per_foot, gpm, hours, in_feet, in_gallons, in_gpm, in_meters, in_minutes,
    in_seconds, meters, psi, square_meters_per_day,
};
use wellwright_core::water::demand::{flow_for, weekly_volume};
use wellwright_core::water::tank::{Band, most_starts, run_time, tank_drawdown, tank_for};
use wellwright_core::water::well::{
    Aquifer, cooper_jacob_drawdown, cooper_jacob_holds, drawdown_by_capacity, flow_for_drawdown, theis_argument,
    theis_drawdown, well_function,
};

fn aquifer(t: f64, s: f64, r: f64, time: f64) -> Aquifer {
    Aquifer { transmissivity: square_meters_per_day(t), storage: s, radius: meters(r), time: days(time) }
}

fn band(precharge: f64, cut_in: f64, cut_out: f64) -> Band {
    Band { precharge: psi(precharge), cut_in: psi(cut_in), cut_out: psi(cut_out), barometric: psi(14.696) }
}

proptest! {
    #![proptest_config(tried(1000))]

    // Its slope is -e^-u/u, by a central difference; and it lies between two bounds that hold for every u
    // (Abramowitz and Stegun 5.1.20).
    #[test]
    fn the_well_function_is_the_integral(power in -9.0..2.0f64) {
        let u = 10f64.powf(power);
        let w = |u: f64| well_function(u).unwrap();
        let h = 1e-4 * u;
        let slope = (w(u + h) - w(u - h)) / (2.0 * h);
        let exact = -(-u).exp() / u;
        prop_assert!((slope / exact - 1.0).abs() < 1e-4, "{slope} and {exact}");
        prop_assert!(w(u) > 0.5 * (-u).exp() * (1.0 + 2.0 / u).ln() && w(u) < (-u).exp() * (1.0 + 1.0 / u).ln());
    }

    #[test]
    fn drawdown_grows_with_flow_and_time_and_falls_with_distance(t in 0.5..5000.0, s in 1e-5..0.3, r in 0.05..500.0, time in 0.01..1000.0, rate in 1.0..2000.0, more in 1.01..5.0f64) {
        let fallen = |rate: f64, r: f64, time: f64| in_meters(theis_drawdown(gpm(rate), aquifer(t, s, r, time)).unwrap());
        let one = fallen(rate, r, time);
        prop_assert!((fallen(rate * more, r, time) - more * one).abs() <= 1e-12 * more * one);
        prop_assert!(fallen(rate, r, time * more) >= one && fallen(rate, r * more, time) <= one);
    }

    // Within a quarter of a percent wherever it may be used; refused elsewhere.
    #[test]
    fn the_short_form_agrees_where_it_holds(t in 0.5..5000.0, s in 1e-5..0.3, r in 0.05..500.0, time in 0.01..1000.0) {
        let aquifer = aquifer(t, s, r, time);
        let flow = gpm(100.0);
        match cooper_jacob_drawdown(flow, aquifer) {
            Ok(short) => {
                let long = theis_drawdown(flow, aquifer).unwrap();
                prop_assert!(short < long && in_meters(short) > 0.9975 * in_meters(long));
            }
            Err(error) => {
                prop_assert_eq!(error.argument, "u");
                prop_assert!(!cooper_jacob_holds(theis_argument(aquifer).unwrap()));
            }
        }
    }

    #[test]
    fn a_drawdown_is_the_flow_that_makes_it(rate in 0.1..5000.0, capacity in 0.01..1000.0) {
        let drawdown = drawdown_by_capacity(gpm(rate), gallons_per_minute_per_foot(capacity)).unwrap();
        prop_assert!((in_feet(drawdown) * capacity / rate - 1.0).abs() < 1e-12);
        prop_assume!(in_feet(drawdown) < 9000.0);
        let back = flow_for_drawdown(drawdown, gallons_per_minute_per_foot(capacity)).unwrap();
        prop_assert!((in_gpm(back) / rate - 1.0).abs() < 1e-12);
    }

    // Seven days of a day's water.
    #[test]
    fn a_week_of_the_flow_for_a_day_is_seven_days(volume in 1.0..1e6, time in 0.5..24.0) {
        let flow = flow_for(gallons(volume), hours(time)).unwrap();
        prop_assume!(in_gpm(flow) < 30_000.0);
        let week = in_gallons(weekly_volume(flow, hours(time)).unwrap());
        prop_assert!((week / (7.0 * volume) - 1.0).abs() < 1e-12);
    }

    // What the tank gives over two bands side by side is what it gives over both; never more than its own volume; the
    // tank worked out back from it is the same; more precharge gives more.
    #[test]
    fn a_tank_keeps_its_identities(v in 1.0..500.0, low in 20.0..60.0, first in 1.0..30.0, second in 1.0..30.0, share in 0.1..1.0) {
        let (middle, high, charge) = (low + first, low + first + second, share * low);
        let given = |charge: f64, low: f64, high: f64| in_gallons(tank_drawdown(gallons(v), band(charge, low, high)).unwrap());
        let whole = given(charge, low, high);
        prop_assert!((given(charge, low, middle) + given(charge, middle, high) - whole).abs() <= 1e-12 * v);
        prop_assert!(whole > 0.0 && whole < v && given(low, low, high) >= whole);
        let back = in_gallons(tank_for(gallons(whole), band(charge, low, high)).unwrap());
        prop_assert!((back / v - 1.0).abs() < 1e-12);
        prop_assert_eq!(given(charge, low, low), 0.0);
    }

    // No use of water makes the pump start more often than half its flow.
    #[test]
    fn starts_are_most_at_half_the_flow(v in 1.0..100.0f64, rate in 1.0..200.0f64, share in 0.001..0.999f64) {
        let (pump, used) = (gpm(rate), gpm(share * rate));
        let run = in_minutes(run_time(gallons(v), pump, used).unwrap());
        let cycle = run + v / (share * rate);
        let most = (most_starts(gallons(v), pump).unwrap() * hours(1.0)).value;
        prop_assert!(60.0 / cycle <= most * (1.0 + 1e-12), "{} and {most}", 60.0 / cycle);
        prop_assert!((run - v / (rate * (1.0 - share))).abs() <= 1e-9 * run);
        let half = in_seconds(run_time(gallons(v), pump, gpm(0.5 * rate)).unwrap());
        prop_assert!((1800.0 / half / most - 1.0).abs() < 1e-12);
    }
}

#[test]
fn a_far_well_does_not_feel_the_pump_yet() {
    let far = aquifer(1.0, 0.3, 1000.0, 0.01);
    assert!(theis_argument(far).unwrap() > 700.0);
    assert_eq!(theis_drawdown(gpm(100.0), far).unwrap(), feet(0.0));
}
