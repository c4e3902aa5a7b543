//! A transformer between a low-voltage drive and a motor of the higher class.

use super::family::Feed;
use super::transformer::{apparent_power, next_size};
use crate::error::OutsideRange;
use crate::quantity::{
    ElectricCurrent, ElectricPotential, Frequency, Power, amperes, hertz, in_amperes, in_hertz, in_volts, volts,
};

/// Turns ratio: secondary over primary volts without load.
///
/// # Units
/// Voltages; the result dimensionless.
/// # Range
/// Each 50 to 1,000 V.
/// # Errors
/// [`OutsideRange`] names `primary` or `secondary` (V).
/// # Source
/// Ideal transformer.
pub fn turns_ratio(primary: ElectricPotential, secondary: ElectricPotential) -> Result<f64, OutsideRange> {
    let primary = OutsideRange::check("primary", in_volts(primary), 50.0, 1000.0)?;
    Ok(OutsideRange::check("secondary", in_volts(secondary), 50.0, 1000.0)? / primary)
}

/// Current that the drive must give: ratio · motor current; the core's own current left aside.
///
/// # Units
/// Currents.
/// # Range
/// Motor 0 to 10,000 A; ratio 0.1 to 10.
/// # Errors
/// [`OutsideRange`] names `motor` (A) or `ratio`.
/// # Source
/// Ideal transformer.
pub fn drive_current(motor: ElectricCurrent, ratio: f64) -> Result<ElectricCurrent, OutsideRange> {
    let amps = OutsideRange::check("motor", in_amperes(motor), 0.0, 1e4)?;
    Ok(amperes(amps * OutsideRange::check("ratio", ratio, 0.1, 10.0)?))
}

/// Volts behind filter and transformer: ratio · V_drive · (1 − filter − impedance).
///
/// # Units
/// `filter` and `impedance` shares of the volts.
/// # Range
/// Drive 1 to 1,000 V; ratio 0.1 to 10; shares 0 to 0.2.
/// # Errors
/// [`OutsideRange`] names `drive` (V), `ratio`, `filter` or `impedance`.
/// # Source
/// Common practice: 5 % for the filter and 4 % for the transformer, added.
pub fn secondary_volts(
    drive: ElectricPotential,
    ratio: f64,
    filter: f64,
    impedance: f64,
) -> Result<ElectricPotential, OutsideRange> {
    let v = OutsideRange::check("drive", in_volts(drive), 1.0, 1000.0)?;
    let ratio = OutsideRange::check("ratio", ratio, 0.1, 10.0)?;
    let filter = OutsideRange::check("filter", filter, 0.0, 0.2)?;
    Ok(volts(ratio * v * (1.0 - filter - OutsideRange::check("impedance", impedance, 0.0, 0.2)?)))
}

/// The transformer for a motor: smallest usual three-phase rating at or above √3 V I; `None` beyond 500 kVA.
///
/// # Units
/// `motor` line voltage of the motor's system, `current` the largest for good.
/// # Range
/// Voltage 1 to 1,000 V; current 0 to 100,000 A.
/// # Errors
/// [`OutsideRange`] names `supply` (V) or `current` (A).
/// # Source
/// [ieee-c57.12] for the ratings.
pub fn rating(motor: ElectricPotential, current: ElectricCurrent) -> Result<Option<Power>, OutsideRange> {
    next_size(apparent_power(motor, current, Feed::ThreePhase)?, Feed::ThreePhase)
}

/// Flux in the core over its rated flux: (V/V_rated)/(f/f_rated).
///
/// # Units
/// Voltages of the same winding; frequencies.
/// # Range
/// Volts 0 to 1,000; rated 50 to 1,000 V; frequencies 0.5 to 400 Hz.
/// # Errors
/// [`OutsideRange`] names `given`, `rated` (V), `frequency` or `rated_frequency` (Hz).
/// # Source
/// Faraday's law.
pub fn flux(
    given: ElectricPotential,
    rated: ElectricPotential,
    frequency: Frequency,
    rated_frequency: Frequency,
) -> Result<f64, OutsideRange> {
    let given = OutsideRange::check("given", in_volts(given), 0.0, 1000.0)?;
    let rated = OutsideRange::check("rated", in_volts(rated), 50.0, 1000.0)?;
    let f = OutsideRange::check("frequency", in_hertz(frequency), 0.5, 400.0)?;
    Ok(given / rated * OutsideRange::check("rated_frequency", in_hertz(rated_frequency), 0.5, 400.0)? / f)
}

/// Flux over rated flux that a usual core bears.
pub const MOST_FLUX: f64 = 1.10;

/// Lowest frequency at which the core is not saturated, where the drive adds a boost to volts in proportion to frequency.
///
/// With V/V_rated = b + (1 − b) f/f_rated the flux is (1 − b) + b f_rated/f, at its limit m where
/// f = f_rated b/(m − 1 + b). Without boost no frequency is too low for the core.
///
/// # Units
/// `boost` volts at standstill over rated volts; `most` flux over rated flux; the result a frequency.
/// # Range
/// Boost 0 to 0.2; most 1 to 2; rated frequency 10 to 120 Hz; boost and most − 1 not both zero.
/// # Errors
/// [`OutsideRange`] names `boost`, `most` or `rated_frequency` (Hz).
/// # Source
/// Algebra on [`flux`]; the limit of 1.1 is common practice.
pub fn lowest_frequency(boost: f64, most: f64, rated_frequency: Frequency) -> Result<Frequency, OutsideRange> {
    let boost = OutsideRange::check("boost", boost, 0.0, 0.2)?;
    let least = if boost == 0.0 { 1.0 + 1e-9 } else { 1.0 };
    let most = OutsideRange::check("most", most, least, 2.0)?;
    let rated = OutsideRange::check("rated_frequency", in_hertz(rated_frequency), 10.0, 120.0)?;
    Ok(hertz(rated * boost / (most - 1.0 + boost)))
}
