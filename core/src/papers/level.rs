//! The working of the levels in the well.

use super::fall::{DRAWDOWN, fall};
use super::math::{Symbol, formula};
use super::name::Name;
use super::sheet::{DEPTH, Sheet, length};
use super::working::{Limit, LimitKind, Working, found};
use crate::evaluate::Evaluation;
use crate::finding::Finding;
use crate::job::Field;

pub(super) const STATIC: Symbol = Symbol::of("h", "0");
pub(super) const PUMPING: Symbol = Symbol::plain("h");
const SUBMERGENCE: Symbol = Symbol::plain("y");
const MINIMUM: Symbol = Symbol::of("y", "min");

/// Puts the level at rest in and works the pumping level out, drawdown first.
fn level(evaluation: &Evaluation, sheet: &mut Sheet) -> Option<()> {
    let pumping = evaluation.water.pumping_level?;
    sheet.take(&evaluation.inputs, STATIC, Name::StaticLevel, Field::StaticLevel)?;
    fall(evaluation, sheet)?;
    sheet.step(PUMPING, formula![STATIC, "+", DRAWDOWN], length(pumping));
    Some(())
}

pub(super) fn pumping_level(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    level(evaluation, &mut sheet)?;
    let result = sheet.shown(length(evaluation.water.pumping_level?));
    Some(sheet.done(result, &[]))
}

pub(super) fn submergence(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let above = evaluation.water.submergence?;
    let inputs = &evaluation.inputs;
    sheet.take(inputs, DEPTH, Name::PumpSetting, Field::PumpSetting)?;
    level(evaluation, &mut sheet)?;
    let result = sheet.step(SUBMERGENCE, formula![DEPTH, "−", PUMPING], length(above));
    let little = found(evaluation, |finding| matches!(finding, Finding::PumpingLevelAtPump { .. }));
    let limit = sheet
        .take(inputs, MINIMUM, Name::MinimumSubmergence, Field::MinimumSubmergence)
        .map(|minimum| Limit::unless(little, LimitKind::AtLeast, result, minimum));
    Some(Working { limit, ..sheet.done(result, &["practice"]) })
}
