//! The working of what a part of the line takes from the water: straight pipe by both methods, and fittings.

use super::conversion::Conversion;
use super::demand::{FLOW, asked};
use super::head::TEMPERATURE;
use super::math::{Math, Measured, Symbol, formula};
use super::name::Name;
use super::sheet::{Sheet, diameter, length, plain, speed};
use super::working::{Caveat, EnteredValue, Limit, LimitKind, Working, found};
use crate::evaluate::{Evaluation, Pipework};
use crate::finding::Finding;
use crate::job::{Field, Inputs, Origin, Part};
use crate::quantity::{Unit, Velocity, feet};
use crate::standards::pipe::Series;
use crate::water::friction::{Friction, Regime};
use crate::water::line::{FrictionMethod, SectionLoss, usual_speed};

pub(super) const SPEED: Symbol = Symbol::plain("v");
pub(super) const INSIDE: Symbol = Symbol::of("D", "i");
pub(super) const PIPE: Symbol = Symbol::of("L", "p");
const ROUGHNESS: Symbol = Symbol::plain("ε");
const RELATIVE: Symbol = Symbol::of("ε", "r");
const VISCOSITY: Symbol = Symbol::plain("ν");
const REYNOLDS: Symbol = Symbol::plain("Re");
const FACTOR: Symbol = Symbol::of("f", "D");
const SIDES: [Symbol; 2] = [Symbol::of("x", "1"), Symbol::of("x", "2")];
const COEFFICIENT: Symbol = Symbol::of("C", "h");
const DARCY: Symbol = Symbol::of("h", "f");
const HAZEN: Symbol = Symbol::of("h", "w");
const SUM: Symbol = Symbol::plain("K");
const FITTINGS: Symbol = Symbol::of("h", "k");

fn part_of(evaluation: &Evaluation, part: Part) -> Option<(&Pipework, &SectionLoss)> {
    let (head, system) = (evaluation.water.head.as_ref()?, evaluation.water.system.as_ref()?);
    system.pipes.iter().zip(&head.sections).find(|(pipe, _)| pipe.part == part)
}

/// Puts the inside diameter of a pipe in, with its size and the standard that it is from.
pub(super) fn put_inside(pipe: &Pipework, sheet: &mut Sheet) {
    sheet.put(INSIDE, Name::InsideDiameter(pipe.part), diameter(pipe.inside.value), pipe.inside.origin);
    if let Some(size) = pipe.size {
        sheet.enter(Name::NominalSize, EnteredValue::Nominal(size.size()));
        sheet.cite(&[standard(size.series)]);
    }
}

/// The standard of a series.
fn standard(series: Series) -> &'static str {
    match series {
        Series::SteelSchedule40 => "asme-b36.10",
        Series::PvcSchedule40 | Series::PvcSchedule80 => "astm-d1785",
        Series::PvcSdr21 | Series::PvcSdr26 => "astm-d2241",
        Series::PolyethyleneDr(_) => "astm-d3035",
        Series::PolyethyleneSidr(_) => "astm-d2239",
    }
}

/// Puts the length of a pipe in.
pub(super) fn put_length(inputs: &Inputs, pipe: &Pipework, sheet: &mut Sheet) {
    let field = pipe.part.length().unwrap_or(Field::PumpSetting);
    let long = length(pipe.section.pipe.length);
    sheet.put(PIPE, Name::PipeLength(pipe.part), long, inputs.origin(field));
}

/// Writes the mean speed of the flow that is asked for in a pipe.
pub(super) fn mean_speed(
    evaluation: &Evaluation,
    pipe: &Pipework,
    velocity: Velocity,
    sheet: &mut Sheet,
) -> Option<Measured> {
    asked(evaluation, sheet)?;
    put_inside(pipe, sheet);
    let (diameters, flows, pi) = (sheet.unit(Conversion::Diameter), sheet.unit(Conversion::Flow), sheet.pi());
    let over = formula![4.0, "·", FLOW, "·", Math::Power(formula![diameters], 2.0)];
    let under = formula![pi, "·", flows, "·", Math::Power(formula![INSIDE], 2.0)];
    Some(sheet.step(SPEED, vec![Math::Fraction(over, under)], speed(velocity)))
}

pub(super) fn friction(evaluation: &Evaluation, part: Part, mut sheet: Sheet) -> Option<Working> {
    let (pipe, loss) = part_of(evaluation, part)?;
    let method = evaluation.water.system.as_ref()?.method;
    let velocity = mean_speed(evaluation, pipe, loss.darcy_weisbach.velocity, &mut sheet)?;
    put_length(&evaluation.inputs, pipe, &mut sheet);
    let darcy = by_darcy(evaluation, pipe, loss, &mut sheet)?;
    let hazen = by_hazen(pipe, loss, &mut sheet);
    let result = match method {
        FrictionMethod::DarcyWeisbach => darcy,
        FrictionMethod::HazenWilliams => hazen,
    };
    let fast = found(evaluation, |finding| matches!(finding, Finding::PipeFast { part: fast, .. } if *fast == part));
    let usual = sheet.shown(speed(usual_speed(pipe.material)));
    let has_length = pipe.section.pipe.length > feet(0.0);
    let limit = has_length.then(|| Limit::unless(fast, LimitKind::AtMost, velocity, usual));
    Some(Working { limit, ..sheet.done(result, &["practice"]) })
}

/// Reynolds number, factor, head.
fn by_darcy(evaluation: &Evaluation, pipe: &Pipework, loss: &SectionLoss, sheet: &mut Sheet) -> Option<Measured> {
    let (viscosity, diameters) = (sheet.unit(Conversion::Viscosity), sheet.unit(Conversion::Diameter));
    let gravity = sheet.unit(Conversion::Gravity);
    sheet.take(&evaluation.inputs, TEMPERATURE, Name::WaterTemperature, Field::WaterTemperature)?;
    let square_mm = 1e6 * evaluation.water.system.as_ref()?.liquid.viscosity.value;
    sheet.put(VISCOSITY, Name::Viscosity, (square_mm, Unit::SquareMillimeterPerSecond), Origin::Table);
    sheet.cite(&["iapws-sr6-08", "moody-1944"]);
    let Some(friction) = loss.darcy_weisbach.friction else {
        // The water all but stands: 64/Re put into the law of friction.
        let over = formula![32.0, "·", VISCOSITY, "·", PIPE, "·", SPEED, "·", Math::Power(formula![diameters], 2.0)];
        let under = formula![viscosity, "·", gravity, "·", Math::Power(formula![INSIDE], 2.0)];
        return Some(sheet.step(DARCY, vec![Math::Fraction(over, under)], length(loss.darcy_weisbach.head)));
    };
    let reynolds = Math::Fraction(formula![SPEED, "·", INSIDE, "·", viscosity], formula![diameters, "·", VISCOSITY]);
    sheet.step(REYNOLDS, vec![reynolds], plain(friction.reynolds));
    factor(pipe, friction, sheet);
    let long = Math::Fraction(formula![PIPE, "·", diameters], formula![INSIDE]);
    let moved = Math::Fraction(vec![Math::Power(formula![SPEED], 2.0)], formula![2.0, "·", gravity]);
    Some(sheet.step(DARCY, formula![FACTOR, "·", long, "·", moved], length(loss.darcy_weisbach.head)))
}

/// Laminar by its law; turbulent by the factor that was found, put into both sides of its equation.
fn factor(pipe: &Pipework, friction: Friction, sheet: &mut Sheet) {
    let value = plain(friction.factor);
    if friction.regime == Regime::Laminar {
        sheet.step(FACTOR, vec![Math::Fraction(formula![64.0], formula![REYNOLDS])], value);
        return;
    }
    if friction.regime == Regime::Transition {
        sheet.warn(Caveat::TransitionFlow);
    }
    let relative = (pipe.roughness.value / pipe.inside.value).value;
    sheet.put(ROUGHNESS, Name::Roughness, diameter(pipe.roughness.value), pipe.roughness.origin);
    sheet.step(RELATIVE, vec![Math::Fraction(formula![ROUGHNESS], formula![INSIDE])], plain(relative));
    sheet.put(FACTOR, Name::FrictionFactor, value, Origin::WorkedOut);
    let root = || Math::Root(formula![FACTOR]);
    let left = 1.0 / friction.factor.sqrt();
    let inside = relative / 3.7 + 2.51 / (friction.reynolds * friction.factor.sqrt());
    sheet.step(SIDES[0], vec![Math::Fraction(formula![1.0], vec![root()])], plain(left));
    let rough = Math::Fraction(formula![RELATIVE], formula![3.7]);
    let smooth = Math::Fraction(formula![2.51], formula![REYNOLDS, "·", root()]);
    let right = formula![-2.0, "·", "log", "(", rough, "+", smooth, ")"];
    sheet.step(SIDES[1], right, plain(-2.0 * inside.log10()));
    sheet.cite(&["colebrook-1939", "pipe-surfaces"]);
}

/// The form of the trade's tables, with gallons a minute and inches.
fn by_hazen(pipe: &Pipework, loss: &SectionLoss, sheet: &mut Sheet) -> Measured {
    sheet.put(COEFFICIENT, Name::HazenWilliams, plain(pipe.hazen_williams.value), pipe.hazen_williams.origin);
    let mut flow = formula![100.0, "·", FLOW];
    let mut inside = formula![INSIDE];
    if !sheet.is_us() {
        let (flows, inches) = (sheet.unit(Conversion::TradeFlow), sheet.unit(Conversion::TradeDiameter));
        flow.extend(formula!["·", flows]);
        inside = formula!["(", Math::Fraction(inside, formula![inches]), ")"];
    }
    let share = formula!["(", Math::Fraction(flow, formula![COEFFICIENT]), ")"];
    let slope = Math::Fraction(vec![Math::Power(share, 1.852)], vec![Math::Power(inside, 4.8655)]);
    sheet.cite(&["williams-hazen-1933", "pipe-surfaces"]);
    sheet.step(HAZEN, formula![0.002_083, "·", PIPE, "·", slope], length(loss.hazen_williams))
}

pub(super) fn fittings(evaluation: &Evaluation, part: Part, mut sheet: Sheet) -> Option<Working> {
    let (pipe, loss) = part_of(evaluation, part)?;
    mean_speed(evaluation, pipe, loss.darcy_weisbach.velocity, &mut sheet)?;
    let [_, _, _, field] = part.fields();
    sheet.take(&evaluation.inputs, SUM, Name::FittingSum, field)?;
    let gravity = sheet.unit(Conversion::Gravity);
    let moved = Math::Fraction(vec![Math::Power(formula![SPEED], 2.0)], formula![2.0, "·", gravity]);
    let result = sheet.step(FITTINGS, formula![SUM, "·", moved], length(loss.fittings));
    Some(sheet.done(result, &["pipe-surfaces", "nist-sp-811"]))
}
