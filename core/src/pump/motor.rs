//! What a motor draws: table values, nameplate, the larger of both.

use crate::error::OutsideRange;
use crate::quantity::{ElectricCurrent, Power, amperes, in_horsepower};
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
