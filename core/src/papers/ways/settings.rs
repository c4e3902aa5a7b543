//! The workings of what is entered at the drive, where it is worked out.

use super::Case;
use super::frame::put_of_motor;
use crate::evaluate::{Evaluation, counted_service_factor};
use crate::job::{Field, Origin};
use crate::papers::lead::NAMEPLATE;
use crate::papers::math::{Math, Symbol, formula};
use crate::papers::motor::SERVICE_FACTOR;
use crate::papers::name::Name;
use crate::papers::sheet::{Sheet, current, plain, pressure};
use crate::papers::working::{Caveat, Working};
use crate::power::family::Start;
use crate::quantity::{Pressure, Unit, in_amperes, psi};
use crate::startup::SettingCode;
use crate::startup::protection::{DRY, HIGH, dry_run, high_pressure, overload};
use crate::startup::transducer::signal;

const OVERLOAD: Symbol = Symbol::of("I", "ol");
const ALLOWED: Symbol = Symbol::of("k", "ol");
const SIGNAL: Symbol = Symbol::of("I", "p");
const SETPOINT: Symbol = Symbol::of("p", "s");
const SPAN: Symbol = Symbol::of("p", "20");
const RUNNING: Symbol = Symbol::of("I", "l");
const DRY_CURRENT: Symbol = Symbol::of("I", "min");
const DRY_SHARE: Symbol = Symbol::of("k", "min");
const RATING: Symbol = Symbol::of("p", "max");
const TRIP: Symbol = Symbol::of("p", "t");
const TRIP_SHARE: Symbol = Symbol::of("k", "p");

pub(super) fn setting(evaluation: &Evaluation, code: SettingCode, mut sheet: Sheet) -> Option<Working> {
    match code {
        SettingCode::CurrentLimit => {
            // Only a drive limits the current.
            let case = Case::picked(evaluation).filter(|case| case.way.family.start == Start::Ramp)?;
            let (_, result) = put_of_motor(&case, &mut sheet)?;
            sheet.warn(Caveat::WholeSteps);
            Some(sheet.done(result, &["practice"]))
        }
        SettingCode::Overload => of_overload(&Case::picked(evaluation)?, sheet),
        SettingCode::SensorSignal => of_signal(evaluation, sheet),
        SettingCode::DryRun => of_dry_run(&Case::picked(evaluation)?, sheet),
        SettingCode::HighPressure => of_high_pressure(evaluation, sheet),
        _ => None,
    }
}

fn of_overload(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let factor = counted_service_factor(&case.inputs.entered, case.evaluation.kind)?;
    let most = overload(case.motor.nameplate, factor).ok()?;
    case.put_nameplate(&mut sheet)?;
    sheet.put(SERVICE_FACTOR, Name::ServiceFactor, plain(factor), case.inputs.origin(Field::ServiceFactor));
    let allowed = in_amperes(most) / in_amperes(case.motor.nameplate);
    sheet.put(ALLOWED, Name::OverloadShare, plain(allowed), Origin::Table);
    let result = sheet.step(OVERLOAD, formula![ALLOWED, "·", NAMEPLATE], current(most));
    sheet.warn(Caveat::WholeSteps);
    Some(sheet.done(result, &["nec-2023-430.32"]))
}

/// A pressure of the job, entered or standing in.
fn put_pressure(
    evaluation: &Evaluation,
    (symbol, name, field): (Symbol, Name, Field),
    sheet: &mut Sheet,
) -> Option<Pressure> {
    let inputs = &evaluation.inputs;
    let found = match inputs.entered.take(field, psi).ok()? {
        Some(known) => known.value,
        None => psi(inputs.stand_in(field)?.to(Unit::PoundPerSquareInch)?),
    };
    sheet.put(symbol, name, pressure(found), inputs.origin(field));
    Some(found)
}

fn of_signal(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let setpoint = put_pressure(evaluation, (SETPOINT, Name::GaugePressure, Field::Pressure), &mut sheet)?;
    let span = put_pressure(evaluation, (SPAN, Name::TransducerSpan, Field::TransducerSpan), &mut sheet)?;
    let found = (1000.0 * in_amperes(signal(setpoint, span).ok()?), Unit::Milliampere);
    let share = Math::Fraction(formula![SETPOINT], formula![SPAN]);
    let result = sheet.step(SIGNAL, formula![4.0, "+", 16.0, "·", share], found);
    Some(sheet.done(result, &["isa-50.00.01"]))
}

fn of_dry_run(case: &Case, mut sheet: Sheet) -> Option<Working> {
    let motor = case.evaluation.motor.filter(|motor| !motor.light)?;
    let running = motor.running[case.way.way? as usize]?;
    sheet.put(RUNNING, Name::RunningCurrent, current(running), Origin::WorkedOut);
    sheet.put(DRY_SHARE, Name::DryShare, plain(DRY), Origin::Assumed);
    let result = sheet.step(DRY_CURRENT, formula![DRY_SHARE, "·", RUNNING], current(dry_run(running).ok()?));
    sheet.warn(Caveat::WholeSteps);
    Some(sheet.done(result, &["practice"]))
}

fn of_high_pressure(evaluation: &Evaluation, mut sheet: Sheet) -> Option<Working> {
    let setpoint = put_pressure(evaluation, (SETPOINT, Name::GaugePressure, Field::Pressure), &mut sheet)?;
    let rating = put_pressure(evaluation, (RATING, Name::PressureRating, Field::PressureRating), &mut sheet)?;
    sheet.put(TRIP_SHARE, Name::TripShare, plain(HIGH), Origin::Assumed);
    let trip = formula![SETPOINT, "+", TRIP_SHARE, "·", "(", RATING, "−", SETPOINT, ")"];
    let result = sheet.step(TRIP, trip, pressure(high_pressure(setpoint, rating).ok()?));
    sheet.warn(Caveat::WholeSteps);
    Some(sheet.done(result, &["practice"]))
}
