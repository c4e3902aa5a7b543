//! Pulses along a lead: laws of the reflected wave and its remedies.

use super::tried;
use proptest::prelude::*;
use wellwright_core::cable::filter::{Practice, Remedy, behind_filter, remedies, remedy};
use wellwright_core::cable::long_lead::{Wave, corners, critical_length, longest_unfiltered, peak, reflection};
use wellwright_core::quantity::{in_meters, in_volts, meters, ohms, seconds, volts};

fn wave() -> impl Strategy<Value = Wave> {
    (1e8..2.5e8, 5e-8..2e-6, 40.0..150.0, 160.0..5000.0).prop_map(|(speed, rise, cable, motor)| Wave {
        speed: meters(speed) / seconds(1.0),
        rise: seconds(rise),
        cable: ohms(cable),
        motor: ohms(motor),
    })
}

proptest! {
    #![proptest_config(tried(1000))]

    // Between the bus and twice the bus, rising to the critical length and level from there.
    #[test]
    fn the_peak_grows_to_the_critical_length_and_stays(wave in wave(), bus in 100.0..1000.0, share in 0.0..3.0f64, more in 1.0..2.0f64) {
        let critical = critical_length(wave.speed, wave.rise).unwrap();
        let at = |share: f64| in_volts(peak(volts(bus), wave, critical * share).unwrap());
        prop_assert!(at(share) >= bus && at(share) < 2.0 * bus);
        prop_assert!(at(share * more) >= at(share) - 1e-9 * bus);
        prop_assert!((at(0.0) - bus).abs() < 1e-9 * bus && (at(1.0) - at(2.5)).abs() < 1e-9 * bus);
        let half = at(0.5) - (at(0.0) + at(1.0)) / 2.0;
        prop_assert!(half.abs() < 1e-9 * bus);
        prop_assert!((in_volts(peak(volts(2.0 * bus), wave, critical * share).unwrap()) - 2.0 * at(share)).abs() < 1e-9 * bus);
        // Turned round, the reflection changes its sign.
        let there = reflection(wave.motor, wave.cable).unwrap();
        prop_assert!((there + reflection(wave.cable, wave.motor).unwrap()).abs() < 1e-12 && there > 0.0);
    }

    // The corners of the picture are the peak at their lengths, and nothing bends between them.
    #[test]
    fn the_corners_are_the_peak(wave in wave(), bus in 100.0..1000.0, longest in 0.5..500.0, along in 0.0..1.0f64) {
        let all = corners(volts(bus), wave, meters(longest)).unwrap();
        let lengths: Vec<f64> = all.iter().map(|one| in_meters(one.length)).collect();
        prop_assert!(lengths[0] == 0.0 && (lengths[lengths.len() - 1] - longest).abs() < 1e-9);
        for pair in all.windows(2) {
            let (from, to) = (in_meters(pair[0].length), in_meters(pair[1].length));
            prop_assert!(to >= from);
            let between = in_volts(pair[0].peak) + along * (in_volts(pair[1].peak) - in_volts(pair[0].peak));
            let exact = in_volts(peak(volts(bus), wave, meters(from + along * (to - from))).unwrap());
            prop_assert!((between - exact).abs() < 1e-9 * bus);
        }
    }

    // At the longest lead without a filter the peak is the limit, or the limit is never reached.
    #[test]
    fn the_longest_lead_reaches_the_limit(wave in wave(), bus in 100.0..1000.0, limit in 300.0..2000.0) {
        let longest = longest_unfiltered(volts(bus), wave, volts(limit)).unwrap();
        let far = in_volts(peak(volts(bus), wave, meters(1e5)).unwrap());
        if longest.value.is_infinite() {
            prop_assert!(far <= limit);
        } else if longest.value > 0.0 {
            prop_assert!((in_volts(peak(volts(bus), wave, longest).unwrap()) - limit).abs() < 1e-6 * limit);
        } else {
            prop_assert!(bus >= limit);
        }
    }

    // The remedies along a lead are the remedy at each length, and what is longer never takes a lesser one.
    #[test]
    fn a_longer_lead_never_takes_a_lesser_filter(wave in wave(), bus in 300.0..900.0, limit in 700.0..1600.0, length in 0.1..2000.0, more in 1.0..3.0f64) {
        let practice = Practice::default();
        let at = |length: f64| {
            let top = peak(volts(bus), wave, meters(length)).unwrap();
            remedy((top, volts(bus)), volts(limit), meters(length), &practice).unwrap()
        };
        let (one, other) = (at(length), at(length * more));
        if let (Some(one), Some(other)) = (one, other) {
            let order = [Remedy::NoneNeeded, Remedy::OutputReactor, Remedy::DvDtFilter, Remedy::SineFilter];
            let place = |remedy: Remedy| order.iter().position(|one| *one == remedy);
            prop_assert!(place(other) >= place(one), "{one:?} {other:?}");
        }
        prop_assert!(one.is_some() || other.is_none());
        let all = remedies(volts(bus), wave, volts(limit), &practice).unwrap();
        prop_assert!(all.windows(2).all(|pair| pair[0].0 <= pair[1].0));
        let left = in_volts(behind_filter(volts(bus), 0.03).unwrap());
        prop_assert!((left - 0.97 * bus).abs() < 1e-9 * bus);
    }
}
