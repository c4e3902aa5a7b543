//! The motor's load at the flow that is asked for.

use super::Water;
use crate::job::{Inputs, Job, Way};
use crate::pump::motor::{
    LoadShare, load_share, next_standard_power, running_current, share_of_service_factor_current,
};
use crate::quantity::{ElectricCurrent, Power, amperes, volts};

/// The motor's load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MotorLoad {
    /// Power at the shaft.
    pub shaft: Power,
    /// The smallest standard motor for it; nothing beyond the table.
    pub standard: Option<Power>,
    /// The load as shares of the motor's rating.
    pub share: LoadShare,
    /// Running current on the 240 V and the 480 V way, at the motor's rated volts.
    pub running: [Option<ElectricCurrent>; 2],
    /// The same as shares of the nameplate's service-factor current.
    pub of_service_amps: [Option<f64>; 2],
    /// True where efficiency and power factor of the nameplate no longer hold: under three quarters of the rating.
    pub light: bool,
}

/// Least load at which efficiency and power factor of the nameplate hold: common practice.
const NAMEPLATE_HOLDS_FROM: f64 = 0.75;

pub(super) fn motor_load(job: &Job, inputs: &Inputs, water: &Water) -> Option<MotorLoad> {
    let shaft = water.shaft()?;
    let rated = inputs.motor_power.as_ref().ok()?.value;
    let factor = super::water::counted_service_factor(&inputs.entered, job.choices.motor_kind())?;
    let share = load_share(shaft, rated, factor).ok()?;
    let running = Way::ALL.map(|way| running(inputs, shaft, way));
    let of_service_amps = Way::ALL.map(|way| {
        let most = inputs.entered.get(way.service_amps_field(), amperes)?;
        share_of_service_factor_current(running[way as usize]?, most).ok()
    });
    let light = share.of_rating < NAMEPLATE_HOLDS_FROM;
    Some(MotorLoad { shaft, standard: next_standard_power(shaft).ok(), share, running, of_service_amps, light })
}

fn running(inputs: &Inputs, shaft: Power, way: Way) -> Option<ElectricCurrent> {
    let (efficiency, power_factor) = (inputs.efficiency.as_ref().ok()?, inputs.power_factor.as_ref().ok()?);
    running_current(shaft, volts(way.rated_volts()), efficiency.value, power_factor.value).ok()
}
