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
        let costs = here::costs(&board, &spots, layout.compact);
        here::write_costs(&mut board, &costs);
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

#[cfg(test)]
mod tests {
    use super::super::layout::Layout;
    use super::super::mark::{Lettering, Mark};
    use super::super::scale::scale_end;
    use super::super::spec::{picture, standing};
    use super::*;
    use crate::platform::storage::demo_jobs;
    use wellwright_core::evaluate::{Basis, Evaluation, evaluate};
    use wellwright_core::job::Field;
    use wellwright_core::quantity::{Entry, Unit, UnitSystem, feet};

    fn at(depth: f64) -> Evaluation {
        let mut job = demo_jobs().remove(0);
        job.set(Field::PumpSetting, Some(Entry::new(depth, Unit::Foot)));
        evaluate(&job)
    }

    fn view(answer: &Evaluation, money: bool) -> View {
        let (system, basis, lettering) = (UnitSystem::Us, Basis::Installed, Lettering::USUAL);
        let end = scale_end(&Facts::of(answer), basis, system);
        View { layout: Layout::of(900.0, 780.0, lettering), end, lettering, system, basis, money }
    }

    #[test]
    fn what_stands_does_not_go_with_the_depth() {
        let (one, other) = (at(620.0), at(480.0));
        let view = view(&one, true);
        let drawn = standing(&one, &view, None);
        assert_eq!(drawn, standing(&other, &view, None));
        assert_ne!(drawn, picture(&one, &view, None));
    }

    /// Dots, line and flag of the moving picture are those of the whole one, at the depth of the job and at any other.
    #[test]
    fn what_moves_is_where_the_whole_picture_has_it() {
        let grabbed = at(620.0);
        let view = view(&grabbed, true);
        for depth in [300.0, 480.0, 620.0, 745.0] {
            let whole = picture(&at(depth), &view, None);
            let found = moving(grabbed.sweep.as_ref().unwrap(), feet(depth), &view);
            let dots = |picture: &Picture| {
                picture.marks.iter().filter(|mark| matches!(mark, Mark::Dot { radius, .. } if *radius > 5.0)).count()
            };
            assert_eq!(dots(&found), 2, "{depth} ft");
            for mark in found.marks.iter().filter(|mark| matches!(mark, Mark::Dot { .. } | Mark::Area { .. })) {
                assert!(whole.marks.contains(mark), "{mark:?} at {depth} ft");
            }
            assert!(found.labels.iter().any(|label| *label.text == *format!("{depth}\u{a0}ft")), "{:?}", found.labels);
        }
    }

    #[test]
    fn without_money_no_figure_of_it_moves() {
        let answer = at(620.0);
        let found = moving(answer.sweep.as_ref().unwrap(), feet(500.0), &view(&answer, false));
        assert!(found.labels.iter().all(|label| !label.text.contains('$')), "{:?}", found.labels);
    }

    /// The lead of the drawn well is the one that serves at that depth.
    #[test]
    fn the_lead_goes_with_the_depth() {
        for depth in [100.0, 620.0, 900.0] {
            let answer = at(620.0);
            let found = facts_at(&Facts::of(&answer), answer.sweep.as_ref(), feet(depth));
            assert_eq!((found.depth, found.lead), (Some(feet(depth)), Facts::of(&at(depth)).lead), "{depth} ft");
        }
    }
}
