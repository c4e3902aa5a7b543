//! A picture as an SVG, for paper: sharp at any size.

use super::draw::draw;
use super::ink::Ink;
use super::spec::Picture;
use plotters::prelude::{IntoDrawingArea, SVGBackend};

/// Units of the drawing in a pixel of the page: the drawing counts in whole ones.
const FINE: f64 = 8.0;

/// The SVG of a picture of this size in pixels of the page; nothing where it could not be drawn.
#[must_use]
pub fn markup(size: (f64, f64), picture: &Picture, ink: &Ink) -> Option<String> {
    let whole = |side: f64| (side * FINE).round().max(1.0) as u32;
    let mut out = String::new();
    let area = SVGBackend::with_string(&mut out, (whole(size.0), whole(size.1))).into_drawing_area();
    draw(&area, picture, ink, FINE).ok()?;
    drop(area);
    // Its size is that of the place it stands in.
    let (head, body) = out.split_once('>')?;
    let view = head.split_once("viewBox=\"")?.1.split('"').next()?;
    Some(format!(r#"<svg data-drawn="" viewBox="{view}" xmlns="http://www.w3.org/2000/svg">{}"#, body.trim_start()))
}
