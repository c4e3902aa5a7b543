//! Notices that stay until their cause is gone: storage that does not keep, entries that can't be read.

use crate::locale::{file_text, words};
use crate::parts::icon::Icon;
use crate::platform::clipboard;
use crate::platform::storage::{self, Saved};
use crate::state::{SetAside, Toast, app};
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
    let row = move |entry: SetAside| {
        let why = (words().frame.set_aside_why)(&file_text(&entry.why, app.settings.with_untracked(|s| s.units)));
        let text = entry.text.clone();
        let copy = move |_| {
            clipboard::copy(&text);
            app.toast.set(Some(Toast { text: words().frame.copied.to_owned(), bring_back: None }));
        };
        let id = entry.id.clone();
        let delete = move |_| {
            storage::delete(&id);
            app.shelf.update(|shelf| shelf.set_aside.retain(|other| other.id != id));
        };
        view! {
            <li>
                <span>{why}</span>
                <pre tabindex="0">{entry.text.chars().take(400).collect::<String>()}</pre>
                <button class="btn" on:click=copy>{words().frame.copy_text}</button>
                <button class="btn quiet" on:click=delete>{words().list.delete}</button>
            </li>
        }
    };
    view! {
        <Show when=move || entries.with(|entries| !entries.is_empty())>
            <section class="notice caution set-aside" role="alert">
                <p><Icon name="caution" /><b>{move || (words().frame.set_aside)(entries.with(Vec::len))}</b></p>
                <p>{words().frame.set_aside_hint}</p>
                <ul>{move || entries.get().into_iter().map(row).collect_view()}</ul>
            </section>
        </Show>
    }
}
