//! The workings of the leads in service: temperature, heat, alternating current, the size that pays.

use super::conversion::Conversion;
use super::cost::per_length as per_length_price;
use super::lead::{BUNDLE_FACTOR, CURRENT, INSULATION, RESISTANCE, around, per_length, put_table_resistance};
use super::math::{Math, Measured, Symbol, formula};
use super::name::Name;
use super::sheet::{LEAD, SETS, Sheet, current, diameter, heat, length, money, percent, plain};
use super::ways::cost::{ENERGY_PRICE, HOURS, WORTH, put_worth};
use super::working::{EnteredValue, Working};
use crate::cable::conductor::properties;
use crate::cable::drop::Phases;
use crate::cable::economic::Lifetime;
use crate::cable::lead::{Conductor, Demands};
use crate::cable::skin::{ROUND_STRANDED, proximity_effect, skin_effect};
use crate::cable::temperature::TABLE_AMBIENT;
use crate::evaluate::{Evaluation, LeadInService, WayHere};
use crate::job::{Field, Origin, Way};
use crate::quantity::{ElectricCurrent, Unit, amperes, in_hertz};
use crate::standards::ambient::bundle_factor;
use crate::standards::ampacity::table_310_16;
use crate::standards::conductor::TABLE_8_AT;

const EACH: Symbol = Symbol::of("I", "e1");
const AMBIENT: Symbol = Symbol::of("T", "a");
const RATED: Symbol = Symbol::of("T", "r");
const TABLE_AIR: Symbol = Symbol::of("T", "30");
const RATED_CURRENT: Symbol = Symbol::of("I", "r30");
const TEMPERATURE: Symbol = Symbol::plain("T");
pub(super) const COEFFICIENT: Symbol = Symbol::plain("α");
pub(super) const TABLE_TEMPERATURE: Symbol = Symbol::of("T", "75");
pub(super) const WARM: Symbol = Symbol::of("R", "T");
pub(super) const LOSS: Symbol = Symbol::of("P", "l");
pub(super) const FREQUENCY: Symbol = Symbol::plain("f");
const ARGUMENT: Symbol = Symbol::of("x", "e");
const SKIN: Symbol = Symbol::of("y", "s");
const NEAR: Symbol = Symbol::of("y", "p");
const NEARNESS: Symbol = Symbol::of("u", "c");
const THICK: Symbol = Symbol::of("d", "c");
const APART: Symbol = Symbol::of("s", "c");
const ADDED: Symbol = Symbol::of("y", "a");

/// A lead in service, with its conductor and what its choice depended on.
pub(super) struct Served<'a> {
    pub lead: &'a LeadInService,
    here: &'a WayHere,
    pub conductor: Conductor,
    pub demands: Demands,
}

pub(super) fn served(evaluation: &Evaluation, way: Way) -> Option<Served<'_>> {
    let here = evaluation.here.as_ref()?.way(way)?;
    Some(Served {
        here,
        lead: evaluation.service[way as usize].as_ref()?,
        conductor: here.run.run.conductor,
        demands: evaluation.sweep.as_ref()?.way(way).demands_of(&here.run),
    })
}

impl Served<'_> {
    /// The current of one set.
    pub fn each(&self) -> ElectricCurrent {
        self.lead.current / f64::from(self.conductor.sets)
    }

    /// The current, and its symbol for one set of several.
    pub fn put_current(&self, sheet: &mut Sheet) -> Symbol {
        sheet.put(CURRENT, Name::ServiceLoad, current(self.lead.current), Origin::WorkedOut);
        if self.conductor.sets == 1 {
            return CURRENT;
        }
        self.put_sets(sheet);
        sheet.step(EACH, vec![Math::Fraction(formula![CURRENT], formula![SETS])], current(self.each()));
        EACH
    }

    fn put_sets(&self, sheet: &mut Sheet) {
        sheet.put(SETS, Name::ParallelSets, plain(f64::from(self.conductor.sets)), Origin::WorkedOut);
    }

    fn put_warm(&self, sheet: &mut Sheet) {
        sheet.put(WARM, Name::ServiceResistance, per_length(self.lead.warm.resistance), Origin::WorkedOut);
    }

    pub fn put_frequency(&self, sheet: &mut Sheet) {
        let frequency = (in_hertz(self.lead.frequency), Unit::Hertz);
        sheet.put(FREQUENCY, Name::LeadFrequency, frequency, Origin::WorkedOut);
    }

    pub fn put_length(&self, sheet: &mut Sheet) {
        sheet.put(LEAD, Name::LeadLength, length(self.lead.length), Origin::WorkedOut);
    }
}

pub(super) fn temperature(evaluation: &Evaluation, way: Way, mut sheet: Sheet) -> Option<Working> {
    let served = served(evaluation, way)?;
    let (setting, conductor) = (served.demands.setting, served.conductor);
    let each = served.put_current(&mut sheet);
    let table = table_310_16(conductor.size, setting.metal, setting.insulation)?;
    sheet.enter(Name::InsulationRating, EnteredValue::Rating(setting.insulation));
    put_table_resistance(conductor, setting.metal, RESISTANCE, &mut sheet);
    sheet.put(INSULATION, Name::InsulationAmpacity, current(amperes(table)), Origin::Table);
    let mut rated = INSULATION;
    if conductor.sets > 1 {
        let bundle = bundle_factor(usize::from(Phases::Three.conductors()) * usize::from(conductor.sets));
        sheet.put(BUNDLE_FACTOR, Name::BundleFactor, plain(bundle), Origin::Table);
        sheet.step(RATED_CURRENT, formula![INSULATION, "·", BUNDLE_FACTOR], current(amperes(table * bundle)));
        rated = RATED_CURRENT;
    }
    let celsius = |degrees: f64| (degrees, Unit::DegreeCelsius);
    let (name, origin) = around(evaluation, served.here, &mut sheet)?;
    sheet.put(AMBIENT, name, celsius(setting.ambient.0), origin);
    sheet.put(RATED, Name::RatedTemperature, celsius(setting.insulation.celsius()), Origin::Definition);
    sheet.put(TABLE_AIR, Name::TableAmbient, celsius(TABLE_AMBIENT), Origin::Table);
    let share = Math::Power(vec![Math::Fraction(formula![each], formula![rated])], 2.0);
    let warmed = formula![AMBIENT, "+", "(", RATED, "−", TABLE_AIR, ")", "·", share];
    let warm = served.lead.warm;
    let result = sheet.step(TEMPERATURE, warmed, celsius(warm.temperature.0));
    let coefficient = properties(setting.metal).coefficient_75;
    sheet.put(COEFFICIENT, Name::TemperatureCoefficient, plain(coefficient), Origin::Table);
    sheet.put(TABLE_TEMPERATURE, Name::TableTemperature, celsius(TABLE_8_AT.0), Origin::Table);
    let degrees = sheet.unit(Conversion::Warming);
    let above = Math::Fraction(formula![TEMPERATURE, "−", TABLE_TEMPERATURE], formula![degrees]);
    let moved = formula![RESISTANCE, "·", "(", 1.0, "+", COEFFICIENT, "·", above, ")"];
    let resistance = sheet.step(WARM, moved, per_length(warm.resistance));
    let sources = ["nec-2023-310.16", "nec-2023-310.15b", "bs-7671", "nec-2023-ch9-t8"];
    Some(Working { more: vec![resistance], ..sheet.done(result, &sources) })
}

pub(super) fn loss(evaluation: &Evaluation, way: Way, mut sheet: Sheet) -> Option<Working> {
    let served = served(evaluation, way)?;
    sheet.put(CURRENT, Name::ServiceLoad, current(served.lead.current), Origin::WorkedOut);
    served.put_warm(&mut sheet);
    served.put_length(&mut sheet);
    let squared = Math::Power(formula![CURRENT], 2.0);
    let product = formula![3.0, "·", squared, "·", WARM, "·", LEAD];
    let mut under = formula![1000.0];
    if served.conductor.sets > 1 {
        served.put_sets(&mut sheet);
        under.extend(formula!["·", SETS]);
    }
    let result = sheet.step(LOSS, vec![Math::Fraction(product, under)], heat(served.lead.loss));
    Some(sheet.done(result, &[]))
}

pub(super) fn alternating(evaluation: &Evaluation, way: Way, mut sheet: Sheet) -> Option<Working> {
    let served = served(evaluation, way)?;
    let added = served.lead.alternating?;
    let (direct, frequency) = (served.lead.warm.resistance, served.lead.frequency);
    let row = served.conductor.size.row();
    let nearness = (row.diameter() / row.insulated_diameter()).value;
    sheet.enter_conductor(served.conductor, served.demands.setting.metal);
    served.put_warm(&mut sheet);
    served.put_frequency(&mut sheet);
    let (circle, meters) = (sheet.pi(), sheet.unit(Conversion::Kilofoot));
    let over = formula![8.0, "·", circle, "·", FREQUENCY, "·", meters];
    let under = formula![Math::Power(formula![10.0], 7.0), "·", WARM];
    let argument = 8.0 * core::f64::consts::PI * in_hertz(frequency) / direct.value * 1e-7;
    let root = Math::Root(vec![Math::Fraction(over, under)]);
    sheet.step(ARGUMENT, vec![root], plain(argument.sqrt()));
    let fourth = || Math::Power(formula![ARGUMENT], 4.0);
    let skin = Math::Fraction(vec![fourth()], formula![192.0, "+", 0.8, "·", fourth()]);
    sheet.step(SKIN, vec![skin], plain(skin_effect(direct, frequency, ROUND_STRANDED).ok()?));
    sheet.put(THICK, Name::ConductorDiameter, diameter(row.diameter()), Origin::Table);
    sheet.put(APART, Name::AxisDistance, diameter(row.insulated_diameter()), Origin::Table);
    let ratio = Math::Power(vec![Math::Fraction(formula![THICK], formula![APART])], 2.0);
    sheet.step(NEARNESS, vec![ratio], plain(nearness * nearness));
    let near = proximity_effect(direct, frequency, ROUND_STRANDED, nearness, Phases::Three).ok()?;
    let inside = formula![0.312, "·", NEARNESS, "+", Math::Fraction(formula![1.18], formula![SKIN, "+", 0.27])];
    let by_others = [formula![SKIN, "·", NEARNESS, "·", "("], inside, formula![")"]].concat();
    sheet.step(NEAR, by_others, plain(near));
    let result = sheet.step(ADDED, formula!["(", SKIN, "+", NEAR, ")", "·", 100.0], percent(added));
    Some(sheet.done(result, &["iec-60287-1-1", "nec-2023-ch9-t8", "nec-2023-310.4"]))
}

/// Symbols of a conductor's price, resistance, energy and cost: the smallest that may be laid, then the one that pays.
const SMALLEST: [Symbol; 4] = [Symbol::of("c", "s"), Symbol::of("R", "s"), Symbol::of("e", "s"), Symbol::of("C", "s")];
const ECONOMIC: [Symbol; 4] = [Symbol::of("c", "k"), Symbol::of("R", "k"), Symbol::of("e", "k"), Symbol::of("C", "k")];
const SAVING: Symbol = Symbol::plain("S");

pub(super) fn economic(evaluation: &Evaluation, way: Way, mut sheet: Sheet) -> Option<Working> {
    let served = served(evaluation, way)?;
    let (choice, inputs) = (served.lead.choice?, &evaluation.inputs);
    let same = choice.economic.candidate.conductor == choice.smallest.candidate.conductor;
    let (mean, hours) = served.lead.year?;
    if inputs.entered.get(Field::YearlyHours, |hours| hours).is_some() {
        sheet.put(CURRENT, Name::ServiceLoad, current(mean), Origin::WorkedOut);
        sheet.take(inputs, HOURS, Name::YearlyHours, Field::YearlyHours)?;
    } else {
        sheet.put(CURRENT, Name::HeatingCurrent, current(mean), Origin::WorkedOut);
        sheet.put(HOURS, Name::RunHours, (hours, Unit::Hour), Origin::WorkedOut);
    }
    sheet.take(inputs, ENERGY_PRICE, Name::EnergyPrice, Field::EnergyPrice)?;
    put_worth(inputs, &mut sheet)?;
    served.put_length(&mut sheet);
    let economic = choice.economic.candidate.conductor;
    sheet.enter(Name::ConductorSize, EnteredValue::Size(economic.size));
    sheet.enter(Name::ParallelSets, EnteredValue::Sets(economic.sets));
    sheet.enter(Name::ConductorMetal, EnteredValue::Metal(served.demands.setting.metal));
    let names = (Name::EconomicPrice, Name::EconomicResistance);
    let result = put_lifetime(ECONOMIC, names, choice.economic, served.lead, &mut sheet);
    let mut more = Vec::new();
    if !same {
        sheet.enter(Name::SmallestSize, EnteredValue::Size(choice.smallest.candidate.conductor.size));
        let names = (Name::SmallestPrice, Name::SmallestResistance);
        put_lifetime(SMALLEST, names, choice.smallest, served.lead, &mut sheet);
        let saved = served.lead.saving()?;
        more.push(sheet.step(SAVING, formula![SMALLEST[3], "−", ECONOMIC[3]], money(saved)));
    }
    Some(Working { more, ..sheet.done(result, &["kelvin-1881", "iec-60287-3-2", "nist-hb-135"]) })
}

/// Price of a cable, and the worth today of the energy that it loses over the years.
fn put_lifetime(
    [price, resistance, energy, cost]: [Symbol; 4],
    names: (Name, Name),
    found: Lifetime,
    lead: &LeadInService,
    sheet: &mut Sheet,
) -> Measured {
    sheet.put(price, names.0, per_length_price(found.candidate.price), Origin::WorkedOut);
    sheet.put(resistance, names.1, per_length(found.candidate.resistance), Origin::WorkedOut);
    let squared = Math::Power(formula![CURRENT], 2.0);
    let heat = Math::Fraction(formula![3.0, "·", squared, "·", resistance], formula![Math::Power(formula![10.0], 6.0)]);
    let worth = formula![heat, "·", HOURS, "·", ENERGY_PRICE, "·", WORTH];
    sheet.step(energy, worth, per_length_price(found.energy));
    sheet.step(cost, formula!["(", price, "+", energy, ")", "·", LEAD], money(found.cost(lead.length)))
}
