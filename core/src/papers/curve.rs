//! The working of a point of the pump's curve at the speed that the table tells it for.

use super::full_speed::TAKES;
use super::head::TOTAL;
use super::math::{Math, Symbol, formula};
use super::name::Name;
use super::pump::{CURVE_HEAD, EFFICIENCY, FLOW, ON_CURVE, RATIO, SHAFT};
use super::sheet::{Sheet, flow, length, plain, power};
use super::working::Working;
use crate::evaluate::Evaluation;
use crate::job::Origin;
use crate::pump::affinity::efficiency_of;
use crate::pump::power::shaft_power_of;

const CURVE_POWER: Symbol = Symbol::of("P", "q");

pub(super) fn point(evaluation: &Evaluation, place: usize, mut sheet: Sheet) -> Option<Working> {
    let water = &evaluation.water;
    let (pump, system) = (water.pump.as_ref()?, water.system.as_ref()?);
    let (at, points) = pump.points();
    let (rate, lift) = *points.get(place)?;
    let (curve, ratio) = (pump.curve.as_ref()?, pump.ratio(at).ok()?);
    sheet.put(RATIO, Name::SpeedRatio, plain(ratio), Origin::WorkedOut);
    sheet.put(ON_CURVE, Name::CurveFlow, flow(rate / ratio), Origin::WorkedOut);
    sheet.put(CURVE_HEAD, Name::CurveHead, length(curve.head(rate / ratio).ok()?), Origin::WorkedOut);
    let rate_there = sheet.step(FLOW, formula![RATIO, "·", ON_CURVE], flow(rate));
    let squared = Math::Power(formula![RATIO], 2.0);
    let result = sheet.step(TOTAL, formula![squared, "·", CURVE_HEAD], length(lift));
    let mut more = vec![rate_there];
    if let Ok(Some(share)) = efficiency_of(curve, rate, ratio) {
        more.push(sheet.put(EFFICIENCY, Name::PumpEfficiency, plain(share), Origin::WorkedOut));
    }
    if let Ok(Some(shaft)) = shaft_power_of(curve, rate, ratio, system.liquid.density) {
        let cubed = ratio * ratio * ratio;
        sheet.put(CURVE_POWER, Name::CurvePower, power(shaft / cubed), Origin::WorkedOut);
        more.push(sheet.step(SHAFT, formula![Math::Power(formula![RATIO], 3.0), "·", CURVE_POWER], power(shaft)));
    }
    if let Ok(takes) = system.head(rate) {
        more.push(sheet.put(TAKES, Name::LineHead, length(takes.total()), Origin::WorkedOut));
    }
    Some(Working { more, ..sheet.done(result, &["pump-handbook", "fritsch-carlson-1980"]) })
}
