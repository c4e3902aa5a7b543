//! What stands at the job's depth: the depth line with its flag, and the costs.

use super::curve::Grid;
use super::labels::{Board, text_width};
use super::layout::Layout;
use super::mark::{Anchor, Hand, Label, Mark, Pen, Point, Rect, Tint};
use crate::locale::{depth, money, money_alike};
use wellwright_core::evaluate::{Here, Sweep};
use wellwright_core::job::Way;
use wellwright_core::numeric::order::by_number;
use wellwright_core::quantity::{Length, Money, UnitSystem};

/// Least half of the flag's height, and the length of its tip.
const FLAG_HALF: f64 = 14.0;
const FLAG_TIP: f64 = 9.0;
/// From the flag to a cost, for a flag in the usual lettering.
const FLAG_CLEAR: f64 = 12.0;

/// A way's cost at the depth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spot {
    /// The way.
    pub way: Way,
    /// Its cost.
    pub cost: Money,
    /// Place of its dot.
    pub at: Point,
}

/// The spots of both ways, the cheaper first.
#[must_use]
pub fn spots(here: &Here, grid: &Grid) -> Vec<Spot> {
    sorted(here.depth, grid, |way| here.way(way)?.cost(grid.basis))
}

/// The same at any depth of a curve.
#[must_use]
pub fn spots_at(sweep: &Sweep, depth: Length, grid: &Grid) -> Vec<Spot> {
    sorted(depth, grid, |way| sweep.way(way).cost_at(depth, grid.basis))
}

fn sorted(depth: Length, grid: &Grid, cost: impl Fn(Way) -> Option<Money>) -> Vec<Spot> {
    let y = grid.scale.y(depth);
    let spot = |way: Way| {
        let cost = cost(way)?;
        Some(Spot { way, cost, at: Point::new(grid.axis.x(cost), y) })
    };
    let mut found: Vec<Spot> = [Way::V480, Way::V240].into_iter().filter_map(spot).collect();
    by_number(&mut found, |spot| spot.cost.0);
    found
}

/// Draws the depth line and its flag, in small lettering where a cost stands near the edge.
pub fn write_flag(
    board: &mut Board,
    marks: &mut Vec<Mark>,
    at: Length,
    system: UnitSystem,
    layout: &Layout,
    grid: &Grid,
    spots: &[Spot],
) {
    let y = grid.scale.y(at);
    let text = depth(at, system).text();
    let rightmost = spots.iter().map(|spot| spot.at.x).fold(0.0, f64::max);
    let usual = Flag { hand: Hand { tint: Tint::OnAct, ..Hand::BOLD }, beside: 7.0, tip: FLAG_TIP };
    let small = Flag { hand: Hand { tint: Tint::OnAct, ..Hand::SMALL }, beside: 4.0, tip: FLAG_TIP - 2.0 };
    let fits = rightmost + FLAG_CLEAR <= layout.width - usual.width(board, &text);
    let flag = if fits { usual } else { small };
    let half = (0.95 * board.lettering().plain).max(FLAG_HALF);
    // Near the ground line the flag hangs lower, off the cost axis; near the end of the scale it stands higher.
    let top = (y - half).min(layout.bottom + FLAG_HALF - 2.0 * half).max(layout.ground - 5.0);
    let left = layout.width - flag.width(board, &text);
    let room = Rect { left: left + flag.tip, right: layout.width, top, bottom: top + 2.0 * half };
    let corners = [
        Point::new(left, y),
        Point::new(room.left, room.top),
        Point::new(room.right, room.top),
        Point::new(room.right, room.bottom),
        Point::new(room.left, room.bottom),
    ];
    marks.push(Mark::line(Point::new(layout.rod_right(), y), Point::new(layout.width - 4.0, y), Pen::Heavy, Tint::Act));
    marks.push(Mark::Area { points: corners.to_vec(), tint: Tint::Act });
    let middle = Point::new((room.left + room.right) / 2.0, (room.top + room.bottom) / 2.0);
    let label = board.label(&text, middle, Anchor::Middle, flag.hand);
    board.write(Label { rect: room, ..label });
    board.keep_off(Rect { left, ..room });
    // Labels stay off the line itself, which is thick.
    board.keep_off(Rect { left: layout.rod, right: layout.width, top: y - 3.0, bottom: y + 3.0 });
}

/// A size of the flag.
#[derive(Debug, Clone, Copy)]
struct Flag {
    hand: Hand,
    /// From the words to the flag's ends.
    beside: f64,
    /// Length of its tip.
    tip: f64,
}

impl Flag {
    fn width(&self, board: &Board, text: &str) -> f64 {
        let size = board.lettering().size(self.hand.letters);
        text_width(text, size, self.hand.bold) + 2.0 * self.beside + self.tip
    }
}

/// The costs of both ways above the depth line, outside the pair, each at every place that it may have. All are in whole
/// dollars: where these would not add up with the saving, the larger one is left out.
#[must_use]
pub fn costs(board: &Board, spots: &[Spot], compact: bool) -> Vec<Vec<Label>> {
    let up = board.lettering().plain * 0.95;
    let written = match spots {
        [cheap, dear] if money_alike(dear.cost, cheap.cost) > 0 => 1,
        _ => spots.len(),
    };
    let places = |(index, spot): (usize, &Spot)| {
        let word = board.word(&money(spot.cost, 0), Hand::BOLD);
        let (x, y) = (spot.at.x, spot.at.y);
        let right = index + 1 == spots.len();
        let side = |dx: f64, dy: f64| {
            if right {
                word.at(Point::new(x + dx, y + dy), Anchor::Start)
            } else {
                word.at(Point::new(x - dx, y + dy), Anchor::End)
            }
        };
        let near = [side(10.0, -up), side(6.0, -up), side(16.0, -up), side(6.0, -1.5 * up), side(3.0, -2.1 * up)];
        let far = [side(24.0, -up), side(10.0, up), side(20.0, up), side(10.0, 2.8 * up), side(10.0, 4.0 * up)];
        // On a phone the answer above the picture has the costs: there one that finds no room at its dot is left out.
        near.into_iter().chain(far.into_iter().filter(|_| !compact)).collect()
    };
    spots.iter().enumerate().take(written).map(places).collect()
}

/// Writes the costs. Gives how many found no room.
pub fn write_costs(board: &mut Board, costs: &[Vec<Label>]) -> usize {
    costs.iter().filter(|places| board.offer(places.iter().cloned()).is_none()).count()
}

/// Draws a dot on each way at the depth, the 240 V one last and smaller where they meet.
pub fn write_dots(marks: &mut Vec<Mark>, spots: &[Spot]) {
    let meet = matches!(spots, [a, b] if (a.at.x - b.at.x).abs() < 4.0);
    for way in [Way::V480, Way::V240] {
        for spot in spots.iter().filter(|spot| spot.way == way) {
            let radius = if meet && way == Way::V240 { 3.0 } else { 5.5 };
            marks.push(Mark::Dot { at: spot.at, radius, fill: Tint::Way(way), rim: Tint::Sheet });
        }
    }
}
