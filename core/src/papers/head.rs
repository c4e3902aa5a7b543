//! The working of what the pump works against, and of the parts that are heads: pressure, velocity.

use super::conversion::Conversion;
use super::level::PUMPING;
use super::math::{Math, Measured, Symbol, formula};
use super::name::Name;
use super::pipe::{SPEED, mean_speed};
use super::sheet::{Sheet, length};
use super::suction::SUCTION_LIFT;
use super::working::Working;
use crate::evaluate::{Evaluation, Lift};
use crate::job::{Field, Origin, Part};
use crate::quantity::{Length, Unit, in_kilograms_per_cubic_meter};
use crate::water::properties::Water;

pub(super) const DENSITY: Symbol = Symbol::plain("ρ");
pub(super) const TEMPERATURE: Symbol = Symbol::of("T", "w");
pub(super) const RISE: Symbol = Symbol::plain("z");
pub(super) const TOTAL: Symbol = Symbol::plain("H");
const GAUGE: Symbol = Symbol::of("p", "g");
pub(super) const OF_PRESSURE: Symbol = Symbol::of("h", "p");
const OF_VELOCITY: Symbol = Symbol::of("h", "v");

/// Head lost in the straight pipe of a part.
pub(super) fn pipe_loss(part: Part) -> Symbol {
    Symbol::of(
        "h",
        match part {
            Part::Drop => "fd",
            Part::Suction => "fu",
            Part::Surface => "fs",
        },
    )
}

/// Head lost in its fittings.
pub(super) fn fitting_loss(part: Part) -> Symbol {
    Symbol::of(
        "h",
        match part {
            Part::Drop => "kd",
            Part::Suction => "ku",
            Part::Surface => "ks",
        },
    )
}

/// Puts the density of the water in, by its temperature.
pub(super) fn density(evaluation: &Evaluation, sheet: &mut Sheet) -> Option<Water> {
    let liquid = evaluation.water.system.as_ref()?.liquid;
    sheet.take(&evaluation.inputs, TEMPERATURE, Name::WaterTemperature, Field::WaterTemperature)?;
    let density = (in_kilograms_per_cubic_meter(liquid.density), Unit::KilogramPerCubicMeter);
    sheet.put(DENSITY, Name::WaterDensity, density, Origin::Table);
    sheet.cite(&["iapws-sr6-08"]);
    Some(liquid)
}

/// What the water weighs per volume. In US units mass and weight have the same number, a pound weighs a pound.
pub(super) fn weight(evaluation: &Evaluation, sheet: &mut Sheet) -> Option<Vec<Math>> {
    density(evaluation, sheet)?;
    if sheet.is_us() {
        return Some(formula![DENSITY]);
    }
    let gravity = sheet.unit(Conversion::Gravity);
    Some(formula![DENSITY, "·", gravity])
}

/// Writes the head of a pressure.
pub(super) fn head_of(
    evaluation: &Evaluation,
    (symbol, pressure): (Symbol, Symbol),
    head: Length,
    sheet: &mut Sheet,
) -> Option<Measured> {
    let (weight, unit) = (weight(evaluation, sheet)?, sheet.unit(Conversion::Pressure));
    let formula = vec![Math::Fraction(formula![pressure, "·", unit], weight)];
    Some(sheet.step(symbol, formula, length(head)))
}

/// Writes the head of the pressure that is held at the gauge.
pub(super) fn gauge_head(evaluation: &Evaluation, sheet: &mut Sheet) -> Option<Measured> {
    let head = evaluation.water.head.as_ref()?.pressure;
    sheet.take(&evaluation.inputs, GAUGE, Name::GaugePressure, Field::Pressure)?;
    head_of(evaluation, (OF_PRESSURE, GAUGE), head, sheet)
}

pub(super) fn of_pressure(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let result = gauge_head(evaluation, &mut sheet)?;
    Some(sheet.done(result, &["nist-sp-811"]))
}

pub(super) fn of_velocity(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let (head, system) = (evaluation.water.head.as_ref()?, evaluation.water.system.as_ref()?);
    let last = system.pipes.last()?;
    mean_speed(evaluation, last, head.sections.last()?.darcy_weisbach.velocity, &mut sheet)?;
    let gravity = sheet.unit(Conversion::Gravity);
    let formula = Math::Fraction(vec![Math::Power(formula![SPEED], 2.0)], formula![2.0, "·", gravity]);
    let result = sheet.step(OF_VELOCITY, vec![formula], length(head.velocity));
    Some(sheet.done(result, &["nist-sp-811"]))
}

pub(super) fn total(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let (head, system) = (evaluation.water.head.as_ref()?, evaluation.water.system.as_ref()?);
    let inputs = &evaluation.inputs;
    let mut sum = match system.lift {
        Lift::Well(..) => {
            sheet.put(PUMPING, Name::PumpingLevel, length(head.lift), Origin::WorkedOut);
            formula![PUMPING]
        }
        Lift::Open(_) => {
            sheet.take(inputs, SUCTION_LIFT, Name::SuctionLift, Field::SuctionLift)?;
            formula![SUCTION_LIFT]
        }
    };
    sheet.take(inputs, RISE, Name::Rise, Field::Rise)?;
    sum.extend(formula!["+", RISE]);
    let mut add = |symbol: Symbol, name: Name, head: Length| {
        sheet.put(symbol, name, length(head), Origin::WorkedOut);
        sum.extend(formula!["+", symbol]);
    };
    for (pipe, loss) in system.pipes.iter().zip(&head.sections) {
        add(pipe_loss(pipe.part), Name::PipeLoss(pipe.part), loss.pipe(system.method));
        add(fitting_loss(pipe.part), Name::FittingLoss(pipe.part), loss.fittings);
    }
    add(OF_PRESSURE, Name::PressureHead, head.pressure);
    add(OF_VELOCITY, Name::VelocityHead, head.velocity);
    let result = sheet.step(TOTAL, sum, length(head.total()));
    Some(sheet.done(result, &[]))
}
