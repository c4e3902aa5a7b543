//! The depth scale that well, rod and curve share.

use super::facts::Facts;
use crate::locale::shown;
use wellwright_core::evaluate::{Basis, DEEPEST_FEET};
use wellwright_core::quantity::{Length, UnitSystem, feet};

/// Room that the scale keeps below the pump, and below water and break-even.
const BELOW_PUMP: f64 = 1.15;
const BELOW_WATER: f64 = 1.05;
/// The lasting break-even is shown where it lies at most so far below the pump: in feet, and in depths of the pump.
const EVEN_WITHIN: (f64, f64) = (500.0, 3.0);
/// Ends that a scale may have, feet and meters. The last one is the deepest setting.
const ENDS_FEET: [f64; 14] =
    [50.0, 100.0, 150.0, 200.0, 300.0, 500.0, 700.0, 1000.0, 1200.0, 1500.0, 1800.0, 2000.0, 2500.0, DEEPEST_FEET];
const ENDS_METERS: [f64; 14] =
    [15.0, 30.0, 50.0, 70.0, 100.0, 150.0, 200.0, 300.0, 350.0, 400.0, 500.0, 600.0, 700.0, 800.0];
/// The least of them while the pump has no depth.
const UNSET: usize = 7;

/// A length in meters.
#[must_use]
pub fn meters(value: f64) -> Length {
    // One meter over one meter of value keeps the unit in one place.
    feet(value / wellwright_core::quantity::METER_PER_FOOT)
}

/// The end of the scale: a round depth with room below pump, water and a near break-even, one farther where that shows
/// the well's bottom.
#[must_use]
pub fn scale_end(facts: &Facts, basis: Basis, system: UnitSystem) -> Length {
    let deepest = feet(DEEPEST_FEET);
    let ends: Vec<Length> = match system {
        UnitSystem::Us => ENDS_FEET.map(feet).to_vec(),
        UnitSystem::Si => ENDS_METERS.map(meters).into_iter().chain([deepest]).collect(),
    };
    let water = facts.deepest_level().map(|level| level * BELOW_WATER);
    let pump = facts.depth.map(|pump| pump * BELOW_PUMP);
    let even = facts.depth.zip(facts.even(basis)).filter(|(pump, even)| near(*pump, *even));
    let even = even.map(|(_, even)| even * BELOW_WATER);
    let shown = [pump, water, even].into_iter().flatten().fold(feet(0.0), Length::max);
    let least = if facts.depth.is_some() { 0 } else { UNSET };
    let first = (least..ends.len()).find(|at| ends[*at] >= shown).unwrap_or(ends.len() - 1);
    let holds = |end: &&Length| facts.well_depth.is_none_or(|bottom| **end >= bottom);
    *ends[first..].iter().take(2).find(holds).unwrap_or(&ends[first])
}

/// Whether a break-even is near enough to a pump to be shown with it.
fn near(pump: Length, even: Length) -> bool {
    even - pump <= feet(EVEN_WITHIN.0).min(pump * EVEN_WITHIN.1)
}

/// Depth to height in the picture and back.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scale {
    /// Height of the ground line.
    pub ground: f64,
    /// Height of the scale's end.
    pub bottom: f64,
    /// Depth of the scale's end.
    pub end: Length,
}

impl Scale {
    /// Height of a depth.
    #[must_use]
    pub fn y(&self, depth: Length) -> f64 {
        self.ground + (depth / self.end).value * (self.bottom - self.ground)
    }

    /// Depth at a height, kept inside the scale.
    #[must_use]
    pub fn depth(&self, y: f64) -> Length {
        let share = (y - self.ground) / (self.bottom - self.ground);
        self.end * share.clamp(0.0, 1.0)
    }

    /// Pixels between two depths so far apart.
    #[must_use]
    pub fn pixels(&self, length: Length) -> f64 {
        (length / self.end).value * (self.bottom - self.ground)
    }

    /// Every multiple of a step from the ground to the end, that end included.
    pub fn multiples(&self, step: Length) -> impl Iterator<Item = Length> {
        let count = (self.end / step).value;
        (0_u32..)
            .map(move |n| (n, step * f64::from(n)))
            .take_while(move |(n, _)| f64::from(*n) <= count + 1e-9)
            .map(|(_, d)| d)
    }

    /// The smallest of the round steps that is at least so many pixels, in a system's unit.
    #[must_use]
    pub fn step(&self, pixels: f64, system: UnitSystem) -> Length {
        let unit = match system {
            UnitSystem::Us => feet(1.0),
            UnitSystem::Si => meters(1.0),
        };
        let steps = [1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0];
        steps.into_iter().map(|step| unit * step).find(|step| self.pixels(*step) >= pixels).unwrap_or(unit * 1000.0)
    }
}

/// The least step 1, 2 or 5 times a power of ten that is not below a value.
#[must_use]
pub fn round_step(least: f64) -> f64 {
    if !(least.is_finite() && least > 0.0) {
        return 1.0;
    }
    let power = 10_f64.powf(least.log10().floor());
    [1.0, 2.0, 5.0, 10.0]
        .into_iter()
        .map(|by| by * power)
        .find(|step| *step >= least * (1.0 - 1e-9))
        .unwrap_or(10.0 * power)
}

/// Round values between two ends, not nearer than a share of their distance, with their figures.
#[must_use]
pub fn round_values([low, high]: [f64; 2], apart: f64) -> Vec<(f64, String)> {
    let step = round_step((high - low) * apart);
    let decimals = (-step.log10().floor()).clamp(0.0, 4.0) as usize;
    let first = (low / step - 1e-9).ceil();
    let values = (0..100).map(|n| (first + f64::from(n)) * step + 0.0);
    values
        .take_while(|value| *value <= high * (1.0 + 1e-9))
        .map(|value| (value, shown(value, decimals, "").figure))
        .collect()
}
