//! Formulas given what they do not hold for: an error that names the argument, never a number, never NaN.

use super::tried;
use proptest::prelude::*;
use wellwright_core::cable::ampacity::{Setting, ampacity};
use wellwright_core::cable::conductor::{awg_diameter, resistance_at, resistance_from_geometry};
use wellwright_core::cable::drop::{Load, Phases, approximate_drop, drop_parts, longest_lead, voltage_drop};
use wellwright_core::cable::ground::equipment_ground;
use wellwright_core::cable::reactance::from_spacing;
use wellwright_core::error::OutsideRange;
use wellwright_core::power::supply::{drive_input_current, provisional_device, true_power_factor};
use wellwright_core::pump::motor::{RatedVoltage, table_current, table_rows};
use wellwright_core::quantity::{Celsius, amperes, circular_mils, feet, ohms_per_kilofoot, volts, watts};
use wellwright_core::standards::ampacity::Rating;
use wellwright_core::standards::conductor::{Metal, Size};
use wellwright_core::standards::ground::table_250_122;
use wellwright_core::standards::overcurrent::next_standard_rating;

/// Not a number, endless, below zero, or beyond every range.
pub fn bad() -> impl Strategy<Value = f64> {
    prop_oneof![
        Just(f64::NAN),
        Just(f64::INFINITY),
        Just(f64::NEG_INFINITY),
        Just(f64::MAX),
        Just(f64::MIN),
        (1e-6..1e12).prop_map(|size: f64| -size),
        1e13..1e300,
    ]
}

fn load(sending: f64, current: f64, power_factor: f64) -> Load {
    Load { sending: volts(sending), current: amperes(current), power_factor, phases: Phases::Three }
}

/// Every one is an error, and about the argument of this name.
fn refused<T: std::fmt::Debug>(argument: &str, results: Vec<Result<T, OutsideRange>>) -> Result<(), TestCaseError> {
    for (index, result) in results.into_iter().enumerate() {
        match result {
            Ok(value) => prop_assert!(false, "{argument}, call {index}: gave {value:?}"),
            Err(error) => prop_assert_eq!(error.argument, argument, "call {}", index),
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(tried(100))]

    #[test]
    fn the_drop_refuses(bad in bad()) {
        let (r, x) = (ohms_per_kilofoot(0.5), ohms_per_kilofoot(0.05));
        let good = load(240.0, 28.0, 0.8);
        let length = feet(500.0);
        let calls = |load: Load, r, x, length| vec![
            voltage_drop(load, r, x, length).map(|_| ()),
            approximate_drop(load, r, x, length).map(|_| ()),
            drop_parts(load, r, x, length).map(|_| ()),
        ];
        for (argument, load) in [
            ("sending", load(bad, 28.0, 0.8)),
            ("current", load(240.0, bad, 0.8)),
            ("power_factor", load(240.0, 28.0, bad)),
        ] {
            refused(argument, calls(load, r, x, length))?;
            refused(argument, vec![longest_lead(load, r, x, 0.05)])?;
        }
        refused("resistance", calls(good, ohms_per_kilofoot(bad), x, length))?;
        refused("reactance", calls(good, r, ohms_per_kilofoot(bad), length))?;
        refused("length", calls(good, r, x, feet(bad)))?;
        refused("resistance", vec![longest_lead(good, ohms_per_kilofoot(bad), x, 0.05)])?;
        refused("reactance", vec![longest_lead(good, r, ohms_per_kilofoot(bad), 0.05)])?;
        refused("allowed", vec![longest_lead(good, r, x, bad), longest_lead(good, r, x, 0.0), longest_lead(good, r, x, 1.0)])?;
    }

    #[test]
    fn conductors_refuse(bad in bad()) {
        let area = circular_mils(26_240.0);
        let at_75 = ohms_per_kilofoot(0.491);
        for metal in [Metal::Copper, Metal::Aluminum] {
            // A temperature just below zero is a good one; every bad one here is colder or hotter than the law holds.
            let cold = if bad < 0.0 && bad > -61.0 { bad - 61.0 } else { bad };
            refused("temperature", vec![
                resistance_from_geometry(metal, area, 1.02, Celsius(cold)),
                resistance_at(at_75, metal, Celsius(cold)),
            ])?;
            refused("lay", vec![resistance_from_geometry(metal, area, bad, Celsius(75.0))])?;
            refused("area", vec![resistance_from_geometry(metal, circular_mils(bad), 1.02, Celsius(75.0))])?;
            refused("at_75", vec![resistance_at(ohms_per_kilofoot(bad), metal, Celsius(20.0))])?;
        }
        refused("gmd/gmr", vec![
            from_spacing(feet(bad), feet(0.01), 60.0),
            from_spacing(feet(0.01), feet(0.02), 60.0),
        ])?;
        refused("gmr", vec![from_spacing(feet(0.05), feet(bad), 60.0), from_spacing(feet(bad), feet(bad), 60.0)])?;
        refused("frequency", vec![from_spacing(feet(0.05), feet(0.02), bad)])?;
    }

    #[test]
    fn currents_and_devices_refuse(bad in bad()) {
        let supply = |power, motor, drive, sending, pf| drive_input_current(watts(power), motor, drive, volts(sending), pf);
        refused("power", vec![supply(bad, 0.8, 0.95, 240.0, 0.98)])?;
        refused("motor_efficiency", vec![supply(7457.0, bad, 0.95, 240.0, 0.98)])?;
        refused("drive_efficiency", vec![supply(7457.0, 0.8, bad, 240.0, 0.98)])?;
        refused("supply", vec![supply(7457.0, 0.8, 0.95, bad, 0.98)])?;
        refused("power_factor", vec![supply(7457.0, 0.8, 0.95, 240.0, bad)])?;
        refused("displacement", vec![true_power_factor(bad, 0.1)])?;
        refused("distortion", vec![true_power_factor(0.99, bad)])?;
        refused("input", vec![provisional_device(amperes(bad))])?;
        for metal in [Metal::Copper, Metal::Aluminum] {
            refused("device", vec![equipment_ground(amperes(bad), metal)])?;
        }
        for voltage in [RatedVoltage::V200, RatedVoltage::V208, RatedVoltage::V230, RatedVoltage::V460] {
            refused("power", vec![table_current(watts(bad), voltage)])?;
            refused("power", vec![table_rows(watts(bad))])?;
        }
    }
}

/// A lookup has no row for what is no number.
#[test]
fn lookups_find_nothing_for_what_is_no_number() {
    for rating in [Rating::C60, Rating::C75, Rating::C90] {
        for hot in [f64::NAN, f64::INFINITY, 71.0] {
            let setting =
                Setting { metal: Metal::Copper, insulation: rating, terminals: rating, ambient: Celsius(hot) };
            assert_eq!(ampacity(Size::Awg6, setting, 3), None, "{rating:?} at {hot}");
        }
    }
    for beyond in [f64::NAN, f64::INFINITY] {
        assert_eq!(next_standard_rating(beyond), None);
        assert_eq!(table_250_122(beyond, Metal::Copper), None);
        assert_eq!(Size::with_area_at_least(beyond), None);
    }
}

#[test]
fn gauges_end_where_the_rule_is_printed_to_end() {
    for gauge in [-4, 41, i32::MIN, i32::MAX] {
        let error = awg_diameter(gauge).unwrap_err();
        assert_eq!((error.argument, error.given, error.min, error.max), ("n", f64::from(gauge), -3.0, 40.0));
    }
    assert!(awg_diameter(-3).is_ok() && awg_diameter(40).is_ok());
}
