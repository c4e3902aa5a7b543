//! What a way draws from its supply: input, transformer, sag, start, generator, converter, harmonics.

use super::inputs::Inputs;
use super::{Answer, Answered};
use wellwright_core::power::family::Feed;
use wellwright_core::power::generator::{Hookup, running_rating, starting_rating};
use wellwright_core::power::harmonics::{Coupling, fundamental, total_distortion};
use wellwright_core::power::impedance::{Impedance, Sag, fault_current, feeder, sag};
use wellwright_core::power::start::{StartDip, locked_rotor_input, start_dip};
use wellwright_core::power::supply::{input_current, input_power, supply_ampacity};
use wellwright_core::power::transformer::{Loading, Transformer, apparent_power, next_size};
use wellwright_core::power::{converter, rotary, step_up};
use wellwright_core::quantity::{
    amperes, hertz, horsepower, in_amperes, in_hertz, in_horsepower, in_kilovolt_amperes, in_kilowatts, in_ohms,
    in_volts, in_watts, kilovolt_amperes, kilowatts, volts, watts,
};

type Number = Result<f64, String>;

/// The answer to a quantity of this file, or `None` where it is not one.
pub fn answer(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Answered> {
    let number = of_input(quantity, unit, inputs)
        .or_else(|| of_transformer(quantity, unit, inputs))
        .or_else(|| of_start(quantity, unit, inputs))
        .or_else(|| of_harmonics(quantity, unit, inputs))
        .or_else(|| of_equipment(quantity, unit, inputs))?;
    Some(number.map(Answer::Number))
}

fn of_input(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("input power", "kW") => power_in(inputs),
        ("input current", "A") => current_in(inputs),
        ("supply ampacity", "A") => current(inputs, "input_a").and_then(|a| amps(supply_ampacity(a))),
        ("converter ampacity", "A") => converter_ampacity(inputs),
        ("converter device", "A") => converter_device(inputs),
        _ => return None,
    })
}

fn of_transformer(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("rated current", "A") => transformer(inputs).and_then(|unit| amps(unit.rated_current())),
        ("transformer fault current", "A") => transformer(inputs).and_then(|unit| amps(unit.fault_current())),
        ("fault current at the equipment", "A") => fault(inputs),
        ("transformer resistance", "ohm") => source(inputs).map(|z| in_ohms(z.resistance)),
        ("transformer reactance", "ohm") => source(inputs).map(|z| in_ohms(z.reactance)),
        ("transformer loading", "%") => loading(inputs),
        ("transformer size", "kVA") => size(inputs),
        ("apparent power", "kVA") => apparent(inputs),
        ("sag at the pole", "V") => sags(inputs).map(|sag| in_volts(sag.at_pole)),
        ("sag at the pole", "%") => {
            sags(inputs).and_then(|sag| Ok(100.0 * in_volts(sag.at_pole) / inputs.number("supply_v")?))
        }
        ("sag at the equipment", "V") => sags(inputs).map(|sag| in_volts(sag.at_equipment)),
        ("volts at the equipment", "V") => sags(inputs).map(|sag| in_volts(sag.left)),
        _ => return None,
    })
}

fn of_start(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("locked-rotor input", "A") => locked(inputs),
        ("start current", "A") => dips(inputs).map(|dip| in_amperes(dip.current)),
        ("start dip at the pole", "%") => dips(inputs).map(|dip| 100.0 * dip.at_pole),
        ("start dip at the motor", "%") => dips(inputs).map(|dip| 100.0 * dip.at_motor),
        ("running generator", "kVA") => running(inputs),
        ("starting generator", "kVA") => starting(inputs),
        ("share of a three-phase set", "1") => hookup(inputs).map(Hookup::share),
        _ => return None,
    })
}

fn of_harmonics(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("fundamental current", "A") => current(inputs, "current_a")
            .and_then(|a| amps(fundamental(a, inputs.number("distortion_percent")? / 100.0))),
        ("total distortion", "%") => distortion(inputs),
        ("short-circuit ratio", "1") => demand(inputs).map(|(ratio, ..)| ratio),
        ("demand distortion", "%") => demand(inputs).map(|(_, distortion, _)| 100.0 * distortion),
        ("demand limit", "%") => demand(inputs).map(|(.., limit)| 100.0 * limit),
        ("order limit", "%") => order(inputs),
        _ => return None,
    })
}

fn of_equipment(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("step-up drive current", "A") => stepped_current(inputs),
        ("step-up volts", "V") => stepped_volts(inputs),
        ("step-up transformer", "kVA") => stepped_rating(inputs),
        ("core flux", "1") => flux(inputs),
        ("lowest frequency of the core", "Hz") => core_limit(inputs),
        ("idler power", "hp") => idler(inputs),
        ("idle loss", "W") => idle(inputs),
        _ => return None,
    })
}

fn shown(error: impl std::fmt::Debug) -> String {
    format!("{error:?}")
}

fn current(inputs: &Inputs, name: &str) -> Result<wellwright_core::quantity::ElectricCurrent, String> {
    inputs.number(name).map(amperes)
}

fn amps(found: Result<wellwright_core::quantity::ElectricCurrent, impl std::fmt::Debug>) -> Number {
    found.map(in_amperes).map_err(shown)
}

fn supply(inputs: &Inputs) -> Result<wellwright_core::quantity::ElectricPotential, String> {
    inputs.number("supply_v").map(volts)
}

fn lines(inputs: &Inputs, name: &str) -> Result<Feed, String> {
    match inputs.text(name)? {
        "2" => Ok(Feed::SinglePhase),
        "3" => Ok(Feed::ThreePhase),
        other => Err(format!("{other} lines")),
    }
}

fn power_in(inputs: &Inputs) -> Number {
    let loss = if inputs.has("lead_loss_w") { inputs.number("lead_loss_w")? } else { 0.0 };
    let (motor, drive) = (inputs.number("motor_efficiency")?, inputs.number("drive_efficiency")?);
    let power = input_power(horsepower(inputs.number("hp")?), motor, watts(loss), drive);
    power.map(in_kilowatts).map_err(shown)
}

fn current_in(inputs: &Inputs) -> Number {
    let power = kilowatts(inputs.number("input_kw")?);
    amps(input_current(power, supply(inputs)?, inputs.number("power_factor")?, lines(inputs, "lines")?))
}

fn converter_ampacity(inputs: &Inputs) -> Number {
    let fixed = if inputs.has("fixed_a") { Some(current(inputs, "fixed_a")?) } else { None };
    let (output, input) = (inputs.number("output_v")?, inputs.number("input_v")?);
    amps(converter::supply_ampacity(current(inputs, "input_a")?, fixed, volts(output), volts(input)))
}

fn converter_device(inputs: &Inputs) -> Number {
    amps(converter::device(current(inputs, "input_a")?, current(inputs, "ampacity_a")?))
}

fn transformer(inputs: &Inputs) -> Result<Transformer, String> {
    Ok(Transformer {
        rating: kilovolt_amperes(inputs.number("kva")?),
        voltage: supply(inputs)?,
        impedance: inputs.number("impedance_percent")? / 100.0,
        feed: lines(inputs, "lines")?,
    })
}

/// The transformer, or nothing where a row gives none.
fn source(inputs: &Inputs) -> Result<Impedance, String> {
    if inputs.has("kva") { transformer(inputs)?.as_impedance().map_err(shown) } else { Ok(Impedance::default()) }
}

/// The feeder, or nothing where a row gives none.
fn feeder_of(inputs: &Inputs) -> Result<Impedance, String> {
    if !inputs.has("length_ft") {
        return Ok(Impedance::default());
    }
    let (r, x) = (inputs.per_kilofoot("r_ohm_kft")?, inputs.per_kilofoot("x_ohm_kft")?);
    feeder(r, x, inputs.length()?, lines(inputs, "lines")?).map_err(shown)
}

fn fault(inputs: &Inputs) -> Number {
    amps(fault_current(supply(inputs)?, source(inputs)? + feeder_of(inputs)?))
}

fn loading(inputs: &Inputs) -> Number {
    match transformer(inputs)?.loading(current(inputs, "current_a")?).map_err(shown)? {
        Loading::Within(share) | Loading::Close(share) | Loading::Over(share) => Ok(100.0 * share),
    }
}

fn size(inputs: &Inputs) -> Number {
    let size = next_size(kilovolt_amperes(inputs.number("load_kva")?), lines(inputs, "lines")?).map_err(shown)?;
    size.map(in_kilovolt_amperes).ok_or_else(|| "none".into())
}

fn apparent(inputs: &Inputs) -> Number {
    let power = apparent_power(supply(inputs)?, current(inputs, "current_a")?, lines(inputs, "lines")?);
    power.map(in_kilovolt_amperes).map_err(shown)
}

fn sags(inputs: &Inputs) -> Result<Sag, String> {
    let (source, feeder) = (source(inputs)?, feeder_of(inputs)?);
    let factor = inputs.number("power_factor")?;
    let sag = sag(supply(inputs)?, current(inputs, "current_a")?, factor, source, feeder).map_err(shown)?;
    sag.ok_or_else(|| "not fed".into())
}

fn locked(inputs: &Inputs) -> Number {
    let (full_load, multiple) = (current(inputs, "full_load_a")?, inputs.number("multiple")?);
    amps(locked_rotor_input(full_load, multiple, lines(inputs, "lines")?, lines(inputs, "motor_lines")?))
}

fn dips(inputs: &Inputs) -> Result<StartDip, String> {
    let (source, feeder) = (source(inputs)?, feeder_of(inputs)?);
    start_dip(supply(inputs)?, current(inputs, "locked_rotor_a")?, source, feeder).map_err(shown)
}

fn hookup(inputs: &Inputs) -> Result<Hookup, String> {
    match inputs.text("hookup")? {
        "as built" => Ok(Hookup::AsBuilt),
        "double delta" => Ok(Hookup::DoubleDelta),
        "two lines" => Ok(Hookup::TwoLines),
        other => Err(format!("hookup {other}")),
    }
}

fn running(inputs: &Inputs) -> Number {
    let input = kilovolt_amperes(inputs.number("input_kva")?);
    let rating = running_rating(input, inputs.number("distortion_percent")? / 100.0, hookup(inputs)?);
    rating.map(in_kilovolt_amperes).map_err(shown)
}

fn starting(inputs: &Inputs) -> Number {
    let locked_rotor = current(inputs, "locked_rotor_a")?;
    let rating = starting_rating(supply(inputs)?, locked_rotor, lines(inputs, "lines")?, hookup(inputs)?);
    rating.map(in_kilovolt_amperes).map_err(shown)
}

fn distortion(inputs: &Inputs) -> Number {
    let whole = inputs.number("fundamental_a")?;
    let parse = |text: &str| text.parse::<f64>().map(|amps| amps / whole).map_err(shown);
    let shares = inputs.text("harmonics_a")?.split_whitespace().map(parse).collect::<Result<Vec<f64>, _>>()?;
    total_distortion(&shares).map(|share| 100.0 * share).map_err(shown)
}

fn coupling(inputs: &Inputs) -> Result<Coupling, String> {
    let other = if inputs.has("other_a") { inputs.number("other_a")? } else { 0.0 };
    Ok(Coupling {
        short_circuit: current(inputs, "short_circuit_a")?,
        equipment: current(inputs, "fundamental_a")?,
        other: amperes(other),
    })
}

fn demand(inputs: &Inputs) -> Result<(f64, f64, f64), String> {
    let total = coupling(inputs)?.total(inputs.number("distortion_percent")? / 100.0).map_err(shown)?;
    Ok((total.ratio, total.distortion, total.limit))
}

fn order(inputs: &Inputs) -> Number {
    let order = inputs.text("order")?.parse().map_err(shown)?;
    let single = coupling(inputs)?.single(order, 0.0).map_err(shown)?;
    single.map(|single| 100.0 * single.limit).ok_or_else(|| "not listed".into())
}

fn stepped_current(inputs: &Inputs) -> Number {
    let (primary, secondary) = (inputs.number("primary_v")?, inputs.number("secondary_v")?);
    let ratio = step_up::turns_ratio(volts(primary), volts(secondary)).map_err(shown)?;
    amps(step_up::drive_current(current(inputs, "motor_a")?, ratio))
}

fn stepped_volts(inputs: &Inputs) -> Number {
    let (drive, ratio) = (volts(inputs.number("drive_v")?), inputs.number("ratio")?);
    let (filter, impedance) = (inputs.number("filter_percent")?, inputs.number("impedance_percent")?);
    step_up::secondary_volts(drive, ratio, filter / 100.0, impedance / 100.0).map(in_volts).map_err(shown)
}

fn stepped_rating(inputs: &Inputs) -> Number {
    let rating = step_up::rating(volts(inputs.number("motor_v")?), current(inputs, "motor_a")?).map_err(shown)?;
    rating.map(in_kilovolt_amperes).ok_or_else(|| "none".into())
}

fn flux(inputs: &Inputs) -> Number {
    let (given, rated) = (volts(inputs.number("given_v")?), volts(inputs.number("rated_v")?));
    step_up::flux(given, rated, hertz(inputs.number("hz")?), hertz(inputs.number("rated_hz")?)).map_err(shown)
}

fn core_limit(inputs: &Inputs) -> Number {
    let (boost, most) = (inputs.number("boost_percent")? / 100.0, inputs.number("most_flux")?);
    step_up::lowest_frequency(boost, most, hertz(inputs.number("rated_hz")?)).map(in_hertz).map_err(shown)
}

fn idler(inputs: &Inputs) -> Number {
    let motor = horsepower(inputs.number("motor_hp")?);
    rotary::idler_power(motor, inputs.number("ratio")?).map(in_horsepower).map_err(shown)
}

fn idle(inputs: &Inputs) -> Number {
    let idler = horsepower(inputs.number("idler_hp")?);
    rotary::idle_loss(idler, inputs.number("share_percent")? / 100.0).map(in_watts).map_err(shown)
}
