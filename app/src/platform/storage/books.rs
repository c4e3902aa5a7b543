//! Price books in the browser's local storage: one entry a book, its table as text under the book's id, and their order.
//!
//! An entry that can't be read stays as it is and is reported; nothing writes over it, since ids are never used twice.

use super::place::{Browser, Place};
use super::{Saved, there};
use crate::state::{AsideBook, Books, KeptBook};
use leptos::ev;
use leptos::prelude::{on_cleanup, window_event_listener};
use wellwright_core::cost::book_table;
use wellwright_core::numeric::order::{by_number, by_text};

const BOOK: &str = "wellwright.book.";
const ORDER: &str = "wellwright.books";

/// Every book that is kept; nothing where the browser keeps nothing.
#[must_use]
pub fn load_books() -> Option<Books> {
    there().then(|| load(&Browser))
}

/// Keeps a book, and the order of all.
pub fn save_book(kept: &KeptBook, order: &[String]) -> Saved {
    if !there() {
        return Saved::Nowhere;
    }
    if save(&Browser, kept, order) { Saved::Yes } else { Saved::Full }
}

/// Keeps a text that is no book to this build, as it is; `false` where there was no room.
#[must_use]
pub fn keep_book_text(id: &str, text: &str) -> bool {
    there() && Browser.set(&format!("{BOOK}{id}"), text)
}

/// Deletes a book, or an entry that can't be read.
pub fn delete_book(id: &str) {
    if there() {
        Browser.remove(&format!("{BOOK}{id}"));
    }
}

/// Calls back when another tab changes the books, as long as what calls this stands.
pub fn follow_books(changed: impl Fn() + 'static) {
    let handle = window_event_listener(ev::storage, move |event| {
        // Without a key everything was deleted.
        if event.key().is_none_or(|key| key.starts_with(BOOK) || key == ORDER) {
            changed();
        }
    });
    on_cleanup(move || handle.remove());
}

fn load(place: &impl Place) -> Books {
    let order: Vec<String> = place.get(ORDER).and_then(|text| serde_json::from_str(&text).ok()).unwrap_or_default();
    let mut books = Books::default();
    for key in place.keys() {
        let Some((id, text)) = key.strip_prefix(BOOK).zip(place.get(&key)) else { continue };
        let id = id.to_owned();
        match book_table::read(&text) {
            Ok(Some(book)) => books.kept.push(KeptBook { id, text, book }),
            Ok(None) => books.set_aside.push(AsideBook { id, text, why: None }),
            Err(why) => books.set_aside.push(AsideBook { id, text, why: Some(why) }),
        }
    }
    let at = |id: &String| order.iter().position(|other| other == id).map_or(f64::INFINITY, |place| place as f64);
    by_text(&mut books.kept, |book| &book.id);
    by_number(&mut books.kept, |book| at(&book.id));
    by_text(&mut books.set_aside, |book| &book.id);
    books
}

/// A lost order loses no book, so only the book itself needs room.
fn save(place: &impl Place, kept: &KeptBook, order: &[String]) -> bool {
    let is_kept = place.set(&format!("{BOOK}{}", kept.id), &kept.text);
    if is_kept {
        let order = serde_json::to_string(order).unwrap_or_default();
        place.set(ORDER, &order);
    }
    is_kept
}

#[cfg(test)]
mod tests {
    use super::super::place::Room;
    use super::*;
    use wellwright_core::cost::book::PriceBook;
    use wellwright_core::cost::book_table::{BookFault, write};

    fn kept(id: &str, name: &str) -> KeptBook {
        let mut book = PriceBook::invented();
        name.clone_into(&mut book.name);
        KeptBook { id: id.to_owned(), text: write(&book), book }
    }

    #[test]
    fn books_are_read_back_in_their_order() {
        let room = Room::of(1_000_000, &[("wellwright.job.1", "{}"), ("wellwright.bookish", "x")]);
        let ids = ["2", "1"].map(str::to_owned);
        for book in [kept("1", "Spring"), kept("2", "=1+1"), kept("3", "<b>Fall</b>")] {
            assert!(save(&room, &book, &ids));
        }
        let books = load(&room);
        assert_eq!(books.kept, [kept("2", "=1+1"), kept("1", "Spring"), kept("3", "<b>Fall</b>")]);
        assert!(books.set_aside.is_empty());
    }

    #[test]
    fn hostile_entries_are_set_aside_and_stay_as_they_are() {
        let long = "x".repeat(200_000);
        let hostile = [
            ("wellwright.book.a", ""),
            ("wellwright.book.b", "{\"job\":{}}"),
            ("wellwright.book.c", "item,kind,unit,price\ncurrency,USD,,\ndate,2026-11-01,,\nline,,$,=1+1\n"),
            ("wellwright.book.d", long.as_str()),
            ("wellwright.book.e", "item,kind,unit,price\n\"line,,$,5\n"),
            ("wellwright.book.", "\u{0}\u{202e}"),
            ("wellwright.books", "[[\"a\"], null"),
        ];
        let room = Room::of(1_000_000, &hostile);
        assert!(save(&room, &kept("z", "Good"), &[]));
        let books = load(&room);
        assert_eq!(books.kept, [kept("z", "Good")]);
        let ids: Vec<&str> = books.set_aside.iter().map(|entry| entry.id.as_str()).collect();
        assert_eq!(ids, ["", "a", "b", "c", "d", "e"]);
        let why = |id: &str| {
            let entry = books.set_aside.iter().find(|entry| entry.id == id).unwrap();
            entry.why.as_ref().map(|why| (why.row, why.what.clone()))
        };
        assert_eq!(why("a"), None);
        assert_eq!(why("c"), Some((4, BookFault::NotANumber("=1+1".to_owned()))));
        assert!(matches!(why("d"), Some((1, BookFault::TooLong { given: 200_000, .. }))));
        for (key, text) in hostile.iter().filter(|(key, _)| key.starts_with(BOOK)) {
            assert_eq!(room.get(key).as_deref(), Some(*text), "{key}");
        }
    }

    #[test]
    fn a_full_storage_is_told_and_keeps_what_it_had() {
        let first = kept("1", "Spring");
        let room = Room::of(first.text.len() + 60, &[]);
        assert!(save(&room, &first, &["1".to_owned()]));
        assert!(!save(&room, &kept("2", "Fall"), &[]));
        let longer = kept("1", &"Spring ".repeat(15));
        assert!(!save(&room, &longer, &[]));
        assert_eq!(load(&room).kept, [first]);
    }
}
