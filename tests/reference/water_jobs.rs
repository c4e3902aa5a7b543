//! Two worked jobs, their water: a house and stock well, and a large surface pump. Both are invented.
//!
//! The results were worked apart from core with CoolProp 8.0.0 (density, viscosity, vapor pressure), fluids 1.3.1 (friction
//! factor, standard atmosphere) and the textbook forms of the rest; they are held to the printed digits.

use wellwright_core::quantity::{
    Length, VolumeRate, fahrenheit, feet, feet_per_second, gallons, gallons_per_minute_per_foot, gpm, in_feet,
    in_feet_per_second, in_gallons, in_gpm, in_inches, in_pounds, in_pounds_per_foot, in_psi, inches, meters, pounds,
    pounds_per_foot, psi,
};
use wellwright_core::standards::pipe::{Material, PipeSize, Series, Surface};
use wellwright_core::water::cooling::{advised_speed, cooling_speed, least_flow, widest_sleeve};
use wellwright_core::water::dead_head::{
    dead_head_at_gauge, dead_head_at_pump, dead_head_on_pipe, house_limit, needs_relief, relief_head,
};
use wellwright_core::water::friction::{Pipe, Regime};
use wellwright_core::water::head::{Task, TotalHead, pressure_head, suction_head, total_dynamic_head};
use wellwright_core::water::level::pumping_level;
use wellwright_core::water::line::{FrictionMethod, Section};
use wellwright_core::water::properties::{Water, barometric_pressure, water};
use wellwright_core::water::string::{Hung, hanging_load};
use wellwright_core::water::surge::{Shell, bulk_modulus, joukowsky, wave_speed};
use wellwright_core::water::tank::{Band, tank_drawdown};
use wellwright_core::water::well::drawdown_by_capacity;

/// True where a value rounds to the digits that are printed.
#[track_caller]
fn prints(value: f64, decimals: usize, printed: &str) {
    assert_eq!(format!("{value:.decimals$}"), printed);
}

fn section(length: f64, inside_diameter: Length, surface: Surface, fittings: f64) -> Section {
    let pipe = Pipe { length: feet(length), inside_diameter, roughness: surface.roughness() };
    Section { pipe, hazen_williams: surface.hazen_williams(), fittings }
}

fn well_flow() -> VolumeRate {
    gpm(25.0)
}

fn well_water() -> Water {
    water(fahrenheit(60.0)).unwrap()
}

fn drop_pipe() -> PipeSize {
    Series::SteelSchedule40.named("1-1/2").unwrap()
}

fn well_head() -> TotalHead {
    let drawdown = drawdown_by_capacity(well_flow(), gallons_per_minute_per_foot(0.60)).unwrap();
    prints(in_feet(drawdown), 3, "41.667");
    let lift = pumping_level(feet(430.0), drawdown);
    prints(in_feet(lift), 2, "471.67");
    let bore = drop_pipe().inside_diameter();
    prints(in_inches(bore), 3, "1.610");
    let line = [section(620.0, bore, Surface::CommercialSteel, 0.0), section(80.0, bore, Surface::Plastic, 9.0)];
    let method = FrictionMethod::DarcyWeisbach;
    let task = Task { lift, rise: feet(4.0), line: &line, pressure: psi(60.0), method };
    total_dynamic_head(well_flow(), task, well_water()).unwrap()
}

#[test]
fn the_head_of_the_well() {
    let head = well_head();
    let [drop, surface] = [0, 1].map(|at| head.sections[at]);
    prints(in_feet_per_second(drop.darcy_weisbach.velocity), 3, "3.940");
    let friction = drop.darcy_weisbach.friction.unwrap();
    prints(friction.factor, 6, "0.024781");
    assert_eq!(friction.regime, Regime::Turbulent);
    prints(in_feet(drop.darcy_weisbach.head), 3, "27.624");
    prints(in_feet(surface.darcy_weisbach.head), 3, "3.114");
    prints(in_feet(head.fittings), 3, "2.171");
    prints(in_feet(head.pressure), 2, "138.54");
    prints(in_feet(pressure_head(psi(1.0), well_water().density).unwrap()), 4, "2.3089");
    prints(in_feet(head.velocity), 3, "0.241");
    prints(in_feet(head.total()), 2, "647.35");
}

#[test]
fn the_well_against_a_shut_valve() {
    let density = well_water().density;
    let gauge = dead_head_at_gauge(feet(820.0), feet(430.0), feet(4.0), density).unwrap();
    prints(in_psi(gauge), 0, "167");
    let least = psi(125.0);
    assert!(needs_relief(gauge, least) && !needs_relief(psi(125.0), least) && needs_relief(gauge, house_limit()));
    // 1,010 ft of water over 2.3089 ft/psi; 820 ft of it are the pump's.
    prints(in_psi(dead_head_at_pump(feet(820.0), feet(620.0), feet(430.0), density).unwrap()), 1, "437.4");
    prints(in_psi(dead_head_on_pipe(feet(820.0), density).unwrap()), 1, "355.1");
    // 430 + 4 + 125 x 2.3089 ft.
    prints(in_feet(relief_head(feet(430.0), feet(4.0), least, density).unwrap()), 1, "722.6");
}

#[test]
fn the_water_past_the_motor() {
    let (casing, motor) = (inches(6.065), inches(3.75));
    prints(in_feet_per_second(cooling_speed(well_flow(), casing, motor).unwrap()), 3, "0.449");
    let least = least_flow(feet_per_second(0.25), casing, motor).unwrap();
    prints(in_gpm(least), 1, "13.9");
    assert_eq!(advised_speed(motor), feet_per_second(0.25));
    // 5 gpm need the gap to be that much smaller.
    let sleeve = widest_sleeve(gpm(5.0), feet_per_second(0.25), motor).unwrap();
    prints(in_feet_per_second(cooling_speed(gpm(5.0), sleeve, motor).unwrap()), 6, "0.250000");
}

#[test]
fn the_tank_by_the_barometer_of_the_place() {
    let barometric = barometric_pressure(meters(1400.0)).unwrap();
    prints(in_psi(barometric), 3, "12.416");
    let band = Band { precharge: psi(42.0), cut_in: psi(55.0), cut_out: psi(60.0), barometric };
    prints(in_gallons(tank_drawdown(gallons(44.0), band).unwrap()), 3, "2.452");
    let sea_level = Band { barometric: psi(14.696), ..band };
    prints(in_gallons(tank_drawdown(gallons(44.0), sea_level).unwrap()), 3, "2.396");
}

#[test]
fn the_surge_in_the_drop_pipe() {
    let size = drop_pipe();
    let shell = Shell {
        inside_diameter: size.inside_diameter(),
        wall: size.wall(),
        modulus: Material::Steel.modulus(),
        restraint: 1.0,
    };
    let density = well_water().density;
    let wave = wave_speed(bulk_modulus(), density, shell).unwrap();
    let change = well_head().sections[0].darcy_weisbach.velocity;
    prints(in_psi(joukowsky(density, wave, change).unwrap()), 0, "243");
}

#[test]
fn what_hangs_in_the_well() {
    // The standard prints the weight with two decimals.
    prints(in_pounds_per_foot(drop_pipe().mass_per_length()), 2, "2.72");
    let hung = Hung {
        length: feet(620.0),
        pipe: pounds_per_foot(2.72),
        inside_diameter: drop_pipe().inside_diameter(),
        cable: pounds_per_foot(0.0),
        pump: pounds(0.0),
    };
    prints(in_pounds(hanging_load(hung, well_water().density).unwrap().total()), 0, "2233");
}

/// 800 gpm, 80 °F, lifted 10 ft at 900 m above the sea.
#[test]
fn the_head_of_the_surface_pump() {
    let (flow, water) = (gpm(800.0), water(fahrenheit(80.0)).unwrap());
    let method = FrictionMethod::DarcyWeisbach;
    let suction = section(30.0, inches(8.071), Surface::CommercialSteel, 2.0);
    let line = [suction, section(1200.0, inches(7.84), Surface::Plastic, 2.75)];
    let task = Task { lift: feet(10.0), rise: feet(20.0), line: &line, pressure: psi(65.0), method };
    let head = total_dynamic_head(flow, task, water).unwrap();
    prints(in_feet(head.total()), 2, "194.42");

    let barometric = barometric_pressure(meters(900.0)).unwrap();
    let found = suction_head(flow, barometric, feet(10.0), &[suction], method, water).unwrap();
    prints(in_feet(found.barometric), 3, "30.538");
    prints(in_feet(found.vapor), 3, "1.175");
    prints(in_feet(found.pipe), 3, "0.281");
    prints(in_feet(found.fittings), 3, "0.782");
    prints(in_feet(found.available()), 2, "18.30");
}
