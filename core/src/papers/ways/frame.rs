//! The working of the frame: what heat and altitude leave of its amperes, against what the motor asks for.

use super::Case;
use crate::evaluate::counted_service_factor;
use crate::finding::Finding;
use crate::job::{Field, Origin, Way};
use crate::papers::conversion::Conversion;
use crate::papers::lead::{NAMEPLATE, POWER, RATED, RATED_OTHER};
use crate::papers::math::{Math, Measured, Symbol, formula};
use crate::papers::motor::{SERVICE, SERVICE_FACTOR};
use crate::papers::name::Name;
use crate::papers::sheet::{Sheet, current, plain, power};
use crate::papers::working::{Limit, LimitKind, Working};
use crate::power::derating::Derated;
use crate::power::family::{Change, Class, Kind, Step};
use crate::power::fit::{Frame, FrameFit, frames};
use crate::power::rotary::IDLER_RATIO;
use crate::pump::motor::MotorKind;
use crate::quantity::{ElectricCurrent, Power, Unit, amperes, in_horsepower, in_meters};

const OTHER_SERVICE: Symbol = Symbol::of("I", "so");
const OUTPUT: Symbol = Symbol::of("I", "o");
const OUTPUT_LOW: Symbol = Symbol::of("I", "o2");
const FRAME: Symbol = Symbol::of("I", "f");
const FRAME_LEFT: Symbol = Symbol::of("I", "fd");
pub(super) const SIZE: Symbol = Symbol::of("P", "f");
pub(super) const CARRIES: Symbol = Symbol::of("P", "c");
pub(super) const CAPACITY: Symbol = Symbol::of("k", "c");
const HEAT: Symbol = Symbol::of("F", "T");
const HEIGHT: Symbol = Symbol::of("F", "h");
const AIR: Symbol = Symbol::of("T", "e");
const AMBIENT: Symbol = Symbol::of("T", "a");
const SUN: Symbol = Symbol::of("ΔT", "s");
const RATED_AIR: Symbol = Symbol::of("T", "f");
const PER_DEGREE: Symbol = Symbol::of("c", "T");
const ALTITUDE: Symbol = Symbol::of("z", "a");
const RATED_ALTITUDE: Symbol = Symbol::of("z", "f");
const PER_100_M: Symbol = Symbol::of("c", "h");

pub(super) fn frame(case: &Case, sheet: Sheet) -> Option<Working> {
    match case.way.frame? {
        FrameFit::Serves { frame, .. } => by_current(case, frame, sheet),
        FrameFit::CurrentShort { .. } => by_current(case, most_amperes(case)?, sheet),
        FrameFit::SizeShort { most, motor } => by_size(case, most, motor, sheet),
        FrameFit::AskMaker(_) => None,
    }
}

/// Class of the equipment's own output, ahead of any transformer.
fn class(case: &Case) -> Option<Class> {
    Some(match (case.way.family.change, case.way.way?) {
        (Change::SteppedUp { .. }, _) | (_, Way::V240) => Class::Low,
        (_, Way::V480) => Class::High,
    })
}

/// The frame that gives the most.
fn most_amperes(case: &Case) -> Option<Frame> {
    let all = frames(&case.way.family, class(case)?, case.way.derated?.factor()?).ok()?;
    all.into_iter().reduce(|most, next| if next.derated > most.derated { next } else { most })
}

/// A frame's line of the data sheet.
pub(super) fn step_of<'a>(case: &Case<'a>, size: Power) -> Option<&'a Step> {
    let hp = in_horsepower(size);
    case.way.family.steps.iter().find(|step| (step.hp / hp - 1.0).abs() < 1e-9)
}

fn by_current(case: &Case, frame: Frame, mut sheet: Sheet) -> Option<Working> {
    let family = &case.way.family;
    let required = put_required(case, &mut sheet)?;
    let step = step_of(case, frame.power)?;
    let typed = match class(case)? {
        Class::Low => step.low,
        Class::High => step.high,
    };
    let origin = if typed.is_some() { Origin::Typed } else { Origin::Table };
    sheet.put(SIZE, Name::FrameSize, power(frame.power), case.of_family());
    sheet.put(FRAME, Name::FrameCurrent, current(frame.rated / family.capacity), origin);
    let mut formula = formula![FRAME];
    if family.capacity != 1.0 {
        sheet.put(CAPACITY, Name::Capacity, plain(family.capacity), case.of_family());
        formula.extend(formula!["·", CAPACITY]);
    }
    put_derating(case, &mut sheet)?;
    formula.extend(formula!["·", HEAT, "·", HEIGHT]);
    let result = sheet.step(FRAME_LEFT, formula, current(frame.derated));
    let short = case.found(|finding| matches!(finding, Finding::DriveAmpsShort { .. }));
    let limit = Some(Limit::unless(short, LimitKind::AtLeast, result, required));
    if typed.is_none() {
        sheet.cite(&["nec-2023-430.250"]);
    }
    Some(Working { limit, ..sheet.done(result, &["practice"]) })
}

/// No frame has the size: what the largest may carry against what is asked of it.
fn by_size(case: &Case, most: Power, asked: Power, mut sheet: Sheet) -> Option<Working> {
    let family = &case.way.family;
    sheet.put(POWER, Name::MotorPower, power(case.motor.power), case.inputs.origin(Field::MotorPower));
    let asked = sheet.shown(power(asked));
    let rotary = family.kind == Kind::RotaryConverter;
    let size = if rotary { most * IDLER_RATIO } else { most / family.capacity };
    let mut result = sheet.put(SIZE, Name::LargestFrame, power(size), case.of_family());
    if rotary {
        // The idler is larger than the motor that the converter carries.
        result = sheet.step(CARRIES, vec![Math::Fraction(formula![SIZE], formula![IDLER_RATIO])], power(most));
    } else if family.capacity != 1.0 {
        sheet.put(CAPACITY, Name::Capacity, plain(family.capacity), case.of_family());
        result = sheet.step(CARRIES, formula![CAPACITY, "·", SIZE], power(most));
    }
    let short = case.found(|finding| matches!(finding, Finding::DriveSizeShort { .. }));
    let limit = Some(Limit::unless(short, LimitKind::AtLeast, result, asked));
    Some(Working { limit, ..sheet.done(result, &["practice"]) })
}

/// What the equipment must give for good; ahead of a transformer twice what the motor takes.
fn put_required(case: &Case, sheet: &mut Sheet) -> Option<Measured> {
    let (symbol, required) = put_of_motor(case, sheet)?;
    Some(match case.way.family.change {
        Change::SteppedUp { .. } => {
            sheet.step(OUTPUT_LOW, formula![2.0, "·", symbol], current(2.0 * case.motor.required))
        }
        _ => required,
    })
}

/// What the motor may take for good, as an answer of its own.
pub(super) fn required(case: &Case, mut sheet: Sheet) -> Option<Working> {
    // A single-phase motor, and one that runs by itself, is told by its nameplate.
    let result = if case.motor.required == case.motor.nameplate {
        case.put_nameplate(&mut sheet)?
    } else {
        put_of_motor(case, &mut sheet)?.1
    };
    Some(sheet.done(result, &["practice"]))
}

/// What the motor may take for good.
pub(super) fn put_of_motor(case: &Case, sheet: &mut Sheet) -> Option<(Symbol, Measured)> {
    let nameplate = case.put_nameplate(sheet)?;
    if put_service(case, case.way.way?, sheet).is_none() {
        return Some((NAMEPLATE, nameplate));
    }
    let larger = formula![Math::Max(formula![NAMEPLATE], formula![SERVICE])];
    Some((OUTPUT, sheet.step(OUTPUT, larger, current(case.motor.required))))
}

/// The service-factor current of a submersible motor: by the nameplate at this voltage or the other, else by the factor.
fn put_service(case: &Case, way: Way, sheet: &mut Sheet) -> Option<()> {
    let inputs = case.inputs;
    if case.evaluation.kind != MotorKind::Submersible {
        return None;
    }
    let typed = |way: Way| inputs.entered.get(way.service_amps_field(), amperes);
    if typed(way).is_some() {
        sheet.take(inputs, SERVICE, Name::ServiceCurrent, way.service_amps_field())?;
    } else if let Some(other) = typed(way.other()) {
        sheet.take(inputs, OTHER_SERVICE, Name::OtherServiceCurrent, way.other().service_amps_field())?;
        sheet.put(RATED, Name::RatedVoltage, (way.rated_volts(), Unit::Volt), Origin::Definition);
        sheet.put(RATED_OTHER, Name::OtherRatedVoltage, (way.other().rated_volts(), Unit::Volt), Origin::Definition);
        let there: ElectricCurrent = other * (way.other().rated_volts() / way.rated_volts());
        let ratio = Math::Fraction(formula![RATED_OTHER], formula![RATED]);
        sheet.step(SERVICE, formula![OTHER_SERVICE, "·", ratio], current(there));
    } else {
        let factor = counted_service_factor(&inputs.entered, case.evaluation.kind)?;
        sheet.put(SERVICE_FACTOR, Name::ServiceFactor, plain(factor), inputs.origin(Field::ServiceFactor));
        sheet.step(SERVICE, formula![NAMEPLATE, "·", SERVICE_FACTOR], current(case.motor.nameplate * factor));
    }
    Some(())
}

/// What heat and altitude leave.
fn put_derating(case: &Case, sheet: &mut Sheet) -> Option<()> {
    let (rating, site) = (case.way.family.rating, case.site);
    let Derated::By { heat, altitude } = case.way.derated? else { return None };
    put_air(case, sheet)?;
    sheet.put(RATED_AIR, Name::RatedAir, (rating.ambient.0, Unit::DegreeCelsius), case.of_family());
    sheet.put(PER_DEGREE, Name::LossPerDegree, plain(rating.per_degree), case.of_family());
    let degrees = sheet.unit(Conversion::Warming);
    let above = |over: Vec<Math>| Math::Max(over, formula![0.0]);
    let hot = Math::Fraction(vec![above(formula![AIR, "−", RATED_AIR])], formula![degrees]);
    sheet.step(HEAT, formula![1.0, "−", PER_DEGREE, "·", hot], plain(heat));
    let origin = case.inputs.origin(Field::Altitude);
    sheet.put(ALTITUDE, Name::Altitude, (in_meters(site.altitude), Unit::Meter), origin);
    sheet.put(RATED_ALTITUDE, Name::RatedAltitude, (in_meters(rating.altitude), Unit::Meter), case.of_family());
    sheet.put(PER_100_M, Name::LossPerHundred, plain(rating.per_100_m), case.of_family());
    let hundred = sheet.unit(Conversion::HundredMeters);
    let high = Math::Fraction(vec![above(formula![ALTITUDE, "−", RATED_ALTITUDE])], formula![hundred]);
    sheet.step(HEIGHT, formula![1.0, "−", PER_100_M, "·", high], plain(altitude));
    Some(())
}

/// The air around the equipment, with what the sun adds.
fn put_air(case: &Case, sheet: &mut Sheet) -> Option<()> {
    let ambient = case.inputs.ambient.as_ref().ok()?;
    let own = case.inputs.entered.take(Field::DriveAmbient, |degrees| degrees).ok()?;
    let (degrees, origin) = own.map_or((ambient.value.0, ambient.origin), |known| (known.value, known.origin));
    let (air, celsius) = (case.site.ambient.0, Unit::DegreeCelsius);
    if air == degrees {
        sheet.put(AIR, Name::EquipmentAir, (air, celsius), origin);
        return Some(());
    }
    sheet.put(AMBIENT, Name::EquipmentAmbient, (degrees, celsius), origin);
    sheet.take(case.inputs, SUN, Name::SunRise, Field::SunRise)?;
    sheet.step(AIR, formula![AMBIENT, "+", SUN], (air, celsius));
    Some(())
}
