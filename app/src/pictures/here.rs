//! What stands at the job's depth: the depth line with its flag, the costs, and the saving as a dimension.

use super::curve::Grid;
use super::labels::{Board, text_width};
use super::layout::Layout;
use super::mark::{Anchor, Hand, Label, Letters, Mark, Pen, Point, Rect, Tint};
use crate::locale::{depth, money, money_alike, words};
use wellwright_core::evaluate::{Basis, Here, WayHere};
use wellwright_core::job::Way;
use wellwright_core::quantity::{Length, Money, UnitSystem};

/// Distances of the dimension line from the depth line, best first; others where a step lies there.
const DIMENSION_OFF: [f64; 5] = [26.0, 32.0, 38.0, 44.0, 20.0];
/// Least half of the flag's height, and the length of its tip.
const FLAG_HALF: f64 = 14.0;
const FLAG_TIP: f64 = 9.0;
/// From the flag to a cost.
const FLAG_CLEAR: f64 = 12.0;

/// A way's cost at the depth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spot {
    way: Way,
    cost: Money,
    at: Point,
}

/// The spots of both ways, the cheaper first.
#[must_use]
pub fn spots(here: &Here, grid: &Grid) -> Vec<Spot> {
    let y = grid.scale.y(here.depth);
    let spot = |way: Way| {
        let cost = cost(here.way(way)?, grid.basis);
        Some(Spot { way, cost, at: Point::new(grid.axis.x(cost), y) })
    };
    let mut found: Vec<Spot> = [Way::V480, Way::V240].into_iter().filter_map(spot).collect();
    found.sort_by(|a, b| a.cost.0.total_cmp(&b.cost.0));
    found
}

fn cost(way: &WayHere, basis: Basis) -> Money {
    match basis {
        Basis::Cable => way.cable,
        Basis::Installed => way.installed,
    }
}

/// Draws the depth line and its flag.
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
    let hand = Hand { tint: Tint::OnAct, ..Hand::BOLD };
    let text = depth(at, system).text();
    let half = (0.95 * board.lettering().plain).max(FLAG_HALF);
    let width = text_width(&text, board.lettering().plain, true) + 14.0;
    let (room, corners) = flag(y, width, half, layout, spots);
    marks.push(Mark::line(Point::new(layout.rod_right(), y), Point::new(layout.width - 4.0, y), Pen::Heavy, Tint::Act));
    let left = corners.iter().map(|(x, _)| *x).fold(room.left, f64::min);
    let right = corners.iter().map(|(x, _)| *x).fold(room.right, f64::max);
    marks.push(Mark::Area { points: corners.map(|(x, y)| Point::new(x, y)).to_vec(), tint: Tint::Act });
    let middle = Point::new((room.left + room.right) / 2.0, (room.top + room.bottom) / 2.0);
    let label = board.label(&text, middle, Anchor::Middle, hand);
    board.write(Label { rect: room, ..label });
    board.keep_off(Rect { left, right, ..room });
    // Labels stay off the line itself, which is thick.
    board.keep_off(Rect { left: layout.rod, right: layout.width, top: y - 3.0, bottom: y + 3.0 });
}

/// The flag's room and corners: at the right end of the depth line, else at its left, else over its right end, wherever
/// it hides no cost.
fn flag(y: f64, width: f64, half: f64, layout: &Layout, spots: &[Spot]) -> (Rect, [(f64, f64); 5]) {
    let rightmost = spots.iter().map(|spot| spot.at.x).fold(0.0, f64::max);
    let leftmost = spots.iter().map(|spot| spot.at.x).fold(f64::INFINITY, f64::min);
    let left_place = layout.rod_right() + 24.0;
    let at_right = rightmost + FLAG_CLEAR <= layout.width - width - FLAG_TIP;
    let at_left = !at_right && left_place + width + FLAG_TIP + FLAG_CLEAR <= leftmost;
    let (left, right) = if at_left { (left_place, left_place + width) } else { (layout.width - width, layout.width) };
    // Near the ground line the flag hangs lower, off the cost axis; near the end of the scale it stands higher.
    let highest = layout.ground - 5.0;
    if at_right || at_left {
        let top = (y - half).min(layout.bottom + FLAG_HALF - 2.0 * half).max(highest);
        let room = Rect { left, right, top, bottom: top + 2.0 * half };
        let (tip, shoulder, back) =
            if at_left { (right + FLAG_TIP, right, left) } else { (left - FLAG_TIP, left, right) };
        let corners = [(tip, y), (shoulder, room.top), (back, room.top), (back, room.bottom), (shoulder, room.bottom)];
        return (room, corners);
    }
    let over = y - FLAG_CLEAR + 2.0 - 2.0 * half;
    let top = if over >= highest + 10.0 { over } else { y + FLAG_CLEAR - 2.0 };
    let room = Rect { left, right, top, bottom: top + 2.0 * half };
    let (far, near) = if top < y { (room.top, room.bottom) } else { (room.bottom, room.top) };
    (room, [(right, y), (right, far), (left, far), (left, near), (right - FLAG_TIP, near)])
}

/// Writes the costs of both ways above the depth line, outside the pair.
pub fn write_costs(board: &mut Board, spots: &[Spot], compact: bool) {
    let up = board.lettering().plain * 0.95;
    let decimals = decimals(spots);
    for (index, spot) in spots.iter().enumerate() {
        let text = money(spot.cost, decimals);
        let (x, y) = (spot.at.x, spot.at.y);
        let right = index + 1 == spots.len();
        let side = |dx: f64, dy: f64| {
            if right {
                board.label(&text, Point::new(x + dx, y + dy), Anchor::Start, Hand::BOLD)
            } else {
                board.label(&text, Point::new(x - dx, y + dy), Anchor::End, Hand::BOLD)
            }
        };
        let near = [side(10.0, -up), side(6.0, -up), side(16.0, -up), side(6.0, -1.5 * up), side(3.0, -2.1 * up)];
        let far = [side(24.0, -up), side(10.0, up), side(20.0, up), side(10.0, 2.8 * up), side(10.0, 4.0 * up)];
        // On a phone the answer above the picture has the costs: there one that finds no room at its dot is left out.
        board.offer(near.into_iter().chain(far.into_iter().filter(|_| !compact)));
    }
}

/// Decimals with which the costs and their difference add up.
fn decimals(spots: &[Spot]) -> usize {
    match spots {
        [cheap, dear] => money_alike(dear.cost, cheap.cost),
        _ => 0,
    }
}

/// Draws the saving as a dimension between the two costs, its figure outside.
pub fn write_saving(board: &mut Board, marks: &mut Vec<Mark>, spots: &[Spot], y: f64, layout: &Layout) {
    let [cheap, dear] = spots else { return };
    let saving = dear.cost - cheap.cost;
    if saving.0 <= 0.0 {
        return;
    }
    let (line, under) = (cheap.at.y, y > cheap.at.y);
    let beyond = if under { 6.0 } else { -6.0 };
    let start = if under { line + 7.0 } else { line - 7.0 };
    for x in [cheap.at.x, dear.at.x] {
        marks.push(Mark::line(Point::new(x, start), Point::new(x, y + beyond), Pen::Hair, Tint::Ink));
        board.keep_off_line(Point::new(x, start), Point::new(x, y + beyond));
    }
    let text = money(saving, decimals(spots));
    let hand = saving_hand(board, &text, layout);
    let reach = if dear.at.x - cheap.at.x < 24.0 { 14.0 } else { 6.0 };
    let side = |more: f64| board.label(&text, Point::new(dear.at.x + reach + more, y), Anchor::Start, hand);
    let left = |more: f64| board.label(&text, Point::new(cheap.at.x - reach - more, y), Anchor::End, hand);
    let near = [8.0, 16.0, 26.0, 38.0].map(side).into_iter().chain([8.0, 20.0, 36.0].map(left));
    let middle = (cheap.at.x + dear.at.x) / 2.0;
    let between = [0.0, 16.0, 24.0].map(|down| board.label(&text, Point::new(middle, y + down), Anchor::Middle, hand));
    let width = between[0].rect.right - between[0].rect.left;
    let inside = between.into_iter().skip(usize::from(width + 44.0 > dear.at.x - cheap.at.x));
    let far = [52.0, 70.0, 90.0, 120.0].map(side);
    let apart = 2.6 * board.lettering().plain;
    let off = [line + apart, line - apart, line + 1.5 * apart, line - 1.5 * apart, line + 2.2 * apart];
    let off = off.map(|y| board.label(&text, Point::new(middle, y), Anchor::Middle, hand));
    let taken = board.insist(near.chain(inside).chain(far).chain(off).collect());
    let Some(rect) = taken else { return };
    let tails = match rect {
        rect if rect.left > dear.at.x => [cheap.at.x - reach, rect.left - 4.0],
        rect if rect.right < cheap.at.x => [rect.right + 4.0, dear.at.x + reach],
        _ => [cheap.at.x - reach, dear.at.x + reach],
    };
    dimension(marks, [cheap.at.x, dear.at.x], tails, y);
    board.keep_off_line(Point::new(tails[0], y), Point::new(tails[1], y));
    let note = (words().picture.saved_by)(cheap.way);
    if rect.left > dear.at.x && !layout.compact {
        board.offer([board.label(note, Point::new(rect.right + 6.0, y + 1.0), Anchor::Start, Hand::SMALL)]);
    }
}

/// The saving's lettering: large, unless it would fill a narrow picture.
fn saving_hand(board: &Board, text: &str, layout: &Layout) -> Hand {
    let large = Hand { letters: Letters::Large, ..Hand::BOLD };
    let width = text_width(text, board.lettering().large, true);
    if width <= 0.6 * (layout.width - layout.rod_right()) { large } else { Hand::BOLD }
}

/// Height of the dimension line: under the depth line and off the steps, or above it at the end of the scale.
#[must_use]
pub fn dimension_height(spots: &[Spot], levels: &[f64], layout: &Layout) -> Option<f64> {
    let [cheap, dear] = spots else { return None };
    let line = cheap.at.y;
    if dear.cost.0 <= cheap.cost.0 {
        return None;
    }
    if line + DIMENSION_OFF[0] + 10.0 > layout.bottom {
        return Some(line - 46.0);
    }
    let clear = |y: &f64| *y + 10.0 <= layout.bottom && levels.iter().all(|level| (level - y).abs() >= 6.0);
    Some(DIMENSION_OFF.iter().map(|off| line + off).find(clear).unwrap_or(line + DIMENSION_OFF[0]))
}

/// A dimension line with an arrow at each end; where there is no room between, the arrows point in from outside.
fn dimension(marks: &mut Vec<Mark>, [from, to]: [f64; 2], tails: [f64; 2], y: f64) {
    let inside = to - from >= 24.0;
    let ends = if inside {
        [from, if tails[1] > to + 7.0 { tails[1] } else { to }]
    } else {
        [tails[0].min(from), tails[1].max(to)]
    };
    let ends = if inside && tails[0] < from - 7.0 { [tails[0], to] } else { ends };
    marks.push(Mark::line(Point::new(ends[0], y), Point::new(ends[1], y), Pen::Thin, Tint::Ink));
    let back = if inside { 9.0 } else { -9.0 };
    for (x, back) in [(from, back), (to, -back)] {
        let points = vec![Point::new(x, y), Point::new(x + back, y - 3.5), Point::new(x + back, y + 3.5)];
        marks.push(Mark::Area { points, tint: Tint::Ink });
    }
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
