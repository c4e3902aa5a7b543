//! How much current a conductor may carry, and how much a motor circuit must be able to carry.

use crate::quantity::{Celsius, ElectricCurrent, amperes, in_amperes};
use crate::standards::ambient::{ambient_factor, bundle_factor};
use crate::standards::ampacity::{Rating, table_310_16};
use crate::standards::conductor::{Metal, Size};

/// Where a conductor lies and how it ends: all that its ampacity depends on beside its size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Setting {
    /// Metal of the conductor.
    pub metal: Metal,
    /// Temperature rating of its insulation.
    pub insulation: Rating,
    /// Temperature rating of the terminals at both ends.
    pub terminals: Rating,
    /// Warmest surroundings along the lead.
    pub ambient: Celsius,
}

/// Ampacity of one conductor, or `None` where the tables allow it none.
///
/// I = min(I₃₁₀.₁₆(insulation) · F_ambient · F_bundle, I₃₁₀.₁₆(terminals)); the terminal column is not corrected.
///
/// # Units
/// `conductors` current-carrying conductors that lie together; the result a current.
/// # Range
/// Ambient to 70 °C; hotter gives `None`.
/// # Source
/// [nec-2023-310.16], [nec-2023-310.15b], [nec-2023-310.15c], [nec-2023-110.14c].
#[must_use]
pub fn ampacity(size: Size, setting: Setting, conductors: usize) -> Option<ElectricCurrent> {
    let insulation = table_310_16(size, setting.metal, setting.insulation)?
        * ambient_factor(setting.ambient, setting.insulation)?
        * bundle_factor(conductors);
    let terminals = table_310_16(size, setting.metal, setting.terminals)?;
    Some(amperes(insulation.min(terminals)))
}

/// Least ampacity of the conductors of one continuous-duty motor: 125 % of its current.
///
/// # Units
/// A current in, a current out.
/// # Range
/// Single motor, continuous duty, fed straight or by a drive's output.
/// # Source
/// [nec-2023-430.22]; [nec-2023-430.122] (B) for the conductors between a drive and its motor.
#[must_use]
pub fn required_ampacity(motor: ElectricCurrent) -> ElectricCurrent {
    1.25 * motor
}

/// The rating that terminals count with: 75 °C where they are marked so, or above 100 A; else 60 °C.
///
/// # Units
/// `required` is the ampacity that the circuit needs.
/// # Range
/// Equipment without a marking for more than 75 °C.
/// # Source
/// [nec-2023-110.14c] (C)(1).
#[must_use]
pub fn terminal_rating(required: ElectricCurrent, marked_75: bool) -> Rating {
    if marked_75 || in_amperes(required) > 100.0 { Rating::C75 } else { Rating::C60 }
}
