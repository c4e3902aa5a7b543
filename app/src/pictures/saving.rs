//! The saving, as a dimension between the two costs on the side of the depth line where the curves leave it room.

use super::curve::WayLine;
use super::here::Spot;
use super::labels::{Board, Word, text_width};
use super::layout::Layout;
use super::mark::{Anchor, Hand, Label, Letters, Mark, Pen, Point, Rect, Tint};
use crate::locale::{money, words};
use wellwright_core::numeric::order::by_number;

/// Distances of the dimension line from the depth line, best first.
const OFF: [f64; 14] = [26.0, 32.0, 38.0, 20.0, 44.0, 52.0, 62.0, -26.0, -32.0, -38.0, -20.0, -44.0, -52.0, -62.0];
/// What it costs to stand above the depth line, a pixel from the best distance, and a place farther for the figure.
const ABOVE: f64 = 0.7;
const ASIDE: f64 = 0.01;
const FARTHER: f64 = 0.02;
/// What smaller lettering of the figure costs.
const SMALLER: f64 = 0.25;
/// What a step on the dimension, one across an extension line, one between dimension and depth line, and a run through
/// an arrow cost.
const TROUBLE: [f64; 4] = [8.0, 5.0, 2.0, 0.5];
/// So many of the best places are tried with the other labels, at most so many at one height.
const TRIED: (usize, usize) = (12, 2);
/// From the depth line to the extension lines, and from the dimension line to their ends.
const START: f64 = 7.0;
const BEYOND: f64 = 6.0;
/// Length and half height of an arrow; with less room between the costs than this, arrows point in from outside.
const ARROW: (f64, f64) = (9.0, 3.5);
const INSIDE: f64 = 48.0;
/// From the dimension line to a level step, and from a line to an extension line beside it.
const CLEAR: f64 = 7.0;
const BESIDE: f64 = 4.0;

/// A dimension that has found its place.
#[derive(Debug, Clone, PartialEq)]
pub struct Dimension {
    /// Height of its line.
    pub y: f64,
    /// The costs.
    pub ends: [f64; 2],
    /// Height of the depth line.
    pub line: f64,
    /// Ends of its line.
    pub tails: [f64; 2],
    /// Its figure.
    pub figure: Label,
}

impl Dimension {
    /// The extension lines, from the depth line on.
    #[must_use]
    pub fn extensions(&self) -> [(Point, Point); 2] {
        let way = if self.y > self.line { 1.0 } else { -1.0 };
        self.ends.map(|x| (Point::new(x, self.line + way * START), Point::new(x, self.y + way * BEYOND)))
    }

    /// Rooms of the arrows, and which way each points: to the right, or to the left.
    #[must_use]
    pub fn arrows(&self) -> [(Rect, bool); 2] {
        let [from, to] = self.ends;
        let outside = to - from < INSIDE;
        let room = |x: f64, rightward: bool| {
            let (left, right) = if rightward { (x - ARROW.0, x) } else { (x, x + ARROW.0) };
            Rect { left, right, top: self.y - ARROW.1, bottom: self.y + ARROW.1 }
        };
        [(room(from, outside), outside), (room(to, !outside), !outside)]
    }

    /// The level steps of the curves at its height, on which its line may stand wherever its figure does.
    fn steps_beside(&self, ways: &[WayLine; 2]) -> Vec<(Point, Point)> {
        let is_beside = |(from, _): &(Point, Point)| (from.y - self.y).abs() <= CLEAR;
        ways.iter().flat_map(WayLine::steps).filter(is_beside).collect()
    }

    /// How badly the steps beside it stand on its line.
    fn trouble(&self, beside: &[(Point, Point)]) -> f64 {
        let line = Rect { left: self.tails[0], right: self.tails[1], top: self.y - CLEAR, bottom: self.y + CLEAR };
        TROUBLE[0] * beside.iter().filter(|(from, to)| line.crossed(*from, *to)).count() as f64
    }

    /// How badly curves stand in the way of everything but its line, which is the same wherever its figure stands: steps
    /// across its extension lines and between them, runs through its arrows.
    #[must_use]
    pub fn trouble_of_height(&self, ways: &[WayLine; 2]) -> f64 {
        let sides = self.extensions().map(|(from, to)| Rect {
            left: from.x - BESIDE,
            right: from.x + BESIDE,
            top: from.y.min(to.y),
            bottom: from.y.max(to.y),
        });
        let arrows = self.arrows().map(|(room, _)| room.grown(1.5));
        let met = |rects: &[Rect], (from, to): &(Point, Point)| {
            rects.iter().filter(|rect| rect.crossed(*from, *to)).count() as f64
        };
        let [_, across, between, through] = TROUBLE;
        let (top, bottom) = (self.y.min(self.line) + START, self.y.max(self.line) - START);
        let inner = Rect { left: self.ends[0], right: self.ends[1], top, bottom };
        let step = |step| across * met(&sides, &step) + between * met(&[inner], &step);
        let steps = ways.iter().flat_map(WayLine::steps).map(step);
        let runs = ways.iter().flat_map(|way| &way.runs).map(|run| through * met(&arrows, &(run.from, run.to)));
        steps.sum::<f64>() + runs.sum::<f64>()
    }
}

/// The place of the saving's dimension and figure: the one with the least trouble whose figure stands clear; `harm` says
/// what a place costs the labels that come later.
#[must_use]
pub fn place(
    board: &Board,
    ways: &[WayLine; 2],
    spots: &[Spot],
    layout: &Layout,
    harm: impl Fn(&Dimension) -> f64,
) -> Option<Dimension> {
    let all = candidates(board, spots, layout);
    let free = |found: &Dimension| {
        let line = found.tails.map(|x| Point::new(x, found.y));
        board.free(&found.figure.rect) && !board.covered(line[0], line[1])
    };
    let (mut height, mut of_height, mut beside) = (f64::NAN, 0.0, Vec::new());
    let mut trouble = |found: &Dimension| {
        if height != found.y {
            (height, of_height, beside) = (found.y, found.trouble_of_height(ways), found.steps_beside(ways));
        }
        of_height + found.trouble(&beside)
    };
    let mut rated: Vec<(f64, &Dimension)> = all.iter().map(|(cost, found)| (cost + trouble(found), found)).collect();
    by_number(&mut rated, |(cost, _)| *cost);
    let mut heights: Vec<f64> = Vec::new();
    let seldom = |(_, found): &(f64, &Dimension)| {
        let times = heights.iter().filter(|y| **y == found.y).count();
        heights.extend((times < TRIED.1).then_some(found.y));
        times < TRIED.1
    };
    let mut best: Option<(f64, &Dimension)> = None;
    for (cost, found) in rated.into_iter().filter(|(_, found)| free(found)).filter(seldom).take(TRIED.0) {
        // Harm is none or more: what costs as much without it, and all after it, is no better.
        if best.is_some_and(|(least, _)| cost >= least) {
            break;
        }
        let cost = cost + harm(found);
        if best.is_none_or(|(least, _)| cost < least) {
            best = Some((cost, found));
        }
    }
    let best = best.map(|(_, found)| found);
    // Where no figure stands clear of the curves, one that stands on no other label.
    let apart = || all.iter().map(|(_, found)| found).find(|found| board.apart(&found.figure.rect));
    best.or_else(apart).or(all.first().map(|(_, found)| found)).cloned()
}

/// Every place inside the scale, with what it costs by itself.
fn candidates(board: &Board, spots: &[Spot], layout: &Layout) -> Vec<(f64, Dimension)> {
    let [cheap, dear] = spots else { return Vec::new() };
    let saving = dear.cost - cheap.cost;
    if saving.0 <= 0.0 {
        return Vec::new();
    }
    let text = money(saving, 0);
    let heights = OFF.into_iter().map(|off| (off, cheap.at.y + off));
    let words: Vec<Word> = hands(board, &text, layout).into_iter().map(|hand| board.word(&text, hand)).collect();
    heights
        .filter(|(_, y)| *y >= layout.ground + 12.0 && *y + 10.0 <= layout.bottom)
        .flat_map(|(off, y)| {
            let aside = ASIDE * (off.abs() - OFF[0]).abs() + if off < 0.0 { ABOVE } else { 0.0 };
            words.iter().enumerate().flat_map(move |(smaller, word)| {
                let found = figures(board, word, [cheap.at, dear.at], y, layout).into_iter().enumerate();
                found.map(move |(at, found)| (aside + SMALLER * smaller as f64 + FARTHER * at as f64, found))
            })
        })
        .collect()
}

/// The saving's lettering, best first: large, unless it would fill a narrow picture; on a phone also plain.
fn hands(board: &Board, text: &str, layout: &Layout) -> Vec<Hand> {
    let large = Hand { letters: Letters::Large, ..Hand::BOLD };
    let width = text_width(text, board.lettering().large, true);
    let fits = width <= 0.6 * (layout.width - layout.rod_right());
    let large = Some(large).filter(|_| fits);
    large.into_iter().chain(Some(Hand::BOLD).filter(|_| layout.compact || !fits)).collect()
}

/// A dimension at a height with its figure at every place: outside at the right, at the left, far from the curves.
fn figures(board: &Board, word: &Word, [cheap, dear]: [Point; 2], y: f64, layout: &Layout) -> Vec<Dimension> {
    let (from, to, line) = (cheap.x, dear.x, cheap.y);
    let reach = if to - from < INSIDE { 2.0 * ARROW.0 - 4.0 } else { 6.0 };
    let whole = [from - reach, to + reach];
    let found = |figure: Label, tails: [f64; 2]| Dimension { y, ends: [from, to], line, tails, figure };
    let label = |x: f64, y: f64, anchor: Anchor| word.at(Point::new(x, y), anchor);
    let outer = if to - from < INSIDE { whole } else { [from, to] };
    let mut out = Vec::new();
    for more in [8.0, 16.0, 26.0, 38.0, 52.0, 70.0] {
        let right = label(to + reach + more, y, Anchor::Start);
        let tail = right.rect.left - 4.0;
        out.push(found(right, [outer[0], tail]));
    }
    for more in [8.0, 16.0, 26.0, 38.0] {
        let left = label(from - reach - more, y, Anchor::End);
        let tail = left.rect.right + 4.0;
        out.push(found(left, [tail, outer[1]]));
    }
    let beyond = if y > line { 1.0 } else { -1.0 } * 1.5 * board.lettering().large;
    let (left, right) = (layout.rod_right() + 10.0, layout.width - 2.0);
    for row in [1.0, 2.0, 3.0] {
        let y = y + row * beyond;
        let places =
            [label((from + to) / 2.0, y, Anchor::Middle), label(right, y, Anchor::End), label(left, y, Anchor::Start)];
        out.extend(places.map(|figure| found(figure, outer)));
    }
    out
}

/// Draws the dimension and writes its figure; on the desk with the way that saves.
pub fn write(board: &mut Board, marks: &mut Vec<Mark>, found: &Dimension, spots: &[Spot], layout: &Layout) {
    for (from, to) in found.extensions() {
        marks.push(Mark::line(from, to, Pen::Hair, Tint::Ink));
        board.keep_off_line(from, to);
    }
    let line = found.tails.map(|x| Point::new(x, found.y));
    marks.push(Mark::line(line[0], line[1], Pen::Thin, Tint::Ink));
    for (room, rightward) in found.arrows() {
        let (tip, back) = if rightward { (room.right, room.left) } else { (room.left, room.right) };
        let points = vec![Point::new(tip, found.y), Point::new(back, room.top), Point::new(back, room.bottom)];
        marks.push(Mark::Area { points, tint: Tint::Ink });
    }
    let rect = board.insist(vec![found.figure.clone()]);
    board.keep_off_line(line[0], line[1]);
    let Some((rect, cheap)) = rect.zip(spots.first()) else { return };
    if rect.left > found.ends[1] && !layout.compact {
        let note = (words().picture.saved_by)(cheap.way);
        board.offer([board.label(note, Point::new(rect.right + 6.0, found.y + 1.0), Anchor::Start, Hand::SMALL)]);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn arrows_point_in_from_outside_where_there_is_no_room_between() {
        let board =
            Board::new(Rect { left: 0.0, top: 0.0, right: 900.0, bottom: 500.0 }, super::super::mark::Lettering::USUAL);
        let layout = Layout::of(840.0, 500.0, super::super::mark::Lettering::USUAL);
        let at = |gap: f64| {
            let ends = [Point::new(400.0, 250.0), Point::new(400.0 + gap, 250.0)];
            figures(&board, &board.word("$546", Hand::BOLD), ends, 276.0, &layout).swap_remove(0).arrows()
        };
        let [(left, rightward), (right, also)] = at(47.0);
        assert!(left.right == 400.0 && rightward && right.left == 447.0 && !also);
        let [(left, rightward), (right, also)] = at(48.0);
        assert!(left.left == 400.0 && !rightward && right.right == 448.0 && also);
    }
}
