//! One job: inputs at the left, the answer and the picture at the right; on a phone one column, the answer on top.

mod answers;
mod headline;
mod inputs;
mod tables;

use crate::locale::words;
use crate::parts::icon::Icon;
use crate::parts::notice::StorageNotice;
use crate::parts::screen_settings::{Themes, Units};
use crate::parts::segmented::Segmented;
use crate::pictures::Plate;
use crate::routes::Route;
use crate::state::{App, Edit, Sheet, answer, app};
use answers::Answers;
use inputs::Inputs;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;
use tables::{Cautions, Findings, HereTable, Steps};
use wellwright_core::evaluate::Basis;
use wellwright_core::job::Field;
use wellwright_core::quantity::{Entry, Unit, UnitSystem};

/// A job's page.
#[component]
pub fn JobPage(
    /// Its id.
    id: String,
) -> impl IntoView {
    let app = app();
    let words = words();
    let there = app.sheet_untracked(&id).is_some();
    let id = Signal::stored(id);
    let present = move || id.with(|id| app.shelf.with(|shelf| shelf.find(id).is_some()));
    if !there {
        return view! { <NotFound /> }.into_any();
    }
    let sheet = Memo::new(move |_| id.with(|id| app.sheet(id)).unwrap_or_default());
    let travel = window_event_listener(leptos::ev::keydown, move |event| undo_keys(app, &event, id));
    on_cleanup(move || travel.remove());
    Effect::new(move |_| {
        document().set_title(&format!("{} · {}", sheet.with(|s| s.job.name.clone()), words.frame.app))
    });
    view! {
        <Show when=present fallback=|| view! { <NotFound /> }>
            <Bar id=id sheet=sheet />
            <Body id=id sheet=sheet />
        </Show>
    }
    .into_any()
}

/// What stands where a job is not on this device.
#[component]
fn NotFound() -> impl IntoView {
    let words = words();
    view! {
        <main class="page">
            <div class="empty">
                <h1>{words.list.not_found}</h1>
                <a class="btn" href=Route::Jobs.href()>{words.list.all_jobs}</a>
            </div>
        </main>
    }
}

/// The bar: back, name, undo, units, theme.
#[component]
fn Bar(
    /// The job's id.
    id: Signal<String>,
    /// The job.
    sheet: Memo<Sheet>,
) -> impl IntoView {
    let app = app();
    let words = words();
    let ways = Memo::new(move |_| id.with(|id| app.can_travel(id)));
    let rename = move |event| id.with(|id| app.edit(id, Edit::Name(event_target_value(&event))));
    view! {
        <header class="bar">
            <a class="back" href=Route::Jobs.href()><Icon name="back" />{words.frame.jobs}</a>
            <div class="name">
                <h1>
                    <input
                        class="title"
                        aria-label=words.list.job_name
                        maxlength="120"
                        autocomplete="off"
                        prop:value=move || sheet.with(|sheet| sheet.job.name.clone())
                        on:input=rename
                        on:blur=move |_| id.with(|id| app.pause(id))
                    />
                </h1>
            </div>
            <button class="btn quiet" disabled=move || !ways.get().0 on:click=move |_| id.with(|id| app.undo(id))>
                <Icon name="undo" /><span class="wide-word">{words.frame.undo}</span>
            </button>
            <button class="btn quiet" disabled=move || !ways.get().1 on:click=move |_| id.with(|id| app.redo(id))>
                <Icon name="redo" /><span class="wide-word">{words.frame.redo}</span>
            </button>
            <span class="only-desk"><Units place="bar" /></span>
            <span class="only-desk"><Themes place="bar" /></span>
        </header>
    }
}

/// Inputs, answer, picture, tables.
#[component]
fn Body(
    /// The job's id.
    id: Signal<String>,
    /// The job.
    sheet: Memo<Sheet>,
) -> impl IntoView {
    let app = app();
    let words = words();
    let answer = answer(sheet);
    let basis = RwSignal::new(Basis::Installed);
    let system = Signal::derive(move || app.settings.get().units);
    let theme = Signal::derive(move || app.settings.get().theme);
    let grab = Callback::new(move |()| id.with_untracked(|id| app.pause(id)));
    let set_depth =
        Callback::new(move |entry| id.with_untracked(|id| app.edit(id, Edit::Figure(Field::PumpSetting, Some(entry)))));
    view! {
        <main class="job">
            <section class="sheet" aria-label=words.answer.label>
                <StorageNotice />
                <Show when=move || sheet.with(|sheet| sheet.job.demo)>
                    <p class="note demo-line">{words.list.demo_note}</p>
                </Show>
                <Answers answer=answer system=system basis=basis.into() />
                <Plate answer=answer system=system basis=basis.into() theme=theme on_grab=grab on_depth=set_depth />
                <Nudge answer=answer system=system on_depth=set_depth on_grab=grab />
                <div class="under">
                    <p class="note">{words.picture.rod_hint}</p>
                    <Segmented
                        label=words.answer.count_in
                        name="basis".to_owned()
                        options=vec![(Basis::Cable, words.answer.cable_only), (Basis::Installed, words.answer.with_equipment)]
                        value=basis.into()
                        on_choose=Callback::new(move |chosen| basis.set(chosen))
                    />
                </div>
                <Findings answer=answer system=system />
                <HereTable answer=answer system=system />
                <Steps answer=answer system=system basis=basis.into() />
                <Cautions />
            </section>
            <section class="inputs" aria-label=words.fields.figures_label>
                <Inputs id=id sheet=sheet answer=answer />
                <div class="only-phone theme-row"><Units place="foot" /><Themes place="foot" /></div>
            </section>
        </main>
    }
}

/// The depth by two large keys, for a thumb.
#[component]
fn Nudge(
    /// The evaluation, for the depth.
    answer: Memo<wellwright_core::evaluate::Evaluation>,
    /// Units.
    system: Signal<UnitSystem>,
    /// Called with a new depth.
    on_depth: Callback<Entry>,
    /// Called before it.
    on_grab: Callback<()>,
) -> impl IntoView {
    let words = words();
    let depth = move || answer.with(|answer| answer.inputs.pump_setting.as_ref().ok().map(|known| known.value));
    let text = move || depth().map_or_else(String::new, |depth| crate::locale::depth(depth, system.get()).text());
    let step = move |direction: f64| {
        if let Some(depth) = depth() {
            on_grab.run(());
            on_depth.run(nudged(depth, direction, system.get()));
        }
    };
    let step_text = move || crate::locale::entry_text(step_of(system.get()), system.get());
    view! {
        <Show when=move || depth().is_some()>
            <div class="nudge only-phone">
                <button class="btn" aria-label=move || (words.picture.shallower)(&step_text()) on:click=move |_| step(-1.0)>"−"</button>
                <output>{words.picture.pump_at}" "<b>{text}</b></output>
                <button class="btn" aria-label=move || (words.picture.deeper)(&step_text()) on:click=move |_| step(1.0)>"+"</button>
            </div>
        </Show>
    }
}

/// One press of a key: ten feet, or five meters.
fn step_of(system: UnitSystem) -> Entry {
    match system {
        UnitSystem::Us => Entry::new(10.0, Unit::Foot),
        UnitSystem::Si => Entry::new(5.0, Unit::Meter),
    }
}

/// The depth one step away, on whole steps, inside what the field accepts.
fn nudged(depth: wellwright_core::quantity::Length, direction: f64, system: UnitSystem) -> Entry {
    let step = step_of(system);
    let range = Field::PumpSetting.spec().accepted;
    let [least, most] = [range.min, range.max].map(|end| Entry::new(end, range.unit).to(step.unit).unwrap_or(end));
    let now = Entry::new(depth.value, Unit::Meter).to(step.unit).unwrap_or(0.0) / step.value;
    // A depth between two steps goes to the near one first; the small slack forgives the rounding of units.
    let next = if direction > 0.0 { (now + 1e-6).floor() + 1.0 } else { (now - 1e-6).ceil() - 1.0 };
    Entry::new((next * step.value).clamp(least, most), step.unit)
}

/// Ctrl+Z takes back, Ctrl+Shift+Z and Ctrl+Y do again.
fn undo_keys(app: App, event: &KeyboardEvent, id: Signal<String>) {
    if !(event.ctrl_key() || event.meta_key()) || event.alt_key() {
        return;
    }
    match (event.key().to_lowercase().as_str(), event.shift_key()) {
        ("z", false) => id.with_untracked(|id| app.undo(id)),
        ("z", true) | ("y", _) => id.with_untracked(|id| app.redo(id)),
        _ => return,
    }
    event.prevent_default();
}

#[cfg(test)]
mod tests {
    use super::*;
    use wellwright_core::quantity::feet;

    #[test]
    fn a_nudge_lands_on_whole_steps_and_stays_in_range() {
        let us = |depth: f64, direction| nudged(feet(depth), direction, UnitSystem::Us).value;
        assert_eq!(us(620.0, 1.0), 630.0);
        assert_eq!(us(620.0, -1.0), 610.0);
        assert_eq!(us(617.0, 1.0), 620.0);
        assert_eq!(us(617.0, -1.0), 610.0);
        assert_eq!(us(0.0, -1.0), 0.0);
        assert_eq!(us(3000.0, 1.0), 3000.0);
        let meters = nudged(feet(620.0), 1.0, UnitSystem::Si);
        assert_eq!((meters.value, meters.unit), (190.0, Unit::Meter));
    }
}
