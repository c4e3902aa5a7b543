//! Pump curves, speed, operating points, power, and the load, current and unbalance of the motor.

use super::inputs::Inputs;
use super::{Answer, Answered};
use wellwright_core::numeric::pchip::Pchip;
use wellwright_core::power::supply::drive_input_current;
use wellwright_core::pump::affinity::{flow_at, head_at, power_at, speed_ratio};
use wellwright_core::pump::curve::PumpCurve;
use wellwright_core::pump::operating_point::{
    OperatingPoint, SystemCurve, lowest_speed, operating_point, share_of_best, speed_for,
};
use wellwright_core::pump::power::{
    assumed_efficiency, largest_shaft_power, overall_efficiency, shaft_power, shaft_power_of, trade_shaft_power,
    water_power,
};
use wellwright_core::pump::unbalance::{current_unbalance, derated_power, voltage_unbalance};
use wellwright_core::pump::{demo, motor};
use wellwright_core::quantity::{
    Length, MassDensity, Power, VolumeRate, amperes, cubic_meters_per_hour, feet, gpm, hertz, horsepower, in_feet,
    in_gpm, in_horsepower, in_kilowatts, kilograms_per_cubic_meter, kilowatts, volts,
};
use wellwright_core::standards::unbalance::MOST_PERCENT;

type Number = Result<f64, String>;

/// The answer to a quantity of this file, or `None` where it is not one.
pub fn answer(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Answered> {
    let number = on_a_curve(quantity, unit, inputs)
        .or_else(|| of_power(quantity, unit, inputs))
        .or_else(|| of_a_motor(quantity, unit, inputs))?;
    Some(number.map(Answer::Number))
}

fn on_a_curve(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("joined value", "1") => joined(inputs, Pchip::value),
        ("joined slope", "1") => joined(inputs, Pchip::slope),
        ("operating flow", "gpm") => meeting(inputs).map(|point| in_gpm(point.flow)),
        ("operating head", "ft") => meeting(inputs).map(|point| in_feet(point.head)),
        ("speed for a flow and head", "1") => wanted_speed(inputs),
        ("shaft power on the curve", "hp") => power_on_curve(inputs),
        ("largest shaft power", "hp") => largest(inputs),
        ("lowest frequency", "Hz") => lowest(inputs),
        ("share of best efficiency", "1") => of_best(inputs),
        _ => return None,
    })
}

fn of_power(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("trade constant", "gpm ft/hp") => constant(inputs),
        ("water power", "hp") => water(inputs).map(in_horsepower),
        ("shaft power", "hp") => shaft(inputs).map(in_horsepower),
        ("trade shaft power", "hp") => trade(inputs),
        ("overall efficiency", "1") => overall(inputs),
        ("assumed efficiency", "1") => flow(inputs).and_then(|flow| assumed_efficiency(flow).map_err(shown)),
        ("flow at speed", "gpm") => at_speed(flow(inputs), inputs, flow_at).map(in_gpm),
        ("head at speed", "ft") => at_speed(head(inputs), inputs, head_at).map(in_feet),
        ("power at speed", "kW") => {
            at_speed(inputs.number("power_kw").map(kilowatts), inputs, power_at).map(in_kilowatts)
        }
        ("shaft power at speed", "hp") => at_speed(shaft(inputs), inputs, power_at).map(in_horsepower),
        _ => return None,
    })
}

fn of_a_motor(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("next standard power", "hp") => standard(inputs),
        ("running current", "A") => running(inputs),
        ("supply current over motor current", "1") => supply_over_motor(inputs),
        ("share of rating", "%") => load(inputs).map(|load| 100.0 * load.of_rating),
        ("share of service factor", "%") => load(inputs).map(|load| 100.0 * load.of_service_factor),
        ("share of service-factor current", "%") => of_service_factor_current(inputs),
        ("voltage unbalance", "%") => lines(inputs).and_then(|lines| percent(voltage_unbalance(lines.map(volts)))),
        ("current unbalance", "%") => lines(inputs).and_then(|lines| percent(current_unbalance(lines.map(amperes)))),
        ("derated power", "hp") => derated(inputs),
        ("most unbalance", "%") => Ok(MOST_PERCENT),
        _ => return None,
    })
}

fn shown(error: impl std::fmt::Debug) -> String {
    format!("{error:?}")
}

fn percent(share: Result<f64, impl std::fmt::Debug>) -> Number {
    share.map(|share| 100.0 * share).map_err(shown)
}

fn numbers(inputs: &Inputs, name: &str) -> Result<Vec<f64>, String> {
    let parse = |text: &str| text.parse::<f64>().map_err(|_| format!("{name}: {text} is no number"));
    inputs.text(name)?.split_whitespace().map(parse).collect()
}

fn flow(inputs: &Inputs) -> Result<VolumeRate, String> {
    if inputs.has("flow_cfs") {
        // A cubic foot is 0.3048³ m³.
        return inputs.number("flow_cfs").map(|flow| cubic_meters_per_hour(flow * 3600.0 * 0.3048f64.powi(3)));
    }
    inputs.number("flow_gpm").map(gpm)
}

fn head(inputs: &Inputs) -> Result<Length, String> {
    inputs.number("head_ft").map(feet)
}

fn density(inputs: &Inputs) -> Result<MassDensity, String> {
    inputs.number("density").map(kilograms_per_cubic_meter)
}

fn pump(inputs: &Inputs) -> Result<PumpCurve, String> {
    let name = inputs.text("pump")?;
    let pump = demo::ALL.into_iter().find(|pump| pump.key == name).ok_or_else(|| format!("pump {name}"))?;
    pump.curve().map_err(shown)
}

fn joined(inputs: &Inputs, read: fn(&Pchip, f64) -> Option<f64>) -> Number {
    let points: Vec<(f64, f64)> = numbers(inputs, "x")?.into_iter().zip(numbers(inputs, "y")?).collect();
    let curve = Pchip::through(&points).ok_or("no curve")?;
    read(&curve, inputs.number("at")?).ok_or_else(|| "outside".into())
}

fn meeting(inputs: &Inputs) -> Result<OperatingPoint, String> {
    let system = SystemCurve {
        static_head: feet(inputs.number("static_ft")?),
        loss: feet(inputs.number("loss_ft")?),
        at: gpm(inputs.number("at_gpm")?),
        exponent: inputs.number("exponent")?,
    };
    operating_point(&pump(inputs)?, inputs.number("ratio")?, |flow| system.head(flow)).map_err(shown)
}

fn wanted_speed(inputs: &Inputs) -> Number {
    speed_for(&pump(inputs)?, flow(inputs)?, head(inputs)?).map_err(shown)
}

fn power_on_curve(inputs: &Inputs) -> Number {
    let power = shaft_power_of(&pump(inputs)?, flow(inputs)?, inputs.number("ratio")?, density(inputs)?);
    power.map_err(shown)?.map(in_horsepower).ok_or_else(|| "not known".into())
}

fn largest(inputs: &Inputs) -> Number {
    let largest = largest_shaft_power(&pump(inputs)?, inputs.number("ratio")?, density(inputs)?);
    largest.map_err(shown)?.map(|(_, power)| in_horsepower(power)).ok_or_else(|| "not known".into())
}

fn lowest(inputs: &Inputs) -> Number {
    let length = |name| inputs.number(name).map(feet);
    let ratio = lowest_speed(length("shut_off_ft")?, length("static_lift_ft")?, length("setpoint_ft")?);
    ratio.map(|ratio| 60.0 * ratio).map_err(shown)
}

fn ratio(inputs: &Inputs) -> Number {
    // Speeds in the ratio of two frequencies; only the ratio counts.
    let rated = inputs.number("rated_rpm")?;
    speed_ratio(hertz(60.0 * inputs.number("rpm")? / rated), hertz(60.0)).map_err(shown)
}

fn of_best(inputs: &Inputs) -> Number {
    share_of_best(flow(inputs)?, ratio(inputs)?, gpm(inputs.number("best_gpm")?)).map_err(shown)
}

fn at_speed<T, E: std::fmt::Debug>(
    figure: Result<T, String>,
    inputs: &Inputs,
    law: fn(T, f64) -> Result<T, E>,
) -> Result<T, String> {
    law(figure?, ratio(inputs)?).map_err(shown)
}

/// Gallons per minute times feet in one horsepower of water power.
fn constant(inputs: &Inputs) -> Number {
    let power = water_power(density(inputs)?, gpm(100.0), feet(100.0)).map_err(shown)?;
    Ok(1e4 / in_horsepower(power))
}

fn water(inputs: &Inputs) -> Result<Power, String> {
    water_power(density(inputs)?, flow(inputs)?, head(inputs)?).map_err(shown)
}

fn shaft(inputs: &Inputs) -> Result<Power, String> {
    shaft_power(water(inputs)?, inputs.number("efficiency")?).map_err(shown)
}

fn trade(inputs: &Inputs) -> Number {
    let (gravity, efficiency) = (inputs.number("specific_gravity")?, inputs.number("efficiency")?);
    trade_shaft_power(flow(inputs)?, head(inputs)?, gravity, efficiency).map(in_horsepower).map_err(shown)
}

fn overall(inputs: &Inputs) -> Number {
    overall_efficiency(water(inputs)?, kilowatts(inputs.number("input_kw")?)).map_err(shown)
}

fn standard(inputs: &Inputs) -> Number {
    motor::next_standard_power(horsepower(inputs.number("shaft_hp")?)).map(in_horsepower).map_err(shown)
}

fn running(inputs: &Inputs) -> Number {
    let (shaft, voltage) = (horsepower(inputs.number("shaft_hp")?), volts(inputs.number("voltage")?));
    let current = motor::running_current(shaft, voltage, inputs.number("efficiency")?, inputs.number("power_factor")?);
    current.map(|current| current.value).map_err(shown)
}

/// Single-phase current of a drive over the current of its motor at the same voltage.
fn supply_over_motor(inputs: &Inputs) -> Number {
    let (power, voltage) = (horsepower(inputs.number("hp")?), volts(inputs.number("voltage")?));
    let efficiency = inputs.number("motor_efficiency")?;
    let (drive, factor) = (inputs.number("drive_efficiency")?, inputs.number("supply_power_factor")?);
    let supply = drive_input_current(power, efficiency, drive, voltage, factor).map_err(shown)?;
    let motor = motor::running_current(power, voltage, efficiency, inputs.number("motor_power_factor")?);
    Ok(supply.value / motor.map_err(shown)?.value)
}

fn load(inputs: &Inputs) -> Result<motor::LoadShare, String> {
    let (shaft, rated) = (horsepower(inputs.number("shaft_hp")?), horsepower(inputs.number("rated_hp")?));
    motor::load_share(shaft, rated, inputs.number("service_factor")?).map_err(shown)
}

fn of_service_factor_current(inputs: &Inputs) -> Number {
    let (running, most) = (amperes(inputs.number("running_a")?), amperes(inputs.number("service_factor_a")?));
    percent(motor::share_of_service_factor_current(running, most))
}

fn lines(inputs: &Inputs) -> Result<[f64; 3], String> {
    numbers(inputs, "lines")?.try_into().map_err(|lines| format!("not three lines: {lines:?}"))
}

fn derated(inputs: &Inputs) -> Number {
    let (rated, unbalance) = (inputs.number("rated_hp")?, inputs.number("unbalance_percent")?);
    derated_power(horsepower(rated), unbalance / 100.0).map(in_horsepower).map_err(shown)
}
