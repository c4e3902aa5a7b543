//! Words and figures in the picture of the pump: on nothing else, and who gives way. The points and the speeds that
//! matter always have their words; the rest only where there is room.

use super::chart::{Chart, Curve, Speed, Spot};
use super::map::{Map, View};
use crate::locale::{flow, frequency, head, pressure, unit_name, words};
use crate::pictures::labels::{Board, text_width};
use crate::pictures::mark::{Anchor, Hand, Label, Point, Rect};
use crate::pictures::well::Stroke;
use wellwright_core::quantity::{Kind, Length, UnitSystem};

/// From the end of a curve to its name.
pub const OFF_END: f64 = 8.0;
/// Half the room of the handle, across and upright.
const HANDLE: (f64, f64) = (21.0, 27.0);
/// Half the room of a point.
pub const POINT: f64 = 9.0;
/// Room at the right edge.
const EDGE: f64 = 2.0;
/// Places that are tried around a point: for words that never give way, for others, and for those on a phone.
const FAR: u32 = 14;
const NEAR: u32 = 6;
const NEAREST: u32 = 3;
/// Farther than this from what it names, words get a leader.
const LEADER: f64 = 11.0;

/// A text in the picture.
#[derive(Debug, Clone, PartialEq)]
pub struct Letter {
    /// Its class.
    pub class: &'static str,
    /// The text and its room.
    pub label: Label,
}

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
    (width + OFF_END + 6.0).clamp(16.0, 0.34 * view.size.0)
}

/// The board while words are put on it.
struct Writer<'a> {
    board: Board,
    classes: Vec<&'static str>,
    leaders: Vec<Stroke>,
    /// Room of the words written last.
    last: Option<Rect>,
    view: &'a View,
    map: &'a Map,
}

impl Writer<'_> {
    fn keep_off_trace(&mut self, points: &[Spot]) {
        // Every third piece is near enough, and much is asked of the board.
        let last = points.last().filter(|_| points.len() % 3 != 1);
        let coarse: Vec<Point> = points.iter().step_by(3).chain(last).map(|spot| self.map.at(*spot)).collect();
        for pair in coarse.windows(2) {
            self.board.keep_off_line(pair[0], pair[1]);
        }
    }

    fn keep_off_point(&mut self, spot: Option<Spot>) {
        if let Some(at) = spot.map(|spot| self.map.at(spot)) {
            let Point { x, y } = at;
            self.board.keep_off(Rect { left: x, top: y, right: x, bottom: y }.grown(POINT));
        }
    }

    fn write(&mut self, class: &'static str, label: Label) {
        self.board.write(label);
        self.classes.push(class);
    }

    fn insist(&mut self, class: &'static str, from: Point, candidates: Vec<Label>) {
        // Rather where the leader crosses no other words.
        let (mut clear, rest): (Vec<Label>, Vec<Label>) =
            candidates.into_iter().partition(|label| self.is_clear(from, &label.rect));
        clear.extend(rest);
        if let Some(rect) = self.put(class, from, clear) {
            self.lead(from, &rect);
        }
    }

    /// Words at one of the candidates, else wherever they stand on no other.
    fn put(&mut self, class: &'static str, from: Point, mut candidates: Vec<Label>) -> Option<Rect> {
        if !candidates.iter().any(|label| self.board.apart(&label.rect)) {
            let shortest = candidates.iter().min_by(|a, b| a.text.len().cmp(&b.text.len())).cloned();
            candidates.extend(shortest.map_or_else(Vec::new, |label| self.anywhere(&label, from)));
        }
        self.last = self.board.insist(candidates);
        self.classes.extend(self.last.map(|_| class));
        self.last
    }

    /// Places all over the picture, the nearest to a point first.
    fn anywhere(&self, label: &Label, from: Point) -> Vec<Label> {
        let half = (label.rect.bottom - label.rect.top) / 2.0;
        let (down, across) = ((self.view.size.1 / half) as u32, 16);
        let right = self.view.size.0 - (label.rect.right - label.rect.left);
        let place = |n: u32| {
            let (row, column) = (n / across, n % across);
            Point::new(right * f64::from(column) / f64::from(across - 1), half * (1.0 + f64::from(row)))
        };
        let mut places: Vec<Point> = (0..down * across).map(place).collect();
        let off = |at: &Point| (at.x - from.x).hypot(at.y - from.y);
        places.sort_by(|a, b| off(a).total_cmp(&off(b)));
        places.into_iter().map(|at| self.board.label(&label.text, at, Anchor::Start, label.hand)).collect()
    }

    fn offer(&mut self, class: &'static str, from: Point, candidates: Vec<Label>) -> bool {
        let clear: Vec<Label> = candidates.into_iter().filter(|label| self.is_clear(from, &label.rect)).collect();
        let found = self.board.offer(clear);
        if let Some(rect) = &found {
            self.classes.push(class);
            self.lead(from, rect);
        }
        found.is_some()
    }

    /// Whether no other words stand between a point and its own.
    fn is_clear(&self, from: Point, rect: &Rect) -> bool {
        leader(from, rect).is_none_or(|(start, end)| !self.board.covered(start, end))
    }

    /// A leader to words that stand off what they name; others keep off it.
    fn lead(&mut self, from: Point, rect: &Rect) {
        if let Some((start, end)) = leader(from, rect) {
            self.leaders.push(("l-leader", format!("M{:.1} {:.1}L{:.1} {:.1}", start.x, start.y, end.x, end.y)));
            self.board.keep_off_line(start, end);
        }
    }

    /// Places around a point, the near ones first.
    fn around(&self, text: &str, at: Point, hand: Hand, steps: u32) -> Vec<Label> {
        let half = 0.58 * self.view.lettering.size(hand.letters);
        let place = |step: u32| {
            let off = POINT + 2.0 + 7.0 * f64::from(step);
            let (up, down) = (at.y - half - off, at.y + half + off);
            let side = POINT + 3.0;
            [
                (at.x + side, up, Anchor::Start),
                (at.x - side, down, Anchor::End),
                (at.x + side, down, Anchor::Start),
                (at.x - side, up, Anchor::End),
                (at.x, down, Anchor::Middle),
                (at.x, up, Anchor::Middle),
                (at.x + side + 4.0 * f64::from(step), at.y, Anchor::Start),
                (at.x - side - 4.0 * f64::from(step), at.y, Anchor::End),
            ]
        };
        let places = (0..steps).flat_map(place);
        places.map(|(x, y, anchor)| self.board.label(text, Point::new(x, y), anchor, hand)).collect()
    }

    /// Places at the end of a curve, beside it first, then beneath and above.
    fn at_end(&self, text: &str, end: Point, hand: Hand, steps: u32) -> Vec<Label> {
        let beside = (0..steps).flat_map(|step| {
            let off = 6.0 * f64::from(step);
            [(end.x + OFF_END, end.y + off, Anchor::Start), (end.x + OFF_END, end.y - off, Anchor::Start)]
        });
        let under = (3..steps).flat_map(|step| {
            let off = 6.0 * f64::from(step);
            [(end.x, end.y + off, Anchor::Middle), (end.x - 6.0, end.y + off, Anchor::End)]
        });
        let places = beside.chain(under);
        places.map(|(x, y, anchor)| self.board.label(text, Point::new(x, y), anchor, hand)).collect()
    }
}

/// Where a leader from a point to words begins and ends; none where they stand near.
fn leader(from: Point, rect: &Rect) -> Option<(Point, Point)> {
    let to = Point::new(from.x.clamp(rect.left, rect.right), from.y.clamp(rect.top, rect.bottom));
    let far = (to.x - from.x).hypot(to.y - from.y);
    let share = (POINT + 1.0) / far;
    let start = Point::new(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);
    (far > LEADER + POINT).then_some((start, to))
}

/// Writes everything.
#[must_use]
pub fn lettered(chart: &Chart, view: &View, map: &Map) -> Lettered {
    let bounds = Rect { left: 0.0, top: 0.0, right: view.size.0 - EDGE, bottom: view.size.1 };
    let board = Board::new(bounds, view.lettering);
    let mut writer = Writer { board, classes: Vec::new(), leaders: Vec::new(), last: None, view, map };
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
    let Writer { board, classes, leaders, .. } = writer;
    let letters = board.into_labels().into_iter().zip(classes).map(|(label, class)| Letter { class, label }).collect();
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
        // From the nearest of the places along the curve.
        let middle = Point::new((rect.left + rect.right) / 2.0, (rect.top + rect.bottom) / 2.0);
        let off = |spot: &&Point| (spot.x - middle.x).hypot(spot.y - middle.y);
        if let Some(near) = spots.iter().min_by(|a, b| off(a).total_cmp(&off(b))) {
            writer.lead(*near, &rect);
        }
    }
}

/// What is told only where there is room.
fn notes(writer: &mut Writer, chart: &Chart) {
    let (units, map) = (writer.view.units, *writer.map);
    let near = if writer.view.compact() { NEAREST } else { NEAR };
    let charts = &words().charts;
    let apart = |spot: &Spot| {
        let (a, b) = (map.at(*spot), chart.duty.map(|duty| map.at(duty)));
        b.is_none_or(|b| (a.x - b.x).hypot(a.y - b.y) > 2.0 * POINT)
    };
    if let Some(full) = chart.full.filter(apart) {
        let text = (charts.full_speed)(&flow(full.0, units).text());
        let candidates = writer.around(&text, map.at(full), Hand::SMALL, near);
        writer.offer("t-small", map.at(full), candidates);
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

fn note_dead_head(writer: &mut Writer, dead_head: Length, units: UnitSystem) {
    let at = Point::new(writer.map.left, writer.map.y(dead_head));
    let text = (words().charts.dead_head)(&head(dead_head, units).text());
    let size = writer.view.lettering.small;
    let places = [at.y - 0.9 * size, at.y - 1.3 * size, at.y + 1.2 * size, at.y + 1.8 * size, at.y + 2.6 * size];
    let label = |y: f64| writer.board.label(&text, Point::new(at.x + 8.0, y), Anchor::Start, Hand::SMALL);
    let candidates = places.map(label).to_vec();
    writer.offer("t-small in-grey", at, candidates);
}
