//! Where the parts of the picture stand in the room that the page gives.

use super::mark::Lettering;
use super::scale::Scale;
use wellwright_core::quantity::Length;

/// Narrower than this, the picture is drawn for a phone; with larger lettering sooner.
const COMPACT_BELOW: f64 = 640.0;
/// Small lettering that the measures are made for.
const USUAL: f64 = 14.0;

/// Places of the parts, in pixels from the upper left corner.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Layout {
    /// Width of the picture.
    pub width: f64,
    /// Height of the picture.
    pub height: f64,
    /// Drawn for a phone.
    pub compact: bool,
    /// Height of the ground line.
    pub ground: f64,
    /// Height of the scale's end.
    pub bottom: f64,
    /// Left edge of the rod.
    pub rod: f64,
    /// Width of the rod.
    pub rod_width: f64,
    /// Middle of the well.
    pub axis: f64,
    /// Half the width of the casing.
    pub casing: f64,
    /// Left end of the cost axis.
    pub chart: f64,
    /// How much larger the lettering is than the measures are made for; never below 1.
    pub grown: f64,
}

impl Layout {
    /// The layout for a size and a lettering. The room for words grows with the lettering.
    #[must_use]
    pub fn of(width: f64, height: f64, lettering: Lettering) -> Self {
        let small = lettering.small;
        let grown = (small / USUAL).max(1.0);
        let compact = width < COMPACT_BELOW * grown;
        let more = (small - USUAL).max(0.0);
        let (rod, rod_width, off_rod, casing, ground, under) = if compact {
            // A depth of four figures finds room beside the casing, unless that took too much of the curve's.
            let words = (54.0 + 4.46 * small).min(0.45 * width);
            let rod = (width * 0.3).clamp(105.0, 150.0).max(words);
            (rod.round(), 8.0, 36.0, 12.0, 62.0 + 1.6 * more, 32.0 + 1.2 * more)
        } else {
            ((width * 0.29).clamp(232.0, 250.0).round(), 9.0, 62.0, 19.0, 86.0 + 2.0 * more, 38.0 + 0.8 * more)
        };
        let (ground, chart) = (ground.round(), rod + rod_width + if compact { 30.0 } else { 58.0 });
        let bottom = (height - under).max(ground + 40.0).round();
        Self { width, height, compact, ground, bottom, rod, rod_width, axis: rod - off_rod, casing, chart, grown }
    }

    /// The depth scale down to an end.
    #[must_use]
    pub fn scale(&self, end: Length) -> Scale {
        Scale { ground: self.ground, bottom: self.bottom, end }
    }

    /// Right edge of the rod.
    #[must_use]
    pub fn rod_right(&self) -> f64 {
        self.rod + self.rod_width
    }

    /// Middle of the rod.
    #[must_use]
    pub fn rod_middle(&self) -> f64 {
        self.rod + self.rod_width / 2.0
    }
}
