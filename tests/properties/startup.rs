//! Settings and tests of the start-up: laws.

use super::tried;
use proptest::prelude::*;
use wellwright_core::quantity::{Celsius, amperes, in_amperes, in_ohms, in_psi, ohms, psi};
use wellwright_core::startup::insulation::at_40;
use wellwright_core::startup::protection::{dry_run, high_pressure, overload};
use wellwright_core::startup::transducer::{pressure_of, signal};

proptest! {
    #![proptest_config(tried(1000))]

    // 4 mA at nothing, 20 mA at the span, straight between; a signal turns back into its pressure.
    #[test]
    fn a_sensor_tells_its_pressure(span in 1.0..1e4, share in 0.0..1.0f64, other in 0.0..1.0f64) {
        let at = |share: f64| 1000.0 * in_amperes(signal(psi(share * span), psi(span)).unwrap());
        prop_assert!((at(0.0) - 4.0).abs() < 1e-12 && (at(1.0) - 20.0).abs() < 1e-12);
        let slope = (at(share) - at(other)) - 16.0 * (share - other);
        prop_assert!(slope.abs() < 1e-11, "{slope}");
        let back = in_psi(pressure_of(amperes(at(share).min(20.0) / 1000.0), psi(span)).unwrap());
        prop_assert!((back - share * span).abs() <= 1e-9 * span, "{back}");
        prop_assert!(signal(psi(1.001 * span + 0.01), psi(span)).is_err());
    }

    // Ten degrees warmer, half the resistance: what is read warm stands for twice as much at 40 °C.
    #[test]
    fn insulation_halves_by_ten_degrees(megohms in 0.01..1e4f64, t in -20.0..110.0) {
        let at = |t: f64| in_ohms(at_40(ohms(1e6 * megohms), Celsius(t)).unwrap());
        prop_assert!((at(t + 10.0) / at(t) - 2.0).abs() < 1e-9);
        prop_assert!((at(40.0) / (1e6 * megohms) - 1.0).abs() < 1e-12);
        let twice = in_ohms(at_40(ohms(2e6 * megohms), Celsius(t)).unwrap());
        prop_assert!((twice / at(t) - 2.0).abs() < 1e-12);
    }

    // An overload lets the motor run and never waits for more than a quarter above its nameplate; a pump that runs dry draws
    // less than it did.
    #[test]
    fn trips_stand_on_the_right_side_of_the_current(amps in 0.5..500.0f64, factor in 1.0..1.4, more in 1.0..2.0f64) {
        let trip = |amps: f64, factor: f64| in_amperes(overload(amperes(amps), factor).unwrap());
        prop_assert!(trip(amps, factor) > 1.1 * amps && trip(amps, factor) <= 1.25 * amps);
        prop_assert!(trip(amps, factor) <= trip(amps, 1.4));
        prop_assert!((trip(more * amps, factor) - more * trip(amps, factor)).abs() < 1e-9 * amps);
        let dry = |amps: f64| in_amperes(dry_run(amperes(amps)).unwrap());
        prop_assert!(dry(amps) < amps && dry(amps) > 0.5 * amps);
        prop_assert!((dry(more * amps) - more * dry(amps)).abs() < 1e-9 * amps);
        prop_assert!(overload(amperes(amps), 0.99).is_err() && overload(amperes(amps), 1.41).is_err());
    }

    // The stop for high pressure lies between what is held and what the weakest part stands, and rises with both.
    #[test]
    fn high_pressure_stops_between_setpoint_and_rating(rating in 1.0..1e4, share in 0.0..1.0f64, more in 0.0..1.0f64) {
        let stop = |set: f64, rating: f64| in_psi(high_pressure(psi(set), psi(rating)).unwrap());
        let set = share * rating;
        let found = stop(set, rating);
        prop_assert!(set <= found + 1e-9 * rating && found <= rating * (1.0 + 1e-12), "{found}");
        let higher = set + more * (rating - set);
        prop_assert!(stop(higher.min(rating), rating) >= found - 1e-9 * rating);
        prop_assert!(rating > 9e3 || stop(set, 1.1 * rating) >= found - 1e-9 * rating);
        prop_assert!(high_pressure(psi(1.01 * rating + 0.01), psi(rating)).is_err());
    }
}
