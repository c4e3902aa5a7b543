//! Water as a fluid, its friction, and the pipe that it runs in.

use super::inputs::Inputs;
use super::{Answer, Answered};
use wellwright_core::error::OutsideRange;
use wellwright_core::quantity::{
    Celsius, Length, MassDensity, VolumeRate, fahrenheit, feet, feet_per_second, gpm, in_feet, in_feet_per_second,
    in_inches, in_kilograms_per_cubic_meter, in_kilopascals, in_millimeters, in_pounds_per_foot, in_psi, inches,
    meters, psi,
};
use wellwright_core::standards::fittings::{FITTINGS, Fitting, fitting};
use wellwright_core::standards::pipe::{DimensionRatio, InsideRatio, PipeSize, Series, Surface};
use wellwright_core::water::fittings::{coefficient_of_diameters, equivalent_length, fitting_loss};
use wellwright_core::water::friction::{Pipe, PipeLoss, friction_factor, mean_velocity, pipe_loss, von_karman};
use wellwright_core::water::hazen_williams::hazen_williams_loss;
use wellwright_core::water::head::{pressure_head, pressure_of_head};
use wellwright_core::water::properties::{barometric_pressure, density, dynamic_viscosity, vapor_pressure, water};

type Number = Result<f64, String>;

pub fn told(error: OutsideRange) -> String {
    format!("{error:?}")
}

/// The answer to a quantity of this file, or `None` where it is not one.
pub fn answer(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Answered> {
    let number = fluid(quantity, unit, inputs)
        .or_else(|| friction(quantity, unit, inputs))
        .or_else(|| pipe(quantity, unit, inputs))
        .or_else(|| fittings(quantity, unit, inputs))?;
    Some(number.map(Answer::Number))
}

fn fluid(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    let t = || temperature(inputs);
    let at = |t: Celsius| density(t).map_err(told);
    Some(match (quantity, unit) {
        ("water density", "kg/m3") => t().and_then(at).map(in_kilograms_per_cubic_meter),
        ("water viscosity", "mPa s") => t().and_then(|t| dynamic_viscosity(t).map_err(told)).map(|mu| mu.value * 1e3),
        ("water kinematic viscosity", "mm2/s") => {
            t().and_then(|t| water(t).map_err(told)).map(|water| water.viscosity.value * 1e6)
        }
        ("vapor pressure", "kPa") => t().and_then(|t| vapor_pressure(t).map_err(told)).map(in_kilopascals),
        ("vapor pressure", "psi") => t().and_then(|t| vapor_pressure(t).map_err(told)).map(in_psi),
        ("vapor head", "ft") => t().and_then(|t| {
            let head = pressure_head(vapor_pressure(t).map_err(told)?, at(t)?);
            head.map(in_feet).map_err(told)
        }),
        ("head of a pressure", "ft") => {
            t().and_then(|t| pressure_head(psi(inputs.number("psi")?), at(t)?).map(in_feet).map_err(told))
        }
        ("barometric pressure", "kPa") => inputs
            .number("altitude_m")
            .and_then(|altitude| barometric_pressure(meters(altitude)).map_err(told))
            .map(in_kilopascals),
        _ => return None,
    })
}

pub fn temperature(inputs: &Inputs) -> Result<Celsius, String> {
    if inputs.has("t_f") { inputs.number("t_f").map(fahrenheit) } else { inputs.number("t_c").map(Celsius) }
}

pub fn water_density(inputs: &Inputs) -> Result<MassDensity, String> {
    density(temperature(inputs)?).map_err(told)
}

pub fn diameter(inputs: &Inputs) -> Result<Length, String> {
    if inputs.has("id_m") { inputs.number("id_m").map(meters) } else { inputs.number("id_in").map(inches) }
}

fn flow(inputs: &Inputs) -> Result<VolumeRate, String> {
    inputs.number("gpm").map(gpm)
}

/// The loss of a hundred feet.
fn hundred_feet(inputs: &Inputs) -> Result<PipeLoss, String> {
    let roughness = inputs.number("roughness_ft").map(feet)?;
    let pipe = Pipe { length: feet(100.0), inside_diameter: diameter(inputs)?, roughness };
    let viscosity = water(temperature(inputs)?).map_err(told)?.viscosity;
    pipe_loss(flow(inputs)?, pipe, viscosity).map_err(told)
}

fn friction(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    let factor = |loss: PipeLoss| loss.friction.ok_or_else(|| "still".to_owned());
    Some(match (quantity, unit) {
        ("friction factor", "1") if inputs.has("reynolds") => inputs.number("reynolds").and_then(|re| {
            let relative = inputs.number("relative_roughness")?;
            friction_factor(re, relative).map(|friction| friction.factor).map_err(told)
        }),
        ("friction factor", "1") => hundred_feet(inputs).and_then(factor).map(|friction| friction.factor),
        ("Reynolds number", "1") => hundred_feet(inputs).and_then(factor).map(|friction| friction.reynolds),
        ("pipe velocity", "ft/s") if inputs.has("t_f") => {
            hundred_feet(inputs).map(|loss| in_feet_per_second(loss.velocity))
        }
        ("pipe velocity", "ft/s") => {
            flow(inputs).and_then(|flow| mean_velocity(flow, diameter(inputs)?).map(in_feet_per_second).map_err(told))
        }
        ("Darcy-Weisbach loss", "ft/100 ft") => hundred_feet(inputs).map(|loss| in_feet(loss.head)),
        ("Hazen-Williams loss", "ft/100 ft") => hazen_williams(inputs).map(in_feet),
        ("Hazen-Williams loss", "psi/100 ft") => hazen_williams(inputs)
            .and_then(|head| pressure_of_head(head, water_density(inputs)?).map(in_psi).map_err(told)),
        _ => return None,
    })
}

fn hazen_williams(inputs: &Inputs) -> Result<Length, String> {
    let c = inputs.number("c")?;
    hazen_williams_loss(flow(inputs)?, diameter(inputs)?, feet(100.0), c).map_err(told)
}

fn surface(inputs: &Inputs) -> Result<Surface, String> {
    Ok(match inputs.text("surface")? {
        "commercial_steel" => Surface::CommercialSteel,
        "galvanized_steel" => Surface::GalvanizedSteel,
        "cast_iron" => Surface::CastIron,
        "plastic" => Surface::Plastic,
        other => return Err(format!("surface {other}")),
    })
}

fn size(inputs: &Inputs) -> Result<PipeSize, String> {
    let series = match inputs.text("series")? {
        "steel_40" => Series::SteelSchedule40,
        "pvc_40" => Series::PvcSchedule40,
        "pvc_80" => Series::PvcSchedule80,
        "sdr_21" => Series::PvcSdr21,
        "sdr_26" => Series::PvcSdr26,
        "dr_9" => Series::PolyethyleneDr(DimensionRatio::Dr9),
        "dr_11" => Series::PolyethyleneDr(DimensionRatio::Dr11),
        "dr_17" => Series::PolyethyleneDr(DimensionRatio::Dr17),
        "sidr_7" => Series::PolyethyleneSidr(InsideRatio::Sidr7),
        "sidr_9" => Series::PolyethyleneSidr(InsideRatio::Sidr9),
        "sidr_11.5" => Series::PolyethyleneSidr(InsideRatio::Sidr11_5),
        "sidr_15" => Series::PolyethyleneSidr(InsideRatio::Sidr15),
        "sidr_19" => Series::PolyethyleneSidr(InsideRatio::Sidr19),
        other => return Err(format!("series {other}")),
    };
    let nominal = inputs.text("nominal")?;
    series.named(nominal).ok_or_else(|| format!("no {nominal} in {series:?}"))
}

fn pipe(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("roughness", "ft") => surface(inputs).map(|surface| in_feet(surface.roughness())),
        ("Hazen-Williams coefficient", "1") => surface(inputs).map(Surface::hazen_williams),
        ("widest inside diameter", "mm") => size(inputs).map(|size| in_millimeters(size.widest_inside_diameter())),
        ("inside diameter", "in") => size(inputs).map(|size| in_inches(size.inside_diameter())),
        ("pipe wall", "mm") => size(inputs).map(|size| in_millimeters(size.wall())),
        ("pipe wall", "in") => size(inputs).map(|size| in_inches(size.wall())),
        ("mean wall", "in") => size(inputs).map(|size| in_inches(size.mean_wall())),
        ("pipe weight", "lb/ft") => size(inputs).map(|size| in_pounds_per_foot(size.mass_per_length())),
        _ => return None,
    })
}

/// The fitting of a name as it stands in the code, in small letters.
fn named(inputs: &Inputs) -> Result<Fitting, String> {
    let name = inputs.text("fitting")?;
    let plain = name.replace('_', "");
    let found = FITTINGS.iter().find(|row| format!("{:?}", row.fitting).to_lowercase() == plain);
    found.map(|row| row.fitting).ok_or_else(|| format!("fitting {name}"))
}

fn fittings(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("loss coefficient", "1") => named(inputs).and_then(|name| fitting(name).coefficient.ok_or("none".into())),
        ("loss coefficient by diameters", "1") => named(inputs).and_then(|name| {
            let diameters = fitting(name).diameters.ok_or("none")?;
            coefficient_of_diameters(diameters, diameter(inputs)?).map_err(told)
        }),
        ("full-turbulence friction", "1") => diameter(inputs)
            .and_then(|diameter| von_karman((Surface::CommercialSteel.roughness() / diameter).value).map_err(told)),
        ("fitting loss", "ft") => inputs.number("coefficient").and_then(|k| {
            let velocity = feet_per_second(inputs.number("velocity_fps")?);
            fitting_loss(k, velocity).map(in_feet).map_err(told)
        }),
        ("equivalent length", "ft") => inputs.number("coefficient").and_then(|k| {
            let length = equivalent_length(k, diameter(inputs)?, inputs.number("factor")?);
            length.map(in_feet).map_err(told)
        }),
        _ => return None,
    })
}
