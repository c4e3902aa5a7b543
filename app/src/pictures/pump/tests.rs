//! Pumps of very different jobs: words on nothing else and inside the picture, everything at its flow and head.
#![allow(clippy::unwrap_used)]

use super::chart::{Chart, Extent, Speed, Spot};
use super::drawing::{Drawing, drawing};
use super::letters::{clipped, named_point};
use super::map::View;
use super::told::{curve_table, described};
use crate::locale::{Decimals, Language, frequency, pressure, speak, words};
use crate::pictures::mark::{Lettering, Rect};
use crate::pictures::tests::LETTERING;
use std::sync::LazyLock;
use wellwright_core::evaluate::{Evaluation, NoDuty, evaluate};
use wellwright_core::job::{Control, DrawdownBy, Field, Job};
use wellwright_core::pump::demo::{ALL, DemoPump, FIELD_WELL, HOUSE_WELL};
use wellwright_core::quantity::{Entry, Unit, UnitSystem, feet, gpm, in_feet, in_gpm, in_hertz};

/// What a job is made of: flow, static level, gpm a foot, surface pipe, rise, pressure.
type Figures = [f64; 6];

/// 25 gpm from 430 ft.
const HOUSE: Figures = [25.0, 430.0, 0.6, 80.0, 4.0, 60.0];

fn job(figures: Figures, curve: Option<&DemoPump>) -> Job {
    let mut job = Job::named("");
    job.choices.drawdown = Some(DrawdownBy::SpecificCapacity);
    let [wanted, level, capacity, run, rise, held] = figures;
    for (field, value, unit) in [
        (Field::PumpSetting, level + 190.0, Unit::Foot),
        (Field::StaticLevel, level, Unit::Foot),
        (Field::Flow, wanted, Unit::GallonPerMinute),
        (Field::SpecificCapacity, capacity, Unit::GallonPerMinutePerFoot),
        (Field::SurfaceLength, run, Unit::Foot),
        (Field::Rise, rise, Unit::Foot),
        (Field::Pressure, held, Unit::PoundPerSquareInch),
    ] {
        job.set(field, Some(Entry::new(value, unit)));
    }
    let row = |(flow, head, share): &(f64, f64, f64)| format!("{flow} {head} {share}\n");
    job.curve = curve.map(|pump| pump.rows.iter().map(row).collect()).unwrap_or_default();
    job
}

fn answer(figures: Figures, curve: Option<&DemoPump>) -> Evaluation {
    let answer = evaluate(&job(figures, curve));
    assert!(answer.water.system.is_some() && answer.water.head.is_some(), "{figures:?}");
    answer
}

/// A figure between two, from a fixed row of numbers that look like chance (Knuth's constants).
struct Chance(u64);

impl Chance {
    fn between(&mut self, least: f64, most: f64) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        least + (most - least) * ((self.0 >> 40) as f64 / (1_u64 << 24) as f64)
    }
}

/// Jobs of any kind: pumps that are too small and too large, pressures from none to the most, water that runs down.
fn answers() -> Vec<Evaluation> {
    let mut chance = Chance(2026);
    let mut out = vec![
        answer(HOUSE, Some(&HOUSE_WELL)),
        answer(HOUSE, None),
        answer([36.0, 430.0, 0.6, 80.0, 4.0, 60.0], Some(&HOUSE_WELL)),
        answer([25.0, 430.0, 0.6, 80.0, 4.0, 300.0], Some(&HOUSE_WELL)),
        answer([25.0, 430.0, 0.6, 80.0, -900.0, 0.0], Some(&HOUSE_WELL)),
        answer([25.0, 10.0, 50.0, 0.0, -900.0, 0.0], None),
        answer([0.5, 2.0, 500.0, 0.0, 0.0, 0.0], None),
    ];
    for _ in 0..45 {
        let pump = ALL[chance.between(0.0, 2.999) as usize];
        let (most_flow, most_head) = (pump.rows.last().unwrap().0, pump.rows[0].1);
        let wanted = most_flow * chance.between(0.05, 1.25);
        let level = most_head * chance.between(0.05, 1.1);
        let capacity = wanted / chance.between(1.0, 150.0);
        let figures = [wanted, level, capacity, chance.between(0.0, 3000.0), chance.between(-200.0, 200.0)];
        let [a, b, c, d, e] = figures;
        let held = chance.between(0.0, 120.0);
        let with_curve = chance.between(0.0, 1.0) > 0.15;
        out.push(answer([a, b, c, d, e, held], with_curve.then_some(&pump)));
    }
    out
}

/// Height in the style sheet for a screen that is no higher than it must be.
fn height(lettering: Lettering) -> f64 {
    240.0 + 120.0 * lettering.plain / Lettering::USUAL.plain
}

fn view(chart: &Chart, width: f64, units: UnitSystem, lettering: Lettering) -> View {
    View { size: (width, height(lettering)), lettering, extent: Extent::of(chart), units }
}

/// A picture and what it was made of.
struct Case {
    chart: Chart,
    view: View,
    drawing: Drawing,
    language: Language,
    at: String,
}

/// Every job in every size, unit, lettering and language, every third of them switched on and off.
fn cases() -> &'static [Case] {
    static ALL: LazyLock<Vec<Case>> = LazyLock::new(draw_all);
    &ALL
}

fn draw_all() -> Vec<Case> {
    let mut out = Vec::new();
    for (number, answer) in answers().iter().enumerate() {
        let control = if number % 3 == 2 { Control::OnOff } else { Control::ConstantPressure };
        let chart = Chart::of(answer, control);
        for language in Language::ALL {
            speak(language, Decimals::Point);
            for width in [296.0, 336.0, 480.0, 640.0, 1000.0] {
                for units in [UnitSystem::Us, UnitSystem::Si] {
                    for lettering in LETTERING {
                        let view = view(&chart, width, units, lettering);
                        let at = format!("job {number}, {width} wide, {units:?}, {language:?}, {}", lettering.small);
                        let drawing = drawing(&chart, &view);
                        out.push(Case { chart: chart.clone(), view, drawing, language, at });
                    }
                }
            }
        }
    }
    speak(Language::English, Decimals::Point);
    out
}

fn each(mut check: impl FnMut(&Chart, &View, &Drawing, &str)) {
    for case in cases() {
        speak(case.language, Decimals::Point);
        check(&case.chart, &case.view, &case.drawing, &case.at);
    }
    speak(Language::English, Decimals::Point);
}

#[test]
fn words_stand_inside_the_picture_and_on_no_other() {
    each(|_, view, drawing, at| {
        let sheet = Rect { left: 0.0, top: 0.0, right: view.size.0, bottom: view.size.1 };
        for (index, letter) in drawing.letters.iter().enumerate() {
            let rect = letter.label.rect;
            assert!(sheet.grown(0.5).holds(&rect), "{letter:?} {at}");
            let other = drawing.letters[index + 1..].iter().find(|other| other.label.rect.meets(&rect));
            assert!(other.is_none(), "{letter:?} {other:?} {at}");
        }
    });
}

#[test]
fn points_setpoint_and_speeds_that_matter_always_have_their_words() {
    each(|chart, view, drawing, at| {
        let said = |text: &str| drawing.letters.iter().any(|letter| letter.label.text.contains(text));
        let spot = |spot: Spot| named_point(spot, view);
        assert!(said(words().charts.system_curve), "{at}");
        assert!(chart.duty.is_none_or(|duty| said(&spot(duty))), "{at}");
        assert!(chart.asked.is_none_or(|asked| said(&spot(asked.spot))), "{at}");
        assert!(chart.foot.is_none_or(|foot| said(&pressure(foot.pressure, view.units).text())), "{at}");
        for curve in chart.curves.iter().filter(|curve| curve.speed != Speed::Between) {
            assert!(said(&frequency(curve.frequency).text()), "{at}");
        }
    });
}

#[test]
fn a_curve_is_drawn_where_it_has_its_name_and_only_there() {
    each(|chart, _, drawing, at| {
        let pens = ["l-work", "l-most", "l-between", "l-lowest"];
        let drawn = drawing.strokes.iter().filter(|(class, _)| pens.contains(class)).count();
        let named =
            |frequency: &str| drawing.letters.iter().filter(|letter| letter.label.text.starts_with(frequency)).count();
        let names: usize = chart.curves.iter().map(|curve| named(&frequency(curve.frequency).text())).sum();
        assert_eq!(drawn, names, "{at}");
    });
}

#[test]
fn everything_stands_inside_its_axes() {
    each(|chart, _, drawing, at| {
        let map = &drawing.map;
        let plot = Rect { left: map.left, top: map.top, right: map.right, bottom: map.bottom }.grown(0.01);
        let spots = chart.curves.iter().flat_map(|curve| curve.points.iter().copied());
        let spots = spots.chain(clipped(&chart.system, map)).chain(chart.best.iter().copied());
        let spots = spots.chain(chart.duty).chain(chart.full).chain(chart.asked.map(|asked| asked.spot));
        for point in spots.map(|spot| map.at(spot)) {
            assert!(
                plot.holds(&Rect { left: point.x, top: point.y, right: point.x, bottom: point.y }),
                "{point:?} {at}"
            );
        }
    });
}

fn on_drive(answer: &Evaluation) -> Chart {
    Chart::of(answer, Control::ConstantPressure)
}

#[test]
fn a_pump_on_a_drive_is_drawn_at_its_speeds() {
    let answer = answer(HOUSE, Some(&HOUSE_WELL));
    let pump = answer.water.pump.clone().unwrap();
    let chart = on_drive(&answer);
    let speeds: Vec<Speed> = chart.curves.iter().map(|curve| curve.speed).collect();
    assert_eq!((speeds[0], *speeds.last().unwrap()), (Speed::Most, Speed::Lowest));
    let find = |speed| chart.curves.iter().find(|curve| curve.speed == speed).unwrap();
    assert_eq!(find(Speed::Duty).frequency, pump.frequency().unwrap());
    assert_eq!(find(Speed::Lowest).frequency, pump.lowest.unwrap());
    assert!(find(Speed::Duty).at_work && !find(Speed::Most).at_work);
    let hertz: Vec<f64> = chart.curves.iter().map(|curve| in_hertz(curve.frequency)).collect();
    assert!(hertz.windows(2).all(|pair| pair[0] > pair[1]), "{hertz:?}");
    // The curve as it was entered: 820 ft at no flow, 362 ft at 40 gpm, at 60 Hz.
    let (dead, end) = (chart.dead_head.unwrap(), chart.run_out().unwrap());
    assert!((in_feet(dead) - 820.0).abs() < 1e-6);
    assert!((in_gpm(end.0) - 40.0).abs() < 1e-6 && (in_feet(end.1) - 362.0).abs() < 1e-6);
    // The lowest useful speed holds the pressure at no flow.
    let foot = chart.foot.unwrap();
    assert!((in_feet(find(Speed::Lowest).points[0].1) - in_feet(foot.head)).abs() < 0.5);
    // The point of the duty lies on its curve and on the system's.
    let duty = chart.duty.unwrap();
    let beside = |trace: &[Spot]| {
        let pair = trace.windows(2).find(|pair| pair[0].0 <= duty.0 && duty.0 <= pair[1].0).unwrap();
        let share = ((duty.0 - pair[0].0) / (pair[1].0 - pair[0].0)).value;
        in_feet(pair[0].1 + (pair[1].1 - pair[0].1) * share)
    };
    assert!((beside(&find(Speed::Duty).points) - in_feet(duty.1)).abs() < 1.0);
    assert!((beside(&chart.system) - in_feet(duty.1)).abs() < 1.0);
    assert_eq!(chart.asked, None);
}

#[test]
fn without_a_curve_only_the_system_and_its_point_are_drawn() {
    let answer = answer(HOUSE, None);
    let chart = on_drive(&answer);
    assert!(chart.curves.is_empty() && chart.best.is_empty() && chart.full.is_none() && chart.dead_head.is_none());
    assert!(chart.duty.is_some() && chart.asked.is_none() && !chart.system.is_empty());
    let drawn = drawing(&chart, &view(&chart, 800.0, UnitSystem::Us, Lettering::USUAL));
    let has = |class: &str| drawn.strokes.iter().any(|(other, _)| *other == class);
    assert!(has("l-system") && has("m-duty"));
    assert!(!["l-work", "l-most", "l-lowest", "l-best", "m-ring", "m-quiet"].iter().any(|class| has(class)));
    assert!(described(&answer, Control::ConstantPressure, UnitSystem::Us).contains(words().charts.alt_no_curve));
    assert_eq!(curve_table(&answer, UnitSystem::Us), None);
}

#[test]
fn a_point_out_of_reach_is_shown_as_missed() {
    let answer = answer([36.0, 430.0, 0.6, 80.0, 4.0, 60.0], Some(&HOUSE_WELL));
    assert!(matches!(answer.water.pump.as_ref().unwrap().duty, Err(NoDuty::Faster { .. })));
    let chart = on_drive(&answer);
    let asked = chart.asked.unwrap();
    assert!(asked.missed && chart.duty.is_none() && asked.spot.0 == gpm(36.0));
    let drawn = drawing(&chart, &view(&chart, 800.0, UnitSystem::Us, Lettering::USUAL));
    let strokes: Vec<&str> = drawn.strokes.iter().map(|(class, _)| *class).collect();
    assert!(strokes.contains(&"m-missed") && strokes.contains(&"m-bar") && !strokes.contains(&"m-duty"));
    let stop = drawn.letters.iter().find(|letter| letter.class == "t-bold in-stop").unwrap();
    assert!(stop.label.text.contains("36\u{a0}gpm"));
    let said = described(&answer, Control::ConstantPressure, UnitSystem::Us);
    assert!(said.contains("can't give 36\u{a0}gpm") && said.contains("would have to run at"), "{said}");
}

#[test]
fn a_curve_that_can_t_be_used_judges_nothing() {
    let mut job = job(HOUSE, None);
    job.curve = "0 820\n5 abc\n".to_owned();
    let answer = evaluate(&job);
    assert!(answer.water.pump.is_none());
    let chart = on_drive(&answer);
    assert!(chart.curves.is_empty() && chart.duty.is_none());
    assert!(!chart.asked.unwrap().missed);
}

#[test]
fn a_pump_that_is_switched_has_one_speed() {
    let mut job = job(HOUSE, Some(&HOUSE_WELL));
    job.choices.control = Some(Control::OnOff);
    let answer = evaluate(&job);
    let chart = Chart::of(&answer, Control::OnOff);
    assert_eq!(chart.curves.len(), 1);
    assert!(chart.curves[0].at_work && chart.duty == chart.full && chart.asked.is_none());
}

#[test]
fn without_a_system_nothing_is_drawn_and_it_is_said() {
    let answer = evaluate(&Job::named(""));
    assert!(on_drive(&answer).is_empty());
    let said = described(&answer, Control::ConstantPressure, UnitSystem::Us);
    assert_eq!(said, words().charts.nothing);
}

#[test]
fn the_system_is_cut_at_the_upper_edge() {
    // A drop pipe for 25 gpm takes far more at the flow where the irrigation pump ends.
    let answer = answer([25.0, 300.0, 5.0, 3000.0, 0.0, 10.0], Some(&FIELD_WELL));
    let chart = on_drive(&answer);
    let map = view(&chart, 800.0, UnitSystem::Us, Lettering::USUAL).map(90.0);
    let cut = clipped(&chart.system, &map);
    assert!(cut.len() < chart.system.len());
    assert_eq!(cut.last().unwrap().1, map.extent.high);
}

#[test]
fn the_table_tells_points_of_the_curve_at_the_speed_of_the_duty() {
    let answer = answer(HOUSE, Some(&HOUSE_WELL));
    let table = curve_table(&answer, UnitSystem::Us).unwrap();
    let pump = answer.water.pump.as_ref().unwrap();
    assert!((table.frequency.value - in_hertz(pump.frequency().unwrap())).abs() < 1e-9);
    assert!(table.rows.len() == 9 && table.rows[0].flow.value == 0.0);
    assert!(table.rows.windows(2).all(|pair| pair[0].flow.value < pair[1].flow.value));
    assert!(table.rows.iter().all(|row| row.takes.is_some() && row.efficiency.is_some() && row.shaft.is_some()));
    // Water power over efficiency: 25 gpm near 645 ft at about 60 % take 25 · 645 / 3960 / 0.6 = 6.8 hp.
    let near = table.rows.iter().min_by(|a, b| (a.flow.value - 25.0).abs().total_cmp(&(b.flow.value - 25.0).abs()));
    assert!((near.unwrap().shaft.as_ref().unwrap().value - 6.8).abs() < 0.3, "{near:?}");
}

#[test]
fn the_description_tells_what_is_seen() {
    let said = described(&answer(HOUSE, Some(&HOUSE_WELL)), Control::ConstantPressure, UnitSystem::Us);
    for text in ["25\u{a0}gpm", "Hz", "60\u{a0}psi", "full speed"] {
        assert!(said.contains(text), "{text}: {said}");
    }
    assert!(!said.contains("can't") && feet(0.0) < on_drive(&answer(HOUSE, Some(&HOUSE_WELL))).foot.unwrap().base);
}

#[test]
fn a_picture_without_room_is_drawn_without_harm() {
    let chart = Chart::of(&answer(HOUSE, Some(&HOUSE_WELL)), Control::ConstantPressure);
    for size in [(0.0, 0.0), (1.0, 1.0), (40.0, 30.0)] {
        let lettering = Lettering::USUAL;
        let view = View { size, lettering, extent: Extent::of(&chart), units: UnitSystem::Us };
        let map = drawing(&chart, &view).map;
        assert!(map.top.is_finite() && map.top < map.bottom, "{size:?}");
    }
}
