//! The workings of the pole: the transformer's load, the sag behind it, the fault that it drives, its harmonics.

use super::supply::put_sine;
use super::volts::AT_EQUIPMENT;
use super::{Case, DISTORTION, INPUT, SUPPLY, TRUE_FACTOR, on_lines, with_harmonics};
use crate::cable::conductor::properties;
use crate::evaluate::{COLD, Pole, SupplyRun};
use crate::finding::Finding;
use crate::job::{Field, Origin};
use crate::papers::conversion::Conversion;
use crate::papers::lead::{ACROSS, ALONG, FACTOR, REACTANCE, RESISTANCE, SIN, put_impedance};
use crate::papers::math::{Math, Measured, Symbol, formula};
use crate::papers::name::Name;
use crate::papers::service::{COEFFICIENT, TABLE_TEMPERATURE};
use crate::papers::sheet::{LEAD, Sheet, apparent, current, length, percent, plain, volts};
use crate::papers::working::{Limit, LimitKind, Working};
use crate::power::harmonics::fundamental;
use crate::power::impedance::Impedance;
use crate::power::transformer::{CLOSE, Loading, REACTANCE_SHARE, RESISTANCE_SHARE};
use crate::quantity::{ElectricCurrent, Unit, amperes, in_amperes, in_ohms, ohms};
use crate::standards::conductor::TABLE_8_AT;

const RATING: Symbol = Symbol::of("S", "t");
const RATED_CURRENT: Symbol = Symbol::of("I", "tr");
const OTHER: Symbol = Symbol::of("S", "o");
const OTHER_CURRENT: Symbol = Symbol::of("I", "ot");
const LOADING: Symbol = Symbol::of("x", "t");
const PER_UNIT: Symbol = Symbol::of("z", "t");
const SOURCE_R: Symbol = Symbol::of("R", "t");
const SOURCE_X: Symbol = Symbol::of("X", "t");
pub(super) const FEEDER_R: Symbol = Symbol::of("R", "f");
pub(super) const FEEDER_X: Symbol = Symbol::of("X", "f");
pub(super) const BOTH_R: Symbol = Symbol::of("R", "z");
pub(super) const BOTH_X: Symbol = Symbol::of("X", "z");
const COLD_R: Symbol = Symbol::of("R", "f0");
const COLD_AT: Symbol = Symbol::of("T", "0");
const SAG: Symbol = Symbol::of("ΔV", "e");
const FEEDER_ALONG: Symbol = Symbol::of("a", "f");
const FEEDER_ACROSS: Symbol = Symbol::of("b", "f");
const AT_POLE: Symbol = Symbol::of("V", "t");
const POLE_SAG: Symbol = Symbol::of("ΔV", "t");
const FAULT: Symbol = Symbol::of("I", "SC");
const IMPEDANCE: Symbol = Symbol::plain("Z");
const FAULT_HERE: Symbol = Symbol::of("I", "SCe");
const MARKED: Symbol = Symbol::of("I", "SCR");
const FUNDAMENTAL: Symbol = Symbol::of("I", "fu");
const DEMAND: Symbol = Symbol::of("I", "L");
const RATIO: Symbol = Symbol::of("r", "SC");
const DEMAND_DISTORTION: Symbol = Symbol::plain("TDD");

fn ohm(resistance: crate::quantity::ElectricalResistance) -> (f64, Unit) {
    (in_ohms(resistance), Unit::Ohm)
}

fn kiloamperes(current: ElectricCurrent) -> (f64, Unit) {
    (in_amperes(current) / 1000.0, Unit::Kiloampere)
}

/// Its rating: entered, or the smallest usual one for the load.
fn put_rating(pole: &Pole, sheet: &mut Sheet) {
    let origin = if pole.assumed { Origin::Assumed } else { Origin::Typed };
    sheet.put(RATING, Name::TransformerRating, apparent(pole.transformer.rating), origin);
    if pole.assumed {
        sheet.cite(&["ieee-c57.12"]);
    }
}

/// What else it feeds, as a current.
fn put_other(case: &Case, sheet: &mut Sheet) -> ElectricCurrent {
    let (supply, feed) = (case.way.fed.1, case.feed());
    sheet.put(OTHER, Name::OtherLoad, apparent(case.site.other), case.inputs.origin(Field::OtherLoad));
    let other: ElectricCurrent = case.site.other / supply / feed.factor();
    let formula = vec![Math::Fraction(formula![1000.0, "·", OTHER], on_lines(feed, formula![SUPPLY]))];
    sheet.step(OTHER_CURRENT, formula, current(other));
    other
}

/// The current that the way draws, from its own working.
pub(super) fn put_input(case: &Case, sheet: &mut Sheet) -> Option<()> {
    sheet.put(INPUT, Name::InputCurrent, current(case.draw()?.current), Origin::WorkedOut);
    Some(())
}

pub(super) fn loading(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let pole = case.way.pole?;
    put_rating(&pole, &mut sheet);
    case.put_supply_volts(&mut sheet);
    let under = on_lines(case.feed(), formula![SUPPLY]);
    let rated = pole.transformer.rated_current().ok()?;
    sheet.step(RATED_CURRENT, vec![Math::Fraction(formula![1000.0, "·", RATING], under)], current(rated));
    put_input(case, &mut sheet)?;
    put_other(case, &mut sheet);
    let share = match pole.loading {
        Loading::Within(share) | Loading::Close(share) | Loading::Over(share) => share,
    };
    let both = Math::Fraction(formula![INPUT, "+", OTHER_CURRENT], formula![RATED_CURRENT]);
    let result = sheet.step(LOADING, formula![both, "·", 100.0], percent(share));
    let loaded = case.found(|finding| matches!(finding, Finding::TransformerLoaded { .. }));
    // One that was chosen by its load is none to judge.
    let limit = (!pole.assumed).then(|| {
        let most = sheet.shown(percent(CLOSE));
        Limit::unless(loaded, LimitKind::AtMost, result, most)
    });
    Some(Working { limit, ..sheet.done(result, &["practice"]) })
}

/// Resistance and reactance of the transformer as the load sees them.
fn put_source(case: &Case, pole: &Pole, sheet: &mut Sheet) -> Option<Impedance> {
    put_rating(pole, sheet);
    sheet.take(case.inputs, PER_UNIT, Name::TransformerImpedance, Field::TransformerImpedance)?;
    case.put_supply_volts(sheet);
    let source = pole.transformer.as_impedance().ok()?;
    let base = |share: f64| {
        let squared = on_lines(case.feed(), vec![Math::Power(formula![SUPPLY], 2.0)]);
        let over = [formula![share, "·", PER_UNIT, "·"], squared].concat();
        vec![Math::Fraction(over, formula![100_000.0, "·", RATING])]
    };
    sheet.step(SOURCE_R, base(RESISTANCE_SHARE), ohm(source.resistance));
    sheet.step(SOURCE_X, base(REACTANCE_SHARE), ohm(source.reactance));
    sheet.cite(&["practice"]);
    Some(source)
}

/// Resistance and reactance of the supply conductors as the load sees them.
fn put_feeder(case: &Case, run: &SupplyRun, sheet: &mut Sheet) {
    let demands = run.demands;
    put_impedance(run.run.conductor, demands.setting.metal, demands.build, sheet);
    sheet.put(FACTOR, Name::PhaseFactor, plain(demands.phases.factor()), Origin::Definition);
    sheet.put(LEAD, Name::SupplyLength, length(run.length), case.inputs.origin(Field::PoleDistance));
    let along = |one: Symbol| vec![Math::Fraction(formula![FACTOR, "·", one, "·", LEAD], formula![1000.0])];
    sheet.step(FEEDER_R, along(RESISTANCE), ohm(run.impedance.resistance));
    sheet.step(FEEDER_X, along(REACTANCE), ohm(run.impedance.reactance));
    sheet.cite(&["nec-2023-ch9-t8", crate::papers::lead::reactance_source(demands.build)]);
}

/// Transformer and supply conductors together.
pub(super) fn put_both(case: &Case, sheet: &mut Sheet) -> Option<Impedance> {
    let (pole, run) = (case.way.pole?, case.way.supply?);
    let source = put_source(case, &pole, sheet)?;
    put_feeder(case, &run, sheet);
    let both = source + run.impedance;
    sheet.step(BOTH_R, formula![SOURCE_R, "+", FEEDER_R], ohm(both.resistance));
    sheet.step(BOTH_X, formula![SOURCE_X, "+", FEEDER_X], ohm(both.reactance));
    Some(both)
}

/// Transformer and supply conductors together before a fault, the conductors cold.
fn put_cold(case: &Case, sheet: &mut Sheet) -> Option<Impedance> {
    let (pole, run) = (case.way.pole?, case.way.supply?);
    let source = put_source(case, &pole, sheet)?;
    put_feeder(case, &run, sheet);
    let celsius = |degrees: f64| (degrees, Unit::DegreeCelsius);
    let coefficient = properties(run.demands.setting.metal).coefficient_75;
    sheet.put(COEFFICIENT, Name::TemperatureCoefficient, plain(coefficient), Origin::Table);
    sheet.put(COLD_AT, Name::ColdTemperature, celsius(COLD.0), Origin::Assumed);
    sheet.put(TABLE_TEMPERATURE, Name::TableTemperature, celsius(TABLE_8_AT.0), Origin::Table);
    let degrees = sheet.unit(Conversion::Warming);
    let below = Math::Fraction(formula![COLD_AT, "−", TABLE_TEMPERATURE], formula![degrees]);
    let moved = formula![FEEDER_R, "·", "(", 1.0, "+", COEFFICIENT, "·", below, ")"];
    sheet.step(COLD_R, moved, ohm(run.cold.resistance));
    let both = source + run.cold;
    sheet.step(BOTH_R, formula![SOURCE_R, "+", COLD_R], ohm(both.resistance));
    sheet.step(BOTH_X, formula![SOURCE_X, "+", FEEDER_X], ohm(both.reactance));
    Some(both)
}

pub(super) fn sag(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let (sag, draw, run) = (case.way.pole?.sag?, case.draw()?, case.way.supply?);
    let both = put_both(case, &mut sheet)?;
    put_input(case, &mut sheet)?;
    case.put_true_factor(&draw, &mut sheet);
    put_sine(&draw, &mut sheet);
    let (amps, cos) = (in_amperes(draw.current), draw.power_factor);
    let sin = (1.0 - cos * cos).sqrt();
    let parts = |z: Impedance| {
        let (r, x) = (in_ohms(z.resistance), in_ohms(z.reactance));
        [amps * (r * cos + x * sin), amps * (x * cos - r * sin)]
    };
    put_parts([ALONG, ACROSS], [BOTH_R, BOTH_X], parts(both), &mut sheet);
    let square = |symbol: Symbol| Math::Power(formula![symbol], 2.0);
    let received = Math::Root(formula![square(SUPPLY), "−", square(ACROSS)]);
    let left = sheet.step(AT_EQUIPMENT, formula![received, "−", ALONG], volts(sag.left));
    let result = sheet.step(SAG, formula![SUPPLY, "−", AT_EQUIPMENT], volts(sag.at_equipment));
    put_parts([FEEDER_ALONG, FEEDER_ACROSS], [FEEDER_R, FEEDER_X], parts(run.impedance), &mut sheet);
    let pole = Math::Power(formula!["(", AT_EQUIPMENT, "+", FEEDER_ALONG, ")"], 2.0);
    let sum = Math::Root(formula![pole, "+", square(FEEDER_ACROSS)]);
    let at_pole = case.way.fed.1 - sag.at_pole;
    sheet.step(AT_POLE, vec![sum], volts(at_pole));
    let at_pole = sheet.step(POLE_SAG, formula![SUPPLY, "−", AT_POLE], volts(sag.at_pole));
    Some(Working { more: vec![at_pole, left], ..sheet.done(result, &["ieee-141-1993"]) })
}

/// The parts of a drop in phase with the load's voltage and square to it.
fn put_parts(into: [Symbol; 2], [r, x]: [Symbol; 2], parts: [f64; 2], sheet: &mut Sheet) {
    let along = formula![INPUT, "·", "(", r, "·", TRUE_FACTOR, "+", x, "·", SIN, ")"];
    let across = formula![INPUT, "·", "(", x, "·", TRUE_FACTOR, "−", r, "·", SIN, ")"];
    sheet.step(into[0], along, (parts[0], Unit::Volt));
    sheet.step(into[1], across, (parts[1], Unit::Volt));
}

/// Fault current at the transformer's terminals.
fn put_fault(case: &Case, pole: &Pole, sheet: &mut Sheet) -> Option<Measured> {
    put_rating(pole, sheet);
    sheet.take(case.inputs, PER_UNIT, Name::TransformerImpedance, Field::TransformerImpedance)?;
    case.put_supply_volts(sheet);
    let under = [on_lines(case.feed(), formula![SUPPLY]), formula!["·", PER_UNIT]].concat();
    let formula = vec![Math::Fraction(formula![100.0, "·", RATING], under)];
    Some(sheet.step(FAULT, formula, kiloamperes(pole.fault)))
}

pub(super) fn fault(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let pole = case.way.pole?;
    let at_pole = put_fault(case, &pole, &mut sheet)?;
    let mut result = at_pole;
    if case.way.supply.is_some() {
        let both = put_cold(case, &mut sheet)?;
        let square = |symbol: Symbol| Math::Power(formula![symbol], 2.0);
        let size = Math::Root(formula![square(BOTH_R), "+", square(BOTH_X)]);
        sheet.step(IMPEDANCE, vec![size], ohm(ohms(in_ohms(both.size()))));
        let here = vec![Math::Fraction(formula![SUPPLY], formula![1000.0, "·", IMPEDANCE])];
        result = sheet.step(FAULT_HERE, here, kiloamperes(pole.fault_here));
    }
    if case.way.supply.is_none() {
        // What the conductors leave of it is not known, and nothing is judged.
        return Some(sheet.done(result, &["nec-2023-110.9-10"]));
    }
    let typed = case.way.family.marking.short_circuit.or(case.site.marked).is_some();
    let origin = if typed { Origin::Typed } else { Origin::Table };
    if !typed {
        sheet.cite(&["ul-508a"]);
    }
    let most = sheet.put(MARKED, Name::MarkedShortCircuit, kiloamperes(pole.marked), origin);
    let over = case.found(|finding| matches!(finding, Finding::FaultOverSccr { .. }));
    let passed = over.filter(|_| pole.fault_here > pole.marked);
    let limit = Some(Limit::unless(passed, LimitKind::AtMost, result, most));
    Some(Working { more: vec![at_pole], limit, ..sheet.done(result, &["nec-2023-110.9-10"]) })
}

pub(super) fn harmonics(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let (pole, draw) = (case.way.pole?, case.draw()?);
    let harmonics = pole.harmonics?;
    let own = fundamental(draw.current, case.way.family.input.distortion).ok()?;
    put_fault(case, &pole, &mut sheet)?;
    put_input(case, &mut sheet)?;
    case.put_distortion(&mut sheet);
    sheet.step(FUNDAMENTAL, vec![Math::Fraction(formula![INPUT], formula![with_harmonics()])], current(own));
    let other = put_other(case, &mut sheet);
    let demand = amperes(in_amperes(own) + in_amperes(other));
    sheet.step(DEMAND, formula![FUNDAMENTAL, "+", OTHER_CURRENT], current(demand));
    let ratio = Math::Fraction(formula![1000.0, "·", FAULT], formula![DEMAND]);
    let ratio = sheet.step(RATIO, vec![ratio], plain(harmonics.ratio));
    let share = Math::Fraction(formula![FUNDAMENTAL], formula![DEMAND]);
    let result = sheet.step(DEMAND_DISTORTION, formula![DISTORTION, "·", share], percent(harmonics.distortion));
    let over = case.found(|finding| matches!(finding, Finding::HarmonicsOver { .. }));
    let most = sheet.shown(percent(harmonics.limit));
    let limit = Some(Limit::unless(over, LimitKind::AtMost, result, most));
    let sources = ["ieee-519-2022", "ieee-1459-2010"];
    Some(Working { more: vec![ratio], limit, ..sheet.done(result, &sources) })
}
