//! Pictures of very different jobs: nothing overlaps, nothing is cut, everything stands at its exact depth.
#![allow(clippy::unwrap_used)]

use super::beside::letter;
use super::curve::{Grid, WayLine, hatch};
use super::facts::Facts;
use super::layout::Layout;
use super::mark::{Dash, Hand, Label, Lettering, Mark, Pen, Rect, Tint};
use super::probe::{next_stop, probed, stops};
use super::scale::{Scale, meters, round_step, scale_end};
use super::spec::{Picture, View, picture, rod_step};
use crate::locale::{depth, money};
use crate::platform::storage::demo_jobs;
use std::sync::LazyLock;
use wellwright_core::evaluate::{Basis, Evaluation, Sense, evaluate};
use wellwright_core::job::{Field, Job, Sets, Way};
use wellwright_core::quantity::{Entry, Money, Unit, UnitSystem, feet};
use wellwright_core::standards::conductor::Size;

/// Light, sun, and light for those who set their letters to 200 %.
pub const LETTERING: [Lettering; 3] = [
    Lettering::USUAL,
    Lettering { small: 14.0, plain: 15.0, large: 18.0 },
    Lettering { small: 26.0, plain: 28.0, large: 34.0 },
];

fn job(horsepower: Option<f64>, depth: Option<f64>, sets: u8) -> Job {
    let mut job = demo_jobs().remove(0);
    for field in [Field::NameplateAmps230, Field::NameplateAmps460] {
        job.set(field, None);
    }
    job.set(Field::MotorPower, horsepower.map(|value| Entry::new(value, Unit::Horsepower)));
    job.set(Field::PumpSetting, depth.map(|value| Entry::new(value, Unit::Foot)));
    job.choices.most_sets = Sets::new(sets);
    job
}

fn answers() -> Vec<Evaluation> {
    let mut jobs = demo_jobs();
    for (horsepower, depth, sets) in [
        (1.5, 300.0, 1),
        (200.0, 500.0, 1),
        (200.0, 700.0, 4),
        (10.0, 0.0, 1),
        (10.0, 40.0, 1),
        (30.0, 3000.0, 1),
        (60.0, 1700.0, 2),
        (20.0, 655.0, 1),
        (5.0, 985.0, 1),
        (1.0, 20.0, 1),
        (3.0, 120.0, 1),
        (7.5, 2800.0, 1),
    ] {
        jobs.push(job(Some(horsepower), Some(depth), sets));
    }
    jobs.extend([job(Some(20.0), None, 1), job(None, Some(400.0), 1), job(None, None, 1)]);
    jobs.iter().map(evaluate).collect()
}

/// Height of the plate in the style sheet for a screen that is no higher than it must be.
pub fn plate_height(width: f64, root: f64) -> f64 {
    match width {
        ..640.0 => 310.0 + 120.0 * root,
        640.0..700.0 => 250.0 + 120.0 * root,
        700.0..720.0 => 310.0 + 120.0 * root,
        _ => 350.0 + 150.0 * root,
    }
}

fn view(answer: &Evaluation, width: f64, system: UnitSystem, basis: Basis, lettering: Lettering) -> View {
    // As the style sheet makes the plate: higher with larger lettering.
    let root = lettering.plain / Lettering::USUAL.plain;
    let height = plate_height(width, root);
    let end = scale_end(&Facts::of(answer), basis, system);
    View { layout: Layout::of(width, height, lettering), end, lettering, system, basis, money: true }
}

/// Every job in every size, unit, basis and lettering.
fn pictures() -> &'static [(Evaluation, View, Picture)] {
    static ALL: LazyLock<Vec<(Evaluation, View, Picture)>> = LazyLock::new(draw_all);
    &ALL
}

fn draw_all() -> Vec<(Evaluation, View, Picture)> {
    let mut out = Vec::new();
    for answer in answers() {
        for width in [306.0, 336.0, 390.0, 600.0, 660.0, 840.0, 1100.0] {
            for system in [UnitSystem::Us, UnitSystem::Si] {
                for basis in Basis::ALL {
                    for lettering in LETTERING {
                        let view = view(&answer, width, system, basis, lettering);
                        out.push((answer.clone(), view, picture(&answer, &view, None)));
                    }
                }
            }
        }
    }
    out
}

fn overlap(labels: &[Label]) -> Option<(&str, &str)> {
    labels.iter().enumerate().find_map(|(index, one)| {
        let other = labels[index + 1..].iter().find(|other| one.rect.meets(&other.rect))?;
        Some((&*one.text, &*other.text))
    })
}

#[test]
fn no_label_stands_on_another_or_leaves_the_picture() {
    for (answer, view, picture) in pictures() {
        let at = format!("{:?} at {:?}", answer.here.as_ref().map(|here| here.depth), view.layout);
        assert_eq!(overlap(&picture.labels), None, "{at}");
        let sheet = Rect { left: 0.0, top: 0.0, right: view.layout.width, bottom: view.layout.height };
        for label in &picture.labels {
            assert!(sheet.grown(0.5).holds(&label.rect), "{label:?} {at}");
        }
    }
}

// A figure of money is written with its sign, or with the code of its currency.
#[test]
fn without_money_the_curve_stands_and_no_figure_of_it() {
    for (answer, view, whole) in pictures() {
        let bare = picture(answer, &View { money: false, ..*view }, None);
        assert!(bare.labels.iter().all(|label| !label.text.contains('$')), "{:?}", bare.labels);
        let lines = |picture: &Picture| picture.marks.iter().filter(|mark| is_way(mark)).count();
        assert_eq!(lines(&bare), lines(whole));
        if let Some(here) = &answer.here {
            assert!(bare.labels.iter().any(|label| *label.text == *depth(here.depth, view.system).text()));
        }
    }
}

fn is_way(mark: &Mark) -> bool {
    matches!(mark, Mark::Line { pen: Pen::Way, tint: Tint::Way(_), .. })
}

#[test]
fn depth_saving_and_names_never_give_way() {
    for (answer, view, picture) in pictures() {
        let has = |text: &str| picture.labels.iter().any(|label| &*label.text == text);
        if let Some(here) = &answer.here {
            assert!(has(&depth(here.depth, view.system).text()));
            let saving =
                here.saving.and_then(|saving| Some(saving.on(view.basis)?.0.abs())).filter(|saving| *saving > 0.0);
            assert!(saving.is_none_or(|amount| has(&money(Money(amount), 0))), "{saving:?} at {:?}", view.layout);
        }
        if answer.sweep.is_some() {
            let names = if view.layout.compact {
                crate::locale::words().answer.way_short
            } else {
                crate::locale::words().answer.way
            };
            assert!(Way::ALL.iter().all(|way| has(names(*way))));
        }
    }
}

fn grid(answer: &Evaluation) -> (Grid, View) {
    let view = view(answer, 840.0, UnitSystem::Us, Basis::Installed, LETTERING[0]);
    (view.grid(answer.sweep.as_ref().unwrap()), view)
}

#[test]
fn steps_stand_at_the_exact_depths() {
    let answer = evaluate(&demo_jobs().remove(0));
    let (grid, view) = grid(&answer);
    for way in &answer.sweep.as_ref().unwrap().ways {
        let line = WayLine::of(way, &grid);
        let steps: Vec<f64> = line.steps().map(|(from, _)| from.y).collect();
        let ends: Vec<f64> =
            way.runs.iter().map(|run| run.to).filter(|to| *to < view.end).map(|to| grid.scale.y(to)).collect();
        assert_eq!(steps, ends);
        assert!(line.steps().all(|(from, to)| from.y == to.y));
    }
}

#[test]
fn the_hatch_lies_only_where_480_volts_cost_less() {
    for answer in answers() {
        let Some(sweep) = &answer.sweep else { continue };
        let (grid, _) = grid(&answer);
        for (from, to) in hatch(sweep, &grid, UnitSystem::Us, 7.0) {
            let depth = grid.scale.depth(from.y);
            let cost = |way| sweep.way(way).cost_at(depth, grid.basis).unwrap();
            assert!(cost(Way::V240) > cost(Way::V480) && from.x < to.x);
        }
    }
}

#[test]
fn one_scale_from_ground_to_bottom() {
    let scale = Scale { ground: 86.0, bottom: 462.0, end: feet(1000.0) };
    assert_eq!((scale.y(feet(0.0)), scale.y(feet(1000.0))), (86.0, 462.0));
    assert!((scale.depth(scale.y(feet(437.5))) - feet(437.5)).abs() < feet(1e-9));
    assert_eq!(scale.multiples(feet(100.0)).count(), 11);
}

#[test]
fn the_scale_ends_at_a_round_depth_with_room_below_the_pump() {
    let at = |depth: f64| Facts { depth: Some(feet(depth)), ..Facts::default() };
    let us = |depth: f64| {
        wellwright_core::quantity::in_feet(scale_end(&at(depth), Basis::Installed, UnitSystem::Us)).round()
    };
    assert_eq!(
        [us(0.0), us(620.0), us(869.0), us(910.0), us(1700.0), us(2700.0), us(3000.0)],
        [50.0, 1000.0, 1000.0, 1200.0, 2000.0, 3000.0, 3000.0]
    );
    assert_eq!(
        [us(20.0), us(60.0), us(120.0), us(170.0), us(300.0), us(600.0)],
        [50.0, 100.0, 150.0, 200.0, 500.0, 700.0]
    );
    assert_eq!(scale_end(&Facts::default(), Basis::Installed, UnitSystem::Si), meters(300.0));
    assert_eq!(scale_end(&at(3000.0), Basis::Installed, UnitSystem::Si), feet(3000.0));
}

#[test]
fn the_scale_shows_a_near_break_even_and_a_far_one_not() {
    let at = |depth: f64, even: f64| Facts {
        depth: Some(feet(depth)),
        even: [None, Some(feet(even)), None],
        ..Facts::default()
    };
    let end =
        |facts: &Facts, basis| wellwright_core::quantity::in_feet(scale_end(facts, basis, UnitSystem::Us)).round();
    let installed = |depth: f64, even: f64| end(&at(depth, even), Basis::Installed);
    assert_eq!([installed(120.0, 430.0), installed(120.0, 490.0), installed(20.0, 79.0)], [500.0, 150.0, 100.0]);
    assert_eq!([installed(620.0, 1110.0), installed(620.0, 1130.0), installed(620.0, 100.0)], [1200.0, 1000.0, 1000.0]);
    // Only the basis that is shown counts.
    assert_eq!(end(&at(120.0, 430.0), Basis::Cable), 150.0);
    let demo = Facts::of(&evaluate(&job(Some(10.0), Some(300.0), 1)));
    let even = demo.even(Basis::Installed).unwrap();
    assert!(even > feet(300.0) && scale_end(&demo, Basis::Installed, UnitSystem::Us) > even);
}

#[test]
fn steps_of_the_rod_are_round_and_few() {
    for (_, view, picture) in pictures().iter().filter(|(_, view, _)| view.lettering == LETTERING[0]) {
        let (step, scale) = (rod_step(view), view.layout.scale(view.end));
        let unit = match view.system {
            UnitSystem::Us => feet(1.0),
            UnitSystem::Si => meters(1.0),
        };
        let value = (step / unit).value;
        let first = value / 10_f64.powf((value * (1.0 + 1e-9)).log10().floor());
        assert!([1.0, 2.0, 5.0].iter().any(|round| (first - round).abs() < 1e-6), "{value}");
        assert!((2..=16).contains(&scale.multiples(step).skip(1).count()), "{value} {:?}", view.end);
        assert!(scale.pixels(step) >= view.lettering.small * 1.5);
        // The deepest figure that stays says its unit.
        let rod = picture.labels.iter().filter(|label| label.rect.left == view.layout.rod_right() + 8.0);
        let lowest = rod.filter(|label| label.hand == Hand::SMALL).max_by(|a, b| a.rect.top.total_cmp(&b.rect.top));
        assert!(lowest.is_none_or(|label| label.text.contains('\u{a0}')), "{lowest:?} {view:?}");
    }
}

#[test]
fn the_figure_of_the_saving_stands_clear_of_the_curves() {
    let mut found = 0;
    // Letters of twice the size fill a phone.
    for (answer, view, picture) in
        pictures().iter().filter(|(_, view, _)| !view.layout.compact || view.lettering.small < 20.0)
    {
        let (Some(sweep), Some(here)) = (&answer.sweep, &answer.here) else { continue };
        let Some(saving) = here.saving.and_then(|saving| Some(saving.on(view.basis)?.0.abs())) else { continue };
        let (grid, text) = (view.grid(sweep), money(Money(saving), 0));
        let at = grid.scale.y(here.depth);
        let near = |label: &&Label| *label.text == *text && label.hand.bold && (label.rect.top - at).abs() < 160.0;
        let Some(figure) = picture.labels.iter().find(near) else { continue };
        found += 1;
        for way in &sweep.ways {
            let met = WayLine::of(way, &grid).stretches().find(|(from, to)| figure.rect.crossed(*from, *to));
            assert_eq!(met, None, "{figure:?} at {:?} to {:?}", view.layout, view.end);
        }
    }
    assert!(found > 500, "{found}");
}

#[test]
fn the_dimension_of_the_saving_lies_on_no_step() {
    let answer = evaluate(&job(Some(7.5), Some(620.0), 1));
    for width in [336.0, 390.0, 660.0, 840.0, 1100.0] {
        let view = view(&answer, width, UnitSystem::Us, Basis::Installed, LETTERING[0]);
        let (grid, sweep) = (view.grid(answer.sweep.as_ref().unwrap()), answer.sweep.as_ref().unwrap());
        let steps: Vec<_> =
            sweep.ways.iter().flat_map(|way| WayLine::of(way, &grid).steps().collect::<Vec<_>>()).collect();
        let drawn: Vec<Rect> = picture(&answer, &view, None)
            .marks
            .iter()
            .filter_map(|mark| match mark {
                Mark::Line { points, pen: Pen::Thin | Pen::Hair, tint: Tint::Ink, dash: Dash::Solid } => {
                    match points[..] {
                        [from, to] if from.x == to.x => Some(Rect {
                            left: from.x - 3.0,
                            right: to.x + 3.0,
                            top: from.y.min(to.y),
                            bottom: from.y.max(to.y),
                        }),
                        [from, to] if from.x > view.layout.chart => {
                            Some(Rect { left: from.x, right: to.x, top: from.y - 6.0, bottom: to.y + 6.0 })
                        }
                        _ => None,
                    }
                }
                _ => None,
            })
            .filter(|rect| rect.bottom < view.layout.bottom && rect.right > view.layout.chart)
            .collect();
        assert!(drawn.len() >= 3, "{drawn:?}");
        let even = sweep.break_even(Basis::Installed).lasting().unwrap();
        let ring = grid.scale.y(even.depth);
        for rect in drawn.iter().filter(|rect| rect.top > ring + 8.0) {
            let met = steps.iter().find(|(from, to)| rect.crossed(*from, *to));
            assert_eq!(met, None, "{rect:?} at {width}");
        }
    }
}

#[test]
fn the_flag_stands_on_its_line_and_on_no_cost() {
    for (answer, view, picture) in pictures() {
        let (Some(sweep), Some(here)) = (&answer.sweep, &answer.here) else { continue };
        let flag = picture.labels.iter().find(|label| label.hand.tint == Tint::OnAct).unwrap().rect;
        let grid = view.grid(sweep);
        let y = grid.scale.y(here.depth);
        assert!(flag.top <= y && y <= flag.bottom, "{flag:?} {y}");
        if y > view.layout.ground + 12.0 && view.lettering.small < 20.0 {
            assert!((y - (flag.top + flag.bottom) / 2.0).abs() < 0.5, "{flag:?} {y}");
        }
        for way in Way::ALL {
            let at = grid.at(sweep.way(way), here.depth);
            // With its tip and the dot; letters of twice the size fill a phone.
            let full = view.layout.compact && view.lettering.small > 20.0;
            assert!(full || at.is_none_or(|at| at.x + 9.0 <= flag.left), "{flag:?} {at:?} {:?}", view.layout);
        }
    }
}

#[test]
fn the_figures_of_the_rod_stand_where_there_is_room() {
    let answer = evaluate(&job(Some(30.0), Some(2800.0), 1));
    let view = view(&answer, 840.0, UnitSystem::Us, Basis::Installed, LETTERING[0]);
    let said: Vec<String> =
        picture(&answer, &view, None).labels.into_iter().map(|label| label.text.to_string()).collect();
    for figure in ["500", "1,000", "1,500", "2,000"] {
        assert!(said.iter().any(|text| text == figure), "{figure} is missing: {said:?}");
    }
}

#[test]
fn on_a_phone_both_sizes_in_use_have_their_gauge_or_neither() {
    let mut both = 0;
    for (answer, view, picture) in pictures() {
        let Some(here) = answer.here.as_ref().filter(|_| view.layout.compact) else { continue };
        let sizes = here.ways.iter().flatten().map(|way| way.run.run.conductor.size);
        let with = |gauge: bool| {
            let ends = |size: &Size| {
                picture.labels.iter().any(|label| {
                    let text = label.text.rsplit('×').next().unwrap_or_default();
                    let bare = text == size.designation();
                    label.hand == Hand::BOLD
                        && if gauge {
                            text.ends_with(size.gauge()) && text.starts_with(size.designation())
                        } else {
                            bare
                        }
                })
            };
            sizes.clone().filter(ends).count()
        };
        let (whole, bare) = (with(true), with(false));
        assert!(whole == 0 || bare == 0, "{:?}", picture.labels);
        both += usize::from(whole == 2);
    }
    assert!(both > 50, "{both}");
}

#[test]
fn the_picture_speaks_of_whole_dollars_that_add_up() {
    let mut left_out = 0;
    for depth in 600..680 {
        let answer = evaluate(&job(Some(10.0), Some(f64::from(depth)), 1));
        let view = view(&answer, 840.0, UnitSystem::Us, Basis::Installed, LETTERING[0]);
        let labels = picture(&answer, &view, None).labels;
        assert!(!labels.iter().any(|label| label.text.starts_with('$') && label.text.contains('.')), "{labels:?}");
        let here = answer.here.as_ref().unwrap();
        let costs = here.ways.each_ref().map(|way| way.as_ref().unwrap().installed);
        let shown =
            costs.map(|cost| labels.iter().any(|label| label.hand == Hand::BOLD && *label.text == *money(cost, 0)));
        let [low, high] = costs.map(|cost| cost.0.round());
        let adds_up = (low - high).abs() == here.saving.unwrap().on(Basis::Installed).unwrap().0.abs().round();
        assert!(adds_up || shown != [true; 2], "{depth}");
        left_out += usize::from(!adds_up);
    }
    assert!(left_out > 0);
}

#[test]
fn ticks_are_round_and_inside() {
    assert_eq!([round_step(70.0), round_step(0.3), round_step(5.0), round_step(2001.0)], [100.0, 0.5, 5.0, 5000.0]);
    assert_eq!(round_step(f64::NAN), 1.0);
    for answer in answers() {
        let Some(sweep) = &answer.sweep else { continue };
        let (grid, view) = grid(&answer);
        let ticks: Vec<f64> = grid.axis.ticks(view.layout.width).map(|tick| grid.axis.x(tick)).collect();
        assert!((2..=10).contains(&ticks.len()), "{ticks:?}");
        assert!(ticks.iter().all(|x| *x >= view.layout.chart - 0.5 && *x <= view.layout.width));
        for way in &sweep.ways {
            for (from, to) in WayLine::of(way, &grid).stretches() {
                assert!(from.x.min(to.x) >= view.layout.chart - 0.5 && from.x.max(to.x) <= view.layout.width);
            }
        }
    }
}

#[test]
fn the_probe_walks_from_step_to_step() {
    let answer = evaluate(&demo_jobs().remove(0));
    let sweep = answer.sweep.as_ref().unwrap();
    let (_, view) = grid(&answer);
    let all = stops(sweep, view.end);
    assert_eq!((all.first(), all.last()), (Some(&feet(0.0)), Some(&view.end)));
    assert!(all.windows(2).all(|pair| pair[0] < pair[1]));
    let next = next_stop(&all, feet(0.0), true).unwrap();
    assert_eq!(next, all[1]);
    assert_eq!(next_stop(&all, next, false), Some(feet(0.0)));
    assert_eq!(next_stop(&all, view.end, true), Some(view.end));
    let here = probed(sweep, &view, feet(620.0));
    assert_eq!(here.depth, "At 620\u{a0}ft");
    assert!(here.ways[1].text.contains("6\u{a0}AWG") && here.ways.iter().all(|way| way.x.is_some()));
}

#[test]
fn every_further_way_has_its_line_and_its_letter() {
    let job = demo_jobs().remove(0);
    let answer = evaluate(&job);
    let keys: Vec<_> = answer.can_be_beside().iter().map(|place| answer.ways.all[*place].key()).collect();
    assert!(keys.len() > 2);
    for sense in [Sense::LongerLead, Sense::DeeperWater] {
        for width in [306.0, 390.0, 660.0, 1100.0] {
            for basis in Basis::ALL {
                let seen = answer.with_beside(&job, sense, &keys);
                let plain = answer.in_sense(sense);
                let view = view(&seen, width, UnitSystem::Us, basis, Lettering::USUAL);
                let drawn = picture(&seen, &view, None);
                let thin = |picture: &Picture| {
                    let is = |mark: &&Mark| matches!(mark, Mark::Line { pen: Pen::Hair, dash: Dash::Way(_), .. });
                    picture.marks.iter().filter(is).count()
                };
                let sweep = seen.sweep.as_ref().unwrap();
                assert_eq!(sweep.beside.len(), keys.len());
                let grid = view.grid(sweep);
                let runs: usize = sweep.beside.iter().map(|way| WayLine::of(way, &grid).runs.len()).sum();
                assert_eq!(thin(&drawn), runs);
                assert_eq!(thin(&picture(&plain, &view, None)), 0);
                for place in 0..keys.len() {
                    let letters = drawn.labels.iter().filter(|label| *label.text == *letter(place));
                    assert_eq!(letters.count(), 1, "{place} at {width} {basis:?} {sense:?}");
                }
            }
        }
    }
}

#[test]
fn labels_on_what_can_be_moved_stand_on_its_color() {
    let (_, _, picture) = &pictures()[0];
    assert_eq!(picture.labels.iter().filter(|label| label.hand.tint == Tint::OnAct).count(), 1);
}
