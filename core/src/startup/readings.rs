//! Readings of each visit against what the job predicts, the balance of the three lines, and how a reading went over the
//! visits.

use super::advice::Advice;
use super::judge::{expected, one};
use super::settings::known;
use crate::evaluate::Evaluation;
use crate::finding::{Finding, Severity};
use crate::job::record::Visit;
use crate::job::{Control, Field, Job, Reading};
use crate::power::family::{Feed, Start};
use crate::pump::motor::MotorKind;
use crate::pump::unbalance::{current_unbalance, derated_power, voltage_unbalance};
use crate::quantity::{
    Entry, amperes, horsepower, in_amperes, in_feet, in_gpm, in_hertz, in_horsepower, in_volts, volts,
};

/// Unbalance of the motor's lines beyond which it is looked into, and beyond which nobody goes on: of the volts by NEMA MG 1
/// 14.36, of the amperes common practice, no single source.
const VOLTS_UNBALANCE: [f64; 2] = [0.01, 0.05];
const AMPS_UNBALANCE: [f64; 2] = [0.05, 0.10];

/// A reading and its verdict.
#[derive(Debug, Clone, PartialEq)]
pub struct Judged {
    /// What was read.
    pub reading: Reading,
    /// Its figure.
    pub value: Entry,
    /// What the job predicts.
    pub predicted: Option<Entry>,
    /// The limit that it passed.
    pub limit: Option<Entry>,
    /// How grave; nothing where it is fine.
    pub severity: Option<Severity>,
    /// What is likely behind it and what is looked at next, the likeliest first.
    pub advice: &'static [Advice],
}

/// How far the three lines differ, once all three are typed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Balance {
    /// The largest deviation from the mean over the mean.
    pub share: f64,
    /// The line, or pair of lines, that deviates most.
    pub farthest: Reading,
    /// The limit that it passed, as a share.
    pub limit: Option<f64>,
    /// How grave; nothing where it is fine.
    pub severity: Option<Severity>,
    /// What the motor may carry of its rating under unbalanced volts.
    pub left: Option<f64>,
}

/// A visit and its verdicts.
#[derive(Debug, Clone, PartialEq)]
pub struct VisitJudged {
    /// When it began.
    pub at: String,
    /// Who measured.
    pub by: String,
    /// Each reading with a figure, in the order of the work.
    pub readings: Vec<Judged>,
    /// Balance of the amperes.
    pub amps: Option<Balance>,
    /// Balance of the volts.
    pub volts: Option<Balance>,
}

impl VisitJudged {
    /// The gravest verdict; nothing where all is fine.
    #[must_use]
    pub fn gravest(&self) -> Option<Severity> {
        let balances = [self.amps, self.volts].into_iter().flatten().filter_map(|balance| balance.severity);
        self.readings.iter().filter_map(|judged| judged.severity).chain(balances).max()
    }
}

/// What a job predicts of the readings, each in the reading's unit.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Predicted {
    pub supply: Option<f64>,
    pub sag_share: Option<f64>,
    pub supply_amps: Option<f64>,
    pub supply_most: Option<f64>,
    pub running: Option<f64>,
    pub most_amps: Option<f64>,
    pub motor_volts: Option<f64>,
    pub static_level: Option<f64>,
    pub pumping_level: Option<f64>,
    pub setting: Option<f64>,
    pub submergence: Option<f64>,
    pub flow: Option<f64>,
    pub setpoint: Option<f64>,
    /// Whether a drive holds the pressure.
    pub held: bool,
    pub rating: Option<f64>,
    pub frequency: Option<f64>,
    pub least_frequency: Option<f64>,
    pub precharge: Option<f64>,
    pub span: Option<f64>,
}

impl Predicted {
    fn of(job: &Job, answer: &Evaluation) -> Self {
        let figure = |field| known(answer, field).map(|(value, _)| value);
        let water = &answer.water;
        let submersible = job.choices.motor_kind() == MotorKind::Submersible;
        let base = Self {
            static_level: water.static_level.map(in_feet),
            pumping_level: water.pumping_level.map(in_feet),
            setting: figure(Field::PumpSetting).filter(|_| submersible),
            submergence: figure(Field::MinimumSubmergence).filter(|_| submersible),
            flow: water.pump.as_ref().and_then(|pump| Some(in_gpm(pump.duty.ok()?.flow))),
            setpoint: figure(Field::Pressure),
            rating: figure(Field::PressureRating),
            precharge: figure(Field::TankPrecharge),
            ..Self::default()
        };
        let Some(way) = answer.ways.picked() else { return base };
        let drive = way.family.start == Start::Ramp;
        let sag = way.pole.and_then(|pole| pole.sag);
        let fed = in_volts(way.fed.1);
        Self {
            supply: Some(fed),
            sag_share: sag.map(|sag| 1.0 - in_volts(sag.left) / fed),
            supply_amps: way.draw.map(|draw| in_amperes(draw.current)),
            supply_most: way.draw.map(|draw| in_amperes(draw.rated)),
            running: answer
                .motor
                .as_ref()
                .zip(way.way)
                // At light load the nameplate tells too little, and a drive is what turns a motor slower.
                .filter(|(motor, _)| !motor.light && (drive || motor.volts == 1.0))
                .and_then(|(motor, way)| motor.running[way as usize])
                .map(in_amperes),
            most_amps: way.motor.map(|motor| in_amperes(motor.required)),
            motor_volts: way.motor.map(|motor| in_volts(motor.rated)),
            held: drive && job.choices.control() == Control::ConstantPressure,
            frequency: water.pump.as_ref().and_then(|pump| pump.frequency()).map(in_hertz).filter(|_| drive),
            least_frequency: figure(Field::LeastFrequency).filter(|_| drive),
            span: figure(Field::TransducerSpan).filter(|_| drive),
            ..base
        }
    }
}

/// The readings that a job asks for, in the order of the work.
///
/// # Range
/// The job that the evaluation is of.
#[must_use]
pub fn wanted(job: &Job, answer: &Evaluation) -> Vec<Reading> {
    let submersible = job.choices.motor_kind() == MotorKind::Submersible;
    let way = answer.ways.picked();
    let drive = way.is_none_or(|way| way.family.start == Start::Ramp);
    let three = way.is_none_or(|way| way.family.motor == Feed::ThreePhase);
    let held = drive && job.choices.control() == Control::ConstantPressure;
    let asked = |reading: &Reading| match reading {
        Reading::InsulationAfter | Reading::StaticLevel | Reading::PumpingLevel => submersible,
        Reading::Amps3 => three,
        // At a drive's output a meter for plain 60 Hz misleads.
        Reading::Volts12 | Reading::Volts23 | Reading::Volts31 => three && !drive,
        Reading::Frequency => drive,
        Reading::Signal => held,
        _ => true,
    };
    Reading::ALL.into_iter().filter(asked).collect()
}

/// What a job predicts of a reading, by what else was read on its last visit.
///
/// # Range
/// The job that the evaluation is of.
#[must_use]
pub fn predicted(job: &Job, answer: &Evaluation, reading: Reading) -> Option<Entry> {
    let value = expected(reading, job.record.visits().last(), &Predicted::of(job, answer))?;
    Some(Entry::new(value, reading.unit()))
}

/// Every visit, judged.
///
/// # Range
/// The job that the evaluation is of.
#[must_use]
pub fn judge(job: &Job, answer: &Evaluation) -> Vec<VisitJudged> {
    let predicted = Predicted::of(job, answer);
    let rated = answer.inputs.motor_power.as_ref().ok().map(|known| known.value);
    let visit = |visit: &Visit| VisitJudged {
        at: visit.at.clone(),
        by: visit.by.clone(),
        readings: Reading::ALL.into_iter().filter_map(|reading| one(reading, visit, &predicted)).collect(),
        amps: balance(visit, Reading::AMPS, AMPS_UNBALANCE, |lines| current_unbalance(lines.map(amperes)).ok()),
        volts: balance(visit, Reading::VOLTS, VOLTS_UNBALANCE, |lines| voltage_unbalance(lines.map(volts)).ok()).map(
            |found| {
                let rated = rated.unwrap_or(horsepower(1.0));
                let left = derated_power(rated, found.share).ok();
                Balance { left: left.map(|left| in_horsepower(left) / in_horsepower(rated)), ..found }
            },
        ),
    };
    job.record.visits().iter().map(visit).collect()
}

fn balance(
    visit: &Visit,
    lines: [Reading; 3],
    [look, stop]: [f64; 2],
    unbalance: impl FnOnce([f64; 3]) -> Option<f64>,
) -> Option<Balance> {
    // A figure that is still being typed is not yet what it will be.
    let done = |line| visit.value(line).filter(|_| visit.last(line).is_some_and(|taken| !taken.open));
    let [one, two, three] = lines.map(done);
    let values = [one?, two?, three?];
    let share = unbalance(values)?;
    let mean = values.iter().sum::<f64>() / 3.0;
    let off = |index: &usize| (values[*index] - mean).abs();
    let farthest = (0..3).max_by(|a, b| off(a).total_cmp(&off(b)))?;
    let passed = |limit: f64, severity| (share > limit).then_some((limit, severity));
    let found = passed(stop, Severity::Stop).or(passed(look, Severity::Caution));
    let (limit, severity) = found.unzip();
    Some(Balance { share, farthest: lines[farthest], limit, severity, left: None })
}

/// What stops the work by the last visit: one finding for each reading that nobody may go on with.
///
/// # Range
/// The job that the evaluation is of.
#[must_use]
pub fn stops(job: &Job, answer: &Evaluation) -> Vec<Finding> {
    let Some(last) = judge(job, answer).pop() else { return Vec::new() };
    let stop = |severity: Option<Severity>| severity == Some(Severity::Stop);
    let readings = last.readings.iter().filter(|judged| stop(judged.severity)).map(|judged| judged.reading);
    let balances = [last.amps, last.volts].into_iter().flatten().filter(|balance| stop(balance.severity));
    let mut found: Vec<Reading> = readings.collect();
    for balance in balances {
        if !found.contains(&balance.farthest) {
            found.push(balance.farthest);
        }
    }
    found.into_iter().map(|reading| Finding::ReadingStop { reading }).collect()
}

/// A reading over the visits: when each began, and the figure that counts.
///
/// # Range
/// Any job; visits without a figure are left out.
#[must_use]
pub fn trend(job: &Job, reading: Reading) -> Vec<(&str, Entry)> {
    let one = |visit: &'_ Visit| visit.value(reading).map(|value| Entry::new(value, reading.unit()));
    job.record.visits().iter().filter_map(|visit| Some((visit.at.as_str(), one(visit)?))).collect()
}
