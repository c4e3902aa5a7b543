//! A picture on a plotters drawing area.
//!
//! Everything is multiplied by the pixels of the screen per pixel of the page, since an area counts in whole pixels: lines
//! are crisp on any screen. Labels stand at the edge of the room that was kept for them, so nothing is measured.

use super::ink::Ink;
use super::mark::{Anchor, Dash, Label, Mark, Pen, Point, Tint};
use super::spec::Picture;
use plotters::coord::Shift;
use plotters::element::{Circle, PathElement, Polygon, Rectangle, Text};
use plotters::prelude::{DrawingArea, DrawingBackend};
use plotters::style::text_anchor::{HPos, Pos, VPos};
use plotters::style::{Color as _, FontDesc, FontFamily, FontStyle, RGBAColor, TextStyle};

type Done<B> = Result<(), plotters::drawing::DrawingAreaErrorKind<<B as DrawingBackend>::ErrorType>>;

/// Dots of a guide and of a dotted line: dot and gap, in pixels of the page.
const GUIDE: (f64, f64) = (2.0, 6.0);
const DOTTED: (f64, f64) = (2.0, 4.0);

/// A drawing area with the theme and the scale of the screen.
struct Sheet<'a, B: DrawingBackend> {
    area: &'a DrawingArea<B, Shift>,
    ink: &'a Ink,
    onto: Onto,
}

/// What a picture is drawn onto.
#[derive(Debug, Clone, Copy)]
pub struct Onto {
    /// Pixels of the area per pixel of the page.
    pub ratio: f64,
    /// Size that the area wants named for letters of size 1.
    pub letters: f64,
    /// Whether it covers what lies under it.
    pub covers: bool,
}

/// Draws a picture.
///
/// # Errors
/// Those of the backend.
pub fn draw<B: DrawingBackend>(area: &DrawingArea<B, Shift>, picture: &Picture, ink: &Ink, onto: Onto) -> Done<B> {
    let sheet = Sheet { area, ink, onto };
    if onto.covers {
        area.fill(&ink.color(Tint::Sheet))?;
    }
    for mark in &picture.marks {
        sheet.mark(mark)?;
    }
    // Labels stand apart, so that their rooms can be cleared all at once.
    for label in &picture.labels {
        sheet.halo(label)?;
    }
    for label in &picture.labels {
        sheet.label(label)?;
    }
    area.present()
}

impl<B: DrawingBackend> Sheet<'_, B> {
    fn px(&self, value: f64) -> i32 {
        (value * self.onto.ratio).round() as i32
    }

    fn place(&self, point: Point) -> (i32, i32) {
        (self.px(point.x), self.px(point.y))
    }

    /// Width of a pen in whole pixels of the area, the thinner where it lies between, never none.
    fn width(&self, pen: Pen) -> i32 {
        ((self.ink.pen(pen) * self.onto.ratio - 0.25).round() as i32).max(1)
    }

    fn mark(&self, mark: &Mark) -> Done<B> {
        match mark {
            Mark::Line { points, pen, tint, dash } => self.line(points, *pen, *tint, *dash),
            Mark::Area { points, tint } => {
                let points: Vec<(i32, i32)> = points.iter().map(|point| self.place(*point)).collect();
                self.area.draw(&Polygon::new(points, self.ink.color(*tint)))
            }
            Mark::Dot { at, radius, fill, rim } => {
                let (at, half) = (self.place(*at), self.ink.pen(Pen::Mid) / 2.0);
                let disk =
                    |radius: f64, tint: Tint| Circle::new(at, self.px(radius).max(1), self.ink.color(tint).filled());
                self.area.draw(&disk(radius + half, *rim))?;
                self.area.draw(&disk(radius - half, *fill))
            }
        }
    }

    fn line(&self, points: &[Point], pen: Pen, tint: Tint, dash: Dash) -> Done<B> {
        let color = self.ink.color(tint);
        let pattern = match dash {
            Dash::Solid | Dash::Way(wellwright_core::job::Way::V480) => None,
            Dash::Way(wellwright_core::job::Way::V240) => Some(self.ink.dash),
            Dash::Guide => Some(GUIDE),
            Dash::Dotted => Some(DOTTED),
        };
        for pair in points.windows(2) {
            let &[from, to] = pair else { continue };
            match pattern {
                None => self.stroke(from, to, pen, color)?,
                Some((on, off)) => {
                    for (start, end) in dashes(from, to, on, off) {
                        self.stroke(start, end, pen, color)?;
                    }
                }
            }
        }
        Ok(())
    }

    /// One straight stroke. Level and upright ones are filled boxes, since a path on whole pixels would blur.
    fn stroke(&self, from: Point, to: Point, pen: Pen, color: RGBAColor) -> Done<B> {
        let ((x0, y0), (x1, y1), width) = (self.place(from), self.place(to), self.width(pen));
        let before = width / 2;
        if y0 == y1 {
            let corners = [(x0.min(x1), y0 - before), (x0.max(x1), y0 - before + width)];
            return self.area.draw(&Rectangle::new(corners, color.filled()));
        }
        if x0 == x1 {
            let corners = [(x0 - before, y0.min(y1)), (x0 - before + width, y0.max(y1))];
            return self.area.draw(&Rectangle::new(corners, color.filled()));
        }
        self.area.draw(&PathElement::new([(x0, y0), (x1, y1)], color.stroke_width(width as u32)))
    }

    /// Clears the room of a label.
    fn halo(&self, label: &Label) -> Done<B> {
        if label.hand.tint == Tint::OnAct {
            return Ok(());
        }
        let rect = label.rect;
        let halo = [self.place(Point::new(rect.left, rect.top)), self.place(Point::new(rect.right, rect.bottom))];
        self.area.draw(&Rectangle::new(halo, self.ink.color(Tint::Sheet).filled()))
    }

    fn label(&self, label: &Label) -> Done<B> {
        let rect = label.rect;
        let (x, across) = match label.anchor {
            Anchor::Start => (rect.left, HPos::Left),
            Anchor::Middle => ((rect.left + rect.right) / 2.0, HPos::Center),
            Anchor::End => (rect.right, HPos::Right),
        };
        let size = self.ink.lettering.size(label.hand.letters) * self.onto.ratio * self.onto.letters;
        let weight = if label.hand.bold { FontStyle::Bold } else { FontStyle::Normal };
        let color = self.ink.color(label.hand.tint);
        let style = TextStyle::from(FontDesc::new(FontFamily::Name(&self.ink.face), size, weight))
            .color(&color)
            .pos(Pos::new(across, VPos::Center));
        // The middle of a line of text lies a little above the middle of its figures.
        let y = (rect.top + rect.bottom) / 2.0 + 0.06 * self.ink.lettering.size(label.hand.letters);
        self.area.draw(&Text::new(&*label.text, self.place(Point::new(x, y)), style))
    }
}

/// The strokes of a broken line.
fn dashes(from: Point, to: Point, on: f64, off: f64) -> impl Iterator<Item = (Point, Point)> {
    let length = (to.x - from.x).hypot(to.y - from.y);
    let period = (on + off).max(1.0);
    let count = if length.is_finite() { (length / period).ceil() as u32 } else { 0 };
    let at = move |along: f64| {
        let share = if length > 0.0 { (along / length).min(1.0) } else { 0.0 };
        Point::new(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y))
    };
    (0..count.min(4000)).map(move |n| (at(f64::from(n) * period), at(f64::from(n) * period + on)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_broken_line_ends_inside_its_length() {
        let strokes: Vec<_> = dashes(Point::new(0.0, 0.0), Point::new(30.0, 40.0), 11.0, 5.0).collect();
        assert_eq!(strokes.len(), 4);
        assert_eq!(strokes[3].1, Point::new(30.0, 40.0));
        assert!(strokes.iter().all(|(from, to)| from.x <= to.x && to.y <= 40.0));
        assert_eq!(dashes(Point::new(1.0, 1.0), Point::new(1.0, 1.0), 2.0, 2.0).count(), 0);
    }
}
