//! The books of this device: which one the job goes by, and whether it is kept there as the job has it.

use super::Book;
use crate::locale::{day, words};
use crate::platform::storage::Saved;
use crate::state::{KeptBook, app};
use leptos::prelude::*;
use wellwright_core::cost::book::Date;
use wellwright_core::cost::book_table::Word;

/// The value of the job's own book in the list; ids have hyphens and digits.
const OWN: &str = "*";

/// The kept book of the same name as the job's.
fn same(book: Book) -> Option<KeptBook> {
    let name = book.own.with(Option::is_some).then(|| book.told(|cells| cells.told(Word::Name).to_owned()))?;
    app().books.with(|books| books.named(&name).filter(|_| !name.is_empty()).cloned())
}

/// The choice of the book.
#[component]
pub fn Choice(book: Book) -> impl IntoView {
    let (app, words) = (app(), &words().book);
    let kept = Memo::new(move |_| same(book).map(|kept| kept.id));
    let now = Memo::new(move |_| match (book.own.with(Option::is_some), kept.get()) {
        (false, _) => String::new(),
        (true, Some(id)) => id,
        (true, None) => OWN.to_owned(),
    });
    let options = Memo::new(move |_| {
        let mut all = vec![(String::new(), words.built_in.to_owned())];
        app.books.with(|books| all.extend(books.kept.iter().map(|kept| (kept.id.clone(), kept.book.name.clone()))));
        if now.with(|now| now == OWN) {
            all.push((OWN.to_owned(), (words.only_here)(&book.name())));
        }
        all
    });
    let choose = move |event| {
        let id = event_target_value(&event);
        let text = app
            .books
            .with_untracked(|books| books.kept.iter().find(|kept| kept.id == id).map(|kept| kept.text.clone()));
        match text {
            Some(text) => book.put(text),
            None if id.is_empty() => book.put(String::new()),
            None => {}
        }
    };
    let option = move |(value, word): (String, String)| {
        let chosen = value.clone();
        view! { <option value=value prop:selected=move || now.with(|now| *now == chosen)>{word}</option> }
    };
    view! {
        <div class="field pick">
            <label for="book.choice">{words.in_use}</label>
            <select id="book.choice" on:change=choose>
                <For each=move || options.get() key=Clone::clone children=option />
            </select>
        </div>
    }
}

/// How the job's book stands to the kept one of its name.
#[derive(Clone, PartialEq)]
enum How {
    BuiltIn,
    /// It can't be read, and so not be kept.
    Unreadable,
    /// Only the job has it.
    JobOnly,
    Alike(KeptBook),
    /// The kept one is of a later day.
    Older(KeptBook, Date),
    Other(KeptBook),
}

fn how(book: Book) -> How {
    book.own.with(|own| match (own, same(book)) {
        (None, _) => How::BuiltIn,
        (Some(Err(_)), _) => How::Unreadable,
        (Some(Ok(_)), None) => How::JobOnly,
        (Some(Ok(own)), Some(kept)) if *own == kept.book => How::Alike(kept),
        (Some(Ok(own)), Some(kept)) if kept.book.date > own.date => {
            let date = kept.book.date;
            How::Older(kept, date)
        }
        (Some(Ok(_)), Some(kept)) => How::Other(kept),
    })
}

/// Whether the book is kept, and what can be done about it.
#[component]
pub fn Standing(book: Book) -> impl IntoView {
    let (app, words) = (app(), &words().book);
    let how = Memo::new(move |_| how(book));
    let keep_button =
        move |word: &'static str| view! { <button class="btn act" on:click=move |_| keep(book)>{word}</button> };
    let take_button = move |kept: &KeptBook, word: &'static str| {
        let text = kept.text.clone();
        view! { <button class="btn act" on:click=move |_| book.put(text.clone())>{word}</button> }
    };
    let quiet_keep =
        move || view! { <button class="btn quiet" on:click=move |_| keep(book)>{words.keep_instead}</button> };
    let remove_button = move |kept: &KeptBook| {
        let id = kept.id.clone();
        view! { <button class="btn quiet" on:click=move |_| app.remove_book(&id, words.removed)>{words.remove}</button> }
    };
    let shown = move || match how.get() {
        How::BuiltIn | How::Unreadable => None,
        How::JobOnly => Some(
            view! { <p class="note">{words.not_kept}</p><div class="row">{keep_button(words.keep)}</div> }.into_any(),
        ),
        How::Alike(kept) => {
            Some(view! { <p class="note">{words.kept}</p><div class="row">{remove_button(&kept)}</div> }.into_any())
        }
        How::Older(kept, date) => {
            let said = (words.newer)(&day(date));
            let buttons = (take_button(&kept, words.take_newer), quiet_keep(), remove_button(&kept));
            Some(view! { <p><b>{said}</b></p><div class="row">{buttons}</div> }.into_any())
        }
        How::Other(kept) => {
            let buttons = (take_button(&kept, words.take_kept), quiet_keep(), remove_button(&kept));
            Some(view! { <p><b>{words.differs}</b></p><div class="row">{buttons}</div> }.into_any())
        }
    };
    view! { <div class="book-standing">{shown}</div> }
}

/// Keeps the job's book on this device. One without a name is given one first.
fn keep(book: Book) {
    let (app, words) = (app(), &words().book);
    if book.own.with_untracked(|own| matches!(own, Some(Ok(own)) if own.name.is_empty())) {
        let name = book.free_name();
        book.change(|cells| cells.tell(Word::Name, &name));
    }
    let (name, text) = (untrack(|| book.name()), book.text.get_untracked());
    app.tell(match app.keep_book(&text) {
        Some(Saved::Yes | Saved::Nearly) => (words.kept_now)(&name),
        Some(Saved::Full) => words.full.to_owned(),
        Some(Saved::Nowhere) => words.nowhere.to_owned(),
        None => words.mend_first.to_owned(),
    });
}
