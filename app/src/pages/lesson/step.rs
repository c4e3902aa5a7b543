//! One step: its figures, its picture, what it says, its sum, its cautions.

use super::said::{Known, Large, Teller, cautions, sums};
use crate::locale::{depth, peak_volts, words};
use crate::parts::caution::CautionBoxes;
use crate::parts::working;
use crate::pictures::{Shaped, Stairs, boxes, cuts, stairs};
use leptos::prelude::*;
use wellwright_core::job::Way;
use wellwright_core::papers::{LessonStep, Topic, working as worked};
use wellwright_core::quantity::{Area, ElectricPotential, Money, UnitSystem, circular_mils, volts};

/// What a step shows and says, without its question.
pub fn body(known: &Known, step: LessonStep, system: UnitSystem) -> impl IntoView + use<> {
    let teller = Teller { lesson: &known.lesson, system };
    let says = teller.paragraphs(step).into_iter().map(|text| view! { <p>{text}</p> }).collect_view();
    let cautions = cautions(step);
    view! {
        <div class="lesson-shows">
            {heads(&teller, step)}
            {picture(known, step, system)}
        </div>
        <div class="lesson-says">{says}</div>
        {written(known, &sums(step), system)}
        {(!cautions.is_empty()).then(|| view! { <CautionBoxes cautions=cautions /> })}
    }
}

/// Sums with the numbers put in.
pub fn written(known: &Known, topics: &[Topic], system: UnitSystem) -> impl IntoView + use<> {
    let found = topics.iter().filter_map(|topic| worked(&known.answer, *topic, system));
    let steps: Vec<_> = found.flat_map(|working| working.steps).map(working::step).collect();
    (!steps.is_empty()).then(|| {
        view! {
            <div class="lesson-sum" role="group" aria-label=words().lesson.sums>
                <p class="note">{words().lesson.sums}</p>
                {steps.into_iter().collect_view()}
            </div>
        }
    })
}

/// The figures of both ways, large, each over its own picture where it has one.
fn heads(teller: &Teller, step: LessonStep) -> impl IntoView + use<> {
    let lesson = teller.lesson;
    let shapes = match step {
        LessonStep::Power | LessonStep::Amps => {
            boxes(&Way::ALL.map(|way| (volts(way.rated_volts()), lesson.way(way).by_power)))
        }
        LessonStep::Area | LessonStep::Quarter => cuts(&lesson.ways.map(|way| (way.area, None))),
        LessonStep::Sizes => cuts(&lesson.ways.map(|way| (area(way.here.run.run.conductor.cmil()), Some(way.area)))),
        LessonStep::Heat => {
            let quarter = lesson.way(Way::V240).least.cmil() / 4.0;
            cuts(&lesson.ways.map(|way| (area(way.least.cmil()), Some(area(quarter)))))
        }
        LessonStep::Share | LessonStep::Pays | LessonStep::Peak | LessonStep::Home => Vec::new(),
    };
    let one = |(way, large): (Way, Large)| {
        let shape = shapes.get(way as usize).copied();
        view! {
            <div class="lesson-one" data-way=class(way)>
                <span class="lesson-way">{teller.volts_of(way, step)}</span>
                <b class="figure">{large.figure}" "<span class="unit">{large.unit}</span></b>
                {shape.map(|shape| view! { <Shaped shape=shape way=way /> })}
            </div>
        }
    };
    let found = teller.heads(step);
    (!found.is_empty()).then(|| view! { <div class="lesson-pair">{found.into_iter().map(one).collect_view()}</div> })
}

fn area(cmil: f64) -> Area {
    circular_mils(cmil)
}

/// The class of a way in the style sheets.
pub fn class(way: Way) -> &'static str {
    match way {
        Way::V240 => "240",
        Way::V480 => "480",
    }
}

/// What stands under the figures: bars, sizes along the lead, or a word on the pictures.
fn picture(known: &Known, step: LessonStep, system: UnitSystem) -> AnyView {
    let (words, lesson) = (&words().lesson, &known.lesson);
    let hint = |text: &'static str| view! { <p class="note">{text}</p> }.into_any();
    match step {
        LessonStep::Power | LessonStep::Amps => hint(words.box_hint),
        LessonStep::Share => lost(known, system).into_any(),
        LessonStep::Area | LessonStep::Quarter => hint(words.wire_hint),
        LessonStep::Sizes => {
            let drawn = known.answer.sweep.as_ref().map(|sweep| stairs(lesson, sweep));
            let span = drawn.as_ref().map(|drawn| depth(drawn.span, system).text());
            let says = (words.stairs_hint)(&span.unwrap_or_default());
            view! { <p class="note">{words.asked_hint}</p>{drawn.map(Stairs::drawn)}<p class="note">{says}</p> }
                .into_any()
        }
        LessonStep::Heat => hint(words.quarter_hint),
        LessonStep::Pays => costs(known, system).into_any(),
        LessonStep::Peak => peaks(known).into_any(),
        LessonStep::Home => ().into_any(),
    }
}

/// A bar: its name, what it says, its pieces with their lengths as shares of the longest.
struct Bar {
    name: String,
    says: String,
    pieces: Vec<(&'static str, f64)>,
}

fn bars(found: Vec<Bar>) -> impl IntoView + use<> {
    let piece = |(class, share): (&'static str, f64)| {
        view! { <span class=class style:width=format!("{:.2}%", 100.0 * share)></span> }
    };
    let one = |bar: Bar| {
        view! {
            <li>
                <span>{bar.name}</span>
                <b>{bar.says}</b>
                <span class="lesson-bar" aria-hidden="true">{bar.pieces.into_iter().map(piece).collect_view()}</span>
            </li>
        }
    };
    view! { <ul class="lesson-bars">{found.into_iter().map(one).collect_view()}</ul> }
}

fn pen(way: Way) -> &'static str {
    match way {
        Way::V240 => "bar-240",
        Way::V480 => "bar-480",
    }
}

/// What is sent, and what of it is lost in the same wire.
fn lost(known: &Known, system: UnitSystem) -> impl IntoView + use<> {
    let teller = Teller { lesson: &known.lesson, system };
    let most = Way::V480.sending();
    let bar = |way: Way| {
        let lost = known.lesson.way(way).lost;
        let share = |part: ElectricPotential| (part / most).value;
        let says = (words().lesson.lost_of)(&teller.volts(lost), &teller.volts(way.sending()));
        let pieces = vec![(pen(way), share(way.sending() - lost)), ("bar-lost", share(lost))];
        Bar { name: teller.volts_of(way, LessonStep::Share), says, pieces }
    };
    bars(Way::ALL.map(bar).into())
}

/// The cable and the equipment of each way.
fn costs(known: &Known, system: UnitSystem) -> impl IntoView + use<> {
    let teller = Teller { lesson: &known.lesson, system };
    let ways = known.lesson.ways.map(|way| (way.here.cable, way.here.outfit.cost.total()));
    let most = ways.iter().map(|(cable, more)| (*cable + *more).0).fold(1.0, f64::max);
    let share = |amount: Money| (amount.0 / most).max(0.0);
    let words = &words().lesson;
    let bar = |(way, (cable, more)): (Way, (Money, Money))| Bar {
        name: (self::words().answer.way_short)(way).to_owned(),
        says: format!("{} {} + {} {}", words.cable, teller.money(cable), words.equipment, teller.money(more)),
        pieces: vec![(pen(way), share(cable)), ("bar-more", share(more))],
    };
    bars(Way::ALL.into_iter().zip(ways).map(bar).collect())
}

/// The bus, the peak at the motor, and what the motor stands.
fn peaks(known: &Known) -> Option<impl IntoView + use<>> {
    let pulses = known.lesson.way(Way::V480).pulses?;
    let words = &words().lesson;
    let stands = pulses.limit.peak();
    let most = pulses.peak.max(stands);
    let bar = |(name, volts, class): (&str, ElectricPotential, &'static str)| Bar {
        name: name.to_owned(),
        says: peak_volts(volts).text(),
        pieces: vec![(class, (volts / most).value)],
    };
    let rows = [
        (words.bus, pulses.bus, "bar-480"),
        (words.at_motor, pulses.peak, if pulses.peak > stands { "bar-lost" } else { "bar-480" }),
        (words.stands, stands, "bar-more"),
    ];
    Some(bars(rows.map(bar).into()))
}
