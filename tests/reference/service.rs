//! Conductors in service, alternating current, flat cable, long leads, energy lost and its worth.

use super::inputs::Inputs;
use super::{Answer, Answered};
use uom::si::electrical_resistance::ohm;
use wellwright_core::cable::conductor::resistance_at;
use wellwright_core::cable::economic::{Duty, yearly_cost, yearly_energy};
use wellwright_core::cable::flat::{FlatDrop, FlatReactance, flat_drop, flat_reactance};
use wellwright_core::cable::long_lead::{Limit, Wave, critical_length, peak, reflection};
use wellwright_core::cable::reactance::from_spacing;
use wellwright_core::cable::skin::{ROUND_STRANDED, ac_resistance, skin_effect};
use wellwright_core::cable::temperature::{
    Service, conductor_temperature, resistance_moved, settled_temperature, temperature_coefficient,
};
use wellwright_core::cost::annuity::{annuity_factor, capital_recovery};
use wellwright_core::cost::worth::level_net_present_value;
use wellwright_core::error::OutsideRange;
use wellwright_core::quantity::{
    Celsius, ElectricalResistance, Money, OhmsPerLength, Time, Velocity, amperes, hertz, in_meters,
    in_ohms_per_kilofoot, in_seconds, in_volts, meters, meters_per_second, ohms_per_kilofoot, seconds, volts, watts,
};
use wellwright_core::standards::ac_resistance::ac_resistance as table_9;

const KFT: &str = "ohm/1000 ft";

type Number = Result<f64, String>;

fn said<T>(result: Result<T, OutsideRange>) -> Result<T, String> {
    result.map_err(|e| format!("{e:?}"))
}

/// The answer to a quantity of this file, or `None` where it is not one.
pub fn answer(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Answered> {
    if (quantity, unit) == ("table 9 resistance", KFT) {
        return Some(table(inputs));
    }
    let number = warm(quantity, unit, inputs)
        .or_else(|| alternating(quantity, unit, inputs))
        .or_else(|| flat(quantity, unit, inputs))
        .or_else(|| long(quantity, unit, inputs))
        .or_else(|| money(quantity, unit, inputs))?;
    Some(number.map(Answer::Number))
}

fn warm(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("temperature coefficient", "1/K") => coefficient(inputs),
        // The law is the same in any unit of resistance.
        ("resistance at another temperature", "ohm/km" | KFT) => moved(inputs),
        ("conductor temperature", "degC") => {
            service(inputs).and_then(|service| said(conductor_temperature(service)).map(|t| t.0))
        }
        ("settled temperature", "degC") => service(inputs)
            .and_then(|service| said(settled_temperature(inputs.metal()?, service)))
            .map(|temperature| temperature.0),
        _ => return None,
    })
}

fn coefficient(inputs: &Inputs) -> Number {
    said(temperature_coefficient(inputs.metal()?, Celsius(inputs.number("at_c")?)))
}

fn moved(inputs: &Inputs) -> Number {
    let (from, to) = (Celsius(inputs.number("from_c")?), Celsius(inputs.number("to_c")?));
    let known = ohms_per_kilofoot(inputs.number("known")?);
    said(resistance_moved(known, inputs.metal()?, from, to)).map(in_ohms_per_kilofoot)
}

fn service(inputs: &Inputs) -> Result<Service, String> {
    Ok(Service {
        ambient: inputs.celsius()?,
        insulation: inputs.rating("insulation_c")?,
        current: amperes(inputs.number("current_a")?),
        rated_at_30: amperes(inputs.number("rated_a")?),
    })
}

fn alternating(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("alternating-current resistance", KFT) => alternating_resistance(inputs),
        ("skin effect ratio", "1") => skin_ratio(inputs),
        ("skin effect ratio at x", "1") => skin_at(inputs),
        ("reactance from spacing", "ohm/km") => spaced(inputs),
        _ => return None,
    })
}

fn table(inputs: &Inputs) -> Answered {
    let row = table_9(inputs.size("size")?, inputs.metal()?);
    let value = match inputs.text("conduit")? {
        "plastic" => row.map(|row| row.plastic),
        "steel" => row.map(|row| row.steel),
        other => return Err(format!("conduit {other}")),
    };
    Ok(value.map_or_else(|| Answer::Text("none".into()), Answer::Number))
}

fn alternating_resistance(inputs: &Inputs) -> Number {
    let temperature = Celsius(inputs.number("temperature_c")?);
    let frequency = hertz(inputs.number("frequency_hz")?);
    let found = ac_resistance(inputs.size("size")?, inputs.metal()?, temperature, frequency, inputs.phases()?);
    said(found).map(in_ohms_per_kilofoot)
}

fn skin_ratio(inputs: &Inputs) -> Number {
    let at_75 = ohms_per_kilofoot(inputs.number("dc75_ohm_kft")?);
    let direct = said(resistance_at(at_75, inputs.metal()?, Celsius(inputs.number("temperature_c")?)))?;
    said(skin_effect(direct, hertz(inputs.number("frequency_hz")?), ROUND_STRANDED)).map(|more| 1.0 + more)
}

/// The ratio at an argument x, for the resistance that has it at 60 Hz.
fn skin_at(inputs: &Inputs) -> Number {
    let x = inputs.number("x")?;
    let per_meter = 8.0 * std::f64::consts::PI * 60.0 * 1e-7 / (x * x);
    let direct = ElectricalResistance::new::<ohm>(per_meter) / meters(1.0);
    said(skin_effect(direct, hertz(60.0), ROUND_STRANDED)).map(|more| 1.0 + more)
}

fn spaced(inputs: &Inputs) -> Number {
    let (gmd, gmr) = (meters(inputs.number("gmd_m")?), meters(inputs.number("gmr_m")?));
    said(from_spacing(gmd, gmr, inputs.number("frequency_hz")?)).map(|per_meter| 1000.0 * per_meter.value)
}

fn flat(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    let of = |pick: fn(FlatReactance) -> OhmsPerLength| {
        let found = said(flat_reactance(inputs.size("size")?, hertz(inputs.number("frequency_hz")?)))?;
        Ok(in_ohms_per_kilofoot(pick(found)))
    };
    let at = |pick: fn(FlatDrop) -> f64| flat_lead(inputs).map(pick);
    Some(match (quantity, unit) {
        // The mean distance of the law that a flat cable's mean reactance goes by.
        ("flat mean distance", "m") => inputs.number("pitch_m").map(|pitch| pitch * flat_mean_factor()),
        ("flat outer reactance", KFT) => of(|x| x.outer),
        ("flat middle reactance", KFT) => of(|x| x.middle),
        ("flat transfer", KFT) => of(|x| x.transfer),
        ("flat drop, leading phase", "V") => at(|drop| in_volts(drop.drops[0])),
        ("flat drop, middle phase", "V") => at(|drop| in_volts(drop.drops[1])),
        ("flat drop, lagging phase", "V") => at(|drop| in_volts(drop.drops[2])),
        ("flat line voltage, leading outer to middle", "V") => at(|drop| in_volts(drop.lines[0])),
        ("flat line voltage, middle to lagging outer", "V") => at(|drop| in_volts(drop.lines[1])),
        ("flat line voltage, outer to outer", "V") => at(|drop| in_volts(drop.lines[2])),
        ("flat drop unbalance", "%") => at(|drop| 100.0 * drop.drop_unbalance),
        ("flat voltage unbalance", "%") => at(|drop| 100.0 * drop.voltage_unbalance),
        _ => return None,
    })
}

/// Mean distance over pitch, as core's geometry has it for any size.
fn flat_mean_factor() -> f64 {
    use wellwright_core::cable::reactance::{Build, geometric_mean_distance};
    use wellwright_core::standards::conductor::Size;
    let distance = |build| geometric_mean_distance(Size::Awg6, build);
    (distance(Build::FlatJacketed) / distance(Build::Twisted)).value
}

fn flat_lead(inputs: &Inputs) -> Result<FlatDrop, String> {
    use wellwright_core::cable::conductor::table_resistance;
    use wellwright_core::standards::conductor::Metal;
    let load = inputs.load(inputs.number("sending_v")?, inputs.number("current_a")?, inputs.phases()?)?;
    let size = inputs.size("size")?;
    let resistance = table_resistance(size, Metal::Copper);
    let found = flat_drop(load, size, resistance, inputs.length()?, hertz(inputs.number("frequency_hz")?));
    said(found)?.ok_or_else(|| "can't be fed".into())
}

fn long(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    let micro = |rise: Option<Time>| rise.map(|rise| 1e6 * in_seconds(rise)).ok_or_else(|| "no rise".to_owned());
    Some(match (quantity, unit) {
        ("critical length", "m") => {
            pulse(inputs).and_then(|(speed, rise)| said(critical_length(speed, rise)).map(in_meters))
        }
        ("reflection coefficient", "1") => reflected(inputs),
        ("transmission coefficient", "1") => reflected(inputs).map(|sent_back| 1.0 + sent_back),
        ("reflected peak", "V") => reflected_peak(inputs),
        ("inverter-duty peak limit", "V") => inverter_duty(inputs).map(|limit| in_volts(limit.peak())),
        ("inverter-duty shortest rise", "us") => inverter_duty(inputs).and_then(|limit| micro(limit.shortest_rise())),
        ("general-purpose peak limit", "V") => Ok(in_volts(Limit::GeneralPurpose.peak())),
        ("general-purpose shortest rise", "us") => micro(Limit::GeneralPurpose.shortest_rise()),
        ("general-purpose steepest rise", "V/us") => {
            micro(Limit::GeneralPurpose.shortest_rise()).map(|rise| in_volts(Limit::GeneralPurpose.peak()) / rise)
        }
        _ => return None,
    })
}

fn pulse(inputs: &Inputs) -> Result<(Velocity, Time), String> {
    let speed = meters_per_second(1e6 * inputs.number("speed_m_us")?);
    Ok((speed, seconds(1e-6 * inputs.number("rise_us")?)))
}

fn impedances(inputs: &Inputs) -> Result<(ElectricalResistance, ElectricalResistance), String> {
    let ohms = |name: &str| inputs.number(name).map(ElectricalResistance::new::<ohm>);
    Ok((ohms("motor_ohm")?, ohms("cable_ohm")?))
}

fn reflected(inputs: &Inputs) -> Number {
    let (motor, cable) = impedances(inputs)?;
    said(reflection(motor, cable))
}

fn reflected_peak(inputs: &Inputs) -> Number {
    let ((speed, rise), (motor, cable)) = (pulse(inputs)?, impedances(inputs)?);
    let length = meters(inputs.number("length_m")?);
    said(peak(volts(inputs.number("bus_v")?), Wave { speed, rise, cable, motor }, length)).map(in_volts)
}

fn inverter_duty(inputs: &Inputs) -> Result<Limit, String> {
    Ok(Limit::InverterDuty(volts(inputs.number("rated_v")?)))
}

fn money(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("annuity factor", "years") => term(inputs).and_then(|(rate, years)| said(annuity_factor(rate, years))),
        ("capital recovery", "1/years") => term(inputs).and_then(|(rate, years)| said(capital_recovery(rate, years))),
        ("net present value", "$") => net_present_value(inputs),
        ("energy lost in a year", "kWh") => lost_energy(inputs),
        ("cost of energy lost in a year", "$") => lost_money(inputs, inputs.number("kilowatt_hour")),
        _ => return None,
    })
}

fn term(inputs: &Inputs) -> Result<(f64, f64), String> {
    Ok((inputs.number("rate_percent")? / 100.0, inputs.number("years")?))
}

fn net_present_value(inputs: &Inputs) -> Number {
    let (rate, years) = term(inputs)?;
    let (first, yearly) = (Money(inputs.number("cost")?), Money(inputs.number("yearly")?));
    said(level_net_present_value(first, yearly, rate, years)).map(|worth| worth.0)
}

fn lost_money(inputs: &Inputs, kilowatt_hour: Number) -> Number {
    let duty = Duty {
        current: amperes(inputs.number("current_a")?),
        phases: inputs.phases()?,
        hours: inputs.number("hours")?,
        kilowatt_hour: Money(kilowatt_hour?),
        present_worth: 1.0,
    };
    said(yearly_cost(duty, inputs.per_kilofoot("r_ohm_kft")?, inputs.length()?)).map(|money| money.0)
}

/// Energy is what it costs at one unit of money for each kilowatt-hour; a kilowatt over the hours is the hours.
fn lost_energy(inputs: &Inputs) -> Number {
    assert_eq!(yearly_energy(watts(1000.0), inputs.number("hours")?), Ok(inputs.number("hours")?));
    lost_money(inputs, Ok(1.0))
}
