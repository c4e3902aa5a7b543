//! The working of the water past a submersible motor.

use super::conversion::Conversion;
use super::math::{Math, Symbol, formula};
use super::name::Name;
use super::sheet::{Sheet, diameter, flow, speed};
use super::working::{Limit, LimitKind, Working, found};
use crate::evaluate::{Cooling, Evaluation};
use crate::finding::{Finding, Severity};
use crate::job::{Field, Origin};

const PAST: Symbol = Symbol::of("Q", "m");
const LEAST: Symbol = Symbol::of("Q", "c");
const SPEED: Symbol = Symbol::of("v", "m");
const ADVISED: Symbol = Symbol::of("v", "c");
const AROUND: Symbol = Symbol::of("D", "c");
const MOTOR: Symbol = Symbol::of("D", "m");

/// Puts in what the gap around the motor is worked out from, and its two sides: four times the square of the diameters'
/// unit, and π times what is between both diameters, with the flow's unit.
fn gap(evaluation: &Evaluation, cooling: Cooling, sheet: &mut Sheet) -> Option<[Vec<Math>; 2]> {
    let inputs = &evaluation.inputs;
    let sleeve = sheet.take(inputs, AROUND, Name::AroundMotor, Field::SleeveInside);
    if sleeve.is_none() {
        let origin = inputs.origin(Field::CasingInside);
        sheet.put(AROUND, Name::AroundMotor, diameter(cooling.outer), origin);
    }
    sheet.take(inputs, MOTOR, Name::MotorDiameter, Field::MotorDiameter)?;
    let (diameters, flows, pi) = (sheet.unit(Conversion::Diameter), sheet.unit(Conversion::Flow), sheet.pi());
    let square = |symbol: Symbol| Math::Power(formula![symbol], 2.0);
    let between = formula![pi, "·", flows, "·", "(", square(AROUND), "−", square(MOTOR), ")"];
    Some([formula![4.0, "·", square(diameters)], between])
}

/// The flow that is judged: the least that is drawn for long, or the one that is asked for.
fn put_flow(evaluation: &Evaluation, cooling: Cooling, sheet: &mut Sheet) -> Option<()> {
    if sheet.take(&evaluation.inputs, PAST, Name::FlowPastMotor, Field::LeastFlow).is_none() {
        let origin = evaluation.water.demand?.flow.origin;
        sheet.put(PAST, Name::FlowPastMotor, flow(cooling.flow), origin);
    }
    Some(())
}

fn slow(evaluation: &Evaluation) -> Option<Severity> {
    found(evaluation, |finding| matches!(finding, Finding::MotorCoolingLow { .. }))
}

pub(super) fn cooling(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let cooling = evaluation.water.cooling?;
    put_flow(evaluation, cooling, &mut sheet)?;
    let [over, under] = gap(evaluation, cooling, &mut sheet)?;
    let over = [over, formula!["·", PAST]].concat();
    let result = sheet.step(SPEED, vec![Math::Fraction(over, under)], speed(cooling.speed));
    let advised = sheet.put(ADVISED, Name::AdvisedSpeed, speed(cooling.advised), Origin::Assumed);
    let limit = Some(Limit::unless(slow(evaluation), LimitKind::AtLeast, result, advised));
    Some(Working { limit, ..sheet.done(result, &["practice"]) })
}

const SLEEVE: Symbol = Symbol::of("D", "s");

pub(super) fn widest_sleeve(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let cooling = evaluation.water.cooling?;
    put_flow(evaluation, cooling, &mut sheet)?;
    sheet.put(ADVISED, Name::AdvisedSpeed, speed(cooling.advised), Origin::Assumed);
    sheet.take(&evaluation.inputs, MOTOR, Name::MotorDiameter, Field::MotorDiameter)?;
    let (diameters, flows, pi) = (sheet.unit(Conversion::Diameter), sheet.unit(Conversion::Flow), sheet.pi());
    let square = |symbol: Symbol| Math::Power(formula![symbol], 2.0);
    let over = formula![4.0, "·", square(diameters), "·", PAST];
    let ring = Math::Fraction(over, formula![pi, "·", flows, "·", ADVISED]);
    let formula = vec![Math::Root(formula![square(MOTOR), "+", ring])];
    let result = sheet.step(SLEEVE, formula, diameter(cooling.widest_sleeve));
    Some(sheet.done(result, &["practice"]))
}

pub(super) fn least_flow(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let cooling = evaluation.water.cooling?;
    sheet.put(ADVISED, Name::AdvisedSpeed, speed(cooling.advised), Origin::Assumed);
    let [over, under] = gap(evaluation, cooling, &mut sheet)?;
    let formula = vec![Math::Fraction([formula![ADVISED, "·"], under].concat(), over)];
    let result = sheet.step(LEAST, formula, flow(cooling.least_flow));
    let judged = sheet.shown(flow(cooling.flow));
    let limit = Some(Limit::unless(slow(evaluation), LimitKind::AtLeast, judged, result));
    Some(Working { limit, ..sheet.done(result, &["practice"]) })
}
