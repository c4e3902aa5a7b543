//! What is asked of the well, how far the water falls, and what stands in the way of lifting it.

use super::inputs::Inputs;
use super::water_flow::{diameter, told, water_density};
use super::{Answer, Answered};
use wellwright_core::quantity::{
    Length, MassDensity, Pressure, Transmissivity, Velocity, VolumeRate, acres, days, feet, feet_per_second,
    feet_per_square_gallon_per_minute, gallons, gallons_per_day_per_foot, gallons_per_minute_per_foot, gpm, hectares,
    hours, in_feet, in_feet_per_second, in_gallons, in_gpm, in_meters, in_meters_per_second, in_minutes, in_pounds,
    in_psi, in_seconds, inches, kilograms_per_cubic_meter, meters, meters_per_second, millimeters, pounds,
    pounds_per_foot, psi, square_meters_per_day,
};
use wellwright_core::standards::water_use::User;
use wellwright_core::water::demand::{Depth, flow_for, household_volume, irrigation_volume, weekly_volume};
use wellwright_core::water::head::SuctionHead;
use wellwright_core::water::string::{Hung, hanging_load};
use wellwright_core::water::surge::{Shell, bulk_modulus, joukowsky, joukowsky_head, reflection_time, wave_speed};
use wellwright_core::water::tank::{
    Band, constant_pressure_precharge, most_starts, on_off_precharge, run_time, tank_drawdown, tank_for,
};
use wellwright_core::water::well::{
    Aquifer, cooper_jacob_drawdown, drawdown_by_capacity, flow_for_drawdown, theis_argument, theis_drawdown,
    well_function, well_loss,
};

type Number = Result<f64, String>;

/// The answer to a quantity of this file, or `None` where it is not one.
pub fn answer(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Answered> {
    let number = well(quantity, unit, inputs)
        .or_else(|| demand(quantity, unit, inputs))
        .or_else(|| surge(quantity, unit, inputs))
        .or_else(|| tank(quantity, unit, inputs))
        .or_else(|| string(quantity, unit, inputs))?;
    Some(number.map(Answer::Number))
}

fn flow(inputs: &Inputs) -> Result<VolumeRate, String> {
    if inputs.has("m3d") {
        return inputs.number("m3d").map(|flow| meters(1.0) * meters(1.0) * meters(flow) / days(1.0));
    }
    inputs.number("gpm").map(gpm)
}

fn aquifer(inputs: &Inputs) -> Result<Aquifer, String> {
    let transmissivity: Transmissivity = if inputs.has("t_m2d") {
        square_meters_per_day(inputs.number("t_m2d")?)
    } else {
        gallons_per_day_per_foot(inputs.number("t_gpd_ft")?)
    };
    let radius =
        if inputs.has("radius_m") { meters(inputs.number("radius_m")?) } else { feet(inputs.number("radius_ft")?) };
    Ok(Aquifer { transmissivity, storage: inputs.number("storage")?, radius, time: days(inputs.number("time_d")?) })
}

fn fallen(
    by: impl Fn(VolumeRate, Aquifer) -> Result<Length, wellwright_core::error::OutsideRange>,
    unit: &str,
    inputs: &Inputs,
) -> Number {
    let drawdown = by(flow(inputs)?, aquifer(inputs)?).map_err(told)?;
    Ok(if unit == "ft" { in_feet(drawdown) } else { in_meters(drawdown) })
}

fn well(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    let capacity = || inputs.number("gpm_per_ft").map(gallons_per_minute_per_foot);
    Some(match (quantity, unit) {
        ("well function", "1") => inputs.number("u").and_then(|u| well_function(u).map_err(told)),
        ("Theis argument", "1") => aquifer(inputs).and_then(|aquifer| theis_argument(aquifer).map_err(told)),
        ("Theis drawdown", "ft" | "m") => fallen(theis_drawdown, unit, inputs),
        ("Cooper-Jacob drawdown", "ft" | "m") => fallen(cooper_jacob_drawdown, unit, inputs),
        ("drawdown by capacity", "ft") => {
            flow(inputs).and_then(|flow| drawdown_by_capacity(flow, capacity()?).map(in_feet).map_err(told))
        }
        ("flow for a drawdown", "gpm") => inputs
            .number("drawdown_ft")
            .and_then(|drawdown| flow_for_drawdown(feet(drawdown), capacity()?).map(in_gpm).map_err(told)),
        ("well loss", "ft") => inputs.number("ft_per_gpm2").and_then(|coefficient| {
            well_loss(feet_per_square_gallon_per_minute(coefficient), flow(inputs)?).map(in_feet).map_err(told)
        }),
        _ => return None,
    })
}

fn demand(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("irrigation flow", "gpm") => irrigated(inputs)
            .and_then(|volume| flow_for(gallons(volume), hours(inputs.number("hours")?)).map(in_gpm).map_err(told)),
        ("gallons of an acre-inch", "gal") => irrigated(inputs),
        ("household volume", "gal") => household(inputs),
        ("weekly volume", "gal") => flow(inputs)
            .and_then(|flow| weekly_volume(flow, hours(inputs.number("hours")?)).map(in_gallons).map_err(told)),
        _ => return None,
    })
}

fn irrigated(inputs: &Inputs) -> Number {
    let area = if inputs.has("acres") { acres(inputs.number("acres")?) } else { hectares(inputs.number("hectares")?) };
    let depth = if inputs.has("depth_in") {
        inches(inputs.number("depth_in")?)
    } else {
        millimeters(inputs.number("depth_mm")?)
    };
    let depth = if inputs.has("efficiency") {
        Depth::Net { depth, efficiency: inputs.number("efficiency")? }
    } else {
        Depth::Gross(depth)
    };
    irrigation_volume(area, depth).map(in_gallons).map_err(told)
}

fn household(inputs: &Inputs) -> Number {
    let names = ["people", "beef", "dairy", "horses"];
    let users = User::ALL.into_iter().zip(names);
    let users = users.map(|(user, name)| Ok((user, inputs.number(name)?, user.daily())));
    household_volume(&users.collect::<Result<Vec<_>, String>>()?).map(in_gallons).map_err(told)
}

fn wave(inputs: &Inputs) -> Result<(MassDensity, Velocity), String> {
    let density = inputs.number("density").map(kilograms_per_cubic_meter)?;
    let wall = millimeters(5.0);
    let inside_diameter = wall * inputs.number("id_over_wall")?;
    let modulus = Pressure::new::<uom::si::pressure::gigapascal>(inputs.number("modulus_gpa")?);
    let shell = Shell { inside_diameter, wall, modulus, restraint: 1.0 };
    Ok((density, wave_speed(bulk_modulus(), density, shell).map_err(told)?))
}

fn surge(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("wave speed", "m/s") => wave(inputs).map(|(_, speed)| in_meters_per_second(speed)),
        ("wave speed", "ft/s") => wave(inputs).map(|(_, speed)| in_feet_per_second(speed)),
        ("surge of a foot per second", "psi") => wave(inputs)
            .and_then(|(density, speed)| joukowsky(density, speed, feet_per_second(1.0)).map(in_psi).map_err(told)),
        ("surge head", "m") => inputs.number("wave_mps").and_then(|wave| {
            let change = meters_per_second(inputs.number("change_mps")?);
            joukowsky_head(meters_per_second(wave), change).map(in_meters).map_err(told)
        }),
        ("surge", "psi") => inputs.number("wave_fps").and_then(|wave| {
            let change = feet_per_second(inputs.number("change_fps")?);
            joukowsky(water_density(inputs)?, feet_per_second(wave), change).map(in_psi).map_err(told)
        }),
        ("reflection time", "s") => inputs.number("length_m").and_then(|length| {
            let wave = meters_per_second(inputs.number("wave_mps")?);
            reflection_time(meters(length), wave).map(in_seconds).map_err(told)
        }),
        _ => return None,
    })
}

fn band(inputs: &Inputs) -> Result<Band, String> {
    let gauge = |name: &str| inputs.number(name).map(psi);
    let (precharge, cut_in) = (gauge("precharge_psi")?, gauge("cut_in_psi")?);
    Ok(Band { precharge, cut_in, cut_out: gauge("cut_out_psi")?, barometric: gauge("barometric_psi")? })
}

fn tank(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    let volume = || inputs.number("gal").map(gallons);
    Some(match (quantity, unit) {
        ("tank drawdown", "gal") => {
            volume().and_then(|volume| tank_drawdown(volume, band(inputs)?).map(in_gallons).map_err(told))
        }
        ("tank for a drawdown", "gal") => {
            volume().and_then(|volume| tank_for(volume, band(inputs)?).map(in_gallons).map_err(told))
        }
        ("on-off precharge", "psi") => {
            inputs.number("cut_in_psi").and_then(|cut_in| on_off_precharge(psi(cut_in)).map(in_psi).map_err(told))
        }
        ("constant-pressure precharge", "psi") => inputs.number("setpoint_psi").and_then(|setpoint| {
            constant_pressure_precharge(psi(setpoint), inputs.number("share")?).map(in_psi).map_err(told)
        }),
        ("run time", "min") => volume().and_then(|volume| {
            let used = gpm(inputs.number("used_gpm")?);
            run_time(volume, flow(inputs)?, used).map(in_minutes).map_err(told)
        }),
        ("most starts", "1/h") => volume()
            .and_then(|volume| most_starts(volume, flow(inputs)?).map_err(told))
            .map(|starts| (starts * hours(1.0)).value),
        _ => return None,
    })
}

fn string(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    let head = |name: &str| inputs.number(name).map(feet);
    Some(match (quantity, unit) {
        ("suction head of parts", "ft") => head("barometric_ft").and_then(|barometric| {
            let (vapor, lift) = (head("vapor_ft")?, head("lift_ft")?);
            let parts =
                SuctionHead { barometric, vapor, lift, pipe: head("friction_ft")?, fittings: head("entrance_ft")? };
            Ok(in_feet(parts.available()))
        }),
        ("hanging load", "lb") => hung(inputs).and_then(|hung| {
            let density = inputs.number("density").map(kilograms_per_cubic_meter)?;
            hanging_load(hung, density).map(|load| in_pounds(load.total())).map_err(told)
        }),
        _ => return None,
    })
}

fn hung(inputs: &Inputs) -> Result<Hung, String> {
    Ok(Hung {
        length: feet(inputs.number("length_ft")?),
        pipe: pounds_per_foot(inputs.number("pipe_lb_ft")?),
        inside_diameter: diameter(inputs)?,
        cable: pounds_per_foot(inputs.number("cable_lb_ft")?),
        pump: pounds(inputs.number("pump_lb")?),
    })
}
