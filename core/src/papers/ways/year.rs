//! The workings of a year: where its power goes, what it takes, costs and gives.

use super::cost::put_prices;
use super::input::{INPUT_POWER, LEAD_LOSS, put_motor};
use super::{Case, EFFICIENCY, INPUT, SUPPLY, TRUE_FACTOR, on_lines};
use crate::cost::criteria::Energy;
use crate::evaluate::{Evaluation, PowerFlow, Year};
use crate::job::{Field, Origin};
use crate::papers::conversion::Conversion;
use crate::papers::lead::{CURRENT, NAMEPLATE, POWER, put_table_resistance};
use crate::papers::math::{Math, Measured, Symbol, formula};
use crate::papers::motor::{EFFICIENCY as MOTOR_EFFICIENCY, put_volts_at};
use crate::papers::name::Name;
use crate::papers::sheet::{LEAD, SETS, Sheet, current, flow, heat, length, money, plain};
use crate::papers::topic::OfYear;
use crate::papers::working::Working;
use crate::quantity::{ElectricCurrent, Mass, Power, Unit, Volume, in_gallons, in_pounds, in_watts};

const SHAFT: Symbol = Symbol::of("P", "s");
const SHARE: Symbol = Symbol::plain("x");
const IN_MOTOR: Symbol = Symbol::of("P", "v");
const IN_EQUIPMENT: Symbol = Symbol::of("P", "e");
const IN_SUPPLY: Symbol = Symbol::of("P", "u");
const METERED: Symbol = Symbol::of("P", "m");
const LEAD_RESISTANCE: Symbol = Symbol::of("R", "l");
const SUPPLY_RESISTANCE: Symbol = Symbol::of("R", "u");
const LEAD_SETS: Symbol = Symbol::of("n", "l");
const SUPPLY_LENGTH: Symbol = Symbol::of("L", "u");
const ENERGY: Symbol = Symbol::of("E", "y");
const OF_ENERGY: Symbol = Symbol::of("C", "E");
const BILL: Symbol = Symbol::of("C", "y");
const VOLUME: Symbol = Symbol::plain("V");
const WORK: Symbol = Symbol::of("W", "w");
const PERFORMANCE: Symbol = Symbol::plain("p");
const CRITERION: Symbol = Symbol::of("p", "0");
const MET: Symbol = Symbol::of("x", "p");
const CARBON: Symbol = Symbol::of("c", "CO₂");
const ALL_CARBON: Symbol = Symbol::of("m", "CO₂");

/// Indices of the rows: as many as a year's duty may have.
const ROWS: [&str; 24] = [
    "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13", "14", "15", "16", "17", "18", "19", "20",
    "21", "22", "23", "24",
];

/// The working behind an answer of the year.
pub(super) fn working(evaluation: &Evaluation, of: OfYear, sheet: Sheet) -> Option<Working> {
    let year = evaluation.year.as_ref()?;
    match of {
        OfYear::Row(place) => row(&Case::picked(evaluation)?, &year.rows.get(place)?.power, sheet),
        OfYear::Energy => energy(year.rows.iter().map(|row| row.power), year.energy, sheet),
        OfYear::Bill => bill(&Case::picked(evaluation)?, year, sheet),
        OfYear::Water => water(year, year.volume?, sheet),
        OfYear::Performance => performance(year, year.performance?, sheet),
        OfYear::BySpeed => controlled(year, 0, sheet),
        OfYear::OnOff => controlled(year, 1, sheet),
        OfYear::Carbon => carbon(evaluation, year, year.carbon?, sheet),
    }
}

fn controlled(year: &Year, place: usize, sheet: Sheet) -> Option<Working> {
    let of = &year.by_control.as_ref()?[place];
    energy(of.rows.iter().copied(), of.energy, sheet)
}

/// Where the power of a row goes, from the shaft back to the transformer.
fn row(case: &Case, power: &PowerFlow, mut sheet: Sheet) -> Option<Working> {
    let draw = case.draw()?;
    put_motor(case, &mut sheet)?;
    sheet.put(SHAFT, Name::ShaftPower, heat(power.shaft), Origin::WorkedOut);
    let lost = || formula![Math::Fraction(formula![1.0], formula![MOTOR_EFFICIENCY]), "−", 1.0];
    let wasted = [formula![SHAFT, "·", "("], lost(), formula![")"]].concat();
    let motor = sheet.step(IN_MOTOR, wasted, heat(power.motor));
    let watts = sheet.unit(Conversion::Watts);
    let share = (power.shaft / case.motor.power).value;
    sheet.step(SHARE, vec![Math::Fraction(formula![SHAFT], formula![POWER, "·", watts])], plain(share));
    let lead = put_lead(case, power, &mut sheet)?;
    sheet.put(EFFICIENCY, Name::EquipmentEfficiency, plain(case.way.family.input.efficiency), case.of_family());
    let drawn = power.shaft + power.motor + power.lead + power.equipment;
    let output = formula![SHAFT, "+", IN_MOTOR, "+", LEAD_LOSS];
    let at_equipment = sheet.step(INPUT_POWER, vec![Math::Fraction(output, formula![EFFICIENCY])], heat(drawn));
    let in_equipment = formula![INPUT_POWER, "·", "(", 1.0, "−", EFFICIENCY, ")"];
    let equipment = sheet.step(IN_EQUIPMENT, in_equipment, heat(power.equipment));
    let mut more = vec![sheet.shown(heat(power.shaft)), motor, lead, equipment, sheet.shown(heat(power.supply))];
    more.push(sheet.shown((power.load.hours, Unit::Hour)));
    let mut result = at_equipment;
    // Without a cable from the pole nothing is lost on it.
    if case.way.supply.is_some() {
        case.put_power_factor(&draw, &mut sheet);
        let here = draw.current * (drawn / draw.input).value;
        put_supply(case, here, power.supply, &mut sheet)?;
        result = sheet.step(METERED, formula![INPUT_POWER, "+", IN_SUPPLY], heat(power.metered));
    }
    Some(Working { more, ..sheet.done(result, &["nec-2023-ch9-t8", "ieee-1459-2010", "practice"]) })
}

/// Heat of the lead: its current goes with the load, and with what is left of the volts.
fn put_lead(case: &Case, power: &PowerFlow, sheet: &mut Sheet) -> Option<Measured> {
    let (lead, load) = (case.way.lead?, power.load);
    case.put_nameplate(sheet)?;
    let volts = put_volts_at((load.frequency, load.volts), sheet);
    let drawn = match volts.is_empty() {
        true => formula![NAMEPLATE, "·", SHARE],
        false => vec![Math::Fraction(formula![NAMEPLATE, "·", SHARE], volts.into_iter().skip(1).collect())],
    };
    sheet.step(CURRENT, drawn, current(case.motor.nameplate * load.current()));
    let run = lead.run.conductor;
    put_table_resistance(run, lead.demands.setting.metal, LEAD_RESISTANCE, sheet);
    sheet.put(LEAD, Name::LeadLength, length(lead.length), Origin::WorkedOut);
    let mut under = formula![1000.0];
    if run.sets > 1 {
        sheet.put(LEAD_SETS, Name::ParallelSets, plain(f64::from(run.sets)), Origin::WorkedOut);
        under.extend(formula!["·", LEAD_SETS]);
    }
    let conductors = f64::from(case.motor.phases.conductors());
    let squared = Math::Power(formula![CURRENT], 2.0);
    let product = formula![conductors, "·", squared, "·", LEAD_RESISTANCE, "·", LEAD];
    Some(sheet.step(LEAD_LOSS, vec![Math::Fraction(product, under)], heat(power.lead)))
}

/// Heat of the supply conductors.
fn put_supply(case: &Case, drawn: ElectricCurrent, lost: Power, sheet: &mut Sheet) -> Option<Measured> {
    let supply = case.way.supply?;
    case.put_supply_volts(sheet);
    let under = on_lines(case.feed(), formula![SUPPLY, "·", TRUE_FACTOR]);
    sheet.step(INPUT, vec![Math::Fraction(formula![INPUT_POWER], under)], current(drawn));
    let run = supply.run.conductor;
    put_table_resistance(run, supply.demands.setting.metal, SUPPLY_RESISTANCE, sheet);
    sheet.put(SUPPLY_LENGTH, Name::SupplyLength, length(supply.length), case.inputs.origin(Field::PoleDistance));
    let mut under = formula![1000.0];
    if run.sets > 1 {
        sheet.put(SETS, Name::ParallelSets, plain(f64::from(run.sets)), Origin::WorkedOut);
        under.extend(formula!["·", SETS]);
    }
    let conductors = f64::from(supply.demands.phases.conductors());
    let squared = Math::Power(formula![INPUT], 2.0);
    let product = formula![conductors, "·", squared, "·", SUPPLY_RESISTANCE, "·", SUPPLY_LENGTH];
    Some(sheet.step(IN_SUPPLY, vec![Math::Fraction(product, under)], heat(lost)))
}

/// A sum over the rows of two of their figures.
fn over_rows(
    rows: impl Iterator<Item = [(Name, (f64, Unit)); 2]>,
    [one, other]: [&'static str; 2],
    sheet: &mut Sheet,
) -> Vec<Math> {
    let mut sum = Vec::new();
    for (index, [(first, a), (second, b)]) in ROWS.into_iter().zip(rows) {
        let (first_symbol, second_symbol) = (Symbol::of(one, index), Symbol::of(other, index));
        sheet.put(first_symbol, first, a, Origin::WorkedOut);
        sheet.put(second_symbol, second, b, Origin::WorkedOut);
        sum.extend((!sum.is_empty()).then_some(Math::Sign("+")));
        sum.extend(formula![first_symbol, "·", second_symbol]);
    }
    sum
}

fn energy(rows: impl Iterator<Item = PowerFlow>, all: f64, mut sheet: Sheet) -> Option<Working> {
    let both =
        rows.map(|row| [(Name::MeteredPower, heat(row.metered)), (Name::RowHours, (row.load.hours, Unit::Hour))]);
    let sum = over_rows(both, ["P", "t"], &mut sheet);
    let result = sheet.step(ENERGY, vec![Math::Fraction(sum, formula![1000.0])], plain(all));
    Some(sheet.done(result, &[]))
}

fn bill(case: &Case, year: &Year, mut sheet: Sheet) -> Option<Working> {
    sheet.put(ENERGY, Name::YearlyEnergy, plain(year.energy), Origin::WorkedOut);
    let largest = year.rows.iter().map(|row| row.power.metered).reduce(Power::max);
    let whole = put_prices(case, largest, &mut sheet)?;
    let mut more = Vec::new();
    if whole.len() > 3 {
        let of_energy = whole[..3].to_vec();
        more.push(sheet.step(OF_ENERGY, of_energy, money(year.bill.energy)));
        more.extend([year.bill.demand, year.bill.standing].map(|part| sheet.shown(money(part))));
    }
    let result = sheet.step(BILL, whole, money(year.bill.total));
    Some(Working { more, ..sheet.done(result, &[]) })
}

fn water(year: &Year, all: Volume, mut sheet: Sheet) -> Option<Working> {
    let rows = year.rows.iter().filter_map(|row| row.drawn);
    let both = rows.map(|row| [(Name::DrawnFlow, flow(row.flow)), (Name::RowHours, (row.hours, Unit::Hour))]);
    let sum = over_rows(both, ["Q", "t"], &mut sheet);
    let hour = sheet.unit(Conversion::Hour);
    let whole = [formula!["("], sum, formula![")", "·", hour]].concat();
    let result = sheet.step(VOLUME, whole, (in_gallons(all), Unit::Gallon));
    Some(sheet.done(result, &[]))
}

/// Work on the water for each kilowatt-hour, and what that is of the criterion.
fn performance(year: &Year, (found, met): (f64, f64), mut sheet: Sheet) -> Option<Working> {
    let rows = year.rows.iter().filter_map(|row| row.drawn);
    let both =
        rows.map(|row| [(Name::WaterPower, heat(row.duty.water)), (Name::RunHours, (row.running(), Unit::Hour))]);
    let work = year.rows.iter().filter_map(|row| row.drawn).map(|row| in_watts(row.duty.water) * row.running());
    let sum = over_rows(both, ["P", "t"], &mut sheet);
    // The criterion counts in horsepower, whatever the units.
    let horsepower = crate::quantity::WATT_PER_HORSEPOWER;
    let all = work.sum::<f64>() / horsepower;
    sheet.step(WORK, vec![Math::Fraction(sum, formula![horsepower])], plain(all));
    sheet.put(ENERGY, Name::YearlyEnergy, plain(year.energy), Origin::WorkedOut);
    let result = sheet.step(PERFORMANCE, vec![Math::Fraction(formula![WORK], formula![ENERGY])], plain(found));
    sheet.put(CRITERION, Name::Criterion, plain(Energy::Electric.criterion()), Origin::Table);
    let share = formula![Math::Fraction(formula![PERFORMANCE], formula![CRITERION]), "·", 100.0];
    let share = sheet.step(MET, share, (100.0 * met, Unit::Percent));
    Some(Working { more: vec![share], ..sheet.done(result, &["nebraska-criteria"]) })
}

fn carbon(evaluation: &Evaluation, year: &Year, all: Mass, mut sheet: Sheet) -> Option<Working> {
    sheet.put(ENERGY, Name::YearlyEnergy, plain(year.energy), Origin::WorkedOut);
    sheet.take(&evaluation.inputs, CARBON, Name::CarbonOfEnergy, Field::Carbon)?;
    let result = sheet.step(ALL_CARBON, formula![CARBON, "·", ENERGY], (in_pounds(all), Unit::Pound));
    Some(sheet.done(result, &[]))
}
