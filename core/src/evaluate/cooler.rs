//! The part of a lead that hangs in the water, where the user asks for its cooler surroundings to count.

use super::Water;
use crate::cable::stretches::{least_cool, most_warm};
use crate::finding::Finding;
use crate::job::{Choices, Field, Inputs};
use crate::pump::motor::MotorKind;
use crate::quantity::{Celsius, Length, fahrenheit, feet};

/// A lead in two surroundings: air down to the water, then the water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Cooler {
    /// From the equipment to the water.
    pub warm: Length,
    /// Depth of the water while the pump runs.
    level: Length,
    /// The water's temperature.
    pub water: Celsius,
}

impl Cooler {
    /// The lead of a job whose water is to count; nothing where that was not asked for, or where the water is not the
    /// cooler of the two.
    pub fn of(choices: &Choices, inputs: &Inputs, water: &Water) -> Option<Self> {
        if !choices.cooler_water() || choices.motor_kind() != MotorKind::Submersible {
            return None;
        }
        let level = water.pumping_level?.max(feet(0.0));
        let surface = inputs.surface_run.as_ref().ok()?.value;
        let temperature = inputs.entered.get(Field::WaterTemperature, fahrenheit)?;
        let cooler = temperature.0 < inputs.ambient.as_ref().ok()?.value.0;
        cooler.then_some(Self { warm: surface + level, level, water: temperature })
    }

    /// Depth below which the water counts for a longer lead; nothing where too much of it lies in the air.
    pub fn begins(&self) -> Option<Length> {
        least_cool(self.warm).map(|least| self.level + least)
    }

    /// Whether the water counts for a pump at this depth. At the very depth where it begins to be allowed it is not
    /// counted yet: the conductors of the lead above hold to there.
    pub fn counts(&self, depth: Length) -> bool {
        self.begins().is_some_and(|begins| depth > begins)
    }

    /// That the water was to count and does not, at this depth.
    pub fn not_counted(&self, depth: Length) -> Option<Finding> {
        let most = most_warm((depth - self.level).max(feet(0.0)));
        (!self.counts(depth)).then_some(Finding::CoolerWaterIdle { warm: self.warm, most })
    }

    /// Depth down to which the water counts where it is the water that lies deeper, for a pump that hangs at `setting`
    /// now: the stretch in the air grows, that in the water stays.
    pub fn ends(&self, setting: Length) -> Length {
        setting + most_warm(setting - self.level) - self.warm
    }
}

/// The surroundings that count for a pump at a depth.
pub(super) fn around(cooler: Option<Cooler>, ambient: Celsius, depth: Length) -> Celsius {
    cooler.filter(|cooler| cooler.counts(depth)).map_or(ambient, |cooler| cooler.water)
}
