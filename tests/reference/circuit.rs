//! Ampacity, equipment ground and devices.

use super::inputs::Inputs;
use super::{Answer, Answered};
use wellwright_core::cable::ampacity::{Setting, ampacity, required_ampacity, terminal_rating};
use wellwright_core::cable::drop::{Load, Phases};
use wellwright_core::cable::ground::{equipment_ground, grown_ground};
use wellwright_core::cable::lead::{Demands, runs};
use wellwright_core::cable::reactance::Build;
use wellwright_core::pump::motor::sizing_current;
use wellwright_core::quantity::{Celsius, ElectricCurrent, amperes, in_amperes, volts};
use wellwright_core::standards::ambient::{ambient_factor, bundle_factor};
use wellwright_core::standards::ampacity::table_310_16;
use wellwright_core::standards::conductor::Size;
use wellwright_core::standards::overcurrent::{STANDARD_RATINGS, next_standard_rating};

/// The answer to a quantity of this file, or `None` where it is not one.
pub fn answer(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Answered> {
    Some(match (quantity, unit) {
        ("table ampacity", "A") => table_ampacity(inputs).map(or_none),
        ("ambient factor", "1") => factor(inputs).map(or_none),
        ("bundle factor", "1") => count(inputs, "conductors").map(bundle_factor).map(Answer::Number),
        ("ampacity", "A") => corrected(inputs).map(or_none),
        ("terminal rating", "degC") => terminals(inputs).map(Answer::Number),
        ("equipment ground", "size") => ground(inputs).map(named),
        ("grown ground", "size") => grown(inputs).map(named),
        ("standard rating", "A") => rating(inputs).map(or_none),
        ("next standard rating", "A") => inputs.number("current_a").map(next_standard_rating).map(or_none),
        ("required ampacity", "A") => required(inputs).map(in_amperes).map(Answer::Number),
        ("smallest by ampacity", "size") => smallest(inputs).map(named),
        _ => return None,
    })
}

fn or_none(number: Option<f64>) -> Answer {
    number.map_or_else(|| Answer::Text("none".into()), Answer::Number)
}

fn named(size: Size) -> Answer {
    Answer::Text(format!("{} {}", size.designation(), size.gauge()))
}

fn count(inputs: &Inputs, name: &str) -> Result<usize, String> {
    inputs.text(name)?.parse().map_err(|_| format!("{name} is no count"))
}

fn table_ampacity(inputs: &Inputs) -> Result<Option<f64>, String> {
    Ok(table_310_16(inputs.size("size")?, inputs.metal()?, inputs.rating("column_c")?))
}

fn factor(inputs: &Inputs) -> Result<Option<f64>, String> {
    Ok(ambient_factor(inputs.celsius()?, inputs.rating("column_c")?))
}

fn corrected(inputs: &Inputs) -> Result<Option<f64>, String> {
    let setting = Setting {
        metal: inputs.metal()?,
        insulation: inputs.rating("insulation_c")?,
        terminals: inputs.rating("terminals_c")?,
        ambient: inputs.celsius()?,
    };
    Ok(ampacity(inputs.size("size")?, setting, count(inputs, "conductors")?).map(in_amperes))
}

fn terminals(inputs: &Inputs) -> Result<f64, String> {
    let marked = match inputs.text("marked_75")? {
        "yes" => true,
        "no" => false,
        other => return Err(format!("marked {other}")),
    };
    Ok(terminal_rating(amperes(inputs.number("required_a")?), marked).celsius())
}

fn ground(inputs: &Inputs) -> Result<Size, String> {
    equipment_ground(amperes(inputs.number("device_a")?), inputs.metal()?).map_err(|e| format!("{e:?}"))
}

fn grown(inputs: &Inputs) -> Result<Size, String> {
    let (from, to) = (inputs.size("from")?, inputs.size("to")?);
    Ok(grown_ground(inputs.size("ground")?, to.row().cmil / from.row().cmil, to))
}

fn rating(inputs: &Inputs) -> Result<Option<f64>, String> {
    Ok(STANDARD_RATINGS.get(count(inputs, "place")?.wrapping_sub(1)).copied())
}

fn required(inputs: &Inputs) -> Result<ElectricCurrent, String> {
    let nameplate = if inputs.has("nameplate_a") { Some(amperes(inputs.number("nameplate_a")?)) } else { None };
    Ok(required_ampacity(sizing_current(amperes(inputs.number("table_a")?), nameplate)))
}

/// The conductor of a lead so short that only ampacity counts, at 30 degC, insulation and terminals alike.
fn smallest(inputs: &Inputs) -> Result<Size, String> {
    let (required, rating) = (required(inputs)?, inputs.rating("column_c")?);
    let demands = Demands {
        load: Load { sending: volts(480.0), current: required / 1.25, power_factor: 0.85, phases: Phases::Three },
        required,
        setting: Setting { metal: inputs.metal()?, insulation: rating, terminals: rating, ambient: Celsius(30.0) },
        build: Build::PlasticConduit,
        allowed_drop: 0.05,
        most_sets: 1,
        device: amperes(60.0),
    };
    let runs = runs(&demands).map_err(|e| format!("{e:?}"))?;
    runs.first().map(|run| run.conductor.size).ok_or_else(|| "no size".into())
}
