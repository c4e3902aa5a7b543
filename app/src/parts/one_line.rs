//! The one-line diagram of a way to run a motor: supply, equipment, lead, motor, in the symbols of the trade.

use leptos::prelude::*;
use std::fmt::Write as _;
use wellwright_core::job::Way;
use wellwright_core::power::family::{Change, Family, Feed, Filter, Kind};
use wellwright_core::power::generic::generic;

/// Size of the diagram, in pixels.
pub const SIZE: (f64, f64) = (150.0, 36.0);
/// Height of the middle line, and from one line to the next.
const MIDDLE: f64 = 18.0;
const APART: f64 = 5.0;
/// Where the supply begins and the first of the equipment stands.
const START: f64 = 2.0;
const FIRST: f64 = 15.0;
/// Half the height of a box, and its width for one symbol.
const HALF: f64 = 10.0;
const CELL: f64 = 18.0;
/// Between two pieces of equipment.
const GAP: f64 = 5.0;
/// The motor's circle.
const MOTOR: (f64, f64) = (137.0, 11.0);
/// The third line of a converter is made below the two that pass it.
const MADE_BOX: f64 = 22.0;

/// A symbol inside a box or on the lines.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Piece {
    /// A coil in each line.
    Choke,
    /// A coil, and a capacitor across the lines behind it.
    Filter,
    /// A drive: its front end, whether it doubles the voltage, its output.
    Drive { active: bool, doubles: bool },
    /// Two windings.
    Transformer,
    /// Two lines straight through, the third from a box.
    Made,
    /// Two lines straight through, the third from a machine.
    Rotary,
    /// A switch in each line.
    Switch,
}

/// What stands before the lines of the supply.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Source {
    /// The service.
    Service,
    /// Two lines, at a drive with three terminals.
    OneIdle,
    /// A line on poles.
    Poles,
    /// A generator.
    Generator,
}

/// The strokes of a diagram by their pens.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct OneLineStrokes {
    /// Lines and outlines.
    pub lines: String,
    /// Signs inside the outlines.
    pub signs: String,
    /// The lead.
    pub lead: String,
    /// Filled signs.
    pub fills: String,
}

/// The strokes of the diagram of a kind.
#[must_use]
pub fn one_line(kind: Kind) -> OneLineStrokes {
    let family = generic(kind);
    let mut strokes = OneLineStrokes::default();
    let mut x = source(&mut strokes, source_of(kind), family.supply.feed);
    let mut feed = family.supply.feed;
    for (index, piece) in pieces(&family).into_iter().enumerate() {
        if index > 0 {
            lines(&mut strokes.lines, feed, x, x + GAP);
            x += GAP;
        }
        x = draw(&mut strokes, piece, x, feed);
        if !matches!(piece, Piece::Choke | Piece::Filter) {
            feed = family.motor;
        }
    }
    lines(&mut strokes.lead, family.motor, x, MOTOR.0 - MOTOR.1);
    circle(&mut strokes.lines, (MOTOR.0, MIDDLE), MOTOR.1);
    letter_m(&mut strokes.signs, (MOTOR.0, MIDDLE));
    strokes
}

fn source_of(kind: Kind) -> Source {
    match kind {
        Kind::DeratedDrive => Source::OneIdle,
        Kind::ThreePhaseLine => Source::Poles,
        Kind::ThreePhaseGenerator => Source::Generator,
        _ => Source::Service,
    }
}

/// The equipment from the supply to the lead.
fn pieces(family: &Family) -> Vec<Piece> {
    use Kind as K;
    let (active, choked) = match family.kind {
        K::ConvertingActive | K::Doubling | K::StepUpActive => (true, None),
        K::LargeLowHarmonic => (true, Some(Piece::Filter)),
        K::LargeEconomyChoke => (false, Some(Piece::Choke)),
        K::ConvertingPassive | K::LargeEconomy | K::DeratedDrive | K::StepUpPassive => (false, None),
        K::ThreePhaseLine | K::ThreePhaseGenerator => (false, None),
        K::SolidStateConverter => return vec![Piece::Made],
        K::RotaryConverter => return vec![Piece::Rotary],
        K::SinglePhaseMotor => return vec![Piece::Switch],
    };
    let drive = Piece::Drive { active, doubles: family.change == Change::Doubled };
    let filter = matches!(family.filter, Filter::Sine { .. }).then_some(Piece::Filter);
    let up = matches!(family.change, Change::SteppedUp { .. }).then_some(Piece::Transformer);
    choked.into_iter().chain([drive]).chain(filter).chain(up).collect()
}

/// Heights of the lines of a feed.
fn heights(feed: Feed) -> Vec<f64> {
    match feed {
        Feed::SinglePhase => vec![MIDDLE - APART, MIDDLE + APART],
        Feed::ThreePhase => vec![MIDDLE - APART, MIDDLE, MIDDLE + APART],
    }
}

fn lines(path: &mut String, feed: Feed, from: f64, to: f64) {
    for y in heights(feed) {
        let _ = write!(path, "M{from} {y}H{to}");
    }
}

/// Draws the source and its lines; gives where the equipment begins.
fn source(strokes: &mut OneLineStrokes, source: Source, feed: Feed) -> f64 {
    let first = match source {
        Source::Service | Source::OneIdle => FIRST,
        Source::Poles => 42.0,
        Source::Generator => 34.0,
    };
    let from = if source == Source::Generator { START + 2.0 * MOTOR.1 } else { START };
    if source == Source::OneIdle {
        // The terminal between them stays open.
        let _ = write!(strokes.lines, "M{} {MIDDLE}H{first}", first - 4.0);
        circle(&mut strokes.lines, (first - 5.5, MIDDLE), 1.5);
    }
    if source == Source::Poles {
        for x in [9.0, 31.0] {
            let _ = write!(strokes.signs, "M{x} {}V{}", MIDDLE - 11.0, MIDDLE + 15.0);
            for y in heights(feed) {
                let _ = write!(strokes.signs, "M{} {}l5 -5", x - 2.5, y + 2.5);
            }
        }
    }
    if source == Source::Generator {
        circle(&mut strokes.lines, (START + MOTOR.1, MIDDLE), MOTOR.1);
        letter_g(&mut strokes.signs, (START + MOTOR.1, MIDDLE));
    }
    lines(&mut strokes.lines, feed, from, first);
    first
}

/// Draws a piece of equipment from a place on; gives where it ends.
fn draw(strokes: &mut OneLineStrokes, piece: Piece, x: f64, feed: Feed) -> f64 {
    match piece {
        Piece::Choke => coils(strokes, feed, x),
        Piece::Filter => sine_filter(strokes, feed, x),
        Piece::Drive { active, doubles } => drive(strokes, x, active, doubles),
        Piece::Transformer => transformer(strokes, x),
        Piece::Made | Piece::Rotary => made(strokes, piece, x),
        Piece::Switch => switch(strokes, feed, x),
    }
}

fn boxed(path: &mut String, x: f64, width: f64) {
    let _ = write!(path, "M{x} {}h{width}v{}h-{width}z", MIDDLE - HALF, 2.0 * HALF);
}

/// A drive: a box with a cell for its front end, one for the doubling, one for the output.
fn drive(strokes: &mut OneLineStrokes, x: f64, active: bool, doubles: bool) -> f64 {
    let cells = if doubles { 3.0 } else { 2.0 };
    boxed(&mut strokes.lines, x, cells * CELL);
    for cell in 1..cells as u32 {
        let _ = write!(strokes.lines, "M{} {}v{}", x + f64::from(cell) * CELL, MIDDLE - HALF, 2.0 * HALF);
    }
    let middle = x + CELL / 2.0;
    if active {
        transistor(strokes, middle)
    } else {
        diode(strokes, middle)
    }
    if doubles {
        doubler(strokes, middle + CELL);
    }
    sine(&mut strokes.signs, (x + (cells - 0.5) * CELL, MIDDLE), 5.0);
    x + cells * CELL
}

/// A diode, along the lines.
fn diode(strokes: &mut OneLineStrokes, x: f64) {
    let _ = write!(strokes.signs, "M{} {MIDDLE}h12M{} {}v8", x - 6.0, x + 3.0, MIDDLE - 4.0);
    let _ = write!(strokes.fills, "M{} {}l6 4l-6 4z", x - 3.0, MIDDLE - 4.0);
}

/// A transistor with an isolated gate: gate, channel, collector, emitter with its arrow.
fn transistor(strokes: &mut OneLineStrokes, x: f64) {
    let y = MIDDLE;
    let _ = write!(strokes.signs, "M{} {y}h3M{} {}v7M{} {}v8", x - 6.0, x - 3.0, y - 3.5, x - 0.5, y - 4.0);
    let _ = write!(strokes.signs, "M{} {}l5 -4v-2.500M{} {}l5 4v2.500", x - 0.5, y - 2.0, x - 0.5, y + 2.0);
    let _ = write!(strokes.fills, "M{} {}l-3.600 -0.800l2 -2.600z", x + 4.5, y + 6.0);
}

/// Two capacitors, one on the other, tapped between them.
fn doubler(strokes: &mut OneLineStrokes, x: f64) {
    let y = MIDDLE;
    let _ = write!(strokes.signs, "M{x} {}v3M{} {}h8M{} {}h8", y - 8.0, x - 4.0, y - 5.0, x - 4.0, y - 2.5);
    let _ = write!(strokes.signs, "M{x} {}v5M{} {}h8M{} {}h8", y - 2.5, x - 4.0, y + 2.5, x - 4.0, y + 5.0);
    let _ = write!(strokes.signs, "M{x} {}v3M{x} {y}h-6", y + 5.0);
}

fn sine(path: &mut String, (x, y): (f64, f64), half: f64) {
    let _ = write!(path, "M{} {y}q{} -{} {half} 0t{half} 0", x - half, half / 2.0, 1.5 * half);
}

/// A coil in each line.
fn coils(strokes: &mut OneLineStrokes, feed: Feed, x: f64) -> f64 {
    for y in heights(feed) {
        let _ = write!(strokes.signs, "M{x} {y}a2 2 0 0 1 4 0a2 2 0 0 1 4 0a2 2 0 0 1 4 0");
    }
    x + 12.0
}

/// A coil in each line and a capacitor across them.
fn sine_filter(strokes: &mut OneLineStrokes, feed: Feed, x: f64) -> f64 {
    let after = coils(strokes, feed, x);
    let at = after + 5.0;
    lines(&mut strokes.lines, feed, after, at + 3.0);
    // Beneath the lines, from the last of them.
    let lower = MIDDLE + APART;
    let (plate, other) = (lower + 3.5, lower + 6.0);
    let _ = write!(strokes.signs, "M{at} {lower}V{plate}M{} {plate}h7M{} {other}h7M{at} {other}v3", at - 3.5, at - 3.5);
    joint(&mut strokes.fills, (at, lower));
    at + 3.0
}

/// Two circles that overlap.
fn transformer(strokes: &mut OneLineStrokes, x: f64) -> f64 {
    let radius = 7.5;
    circle(&mut strokes.lines, (x + radius, MIDDLE), radius);
    circle(&mut strokes.lines, (x + 2.2 * radius, MIDDLE), radius);
    x + 3.2 * radius
}

/// Two lines straight through, tapped for what makes the third.
fn made(strokes: &mut OneLineStrokes, piece: Piece, x: f64) -> f64 {
    let (upper, lower) = (MIDDLE - APART, MIDDLE + APART);
    let (from, to, y) = (x + 13.0, x + 13.0 + MADE_BOX, MIDDLE + 9.0);
    let (middle, end) = ((from + to) / 2.0, to + 9.0);
    // The second line rises, so that both pass above.
    let _ = write!(strokes.lines, "M{x} {upper}H{end}M{x} {lower}L{} {MIDDLE}H{end}", x + 5.0);
    let _ = write!(strokes.lines, "M{} {MIDDLE}V{y}H{from}M{to} {y}H{}V{lower}H{end}", from - 5.0, to + 4.0);
    joint(&mut strokes.fills, (from - 5.0, MIDDLE));
    if piece == Piece::Rotary {
        let radius = 6.5;
        circle(&mut strokes.lines, (middle, y), radius);
        let _ = write!(strokes.lines, "M{from} {y}H{}M{} {y}H{to}", middle - radius, middle + radius);
        // It turns.
        let _ = write!(strokes.signs, "M{} {y}a3.200 3.200 0 1 0 3.200 -3.200", middle - 3.2);
        let _ = write!(strokes.fills, "M{} {}l3.600 -2.400v4.800z", middle - 3.0, y - 3.2);
    } else {
        let _ = write!(strokes.lines, "M{from} {}h{MADE_BOX}v12h-{MADE_BOX}z", y - 6.0);
        sine(&mut strokes.signs, (middle, y), 5.0);
    }
    end
}

/// A contact in each line.
fn switch(strokes: &mut OneLineStrokes, feed: Feed, x: f64) -> f64 {
    let (from, to) = (x + 14.0, x + 26.0);
    for y in heights(feed) {
        let _ = write!(strokes.lines, "M{x} {y}H{from}M{to} {y}H{}", to + 8.0);
        let _ = write!(strokes.signs, "M{from} {y}L{} {}", to - 0.5, y - 4.0);
    }
    to + 8.0
}

fn circle(path: &mut String, (x, y): (f64, f64), radius: f64) {
    let across = 2.0 * radius;
    let _ = write!(path, "M{} {y}a{radius} {radius} 0 1 0 {across} 0a{radius} {radius} 0 1 0 -{across} 0z", x - radius);
}

/// A point where lines are joined.
fn joint(path: &mut String, (x, y): (f64, f64)) {
    let _ = write!(path, "M{} {y}a1.400 1.400 0 1 0 2.800 0a1.400 1.400 0 1 0 -2.800 0z", x - 1.4);
}

fn letter_m(path: &mut String, (x, y): (f64, f64)) {
    let _ = write!(path, "M{} {}v-9l4.500 6l4.500 -6v9", x - 4.5, y + 4.5);
}

fn letter_g(path: &mut String, (x, y): (f64, f64)) {
    let _ = write!(path, "M{} {}a4.500 4.500 0 1 0 1 2.900h-3.500", x + 3.5, y - 2.9);
}

/// The diagram of a way to run the motor. Words beside it say the same.
#[component]
pub fn OneLine(
    /// The kind of equipment.
    kind: Kind,
    /// The way, which gives the lead its color and dash; without one the lead is ink.
    way: Option<Way>,
) -> impl IntoView {
    let strokes = one_line(kind);
    let lead = match way {
        Some(Way::V240) => "w240 l-lead",
        Some(Way::V480) => "w480 l-lead",
        None => "l-lead",
    };
    let (width, height) = SIZE;
    view! {
        <svg class="one-line" width=width height=height viewBox=format!("0 0 {width} {height}") aria-hidden="true">
            <path class="outline" d=strokes.lines />
            <path class=lead d=strokes.lead />
            <path class="sign" d=strokes.signs />
            <path class="fill" d=strokes.fills />
        </svg>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The ends of a path's strokes; arcs and curves by their ends alone.
    fn ends(path: &str) -> Vec<(f64, f64)> {
        let mut out = Vec::new();
        let (mut x, mut y) = (0.0, 0.0);
        let mut start = (0.0, 0.0);
        let mut rest = path;
        while let Some(command) = rest.chars().next() {
            rest = &rest[1..];
            let end = rest.find(|c: char| c.is_ascii_alphabetic()).unwrap_or(rest.len());
            let values: Vec<f64> = rest[..end].split_whitespace().map(|value| value.parse().unwrap()).collect();
            rest = &rest[end..];
            let last = |n: usize| values[values.len() - n];
            match command {
                'M' | 'L' => (x, y) = (last(2), last(1)),
                'l' => {
                    // A run of steps after one command.
                    for step in values.chunks(2) {
                        (x, y) = (x + step[0], y + step[1]);
                        out.push((x, y));
                    }
                }
                'H' => x = last(1),
                'V' => y = last(1),
                'h' => x += last(1),
                'v' => y += last(1),
                'a' | 'q' | 't' => (x, y) = (x + last(2), y + last(1)),
                'z' => (x, y) = start,
                other => panic!("{other} in {path}"),
            }
            if command == 'M' {
                start = (x, y);
            }
            out.push((x, y));
        }
        out
    }

    fn all(strokes: &OneLineStrokes) -> [&str; 4] {
        [&strokes.lines, &strokes.signs, &strokes.lead, &strokes.fills]
    }

    #[test]
    fn every_diagram_stands_inside_its_room() {
        for kind in Kind::ALL {
            let strokes = one_line(kind);
            let ends: Vec<(f64, f64)> = all(&strokes).into_iter().flat_map(ends).collect();
            assert!(ends.len() > 10, "{kind:?}");
            for (x, y) in ends {
                assert!((1.5..=SIZE.0 - 1.5).contains(&x) && (1.5..=SIZE.1 - 1.5).contains(&y), "{kind:?} {x} {y}");
            }
        }
    }

    #[test]
    fn diagrams_differ_where_the_equipment_does() {
        // A large drive without a choke has the parts of a small one.
        let same = |a: Kind, b: Kind| matches!((a, b), (Kind::ConvertingPassive, Kind::LargeEconomy));
        for (index, a) in Kind::ALL.into_iter().enumerate() {
            for b in Kind::ALL.into_iter().skip(index + 1) {
                assert_eq!(one_line(a) == one_line(b), same(a, b), "{a:?} {b:?}");
            }
        }
    }

    #[test]
    fn the_lead_reaches_the_motor_by_the_lines_that_it_has() {
        for kind in Kind::ALL {
            let strokes = one_line(kind);
            let lead = ends(&strokes.lead);
            let count = if generic(kind).motor == Feed::SinglePhase { 2 } else { 3 };
            assert_eq!(lead.len(), 2 * count, "{kind:?}");
            for run in lead.chunks(2) {
                assert!(run[1].0 - run[0].0 > 18.0 && run[1].0 == MOTOR.0 - MOTOR.1, "{kind:?} {run:?}");
            }
            // From the supply come the lines that the family takes, unless a generator stands there.
            let from_supply = ends(&strokes.lines).into_iter().filter(|(x, _)| *x == START).count();
            let taken = if generic(kind).supply.feed == Feed::SinglePhase { 2 } else { 3 };
            let expected = if kind == Kind::ThreePhaseGenerator { 3 } else { taken };
            assert_eq!(from_supply, expected, "{kind:?}");
        }
    }

    #[test]
    fn the_parts_of_a_family_stand_in_its_diagram() {
        let pieces = |kind| pieces(&generic(kind));
        let drive = |active, doubles| Piece::Drive { active, doubles };
        assert_eq!(pieces(Kind::Doubling), [drive(true, true), Piece::Filter]);
        assert_eq!(pieces(Kind::StepUpPassive), [drive(false, false), Piece::Filter, Piece::Transformer]);
        assert_eq!(pieces(Kind::LargeEconomyChoke), [Piece::Choke, drive(false, false)]);
        assert_eq!(pieces(Kind::RotaryConverter), [Piece::Rotary]);
        assert_eq!(pieces(Kind::ThreePhaseLine), [drive(false, false)]);
    }
}
