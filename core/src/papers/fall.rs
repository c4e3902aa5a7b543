//! The working of the drawdown, and of the flow that draws the water down to the pump.

use super::conversion::Conversion;
use super::demand::{FLOW, asked};
use super::level::STATIC;
use super::math::{Math, Measured, Symbol, formula};
use super::name::Name;
use super::sheet::{DEPTH, Sheet, flow, length, plain};
use super::working::{Limit, LimitKind, Working, found};
use crate::evaluate::{Evaluation, Law};
use crate::finding::{Finding, Supplier};
use crate::job::{Field, Inputs, Origin};
use crate::quantity::{SpecificCapacity, Unit, VolumeRate, WellLossCoefficient, feet, in_gallons_per_minute_per_foot};
use crate::water::well::{
    Aquifer, EULER_GAMMA, cooper_jacob_drawdown, cooper_jacob_holds, theis_argument, theis_drawdown, well_function,
    well_loss,
};
use core::f64::consts::PI;

pub(super) const DRAWDOWN: Symbol = Symbol::plain("s");
const MEASURED: Symbol = Symbol::of("s", "1");
const MEASURED_AT: Symbol = Symbol::of("Q", "1");
const OF_AQUIFER: Symbol = Symbol::of("s", "a");
const OF_WELL: Symbol = Symbol::of("s", "w");
const SHORT: Symbol = Symbol::of("s", "c");
const ROOM: Symbol = Symbol::of("s", "max");
const CAPACITY: Symbol = Symbol::of("C", "s");
const AQUIFER_CAPACITY: Symbol = Symbol::of("C", "a");
const LOSS: Symbol = Symbol::of("C", "w");
const TRANSMISSIVITY: Symbol = Symbol::plain("T");
const STORAGE: Symbol = Symbol::plain("S");
const BORE: Symbol = Symbol::of("D", "b");
const RADIUS: Symbol = Symbol::of("r", "w");
const TIME: Symbol = Symbol::plain("t");
const ARGUMENT: Symbol = Symbol::plain("u");
const FUNCTION: Symbol = Symbol::plain("W(u)");
const EULER: Symbol = Symbol::plain("γ");
const GIVES: Symbol = Symbol::of("Q", "w");

pub(super) fn drawdown(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let result = fall(evaluation, &mut sheet)?;
    Some(sheet.done(result, &[]))
}

/// Puts in what the law of the drawdown needs and works the drawdown out.
pub(super) fn fall(evaluation: &Evaluation, sheet: &mut Sheet) -> Option<Measured> {
    let (inputs, result) = (&evaluation.inputs, length(evaluation.water.drawdown?));
    Some(match evaluation.water.law? {
        Law::Fixed(_) => sheet.take(inputs, DRAWDOWN, Name::Drawdown, Field::Drawdown)?,
        Law::Measured { at, .. } => {
            let asked = asked(evaluation, sheet)?;
            sheet.take(inputs, MEASURED, Name::MeasuredDrawdown, Field::Drawdown)?;
            sheet.put(MEASURED_AT, Name::MeasuredAt, flow(at), asked.origin);
            let formula = formula![MEASURED, "·", Math::Fraction(formula![FLOW], formula![MEASURED_AT])];
            sheet.step(DRAWDOWN, formula, result)
        }
        Law::Capacity(_) => {
            asked(evaluation, sheet)?;
            sheet.take(inputs, CAPACITY, Name::SpecificCapacity, Field::SpecificCapacity)?;
            sheet.step(DRAWDOWN, vec![Math::Fraction(formula![FLOW], formula![CAPACITY])], result)
        }
        Law::Aquifer { aquifer, loss } => {
            let flow = asked(evaluation, sheet)?.value;
            by_aquifer(inputs, flow, aquifer, loss, sheet)?
        }
    })
}

/// Theis, the short form beside it where it holds, and the loss of the well where it has one.
fn by_aquifer(
    inputs: &Inputs,
    flow: VolumeRate,
    aquifer: Aquifer,
    loss: WellLossCoefficient,
    sheet: &mut Sheet,
) -> Option<Measured> {
    let u = well_argument(inputs, aquifer, sheet)?;
    let has_loss = loss.value > 0.0;
    let daily = sheet.unit(Conversion::DailyFlow);
    let pi = sheet.pi();
    let slope = || Math::Fraction(formula![FLOW, "·", daily], formula![4.0, "·", pi, "·", TRANSMISSIVITY]);
    let of_aquifer = theis_drawdown(flow, aquifer).ok()?;
    let symbol = if has_loss { OF_AQUIFER } else { DRAWDOWN };
    let mut result = sheet.step(symbol, formula![slope(), "·", FUNCTION], length(of_aquifer));
    if cooper_jacob_holds(u) {
        let inverse = Math::Fraction(formula![1.0], formula![ARGUMENT]);
        let short = cooper_jacob_drawdown(flow, aquifer).ok()?;
        sheet.step(SHORT, formula![slope(), "·", "(", "ln", "(", inverse, ")", "−", EULER, ")"], length(short));
        sheet.cite(&["cooper-jacob-1946"]);
    }
    if has_loss {
        let of_well = well_loss(loss, flow).ok()?;
        sheet.take(inputs, LOSS, Name::WellLoss, Field::WellLoss)?;
        let through = in_loss(FLOW, sheet);
        sheet.step(OF_WELL, formula![LOSS, "·", Math::Power(through, 2.0)], length(of_well));
        result = sheet.step(DRAWDOWN, formula![OF_AQUIFER, "+", OF_WELL], length(of_aquifer + of_well));
        sheet.cite(&["jacob-1947"]);
    }
    Some(result)
}

/// A flow, or a flow per length, in the units of the coefficient of the well's loss.
fn in_loss(symbol: Symbol, sheet: &mut Sheet) -> Vec<Math> {
    if sheet.is_us() {
        return formula![symbol];
    }
    let flows = sheet.unit(Conversion::Flow);
    vec![Math::Fraction(formula![symbol], formula![flows])]
}

/// The argument of the well function and the function there: by its series where the first terms are enough, else from
/// its table.
fn well_argument(inputs: &Inputs, aquifer: Aquifer, sheet: &mut Sheet) -> Option<f64> {
    sheet.take(inputs, TRANSMISSIVITY, Name::Transmissivity, Field::Transmissivity)?;
    sheet.take(inputs, STORAGE, Name::Storage, Field::Storage)?;
    sheet.take(inputs, BORE, Name::BoreDiameter, Field::BoreDiameter)?;
    sheet.take(inputs, TIME, Name::PumpingTime, Field::AquiferTime)?;
    sheet.cite(&["theis-1935"]);
    let diameters = sheet.unit(Conversion::Diameter);
    let half = Math::Fraction(formula![BORE], formula![2.0, "·", diameters]);
    sheet.step(RADIUS, vec![half], length(aquifer.radius));
    let u = theis_argument(aquifer).ok()?;
    // A day has 24 hours.
    let mut over = formula![Math::Power(formula![RADIUS], 2.0), "·", STORAGE, "·", 24.0];
    if sheet.is_us() {
        let volumes = sheet.unit(Conversion::Volume);
        over.extend(formula!["·", volumes]);
    }
    let under = formula![4.0, "·", TRANSMISSIVITY, "·", TIME];
    sheet.step(ARGUMENT, vec![Math::Fraction(over, under)], plain(u));
    if !cooper_jacob_holds(u) {
        let function = if u > 700.0 { 0.0 } else { well_function(u).ok()? };
        sheet.put(FUNCTION, Name::WellFunction, plain(function), Origin::Table);
        return Some(u);
    }
    sheet.put(EULER, Name::EulerGamma, plain(EULER_GAMMA), Origin::Definition);
    let term = |power: f64, under: f64| Math::Fraction(vec![Math::Power(formula![ARGUMENT], power)], formula![under]);
    let (second, third) = (term(2.0, 4.0), term(3.0, 18.0));
    let inverse = Math::Fraction(formula![1.0], formula![ARGUMENT]);
    let series = formula!["ln", "(", inverse, ")", "−", EULER, "+", ARGUMENT, "−", second, "+", third];
    sheet.step(FUNCTION, series, plain(well_function(u).ok()?));
    sheet.cite(&["abramowitz-stegun-1964"]);
    Some(u)
}

pub(super) fn well_gives(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let (inputs, water) = (&evaluation.inputs, &evaluation.water);
    let gives = water.well_gives?;
    sheet.take(inputs, DEPTH, Name::PumpSetting, Field::PumpSetting)?;
    sheet.take(inputs, STATIC, Name::StaticLevel, Field::StaticLevel)?;
    let room = inputs.entered.get(Field::PumpSetting, feet)? - water.static_level?;
    sheet.step(ROOM, formula![DEPTH, "−", STATIC], length(room));
    let formula = match water.law? {
        Law::Fixed(_) => return None,
        Law::Measured { at, .. } => {
            sheet.take(inputs, MEASURED, Name::MeasuredDrawdown, Field::Drawdown)?;
            sheet.put(MEASURED_AT, Name::MeasuredAt, flow(at), water.demand?.flow.origin);
            formula![MEASURED_AT, "·", Math::Fraction(formula![ROOM], formula![MEASURED])]
        }
        Law::Capacity(_) => {
            sheet.take(inputs, CAPACITY, Name::SpecificCapacity, Field::SpecificCapacity)?;
            formula![CAPACITY, "·", ROOM]
        }
        Law::Aquifer { aquifer, loss } => from_aquifer(inputs, aquifer, loss, &mut sheet)?,
    };
    let result = sheet.step(GIVES, formula, flow(gives));
    let by_well = |finding: &Finding| matches!(finding, Finding::DemandNotMet { by: Supplier::Well, .. });
    // A pump at full speed draws all that the system lets through, be it more than is asked for.
    let duty = water.pump.as_ref().and_then(|pump| pump.duty.ok());
    let limit = water.demand.map(|demand| {
        let asked = demand.flow.value;
        let drawn = sheet.shown(flow(duty.map_or(asked, |duty| duty.flow.max(asked))));
        Limit::unless(found(evaluation, by_well), LimitKind::AtLeast, result, drawn)
    });
    Some(Working { limit, ..sheet.done(result, &[]) })
}

/// The flow of an aquifer: its own specific capacity times the drawdown, less what the well's loss takes.
fn from_aquifer(inputs: &Inputs, aquifer: Aquifer, loss: WellLossCoefficient, sheet: &mut Sheet) -> Option<Vec<Math>> {
    let u = well_argument(inputs, aquifer, sheet)?;
    let capacity: SpecificCapacity = 4.0 * PI * aquifer.transmissivity / well_function(u).ok()?;
    let (daily, pi) = (sheet.unit(Conversion::DailyFlow), sheet.pi());
    let own = Math::Fraction(formula![4.0, "·", pi, "·", TRANSMISSIVITY], formula![daily, "·", FUNCTION]);
    let per_length = (in_gallons_per_minute_per_foot(capacity), Unit::GallonPerMinutePerFoot);
    sheet.step(AQUIFER_CAPACITY, vec![own], per_length);
    if loss.value == 0.0 {
        return Some(formula![AQUIFER_CAPACITY, "·", ROOM]);
    }
    sheet.take(inputs, LOSS, Name::WellLoss, Field::WellLoss)?;
    sheet.cite(&["jacob-1947"]);
    let through = in_loss(AQUIFER_CAPACITY, sheet);
    let more = formula![1.0, "+", 4.0, "·", LOSS, "·", ROOM, "·", Math::Power(through, 2.0)];
    let over = formula![2.0, "·", AQUIFER_CAPACITY, "·", ROOM];
    Some(vec![Math::Fraction(over, formula![1.0, "+", Math::Root(more)])])
}
