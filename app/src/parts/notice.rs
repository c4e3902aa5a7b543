//! Notices that stay until their cause is gone: storage that does not keep, entries that can't be read.

use super::dialog::Dialog;
use super::icon::Icon;
use crate::locale::{book_error_text, file_text, words};
use crate::platform::clipboard;
use crate::platform::storage::{self, Saved};
use crate::state::{App, AsideBook, SetAside, app};
use leptos::prelude::*;

/// Says so where changes are not kept.
#[component]
pub fn StorageNotice() -> impl IntoView {
    let app = app();
    let text = move || match app.saved.get() {
        Saved::Yes => None,
        Saved::Nearly => Some(words().frame.nearly_full),
        Saved::Full => Some(words().frame.not_saved),
        Saved::Nowhere => Some(words().frame.no_storage),
    };
    view! {
        <div role="alert">
            {move || text().map(|text| view! { <p class="notice caution"><Icon name="caution" />{text}</p> })}
        </div>
    }
}

/// A stored entry that can't be read.
#[derive(Clone, PartialEq)]
struct Aside {
    id: String,
    why: String,
    text: String,
}

/// Stored jobs that can't be read, with what can be done.
#[component]
pub fn SetAsideNotice() -> impl IntoView {
    let app = app();
    let frame = &words().frame;
    let entries = Memo::new(move |_| {
        let system = app.settings.with(|settings| settings.units);
        let aside = |entry: &SetAside| {
            let why = file_text(&entry.why, system);
            Aside { id: entry.id.clone(), why, text: entry.text.clone() }
        };
        app.shelf.with(|shelf| shelf.set_aside.iter().map(aside).collect())
    });
    let delete = Callback::new(move |id: String| {
        storage::delete(&id);
        app.shelf.update(|shelf| shelf.set_aside.retain(|other| other.id != id));
    });
    view! {
        <Entries entries=entries title=frame.set_aside hint=frame.set_aside_hint ask=frame.delete_for_good_ask on_delete=delete />
    }
}

/// Stored price books that can't be read, with what can be done.
#[component]
pub fn BooksAsideNotice() -> impl IntoView {
    let app = app();
    let book = &words().book;
    let entries = Memo::new(move |_| {
        let aside = |entry: &AsideBook| {
            let why = entry.why.as_ref().map_or_else(|| book.no_rows.to_owned(), book_error_text);
            Aside { id: entry.id.clone(), why, text: entry.text.clone() }
        };
        app.books.with(|books| books.set_aside.iter().map(aside).collect())
    });
    let delete = Callback::new(move |id: String| app.delete_aside_book(&id));
    view! {
        <Entries entries=entries title=book.set_aside hint=book.set_aside_hint ask=book.delete_ask on_delete=delete />
    }
}

#[component]
fn Entries(
    entries: Memo<Vec<Aside>>,
    title: fn(usize) -> String,
    hint: &'static str,
    ask: &'static str,
    on_delete: Callback<String>,
) -> impl IntoView {
    let app = app();
    let doomed = RwSignal::new(None::<String>);
    let asking = RwSignal::new(false);
    let ask_for = Callback::new(move |id| {
        doomed.set(Some(id));
        asking.set(true);
    });
    let delete = Callback::new(move |()| {
        if let Some(id) = doomed.get_untracked() {
            on_delete.run(id);
        }
    });
    view! {
        <Show when=move || entries.with(|entries| !entries.is_empty())>
            <section class="notice caution set-aside" role="alert">
                <p><Icon name="caution" /><b>{move || title(entries.with(Vec::len))}</b></p>
                <p>{hint}</p>
                <ul>{move || entries.get().into_iter().map(|entry| row(app, entry, ask_for)).collect_view()}</ul>
            </section>
        </Show>
        <Dialog open=asking text=ask action=words().frame.delete_for_good on_action=delete />
    }
}

fn row(app: App, entry: Aside, ask: Callback<String>) -> impl IntoView {
    let frame = &words().frame;
    let why = (frame.set_aside_why)(&entry.why);
    let shown: String = entry.text.chars().take(400).collect();
    let (id, text) = (entry.id, entry.text);
    let before = storage::before(&id).map(|sheet| {
        let take = move |_| {
            let name = sheet.job.name.clone();
            app.add(sheet.clone());
            app.tell((words().list.opened)(&name));
        };
        view! { <button class="btn" on:click=take>{frame.use_before}</button> }
    });
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
                {before}
                <button class="btn" on:click=copy>{frame.copy_text}</button>
                <button class="btn quiet" on:click=move |_| ask.run(id.clone())>{words().list.delete}</button>
            </div>
        </li>
    }
}
