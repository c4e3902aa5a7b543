//! Impedance between source and load, and the volts that it takes.

use super::family::Feed;
use crate::error::OutsideRange;
use crate::quantity::{
    ElectricCurrent, ElectricPotential, ElectricalResistance, Length, OhmsPerLength, amperes, in_amperes, in_ohms,
    in_volts, ohms, volts,
};
use core::ops::Add;

/// Line-to-line volts taken for each ampere of line current: there and back on two lines, √3 of one line on three.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Impedance {
    /// In phase with the current.
    pub resistance: ElectricalResistance,
    /// Ahead of the current by a quarter turn.
    pub reactance: ElectricalResistance,
}

impl Add for Impedance {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self { resistance: self.resistance + other.resistance, reactance: self.reactance + other.reactance }
    }
}

impl Impedance {
    /// Size: √(R² + X²).
    ///
    /// # Units
    /// A resistance.
    /// # Range
    /// Any.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn size(self) -> ElectricalResistance {
        ohms(in_ohms(self.resistance).hypot(in_ohms(self.reactance)))
    }
}

/// Impedance of a feeder: R = k r L, X = k x L, k = 2 on two lines and √3 on three.
///
/// # Units
/// `resistance`, `reactance` ohms per length of one conductor; `length` one way.
/// # Range
/// Per length 0 to 1,000 Ω/m; length 0 to 10⁶ m.
/// # Errors
/// [`OutsideRange`] names `resistance`, `reactance` (Ω/m) or `length` (m).
/// # Source
/// Circuit geometry.
pub fn feeder(
    resistance: OhmsPerLength,
    reactance: OhmsPerLength,
    length: Length,
    feed: Feed,
) -> Result<Impedance, OutsideRange> {
    let r = OutsideRange::check("resistance", resistance.value, 0.0, 1e3)?;
    let x = OutsideRange::check("reactance", reactance.value, 0.0, 1e3)?;
    let length = OutsideRange::check("length", length.value, 0.0, 1e6)?;
    let k = match feed {
        Feed::SinglePhase => 2.0,
        Feed::ThreePhase => 3f64.sqrt(),
    };
    Ok(Impedance { resistance: ohms(k * r * length), reactance: ohms(k * x * length) })
}

/// How far the volts sag while the load draws its current.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sag {
    /// Sag at the pole, behind the transformer.
    pub at_pole: ElectricPotential,
    /// Sag at the equipment, feeder included.
    pub at_equipment: ElectricPotential,
    /// What is left at the equipment.
    pub left: ElectricPotential,
}

/// Sag behind transformer and feeder, exact for a constant current at a known power factor at the equipment.
///
/// V_left = √(V² − b²) − a with a = I (R cos φ + X sin φ) and b = I (X cos φ − R sin φ) of both together; the pole stands
/// at the vector sum of V_left and the feeder's own a and b.
///
/// # Units
/// `supply` line to line without load; `current` rms, harmonics in; `power_factor` true, lagging. `None` where the load
/// can't be fed: V ≤ |b|, or nothing is left.
/// # Range
/// Supply 1 to 100,000 V; current 0 to 100,000 A; power factor 0.01 to 1; impedances 0 to 10⁶ Ω. The primary is taken as
/// an infinite bus; distortion is taken into the angle, as if the rms current were all fundamental.
/// # Errors
/// [`OutsideRange`] names `supply` (V), `current` (A), `power_factor`, `source` or `feeder` (Ω).
/// # Source
/// Phasor algebra; [ieee-141-1993] section 3.11 gives the same construction.
pub fn sag(
    supply: ElectricPotential,
    current: ElectricCurrent,
    power_factor: f64,
    source: Impedance,
    feeder: Impedance,
) -> Result<Option<Sag>, OutsideRange> {
    let v = OutsideRange::check("supply", in_volts(supply), 1.0, 1e5)?;
    let amps = OutsideRange::check("current", in_amperes(current), 0.0, 1e5)?;
    let cos = OutsideRange::check("power_factor", power_factor, 0.01, 1.0)?;
    checked("source", source)?;
    checked("feeder", feeder)?;
    let sin = (1.0 - cos * cos).sqrt();
    let parts = |z: Impedance| {
        let (r, x) = (in_ohms(z.resistance), in_ohms(z.reactance));
        (amps * (r * cos + x * sin), amps * (x * cos - r * sin))
    };
    let (along, across) = parts(source + feeder);
    if v <= across.abs() {
        return Ok(None);
    }
    let left = (v * v - across * across).sqrt() - along;
    if left <= 0.0 {
        return Ok(None);
    }
    let (along, across) = parts(feeder);
    let pole = (left + along).hypot(across);
    Ok(Some(Sag { at_pole: volts(v - pole), at_equipment: volts(v - left), left: volts(left) }))
}

/// Fault current that the source drives through an impedance: I = V/|Z|, a bolted fault from line to line on two lines,
/// of all three on three.
///
/// # Units
/// `supply` line to line; the result a current, symmetrical rms.
/// # Range
/// Supply 1 to 100,000 V; impedance 10⁻⁶ to 10⁶ Ω. The primary is an infinite bus, so the answer is on the safe side.
/// # Errors
/// [`OutsideRange`] names `supply` (V) or `impedance` (Ω).
/// # Source
/// Ohm's law.
pub fn fault_current(supply: ElectricPotential, impedance: Impedance) -> Result<ElectricCurrent, OutsideRange> {
    let v = OutsideRange::check("supply", in_volts(supply), 1.0, 1e5)?;
    checked("impedance", impedance)?;
    Ok(amperes(v / OutsideRange::check("impedance", in_ohms(impedance.size()), 1e-6, 1.5e6)?))
}

/// An impedance whose parts are neither below zero nor beyond every circuit.
pub(super) fn checked(argument: &'static str, z: Impedance) -> Result<(), OutsideRange> {
    OutsideRange::check(argument, in_ohms(z.resistance), 0.0, 1e6)?;
    OutsideRange::check(argument, in_ohms(z.reactance), 0.0, 1e6)?;
    Ok(())
}
