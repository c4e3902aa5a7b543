//! Words and figures in the picture of the pump: on nothing else, and who gives way. The points and the speeds that
//! matter always have their words; the rest only where there is room.

use super::chart::{Chart, Curve, Speed, Spot};
use super::map::{Map, View};
use super::writer::{EDGE, OFF_END, POINT, Writer};
use crate::locale::{flow, frequency, head, pressure, unit_name, words};
use crate::pictures::labels::text_width;
use crate::pictures::mark::{Anchor, Hand, Label, Point, Rect};
use crate::pictures::svg::Letter;
use crate::pictures::well::Stroke;
use wellwright_core::quantity::{Kind, Length, UnitSystem};

/// Half the room of the handle, across and upright.
const HANDLE: (f64, f64) = (21.0, 27.0);
/// Places that are tried around a point: for words that never give way, for others, and for those on a phone.
const FAR: u32 = 14;
const NEAR: u32 = 6;
const NEAREST: u32 = 3;
/// The name of the system gets a leader only this far from its curve.
const SYSTEM_LEADER: f64 = 30.0;

/// The words, and the leaders to what they name.
#[derive(Debug, Clone, PartialEq)]
pub struct Lettered {
    /// The words.
    pub letters: Vec<Letter>,
    /// The leaders.
    pub leaders: Vec<Stroke>,
    /// For each curve, whether its name found room.
    pub named: Vec<bool>,
}

/// The names that a curve may have, the longest first.
fn names(curve: &Curve, view: &View) -> Vec<String> {
    let charts = &words().charts;
    let bare = frequency(curve.frequency).text();
    let long = match curve.speed {
        _ if view.compact() => None,
        Speed::Most => Some((charts.highest)(&bare)),
        Speed::Lowest => Some((charts.lowest)(&bare)),
        Speed::Duty | Speed::Between => None,
    };
    long.into_iter().chain([bare]).collect()
}

/// Room that the names of the curves take at the right of the longest.
#[must_use]
pub fn names_room(chart: &Chart, view: &View) -> f64 {
    let first = chart.curves.iter().take(2).flat_map(|curve| names(curve, view));
    let width = first.map(|name| text_width(&name, view.lettering.small, true)).fold(0.0, f64::max);
    // Before the picture has a size there is no room at all.
    (width + OFF_END + 6.0).max(16.0).min(0.34 * view.size.0)
}

/// Writes everything.
#[must_use]
pub fn lettered(chart: &Chart, view: &View, map: &Map) -> Lettered {
    let mut writer = Writer::new(view, map);
    if let Some(foot) = &chart.foot {
        let y = map.y(foot.head);
        let (across, up) = HANDLE;
        writer.board.keep_off(Rect { left: map.left - across, top: y - up, right: map.left + across, bottom: y + up });
    }
    axes(&mut writer);
    for spot in [chart.duty, chart.full, chart.asked.map(|asked| asked.spot)] {
        writer.keep_off_point(spot);
    }
    writer.keep_off_trace(&clipped(&chart.system, map));
    chart.curves.iter().for_each(|curve| writer.keep_off_trace(&curve.points));
    // Where there is width enough, the duty finds another place.
    if !view.compact() {
        note_full(&mut writer, chart, NEAR);
    }
    points(&mut writer, chart);
    let mut named: Vec<bool> = chart.curves.iter().map(|curve| curve.speed != Speed::Between).collect();
    for curve in chart.curves.iter().filter(|curve| curve.speed != Speed::Between) {
        name_always(&mut writer, curve);
    }
    name_system(&mut writer, chart);
    for (curve, named) in chart.curves.iter().zip(&mut named).filter(|(curve, _)| curve.speed == Speed::Between) {
        *named = name_where_free(&mut writer, curve);
    }
    notes(&mut writer, chart);
    let (letters, leaders) = writer.done();
    Lettered { letters, leaders, named }
}

/// The system up to the upper edge of the picture.
#[must_use]
pub fn clipped(trace: &[Spot], map: &Map) -> Vec<Spot> {
    let high = map.extent.high;
    let mut out: Vec<Spot> = Vec::with_capacity(trace.len());
    for spot in trace {
        if spot.1 > high {
            if let Some(before) = out.last().copied() {
                let share = ((high - before.1) / (spot.1 - before.1)).value;
                out.push((before.0 + (spot.0 - before.0) * share, high));
            }
            break;
        }
        out.push(*spot);
    }
    out
}

/// Figures and names of the axes; a figure under the handle, or under a name, gives way.
fn axes(writer: &mut Writer) {
    let (view, map) = (*writer.view, *writer.map);
    let charts = &words().charts;
    let unit = |kind: Kind| unit_name(view.units.unit(kind));
    let small = view.lettering.small;
    let row = map.bottom + 6.0 + 0.75 * small;
    let title = writer.board.label(
        &(charts.head_axis)(unit(Kind::Length)),
        Point::new(0.0, 0.75 * small),
        Anchor::Start,
        Hand::SMALL,
    );
    if writer.board.apart(&title.rect) {
        writer.write("t-small", title);
    }
    let at = Point::new(view.size.0 - EDGE, row);
    let title = writer.board.label(&(charts.flow_axis)(unit(Kind::Flow)), at, Anchor::End, Hand::SMALL);
    writer.write("t-small", title);
    let heads = map.heads(&view).into_iter().map(|(y, text)| (Point::new(map.left - 7.0, y), Anchor::End, text));
    let flows = map.flows(&view).into_iter().map(|(x, text)| (Point::new(x, row), Anchor::Middle, text));
    let figures: Vec<_> = heads.chain(flows).collect();
    for (at, anchor, text) in figures {
        let label = writer.board.label(&text, at, anchor, Hand::SMALL);
        if writer.board.apart(&label.rect) {
            writer.write("t-small", label);
        }
    }
}

/// The point of the duty or what is asked for, and the setpoint: they never give way.
fn points(writer: &mut Writer, chart: &Chart) {
    let (view, map) = (*writer.view, *writer.map);
    let charts = &words().charts;
    let texts = |spot: Spot| (flow(spot.0, view.units).text(), head(spot.1, view.units).text());
    let bare = |spot: Spot| named_point(spot, &view);
    if let Some(asked) = chart.asked {
        let (flow, head) = texts(asked.spot);
        let (class, long) = match asked.missed {
            true => ("t-bold in-stop", (charts.missed)(&flow, &head)),
            false => ("t-bold", (charts.asked)(&flow, &head)),
        };
        let at = map.at(asked.spot);
        let mut candidates = if view.compact() { Vec::new() } else { writer.around(&long, at, Hand::BOLD, FAR) };
        candidates.extend(writer.around(&bare(asked.spot), at, Hand::BOLD, FAR));
        writer.insist(class, at, candidates);
        if asked.missed && view.compact() {
            missed_beneath(writer, at);
        }
    }
    if let Some(duty) = chart.duty {
        let candidates = writer.around(&bare(duty), map.at(duty), Hand::BOLD, FAR);
        writer.insist("t-bold", map.at(duty), candidates);
    }
    if let Some(foot) = &chart.foot {
        let bare = pressure(foot.pressure, view.units).text();
        let texts = if view.compact() { vec![bare] } else { vec![(charts.setpoint)(&bare), bare] };
        let y = map.y(foot.head);
        let candidates: Vec<Label> = texts.iter().flat_map(|text| beside_handle(writer, text, y)).collect();
        writer.put("t-bold in-act", Point::new(map.left, y), candidates);
    }
}

/// On a phone: that the point is out of reach, beneath its figures or above them.
fn missed_beneath(writer: &mut Writer, at: Point) {
    let (text, hand) = (words().charts.missed_short, Hand { bold: true, ..Hand::SMALL });
    let candidates = writer.last.map_or_else(Vec::new, |rect| {
        let half = 0.58 * writer.view.lettering.small + 1.5;
        let places = [(rect.left, Anchor::Start), (rect.right, Anchor::End)];
        let rows =
            [rect.bottom + half, rect.top - half].into_iter().flat_map(|y| places.map(|(x, anchor)| (x, y, anchor)));
        rows.map(|(x, y, anchor)| writer.board.label(text, Point::new(x, y), anchor, hand)).collect()
    });
    let around = writer.around(text, at, hand, FAR);
    writer.put("t-small-bold in-stop", at, candidates.into_iter().chain(around).collect());
}

/// A point's flow and head; with large letters in a narrow picture its flow alone.
#[must_use]
pub fn named_point(spot: Spot, view: &View) -> String {
    let flow = flow(spot.0, view.units).text();
    let both = (words().charts.duty)(&flow, &head(spot.1, view.units).text());
    if text_width(&both, view.lettering.plain, true) < 0.75 * view.size.0 { both } else { flow }
}

/// Places beside the handle, under the system's curve first.
fn beside_handle(writer: &Writer, text: &str, y: f64) -> Vec<Label> {
    let (x, size) = (writer.map.left + HANDLE.0 + 5.0, writer.view.lettering.plain);
    let offs = (0..10).flat_map(|step| {
        let off = size + 6.0 * f64::from(step);
        [y + off, y - off]
    });
    offs.map(|y| writer.board.label(text, Point::new(x, y), Anchor::Start, Hand::BOLD)).collect()
}

fn name_always(writer: &mut Writer, curve: &Curve) {
    let Some(end) = curve.points.last().map(|end| writer.map.at(*end)) else { return };
    let (class, hand) = match curve.at_work {
        true => ("t-small-bold", Hand { bold: true, ..Hand::SMALL }),
        false => ("t-small", Hand::SMALL),
    };
    let names = names(curve, writer.view);
    let near = names.iter().flat_map(|name| writer.at_end(name, end, hand, 4));
    let far = names.iter().rev().flat_map(|name| writer.at_end(name, end, hand, 30));
    let candidates = near.chain(far).collect();
    writer.insist(class, end, candidates);
}

fn name_where_free(writer: &mut Writer, curve: &Curve) -> bool {
    let Some(end) = curve.points.last().map(|end| writer.map.at(*end)) else { return false };
    let bare = frequency(curve.frequency).text();
    let candidates = writer.at_end(&bare, end, Hand::SMALL, 3);
    writer.offer("t-small in-grey", end, candidates)
}

/// The system's name along its curve; it never gives way.
fn name_system(writer: &mut Writer, chart: &Chart) {
    let trace = clipped(&chart.system, writer.map);
    // While the setpoint is held, the curve may have left the picture.
    if trace.len() < 2 {
        return;
    }
    let (name, hand) = (words().charts.system_curve, Hand { bold: true, ..Hand::SMALL });
    let half = 0.58 * writer.view.lettering.small;
    let along = [0.8, 0.65, 0.5, 0.9, 0.35, 0.25, 0.15, 1.0];
    let spots: Vec<Point> = along
        .into_iter()
        .filter_map(|share| trace.get(((trace.len() - 1) as f64 * share).round() as usize))
        .map(|spot| writer.map.at(*spot))
        .collect();
    let offs =
        [1.0, -1.0].into_iter().flat_map(|side| (0..5).map(move |step| side * (half + 5.0 + 4.0 * f64::from(step))));
    let offs: Vec<f64> = offs.collect();
    let on = |point: &Point| -> Vec<Label> {
        let label = |off: &f64| {
            let at = Point::new(point.x, point.y + off);
            writer.board.label(name, at, Anchor::Middle, hand)
        };
        offs.iter().map(label).collect()
    };
    let candidates: Vec<Label> = spots.iter().flat_map(on).collect();
    let Some(first) = spots.first() else { return };
    if let Some(rect) = writer.put("t-small-bold in-water", *first, candidates) {
        let middle = (rect.left + rect.right) / 2.0;
        let at = |pair: &[Spot]| [pair[0], pair[1]].map(|spot| writer.map.at(spot));
        let under = trace.windows(2).map(at).find(|[from, to]| (from.x..=to.x).contains(&middle));
        if let Some([from, to]) = under {
            let share = (middle - from.x) / (to.x - from.x).max(1e-9);
            let on = Point::new(middle, from.y + (to.y - from.y) * share);
            if (rect.top - on.y).max(on.y - rect.bottom) > SYSTEM_LEADER {
                writer.lead(on, &rect);
            }
        }
    }
}

/// What is told only where there is room.
fn notes(writer: &mut Writer, chart: &Chart) {
    let (units, map) = (writer.view.units, *writer.map);
    let near = if writer.view.compact() { NEAREST } else { NEAR };
    let charts = &words().charts;
    if writer.view.compact() {
        note_full(writer, chart, near);
    }
    if let Some(dead_head) = chart.dead_head {
        note_dead_head(writer, dead_head, units);
    }
    if let Some(end) = chart.run_out() {
        let at = map.at(end);
        let text = (charts.run_out)(&flow(end.0, units).text());
        let candidates = writer.at_end(&text, at, Hand::SMALL, 10);
        writer.offer("t-small in-grey", at, candidates);
    }
    if let Some(best) = chart.best.last() {
        let at = map.at(*best);
        let candidates = writer.around(charts.best, at, Hand::SMALL, near);
        writer.offer("t-small in-grey", at, candidates);
    }
}

/// What full speed gives, unless that is the duty.
fn note_full(writer: &mut Writer, chart: &Chart, steps: u32) {
    let map = *writer.map;
    let apart = |spot: &Spot| {
        let (a, b) = (map.at(*spot), chart.duty.map(|duty| map.at(duty)));
        b.is_none_or(|b| (a.x - b.x).hypot(a.y - b.y) > 2.0 * POINT)
    };
    if let Some(full) = chart.full.filter(apart) {
        let text = (words().charts.full_speed)(&flow(full.0, writer.view.units).text());
        let candidates = writer.around(&text, map.at(full), Hand::SMALL, steps);
        writer.offer("t-small", map.at(full), candidates);
    }
}

fn note_dead_head(writer: &mut Writer, dead_head: Length, units: UnitSystem) {
    let at = Point::new(writer.map.left, writer.map.y(dead_head));
    let text = (words().charts.dead_head)(&head(dead_head, units).text());
    let size = writer.view.lettering.small;
    let places = [at.y - 0.9 * size, at.y - 1.3 * size, at.y + 1.2 * size, at.y + 1.8 * size, at.y + 2.6 * size];
    let label = |y: f64| writer.board.label(&text, Point::new(at.x + 8.0, y), Anchor::Start, Hand::SMALL);
    let candidates = places.map(label).to_vec();
    writer.offer("t-small in-grey", at, candidates);
}
