//! The working of the demand, where it follows from land, people or stock.

use super::conversion::Conversion;
use super::math::{Math, Symbol, formula};
use super::name::Name;
use super::sheet::{Sheet, flow};
use super::working::Working;
use crate::evaluate::{Evaluation, USERS};
use crate::job::{Field, Inputs, Known, Origin};
use crate::quantity::{Unit, VolumeRate, in_gallons, in_inches, inches};
use crate::standards::water_use::User;

pub(super) const FLOW: Symbol = Symbol::plain("Q");
const DAILY: Symbol = Symbol::of("V", "d");
const WEEKLY: Symbol = Symbol::of("V", "w");
const HOURS: Symbol = Symbol::of("t", "p");
const LAND: Symbol = Symbol::of("A", "f");
const GROSS: Symbol = Symbol::of("d", "g");
const NET: Symbol = Symbol::of("d", "n");
const REACHES: Symbol = Symbol::of("η", "a");

/// Puts the flow that is asked for in.
pub(super) fn asked(evaluation: &Evaluation, sheet: &mut Sheet) -> Option<Known<VolumeRate>> {
    let asked = evaluation.water.demand?.flow;
    if let Some(running) = evaluation.water.running {
        sheet.put(FLOW, Name::PumpFlow, flow(running), Origin::WorkedOut);
        return Some(Known::worked_out(running));
    }
    sheet.put(FLOW, Name::Flow, flow(asked.value), asked.origin);
    Some(asked)
}

pub(super) fn demand(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let (demand, inputs) = (evaluation.water.demand?, &evaluation.inputs);
    let daily = (in_gallons(demand.daily?), Unit::GallonPerDay);
    let formula = match sheet.take(inputs, LAND, Name::IrrigatedArea, Field::IrrigatedArea) {
        Some(_) => on_land(inputs, &mut sheet)?,
        None => by_users(inputs, &mut sheet),
    };
    let more = sheet.step(DAILY, formula, daily);
    sheet.take(inputs, HOURS, Name::PumpingHours, Field::PumpingHours)?;
    let hour = sheet.unit(Conversion::Hour);
    let spread = Math::Fraction(formula![DAILY], formula![HOURS, "·", hour]);
    let result = sheet.step(FLOW, vec![spread], flow(demand.flow.value));
    if let Some(weekly) = demand.weekly {
        sheet.step(WEEKLY, formula![7.0, "·", DAILY], (in_gallons(weekly), Unit::Gallon));
    }
    Some(Working { more: vec![more], ..sheet.done(result, &[]) })
}

pub(super) fn weekly(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let (demand, inputs) = (evaluation.water.demand?, &evaluation.inputs);
    let weekly = demand.weekly?;
    sheet.put(FLOW, Name::Flow, flow(demand.flow.value), demand.flow.origin);
    sheet.take(inputs, HOURS, Name::PumpingHours, Field::PumpingHours)?;
    let hour = sheet.unit(Conversion::Hour);
    let formula = formula![7.0, "·", FLOW, "·", HOURS, "·", hour];
    let result = sheet.step(WEEKLY, formula, (in_gallons(weekly), Unit::Gallon));
    Some(sheet.done(result, &[]))
}

/// Land times depth, the depth grown by what does not reach the roots where it is told net.
fn on_land(inputs: &Inputs, sheet: &mut Sheet) -> Option<Vec<Math>> {
    let depth = inputs.entered.get(Field::WaterDepth, inches)?;
    match inputs.entered.get(Field::ApplicationEfficiency, |share| share) {
        None => {
            sheet.take(inputs, GROSS, Name::GrossDepth, Field::WaterDepth)?;
        }
        Some(efficiency) => {
            sheet.take(inputs, NET, Name::NetDepth, Field::WaterDepth)?;
            sheet.take(inputs, REACHES, Name::ApplicationEfficiency, Field::ApplicationEfficiency)?;
            let grown = Math::Fraction(formula![NET], formula![REACHES]);
            sheet.step(GROSS, vec![grown], (in_inches(depth) / efficiency, Unit::InchPerDay));
        }
    }
    let spread = sheet.unit(Conversion::Spread);
    sheet.cite(&["nist-sp-811"]);
    Some(formula![LAND, "·", GROSS, "·", spread])
}

/// The sum over those that there are.
fn by_users(inputs: &Inputs, sheet: &mut Sheet) -> Vec<Math> {
    let mut sum = Vec::new();
    for (user, number, daily) in USERS {
        let index = index(user);
        let (many, one) = (Symbol::of("n", index), Symbol::of("q", index));
        let put = sheet.take(inputs, many, Name::Users(user), number);
        if put.and_then(|_| sheet.take(inputs, one, Name::DailyUse(user), daily)).is_some() {
            sum.extend((!sum.is_empty()).then_some(Math::Sign("+")));
            sum.extend(formula![many, "·", one]);
        }
    }
    sheet.cite(&["practice", "kstate-livestock"]);
    sum
}

fn index(user: User) -> &'static str {
    match user {
        User::Person => "p",
        User::Beef => "b",
        User::Dairy => "d",
        User::Horse => "h",
    }
}
