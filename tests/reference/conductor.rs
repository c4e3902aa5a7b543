//! Conductors: geometry, tables 8 and 9, resistance, mass.

use super::inputs::Inputs;
use super::{Answer, Answered};
use uom::si::area::square_millimeter;
use uom::si::length::inch;
use wellwright_core::cable::conductor::{
    STRAND_LAY, awg_diameter, metal_mass, nominal_area, properties, resistance_at, resistance_from_geometry,
    round_area, table_resistance,
};
use wellwright_core::quantity::{
    Area, Celsius, KILOGRAM_PER_POUND, METER_PER_FOOT, MassPerLength, OhmsPerLength, circular_mils, in_circular_mils,
    in_ohms_per_kilofoot,
};
use wellwright_core::standards::conductor::{Metal, SOLID_COPPER};
use wellwright_core::standards::reactance::table_9;

const KFT: &str = "ohm/1000 ft";

/// The answer to a quantity of this file, or `None` where it is not one.
pub fn answer(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Answered> {
    let number = match (quantity, unit) {
        ("solid diameter", "in") => diameter(inputs),
        ("solid area", unit @ ("cmil" | "mm2")) => solid_area(inputs, "gauge").map(|area| in_unit(area, unit)),
        ("area", unit @ "mm2") => inputs.number("cmil").map(|cmil| in_unit(circular_mils(cmil), unit)),
        ("strand lay", "1") => Ok(STRAND_LAY),
        ("solid resistance", KFT) => {
            temperature(inputs).and_then(|t| from_geometry(inputs, solid_area(inputs, "gauge")?, 1.0, t))
        }
        ("resistance from geometry", KFT) => {
            temperature(inputs).and_then(|t| from_geometry(inputs, nominal_area(inputs.size("size")?), STRAND_LAY, t))
        }
        ("temperature coefficient at 75 degC", "1/K") => inputs.metal().map(|metal| properties(metal).coefficient_75),
        ("resistance ratio", "1") => ratio(inputs),
        ("resistance at temperature", KFT) => at_temperature(inputs),
        ("table resistance", KFT) => table(inputs).map(in_ohms_per_kilofoot),
        ("solid copper in the table", KFT) => solid_in_table(inputs),
        ("table area", "cmil") => inputs.size("size").map(|size| in_unit(size.row().area(), "cmil")),
        ("nominal area", "cmil") => inputs.size("size").map(|size| in_unit(nominal_area(size), "cmil")),
        ("strand diameter", "in") => inputs.size("size").map(|size| size.row().diameter().get::<inch>()),
        ("wires in the strand", "1") => inputs.size("size").map(|size| f64::from(size.row().wires)),
        ("table reactance", KFT) => reactance(inputs),
        ("solid copper mass", unit @ ("lb/1000 ft" | "kg/km")) => {
            solid_mass(inputs, "gauge").map(|mass| mass_in(mass, unit))
        }
        ("solid copper in a lead", "lb") => in_lead(inputs),
        ("solid copper mass ratio", "1") => mass_ratio(inputs),
        _ => return None,
    };
    Some(number.map(Answer::Number))
}

fn diameter(inputs: &Inputs) -> Result<f64, String> {
    let diameter = awg_diameter(inputs.gauge("gauge")?).map_err(|e| format!("{e:?}"))?;
    Ok(diameter.get::<inch>())
}

fn solid_area(inputs: &Inputs, name: &str) -> Result<Area, String> {
    awg_diameter(inputs.gauge(name)?).map(round_area).map_err(|e| format!("{e:?}"))
}

fn in_unit(area: Area, unit: &str) -> f64 {
    if unit == "cmil" { in_circular_mils(area) } else { area.get::<square_millimeter>() }
}

fn temperature(inputs: &Inputs) -> Result<Celsius, String> {
    inputs.number("temperature_c").map(Celsius)
}

fn from_geometry(inputs: &Inputs, area: Area, lay: f64, at: Celsius) -> Result<f64, String> {
    let resistance = resistance_from_geometry(inputs.metal()?, area, lay, at).map_err(|e| format!("{e:?}"))?;
    Ok(in_ohms_per_kilofoot(resistance))
}

fn ratio(inputs: &Inputs) -> Result<f64, String> {
    let at = |name: &str| from_geometry(inputs, circular_mils(1e5), 1.0, Celsius(inputs.number(name)?));
    Ok(at("at_c")? / at("over_c")?)
}

fn table(inputs: &Inputs) -> Result<OhmsPerLength, String> {
    Ok(table_resistance(inputs.size("size")?, inputs.metal()?))
}

fn at_temperature(inputs: &Inputs) -> Result<f64, String> {
    let resistance = resistance_at(table(inputs)?, inputs.metal()?, temperature(inputs)?);
    resistance.map(in_ohms_per_kilofoot).map_err(|e| format!("{e:?}"))
}

fn solid_in_table(inputs: &Inputs) -> Result<f64, String> {
    let size = inputs.size("size")?;
    let row = SOLID_COPPER.iter().find(|row| row.0 == size).ok_or("no solid row")?;
    Ok(row.1)
}

fn reactance(inputs: &Inputs) -> Result<f64, String> {
    let row = table_9(inputs.size("size")?);
    match inputs.text("conduit")? {
        "plastic" => Ok(row.plastic),
        "steel" => Ok(row.steel),
        other => Err(format!("conduit {other}")),
    }
}

fn solid_mass(inputs: &Inputs, name: &str) -> Result<MassPerLength, String> {
    Ok(metal_mass(Metal::Copper, solid_area(inputs, name)?, 1.0))
}

fn mass_in(mass: MassPerLength, unit: &str) -> f64 {
    let kilograms_per_kilometer = mass.value * 1e3;
    if unit == "kg/km" {
        kilograms_per_kilometer
    } else {
        kilograms_per_kilometer / KILOGRAM_PER_POUND * METER_PER_FOOT
    }
}

fn in_lead(inputs: &Inputs) -> Result<f64, String> {
    let per_kilofoot = mass_in(solid_mass(inputs, "gauge")?, "lb/1000 ft");
    Ok(per_kilofoot * inputs.number("conductors")? * inputs.number("length_ft")? / 1e3)
}

fn mass_ratio(inputs: &Inputs) -> Result<f64, String> {
    Ok((solid_mass(inputs, "gauge")? / solid_mass(inputs, "over")?).value)
}
