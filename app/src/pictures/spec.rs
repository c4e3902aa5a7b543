//! The curve picture, worked out: what stands where, in pixels of the page.

use super::axis::MoneyAxis;
use super::curve::{Grid, RunLine, WayLine, hatch};
use super::here;
use super::labels::Board;
use super::layout::Layout;
use super::mark::{Anchor, Dash, Hand, Label, Lettering, Mark, Pen, Point, Rect, Tint};
use super::names::halves;
use super::saving::Dimension;
use super::well_words::head_right;
use super::{beside, names, saving, sizes};
use crate::locale::{self, words};
use wellwright_core::evaluate::{Basis, Crossing, Evaluation, Here, Sweep};
use wellwright_core::job::Way;
use wellwright_core::quantity::{Entry, Length, UnitSystem, feet};

/// How a picture is looked at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct View {
    /// Places of the parts.
    pub layout: Layout,
    /// End of the depth scale.
    pub end: Length,
    /// Sizes of the lettering.
    pub lettering: Lettering,
    /// Units.
    pub system: UnitSystem,
    /// What is counted in.
    pub basis: Basis,
    /// Whether figures of money are written.
    pub money: bool,
}

/// A picture: marks from the lowest to the highest, then labels.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Picture {
    /// Lines, areas, dots.
    pub marks: Vec<Mark>,
    /// Words and figures.
    pub labels: Vec<Label>,
}

impl View {
    /// The grid for a sweep.
    #[must_use]
    pub fn grid(&self, sweep: &Sweep) -> Grid {
        Grid {
            scale: self.layout.scale(self.end),
            axis: MoneyAxis::of(sweep, self.basis, self.end, &self.layout),
            basis: self.basis,
        }
    }

    /// Room for words, all of it free.
    #[must_use]
    pub fn board(&self) -> Board {
        let bounds = Rect {
            left: self.layout.rod_right() + 3.0,
            top: 0.0,
            right: self.layout.width,
            bottom: self.layout.height,
        };
        Board::new(bounds, self.lettering)
    }
}

/// Both ways at the ends of a band.
pub type Ends = [Sweep; 2];

/// The picture of an evaluation, with the band that its lines may lie in; without a sweep only rod figures and ground
/// line.
#[must_use]
pub fn picture(answer: &Evaluation, view: &View, band: Option<&Ends>) -> Picture {
    let target = answer.inputs.pump_setting.as_ref().map_or(feet(0.0), |known| known.value);
    drawn(answer, (answer.here.as_ref(), target), view, band)
}

/// The same without anything that stands at the job's depth: what stays while that depth moves.
#[must_use]
pub fn standing(answer: &Evaluation, view: &View, band: Option<&Ends>) -> Picture {
    drawn(answer, (None, feet(0.0)), view, band)
}

fn drawn(answer: &Evaluation, (here, target): (Option<&Here>, Length), view: &View, band: Option<&Ends>) -> Picture {
    let mut board = view.board();
    let mut marks = Vec::new();
    let ground = view.layout.ground;
    board.keep_off(Rect { left: view.layout.rod, top: ground - 3.0, right: view.layout.width, bottom: ground + 3.0 });
    let target = view.layout.scale(view.end).y(target);
    let middle = view.layout.rod_middle();
    board.keep_off(Rect { left: middle - 22.0, top: target - 22.0, right: middle + 22.0, bottom: target + 22.0 });
    let figures = rod_figures(view, &board);
    for (label, ..) in figures.iter().filter(|(label, ..)| board.free(&label.rect)).cloned().collect::<Vec<_>>() {
        board.spare(label.rect);
    }
    match &answer.sweep {
        Some(sweep) => {
            if let Some(ends) = band {
                bands(sweep, ends, view, &mut marks);
            }
            curves(here, sweep, view, &mut board, &mut marks);
        }
        None => ground_line(view, &mut marks),
    }
    write_rod(figures, view, &mut board, &mut marks);
    Picture { marks, labels: board.into_labels() }
}

/// Where the line of each way may lie, between the ends of a band, as far as both reach.
fn bands(sweep: &Sweep, ends: &Ends, view: &View, marks: &mut Vec<Mark>) {
    let grid = view.grid(sweep);
    for way in [Way::V240, Way::V480] {
        let [one, other] = [&ends[0], &ends[1]].map(|end| WayLine::of(end.way(way), &grid).runs);
        let along = |runs: &[RunLine]| runs.iter().flat_map(|run| [run.from, run.to]).collect::<Vec<_>>();
        let (mut points, mut back) = (along(&one), along(&other));
        let (Some(last), Some(far)) = (points.last().copied(), back.last().copied()) else { continue };
        let deepest = last.y.min(far.y);
        back.reverse();
        points.extend(back);
        for point in &mut points {
            *point = Point::new(point.x.min(view.layout.width), point.y.min(deepest));
        }
        marks.push(Mark::Area { points, tint: Tint::Band(way) });
    }
}

fn curves(here: Option<&Here>, sweep: &Sweep, view: &View, board: &mut Board, marks: &mut Vec<Mark>) {
    let (layout, grid) = (&view.layout, view.grid(sweep));
    let ways = [WayLine::of(&sweep.ways[0], &grid), WayLine::of(&sweep.ways[1], &grid)];
    cost_axis(&grid, view, board, marks);
    let spots = here.map(|here| here::spots(here, &grid)).unwrap_or_default();
    let under = marks.len();
    let others = beside::lines(sweep, &grid);
    for other in &others {
        way_line(other, Pen::Hair, marks);
    }
    for way in ways.iter().rev() {
        way_line(way, Pen::Way, marks);
        for (from, to) in way.stretches() {
            board.keep_off_line(from, to);
        }
    }
    ground_line(view, marks);
    if grid.axis.broken() {
        axis_break(view, marks);
    }
    board.keep_off(Rect { left: 0.0, top: 0.0, right: layout.width, bottom: layout.ground });
    names::write(board, marks, &ways, layout);
    if let Some(here) = here {
        here::write_flag(board, marks, here.depth, view.system, layout, &grid, &spots);
    }
    keep_off_rings(sweep, &grid, view, board);
    let line = here.map(|here| grid.scale.y(here.depth));
    // On a phone the sizes come first; the costs stand above the picture.
    let narrow = layout.compact && layout.width < 400.0 * layout.grown;
    // Without money the depth line has no costs to tell and no saving between them.
    let costs: &[here::Spot] = if view.money { &spots } else { &[] };
    let (figures, in_use) =
        (here::costs(board, costs, layout.compact), sizes::InUse::of(board, &ways, line, layout.compact));
    let harm = |found: &Dimension| {
        let mut tried = board.clone();
        saving::write(&mut tried, &mut Vec::new(), found, costs, layout);
        let missing = if narrow { 0 } else { here::write_costs(&mut tried, &figures) };
        missing as f64 + in_use.write(&mut tried)
    };
    let dimension = saving::place(board, &ways, costs, layout, harm);
    if let Some(found) = &dimension {
        saving::write(board, marks, found, costs, layout);
    }
    let clear = |from: &Point| dimension.as_ref().is_none_or(|found| (from.y - found.y).abs() > 5.0);
    let hairs = hatch(sweep, &grid, view.system, 7.0).into_iter().filter(|(from, _)| clear(from));
    marks.splice(under..under, hairs.map(|(from, to)| Mark::line(from, to, Pen::Hair, Tint::Hatch)));
    if !narrow {
        here::write_costs(board, &figures);
    }
    rings(sweep, &grid, view, board, marks);
    names::write_ends(board, marks, &ways, view.system, layout.compact);
    in_use.write(board);
    if narrow {
        here::write_costs(board, &figures);
    }
    beside::write(board, &others);
    sizes::write_others(board, &ways, line, layout.compact);
    here::write_dots(marks, &spots);
}

/// The ground line, from the rod on.
fn ground_line(view: &View, marks: &mut Vec<Mark>) {
    let y = view.layout.ground;
    marks.push(Mark::line(Point::new(view.layout.rod, y), Point::new(view.layout.width, y), Pen::Heavy, Tint::Ink));
}

/// The line of a way: thin level steps, then the runs with their pen and the way's dash.
fn way_line(way: &WayLine, pen: Pen, marks: &mut Vec<Mark>) {
    let level = if pen == Pen::Way { Pen::Thin } else { pen };
    for (from, to) in way.steps() {
        marks.push(Mark::line(from, to, level, Tint::Way(way.way)));
    }
    for run in &way.runs {
        let points = vec![run.from, run.to];
        marks.push(Mark::Line { points, pen, tint: Tint::Way(way.way), dash: Dash::Way(way.way) });
    }
}

/// Ticks upward from the ground line, guides downward, and what is counted in.
fn cost_axis(grid: &Grid, view: &View, board: &mut Board, marks: &mut Vec<Mark>) {
    let (layout, words) = (&view.layout, words());
    let above = layout.ground - 8.0 - view.lettering.small * 0.6;
    for tick in grid.axis.ticks(layout.width - 22.0) {
        let x = grid.axis.x(tick);
        let (top, bottom) = (Point::new(x, layout.ground), Point::new(x, layout.bottom));
        marks.push(Mark::Line { points: vec![top, bottom], pen: Pen::Hair, tint: Tint::Hair, dash: Dash::Guide });
        marks.push(Mark::line(top, Point::new(x, layout.ground - 7.0), Pen::Mid, Tint::Ink));
        if !view.money {
            continue;
        }
        let label = |x: f64, anchor| board.label(&locale::money(tick, 0), Point::new(x, above), anchor, Hand::SMALL);
        let middle = label(x, Anchor::Middle);
        // The last one stays inside.
        let inside = if middle.rect.right > layout.width { label(layout.width, Anchor::End) } else { middle };
        board.offer([inside]);
    }
    let what = match view.basis {
        Basis::Cable => words.picture.axis_cable,
        Basis::Installed => words.picture.axis_installed,
        Basis::Lifetime => words.picture.axis_lifetime,
    };
    let line = view.lettering.small * 1.3;
    let both = format!("{what}, {}", words.picture.axis_broken);
    let texts: &[&str] = if grid.axis.broken() { &[&both, what] } else { &[what] };
    let room = Rect { left: head_right(view) + 4.0, top: 0.0, right: layout.width, bottom: layout.ground };
    let lowest = above - line - 2.0;
    // Whole in one line or two, else without its second half, else not at all: what is counted in stands above, too.
    let candidates: Vec<Vec<Label>> = texts
        .iter()
        .flat_map(|text| [vec![*text], halves(text)])
        .map(|lines| {
            let last = lines.len() - 1;
            let at = |index: usize| Point::new(layout.width, lowest - line * (last - index) as f64);
            let label = |(index, text): (usize, &&str)| board.label(text, at(index), Anchor::End, Hand::SMALL);
            lines.iter().enumerate().map(label).collect()
        })
        .collect();
    let found = candidates.into_iter().find(|lines: &Vec<Label>| lines.iter().all(|line| room.holds(&line.rect)));
    for label in found.into_iter().flatten() {
        board.write(label);
    }
}

/// Two strokes across the ground line where the axis leaves out the costs from zero on.
fn axis_break(view: &View, marks: &mut Vec<Mark>) {
    let (x, y) = (view.layout.chart - 2.0, view.layout.ground);
    marks.push(Mark::Area {
        points: vec![
            Point::new(x - 3.0, y + 4.0),
            Point::new(x + 1.0, y - 4.0),
            Point::new(x + 7.0, y - 4.0),
            Point::new(x + 3.0, y + 4.0),
        ],
        tint: Tint::Sheet,
    });
    for dx in [-4.0, 2.0] {
        marks.push(Mark::line(Point::new(x + dx, y + 6.0), Point::new(x + dx + 5.0, y - 6.0), Pen::Mid, Tint::Ink));
    }
}

/// Places where the cheaper way changes, with their depths; the last change first.
fn changes(sweep: &Sweep, grid: &Grid, view: &View) -> Vec<(Length, Point)> {
    let found = sweep.break_even(view.basis).crossings.iter().filter(|crossing| crossing.depth <= view.end);
    let place = |crossing: &Crossing| Some((crossing.depth, grid.at(sweep.way(crossing.below), crossing.depth)?));
    found.rev().filter_map(place).collect()
}

fn ring_room(at: Point) -> Rect {
    Rect { left: at.x - 7.0, top: at.y - 7.0, right: at.x + 7.0, bottom: at.y + 7.0 }
}

fn keep_off_rings(sweep: &Sweep, grid: &Grid, view: &View, board: &mut Board) {
    for (_, at) in changes(sweep, grid, view) {
        board.keep_off(ring_room(at));
    }
}

/// A ring at every change, with its depth.
fn rings(sweep: &Sweep, grid: &Grid, view: &View, board: &mut Board, marks: &mut Vec<Mark>) {
    for (index, (depth, at)) in changes(sweep, grid, view).into_iter().enumerate() {
        if index == 0 {
            let from = Point::new(view.layout.rod_right() + 3.0, at.y);
            let points = vec![from, Point::new(at.x - 7.0, at.y)];
            board.keep_off_line(points[0], points[1]);
            marks.push(Mark::Line { points, pen: Pen::Hair, tint: Tint::Ink, dash: Dash::Dotted });
        }
        marks.push(Mark::Dot { at, radius: 5.0, fill: Tint::Sheet, rim: Tint::Ink });
        let text = (words().picture.even_here)(&locale::depth(depth, view.system).text());
        let ahead = if view.layout.compact { [12.0, 20.0, 32.0, 48.0] } else { [48.0, 30.0, 64.0, 84.0] };
        let candidates =
            ahead.map(|ahead| board.label(&text, Point::new(at.x + ahead, at.y), Anchor::Start, Hand::PLAIN));
        if let Some(rect) = board.offer(candidates) {
            let (from, to) = (Point::new(at.x + 6.0, at.y), Point::new(rect.left - 4.0, at.y));
            if to.x > from.x + 3.0 {
                marks.push(Mark::line(from, to, Pen::Hair, Tint::Ink));
                board.keep_off_line(from, to);
            }
        }
    }
}

/// Figures of the rod, the deepest first, with their places.
fn rod_figures(view: &View, board: &Board) -> Vec<(Label, String, f64)> {
    let scale = view.layout.scale(view.end);
    let step = rod_step(view);
    let unit = view.system.unit(wellwright_core::quantity::Kind::Length);
    let depths: Vec<Length> = scale.multiples(step).skip(1).collect();
    let figure = |(index, depth): (usize, &Length)| {
        let y = scale.y(*depth);
        let value = Entry::new(step_value(step, view.system) * (index + 1) as f64, unit);
        let shown = locale::entry(value, view.system);
        let at = Point::new(view.layout.rod_right() + 8.0, y);
        (board.label(&shown.figure, at, Anchor::Start, Hand::SMALL), shown.text(), y)
    };
    depths.iter().enumerate().rev().map(figure).collect()
}

/// Writes the figures of the rod, last: they give way to everything else. The deepest that stays has the unit.
fn write_rod(figures: Vec<(Label, String, f64)>, view: &View, board: &mut Board, marks: &mut Vec<Mark>) {
    let (x, mut named) = (view.layout.rod_right(), false);
    for (label, text, y) in figures {
        let whole = board.label(&text, Point::new(label.rect.left, y), Anchor::Start, Hand::SMALL);
        let written = if named { board.offer([label]) } else { board.offer([whole]) };
        if written.is_some() {
            named = true;
            marks.push(Mark::line(Point::new(x, y), Point::new(x + 5.0, y), Pen::Hair, Tint::Ink));
        }
    }
}

/// Step of the rod's figures; a block is half of it.
#[must_use]
pub fn rod_step(view: &View) -> Length {
    let scale = view.layout.scale(view.end);
    scale.step(if view.layout.compact { 44.0 } else { 30.0 }, view.system)
}

fn step_value(step: Length, system: UnitSystem) -> f64 {
    match system {
        UnitSystem::Us => wellwright_core::quantity::in_feet(step).round(),
        UnitSystem::Si => step.value.round(),
    }
}
