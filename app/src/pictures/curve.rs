//! The lines of both ways: runs, steps, and the hatch between them.

use super::axis::MoneyAxis;
use super::mark::Point;
use super::scale::Scale;
use wellwright_core::evaluate::{Basis, DepthRun, Piece, Sweep, WaySweep};
use wellwright_core::job::Way;
use wellwright_core::quantity::{Length, UnitSystem};

/// A step of no more than this, in pixels, is none.
const LEVEL: f64 = 0.05;

/// Everything that turns a depth and a cost into a place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Grid {
    /// Depth.
    pub scale: Scale,
    /// Cost.
    pub axis: MoneyAxis,
    /// What is counted in.
    pub basis: Basis,
}

impl Grid {
    /// Place of a way's cost at a depth, or `None` where no size serves.
    #[must_use]
    pub fn at(&self, way: &WaySweep, depth: Length) -> Option<Point> {
        let cost = way.cost_at(depth, self.basis)?;
        Some(Point::new(self.axis.x(cost), self.scale.y(depth)))
    }
}

/// One size's stretch of a way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RunLine {
    /// The size and its depths.
    pub run: DepthRun,
    /// Upper end.
    pub from: Point,
    /// Lower end.
    pub to: Point,
}

impl RunLine {
    /// Place of the run at a height inside it.
    #[must_use]
    pub fn x(&self, y: f64) -> f64 {
        let length = self.to.y - self.from.y;
        let share = if length > 0.0 { ((y - self.from.y) / length).clamp(0.0, 1.0) } else { 0.0 };
        self.from.x + share * (self.to.x - self.from.x)
    }
}

/// A way's line.
#[derive(Debug, Clone, PartialEq)]
pub struct WayLine {
    /// The way.
    pub way: Way,
    /// Its runs down to the end of the scale.
    pub runs: Vec<RunLine>,
    /// Depth below which no size serves, where the scale shows it.
    pub ends_at: Option<Length>,
}

impl WayLine {
    /// The line of a way.
    #[must_use]
    pub fn of(sweep: &WaySweep, grid: &Grid) -> Self {
        let end = grid.scale.end;
        let place = |piece: &Piece, depth: Length| {
            Point::new(grid.axis.x(sweep.cost_on(piece, depth, grid.basis)), grid.scale.y(depth))
        };
        let mut runs: Vec<RunLine> = Vec::new();
        for piece in sweep.pieces.iter().filter(|piece| piece.from < end) {
            let (from, to) = (place(piece, piece.from), place(piece, piece.to.min(end)));
            // A larger motor on the same cable makes no step of the cable's price; a filter does not either.
            let smooth = |last: &RunLine| alike(&last.run, &piece.run) && (last.to.x - from.x).abs() < LEVEL;
            match runs.last_mut().filter(|last| smooth(last)) {
                Some(last) => (last.run.to, last.to) = (piece.to, to),
                None => runs.push(RunLine { run: DepthRun { from: piece.from, to: piece.to, ..piece.run }, from, to }),
            }
        }
        let ends_at = Some(sweep.reach()).filter(|reach| *reach < end && !runs.is_empty());
        Self { way: sweep.way, runs, ends_at }
    }

    /// The level lines between runs: at the depth where a run ends, from its cost to the next run's.
    pub fn steps(&self) -> impl Iterator<Item = (Point, Point)> + '_ {
        self.runs.windows(2).filter_map(|pair| match pair {
            [before, after] => Some((before.to, after.from)),
            _ => None,
        })
    }

    /// The end of the line.
    #[must_use]
    pub fn end(&self) -> Option<Point> {
        self.runs.last().map(|run| run.to)
    }

    /// Every stretch of the line, runs and steps.
    pub fn stretches(&self) -> impl Iterator<Item = (Point, Point)> + '_ {
        self.runs.iter().map(|run| (run.from, run.to)).chain(self.steps())
    }
}

/// Whether two runs are of one cable.
fn alike(one: &DepthRun, other: &DepthRun) -> bool {
    one.run.conductor == other.run.conductor && one.run.ground == other.run.ground
}

/// Level hairs between the ways at round depths, only where the 480 V way costs less.
#[must_use]
pub fn hatch(sweep: &Sweep, grid: &Grid, system: UnitSystem, apart: f64) -> Vec<(Point, Point)> {
    let (low, high) = (sweep.way(Way::V240), sweep.way(Way::V480));
    grid.scale
        .multiples(grid.scale.step(apart, system))
        .skip(1)
        .filter_map(|depth| {
            let (from, to) = (grid.at(high, depth)?, grid.at(low, depth)?);
            (to.x - from.x > 8.0 && depth < grid.scale.end)
                .then(|| (Point::new(from.x + 3.0, from.y), Point::new(to.x - 3.0, to.y)))
        })
        .collect()
}
