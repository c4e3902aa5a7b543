//! The two worked jobs, from the water to the motor, through the whole evaluation: a house and stock well, and a large
//! surface pump. Both are invented.
//!
//! The results are those of `water_jobs` and were worked apart from core, as it says; power is ρ g Q H over 745.7 W in a
//! horsepower and the efficiency that was entered. They are held to the printed digits.

use serde_json::Value;
use wellwright_core::evaluate::{Evaluation, Lift, evaluate, report};
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::{Field, Job, Origin, Part, Way, wire};
use wellwright_core::quantity::{
    Entry, Unit, in_amperes, in_feet, in_feet_per_second, in_gallons, in_gpm, in_hertz, in_horsepower, in_inches,
    in_minutes, in_pounds, in_psi, psi,
};
use wellwright_core::water::friction::Regime;

pub const HOUSE: &str = include_str!("../../core/examples/jobs/house_and_stock_well.json");
pub const FIELD: &str = include_str!("../../core/examples/jobs/field_surface_pump.json");

pub fn job(text: &str) -> Job {
    wire::read_text(text).unwrap()
}

fn evaluated(text: &str) -> Evaluation {
    let answer = evaluate(&job(text));
    assert!(answer.errors.is_empty(), "{:?}", answer.errors);
    assert!(answer.water.waits_for.is_empty(), "{:?}", answer.water.waits_for);
    answer
}

/// True where a value rounds to the digits that are printed.
#[track_caller]
pub fn prints(value: f64, decimals: usize, printed: &str) {
    assert_eq!(format!("{value:.decimals$}"), printed);
}

/// Codes and severities of what is found, but what is merely unusual.
fn found(answer: &Evaluation) -> Vec<(&'static str, Severity)> {
    let told = answer.findings.iter().filter(|finding| !matches!(finding, Finding::BeyondUsual { .. }));
    told.map(|finding| (finding.code(), finding.severity())).collect()
}

#[test]
fn the_levels_in_the_well() {
    let water = evaluated(HOUSE).water;
    prints(in_feet(water.drawdown.unwrap()), 3, "41.667");
    prints(in_feet(water.pumping_level.unwrap()), 2, "471.67");
    prints(in_feet(water.submergence.unwrap()), 2, "148.33");
    // 190 ft of water above the pump at rest, 0.60 gpm for each.
    prints(in_gpm(water.well_gives.unwrap()), 1, "114.0");
}

#[test]
fn the_head_of_the_well_part_by_part() {
    let water = evaluated(HOUSE).water;
    let (system, head) = (water.system.unwrap(), water.head.unwrap());
    assert_eq!(system.pipes.iter().map(|pipe| pipe.part).collect::<Vec<_>>(), [Part::Drop, Part::Surface]);
    prints(in_inches(system.pipes[0].inside.value), 3, "1.610");
    assert_eq!((system.pipes[0].inside.origin, system.pipes[1].inside.origin), (Origin::Table, Origin::Typed));
    let [drop, surface] = [0, 1].map(|at| head.sections[at]);
    prints(in_feet_per_second(drop.darcy_weisbach.velocity), 3, "3.940");
    let friction = drop.darcy_weisbach.friction.unwrap();
    prints(friction.factor, 6, "0.024781");
    assert_eq!(friction.regime, Regime::Turbulent);
    prints(in_feet(drop.darcy_weisbach.head), 3, "27.624");
    prints(in_feet(surface.darcy_weisbach.head), 3, "3.114");
    prints(in_feet(drop.fittings), 3, "2.171");
    assert_eq!(in_feet(surface.fittings), 0.0);
    prints(in_feet(head.lift), 2, "471.67");
    prints(in_feet(head.rise), 2, "4.00");
    prints(in_feet(head.pipe), 3, "30.738");
    prints(in_feet(head.fittings), 3, "2.171");
    prints(in_feet(head.pressure), 2, "138.54");
    prints(in_feet(head.velocity), 3, "0.241");
    prints(in_feet(head.total()), 2, "647.35");
}

#[test]
fn the_power_and_the_load_of_the_well_s_motor() {
    let answer = evaluated(HOUSE);
    let pump = answer.water.pump.as_ref().unwrap();
    let duty = pump.duty.unwrap();
    prints(in_gpm(duty.flow), 6, "25.000000");
    prints(in_feet(duty.head), 2, "647.35");
    prints(in_horsepower(duty.shaft), 4, "6.8145");
    let motor = answer.motor.unwrap();
    prints(100.0 * motor.share.of_rating, 1, "90.9");
    // Of 7.5 hp times 1.15.
    prints(100.0 * motor.share.of_service_factor, 1, "79.0");
    prints(in_horsepower(motor.standard.unwrap()), 1, "7.5");
    assert!(!motor.light);
    // 6.8145 · 745.7/(√3 · 230 · 0.78 · 0.80) and half of it, by hand; of 25.9 A and 13.0 A.
    let [low, high] = motor.running.map(|amps| in_amperes(amps.unwrap()));
    prints(low, 2, "20.44");
    prints(high, 2, "10.22");
    let [of_low, of_high] = motor.of_service_amps.map(|share| 100.0 * share.unwrap());
    prints(of_low, 1, "78.9");
    prints(of_high, 1, "78.6");
    prints(in_hertz(pump.lowest.unwrap()), 2, "50.14");
}

/// Without a motor's power the power at the shaft chooses the same motor, and the answer is the same.
#[test]
fn the_well_chooses_its_own_motor() {
    let mut left = job(HOUSE);
    left.set(Field::MotorPower, None);
    let (answer, typed) = (evaluate(&left), evaluated(HOUSE));
    let power = answer.inputs.motor_power.as_ref().unwrap();
    prints(in_horsepower(power.value), 1, "7.5");
    assert_eq!((power.origin, answer.inputs.origin(Field::MotorPower)), (Origin::WorkedOut, Origin::WorkedOut));
    let stand_in = answer.inputs.stand_in(Field::MotorPower).unwrap();
    assert_eq!(stand_in.unit, Unit::Horsepower);
    prints(stand_in.value, 9, "7.500000000");
    assert_eq!((answer.here, answer.motor, answer.findings), (typed.here, typed.motor, typed.findings));
}

#[test]
fn the_well_against_a_shut_valve() {
    let answer = evaluated(HOUSE);
    let dead = answer.water.dead_head.unwrap();
    prints(in_psi(dead.gauge), 0, "167");
    prints(in_psi(dead.pump.unwrap()), 1, "437.4");
    assert!(dead.over && dead.rating.value == psi(125.0) && dead.rating.origin == Origin::Typed);
    assert_eq!(dead.relief, None, "no curve tells what a relief valve has to pass");
    let stop = answer.findings.iter().find(|finding| finding.code() == "DEADHEAD_OVER_RATING").unwrap();
    assert_eq!(stop.severity(), Severity::Stop);
}

#[test]
fn the_cooling_of_the_well_s_motor() {
    let mut least = job(HOUSE);
    let cooling = evaluate(&least).water.cooling.unwrap();
    prints(in_feet_per_second(cooling.speed), 3, "0.449");
    prints(in_feet_per_second(cooling.advised), 2, "0.25");
    prints(in_gpm(cooling.least_flow), 1, "13.9");
    assert!(found(&evaluate(&least)).iter().all(|(code, _)| *code != "MOTOR_COOLING_LOW"));
    // Where 5 gpm are drawn for long a sleeve is needed, and the one that is told just does.
    least.set(Field::LeastFlow, Some(Entry::new(5.0, Unit::GallonPerMinute)));
    let answer = evaluate(&least);
    let told = answer.findings.iter().find_map(|finding| match finding {
        Finding::MotorCoolingLow { sleeve, least_flow, .. } => Some((*sleeve, *least_flow)),
        _ => None,
    });
    let (sleeve, flow) = told.unwrap();
    prints(in_gpm(flow), 1, "13.9");
    least.set(Field::SleeveInside, Some(Entry::new(in_inches(sleeve.unwrap()), Unit::Inch)));
    prints(in_feet_per_second(evaluate(&least).water.cooling.unwrap().speed), 6, "0.250000");
}

#[test]
fn the_tank_of_the_well() {
    let entered = job(HOUSE);
    assert_eq!(entered.get(Field::TankPrecharge), None, "the precharge follows from the setpoint");
    let answer = evaluate(&entered);
    let tank = answer.water.tank.unwrap();
    prints(in_psi(tank.band.barometric), 3, "12.416");
    prints(in_psi(tank.band.precharge), 6, "42.000000");
    prints(in_psi(tank.band.cut_in), 6, "55.000000");
    prints(in_psi(tank.band.cut_out), 6, "60.000000");
    prints(in_gallons(tank.drawdown), 3, "2.452");
    // 2.452 gal at 25 gpm.
    prints(60.0 * in_minutes(tank.run_time.unwrap()), 1, "5.9");
    assert_eq!(tank.starts, None, "a pump on a drive is not switched");
    let stand_in = answer.inputs.stand_in(Field::TankPrecharge).unwrap();
    assert_eq!(stand_in.unit, Unit::PoundPerSquareInch);
    prints(stand_in.value, 6, "42.000000");
    // Entered, it changes nothing; neither does the cut-in that would be assumed, 5 psi under the setpoint.
    let mut typed = job(HOUSE);
    typed.set(Field::TankPrecharge, Some(Entry::new(42.0, Unit::PoundPerSquareInch)));
    typed.set(Field::CutIn, None);
    prints(in_gallons(evaluate(&typed).water.tank.unwrap().drawdown), 3, "2.452");
    // Air to the very cut-in still leaves all between the two: 44 · 67.416 · (1/67.416 − 1/72.416), by hand.
    typed.set(Field::TankPrecharge, Some(Entry::new(55.0, Unit::PoundPerSquareInch)));
    prints(in_gallons(evaluate(&typed).water.tank.unwrap().drawdown), 3, "3.038");
}

#[test]
fn the_surge_and_the_weight_of_the_well_s_string() {
    let water = evaluated(HOUSE).water;
    let surge = water.surge.unwrap();
    assert_eq!(surge.part, Part::Drop);
    prints(in_psi(surge.rise), 0, "243");
    let hanging = water.hanging.unwrap();
    prints(in_pounds(hanging.water), 0, "547");
    assert_eq!((in_pounds(hanging.pump), in_pounds(hanging.cable)), (0.0, 0.0));
    // The worked figure is 2,233 with the 2.72 lb/ft that the standard prints; from the wall itself the pipe weighs
    // 2.7203 lb/ft and all of it half a pound more.
    prints(in_pounds(hanging.total()), 1, "2233.5");
}

#[test]
fn what_is_found_about_the_well() {
    use Severity::{Caution, Note, Stop};
    let expected = [
        ("DEADHEAD_OVER_RATING", Stop),
        // Of the way that it goes by, which doubles the volts: 45 °C and 1,400 m, 1.08 and 4.40 % of drop, 96.6 % of the
        // motor's volts, and a device of 60 A where the 15 hp frame draws 64.5 A; of the utility nothing is known.
        ("HEAT_OR_ALTITUDE", Caution),
        ("SUPPLY_DROP_HIGH", Caution),
        ("MOTOR_VOLTS_LOW", Caution),
        ("DEVICE_PROVISIONAL", Caution),
        ("TRANSFORMER_OR_UTILITY", Caution),
        ("COOLS_ABOVE", Note),
        ("GROUND_WIRE_GREW", Note),
    ];
    let answer = evaluated(HOUSE);
    assert_eq!(found(&answer), expected);
    let unusual: Vec<_> = answer.findings.iter().filter(|one| matches!(one, Finding::BeyondUsual { .. })).collect();
    let [Finding::BeyondUsual { field, usual }] = unusual[..] else { panic!("{unusual:?}") };
    assert_eq!((*field, *usual), (Field::Ambient, Entry::new(40.0, Unit::DegreeCelsius)));
}

#[test]
fn the_report_of_the_well_says_the_same() {
    let report = report("", &evaluated(HOUSE));
    let value = |path: &str| report.pointer(&format!("{path}/value")).and_then(Value::as_f64).unwrap();
    for (path, decimals, printed) in [
        ("/levels/drawdown", 3, "41.667"),
        ("/levels/pumping_level", 2, "471.67"),
        ("/water/flow", 1, "25.0"),
        ("/water/head/pipe", 3, "30.738"),
        ("/water/head/fittings", 3, "2.171"),
        ("/water/head/pressure", 2, "138.54"),
        ("/water/head/velocity", 3, "0.241"),
        ("/water/head/total", 2, "647.35"),
        ("/water/pump/duty/shaft", 4, "6.8145"),
        ("/water/pump/duty/efficiency", 1, "60.0"),
        ("/water/pump/lowest_frequency", 2, "50.14"),
        ("/water/dead_head/gauge", 0, "167"),
        ("/water/cooling/speed", 3, "0.449"),
        ("/water/cooling/least_flow", 1, "13.9"),
        ("/water/tank/precharge", 1, "42.0"),
        ("/water/tank/drawdown", 3, "2.452"),
        ("/water/surge/rise", 0, "243"),
        ("/water/hanging/total", 1, "2233.5"),
        ("/motor/of_rating", 1, "90.9"),
        ("/motor/running_240", 2, "20.44"),
    ] {
        prints(value(path), decimals, printed);
    }
}

/// 800 gpm, 80 °F, lifted 10 ft at 900 m above the sea.
#[test]
fn the_surface_pump() {
    let answer = evaluated(FIELD);
    let water = &answer.water;
    let system = water.system.as_ref().unwrap();
    assert_eq!(system.pipes.iter().map(|pipe| pipe.part).collect::<Vec<_>>(), [Part::Suction, Part::Surface]);
    assert!(matches!(system.lift, Lift::Open(lift) if (in_feet(lift) - 10.0).abs() < 1e-12));
    prints(in_feet(water.head.as_ref().unwrap().total()), 2, "194.42");
    let suction = water.suction.unwrap();
    prints(in_feet(suction.barometric), 3, "30.538");
    prints(in_feet(suction.vapor), 3, "1.175");
    prints(in_feet(suction.lift), 3, "10.000");
    prints(in_feet(suction.pipe), 3, "0.281");
    prints(in_feet(suction.fittings), 3, "0.782");
    prints(in_feet(suction.available()), 2, "18.30");
    prints(in_horsepower(water.shaft().unwrap()), 2, "50.26");
    let motor = answer.motor.unwrap();
    prints(100.0 * motor.share.of_rating, 1, "83.8");
    // A motor on the surface that a drive feeds has no service factor to spare.
    assert_eq!(motor.share.of_service_factor, motor.share.of_rating);
    prints(in_horsepower(motor.standard.unwrap()), 0, "60");
    // No well, no level, nothing that hangs.
    assert!(water.pumping_level.is_none() && water.submergence.is_none() && water.well_gives.is_none());
    assert!(water.hanging.is_none() && water.cooling.is_none() && water.dead_head.is_none());
}

/// The worked current of the motor at its full load, 60 hp at 460 V with 0.936 and 0.86: 69.76 A. A nameplate that says so
/// agrees with itself, though the table says 77 A.
#[test]
fn the_nameplate_of_the_surface_pump_s_motor() {
    let mut job = job(FIELD);
    job.set(Field::NameplateAmps460, Some(Entry::new(69.76, Unit::Ampere)));
    let answer = evaluate(&job);
    assert!(answer.findings.iter().all(|finding| finding.code() != "NAMEPLATE_DISAGREES"));
    prints(in_amperes(answer.inputs.motor_current[Way::V480 as usize].as_ref().unwrap().sizing), 1, "77.0");
    job.set(Field::NameplateAmps460, Some(Entry::new(90.0, Unit::Ampere)));
    let answer = evaluate(&job);
    let told = answer.findings.iter().find_map(|finding| match finding {
        Finding::NameplateDisagrees { way: Way::V480, expected, .. } => Some(*expected),
        _ => None,
    });
    prints(in_amperes(told.unwrap()), 2, "69.76");
}

/// Its lead is the 30 ft to the motor, and its discharge pipe of plastic is a little fast: 5.32 ft/s, by hand.
#[test]
fn the_lead_and_the_findings_of_the_surface_pump() {
    let answer = evaluated(FIELD);
    let here = answer.here.as_ref().unwrap();
    prints(in_feet(here.lead), 6, "30.000000");
    prints(in_feet(here.depth), 6, "30.000000");
    prints(in_feet(here.order), 1, "30.9");
    assert!(here.ways.iter().all(Option::is_some));
    assert!(answer.deeper.is_none(), "no well to be deeper");
    // Its pump has no curve, so that a shut valve is not known. Of the low-harmonic drive that it goes by: a dV/dt filter, a device that stands in until its marking is known, a
    // utility of which nothing is known, and a supply of 480 V whose ground is not told.
    let told = [
        "DEADHEAD_UNKNOWN",
        "PIPE_FAST",
        "LEAD_NEEDS_FILTER",
        "DEVICE_PROVISIONAL",
        "TRANSFORMER_OR_UTILITY",
        "SUPPLY_GROUNDING",
    ];
    assert_eq!(found(&answer), told.map(|code| (code, Severity::Caution)));
    let fast = answer.findings.iter().find_map(|finding| match finding {
        Finding::PipeFast { part, velocity, usual } => Some((*part, *velocity, *usual)),
        _ => None,
    });
    let (part, velocity, usual) = fast.unwrap();
    assert_eq!((part, in_feet_per_second(usual)), (Part::Surface, 5.0));
    prints(in_feet_per_second(velocity), 2, "5.32");
}
