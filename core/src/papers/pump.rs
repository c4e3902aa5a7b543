//! The working of the pump: power at its shaft, the speed for what is asked, the lowest that holds the pressure.

use super::conversion::Conversion;
use super::head::{OF_PRESSURE, RISE, TOTAL, gauge_head, weight};
use super::math::{Math, Symbol, formula};
use super::name::Name;
use super::safety::put_rest;
use super::sheet::{Sheet, flow, length, plain, power};
use super::working::{Limit, LimitKind, Working, found};
use crate::evaluate::{Duty, Evaluation, LEAST_BAND, NoDuty, Pumping};
use crate::finding::{Finding, Supplier};
use crate::job::{Field, Origin};
use crate::pump::curve::PumpCurve;
use crate::pump::power::trade_shaft_power;
use crate::quantity::{Frequency, Length, Unit, VolumeRate, feet, hertz, in_hertz};

pub(super) const FLOW: Symbol = Symbol::plain("Q");
pub(super) const ON_CURVE: Symbol = Symbol::plain("q");
pub(super) const CURVE_HEAD: Symbol = Symbol::of("h", "c");
const SIMILAR: Symbol = Symbol::of("h", "q");
pub(super) const SHUT_OFF: Symbol = Symbol::of("H", "0");
const RATED_SHUT_OFF: Symbol = Symbol::of("H", "c");
pub(super) const RATIO: Symbol = Symbol::plain("r");
const FREQUENCY: Symbol = Symbol::plain("f");
pub(super) const OF_CURVE: Symbol = Symbol::of("f", "c");
pub(super) const MOST: Symbol = Symbol::of("f", "max");
const LEAST: Symbol = Symbol::of("f", "min");
const LOWEST: Symbol = Symbol::of("f", "l");
const USEFUL: Symbol = Symbol::of("f", "u");
pub(super) const EFFICIENCY: Symbol = Symbol::plain("η");
const WATER_POWER: Symbol = Symbol::of("P", "w");
pub(super) const SHAFT: Symbol = Symbol::of("P", "s");
const TRADE: Symbol = Symbol::of("P", "t");

fn frequency(frequency: Frequency) -> (f64, Unit) {
    (in_hertz(frequency), Unit::Hertz)
}

/// Puts flow and head of the duty in: as asked, or where pump and system meet.
fn put_duty(evaluation: &Evaluation, at: VolumeRate, head: Length, sheet: &mut Sheet) -> Option<()> {
    let asked = evaluation.water.demand?.flow;
    let origin = if at == asked.value { asked.origin } else { Origin::WorkedOut };
    sheet.put(FLOW, Name::PumpFlow, flow(at), origin);
    sheet.put(TOTAL, Name::PumpHead, length(head), Origin::WorkedOut);
    Some(())
}

pub(super) fn shaft_power(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let pump = evaluation.water.pump.as_ref()?;
    let duty = pump.duty.ok()?;
    put_duty(evaluation, duty.flow, duty.head, &mut sheet)?;
    let weight = weight(evaluation, &mut sheet)?;
    let (flows, powers) = (sheet.unit(Conversion::Flow), sheet.unit(Conversion::Power));
    // Water that runs by itself takes no power.
    let head = if duty.head < feet(0.0) { vec![Math::Max(formula![TOTAL], formula![0.0])] } else { formula![TOTAL] };
    let over = [weight, formula!["·", FLOW, "·"], head].concat();
    let in_water = Math::Fraction(over, formula![flows, "·", powers]);
    sheet.step(WATER_POWER, vec![in_water], power(duty.water));
    let result = if duty.efficiency.value > 0.0 {
        on_shaft(pump, duty, &mut sheet)
    } else {
        // At the very end of a curve, where it lifts no water, power over efficiency is nothing over nothing.
        sheet.put(SHAFT, Name::ShaftPower, power(duty.shaft), Origin::WorkedOut)
    };
    Some(sheet.done(result, &["pump-handbook", "nist-sp-811"]))
}

/// Efficiency, entered or of the curve, and the power that it leaves; beside it the trade's own formula.
fn on_shaft(pump: &Pumping, duty: Duty, sheet: &mut Sheet) -> super::Measured {
    if let (Some(ratio), Some(_)) = (duty.ratio, &pump.curve) {
        sheet.put(RATIO, Name::SpeedRatio, plain(ratio), Origin::WorkedOut);
        sheet.step(ON_CURVE, vec![Math::Fraction(formula![FLOW], formula![RATIO])], flow(duty.flow / ratio));
    }
    sheet.put(EFFICIENCY, Name::PumpEfficiency, plain(duty.efficiency.value), duty.efficiency.origin);
    let formula = vec![Math::Fraction(formula![WATER_POWER], formula![EFFICIENCY])];
    let result = sheet.step(SHAFT, formula, power(duty.shaft));
    let trade = trade_shaft_power(duty.flow, duty.head, 1.0, duty.efficiency.value);
    if let (true, Ok(trade)) = (sheet.is_us(), trade) {
        let formula = Math::Fraction(formula![FLOW, "·", TOTAL], formula![3960.0, "·", EFFICIENCY]);
        sheet.step(TRADE, vec![formula], power(trade));
    }
    if duty.efficiency.origin == Origin::Assumed {
        sheet.cite(&["practice"]);
    }
    result
}

pub(super) fn speed(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let pump = evaluation.water.pump.as_ref()?;
    let curve = pump.curve.as_ref()?;
    let (at, head, needed) = match pump.duty {
        Ok(duty) => (duty.flow, duty.head, pump.frequency()?),
        Err(NoDuty::Faster { needed }) => {
            let head = evaluation.water.head.as_ref()?.total();
            (evaluation.water.demand?.flow.value, head, needed)
        }
        Err(NoDuty::NoPoint(_)) => return None,
    };
    let ratio = (needed / pump.curve_frequency).value;
    put_duty(evaluation, at, head, &mut sheet)?;
    // The flow where the curve crosses the parabola of similar points; both heads there are the same.
    sheet.put(ON_CURVE, Name::CurveFlow, flow(at / ratio), Origin::WorkedOut);
    sheet.put(CURVE_HEAD, Name::CurveHead, length(curve.head(at / ratio).ok()?), Origin::WorkedOut);
    let share = formula!["(", Math::Fraction(formula![ON_CURVE], formula![FLOW]), ")"];
    let similar = formula![TOTAL, "·", Math::Power(share, 2.0)];
    sheet.step(SIMILAR, similar, length(head / (ratio * ratio)));
    sheet.step(RATIO, vec![Math::Fraction(formula![FLOW], formula![ON_CURVE])], plain(ratio));
    sheet.take(&evaluation.inputs, OF_CURVE, Name::CurveFrequency, Field::CurveFrequency)?;
    let result = sheet.step(FREQUENCY, formula![RATIO, "·", OF_CURVE], frequency(needed));
    let most = sheet.take(&evaluation.inputs, MOST, Name::MostFrequency, Field::MostFrequency)?;
    let by_pump = |finding: &Finding| matches!(finding, Finding::DemandNotMet { by: Supplier::Pump, .. });
    let holds = pump.duty.is_ok();
    let severity = found(evaluation, by_pump).filter(|_| !holds);
    let limit = Some(Limit { kind: LimitKind::AtMost, actual: result, limit: most, holds, severity });
    Some(Working { limit, ..sheet.done(result, &["pump-handbook", "fritsch-carlson-1980"]) })
}

/// Writes the head against a shut valve at the highest frequency.
pub(super) fn shut_off(evaluation: &Evaluation, sheet: &mut Sheet) -> Option<()> {
    let (pump, inputs) = (evaluation.water.pump.as_ref()?, &evaluation.inputs);
    let known = pump.shut_off?;
    if pump.band.1 == pump.curve_frequency {
        sheet.put(SHUT_OFF, Name::ShutOffHead, length(known.value), known.origin);
        return Some(());
    }
    let of_curve = pump.curve.as_ref().and_then(PumpCurve::shut_off_head);
    let rated = of_curve.or_else(|| inputs.entered.get(Field::ShutOffHead, feet))?;
    sheet.put(RATED_SHUT_OFF, Name::RatedShutOffHead, length(rated), known.origin);
    sheet.take(inputs, OF_CURVE, Name::CurveFrequency, Field::CurveFrequency)?;
    sheet.take(inputs, MOST, Name::MostFrequency, Field::MostFrequency)?;
    let share = formula!["(", Math::Fraction(formula![MOST], formula![OF_CURVE]), ")"];
    sheet.step(SHUT_OFF, formula![RATED_SHUT_OFF, "·", Math::Power(share, 2.0)], length(known.value));
    Some(())
}

pub(super) fn lowest_speed(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let (pump, inputs) = (evaluation.water.pump.as_ref()?, &evaluation.inputs);
    let lowest = pump.lowest?;
    shut_off(evaluation, &mut sheet)?;
    let rest = put_rest(evaluation, &mut sheet)?;
    sheet.take(inputs, RISE, Name::Rise, Field::Rise)?;
    gauge_head(evaluation, &mut sheet)?;
    sheet.take(inputs, MOST, Name::MostFrequency, Field::MostFrequency)?;
    let share = Math::Fraction(formula![rest, "+", RISE, "+", OF_PRESSURE], formula![SHUT_OFF]);
    let result = sheet.step(LOWEST, formula![MOST, "·", Math::Root(vec![share])], frequency(lowest));
    let narrow = found(evaluation, |finding| matches!(finding, Finding::SpeedBandNarrow { .. }));
    // Too low for the motor, or too near to the highest: the side that is passed, else the upper one.
    let least = pump.band.0;
    let limit = if lowest < least {
        let least = sheet.take(inputs, LEAST, Name::LeastFrequency, Field::LeastFrequency)?;
        Limit::unless(narrow, LimitKind::AtLeast, result, least)
    } else {
        let useful = frequency(pump.band.1 - hertz(LEAST_BAND));
        let useful = sheet.step(USEFUL, formula![MOST, "−", LEAST_BAND], useful);
        Limit::unless(narrow, LimitKind::AtMost, result, useful)
    };
    let limit = is_judged(limit).then_some(limit);
    Some(Working { limit, ..sheet.done(result, &["pump-handbook", "practice"]) })
}

/// A pump that is switched keeps its speed, and no band is judged: a limit that is passed without a finding is none.
fn is_judged(limit: Limit) -> bool {
    let kept = match limit.kind {
        LimitKind::AtLeast => limit.actual.value >= limit.limit.value * (1.0 - 1e-9),
        LimitKind::AtMost => limit.actual.value <= limit.limit.value + 1e-9 * LEAST_BAND,
    };
    kept || !limit.holds
}
