//! The casing: closed at its bottom, broken where the well goes on below the scale, dashed where the job says nothing.

use super::frame::{Bottom, Frame};
use super::water;
use super::well::Stroke;
use std::fmt::Write as _;

/// From slot to slot of the screen, its greatest and least length, and its distance from the bottom.
const SLOT: f64 = 4.0;
const SCREEN: (f64, f64) = (68.0, 20.0);
const BELOW_SCREEN: f64 = 6.0;
/// Height and slant of the gap of a break, and from the gap to the end that is drawn.
const GAP: (f64, f64) = (6.0, 7.0);
const BELOW_GAP: f64 = 9.0;

/// The casing and what stands in it, without the pump.
pub fn strokes(frame: &Frame, out: &mut Vec<Stroke>) {
    let ((left, right), cap, end) = (frame.sides, frame.cap, frame.casing_end());
    out.push(("f-void", format!("M{left} {cap}H{right}V{end:.1}H{left}z")));
    water::in_casing(frame, out);
    match frame.bottom {
        Bottom::Unknown => open(frame, out),
        Bottom::At(_) => {
            out.push(("l-casing", format!("M{left} {cap}V{end:.1}H{right}V{cap}")));
            out.push(("l-slot", slots(frame, end)));
        }
        Bottom::Beyond => {
            out.push(("l-casing", format!("M{left} {cap}V{end:.1}H{right}V{cap}")));
            gap(frame, out);
        }
    }
    out.push(("f-ink", format!("M{} {}H{}v5H{}z", left - 4.0, cap - 5.0, right + 4.0, left - 4.0)));
}

/// A casing whose end is not known: drawn out down to the motor, dashed below.
fn open(frame: &Frame, out: &mut Vec<Stroke>) {
    let ((left, right), cap, end) = (frame.sides, frame.cap, frame.casing_end());
    let known = frame.pump.map_or(frame.layout.ground, |pump| pump.end + 12.0).min(end);
    out.push(("l-casing", format!("M{left} {cap}V{known:.1}M{right} {cap}V{known:.1}")));
    if known < end {
        let from = known + 4.0;
        out.push(("l-unknown", format!("M{left} {from:.1}V{end:.1}M{right} {from:.1}V{end:.1}")));
    }
}

/// Slots that cut the walls above the bottom: below the motor, or beside it where there is no room below.
fn slots(frame: &Frame, bottom: f64) -> String {
    let (left, right) = frame.sides;
    let below = frame.pump.map_or(frame.layout.ground, |pump| pump.end + BELOW_SCREEN);
    let least = (bottom - SCREEN.1).max(frame.layout.ground + BELOW_SCREEN);
    let top = below.max(bottom - SCREEN.0).min(least);
    let mut path = String::new();
    let mut y = bottom - BELOW_SCREEN;
    while y > top {
        let _ = write!(path, "M{:.1} {y:.1}h5M{:.1} {y:.1}h5", left - 2.5, right - 2.5);
        y -= SLOT;
    }
    path
}

/// Middle of the break of a well that goes on below the scale.
#[must_use]
pub fn break_at(frame: &Frame) -> f64 {
    frame.casing_end() - BELOW_GAP - (GAP.0 + GAP.1) / 2.0
}

/// The break: two strokes across the casing with nothing between them.
fn gap(frame: &Frame, out: &mut Vec<Stroke>) {
    let (left, right) = (frame.sides.0 - 7.0, frame.sides.1 + 7.0);
    let (low, high) = (break_at(frame) + GAP.1 / 2.0, break_at(frame) - GAP.1 / 2.0);
    let half = GAP.0 / 2.0;
    let (above, below) = ((low - half, high - half), (low + half, high + half));
    out.push((
        "f-sheet",
        format!("M{left} {:.1}L{right} {:.1}V{:.1}L{left} {:.1}z", above.0, above.1, below.1, below.0),
    ));
    out.push((
        "l-mid",
        format!("M{left} {:.1}L{right} {:.1}M{left} {:.1}L{right} {:.1}", above.0, above.1, below.0, below.1),
    ));
}
