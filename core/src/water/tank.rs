//! A pressure tank: air behind a bladder, that gives water while the pump rests.

use crate::error::OutsideRange;
use crate::quantity::{Frequency, Pressure, Time, Volume, VolumeRate, psi};

/// Pressures of a tank, by gauge, and the air around it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Band {
    /// Pressure of the air in the drained tank.
    pub precharge: Pressure,
    /// Pressure at which the pump starts.
    pub cut_in: Pressure,
    /// Pressure at which it stops.
    pub cut_out: Pressure,
    /// Barometric pressure of the place, absolute.
    pub barometric: Pressure,
}

/// Drawdown as a share of the tank: p_0 (1/p_1 − 1/p_2), all absolute.
fn share(band: Band) -> Result<f64, OutsideRange> {
    let Band { precharge, cut_in, cut_out, barometric } = band;
    let air = OutsideRange::check("barometric", barometric.value, 2e4, 1.2e5)?;
    let high = OutsideRange::check("cut_out", cut_out.value, 0.0, 1e7)?;
    let low = OutsideRange::check("cut_in", cut_in.value, 0.0, high)?;
    // With more air than that the tank is empty before the pump starts.
    let charge = OutsideRange::check("precharge", precharge.value, 0.0, low)?;
    Ok((charge + air) * (1.0 / (low + air) - 1.0 / (high + air)))
}

fn volume_checked(name: &'static str, volume: Volume) -> Result<Volume, OutsideRange> {
    OutsideRange::check(name, volume.value, 0.0, 1e3).map(|_| volume)
}

/// Water that a tank gives between cut-out and cut-in (Boyle): V p_0 (1/p_1 − 1/p_2), with absolute pressures.
///
/// # Units
/// Volume of the tank; gauge pressures and the barometer; the result a volume.
/// # Range
/// Tank to 1,000 m³; 0 ≤ precharge ≤ cut-in ≤ cut-out ≤ 10 MPa; barometer 0.02 to 0.12 MPa. The air keeps its
/// temperature; quick filling or emptying gives less. A bladder that bottoms out gives less too.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [boyle-1662].
/// # Example
/// ```
/// # use wellwright_core::{quantity::*, water::{properties::barometric_pressure, tank::*}};
/// let barometric = barometric_pressure(meters(1400.0))?;
/// let band = Band { precharge: psi(42.0), cut_in: psi(55.0), cut_out: psi(60.0), barometric };
/// assert!((in_gallons(tank_drawdown(gallons(44.0), band)?) - 2.452).abs() < 0.0005);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn tank_drawdown(volume: Volume, band: Band) -> Result<Volume, OutsideRange> {
    Ok(volume_checked("volume", volume)? * share(band)?)
}

/// Tank that gives a volume between cut-out and cut-in: the drawdown solved for the tank.
///
/// # Units
/// Volume of water asked for; the result the volume of the tank.
/// # Range
/// As [`tank_drawdown`]; cut-out above cut-in by a ten-thousandth of a bar or more.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [`tank_drawdown`].
pub fn tank_for(drawdown: Volume, band: Band) -> Result<Volume, OutsideRange> {
    let share = share(band)?;
    OutsideRange::check("cut_out", band.cut_out.value, band.cut_in.value + 10.0, 1e7)?;
    Ok(volume_checked("drawdown", drawdown)? / share)
}

/// Precharge of an on-off system: 2 psi under cut-in.
///
/// # Units
/// Gauge pressures.
/// # Range
/// Cut-in 2 psi to 10 MPa.
/// # Errors
/// [`OutsideRange`] names `cut_in` (Pa).
/// # Source
/// [practice]; seen in a water-well association's sheet.
pub fn on_off_precharge(cut_in: Pressure) -> Result<Pressure, OutsideRange> {
    OutsideRange::check("cut_in", cut_in.value, psi(2.0).value, 1e7)?;
    Ok(cut_in - psi(2.0))
}

/// Precharge of a constant-pressure system: a share of the setpoint, 0.70 unless the job says otherwise.
///
/// # Units
/// Gauge pressures; share dimensionless.
/// # Range
/// Setpoint 0 to 10 MPa; share 0 to 1.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [practice].
pub fn constant_pressure_precharge(setpoint: Pressure, share: f64) -> Result<Pressure, OutsideRange> {
    OutsideRange::check("setpoint", setpoint.value, 0.0, 1e7)?;
    Ok(setpoint * OutsideRange::check("share", share, 0.0, 1.0)?)
}

/// Time that the pump runs to fill the drawdown while some water is used: t = V/(Q − q). Shortest with nothing used.
///
/// # Units
/// Drawdown; flow of the pump; flow that is used meanwhile; the result a time.
/// # Range
/// Drawdown to 1,000 m³; pump 10⁻⁶ to 2 m³/s; use 0 to 0.999 999 of the pump's flow: with all of it used the pump does
/// not stop.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Balance of volume.
pub fn run_time(drawdown: Volume, pump: VolumeRate, used: VolumeRate) -> Result<Time, OutsideRange> {
    volume_checked("drawdown", drawdown)?;
    let most = OutsideRange::check("pump", pump.value, 1e-6, 2.0)?;
    OutsideRange::check("used", used.value, 0.0, 0.999_999 * most)?;
    Ok(drawdown / (pump - used))
}

/// Most starts in a time: n = Q/(4 V), where half of the pump's flow is used. A cycle lasts V/(Q − q) + V/q, which is
/// shortest there.
///
/// # Units
/// Drawdown; flow of the pump; the result a frequency.
/// # Range
/// Drawdown a milliliter to 1,000 m³; pump 0 to 2 m³/s.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Balance of volume.
pub fn most_starts(drawdown: Volume, pump: VolumeRate) -> Result<Frequency, OutsideRange> {
    OutsideRange::check("drawdown", drawdown.value, 1e-6, 1e3)?;
    OutsideRange::check("pump", pump.value, 0.0, 2.0)?;
    Ok(pump / (4.0 * drawdown))
}
