//! A pipe line: sections of straight pipe, each with its fittings.

use crate::error::OutsideRange;
use crate::quantity::{KinematicViscosity, Length, Velocity, VolumeRate, feet_per_second};
use crate::standards::pipe::{Material, PipeSize, Series};
use crate::water::fittings::fitting_loss;
use crate::water::friction::{Pipe, PipeLoss, mean_velocity, pipe_loss};
use crate::water::hazen_williams::hazen_williams_loss;
use serde::{Deserialize, Serialize};

/// How the friction of straight pipe is worked out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum FrictionMethod {
    /// Darcy-Weisbach with Colebrook-White.
    #[default]
    DarcyWeisbach,
    /// Hazen-Williams.
    HazenWilliams,
}

/// A stretch of one pipe with its fittings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Section {
    /// The straight pipe.
    pub pipe: Pipe,
    /// Coefficient C of Hazen and Williams.
    pub hazen_williams: f64,
    /// Sum of the loss coefficients K of the fittings, told for the velocity in this pipe.
    pub fittings: f64,
}

/// What a section takes from the water, by both methods.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SectionLoss {
    /// Straight pipe by Darcy-Weisbach, with velocity and friction factor.
    pub darcy_weisbach: PipeLoss,
    /// Straight pipe by Hazen-Williams.
    pub hazen_williams: Length,
    /// Fittings.
    pub fittings: Length,
}

impl SectionLoss {
    /// Head lost in the straight pipe, by the method that the job goes by.
    ///
    /// # Units
    /// Head.
    /// # Range
    /// Any loss.
    /// # Source
    /// Choice of the two.
    #[must_use]
    pub fn pipe(&self, method: FrictionMethod) -> Length {
        match method {
            FrictionMethod::DarcyWeisbach => self.darcy_weisbach.head,
            FrictionMethod::HazenWilliams => self.hazen_williams,
        }
    }
}

/// Head that a section takes: straight pipe by both methods, and fittings.
///
/// # Units
/// Flow and kinematic viscosity; the results head.
/// # Range
/// As [`pipe_loss`], [`hazen_williams_loss`] and [`fitting_loss`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [`pipe_loss`], [`hazen_williams_loss`], [`fitting_loss`].
pub fn section_loss(
    flow: VolumeRate,
    section: Section,
    viscosity: KinematicViscosity,
) -> Result<SectionLoss, OutsideRange> {
    let Section { pipe, hazen_williams, fittings } = section;
    let darcy_weisbach = pipe_loss(flow, pipe, viscosity)?;
    Ok(SectionLoss {
        darcy_weisbach,
        hazen_williams: hazen_williams_loss(flow, pipe.inside_diameter, pipe.length, hazen_williams)?,
        fittings: fitting_loss(fittings, darcy_weisbach.velocity)?,
    })
}

/// The size that is assumed in a series: the smallest in which the water keeps to a speed, else the largest.
///
/// # Units
/// Flow; speed; the result a size.
/// # Range
/// Flow 0 to 2 m³/s.
/// # Errors
/// [`OutsideRange`] names `flow` (m³/s).
/// # Source
/// [`mean_velocity`]; the speed is [practice].
pub fn size_for(series: Series, flow: VolumeRate, most: Velocity) -> Result<Option<PipeSize>, OutsideRange> {
    let mut last = None;
    for size in series.sizes() {
        last = Some(size);
        if mean_velocity(flow, size.inside_diameter())? <= most {
            break;
        }
    }
    Ok(last)
}

/// Speed above which water wears and hammers a pipe: 8 ft/s in steel, 5 ft/s in plastic.
///
/// # Units
/// The result a velocity.
/// # Range
/// The materials listed.
/// # Source
/// [practice].
#[must_use]
pub fn usual_speed(material: Material) -> Velocity {
    feet_per_second(match material {
        Material::Steel => 8.0,
        Material::Pvc | Material::Polyethylene => 5.0,
    })
}
