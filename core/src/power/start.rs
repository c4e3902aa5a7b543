//! A motor put on full volts at once: what it draws while it stands, and how far the volts fall.

use super::family::Feed;
use super::impedance::{Impedance, checked};
use crate::error::OutsideRange;
use crate::quantity::{ElectricCurrent, ElectricPotential, amperes, in_amperes, in_ohms, in_volts, ohms};

/// Power factor of a motor that stands.
pub const LOCKED_ROTOR_POWER_FACTOR: f64 = 0.30;

/// Current that a standing motor draws from the supply at the supply's nominal voltage: I_FL · multiple · k, with k = √3
/// where three lines are made of two, 1 where the lines pass straight through.
///
/// # Units
/// `full_load` nameplate current; the result a line current of the supply.
/// # Range
/// Full load 0 to 10,000 A; multiple 1 to 12.
/// # Errors
/// [`OutsideRange`] names `full_load` (A) or `multiple`.
/// # Source
/// Power balance for k; the multiple is the family's, common practice.
pub fn locked_rotor_input(
    full_load: ElectricCurrent,
    multiple: f64,
    supply: Feed,
    motor: Feed,
) -> Result<ElectricCurrent, OutsideRange> {
    let amps = OutsideRange::check("full_load", in_amperes(full_load), 0.0, 1e4)?;
    let multiple = OutsideRange::check("multiple", multiple, 1.0, 12.0)?;
    Ok(amperes(amps * multiple * motor.factor() / supply.factor()))
}

/// Volts at the start, each dip a share of the supply without load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StartDip {
    /// Current that the supply gives.
    pub current: ElectricCurrent,
    /// Dip at the pole, where neighbors may share it.
    pub at_pole: f64,
    /// Dip in the motor's circuit, at the end of the feeder.
    pub at_motor: f64,
}

/// Dip while the motor stands, the motor taken as a constant impedance at power factor 0.30.
///
/// Z_m = V/I_LR; I = V/|Z_source + Z_feeder + Z_m|; dips 1 − I |Z_feeder + Z_m|/V at the pole and 1 − I |Z_m|/V at the
/// motor.
///
/// # Units
/// `locked_rotor` line current that the supply would give at its full voltage `supply`.
/// # Range
/// Supply 1 to 100,000 V; locked rotor 0.001 to 100,000 A; impedances 0 to 10⁶ Ω. The primary is an infinite bus.
/// # Errors
/// [`OutsideRange`] names `supply` (V), `locked_rotor` (A), `source` or `feeder` (Ω).
/// # Source
/// Ohm's law; the power factor is common practice.
pub fn start_dip(
    supply: ElectricPotential,
    locked_rotor: ElectricCurrent,
    source: Impedance,
    feeder: Impedance,
) -> Result<StartDip, OutsideRange> {
    let v = OutsideRange::check("supply", in_volts(supply), 1.0, 1e5)?;
    let z = v / OutsideRange::check("locked_rotor", in_amperes(locked_rotor), 1e-3, 1e5)?;
    checked("source", source)?;
    checked("feeder", feeder)?;
    let cos = LOCKED_ROTOR_POWER_FACTOR;
    let motor = Impedance { resistance: ohms(z * cos), reactance: ohms(z * (1.0 - cos * cos).sqrt()) };
    let behind_pole = in_ohms((feeder + motor).size());
    let current = v / in_ohms((source + feeder + motor).size());
    // A start never lifts the volts; what rounding leaves below zero is zero.
    let dip = |ohms: f64| (1.0 - current * ohms / v).max(0.0);
    Ok(StartDip { current: amperes(current), at_pole: dip(behind_pole), at_motor: dip(z) })
}

/// The largest dips that are borne.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DipLimits {
    /// At the motor, as a share.
    pub motor: f64,
    /// At the pole, as a share.
    pub pole: f64,
}

/// Dips at a start that the trade bears: 15 % at the motor, 5 % at the pole.
pub const USUAL_LIMITS: DipLimits = DipLimits { motor: 0.15, pole: 0.05 };

/// A start against its limits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum StartVerdict {
    /// Both dips within.
    Holds,
    /// The pole dips by this share more than borne; the motor does not.
    PoleOver(f64),
    /// The motor's circuit dips by this share more than borne.
    MotorOver(f64),
}

/// How a start stands against its limits.
///
/// # Units
/// Shares.
/// # Range
/// Limits 0.01 to 0.30. Equality holds.
/// # Errors
/// [`OutsideRange`] names `motor` or `pole`.
/// # Source
/// Common practice, no single source; the utility's own limit at the pole comes first.
pub fn judge_start(dip: StartDip, limits: DipLimits) -> Result<StartVerdict, OutsideRange> {
    let motor = dip.at_motor - OutsideRange::check("motor", limits.motor, 0.01, 0.30)?;
    let pole = dip.at_pole - OutsideRange::check("pole", limits.pole, 0.01, 0.30)?;
    Ok(match (motor > 0.0, pole > 0.0) {
        (true, _) => StartVerdict::MotorOver(motor),
        (false, true) => StartVerdict::PoleOver(pole),
        (false, false) => StartVerdict::Holds,
    })
}
