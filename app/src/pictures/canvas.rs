//! A picture on a canvas of the page.

use super::batch::Batch;
use super::draw::{Onto, draw};
use super::ink::Ink;
use super::spec::Picture;
use leptos::prelude::window;
use plotters::prelude::IntoDrawingArea;
use web_sys::HtmlCanvasElement;

/// Draws a picture on a canvas of this size, at the pixels of the screen; reports a failure to the console.
pub fn paint(canvas: &HtmlCanvasElement, size: (f64, f64), picture: &Picture, ink: &Ink) {
    let ratio = window().device_pixel_ratio().clamp(1.0, 4.0);
    let [width, height] = [size.0, size.1].map(|side| (side * ratio).round().max(1.0) as u32);
    // Setting a size clears the canvas and takes new memory, so only when it changed.
    if (canvas.width(), canvas.height()) != (width, height) {
        canvas.set_width(width);
        canvas.set_height(height);
    }
    let Some(backend) = Batch::on(canvas) else { return };
    if let Err(error) = draw(&backend.into_drawing_area(), picture, ink, Onto { ratio, letters: 1.0, covers: true }) {
        leptos::logging::error!("The picture could not be drawn: {error}");
    }
}
