//! The workings of a way's lead, of the metal in it, and of what some ways bring with them.

use super::Case;
use crate::cable::drop::drop_parts;
use crate::cable::lead::impedance;
use crate::evaluate::{BOOST, RATED_HERTZ};
use crate::job::Origin;
use crate::papers::lead::{COS, CURRENT, FACTOR, POWER, SENDING, SIN, put_drop, put_impedance, reactance_source};
use crate::papers::math::{Math, Symbol, formula};
use crate::papers::name::Name;
use crate::papers::sheet::{LEAD, Sheet, apparent, current, heat, length, plain, power, volts};
use crate::papers::working::Working;
use crate::power::family::Feed;
use crate::power::rotary::{IDLE_SHARE, IDLER_RATIO};
use crate::power::step_up::MOST_FLUX;
use crate::power::transformer::apparent_power;
use crate::quantity::{Mass, Unit, in_hertz, in_pounds};

const LEAD_METAL: Symbol = Symbol::of("M", "l");
const SUPPLY_METAL: Symbol = Symbol::of("M", "u");
const METAL: Symbol = Symbol::plain("M");
const NEEDED: Symbol = Symbol::of("S", "m");
const RATING: Symbol = Symbol::of("S", "n");
const LOWEST: Symbol = Symbol::of("f", "min");
const RATED: Symbol = Symbol::of("f", "n");
const BOOSTED: Symbol = Symbol::of("k", "b");
const FLUX: Symbol = Symbol::of("k", "φ");
const OUTPUT: Symbol = Symbol::of("I", "o");
const IDLER: Symbol = Symbol::of("P", "i");
const RATIO: Symbol = Symbol::of("k", "i");
const IDLE: Symbol = Symbol::of("P", "i0");
const IDLE_PART: Symbol = Symbol::of("k", "i0");

/// The drop along the lead of a way.
pub(super) fn lead(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let lead = case.way.lead?;
    let (load, demands) = (lead.demands.load, lead.demands);
    let (r, x) = impedance(lead.run.conductor, demands.setting.metal, demands.build);
    let parts = drop_parts(load, r, x, lead.length).ok()?;
    let cos = case.inputs.power_factor.as_ref().ok()?;
    sheet.put(SENDING, Name::SendingVoltage, volts(load.sending), Origin::Definition);
    sheet.put(CURRENT, Name::MotorCurrent, current(load.current), Origin::WorkedOut);
    sheet.put(COS, Name::PowerFactor, plain(load.power_factor), cos.origin);
    sheet.put(FACTOR, Name::PhaseFactor, plain(load.phases.factor()), Origin::Definition);
    sheet.put(LEAD, Name::LeadLength, length(lead.length), Origin::WorkedOut);
    put_impedance(lead.run.conductor, demands.setting.metal, demands.build, &mut sheet);
    let sine = Math::Root(formula![1.0, "−", Math::Power(formula![COS], 2.0)]);
    sheet.step(SIN, vec![sine], plain((1.0 - load.power_factor * load.power_factor).sqrt()));
    let (drop, share) = put_drop(CURRENT, COS, parts, (lead.drop, lead.drop_share), &mut sheet);
    let sources = ["nec-2023-ch9-t8", reactance_source(demands.build), "ieee-141-1993"];
    Some(Working { more: vec![share], ..sheet.done(drop, &sources) })
}

/// Metal in the lead and the supply conductors.
pub(super) fn metal(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let (lead, supply, all) = (case.way.lead?, case.way.supply?, case.way.cost?.metal);
    let pounds = |mass: Mass| (in_pounds(mass), Unit::Pound);
    sheet.put(LEAD_METAL, Name::LeadMetalAll, pounds(lead.metal), Origin::WorkedOut);
    sheet.put(SUPPLY_METAL, Name::SupplyMetalAll, pounds(supply.metal), Origin::WorkedOut);
    let result = sheet.step(METAL, formula![LEAD_METAL, "+", SUPPLY_METAL], pounds(all));
    Some(sheet.done(result, &[]))
}

/// The transformer behind a drive: the smallest usual rating, and the frequency from which its core carries the boost.
pub(super) fn step_up(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let (found, sending) = (case.way.step_up?, case.way.way?.sending());
    sheet.put(SENDING, Name::SendingVoltage, volts(sending), Origin::Definition);
    sheet.put(OUTPUT, Name::OutputCurrent, current(case.motor.required), Origin::WorkedOut);
    let needed = apparent_power(sending, case.motor.required, Feed::ThreePhase).ok()?;
    let product = formula![Math::Root(formula![3.0]), "·", SENDING, "·", OUTPUT];
    let needed = sheet.step(NEEDED, vec![Math::Fraction(product, formula![1000.0])], apparent(needed));
    let rating = found.rating.map(|rating| sheet.put(RATING, Name::NextRating, apparent(rating), Origin::Table));
    sheet.put(RATED, Name::RatedFrequency, (RATED_HERTZ, Unit::Hertz), Origin::Definition);
    sheet.put(BOOSTED, Name::Boost, plain(BOOST), Origin::Assumed);
    sheet.put(FLUX, Name::MostFlux, plain(MOST_FLUX), Origin::Assumed);
    let over = Math::Fraction(formula![BOOSTED], formula![FLUX, "−", 1.0, "+", BOOSTED]);
    let lowest = sheet.step(LOWEST, formula![RATED, "·", over], (in_hertz(found.lowest), Unit::Hertz));
    let more = vec![needed, lowest];
    Some(Working { more, ..sheet.done(rating.unwrap_or(needed), &["ieee-c57.12", "practice"]) })
}

/// The idler of a rotary converter.
pub(super) fn idler(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let found = case.way.idler?;
    sheet.put(POWER, Name::MotorPower, power(case.motor.power), Origin::WorkedOut);
    sheet.put(RATIO, Name::IdlerRatio, plain(IDLER_RATIO), Origin::Assumed);
    let result = sheet.step(IDLER, formula![RATIO, "·", POWER], power(found.power));
    sheet.put(IDLE_PART, Name::IdleShare, plain(IDLE_SHARE), Origin::Assumed);
    let watts = sheet.unit(crate::papers::conversion::Conversion::Watts);
    let idle = sheet.step(IDLE, formula![IDLE_PART, "·", IDLER, "·", watts], heat(found.idle));
    Some(Working { more: vec![idle], ..sheet.done(result, &["practice"]) })
}
