//! The working of the levels in the well.

use super::math::{Symbol, formula};
use super::working::{DEPTH, Limit, LimitKind, Name, Sheet, Working, length};
use crate::evaluate::Evaluation;
use crate::finding::Finding;
use crate::job::{Field, Origin};
use crate::quantity::{Length, feet};

const STATIC: Symbol = Symbol::of("h", "0");
const DRAWDOWN: Symbol = Symbol::plain("s");
const PUMPING: Symbol = Symbol::plain("h");
const SUBMERGENCE: Symbol = Symbol::plain("y");
const MINIMUM: Symbol = Symbol::of("y", "min");

/// Puts both levels in and works the pumping level out.
fn level(evaluation: &Evaluation, sheet: &mut Sheet) -> Option<Length> {
    let pumping = evaluation.water.pumping_level?;
    let drawdown = evaluation.water.drawdown?;
    sheet.put(STATIC, Name::StaticLevel, length(evaluation.water.static_level?), Origin::Typed);
    sheet.put(DRAWDOWN, Name::Drawdown, length(drawdown), Origin::Typed);
    sheet.step(PUMPING, formula![STATIC, "+", DRAWDOWN], length(pumping));
    Some(pumping)
}

pub(super) fn pumping_level(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let pumping = level(evaluation, &mut sheet)?;
    let (value, unit) = length(pumping);
    let result = sheet.shown(value, unit);
    Some(sheet.done(result, &[]))
}

pub(super) fn submergence(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let above = evaluation.water.submergence?;
    let setting = evaluation.inputs.pump_setting.as_ref().ok()?;
    sheet.put(DEPTH, Name::PumpSetting, length(setting.value), setting.origin);
    level(evaluation, &mut sheet)?;
    let result = sheet.step(SUBMERGENCE, formula![DEPTH, "−", PUMPING], length(above));
    let minimum = evaluation.inputs.entered.take(Field::MinimumSubmergence, feet).ok().flatten();
    let little = |finding: &&Finding| matches!(finding, Finding::PumpingLevelAtPump { .. });
    let severity = evaluation.findings.iter().find(little).map(Finding::severity);
    let limit = minimum.map(|minimum| {
        sheet.put(MINIMUM, Name::MinimumSubmergence, length(minimum.value), minimum.origin);
        let (value, unit) = length(minimum.value);
        let limit = sheet.shown(value, unit);
        Limit { kind: LimitKind::AtLeast, actual: result, limit, holds: severity.is_none(), severity }
    });
    Some(Working { limit, ..sheet.done(result, &["practice"]) })
}
