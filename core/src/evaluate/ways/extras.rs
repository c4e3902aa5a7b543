//! What some ways bring with them: a transformer behind the drive, an idler that turns while nothing runs.

use super::motor::MotorHere;
use super::{Base, PoweredWay, RATED_HERTZ};
use crate::power::family::{Change, Kind};
use crate::power::rotary::{IDLE_SHARE, IDLER_RATIO, idle_loss, idler_power};
use crate::power::step_up::{MOST_FLUX, lowest_frequency, rating};
use crate::quantity::{Frequency, Power, hertz};

/// Volts at standstill over rated volts that a drive usually adds: common practice.
pub(crate) const BOOST: f64 = 0.05;

/// A transformer between a drive and its motor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StepUp {
    /// Smallest usual rating for the motor; nothing beyond the usual ones.
    pub rating: Option<Power>,
    /// Frequency below which the drive's boost saturates its core.
    pub lowest: Frequency,
}

/// The idler of a rotary converter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Idler {
    /// Rated power that it needs.
    pub power: Power,
    /// What it takes while nothing runs.
    pub idle: Power,
}

impl Base<'_> {
    pub(super) fn step_up(&self, powered: &PoweredWay, motor: &MotorHere) -> Option<StepUp> {
        let (Change::SteppedUp { .. }, Some(way)) = (powered.family.change, powered.way) else { return None };
        Some(StepUp {
            rating: rating(way.sending(), motor.required).ok()?,
            lowest: lowest_frequency(BOOST, MOST_FLUX, hertz(RATED_HERTZ)).ok()?,
        })
    }

    pub(super) fn idler(&self, powered: &PoweredWay, motor: &MotorHere) -> Option<Idler> {
        if powered.family.kind != Kind::RotaryConverter {
            return None;
        }
        let power = idler_power(motor.power, IDLER_RATIO).ok()?;
        Some(Idler { power, idle: idle_loss(power, IDLE_SHARE).ok()? })
    }
}
