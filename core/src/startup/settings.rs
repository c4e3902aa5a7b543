//! The settings sheet: what an installer enters at the drive, worked out from the job, in the words of the trade. The
//! equipment's own manual and marking come first.

use super::protection::{DRY_RANGE, dry_run, high_pressure, overload};
use super::transducer::signal;
use crate::cable::filter::Remedy;
use crate::evaluate::{Evaluation, MotorHere, PoweredWay, RATED_HERTZ, SENSOR_SHARE, counted_service_factor};
use crate::job::{Control, Field, Job, Origin, Way};
use crate::power::family::Start;
use crate::pump::motor::MotorKind;
use crate::quantity::{ElectricCurrent, Entry, Frequency, Unit, in_amperes, in_hertz, in_psi, in_volts, psi};
use serde::Serialize;

/// Lowest frequency at which the thrust bearing of a submersible motor carries its load, Hz, and the time in which it is
/// passed both ways, s: common practice, no single source.
const BEARING_FROM: f64 = 30.0;
const PASSED_IN: f64 = 1.0;
/// Time below the dry-run current after which the pump is stopped, s, and how far it may be moved: common practice, no
/// single source.
const DRY_FOR: f64 = 10.0;
/// Wait after a dry run until the water is tried again, s: half an hour, common practice, no single source.
const DRY_WAIT: f64 = 1800.0;
/// Free space around a drive, in: six inches, common practice, no single source; its manual wins.
pub(super) const CLEARANCE: f64 = 6.0;
/// Step in which amperes and hertz are entered.
const TENTH: f64 = 0.1;

/// A setting.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SettingCode {
    /// Volts of the motor's nameplate.
    MotorVolts,
    /// Frequency of its nameplate.
    MotorFrequency,
    /// Amperes of its nameplate.
    MotorAmps,
    /// Current that the drive limits to.
    CurrentLimit,
    /// Separate overload device.
    Overload,
    /// Pressure that is held.
    Setpoint,
    /// Pressure at which the transducer gives 20 mA.
    SensorSpan,
    /// Current of the transducer at the setpoint.
    SensorSignal,
    /// Pressure at which the pump starts.
    CutIn,
    /// Pressure at which it stops.
    CutOut,
    /// Time in which a submersible motor passes its bearing's lowest frequency, up and down.
    QuickPass,
    /// Lowest frequency.
    LowestSpeed,
    /// Highest frequency.
    HighestSpeed,
    /// Current below which the pump is taken for dry.
    DryRun,
    /// How long it may be so.
    DryRunTime,
    /// Wait after that.
    DryRunWait,
    /// Pressure at which the pump is stopped.
    HighPressure,
    /// Start by itself after a power cut.
    Restart,
    /// Wait before that, while the water runs back.
    RestartDelay,
    /// Running by hand at full speed.
    HandRunning,
    /// Pressure of the air in the drained tank.
    Precharge,
    /// Carrier frequency of the pulses.
    Carrier,
    /// Free space around the drive.
    Clearance,
}

/// What a setting says where it is no figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Word {
    /// Yes.
    Yes,
    /// No.
    No,
    /// Locked out.
    LockedOut,
    /// As it is marked on the filter.
    AsMarked,
    /// Learned by the drive from the healthy pump, or set by power.
    Learned,
}

/// What is entered.
#[derive(Debug, Clone, PartialEq)]
pub enum Value {
    /// A figure.
    Figure(Entry),
    /// A word.
    Word(Word),
    /// Nothing yet: it waits for these figures, or where there is none for a way that serves.
    Missing(Vec<Field>),
}

/// A setting with its value.
#[derive(Debug, Clone, PartialEq)]
pub struct Setting {
    /// Which.
    pub code: SettingCode,
    /// What is entered.
    pub value: Value,
    /// Lowest and highest that are safe, where there are such.
    pub safe: [Option<Entry>; 2],
    /// Whether it goes by a figure that is assumed.
    pub assumed: bool,
}

impl Setting {
    fn figure(code: SettingCode, value: f64, unit: Unit) -> Self {
        Self { code, value: Value::Figure(Entry::new(value, unit)), safe: [None, None], assumed: false }
    }
    /// A figure as it can be entered: in whole steps, no higher than it is.
    fn at_most(code: SettingCode, value: f64, unit: Unit, step: f64) -> Self {
        Self::figure(code, in_steps(value, step, f64::floor), unit)
    }
    fn word(code: SettingCode, word: Word) -> Self {
        Self { code, value: Value::Word(word), safe: [None, None], assumed: false }
    }
    fn missing(code: SettingCode, fields: Vec<Field>) -> Self {
        Self { code, value: Value::Missing(fields), safe: [None, None], assumed: false }
    }
    /// With what is safe, in the unit of its figure.
    fn within(self, low: Option<f64>, high: Option<f64>) -> Self {
        let Value::Figure(Entry { unit, .. }) = self.value else { return self };
        Self { safe: [low, high].map(|end| end.map(|end| Entry::new(end, unit))), ..self }
    }
    fn assumed(self, assumed: bool) -> Self {
        Self { assumed, ..self }
    }
}

/// A figure in whole steps; one that is a step but for its last digits is that step.
fn in_steps(value: f64, step: f64, round: fn(f64) -> f64) -> f64 {
    let (steps, near) = (value / step, (value / step).round());
    let whole = if (steps - near).abs() < 1e-6 { near } else { round(steps) };
    // A tenth has no exact number: what is shown is the nearest one.
    whole / (1.0 / step).round()
}

/// A figure of a field, typed or standing in, and whether it was typed.
pub(super) fn known(answer: &Evaluation, field: Field) -> Option<(f64, bool)> {
    let inputs = &answer.inputs;
    match inputs.entered.take(field, |figure| figure).ok()? {
        Some(known) => Some((known.value, known.origin == Origin::Typed)),
        None => Some((inputs.stand_in(field)?.to(field.spec().accepted.unit)?, false)),
    }
}

/// Settings of a job for the way that it goes by, in the order in which they are entered.
///
/// # Range
/// The job that the evaluation is of.
#[must_use]
pub fn settings(job: &Job, answer: &Evaluation) -> Vec<Setting> {
    let sheet = Sheet { job, answer, way: answer.ways.picked() };
    let mut found = sheet.motor();
    found.extend(sheet.pressure());
    if sheet.has_drive() {
        found.extend(sheet.speed());
        found.extend(sheet.protection());
    }
    found.extend(sheet.restart());
    found.extend(sheet.field(SettingCode::Precharge, Field::TankPrecharge));
    if sheet.has_drive() {
        found.push(Setting::figure(SettingCode::Clearance, CLEARANCE, Unit::Inch));
    }
    found
}

/// How long the pump may be dry, and the wait after that.
fn dry_times() -> [Setting; 2] {
    let seconds = |code, value| Setting::figure(code, value, Unit::Second);
    [
        seconds(SettingCode::DryRunTime, DRY_FOR).within(Some(2.0), Some(DRY_FOR)),
        seconds(SettingCode::DryRunWait, DRY_WAIT).within(Some(DRY_WAIT), None),
    ]
}

struct Sheet<'a> {
    job: &'a Job,
    answer: &'a Evaluation,
    way: Option<&'a PoweredWay>,
}

impl Sheet<'_> {
    /// Whether a drive ramps the motor; until a way is known one does.
    fn has_drive(&self) -> bool {
        self.way.is_none_or(|way| way.family.start == Start::Ramp)
    }

    fn submersible(&self) -> bool {
        self.job.choices.motor_kind() == MotorKind::Submersible
    }

    fn field(&self, code: SettingCode, field: Field) -> Option<Setting> {
        let (value, typed) = known(self.answer, field)?;
        Some(Setting::figure(code, value, field.spec().accepted.unit).assumed(!typed))
    }

    /// What a setting of the motor waits for.
    fn waits(&self) -> Vec<Field> {
        let ways = &self.answer.ways;
        let missing = self.answer.errors.iter().map(crate::error::InputError::field);
        if ways.waits_for.is_empty() { missing.collect() } else { ways.waits_for.clone() }
    }

    fn motor(&self) -> Vec<Setting> {
        use SettingCode as S;
        let Some((way, motor)) = self.way.and_then(|way| Some((way, way.motor?))) else {
            return vec![Setting::missing(S::CurrentLimit, self.waits())];
        };
        let amps = |code, current: ElectricCurrent| Setting::figure(code, in_amperes(current), Unit::Ampere);
        let typed =
            |field: fn(Way) -> Field| way.way.is_some_and(|way| self.answer.inputs.entered.is_typed(field(way)));
        let (named, serviced) = (typed(Way::nameplate_field), typed(Way::service_amps_field));
        let mut found = vec![Setting::figure(S::MotorVolts, in_volts(motor.rated), Unit::Volt)];
        if self.has_drive() {
            found.push(Setting::figure(S::MotorFrequency, RATED_HERTZ, Unit::Hertz));
        }
        found.push(amps(S::MotorAmps, motor.nameplate).assumed(!named));
        if self.has_drive() {
            let limit = Setting::at_most(S::CurrentLimit, in_amperes(motor.required), Unit::Ampere, TENTH);
            found.push(
                limit
                    .within(Some(in_amperes(motor.nameplate)), Some(in_amperes(motor.required)))
                    .assumed(!(named && (serviced || !self.submersible()))),
            );
        }
        found.extend(self.overload(&motor).map(|most| {
            Setting::at_most(S::Overload, in_amperes(most), Unit::Ampere, TENTH)
                .within(Some(in_amperes(motor.nameplate)), Some(in_amperes(most)))
                .assumed(!named)
        }));
        found
    }

    fn overload(&self, motor: &MotorHere) -> Option<ElectricCurrent> {
        let factor = counted_service_factor(&self.answer.inputs.entered, self.job.choices.motor_kind())?;
        overload(motor.nameplate, factor).ok()
    }

    /// Of the pressure: held by a drive, or between two switches.
    fn pressure(&self) -> Vec<Setting> {
        use SettingCode as S;
        let held = self.has_drive() && self.job.choices.control() == Control::ConstantPressure;
        if !held {
            return [(S::CutIn, Field::CutIn), (S::CutOut, Field::Pressure)]
                .into_iter()
                .filter_map(|(code, field)| self.field(code, field))
                .collect();
        }
        let Some((span, _)) = known(self.answer, Field::TransducerSpan) else { return Vec::new() };
        let setpoint =
            self.field(S::Setpoint, Field::Pressure).map(|found| found.within(None, Some(SENSOR_SHARE * span)));
        let of_sensor = known(self.answer, Field::Pressure).and_then(|(pressure, typed)| {
            let current = signal(psi(pressure), psi(span)).ok()?;
            let low = !typed || !self.answer.inputs.entered.is_typed(Field::TransducerSpan);
            Some(Setting::figure(S::SensorSignal, in_amperes(current) * 1000.0, Unit::Milliampere).assumed(low))
        });
        [setpoint, self.field(S::SensorSpan, Field::TransducerSpan), of_sensor].into_iter().flatten().collect()
    }

    fn speed(&self) -> Vec<Setting> {
        use SettingCode as S;
        let mut found = Vec::new();
        if self.submersible() {
            found.push(Setting::figure(S::QuickPass, PASSED_IN, Unit::Second).within(None, Some(PASSED_IN)));
        }
        // The lowest is rounded up, since below it nothing holds the pressure; the highest down.
        let hertz = |code, value: Frequency, round: fn(f64) -> f64| {
            Setting::figure(code, in_steps(in_hertz(value), TENTH, round), Unit::Hertz)
        };
        let entered = &self.answer.inputs.entered;
        if let Some(pump) = &self.answer.water.pump {
            let (least, most) = pump.band;
            let lowest = pump.lowest.map_or(least, |lowest| lowest.max(least));
            let duty = pump.frequency().map(in_hertz);
            let typed = |field| entered.is_typed(field);
            found.push(
                hertz(S::LowestSpeed, lowest, f64::ceil)
                    .within(Some(in_hertz(lowest)), duty)
                    .assumed(pump.lowest.is_none() && !typed(Field::LeastFrequency)),
            );
            found.push(
                hertz(S::HighestSpeed, most, f64::floor)
                    .within(duty, Some(in_hertz(most)))
                    .assumed(!typed(Field::MostFrequency)),
            );
        } else {
            let low = if self.submersible() { Some(BEARING_FROM) } else { None };
            found.extend(self.field(S::LowestSpeed, Field::LeastFrequency).map(|found| found.within(low, None)));
            found.extend(self.field(S::HighestSpeed, Field::MostFrequency));
        }
        if self.way.and_then(|way| way.stress).is_some_and(|stress| stress.fitted != Remedy::NoneNeeded) {
            found.push(Setting::word(S::Carrier, Word::AsMarked));
        }
        found
    }

    fn protection(&self) -> Vec<Setting> {
        use SettingCode as S;
        let mut found = Vec::new();
        let motor = self.answer.motor.as_ref();
        let running = self.way.and_then(|way| motor?.running[way.way? as usize]);
        match running.and_then(|running| Some((running, dry_run(running).ok()?))) {
            // A motor at light load draws more than its nameplate tells: three quarters of that may never be passed.
            Some(_) if motor.is_some_and(|motor| motor.light) => {
                found.push(Setting::word(S::DryRun, Word::Learned));
                found.extend(dry_times());
            }
            Some((running, trip)) => {
                let [low, high] = DRY_RANGE.map(|share| share * in_amperes(running));
                found.push(
                    Setting::at_most(S::DryRun, in_amperes(trip), Unit::Ampere, TENTH).within(Some(low), Some(high)),
                );
                found.extend(dry_times());
            }
            None => found.push(Setting::missing(S::DryRun, self.waits())),
        }
        let pressures = known(self.answer, Field::Pressure).zip(known(self.answer, Field::PressureRating));
        let trip = pressures.and_then(|((setpoint, _), (rating, typed))| {
            let trip = high_pressure(psi(setpoint), psi(rating)).ok()?;
            let trip = in_steps(in_psi(trip), 1.0, f64::floor);
            // Too near the setpoint it would stop a pump that does what it should.
            let found = Setting::figure(S::HighPressure, trip, Unit::PoundPerSquareInch);
            (trip > setpoint).then(|| found.within(Some(setpoint), Some(rating)).assumed(!typed))
        });
        found.extend(trip);
        found
    }

    fn restart(&self) -> Vec<Setting> {
        use SettingCode as S;
        let choices = &self.job.choices;
        let word = if choices.restart() { Word::Yes } else { Word::No };
        let mut found = vec![Setting::word(S::Restart, word).assumed(choices.restart.is_none())];
        found.extend(self.field(S::RestartDelay, Field::RestartDelay).filter(|_| choices.restart()));
        if self.has_drive() {
            found.push(Setting::word(S::HandRunning, Word::LockedOut));
        }
        found
    }
}
