//! Friction: the equations solved back, and what more flow, roughness or length may do.

use super::tried;
use proptest::prelude::*;
use wellwright_core::numeric::root::bracketed_root;
use wellwright_core::quantity::{feet, gpm, in_feet, in_feet_per_second, inches, square_meters_per_second};
use wellwright_core::water::fittings::{equivalent_length, fitting_loss};
use wellwright_core::water::friction::{Pipe, Regime, colebrook_white, friction_factor, pipe_loss, von_karman};
use wellwright_core::water::hazen_williams::hazen_williams_loss;

/// A power of ten between two powers.
fn tens(low: f64, high: f64) -> impl Strategy<Value = f64> {
    (low..high).prop_map(|power| 10f64.powf(power))
}

/// Relative roughness, none at all included.
fn roughness() -> impl Strategy<Value = f64> {
    prop_oneof![inner_roughness(), Just(0.05)]
}

/// The same short of the upper limit, which a change of units may pass by a rounding.
fn inner_roughness() -> impl Strategy<Value = f64> {
    prop_oneof![Just(0.0), tens(-7.0, -1.31)]
}

/// What is left of the equation for a factor.
fn left(re: f64, relative: f64, factor: f64) -> f64 {
    let x = 1.0 / factor.sqrt();
    x + 2.0 * (relative / 3.7 + 2.51 * x / re).log10()
}

fn pipe(length: f64, diameter: f64, relative: f64) -> Pipe {
    Pipe { length: feet(length), inside_diameter: inches(diameter), roughness: inches(diameter * relative) }
}

/// Head lost, feet.
fn lost(rate: f64, pipe: Pipe, viscosity: f64) -> f64 {
    in_feet(pipe_loss(gpm(rate), pipe, square_meters_per_second(viscosity)).unwrap().head)
}

proptest! {
    #![proptest_config(tried(1000))]

    #[test]
    fn the_factor_solves_its_equation(re in tens(3.302, 8.0), relative in roughness()) {
        let factor = colebrook_white(re, relative).unwrap();
        prop_assert!(left(re, relative, factor).abs() < 1e-13, "{}", left(re, relative, factor));
        // Another way to the same root.
        let x = bracketed_root(|x| left(re, relative, 1.0 / (x * x)), 1.0, 20.0, 0.0).unwrap();
        prop_assert!((factor * x * x - 1.0).abs() < 1e-13);
    }

    #[test]
    fn the_factor_falls_with_speed_and_rises_with_roughness(re in tens(3.302, 7.9), relative in roughness(), more in 1.0001..1.2) {
        let factor = colebrook_white(re, relative).unwrap();
        prop_assert!(colebrook_white(re * more, relative).unwrap() < factor);
        if relative > 0.0 && relative * more <= 0.05 {
            prop_assert!(colebrook_white(re, relative * more).unwrap() > factor);
        }
        if relative >= 1e-6 {
            prop_assert!(von_karman(relative).unwrap() < factor);
        }
    }

    // A step of a millionth of the way moves the factor by no more than that.
    #[test]
    fn the_factor_has_no_jump_in_turbulence(re in tens(3.302, 7.9), relative in roughness()) {
        let step = colebrook_white(re * (1.0 + 1e-6), relative).unwrap() / colebrook_white(re, relative).unwrap() - 1.0;
        prop_assert!(step <= 0.0 && step > -1e-6, "{step}");
    }

    // The factor jumps up where the flow turns, so that the head lost rises with the flow all the way.
    #[test]
    fn more_flow_loses_more(rate in tens(-2.0, 3.0), more in 1.000_001..3.0, d in 0.5..12.0, relative in inner_roughness(), nu in 4e-7..1.8e-6) {
        prop_assume!(rate * more * 0.01 < d);
        let pipe = pipe(100.0, d, relative);
        prop_assert!(lost(rate * more, pipe, nu) > lost(rate, pipe, nu));
    }

    #[test]
    fn head_goes_with_length_and_against_width(rate in 1.0..400.0, d in 1.0..12.0, relative in 0.0..0.04, nu in 4e-7..1.8e-6, share in 0.0..1.0) {
        let whole = lost(rate, pipe(1000.0, d, relative), nu);
        let parts = lost(rate, pipe(1000.0 * share, d, relative), nu) + lost(rate, pipe(1000.0 * (1.0 - share), d, relative), nu);
        prop_assert!((whole - parts).abs() <= 1e-9 * whole);
        prop_assert!(lost(rate, pipe(1000.0, d * 1.01, relative), nu) < whole);
        prop_assert!(lost(rate, pipe(1000.0, d, relative), nu * 1.01) >= whole || relative > 0.0);
    }

    // Straight pipe of the equivalent length takes what the fitting takes.
    #[test]
    fn a_fitting_is_worth_its_length_of_pipe(rate in 5.0..300.0, d in 1.0..8.0, relative in 0.0..0.04, k in 0.01..20.0) {
        let nu = 1.1e-6;
        let loss = pipe_loss(gpm(rate), pipe(1.0, d, relative), square_meters_per_second(nu)).unwrap();
        let length = equivalent_length(k, inches(d), loss.friction.unwrap().factor).unwrap();
        let fitting = in_feet(fitting_loss(k, loss.velocity).unwrap());
        prop_assert!((lost(rate, pipe(in_feet(length), d, relative), nu) / fitting - 1.0).abs() < 1e-9);
    }

    // The trade's form keeps within 2.5 % above the law v = 1.318 C R^0.63 S^0.54, R = D/4 in feet.
    #[test]
    fn the_trades_form_keeps_near_the_law(rate in tens(0.0, 3.3), d in 0.5..13.0, c in 60.0..160.0) {
        let head = in_feet(hazen_williams_loss(gpm(rate), inches(d), feet(100.0), c).unwrap());
        let loss = pipe_loss(gpm(rate.min(100.0)), pipe(1.0, d, 0.0), square_meters_per_second(1.1e-6)).unwrap();
        let speed = in_feet_per_second(loss.velocity) * rate / rate.min(100.0);
        let law = 100.0 * (speed / (1.318 * c * (d / 48.0f64).powf(0.63))).powf(1.0 / 0.54);
        prop_assert!(head / law > 1.0 && head / law < 1.025, "{}", head / law);
    }
}

#[test]
fn flow_turns_at_2000_and_is_certain_from_4000() {
    let at = |re: f64| friction_factor(re, 1e-4).unwrap();
    assert_eq!(at(1999.99).regime, Regime::Laminar);
    assert_eq!(at(2000.0).regime, Regime::Transition);
    assert_eq!(at(3999.99).regime, Regime::Transition);
    assert_eq!(at(4000.0).regime, Regime::Turbulent);
    assert!(at(1999.99).factor < at(2000.0).factor);
}

#[test]
fn still_water_loses_nothing() {
    for rate in [0.0, 1e-300, 1e-14] {
        let loss = pipe_loss(gpm(rate), pipe(1000.0, 2.0, 0.0), square_meters_per_second(1.1e-6)).unwrap();
        assert!(loss.friction.is_none() && loss.head >= feet(0.0) && in_feet(loss.head) < 1e-12, "{loss:?}");
    }
}
