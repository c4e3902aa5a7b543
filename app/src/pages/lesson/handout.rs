//! The whole lesson for paper: every step with its question, and the worked answers at the end.

use super::ask::answered;
use super::said::{Known, Teller};
use super::step::body;
use crate::locale::{day_of, words};
use crate::platform::clock;
use crate::state::app;
use leptos::prelude::*;
use wellwright_core::papers::{LessonStep, question};
use wellwright_core::quantity::UnitSystem;

/// The handout; it stands on paper alone.
#[component]
pub fn Handout(known: Memo<Option<Known>>, numbers: Signal<String>, system: Signal<UnitSystem>) -> impl IntoView {
    let app = app();
    let words = words();
    let size = move || app.settings.get().paper.name();
    let now = clock::now();
    let day = day_of(now.split('T').next().unwrap_or(&now));
    let steps = move || {
        known.with(|known| {
            let known = known.as_ref()?;
            Some(LessonStep::ALL.map(|step| on_paper(known, step, system.get())).into_iter().collect_view())
        })
    };
    let answers = move || {
        known.with(|known| {
            let known = known.as_ref()?;
            Some(LessonStep::ALL.map(|step| answer(known, step, system.get())).into_iter().flatten().collect_view())
        })
    };
    view! {
        <section class="paper handout" data-size=size>
            <header class="paper-head">
                <div>
                    <p class="note">{words.lesson.word}", "{day}</p>
                    <h2 class="chapter">{words.lesson.title}</h2>
                    <p class="paper-answer">{words.lesson.own}": "{numbers}</p>
                </div>
            </header>
            {steps}
            <section class="lesson-answers">
                <h3>{words.lesson.handout_answers}</h3>
                {answers}
            </section>
            <p class="note">{words.tables.code_edition}</p>
            <p class="note"><b>{words.tables.not_a_permit}</b></p>
        </section>
    }
}

/// The name of a step with its number.
pub fn numbered(step: LessonStep) -> String {
    let place = step as usize;
    format!("{}\u{a0} {}", place + 1, words().lesson.steps[place])
}

fn on_paper(known: &Known, step: LessonStep, system: UnitSystem) -> impl IntoView + use<> {
    let teller = Teller { lesson: &known.lesson, system };
    let choices = question(&known.lesson, step);
    let options = choices.iter().map(|choice| view! { <li>{teller.offered(*choice)}</li> }).collect_view();
    let asks = (!choices.is_empty()).then(|| {
        view! {
            <div class="lesson-ask">
                <p class="lesson-asks">{teller.asks(step)}</p>
                <ul class="lesson-options">{options}</ul>
            </div>
        }
    });
    view! {
        <section class="lesson-step">
            <h3>{numbered(step)}</h3>
            {body(known, step, system)}
            {asks}
        </section>
    }
}

fn answer(known: &Known, step: LessonStep, system: UnitSystem) -> Option<impl IntoView + use<>> {
    if question(&known.lesson, step).is_empty() {
        return None;
    }
    Some(
        view! { <section class="lesson-answer"><h4>{numbered(step)}</h4>{answered(known, step, None, system)}</section> },
    )
}
