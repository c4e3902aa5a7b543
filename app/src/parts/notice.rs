//! Notices that stay until their cause is gone: storage that does not keep, entries that can't be read.

use super::dialog::Dialog;
use super::icon::Icon;
use crate::locale::{file_text, words};
use crate::platform::clipboard;
use crate::platform::storage::{self, Saved};
use crate::state::{App, SetAside, app};
use leptos::prelude::*;

/// Says so where changes are not kept.
#[component]
pub fn StorageNotice() -> impl IntoView {
    let app = app();
    let text = move || match app.saved.get() {
        Saved::Yes => None,
        Saved::Full => Some(words().frame.not_saved),
        Saved::Nowhere => Some(words().frame.no_storage),
    };
    view! {
        <div role="alert">
            {move || text().map(|text| view! { <p class="notice caution"><Icon name="caution" />{text}</p> })}
        </div>
    }
}

/// Stored entries that can't be read, with what can be done.
#[component]
pub fn SetAsideNotice() -> impl IntoView {
    let app = app();
    let entries = Memo::new(move |_| app.shelf.with(|shelf| shelf.set_aside.clone()));
    let doomed = RwSignal::new(None::<String>);
    let asking = RwSignal::new(false);
    let ask = Callback::new(move |id| {
        doomed.set(Some(id));
        asking.set(true);
    });
    let delete = Callback::new(move |()| {
        let Some(id) = doomed.get_untracked() else { return };
        storage::delete(&id);
        app.shelf.update(|shelf| shelf.set_aside.retain(|other| other.id != id));
    });
    view! {
        <Show when=move || entries.with(|entries| !entries.is_empty())>
            <section class="notice caution set-aside" role="alert">
                <p><Icon name="caution" /><b>{move || (words().frame.set_aside)(entries.with(Vec::len))}</b></p>
                <p>{words().frame.set_aside_hint}</p>
                <ul>{move || entries.get().into_iter().map(|entry| row(app, entry, ask)).collect_view()}</ul>
            </section>
        </Show>
        <Dialog
            open=asking
            text=words().frame.delete_for_good_ask
            action=words().frame.delete_for_good
            on_action=delete
        />
    }
}

fn row(app: App, entry: SetAside, ask: Callback<String>) -> impl IntoView {
    let frame = &words().frame;
    let why = (frame.set_aside_why)(&file_text(&entry.why, app.settings.with_untracked(|settings| settings.units)));
    let shown: String = entry.text.chars().take(400).collect();
    let (id, text) = (entry.id, entry.text);
    let copy = move |_| {
        clipboard::copy(&text, move |done| {
            app.tell(if done { words().frame.copied } else { words().frame.not_copied }.to_owned());
        });
    };
    view! {
        <li>
            <span>{why}</span>
            <pre tabindex="0">{shown}</pre>
            <div class="row">
                <button class="btn" on:click=copy>{frame.copy_text}</button>
                <button class="btn quiet" on:click=move |_| ask.run(id.clone())>{words().list.delete}</button>
            </div>
        </li>
    }
}
