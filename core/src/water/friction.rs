//! Friction of water in a full round pipe, by Darcy and Weisbach.

use crate::error::OutsideRange;
use crate::quantity::{KinematicViscosity, Length, Velocity, VolumeRate, standard_gravity};
use core::f64::consts::{LN_10, PI};

/// Below this Reynolds number the flow is laminar.
pub const LAMINAR_BELOW: f64 = 2000.0;
/// Above this Reynolds number the flow is turbulent for certain.
pub const TURBULENT_ABOVE: f64 = 4000.0;

/// How the water flows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Regime {
    /// In layers.
    Laminar,
    /// Now one, now the other: the factor is that of turbulent flow, which is the larger, and uncertain.
    Transition,
    /// In eddies.
    Turbulent,
}

/// Darcy's friction factor and what it was worked out from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Friction {
    /// Reynolds number.
    pub reynolds: f64,
    /// Darcy's factor, four times Fanning's.
    pub factor: f64,
    /// How the water flows.
    pub regime: Regime,
}

/// A straight pipe of one size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pipe {
    /// Length.
    pub length: Length,
    /// True inside diameter.
    pub inside_diameter: Length,
    /// Height of the sand roughness that would have the same effect.
    pub roughness: Length,
}

/// What a pipe takes from the water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PipeLoss {
    /// Mean velocity.
    pub velocity: Velocity,
    /// Friction factor; `None` where the water stands still (Reynolds number under 10⁻⁹).
    pub friction: Option<Friction>,
    /// Head lost.
    pub head: Length,
}

/// Mean velocity of a flow through a full round pipe: v = 4 Q/(π D²).
///
/// # Units
/// Flow and true inside diameter; the result a velocity.
/// # Range
/// Flow 0 to 2 m³/s (32,000 gpm); diameter 5 mm to 2 m.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Continuity.
pub fn mean_velocity(flow: VolumeRate, inside_diameter: Length) -> Result<Velocity, OutsideRange> {
    OutsideRange::check("flow", flow.value, 0.0, 2.0)?;
    OutsideRange::check("inside_diameter", inside_diameter.value, 0.005, 2.0)?;
    Ok(flow / (0.25 * PI * inside_diameter * inside_diameter))
}

/// Reynolds number: Re = v D/ν.
///
/// # Units
/// Velocity, inside diameter, kinematic viscosity; the result dimensionless.
/// # Range
/// Velocity 0 to 110,000 m/s (2 m³/s through 5 mm); diameter as [`mean_velocity`]; viscosity 10⁻⁷ to 10⁻⁵ m²/s.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Definition.
pub fn reynolds(
    velocity: Velocity,
    inside_diameter: Length,
    viscosity: KinematicViscosity,
) -> Result<f64, OutsideRange> {
    OutsideRange::check("velocity", velocity.value, 0.0, 1.1e5)?;
    OutsideRange::check("inside_diameter", inside_diameter.value, 0.005, 2.0)?;
    OutsideRange::check("viscosity", viscosity.value, 1e-7, 1e-5)?;
    Ok((velocity * inside_diameter / viscosity).value)
}

/// How water flows at a Reynolds number: laminar below 2,000, in transition to 4,000, turbulent above.
///
/// # Units
/// Dimensionless.
/// # Range
/// Any.
/// # Source
/// [moody-1944], whose critical zone reaches from 2,000 to 4,000.
#[must_use]
pub fn regime(reynolds: f64) -> Regime {
    if reynolds < LAMINAR_BELOW {
        Regime::Laminar
    } else if reynolds < TURBULENT_ABOVE {
        Regime::Transition
    } else {
        Regime::Turbulent
    }
}

/// Darcy's friction factor of laminar flow (Hagen-Poiseuille): f = 64/Re.
///
/// # Units
/// Dimensionless.
/// # Range
/// 10⁻⁹ ≤ Re ≤ 2,000; the roughness does not matter.
/// # Errors
/// [`OutsideRange`] names `reynolds`.
/// # Source
/// [moody-1944]; exact for a round pipe.
pub fn hagen_poiseuille(reynolds: f64) -> Result<f64, OutsideRange> {
    Ok(64.0 / OutsideRange::check("reynolds", reynolds, STILL, LAMINAR_BELOW)?)
}

/// Darcy's friction factor of turbulent flow (Colebrook-White), to machine precision:
/// 1/√f = −2 log10( ε/(3.7 D) + 2.51/(Re √f) ).
///
/// Solved for F = ln 10/(2 √f): F + ln(A + F) = B with A = ε/D · Re · ln 10/(2 · 3.7 · 2.51) and B = ln(Re · ln 10/(2 · 2.51)).
/// From F = B − 0.2 two steps of the fourth order come within 2·10⁻¹⁵ of the root over the whole range.
///
/// # Units
/// `relative_roughness` ε/D and the result are dimensionless.
/// # Range
/// 2,000 ≤ Re ≤ 10⁸, uncertain below 4,000; 0 ≤ ε/D ≤ 0.05. The equation itself is within some 5 % of measurements.
/// # Errors
/// [`OutsideRange`] names the argument.
/// # Source
/// [colebrook-1939]; range from [moody-1944]; the steps by [clamond-2009].
/// # Example
/// ```
/// # use wellwright_core::water::friction::colebrook_white;
/// assert!((colebrook_white(1e5, 1e-4)? - 0.018_513_866).abs() < 1e-9);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn colebrook_white(reynolds: f64, relative_roughness: f64) -> Result<f64, OutsideRange> {
    let re = OutsideRange::check("reynolds", reynolds, LAMINAR_BELOW, 1e8)?;
    let roughness = OutsideRange::check("relative_roughness", relative_roughness, 0.0, 0.05)?;
    let smooth = re * (0.5 * LN_10 / 2.51);
    let (rough, smooth) = (smooth * (roughness / 3.7), smooth.ln());
    let mut found = smooth - 0.2;
    for _ in 0..2 {
        let sum = rough + found;
        let step = (sum.ln() + found - smooth) / (1.0 + sum);
        found -= (1.0 + sum + 0.5 * step) * step * sum / (1.0 + sum + step * (1.0 + step / 3.0));
    }
    let root = 0.5 * LN_10 / found;
    Ok(root * root)
}

/// Darcy's friction factor in full turbulence, where only the roughness matters (von Kármán):
/// f = 1/(2 log10(3.7 D/ε))².
///
/// # Units
/// Dimensionless.
/// # Range
/// 10⁻⁶ ≤ ε/D ≤ 0.05.
/// # Errors
/// [`OutsideRange`] names `relative_roughness`.
/// # Source
/// [colebrook-1939], its limit for Re without bound.
pub fn von_karman(relative_roughness: f64) -> Result<f64, OutsideRange> {
    let roughness = OutsideRange::check("relative_roughness", relative_roughness, 1e-6, 0.05)?;
    let x = 2.0 * (3.7 / roughness).log10();
    Ok(1.0 / (x * x))
}

/// Darcy's friction factor at any Reynolds number, and how the water flows.
///
/// # Units
/// Dimensionless.
/// # Range
/// 10⁻⁹ ≤ Re ≤ 10⁸; 0 ≤ ε/D ≤ 0.05.
/// # Errors
/// [`OutsideRange`] names the argument.
/// # Source
/// [`hagen_poiseuille`] below Re 2,000, [`colebrook_white`] from there on.
pub fn friction_factor(reynolds: f64, relative_roughness: f64) -> Result<Friction, OutsideRange> {
    OutsideRange::check("relative_roughness", relative_roughness, 0.0, 0.05)?;
    let regime = regime(reynolds);
    let factor = match regime {
        Regime::Laminar => hagen_poiseuille(reynolds)?,
        Regime::Transition | Regime::Turbulent => colebrook_white(reynolds, relative_roughness)?,
    };
    Ok(Friction { reynolds, factor, regime })
}

/// Head lost in a straight pipe (Darcy-Weisbach): h = f (L/D) v²/2g.
///
/// # Units
/// Flow and kinematic viscosity; the result head of the water that flows.
/// # Range
/// Flow and diameter as [`mean_velocity`]; length 0 to 100 km; ε/D to 0.05; viscosity 10⁻⁷ to 10⁻⁵ m²/s; Re to 10⁸.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [moody-1944]; factor by [`friction_factor`].
/// # Example
/// ```
/// # use wellwright_core::{quantity::*, water::{friction::*, properties::water}};
/// let pipe = Pipe { length: feet(100.0), inside_diameter: inches(2.067), roughness: feet(0.00015) };
/// let loss = pipe_loss(gpm(50.0), pipe, water(fahrenheit(60.0))?.viscosity)?;
/// assert!((in_feet(loss.head) - 4.679).abs() < 0.001);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn pipe_loss(flow: VolumeRate, pipe: Pipe, viscosity: KinematicViscosity) -> Result<PipeLoss, OutsideRange> {
    let diameter = pipe.inside_diameter;
    let velocity = mean_velocity(flow, diameter)?;
    OutsideRange::check("length", pipe.length.value, 0.0, 1e5)?;
    let relative = (pipe.roughness / diameter).value;
    OutsideRange::check("relative_roughness", relative, 0.0, 0.05)?;
    let reynolds = reynolds(velocity, diameter, viscosity)?;
    let gravity = standard_gravity();
    if reynolds < STILL {
        let head = 32.0 * viscosity * pipe.length * velocity / (gravity * diameter * diameter);
        return Ok(PipeLoss { velocity, friction: None, head });
    }
    let friction = friction_factor(reynolds, relative)?;
    let head = friction.factor * (pipe.length / diameter) * velocity * velocity / (2.0 * gravity);
    Ok(PipeLoss { velocity, friction: Some(friction), head })
}

/// Reynolds number under which no factor is told: the flow is laminar and the head lost is nil for any purpose.
const STILL: f64 = 1e-9;
