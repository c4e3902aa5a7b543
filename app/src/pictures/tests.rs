//! Pictures of very different jobs: nothing overlaps, nothing is cut, everything stands at its exact depth.
#![allow(clippy::unwrap_used)]

use super::curve::{Grid, WayLine, hatch};
use super::facts::Facts;
use super::layout::Layout;
use super::mark::{Label, Lettering, Rect, Tint};
use super::probe::{next_stop, probed, stops};
use super::scale::{Scale, meters, round_step, scale_end};
use super::spec::{Picture, View, picture};
use crate::locale::money;
use crate::platform::storage::demo_jobs;
use wellwright_core::evaluate::{Basis, Evaluation, evaluate};
use wellwright_core::job::{Field, Job, Sets, Way};
use wellwright_core::quantity::{Entry, Money, Unit, UnitSystem, feet};

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
    ] {
        jobs.push(job(Some(horsepower), Some(depth), sets));
    }
    jobs.extend([job(Some(20.0), None, 1), job(None, Some(400.0), 1), job(None, None, 1)]);
    jobs.iter().map(evaluate).collect()
}

fn view(answer: &Evaluation, width: f64, system: UnitSystem, basis: Basis, lettering: Lettering) -> View {
    // As the style sheet makes the plate: higher with larger lettering.
    let root = lettering.plain / Lettering::USUAL.plain;
    let height = if width < 640.0 { 310.0 + 120.0 * root } else { 350.0 + 150.0 * root };
    let end = scale_end(&Facts::of(answer), system);
    View { layout: Layout::of(width, height, lettering), end, lettering, system, basis }
}

/// Every job in every size, unit, basis and lettering.
fn pictures() -> Vec<(Evaluation, View, Picture)> {
    let mut out = Vec::new();
    for answer in answers() {
        for width in [306.0, 336.0, 390.0, 600.0, 660.0, 840.0, 1100.0] {
            for system in [UnitSystem::Us, UnitSystem::Si] {
                for basis in Basis::ALL {
                    for lettering in LETTERING {
                        let view = view(&answer, width, system, basis, lettering);
                        out.push((answer.clone(), view, picture(&answer, &view)));
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
        Some((one.text.as_str(), other.text.as_str()))
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

#[test]
fn depth_saving_and_names_never_give_way() {
    for (answer, view, picture) in pictures() {
        let has = |text: &str| picture.labels.iter().any(|label| label.text == text);
        if let Some(here) = &answer.here {
            assert!(has(&crate::locale::depth(here.depth, view.system).text()));
            let saving = here.saving.map(|saving| saving.on(view.basis).0.abs()).filter(|saving| *saving > 0.0);
            let said = |amount: f64| [0, 2].iter().any(|decimals| has(&money(Money(amount), *decimals)));
            assert!(saving.is_none_or(said), "{saving:?} at {:?}", view.layout);
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
    let us = |depth: f64| wellwright_core::quantity::in_feet(scale_end(&at(depth), UnitSystem::Us)).round();
    assert_eq!(
        [us(0.0), us(620.0), us(869.0), us(910.0), us(1700.0), us(2700.0), us(3000.0)],
        [1000.0, 1000.0, 1000.0, 1200.0, 2000.0, 3000.0, 3000.0]
    );
    assert_eq!(scale_end(&Facts::default(), UnitSystem::Si), meters(300.0));
    assert_eq!(scale_end(&at(3000.0), UnitSystem::Si), feet(3000.0));
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
fn labels_on_what_can_be_moved_stand_on_its_color() {
    let (_, _, picture) = pictures().into_iter().next().unwrap();
    assert_eq!(picture.labels.iter().filter(|label| label.hand.tint == Tint::OnAct).count(), 1);
}
