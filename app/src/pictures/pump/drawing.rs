//! The strokes of the picture, lowest first, and its words.

use super::chart::{Chart, Curve, Speed, Spot};
use super::letters::{Lettered, clipped, lettered, names_room};
use super::map::{Map, View};
use super::writer::POINT;
use crate::pictures::mark::Point;
use crate::pictures::svg::{Letter, circle, octagon};
use crate::pictures::well::Stroke;
use std::fmt::Write as _;
use wellwright_core::quantity::feet;

/// Half a tick across the end of a curve.
const END: f64 = 4.0;

/// A picture, ready to be put on the page.
#[derive(Debug, Clone, PartialEq)]
pub struct Drawing {
    /// Where flows and heads stand.
    pub map: Map,
    /// The strokes, lowest first.
    pub strokes: Vec<Stroke>,
    /// The words.
    pub letters: Vec<Letter>,
}

/// The picture of a chart.
#[must_use]
pub fn drawing(chart: &Chart, view: &View) -> Drawing {
    let map = view.map(names_room(chart, view));
    let Lettered { letters, leaders, named } = lettered(chart, view, &map);
    let mut strokes = vec![("l-grid", grid(&map, view)), ("l-axis", axes(&map))];
    guides(chart, &map, &mut strokes);
    if !chart.best.is_empty() {
        strokes.push(("l-best", line(&map, &chart.best)));
    }
    // The higher speeds over the lower ones; a curve whose name found no room is left out.
    for (curve, _) in chart.curves.iter().zip(named).rev().filter(|(_, named)| *named) {
        strokes.push((pen(curve), with_end(&map, curve)));
    }
    strokes.push(("l-system", line(&map, &clipped(&chart.system, &map))));
    if let Some(foot) = &chart.foot {
        let path = format!("M{:.1} {:.1}V{:.1}", map.left, map.y(foot.base), map.y(foot.head).max(map.top));
        strokes.push(("l-held", path));
    }
    strokes.extend(leaders);
    marks(chart, &map, &mut strokes);
    Drawing { map, strokes, letters }
}

fn pen(curve: &Curve) -> &'static str {
    match curve.speed {
        _ if curve.at_work => "l-work",
        Speed::Most | Speed::Duty => "l-most",
        Speed::Between => "l-between",
        Speed::Lowest => "l-lowest",
    }
}

/// A line through spots.
fn line(map: &Map, spots: &[Spot]) -> String {
    let mut path = String::new();
    for (index, at) in spots.iter().map(|spot| map.at(*spot)).enumerate() {
        let _ = write!(path, "{}{:.1} {:.1}", if index == 0 { 'M' } else { 'L' }, at.x, at.y);
    }
    path
}

/// A curve with the tick where it ends: nothing is known beyond.
fn with_end(map: &Map, curve: &Curve) -> String {
    let mut path = line(map, &curve.points);
    if let Some(end) = curve.points.last().map(|end| map.at(*end)) {
        let _ = write!(path, "M{:.1} {:.1}v{}", end.x, end.y - END, 2.0 * END);
    }
    path
}

fn grid(map: &Map, view: &View) -> String {
    let mut path = String::new();
    for (y, _) in map.heads(view) {
        let _ = write!(path, "M{:.1} {y:.1}H{:.1}", map.left, map.right);
    }
    for (x, _) in map.flows(view) {
        let _ = write!(path, "M{x:.1} {:.1}V{:.1}", map.top, map.bottom);
    }
    path
}

/// The axis of the heads, and the line of no head.
fn axes(map: &Map) -> String {
    let none = map.y(feet(0.0));
    format!("M{:.1} {:.1}V{:.1}M{:.1} {none:.1}H{:.1}", map.left, map.top - 6.0, map.bottom, map.left, map.right + 6.0)
}

/// Dotted lines from the point that counts to both axes.
fn guides(chart: &Chart, map: &Map, strokes: &mut Vec<Stroke>) {
    let spots = [chart.duty, chart.asked.map(|asked| asked.spot)];
    for at in spots.into_iter().flatten().filter(|spot| map.shows(spot)).map(|spot| map.at(spot)) {
        strokes.push(("l-guide", format!("M{:.1} {:.1}H{:.1}V{:.1}", map.left, at.y, at.x, map.bottom)));
    }
}

/// Points, the most important on top.
fn marks(chart: &Chart, map: &Map, strokes: &mut Vec<Stroke>) {
    if let Some(dead_head) = chart.dead_head {
        strokes.push(("m-quiet", circle(Point::new(map.left, map.y(dead_head)), 3.5)));
    }
    if let Some(best) = chart.best.last() {
        let at = map.at(*best);
        strokes.push(("m-quiet", format!("M{:.1} {:.1}l4 4l-4 4l-4 -4z", at.x, at.y - 4.0)));
    }
    if let Some(full) = chart.full.filter(|full| map.shows(full)) {
        strokes.push(("m-ring", circle(map.at(full), 5.0)));
    }
    if let Some(asked) = chart.asked.filter(|asked| map.shows(&asked.spot)) {
        let at = map.at(asked.spot);
        if asked.missed {
            strokes.push(("m-missed", octagon(at, POINT)));
            strokes.push(("m-bar", format!("M{:.1} {:.1}h10", at.x - 5.0, at.y)));
        } else {
            strokes.push(("m-asked", circle(at, 6.0)));
        }
    }
    if let Some(duty) = chart.duty.filter(|duty| map.shows(duty)) {
        strokes.push(("m-duty", circle(map.at(duty), 6.5)));
    }
}
