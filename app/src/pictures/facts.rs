//! What the picture says of a well, and the sentence for those who do not see it.

use super::well_words::power;
use crate::locale::{self, words};
use wellwright_core::cable::lead::Conductor;
use wellwright_core::evaluate::{Basis, Evaluation, Sweep};
use wellwright_core::job::Way;
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{Length, Power, UnitSystem};
use wellwright_core::standards::conductor::Size;

/// What a job says about its well.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Facts {
    /// Depth of the pump; of a motor on the surface the length of its lead.
    pub depth: Option<Length>,
    /// Whether the motor works on the surface: then there is no well to draw.
    pub on_surface: bool,
    /// Lead on the surface.
    pub surface: Option<Length>,
    /// Rated power of the motor.
    pub power: Option<Power>,
    /// Conductor and ground of the 480 V way.
    pub lead: Option<(Conductor, Size)>,
    /// Depth of the water at rest.
    pub static_level: Option<Length>,
    /// Depth of the water at work.
    pub pumping_level: Option<Length>,
    /// Depth of the well's bottom.
    pub well_depth: Option<Length>,
    /// Depth below which one way stays cheaper, by [`Basis`].
    pub even: [Option<Length>; 3],
}

impl Facts {
    /// The facts of an evaluation.
    #[must_use]
    pub fn of(answer: &Evaluation) -> Self {
        let way = answer.here.as_ref().and_then(|here| here.way(Way::V480));
        Self {
            depth: answer.depth,
            on_surface: answer.kind == MotorKind::Surface,
            surface: answer.inputs.surface_run.as_ref().ok().map(|known| known.value),
            power: answer.inputs.motor_power.as_ref().ok().map(|known| known.value),
            lead: way.map(|way| (way.run.run.conductor, way.run.run.ground)),
            static_level: answer.water.static_level,
            pumping_level: answer.water.pumping_level,
            well_depth: answer.water.well_depth,
            even: answer.sweep.as_ref().map(|sweep| Basis::ALL.map(|basis| lasting(sweep, basis))).unwrap_or_default(),
        }
    }

    /// Depth below which one way stays cheaper.
    #[must_use]
    pub fn even(&self, basis: Basis) -> Option<Length> {
        self.even[basis as usize]
    }

    /// The water's depth in the casing: at work, else at rest.
    #[must_use]
    pub fn level(&self) -> Option<Length> {
        self.pumping_level.or(self.static_level)
    }

    /// The deepest thing that the scale has to show.
    #[must_use]
    pub fn deepest_level(&self) -> Option<Length> {
        [self.static_level, self.pumping_level].into_iter().flatten().reduce(Length::max)
    }
}

fn lasting(sweep: &Sweep, basis: Basis) -> Option<Length> {
    sweep.break_even(basis).lasting().map(|crossing| crossing.depth)
}

/// The whole picture in words: pump, levels, bottom, and size and cost of both ways.
#[must_use]
pub fn described(facts: &Facts, answer: &Evaluation, money: Option<Basis>, system: UnitSystem) -> String {
    let (words, say) = (words(), |length| locale::depth(length, system).text());
    let picture = &words.picture;
    let known = if facts.on_surface { picture.alt_lead } else { picture.alt };
    let pump = facts.depth.map_or_else(|| picture.alt_unset.to_owned(), |depth| known(&say(depth)));
    let levels = [
        facts.power.map(|rated| format!("{} {}", picture.pump_and_motor, power(rated, system))),
        facts.static_level.map(|level| (picture.static_level)(&say(level))),
        facts.pumping_level.map(|level| (picture.pumping_level)(&say(level))),
        facts.well_depth.map(|bottom| (picture.bottom)(&say(bottom))),
    ];
    let ways = answer.here.iter().flat_map(|here| Way::ALL.map(|way| (way, here.way(way)))).map(|(way, here)| {
        let name = (words.answer.way)(way);
        here.map_or_else(
            || format!("{name}: {}", words.answer.no_size),
            |here| {
                let size = locale::conductor(here.run.run.conductor);
                let Some(basis) = money else { return format!("{name}: {size}") };
                let cost = here.cost(basis).unwrap_or(here.installed);
                (picture.alt_way)(name, &size, &locale::money(cost, 0))
            },
        )
    });
    let parts: Vec<String> = [pump].into_iter().chain(levels.into_iter().flatten()).chain(ways).collect();
    parts.join("; ")
}
