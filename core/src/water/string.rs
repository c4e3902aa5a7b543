//! What hangs in the well.

use crate::error::OutsideRange;
use crate::quantity::{Length, Mass, MassDensity, MassPerLength};
use core::f64::consts::PI;

/// The string: what hangs, per length and in all.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hung {
    /// Length of the drop pipe.
    pub length: Length,
    /// Mass of the drop pipe per length.
    pub pipe: MassPerLength,
    /// True inside diameter of the drop pipe.
    pub inside_diameter: Length,
    /// Mass of the cable per length.
    pub cable: MassPerLength,
    /// Mass of pump and motor.
    pub pump: Mass,
}

/// The weight on the hook and its parts, told as mass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HangingLoad {
    /// Drop pipe.
    pub pipe: Mass,
    /// Water that fills it.
    pub water: Mass,
    /// Cable.
    pub cable: Mass,
    /// Pump and motor.
    pub pump: Mass,
}

impl HangingLoad {
    /// The sum of all parts.
    ///
    /// # Units
    /// Mass.
    /// # Range
    /// Any parts.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn total(&self) -> Mass {
        self.pipe + self.water + self.cable + self.pump
    }
}

/// What hangs on the hook with the pipe full: pipe + water + cable + pump. Water outside carries a part of it as long as
/// there is some; that is left out, on the safe side.
///
/// # Units
/// Masses, lengths, density of the water; the results masses.
/// # Range
/// Length 0 to 3 km; inside diameter 0 to 2 m; pipe 0 to 5,000 kg/m; cable 0 to 100 kg/m; pump 0 to 100 t; density 900 to
/// 1,300 kg/m³. Spare cable and couplings belong in the figures given.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Sum.
pub fn hanging_load(hung: Hung, density: MassDensity) -> Result<HangingLoad, OutsideRange> {
    OutsideRange::check("length", hung.length.value, 0.0, 3000.0)?;
    OutsideRange::check("pipe", hung.pipe.value, 0.0, 5000.0)?;
    OutsideRange::check("inside_diameter", hung.inside_diameter.value, 0.0, 2.0)?;
    OutsideRange::check("cable", hung.cable.value, 0.0, 100.0)?;
    OutsideRange::check("pump", hung.pump.value, 0.0, 1e5)?;
    OutsideRange::check("density", density.value, 900.0, 1300.0)?;
    Ok(HangingLoad {
        pipe: hung.pipe * hung.length,
        water: 0.25 * PI * hung.inside_diameter * hung.inside_diameter * hung.length * density,
        cable: hung.cable * hung.length,
        pump: hung.pump,
    })
}
