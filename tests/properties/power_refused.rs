//! Formulas of the ways to power the motor, given what they do not hold for: an error that names the argument.

use super::arguments::bad;
use super::tried;
use proptest::prelude::*;
use wellwright_core::error::OutsideRange;
use wellwright_core::power::derating::{Derated, cabinet_ambient, derate};
use wellwright_core::power::family::{Class, Feed, Kind};
use wellwright_core::power::fit::{
    assumed_service_factor_current, fit_frame, frames, next_size, short_circuit_fit, unmarked_short_circuit_rating,
};
use wellwright_core::power::generator::{Hookup, distortion_factor, judge_set, running_rating, starting_rating};
use wellwright_core::power::generic::generic;
use wellwright_core::power::harmonics::{Coupling, fundamental, total_distortion};
use wellwright_core::power::impedance::{Impedance, fault_current, feeder, sag};
use wellwright_core::power::line_extension::Tariff;
use wellwright_core::power::start::{DipLimits, StartDip, judge_start, locked_rotor_input, start_dip};
use wellwright_core::power::supply::{input_current, input_power, supply_ampacity};
use wellwright_core::power::transformer::{Transformer, apparent_power};
use wellwright_core::power::volts::{budget, judge_volts, runs_out_at};
use wellwright_core::power::{converter, rotary, step_up, transformer};
use wellwright_core::quantity::{
    Celsius, Money, MoneyPerLength, amperes, hertz, horsepower, kilovolt_amperes, meters, ohms, ohms_per_kilofoot,
    volts, watts,
};

/// The arguments that refused, in the order of the calls; a call that gave a figure stands as empty.
fn refused(calls: impl IntoIterator<Item = Option<OutsideRange>>) -> Vec<&'static str> {
    calls.into_iter().map(|error| error.map_or("", |error| error.argument)).collect()
}

fn over(resistance: f64, reactance: f64) -> Impedance {
    Impedance { resistance: ohms(resistance), reactance: ohms(reactance) }
}

proptest! {
    #![proptest_config(tried(60))]

    #[test]
    fn inputs_refuse(x in bad()) {
        let found = refused([
            input_power(watts(x), 0.8, watts(0.0), 0.9).err(),
            input_power(watts(1.0), x, watts(0.0), 0.9).err(),
            input_power(watts(1.0), 0.8, watts(x), 0.9).err(),
            input_power(watts(1.0), 0.8, watts(0.0), x).err(),
            input_current(watts(x), volts(240.0), 0.9, Feed::SinglePhase).err(),
            input_current(watts(1.0), volts(x), 0.9, Feed::SinglePhase).err(),
            input_current(watts(1.0), volts(240.0), x, Feed::ThreePhase).err(),
            supply_ampacity(amperes(x)).err(),
            converter::supply_ampacity(amperes(x), None, volts(240.0), volts(240.0)).err(),
            converter::supply_ampacity(amperes(1.0), Some(amperes(x)), volts(240.0), volts(240.0)).err(),
            converter::supply_ampacity(amperes(1.0), None, volts(x), volts(240.0)).err(),
            converter::supply_ampacity(amperes(1.0), None, volts(240.0), volts(x)).err(),
            converter::device(amperes(x), amperes(1.0)).err(),
            converter::device(amperes(1.0), amperes(x)).err(),
        ]);
        prop_assert_eq!(found, [
            "power", "motor_efficiency", "lead_loss", "efficiency", "input", "supply", "power_factor", "rated",
            "nameplate", "fixed", "output", "input", "nameplate", "ampacity",
        ]);
    }

    #[test]
    fn frames_and_places_refuse(x in bad()) {
        let family = generic(Kind::ConvertingActive);
        let whole = Derated::By { heat: 1.0, altitude: 1.0 };
        // A place a little below zero is a good one.
        let cold = if x < 0.0 && x > -500.0 { x - 500.0 } else { x };
        let found = refused([
            derate(family.rating, Celsius(cold), meters(0.0)).err(),
            derate(family.rating, Celsius(40.0), meters(cold)).err(),
            cabinet_ambient(Celsius(cold), 0.0).err(),
            cabinet_ambient(Celsius(40.0), x).err(),
            frames(&family, Class::Low, x).err(),
            fit_frame(&family, Class::Low, amperes(x), horsepower(5.0), whole).err(),
            fit_frame(&family, Class::Low, amperes(5.0), horsepower(x), whole).err(),
            next_size(&family, horsepower(x)).err(),
            assumed_service_factor_current(amperes(x), 1.15).err(),
            assumed_service_factor_current(amperes(5.0), x).err(),
            unmarked_short_circuit_rating(horsepower(x)).err(),
            short_circuit_fit(amperes(x), amperes(5000.0)).err(),
            short_circuit_fit(amperes(5000.0), amperes(x)).err(),
            family.bus_volts(Class::Low, volts(x)).err(),
        ]);
        prop_assert_eq!(found, [
            "ambient", "altitude", "ambient", "sun", "factor", "required", "motor", "motor", "nameplate",
            "service_factor", "power", "fault", "marking", "at_drive",
        ]);
    }

    #[test]
    fn volts_and_sags_refuse(x in bad()) {
        let family = generic(Kind::Doubling);
        let z = over(0.1, 0.1);
        let (per, length) = (ohms_per_kilofoot(0.5), meters(10.0));
        let found = refused([
            budget(&family, Class::Low, volts(x), volts(1.0)).err(),
            budget(&family, Class::Low, volts(240.0), volts(x)).err(),
            runs_out_at(volts(x), volts(230.0), hertz(60.0)).err(),
            runs_out_at(volts(230.0), volts(x), hertz(60.0)).err(),
            runs_out_at(volts(230.0), volts(230.0), hertz(x)).err(),
            judge_volts(volts(230.0), volts(230.0), hertz(60.0), hertz(x)).err(),
            sag(volts(x), amperes(1.0), 0.9, z, z).err(),
            sag(volts(240.0), amperes(x), 0.9, z, z).err(),
            sag(volts(240.0), amperes(1.0), x, z, z).err(),
            sag(volts(240.0), amperes(1.0), 0.9, over(x, 0.1), z).err(),
            sag(volts(240.0), amperes(1.0), 0.9, z, over(0.1, x)).err(),
            feeder(ohms_per_kilofoot(x), per, length, Feed::SinglePhase).err(),
            feeder(per, ohms_per_kilofoot(x), length, Feed::SinglePhase).err(),
            feeder(per, per, meters(x), Feed::ThreePhase).err(),
            fault_current(volts(x), z).err(),
            fault_current(volts(240.0), over(x, x)).err(),
            fault_current(volts(240.0), over(0.0, 0.0)).err(),
        ]);
        prop_assert_eq!(found, [
            "at_equipment", "lead_drop", "at_motor", "rated", "frequency", "needed", "supply", "current", "power_factor",
            "source", "feeder", "resistance", "reactance", "length", "supply", "impedance", "impedance",
        ]);
    }

    #[test]
    fn transformers_and_starts_refuse(x in bad()) {
        let good = Transformer {
            rating: kilovolt_amperes(75.0), voltage: volts(480.0), impedance: 0.02, feed: Feed::SinglePhase,
        };
        let (one, two, z) = (Feed::SinglePhase, Feed::ThreePhase, over(0.1, 0.1));
        let dip = StartDip { current: amperes(1.0), at_pole: 0.1, at_motor: 0.1 };
        let found = refused([
            Transformer { rating: kilovolt_amperes(x), ..good }.as_impedance().err(),
            Transformer { voltage: volts(x), ..good }.rated_current().err(),
            Transformer { impedance: x, ..good }.fault_current().err(),
            good.loading(amperes(x)).err(),
            apparent_power(volts(x), amperes(1.0), one).err(),
            apparent_power(volts(240.0), amperes(x), two).err(),
            transformer::next_size(watts(x), one).err(),
            locked_rotor_input(amperes(x), 6.5, one, two).err(),
            locked_rotor_input(amperes(1.0), x, one, two).err(),
            start_dip(volts(x), amperes(1.0), z, z).err(),
            start_dip(volts(240.0), amperes(x), z, z).err(),
            start_dip(volts(240.0), amperes(1.0), over(x, 0.1), z).err(),
            start_dip(volts(240.0), amperes(1.0), z, over(0.1, x)).err(),
            judge_start(dip, DipLimits { motor: x, pole: 0.05 }).err(),
            judge_start(dip, DipLimits { motor: 0.15, pole: x }).err(),
        ]);
        prop_assert_eq!(found, [
            "rating", "voltage", "impedance", "current", "supply", "current", "load", "full_load", "multiple", "supply",
            "locked_rotor", "source", "feeder", "motor", "pole",
        ]);
    }

    #[test]
    fn sets_and_harmonics_refuse(x in bad()) {
        let kva = kilovolt_amperes(50.0);
        let good = Coupling { short_circuit: amperes(5000.0), equipment: amperes(50.0), other: amperes(0.0) };
        let found = refused([
            distortion_factor(x).err(),
            running_rating(watts(x), 0.1, Hookup::AsBuilt).err(),
            running_rating(kva, x, Hookup::AsBuilt).err(),
            starting_rating(volts(x), amperes(1.0), Feed::SinglePhase, Hookup::AsBuilt).err(),
            starting_rating(volts(240.0), amperes(x), Feed::SinglePhase, Hookup::AsBuilt).err(),
            judge_set(watts(x), 1.0, kva).err(),
            judge_set(kva, x, kva).err(),
            judge_set(kva, 1.0, watts(x)).err(),
            fundamental(amperes(x), 0.1).err(),
            fundamental(amperes(1.0), x).err(),
            total_distortion(&[0.1, x]).err(),
            good.total(x).err(),
            good.single(5, x).err(),
            Coupling { short_circuit: amperes(x), ..good }.total(0.1).err(),
            Coupling { equipment: amperes(x), ..good }.total(0.1).err(),
            Coupling { other: amperes(x), ..good }.single(5, 0.1).err(),
        ]);
        prop_assert_eq!(found, [
            "distortion", "input", "distortion", "supply", "locked_rotor", "rating", "site", "needed", "current",
            "distortion", "harmonic", "distortion", "share", "short_circuit", "equipment", "other",
        ]);
    }

    #[test]
    fn step_up_line_and_rotary_refuse(x in bad()) {
        let sixty = hertz(60.0);
        let tariff = Tariff { fixed: Money(1.0), per_length: MoneyPerLength(1.0), free: meters(1.0) };
        let found = refused([
            step_up::turns_ratio(volts(x), volts(480.0)).err(),
            step_up::turns_ratio(volts(240.0), volts(x)).err(),
            step_up::drive_current(amperes(x), 2.0).err(),
            step_up::drive_current(amperes(1.0), x).err(),
            step_up::secondary_volts(volts(x), 2.0, 0.05, 0.04).err(),
            step_up::secondary_volts(volts(240.0), x, 0.05, 0.04).err(),
            step_up::secondary_volts(volts(240.0), 2.0, x, 0.04).err(),
            step_up::secondary_volts(volts(240.0), 2.0, 0.05, x).err(),
            step_up::rating(volts(x), amperes(1.0)).err(),
            step_up::flux(volts(x), volts(240.0), sixty, sixty).err(),
            step_up::flux(volts(1.0), volts(x), sixty, sixty).err(),
            step_up::flux(volts(1.0), volts(240.0), hertz(x), sixty).err(),
            step_up::flux(volts(1.0), volts(240.0), sixty, hertz(x)).err(),
            step_up::lowest_frequency(x, 1.1, sixty).err(),
            step_up::lowest_frequency(0.03, x, sixty).err(),
            step_up::lowest_frequency(0.0, 1.0, sixty).err(),
            step_up::lowest_frequency(0.03, 1.1, hertz(x)).err(),
            tariff.cost(meters(x)).err(),
            tariff.break_even(Money(x)).err(),
            Tariff { fixed: Money(x), ..tariff }.cost(meters(1.0)).err(),
            Tariff { per_length: MoneyPerLength(x), ..tariff }.cost(meters(1.0)).err(),
            Tariff { free: meters(x), ..tariff }.break_even(Money(1.0)).err(),
            rotary::idler_power(horsepower(x), 1.5).err(),
            rotary::idler_power(horsepower(5.0), x).err(),
            rotary::idle_loss(watts(x), 0.05).err(),
            rotary::idle_loss(watts(1.0), x).err(),
        ]);
        prop_assert_eq!(found, [
            "primary", "secondary", "motor", "ratio", "drive", "ratio", "filter", "impedance", "supply", "given", "rated",
            "frequency", "rated_frequency", "boost", "most", "most", "rated_frequency", "distance", "other", "fixed",
            "per_length", "free", "motor", "ratio", "idler", "share",
        ]);
    }
}
