//! From length and voltage to the picture's pixels, and the figures on the axes.

use super::chart::Chart;
use crate::pictures::labels::text_width;
use crate::pictures::mark::{Lettering, Point};
use crate::pictures::scale::{round_step, round_values};
use wellwright_core::quantity::{
    ElectricPotential, Length, UnitSystem, feet, in_feet, in_meters, in_volts, meters, volts,
};

/// Narrower than this, with small letters of 13 px, words give way to shorter ones.
const COMPACT_BELOW: f64 = 560.0;
/// Pixels between two figures of an axis, at least.
const LENGTH_APART: f64 = 52.0;
const VOLTS_APART: f64 = 40.0;
/// From the figures of the volts to their axis.
const OFF_AXIS: f64 = 8.0;
/// Room at the right edge.
pub const EDGE: f64 = 6.0;
/// A lead of more critical lengths than this stands behind a break of the axis.
const BROKEN_BEYOND: f64 = 10.0;
/// Critical lengths before the break, at least; all that can be told apart lies there.
const BEFORE_BREAK: f64 = 5.8;
/// Where the break and the lead behind it stand, as shares of the axis: with room enough, and on a phone.
const BREAK_AT: (f64, f64) = (0.74, 0.66);
const LEAD_AT: (f64, f64) = (0.88, 0.86);
/// Height of the foot of a cut axis of volts.
const FOOT: f64 = 20.0;
/// Half the width of a break.
pub const HALF_BREAK: f64 = 5.0;
/// Room beyond the critical length and the lead on an axis without a break.
const BEYOND: (f64, f64) = (1.25, 1.1);
/// A limit above all else by more than this is named and not drawn.
const LIMIT_WITHIN: f64 = 1.6;

/// Where lengths and volts stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Map {
    /// Axis of the volts.
    pub left: f64,
    /// Right end of the axis of lengths.
    pub right: f64,
    /// Upper end of the axis of volts.
    pub top: f64,
    /// Axis of the lengths.
    pub bottom: f64,
    /// Volts at the axis of lengths.
    pub low: f64,
    /// Pixels of a volt.
    pub per_volt: f64,
    /// End of the scale of lengths.
    pub end: Length,
    /// Its place: the right end, or the break.
    pub end_x: f64,
    /// Place of the job's lead behind the break.
    pub behind: Option<f64>,
    /// Whether the limit is drawn.
    pub shows_limit: bool,
    /// Whether the picture reaches to where pulses can meet.
    pub shows_meeting: bool,
    /// Whether there is room to mark where on the axis.
    pub marks_meeting: bool,
}

/// How the picture is looked at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct View {
    /// Width and height.
    pub size: (f64, f64),
    /// Sizes of the lettering.
    pub lettering: Lettering,
    /// Units.
    pub units: UnitSystem,
}

impl View {
    /// Whether there is no room for long words.
    #[must_use]
    pub fn compact(&self) -> bool {
        self.size.0 < COMPACT_BELOW * self.lettering.small / Lettering::USUAL.small
    }

    /// Heights of the figures and of the words under the axis of lengths.
    #[must_use]
    pub fn rows(&self, map: &Map) -> (f64, f64) {
        let figures = map.bottom + 7.0 + 0.65 * self.lettering.small;
        (figures, figures + 1.4 * self.lettering.small)
    }

    /// The map of a chart.
    #[must_use]
    pub fn map(&self, chart: &Chart) -> Map {
        let small = self.lettering.small;
        let top = (1.5 * small + 6.0).round();
        let bottom = (self.size.1 - 2.7 * small - 10.0).max(top + 60.0).round();
        let behind = chart.lead > BROKEN_BEYOND * chart.critical;
        let need =
            if behind { BEFORE_BREAK * chart.critical } else { (BEYOND.0 * chart.critical).max(BEYOND.1 * chart.lead) };
        let end = self.rounded(need);
        let shows_meeting = behind || end > chart.overlap();
        let (levels, shows_limit) = levels(chart, shows_meeting);
        let (low, per_volt) = heights(levels, (bottom - top, small));
        let mut map = Map {
            left: 0.0,
            right: 1.0,
            top,
            bottom,
            low,
            per_volt,
            end,
            end_x: 1.0,
            behind: None,
            shows_limit,
            shows_meeting,
            marks_meeting: shows_meeting && !self.compact(),
        };
        let widest = map.volts(self).into_iter().map(|(_, text)| text_width(&text, small, false)).fold(0.0, f64::max);
        map.left = (widest + OFF_AXIS + 2.0).round();
        map.right = (self.size.0 - EDGE).max(map.left + 60.0).round();
        let share = |share: f64| (map.left + share * (map.right - map.left)).round();
        let pick = |(wide, narrow)| share(if self.compact() { narrow } else { wide });
        (map.end_x, map.behind) = if behind { (pick(BREAK_AT), Some(pick(LEAD_AT))) } else { (map.right, None) };
        map
    }

    /// A round length that is not below another.
    fn rounded(&self, need: Length) -> Length {
        let step = round_step(self.number(need) / 8.0);
        self.length((self.number(need) / step - 1e-9).ceil() * step)
    }

    fn number(&self, length: Length) -> f64 {
        match self.units {
            UnitSystem::Us => in_feet(length),
            UnitSystem::Si => in_meters(length),
        }
    }

    fn length(&self, number: f64) -> Length {
        match self.units {
            UnitSystem::Us => feet(number),
            UnitSystem::Si => meters(number),
        }
    }
}

/// The lowest and the highest level that is drawn, and whether the limit is one of them.
fn levels(chart: &Chart, shows_meeting: bool) -> ((f64, f64), bool) {
    let twice = shows_meeting.then(|| chart.twice());
    let drawn: Vec<f64> = [chart.bus, chart.full, chart.peak].into_iter().chain(twice).map(in_volts).collect();
    let ends = |values: &[f64]| {
        let fold = |pick: fn(f64, f64) -> f64| values.iter().copied().reduce(pick).unwrap_or_default();
        (fold(f64::min), fold(f64::max))
    };
    let (limit, most) = (in_volts(chart.limit.peak()), ends(&drawn).1);
    let shows_limit = limit <= LIMIT_WITHIN * most;
    let all: Vec<f64> = drawn.into_iter().chain(shows_limit.then_some(limit)).collect();
    (ends(&all), shows_limit)
}

/// Volts at the foot and pixels of a volt, with room for words under the lowest level and above the highest.
fn heights((least, most): (f64, f64), (height, small): (f64, f64)) -> (f64, f64) {
    let (foot, head) = (3.0 * small, 2.6 * small);
    let room = (height - foot - head).max(20.0);
    let per_volt = room / (most - least).max(0.1 * most).max(1.0);
    let low = least - foot / per_volt;
    if low > 0.0 { (low, per_volt) } else { (0.0, (height - head).max(20.0) / most.max(1.0)) }
}

impl Map {
    /// Place of a length; one beyond the scale is the job's lead, or the end.
    #[must_use]
    pub fn x(&self, length: Length) -> f64 {
        if length > self.end {
            return self.behind.unwrap_or(self.right);
        }
        self.left + (length / self.end).value * (self.end_x - self.left)
    }

    /// Height of a voltage.
    #[must_use]
    pub fn y(&self, potential: ElectricPotential) -> f64 {
        self.bottom - (in_volts(potential) - self.low) * self.per_volt
    }

    /// Place of a length and a voltage.
    #[must_use]
    pub fn at(&self, length: Length, potential: ElectricPotential) -> Point {
        Point::new(self.x(length), self.y(potential))
    }

    /// Where the axis of lengths is broken.
    #[must_use]
    pub fn break_at(&self) -> Option<f64> {
        self.behind.map(|_| self.end_x + HALF_BREAK)
    }

    /// The pieces of a level line from a place to the right end, without the break.
    #[must_use]
    pub fn pieces(&self, from: f64) -> Vec<(f64, f64)> {
        let Some(middle) = self.break_at() else { return vec![(from, self.right)] };
        let (before, after) = (middle - HALF_BREAK, middle + HALF_BREAK);
        [(from, before), (from.max(after), self.right)].into_iter().filter(|(a, b)| b > a).collect()
    }

    /// The line of the peak, in pieces.
    #[must_use]
    pub fn peak_line(&self, chart: &Chart) -> Vec<Vec<Point>> {
        let corner = self.at(chart.critical, chart.full);
        let mut lines: Vec<Vec<Point>> = self
            .pieces(corner.x)
            .into_iter()
            .map(|(from, to)| vec![Point::new(from, corner.y), Point::new(to, corner.y)])
            .collect();
        let start = self.at(meters(0.0), chart.bus);
        match lines.first_mut() {
            Some(first) => first.insert(0, start),
            None => lines.push(vec![start, corner]),
        }
        lines
    }

    /// Heights of round voltages, with their figures.
    #[must_use]
    pub fn volts(&self, view: &View) -> Vec<(f64, String)> {
        let high = self.low + (self.bottom - self.top) / self.per_volt;
        let apart = VOLTS_APART.max(2.6 * view.lettering.small);
        let values = round_values([self.low, high], apart / (self.bottom - self.top));
        let heights = values.into_iter().map(|(value, text)| (self.y(volts(value)), text));
        // None at the foot, where the axis is cut.
        heights.filter(|(y, _)| *y < self.bottom - FOOT || self.low == 0.0).collect()
    }

    /// Places of round lengths, with their figures.
    #[must_use]
    pub fn lengths(&self, view: &View) -> Vec<(f64, String)> {
        let apart = LENGTH_APART.max(4.0 * view.lettering.small);
        let values = round_values([0.0, view.number(self.end)], apart / (self.end_x - self.left));
        let places = values.into_iter().map(|(value, text)| (self.x(view.length(value).min(self.end)), text));
        places.filter(|(x, _)| self.behind.is_none() || *x < self.end_x - 2.0 * HALF_BREAK).collect()
    }
}
