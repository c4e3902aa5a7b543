//! What fittings take from the water.

use crate::error::OutsideRange;
use crate::quantity::{Length, Velocity, standard_gravity};
use crate::standards::fittings::{self, Fitting};
use crate::water::friction::von_karman;

/// Velocity head: v²/2g.
///
/// # Units
/// Velocity; the result head.
/// # Range
/// Velocity 0 to 100 m/s.
/// # Errors
/// [`OutsideRange`] names `velocity` (m/s).
/// # Source
/// Energy of motion.
pub fn velocity_head(velocity: Velocity) -> Result<Length, OutsideRange> {
    OutsideRange::check("velocity", velocity.value, 0.0, 100.0)?;
    Ok(velocity * velocity / (2.0 * standard_gravity()))
}

/// Head lost in fittings: h = ΣK v²/2g.
///
/// # Units
/// `coefficient` the sum of the fittings' K, dimensionless; velocity in the pipe that K is told for; the result head.
/// # Range
/// ΣK 0 to 10,000; velocity as [`velocity_head`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Definition of K.
pub fn fitting_loss(coefficient: f64, velocity: Velocity) -> Result<Length, OutsideRange> {
    let coefficient = OutsideRange::check("coefficient", coefficient, 0.0, 1e4)?;
    Ok(coefficient * velocity_head(velocity)?)
}

/// Loss coefficient of a fitting told as a length in diameters: K = (L/D) f_T, with the friction factor of clean commercial
/// steel in full turbulence, whatever the pipe is made of.
///
/// # Units
/// `diameters` L/D, dimensionless; inside diameter; the result dimensionless.
/// # Range
/// L/D 0 to 1,000; diameter 5 mm to 2 m.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [crane-tp-410]; its printed f_T have two figures and differ by edition, by 6 % at most.
pub fn coefficient_of_diameters(diameters: f64, inside_diameter: Length) -> Result<f64, OutsideRange> {
    let diameters = OutsideRange::check("diameters", diameters, 0.0, 1e3)?;
    let inside = OutsideRange::check("inside_diameter", inside_diameter.value, 0.005, 2.0)?;
    Ok(diameters * von_karman(crate::standards::pipe::Surface::CommercialSteel.roughness().value / inside)?)
}

/// Loss coefficient of a fitting in a pipe: of the text table, which is the same for every size, else by its length in
/// diameters; nothing where the size is needed and not known.
///
/// # Units
/// Inside diameter; the result dimensionless.
/// # Range
/// As [`coefficient_of_diameters`].
/// # Errors
/// As [`coefficient_of_diameters`].
/// # Source
/// [pipe-surfaces], else [crane-tp-410].
pub fn coefficient_in(fitting: Fitting, inside_diameter: Option<Length>) -> Result<Option<f64>, OutsideRange> {
    let row = fittings::fitting(fitting);
    match (row.coefficient, row.diameters, inside_diameter) {
        (Some(coefficient), ..) => Ok(Some(coefficient)),
        (None, Some(diameters), Some(inside)) => coefficient_of_diameters(diameters, inside).map(Some),
        _ => Ok(None),
    }
}

/// Length of straight pipe that takes as much head as a fitting: L = K D/f.
///
/// # Units
/// `coefficient` K and Darcy's `factor` of the pipe, dimensionless; inside diameter; the result a length.
/// # Range
/// K 0 to 10,000; diameter 5 mm to 2 m; f 0.005 to 1.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Algebra: f (L/D) = K.
pub fn equivalent_length(coefficient: f64, inside_diameter: Length, factor: f64) -> Result<Length, OutsideRange> {
    let coefficient = OutsideRange::check("coefficient", coefficient, 0.0, 1e4)?;
    OutsideRange::check("inside_diameter", inside_diameter.value, 0.005, 2.0)?;
    Ok(coefficient * inside_diameter / OutsideRange::check("factor", factor, 0.005, 1.0)?)
}
