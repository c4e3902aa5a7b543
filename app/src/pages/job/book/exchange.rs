//! A new book, and tables that come from a file or the clipboard and go to a file.

use super::{Book, Unfolded, built_in};
use crate::locale::{book_error_text, words};
use crate::pages::job::exchange::{TakeTable, give_table};
use crate::parts::icon::Icon;
use crate::platform::{clock, forms};
use crate::state::app;
use leptos::html;
use leptos::prelude::*;
use wellwright_core::cost::book_table::{Cells, MOST_TEXT, Word, read, write};

/// New, in and out.
#[component]
pub fn Exchange(book: Book, unfolded: Unfolded) -> impl IntoView {
    let (app, words) = (app(), &words().book);
    let refused = RwSignal::new(None::<String>);
    let take = move |given: Result<(String, String), String>| {
        let taken = given.and_then(|(file, text)| {
            let name = file.rsplit_once('.').map_or(file.as_str(), |(name, _)| name);
            taken(&text, name).map_err(|why| (words.not_imported)(&why))
        });
        match taken {
            Ok((text, count, name)) => {
                refused.set(None);
                book.put(text);
                app.tell((words.imported)(count, &name));
            }
            Err(why) => refused.set(Some(why)),
        }
    };
    let give = move |_| match book.own.get_untracked() {
        Some(Err(_)) => refused.set(Some(words.mend_first.to_owned())),
        Some(Ok(own)) => give_table(&untrack(|| book.name()), &write(&own)),
        None => give_table(words.built_in, &write(&wellwright_core::cost::book::PriceBook::invented())),
    };
    let said =
        move || refused.get().map(|why| view! { <p class="msg wrong"><Icon name="error" /><span>{why}</span></p> });
    view! {
        <details
            class="group fold"
            open=move || unfolded.exchange.get()
            on:toggle=move |event| unfolded.exchange.set(forms::is_open(&event))
        >
            <summary><h3>{words.exchange}</h3></summary>
            <NewBook book=book />
            <p class="note">{words.import_hint}</p>
            <div class="row">
                <TakeTable label=words.import too_large=words.too_large on_table=Callback::new(take) />
                <button class="btn" type="button" on:click=give>{words.export}</button>
            </div>
            <div role="alert">{said}</div>
            <Paste on_table=Callback::new(move |text| take(Ok((book.free_name(), text)))) />
        </details>
    }
}

/// A table that may be put in, the number of its prices and its name; or what is wrong. One without a name is called
/// as its file is.
fn taken(text: &str, file: &str) -> Result<(String, usize, String), String> {
    let words = &words().book;
    let found = read(text).map_err(|error| book_error_text(&error))?;
    let book = found.ok_or_else(|| words.no_table.to_owned())?;
    let count = book.rows().len();
    if !book.name.is_empty() {
        return Ok((text.to_owned(), count, book.name));
    }
    let mut cells = Cells::of(text).map_err(|error| book_error_text(&error))?;
    let name: String = file.chars().take(MOST_TEXT).collect();
    cells.tell(Word::Name, &name);
    let name = cells.told(Word::Name).to_owned();
    Ok((cells.text(), count, name))
}

/// A copy of the book in use, under a name of its own.
#[component]
fn NewBook(book: Book) -> impl IntoView {
    let (app, words) = (app(), &words().book);
    let input = NodeRef::<html::Input>::new();
    let usual = Memo::new(move |_| {
        app.books.track();
        book.free_name()
    });
    let create = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let Some(mut cells) = book.cells.get_untracked() else { return };
        let typed = input.get_untracked().map(|input| input.value().trim().to_owned()).unwrap_or_default();
        let name = if typed.is_empty() { usual.get_untracked() } else { typed };
        // A kept book of this name would be taken for the same.
        let more = (1..).map(|count: usize| if count == 1 { name.clone() } else { format!("{name} {count}") });
        let name = app.books.with_untracked(|books| books.free_name(more));
        cells.tell(Word::Name, &name);
        if book.own.with_untracked(Option::is_none) && cells.told(Word::Date) == built_in().date.text() {
            cells.tell(Word::Date, &clock::today());
        }
        let name = cells.told(Word::Name).to_owned();
        book.put(cells.text());
        app.tell((words.created)(&name));
        if let Some(input) = input.get_untracked() {
            input.set_value("");
        }
    };
    view! {
        <form class="new-book" on:submit=create>
            <div class="field line">
                <label for="book.new">{words.new}<small>{words.new_name}</small></label>
                <input id="book.new" node_ref=input maxlength=MOST_TEXT.to_string() autocomplete="off" placeholder=usual />
            </div>
            <button class="btn" type="submit">{words.create}</button>
        </form>
    }
}

/// A table that is pasted.
#[component]
fn Paste(on_table: Callback<String>) -> impl IntoView {
    let words = &words().book;
    let area = NodeRef::<html::Textarea>::new();
    let take = move |_| {
        if let Some(area) = area.get_untracked() {
            on_table.run(area.value());
        }
    };
    view! {
        <div class="field points">
            <label for="book.paste">{words.paste}</label>
            <textarea id="book.paste" node_ref=area rows="4" spellcheck="false" autocomplete="off"></textarea>
        </div>
        <button class="btn" type="button" on:click=take>{words.take_over}</button>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_table_without_a_name_is_called_as_its_file() {
        let rows = "item,kind,unit,price\ncurrency,USD,,\ndate,2026-11-01,,\nline,,$,5\n";
        let (text, count, name) = taken(rows, "=spring list").unwrap();
        assert_eq!((count, name.as_str()), (1, "=spring list"));
        assert!(text.contains("name,'=spring list,"), "{text}");
        let named = rows.replace("line,,$,5", "name,Fall,,");
        assert_eq!(taken(&named, "spring").unwrap(), (named.clone(), 0, "Fall".to_owned()));
        assert_eq!(taken("item,kind,unit,price\n", "x").unwrap_err(), words().book.no_table);
        assert!(taken("a,b\n1,2\n", "x").unwrap_err().starts_with("Line 1"));
        let long = taken(rows, &"x".repeat(500)).unwrap().2;
        assert_eq!(long.len(), MOST_TEXT);
    }
}
