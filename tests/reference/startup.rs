//! What the installer enters and tests: transducer, insulation, overload, trips.

use super::inputs::Inputs;
use super::{Answer, Answered};
use wellwright_core::quantity::{Celsius, amperes, in_amperes, in_ohms, in_psi, ohms, psi};
use wellwright_core::startup::insulation::{LEAST_AT_40, at_40};
use wellwright_core::startup::protection::{dry_run, high_pressure, overload};
use wellwright_core::startup::transducer::{pressure_of, signal};

fn said<T>(result: Result<T, impl std::fmt::Debug>) -> Result<T, String> {
    result.map_err(|e| format!("{e:?}"))
}

/// The answer to a quantity of this file, or `None` where it is not one.
pub fn answer(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Answered> {
    let number = match (quantity, unit) {
        ("least insulation resistance", "Mohm") => {
            inputs.text("winding").map(|winding| if winding == "random" { LEAST_AT_40 / 1e6 } else { f64::NAN })
        }
        ("insulation at 40 degC", "Mohm") => insulation(inputs),
        ("transducer signal", "mA") => transducer(inputs),
        ("transducer pressure", "psi") => back(inputs),
        ("overload setting", "A") => overloaded(inputs),
        ("dry-run trip", "A") => inputs.number("amps").and_then(|amps| said(dry_run(amperes(amps))).map(in_amperes)),
        ("high-pressure stop", "psi") => high(inputs),
        _ => return None,
    };
    Some(number.map(Answer::Number))
}

fn insulation(inputs: &Inputs) -> Result<f64, String> {
    let (megohms, celsius) = (inputs.number("megohms")?, inputs.number("celsius")?);
    said(at_40(ohms(megohms * 1e6), Celsius(celsius))).map(|found| in_ohms(found) / 1e6)
}

fn transducer(inputs: &Inputs) -> Result<f64, String> {
    let (pressure, span) = (inputs.number("psi")?, inputs.number("span_psi")?);
    said(signal(psi(pressure), psi(span))).map(|current| in_amperes(current) * 1000.0)
}

fn back(inputs: &Inputs) -> Result<f64, String> {
    let (current, span) = (inputs.number("ma")?, inputs.number("span_psi")?);
    said(pressure_of(amperes(current / 1000.0), psi(span))).map(in_psi)
}

fn overloaded(inputs: &Inputs) -> Result<f64, String> {
    let (nameplate, factor) = (inputs.number("amps")?, inputs.number("service_factor")?);
    said(overload(amperes(nameplate), factor)).map(in_amperes)
}

fn high(inputs: &Inputs) -> Result<f64, String> {
    let (setpoint, rating) = (inputs.number("setpoint_psi")?, inputs.number("rating_psi")?);
    said(high_pressure(psi(setpoint), psi(rating))).map(in_psi)
}
