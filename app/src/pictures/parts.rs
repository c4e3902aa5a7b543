//! Words of the parts of a well, and where they point.

use super::casing::break_at;
use super::facts::Facts;
use super::frame::{Bottom, Frame, Pump};
use super::spec::View;
use super::spread::{Block, MINOR, Role, Span};
use super::well_words::{BESIDE, GUTTER, LINE, Style, UNDER_GROUND, Word, Words, base, power, width};
use crate::locale::{self, words};
use wellwright_core::cable::lead::Conductor;
use wellwright_core::numeric::order::by_number;
use wellwright_core::quantity::{Length, feet};

/// How far the words of a level at rest keep the others off the cone, at most.
const CONE: f64 = 40.0;

/// A level this close above the pump keeps the words of pipe and lead above its own.
const CLEAR_OF_PUMP: f64 = 5.0;
/// How hard words hold on to their place: most of them, levels, and what has no leader.
const HOLD: (f64, f64, f64) = (1.0, 4.0, 1e4);

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
    /// Room kept free under the words.
    under: f64,
    /// How hard it holds on to its place.
    hold: f64,
    /// Who gives way first; 0 never.
    rank: u8,
    /// How it stands among the others.
    role: Role,
    /// True depth of what it names.
    depth: Length,
    /// Left end of the words, where they do not end at the well.
    left: Option<f64>,
    /// None where nothing is drawn, and on a phone.
    aim: Option<Aim>,
}

impl Item {
    /// Words of a part, their first line level with its place.
    fn of(lines: Vec<(Style, String)>, want: f64, rank: u8, depth: Length, aim: Option<Aim>) -> Self {
        Self { lines, want, under: 1.0, hold: HOLD.0, rank, role: Role::Depth, depth, left: None, aim }
    }

    /// The room that the words want.
    #[must_use]
    pub fn block(&self, view: &View) -> Block {
        let height = LINE * view.lettering.small * self.lines.len() as f64 + self.under;
        Block { want: self.want, height, weight: self.hold, rank: self.rank, role: self.role }
    }

    /// Height at which the leader of words that begin here ends, at or above a height.
    fn ends(&self, top: f64, view: &View, under: f64) -> Option<f64> {
        let Aim { span, .. } = self.aim?;
        Some((top + 0.62 * view.lettering.small).min(span.1).min(under - 2.0).max(span.0))
    }

    /// Writes the lines, and the leader: level where the first of them ends, then one slant.
    fn write(self, top: f64, ends: Option<f64>, view: &View, frame: &Frame, out: &mut Words) {
        let size = view.lettering.small;
        let right = frame.sides.0 - if view.layout.compact { BESIDE } else { GUTTER };
        for (index, (style, text)) in self.lines.into_iter().enumerate() {
            let y = base(top + LINE * size * index as f64, size);
            out.words.push(match self.left {
                Some(x) => Word { style, text, x, y, end: false },
                None => Word::flush(style, text, right, y, size),
            });
        }
        let Some((Aim { x, dot, .. }, y)) = self.aim.zip(ends) else { return };
        let from = top + 0.62 * size;
        let bend = if (from - y).abs() > 2.0 { frame.sides.0 - 4.0 } else { right + 14.0 };
        let path = format!("M{:.1} {from:.1}H{:.1}L{bend:.1} {y:.1}H{x:.1}", right + 5.0, right + 13.0);
        out.leaders.push(("l-lead", path));
        if dot {
            out.leaders.push(("f-ink", format!("M{:.1} {y:.1}a2.6 2.6 0 1 0 5.2 0a2.6 2.6 0 1 0 -5.2 0", x - 2.6)));
        }
    }
}

/// Writes items that found a place, from the highest to the lowest. Leaders end in the order of their words, so that
/// none crosses another; a minor one that would is left out with its words.
pub fn write(mut placed: Vec<(f64, Item)>, view: &View, frame: &Frame, out: &mut Words) {
    by_number(&mut placed, |(height, _)| *height);
    let mut ends = ends(&placed, view);
    while let Some(at) = crossing(&placed, &ends) {
        placed.remove(at);
        ends = self::ends(&placed, view);
    }
    for ((top, item), end) in placed.into_iter().zip(ends) {
        item.write(top, end, view, frame, out);
    }
}

/// Heights at which leaders end, the lowest first settled.
fn ends(placed: &[(f64, Item)], view: &View) -> Vec<Option<f64>> {
    let mut under = f64::INFINITY;
    let mut ends: Vec<Option<f64>> = Vec::with_capacity(placed.len());
    for (top, item) in placed.iter().rev() {
        let end = item.ends(*top, view, under);
        under = end.unwrap_or(under);
        ends.push(end);
    }
    ends.reverse();
    ends
}

/// A minor item whose leader crosses another.
fn crossing(placed: &[(f64, Item)], ends: &[Option<f64>]) -> Option<usize> {
    let led: Vec<(usize, f64)> = ends.iter().enumerate().filter_map(|(at, end)| Some((at, (*end)?))).collect();
    let rank = |at: usize| placed[at].1.rank;
    led.windows(2).find_map(|pair| match *pair {
        [(a, above), (b, below)] if above > below => {
            [a, b].into_iter().filter(|at| rank(*at) >= MINOR).max_by_key(|at| rank(*at))
        }
        _ => None,
    })
}

/// The words of all parts, in the order of their depths.
#[must_use]
pub fn items(facts: &Facts, view: &View, frame: &Frame) -> Vec<Item> {
    let own = if view.layout.compact { rated(facts, view, frame) } else { pump(facts, view, frame) };
    let rest = at_rest(facts, view, frame);
    let surface = surface_run(facts, view).filter(|surface| {
        let free = surface.want + surface.block(view).height;
        rest.as_ref().is_none_or(|rest| rest.want >= free)
    });
    let levels = rest.into_iter().chain(at_work(facts, view, frame));
    let mut all: Vec<Item> = surface.into_iter().chain(levels).chain(own).chain(bottom(facts, view, frame)).collect();
    by_number(&mut all, |item| item.depth.value);
    all
}

/// Length of the lead on the surface, under its buried part.
fn surface_run(facts: &Facts, view: &View) -> Option<Item> {
    let surface = facts.surface.filter(|_| !view.layout.compact)?;
    let lines = styled(vec![locale::depth(surface, view.system).text()], Style::Small);
    let item = Item::of(lines, view.layout.ground + UNDER_GROUND, 10, feet(0.0), None);
    Some(Item { hold: HOLD.2, ..item })
}

/// The level at rest stands on the undisturbed table, or under it where that lies close to the surface, and keeps the
/// others off the cone.
fn at_rest(facts: &Facts, view: &View, frame: &Frame) -> Option<Item> {
    let (table, depth) = (frame.table?, facts.static_level?);
    let left = frame.mark().map(|mark| mark + 12.0);
    let room = frame.sides.0 - left.map_or(BESIDE, |left| GUTTER + left);
    let lines = level_lines(depth, words().picture.static_level, view, room);
    let tall = LINE * view.lettering.small * lines.len() as f64;
    let (above, first) = (table - tall - 1.0, view.layout.ground + UNDER_GROUND);
    let top = if above >= first { above } else { (table + 4.0).max(first) };
    // The cone falls through the words' room; on a phone there is none beside the casing.
    let cone = if view.layout.compact { table } else { cone(frame).min(table + CONE) };
    let under = (table + 3.0).max(cone + 2.0) - top - tall;
    let item = Item::of(styled(lines, Style::Water), top, 0, depth, None);
    Some(Item { under: under.max(1.0), hold: HOLD.2, left, ..item })
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
fn pump(facts: &Facts, view: &View, frame: &Frame) -> Vec<Item> {
    let Some((Pump { top, intake, end, .. }, depth)) = frame.pump.zip(facts.depth) else { return Vec::new() };
    let (picture, axis, ground, (pipe, _, motor)) =
        (&words().picture, frame.layout.axis, view.layout.ground, frame.halves());
    let one = |text: &str, style| lines(text, style, view, frame);
    let along = |share: f64| level_with(ground + share * (top - ground), view);
    // A leader to the pipe or the lead is level wherever it can be.
    let hangs = (ground + 4.0, (top - 24.0).max(ground + 4.0));
    let mut out = Vec::new();
    if let Some((conductor, earth)) = facts.lead {
        let mut words = one(&phases(conductor), Style::Bold);
        words.extend(one(&(picture.and_ground)(&locale::lead_size(earth)), Style::Small));
        let aim = Some(Aim { x: frame.lead(), span: (hangs.0, (top - 2.0).max(hangs.0)), dot: true });
        out.push(Item { role: Role::Loose, ..Item::of(words, along(0.22), 3, depth, aim) });
    }
    if top > ground + 60.0 {
        let aim = Some(Aim { x: axis - pipe, span: hangs, dot: false });
        let words = one(picture.drop_pipe, Style::Small);
        out.push(Item { role: Role::Loose, ..Item::of(words, along(0.62), 9, depth, aim) });
    }
    if let Some(valve) = frame.check_valve() {
        let aim = Some(Aim { x: axis - pipe - 1.4, span: (valve, valve), dot: false });
        let (words, at) = (one(picture.check_valve, Style::Small), view.layout.scale(view.end).depth(valve));
        out.push(Item { role: Role::Part, ..Item::of(words, level_with(valve, view), 8, at, aim) });
    }
    let mut words = one(picture.pump_and_motor, Style::Bold);
    words.extend(facts.power.iter().flat_map(|rated| one(&power(*rated, view.system), Style::Small)));
    let want = level_with(intake + 0.45 * (end - intake), view);
    // Between the leaders of a level and a bottom that lie beside the pump.
    let level = frame.level.filter(|level| *level < intake).map_or(top, |level| level.max(top));
    let least = match frame.bottom {
        Bottom::At(bottom) if bottom >= intake => (level + 4.0).min(end - 4.0).min(bottom - 1.0),
        _ => (level + 4.0).min(end - 4.0),
    };
    let aim = Some(Aim { x: axis - motor, span: (least, (end - 4.0).max(least)), dot: false });
    out.push(Item { role: Role::Part, ..Item::of(words, want, 0, depth, aim) });
    out
}

/// Rated power, the one word of a phone's pump.
fn rated(facts: &Facts, view: &View, frame: &Frame) -> Vec<Item> {
    let Some(((pump, depth), rated)) = frame.pump.zip(facts.depth).zip(facts.power) else { return Vec::new() };
    let text = parted(&power(rated, view.system), view, frame.sides.0 - BESIDE, Style::Bold);
    vec![Item { role: Role::Part, ..Item::of(styled(text, Style::Bold), pump.intake + 4.0, 0, depth, None) }]
}

/// The level at work, under the cone.
fn at_work(facts: &Facts, view: &View, frame: &Frame) -> Option<Item> {
    let compact = view.layout.compact;
    let room = frame.sides.0 - if compact { BESIDE } else { GUTTER + 2.0 };
    let depth = facts.pumping_level?;
    let mut lines = level_lines(depth, words().picture.pumping_level, view, room);
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
    // Leaders to pipe and lead end above a pump whose top is not under the level.
    let over = frame.pump.zip(frame.level).is_some_and(|(pump, level)| pump.top < level + CLEAR_OF_PUMP);
    let role = if over { Role::Part } else { Role::Depth };
    Some(Item { hold: HOLD.1, role, ..Item::of(styled(lines, Style::Water), want, 0, depth, aim) })
}

/// The well's bottom: its true depth, also where the casing is drawn broken.
fn bottom(facts: &Facts, view: &View, frame: &Frame) -> Option<Item> {
    let depth = facts.well_depth?;
    let text = locale::depth(depth, view.system).text();
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
    Some(Item::of(words, want, 5, depth, aim))
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
