//! Puts words on the picture one after the other: inside it and on nothing else.

use super::map::{EDGE, View};
use crate::pictures::labels::Board;
use crate::pictures::mark::{Anchor, Hand, Label, Point, Rect};
use crate::pictures::svg::Letter;
use wellwright_core::numeric::order::by_number;

/// Places that are tried along a line.
const SWEEP: u32 = 24;

/// A line of words: its class, the text, its look.
pub type Line<'a> = (&'static str, &'a str, Hand);

/// The board while words are put on it.
pub struct Writer {
    /// The board.
    pub board: Board,
    classes: Vec<&'static str>,
    size: (f64, f64),
}

impl Writer {
    /// An empty board of a picture.
    #[must_use]
    pub fn new(view: &View) -> Self {
        let bounds = Rect { left: 0.0, top: 0.0, right: view.size.0 - EDGE / 2.0, bottom: view.size.1 };
        Self { board: Board::new(bounds, view.lettering), classes: Vec::new(), size: view.size }
    }

    /// Width that words may take.
    #[must_use]
    pub fn width(&self) -> f64 {
        self.size.0 - EDGE
    }

    /// The words.
    #[must_use]
    pub fn done(self) -> Vec<Letter> {
        let labels = self.board.into_labels().into_iter().zip(self.classes);
        labels.map(|(label, class)| Letter { class, label }).collect()
    }

    /// Words at one of the candidates, else as near to a point as they find room, else where they stand on no other.
    pub fn insist(&mut self, class: &'static str, from: Point, mut candidates: Vec<Label>) -> Option<Rect> {
        let free = candidates.iter().any(|label| self.board.free(&label.rect));
        let shortest = candidates.iter().min_by_key(|label| label.text.chars().count()).cloned();
        if let Some(shortest) = shortest.filter(|_| !free) {
            let places = self.anywhere(&shortest, from);
            let near = places.iter().find(|label| self.board.free(&label.rect)).cloned();
            candidates.retain(|label| self.board.apart(&label.rect));
            candidates.splice(0..0, near);
            candidates.extend(places);
        }
        let rect = self.board.insist(candidates);
        self.classes.extend(rect.map(|_| class));
        rect
    }

    /// Words at the first candidate that is free; whether one was.
    pub fn offer(&mut self, class: &'static str, candidates: Vec<Label>) -> bool {
        let rect = self.board.offer(candidates);
        self.classes.extend(rect.map(|_| class));
        rect.is_some()
    }

    /// Lines one under the other at the first place that is free, else at the first that is on no other words, else each
    /// by itself.
    pub fn stack(&mut self, lines: &[Line], from: Point, places: &[(Point, Anchor)]) {
        let stacks: Vec<Vec<Label>> = places.iter().map(|(at, anchor)| self.stacked(lines, *at, *anchor)).collect();
        let free = |stack: &&Vec<Label>| stack.iter().all(|label| self.board.free(&label.rect));
        let apart = |stack: &&Vec<Label>| stack.iter().all(|label| self.board.apart(&label.rect));
        let found = stacks.iter().find(free).or_else(|| stacks.iter().find(apart)).cloned();
        for (index, line) in lines.iter().enumerate() {
            let own = |stack: &Vec<Label>| stack.get(index).cloned();
            let candidates = match &found {
                Some(stack) => own(stack).into_iter().collect(),
                None => stacks.iter().filter_map(own).collect(),
            };
            self.insist(line.0, from, candidates);
        }
    }

    fn stacked(&self, lines: &[Line], at: Point, anchor: Anchor) -> Vec<Label> {
        let mut y = at.y;
        let label = |(_, text, hand): &Line| {
            let half = 0.58 * self.board.lettering().size(hand.letters);
            let label = self.board.label(text, Point::new(at.x, y + half), anchor, *hand);
            y += 2.0 * half + 1.5;
            label
        };
        lines.iter().map(label).collect()
    }

    /// Height of lines one under the other.
    #[must_use]
    pub fn height(&self, lines: &[Line]) -> f64 {
        lines.iter().map(|line| 1.16 * self.board.lettering().size(line.2.letters) + 1.5).sum()
    }

    /// Places at a distance from a level line, above it where that is below zero: at each of the starts, then anywhere from
    /// the first of them to the right end.
    #[must_use]
    pub fn along(&self, text: &str, (y, starts, to): (f64, &[f64], f64), hand: Hand, offs: &[f64]) -> Vec<Label> {
        let half = 0.58 * self.board.lettering().size(hand.letters);
        let from = starts.iter().copied().fold(to, f64::min);
        let place = |off: &f64| -> Vec<Label> {
            let y = y + off + half * off.signum();
            let label = |x: f64| self.board.label(text, Point::new(x, y), Anchor::Start, hand);
            let rect = label(0.0).rect;
            let room = (to - from - (rect.right - rect.left)).max(0.0);
            let sweep = (0..SWEEP).map(|step| from + room * f64::from(step) / f64::from(SWEEP - 1));
            starts.iter().copied().chain(sweep).map(label).collect()
        };
        offs.iter().flat_map(place).collect()
    }

    /// Places all over the picture, the nearest to a point first.
    fn anywhere(&self, label: &Label, from: Point) -> Vec<Label> {
        let half = (label.rect.bottom - label.rect.top) / 2.0;
        let step = half / 4.0;
        let (down, across) = ((self.size.1 / step).clamp(1.0, 400.0) as u32, 24);
        let right = (self.size.0 - EDGE - (label.rect.right - label.rect.left)).max(0.0);
        let place = |n: u32| {
            let (row, column) = (n / across, n % across);
            Point::new(right * f64::from(column) / f64::from(across - 1), half + step * f64::from(row))
        };
        let mut places: Vec<Point> = (0..down * across).map(place).collect();
        by_number(&mut places, |at| (at.x - from.x).hypot(at.y - from.y));
        places.into_iter().map(|at| self.board.label(&label.text, at, Anchor::Start, label.hand)).collect()
    }
}
