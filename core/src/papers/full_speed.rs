//! The working of what the pump gives at its highest frequency, of a relief valve, and of its best flow.

use super::Measured;
use super::head::{OF_PRESSURE, RISE, TOTAL, head_of};
use super::math::{Math, Symbol, formula};
use super::name::Name;
use super::pump::{CURVE_HEAD, FLOW, MOST, OF_CURVE, ON_CURVE, RATIO};
use super::safety::{RATING, put_rest};
use super::sheet::{Sheet, flow, length, plain};
use super::working::Working;
use crate::evaluate::{Evaluation, Pumping};
use crate::job::{Field, Origin};
use crate::quantity::{Unit, VolumeRate};
use crate::water::head::pressure_head;

const BEST: Symbol = Symbol::of("q", "e");
const SHARE: Symbol = Symbol::of("x", "b");
pub(super) const TAKES: Symbol = Symbol::of("H", "s");

/// Writes what the curve, carried to the highest frequency, has at a flow that was found: its own flow and head there, and
/// the head at that frequency. The flow is the answer.
fn on_curve(evaluation: &Evaluation, pump: &Pumping, at: VolumeRate, sheet: &mut Sheet) -> Option<Measured> {
    let ratio = pump.ratio(pump.band.1).ok()?;
    sheet.take(&evaluation.inputs, MOST, Name::MostFrequency, Field::MostFrequency)?;
    sheet.take(&evaluation.inputs, OF_CURVE, Name::CurveFrequency, Field::CurveFrequency)?;
    sheet.step(RATIO, vec![Math::Fraction(formula![MOST], formula![OF_CURVE])], plain(ratio));
    let result = sheet.put(FLOW, Name::PumpFlow, flow(at), Origin::WorkedOut);
    sheet.step(ON_CURVE, vec![Math::Fraction(formula![FLOW], formula![RATIO])], flow(at / ratio));
    let head = pump.curve.as_ref()?.head(at / ratio).ok()?;
    sheet.put(CURVE_HEAD, Name::CurveHead, length(head), Origin::WorkedOut);
    let carried = formula![CURVE_HEAD, "·", Math::Power(formula![RATIO], 2.0)];
    sheet.step(TOTAL, carried, length(head * (ratio * ratio)));
    Some(result)
}

/// Where pump and line meet: the flow at which the head of the pump is the head that the line takes.
pub(super) fn full_speed(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let pump = evaluation.water.pump.as_ref()?;
    let point = pump.most?.ok()?;
    let takes = evaluation.water.system.as_ref()?.head(point.flow).ok()?.total();
    let result = on_curve(evaluation, pump, point.flow, &mut sheet)?;
    sheet.put(TAKES, Name::LineHead, length(takes), Origin::WorkedOut);
    Some(sheet.done(result, &["pump-handbook", "fritsch-carlson-1980"]))
}

/// The flow of a relief valve that holds the least rating: where the pump has the head up to the valve and of that pressure.
pub(super) fn relief(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let (pump, dead) = (evaluation.water.pump.as_ref()?, evaluation.water.dead_head?);
    let (at, system) = (dead.relief?, evaluation.water.system.as_ref()?);
    let rest = put_rest(evaluation, &mut sheet)?;
    sheet.take(&evaluation.inputs, RISE, Name::Rise, Field::Rise)?;
    sheet.take(&evaluation.inputs, RATING, Name::PressureRating, Field::PressureRating)?;
    let held = pressure_head(dead.rating.value, system.liquid.density).ok()?;
    head_of(evaluation, (OF_PRESSURE, RATING), held, &mut sheet)?;
    let needed = system.lift.at_rest() + system.rise + held;
    sheet.step(TAKES, formula![rest, "+", RISE, "+", OF_PRESSURE], length(needed));
    let result = on_curve(evaluation, pump, at, &mut sheet)?;
    Some(sheet.done(result, &["pump-handbook", "fritsch-carlson-1980", "nist-sp-811"]))
}

pub(super) fn share_of_best(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let pump = evaluation.water.pump.as_ref()?;
    let (share, duty) = (pump.share_of_best?, pump.duty.ok()?);
    let (best, _) = pump.curve.as_ref()?.best_efficiency()?;
    sheet.put(FLOW, Name::PumpFlow, flow(duty.flow), Origin::WorkedOut);
    sheet.put(RATIO, Name::SpeedRatio, plain(duty.ratio?), Origin::WorkedOut);
    sheet.put(BEST, Name::BestFlow, flow(best), Origin::WorkedOut);
    let share_of = Math::Fraction(formula![FLOW], formula![RATIO, "·", BEST]);
    let result = sheet.step(SHARE, formula![share_of, "·", 100.0], (100.0 * share, Unit::Percent));
    Some(sheet.done(result, &["pump-handbook"]))
}
