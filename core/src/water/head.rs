//! Total dynamic head of a pump, and the head that a surface pump finds at its suction.

use crate::error::OutsideRange;
use crate::quantity::{Length, MassDensity, Pressure, VolumeRate, feet, standard_gravity};
use crate::water::fittings::velocity_head;
use crate::water::line::{FrictionMethod, Section, SectionLoss, section_loss};
use crate::water::properties::Water;

/// What the pump works against at a flow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Task<'a> {
    /// From the water's surface up to the datum: the pumping level of a well, the suction lift of a surface pump (below
    /// zero where the water stands higher than the pump).
    pub lift: Length,
    /// From the datum up to the gauge or the outlet; below zero downhill.
    pub rise: Length,
    /// The line from the water to the gauge or outlet, in the order of the flow.
    pub line: &'a [Section],
    /// Gauge pressure to be held at the end of the line; losses beyond it belong in this figure.
    pub pressure: Pressure,
    /// How friction is worked out.
    pub method: FrictionMethod,
}

/// Total dynamic head and its parts.
#[derive(Debug, Clone, PartialEq)]
pub struct TotalHead {
    /// Lift from the water's surface to the datum.
    pub lift: Length,
    /// Rise from the datum to the end of the line.
    pub rise: Length,
    /// Straight pipe.
    pub pipe: Length,
    /// Fittings.
    pub fittings: Length,
    /// Pressure at the end of the line.
    pub pressure: Length,
    /// Velocity head at the end of the line.
    pub velocity: Length,
    /// Each section's loss, in the order of the line.
    pub sections: Vec<SectionLoss>,
}

impl TotalHead {
    /// The sum of all parts.
    ///
    /// # Units
    /// Head of the water that is pumped.
    /// # Range
    /// Any parts.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn total(&self) -> Length {
        self.still() + self.pipe + self.fittings + self.velocity
    }

    /// The parts that do not depend on the flow through the line: lift, rise and pressure.
    ///
    /// # Units
    /// Head of the water that is pumped.
    /// # Range
    /// Any parts. The lift of a well holds its drawdown, which does depend on the flow.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn still(&self) -> Length {
        self.lift + self.rise + self.pressure
    }
}

fn checked(density: MassDensity) -> Result<MassDensity, OutsideRange> {
    OutsideRange::check("density", density.value, 900.0, 1300.0).map(|_| density)
}

/// Head of a pressure: h = p/(ρ g); 2.31 ft for each psi at 62 °F or so.
///
/// # Units
/// Pressure and density; the result head.
/// # Range
/// Pressure −0.2 to 100 MPa; density 900 to 1,300 kg/m³.
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Hydrostatics.
pub fn pressure_head(pressure: Pressure, density: MassDensity) -> Result<Length, OutsideRange> {
    OutsideRange::check("pressure", pressure.value, -2e5, 1e8)?;
    Ok(pressure / (checked(density)? * standard_gravity()))
}

/// Pressure of a head: p = ρ g h.
///
/// # Units
/// Head and density; the result a pressure.
/// # Range
/// Head −10 to 10 km; density as [`pressure_head`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Hydrostatics.
pub fn pressure_of_head(head: Length, density: MassDensity) -> Result<Pressure, OutsideRange> {
    OutsideRange::check("head", head.value, -1e4, 1e4)?;
    Ok(head * checked(density)? * standard_gravity())
}

/// Total dynamic head: lift + rise + pipe + fittings + pressure head + velocity head at the end of the line.
///
/// The velocity head is that of the last section: what the water still carries past the gauge or out of the pipe. An exit
/// coefficient of 1 in the last section would count it twice. Without a line there is none.
///
/// # Units
/// Flow; the results head of the water that is pumped.
/// # Range
/// Lift and rise −10 to 10 km; the rest as [`section_loss`] and [`pressure_head`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Energy of a unit weight of water from surface to outlet (Bernoulli).
/// # Example
/// ```
/// # use wellwright_core::{quantity::*, water::{head::*, properties::water}};
/// let task = Task { lift: feet(471.67), rise: feet(4.0), line: &[], pressure: psi(60.0), method: Default::default() };
/// let head = total_dynamic_head(gpm(25.0), task, water(fahrenheit(60.0))?)?;
/// assert!((in_feet(head.total()) - 614.21).abs() < 0.01);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn total_dynamic_head(flow: VolumeRate, task: Task, water: Water) -> Result<TotalHead, OutsideRange> {
    OutsideRange::check("flow", flow.value, 0.0, 2.0)?;
    OutsideRange::check("lift", task.lift.value, -1e4, 1e4)?;
    OutsideRange::check("rise", task.rise.value, -1e4, 1e4)?;
    let sections = losses(flow, task.line, water)?;
    let end = sections.last().map(|section| velocity_head(section.darcy_weisbach.velocity)).transpose()?;
    Ok(TotalHead {
        lift: task.lift,
        rise: task.rise,
        pipe: sections.iter().map(|section| section.pipe(task.method)).sum(),
        fittings: sections.iter().map(|section| section.fittings).sum(),
        pressure: pressure_head(task.pressure, water.density)?,
        velocity: end.unwrap_or(feet(0.0)),
        sections,
    })
}

fn losses(flow: VolumeRate, line: &[Section], water: Water) -> Result<Vec<SectionLoss>, OutsideRange> {
    line.iter().map(|section| section_loss(flow, *section, water.viscosity)).collect()
}

/// Net positive suction head available, and its parts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SuctionHead {
    /// The air's pressure.
    pub barometric: Length,
    /// The water's vapor pressure.
    pub vapor: Length,
    /// From the water's surface up to the pump; below zero where the water stands higher.
    pub lift: Length,
    /// Straight pipe.
    pub pipe: Length,
    /// Fittings.
    pub fittings: Length,
}

impl SuctionHead {
    /// What is left above the vapor pressure at the pump: barometric − vapor − lift − pipe − fittings.
    ///
    /// # Units
    /// Head of the water that is pumped; below zero the suction breaks.
    /// # Range
    /// Any parts.
    /// # Source
    /// [hi-9.6.1].
    #[must_use]
    pub fn available(&self) -> Length {
        self.barometric - self.vapor - self.lift - self.pipe - self.fittings
    }
}

/// Net positive suction head available to a surface pump that draws from an open water.
///
/// # Units
/// Flow, barometric pressure (absolute), lift; the results head of the water that is pumped.
/// # Range
/// Barometric pressure 0.02 to 0.12 MPa; lift −100 to 100 m; the line as [`section_loss`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// [hi-9.6.1].
pub fn suction_head(
    flow: VolumeRate,
    barometric: Pressure,
    lift: Length,
    suction: &[Section],
    method: FrictionMethod,
    water: Water,
) -> Result<SuctionHead, OutsideRange> {
    OutsideRange::check("barometric", barometric.value, 2e4, 1.2e5)?;
    OutsideRange::check("lift", lift.value, -100.0, 100.0)?;
    let sections = losses(flow, suction, water)?;
    Ok(SuctionHead {
        barometric: pressure_head(barometric, water.density)?,
        vapor: pressure_head(water.vapor_pressure, water.density)?,
        lift,
        pipe: sections.iter().map(|section| section.pipe(method)).sum(),
        fittings: sections.iter().map(|section| section.fittings).sum(),
    })
}
