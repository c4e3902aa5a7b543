//! The pressure wave when the flow stops at once.

use crate::error::OutsideRange;
use crate::quantity::{Length, MassDensity, Pressure, Time, Velocity, standard_gravity};
use uom::si::pressure::gigapascal;

/// A pipe as a pressure wave sees it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shell {
    /// Inside diameter.
    pub inside_diameter: Length,
    /// Wall.
    pub wall: Length,
    /// Modulus of elasticity of the wall for a short load.
    pub modulus: Pressure,
    /// How the pipe is held: 1 with expansion joints throughout, 0.85 to 1.25 for other ways.
    pub restraint: f64,
}

/// Bulk modulus of water, 2.19 GPa at 20 °C. It runs from 1.97 GPa at freezing to 2.37 GPa at 60 °C, which moves the
/// wave's speed by 5 % down and 4 % up in steel and next to nothing in plastic.
///
/// # Units
/// Pressure.
/// # Range
/// One figure.
/// # Source
/// [wylie-streeter-1993]; ρ c² of IAPWS-95 at 20 °C is 2.193 GPa.
#[must_use]
pub fn bulk_modulus() -> Pressure {
    Pressure::new::<gigapascal>(2.19)
}

/// Speed of a pressure wave in a thin pipe (Korteweg): a = √( (K/ρ) / (1 + c K D/(E e)) ).
///
/// # Units
/// Bulk modulus K and density of the water; the pipe; the result a velocity.
/// # Range
/// K 0.1 to 10 GPa; density 900 to 1,300 kg/m³; D 5 mm to 2 m; wall 0.1 mm to 0.2 m; E 0.1 to 500 GPa; c 0.5 to 1.5. A little
/// air in the water slows the wave by far; without it the result is on the safe side.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [wylie-streeter-1993].
pub fn wave_speed(bulk_modulus: Pressure, density: MassDensity, shell: Shell) -> Result<Velocity, OutsideRange> {
    OutsideRange::check("bulk_modulus", bulk_modulus.value, 1e8, 1e10)?;
    OutsideRange::check("density", density.value, 900.0, 1300.0)?;
    OutsideRange::check("inside_diameter", shell.inside_diameter.value, 0.005, 2.0)?;
    OutsideRange::check("wall", shell.wall.value, 1e-4, 0.2)?;
    OutsideRange::check("modulus", shell.modulus.value, 1e8, 5e11)?;
    let restraint = OutsideRange::check("restraint", shell.restraint, 0.5, 1.5)?;
    let give = restraint * (bulk_modulus / shell.modulus).value * (shell.inside_diameter / shell.wall).value;
    Ok((bulk_modulus / density / (1.0 + give)).sqrt())
}

/// Rise of pressure when the flow changes at once (Joukowsky): Δp = ρ a Δv.
///
/// # Units
/// Density, speed of the wave, change of the mean velocity; the result a pressure on top of the one before.
/// # Range
/// Density 900 to 1,300 kg/m³; a 10 to 2,000 m/s; Δv 0 to 100 m/s. Change within [`reflection_time`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [joukowsky-1898].
pub fn joukowsky(density: MassDensity, wave: Velocity, change: Velocity) -> Result<Pressure, OutsideRange> {
    OutsideRange::check("density", density.value, 900.0, 1300.0)?;
    OutsideRange::check("wave", wave.value, 10.0, 2000.0)?;
    OutsideRange::check("change", change.value, 0.0, 100.0)?;
    Ok(density * wave * change)
}

/// The same as head: Δh = a Δv/g.
///
/// # Units
/// Speed of the wave, change of the mean velocity; the result head.
/// # Range
/// As [`joukowsky`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [joukowsky-1898].
pub fn joukowsky_head(wave: Velocity, change: Velocity) -> Result<Length, OutsideRange> {
    OutsideRange::check("wave", wave.value, 10.0, 2000.0)?;
    OutsideRange::check("change", change.value, 0.0, 100.0)?;
    Ok(wave * change / standard_gravity())
}

/// Time in which the wave runs to the far end and back: t = 2 L/a. A slower change raises the pressure less.
///
/// # Units
/// Length of the pipe, speed of the wave; the result a time.
/// # Range
/// Length 0 to 100 km; a 10 to 2,000 m/s.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Definition.
pub fn reflection_time(length: Length, wave: Velocity) -> Result<Time, OutsideRange> {
    OutsideRange::check("length", length.value, 0.0, 1e5)?;
    OutsideRange::check("wave", wave.value, 10.0, 2000.0)?;
    Ok(2.0 * length / wave)
}
