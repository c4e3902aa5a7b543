//! Voltage drop along a lead, exact, and the longest lead that keeps within a drop.

use crate::error::OutsideRange;
use crate::quantity::{ElectricCurrent, ElectricPotential, Length, OhmsPerLength, Power, volts};
use uom::si::length::meter;

/// Number of phases of a circuit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Phases {
    /// Two conductors out and back.
    Single,
    /// Three conductors, balanced.
    Three,
}

impl Phases {
    /// Line-to-line drop per conductor drop: 2 for single phase, √3 for three.
    ///
    /// # Units
    /// Dimensionless.
    /// # Range
    /// Three phases balanced.
    /// # Source
    /// Circuit geometry: two conductors in one loop; three line voltages 120° apart.
    #[must_use]
    pub fn factor(self) -> f64 {
        match self {
            Self::Single => 2.0,
            Self::Three => 3f64.sqrt(),
        }
    }

    /// Conductors that carry the current: 2 for single phase, 3 for three.
    ///
    /// # Units
    /// A count.
    /// # Range
    /// No neutral: a drive's supply and a motor's lead have none.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn conductors(self) -> u8 {
        match self {
            Self::Single => 2,
            Self::Three => 3,
        }
    }
}

/// A load at the far end of a lead.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Load {
    /// Line voltage at the sending end.
    pub sending: ElectricPotential,
    /// Line current, the same at any length.
    pub current: ElectricCurrent,
    /// Power factor of the load, lagging.
    pub power_factor: f64,
    /// Phases.
    pub phases: Phases,
}

/// The lead's drop per meter, in phase with the load's voltage and square to it, V/m.
struct Slope {
    along: f64,
    across: f64,
}

fn slope(load: Load, resistance: OhmsPerLength, reactance: OhmsPerLength) -> Result<Slope, OutsideRange> {
    let cos = OutsideRange::check("power_factor", load.power_factor, 0.01, 1.0)?;
    let sin = (1.0 - cos * cos).sqrt();
    let amps = OutsideRange::check("current", load.current.value, 0.0, 1e5)?;
    OutsideRange::check("sending", load.sending.value, 1.0, 1e5)?;
    let r = OutsideRange::check("resistance", resistance.value, 0.0, 1e3)?;
    let x = OutsideRange::check("reactance", reactance.value, 0.0, 1e3)?;
    let k = load.phases.factor() * amps;
    Ok(Slope { along: k * (r * cos + x * sin), across: k * (x * cos - r * sin) })
}

/// The parts of a lead's drop against the voltage of its load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DropParts {
    /// In phase with the load's voltage.
    pub along: ElectricPotential,
    /// Square to it; below zero where it lags.
    pub across: ElectricPotential,
}

/// The parts of the drop along a lead: a = k I L (R cos φ + X sin φ) in phase with the load's voltage, and
/// b = k I L (X cos φ − R sin φ) square to it.
///
/// # Units
/// As [`voltage_drop`]; the results volts, line to line.
/// # Range
/// As [`voltage_drop`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Phasor algebra; [ieee-141-1993] section 3.11.
pub fn drop_parts(
    load: Load,
    resistance: OhmsPerLength,
    reactance: OhmsPerLength,
    length: Length,
) -> Result<DropParts, OutsideRange> {
    let slope = slope(load, resistance, reactance)?;
    let length = OutsideRange::check("length", length.value, 0.0, 1e6)?;
    Ok(DropParts { along: volts(slope.along * length), across: volts(slope.across * length) })
}

/// Voltage drop along a lead, exact for a constant current at a known power factor at the load.
///
/// With a = k I L (R cos φ + X sin φ) and b = k I L (X cos φ − R sin φ), the sending voltage V is the vector sum of the
/// receiving voltage, a and jb, so drop = V + a − √(V² − b²).
///
/// # Units
/// `resistance`, `reactance` ohms per length of one conductor; `length` one way; the result volts, line to line.
/// `None` where the load can't be fed at all: V ≤ |b|, or nothing is left at the far end.
/// # Range
/// Power factor 0.01 to 1, lagging; V 1 to 100,000 V; I to 100,000 A; R, X to 1,000 Ω/m; length 0 to 10⁶ m.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Phasor algebra; [ieee-141-1993] section 3.11 gives the same construction.
/// # Example
/// ```
/// # use wellwright_core::{cable::drop::*, quantity::*};
/// let load = Load { sending: volts(240.0), current: amperes(28.0), power_factor: 0.84, phases: Phases::Three };
/// let drop = voltage_drop(load, ohms_per_kilofoot(0.491), ohms_per_kilofoot(0.051), feet(500.0))?;
/// assert!(drop.is_some_and(|drop| (in_volts(drop) - 10.733).abs() < 0.001));
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn voltage_drop(
    load: Load,
    resistance: OhmsPerLength,
    reactance: OhmsPerLength,
    length: Length,
) -> Result<Option<ElectricPotential>, OutsideRange> {
    let parts = drop_parts(load, resistance, reactance, length)?;
    let (v, a, b) = (load.sending.value, parts.along.value, parts.across.value);
    if v <= b.abs() {
        return Ok(None);
    }
    let received = (v * v - b * b).sqrt() - a;
    Ok((received > 0.0).then(|| volts(v - received)))
}

/// The usual approximation of the drop, shown beside the exact one: k I L (R cos φ + X sin φ).
///
/// # Units
/// As [`voltage_drop`].
/// # Range
/// As [`voltage_drop`]; never above the exact drop, and close to it for small drops.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [ieee-141-1993] section 3.11.
pub fn approximate_drop(
    load: Load,
    resistance: OhmsPerLength,
    reactance: OhmsPerLength,
    length: Length,
) -> Result<ElectricPotential, OutsideRange> {
    drop_parts(load, resistance, reactance, length).map(|parts| parts.along)
}

/// The longest lead whose exact drop stays within a share of the sending voltage; infinite for a lead without drop.
///
/// Put drop = d V into [`voltage_drop`], with a = α L, b = β L: the receiving voltage (1 − d) V leaves
/// (α² + β²) L² + 2 α (1 − d) V L − (1 − (1 − d)²) V² = 0, whose positive root is L.
///
/// # Units
/// `allowed` the drop as a share of the sending voltage; the result a length, one way.
/// # Range
/// 0 < allowed < 1; the rest as [`voltage_drop`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Algebra on [`voltage_drop`].
pub fn longest_lead(
    load: Load,
    resistance: OhmsPerLength,
    reactance: OhmsPerLength,
    allowed: f64,
) -> Result<Length, OutsideRange> {
    let slope = slope(load, resistance, reactance)?;
    let d = OutsideRange::check("allowed", allowed, 1e-9, 1.0 - 1e-9)?;
    let v = load.sending.value;
    let square = slope.along * slope.along + slope.across * slope.across;
    if square <= 0.0 {
        return Ok(Length::new::<meter>(f64::INFINITY));
    }
    let half = slope.along * (1.0 - d) * v;
    let constant = d * (2.0 - d) * v * v;
    // The form with the sum in the denominator loses no digits where the drop is small.
    Ok(Length::new::<meter>(constant / (half + (half * half + square * constant).sqrt())))
}

/// Heat that a lead gives off: n I² R L, n = 3 conductors for three phases, 2 for one.
///
/// # Units
/// `resistance` ohms per length of one conductor, `length` one way; the result a power.
/// # Range
/// As [`voltage_drop`].
/// # Source
/// Joule's law.
#[must_use]
pub fn lead_loss(load: Load, resistance: OhmsPerLength, length: Length) -> Power {
    let conductors = f64::from(load.phases.conductors());
    load.current * load.current * (resistance * length) * conductors
}
