//! The line from the water to the gauge or outlet: its pipes, and the head that it takes.

use super::well::Law;
use crate::error::OutsideRange;
use crate::job::{Choices, Entered, Field, Known, Origin, Part};
use crate::pump::motor::MotorKind;
use crate::quantity::{Length, Pressure, VolumeRate, feet, feet_per_second, inches, psi};
use crate::standards::pipe::{Material, PipeSize};
use crate::water::friction::Pipe;
use crate::water::head::{Task, TotalHead, total_dynamic_head};
use crate::water::level::pumping_level;
use crate::water::line::{FrictionMethod, Section, size_for};
use crate::water::properties;

/// Speed that an assumed size keeps to, feet in a second: common practice for long pipes.
const SIZED_FOR: f64 = 5.0;

/// One pipe of the line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pipework {
    /// Which part it is.
    pub part: Part,
    /// What it is made of.
    pub material: Material,
    /// Its size in its series; nothing where only an inside diameter is known.
    pub size: Option<PipeSize>,
    /// Inside diameter, and where it comes from.
    pub inside: Known<Length>,
    /// Roughness, and where it comes from.
    pub roughness: Known<Length>,
    /// Coefficient of Hazen and Williams, and where it comes from.
    pub hazen_williams: Known<f64>,
    /// Length, roughness, fittings.
    pub section: Section,
}

/// What the water is lifted from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Lift {
    /// A well: its level at rest, and how far it falls.
    Well(Length, Law),
    /// Open water, this far below a surface pump.
    Open(Length),
}

impl Lift {
    /// From the water's surface to the ground or the pump, at a flow.
    ///
    /// # Errors
    /// As the formulas of the drawdown.
    pub fn at(self, flow: VolumeRate) -> Result<Length, OutsideRange> {
        match self {
            Self::Well(level, law) => Ok(pumping_level(level, law.drawdown(flow)?)),
            Self::Open(lift) => Ok(lift),
        }
    }

    /// The same with the pump at rest.
    #[must_use]
    pub fn at_rest(self) -> Length {
        match self {
            Self::Well(level, _) | Self::Open(level) => level,
        }
    }
}

/// What the pump works against, at any flow.
#[derive(Debug, Clone, PartialEq)]
pub struct System {
    /// What the water is lifted from.
    pub lift: Lift,
    /// From the ground up to the gauge or outlet.
    pub rise: Length,
    /// Pressure to be held there.
    pub pressure: Pressure,
    /// How friction is worked out.
    pub method: FrictionMethod,
    /// The water.
    pub liquid: properties::Water,
    /// The pipes, in the order of the flow.
    pub pipes: Vec<Pipework>,
    sections: Vec<Section>,
}

impl System {
    /// The head at a flow and its parts.
    ///
    /// # Errors
    /// As [`total_dynamic_head`] and the formulas of the drawdown.
    pub fn head(&self, flow: VolumeRate) -> Result<TotalHead, OutsideRange> {
        let task = Task {
            lift: self.lift.at(flow)?,
            rise: self.rise,
            line: &self.sections,
            pressure: self.pressure,
            method: self.method,
        };
        total_dynamic_head(flow, task, self.liquid)
    }

    /// The sections of a part, for the suction.
    #[must_use]
    pub fn sections_of(&self, part: Part) -> Vec<Section> {
        self.pipes.iter().filter(|pipe| pipe.part == part).map(|pipe| pipe.section).collect()
    }

    /// The same system with the water, the pump and the drop pipe this much deeper.
    #[must_use]
    pub fn deeper(&self, by: Length) -> Self {
        let mut deeper = self.clone();
        if let Lift::Well(level, _) = &mut deeper.lift {
            *level += by;
        }
        for pipe in deeper.pipes.iter_mut().filter(|pipe| pipe.part == Part::Drop) {
            pipe.section.pipe.length += by;
        }
        deeper.sections = deeper.pipes.iter().map(|pipe| pipe.section).collect();
        deeper
    }
}

/// The system of a job; nothing while a figure that it needs is missing or wrong.
pub(super) fn system(
    choices: &Choices,
    entered: &Entered,
    flow: VolumeRate,
    law: Option<Law>,
    liquid: properties::Water,
) -> Option<System> {
    let part = |part| pipework(choices, entered, part, flow);
    let (lift, pipes) = match choices.motor_kind() {
        MotorKind::Submersible => {
            let lift = Lift::Well(entered.get(Field::StaticLevel, feet)?, law?);
            (lift, vec![part(Part::Drop)?, part(Part::Surface)?])
        }
        MotorKind::Surface => {
            let lift = Lift::Open(entered.get(Field::SuctionLift, feet)?);
            (lift, vec![part(Part::Suction)?, part(Part::Surface)?])
        }
    };
    Some(System {
        lift,
        rise: entered.get(Field::Rise, feet)?,
        pressure: entered.get(Field::Pressure, psi)?,
        method: choices.friction(),
        liquid,
        sections: pipes.iter().map(|pipe| pipe.section).collect(),
        pipes,
    })
}

fn pipework(choices: &Choices, entered: &Entered, part: Part, flow: VolumeRate) -> Option<Pipework> {
    let [inside, roughness, hazen_williams, fittings] = part.fields();
    let series = choices.series(part);
    let picked = choices.pipe(part).size.and_then(|size| series.named(size.name()));
    let length = entered.get(part.length().unwrap_or(Field::PumpSetting), feet)?;
    let typed = entered.take(inside, inches).ok()?;
    let size = match (picked, typed) {
        (Some(size), _) => Some(size),
        (None, Some(_)) => None,
        // A flow beyond every formula takes the largest size, and the head says that it is beyond.
        (None, None) => size_for(series, flow, feet_per_second(SIZED_FOR)).unwrap_or_else(|_| series.sizes().last()),
    };
    let material = series.material();
    let surface = material.surface();
    let of_size = |size: PipeSize| {
        let origin = if picked.is_some() { Origin::Table } else { Origin::Assumed };
        Known { value: size.inside_diameter(), origin }
    };
    let inside = typed.or(size.map(of_size))?;
    let roughness = entered.or_else(roughness, inches, || Some(surface.roughness()))?;
    let hazen_williams = entered.or_else(hazen_williams, |c| c, || Some(surface.hazen_williams()))?;
    let section = Section {
        pipe: Pipe { length, inside_diameter: inside.value, roughness: roughness.value },
        hazen_williams: hazen_williams.value,
        fittings: entered.get(fittings, |sum| sum)?,
    };
    Some(Pipework { part, material, size, inside, roughness, hazen_williams, section })
}
