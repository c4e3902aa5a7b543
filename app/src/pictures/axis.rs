//! The cost axis on the ground line.

use super::layout::Layout;
use super::scale::round_step;
use wellwright_core::evaluate::{Basis, Sweep};
use wellwright_core::quantity::{Length, Money, feet};

/// The axis starts at zero unless all costs lie above this share of the largest.
const BROKEN_ABOVE: f64 = 0.4;

/// Money to the right.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MoneyAxis {
    /// Where it starts.
    pub left: f64,
    /// Cost where it starts.
    pub from: Money,
    /// Pixels to one unit of money.
    pub pixels: f64,
    /// Largest cost that is drawn.
    pub most: Money,
    /// Step of the ticks.
    pub step: f64,
}

impl MoneyAxis {
    /// The axis that shows all ways down to a depth.
    #[must_use]
    pub fn of(sweep: &Sweep, basis: Basis, end: Length, layout: &Layout) -> Self {
        let (least, most) = range(sweep, basis, end);
        // At the right the flag finds room beside the largest cost.
        let (left_room, right_room, tick) = if layout.compact { (26.0, 74.0, 66.0) } else { (66.0, 104.0, 78.0) };
        let [left_room, right_room, tick] = [left_room, right_room, tick].map(|room| room * layout.grown);
        let room = layout.width - right_room - layout.chart;
        let broken = (room - left_room).max(20.0) / (most - least);
        let from = least - left_room / broken;
        let (from, pixels) =
            if least < BROKEN_ABOVE * most || from <= 0.0 { (0.0, room.max(20.0) / most) } else { (from, broken) };
        Self { left: layout.chart, from: Money(from), pixels, most: Money(most), step: round_step(tick / pixels) }
    }

    /// Place of a cost.
    #[must_use]
    pub fn x(&self, cost: Money) -> f64 {
        self.left + (cost - self.from).0 * self.pixels
    }

    /// Whether the axis leaves out the costs from zero on.
    #[must_use]
    pub fn broken(&self) -> bool {
        self.from.0 > 0.0
    }

    /// Ticks up to a place.
    pub fn ticks(&self, right: f64) -> impl Iterator<Item = Money> {
        let (axis, first) = (*self, (self.from.0 / self.step).ceil().max(0.0));
        (0_u32..200)
            .map(move |n| Money((first + f64::from(n)) * axis.step))
            .skip_while(move |cost| axis.broken() && axis.x(*cost) < axis.left + 12.0)
            .take_while(move |cost| axis.x(*cost) <= right)
    }
}

/// Least and largest cost of all ways down to a depth.
fn range(sweep: &Sweep, basis: Basis, end: Length) -> (f64, f64) {
    let mut costs: Vec<f64> = Vec::new();
    for way in sweep.ways.iter().chain(&sweep.beside) {
        for piece in way.pieces.iter().filter(|piece| piece.from <= end) {
            costs.push(way.cost_on(piece, piece.from.max(feet(0.0)), basis).0);
            costs.push(way.cost_on(piece, piece.to.min(end), basis).0);
        }
    }
    let least = costs.iter().copied().fold(f64::INFINITY, f64::min);
    let most = costs.iter().copied().fold(0.0_f64, f64::max);
    if least.is_finite() { (least, most.max(least + 10.0)) } else { (0.0, 1000.0) }
}
