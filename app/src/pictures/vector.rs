//! A picture as an SVG: for paper, sharp at any size, and for what moves over a picture that stays.

use super::draw::{Onto, draw};
use super::ink::Ink;
use super::spec::Picture;
use plotters::prelude::{IntoDrawingArea, SVGBackend};

/// Units of the drawing in a pixel of the page: the drawing counts in whole ones.
const FINE: f64 = 8.0;
/// The SVG of plotters writes letters smaller than their size by this.
const LETTERS: f64 = 1.24;

/// The SVG of a picture of this size in pixels of the page; nothing where it could not be drawn.
#[must_use]
pub fn markup(size: (f64, f64), picture: &Picture, ink: &Ink) -> Option<String> {
    written(size, picture, ink, true)
}

/// The same without a ground: what lies under it is seen.
#[must_use]
pub fn markup_over(size: (f64, f64), picture: &Picture, ink: &Ink) -> Option<String> {
    written(size, picture, ink, false)
}

fn written(size: (f64, f64), picture: &Picture, ink: &Ink, covers: bool) -> Option<String> {
    let whole = |side: f64| (side * FINE).round().max(1.0) as u32;
    let mut out = String::new();
    let area = SVGBackend::with_string(&mut out, (whole(size.0), whole(size.1))).into_drawing_area();
    draw(&area, picture, ink, Onto { ratio: FINE, letters: LETTERS, covers }).ok()?;
    drop(area);
    // Its size is that of the place it stands in.
    let (head, body) = out.split_once('>')?;
    let view = head.split_once("viewBox=\"")?.1.split('"').next()?;
    Some(format!(r#"<svg data-drawn="" viewBox="{view}" xmlns="http://www.w3.org/2000/svg">{}"#, body.trim_start()))
}
