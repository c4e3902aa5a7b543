//! The working of what a way costs, at first and over the years.

use super::frame::SIZE;
use super::input::INPUT_POWER;
use super::pole::put_input;
use super::{Case, INPUT};
use crate::cable::drop::{Load, lead_loss};
use crate::cable::filter::Remedy;
use crate::cable::lead::impedance;
use crate::cost::annuity::annuity_factor;
use crate::cost::price::cable_price;
use crate::evaluate::WayCost;
use crate::job::{Field, Inputs, Origin};
use crate::papers::conversion::Conversion;
use crate::papers::cost::{FIXED, METAL, METAL_PRICE, per_length};
use crate::papers::lead::{POWER, RESISTANCE, put_resistance};
use crate::papers::math::{Math, Measured, Symbol, formula};
use crate::papers::name::Name;
use crate::papers::sheet::{LEAD, Sheet, heat, length, money, plain, power};
use crate::papers::working::Working;
use crate::power::family::Kind;
use crate::power::fit::FrameFit;
use crate::quantity::{Length, Mass, Money, PieceAndSize, Unit, in_pounds_per_foot};

const LEAD_COST: Symbol = Symbol::of("C", "l");
const LEAD_PRICE: Symbol = Symbol::plain("c");
const SUPPLY_LENGTH: Symbol = Symbol::of("L", "u");
const SUPPLY_METAL: Symbol = Symbol::of("m", "u");
const SUPPLY_PRICE: Symbol = Symbol::of("c", "u");
const SUPPLY_COST: Symbol = Symbol::of("C", "u");
const EQUIPMENT: [Symbol; 3] = [Symbol::of("C", "q"), Symbol::of("C", "q0"), Symbol::of("c", "q")];
const REMEDY: [Symbol; 3] = [Symbol::of("C", "r"), Symbol::of("C", "r0"), Symbol::of("c", "r1")];
const LINE: Symbol = Symbol::of("C", "x");
const LINE_FIXED: Symbol = Symbol::of("C", "x0");
const LINE_PRICE: Symbol = Symbol::of("c", "x1");
const LINE_LENGTH: Symbol = Symbol::of("L", "x");
const LINE_FREE: Symbol = Symbol::of("L", "x0");
const FIRST: Symbol = Symbol::of("C", "1");
const SUPPLY_LOSS: Symbol = Symbol::of("P", "u");
pub(in crate::papers) const HOURS: Symbol = Symbol::of("t", "y");
const ENERGY: Symbol = Symbol::of("E", "y");
pub(in crate::papers) const ENERGY_PRICE: Symbol = Symbol::of("c", "E");
const YEARLY: Symbol = Symbol::of("C", "y");
pub(in crate::papers) const DISCOUNT: Symbol = Symbol::plain("i");
pub(in crate::papers) const YEARS: Symbol = Symbol::of("t", "l");
pub(in crate::papers) const WORTH: Symbol = Symbol::plain("w");
const LIFETIME: Symbol = Symbol::of("C", "t");

pub(super) fn cost(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let (cost, lead, supply) = (case.way.cost?, case.way.lead?, case.way.supply?);
    let mut parts = Vec::new();
    let of_lead = [LEAD, METAL, LEAD_PRICE, LEAD_COST];
    let names = (Name::LeadLength, Name::LeadMetal);
    parts.extend(put_cable(case, of_lead, names, (lead.length, lead.metal, cost.lead), &mut sheet));
    let of_supply = [SUPPLY_LENGTH, SUPPLY_METAL, SUPPLY_PRICE, SUPPLY_COST];
    let names = (Name::SupplyLength, Name::SupplyMetal);
    parts.extend(put_cable(case, of_supply, names, (supply.length, supply.metal, cost.supply), &mut sheet));
    parts.push(put_equipment(case, cost.equipment, &mut sheet));
    parts.extend(put_remedy(case, cost.remedy, &mut sheet));
    parts.extend(put_line(case, cost.line, &mut sheet));
    let sum: Vec<Math> = parts.iter().flat_map(|part| formula!["+", *part]).skip(1).collect();
    // The equipment alone is all where no cable is laid.
    let result = match parts[..] {
        [_] => sheet.shown(money(cost.first)),
        _ => sheet.step(FIRST, sum, money(cost.first)),
    };
    let first = if parts.len() == 1 { EQUIPMENT[0] } else { FIRST };
    let more = put_years(case, &cost, first, &mut sheet).unwrap_or_default();
    Some(Working { more, ..sheet.done(result, &[]) })
}

/// Cable by its metal; nothing where none is laid.
fn put_cable(
    case: &Case,
    [run, metal, price, total]: [Symbol; 4],
    names: (Name, Name),
    (laid, mass, cost): (Length, Mass, Money),
    sheet: &mut Sheet,
) -> Option<Symbol> {
    if laid.value <= 0.0 {
        return None;
    }
    let prices = case.inputs.prices.as_ref().ok()?;
    let each = cable_price(prices, mass / laid);
    sheet.take(case.inputs, FIXED, Name::CableFixed, Field::CableFixed)?;
    sheet.take(case.inputs, METAL_PRICE, Name::MetalPrice, Field::CableMetal)?;
    sheet.put(run, names.0, length(laid), Origin::WorkedOut);
    sheet.put(metal, names.1, (in_pounds_per_foot(mass / laid), Unit::PoundPerFoot), Origin::WorkedOut);
    sheet.step(price, formula![FIXED, "+", METAL_PRICE, "·", metal], per_length(each));
    sheet.step(total, formula![price, "·", run], money(cost));
    Some(total)
}

/// A part for the piece, and one for each horsepower of a size.
fn put_priced(
    [total, fixed, each]: [Symbol; 3],
    names: (Name, Name),
    (price, origin): (PieceAndSize, Origin),
    (size, cost): (Symbol, Money),
    sheet: &mut Sheet,
) -> Symbol {
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
    put_priced(EQUIPMENT, names, (case.way.family.price, case.of_family()), (size, cost), sheet)
}

/// What stands between equipment and lead; nothing where it costs nothing.
fn put_remedy(case: &Case, cost: Money, sheet: &mut Sheet) -> Option<Symbol> {
    let fitted = case.way.stress?.fitted;
    if fitted == Remedy::NoneNeeded {
        return None;
    }
    put_motor_power(case, sheet);
    let names = (Name::RemedyFixed, Name::RemedyPerHorsepower);
    Some(put_priced(REMEDY, names, (fitted.invented_price(), Origin::Assumed), (POWER, cost), sheet))
}

/// The extension of a three-phase line.
fn put_line(case: &Case, cost: Money, sheet: &mut Sheet) -> Option<Symbol> {
    if case.way.family.kind != Kind::ThreePhaseLine {
        return None;
    }
    let inputs = case.inputs;
    sheet.take(inputs, LINE_FIXED, Name::LineFixed, Field::LineFixed)?;
    sheet.take(inputs, LINE_PRICE, Name::LinePrice, Field::LinePrice)?;
    sheet.take(inputs, LINE_LENGTH, Name::LineLength, Field::LineDistance)?;
    sheet.take(inputs, LINE_FREE, Name::LineFree, Field::LineFree)?;
    let beyond = Math::Max(formula![LINE_LENGTH, "−", LINE_FREE], formula![0.0]);
    sheet.step(LINE, formula![LINE_FIXED, "+", LINE_PRICE, "·", beyond], money(cost));
    Some(LINE)
}

/// Energy of a year from the transformer on, what it costs, and that of all years by its worth today.
fn put_years(case: &Case, cost: &WayCost, first: Symbol, sheet: &mut Sheet) -> Option<Vec<Measured>> {
    let (draw, supply, yearly) = (case.draw()?, case.way.supply?, cost.yearly?);
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
    sheet.take(case.inputs, HOURS, Name::YearlyHours, Field::YearlyHours)?;
    let drawn = formula!["(", INPUT_POWER, "+", SUPPLY_LOSS, ")", "·", HOURS];
    let energy = sheet.step(ENERGY, vec![Math::Fraction(drawn, formula![1000.0])], plain(cost.energy?));
    sheet.take(case.inputs, ENERGY_PRICE, Name::EnergyPrice, Field::EnergyPrice)?;
    let yearly = sheet.step(YEARLY, formula![ENERGY, "·", ENERGY_PRICE], money(yearly));
    put_worth(case.inputs, sheet)?;
    let whole = formula![first, "+", YEARLY, "·", WORTH];
    let lifetime = sheet.step(LIFETIME, whole, money(cost.lifetime?));
    sheet.cite(&["nec-2023-ch9-t8", "nist-hb-135"]);
    Some(vec![energy, yearly, lifetime])
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
