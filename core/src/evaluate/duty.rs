//! A year's duty: what the pump does at each flow of it.

use super::Water;
use super::motor::volts_at;
use super::water::{Duty, NoDuty, duty_at};
use super::ways::LoadHours;
use crate::cost::duty_text::{DutyTextError, FlowUnit, read_duty};
use crate::job::{Control, Field, Inputs, Job};
use crate::quantity::{Power, VolumeRate, in_hours};

/// Hours of a year at a flow, and what the pump does there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DutyHours {
    /// The flow that is drawn.
    pub flow: VolumeRate,
    /// Hours of a year in which it is.
    pub hours: f64,
    /// The pump while it runs; at full speed it gives more than is drawn, in fewer hours.
    pub duty: Duty,
}

impl DutyHours {
    /// Hours that the pump runs for it.
    #[must_use]
    pub fn running(&self) -> f64 {
        self.hours * (self.flow / self.duty.flow).value
    }
}

/// Why a year's duty can't be told.
#[derive(Debug, Clone, PartialEq)]
pub enum NoYear {
    /// Its text can't be read.
    Text(DutyTextError),
    /// The pump can't give a flow of it.
    Flow {
        /// The flow.
        flow: VolumeRate,
        /// Why.
        why: NoDuty,
    },
}

/// The rows of a job's duty, run as said; nothing where none was entered, or the pump is not known.
pub(super) fn rows(
    job: &Job,
    inputs: &Inputs,
    water: &Water,
    control: Control,
) -> Option<Result<Vec<DutyHours>, NoYear>> {
    if job.duty.trim().is_empty() {
        return None;
    }
    let read = match read_duty(&job.duty, FlowUnit::Gpm) {
        Ok(read) => read,
        Err(error) => return Some(Err(NoYear::Text(error))),
    };
    let mut found = Vec::new();
    for row in read.duty.rows() {
        match duty_at(&inputs.entered, water, control, row.flow)? {
            Ok(duty) => found.push(DutyHours { flow: row.flow, hours: in_hours(row.time), duty }),
            Err(why) => return Some(Err(NoYear::Flow { flow: row.flow, why })),
        }
    }
    Some(Ok(found))
}

/// The loads of a year; nothing where they can't be told. Without a table of duty the motor runs at its rating.
pub(super) fn loads(job: &Job, inputs: &Inputs, water: &Water) -> Option<Vec<LoadHours>> {
    match rows(job, inputs, water, job.choices.control()) {
        None if job.duty.trim().is_empty() => {
            let hours = inputs.entered.get(Field::YearlyHours, |hours| hours)?;
            Some(vec![LoadHours::rated(hours)])
        }
        Some(Ok(rows)) => {
            let motor = inputs.motor_power.as_ref().ok()?.value;
            shares(&rows, motor, water)
        }
        None | Some(Err(_)) => None,
    }
}

/// The loads of rows as shares of a motor, each with the speed at which the pump runs for it.
pub(super) fn shares(rows: &[DutyHours], motor: Power, water: &Water) -> Option<Vec<LoadHours>> {
    let load = |row: &DutyHours| {
        let frequency = water.pump.as_ref().and_then(|pump| Some(pump.curve_frequency * row.duty.ratio?));
        let volts = volts_at(frequency)?;
        Some(LoadHours { hours: row.running(), share: (row.duty.shaft / motor).value, frequency, volts })
    };
    rows.iter().map(load).collect()
}
