//! The exact voltage drop, solved back with complex numbers written apart from core.

use super::by_hand::{Circuit, Complex};
use super::tried;
use proptest::prelude::*;
use wellwright_core::cable::drop::{Load, Phases, approximate_drop, longest_lead, voltage_drop};
use wellwright_core::quantity::{OhmsPerLength, amperes, feet, in_feet, in_volts, ohms_per_kilofoot, volts};

/// A circuit, and resistance and reactance per thousand feet.
#[derive(Debug, Clone, Copy)]
struct Case {
    circuit: Circuit,
    phases: Phases,
    r: f64,
    x: f64,
}

impl Case {
    fn load(self) -> Load {
        let Circuit { volts: v, amps, power_factor, .. } = self.circuit;
        Load { sending: volts(v), current: amperes(amps), power_factor, phases: self.phases }
    }
    fn per_length(self) -> (OhmsPerLength, OhmsPerLength) {
        (ohms_per_kilofoot(self.r), ohms_per_kilofoot(self.x))
    }
    fn exact(self, length: f64) -> Option<f64> {
        let (r, x) = self.per_length();
        voltage_drop(self.load(), r, x, feet(length)).unwrap().map(in_volts)
    }
    fn approximate(self, length: f64) -> f64 {
        let (r, x) = self.per_length();
        in_volts(approximate_drop(self.load(), r, x, feet(length)).unwrap())
    }
    fn ohms(self, length: f64) -> Complex {
        Complex(self.r * length / 1e3, self.x * length / 1e3)
    }
}

fn case() -> impl Strategy<Value = Case> {
    let power_factor = prop_oneof![0.01..1.0, Just(1.0)];
    (100.0..1000.0, 0.0..1000.0, power_factor, any::<bool>(), 0.0..6.0, 0.0..0.2).prop_map(
        |(volts, amps, power_factor, three, r, x)| {
            let (phases, factor) = if three { (Phases::Three, 3f64.sqrt()) } else { (Phases::Single, 2.0) };
            Case { circuit: Circuit { volts, amps, power_factor, factor }, phases, r, x }
        },
    )
}

proptest! {
    #![proptest_config(tried(1000))]

    #[test]
    fn what_arrives_and_what_is_lost_make_what_was_sent(case in case(), length in 0.0..5000.0) {
        let ohms = case.ohms(length);
        let lost = case.circuit.drop_phasor(ohms).size();
        match case.exact(length) {
            Some(drop) => {
                let sent = case.circuit.sent_for(case.circuit.volts - drop, ohms);
                prop_assert!((sent / case.circuit.volts - 1.0).abs() <= 1e-9, "{sent} V sent, {drop} V lost");
                prop_assert!(drop < case.circuit.volts);
            }
            // Even a dead short at the far end takes more than is sent.
            None => prop_assert!(lost >= case.circuit.volts * (1.0 - 1e-12), "{lost} V would do"),
        }
    }

    #[test]
    fn the_exact_drop_is_never_below_the_approximation(case in case(), length in 0.0..5000.0) {
        let Some(exact) = case.exact(length) else { return Ok(()) };
        prop_assert!(exact >= case.approximate(length) - 1e-12 * case.circuit.volts);
    }

    // The two part by no more than the square of the part of the drop that stands across the voltage.
    #[test]
    fn for_small_drops_both_agree(case in case(), length in 0.0..5000.0) {
        let across = case.circuit.drop_phasor(case.ohms(length)).1;
        let (v, approximate) = (case.circuit.volts, case.approximate(length));
        let Some(exact) = case.exact(length) else { return Ok(()) };
        prop_assert!(exact - approximate <= across * across / v + 1e-12 * v, "{exact} and {approximate}");
        let along = case.circuit.drop_phasor(case.ohms(length)).0;
        prop_assert!((approximate - along).abs() <= 1e-12 * along, "{approximate} and {along}");
        let short = case.exact(length * 1e-6).unwrap();
        prop_assert!((short - case.approximate(length * 1e-6)).abs() <= 1e-11 * v);
    }

    #[test]
    fn the_drop_grows_with_length(case in case(), a in 0.0..5000.0, b in 0.0..5000.0) {
        let (short, long) = (f64::min(a, b), f64::max(a, b));
        if let Some(far) = case.exact(long) {
            let near = case.exact(short);
            prop_assert!(near.is_some_and(|near| near <= far + 1e-12 * case.circuit.volts), "{near:?} and {far}");
        }
    }

    #[test]
    fn the_longest_lead_drops_just_what_is_allowed(case in case(), allowed in 0.001..0.5) {
        prop_assume!(case.circuit.amps > 0.01 && case.r > 0.001);
        let (r, x) = case.per_length();
        let longest = in_feet(longest_lead(case.load(), r, x, allowed).unwrap());
        let limit = allowed * case.circuit.volts;
        prop_assume!(longest < 3e6);
        let drop = case.exact(longest).unwrap();
        prop_assert!((drop / limit - 1.0).abs() <= 1e-9, "{drop} V at {longest} ft, limit {limit}");
    }
}

#[test]
fn a_lead_without_drop_has_no_longest_length() {
    let load = Load { sending: volts(240.0), current: amperes(0.0), power_factor: 0.8, phases: Phases::Three };
    let zero = ohms_per_kilofoot(0.0);
    let longest = longest_lead(load, zero, zero, 0.05).unwrap();
    assert!(longest.value.is_infinite() && longest.value > 0.0);
    assert_eq!(voltage_drop(load, zero, zero, feet(1e6)).unwrap().map(in_volts), Some(0.0));
}
