//! Levels in the well.

use super::inputs::Inputs;
use super::{Answer, Answered};
use wellwright_core::quantity::{Length, feet, in_feet};
use wellwright_core::water::level::{off_bottom, pumping_level, submergence};

/// The answer to a quantity of this file, or `None` where it is not one.
pub fn answer(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Answered> {
    let length = match (quantity, unit) {
        ("pumping level", "ft") => pumping(inputs),
        ("submergence", "ft") => {
            depth(inputs, "setting_ft").and_then(|setting| Ok(submergence(setting, pumping(inputs)?)))
        }
        ("distance off the bottom", "ft") => {
            depth(inputs, "well_ft").and_then(|well| Ok(off_bottom(well, depth(inputs, "setting_ft")?)))
        }
        _ => return None,
    };
    Some(length.map(|length| Answer::Number(in_feet(length))))
}

fn depth(inputs: &Inputs, name: &str) -> Result<Length, String> {
    inputs.number(name).map(feet)
}

fn pumping(inputs: &Inputs) -> Result<Length, String> {
    Ok(pumping_level(depth(inputs, "static_ft")?, depth(inputs, "drawdown_ft")?))
}
