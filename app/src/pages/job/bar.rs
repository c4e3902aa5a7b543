//! The bar of a job: back, name, undo and redo, units, settings.

use crate::locale::words;
use crate::parts::icon::Icon;
use crate::parts::screen_settings::{SettingsMenu, Units};
use crate::routes::Route;
use crate::state::{App, Edit, Open, app};
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

/// The bar.
#[component]
pub fn Bar(
    /// The job's id.
    id: StoredValue<String>,
    /// The open job.
    open: Open,
) -> impl IntoView {
    let app = app();
    let words = words();
    let ways = Memo::new(move |_| id.with_value(|id| app.can_travel(id)));
    let show = move || id.with_value(|id| Route::Show(id.clone()).href());
    let demo = Memo::new(move |_| open.sheet.with(|sheet| sheet.job.demo));
    view! {
        <header class="bar">
            <a class="back" href=Route::Jobs.href()><Icon name="back" /><span>{words.frame.jobs}</span></a>
            <div class="name">
                <h1>
                    <input
                        class="title"
                        aria-label=words.list.job_name
                        maxlength="120"
                        autocomplete="off"
                        prop:value=move || open.sheet.with(|sheet| sheet.job.name.clone())
                        on:input=move |event| open.edit.run(Edit::Name(event_target_value(&event)))
                        on:blur=move |_| { let _ = open.pause.try_run(()); }
                    />
                </h1>
                <Show when=move || demo.get()><span class="note">{words.list.demo_note}</span></Show>
            </div>
            <button class="btn quiet" disabled=move || !ways.get().0 on:click=move |_| id.with_value(|id| app.undo(id))>
                <Icon name="undo" /><span class="wide-word">{words.frame.undo}</span>
            </button>
            <button class="btn quiet" disabled=move || !ways.get().1 on:click=move |_| id.with_value(|id| app.redo(id))>
                <Icon name="redo" /><span class="wide-word">{words.frame.redo}</span>
            </button>
            <span class="only-desk"><Units place="bar" /></span>
            <span class="only-desk"><a class="btn quiet" href=show>{words.show.open}</a></span>
            <SettingsMenu>
                <div class="only-phone"><a class="btn" href=show>{words.show.open}</a></div>
            </SettingsMenu>
        </header>
    }
}

/// Ctrl+Z takes back, Ctrl+Shift+Z and Ctrl+Y do again.
pub fn undo_keys(app: App, event: &KeyboardEvent, id: StoredValue<String>) {
    if !(event.ctrl_key() || event.meta_key()) || event.alt_key() {
        return;
    }
    match (event.key().to_lowercase().as_str(), event.shift_key()) {
        ("z", false) => id.with_value(|id| app.undo(id)),
        ("z", true) | ("y", _) => id.with_value(|id| app.redo(id)),
        _ => return,
    }
    event.prevent_default();
}
