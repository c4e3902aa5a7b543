//! The working of the motor at its load: how far it is loaded, and what it draws.

use super::conversion::Conversion;
use super::lead::{COS, FACTOR, POWER, RATED, SHAFT};
use super::math::{Math, Symbol, formula};
use super::name::Name;
use super::sheet::{Sheet, current, percent, plain, power};
use super::working::{Caveat, Limit, LimitKind, Working, found};
use crate::evaluate::{Evaluation, RATED_HERTZ, largest_load};
use crate::finding::Finding;
use crate::job::{Field, Origin, Way};
use crate::quantity::{Frequency, Unit, amperes, in_hertz};

const LOAD: Symbol = Symbol::plain("x");
const LARGEST_LOAD: Symbol = Symbol::of("x", "max");
const SERVICE_LOAD: Symbol = Symbol::of("x", "f");
const LARGEST: Symbol = Symbol::of("P", "max");
pub(super) const SERVICE_FACTOR: Symbol = Symbol::plain("SF");
const RUNNING: Symbol = Symbol::of("I", "l");
pub(super) const SERVICE: Symbol = Symbol::of("I", "s");
const FREQUENCY: Symbol = Symbol::plain("f");
const RATED_FREQUENCY: Symbol = Symbol::of("f", "r");
const SERVICE_SHARE: Symbol = Symbol::of("x", "s");
pub(super) const EFFICIENCY: Symbol = Symbol::of("η", "m");

fn share(over: Vec<Math>, under: Vec<Math>) -> Vec<Math> {
    formula![Math::Fraction(over, under), "·", 100.0]
}

pub(super) fn load(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let load = evaluation.motor?;
    let inputs = &evaluation.inputs;
    let rated = inputs.motor_power.as_ref().ok()?;
    sheet.put(SHAFT, Name::ShaftPower, power(load.shaft), Origin::WorkedOut);
    sheet.put(POWER, Name::MotorPower, power(rated.value), rated.origin);
    let result = sheet.step(LOAD, share(formula![SHAFT], formula![POWER]), percent(load.share.of_rating));
    let mut actual = result;
    let largest = largest_load(&evaluation.water)?;
    if largest != load.shaft {
        sheet.put(LARGEST, Name::LargestShaftPower, power(largest), Origin::WorkedOut);
        let of_rating = (largest / rated.value).value;
        actual = sheet.step(LARGEST_LOAD, share(formula![LARGEST], formula![POWER]), percent(of_rating));
    }
    // A motor on the surface has no service factor to spare on a drive.
    if load.share.of_service_factor != load.share.of_rating {
        let typed = inputs.entered.get(Field::ServiceFactor, |factor| factor);
        let factor = typed.unwrap_or(load.share.of_rating / load.share.of_service_factor);
        sheet.put(SERVICE_FACTOR, Name::ServiceFactor, plain(factor), inputs.origin(Field::ServiceFactor));
        let under = formula![POWER, "·", SERVICE_FACTOR];
        sheet.step(SERVICE_LOAD, share(formula![SHAFT], under), percent(load.share.of_service_factor));
    }
    if load.light {
        sheet.warn(Caveat::LightLoad);
    }
    let over = found(evaluation, |finding| matches!(finding, Finding::MotorOverloaded { .. }));
    let limit = Some(Limit::unless(over, LimitKind::AtMost, actual, sheet.shown(percent(1.0))));
    Some(Working { limit, ..sheet.done(result, &["nema-mg1-2016"]) })
}

/// What the rated volts are multiplied by at a frequency below the rated one; nothing where the motor has all of them.
pub(super) fn put_volts_at((frequency, volts): (Option<Frequency>, f64), sheet: &mut Sheet) -> Vec<Math> {
    let Some(frequency) = frequency.filter(|_| volts < 1.0) else { return Vec::new() };
    sheet.put(FREQUENCY, Name::DutyFrequency, (in_hertz(frequency), Unit::Hertz), Origin::WorkedOut);
    sheet.put(RATED_FREQUENCY, Name::RatedFrequency, (RATED_HERTZ, Unit::Hertz), Origin::Definition);
    formula!["·", Math::Fraction(formula![FREQUENCY], formula![RATED_FREQUENCY])]
}

pub(super) fn running_current(evaluation: &Evaluation, way: Way, mut sheet: Sheet) -> Option<Working> {
    let load = evaluation.motor?;
    let running = load.running[way as usize]?;
    let inputs = &evaluation.inputs;
    let (efficiency, power_factor) = (inputs.efficiency.as_ref().ok()?, inputs.power_factor.as_ref().ok()?);
    sheet.put(SHAFT, Name::ShaftPower, power(load.shaft), Origin::WorkedOut);
    sheet.put(FACTOR, Name::PhaseFactor, plain(3f64.sqrt()), Origin::Definition);
    sheet.put(RATED, Name::RatedVoltage, (way.rated_volts(), Unit::Volt), Origin::Definition);
    let volts = put_volts_at((load.frequency, load.volts), &mut sheet);
    sheet.put(EFFICIENCY, Name::MotorEfficiency, plain(efficiency.value), efficiency.origin);
    sheet.put(COS, Name::PowerFactor, plain(power_factor.value), power_factor.origin);
    let watts = sheet.unit(Conversion::Watts);
    let under = [formula![FACTOR, "·", RATED], volts, formula!["·", EFFICIENCY, "·", COS]].concat();
    let formula = vec![Math::Fraction(formula![SHAFT, "·", watts], under)];
    let result = sheet.step(RUNNING, formula, current(running));
    if let (Some(of_service), Some(_)) =
        (load.of_service_amps[way as usize], inputs.entered.get(way.service_amps_field(), amperes))
    {
        sheet.take(inputs, SERVICE, Name::ServiceCurrent, way.service_amps_field())?;
        sheet.step(SERVICE_SHARE, share(formula![RUNNING], formula![SERVICE]), percent(of_service));
    }
    if load.light {
        sheet.warn(Caveat::LightLoad);
    }
    if [efficiency.origin, power_factor.origin].contains(&Origin::Assumed) {
        sheet.cite(&["practice"]);
    }
    Some(sheet.done(result, &[]))
}
