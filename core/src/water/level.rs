//! Where the water stands in the well, and how much of it stands above the pump.
//!
//! Levels are depths below ground. A difference within 10⁻⁹ of the deeper level is zero, so that a change of units never
//! moves a pump off the water's surface or off the bottom.

use crate::quantity::{Length, feet};

/// Depth of the water while the pump runs: static level + drawdown.
///
/// # Units
/// Lengths below ground; the result a length below ground.
/// # Range
/// Any lengths; drawdown not below zero.
/// # Source
/// Definition of drawdown: how far the water falls below its level at rest.
#[must_use]
pub fn pumping_level(static_level: Length, drawdown: Length) -> Length {
    static_level + drawdown
}

/// Depth of water above the pump while it runs: pump setting − pumping level; below zero the pump hangs dry.
///
/// # Units
/// Lengths below ground; the result a length.
/// # Range
/// Any lengths.
/// # Source
/// Definition.
/// # Example
/// ```
/// # use wellwright_core::{quantity::*, water::level::*};
/// let pumping = pumping_level(feet(430.0), feet(41.667));
/// assert!((in_feet(submergence(feet(620.0), pumping)) - 148.333).abs() < 1e-9);
/// ```
#[must_use]
pub fn submergence(pump_setting: Length, pumping_level: Length) -> Length {
    difference(pump_setting, pumping_level)
}

/// How far the pump hangs above the well's bottom: well depth − pump setting; below zero it is set deeper than the well.
///
/// # Units
/// Lengths below ground; the result a length.
/// # Range
/// Any lengths.
/// # Source
/// Definition.
#[must_use]
pub fn off_bottom(well_depth: Length, pump_setting: Length) -> Length {
    difference(well_depth, pump_setting)
}

/// True where a length is short of a limit; one within 10⁻⁹ of `among` meets it.
///
/// # Units
/// Lengths; `among` the largest of the levels that `length` was worked out from.
/// # Range
/// Any lengths.
/// # Source
/// Rounding: a change of units may cost the last digits.
#[must_use]
pub fn short_of(length: Length, limit: Length, among: Length) -> bool {
    length < limit - SLACK * among.abs()
}

/// Share of a level that rounding may cost.
const SLACK: f64 = 1e-9;

fn difference(deeper: Length, shallower: Length) -> Length {
    let difference = deeper - shallower;
    if difference.abs() <= SLACK * deeper.abs().max(shallower.abs()) { feet(0.0) } else { difference }
}
