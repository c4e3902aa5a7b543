//! Size labels: outside the pair, at mid run; bold on the run in use.

use super::curve::{RunLine, WayLine};
use super::labels::Board;
use super::mark::{Anchor, Hand, Label, Point};
use crate::locale;
use wellwright_core::cable::lead::Conductor;
use wellwright_core::job::Way;

/// Where a size label may stand along its run, as shares of it.
const ALONG: [f64; 9] = [0.5, 0.42, 0.58, 0.35, 0.65, 0.27, 0.73, 0.2, 0.8];
/// Runs shorter than this carry no label, unless in use; desk and phone.
const SHORTEST: [f64; 2] = [17.0, 30.0];

/// The sizes of the runs in use, each at every place that it may have.
#[derive(Debug, Clone)]
pub struct InUse {
    /// With their gauge.
    whole: Vec<Vec<Label>>,
    /// Without, on a phone.
    bare: Option<Vec<Vec<Label>>>,
}

impl InUse {
    /// The sizes where the depth line has a height.
    #[must_use]
    pub fn of(board: &Board, ways: &[WayLine; 2], line: Option<f64>, compact: bool) -> Self {
        let all = |text: fn(Conductor, bool) -> String| {
            let used = runs(ways).filter(|(run, _)| in_use(run, line));
            let places = |(run, other): (&RunLine, &WayLine)| {
                candidates(board, &text(run.run.run.conductor, compact), run, other, line, compact)
            };
            used.map(places).collect()
        };
        Self { whole: all(in_use_text), bare: compact.then(|| all(|conductor, _| bare(conductor))) }
    }

    /// Writes them; on a phone with their gauge where both find room for it, else bare. Gives how many found no room, one
    /// without its gauge as a third.
    pub fn write(&self, board: &mut Board) -> f64 {
        let write = |board: &mut Board, sizes: &[Vec<Label>]| {
            sizes.iter().filter(|places| board.offer(places.iter().cloned()).is_none()).count() as f64
        };
        let Some(bare) = &self.bare else { return write(board, &self.whole) };
        let mut tried = board.clone();
        if write(&mut tried, &self.whole) == 0.0 {
            *board = tried;
            return 0.0;
        }
        write(board, bare) + bare.len() as f64 / 3.0
    }
}

/// Writes the sizes of the other runs.
pub fn write_others(board: &mut Board, ways: &[WayLine; 2], line: Option<f64>, compact: bool) {
    for (run, other) in runs(ways).filter(|(run, _)| !in_use(run, line)) {
        if run.to.y - run.from.y >= SHORTEST[usize::from(compact)] {
            let conductor = run.run.run.conductor;
            let text = if compact { bare(conductor) } else { locale::conductor(conductor) };
            board.offer(candidates(board, &text, run, other, None, compact));
        }
    }
}

/// Every run with the other way.
fn runs(ways: &[WayLine; 2]) -> impl Iterator<Item = (&RunLine, &WayLine)> {
    let [low, high] = ways;
    low.runs.iter().map(move |run| (run, high)).chain(high.runs.iter().map(move |run| (run, low)))
}

/// Whether the depth line crosses a run; at a step it belongs to the smaller size.
fn in_use(run: &RunLine, line: Option<f64>) -> bool {
    line.is_some_and(|y| {
        y <= run.to.y + 1e-6 && (y > run.from.y + 1e-6 || run.run.from.value == 0.0 && y >= run.from.y)
    })
}

/// The size in use with its gauge; on a phone, sets stand as a number before it.
fn in_use_text(conductor: Conductor, compact: bool) -> String {
    if compact && conductor.sets > 1 {
        format!("{} {}", bare(conductor), conductor.size.gauge())
    } else {
        locale::conductor(conductor)
    }
}

/// The size alone.
fn bare(conductor: Conductor) -> String {
    let size = conductor.size.designation();
    if conductor.sets > 1 { format!("{}×{size}", conductor.sets) } else { size.to_owned() }
}

fn candidates(
    board: &Board,
    text: &str,
    run: &RunLine,
    other: &WayLine,
    line: Option<f64>,
    compact: bool,
) -> Vec<Label> {
    let word = board.word(text, if line.is_some() { Hand::BOLD } else { Hand::PLAIN });
    let off = if compact { 6.0 } else { 9.0 };
    let line_step = board.lettering().plain * 1.25;
    let mut heights: Vec<f64> = Vec::new();
    if let Some(y) = line {
        // Clear of the depth line: above it stacked on the cost, below it past the dimension; the longer part first.
        let above = [y - 1.2 * line_step, y - 1.9 * line_step, y - 3.0 * line_step];
        let below = [y + 1.2 * line_step, y + 2.6 * line_step, y + 4.0 * line_step];
        let first_above = y - run.from.y >= run.to.y - y;
        heights.extend(if first_above { above } else { below });
        heights.extend(if first_above { below } else { above });
        // Beside another run it would name the wrong one.
        heights.retain(|at| *at > run.from.y - 6.0 && *at < run.to.y + 6.0);
    } else {
        heights.extend(ALONG.iter().map(|share| run.from.y + share * (run.to.y - run.from.y)));
    }
    let outside = |(y, more): (f64, f64)| {
        let (x, off) = (run.x(y), off + more);
        let right = match x_at(other, y) {
            Some(other) if (x - other).abs() > 0.5 => x > other,
            Some(_) => other.way == Way::V480,
            None => true,
        };
        if right {
            word.at(Point::new(x + off, y), Anchor::Start)
        } else {
            word.at(Point::new(x - off, y), Anchor::End)
        }
    };
    // Last, in the row of the cost and beyond it.
    let beyond =
        line.into_iter().flat_map(|y| [64.0, 78.0, 92.0].map(|more| (y - 0.95 * board.lettering().plain, more)));
    // Farther off where the line leans into tall letters; a bare size there could be taken for a figure of the rod.
    let tall = 0.7 * board.lettering().plain;
    let near = heights.iter().map(|y| (*y, 0.0));
    let leaning = heights.iter().filter(|_| line.is_some() || !compact).map(|y| (*y, tall));
    near.chain(leaning).chain(beyond).map(outside).collect()
}

/// Place of a way at a height.
fn x_at(way: &WayLine, y: f64) -> Option<f64> {
    way.runs.iter().find(|run| y <= run.to.y && y >= run.from.y).map(|run| run.x(y))
}
