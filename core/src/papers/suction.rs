//! The working of the head that a surface pump finds at its suction.

use super::air::{BAROMETRIC, barometric};
use super::head::{fitting_loss, head_of, pipe_loss};
use super::math::{Symbol, formula};
use super::name::Name;
use super::sheet::{Sheet, length, pressure};
use super::working::{Limit, LimitKind, Working, found};
use crate::evaluate::Evaluation;
use crate::finding::Finding;
use crate::job::{Field, Origin, Part};
use crate::quantity::feet;

pub(super) const SUCTION_LIFT: Symbol = Symbol::of("z", "s");
const VAPOR: Symbol = Symbol::of("p", "v");
const OF_AIR: Symbol = Symbol::of("h", "b");
const OF_VAPOR: Symbol = Symbol::of("h", "vp");
const AVAILABLE: Symbol = Symbol::of("NPSH", "a");
const REQUIRED: Symbol = Symbol::of("NPSH", "r");
const MARGIN: Symbol = Symbol::of("NPSH", "m");
const NEEDED: Symbol = Symbol::of("NPSH", "n");

pub(super) fn suction_head(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let suction = evaluation.water.suction?;
    let inputs = &evaluation.inputs;
    barometric(inputs, &mut sheet)?;
    head_of(evaluation, (OF_AIR, BAROMETRIC), suction.barometric, &mut sheet)?;
    let vapor = evaluation.water.system.as_ref()?.liquid.vapor_pressure;
    sheet.put(VAPOR, Name::VaporPressure, pressure(vapor), Origin::Table);
    sheet.cite(&["iapws-sr1-86"]);
    head_of(evaluation, (OF_VAPOR, VAPOR), suction.vapor, &mut sheet)?;
    sheet.take(inputs, SUCTION_LIFT, Name::SuctionLift, Field::SuctionLift)?;
    let (pipe, fittings) = (pipe_loss(Part::Suction), fitting_loss(Part::Suction));
    sheet.put(pipe, Name::PipeLoss(Part::Suction), length(suction.pipe), Origin::WorkedOut);
    sheet.put(fittings, Name::FittingLoss(Part::Suction), length(suction.fittings), Origin::WorkedOut);
    let formula = formula![OF_AIR, "−", OF_VAPOR, "−", SUCTION_LIFT, "−", pipe, "−", fittings];
    let result = sheet.step(AVAILABLE, formula, length(suction.available()));

    let short = found(evaluation, |finding| matches!(finding, Finding::NpshShort { .. }));
    let limit = match inputs.entered.get(Field::NpshRequired, feet) {
        Some(required) => {
            let margin = inputs.entered.get(Field::NpshMargin, feet)?;
            sheet.take(inputs, REQUIRED, Name::NpshRequired, Field::NpshRequired)?;
            sheet.take(inputs, MARGIN, Name::NpshMargin, Field::NpshMargin)?;
            let needed = sheet.step(NEEDED, formula![REQUIRED, "+", MARGIN], length(required + margin));
            Some(Limit::unless(short, LimitKind::AtLeast, result, needed))
        }
        // The pump's own figure is not known, but water that boils is short for any pump.
        None => short.map(|_| Limit::unless(short, LimitKind::AtLeast, result, sheet.shown(length(feet(0.0))))),
    };
    Some(Working { limit, ..sheet.done(result, &["hi-9.6.1", "nist-sp-811"]) })
}
