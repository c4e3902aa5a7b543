//! Where labels stand: inside the picture, on nothing else, and who gives way.

use super::mark::{Anchor, Hand, Label, Lettering, Point, Rect};
use std::sync::Arc;

/// Room between two labels, across and upright.
const APART: (f64, f64) = (4.0, 1.0);

/// Width that a text may take, on the safe side for the faces that systems bring.
#[must_use]
pub fn text_width(text: &str, size: f64, bold: bool) -> f64 {
    let ems: f64 = text.chars().map(em).sum();
    ems * size * if bold { 1.22 } else { 1.1 }
}

fn em(letter: char) -> f64 {
    match letter {
        ' ' | '\u{a0}' | '.' | ',' | ':' | '\'' | 'i' | 'l' | 'j' | '|' => 0.28,
        'f' | 't' | 'r' | '(' | ')' | '-' | '/' => 0.36,
        'm' | 'w' | 'M' | 'W' | '%' => 0.9,
        'A'..='Z' => 0.68,
        _ => 0.57,
    }
}

/// A text that is measured once and tried at many places.
#[derive(Debug, Clone)]
pub struct Word {
    text: Arc<str>,
    hand: Hand,
    width: f64,
    half: f64,
}

impl Word {
    /// The label at a point: its anchor across, its middle upright.
    #[must_use]
    pub fn at(&self, at: Point, anchor: Anchor) -> Label {
        let left = match anchor {
            Anchor::Start => at.x,
            Anchor::Middle => at.x - self.width / 2.0,
            Anchor::End => at.x - self.width,
        };
        let rect = Rect { left, top: at.y - self.half, right: left + self.width, bottom: at.y + self.half };
        Label { text: self.text.clone(), rect, anchor, hand: self.hand }
    }
}

/// The labels of a picture while they are placed.
#[derive(Debug, Clone)]
pub struct Board {
    bounds: Rect,
    lettering: Lettering,
    taken: Vec<Rect>,
    wanted: Vec<Rect>,
    lines: Vec<(Point, Point)>,
    labels: Vec<Label>,
}

impl Board {
    /// An empty board.
    #[must_use]
    pub fn new(bounds: Rect, lettering: Lettering) -> Self {
        Self { bounds, lettering, taken: Vec::new(), wanted: Vec::new(), lines: Vec::new(), labels: Vec::new() }
    }

    /// Sizes of the lettering.
    #[must_use]
    pub fn lettering(&self) -> Lettering {
        self.lettering
    }

    /// A text with the room that it needs.
    #[must_use]
    pub fn word(&self, text: &str, hand: Hand) -> Word {
        let size = self.lettering.size(hand.letters);
        Word { text: text.into(), hand, width: text_width(text, size, hand.bold), half: size * 0.58 }
    }

    /// A text at one point.
    #[must_use]
    pub fn label(&self, text: &str, at: Point, anchor: Anchor, hand: Hand) -> Label {
        self.word(text, hand).at(at, anchor)
    }

    /// Keeps labels off an area.
    pub fn keep_off(&mut self, rect: Rect) {
        self.taken.push(rect);
    }

    /// Keeps labels off an area that a later one would like, while they find other room.
    pub fn spare(&mut self, rect: Rect) {
        self.wanted.push(rect);
    }

    /// Keeps labels off a line.
    pub fn keep_off_line(&mut self, from: Point, to: Point) {
        self.lines.push((from, to));
    }

    /// Whether an area is free.
    #[must_use]
    pub fn free(&self, rect: &Rect) -> bool {
        self.bounds.holds(rect) && self.free_inside(rect)
    }

    fn free_inside(&self, rect: &Rect) -> bool {
        let wide = Rect { left: rect.left - APART.0, right: rect.right + APART.0, ..*rect };
        let tall = Rect { top: wide.top - APART.1, bottom: wide.bottom + APART.1, ..wide };
        !self.taken.iter().any(|other| other.meets(&tall))
            && !self.lines.iter().any(|line| rect.grown(1.0).crossed(line.0, line.1))
    }

    /// Whether an area is inside and stands on no other label.
    #[must_use]
    pub fn apart(&self, rect: &Rect) -> bool {
        self.bounds.holds(rect) && !self.taken.iter().any(|other| other.meets(rect))
    }

    /// Whether something stands on a line.
    #[must_use]
    pub fn covered(&self, from: Point, to: Point) -> bool {
        self.taken.iter().any(|rect| rect.crossed(from, to))
    }

    /// Writes the first of the candidates that finds room, if any does, rather one that leaves spared room alone; gives
    /// the room it took.
    pub fn offer(&mut self, candidates: impl IntoIterator<Item = Label>) -> Option<Rect> {
        let spares = |label: &Label| !self.wanted.iter().any(|rect| rect.meets(&label.rect.grown(APART.1)));
        let mut free = candidates.into_iter().filter(|label| self.free(&label.rect));
        let first = free.next()?;
        let best = if spares(&first) { first } else { free.find(spares).unwrap_or(first) };
        Some(self.write(best))
    }

    /// Writes the first of the candidates whose lines all find room.
    pub fn offer_lines(&mut self, candidates: impl IntoIterator<Item = Vec<Label>>) {
        let found = candidates.into_iter().find(|lines| lines.iter().all(|line| self.free(&line.rect)));
        for line in found.into_iter().flatten() {
            self.write(line);
        }
    }

    /// Writes the first candidate that finds room, else the first one that stands on no other label, else the first, in
    /// every case moved inside the picture.
    pub fn insist(&mut self, candidates: Vec<Label>) -> Option<Rect> {
        let candidates: Vec<Label> = candidates.into_iter().map(|label| self.inside(label)).collect();
        let best = candidates
            .iter()
            .position(|label| self.free_inside(&label.rect))
            .or_else(|| candidates.iter().position(|label| !self.taken.iter().any(|other| other.meets(&label.rect))))
            .unwrap_or(0);
        let label = candidates.into_iter().nth(best)?;
        Some(self.write(label))
    }

    fn inside(&self, mut label: Label) -> Label {
        let (rect, bounds) = (label.rect, self.bounds);
        let across = (bounds.right - rect.right).min(0.0) + (bounds.left - rect.left).max(0.0);
        let down = (bounds.bottom - rect.bottom).min(0.0) + (bounds.top - rect.top).max(0.0);
        label.rect = Rect {
            left: rect.left + across,
            top: rect.top + down,
            right: rect.right + across,
            bottom: rect.bottom + down,
        };
        label
    }

    /// Writes a label where it is.
    pub fn write(&mut self, label: Label) -> Rect {
        let rect = label.rect;
        self.taken.push(rect);
        self.labels.push(label);
        rect
    }

    /// All labels.
    #[must_use]
    pub fn into_labels(self) -> Vec<Label> {
        self.labels
    }
}
