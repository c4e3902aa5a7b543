//! The points of the pump's curve, typed or pasted as text, taken from a file, or an invented one to try.

use super::Desk;
use crate::locale::{curve_problem_text, curve_read_text, words};
use crate::parts::file_drop::FileDrop;
use crate::parts::icon::Icon;
use crate::platform::files::Reading;
use crate::platform::forms;
use crate::state::{Edit, app};
use leptos::prelude::*;
use wellwright_core::job::Job;
use wellwright_core::pump::demo;
use wellwright_core::pump::paste::{ColumnUnit, with_units};

/// The curve as text.
#[component]
pub fn CurveText(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let (app, open, words) = (app(), desk.open, words());
    let text = Memo::new(move |_| open.sheet.with(|sheet| sheet.job.curve.clone()));
    // A longer text would be kept in no file.
    let set = move |text: String| {
        if text.len() <= Job::MOST_CURVE {
            open.edit.run(Edit::Curve(text));
        } else {
            app.tell(words.list.too_large.to_owned());
        }
    };
    let said = Memo::new(move |_| {
        open.answer.with(|answer| match &answer.water.curve {
            None => None,
            Some(Ok(read)) => Some((false, curve_read_text(read))),
            Some(Err(problem)) => Some((true, curve_problem_text(problem))),
        })
    });
    let wrong = Memo::new(move |_| said.with(|said| said.as_ref().is_some_and(|(wrong, _)| *wrong)));
    let on_file = move |(name, reading): (String, Reading)| match reading {
        Reading::Text(text) => set(text),
        Reading::TooLarge => app.tell((words.list.not_opened)(&name, words.list.too_large)),
        Reading::Failed => app.tell((words.list.not_opened)(&name, words.list.unreadable_file)),
    };
    view! {
        <div class="field points" data-state=move || if wrong.get() { "error" } else { "typed" }>
            <label for="pump.curve">{words.curve.points}<small>{words.curve.hint}</small></label>
            <textarea
                id="pump.curve"
                rows="5"
                spellcheck="false"
                autocomplete="off"
                maxlength=Job::MOST_CURVE.to_string()
                aria-describedby="pump.curve-says"
                aria-invalid=move || wrong.get().then_some("true")
                prop:value=text
                on:input=move |event| set(event_target_value(&event))
                on:blur=move |_| {
                    let _ = open.pause.try_run(());
                }
            ></textarea>
            <p class="msg" id="pump.curve-says" aria-live="polite">
                <Show when=move || wrong.get()><Icon name="error" /></Show>
                <span>{move || said.with(|said| said.as_ref().map(|(_, text)| text.clone()))}</span>
            </p>
            <Units desk=desk />
        </div>
        <Show when=move || text.with(String::is_empty) fallback=move || view! {
            <button class="btn quiet" on:click=move |_| set(String::new())>{words.curve.clear}</button>
        }>
            <FileDrop label=words.curve.file accept=".csv,.txt,.tsv" on_file=Callback::new(on_file) />
            <Demo desk=desk />
        </Show>
    }
}

/// Offers other units for points whose text names none.
#[component]
fn Units(desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, &words().curve);
    let untold = Memo::new(move |_| {
        open.answer.with(|answer| match &answer.water.curve {
            Some(Ok(read)) => read
                .columns
                .iter()
                .any(|column| !column.told && matches!(column.unit, ColumnUnit::Gpm | ColumnUnit::Foot)),
            _ => false,
        })
    });
    let pairs = [
        (ColumnUnit::LiterPerSecond, ColumnUnit::Meter, words.in_liters),
        (ColumnUnit::CubicMeterPerHour, ColumnUnit::Meter, words.in_cubic_meters),
    ];
    let offer = move |(flow, head, word): (ColumnUnit, ColumnUnit, &'static str)| {
        let name = move |_| {
            let text = open.sheet.with_untracked(|sheet| with_units(&sheet.job.curve, flow, head));
            open.edit.run(Edit::Curve(text));
        };
        view! { <button class="btn quiet" type="button" on:click=name>{word}</button> }
    };
    view! { <Show when=move || untold.get()><div class="row">{pairs.map(offer).collect_view()}</div></Show> }
}

/// The invented curves.
#[component]
fn Demo(desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, &words().curve);
    let take = move |event: leptos::ev::Event| {
        if let Some(pump) = forms::taken(&event).and_then(|place| demo::ALL.get(place)) {
            open.edit.run(Edit::Curve(pump.text()));
        }
    };
    let option = |(place, word): (usize, &'static str)| view! { <option value=place.to_string()>{word}</option> };
    view! {
        <div class="field pick">
            <label for="pump.curve.demo">{words.demo}<small>{words.demo_hint}</small></label>
            <select id="pump.curve.demo" on:change=take>
                <option value="">{words.demo_none}</option>
                {words.demo_names.into_iter().enumerate().map(option).collect_view()}
            </select>
        </div>
    }
}
