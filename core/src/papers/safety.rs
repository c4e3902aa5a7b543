//! The working of what the water does to pipe and tank: a shut valve, a sudden stop, a tank, the string in the well.

use super::air::{BAROMETRIC, barometric};
use super::conversion::Conversion;
use super::demand::{FLOW, asked};
use super::head::{DENSITY, RISE, density, weight};
use super::level::STATIC;
use super::math::{Math, Measured, Symbol, formula};
use super::name::Name;
use super::pipe::{INSIDE, PIPE, SPEED, mean_speed, put_inside, put_length};
use super::pump::{SHUT_OFF, shut_off};
use super::sheet::{DEPTH, Sheet, diameter, plain, pressure, speed};
use super::suction::SUCTION_LIFT;
use super::working::{Limit, LimitKind, Working, found};
use crate::evaluate::{Evaluation, Lift, Tank};
use crate::finding::Finding;
use crate::job::{Field, Origin, Part};
use crate::quantity::{Mass, Pressure, Time, Unit, in_gallons, in_hours, in_pounds, in_pounds_per_foot};
use crate::standards::pipe::Material;
use crate::water::surge::bulk_modulus;

const AT_GAUGE: Symbol = Symbol::of("p", "d");
const AT_PUMP: Symbol = Symbol::of("p", "dp");
pub(super) const RATING: Symbol = Symbol::of("p", "r");

/// The level of the water with the pump at rest, put in.
pub(super) fn put_rest(evaluation: &Evaluation, sheet: &mut Sheet) -> Option<Symbol> {
    let inputs = &evaluation.inputs;
    Some(match evaluation.water.system.as_ref()?.lift {
        Lift::Well(..) => {
            sheet.take(inputs, STATIC, Name::StaticLevel, Field::StaticLevel)?;
            STATIC
        }
        Lift::Open(_) => {
            sheet.take(inputs, SUCTION_LIFT, Name::SuctionLift, Field::SuctionLift)?;
            SUCTION_LIFT
        }
    })
}

/// Writes the pressure of a head.
fn pressure_of(
    evaluation: &Evaluation,
    symbol: Symbol,
    head: Vec<Math>,
    value: Pressure,
    sheet: &mut Sheet,
) -> Option<Measured> {
    let (weight, unit) = (weight(evaluation, sheet)?, sheet.unit(Conversion::Pressure));
    let over = [weight, formula!["·", "("], head, formula![")"]].concat();
    Some(sheet.step(symbol, vec![Math::Fraction(over, formula![unit])], pressure(value)))
}

pub(super) fn dead_head(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let (dead, inputs) = (evaluation.water.dead_head?, &evaluation.inputs);
    shut_off(evaluation, &mut sheet)?;
    let rest = put_rest(evaluation, &mut sheet)?;
    sheet.take(inputs, RISE, Name::Rise, Field::Rise)?;
    let head = formula![SHUT_OFF, "−", rest, "−", RISE];
    let result = pressure_of(evaluation, AT_GAUGE, head, dead.gauge, &mut sheet)?;
    if let Some(at_pump) = dead.pump {
        sheet.take(inputs, DEPTH, Name::PumpSetting, Field::PumpSetting)?;
        let head = formula![SHUT_OFF, "+", DEPTH, "−", rest];
        pressure_of(evaluation, AT_PUMP, head, at_pump, &mut sheet)?;
    }
    let rating = sheet.take(inputs, RATING, Name::PressureRating, Field::PressureRating)?;
    let over = found(evaluation, |finding| matches!(finding, Finding::DeadheadOverRating { .. }));
    let limit = Some(Limit::unless(over, LimitKind::AtMost, result, rating));
    Some(Working { limit, ..sheet.done(result, &["pump-handbook", "nist-sp-811"]) })
}

const ON_PIPE: Symbol = Symbol::of("p", "c");

pub(super) fn on_pipe(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let held = evaluation.water.dead_head?.on_pipe?;
    shut_off(evaluation, &mut sheet)?;
    let result = pressure_of(evaluation, ON_PIPE, formula![SHUT_OFF], held, &mut sheet)?;
    Some(sheet.done(result, &["pump-handbook", "nist-sp-811"]))
}

const BULK: Symbol = Symbol::of("K", "w");
const MODULUS: Symbol = Symbol::plain("E");
const WALL: Symbol = Symbol::plain("e");
const RESTRAINT: Symbol = Symbol::of("c", "r");
const WAVE: Symbol = Symbol::of("a", "w");
const SURGE: Symbol = Symbol::plain("Δp");

pub(super) fn surge(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let surge = evaluation.water.surge?;
    let system = evaluation.water.system.as_ref()?;
    let pipe = system.pipes.iter().find(|pipe| pipe.part == surge.part)?;
    let size = pipe.size?;
    let material = size.series.material();
    mean_speed(evaluation, pipe, surge.velocity, &mut sheet)?;
    density(evaluation, &mut sheet)?;
    sheet.put(BULK, Name::BulkModulus, pressure(bulk_modulus()), Origin::Table);
    sheet.put(MODULUS, Name::PipeModulus, pressure(material.modulus()), Origin::Table);
    sheet.put(WALL, Name::PipeWall, diameter(size.wall()), Origin::Table);
    sheet.put(RESTRAINT, Name::PipeRestraint, plain(1.0), Origin::Assumed);
    let unit = sheet.unit(Conversion::Pressure);
    // In US units the density is a weight, and the acceleration of free fall makes it a mass again.
    let gravity = if sheet.is_us() { formula!["·", sheet.unit(Conversion::Gravity)] } else { Vec::new() };
    let stiff = Math::Fraction([formula![BULK, "·", unit], gravity.clone()].concat(), formula![DENSITY]);
    let gives = Math::Fraction(formula![RESTRAINT, "·", BULK, "·", INSIDE], formula![MODULUS, "·", WALL]);
    let wave = Math::Root(vec![Math::Fraction(vec![stiff], formula![1.0, "+", gives])]);
    sheet.step(WAVE, vec![wave], speed(surge.wave));
    let rise = Math::Fraction(formula![DENSITY, "·", WAVE, "·", SPEED], [formula![unit], gravity].concat());
    let result = sheet.step(SURGE, vec![rise], pressure(surge.rise));
    let of_pipe = match material {
        Material::Steel => "asme-b31.1",
        Material::Pvc => "astm-d1784",
        Material::Polyethylene => "ppi-handbook",
    };
    Some(sheet.done(result, &["joukowsky-1898", "wylie-streeter-1993", of_pipe]))
}

const VOLUME: Symbol = Symbol::of("V", "t");
const GIVES: Symbol = Symbol::of("V", "u");
const PRECHARGE: Symbol = Symbol::of("p", "a");
const CUT_IN: Symbol = Symbol::of("p", "i");
const CUT_OUT: Symbol = Symbol::of("p", "o");
const RUNS: Symbol = Symbol::of("t", "r");
const STARTS: Symbol = Symbol::of("n", "s");

pub(super) fn tank(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let (tank, inputs) = (evaluation.water.tank?, &evaluation.inputs);
    barometric(inputs, &mut sheet)?;
    sheet.take(inputs, VOLUME, Name::TankVolume, Field::TankVolume)?;
    let band = [
        (PRECHARGE, Name::Precharge, tank.band.precharge, Field::TankPrecharge),
        (CUT_IN, Name::CutIn, tank.band.cut_in, Field::CutIn),
        (CUT_OUT, Name::CutOut, tank.band.cut_out, Field::Pressure),
    ];
    for (symbol, name, value, field) in band {
        sheet.put(symbol, name, pressure(value), inputs.origin(field));
    }
    let over = |symbol: Symbol| Math::Fraction(formula![1.0], formula![symbol, "+", BAROMETRIC]);
    let air = formula![VOLUME, "·", "(", PRECHARGE, "+", BAROMETRIC, ")"];
    let formula = [air, formula!["·", "(", over(CUT_IN), "−", over(CUT_OUT), ")"]].concat();
    let result = sheet.step(GIVES, formula, (in_gallons(tank.drawdown), Unit::Gallon));
    of_run(evaluation, tank, &mut sheet);
    Some(sheet.done(result, &["boyle-1662", "practice"]))
}

/// How long the pump runs to fill it, and how often it may start.
fn of_run(evaluation: &Evaluation, tank: Tank, sheet: &mut Sheet) -> Option<()> {
    let run: Time = tank.run_time?;
    asked(evaluation, sheet)?;
    let hour = sheet.unit(Conversion::Hour);
    let fills = Math::Fraction(formula![GIVES], formula![FLOW, "·", hour]);
    sheet.step(RUNS, vec![fills], (in_hours(run), Unit::Hour));
    // A start takes a cycle of four such times at least, where half of the flow is used.
    let starts = tank.starts?;
    let most = Math::Fraction(formula![FLOW, "·", hour], formula![4.0, "·", GIVES]);
    sheet.step(STARTS, vec![most], plain(3600.0 * starts.value));
    Some(())
}

const PER_LENGTH: Symbol = Symbol::of("w", "p");
const OF_PIPE: Symbol = Symbol::of("M", "p");
const OF_WATER: Symbol = Symbol::of("M", "w");
const OF_PUMP: Symbol = Symbol::of("M", "m");
const HANGS: Symbol = Symbol::plain("M");

pub(super) fn hanging(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let (load, inputs) = (evaluation.water.hanging?, &evaluation.inputs);
    let system = evaluation.water.system.as_ref()?;
    let pipe = system.pipes.iter().find(|pipe| pipe.part == Part::Drop)?;
    let mass = |mass: Mass| (in_pounds(mass), Unit::Pound);
    let per_length = in_pounds_per_foot(pipe.size?.mass_per_length());
    put_length(inputs, pipe, &mut sheet);
    put_inside(pipe, &mut sheet);
    density(evaluation, &mut sheet)?;
    sheet.put(PER_LENGTH, Name::PipeMass, (per_length, Unit::PoundPerFoot), Origin::Table);
    sheet.step(OF_PIPE, formula![PER_LENGTH, "·", PIPE], mass(load.pipe));
    let (diameters, pi) = (sheet.unit(Conversion::Diameter), sheet.pi());
    let square = |symbol: Symbol| Math::Power(formula![symbol], 2.0);
    let over = formula![pi, "·", square(INSIDE), "·", PIPE, "·", DENSITY];
    let filled = Math::Fraction(over, formula![4.0, "·", square(diameters)]);
    sheet.step(OF_WATER, vec![filled], mass(load.water));
    let mut sum = formula![OF_PIPE, "+", OF_WATER];
    if sheet.take(inputs, OF_PUMP, Name::PumpMass, Field::PumpMass).is_some() {
        sum.extend(formula!["+", OF_PUMP]);
    }
    let result = sheet.step(HANGS, sum, mass(load.total()));
    Some(sheet.done(result, &[]))
}
