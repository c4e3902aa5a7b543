//! The working of what a way costs, at first and over the years.

use super::frame::SIZE;
use super::input::INPUT_POWER;
use super::pole::put_input;
use super::{Case, INPUT};
use crate::cable::drop::{Load, lead_loss};
use crate::cable::lead::Conductor;
use crate::cable::lead::impedance;
use crate::cable::reactance::Build;
use crate::cost::annuity::annuity_factor;
use crate::cost::book::Piece;
use crate::evaluate::priced;
use crate::evaluate::{Draw, SupplyRun, WayCost};
use crate::job::{Field, Inputs, Origin};
use crate::papers::conversion::Conversion;
use crate::papers::cost::{CableSymbols, LABOR, LABOR_FIXED, OF_LEAD, Priced, TRANSFORMER, per_length};
use crate::papers::lead::{POWER, RESISTANCE, put_resistance};
use crate::papers::math::{Math, Measured, Symbol, formula};
use crate::papers::name::Name;
use crate::papers::sheet::{LEAD, SETS, Sheet, heat, length, money, plain, power};
use crate::papers::working::Working;
use crate::power::family::Kind;
use crate::power::fit::FrameFit;
use crate::quantity::{Length, Mass, Money, PieceAndSize, Power, Unit, in_pounds_per_foot, in_watts};
use crate::standards::conductor::Metal;

const LEAD_COST: Symbol = Symbol::of("C", "l");
const LEAD_PRICE: Symbol = Symbol::plain("c");
const SUPPLY_LENGTH: Symbol = Symbol::of("L", "u");
const LEAD_SETS: Symbol = Symbol::of("n", "l");
/// Of the supply conductors.
const OF_SUPPLY: CableSymbols = CableSymbols {
    mass: Symbol::of("m", "u"),
    metal: Symbol::of("p", "u"),
    sets: SETS,
    quote: [Symbol::of("c", "bu"), Symbol::of("p", "mu")],
};
const SUPPLY_PRICE: Symbol = Symbol::of("c", "u");
pub(in crate::papers) const SUPPLY_COST: Symbol = Symbol::of("C", "u");
pub(in crate::papers) const EQUIPMENT: Symbol = Symbol::of("C", "q");
const OF_EQUIPMENT: [Symbol; 3] = [EQUIPMENT, Symbol::of("C", "q0"), Symbol::of("c", "q")];
pub(in crate::papers) const REMEDY: Symbol = Symbol::of("C", "r");
const OF_REMEDY: [Symbol; 3] = [REMEDY, Symbol::of("C", "r0"), Symbol::of("c", "r1")];
pub(in crate::papers) const LINE: Symbol = Symbol::of("C", "x");
const LINE_FIXED: Symbol = Symbol::of("C", "x0");
const LINE_PRICE: Symbol = Symbol::of("c", "x1");
const LINE_LENGTH: Symbol = Symbol::of("L", "x");
const LINE_FREE: Symbol = Symbol::of("L", "x0");
const FIRST: Symbol = Symbol::of("C", "1");
const LABOR_COST: Symbol = Symbol::of("C", "l0");
const SUPPLY_LOSS: Symbol = Symbol::of("P", "u");
pub(in crate::papers) const HOURS: Symbol = Symbol::of("t", "y");
const ENERGY: Symbol = Symbol::of("E", "y");
pub(in crate::papers) const ENERGY_PRICE: Symbol = Symbol::of("c", "E");
const LARGEST: Symbol = Symbol::of("P", "m");
const DEMAND_PRICE: Symbol = Symbol::of("c", "P");
const STANDING: Symbol = Symbol::of("C", "s");
const YEARLY: Symbol = Symbol::of("C", "y");
pub(in crate::papers) const DISCOUNT: Symbol = Symbol::plain("i");
pub(in crate::papers) const YEARS: Symbol = Symbol::of("t", "l");
pub(in crate::papers) const WORTH: Symbol = Symbol::plain("w");
const LIFETIME: Symbol = Symbol::of("C", "t");

pub(super) fn cost(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let (cost, lead, supply) = (case.way.cost?, case.way.lead?, case.way.supply?);
    let mut parts = Vec::new();
    let of_lead = ([LEAD, LEAD_PRICE, LEAD_COST], CableSymbols { sets: LEAD_SETS, ..OF_LEAD });
    let names = (Name::LeadLength, Name::LeadMetal);
    let cable = (lead.run.conductor, (lead.demands.setting.metal, lead.demands.build));
    parts.extend(put_cable(case, of_lead, names, cable, (lead.length, lead.metal, cost.lead), &mut sheet));
    let of_supply = ([SUPPLY_LENGTH, SUPPLY_PRICE, SUPPLY_COST], OF_SUPPLY);
    let names = (Name::SupplyLength, Name::SupplyMetal);
    let cable = (supply.run.conductor, (supply.demands.setting.metal, supply.demands.build));
    parts.extend(put_cable(
        case,
        of_supply,
        names,
        cable,
        (supply.length, supply.metal, cost.beyond.supply),
        &mut sheet,
    ));
    parts.push(put_equipment(case, cost.beyond.equipment, &mut sheet));
    parts.extend(put_remedy(case, &cost, &mut sheet));
    parts.extend(put_line(case, cost.beyond.line, &mut sheet));
    parts.extend(put_rest(case, &cost, &mut sheet));
    let sum: Vec<Math> = parts.iter().flat_map(|part| formula!["+", *part]).skip(1).collect();
    // The equipment alone is all where no cable is laid.
    let result = match parts[..] {
        [_] => sheet.shown(money(cost.first)),
        _ => sheet.step(FIRST, sum, money(cost.first)),
    };
    let first = if parts.len() == 1 { EQUIPMENT } else { FIRST };
    let more = put_years(case, &cost, first, &mut sheet).unwrap_or_default();
    Some(Working { more, ..sheet.done(result, &[]) })
}

/// Cable by its metal or its quote; nothing where none is laid.
fn put_cable(
    case: &Case,
    ([run, price, total], symbols): ([Symbol; 3], CableSymbols),
    names: (Name, Name),
    cable: (Conductor, (Metal, Build)),
    (laid, mass, cost): (Length, Mass, Money),
    sheet: &mut Sheet,
) -> Option<Symbol> {
    if laid.value <= 0.0 {
        return None;
    }
    sheet.put(run, names.0, length(laid), Origin::WorkedOut);
    sheet.put(symbols.mass, names.1, (in_pounds_per_foot(mass / laid), Unit::PoundPerFoot), Origin::WorkedOut);
    Priced { conductor: cable.0, kind: cable.1, metal: mass / laid, symbols }.put(case.inputs, price, sheet)?;
    sheet.step(total, formula![price, "·", run], money(cost));
    Some(total)
}

/// Price of a piece by its size: a part for the piece, and one for each horsepower; or that of a row of just this size.
fn put_priced(
    [total, fixed, each]: [Symbol; 3],
    names: (Name, Name),
    (price, origin): (Option<PieceAndSize>, Origin),
    (size, cost): (Symbol, Money),
    sheet: &mut Sheet,
) -> Symbol {
    let Some(price) = price else {
        sheet.put(total, Name::PieceQuote, money(cost), origin);
        return total;
    };
    sheet.put(fixed, names.0, money(price.fixed), origin);
    sheet.put(each, names.1, money(price.per_hp), origin);
    let horsepower = sheet.unit(Conversion::Horsepower);
    sheet.step(total, formula![fixed, "+", each, "·", size, "·", horsepower], money(cost));
    total
}

fn put_motor_power(case: &Case, sheet: &mut Sheet) {
    let origin = case.inputs.motor_power.as_ref().map_or(Origin::WorkedOut, |known| known.origin);
    sheet.put(POWER, Name::MotorPower, power(case.motor.power), origin);
}

/// The equipment by the size of its frame, or of the motor where none is told.
fn put_equipment(case: &Case, cost: Money, sheet: &mut Sheet) -> Symbol {
    let size = match case.way.frame {
        Some(FrameFit::Serves { frame, .. }) => {
            sheet.put(SIZE, Name::FrameSize, power(frame.power), case.of_family());
            SIZE
        }
        _ => {
            put_motor_power(case, sheet);
            POWER
        }
    };
    let names = (Name::EquipmentFixed, Name::EquipmentPerHorsepower);
    let of_own = match case.way.family.price {
        Some(price) => (Some(price), case.of_family()),
        None => (of_book(case, priced::equipment(case.way.family.kind), frame_size(case)), Origin::Book),
    };
    put_priced(OF_EQUIPMENT, names, of_own, (size, cost), sheet)
}

/// What stands between equipment and lead and is paid for; nothing where nothing does.
fn put_remedy(case: &Case, cost: &WayCost, sheet: &mut Sheet) -> Option<Symbol> {
    let piece = priced::remedy(cost.remedy)?;
    put_motor_power(case, sheet);
    let names = (Name::RemedyFixed, Name::RemedyPerHorsepower);
    let price = of_book(case, piece, case.motor.power);
    Some(put_priced(OF_REMEDY, names, (price, Origin::Book), (POWER, cost.beyond.remedy), sheet))
}

/// Size that the price of the equipment goes by.
fn frame_size(case: &Case) -> Power {
    match case.way.frame {
        Some(FrameFit::Serves { frame, .. }) => frame.power,
        _ => case.motor.power,
    }
}

/// Both parts of a piece's price in the book; nothing where a row of just this size tells it.
fn of_book(case: &Case, piece: Piece, size: Power) -> Option<PieceAndSize> {
    let (fixed, per_hp) = case.inputs.prices.as_ref().ok()?.book.piece_parts(piece, size)?;
    Some(PieceAndSize { fixed, per_hp })
}

/// The extension of a three-phase line.
fn put_line(case: &Case, cost: Money, sheet: &mut Sheet) -> Option<Symbol> {
    if case.way.family.kind != Kind::ThreePhaseLine {
        return None;
    }
    let inputs = case.inputs;
    let tariff = case.site.tariff?;
    let origin = |field| if inputs.entered.is_typed(field) { Origin::Typed } else { Origin::Book };
    sheet.put(LINE_FIXED, Name::LineFixed, money(tariff.fixed), origin(Field::LineFixed));
    sheet.put(LINE_PRICE, Name::LinePrice, per_length(tariff.per_length), origin(Field::LinePrice));
    sheet.take(inputs, LINE_LENGTH, Name::LineLength, Field::LineDistance)?;
    sheet.put(LINE_FREE, Name::LineFree, length(tariff.free), origin(Field::LineFree));
    let beyond = Math::Max(formula![LINE_LENGTH, "−", LINE_FREE], formula![0.0]);
    sheet.step(LINE, formula![LINE_FIXED, "+", LINE_PRICE, "·", beyond], money(cost));
    Some(LINE)
}

/// A transformer behind the drive, and labor, where they cost something.
fn put_rest(case: &Case, cost: &WayCost, sheet: &mut Sheet) -> Vec<Symbol> {
    let beyond = cost.beyond;
    let mut parts = Vec::new();
    for (symbol, name, amount) in
        [(TRANSFORMER, Name::TransformerCost, beyond.transformer), (LABOR_FIXED, Name::LaborFixed, beyond.labor)]
    {
        if amount.0 != 0.0 {
            sheet.put(symbol, name, money(amount), Origin::Book);
            parts.push(symbol);
        }
    }
    if let (Ok(prices), true) = (&case.inputs.prices, cost.labor.0 != 0.0) {
        sheet.put(LABOR, Name::LaborPerLength, per_length(prices.book.labor_per_length()), Origin::Book);
        sheet.step(LABOR_COST, formula![LABOR, "·", LEAD], money(cost.labor));
        parts.push(LABOR_COST);
    }
    parts
}

/// Energy of a year from the transformer on, what it costs, and that of all years by its worth today.
fn put_years(case: &Case, cost: &WayCost, first: Symbol, sheet: &mut Sheet) -> Option<Vec<Measured>> {
    let (draw, supply, yearly) = (case.draw()?, case.way.supply?, cost.yearly?);
    let rated = case.inputs.entered.get(Field::YearlyHours, |_| ()).is_some();
    let energy = if rated {
        put_losses(case, &draw, &supply, sheet)?;
        sheet.take(case.inputs, HOURS, Name::YearlyHours, Field::YearlyHours)?;
        let drawn = formula!["(", INPUT_POWER, "+", SUPPLY_LOSS, ")", "·", HOURS];
        sheet.step(ENERGY, vec![Math::Fraction(drawn, formula![1000.0])], plain(cost.energy?))
    } else {
        // Row by row of the year's duty.
        sheet.put(ENERGY, Name::YearlyEnergy, plain(cost.energy?), Origin::WorkedOut)
    };
    let bill = put_prices(case, cost.largest, sheet)?;
    let yearly = sheet.step(YEARLY, bill, money(yearly));
    put_worth(case.inputs, sheet)?;
    let whole = formula![first, "+", YEARLY, "·", WORTH];
    let lifetime = sheet.step(LIFETIME, whole, money(cost.lifetime?));
    sheet.cite(&["nec-2023-ch9-t8", "nist-hb-135"]);
    Some(vec![energy, yearly, lifetime])
}

/// What is drawn with the motor at its rating, and the heat of the supply conductors.
fn put_losses(case: &Case, draw: &Draw, supply: &SupplyRun, sheet: &mut Sheet) -> Option<()> {
    sheet.put(INPUT_POWER, Name::InputPower, heat(draw.input), Origin::WorkedOut);
    put_input(case, sheet)?;
    put_resistance(supply.run.conductor, supply.demands.setting.metal, sheet);
    sheet.put(SUPPLY_LENGTH, Name::SupplyLength, length(supply.length), case.inputs.origin(Field::PoleDistance));
    let conductors = f64::from(supply.demands.phases.conductors());
    let squared = Math::Power(formula![INPUT], 2.0);
    let product = formula![conductors, "·", squared, "·", RESISTANCE, "·", SUPPLY_LENGTH];
    let demands = supply.demands;
    let load = Load { sending: demands.supply, current: draw.current, power_factor: 1.0, phases: demands.phases };
    let (resistance, _) = impedance(supply.run.conductor, demands.setting.metal, demands.build);
    let wasted = lead_loss(load, resistance, supply.length);
    sheet.step(SUPPLY_LOSS, vec![Math::Fraction(product, formula![1000.0])], heat(wasted));
    Some(())
}

/// The year's bill: energy by its price, mean over the seasons where there are any, the largest power, and what stands.
pub(super) fn put_prices(case: &Case, largest: Option<Power>, sheet: &mut Sheet) -> Option<Vec<Math>> {
    let inputs = case.inputs;
    let prices = case.evaluation.sweep.as_ref().and_then(|sweep| sweep.ways[0].energy)?;
    let mut bill = formula![ENERGY, "·", ENERGY_PRICE];
    if inputs.entered.get(Field::EnergyPrice, |price| price) == Some(prices.kilowatt_hour.0) {
        sheet.take(inputs, ENERGY_PRICE, Name::EnergyPrice, Field::EnergyPrice)?;
    } else {
        let mean = (prices.kilowatt_hour.0, Unit::DollarPerKilowattHour);
        sheet.put(ENERGY_PRICE, Name::MeanEnergyPrice, mean, Origin::WorkedOut);
    }
    if prices.kilowatt.0 != 0.0 {
        let largest = in_watts(largest?) / 1000.0;
        sheet.put(LARGEST, Name::LargestPower, (largest, Unit::One), Origin::WorkedOut);
        sheet.put(DEMAND_PRICE, Name::DemandPrice, (prices.kilowatt.0, Unit::DollarPerKilowatt), Origin::WorkedOut);
        bill.extend(formula!["+", LARGEST, "·", DEMAND_PRICE]);
    }
    if prices.standing.0 != 0.0 {
        sheet.put(STANDING, Name::StandingCharge, money(prices.standing), Origin::WorkedOut);
        bill.extend(formula!["+", STANDING]);
    }
    Some(bill)
}

/// Worth today of one unit of money in each of the years.
pub(in crate::papers) fn put_worth(inputs: &Inputs, sheet: &mut Sheet) -> Option<()> {
    let discount = inputs.entered.get(Field::Discount, |percent| percent / 100.0)?;
    let years = inputs.entered.get(Field::Years, |years| years)?;
    sheet.take(inputs, YEARS, Name::Years, Field::Years)?;
    let factor = (annuity_factor(discount, years).ok()?, Unit::Year);
    if discount == 0.0 {
        // Money that earns nothing is worth the same in every year.
        sheet.step(WORTH, formula![1.0, "·", YEARS], factor);
        return Some(());
    }
    sheet.take(inputs, DISCOUNT, Name::Discount, Field::Discount)?;
    let rate = || Math::Fraction(formula![DISCOUNT], formula![100.0]);
    let worth = Math::Power(formula!["(", 1.0, "+", rate(), ")"], -years);
    sheet.step(WORTH, vec![Math::Fraction(formula![1.0, "−", worth], vec![rate()])], factor);
    Some(())
}
