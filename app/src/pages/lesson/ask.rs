//! The question after a step: answers to choose from, then whether it was right, and the worked answer.

use super::said::{Known, Teller, answer_sums};
use super::step::written;
use crate::locale::words;
use crate::parts::icon::Icon;
use crate::state::app;
use leptos::prelude::*;
use wellwright_core::papers::{Choice, LessonStep, question};
use wellwright_core::quantity::UnitSystem;

/// The question of a step.
#[component]
pub fn Ask(known: Memo<Option<Known>>, step: LessonStep, system: Signal<UnitSystem>) -> impl IntoView {
    let app = app();
    let words = &words().lesson;
    let place = step as usize + 1;
    let choices = Memo::new(move |_| {
        known.with(|known| known.as_ref().map_or_else(Vec::new, |known| question(&known.lesson, step)))
    });
    let some = Memo::new(move |_| choices.with(|choices| !choices.is_empty()));
    // An answer that these numbers do not offer is none.
    let chosen = Memo::new(move |_| {
        let key = app.learning.with(|learning| learning.progress.answers.get(&place).copied())?;
        choices.with(|choices| choices.iter().copied().find(|choice| choice.key == key))
    });
    let asks = move || tell(known, system, |teller| teller.asks(step));
    let options = move || {
        let one = |choice: Choice| {
            let says = tell(known, system, |teller| teller.offered(choice));
            let pressed = move || chosen.get().is_some_and(|chosen| chosen.key == choice.key);
            let mark = move || mark(choice, chosen.get());
            let choose = move |_| {
                app.learn(|progress| {
                    progress.answers.insert(place, choice.key);
                })
            };
            view! {
                <button class="btn" aria-pressed=move || pressed().to_string() data-mark=mark on:click=choose>
                    {says}
                    {move || icon(mark()).map(|name| view! { <Icon name=name /> })}
                </button>
            }
        };
        choices.get().into_iter().map(one).collect_view()
    };
    let result = move || {
        let chosen = chosen.get()?;
        known.with(|known| Some(answered(known.as_ref()?, step, Some(chosen), system.get())))
    };
    view! {
        <Show when=move || some.get()>
            <section class="lesson-ask" aria-label=words.question>
                <h2>{words.question}</h2>
                <p class="lesson-asks">{asks}</p>
                <div class="lesson-choices" role="group" aria-label=asks>{options}</div>
                <div aria-live="polite">{result}</div>
            </section>
        </Show>
    }
}

/// How an answer stands once one was chosen.
fn mark(choice: Choice, chosen: Option<Choice>) -> &'static str {
    match chosen {
        Some(_) if choice.is_right() => "right",
        Some(chosen) if chosen == choice => "wrong",
        _ => "",
    }
}

fn icon(mark: &str) -> Option<&'static str> {
    match mark {
        "right" => Some("ok"),
        "wrong" => Some("error"),
        _ => None,
    }
}

fn tell(known: Memo<Option<Known>>, system: Signal<UnitSystem>, say: impl Fn(&Teller) -> String) -> String {
    known.with(|known| {
        known.as_ref().map_or_else(String::new, |known| say(&Teller { lesson: &known.lesson, system: system.get() }))
    })
}

/// Whether it was right, and the worked answer; on paper the worked answer alone.
pub fn answered(known: &Known, step: LessonStep, chosen: Option<Choice>, system: UnitSystem) -> impl IntoView + use<> {
    let words = &words().lesson;
    let teller = Teller { lesson: &known.lesson, system };
    let right = question(&known.lesson, step).into_iter().find(|choice| choice.is_right());
    let right = right.map(|choice| teller.offered(choice)).unwrap_or_default();
    let verdict = match chosen {
        Some(chosen) if chosen.is_right() => words.right.to_owned(),
        Some(_) => (words.wrong)(&right),
        None => right.clone(),
    };
    view! {
        <p class="lesson-verdict">{verdict}</p>
        <p>{teller.why(step)}</p>
        {written(known, &answer_sums(step), system)}
    }
}
