//! The working of the costs: a way's, and the saving.

use super::math::{Math, Symbol, formula};
use super::name::Name;
use super::sheet::{LEAD, SETS, Sheet, money, plain};
use super::ways::cost::{EQUIPMENT, LINE, REMEDY, SUPPLY_COST, WORTH, put_worth};
use super::working::{EnteredValue, Working};
use crate::cable::conductor::{STRAND_LAY, metal_mass, properties};
use crate::cable::lead::Conductor;
use crate::cable::reactance::Build;
use crate::cost::price::CablePrice;
use crate::evaluate::priced::one_set;
use crate::evaluate::{Basis, DepthRun, Evaluation, Outfit, WayHere};
use crate::job::{Field, Inputs, Origin, Way};
use crate::quantity::{
    MassPerLength, Money, MoneyPerLength, Unit, circular_mils, in_meters, in_pounds, in_pounds_per_foot,
};
use crate::standards::conductor::Metal;

const FIXED: Symbol = Symbol::of("c", "0");
pub(super) const METAL: Symbol = Symbol::plain("m");
const PHASE_METAL: Symbol = Symbol::of("m", "p");
const GROUND_METAL: Symbol = Symbol::of("m", "g");
const PHASE_AREA: Symbol = Symbol::of("A", "p");
const GROUND_AREA: Symbol = Symbol::of("A", "g");
const DENSITY: Symbol = Symbol::plain("ρ");
const CABLE_FACTOR: Symbol = Symbol::of("k", "m");
pub(super) const LABOR: Symbol = Symbol::of("w", "l");
pub(super) const LABOR_FIXED: Symbol = Symbol::of("W", "l");
pub(super) const TRANSFORMER: Symbol = Symbol::of("C", "v");
pub(super) const EXTRA: Symbol = Symbol::of("C", "e");
const SAVED: Symbol = Symbol::plain("S");
const SAVED_CABLE: Symbol = Symbol::of("S", "c");

/// Price per length of a way's cable.
pub(super) fn price(index: &'static str) -> Symbol {
    Symbol::of("c", index)
}
/// What a way needs beyond its lead.
pub(super) fn beyond(index: &'static str) -> Symbol {
    Symbol::of("E", index)
}
/// What a way's energy costs in a year.
pub(super) fn yearly(index: &'static str) -> Symbol {
    Symbol::of("Y", index)
}
/// Cost of a way: of its cable, installed, or with the energy of the years.
pub(super) fn cost(index: &'static str, basis: Basis) -> Symbol {
    let letter = match basis {
        Basis::Cable => "C",
        Basis::Installed => "C′",
        Basis::Lifetime => "C″",
    };
    Symbol::of(letter, index)
}
pub(super) fn index(way: Way) -> &'static str {
    match way {
        Way::V240 => "240",
        Way::V480 => "480",
    }
}

pub(super) fn per_length(price: MoneyPerLength) -> (f64, Unit) {
    (price.per_foot(), Unit::DollarPerFoot)
}

/// What was entered as the extra equipment of 480 V.
pub(super) fn typed_extra(evaluation: &Evaluation) -> Option<Money> {
    evaluation.inputs.prices.as_ref().ok()?.extra_equipment
}

pub(super) fn put_extra(extra: Money, sheet: &mut Sheet) {
    sheet.put(EXTRA, Name::ExtraEquipment, money(extra), Origin::Typed);
}

pub(super) fn cable_cost(evaluation: &Evaluation, way: Way, basis: Basis, mut sheet: Sheet) -> Option<Working> {
    let here = evaluation.here.as_ref()?;
    let lead = here.way(way)?;
    let inputs = &evaluation.inputs;
    let prices = inputs.prices.as_ref().ok()?;
    let name = index(way);
    let [of_cable, installed, lifetime] = Basis::ALL.map(|basis| cost(name, basis));
    put_metal(evaluation, way, &lead.run, &mut sheet)?;
    let kind = (prices.metal, evaluation.sweep.as_ref()?.way(way).demands.build);
    let cable = Priced { conductor: lead.run.run.conductor, kind, metal: lead.run.metal, symbols: OF_LEAD };
    cable.put(inputs, price(name), &mut sheet)?;
    sheet.lead_here(evaluation)?;
    let mut result = sheet.step(of_cable, formula![price(name), "·", LEAD], money(lead.cable));
    if basis != Basis::Cable {
        put_beyond(lead, name, &mut sheet);
        let mut sum = formula![of_cable, "+", beyond(name)];
        put_labor(prices.book.labor_per_length(), &mut sum, &mut sheet);
        result = sheet.step(installed, sum, money(lead.installed));
    }
    if basis == Basis::Lifetime {
        let year = lead.run.yearly?.at(in_meters(here.lead));
        sheet.put(yearly(name), Name::YearlyCost(way), money(Money(year)), Origin::WorkedOut);
        put_worth(inputs, &mut sheet)?;
        let whole = formula![installed, "+", yearly(name), "·", WORTH];
        result = sheet.step(lifetime, whole, money(lead.lifetime?));
        sheet.cite(&["nist-hb-135"]);
    }
    let metal = sheet.shown((in_pounds(lead.metal), Unit::Pound));
    let density = match evaluation.sweep.as_ref()?.way(way).demands.setting.metal {
        Metal::Copper => "astm-b3",
        Metal::Aluminum => "astm-b230",
    };
    Some(Working { more: vec![metal], ..sheet.done(result, &["nec-2023-ch9-t8", density, "astm-b8"]) })
}

/// What a way needs beyond its lead, part by part.
fn put_beyond(lead: &WayHere, name: &'static str, sheet: &mut Sheet) {
    let parts = lead.outfit.cost;
    let priced = [
        (EQUIPMENT, Name::EquipmentCost, parts.equipment),
        (REMEDY, Name::RemedyCost, parts.remedy),
        (SUPPLY_COST, Name::SupplyCost, parts.supply),
        (LINE, Name::LineCost, parts.line),
        (TRANSFORMER, Name::TransformerCost, parts.transformer),
        (LABOR_FIXED, Name::LaborFixed, parts.labor),
    ];
    let mut put: Vec<(Symbol, Name, Money)> = priced.into_iter().filter(|(.., amount)| amount.0 != 0.0).collect();
    if parts.extra.0 != 0.0 {
        put.push((EXTRA, Name::ExtraEquipment, parts.extra));
    }
    match put[..] {
        [] => {
            sheet.put(beyond(name), Name::NothingBeyond, money(Money(0.0)), Origin::Assumed);
        }
        [(symbol, part, amount)] => {
            let origin = if symbol == EXTRA { Origin::Typed } else { Origin::WorkedOut };
            sheet.put(beyond(name), part, money(amount), origin);
        }
        _ => {
            let mut sum = Vec::new();
            for (symbol, part, amount) in put {
                let origin = if symbol == EXTRA { Origin::Typed } else { Origin::WorkedOut };
                sheet.put(symbol, part, money(amount), origin);
                sum.extend(formula!["+", symbol]);
            }
            sheet.step(beyond(name), sum.into_iter().skip(1).collect(), money(parts.total()));
        }
    }
}

/// Labor by the length of the lead, where it costs something.
pub(super) fn put_labor(labor: MoneyPerLength, sum: &mut Vec<Math>, sheet: &mut Sheet) {
    if labor.0 != 0.0 {
        sheet.put(LABOR, Name::LaborPerLength, per_length(labor), Origin::Book);
        sum.extend(formula!["+", LABOR, "·", LEAD]);
    }
}

/// A cable whose price is to be told: its conductors, metal and build, and the symbol of its metal per length.
pub(super) struct Priced {
    pub conductor: Conductor,
    pub kind: (Metal, Build),
    pub metal: MassPerLength,
    pub symbols: CableSymbols,
}

/// What the parts of a cable's price are called.
#[derive(Clone, Copy)]
pub(super) struct CableSymbols {
    /// Metal in it per length.
    pub mass: Symbol,
    /// Price of the metal as cable.
    pub metal: Symbol,
    /// Sets in parallel.
    pub sets: Symbol,
    /// A quote of the book, and the metal's price that it was made at.
    pub quote: [Symbol; 2],
}

/// Of the lead.
pub(super) const OF_LEAD: CableSymbols = CableSymbols {
    mass: METAL,
    metal: Symbol::plain("p"),
    sets: SETS,
    quote: [Symbol::of("c", "b"), Symbol::of("p", "m")],
};

impl Priced {
    /// Price of all sets per length, by the metal in them or by a quote.
    pub fn put(&self, inputs: &Inputs, price: Symbol, sheet: &mut Sheet) -> Option<()> {
        let prices = inputs.prices.as_ref().ok()?;
        let sets = f64::from(self.conductor.sets.max(1));
        let one = one_set(prices, self.conductor, self.kind, self.metal / sets)?;
        let whole = per_length(MoneyPerLength(one.of(self.metal / sets).0 * sets));
        let factor = prices.book.cable_factor();
        let of_metal = prices.metal_price(self.kind.0)?;
        let typed = self.kind.0 == prices.metal && inputs.entered.is_typed(Field::CableMetal);
        let origin = if typed { Origin::Typed } else { Origin::Book };
        let CableSymbols { mass, metal, quote: [quoted, at], .. } = self.symbols;
        sheet.put(metal, Name::MetalPrice, (of_metal.per_pound(), Unit::DollarPerPound), origin);
        let mut times = Vec::new();
        if factor != 1.0 {
            sheet.put(CABLE_FACTOR, Name::CableFactor, plain(factor), Origin::Book);
            times = formula!["·", CABLE_FACTOR];
        }
        let mut sum = match one {
            CablePrice::Modeled { fixed, .. } => {
                let typed = inputs.entered.is_typed(Field::CableFixed);
                let origin = if typed { Origin::Typed } else { Origin::Book };
                sheet.put(FIXED, Name::CableFixed, per_length(fixed), origin);
                let mut first = formula![FIXED];
                self.put_sets(&mut first, sheet);
                [first, formula!["+", metal, "·", mass]].concat()
            }
            CablePrice::Quoted { quote, .. } => {
                let of_book = prices.book.metal_price(self.kind.0)?;
                sheet.put(quoted, Name::CableQuote, per_length(quote), Origin::Book);
                let per_pound = (of_book.per_pound(), Unit::DollarPerPound);
                sheet.put(at, Name::BookMetalPrice, per_pound, Origin::Book);
                let mut first = formula![quoted];
                self.put_sets(&mut first, sheet);
                [first, formula!["+", "(", metal, "−", at, ")", "·", mass]].concat()
            }
        };
        sum.extend(times);
        sheet.step(price, sum, whole);
        Some(())
    }

    /// Each set costs the part that does not go with the metal.
    fn put_sets(&self, part: &mut Vec<Math>, sheet: &mut Sheet) {
        let sets = self.conductor.sets;
        if sets > 1 {
            sheet.put(self.symbols.sets, Name::ParallelSets, (f64::from(sets), Unit::One), Origin::WorkedOut);
            part.extend(formula!["·", self.symbols.sets]);
        }
    }
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
    let apart = |basis| formula![cost(index(Way::V240), basis), "−", cost(index(Way::V480), basis)];
    let result = match basis {
        Basis::Lifetime => {
            for way in Way::ALL {
                let amount = money(here.way(way)?.lifetime?);
                sheet.put(cost(index(way), basis), Name::LifetimeCost(way), amount, Origin::WorkedOut);
            }
            sheet.step(SAVED, apart(basis), money(saving.lifetime?))
        }
        Basis::Cable | Basis::Installed => {
            for way in Way::ALL {
                let amount = money(here.way(way)?.cable);
                sheet.put(cost(index(way), Basis::Cable), Name::CableCost(way), amount, Origin::WorkedOut);
            }
            let of_cable = sheet.step(SAVED_CABLE, apart(Basis::Cable), money(saving.cable));
            if basis == Basis::Cable {
                of_cable
            } else {
                put_difference(evaluation, Way::ALL.map(|way| here.way(way).map(|lead| lead.outfit)), &mut sheet)?;
                sheet.step(SAVED, formula![SAVED_CABLE, "−", EXTRA], money(saving.net))
            }
        }
    };
    let metal = sheet.shown((in_pounds(saving.metal), Unit::Pound));
    Some(Working { more: vec![metal], ..sheet.done(result, &[]) })
}

/// What the 480 V way needs beyond its lead, over what the other does: entered, or the difference.
pub(super) fn put_difference(evaluation: &Evaluation, outfits: [Option<Outfit>; 2], sheet: &mut Sheet) -> Option<()> {
    if let Some(extra) = typed_extra(evaluation) {
        put_extra(extra, sheet);
        return Some(());
    }
    let [low, high] = outfits.map(|outfit| outfit.map(|outfit| outfit.cost.total()));
    let [low, high] = [low?, high?];
    for (way, amount) in Way::ALL.into_iter().zip([low, high]) {
        sheet.put(beyond(index(way)), Name::BeyondLead(way), money(amount), Origin::WorkedOut);
    }
    let apart = formula![beyond(index(Way::V480)), "−", beyond(index(Way::V240))];
    sheet.step(EXTRA, apart, money(high - low));
    Some(())
}
