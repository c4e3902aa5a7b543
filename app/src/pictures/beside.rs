//! Further ways along the curve: thin lines of their voltage's color and dash, each with a letter near its end.

use super::curve::{Grid, WayLine};
use super::labels::Board;
use super::mark::{Anchor, Hand, Point};
use wellwright_core::evaluate::Sweep;

/// The lines of the further ways, in the order of their letters.
#[must_use]
pub fn lines(sweep: &Sweep, grid: &Grid) -> Vec<WayLine> {
    sweep.beside.iter().map(|way| WayLine::of(way, grid)).collect()
}

/// The letter of a further way, by its place among them.
#[must_use]
pub fn letter(place: usize) -> String {
    char::from_u32('A' as u32 + u32::try_from(place % 26).unwrap_or(0)).map(String::from).unwrap_or_default()
}

/// Writes the letters: beside the end of its line, else higher up along it.
pub fn write(board: &mut Board, others: &[WayLine]) {
    let up = board.lettering().plain;
    for (place, line) in others.iter().enumerate() {
        let Some(run) = line.runs.last() else { continue };
        let heights = [1.0, 2.0, 3.5, 5.0, 7.0, 9.0, 12.0].map(|lines| run.to.y - lines * up);
        let beside = |y: f64| {
            let at = line.runs.iter().find(|run| run.from.y <= y && y <= run.to.y).map(|run| run.x(y));
            let letter = letter(place);
            at.map(|x| {
                [(8.0, Anchor::Start), (-8.0, Anchor::End)]
                    .map(|(by, anchor)| board.label(&letter, Point::new(x + by, y), anchor, Hand::BOLD))
            })
        };
        let candidates: Vec<_> = heights.into_iter().filter_map(beside).flatten().collect();
        board.insist(candidates);
    }
}
