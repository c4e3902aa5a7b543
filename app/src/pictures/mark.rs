//! What a picture is made of: lines, areas, dots and labels, in pixels of the page.

use std::sync::Arc;
use wellwright_core::job::Way;

/// A point, from the picture's upper left corner.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Down.
    pub y: f64,
}

impl Point {
    /// A point.
    #[must_use]
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }
}

/// A rectangle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rect {
    /// Left edge.
    pub left: f64,
    /// Upper edge.
    pub top: f64,
    /// Right edge.
    pub right: f64,
    /// Lower edge.
    pub bottom: f64,
}

impl Rect {
    /// Whether two rectangles share any area.
    #[must_use]
    pub fn meets(&self, other: &Self) -> bool {
        self.left < other.right && other.left < self.right && self.top < other.bottom && other.top < self.bottom
    }

    /// Whether another rectangle lies inside this one.
    #[must_use]
    pub fn holds(&self, other: &Self) -> bool {
        self.left <= other.left && other.right <= self.right && self.top <= other.top && other.bottom <= self.bottom
    }

    /// The rectangle grown on all sides.
    #[must_use]
    pub fn grown(&self, by: f64) -> Self {
        Self { left: self.left - by, top: self.top - by, right: self.right + by, bottom: self.bottom + by }
    }

    /// Whether a straight line from a point to another touches this rectangle.
    #[must_use]
    pub fn crossed(&self, from: Point, to: Point) -> bool {
        let beside = |a: f64, b: f64, low: f64, high: f64| a.max(b) < low || a.min(b) > high;
        if beside(from.x, to.x, self.left, self.right) || beside(from.y, to.y, self.top, self.bottom) {
            return false;
        }
        let (mut enter, mut leave) = (0.0_f64, 1.0_f64);
        let sides = [(from.x, to.x - from.x, self.left, self.right), (from.y, to.y - from.y, self.top, self.bottom)];
        for (start, run, low, high) in sides {
            if run.abs() < 1e-9 {
                if start < low || start > high {
                    return false;
                }
                continue;
            }
            let (a, b) = ((low - start) / run, (high - start) / run);
            enter = enter.max(a.min(b));
            leave = leave.min(a.max(b));
        }
        enter <= leave
    }
}

/// A color by its role; the theme gives the value.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tint {
    /// Lines and words.
    Ink,
    /// Light lines.
    Hair,
    /// The hatch of the saving: ink, thinned.
    Hatch,
    /// What can be moved.
    Act,
    /// On what can be moved.
    OnAct,
    /// The ground of the picture.
    Sheet,
    /// A way.
    Way(Way),
    /// Where a way's line may lie: its color, thinned.
    Band(Way),
}

/// A pen; the theme gives the width.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pen {
    /// Leaders, hatch.
    Hair,
    /// Steps, dimension lines.
    Thin,
    /// Ticks, rings.
    Mid,
    /// Ground line, depth line.
    Heavy,
    /// A way's run.
    Way,
}

/// How a line is broken.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Dash {
    /// Not at all.
    Solid,
    /// Dots far apart: a line that only guides the eye.
    Guide,
    /// Dots.
    Dotted,
    /// The dash of a way.
    Way(Way),
}

/// One drawn thing.
#[derive(Debug, Clone, PartialEq)]
pub enum Mark {
    /// A line through points.
    Line {
        /// The points.
        points: Vec<Point>,
        /// Its pen.
        pen: Pen,
        /// Its color.
        tint: Tint,
        /// How it is broken.
        dash: Dash,
    },
    /// A filled area.
    Area {
        /// Its corners.
        points: Vec<Point>,
        /// Its color.
        tint: Tint,
    },
    /// A filled circle with a rim.
    Dot {
        /// Its middle.
        at: Point,
        /// Radius to the middle of the rim.
        radius: f64,
        /// Inside.
        fill: Tint,
        /// The rim.
        rim: Tint,
    },
}

impl Mark {
    /// A solid line from a point to another.
    #[must_use]
    pub fn line(from: Point, to: Point, pen: Pen, tint: Tint) -> Self {
        Self::Line { points: vec![from, to], pen, tint, dash: Dash::Solid }
    }
}

/// The size of lettering.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Letters {
    /// Ticks, notes.
    Small,
    /// Most words.
    Plain,
    /// The saving.
    Large,
}

/// Sizes of the lettering in pixels; never scaled.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lettering {
    /// [`Letters::Small`].
    pub small: f64,
    /// [`Letters::Plain`].
    pub plain: f64,
    /// [`Letters::Large`].
    pub large: f64,
}

impl Lettering {
    /// The lettering where the theme says nothing.
    pub const USUAL: Self = Self { small: 13.0, plain: 14.0, large: 17.0 };

    /// The size of a kind.
    #[must_use]
    pub fn size(&self, letters: Letters) -> f64 {
        match letters {
            Letters::Small => self.small,
            Letters::Plain => self.plain,
            Letters::Large => self.large,
        }
    }
}

/// Which part of a label stands at its point.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Anchor {
    /// The left end.
    Start,
    /// The middle.
    Middle,
    /// The right end.
    End,
}

/// The look of a label.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Hand {
    /// Size.
    pub letters: Letters,
    /// Weight.
    pub bold: bool,
    /// Color.
    pub tint: Tint,
}

impl Hand {
    /// Plain words.
    pub const PLAIN: Self = Self { letters: Letters::Plain, bold: false, tint: Tint::Ink };
    /// Words that carry weight.
    pub const BOLD: Self = Self { letters: Letters::Plain, bold: true, tint: Tint::Ink };
    /// Ticks and notes.
    pub const SMALL: Self = Self { letters: Letters::Small, bold: false, tint: Tint::Ink };
}

/// A word or figure in a picture, and the room that is kept for it.
#[derive(Debug, Clone, PartialEq)]
pub struct Label {
    /// The text; every place that it is tried at shares it.
    pub text: Arc<str>,
    /// The room kept for it; the text stands at the anchor's edge of it, centered upright.
    pub rect: Rect,
    /// Where in the room the text stands.
    pub anchor: Anchor,
    /// Its look.
    pub hand: Hand,
}
