//! From flow and head to the picture's pixels and back, and the figures on the axes.

use super::chart::{Extent, Spot};
use crate::pictures::labels::text_width;
use crate::pictures::mark::{Lettering, Point};
use crate::pictures::scale::round_values;
use wellwright_core::quantity::{
    Length, UnitSystem, VolumeRate, feet, gpm, in_feet, in_gpm, in_liters_per_second, in_meters, liters_per_second,
    meters,
};

/// Narrower than this, with small letters of 13 px, words give way to bare figures.
const COMPACT_BELOW: f64 = 560.0;
/// Pixels between two figures of an axis, at least.
const FLOW_APART: f64 = 56.0;
const HEAD_APART: f64 = 46.0;
/// From the figures of the heads to their axis, and the least room left of it: half the handle.
const OFF_AXIS: f64 = 8.0;
const HANDLE_ROOM: f64 = 26.0;

/// Where flows and heads stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Map {
    /// Axis of the heads.
    pub left: f64,
    /// Right end of the curves; the rest is for their names.
    pub right: f64,
    /// Height of the largest head.
    pub top: f64,
    /// Height of the least head.
    pub bottom: f64,
    /// What stands at these ends.
    pub extent: Extent,
}

/// How the picture is looked at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct View {
    /// Width and height.
    pub size: (f64, f64),
    /// Sizes of the lettering.
    pub lettering: Lettering,
    /// Ends of the axes.
    pub extent: Extent,
    /// Units.
    pub units: UnitSystem,
}

impl View {
    /// Whether there is no room for words beside the figures.
    #[must_use]
    pub fn compact(&self) -> bool {
        self.size.0 < COMPACT_BELOW * self.lettering.small / Lettering::USUAL.small
    }

    /// The map, with so much room at the right for the names of the curves.
    #[must_use]
    pub fn map(&self, names: f64) -> Map {
        let (small, plain) = (self.lettering.small, self.lettering.plain);
        let top = (1.6 * plain + 8.0).round();
        let bottom = (self.size.1 - 1.4 * small - 8.0).max(top + 40.0).round();
        let mut map = Map { left: 0.0, right: 1.0, top, bottom, extent: self.extent };
        let widest = map.heads(self).into_iter().map(|(_, text)| text_width(&text, small, false)).fold(0.0, f64::max);
        map.left = (widest + OFF_AXIS + 2.0).max(HANDLE_ROOM).round();
        map.right = (self.size.0 - names).max(map.left + 40.0).round();
        map
    }
}

impl Map {
    /// Place of a flow.
    #[must_use]
    pub fn x(&self, flow: VolumeRate) -> f64 {
        self.left + (flow / self.extent.flow).value * (self.right - self.left)
    }

    /// Height of a head.
    #[must_use]
    pub fn y(&self, head: Length) -> f64 {
        let Extent { low, high, .. } = self.extent;
        self.bottom - ((head - low) / (high - low)).value * (self.bottom - self.top)
    }

    /// Place of a flow and a head.
    #[must_use]
    pub fn at(&self, spot: Spot) -> Point {
        Point::new(self.x(spot.0), self.y(spot.1))
    }

    /// Whether a head is on the axis; while the setpoint is held, one may go beyond.
    #[must_use]
    pub fn shows(&self, spot: &Spot) -> bool {
        (self.extent.low..=self.extent.high).contains(&spot.1)
    }

    /// The head at a height, kept inside the axis.
    #[must_use]
    pub fn head(&self, y: f64) -> Length {
        let Extent { low, high, .. } = self.extent;
        low + (high - low) * ((self.bottom - y) / (self.bottom - self.top)).clamp(0.0, 1.0)
    }

    /// Heights of round heads, with their figures.
    #[must_use]
    pub fn heads(&self, view: &View) -> Vec<(f64, String)> {
        let number = |head| match view.units {
            UnitSystem::Us => in_feet(head),
            UnitSystem::Si => in_meters(head),
        };
        let quantity = |value| match view.units {
            UnitSystem::Us => feet(value),
            UnitSystem::Si => meters(value),
        };
        let apart = HEAD_APART.max(2.6 * view.lettering.small);
        let ends = [self.extent.low, self.extent.high].map(number);
        let values = round_values(ends, apart / (self.bottom - self.top));
        values.into_iter().map(|(value, text)| (self.y(quantity(value)), text)).collect()
    }

    /// Places of round flows up to a place, with their figures.
    #[must_use]
    pub fn flows(&self, view: &View) -> Vec<(f64, String)> {
        let number = |flow| match view.units {
            UnitSystem::Us => in_gpm(flow),
            UnitSystem::Si => in_liters_per_second(flow),
        };
        let quantity = |value| match view.units {
            UnitSystem::Us => gpm(value),
            UnitSystem::Si => liters_per_second(value),
        };
        let apart = FLOW_APART.max(4.0 * view.lettering.small);
        let values = round_values([0.0, number(self.extent.flow)], apart / (self.right - self.left));
        values.into_iter().map(|(value, text)| (self.x(quantity(value)), text)).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn view() -> View {
        let extent = Extent { flow: gpm(40.0), low: feet(0.0), high: feet(860.0) };
        View { size: (800.0, 400.0), lettering: Lettering::USUAL, extent, units: UnitSystem::Us }
    }

    #[test]
    fn axes_bear_round_figures_at_their_places() {
        let (view, map) = (view(), view().map(80.0));
        let texts = |ticks: Vec<(f64, String)>| ticks.into_iter().map(|(_, text)| text).collect::<Vec<_>>().join(" ");
        assert_eq!(texts(map.heads(&view)), "0 200 400 600 800");
        assert_eq!(texts(map.flows(&view)), "0 5 10 15 20 25 30 35 40");
        let si = View { units: UnitSystem::Si, ..view };
        assert_eq!(texts(map.heads(&si)), "0 50 100 150 200 250");
        assert_eq!(texts(map.flows(&si)), "0.0 0.5 1.0 1.5 2.0 2.5");
        let (top, bottom) = (map.heads(&view)[4].0, map.heads(&view)[0].0);
        assert!((bottom - map.bottom).abs() < 1e-9);
        assert!(((bottom - top) / (map.bottom - map.top) - 800.0 / 860.0).abs() < 1e-9);
    }

    #[test]
    fn a_height_gives_its_head_back_and_stays_on_the_axis() {
        let map = view().map(80.0);
        assert!((in_feet(map.head(map.y(feet(560.0)))) - 560.0).abs() < 1e-9);
        assert_eq!(map.head(-100.0), map.extent.high);
        assert_eq!(map.head(9000.0), map.extent.low);
    }
}
