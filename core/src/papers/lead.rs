//! The working of the lead: motor current, ampacity, drop.

use super::math::{Math, Measured, Symbol, formula};
use super::name::Name;
use super::service::LOSS;
use super::sheet::{LEAD, SETS, Sheet, current, heat, power as shown_power, volts};
use super::working::{EnteredValue, Limit, LimitKind, Working};
use crate::cable::ampacity::Setting;
use crate::cable::conductor::table_resistance;
use crate::cable::drop::{DropParts, Phases, drop_parts};
use crate::cable::lead::{Conductor, Demands, Run, impedance};
use crate::cable::reactance::{Build, reactance};
use crate::evaluate::{Evaluation, WayHere};
use crate::finding::Finding;
use crate::job::{Field, Known, Origin, Way};
use crate::pump::motor::table_rows;
use crate::quantity::{ElectricCurrent, ElectricPotential, OhmsPerLength, Unit, in_ohms_per_kilofoot};
use crate::standards::ambient::{ambient_factor, bundle_factor};
use crate::standards::ampacity::table_310_16;
use crate::standards::conductor::{Metal, TABLE_8_AT};

pub(super) const CURRENT: Symbol = Symbol::plain("I");
const TABLE: Symbol = Symbol::of("I", "t");
pub(super) const NAMEPLATE: Symbol = Symbol::of("I", "n");
const OTHER: Symbol = Symbol::of("I", "m");
pub(super) const RATED: Symbol = Symbol::of("V", "n");
pub(super) const RATED_OTHER: Symbol = Symbol::of("V", "m");
pub(super) const POWER: Symbol = Symbol::plain("P");
pub(super) const SHAFT: Symbol = Symbol::of("P", "s");
const POWERS: [Symbol; 2] = [Symbol::of("P", "1"), Symbol::of("P", "2")];
const CURRENTS: [Symbol; 2] = [Symbol::of("I", "1"), Symbol::of("I", "2")];

pub(super) fn motor_current(evaluation: &Evaluation, way: Way, mut sheet: Sheet) -> Option<Working> {
    let found = evaluation.inputs.motor_current[way as usize].as_ref().ok()?;
    let power = evaluation.inputs.motor_power.as_ref().ok()?;
    if let Some(shaft) = evaluation.water.shaft().filter(|_| power.origin == Origin::WorkedOut) {
        // The motor is the smallest standard one for the pump.
        sheet.put(SHAFT, Name::ShaftPower, shown_power(shaft), Origin::WorkedOut);
    }
    sheet.put(POWER, Name::MotorPower, shown_power(power.value), power.origin);
    let (low, high) = table_rows(power.value).ok()?;
    let amperes = [low, high].map(|row| (row.amperes(way.rated()), Unit::Ampere));
    if low.hp == high.hp {
        sheet.put(TABLE, Name::TableCurrent, amperes[0], Origin::Table);
    } else {
        for (symbol, row) in POWERS.into_iter().zip([low, high]) {
            sheet.put(symbol, Name::TablePower, (row.hp, Unit::Horsepower), Origin::Table);
        }
        for (symbol, amperes) in CURRENTS.into_iter().zip(amperes) {
            sheet.put(symbol, Name::TableCurrent, amperes, Origin::Table);
        }
        let share = Math::Fraction(formula![POWER, "−", POWERS[0]], formula![POWERS[1], "−", POWERS[0]]);
        let between = formula![CURRENTS[0], "+", share, "·", "(", CURRENTS[1], "−", CURRENTS[0], ")"];
        sheet.step(TABLE, between, current(found.table));
    }
    // Without a nameplate the table's current is the answer, and no sum is left.
    let mut result = sheet.shown(current(found.sizing));
    if let Some(nameplate) = found.nameplate {
        put_nameplate(evaluation, way, nameplate, &mut sheet)?;
        result = sheet.step(CURRENT, formula![Math::Max(formula![TABLE], formula![NAMEPLATE])], current(found.sizing));
    }
    Some(sheet.done(result, &["nec-2023-430.250", "nec-2023-430.6", "practice"]))
}

/// The nameplate at the voltage of the way, worked out from the other voltage where only that was entered.
fn put_nameplate(
    evaluation: &Evaluation,
    way: Way,
    nameplate: Known<ElectricCurrent>,
    sheet: &mut Sheet,
) -> Option<()> {
    if nameplate.origin != Origin::WorkedOut {
        sheet.put(NAMEPLATE, Name::NameplateCurrent, current(nameplate.value), nameplate.origin);
        return Some(());
    }
    let other = way.other();
    let typed = evaluation.inputs.motor_current[other as usize].as_ref().ok()?.nameplate?;
    sheet.put(OTHER, Name::OtherNameplateCurrent, current(typed.value), typed.origin);
    sheet.put(RATED, Name::RatedVoltage, (way.rated_volts(), Unit::Volt), Origin::Definition);
    sheet.put(RATED_OTHER, Name::OtherRatedVoltage, (other.rated_volts(), Unit::Volt), Origin::Definition);
    let formula = formula![OTHER, "·", Math::Fraction(formula![RATED_OTHER], formula![RATED])];
    sheet.step(NAMEPLATE, formula, current(nameplate.value));
    Some(())
}

pub(super) const REQUIRED: Symbol = Symbol::of("I", "r");
pub(super) const AMPACITY: Symbol = Symbol::of("I", "z");
pub(super) const INSULATION: Symbol = Symbol::of("I", "i");
const TERMINAL: Symbol = Symbol::of("I", "e");
const AMBIENT: Symbol = Symbol::of("T", "a");
const AMBIENT_FACTOR: Symbol = Symbol::of("F", "a");
pub(super) const BUNDLE_FACTOR: Symbol = Symbol::of("F", "b");

/// The lead of a way at the job's depth, and what its choice depended on.
fn lead_here(evaluation: &Evaluation, way: Way) -> Option<(&WayHere, &Demands)> {
    let lead = evaluation.here.as_ref()?.way(way)?;
    Some((lead, &evaluation.sweep.as_ref()?.way(way).demands))
}

pub(super) fn ampacity(evaluation: &Evaluation, way: Way, mut sheet: Sheet) -> Option<Working> {
    let (lead, demands) = lead_here(evaluation, way)?;
    let setting = Setting { ambient: lead.run.ambient, ..demands.setting };
    let run = lead.run.run;
    enter_columns(run.conductor, setting, &mut sheet);
    sheet.put(CURRENT, Name::MotorCurrent, current(demands.load.current), Origin::WorkedOut);
    let required = sheet.step(REQUIRED, formula![1.25, "·", CURRENT], current(demands.required));
    let result = put_ampacity(&run, setting, demands.load.phases, around(evaluation, lead, &mut sheet)?, &mut sheet)?;
    sheet.cite(&["nec-2023-430.22", "nec-2023-430.122"]);
    if run.conductor.sets > 1 {
        sheet.cite(&["nec-2023-310.15c"]);
    }
    let limit = lead_limit(way, LimitKind::AtLeast, result, required, run.ampacity >= demands.required);
    Some(Working { limit: Some(limit), ..sheet.done(result, &[]) })
}

/// What surrounds a lead, and where that comes from: the warmest air along it, or where the water counts the water.
pub(super) fn around(evaluation: &Evaluation, lead: &WayHere, sheet: &mut Sheet) -> Option<(Name, Origin)> {
    let inputs = &evaluation.inputs;
    let ambient = inputs.ambient.as_ref().ok()?;
    if lead.run.ambient == ambient.value {
        return Some((Name::Ambient, ambient.origin));
    }
    sheet.cite(&["nec-2023-310.14"]);
    Some((Name::WaterTemperature, inputs.origin(Field::WaterTemperature)))
}

/// The columns of the ampacity table that a conductor is read in.
pub(super) fn enter_columns(conductor: Conductor, setting: Setting, sheet: &mut Sheet) {
    sheet.enter_conductor(conductor, setting.metal);
    sheet.enter(Name::InsulationRating, EnteredValue::Rating(setting.insulation));
    sheet.enter(Name::TerminalRating, EnteredValue::Rating(setting.terminals));
}

/// The ampacity of all sets together, corrected; the surroundings with their name and where they come from.
pub(super) fn put_ampacity(
    run: &Run,
    setting: Setting,
    phases: Phases,
    (around, origin): (Name, Origin),
    sheet: &mut Sheet,
) -> Option<Measured> {
    let Conductor { sets, size } = run.conductor;
    let column = |rating| table_310_16(size, setting.metal, rating);
    let amperes = |value: f64| (value, Unit::Ampere);
    sheet.put(INSULATION, Name::InsulationAmpacity, amperes(column(setting.insulation)?), Origin::Table);
    sheet.put(TERMINAL, Name::TerminalAmpacity, amperes(column(setting.terminals)?), Origin::Table);
    sheet.put(AMBIENT, around, (setting.ambient.0, Unit::DegreeCelsius), origin);
    let factor = ambient_factor(setting.ambient, setting.insulation)?;
    sheet.put(AMBIENT_FACTOR, Name::AmbientFactor, (factor, Unit::One), Origin::Table);
    let mut by_insulation = formula![INSULATION, "·", AMBIENT_FACTOR];
    let mut times_sets = Vec::new();
    if sets > 1 {
        let bundle = bundle_factor(usize::from(phases.conductors()) * usize::from(sets));
        sheet.put(BUNDLE_FACTOR, Name::BundleFactor, (bundle, Unit::One), Origin::Table);
        sheet.put(SETS, Name::ParallelSets, (f64::from(sets), Unit::One), Origin::WorkedOut);
        by_insulation.extend(formula!["·", BUNDLE_FACTOR]);
        times_sets = formula!["·", SETS];
    }
    let formula = [formula![Math::Min(by_insulation, formula![TERMINAL])], times_sets].concat();
    sheet.cite(&["nec-2023-310.16", "nec-2023-310.15b", "nec-2023-110.14c"]);
    Some(sheet.step(AMPACITY, formula, current(run.ampacity)))
}

/// A limit of the lead; a conductor that does not keep it is no size for the way.
fn lead_limit(way: Way, kind: LimitKind, actual: Measured, limit: Measured, holds: bool) -> Limit {
    let severity = (!holds).then(|| Finding::CableNoSize { way }.severity());
    Limit { kind, actual, limit, holds, severity }
}

pub(super) const RESISTANCE: Symbol = Symbol::plain("R");
pub(super) const REACTANCE: Symbol = Symbol::plain("X");
const ONE_RESISTANCE: Symbol = Symbol::of("R", "1");
const ONE_REACTANCE: Symbol = Symbol::of("X", "1");
pub(super) const COS: Symbol = Symbol::plain("cos φ");
pub(super) const SIN: Symbol = Symbol::plain("sin φ");
pub(super) const FACTOR: Symbol = Symbol::plain("k");
pub(super) const SENDING: Symbol = Symbol::plain("V");
pub(super) const ALONG: Symbol = Symbol::plain("a");
pub(super) const ACROSS: Symbol = Symbol::plain("b");
pub(super) const DROP: Symbol = Symbol::plain("ΔV");
pub(super) const SHARE: Symbol = Symbol::plain("d");
pub(super) const ALLOWED: Symbol = Symbol::of("d", "max");

pub(super) fn drop(evaluation: &Evaluation, way: Way, mut sheet: Sheet) -> Option<Working> {
    let (lead, demands) = lead_here(evaluation, way)?;
    let load = demands.load;
    let here = evaluation.here.as_ref()?;
    let (r, x) = impedance(lead.run.run.conductor, demands.setting.metal, demands.build);
    let parts = drop_parts(load, r, x, here.lead).ok()?;
    let inputs = &evaluation.inputs;
    let cos = inputs.power_factor.as_ref().ok()?;

    sheet.put(SENDING, Name::SendingVoltage, volts(load.sending), Origin::Definition);
    sheet.put(CURRENT, Name::MotorCurrent, current(load.current), Origin::WorkedOut);
    sheet.put(COS, Name::PowerFactor, (cos.value, Unit::One), cos.origin);
    sheet.put(FACTOR, Name::PhaseFactor, (load.phases.factor(), Unit::One), Origin::Definition);
    sheet.lead_here(evaluation)?;
    put_impedance(lead.run.run.conductor, demands.setting.metal, demands.build, &mut sheet);
    let sine = Math::Root(formula![1.0, "−", Math::Power(formula![COS], 2.0)]);
    sheet.step(SIN, vec![sine], ((1.0 - cos.value * cos.value).sqrt(), Unit::One));
    let (result, share) = put_drop(CURRENT, COS, parts, (lead.drop, lead.drop_share), &mut sheet);

    let allowed = inputs.allowed_drop.as_ref().ok()?;
    let percent = (100.0 * allowed.value, Unit::Percent);
    sheet.put(ALLOWED, Name::AllowedDrop, percent, allowed.origin);
    let holds = lead.drop_share <= allowed.value * (1.0 + 1e-9);
    let limit = lead_limit(way, LimitKind::AtMost, share, sheet.shown(percent), holds);
    let mut sources = vec!["nec-2023-ch9-t8", "ieee-141-1993", "practice"];
    sources.insert(1, reactance_source(demands.build));
    Some(Working { more: vec![share], limit: Some(limit), ..sheet.done(result, &sources) })
}

/// Heat of the lead at the current that sizes it, its resistance at the temperature of its table.
pub(super) fn full_load_heat(evaluation: &Evaluation, way: Way, mut sheet: Sheet) -> Option<Working> {
    let (lead, demands) = lead_here(evaluation, way)?;
    sheet.put(CURRENT, Name::MotorCurrent, current(demands.load.current), Origin::WorkedOut);
    put_resistance(lead.run.run.conductor, demands.setting.metal, &mut sheet);
    sheet.lead_here(evaluation)?;
    let conductors = f64::from(demands.load.phases.conductors());
    let squared = Math::Power(formula![CURRENT], 2.0);
    let product = formula![conductors, "·", squared, "·", RESISTANCE, "·", LEAD];
    let result = sheet.step(LOSS, vec![Math::Fraction(product, formula![1000.0])], heat(lead.loss));
    Some(sheet.done(result, &["nec-2023-ch9-t8"]))
}

/// The drop along conductors whose impedance, length and factor stand in the sheet, and its share of what is sent.
pub(super) fn put_drop(
    current: Symbol,
    cos: Symbol,
    parts: DropParts,
    (drop, share): (ElectricPotential, f64),
    sheet: &mut Sheet,
) -> (Measured, Measured) {
    let over = |inside: Vec<Math>| {
        let product = [formula![FACTOR, "·", current, "·", LEAD, "·", "("], inside, formula![")"]].concat();
        vec![Math::Fraction(product, formula![1000.0])]
    };
    sheet.step(ALONG, over(formula![RESISTANCE, "·", cos, "+", REACTANCE, "·", SIN]), volts(parts.along));
    sheet.step(ACROSS, over(formula![REACTANCE, "·", cos, "−", RESISTANCE, "·", SIN]), volts(parts.across));
    let received = Math::Root(formula![Math::Power(formula![SENDING], 2.0), "−", Math::Power(formula![ACROSS], 2.0)]);
    let drop = sheet.step(DROP, formula![SENDING, "+", ALONG, "−", received], volts(drop));
    let of_sent = formula![Math::Fraction(formula![DROP], formula![SENDING]), "·", 100.0];
    (drop, sheet.step(SHARE, of_sent, (100.0 * share, Unit::Percent)))
}

/// Resistance and reactance, of all sets together where there are several.
pub(super) fn put_impedance(conductor: Conductor, metal: Metal, build: Build, sheet: &mut Sheet) {
    let Conductor { sets, size } = conductor;
    let worked = match build {
        Build::PlasticConduit | Build::SteelConduit => Origin::Table,
        Build::FlatJacketed | Build::Twisted => Origin::WorkedOut,
    };
    put_resistance(conductor, metal, sheet);
    sheet.enter(Name::LeadBuild, EnteredValue::Build(build));
    let symbol = if sets > 1 { ONE_REACTANCE } else { REACTANCE };
    sheet.put(symbol, Name::Reactance, per_length(reactance(size, build)), worked);
    if sets > 1 {
        let (_, x) = impedance(conductor, metal, build);
        sheet.step(REACTANCE, vec![Math::Fraction(formula![ONE_REACTANCE], formula![SETS])], per_length(x));
    }
}

/// Resistance at the temperature of its table, of all sets together where there are several.
pub(super) fn put_resistance(conductor: Conductor, metal: Metal, sheet: &mut Sheet) {
    let sets = conductor.sets;
    let symbol = if sets > 1 { ONE_RESISTANCE } else { RESISTANCE };
    put_table_resistance(conductor, metal, symbol, sheet);
    if sets > 1 {
        sheet.put(SETS, Name::ParallelSets, (f64::from(sets), Unit::One), Origin::WorkedOut);
        let shared = vec![Math::Fraction(formula![ONE_RESISTANCE], formula![SETS])];
        let one = table_resistance(conductor.size, metal);
        sheet.step(RESISTANCE, shared, per_length(one / f64::from(sets)));
    }
}

/// Resistance of one conductor at the temperature of its table.
pub(super) fn put_table_resistance(conductor: Conductor, metal: Metal, symbol: Symbol, sheet: &mut Sheet) {
    sheet.enter_conductor(conductor, metal);
    let temperature = sheet.shown((TABLE_8_AT.0, Unit::DegreeCelsius));
    sheet.enter(Name::ConductorTemperature, EnteredValue::Temperature(temperature));
    sheet.put(symbol, Name::Resistance, per_length(table_resistance(conductor.size, metal)), Origin::Table);
}

pub(super) fn per_length(value: OhmsPerLength) -> (f64, Unit) {
    (in_ohms_per_kilofoot(value), Unit::OhmPerKilofoot)
}

pub(super) fn reactance_source(build: Build) -> &'static str {
    match build {
        Build::PlasticConduit | Build::SteelConduit => "nec-2023-ch9-t9",
        Build::FlatJacketed | Build::Twisted => "grainger-stevenson-1994",
    }
}
