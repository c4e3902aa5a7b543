//! The working of the costs: a lead's, the saving, the break-even depth.

use super::math::{Math, Symbol, formula};
use super::name::Name;
use super::sheet::{DEPTH, LEAD, SETS, SURFACE, Sheet, length, money};
use super::working::{EnteredValue, Working};
use crate::cable::conductor::{STRAND_LAY, metal_mass, properties};
use crate::evaluate::{Basis, Crossing, DepthRun, Evaluation, Place, Sweep};
use crate::job::{Field, Origin, Way};
use crate::pump::motor::MotorKind;
use crate::quantity::{Length, Money, MoneyPerLength, Unit, circular_mils, in_pounds, in_pounds_per_foot};
use crate::standards::conductor::Metal;

pub(super) const FIXED: Symbol = Symbol::of("c", "0");
pub(super) const METAL_PRICE: Symbol = Symbol::plain("p");
pub(super) const METAL: Symbol = Symbol::plain("m");
const PHASE_METAL: Symbol = Symbol::of("m", "p");
const GROUND_METAL: Symbol = Symbol::of("m", "g");
const PHASE_AREA: Symbol = Symbol::of("A", "p");
const GROUND_AREA: Symbol = Symbol::of("A", "g");
const DENSITY: Symbol = Symbol::plain("ρ");
const EXTRA: Symbol = Symbol::of("C", "e");
const SAVED: Symbol = Symbol::plain("S");
const SAVED_CABLE: Symbol = Symbol::of("S", "c");

/// Price per length of a way's cable.
fn price(way: Way) -> Symbol {
    Symbol::of("c", index(way))
}
/// Cost of a way's cable.
fn cost(way: Way) -> Symbol {
    Symbol::of("C", index(way))
}
/// Cost of a way's cable and equipment.
fn installed(way: Way) -> Symbol {
    Symbol::of("C′", index(way))
}
fn index(way: Way) -> &'static str {
    match way {
        Way::V240 => "240",
        Way::V480 => "480",
    }
}

/// True where the cost of a way counts equipment beyond the other's.
fn has_equipment(way: Way, basis: Basis) -> bool {
    way == Way::V480 && basis == Basis::Installed
}

fn put_extra(evaluation: &Evaluation, sheet: &mut Sheet) -> Option<()> {
    let extra = evaluation.inputs.prices.as_ref().ok()?.extra_equipment;
    sheet.put(EXTRA, Name::ExtraEquipment, money(extra), evaluation.inputs.origin(Field::ExtraEquipment));
    Some(())
}

pub(super) fn per_length(price: MoneyPerLength) -> (f64, Unit) {
    (price.per_foot(), Unit::DollarPerFoot)
}

pub(super) fn cable_cost(evaluation: &Evaluation, way: Way, basis: Basis, mut sheet: Sheet) -> Option<Working> {
    let here = evaluation.here.as_ref()?;
    let lead = here.way(way)?;
    let inputs = &evaluation.inputs;
    let prices = inputs.prices.as_ref().ok()?;
    put_metal(evaluation, way, &lead.run, &mut sheet)?;
    sheet.put(FIXED, Name::CableFixed, per_length(prices.cable_fixed), inputs.origin(Field::CableFixed));
    let per_pound = (prices.cable_metal.per_pound(), Unit::DollarPerPound);
    sheet.put(METAL_PRICE, Name::MetalPrice, per_pound, inputs.origin(Field::CableMetal));
    sheet.step(price(way), formula![FIXED, "+", METAL_PRICE, "·", METAL], per_length(lead.run.price));
    sheet.lead_here(evaluation)?;
    let mut result = sheet.step(cost(way), formula![price(way), "·", LEAD], money(lead.cable));
    if has_equipment(way, basis) {
        put_extra(evaluation, &mut sheet)?;
        result = sheet.step(installed(way), formula![cost(way), "+", EXTRA], money(lead.installed));
    }
    let metal = sheet.shown((in_pounds(lead.metal), Unit::Pound));
    let density = match evaluation.sweep.as_ref()?.way(way).demands.setting.metal {
        Metal::Copper => "astm-b3",
        Metal::Aluminum => "astm-b230",
    };
    Some(Working { more: vec![metal], ..sheet.done(result, &["nec-2023-ch9-t8", density, "astm-b8"]) })
}

/// Metal of a cable per length: three phases and a ground in each set.
fn put_metal(evaluation: &Evaluation, way: Way, run: &DepthRun, sheet: &mut Sheet) -> Option<()> {
    let metal = evaluation.sweep.as_ref()?.way(way).demands.setting.metal;
    let conductor = run.run.conductor;
    sheet.enter_conductor(conductor, metal);
    sheet.enter(Name::GroundSize, EnteredValue::Size(run.run.ground));
    sheet.put(DENSITY, Name::MetalDensity, (properties(metal).density, Unit::GramPerCubicCentimeter), Origin::Table);
    let wires = [
        (PHASE_METAL, PHASE_AREA, Name::PhaseArea, conductor.size),
        (GROUND_METAL, GROUND_AREA, Name::GroundArea, run.run.ground),
    ];
    for (symbol, area, name, size) in wires {
        sheet.put(area, name, (size.row().cmil / 1000.0, Unit::Kcmil), Origin::Table);
        let strand = Math::Fraction(formula![area, "·", DENSITY, "·", STRAND_LAY], formula![1000.0]);
        let mass = metal_mass(metal, circular_mils(size.row().cmil), STRAND_LAY);
        sheet.step(symbol, vec![strand], (in_pounds_per_foot(mass), Unit::PoundPerFoot));
    }
    let mut formula = formula![3.0, "·", PHASE_METAL, "+", GROUND_METAL];
    let sets = conductor.sets;
    if sets > 1 {
        sheet.put(SETS, Name::ParallelSets, (f64::from(sets), Unit::One), Origin::WorkedOut);
        formula = [formula!["("], formula, formula![")", "·", SETS]].concat();
    }
    sheet.step(METAL, formula, (in_pounds_per_foot(run.metal), Unit::PoundPerFoot));
    Some(())
}

pub(super) fn saving(evaluation: &Evaluation, basis: Basis, mut sheet: Sheet) -> Option<Working> {
    let here = evaluation.here.as_ref()?;
    let saving = here.saving?;
    for way in Way::ALL {
        sheet.put(cost(way), Name::CableCost(way), money(here.way(way)?.cable), Origin::WorkedOut);
    }
    let difference = formula![cost(Way::V240), "−", cost(Way::V480)];
    let mut result = sheet.step(SAVED_CABLE, difference, money(saving.cable));
    if basis == Basis::Installed {
        put_extra(evaluation, &mut sheet)?;
        result = sheet.step(SAVED, formula![SAVED_CABLE, "−", EXTRA], money(saving.net));
    }
    let metal = sheet.shown((in_pounds(saving.metal), Unit::Pound));
    Some(Working { more: vec![metal], ..sheet.done(result, &[]) })
}

pub(super) fn break_even(evaluation: &Evaluation, basis: Basis, mut sheet: Sheet) -> Option<Working> {
    let sweep = evaluation.sweep.as_ref()?;
    let crossing = sweep.break_even(basis).lasting()?;
    let above = pair(sweep, |run| run.to >= crossing.depth)?;
    let below = pair(sweep, |run| run.to > crossing.depth).unwrap_or(above);
    let result = sheet.shown(length(crossing.depth));
    if basis == Basis::Installed {
        put_extra(evaluation, &mut sheet)?;
    }
    if crossing.place == Place::Run && basis == Basis::Installed {
        // On the very end of a run the lines that cross are those of the runs below it.
        let gap = |runs: [DepthRun; 2]| gap(sweep, runs, crossing.depth, basis);
        let runs = if gap(below) < gap(above) { below } else { above };
        on_run(evaluation, crossing, runs, &mut sheet)?;
    } else {
        at_step(evaluation, basis, crossing, above, below, &mut sheet)?;
    }
    Some(sheet.done(result, &[]))
}

/// The first run of each way that meets a condition.
fn pair(sweep: &Sweep, meets: impl Fn(&DepthRun) -> bool) -> Option<[DepthRun; 2]> {
    let [low, high] = Way::ALL.map(|way| sweep.way(way).runs.iter().copied().find(&meets));
    Some([low?, high?])
}

/// How far apart the costs of two runs are at a depth.
fn gap(sweep: &Sweep, runs: [DepthRun; 2], depth: Length, basis: Basis) -> f64 {
    let [low, high] = Way::ALL.map(|way| sweep.way(way).cost_on(&runs[way as usize], depth, basis));
    (low - high).size().0
}

/// Two lines that cross: the lead whose cheaper cable pays for the equipment, and both costs there.
fn on_run(evaluation: &Evaluation, crossing: &Crossing, runs: [DepthRun; 2], sheet: &mut Sheet) -> Option<()> {
    let sweep = evaluation.sweep.as_ref()?;
    for (way, run) in Way::ALL.into_iter().zip(runs) {
        sheet.put(price(way), Name::CablePrice(way), per_length(run.price), Origin::WorkedOut);
    }
    let cheaper = formula![price(Way::V240), "−", price(Way::V480)];
    sheet.step(LEAD, vec![Math::Fraction(formula![EXTRA], cheaper)], length(crossing.depth + sweep.surface_run));
    if evaluation.kind == MotorKind::Submersible {
        let origin = evaluation.inputs.origin(Field::SurfaceRun);
        sheet.put(SURFACE, Name::SurfaceRun, length(sweep.surface_run), origin);
        sheet.step(DEPTH, formula![LEAD, "−", SURFACE], length(crossing.depth));
    }
    for (way, run) in Way::ALL.into_iter().zip(runs) {
        let at = sweep.way(way).cost_on(&run, crossing.depth, Basis::Installed);
        cost_step(way, Basis::Installed, index(way), at, sheet);
    }
    Some(())
}

/// A way whose conductor grows there: both costs above the step, and those of the ways that step below it.
fn at_step(
    evaluation: &Evaluation,
    basis: Basis,
    crossing: &Crossing,
    above: [DepthRun; 2],
    below: [DepthRun; 2],
    sheet: &mut Sheet,
) -> Option<()> {
    let sweep = evaluation.sweep.as_ref()?;
    if evaluation.kind == MotorKind::Submersible {
        sheet.put(DEPTH, Name::BreakEvenDepth, length(crossing.depth), Origin::WorkedOut);
        sheet.lead(crossing.depth, sweep.surface_run, evaluation.inputs.origin(Field::SurfaceRun));
    } else {
        sheet.put(LEAD, Name::BreakEvenDepth, length(crossing.depth), Origin::WorkedOut);
    }
    for (way, run) in Way::ALL.into_iter().zip(above) {
        sheet.put(price(way), Name::CablePrice(way), per_length(run.price), Origin::WorkedOut);
        let at = sweep.way(way).cost_on(&run, crossing.depth, basis);
        cost_step(way, basis, index(way), at, sheet);
    }
    for way in Way::ALL {
        let next = below[way as usize];
        if next != above[way as usize] {
            let index = next_index(way);
            let price = Symbol::of("c", index);
            sheet.put(price, Name::NextCablePrice(way), per_length(next.price), Origin::WorkedOut);
            let at = sweep.way(way).cost_on(&next, crossing.depth, basis);
            cost_step(way, basis, index, at, sheet);
        }
    }
    Some(())
}

/// Index of what belongs to a way below its step.
fn next_index(way: Way) -> &'static str {
    match way {
        Way::V240 => "240+",
        Way::V480 => "480+",
    }
}

/// The cost of a way: cable, and equipment where its way and the basis count it.
fn cost_step(way: Way, basis: Basis, index: &'static str, at: Money, sheet: &mut Sheet) {
    let mut formula = formula![Symbol::of("c", index), "·", LEAD];
    let mut letter = "C";
    if has_equipment(way, basis) {
        formula.extend(formula!["+", EXTRA]);
        letter = "C′";
    }
    sheet.step(Symbol::of(letter, index), formula, money(at));
}
