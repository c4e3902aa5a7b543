//! Inductive reactance of one conductor of the lead, by the way the cable is built.

use crate::error::OutsideRange;
use crate::quantity::{ElectricalResistance, Length, OhmsPerLength, ohms_per_kilofoot};
use crate::standards::conductor::Size;
use crate::standards::reactance::table_9;
use core::f64::consts::TAU;
use serde::{Deserialize, Serialize};
use uom::si::electrical_resistance::ohm;
use uom::si::length::meter;

/// How the lead is built; it sets how far apart the conductors lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Build {
    /// Single conductors in plastic conduit: table 9. The safe side of all but steel.
    PlasticConduit,
    /// Single conductors in steel conduit: table 9.
    SteelConduit,
    /// Flat jacketed submersible cable, conductors side by side.
    FlatJacketed,
    /// Twisted single conductors, touching in a triangle.
    Twisted,
}

/// Frequency that the reactance is taken at, Hz: full speed.
pub const FREQUENCY: f64 = 60.0;

/// Reactance per length of one conductor at 60 Hz.
///
/// Conduit: table 9. Flat and twisted: [`from_spacing`] with the geometry of [`geometric_mean_distance`] and
/// [`geometric_mean_radius`]. A flat cable's outer and middle conductors differ; this is their mean.
///
/// # Units
/// The result is ohms per length.
/// # Range
/// 14 AWG to 500 kcmil, 60 Hz.
/// # Source
/// [nec-2023-ch9-t9]; [grainger-stevenson-1994] chapter 4.
#[must_use]
pub fn reactance(size: Size, build: Build) -> OhmsPerLength {
    match build {
        Build::PlasticConduit => ohms_per_kilofoot(table_9(size).plastic),
        Build::SteelConduit => ohms_per_kilofoot(table_9(size).steel),
        Build::FlatJacketed | Build::Twisted => {
            let ratio = (geometric_mean_distance(size, build) / geometric_mean_radius(size)).value;
            per_meter(TAU * FREQUENCY * 2e-7 * ratio.ln())
        }
    }
}

/// Reactance per length of one conductor of a balanced three-phase group.
///
/// X = ω μ₀/2π · ln(GMD/GMR) = 2πf · 2·10⁻⁷ H/m · ln(GMD/GMR)
///
/// # Units
/// `gmd` and `gmr` lengths, `frequency` Hz; the result ohms per length.
/// # Range
/// GMR 10⁻⁶ to 10³ m; GMD at least GMR and to 10⁶ times it; 0 to 1,000 Hz.
/// # Errors
/// [`OutsideRange`] names `gmr` (m), `gmd/gmr` or `frequency` (Hz).
/// # Source
/// [grainger-stevenson-1994] chapter 4.
pub fn from_spacing(gmd: Length, gmr: Length, frequency: f64) -> Result<OhmsPerLength, OutsideRange> {
    OutsideRange::check("gmr", gmr.value, 1e-6, 1e3)?;
    let ratio = OutsideRange::check("gmd/gmr", (gmd / gmr).value, 1.0, 1e6)?;
    let frequency = OutsideRange::check("frequency", frequency, 0.0, 1000.0)?;
    Ok(per_meter(TAU * frequency * 2e-7 * ratio.ln()))
}

/// Geometric mean distance between the conductors of a lead.
///
/// Twisted: the insulated diameter. Flat: ∛2 (1.26) times it, the mean of pitch, pitch and twice the pitch.
///
/// # Units
/// The result is a length.
/// # Range
/// 14 AWG to 500 kcmil with THW-thick insulation; conduit counts as twisted.
/// # Source
/// Geometry; thickness [nec-2023-310.4].
#[must_use]
pub fn geometric_mean_distance(size: Size, build: Build) -> Length {
    let pitch = size.row().insulated_diameter();
    match build {
        Build::FlatJacketed => pitch * 2f64.cbrt(),
        Build::Twisted | Build::PlasticConduit | Build::SteelConduit => pitch,
    }
}

/// Geometric mean radius of a concentric strand: 0.726 r (7 wires), 0.758 r (19), 0.768 r (37).
///
/// # Units
/// The result is a length.
/// # Range
/// Strands of 7, 19 and 37 equal wires.
/// # Source
/// [grainger-stevenson-1994]; the factors follow from the geometry of the strand.
#[must_use]
pub fn geometric_mean_radius(size: Size) -> Length {
    let row = size.row();
    let factor = match row.wires {
        7 => 0.726,
        19 => 0.758,
        _ => 0.768,
    };
    row.diameter() * 0.5 * factor
}

fn per_meter(ohms: f64) -> OhmsPerLength {
    ElectricalResistance::new::<ohm>(ohms) / Length::new::<meter>(1.0)
}
