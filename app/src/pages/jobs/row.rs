//! One job of the list: its well, what it is, what follows from it, and what can be done with it.

use super::TITLE;
use crate::locale::{self, finding_text, words};
use crate::parts::menu::Menu;
use crate::parts::verdict::{Level, Verdict};
use crate::pictures::WellMark;
use crate::platform::focus;
use crate::routes::{Page, Route};
use crate::state::{App, Edit, Open, app};
use leptos::html;
use leptos::prelude::*;
use wellwright_core::evaluate::{Evaluation, Saving};
use wellwright_core::finding::Severity;
use wellwright_core::job::{Field, Job, Way};
use wellwright_core::quantity::{Length, UnitSystem};

/// One job of the list.
#[component]
pub fn Row(
    /// Its id.
    id: String,
    /// Depth of the deepest well of the list.
    deepest: Memo<Length>,
) -> impl IntoView {
    let app = app();
    let words = words();
    let id = StoredValue::new(id);
    let open = Open::on_shelf(app, id);
    let (sheet, answer) = (open.sheet, open.answer);
    let renaming = RwSignal::new(false);
    let name = move || sheet.with(|sheet| sheet.job.name.clone());
    let note =
        move || sheet.with(|sheet| if sheet.job.demo { words.list.demo.to_owned() } else { sheet.job.note.clone() });
    let facts = move || sheet.with(|sheet| facts(&sheet.job, app.settings.get().units));
    let line = move || answer.with(|answer| locale::counting_in(locale::currency_of(answer), || line(answer)));
    let worst = move || {
        let finding =
            answer.with(|answer| answer.findings.first().copied().filter(|found| found.severity() > Severity::Note))?;
        let reason = finding_text(&finding, app.settings.get().units);
        Some(view! { <Verdict level=Level::Found(finding.severity()) reason=reason /> })
    };
    let depth = move || answer.with(|answer| answer.inputs.pump_setting.as_ref().ok().map(|known| known.value));
    let link = id.with_value(|id| link_id(id));
    let href = id.with_value(|id| Route::Job(id.clone(), Page::Water).href());
    view! {
        <li>
            <div class="hang">{move || view! { <WellMark depth=depth() deepest=deepest.get() /> }}</div>
            <div class="what">
                <Show
                    when=move || !renaming.get()
                    fallback=move || view! { <Rename name=name() on_done=Callback::new(move |new: Option<String>| {
                        if let Some(new) = new {
                            id.with_value(|id| app.edit(id, Edit::Name(new)));
                        }
                        renaming.set(false);
                        request_animation_frame(move || {
                            let _ = id.try_with_value(|id| focus::take(&link_id(id)));
                        });
                    }) /> }
                >
                    <h2><a id=link.clone() href=href.clone()>{name}</a></h2>
                </Show>
                <p class="note">{note}</p>
            </div>
            <p class="facts">{facts}</p>
            <p class="fig" data-state=move || line().2>
                <b>{move || line().0}</b>
                <span class="note">{move || line().1}</span>
            </p>
            <div class="worst">{worst}</div>
            <Menu label=Signal::derive(move || (words.list.more_for)(&name())) closes=true>
                <button class="btn quiet" on:click=move |_| renaming.set(true)>{words.list.rename}</button>
                <button class="btn quiet" on:click=move |_| duplicate(app, id)>{words.list.duplicate}</button>
                <button class="btn quiet" on:click=move |_| {
                    id.with_value(|id| app.delete(id, words.list.deleted));
                    focus::take(TITLE);
                }>
                    {words.list.delete}
                </button>
            </Menu>
        </li>
    }
}

/// Id of the link of a job's row.
fn link_id(id: &str) -> String {
    format!("job-{id}")
}

/// A field that takes the place of the name while it is changed; Enter keeps, Escape leaves it.
#[component]
fn Rename(
    /// The name now.
    name: String,
    /// The new name, or nothing.
    on_done: Callback<Option<String>>,
) -> impl IntoView {
    let input = NodeRef::<html::Input>::new();
    let done = StoredValue::new(false);
    let finish = move |keep: bool| {
        // Taking the field away makes it lose the focus once more, after all its values are gone.
        if done.try_get_value() != Some(false) {
            return;
        }
        done.set_value(true);
        let text = input.get_untracked().map(|input| input.value().trim().to_owned()).filter(|text| !text.is_empty());
        on_done.run(if keep { text } else { None });
    };
    Effect::new(move |_| {
        if let Some(input) = input.get() {
            let _ = input.focus();
            input.select();
        }
    });
    view! {
        <input
            class="rename"
            node_ref=input
            aria-label=words().list.job_name
            maxlength="120"
            value=name
            on:blur=move |_| finish(true)
            on:keydown=move |event| match event.key().as_str() {
                "Enter" => finish(true),
                "Escape" => finish(false),
                _ => {}
            }
        />
    }
}

fn duplicate(app: App, id: StoredValue<String>) {
    let Some(mut sheet) = id.with_value(|id| app.sheet_untracked(id)) else { return };
    sheet.job.name = (words().list.copy_name)(&sheet.job.name);
    app.add(sheet);
}

/// Depth and motor as they were entered.
pub fn facts(job: &Job, system: UnitSystem) -> String {
    let shown =
        |field| job.get(field).filter(|entry| entry.value.is_finite()).map(|entry| locale::entry_text(entry, system));
    let both: Vec<String> = [Field::PumpSetting, Field::MotorPower].into_iter().filter_map(shown).collect();
    both.join(", ")
}

/// What a job's row says: the figure, the words beneath, and `ok`, `stopped`, `stop` or `none`.
pub fn line(answer: &Evaluation) -> (String, String, &'static str) {
    let words = words();
    match (&answer.here, answer.errors.len()) {
        (Some(here), _) => match &here.saving {
            Some(Saving { net, .. }) => {
                let way = if net.0 < 0.0 { Way::V240 } else { Way::V480 };
                let state = if answer.findings.iter().any(|found| found.severity() == Severity::Stop) {
                    "stopped"
                } else {
                    "ok"
                };
                (locale::money(net.size(), 0), (words.answer.saves)(way).to_owned(), state)
            }
            None => (words.answer.no_size.to_owned(), String::new(), "stop"),
        },
        (None, wrong) => (words.list.no_answer_yet.to_owned(), (words.list.figures_wrong)(wrong.max(1)), "none"),
    }
}
