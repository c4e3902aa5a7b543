//! The workings of how sure the saving is: its range, when the dearer voltage has paid for itself, the heat of both leads.

use super::cost::index;
use super::math::{Math, Symbol, formula};
use super::name::Name;
use super::sheet::{Sheet, heat, money};
use super::working::{Caveat, Working};
use crate::evaluate::range::{Uncertain, ends, saving_range};
use crate::evaluate::{Basis, Evaluation, payback};
use crate::job::{Field, Origin, Way};
use crate::quantity::{Money, Unit, in_meters};

const FIRST: Symbol = Symbol::of("C", "1");
const SAVED: Symbol = Symbol::plain("S");
const DISCOUNT: Symbol = Symbol::plain("i");
const TIME: Symbol = Symbol::plain("t");
const DISCOUNTED: Symbol = Symbol::of("t", "i");
const MORE: Symbol = Symbol::plain("ΔP");
/// The saving that a tenth, a half and nine tenths of the points stay below.
const SAMPLED: [Symbol; 3] = [Symbol::of("S", "10"), Symbol::of("S", "50"), Symbol::of("S", "90")];

/// What energy costs in a year on a way.
fn yearly(way: Way) -> Symbol {
    Symbol::of("Y", index(way))
}

/// Heat of a way's lead.
fn loss(way: Way) -> Symbol {
    Symbol::of("P", index(way))
}

pub(super) fn pays_back(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let found = payback(evaluation)?;
    let here = evaluation.here.as_ref()?;
    let other = found.way.other();
    let first = sheet.put(FIRST, Name::MoreAtFirst(found.way), money(found.first), Origin::WorkedOut);
    for way in [other, found.way] {
        let year = Money(here.way(way)?.run.yearly?.at(in_meters(here.lead)));
        sheet.put(yearly(way), Name::YearlyCost(way), money(year), Origin::WorkedOut);
    }
    let saved = sheet.step(SAVED, formula![yearly(other), "−", yearly(found.way)], money(found.yearly));
    let sources = ["nist-hb-135"];
    let Some(simple) = found.simple else {
        let more = vec![first, sheet.shown(money(found.yearly.size()))];
        return Some(Working { more, ..sheet.done(saved, &sources) });
    };
    let result = sheet.step(TIME, vec![Math::Fraction(formula![FIRST], formula![SAVED])], (simple, Unit::Year));
    let mut more = vec![first, saved];
    let rate = evaluation.inputs.entered.get(Field::Discount, |percent| percent)?;
    if let (Some(discounted), true) = (found.discounted, rate > 0.0) {
        sheet.take(&evaluation.inputs, DISCOUNT, Name::Discount, Field::Discount)?;
        let rate = || Math::Fraction(formula![DISCOUNT], formula![100.0]);
        let left = formula![1.0, "−", rate(), "·", TIME];
        let over = formula!["ln", "(", Math::Fraction(formula![1.0], left), ")"];
        let under = formula!["ln", "(", 1.0, "+", rate(), ")"];
        more.push(sheet.step(DISCOUNTED, vec![Math::Fraction(over, under)], (discounted, Unit::Year)));
    }
    Some(Working { more, ..sheet.done(result, &sources) })
}

pub(super) fn more_heat(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let here = evaluation.here.as_ref()?;
    let [low, high] = Way::ALL.map(|way| here.way(way).map(|lead| lead.loss));
    let (low, high) = (low?, high?);
    for (way, lost) in [(Way::V480, high), (Way::V240, low)] {
        sheet.put(loss(way), Name::FullLoadHeat(way), heat(lost), Origin::WorkedOut);
    }
    let result = sheet.step(MORE, formula![loss(Way::V480), "−", loss(Way::V240)], heat(high - low));
    Some(sheet.done(result, &[]))
}

/// What the saving comes to with each of what may turn out otherwise at its ends, alone; and the range of all together,
/// which is sampled.
pub(super) fn range(evaluation: &Evaluation, basis: Basis, mut sheet: Sheet) -> Option<Working> {
    let spread = saving_range(evaluation).ok()??.on(basis)?;
    let saving = evaluation.here.as_ref()?.saving?.on(basis)?;
    sheet.put(SAVED, Name::SavingCounted, money(saving), Origin::WorkedOut);
    for (place, what) in Uncertain::ALL.into_iter().enumerate() {
        let Some(end) = ends(evaluation, what, basis) else { continue };
        let symbols = OF[place];
        let (unit, of_slope) = units(what);
        sheet.put(symbols.slope, Name::Slope(what), (end.slope, of_slope), Origin::WorkedOut);
        sheet.put(symbols.expected, Name::Expected(what), (end.estimate.expected(), unit), Origin::WorkedOut);
        let each = [
            (symbols.low, Name::Lowest(what), end.estimate.low(), end.saving[0]),
            (symbols.high, Name::Highest(what), end.estimate.high(), end.saving[1]),
        ];
        for (index, (symbol, name, value, at_end)) in each.into_iter().enumerate() {
            sheet.put(symbol, name, (value, unit), Origin::Assumed);
            let moved = formula![SAVED, "+", symbols.slope, "·", "(", symbol, "−", symbols.expected, ")"];
            sheet.step(symbols.savings[index], moved, money(at_end));
        }
    }
    sheet.warn(Caveat::Sampled);
    let sampled = [
        (SAMPLED[0], Name::SavingLow, spread.low10),
        (SAMPLED[1], Name::SavingMedian, spread.median),
        (SAMPLED[2], Name::SavingHigh, spread.high90),
    ];
    let [low, median, high] =
        sampled.map(|(symbol, name, amount)| sheet.put(symbol, name, money(Money(amount)), Origin::WorkedOut));
    Some(Working { more: vec![low, high], ..sheet.done(median, &["mckay-1979"]) })
}

/// Units of what may turn out otherwise, and of the saving for one of it.
fn units(what: Uncertain) -> (Unit, Unit) {
    match what {
        Uncertain::Metal => (Unit::DollarPerPound, Unit::Pound),
        // Over what is counted.
        Uncertain::Equipment | Uncertain::Hours => (Unit::One, Unit::Dollar),
        Uncertain::Energy => (Unit::DollarPerKilowattHour, Unit::One),
    }
}

/// Symbols of one thing that may turn out otherwise.
#[derive(Clone, Copy)]
struct Symbols {
    slope: Symbol,
    low: Symbol,
    expected: Symbol,
    high: Symbol,
    savings: [Symbol; 2],
}

const fn symbols(
    slope: &'static str,
    low: &'static str,
    expected: &'static str,
    high: &'static str,
    savings: [&'static str; 2],
) -> Symbols {
    Symbols {
        slope: Symbol::of("a", slope),
        low: Symbol::of("x", low),
        expected: Symbol::of("x", expected),
        high: Symbol::of("x", high),
        savings: [Symbol::of("S", savings[0]), Symbol::of("S", savings[1])],
    }
}

/// Of the metal, the equipment, the hours and the energy.
const OF: [Symbols; 4] = [
    symbols("m", "m,1", "m", "m,2", ["m,1", "m,2"]),
    symbols("q", "q,1", "q", "q,2", ["q,1", "q,2"]),
    symbols("t", "t,1", "t", "t,2", ["t,1", "t,2"]),
    symbols("E", "E,1", "E", "E,2", ["E,1", "E,2"]),
];
