//! Words and figures in the picture: on nothing else, and who gives way. The job's lead, its peak, the limit, the bus and
//! the way always have their words, shorter ones where there is little room; the rest only where there is room.

use super::chart::Chart;
use super::drawing::{HATCH, MARK};
use super::map::{Map, View};
use super::writer::{Line, Writer};
use crate::locale::{depth, depth_in_tenths, shown, unit_name, words};
use crate::pictures::labels::text_width;
use crate::pictures::mark::{Anchor, Hand, Label, Point, Rect};
use crate::pictures::svg::Letter;
use wellwright_core::cable::filter::Remedy;
use wellwright_core::numeric::order::by_number;
use wellwright_core::quantity::{ElectricPotential, Kind, Length, Unit, UnitSystem, feet, in_volts, meters};

const SMALL_BOLD: Hand = Hand { bold: true, ..Hand::SMALL };
/// From a line to the words beside it.
const OFF: f64 = 3.5;
/// A line of the words at the job's mark takes at most this share of the picture's width.
const LINE_WITHIN: f64 = 0.5;
/// Room around the figure of the job's lead.
const LEAD_CLEAR: f64 = 6.0;

/// Whole volts.
#[must_use]
pub fn whole_volts(potential: ElectricPotential) -> String {
    shown(in_volts(potential), 0, unit_name(Unit::Volt)).text()
}

/// A length, a short one to tenths.
#[must_use]
pub fn length_text(length: Length, units: UnitSystem) -> String {
    let short = match units {
        UnitSystem::Us => feet(10.0),
        UnitSystem::Si => meters(10.0),
    };
    if length < short { depth_in_tenths(length, units).text() } else { depth(length, units).text() }
}

/// A bold text in as few lines as a width allows, about equally long, broken between words.
fn wrapped(text: &str, size: f64, most: f64) -> Vec<String> {
    let lines = broken(text, size, most);
    let narrower = (1..20).map(|step| broken(text, size, most * (1.0 - 0.04 * f64::from(step))));
    narrower.take_while(|narrower| narrower.len() == lines.len()).last().unwrap_or(lines)
}

fn broken(text: &str, size: f64, most: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        match lines.last_mut().filter(|line| text_width(&format!("{line} {word}"), size, true) <= most) {
            Some(line) => {
                line.push(' ');
                line.push_str(word);
            }
            None => lines.push(word.to_owned()),
        }
    }
    lines
}

/// Writes everything.
#[must_use]
pub fn lettered(chart: &Chart, view: &View, map: &Map) -> Vec<Letter> {
    let mut writer = Writer::new(view);
    axes(&mut writer, chart, view, map);
    keep_off(&mut writer, chart, map);
    limit(&mut writer, chart, view, map);
    twice(&mut writer, chart, map);
    way(&mut writer, chart, view, map);
    job(&mut writer, chart, view, map);
    bus(&mut writer, chart, map);
    critical(&mut writer, chart, view, map);
    notes(&mut writer, chart, view, map);
    writer.done()
}

/// Figures and names of the axes. The job's length comes first; a figure under it gives way.
fn axes(writer: &mut Writer, chart: &Chart, view: &View, map: &Map) {
    let peak = &words().peak;
    let (figures, names) = view.rows(map);
    let small = view.lettering.small;
    let title = (peak.volts_axis)(unit_name(Unit::Volt));
    let title = writer.board.label(&title, Point::new(0.0, 0.7 * small), Anchor::Start, Hand::SMALL);
    writer.insist("t-small", Point::new(0.0, 0.0), vec![title]);
    let lead = (peak.lead)(&length_text(chart.lead, view.units));
    let x = map.x(chart.lead);
    let label = writer.board.label(&lead, Point::new(x, figures), Anchor::Middle, SMALL_BOLD);
    let width = label.rect.right - label.rect.left;
    // Moved inside the picture where the lead is at an end of the axis.
    let left = label.rect.left.clamp(0.0, (view.size.0 - width - 4.0).max(0.0));
    let label = writer.board.label(&lead, Point::new(left, figures), Anchor::Start, SMALL_BOLD);
    let lead = writer.insist("t-small-bold", Point::new(x, figures), vec![label]);
    let unit = unit_name(view.units.unit(Kind::Length));
    let title = (peak.length_axis)(unit);
    let at = Point::new(map.right, names);
    let label = |text: &str| writer.board.label(text, at, Anchor::End, Hand::SMALL);
    let (alone, both) = (label(&title), label(&(peak.and_broken)(&title)));
    let own =
        map.break_at().map(|x| writer.board.label(peak.axis_broken, Point::new(x, names), Anchor::Middle, Hand::SMALL));
    match own {
        Some(own) if own.rect.right + 16.0 < alone.rect.left => {
            writer.insist("t-small", at, vec![own]);
            writer.insist("t-small", at, vec![alone]);
        }
        Some(_) => {
            let fits = both.rect.left >= 0.0;
            writer.insist("t-small", at, vec![if fits { both } else { alone }]);
        }
        None => {
            writer.insist("t-small", at, vec![alone]);
        }
    }
    // A figure close beside the lead's reads as part of it.
    lead.into_iter().for_each(|rect| writer.board.keep_off(rect.grown(LEAD_CLEAR)));
    let volts = map.volts(view).into_iter().map(|(y, text)| (Point::new(map.left - 8.0, y), Anchor::End, text));
    let lengths = map.lengths(view).into_iter().map(|(x, text)| (Point::new(x, figures), Anchor::Middle, text));
    let all: Vec<_> = volts.chain(lengths).collect();
    for (at, anchor, text) in all {
        let label = writer.board.label(&text, at, anchor, Hand::SMALL);
        if writer.board.free(&label.rect) {
            writer.offer("t-small", vec![label]);
        }
    }
}

/// Keeps words off lines and marks.
fn keep_off(writer: &mut Writer, chart: &Chart, map: &Map) {
    let across = |writer: &mut Writer, from: f64, potential: ElectricPotential| {
        let y = map.y(potential);
        writer.board.keep_off_line(Point::new(from, y), Point::new(map.right, y));
    };
    across(writer, map.left, chart.bus);
    if map.shows_limit {
        across(writer, map.left, chart.limit.peak());
    }
    let tops = [map.at(chart.critical, chart.full), map.at(chart.lead, chart.peak)];
    if map.shows_meeting {
        across(writer, map.x(chart.overlap()), chart.twice());
    }
    for top in tops {
        writer.board.keep_off_line(top, Point::new(top.x, map.bottom));
    }
    writer.board.keep_off_line(Point::new(map.left, map.top), Point::new(map.left, map.bottom));
    let limit = map.y(chart.limit.peak());
    for pair in map.peak_line(chart).iter().flat_map(|line| line.windows(2)) {
        writer.board.keep_off_line(pair[0], pair[1]);
        // The strokes under the line above the limit.
        let under = (limit - pair[1].y).min(HATCH);
        if map.shows_limit && under > 0.0 && (pair[0].y - pair[1].y).abs() < 1e-9 {
            let (a, b) = (pair[0].y + under, pair[1].y + under);
            writer.board.keep_off_line(Point::new(pair[0].x, a), Point::new(pair[1].x, b));
        }
    }
    let spot = |x: f64, y: f64| Rect { left: x, top: y, right: x, bottom: y };
    let at = map.at(chart.lead, chart.peak);
    writer.board.keep_off(spot(at.x, at.y).grown(MARK + 1.5));
    if let Some(x) = map.break_at() {
        writer.board.keep_off(spot(x, map.bottom).grown(8.0));
    }
}

/// The peak of the job's lead and what is done about it.
fn job(writer: &mut Writer, chart: &Chart, view: &View, map: &Map) {
    let peak = &words().peak;
    let at = map.at(chart.lead, chart.peak);
    let most = LINE_WITHIN * view.size.0;
    let volts = whole_volts(chart.peak);
    let long = wrapped(&(peak.without)(chart.fitted, &volts), view.lettering.plain, most);
    let volts = if long.len() <= 2 { long } else { vec![volts] };
    let fitted = (peak.fitted)(chart.fitted);
    let note = match (chart.fitted, chart.cured) {
        (Remedy::NoneNeeded, true) => String::new(),
        (Remedy::NoneNeeded, false) => peak.over.to_owned(),
        (_, true) => fitted.to_owned(),
        (_, false) => (peak.not_enough)(fitted),
    };
    let stop = chart.over() && !chart.cured;
    let (bold, small) = if stop { ("t-bold in-stop", "t-small-bold in-stop") } else { ("t-bold", "t-small-bold") };
    let notes = wrapped(&note, view.lettering.small, most);
    let mut lines: Vec<Line> = volts.iter().map(|text| (bold, text.as_str(), Hand::BOLD)).collect();
    lines.extend(notes.iter().map(|text| (small, text.as_str(), SMALL_BOLD)));
    let height = writer.height(&lines);
    let side = MARK + 4.0;
    let ends = |y: f64| [(Point::new(at.x - side, y), Anchor::End), (Point::new(at.x + side, y), Anchor::Start)];
    let off = |step: u32| MARK + 3.0 + 5.0 * f64::from(step);
    let under = |step: u32| ends(at.y + off(step));
    let over = |step: u32| ends(at.y - off(step) - height);
    let near = (0..2).flat_map(|step| under(step).into_iter().chain(over(step)));
    let far = (2..24).flat_map(under).chain((2..24).flat_map(over));
    let places: Vec<_> = near.chain(far).collect();
    writer.stack(&lines, at, &places);
}

/// Places along a level line from a place on, for the texts that are not wider than the picture: at that place, beside the
/// upright line of the critical length, then anywhere.
fn along(writer: &Writer, texts: &[String], (at, map): (Along, &Map), hand: Hand, offs: &[f64]) -> Vec<Label> {
    let starts = [at.from, at.beside.max(at.from)];
    let places = texts.iter().flat_map(|text| writer.along(text, (at.y, &starts, map.right), hand, offs));
    places.filter(|label| label.rect.right - label.rect.left <= writer.width()).collect()
}

/// A level line that has words along it.
struct Along {
    y: f64,
    from: f64,
    beside: f64,
}

impl Along {
    fn new(chart: &Chart, map: &Map, y: f64) -> Self {
        Self { y, from: map.left + 8.0, beside: map.x(chart.critical) + 5.0 }
    }
}

fn limit(writer: &mut Writer, chart: &Chart, view: &View, map: &Map) {
    let peak = &words().peak;
    let volts = whole_volts(chart.limit.peak());
    let row = 1.3 * view.lettering.small;
    if !map.shows_limit {
        let texts = [(peak.limit_beyond)(&volts), (peak.limit_higher)(&volts), (peak.limit_short)(&volts)];
        let line = Along::new(chart, map, map.top - 4.0);
        let candidates = along(writer, &texts, (line, map), SMALL_BOLD, &[OFF, row, 2.0 * row]);
        writer.insist("t-small-bold", Point::new(map.left, map.top), candidates);
        return;
    }
    let y = map.y(chart.limit.peak());
    // Beside words on twice the bus there is no room for long ones.
    let crowded = map.shows_meeting && (y - map.y(chart.twice())).abs() < row;
    let (long, short) = ((peak.limit)(chart.limit, &volts), (peak.limit_short)(&volts));
    let texts = if crowded && view.compact() { vec![short] } else { vec![long, short] };
    let line = || Along::new(chart, map, y);
    // On a phone the words at the job's mark need the room between the peak and the limit.
    let offs = if view.compact() && chart.full > chart.limit.peak() { [OFF, -OFF] } else { [-OFF, OFF] };
    let mut candidates = along(writer, &texts, (line(), map), SMALL_BOLD, &offs);
    candidates.extend(along(writer, &texts, (line(), map), SMALL_BOLD, &[-OFF - row, OFF + row]));
    writer.insist("t-small-bold", Point::new(map.left, y), candidates);
}

fn bus(writer: &mut Writer, chart: &Chart, map: &Map) {
    let (peak, volts) = (&words().peak, whole_volts(chart.bus));
    let texts = [(peak.bus)(&volts), (peak.bus_short)(&volts)];
    let y = map.y(chart.bus);
    let candidates = along(writer, &texts, (Along::new(chart, map, y), map), Hand::SMALL, &[OFF, -OFF]);
    writer.insist("t-small", Point::new(map.left, y), candidates);
}

/// That twice the bus is no ceiling: above the broken line, its right end first.
fn twice(writer: &mut Writer, chart: &Chart, map: &Map) {
    if !map.shows_meeting {
        return;
    }
    let peak = &words().peak;
    let volts = whole_volts(chart.twice());
    let y = map.y(chart.twice());
    let texts = [(peak.twice)(&volts), (peak.twice_short)(&volts)];
    let line = Along::new(chart, map, y);
    let mut candidates = along(writer, &texts, (line, map), Hand::SMALL, &[-OFF, -2.0 * OFF]);
    by_number(&mut candidates, |label| -label.rect.right);
    by_number(&mut candidates, |label| -(label.text.len() as f64));
    writer.insist("t-small", Point::new(map.right, y), candidates);
}

/// The critical length beside its upright line, at the foot.
fn critical(writer: &mut Writer, chart: &Chart, view: &View, map: &Map) {
    let peak = &words().peak;
    let length = length_text(chart.critical, view.units);
    let half = 0.58 * view.lettering.small;
    let x = map.x(chart.critical);
    let label = |text: &str| -> Vec<Label> {
        let place = |step: u32| {
            let y = map.bottom - half - 3.0 - 6.0 * f64::from(step);
            [(x + 5.0, y, Anchor::Start), (x - 5.0, y, Anchor::End)]
        };
        let places = (0..8).flat_map(place);
        places.map(|(x, y, anchor)| writer.board.label(text, Point::new(x, y), anchor, Hand::SMALL)).collect()
    };
    let mut candidates = label(&(peak.critical)(&length));
    candidates.extend(label(&(peak.critical_short)(&length)));
    writer.offer("t-small", candidates);
}

/// The name of the way, under its line.
fn way(writer: &mut Writer, chart: &Chart, view: &View, map: &Map) {
    let small = view.lettering.small;
    let Some(way) = chart.way else { return };
    let corner = map.at(chart.critical, chart.full);
    let text = [(words().answer.way)(way).to_owned()];
    let under = HATCH + OFF;
    let room = map.y(chart.limit.peak()) - corner.y;
    let tight = map.shows_limit && room > 0.0 && room < under + 2.5 * small;
    let second = OFF + 1.3 * small;
    let above = [-OFF, -second, -second - 8.0];
    let offs = if tight { [above.as_slice(), &[under]].concat() } else { [&[under], above.as_slice()].concat() };
    let corner_x = corner.x.min(map.right - 90.0).max(map.left);
    let line = || Along { from: corner_x + 5.0, ..Along::new(chart, map, corner.y) };
    let mut candidates = along(writer, &text, (line(), map), SMALL_BOLD, &offs);
    // Where the line is level for a short stretch only, beside its rise.
    candidates.extend(along(writer, &text, (Along::new(chart, map, corner.y), map), SMALL_BOLD, &offs));
    writer.insist("t-small-bold", corner, candidates);
}

/// What is told only where there is room.
fn notes(writer: &mut Writer, chart: &Chart, view: &View, map: &Map) {
    let peak = &words().peak;
    let small = view.lettering.small;
    if map.marks_meeting {
        let text = (peak.meet)(&length_text(chart.overlap(), view.units));
        let x = map.x(chart.overlap());
        let rows = (0..10).map(|step| map.bottom - 0.58 * small - 3.0 - 8.0 * f64::from(step));
        let places = rows.flat_map(|y| [(x + 5.0, y, Anchor::Start), (x - 5.0, y, Anchor::End)]);
        let label = |(x, y, anchor)| writer.board.label(&text, Point::new(x, y), anchor, Hand::SMALL);
        let candidates = places.map(label).collect();
        writer.offer("t-small in-grey", candidates);
    }
    if let Some(from) = chart.over_from().filter(|_| map.shows_limit) {
        let text = [(peak.over_from)(&length_text(from, view.units))];
        let y = map.y(chart.limit.peak());
        let line = Along { from: map.x(from) + 8.0, ..Along::new(chart, map, y) };
        let candidates = along(writer, &text, (line, map), Hand::SMALL, &[OFF, -OFF]);
        writer.offer("t-small in-grey", candidates);
    }
}
