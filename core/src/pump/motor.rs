//! A motor's size and load, and what it draws: by the table, by the nameplate, at the load that it has.

use crate::error::OutsideRange;
use crate::quantity::{
    ElectricCurrent, ElectricPotential, Frequency, Power, amperes, horsepower, in_amperes, in_hertz, in_horsepower,
    in_volts, in_watts,
};
pub use crate::standards::motor_current::RatedVoltage;
use crate::standards::motor_current::{Row, TABLE};
use serde::{Deserialize, Serialize};

/// Where a motor works; it sets what is assumed until the nameplate is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum MotorKind {
    /// In the well, below the pump.
    Submersible,
    /// On the surface.
    Surface,
}

/// Full-load current of a three-phase induction motor by its rated power.
///
/// Between two rows the current is interpolated in a straight line; a power within 10⁻⁹ of a row is that row, so that a
/// change of units never moves it off.
///
/// # Units
/// `power` rated shaft power; the result a current.
/// # Range
/// 0.5 to 200 hp.
/// # Errors
/// [`OutsideRange`] names `power` (hp).
/// # Source
/// [nec-2023-430.250]; interpolation after 430.6(A)(1), which uses it the other way, from amperes to horsepower.
/// # Example
/// ```
/// # use wellwright_core::{pump::motor::*, quantity::*};
/// let amps = table_current(horsepower(10.0), RatedVoltage::V230)?;
/// assert_eq!(in_amperes(amps), 28.0);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn table_current(power: Power, voltage: RatedVoltage) -> Result<ElectricCurrent, OutsideRange> {
    let (low, high) = table_rows(power)?;
    let (least, most) = (low.amperes(voltage), high.amperes(voltage));
    if low.hp == high.hp {
        return Ok(amperes(least));
    }
    let share = (in_horsepower(power) - low.hp) / (high.hp - low.hp);
    Ok(amperes(least + share * (most - least)))
}

/// The rows of table 430.250 that a rated power lies between; on a row, that row twice.
///
/// # Units
/// `power` rated shaft power.
/// # Range
/// 0.5 to 200 hp.
/// # Errors
/// [`OutsideRange`] names `power` (hp).
/// # Source
/// [nec-2023-430.250].
pub fn table_rows(power: Power) -> Result<(Row, Row), OutsideRange> {
    let hp = OutsideRange::check("power", rated_horsepower(power), TABLE[0].hp, TABLE[TABLE.len() - 1].hp)?;
    let above = TABLE.partition_point(|row| row.hp < hp).min(TABLE.len() - 1);
    let high = TABLE[above];
    Ok(if high.hp == hp { (high, high) } else { (TABLE[above.saturating_sub(1)], high) })
}

/// The current that sizes the conductors: the larger of nameplate and table.
///
/// # Units
/// Currents at the same rated voltage.
/// # Range
/// Any.
/// # Source
/// [nec-2023-430.6] sizes by the table; submersible motors often draw more, so the larger governs (practice).
#[must_use]
pub fn sizing_current(table: ElectricCurrent, nameplate: Option<ElectricCurrent>) -> ElectricCurrent {
    nameplate.map_or(table, |amps| amps.max(table))
}

/// The current of the same motor connected for another voltage: I₂ = I₁ · V₁/V₂.
///
/// # Units
/// `from` and `to` rated voltages in volts.
/// # Range
/// Dual-voltage motors; voltages above 0.
/// # Source
/// Equal power at equal power factor and efficiency.
#[must_use]
pub fn reconnected_current(current: ElectricCurrent, from: f64, to: f64) -> ElectricCurrent {
    current * (from / to)
}

/// The standard motor for a shaft power: the smallest rating not below it, service factor left aside.
///
/// A power within 10⁻⁹ of a rating is that rating.
///
/// # Units
/// `shaft` power at the pump's shaft; the result a rated power.
/// # Range
/// 0 to 200 hp, the ratings of table 430.250.
/// # Errors
/// [`OutsideRange`] names `shaft` (hp).
/// # Source
/// [nec-2023-430.250] for the ratings; to keep the service factor in hand is common practice.
/// # Example
/// ```
/// # use wellwright_core::{pump::motor::*, quantity::*};
/// assert_eq!(next_standard_power(horsepower(6.8145))?, horsepower(7.5));
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn next_standard_power(shaft: Power) -> Result<Power, OutsideRange> {
    let most = TABLE[TABLE.len() - 1].hp;
    let hp = OutsideRange::check("shaft", rated_horsepower(shaft), 0.0, most)?;
    let at = TABLE.partition_point(|row| row.hp < hp).min(TABLE.len() - 1);
    Ok(horsepower(TABLE[at].hp))
}

/// A motor's load as shares of what it may carry.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LoadShare {
    /// Shaft power over rated power.
    pub of_rating: f64,
    /// Shaft power over rated power times service factor.
    pub of_service_factor: f64,
}

/// A motor's load: P / P_rated and P / (P_rated SF).
///
/// # Units
/// Powers; service factor dimensionless; the results shares.
/// # Range
/// Shaft power 0 to 10 MW; rated above 0 to 10 MW; service factor 1 to 1.4.
/// # Errors
/// [`OutsideRange`] names `shaft`, `rated` (W) or `service_factor`.
/// # Source
/// [nema-mg1-2016]: the service factor is what a motor may carry over its rating at rated voltage and frequency. A surface
/// motor on a drive counts with 1.
pub fn load_share(shaft: Power, rated: Power, service_factor: f64) -> Result<LoadShare, OutsideRange> {
    let shaft = OutsideRange::check("shaft", in_watts(shaft), 0.0, 1e7)?;
    let rated = OutsideRange::check("rated", in_watts(rated), 1.0, 1e7)?;
    let factor = OutsideRange::check("service_factor", service_factor, 1.0, 1.4)?;
    Ok(LoadShare { of_rating: shaft / rated, of_service_factor: shaft / (rated * factor) })
}

/// Share of its rated volts that a drive gives a motor at a frequency: f/f_r, so that the flux stays what it is; above the
/// rated frequency all of them, as the supply gives no more.
///
/// # Units
/// Frequencies in one unit; the result a share, 0 to 1.
/// # Range
/// `frequency` 1 to 400 Hz, `rated` 10 to 400 Hz. Constant volts per hertz; a drive that saves flux at light load gives
/// fewer, and the motor then draws more for its torque.
/// # Errors
/// [`OutsideRange`] names `frequency` or `rated` (Hz).
/// # Source
/// [nema-mg1-2016] part 30: constant volts per hertz up to base frequency, constant volts above.
pub fn volts_share(frequency: Frequency, rated: Frequency) -> Result<f64, OutsideRange> {
    let frequency = OutsideRange::check("frequency", in_hertz(frequency), 1.0, 400.0)?;
    let rated = OutsideRange::check("rated", in_hertz(rated), 10.0, 400.0)?;
    Ok(if frequency < rated { frequency / rated } else { 1.0 })
}

/// Line current of a three-phase motor at a shaft power: I = P / (√3 V η PF).
///
/// # Units
/// `shaft` power, `voltage` line to line at the motor, at the speed at which it gives that power; efficiency and power
/// factor shares; the result a current.
/// # Range
/// Shaft power 0 to 10 MW; voltage 20 to 1,000 V; efficiency and power factor 0.1 to 1. Both hold at the load asked:
/// taken from the nameplate they serve from three quarters of the rated torque up, and below that the motor draws more
/// than this.
/// # Errors
/// [`OutsideRange`] names `shaft` (W), `voltage` (V), `efficiency` or `power_factor`.
/// # Source
/// Power balance of three balanced phases.
pub fn running_current(
    shaft: Power,
    voltage: ElectricPotential,
    efficiency: f64,
    power_factor: f64,
) -> Result<ElectricCurrent, OutsideRange> {
    let shaft = OutsideRange::check("shaft", in_watts(shaft), 0.0, 1e7)?;
    let volts = OutsideRange::check("voltage", in_volts(voltage), 20.0, 1000.0)?;
    let efficiency = OutsideRange::check("efficiency", efficiency, 0.1, 1.0)?;
    let power_factor = OutsideRange::check("power_factor", power_factor, 0.1, 1.0)?;
    Ok(amperes(shaft / (3f64.sqrt() * volts * efficiency * power_factor)))
}

/// Running current as a share of the nameplate's service-factor current, the largest that a motor may draw for good.
///
/// # Units
/// Currents at the same voltage; the result a share.
/// # Range
/// Running 0 to 100,000 A; service-factor current 0.1 to 100,000 A.
/// # Errors
/// [`OutsideRange`] names `running` or `service_factor_current` (A).
/// # Source
/// Common practice, no single source.
pub fn share_of_service_factor_current(
    running: ElectricCurrent,
    service_factor_current: ElectricCurrent,
) -> Result<f64, OutsideRange> {
    let running = OutsideRange::check("running", in_amperes(running), 0.0, 1e5)?;
    Ok(running / OutsideRange::check("service_factor_current", in_amperes(service_factor_current), 0.1, 1e5)?)
}

/// Efficiency and power factor assumed for a three-phase motor until its nameplate is known.
///
/// # Units
/// `power` rated shaft power; both results dimensionless: (efficiency, power factor).
/// # Range
/// Three-phase induction motors at three quarters of their load and above.
/// # Source
/// Common practice, no single source.
#[must_use]
pub fn assumed_efficiency_and_power_factor(kind: MotorKind, power: Power) -> (f64, f64) {
    match (kind, rated_horsepower(power)) {
        (MotorKind::Surface, _) => (0.92, 0.86),
        (MotorKind::Submersible, hp) if hp <= 10.0 => (0.78, 0.80),
        (MotorKind::Submersible, hp) if hp <= 30.0 => (0.82, 0.84),
        (MotorKind::Submersible, _) => (0.86, 0.85),
    }
}

/// The rated power in horsepower; one within 10⁻⁹ of a row of the table is that row, whatever unit it was entered in.
fn rated_horsepower(power: Power) -> f64 {
    let hp = in_horsepower(power);
    TABLE.iter().map(|row| row.hp).find(|row| (hp / row - 1.0).abs() < 1e-9).unwrap_or(hp)
}
