//! Water in the section: the table with its cone of drawdown, wet ground, and the levels in the casing.

use super::frame::{Bottom, Frame};
use super::mark::Rect;
use super::well::Stroke;
use std::fmt::Write as _;

/// Length of a stroke of wet ground, from stroke to stroke, and from row to row.
const STROKE: f64 = 9.0;
const APART: f64 = 28.0;
const ROW: f64 = 6.0;
/// From point to point of the table.
const STEP: f64 = 6.0;

/// Wet ground below the table, off the words, then the table and its mark.
pub fn in_ground(frame: &Frame, words: &[Rect], out: &mut Vec<Stroke>) {
    let Some(table) = frame.table else { return };
    out.push(("l-wet", wet(frame, words)));
    out.push((
        "l-table",
        format!("{}{}", line(frame, 0.0, frame.sides.0), line(frame, frame.sides.1, frame.layout.rod)),
    ));
    if let Some(x) = frame.mark() {
        out.push(("mark", format!("M{:.1} {:.1}h10l-5 8z", x - 5.0, table - 9.0)));
        out.push(("l-thin", format!("M{:.1} {:.1}h8M{:.1} {:.1}h4", x - 4.0, table + 4.0, x - 2.0, table + 7.0)));
    }
}

/// The table between two places.
fn line(frame: &Frame, from: f64, to: f64) -> String {
    let steps = ((to - from) / STEP).ceil().max(1.0) as u32;
    let mut path = String::new();
    for step in 0..=steps {
        let x = from + (to - from) * f64::from(step) / f64::from(steps);
        if let Some(y) = height(frame, x) {
            let _ = write!(path, "{}{x:.1} {y:.1}", if path.is_empty() { 'M' } else { 'L' });
        }
    }
    path
}

/// Height of the table, flat where the level at work is not known or not shown.
fn height(frame: &Frame, x: f64) -> Option<f64> {
    frame.table_at(x).or(frame.table)
}

/// Broken strokes in the ground, row by row, none of them cut.
fn wet(frame: &Frame, words: &[Rect]) -> String {
    let (left, right) = (frame.sides.0 - 4.0, frame.sides.1 + 4.0);
    let end = match frame.bottom {
        Bottom::At(y) => y + 4.0,
        Bottom::Unknown | Bottom::Beyond => f64::INFINITY,
    };
    let mut path = String::new();
    let mut row = 0_u32;
    let mut y = frame.layout.ground + ROW;
    while y < frame.floor - 2.0 {
        let mut x = if row.is_multiple_of(2) { 3.0 } else { 3.0 + APART / 2.0 };
        while x + STROKE < frame.layout.rod - 1.0 {
            let wet = [x, x + STROKE].into_iter().all(|x| height(frame, x).is_some_and(|table| y > table + 3.0));
            let in_casing = x + STROKE > left && x < right && y < end;
            let stroke = Rect { left: x - 3.0, right: x + STROKE + 3.0, top: y - 1.5, bottom: y + 1.5 };
            if wet && !in_casing && !words.iter().any(|word| word.meets(&stroke)) {
                let _ = write!(path, "M{x} {y}h{STROKE}");
            }
            x += APART;
        }
        (row, y) = (row + 1, y + ROW);
    }
    path
}

/// Water in the casing down to its end, at rest dashed, at work drawn out.
pub fn in_casing(frame: &Frame, out: &mut Vec<Stroke>) {
    let (left, right) = frame.sides;
    let Some(level) = frame.level.filter(|level| *level < frame.casing_end()) else { return };
    out.push(("f-water", format!("M{left} {level:.1}H{right}V{:.1}H{left}z", frame.casing_end())));
    if let Some(table) = frame.table.filter(|table| (table - level).abs() > 3.0 && *table < frame.casing_end()) {
        out.push(("l-rest", format!("M{left} {table:.1}H{right}")));
    }
    out.push(("l-level", format!("M{left} {level:.1}H{right}")));
}

impl Frame {
    /// Place of the mark on the undisturbed table; on a phone the words need the room.
    #[must_use]
    pub fn mark(&self) -> Option<f64> {
        (!self.layout.compact).then_some(14.0)
    }
}
