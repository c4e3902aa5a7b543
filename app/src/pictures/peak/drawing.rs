//! The strokes of the picture, lowest first, and its words.

use super::chart::Chart;
use super::letters::lettered;
use super::map::{HALF_BREAK, Map, View};
use crate::pictures::mark::Point;
use crate::pictures::svg::{Letter, circle, octagon};
use crate::pictures::well::Stroke;
use std::fmt::Write as _;
use wellwright_core::job::Way;
use wellwright_core::quantity::ElectricPotential;

/// Half a slash across a broken axis or at the end of a dimension line.
const SLASH: f64 = 4.0;
/// Strokes that hang from the line where it is above the limit: how far apart, how long, how far they lean back.
const HATCH_APART: f64 = 7.0;
pub const HATCH: f64 = 9.0;
const HATCH_LEAN: f64 = 5.0;
/// A tick under the axis.
const TICK: f64 = 4.0;
/// Radius of the job's mark.
pub const MARK: f64 = 6.5;

/// A picture, ready to be put on the page.
#[derive(Debug, Clone, PartialEq)]
pub struct Drawing {
    /// Where lengths and volts stand.
    pub map: Map,
    /// The strokes, lowest first.
    pub strokes: Vec<Stroke>,
    /// The words.
    pub letters: Vec<Letter>,
}

/// The picture of a chart.
#[must_use]
pub fn drawing(chart: &Chart, view: &View) -> Drawing {
    let map = view.map(chart);
    let letters = lettered(chart, view, &map);
    let mut strokes = vec![("l-grid", grid(&map, view)), ("l-axis", axes(&map, view))];
    strokes.push(("l-guide", guides(chart, &map)));
    strokes.push(("l-bus", level(&map, map.left, chart.bus)));
    let lines = map.peak_line(chart);
    let over = if map.shows_limit { above(&lines, map.y(chart.limit.peak())) } else { Vec::new() };
    if !over.is_empty() {
        strokes.push(("l-hatch", hatch(&over, map.y(chart.limit.peak()))));
    }
    if map.shows_limit {
        strokes.push(("l-limit", limit(&map, chart)));
    }
    if map.shows_meeting {
        strokes.push(("l-twice", level(&map, map.x(chart.overlap()), chart.twice())));
    }
    let (thin, heavy) = pens(chart.way);
    strokes.push((thin, path(&lines)));
    if !over.is_empty() {
        strokes.push((heavy, path(&over)));
    }
    mark(chart, &map, &mut strokes);
    Drawing { map, strokes, letters }
}

/// The pens of the peak within the limit and above it.
fn pens(way: Option<Way>) -> (&'static str, &'static str) {
    match way {
        Some(Way::V240) => ("w240 l-peak", "w240 l-over"),
        Some(Way::V480) => ("w480 l-peak", "w480 l-over"),
        None => ("l-peak", "l-over"),
    }
}

fn path(lines: &[Vec<Point>]) -> String {
    let mut path = String::new();
    for line in lines {
        for (index, at) in line.iter().enumerate() {
            let _ = write!(path, "{}{:.1} {:.1}", if index == 0 { 'M' } else { 'L' }, at.x, at.y);
        }
    }
    path
}

fn level(map: &Map, from: f64, potential: ElectricPotential) -> String {
    let y = map.y(potential);
    let pieces = map.pieces(from).into_iter();
    path(&pieces.map(|(from, to)| vec![Point::new(from, y), Point::new(to, y)]).collect::<Vec<_>>())
}

fn grid(map: &Map, view: &View) -> String {
    let mut path = String::new();
    for (y, _) in map.volts(view).into_iter().filter(|(y, _)| *y < map.bottom - 1.0) {
        for (from, to) in map.pieces(map.left) {
            let _ = write!(path, "M{from:.1} {y:.1}H{to:.1}");
        }
    }
    path
}

/// Both axes, each with two slashes where it leaves something out, and ticks.
fn axes(map: &Map, view: &View) -> String {
    let foot = map.bottom - 12.0;
    let cut = map.low > 0.0;
    let mut path = if cut {
        let (low, high) = (foot + HALF_BREAK, foot - HALF_BREAK);
        format!("M{:.1} {:.1}V{low:.1}M{:.1} {high:.1}V{:.1}", map.left, map.bottom, map.left, map.top - 4.0)
    } else {
        format!("M{:.1} {:.1}V{:.1}", map.left, map.bottom, map.top - 4.0)
    };
    for (from, to) in map.pieces(map.left) {
        let _ = write!(path, "M{from:.1} {:.1}H{to:.1}", map.bottom);
    }
    for (x, _) in map.lengths(view) {
        let _ = write!(path, "M{x:.1} {:.1}v{TICK}", map.bottom);
    }
    if let Some(x) = map.behind {
        let _ = write!(path, "M{x:.1} {:.1}v{TICK}", map.bottom);
    }
    if let Some(middle) = map.break_at() {
        for x in [middle - HALF_BREAK, middle + HALF_BREAK] {
            let _ = write!(path, "M{:.1} {:.1}l{:.1} -{:.1}", x - 2.5, map.bottom + 6.0, 5.0, 12.0);
        }
    }
    if cut {
        for y in [foot - HALF_BREAK, foot + HALF_BREAK] {
            let _ = write!(path, "M{:.1} {:.1}l{:.1} -{:.1}", map.left - 6.0, y + 2.5, 12.0, 5.0);
        }
    }
    path
}

/// Upright lines from the axis to the corner of the peak, to where pulses can meet, and to the job's mark.
fn guides(chart: &Chart, map: &Map) -> String {
    let meeting = map.marks_meeting.then(|| map.at(chart.overlap(), chart.twice()));
    let tops = [map.at(chart.critical, chart.full), map.at(chart.lead, chart.peak)].into_iter().chain(meeting);
    let mut path = String::new();
    for top in tops {
        let _ = write!(path, "M{:.1} {:.1}V{:.1}", top.x, map.bottom, top.y);
    }
    path
}

/// The limit, as a dimension line with a slash at each end.
fn limit(map: &Map, chart: &Chart) -> String {
    let y = map.y(chart.limit.peak());
    let mut path = level(map, map.left, chart.limit.peak());
    for x in [map.left, map.right] {
        let _ = write!(path, "M{:.1} {:.1}l{:.1} -{:.1}", x - SLASH, y + SLASH, 2.0 * SLASH, 2.0 * SLASH);
    }
    path
}

/// The parts of lines above a height.
#[must_use]
pub fn above(lines: &[Vec<Point>], y: f64) -> Vec<Vec<Point>> {
    let mut out: Vec<Vec<Point>> = Vec::new();
    for pair in lines.iter().flat_map(|line| line.windows(2)) {
        let (from, to) = (pair[0], pair[1]);
        let cut = |share: f64| Point::new(from.x + (to.x - from.x) * share, y);
        let crossing = (y - from.y) / (to.y - from.y);
        let part = match (from.y < y, to.y < y) {
            (true, true) => [from, to],
            (true, false) => [from, cut(crossing)],
            (false, true) => [cut(crossing), to],
            (false, false) => continue,
        };
        match out.last_mut().filter(|line| line.last() == Some(&part[0])) {
            Some(line) => line.push(part[1]),
            None => out.push(part.to_vec()),
        }
    }
    out
}

/// Strokes that hang from lines and do not pass a height below them.
fn hatch(lines: &[Vec<Point>], floor: f64) -> String {
    let mut path = String::new();
    let mut ahead = HATCH_APART / 2.0;
    for pair in lines.iter().flat_map(|line| line.windows(2)) {
        let (run, rise) = (pair[1].x - pair[0].x, pair[1].y - pair[0].y);
        let long = run.hypot(rise);
        if long < 1e-9 {
            continue;
        }
        let (along, down) = ((run / long, rise / long), (-rise / long, run / long));
        let (dx, dy) = (HATCH * down.0 - HATCH_LEAN * along.0, HATCH * down.1 - HATCH_LEAN * along.1);
        while ahead <= long {
            let (x, y) = (pair[0].x + along.0 * ahead, pair[0].y + along.1 * ahead);
            let share = if dy > 0.0 { ((floor - y) / dy).clamp(0.0, 1.0) } else { 1.0 };
            let _ = write!(path, "M{x:.1} {y:.1}l{:.1} {:.1}", dx * share, dy * share);
            ahead += HATCH_APART;
        }
        ahead -= long;
    }
    path
}

/// The job's mark: a point within the limit, a ring where a remedy keeps it there, else the sign of a stop.
fn mark(chart: &Chart, map: &Map, strokes: &mut Vec<Stroke>) {
    let at = map.at(chart.lead, chart.peak);
    if !chart.over() {
        strokes.push(("m-lead", circle(at, MARK)));
    } else if chart.cured {
        strokes.push(("m-cured", circle(at, MARK)));
    } else {
        strokes.push(("m-over", octagon(at, MARK + 2.5)));
        strokes.push(("m-bar", format!("M{:.1} {:.1}h10", at.x - 5.0, at.y)));
    }
}
