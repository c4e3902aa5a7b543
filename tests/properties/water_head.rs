//! Head, pressure, cooling and surge: laws, and what out-of-range arguments get.

use super::tried;
use proptest::prelude::*;
use wellwright_core::error::OutsideRange;
use wellwright_core::quantity::{
    Celsius, feet, feet_per_second, gallons, gpm, in_feet, in_feet_per_second, in_gpm, in_inches, in_psi, inches,
    kilograms_per_cubic_meter, meters, psi,
};
use wellwright_core::standards::pipe::Material;
use wellwright_core::water::cooling::{cooling_speed, least_flow, widest_sleeve};
use wellwright_core::water::dead_head::{dead_head_at_gauge, dead_head_at_pump, relief_head};
use wellwright_core::water::friction::{Pipe, colebrook_white, friction_factor, mean_velocity};
use wellwright_core::water::head::{Task, pressure_head, pressure_of_head, suction_head, total_dynamic_head};
use wellwright_core::water::line::{FrictionMethod, Section};
use wellwright_core::water::properties::{barometric_pressure, density, vapor_pressure, water};
use wellwright_core::water::surge::{Shell, bulk_modulus, wave_speed};
use wellwright_core::water::tank::{Band, tank_drawdown};
use wellwright_core::water::well::well_function;

/// Total head in feet of: flow, level, roughness over diameter, pressure.
fn head([rate, level, relative, gauge]: [f64; 4], method: FrictionMethod) -> f64 {
    let bore = inches(2.067);
    let pipe = Pipe { length: feet(500.0), inside_diameter: bore, roughness: relative * bore };
    let line = [Section { pipe, hazen_williams: 130.0, fittings: 5.0 }; 2];
    let task = Task { lift: feet(level), rise: feet(10.0), line: &line, pressure: psi(gauge), method };
    let water = water(Celsius(15.0)).unwrap();
    in_feet(total_dynamic_head(gpm(rate), task, water).unwrap().total())
}

proptest! {
    #![proptest_config(tried(1000))]

    #[test]
    fn head_rises_with_all_that_stands_in_the_way(rate in 0.5..150.0, level in 0.0..1500.0f64, relative in 1e-6..0.02, gauge in 0.0..100.0, more in 1.001..2.0f64) {
        let plain = [rate, level, relative, gauge];
        for method in [FrictionMethod::DarcyWeisbach, FrictionMethod::HazenWilliams] {
            let base = head(plain, method);
            let grown = |at: usize| {
                let mut grown = plain;
                grown[at] *= more;
                head(grown, method) - base
            };
            prop_assert!(grown(0) > 0.0);
            prop_assert!((grown(1) - level * (more - 1.0)).abs() < 1e-9 * base);
            prop_assert!(gauge < 1e-3 || grown(3) > 0.0);
            // Roughness matters only to the one, and not where the flow is laminar.
            let rough = grown(2);
            match method {
                FrictionMethod::DarcyWeisbach => prop_assert!(rough >= 0.0 && (rate < 5.0 || rough > 0.0)),
                FrictionMethod::HazenWilliams => prop_assert_eq!(rough, 0.0),
            }
            prop_assert!(base >= level + 10.0);
        }
    }

    #[test]
    fn a_pressure_is_the_head_that_makes_it(gauge in -20.0..2000.0, t in 0.0..60.0) {
        let density = density(Celsius(t)).unwrap();
        let back = pressure_of_head(pressure_head(psi(gauge), density).unwrap(), density).unwrap();
        prop_assert!((in_psi(back) - gauge).abs() <= 1e-12 * gauge.abs());
    }

    // Water is heaviest near 4 °C; it boils the easier the warmer it is; air thins upward.
    #[test]
    fn water_and_air_go_the_way_they_go(t in 4.1..59.0, z in -500.0..10_900.0) {
        let at = |t: f64| water(Celsius(t)).unwrap();
        prop_assert!(at(t + 1.0).density < at(t).density && at(t).density < at(3.98).density);
        prop_assert!(at(t + 1.0).viscosity < at(t).viscosity);
        prop_assert!(at(t + 1.0).vapor_pressure > at(t).vapor_pressure);
        let air = |z: f64| barometric_pressure(meters(z)).unwrap();
        prop_assert!(air(z + 100.0) < air(z));
        // Hydrostatics of the air: 1.5 kg/m³ at most, 0.3 at least.
        let step = (air(z) - air(z + 100.0)).value / (100.0 * 9.80665);
        prop_assert!(step > 0.3 && step < 1.5, "{step}");
    }

    // Suction: each part takes its own; a flooded pump has more than a lifted one.
    #[test]
    fn suction_head_falls_with_lift_and_altitude(lift in -20.0..25.0, z in 0.0..3000.0, t in 0.0..60.0, rate in 0.0..300.0) {
        let left = |lift: f64, z: f64| {
            let pipe = Pipe { length: feet(30.0), inside_diameter: inches(4.0), roughness: feet(0.00015) };
            let section = Section { pipe, hazen_williams: 130.0, fittings: 2.0 };
            let air = barometric_pressure(meters(z)).unwrap();
            let water = water(Celsius(t)).unwrap();
            let method = FrictionMethod::DarcyWeisbach;
            in_feet(suction_head(gpm(rate), air, feet(lift), &[section], method, water).unwrap().available())
        };
        prop_assert!((left(lift, z) - left(lift + 3.0, z) - 3.0).abs() < 1e-9);
        prop_assert!(left(lift, z + 100.0) < left(lift, z));
    }

    #[test]
    fn a_sleeve_gives_just_the_speed(rate in 0.5..500.0, d in 3.5..10.0, speed in 0.1..3.0) {
        let (flow, wanted, motor) = (gpm(rate), feet_per_second(speed), inches(d));
        let sleeve = widest_sleeve(flow, wanted, motor).unwrap();
        prop_assume!(in_inches(sleeve) > d * 1.001);
        prop_assert!((in_feet_per_second(cooling_speed(flow, sleeve, motor).unwrap()) / speed - 1.0).abs() < 1e-9);
        prop_assert!((in_gpm(least_flow(wanted, sleeve, motor).unwrap()) / rate - 1.0).abs() < 1e-9);
    }

    // The water between pump and gauge is the only difference of the two pressures; the head at which a relief valve set
    // to the dead-head pressure opens is the shut-off head.
    #[test]
    fn dead_head_is_one_head_at_two_places(h in 100.0..2000.0, level in 0.0..1000.0, rise in -50.0..50.0, setting in 1000.0..1500.0) {
        let density = kilograms_per_cubic_meter(999.0);
        let gauge = dead_head_at_gauge(feet(h), feet(level), feet(rise), density).unwrap();
        let pump = dead_head_at_pump(feet(h), feet(setting), feet(level), density).unwrap();
        let between = in_feet(pressure_head(pump - gauge, density).unwrap());
        prop_assert!((between - setting - rise).abs() < 1e-8);
        prop_assume!(in_psi(gauge) > -20.0);
        let head = in_feet(relief_head(feet(level), feet(rise), gauge, density).unwrap());
        prop_assert!((head - h).abs() < 1e-8);
    }

    // Stiffer and thicker pipe carries the wave faster, never as fast as open water does.
    #[test]
    fn the_wave_is_slower_than_in_open_water(d in 0.5..12.0, share in 0.01..0.1, c in 0.85..1.25) {
        let density = kilograms_per_cubic_meter(998.2);
        let speed = |material: Material, share: f64| {
            let shell = Shell { inside_diameter: inches(d), wall: inches(d * share), modulus: material.modulus(), restraint: c };
            wave_speed(bulk_modulus(), density, shell).unwrap().value
        };
        let open = (bulk_modulus() / density).sqrt().value;
        let all = [Material::Polyethylene, Material::Pvc, Material::Steel].map(|material| speed(material, share));
        prop_assert!(all[0] < all[1] && all[1] < all[2] && all[2] < open);
        prop_assert!(speed(Material::Pvc, share * 1.1) > all[1]);
    }
}

/// The argument that an answer names.
fn named<T: std::fmt::Debug>(answer: Result<T, OutsideRange>) -> &'static str {
    answer.unwrap_err().argument
}

#[test]
fn what_is_out_of_range_is_named_and_never_clamped() {
    for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        assert_eq!(named(density(Celsius(bad))), "temperature");
        assert_eq!(named(barometric_pressure(meters(bad))), "altitude");
        assert_eq!(named(colebrook_white(bad, 0.0)), "reynolds");
        assert_eq!(named(friction_factor(bad, 0.0)), "reynolds");
        assert_eq!(named(friction_factor(1e5, bad)), "relative_roughness");
        assert_eq!(named(mean_velocity(gpm(bad), inches(2.0))), "flow");
        assert_eq!(named(mean_velocity(gpm(1.0), inches(bad))), "inside_diameter");
        assert_eq!(named(well_function(bad)), "u");
        assert_eq!(named(pressure_head(psi(bad), kilograms_per_cubic_meter(999.0))), "pressure");
        assert_eq!(named(pressure_head(psi(1.0), kilograms_per_cubic_meter(bad))), "density");
        assert_eq!(named(cooling_speed(gpm(9.0), inches(bad), inches(3.75))), "outer");
        let (water, some) = (kilograms_per_cubic_meter(999.0), feet(100.0));
        assert_eq!(named(dead_head_at_gauge(some, feet(bad), some, water)), "static_level");
        assert_eq!(named(dead_head_at_pump(feet(bad), some, some, water)), "shut_off");
        assert_eq!(named(relief_head(some, feet(bad), psi(50.0), water)), "rise");
    }
    assert_eq!(named(vapor_pressure(Celsius(60.001))), "temperature");
    assert_eq!(named(vapor_pressure(Celsius(-0.001))), "temperature");
    assert_eq!(named(colebrook_white(1999.0, 0.0)), "reynolds");
    assert_eq!(named(colebrook_white(1e5, 0.050_001)), "relative_roughness");
    // A motor as wide as its casing leaves no gap.
    assert_eq!(named(cooling_speed(gpm(9.0), inches(3.75), inches(3.75))), "outer");
    let band = |precharge, cut_in, cut_out| Band {
        precharge: psi(precharge),
        cut_in: psi(cut_in),
        cut_out: psi(cut_out),
        barometric: psi(14.7),
    };
    assert_eq!(named(tank_drawdown(gallons(20.0), band(41.0, 40.0, 60.0))), "precharge");
    assert_eq!(named(tank_drawdown(gallons(20.0), band(38.0, 61.0, 60.0))), "cut_in");
    let error = tank_drawdown(gallons(20.0), band(f64::NAN, 40.0, 60.0)).unwrap_err();
    assert!(error.given.is_nan() && error.min == 0.0 && (error.max / psi(40.0).value - 1.0).abs() < 1e-12);
}
