//! The motor's load at the flow that is asked for.

use super::{RATED_HERTZ, Water};
use crate::job::{Inputs, Job, Way};
use crate::pump::motor::{
    LoadShare, load_share, next_standard_power, running_current, share_of_service_factor_current, volts_share,
};
use crate::quantity::{ElectricCurrent, Frequency, Power, amperes, hertz, volts};

/// The motor's load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MotorLoad {
    /// Power at the shaft.
    pub shaft: Power,
    /// The smallest standard motor for it; nothing beyond the table.
    pub standard: Option<Power>,
    /// The load as shares of the motor's rating.
    pub share: LoadShare,
    /// Frequency at which it gives that, where the pump's curve tells it.
    pub frequency: Option<Frequency>,
    /// Share of its rated volts that it has there: as much as of the rated frequency, and no more than all.
    pub volts: f64,
    /// Running current on the 240 V and the 480 V way, at that share of the motor's rated volts.
    pub running: [Option<ElectricCurrent>; 2],
    /// The same as shares of the nameplate's service-factor current.
    pub of_service_amps: [Option<f64>; 2],
    /// True where efficiency and power factor of the nameplate no longer hold, and it draws more than is told here: under
    /// three quarters of the load that its rating is at those volts.
    pub light: bool,
}

impl MotorLoad {
    /// Its load over what its rating is at the volts that it has.
    #[must_use]
    pub fn load(&self) -> f64 {
        self.share.of_rating / self.volts
    }
}

/// Least load at which efficiency and power factor of the nameplate hold: common practice.
const NAMEPLATE_HOLDS_FROM: f64 = 0.75;

pub(super) fn motor_load(job: &Job, inputs: &Inputs, water: &Water) -> Option<MotorLoad> {
    let shaft = water.shaft()?;
    let rated = inputs.motor_power.as_ref().ok()?.value;
    let factor = super::water::counted_service_factor(&inputs.entered, job.choices.motor_kind())?;
    let share = load_share(shaft, rated, factor).ok()?;
    let frequency = water.pump.as_ref().and_then(|pump| pump.frequency());
    let share_of_volts = volts_at(frequency)?;
    let running = Way::ALL.map(|way| running(inputs, shaft, way, share_of_volts));
    let of_service_amps = Way::ALL.map(|way| {
        let most = inputs.entered.get(way.service_amps_field(), amperes)?;
        share_of_service_factor_current(running[way as usize]?, most).ok()
    });
    let load = MotorLoad {
        shaft,
        standard: next_standard_power(shaft).ok(),
        share,
        frequency,
        volts: share_of_volts,
        running,
        of_service_amps,
        light: false,
    };
    Some(MotorLoad { light: load.load() < NAMEPLATE_HOLDS_FROM, ..load })
}

/// Share of its rated volts that the motor has at a frequency; all where the pump's speed is not known.
pub(super) fn volts_at(frequency: Option<Frequency>) -> Option<f64> {
    frequency.map_or(Some(1.0), |frequency| volts_share(frequency, hertz(RATED_HERTZ)).ok())
}

fn running(inputs: &Inputs, shaft: Power, way: Way, share_of_volts: f64) -> Option<ElectricCurrent> {
    let (efficiency, power_factor) = (inputs.efficiency.as_ref().ok()?, inputs.power_factor.as_ref().ok()?);
    running_current(shaft, volts(way.rated_volts() * share_of_volts), efficiency.value, power_factor.value).ok()
}
