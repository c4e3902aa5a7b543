//! The canvas of plotters, with boxes and strokes of one look in a row drawn as one path: a dotted guide is a hundred
//! boxes, and a call of the browser for each took most of a redraw. What the pen and the letters are is told the browser
//! when it changes, since each time it reads that from text.

use plotters_backend::text_anchor::{HPos, VPos};
use plotters_backend::{
    BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingBackend, DrawingErrorKind, FontTransform,
};
use plotters_canvas::CanvasBackend;
use wasm_bindgen::JsCast;
use web_sys::{CanvasRenderingContext2d, HtmlCanvasElement};

/// What waits in the path, and how it will be drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Look {
    /// Boxes filled with a color.
    Boxes(Rgba),
    /// Lines of a color and width.
    Strokes(Rgba, u32),
}

/// Red, green, blue, and how much of what lies under it is covered.
type Rgba = ((u8, u8, u8), f64);

/// A canvas that draws in batches.
pub struct Batch {
    whole: CanvasBackend,
    context: CanvasRenderingContext2d,
    waits: Option<Look>,
    /// The color that fills, as far as it is known.
    fills: Option<Rgba>,
    /// Every color that was told, and its text.
    colors: Vec<(Rgba, String)>,
    letters: Option<Letters>,
}

/// What letters look like and where they stand about their point, as the browser is told.
#[derive(Debug, Clone, PartialEq)]
struct Letters {
    size: f64,
    style: String,
    family: String,
    align: &'static str,
    baseline: &'static str,
}

impl Letters {
    fn of<S: BackendTextStyle>(style: &S) -> Self {
        let anchor = style.anchor();
        let align = match anchor.h_pos {
            HPos::Left => "start",
            HPos::Center => "center",
            HPos::Right => "end",
        };
        let baseline = match anchor.v_pos {
            VPos::Top => "top",
            VPos::Center => "middle",
            VPos::Bottom => "bottom",
        };
        let (face, family) = (style.style().as_str().to_owned(), style.family().as_str().to_owned());
        Self { size: style.size(), style: face, family, align, baseline }
    }
}

type Done = Result<(), DrawingErrorKind<<CanvasBackend as DrawingBackend>::ErrorType>>;

impl Batch {
    /// The backend of a canvas, where it can be drawn on.
    pub fn on(canvas: &HtmlCanvasElement) -> Option<Self> {
        let context = canvas.get_context("2d").ok()??.dyn_into().ok()?;
        Some(Self {
            whole: CanvasBackend::with_canvas_object(canvas.clone())?,
            context,
            waits: None,
            fills: None,
            colors: Vec::new(),
            letters: None,
        })
    }

    /// Goes on with the path that waits, or draws it and begins another.
    fn go_on(&mut self, look: Look) {
        if self.waits != Some(look) {
            self.flush();
            self.context.begin_path();
            self.waits = Some(look);
        }
    }

    /// Fills with a color from now on.
    fn fill_with(&mut self, color: Rgba) {
        if self.fills != Some(color) {
            self.context.set_fill_style_str(css(&mut self.colors, color));
            self.fills = Some(color);
        }
    }

    /// Letters look so from now on.
    fn write_with(&mut self, letters: Letters) {
        let before = self.letters.as_ref();
        if before.is_none_or(|before| before.align != letters.align) {
            self.context.set_text_align(letters.align);
        }
        if before.is_none_or(|before| before.baseline != letters.baseline) {
            self.context.set_text_baseline(letters.baseline);
        }
        let face = |it: &Letters| (it.size, &it.style, &it.family) == (letters.size, &letters.style, &letters.family);
        if !before.is_some_and(face) {
            self.context.set_font(&format!("{} {}px {}", letters.style, letters.size, letters.family));
        }
        self.letters = Some(letters);
    }

    /// The whole backend, which leaves colors and letters as it likes.
    fn whole(&mut self) -> &mut CanvasBackend {
        self.flush();
        (self.fills, self.letters) = (None, None);
        &mut self.whole
    }

    /// Draws what waits.
    fn flush(&mut self) {
        match self.waits.take() {
            None => {}
            Some(Look::Boxes(color)) => {
                self.fill_with(color);
                self.context.fill();
            }
            Some(Look::Strokes(color, width)) => {
                self.context.set_stroke_style_str(css(&mut self.colors, color));
                self.context.set_line_width(f64::from(width));
                self.context.stroke();
            }
        }
    }
}

fn rgba(color: BackendColor) -> Rgba {
    (color.rgb, color.alpha)
}

/// The text of a color, written once.
fn css(colors: &mut Vec<(Rgba, String)>, color: Rgba) -> &str {
    let known = colors.iter().position(|(known, _)| *known == color);
    let place = known.unwrap_or_else(|| {
        let ((red, green, blue), alpha) = color;
        colors.push((color, format!("rgba({red},{green},{blue},{alpha})")));
        colors.len() - 1
    });
    &colors[place].1
}

fn pair((x, y): BackendCoord) -> (f64, f64) {
    (f64::from(x), f64::from(y))
}

impl DrawingBackend for Batch {
    type ErrorType = <CanvasBackend as DrawingBackend>::ErrorType;

    fn get_size(&self) -> (u32, u32) {
        self.whole.get_size()
    }

    fn ensure_prepared(&mut self) -> Done {
        self.whole.ensure_prepared()
    }

    fn present(&mut self) -> Done {
        self.whole().present()
    }

    fn draw_pixel(&mut self, point: BackendCoord, color: BackendColor) -> Done {
        self.whole().draw_pixel(point, color)
    }

    fn draw_rect<S: BackendStyle>(&mut self, from: BackendCoord, to: BackendCoord, style: &S, fill: bool) -> Done {
        if !fill {
            return self.whole().draw_rect(from, to, style, fill);
        }
        self.go_on(Look::Boxes(rgba(style.color())));
        let ((x, y), (right, bottom)) = (pair(from), pair(to));
        self.context.rect(x, y, right - x, bottom - y);
        Ok(())
    }

    fn draw_path<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(&mut self, path: I, style: &S) -> Done {
        self.go_on(Look::Strokes(rgba(style.color()), style.stroke_width()));
        for (place, (x, y)) in path.into_iter().map(pair).enumerate() {
            if place == 0 {
                self.context.move_to(x, y);
            } else {
                self.context.line_to(x, y);
            }
        }
        Ok(())
    }

    fn fill_polygon<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(&mut self, path: I, style: &S) -> Done {
        self.whole().fill_polygon(path, style)
    }

    fn draw_circle<S: BackendStyle>(&mut self, center: BackendCoord, radius: u32, style: &S, fill: bool) -> Done {
        self.whole().draw_circle(center, radius, style, fill)
    }

    fn draw_text<S: BackendTextStyle>(&mut self, text: &str, style: &S, at: BackendCoord) -> Done {
        // Turned text stays with the whole backend, and so does what went wrong.
        if !matches!(style.transform(), FontTransform::None) {
            return self.whole().draw_text(text, style, at);
        }
        self.flush();
        self.fill_with(rgba(style.color()));
        self.write_with(Letters::of(style));
        let (x, y) = pair(at);
        self.context.fill_text(text, x, y).or_else(|_| self.whole().draw_text(text, style, at))
    }
}
