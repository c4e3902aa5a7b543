//! What the pictures that are SVG share: lettering, marks.

use super::mark::{Anchor, Label, Point};
use leptos::prelude::*;

/// A text in a picture.
#[derive(Debug, Clone, PartialEq)]
pub struct Letter {
    /// Its class.
    pub class: &'static str,
    /// The text and its room.
    pub label: Label,
}

/// A word: at its anchor's edge of its room, its letters in the middle of the room's height.
pub fn written(letter: Letter) -> impl IntoView {
    let rect = letter.label.rect;
    let (anchor, x) = match letter.label.anchor {
        Anchor::Start => ("start", rect.left),
        Anchor::Middle => ("middle", (rect.left + rect.right) / 2.0),
        Anchor::End => ("end", rect.right),
    };
    // Figures stand 0.7 of their size high on the base line.
    let y = (rect.top + rect.bottom) / 2.0 + 0.35 * (rect.bottom - rect.top) / 1.16;
    view! { <text class=letter.class x=x y=y text-anchor=anchor>{letter.label.text}</text> }
}

/// A circle around a point.
#[must_use]
pub fn circle(at: Point, radius: f64) -> String {
    let across = 2.0 * radius;
    format!("M{:.1} {:.1}a{radius} {radius} 0 1 0 {across} 0a{radius} {radius} 0 1 0 -{across} 0z", at.x - radius, at.y)
}

/// The sign of a stop around a point.
#[must_use]
pub fn octagon(at: Point, radius: f64) -> String {
    // Half a side of a regular octagon around a circle of radius 1: tan 22.5°.
    let half = 0.414 * radius;
    let (slant, side) = (radius - half, 2.0 * half);
    format!(
        "M{:.1} {:.1}h{side:.1}l{slant:.1} {slant:.1}v{side:.1}l-{slant:.1} {slant:.1}h-{side:.1}l-{slant:.1} -{slant:.1}v-{side:.1}z",
        at.x - half,
        at.y - radius
    )
}
