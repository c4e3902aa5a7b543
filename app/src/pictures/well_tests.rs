//! Wells of very different depths: everything at its depth, words on nothing else, broken only where it should be.
#![allow(clippy::unwrap_used)]

use super::draw::{Onto, draw};
use super::facts::{Facts, described};
use super::frame::{Bottom, Frame};
use super::ink::Ink;
use super::layout::Layout;
use super::mark::{Lettering, Point, Rect};
use super::scale::scale_end;
use super::spec::{View, picture};
use super::tests::{LETTERING, plate_height};
use super::well::{Stroke, ground, well};
use super::well_words::{Style, Word, Words, words_of};
use crate::locale::{Decimals, Language, depth, speak, words};
use crate::platform::storage::demo_jobs;
use plotters::prelude::{IntoDrawingArea, SVGBackend};
use wellwright_core::evaluate::{Basis, evaluate};
use wellwright_core::job::Field;
use wellwright_core::quantity::{Entry, Length, Unit, UnitSystem, feet, in_feet};

/// A well: pump, level at rest, level at work, bottom; in feet, not known below zero.
fn facts(depth: f64, rest: f64, work: f64, bottom: f64) -> Facts {
    let known = |value: f64| (value >= 0.0).then(|| feet(value));
    let demo = Facts::of(&evaluate(&demo_jobs().remove(0)));
    Facts {
        depth: known(depth),
        static_level: known(rest),
        pumping_level: known(work),
        well_depth: known(bottom),
        ..demo
    }
}

fn view(facts: &Facts, width: f64, system: UnitSystem, lettering: Lettering) -> View {
    let root = lettering.plain / Lettering::USUAL.plain;
    let height = plate_height(width, root);
    let layout = Layout::of(width, height, lettering);
    View {
        layout,
        end: scale_end(facts, Basis::Installed, system),
        lettering,
        system,
        basis: Basis::Installed,
        money: true,
    }
}

fn desk(facts: &Facts) -> (View, Frame) {
    let view = view(facts, 840.0, UnitSystem::Us, Lettering::USUAL);
    (view, Frame::of(facts, &view))
}

/// Wells with sensible levels at every depth of the pump, and some that make no sense but can be typed.
fn wells() -> Vec<Facts> {
    let mut out = vec![
        facts(-1.0, -1.0, -1.0, -1.0),
        facts(-1.0, 100.0, 140.0, 400.0),
        facts(100.0, 412.0, 498.0, 520.0),
        facts(620.0, 2800.0, 5600.0, 5000.0),
        facts(620.0, 0.0, 0.0, 0.0),
        facts(0.0, 0.0, 3000.0, 20.0),
        facts(800.0, 412.0, 498.0, 760.0),
        facts(300.0, 430.0, 450.0, 700.0),
        facts(20.0, 5.0, 10.0, 30.0),
        facts(20.0, 18.0, 260.0, 400.0),
        facts(2800.0, 2200.0, 2400.0, 2950.0),
    ];
    for pump in [0.0, 20.0, 60.0, 150.0, 300.0, 620.0, 869.0, 1200.0, 2000.0, 2700.0, 3000.0] {
        for (rest, work) in [(-1.0, -1.0), (0.66, -1.0), (0.66, 0.8), (0.1, 0.9), (0.9, 0.97), (0.5, 0.5)] {
            for below in [-1.0, 1.01, 1.2, 3.0] {
                out.push(facts(pump, rest * pump, work * pump, below * pump));
            }
        }
    }
    out
}

/// Every well in every size, unit, lettering and language.
fn each(mut check: impl FnMut(&Facts, &View, &Frame, &Words)) {
    for language in Language::ALL {
        speak(language, Decimals::Point);
        for facts in wells() {
            for width in [306.0, 336.0, 390.0, 600.0, 660.0, 712.0, 840.0, 1100.0] {
                for system in [UnitSystem::Us, UnitSystem::Si] {
                    for lettering in LETTERING {
                        let view = view(&facts, width, system, lettering);
                        check(&facts, &view, &Frame::of(&facts, &view), &words_of(&facts, &view));
                    }
                }
            }
        }
    }
    speak(Language::English, Decimals::Point);
}

fn at(facts: &Facts, view: &View) -> String {
    let depths = [facts.depth, facts.static_level, facts.pumping_level, facts.well_depth];
    let feet = depths.map(|depth| depth.map(|depth| in_feet(depth).round()));
    format!("{feet:?} at {} x {}, letters {}", view.layout.width, view.layout.height, view.lettering.small)
}

#[test]
fn words_stand_inside_the_ground_and_on_no_other() {
    each(|facts, view, frame, words| {
        let size = view.lettering.small;
        let room = Rect { left: 0.0, top: 0.0, right: view.layout.chart, bottom: frame.floor + 0.5 };
        let rects = words.rects(size);
        for (index, (word, rect)) in words.words.iter().zip(&rects).enumerate() {
            assert!(room.holds(rect), "{word:?} {}", at(facts, view));
            let other = rects[index + 1..].iter().position(|other| other.meets(rect));
            let other = other.map(|other| &words.words[index + 1 + other]);
            assert_eq!(other, None, "{word:?} {}", at(facts, view));
        }
    });
}

/// Middle of the first words that hold a text.
fn height_of(out: &Words, text: &str) -> Option<f64> {
    out.words.iter().find(|word| word.text.replace('\u{a0}', " ").contains(text)).map(|word| word.y)
}

#[test]
fn words_of_depths_stand_in_the_order_of_the_depths() {
    each(|facts, view, _, out| {
        let picture = &words().picture;
        let first = |text: String| text.split(['\u{a0}', ' ']).next().unwrap_or_default().to_owned();
        let figure = |length: Length, say: fn(&str) -> String| {
            let shown = depth(length, view.system).text().replace('\u{a0}', " ");
            if view.layout.compact { shown } else { first(say(&shown)) }
        };
        let levels = [
            facts.static_level.map(|level| (level, figure(level, picture.static_level))),
            facts.pumping_level.map(|level| (level, figure(level, picture.pumping_level))),
            facts.well_depth.map(|level| (level, figure(level, picture.bottom))),
        ];
        let bold = |word: &&Word| word.style == Style::Bold;
        let name = first(picture.pump_and_motor.to_owned());
        let named_pump = |word: &&Word| bold(word) && (view.layout.compact || word.text.starts_with(&name));
        let pump = facts.depth.zip(out.words.iter().find(named_pump).map(|word| word.y));
        let named: Vec<(Length, f64)> = levels
            .into_iter()
            .flatten()
            .filter_map(|(depth, text)| Some((depth, height_of(out, &text)?)))
            .chain(pump)
            .collect();
        for (index, one) in named.iter().enumerate() {
            let wrong = named[index + 1..]
                .iter()
                .find(|other| (one.0 < other.0 && one.1 > other.1) || (one.0 > other.0 && one.1 < other.1));
            assert_eq!(wrong, None, "{one:?} {:?} {}", out.words, at(facts, view));
        }
    });
}

#[test]
fn a_pump_above_the_water_is_named_above_it() {
    let facts = facts(300.0, 430.0, 450.0, 700.0);
    let (view, frame) = desk(&facts);
    let out = words_of(&facts, &view);
    let (pump, water) = (height_of(&out, "pump and motor").unwrap(), height_of(&out, "static").unwrap());
    assert!(pump < water && pump < frame.table.unwrap());
    let crossing = out.leaders.iter().filter(|(class, _)| *class == "l-lead").flat_map(|(_, path)| pieces(path));
    let table = frame.table.unwrap();
    assert!(!crossing.into_iter().any(|(from, to)| from.y.min(to.y) < table - 1.0 && from.y.max(to.y) > table + 1.0));
}

#[test]
fn in_a_shallow_well_every_part_is_named_near_its_place() {
    let facts = Facts { even: [None; 3], ..facts(20.0, 5.0, 10.0, 30.0) };
    let (view, frame) = desk(&facts);
    assert_eq!(in_feet(view.end).round(), 50.0);
    let out = words_of(&facts, &view);
    let scale = view.layout.scale(view.end);
    let near = |text: &str, y: f64| (height_of(&out, text).unwrap() - y).abs() < 24.0;
    assert!(
        near("static", frame.table.unwrap())
            && near("pumping", frame.level.unwrap())
            && near("bottom", scale.y(feet(30.0)))
    );
    assert!(near("pump and motor", frame.pump.unwrap().intake + 14.0));
}

#[test]
fn no_leader_crosses_another() {
    // A pump that would stand out of the ground is drawn too low for its leader.
    each(|facts, view, frame, words| {
        if frame.pump.is_some_and(|pump| pump.intake > pump.depth) {
            return;
        }
        let paths = words.leaders.iter().filter(|(class, _)| *class == "l-lead");
        let all: Vec<Vec<(Point, Point)>> = paths.map(|(_, path)| pieces(path)).collect();
        for pair in all.windows(2) {
            // Written from the highest to the lowest: so they must stay, from words to parts.
            let apart = pair[0].iter().zip(&pair[1]).all(|(a, b)| a.0.y < b.0.y + 0.1 && a.1.y < b.1.y + 0.1);
            assert!(apart, "{pair:?} {}", at(facts, view));
        }
    });
}

#[test]
fn on_a_phone_a_figure_and_its_unit_stand_in_one_line() {
    each(|facts, view, _, words| {
        // Depths that a pump can have, in letters that are not twice as large.
        let usual = [facts.pumping_level, facts.well_depth].into_iter().flatten().all(|depth| depth <= feet(3000.0));
        if usual && view.layout.compact && view.lettering.small < 20.0 {
            let alone = words.words.iter().find(|word| ["ft", "m", "hp", "kW"].contains(&word.text.as_str()));
            assert_eq!(alone, None, "{}", at(facts, view));
        }
    });
}

/// The straight pieces of a leader's path: `M x y H x L x y H x`.
fn pieces(path: &str) -> Vec<(Point, Point)> {
    let spaced: String =
        path.chars().map(|c| if c.is_ascii_alphabetic() { format!(" {c} ") } else { c.to_string() }).collect();
    let mut tokens = spaced.split_whitespace();
    let (mut out, mut here) = (Vec::new(), Point::new(0.0, 0.0));
    while let Some(command) = tokens.next() {
        let mut number = || tokens.next().unwrap().parse::<f64>().unwrap();
        let next = match command {
            "H" => Point::new(number(), here.y),
            _ => Point::new(number(), number()),
        };
        if command != "M" {
            out.push((here, next));
        }
        here = next;
    }
    out
}

#[test]
fn no_leader_crosses_words() {
    assert_eq!(pieces("M1 2H3L4 5").last(), Some(&(Point::new(3.0, 2.0), Point::new(4.0, 5.0))));
    each(|facts, view, _, words| {
        let rects = words.rects(view.lettering.small);
        for (_, path) in words.leaders.iter().filter(|(class, _)| *class == "l-lead") {
            for (from, to) in pieces(path) {
                let met = rects.iter().position(|rect| rect.crossed(from, to)).map(|met| &words.words[met]);
                assert_eq!(met, None, "{path} {}", at(facts, view));
            }
        }
    });
}

#[test]
fn levels_and_pump_never_give_way() {
    each(|facts, view, _, out| {
        let said: String = out.words.iter().map(|word| word.text.replace('\u{a0}', " ") + " ").collect();
        let picture = &words().picture;
        let figure = |length: Length| depth(length, view.system).text().replace('\u{a0}', " ");
        for level in [facts.static_level.filter(|level| *level <= view.end), facts.pumping_level].into_iter().flatten()
        {
            assert!(said.contains(&figure(level)), "{said}: {}", at(facts, view));
        }
        if facts.depth.is_some() {
            let pump = if view.layout.compact { "" } else { picture.pump_and_motor };
            assert!(said.contains(pump) && out.words.iter().any(|word| word.style == Style::Bold), "{said}");
        }
    });
}

#[test]
fn depths_stand_in_their_order_and_on_the_scale() {
    each(|facts, view, frame, _| {
        let scale = view.layout.scale(view.end);
        assert_eq!(frame.pump.map(|pump| pump.depth), facts.depth.map(|depth| scale.y(depth)));
        let Some(pump) = frame.pump else { return };
        // Drawn below ground, its intake at its depth wherever a short pump fits between.
        assert!(pump.top > view.layout.ground, "{}", at(facts, view));
        assert!(pump.intake == pump.depth || pump.depth < view.layout.ground + 16.0, "{}", at(facts, view));
        // Off the note in the corner.
        let note = view.layout.height - 1.4 * view.lettering.small;
        assert!(view.layout.compact || frame.floor <= note, "{}", at(facts, view));
        assert!(pump.top < pump.intake && pump.intake < pump.end && pump.end <= frame.floor);
        if let (Some(table), Some(level)) = (frame.table, frame.level) {
            assert_eq!(table, scale.y(facts.static_level.unwrap()));
            assert_eq!(table <= level, facts.static_level <= facts.level());
        }
        // Where there is room for it, a pump under water is drawn under it, and above a bottom below it.
        if let Some(level) = frame.level.filter(|level| pump.intake - level > 16.0) {
            assert!(pump.top > level, "{}", at(facts, view));
        }
        if let Bottom::At(bottom) = frame.bottom
            && bottom - pump.intake > 9.0
        {
            assert!(pump.end < bottom, "{}", at(facts, view));
        }
    });
}

#[test]
fn the_cone_falls_from_the_table_to_the_level_in_the_casing() {
    let (_, frame) = desk(&facts(620.0, 412.0, 498.0, 760.0));
    let (table, level) = (frame.table.unwrap(), frame.level.unwrap());
    let there = |x: f64| frame.table_at(x).unwrap();
    assert_eq!((there(frame.sides.0), there(frame.sides.1)), (level, level));
    assert!(there(0.0) - table < 0.05 * (level - table));
    let heights: Vec<f64> = (0..=16).map(|step| there(f64::from(step) * frame.sides.0 / 16.0)).collect();
    assert!(heights.windows(2).all(|pair| pair[0] < pair[1]));
}

fn drawn(facts: &Facts) -> Vec<Stroke> {
    let (view, frame) = desk(facts);
    let words = words_of(facts, &view).rects(view.lettering.small);
    ground(&frame, &words).into_iter().chain(well(&frame, &view)).collect()
}

fn has(strokes: &[Stroke], pen: &str) -> bool {
    strokes.iter().any(|(class, path)| *class == pen && !path.is_empty())
}

#[test]
fn only_water_that_is_known_is_drawn() {
    let none = drawn(&facts(620.0, -1.0, -1.0, -1.0));
    assert!(!["l-wet", "l-table", "mark", "f-water", "l-level", "l-rest"].iter().any(|pen| has(&none, pen)));
    assert!(has(&none, "l-unknown") && !has(&none, "l-slot"));
    let at_rest = drawn(&facts(620.0, 412.0, -1.0, -1.0));
    assert!(["l-wet", "l-table", "mark", "f-water", "l-level"].iter().all(|pen| has(&at_rest, pen)));
    assert!(!has(&at_rest, "l-rest"));
    let at_work = drawn(&facts(620.0, 412.0, 498.0, 760.0));
    assert!(["l-wet", "f-water", "l-level", "l-rest", "l-slot"].iter().all(|pen| has(&at_work, pen)));
    assert!(!has(&at_work, "l-unknown"));
}

#[test]
fn wet_ground_lies_below_the_table_and_off_casing_and_words() {
    let known = facts(620.0, 412.0, 498.0, 760.0);
    let (view, frame) = desk(&known);
    let words = words_of(&known, &view).rects(view.lettering.small);
    let (_, path) = ground(&frame, &words).into_iter().find(|(class, _)| *class == "l-wet").unwrap();
    let strokes: Vec<Point> = path
        .split('M')
        .filter(|stroke| !stroke.is_empty())
        .map(|stroke| {
            let (x, rest) = stroke.split_once(' ').unwrap();
            Point::new(x.parse().unwrap(), rest.split('h').next().unwrap().parse().unwrap())
        })
        .collect();
    assert!(strokes.len() > 100);
    let bottom = view.layout.scale(view.end).y(feet(760.0));
    for from in strokes {
        let to = Point::new(from.x + 9.0, from.y);
        assert!(frame.table_at(from.x).unwrap() < from.y && frame.table_at(to.x).unwrap() < from.y);
        assert!(from.y > bottom || to.x < frame.sides.0 || from.x > frame.sides.1);
        assert!(to.x < view.layout.rod && from.y < frame.floor);
        assert!(!words.iter().any(|word| word.crossed(from, to)));
    }
}

#[test]
fn a_well_that_goes_on_below_the_scale_is_broken_and_a_near_bottom_shown() {
    let end =
        |bottom: f64, system| in_feet(scale_end(&facts(620.0, 412.0, 498.0, bottom), Basis::Installed, system)).round();
    assert_eq!([end(760.0, UnitSystem::Us), end(1500.0, UnitSystem::Us)], [1000.0, 1000.0]);
    assert_eq!([end(1150.0, UnitSystem::Us), end(1201.0, UnitSystem::Us)], [1200.0, 1000.0]);
    // Water below the pump widens the scale like the pump itself.
    assert_eq!(
        in_feet(scale_end(&facts(620.0, 900.0, 1200.0, -1.0), Basis::Installed, UnitSystem::Us)).round(),
        1500.0
    );
    let whole = facts(620.0, 412.0, 498.0, 760.0);
    let (view, frame) = desk(&whole);
    assert_eq!(frame.bottom, Bottom::At(view.layout.scale(view.end).y(feet(760.0))));
    assert!(!has(&drawn(&whole), "f-sheet"));
    let broken = facts(620.0, 412.0, 498.0, 1500.0);
    assert_eq!(desk(&broken).1.bottom, Bottom::Beyond);
    assert!(has(&drawn(&broken), "f-sheet"));
    let said = words_of(&broken, &desk(&broken).0).words;
    assert!(said.iter().any(|word| word.text == "bottom 1,500\u{a0}ft"), "{said:?}");
}

#[test]
fn the_facts_are_those_of_the_job() {
    let mut job = demo_jobs().remove(0);
    let entered = [(Field::StaticLevel, 412.0), (Field::Drawdown, 86.0), (Field::WellDepth, 760.0)];
    for (field, value) in entered {
        job.set(field, Some(Entry::new(value, Unit::Foot)));
    }
    let found = Facts::of(&evaluate(&job));
    let feet = [found.static_level, found.pumping_level, found.well_depth].map(|depth| in_feet(depth.unwrap()).round());
    assert_eq!(feet, [412.0, 498.0, 760.0]);
    for (field, _) in entered {
        job.set(field, None);
    }
    let found = Facts::of(&evaluate(&job));
    assert_eq!([found.static_level, found.pumping_level, found.well_depth], [None; 3]);
}

#[test]
fn the_whole_picture_in_words() {
    let answer = evaluate(&demo_jobs().remove(0));
    let said = described(&facts(620.0, 412.0, 498.0, 760.0), &answer, Some(Basis::Installed), UnitSystem::Us);
    let here = answer.here.as_ref().unwrap();
    assert!(
        said.contains("pump at 620\u{a0}ft")
            && said.contains("static 412\u{a0}ft; pumping 498\u{a0}ft; bottom 760\u{a0}ft")
    );
    for way in here.ways.iter().flatten() {
        assert!(said.contains(&crate::locale::money(way.installed, 0)), "{said}");
        assert!(said.contains(&crate::locale::conductor(way.run.run.conductor)), "{said}");
    }
    let unset = described(&facts(-1.0, -1.0, -1.0, -1.0), &answer, Some(Basis::Cable), UnitSystem::Us);
    assert!(unset.starts_with(words().picture.alt_unset) && !unset.contains("static"));
}

#[test]
fn the_same_picture_is_drawn_as_svg() {
    let answer = evaluate(&demo_jobs().remove(0));
    let known = Facts::of(&answer);
    let view = view(&known, 840.0, UnitSystem::Us, Lettering::USUAL);
    let colors = ["--ink", "--hair", "--act", "--on-act", "--sheet", "--way-240", "--way-480"];
    let color = |name: &str| colors.iter().position(|color| *color == name);
    let ink = Ink::from(&|name| color(name).map(|at| format!("#0{at}00{at}0")).unwrap_or_default()).unwrap();
    let drawn = picture(&answer, &view, None);
    let mut svg = String::new();
    {
        let area = SVGBackend::with_string(&mut svg, (840, 500)).into_drawing_area();
        draw(&area, &drawn, &ink, Onto { ratio: 1.0, letters: 1.0, covers: true }).unwrap();
    }
    assert_eq!(svg.matches("<text").count(), drawn.labels.len());
    for label in &drawn.labels {
        assert!(svg.contains(&format!("\n{}\n", label.text)), "{} is missing", label.text);
    }
    for name in ["--way-240", "--way-480", "--act"] {
        let at = color(name).unwrap();
        assert!(svg.contains(&format!("#0{at}00{at}0")), "nothing is drawn in {name}");
    }
}
