//! Words of the parts of a well, and where they point.

use super::casing::break_at;
use super::facts::Facts;
use super::frame::{Bottom, Frame, Pump};
use super::spec::View;
use super::spread::{Block, Span};
use super::well_words::{BESIDE, GUTTER, LINE, Style, UNDER_GROUND, Word, Words, base, power, width};
use crate::locale::{self, words};
use wellwright_core::cable::lead::Conductor;
use wellwright_core::quantity::Length;

/// How far the words of a level at rest keep the others off the cone, at most.
const CONE: f64 = 40.0;

/// Where a leader ends.
#[derive(Debug, Clone, Copy)]
struct Aim {
    x: f64,
    /// The stretch of the part that it may end at.
    span: Span,
    dot: bool,
}

/// Words of one part.
pub struct Item {
    lines: Vec<(Style, String)>,
    /// Upper end that it wants.
    want: f64,
    /// Who gives way first; 0 never.
    rank: u8,
    /// None where nothing is drawn, and on a phone.
    aim: Option<Aim>,
}

impl Item {
    /// The room that the words want.
    #[must_use]
    pub fn block(&self, view: &View) -> Block {
        Block { want: self.want, height: LINE * view.lettering.small * self.lines.len() as f64 + 1.0, rank: self.rank }
    }

    /// Writes the lines, and the leader: level where the first of them ends, then one slant.
    pub fn write(self, top: f64, view: &View, frame: &Frame, out: &mut Words) {
        let size = view.lettering.small;
        let right = frame.sides.0 - if view.layout.compact { BESIDE } else { GUTTER };
        for (index, (style, text)) in self.lines.into_iter().enumerate() {
            let y = base(top + LINE * size * index as f64, size);
            out.words.push(Word::flush(style, text, right, y, size));
        }
        let Some(Aim { x, span, dot }) = self.aim else { return };
        let from = top + 0.62 * size;
        let y = from.max(span.0).min(span.1);
        let bend = if (from - y).abs() > 2.0 { frame.sides.0 - 4.0 } else { right + 14.0 };
        let path = format!("M{:.1} {from:.1}H{:.1}L{bend:.1} {y:.1}H{x:.1}", right + 5.0, right + 13.0);
        out.leaders.push(("l-lead", path));
        if dot {
            out.leaders.push(("f-ink", format!("M{:.1} {y:.1}a2.6 2.6 0 1 0 5.2 0a2.6 2.6 0 1 0 -5.2 0", x - 2.6)));
        }
    }
}

/// The words of all parts but the level at rest, whose words stand already.
#[must_use]
pub fn items(facts: &Facts, view: &View, frame: &Frame, rest: Option<Span>) -> Vec<Item> {
    let own = if view.layout.compact { rated(facts, view, frame) } else { pump(facts, view, frame, rest) };
    own.into_iter().chain(at_work(facts, view, frame)).chain(bottom(facts, view, frame)).collect()
}

/// The level at rest stands fast on the undisturbed table, or under it where that lies close to the surface; gives the
/// stretch that other words keep off.
pub fn at_rest(facts: &Facts, view: &View, frame: &Frame, out: &mut Words) -> Option<Span> {
    let (table, depth) = (frame.table?, facts.static_level?);
    let size = view.lettering.small;
    let (x, end) = frame.mark().map_or((frame.sides.0 - BESIDE, true), |mark| (mark + 12.0, false));
    let room = if end { x } else { frame.sides.0 - GUTTER - x };
    let lines = level_lines(depth, words().picture.static_level, view, room);
    let tall = LINE * size * lines.len() as f64;
    let (above, first) = (table - tall - 1.0, view.layout.ground + UNDER_GROUND);
    let top = if above >= first { above } else { (table + 4.0).max(first) };
    for (index, text) in lines.into_iter().enumerate() {
        let y = base(top + LINE * size * index as f64, size);
        out.words.push(if end {
            Word::flush(Style::Water, text, x, y, size)
        } else {
            Word { style: Style::Water, text, x, y, end }
        });
    }
    // The cone falls through the words' room; on a phone there is none beside the casing.
    let cone = if view.layout.compact { table } else { cone(frame).min(table + CONE) };
    Some((top.min(table - 3.0), (top + tall).max(table + 3.0).max(cone + 2.0)))
}

/// Height of the cone where the words of the desk end, else of the table.
fn cone(frame: &Frame) -> f64 {
    frame.table_at(frame.sides.0 - GUTTER).or(frame.table).unwrap_or(0.0)
}

/// A level in words on the desk, its bare depth on a phone; in two lines where one is too wide.
fn level_lines(depth: Length, say: fn(&str) -> String, view: &View, room: f64) -> Vec<String> {
    let text = locale::depth(depth, view.system).text();
    if view.layout.compact {
        parted(&text, view, room, Style::Water)
    } else {
        wrapped(&say(&text), |line| width(line, view.lettering.small, Style::Water) <= room)
    }
}

/// A figure with its unit, one under the other where the room is narrow.
fn parted(text: &str, view: &View, room: f64, style: Style) -> Vec<String> {
    if width(text, view.lettering.small, style) <= room {
        return vec![text.to_owned()];
    }
    text.split('\u{a0}').map(str::to_owned).collect()
}

/// Lines in one style.
fn styled(lines: Vec<String>, style: Style) -> Vec<(Style, String)> {
    lines.into_iter().map(|line| (style, line)).collect()
}

/// A text in lines that fit beside the well.
fn lines(text: &str, style: Style, view: &View, frame: &Frame) -> Vec<(Style, String)> {
    let room = frame.sides.0 - GUTTER - 2.0;
    styled(wrapped(text, |line| width(line, view.lettering.small, style) <= room), style)
}

/// Upper end of words whose first line is level with a place.
fn level_with(y: f64, view: &View) -> f64 {
    y - 0.62 * view.lettering.small
}

/// Phase conductors as ordered: three of a size, or sets of it.
fn phases(conductor: Conductor) -> String {
    let text = locale::conductor(conductor);
    if conductor.sets > 1 { text } else { (words().answer.three_of)(&text) }
}

/// Lead, drop pipe, check valve, pump and motor of the desk.
fn pump(facts: &Facts, view: &View, frame: &Frame, rest: Option<Span>) -> Vec<Item> {
    let Some(Pump { top, intake, end }) = frame.pump else { return Vec::new() };
    let (picture, axis, ground, (pipe, _, motor)) =
        (&words().picture, frame.layout.axis, view.layout.ground, frame.halves());
    let one = |text: &str, style| lines(text, style, view, frame);
    let along = |share: f64| ground + share * (top - ground);
    // A leader to the pipe or the lead is level wherever it can be.
    let hangs = (ground + 4.0, (top - 24.0).max(ground + 4.0));
    let mut out = Vec::new();
    if let Some((conductor, earth)) = facts.lead {
        let mut words = one(&phases(conductor), Style::Bold);
        words.extend(one(&(picture.and_ground)(&locale::lead_size(earth)), Style::Small));
        let aim = Some(Aim { x: frame.lead(), span: hangs, dot: true });
        out.push(Item { lines: words, want: level_with(along(0.22), view), rank: 3, aim });
    }
    if top > ground + 60.0 {
        let aim = Some(Aim { x: axis - pipe, span: hangs, dot: false });
        let mut words = Item { lines: one(picture.drop_pipe, Style::Small), want: 0.0, rank: 9, aim };
        // Rather above the words of the level at rest than pushed below them.
        let (want, height) = (level_with(along(0.62), view), words.block(view).height);
        let over = rest.filter(|rest| want < rest.1 && want + height > rest.0).map(|rest| rest.0 - height);
        words.want = over.filter(|over| *over > along(0.4)).unwrap_or(want);
        out.push(words);
    }
    if let Some(valve) = frame.check_valve() {
        let aim = Some(Aim { x: axis - pipe - 1.4, span: (valve, valve), dot: false });
        out.push(Item { lines: one(picture.check_valve, Style::Small), want: level_with(valve, view), rank: 8, aim });
    }
    let mut words = one(picture.pump_and_motor, Style::Bold);
    words.extend(facts.power.iter().flat_map(|rated| one(&power(*rated, view.system), Style::Small)));
    let y = intake + 0.45 * (end - intake);
    let aim = Some(Aim { x: axis - motor, span: (y, y), dot: false });
    out.push(Item { lines: words, want: level_with(y, view), rank: 0, aim });
    out
}

/// Rated power, the one word of a phone's pump.
fn rated(facts: &Facts, view: &View, frame: &Frame) -> Vec<Item> {
    let Some((pump, rated)) = frame.pump.zip(facts.power) else { return Vec::new() };
    let text = parted(&power(rated, view.system), view, frame.sides.0 - BESIDE, Style::Bold);
    vec![Item { lines: styled(text, Style::Bold), want: pump.intake + 4.0, rank: 0, aim: None }]
}

/// The level at work, under the cone.
fn at_work(facts: &Facts, view: &View, frame: &Frame) -> Option<Item> {
    let compact = view.layout.compact;
    let room = frame.sides.0 - if compact { BESIDE } else { GUTTER + 2.0 };
    let mut lines = level_lines(facts.pumping_level?, words().picture.pumping_level, view, room);
    let (want, aim) = match frame.level {
        Some(level) if compact => (level + 2.0, None),
        Some(level) => {
            let aim = Aim { x: frame.sides.0, span: (level, level), dot: false };
            (level_with(level, view).max(cone(frame) + 2.0), Some(aim))
        }
        None => {
            // Below the end of the scale: last of all, pointing down.
            lines.push("↓".to_owned());
            (frame.floor, None)
        }
    };
    Some(Item { lines: styled(lines, Style::Water), want, rank: 0, aim })
}

/// The well's bottom: its true depth, also where the casing is drawn broken.
fn bottom(facts: &Facts, view: &View, frame: &Frame) -> Option<Item> {
    let text = locale::depth(facts.well_depth?, view.system).text();
    let y = match frame.bottom {
        Bottom::At(y) => y,
        Bottom::Beyond => break_at(frame),
        Bottom::Unknown => return None,
    };
    let (words, want, aim) = if view.layout.compact {
        let lines = parted(&text, view, frame.sides.0 - BESIDE, Style::Small);
        (styled(lines, Style::Small), y - 2.0, None)
    } else {
        let aim = Aim { x: frame.sides.0, span: (y, y), dot: false };
        (lines(&(words().picture.bottom)(&text), Style::Small, view, frame), level_with(y, view), Some(aim))
    };
    Some(Item { lines: words, want, rank: 5, aim })
}

/// A text in lines that fit, parted at spaces that may break.
fn wrapped(text: &str, fits: impl Fn(&str) -> bool) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        match lines.last_mut() {
            Some(line) if fits(&format!("{line} {word}")) => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_part_at_spaces_that_may_break() {
        assert_eq!(wrapped("2 sets of 4/0\u{a0}AWG", |text| text.chars().count() <= 10), ["2 sets of", "4/0\u{a0}AWG"]);
        assert_eq!(wrapped("pump and motor", |_| true), ["pump and motor"]);
        assert!(wrapped("", |_| true).is_empty());
    }
}
