//! Leads of every length behind drives of every kind: words on nothing else and inside the picture, everything at its
//! length and voltage.
#![allow(clippy::unwrap_used)]

use super::chart::Chart;
use super::drawing::{Drawing, above, drawing};
use super::letters::{length_text, whole_volts};
use super::map::View;
use super::told::described;
use crate::locale::{Decimals, Language, speak, words};
use crate::pictures::mark::{Lettering, Point, Rect};
use crate::pictures::tests::LETTERING;
use std::sync::LazyLock;
use wellwright_core::cable::filter::{Practice, Remedy, remedy};
use wellwright_core::cable::long_lead::{
    Limit, Wave, critical_length, longest_unfiltered, peak, pulses_can_meet, reflection,
};
use wellwright_core::evaluate::Stress;
use wellwright_core::job::Way;
use wellwright_core::quantity::{UnitSystem, feet, in_volts, meters, meters_per_second, ohms, seconds, volts};

/// What a stress is made of: bus in volts, rise in microseconds, impedances of motor and lead, lead in feet.
type Figures = [f64; 5];

/// A drive on 480 V with the usual assumptions: critical length 24.6 ft, peak 1,402.6 V.
const USUAL: Figures = [720.0, 0.1, 3000.0, 80.0, 480.0];

fn stress([bus, rise, motor, cable, lead]: Figures, limit: Limit, fitted: Option<Remedy>) -> Stress {
    let wave =
        Wave { speed: meters_per_second(150e6), rise: seconds(1e-6 * rise), cable: ohms(cable), motor: ohms(motor) };
    let (bus, length) = (volts(bus), feet(lead));
    let critical = critical_length(wave.speed, wave.rise).unwrap();
    let peak = peak(bus, wave, length).unwrap();
    let least = remedy((peak, bus), limit.peak(), length, &Practice::default()).unwrap();
    let fitted = fitted.or(least).unwrap_or(Remedy::NoneNeeded);
    Stress {
        bus,
        wave,
        reflection: reflection(wave.motor, wave.cable).unwrap(),
        critical,
        length,
        peak,
        limit,
        bare: longest_unfiltered(bus, wave, limit.peak()).unwrap(),
        meet: pulses_can_meet(length, critical),
        least,
        fitted,
        cured: least.is_some_and(|least| fitted >= least),
    }
}

fn usual() -> Chart {
    Chart::of(&stress(USUAL, Limit::GeneralPurpose, None), Some(Way::V480)).unwrap()
}

/// Leads, limits and remedies of every kind, to the ends of what the fields take.
fn charts() -> Vec<Chart> {
    let limits = [
        Limit::GeneralPurpose,
        Limit::InverterDuty(volts(460.0)),
        Limit::InverterDuty(volts(230.0)),
        Limit::Typed(volts(600.0)),
        Limit::Typed(volts(3000.0)),
    ];
    let remedies = [None, Some(Remedy::NoneNeeded), Some(Remedy::OutputReactor), Some(Remedy::SineFilter)];
    let mut out = Vec::new();
    for (index, lead) in [0.0, 24.0, 130.0, 240.0, 480.0, 3000.0].into_iter().enumerate() {
        for (number, [bus, rise, motor, cable]) in [
            [720.0, 0.1, 3000.0, 80.0],
            [370.0, 0.1, 1500.0, 80.0],
            [720.0, 5.0, 700.0, 80.0],
            [813.0, 0.02, 10_000.0, 20.0],
            [720.0, 0.1, 100.0, 300.0],
        ]
        .into_iter()
        .enumerate()
        {
            for (step, limit) in limits.into_iter().enumerate() {
                let fitted = remedies[(index + number + step) % remedies.len()];
                let way = [Some(Way::V480), Some(Way::V240), None][(index + step) % 3];
                out.push(Chart::of(&stress([bus, rise, motor, cable, lead], limit, fitted), way).unwrap());
            }
        }
    }
    out
}

/// Height in the style sheet for a screen that is no higher than it must be.
fn height(lettering: Lettering) -> f64 {
    160.0 + 160.0 * lettering.plain / Lettering::USUAL.plain
}

fn view(width: f64, units: UnitSystem, lettering: Lettering) -> View {
    View { size: (width, height(lettering)), lettering, units }
}

/// A picture and what it was made of.
struct Case {
    chart: Chart,
    view: View,
    drawing: Drawing,
    language: Language,
    at: String,
}

/// Every chart in every size, lettering and language, in one unit or the other.
fn cases() -> &'static [Case] {
    static ALL: LazyLock<Vec<Case>> = LazyLock::new(draw_all);
    &ALL
}

fn draw_all() -> Vec<Case> {
    let mut out = Vec::new();
    for (number, chart) in charts().into_iter().enumerate() {
        for language in Language::ALL {
            speak(language, Decimals::Point);
            for (place, width) in [296.0, 328.0, 568.0, 1000.0].into_iter().enumerate() {
                for lettering in LETTERING {
                    let units = if (number + place) % 2 == 0 { UnitSystem::Us } else { UnitSystem::Si };
                    let view = view(width, units, lettering);
                    let at = format!("{chart:?}, {width} wide, {units:?}, {language:?}, {}", lettering.small);
                    out.push(Case { chart, view, drawing: drawing(&chart, &view), language, at });
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

fn said(drawing: &Drawing, text: &str) -> bool {
    drawing.letters.iter().any(|letter| letter.label.text.contains(text))
}

fn drawn(chart: &Chart, width: f64) -> Drawing {
    drawing(chart, &view(width, UnitSystem::Us, Lettering::USUAL))
}

fn has(drawing: &Drawing, class: &str) -> bool {
    drawing.strokes.iter().any(|(other, _)| *other == class)
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
fn the_lead_its_peak_the_limit_the_bus_and_the_way_always_have_their_words() {
    each(|chart, view, drawing, at| {
        let peak = &words().peak;
        assert!(said(drawing, &whole_volts(chart.peak)), "{at}");
        assert!(said(drawing, &(peak.lead)(&length_text(chart.lead, view.units))), "{at}");
        assert!(said(drawing, &(peak.limit_short)(&whole_volts(chart.limit.peak()))), "{at}");
        assert!(said(drawing, &whole_volts(chart.bus)), "{at}");
        assert!(chart.way.is_none_or(|way| said(drawing, (words().answer.way)(way))), "{at}");
        // A remedy's name may take two lines.
        let named = |text: &str| text.split(' ').all(|word| said(drawing, word));
        assert!(chart.fitted == Remedy::NoneNeeded || named((peak.fitted)(chart.fitted)), "{at}");
        assert_eq!(drawing.map.shows_meeting, has(drawing, "l-twice"), "{at}");
        if drawing.map.shows_meeting && view.lettering == Lettering::USUAL {
            assert!(said(drawing, &whole_volts(chart.twice())), "{at}");
        }
        assert!(!chart.meet || drawing.map.shows_meeting, "{at}");
    });
}

#[test]
fn everything_is_finite_and_inside_its_axes() {
    each(|chart, _, drawing, at| {
        let map = &drawing.map;
        let plot = Rect { left: map.left, top: map.top, right: map.right, bottom: map.bottom }.grown(0.01);
        let mut points: Vec<Point> = map.peak_line(chart).concat();
        points.push(map.at(chart.lead, chart.peak));
        points.push(map.at(chart.critical, chart.full));
        points.extend(map.shows_meeting.then(|| map.at(chart.overlap(), chart.twice())));
        points.extend(map.shows_limit.then(|| map.at(meters(0.0), chart.limit.peak())));
        for Point { x, y } in points {
            assert!(plot.holds(&Rect { left: x, top: y, right: x, bottom: y }), "{x} {y} {at}");
        }
        for (class, path) in &drawing.strokes {
            assert!(!path.contains("NaN") && !path.contains("inf"), "{class} {path} {at}");
        }
    });
}

#[test]
fn the_line_rises_to_the_critical_length_and_then_is_level() {
    // A lead of twice the critical length: no break.
    let [bus, rise, motor, cable, _] = USUAL;
    let two = stress([bus, rise, motor, cable, 49.2], Limit::GeneralPurpose, None);
    let chart = Chart::of(&two, Some(Way::V480)).unwrap();
    let picture = drawn(&chart, 800.0);
    let lines = picture.map.peak_line(&chart);
    assert_eq!((lines.len(), lines[0].len(), picture.map.behind), (1, 3, None));
    let [start, corner, end] = [lines[0][0], lines[0][1], lines[0][2]];
    assert_eq!((start.x, end.x, corner.y), (picture.map.left, picture.map.right, end.y));
    // 720 V · 0.948 = 682.6 V above the bus.
    assert!((start.y - corner.y - 682.6 * picture.map.per_volt).abs() < 0.1);
    let mark = picture.map.at(chart.lead, chart.peak);
    assert!((mark.x - start.x - 2.0 * (corner.x - start.x)).abs() < 0.5 && (mark.y - corner.y).abs() < 1e-9);
    assert!(!has(&picture, "l-twice") && !said(&picture, words().peak.axis_broken));
}

#[test]
fn a_far_lead_stands_behind_a_break_that_is_named() {
    let picture = drawn(&usual(), 800.0);
    let map = &picture.map;
    assert!(map.behind.is_some() && said(&picture, words().peak.axis_broken));
    // Five critical lengths lie before it, the critical length to scale.
    assert!(map.x(usual().overlap()) < map.end_x);
    let share = (map.x(usual().critical) - map.left) / (map.x(usual().overlap()) - map.left);
    assert!((share - 0.2).abs() < 1e-9);
    let gap = map.pieces(map.left);
    assert_eq!(gap.len(), 2);
    assert!(gap[0].1 < gap[1].0 && gap[1].0 < map.behind.unwrap());
    assert_eq!(map.lengths(&view(800.0, UnitSystem::Us, Lettering::USUAL)).len(), 8);
}

#[test]
fn a_limit_that_is_passed_is_passed_where_core_says() {
    let chart = usual();
    let picture = drawn(&chart, 800.0);
    let limit = picture.map.y(chart.limit.peak());
    let over = above(&picture.map.peak_line(&chart), limit);
    // 1,000 V lie at 280 / 682.6 of the critical length: 10.1 ft.
    assert!((over[0][0].x - picture.map.x(chart.bare)).abs() < 0.01 && over[0][0].y == limit);
    assert!(said(&picture, "1,000\u{a0}V, general-purpose motor") && said(&picture, "above the limit from 10\u{a0}ft"));
    assert!(has(&picture, "l-hatch") && has(&picture, "w480 l-over") && has(&picture, "m-cured"));
    assert!(said(&picture, "1,403\u{a0}V without the filter") && said(&picture, "dV/dt filter fitted"));
}

#[test]
fn a_remedy_that_is_not_enough_is_a_stop() {
    let chart = Chart::of(&stress(USUAL, Limit::GeneralPurpose, Some(Remedy::OutputReactor)), None).unwrap();
    let picture = drawn(&chart, 800.0);
    assert!(has(&picture, "m-over") && has(&picture, "m-bar") && !has(&picture, "m-cured"));
    let stop = |text: &str| picture.letters.iter().any(|it| it.class.contains("in-stop") && &*it.label.text == text);
    assert!(stop("output reactor fitted: not enough") && stop("1,403\u{a0}V without the reactor"));
}

#[test]
fn within_the_limit_nothing_is_hatched() {
    let low = stress([370.0, 0.1, 3000.0, 80.0, 90.0], Limit::GeneralPurpose, None);
    let picture = drawn(&Chart::of(&low, Some(Way::V240)).unwrap(), 800.0);
    assert!(has(&picture, "m-lead") && has(&picture, "w240 l-peak"));
    assert!(!["l-hatch", "w240 l-over", "m-over", "m-cured"].iter().any(|class| has(&picture, class)));
}

#[test]
fn a_limit_far_above_is_named_and_not_drawn() {
    let high = stress([370.0, 0.1, 3000.0, 80.0, 90.0], Limit::Typed(volts(3000.0)), None);
    let picture = drawn(&Chart::of(&high, Some(Way::V240)).unwrap(), 800.0);
    assert!(!has(&picture, "l-limit") && said(&picture, "limit 3,000\u{a0}V, higher than this picture"));
}

#[test]
fn a_phone_has_shorter_words() {
    let (phone, desk) = (drawn(&usual(), 328.0), drawn(&usual(), 600.0));
    assert!(said(&desk, "critical length 25\u{a0}ft"));
    assert!(said(&phone, "critical") && phone.letters.len() <= desk.letters.len());
}

#[test]
fn the_axis_of_volts_bears_round_figures_at_their_places() {
    let picture = drawn(&usual(), 800.0);
    let figures = picture.map.volts(&view(800.0, UnitSystem::Us, Lettering::USUAL));
    let (y, text) = figures.iter().find(|(_, text)| text == "1,000").unwrap();
    assert!((y - picture.map.y(volts(1000.0))).abs() < 1e-9, "{text}");
    assert!(picture.map.low > 0.0 && picture.map.y(usual().bus) < picture.map.bottom - 30.0);
}

#[test]
fn the_parts_of_a_line_above_a_height_are_found() {
    let line = vec![Point::new(0.0, 10.0), Point::new(10.0, 0.0), Point::new(20.0, 0.0), Point::new(30.0, 20.0)];
    let over = above(&[line], 5.0);
    let points: Vec<(f64, f64)> = over[0].iter().map(|point| (point.x, point.y)).collect();
    assert_eq!((over.len(), points), (1, vec![(5.0, 5.0), (10.0, 0.0), (20.0, 0.0), (22.5, 5.0)]));
    assert!(above(&[vec![Point::new(0.0, 9.0), Point::new(1.0, 5.0)]], 5.0).is_empty());
}

#[test]
fn hostile_figures_draw_nothing_or_what_is_finite() {
    let good = stress(USUAL, Limit::GeneralPurpose, None);
    let bad = [
        Stress { length: feet(f64::NAN), ..good },
        Stress { length: feet(f64::INFINITY), ..good },
        Stress { peak: volts(f64::NAN), ..good },
        Stress { bus: volts(0.0), ..good },
        Stress { limit: Limit::Typed(volts(f64::INFINITY)), ..good },
        Stress { critical: feet(0.0), ..good },
    ];
    assert!(bad.iter().all(|stress| Chart::of(stress, None).is_none()));
    for [bus, rise, lead] in [[1.0, 0.001, 3.2e6], [1e4, 100.0, 1e-9], [1.0, 100.0, 0.0]] {
        let chart = Chart::of(&stress([bus, rise, 1e5, 1.0, lead], Limit::Typed(volts(1e5)), None), None).unwrap();
        for width in [1.0, 328.0, 1000.0] {
            let picture = drawn(&chart, width);
            let sound = |(_, path): &(&str, String)| !path.contains("NaN") && !path.contains("inf");
            assert!(picture.strokes.iter().all(sound), "{bus} {rise} {lead} {width}");
        }
        assert!((in_volts(chart.twice()) - 2.0 * bus).abs() < 1e-9);
    }
}

#[test]
fn the_description_tells_what_is_seen() {
    let told = described(&usual(), UnitSystem::Us);
    for text in
        ["480\u{a0}V way", "720\u{a0}V", "1,403\u{a0}V", "25\u{a0}ft", "1,000\u{a0}V", "10\u{a0}ft", "480\u{a0}ft"]
    {
        assert!(told.contains(text), "{text}: {told}");
    }
    for text in ["twice the bus, 1,440\u{a0}V", "123\u{a0}ft", "dV/dt filter is fitted", "above the limit"] {
        assert!(told.contains(text), "{text}: {told}");
    }
    let within = stress([370.0, 0.1, 3000.0, 80.0, 90.0], Limit::GeneralPurpose, None);
    let told = described(&Chart::of(&within, None).unwrap(), UnitSystem::Si);
    assert!(told.contains("within the limit") && told.contains("27.4\u{a0}m") && !told.contains("fitted"), "{told}");
    let falls = stress([720.0, 0.1, 100.0, 300.0, 90.0], Limit::GeneralPurpose, None);
    assert!(described(&Chart::of(&falls, None).unwrap(), UnitSystem::Us).contains("falls with the lead"));
}
