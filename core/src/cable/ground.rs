//! The equipment grounding conductor that runs with the lead.

use crate::error::OutsideRange;
use crate::quantity::{ElectricCurrent, in_amperes};
use crate::standards::conductor::{Metal, Size};
use crate::standards::ground::table_250_122;

/// Least equipment ground for an overcurrent device.
///
/// # Units
/// `device` the rating of the device ahead of the circuit.
/// # Range
/// 0 to 2,000 A.
/// # Errors
/// [`OutsideRange`] names `device` (A).
/// # Source
/// [nec-2023-250.122].
pub fn equipment_ground(device: ElectricCurrent, metal: Metal) -> Result<Size, OutsideRange> {
    let device = OutsideRange::check("device", in_amperes(device), 0.0, 2000.0)?;
    table_250_122(device, metal).ok_or(OutsideRange { argument: "device", given: device, min: 0.0, max: 2000.0 })
}

/// The equipment ground grown in proportion to the phase conductors, and no larger than they are.
///
/// Area ≥ A_ground · growth, next listed size; equality passes; where that is larger than the phase conductor, the
/// phase conductor's size serves.
///
/// # Units
/// `growth` metal area of the phases installed over that of the smallest that meet ampacity, by table 8, dimensionless;
/// below 1 counts as 1. `phase` the size of each phase conductor installed.
/// # Range
/// 14 AWG to 500 kcmil, ground and phases of one metal.
/// # Source
/// [nec-2023-250.122] (A) and (B).
/// # Example
/// ```
/// # use wellwright_core::{cable::ground::grown_ground, standards::conductor::Size};
/// // 10 AWG ground, phases raised from 6 to 3 AWG: 10,380 · 52,620/26,240 = 20,815 cmil, so 6 AWG.
/// assert_eq!(grown_ground(Size::Awg10, 52_620.0 / 26_240.0, Size::Awg3), Size::Awg6);
/// ```
#[must_use]
pub fn grown_ground(ground: Size, growth: f64, phase: Size) -> Size {
    Size::with_area_at_least(ground.row().cmil * growth.max(1.0)).map_or(phase, |size| size.min(phase))
}
