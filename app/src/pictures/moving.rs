//! What moves while the depth is under a finger: the depth line with its flag, dots, costs and the saving between them. The
//! curve stands as it was taken hold of, and the finger's depth is read off it: nothing is worked out anew for a frame.

use super::curve::WayLine;
use super::facts::Facts;
use super::here;
use super::mark::Rect;
use super::saving;
use super::spec::{Picture, View};
use wellwright_core::evaluate::Sweep;
use wellwright_core::job::Way;
use wellwright_core::quantity::Length;

/// What stands at a depth of a curve.
#[must_use]
pub fn moving(sweep: &Sweep, depth: Length, view: &View) -> Picture {
    let (layout, grid, mut board) = (&view.layout, view.grid(sweep), view.board());
    board.keep_off(Rect { left: 0.0, top: 0.0, right: layout.width, bottom: layout.ground });
    let mut marks = Vec::new();
    let spots = here::spots_at(sweep, depth, &grid);
    here::write_flag(&mut board, &mut marks, depth, view.system, layout, &grid, &spots);
    let ways = [WayLine::of(&sweep.ways[0], &grid), WayLine::of(&sweep.ways[1], &grid)];
    if view.money {
        if let Some(found) = saving::place(&board, &ways, &spots, layout, |_| 0.0) {
            saving::write(&mut board, &mut marks, &found, &spots, layout);
        }
        here::write_costs(&mut board, &spots, layout.compact);
    }
    here::write_dots(&mut marks, &spots);
    Picture { marks, labels: board.into_labels() }
}

/// The facts of a well whose pump hangs at another depth of the same curve.
#[must_use]
pub fn facts_at(facts: &Facts, sweep: Option<&Sweep>, depth: Length) -> Facts {
    let run = sweep.and_then(|sweep| sweep.way(Way::V480).run_at(depth));
    let lead = run.map(|run| (run.run.conductor, run.run.ground));
    Facts { depth: Some(depth), lead: lead.or(facts.lead), ..*facts }
}
