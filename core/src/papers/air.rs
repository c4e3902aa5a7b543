//! The weight of the air, by the height of the site.

use super::math::{Math, Symbol, formula};
use super::name::Name;
use super::sheet::{Sheet, length, pressure};
use crate::job::{Field, Inputs, Origin};
use crate::quantity::{Pressure, meters};
use crate::water::properties::{BAROMETRIC_EXPONENT, EARTH_RADIUS, LAPSE_HEIGHT, barometric_pressure, sea_level};

pub(super) const BAROMETRIC: Symbol = Symbol::of("p", "b");
const SEA_LEVEL: Symbol = Symbol::of("p", "0");
const ALTITUDE: Symbol = Symbol::of("z", "a");
const EARTH: Symbol = Symbol::of("r", "e");
const GEOPOTENTIAL: Symbol = Symbol::of("z", "g");
const LAPSE: Symbol = Symbol::of("z", "T");

/// Works the barometric pressure out, by the standard atmosphere.
pub(super) fn barometric(inputs: &Inputs, sheet: &mut Sheet) -> Option<Pressure> {
    let altitude = inputs.entered.get(Field::Altitude, meters)?;
    let found = barometric_pressure(altitude).ok()?;
    let earth = meters(EARTH_RADIUS);
    sheet.take(inputs, ALTITUDE, Name::Altitude, Field::Altitude)?;
    sheet.put(EARTH, Name::EarthRadius, length(earth), Origin::Definition);
    sheet.put(SEA_LEVEL, Name::SeaLevelPressure, pressure(sea_level()), Origin::Definition);
    sheet.put(LAPSE, Name::LapseHeight, length(meters(LAPSE_HEIGHT)), Origin::Definition);
    let lower = Math::Fraction(formula![EARTH, "·", ALTITUDE], formula![EARTH, "+", ALTITUDE]);
    sheet.step(GEOPOTENTIAL, vec![lower], length(earth * (altitude / (earth + altitude)).value));
    let share = formula!["(", 1.0, "−", Math::Fraction(formula![GEOPOTENTIAL], formula![LAPSE]), ")"];
    let formula = formula![SEA_LEVEL, "·", Math::Power(share, BAROMETRIC_EXPONENT)];
    sheet.step(BAROMETRIC, formula, pressure(found));
    sheet.cite(&["us-standard-atmosphere-1976"]);
    Some(found)
}
