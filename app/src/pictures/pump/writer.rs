//! Puts words on the picture one after the other: inside it, on nothing else, with a leader where they stand off what
//! they name.

use super::chart::Spot;
use super::map::{Map, View};
use crate::pictures::labels::Board;
use crate::pictures::mark::{Anchor, Hand, Label, Point, Rect};
use crate::pictures::svg::Letter;
use crate::pictures::well::Stroke;
use wellwright_core::numeric::order::by_number;

/// From the end of a curve to its name.
pub const OFF_END: f64 = 8.0;
/// Half the room of a point.
pub const POINT: f64 = 9.0;
/// Room at the right edge.
pub const EDGE: f64 = 5.0;
/// Farther than this from what it names, words get a leader.
const LEADER: f64 = 11.0;

/// The board while words are put on it.
pub struct Writer<'a> {
    /// The board.
    pub board: Board,
    classes: Vec<&'static str>,
    leaders: Vec<Stroke>,
    /// Room of the words written last.
    pub last: Option<Rect>,
    /// How the picture is looked at.
    pub view: &'a View,
    /// Where flows and heads stand.
    pub map: &'a Map,
}

impl<'a> Writer<'a> {
    /// An empty board of a picture.
    #[must_use]
    pub fn new(view: &'a View, map: &'a Map) -> Self {
        let bounds = Rect { left: 0.0, top: 0.0, right: view.size.0 - EDGE, bottom: view.size.1 };
        let board = Board::new(bounds, view.lettering);
        Self { board, classes: Vec::new(), leaders: Vec::new(), last: None, view, map }
    }

    /// The words and the leaders.
    #[must_use]
    pub fn done(self) -> (Vec<Letter>, Vec<Stroke>) {
        let labels = self.board.into_labels().into_iter().zip(self.classes);
        (labels.map(|(label, class)| Letter { class, label }).collect(), self.leaders)
    }

    /// Keeps words off a curve.
    pub fn keep_off_trace(&mut self, points: &[Spot]) {
        // Every third piece is near enough, and much is asked of the board.
        let last = points.last().filter(|_| points.len() % 3 != 1);
        let coarse: Vec<Point> = points.iter().step_by(3).chain(last).map(|spot| self.map.at(*spot)).collect();
        for pair in coarse.windows(2) {
            self.board.keep_off_line(pair[0], pair[1]);
        }
    }

    /// Keeps words off a point.
    pub fn keep_off_point(&mut self, spot: Option<Spot>) {
        if let Some(at) = spot.map(|spot| self.map.at(spot)) {
            let Point { x, y } = at;
            self.board.keep_off(Rect { left: x, top: y, right: x, bottom: y }.grown(POINT));
        }
    }

    /// Words where they are.
    pub fn write(&mut self, class: &'static str, label: Label) {
        self.board.write(label);
        self.classes.push(class);
    }

    /// Words that never give way.
    pub fn insist(&mut self, class: &'static str, from: Point, candidates: Vec<Label>) {
        // Rather where the leader crosses no other words.
        let (mut clear, rest): (Vec<Label>, Vec<Label>) =
            candidates.into_iter().partition(|label| self.is_clear(from, &label.rect));
        clear.extend(rest);
        if let Some(rect) = self.put(class, from, clear) {
            self.lead(from, &rect);
        }
    }

    /// Words at one of the candidates, else wherever they stand on no other.
    pub fn put(&mut self, class: &'static str, from: Point, mut candidates: Vec<Label>) -> Option<Rect> {
        if !candidates.iter().any(|label| self.board.apart(&label.rect)) {
            let shortest = candidates.iter().min_by(|a, b| a.text.len().cmp(&b.text.len())).cloned();
            candidates.extend(shortest.map_or_else(Vec::new, |label| self.anywhere(&label, from)));
        }
        self.last = self.board.insist(candidates);
        self.classes.extend(self.last.map(|_| class));
        self.last
    }

    /// Places all over the picture, the nearest to a point first.
    fn anywhere(&self, label: &Label, from: Point) -> Vec<Label> {
        let half = (label.rect.bottom - label.rect.top) / 2.0;
        let (down, across) = ((self.view.size.1 / half) as u32, 16);
        let right = self.view.size.0 - (label.rect.right - label.rect.left);
        let place = |n: u32| {
            let (row, column) = (n / across, n % across);
            Point::new(right * f64::from(column) / f64::from(across - 1), half * (1.0 + f64::from(row)))
        };
        let mut places: Vec<Point> = (0..down * across).map(place).collect();
        by_number(&mut places, |at| (at.x - from.x).hypot(at.y - from.y));
        places.into_iter().map(|at| self.board.label(&label.text, at, Anchor::Start, label.hand)).collect()
    }

    /// Words where there is room; whether there was.
    pub fn offer(&mut self, class: &'static str, from: Point, candidates: Vec<Label>) -> bool {
        let clear: Vec<Label> = candidates.into_iter().filter(|label| self.is_clear(from, &label.rect)).collect();
        let found = self.board.offer(clear);
        if let Some(rect) = &found {
            self.classes.push(class);
            self.lead(from, rect);
        }
        found.is_some()
    }

    /// Whether no other words stand between a point and its own.
    fn is_clear(&self, from: Point, rect: &Rect) -> bool {
        leader(from, rect).is_none_or(|(start, end)| !self.board.covered(start, end))
    }

    /// A leader to words that stand off what they name; others keep off it.
    pub fn lead(&mut self, from: Point, rect: &Rect) {
        if let Some((start, end)) = leader(from, rect) {
            self.leaders.push(("l-leader", format!("M{:.1} {:.1}L{:.1} {:.1}", start.x, start.y, end.x, end.y)));
            self.board.keep_off_line(start, end);
        }
    }

    /// Places around a point, the near ones first.
    pub fn around(&self, text: &str, at: Point, hand: Hand, steps: u32) -> Vec<Label> {
        let half = 0.58 * self.view.lettering.size(hand.letters);
        let place = |step: u32| {
            let off = POINT + 2.0 + 7.0 * f64::from(step);
            let (up, down) = (at.y - half - off, at.y + half + off);
            let side = POINT + 3.0;
            [
                (at.x + side, up, Anchor::Start),
                (at.x - side, down, Anchor::End),
                (at.x + side, down, Anchor::Start),
                (at.x - side, up, Anchor::End),
                (at.x, down, Anchor::Middle),
                (at.x, up, Anchor::Middle),
                (at.x + side + 4.0 * f64::from(step), at.y, Anchor::Start),
                (at.x - side - 4.0 * f64::from(step), at.y, Anchor::End),
            ]
        };
        let places = (0..steps).flat_map(place);
        places.map(|(x, y, anchor)| self.board.label(text, Point::new(x, y), anchor, hand)).collect()
    }

    /// Places at the end of a curve, beside it first, then beneath and above.
    pub fn at_end(&self, text: &str, end: Point, hand: Hand, steps: u32) -> Vec<Label> {
        let beside = (0..steps).flat_map(|step| {
            let off = 6.0 * f64::from(step);
            [(end.x + OFF_END, end.y + off, Anchor::Start), (end.x + OFF_END, end.y - off, Anchor::Start)]
        });
        let under = (3..steps).flat_map(|step| {
            let off = 6.0 * f64::from(step);
            [(end.x, end.y + off, Anchor::Middle), (end.x - 6.0, end.y + off, Anchor::End)]
        });
        let places = beside.chain(under);
        places.map(|(x, y, anchor)| self.board.label(text, Point::new(x, y), anchor, hand)).collect()
    }
}

/// Where a leader from a point to words begins and ends; none where they stand near.
fn leader(from: Point, rect: &Rect) -> Option<(Point, Point)> {
    let to = Point::new(from.x.clamp(rect.left, rect.right), from.y.clamp(rect.top, rect.bottom));
    let far = (to.x - from.x).hypot(to.y - from.y);
    let share = (POINT + 1.0) / far;
    let start = Point::new(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);
    (far > LEADER + POINT).then_some((start, to))
}
