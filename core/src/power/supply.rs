//! The supply of a way: what it draws, its conductors, the overcurrent device ahead of it.

use super::family::Feed;
use crate::error::OutsideRange;
use crate::quantity::{ElectricCurrent, ElectricPotential, Power, amperes, in_amperes, in_volts, in_watts, watts};
use crate::standards::overcurrent::next_standard_rating;

/// True power factor of an input current with distortion: displacement / √(1 + THD²).
///
/// # Units
/// All dimensionless; `distortion` as a share, 0.10 for 10 %.
/// # Range
/// Displacement 0 to 1, distortion 0 to 3.
/// # Errors
/// [`OutsideRange`] names `displacement` or `distortion`.
/// # Source
/// [ieee-1459-2010]; the supply voltage is taken as a sine.
pub fn true_power_factor(displacement: f64, distortion: f64) -> Result<f64, OutsideRange> {
    let displacement = OutsideRange::check("displacement", displacement, 0.0, 1.0)?;
    let distortion = OutsideRange::check("distortion", distortion, 0.0, 3.0)?;
    Ok(displacement / (1.0 + distortion * distortion).sqrt())
}

/// Single-phase input current of a drive that carries its rated motor.
///
/// I = P / (η_motor · η_drive · V · PF)
///
/// # Units
/// `power` rated shaft power, `supply` the line voltage, efficiencies and true power factor dimensionless.
/// # Range
/// Power to 10 MW; efficiencies and power factor 0.1 to 1; supply 100 to 1,000 V.
/// # Errors
/// [`OutsideRange`] names the argument (W, V).
/// # Source
/// Power balance.
pub fn drive_input_current(
    power: Power,
    motor_efficiency: f64,
    drive_efficiency: f64,
    supply: ElectricPotential,
    power_factor: f64,
) -> Result<ElectricCurrent, OutsideRange> {
    let power = OutsideRange::check("power", in_watts(power), 0.0, 1e7)?;
    let motor = OutsideRange::check("motor_efficiency", motor_efficiency, 0.1, 1.0)?;
    let drive = OutsideRange::check("drive_efficiency", drive_efficiency, 0.1, 1.0)?;
    let v = OutsideRange::check("supply", in_volts(supply), 100.0, 1000.0)?;
    let pf = OutsideRange::check("power_factor", power_factor, 0.1, 1.0)?;
    Ok(amperes(power / (motor * drive * v * pf)))
}

/// Input power with the motor at its rated load: P_in = (P/η_motor + P_lead)/η.
///
/// # Units
/// `power` rated shaft power; `lead_loss` heat of the lead at nameplate current; the result a power.
/// # Range
/// Power and loss 0 to 10 MW; efficiencies 0.1 to 1.
/// # Errors
/// [`OutsideRange`] names `power`, `lead_loss` (W), `motor_efficiency` or `efficiency`.
/// # Source
/// Power balance.
pub fn input_power(
    power: Power,
    motor_efficiency: f64,
    lead_loss: Power,
    efficiency: f64,
) -> Result<Power, OutsideRange> {
    let power = OutsideRange::check("power", in_watts(power), 0.0, 1e7)?;
    let motor = OutsideRange::check("motor_efficiency", motor_efficiency, 0.1, 1.0)?;
    let loss = OutsideRange::check("lead_loss", in_watts(lead_loss), 0.0, 1e7)?;
    Ok(watts((power / motor + loss) / OutsideRange::check("efficiency", efficiency, 0.1, 1.0)?))
}

/// Line current of an input: I = P/(V PF) on two lines, P/(√3 V PF) on three.
///
/// # Units
/// `supply` line to line; true power factor dimensionless; the result rms amperes, harmonics in.
/// # Range
/// Power 0 to 100 MW; supply 100 to 1,000 V; power factor 0.1 to 1.
/// # Errors
/// [`OutsideRange`] names `input` (W), `supply` (V) or `power_factor`.
/// # Source
/// Power balance; [ieee-1459-2010] for the true power factor.
pub fn input_current(
    input: Power,
    supply: ElectricPotential,
    power_factor: f64,
    feed: Feed,
) -> Result<ElectricCurrent, OutsideRange> {
    let input = OutsideRange::check("input", in_watts(input), 0.0, 1e8)?;
    let volts = OutsideRange::check("supply", in_volts(supply), 100.0, 1000.0)?;
    let factor = OutsideRange::check("power_factor", power_factor, 0.1, 1.0)?;
    Ok(amperes(input / (feed.factor() * volts * factor)))
}

/// Ampacity that the conductors ahead of a drive must have: 1.25 times its rated input current.
///
/// # Units
/// `rated` the input current that is marked, or worked out for the frame; the result a current.
/// # Range
/// 0 to 10,000 A.
/// # Errors
/// [`OutsideRange`] names `rated` (A).
/// # Source
/// [nec-2023-430.122] (A).
pub fn supply_ampacity(rated: ElectricCurrent) -> Result<ElectricCurrent, OutsideRange> {
    OutsideRange::check("rated", in_amperes(rated), 0.0, 1e4).map(|amps| amperes(1.25 * amps))
}

/// The overcurrent device ahead of a drive while its marked maximum is unknown: next standard rating at or above 125 %
/// of the input current. Provisional: the drive's own marking decides.
///
/// # Units
/// `input` the drive's rated input current; the result a rating.
/// # Range
/// 0 to 4,800 A of input.
/// # Errors
/// [`OutsideRange`] names `input` (A).
/// # Source
/// [nec-2023-430.122], [nec-2023-240.6]; as a stand-in for the marking, common practice.
pub fn provisional_device(input: ElectricCurrent) -> Result<ElectricCurrent, OutsideRange> {
    let amps = OutsideRange::check("input", in_amperes(input), 0.0, 4800.0)?;
    next_standard_rating(1.25 * amps).map(amperes).ok_or(OutsideRange {
        argument: "input",
        given: amps,
        min: 0.0,
        max: 4800.0,
    })
}
