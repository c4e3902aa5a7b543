//! Motor current, supply, voltage drop and loss.

use super::inputs::Inputs;
use super::{Answer, Answered};
use wellwright_core::cable::drop::{Load, Phases, approximate_drop, lead_loss, longest_lead, voltage_drop};
use wellwright_core::power::supply::{drive_input_current, true_power_factor};
use wellwright_core::pump::motor::{RatedVoltage, reconnected_current, table_current};
use wellwright_core::quantity::{
    Entry, OhmsPerLength, Unit, amperes, feet, horsepower, in_amperes, in_volts, in_watts, ohms_per_kilofoot, volts,
};

type Number = Result<f64, String>;

/// The answer to a quantity of this file, or `None` where it is not one.
pub fn answer(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Answered> {
    let number = match (quantity, unit) {
        ("table current", "A") => motor_table(inputs),
        ("reconnected current", "A") => reconnected(inputs),
        ("drive input current", "A") => input_current(inputs),
        ("true power factor", "1") => power_factor(inputs),
        ("converted", "degC") => converted(inputs),
        ("effective impedance", "ohm/1000 ft") => effective_impedance(inputs),
        ("approximate drop", "V") => approximate(inputs),
        ("exact drop", "V") => exact(inputs),
        ("exact drop", "%") => {
            exact(inputs).and_then(|drop| inputs.number("sending_v").map(|sending| 100.0 * drop / sending))
        }
        ("drop share ratio on doubling the voltage", "1") => doubled(inputs),
        ("drop at the longest lead", "V") => at_longest(inputs),
        ("area ratio for equal drop", "1") => area_ratio(inputs),
        ("lead loss", "W") => loss(inputs),
        _ => return None,
    };
    Some(number.map(Answer::Number))
}

fn motor_table(inputs: &Inputs) -> Number {
    let column = match inputs.text("rated_v")? {
        "200" => RatedVoltage::V200,
        "208" => RatedVoltage::V208,
        "230" => RatedVoltage::V230,
        "460" => RatedVoltage::V460,
        other => return Err(format!("rated voltage {other}")),
    };
    let current = table_current(horsepower(inputs.number("hp")?), column).map_err(|e| format!("{e:?}"))?;
    Ok(in_amperes(current))
}

fn reconnected(inputs: &Inputs) -> Number {
    let current = amperes(inputs.number("current_a")?);
    Ok(in_amperes(reconnected_current(current, inputs.number("from_v")?, inputs.number("to_v")?)))
}

fn input_current(inputs: &Inputs) -> Number {
    let current = drive_input_current(
        horsepower(inputs.number("hp")?),
        inputs.number("motor_efficiency")?,
        inputs.number("drive_efficiency")?,
        volts(inputs.number("supply_v")?),
        inputs.number("power_factor")?,
    );
    current.map(in_amperes).map_err(|e| format!("{e:?}"))
}

fn power_factor(inputs: &Inputs) -> Number {
    let distortion = inputs.number("distortion_percent")? / 100.0;
    true_power_factor(inputs.number("displacement")?, distortion).map_err(|e| format!("{e:?}"))
}

fn converted(inputs: &Inputs) -> Number {
    let from = match inputs.text("from")? {
        "degF" => Unit::DegreeFahrenheit,
        other => return Err(format!("unit {other}")),
    };
    Entry::new(inputs.number("value")?, from).to(Unit::DegreeCelsius).ok_or_else(|| "another kind".into())
}

fn impedance(inputs: &Inputs) -> Result<(OhmsPerLength, OhmsPerLength), String> {
    Ok((inputs.per_kilofoot("r_ohm_kft")?, inputs.per_kilofoot("x_ohm_kft")?))
}

fn load(inputs: &Inputs) -> Result<Load, String> {
    inputs.load(inputs.number("sending_v")?, inputs.number("current_a")?, inputs.phases()?)
}

/// One ampere through one conductor and back drops twice the effective impedance of a conductor.
fn effective_impedance(inputs: &Inputs) -> Number {
    let (r, x) = impedance(inputs)?;
    let drop = approximate_drop(inputs.load(240.0, 1.0, Phases::Single)?, r, x, feet(1000.0));
    drop.map(|drop| in_volts(drop) / 2.0).map_err(|e| format!("{e:?}"))
}

fn approximate(inputs: &Inputs) -> Number {
    let (r, x) = impedance(inputs)?;
    approximate_drop(load(inputs)?, r, x, inputs.length()?).map(in_volts).map_err(|e| format!("{e:?}"))
}

fn exact_of(load: Load, r: OhmsPerLength, x: OhmsPerLength, inputs: &Inputs) -> Number {
    let drop = voltage_drop(load, r, x, inputs.length()?).map_err(|e| format!("{e:?}"))?;
    drop.map(in_volts).ok_or_else(|| "can't be fed".into())
}

fn exact(inputs: &Inputs) -> Number {
    let (r, x) = impedance(inputs)?;
    exact_of(load(inputs)?, r, x, inputs)
}

/// The share that the usual approximation drops at 480 V over that at 240 V, same power, same conductor.
fn doubled(inputs: &Inputs) -> Number {
    let (r, x) = impedance(inputs)?;
    let power = horsepower(inputs.number("hp")?);
    let share = |sending: f64| {
        let load = inputs.load(sending, in_watts(power) / sending, Phases::Three)?;
        let drop = approximate_drop(load, r, x, inputs.length()?).map_err(|e| format!("{e:?}"))?;
        Ok::<f64, String>(in_volts(drop) / sending)
    };
    Ok(share(480.0)? / share(240.0)?)
}

/// The exact drop over the longest lead that a share allows.
fn at_longest(inputs: &Inputs) -> Number {
    let (r, x) = impedance(inputs)?;
    let load = inputs.load(inputs.number("sending_v")?, inputs.number("current_a")?, Phases::Three)?;
    let allowed = inputs.number("allowed_percent")? / 100.0;
    let length = longest_lead(load, r, x, allowed).map_err(|e| format!("{e:?}"))?;
    let drop = voltage_drop(load, r, x, length).map_err(|e| format!("{e:?}"))?;
    drop.map(in_volts).ok_or_else(|| "can't be fed".into())
}

/// Conductor area at 240 V over that at 480 V for the same share of drop, power and length: area goes as 1/resistance,
/// and the resistance is searched by halving.
fn area_ratio(inputs: &Inputs) -> Number {
    let current = inputs.number("current_a")?;
    let allowed = inputs.number("allowed_percent")? / 100.0;
    let resistance = |sending: f64, current: f64| {
        let load = inputs.load(sending, current, Phases::Three)?;
        let (mut low, mut high) = (0.0, 100.0);
        for _ in 0..200 {
            let middle: f64 = 0.5 * (low + high);
            match exact_of(load, ohms_per_kilofoot(middle), ohms_per_kilofoot(0.0), inputs) {
                Ok(drop) if drop <= allowed * sending => low = middle,
                _ => high = middle,
            }
        }
        Ok::<f64, String>(low)
    };
    Ok(resistance(480.0, current / 2.0)? / resistance(240.0, current)?)
}

/// The heat of a lead depends on neither voltage nor power factor.
fn loss(inputs: &Inputs) -> Number {
    let load = Load {
        sending: volts(240.0),
        current: amperes(inputs.number("current_a")?),
        power_factor: 1.0,
        phases: inputs.phases()?,
    };
    Ok(in_watts(lead_loss(load, inputs.per_kilofoot("r_ohm_kft")?, inputs.length()?)))
}
