//! Families of equipment: derating, frames, bus, output and motor volts; enclosures; tables that they rest on.

use super::inputs::Inputs;
use super::{Answer, Answered};
use wellwright_core::power::derating::{Derated, derate};
use wellwright_core::power::family::{Bus, Class, Family, Kind};
use wellwright_core::power::fit::{
    EnclosureFit, FrameFit, enclosure_fit, fit_frame, next_size, plainest_enclosure, unmarked_short_circuit_rating,
};
use wellwright_core::power::generic::generic;
use wellwright_core::power::volts::{budget, runs_out_at};
use wellwright_core::quantity::{
    Celsius, amperes, hertz, horsepower, in_amperes, in_hertz, in_horsepower, in_meters, in_volts, meters, volts,
};
use wellwright_core::standards::enclosure::{Demand, EnclosureType, TABLE};
use wellwright_core::standards::ieee_519::VOLTAGE;
use wellwright_core::standards::single_phase_motor;

type Number = Result<f64, String>;

/// The answer to a quantity of this file, or `None` where it is not one.
pub fn answer(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Answered> {
    Some(match (quantity, unit) {
        ("frame", "hp") => frame(inputs),
        ("equipment size", "hp") => sized(inputs),
        ("plainest enclosure", "type") => plainest(inputs),
        ("enclosure lacks", "count") => lacks(inputs).map(Answer::Number),
        _ => of_numbers(quantity, unit, inputs)?.map(Answer::Number),
    })
}

fn of_numbers(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("single-phase table current", "A") => motor_table(inputs),
        ("voltage limit of one harmonic", "%") => voltage_limit(inputs).map(|row| row.1),
        ("voltage limit of all harmonics", "%") => voltage_limit(inputs).map(|row| row.2),
        ("altitude without derating", "m") => family(inputs).map(|family| in_meters(family.rating.altitude)),
        ("derating factor", "1") => derated(inputs).and_then(|place| place.factor().ok_or_else(|| "ask".into())),
        ("bus", "V") => bus(inputs),
        ("volts at the motor", "V") => at_motor(inputs),
        ("frequency that the volts last to", "Hz") => lasts(inputs),
        ("unmarked short-circuit rating", "A") => short_circuit(inputs),
        _ => return None,
    })
}

fn shown(error: impl std::fmt::Debug) -> String {
    format!("{error:?}")
}

fn family(inputs: &Inputs) -> Result<Family, String> {
    let kind = match inputs.text("family")? {
        "active" => Kind::ConvertingActive,
        "passive" => Kind::ConvertingPassive,
        "doubling" => Kind::Doubling,
        "low harmonic" => Kind::LargeLowHarmonic,
        "economy" => Kind::LargeEconomy,
        "derated" => Kind::DeratedDrive,
        "step-up active" => Kind::StepUpActive,
        "step-up passive" => Kind::StepUpPassive,
        "three-phase line" => Kind::ThreePhaseLine,
        "single-phase motor" => Kind::SinglePhaseMotor,
        other => return Err(format!("family {other}")),
    };
    let mut family = generic(kind);
    if inputs.has("rated_c") {
        family.rating.ambient = Celsius(inputs.number("rated_c")?);
    }
    Ok(family)
}

fn class(inputs: &Inputs) -> Result<Class, String> {
    match inputs.text("class")? {
        "240" => Ok(Class::Low),
        "480" => Ok(Class::High),
        other => Err(format!("class {other}")),
    }
}

fn motor_table(inputs: &Inputs) -> Number {
    let hp = inputs.number("hp")?;
    let row = single_phase_motor::TABLE.iter().find(|row| row.hp == hp).ok_or("no row")?;
    match inputs.text("rated_v")? {
        "115" => Ok(row.v115),
        "200" => Ok(row.v200),
        "208" => Ok(row.v208),
        "230" => Ok(row.v230),
        other => Err(format!("rated voltage {other}")),
    }
}

fn voltage_limit(inputs: &Inputs) -> Result<(f64, f64, f64), String> {
    let kv = inputs.number("kv")?;
    VOLTAGE.into_iter().find(|row| kv <= row.0).ok_or_else(|| "no row".into())
}

fn derated(inputs: &Inputs) -> Result<Derated, String> {
    let ambient = if inputs.has("ambient_c") { inputs.number("ambient_c")? } else { 30.0 };
    let altitude = if inputs.has("altitude_m") { inputs.number("altitude_m")? } else { 0.0 };
    derate(family(inputs)?.rating, Celsius(ambient), meters(altitude)).map_err(shown)
}

fn frame(inputs: &Inputs) -> Answered {
    let (required, motor) = (amperes(inputs.number("required_a")?), horsepower(inputs.number("motor_hp")?));
    let fit = fit_frame(&family(inputs)?, class(inputs)?, required, motor, derated(inputs)?).map_err(shown)?;
    Ok(match fit {
        FrameFit::Serves { frame, .. } => Answer::Number((in_horsepower(frame.power) * 1e9).round() / 1e9),
        FrameFit::CurrentShort { .. } => Answer::Text("current short".into()),
        FrameFit::SizeShort { .. } => Answer::Text("size short".into()),
        FrameFit::AskMaker(_) => Answer::Text("ask the maker".into()),
    })
}

fn sized(inputs: &Inputs) -> Answered {
    let size = next_size(&family(inputs)?, horsepower(inputs.number("motor_hp")?)).map_err(shown)?;
    Ok(size.map_or_else(|| Answer::Text("none".into()), |size| Answer::Number(in_horsepower(size))))
}

fn place(inputs: &Inputs) -> Result<Vec<Demand>, String> {
    let demand = |word: &str| match word {
        "weather" => Ok(Demand::Weather),
        "ice" => Ok(Demand::IceOnHandles),
        "drips" => Ok(Demand::Drips),
        "settling" => Ok(Demand::SettlingDust),
        "dust" => Ok(Demand::BlownDust),
        "hose" => Ok(Demand::Hose),
        "oil" => Ok(Demand::OilSeepage),
        "spray" => Ok(Demand::OilSpray),
        "corrosion" => Ok(Demand::Corrosion),
        "flood" => Ok(Demand::BriefFlood),
        "long" => Ok(Demand::LongFlood),
        other => Err(format!("demand {other}")),
    };
    inputs.text("place")?.split_whitespace().map(demand).collect()
}

fn plainest(inputs: &Inputs) -> Answered {
    let kind = plainest_enclosure(&place(inputs)?);
    Ok(Answer::Text(kind.map_or_else(|| "none".into(), |kind| kind.row().name.to_owned())))
}

fn lacks(inputs: &Inputs) -> Number {
    let name = inputs.text("type")?;
    let kind: EnclosureType = TABLE.iter().find(|row| row.name == name).ok_or("no type")?.kind;
    Ok(match enclosure_fit(kind, &place(inputs)?) {
        EnclosureFit::Serves => 0.0,
        EnclosureFit::Lacks(demands) => demands.len() as f64,
    })
}

fn bus(inputs: &Inputs) -> Number {
    let mut family = family(inputs)?;
    if inputs.has("rise") {
        let rise = inputs.number("rise")?;
        family.bus = match family.bus {
            Bus::Mean { .. } => Bus::Mean { rise },
            _ => Bus::Peak { rise },
        };
    }
    let bus = family.bus_volts(class(inputs)?, volts(inputs.number("supply_v")?)).map_err(shown)?;
    bus.map(in_volts).ok_or_else(|| "no bus".into())
}

fn at_motor(inputs: &Inputs) -> Number {
    let (supply, drop) = (volts(inputs.number("supply_v")?), volts(inputs.number("lead_drop_v")?));
    let found = budget(&family(inputs)?, class(inputs)?, supply, drop).map_err(shown)?;
    found.map(|budget| in_volts(budget.at_motor)).ok_or_else(|| "nothing left".into())
}

fn lasts(inputs: &Inputs) -> Number {
    let (at_motor, rated) = (volts(inputs.number("motor_v")?), volts(inputs.number("rated_v")?));
    runs_out_at(at_motor, rated, hertz(60.0)).map(in_hertz).map_err(shown)
}

fn short_circuit(inputs: &Inputs) -> Number {
    unmarked_short_circuit_rating(horsepower(inputs.number("hp")?)).map(in_amperes).map_err(shown)
}
