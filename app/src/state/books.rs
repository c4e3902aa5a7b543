//! The price books that are kept on this device, each for any job.

use super::{App, Back, Toast};
use crate::platform::storage::{self, Saved};
use leptos::prelude::*;
use wellwright_core::cost::book::PriceBook;
use wellwright_core::cost::book_table::{self, BookError};

/// A book and the id that it is kept under.
#[derive(Debug, Clone, PartialEq)]
pub struct KeptBook {
    /// Its id, unique on this device.
    pub id: String,
    /// Its table, as it was kept.
    pub text: String,
    /// What the table holds.
    pub book: PriceBook,
}

/// A stored text that is no book; it stays in storage as it is.
#[derive(Debug, Clone, PartialEq)]
pub struct AsideBook {
    /// Its id.
    pub id: String,
    /// The stored text.
    pub text: String,
    /// Why it can't be read; `None` where it holds no row.
    pub why: Option<BookError>,
}

/// All books.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Books {
    /// Those that could be read, in the order in which they were kept.
    pub kept: Vec<KeptBook>,
    /// Entries that could not.
    pub set_aside: Vec<AsideBook>,
}

impl Books {
    /// The book of a name.
    #[must_use]
    pub fn named(&self, name: &str) -> Option<&KeptBook> {
        self.kept.iter().find(|kept| kept.book.name == name)
    }

    /// The first of some names that no book has.
    #[must_use]
    pub fn free_name(&self, mut names: impl Iterator<Item = String>) -> String {
        names.find(|name| self.named(name).is_none()).unwrap_or_default()
    }

    fn put(&mut self, kept: KeptBook) {
        match self.kept.iter_mut().find(|other| other.id == kept.id) {
            Some(other) => *other = kept,
            None => self.kept.push(kept),
        }
    }

    fn ids(&self) -> Vec<String> {
        self.kept.iter().map(|kept| kept.id.clone()).collect()
    }
}

impl App {
    /// Keeps the book of a table in place of the one of its name, else as a new one. `None` where it is no book, or one
    /// without a name, which could not be found again.
    pub fn keep_book(self, text: &str) -> Option<Saved> {
        let book = book_table::read(text).ok().flatten().filter(|book| !book.name.is_empty())?;
        let same = self.books.with_untracked(|books| books.named(&book.name).map(|kept| kept.id.clone()));
        let id = same.unwrap_or_else(storage::new_id);
        Some(self.put_book(KeptBook { id, text: text.to_owned(), book }))
    }

    /// Keeps a book beside those that are here: under a free name where its own is taken, once where the very same is here.
    /// A text that is no book is kept as it is, and reported as those of this device are.
    pub fn keep_book_beside(self, text: &str) -> Saved {
        let here = |books: &Books| {
            books.kept.iter().any(|kept| kept.text == text) || books.set_aside.iter().any(|aside| aside.text == text)
        };
        if self.books.with_untracked(here) {
            return Saved::Yes;
        }
        let id = storage::new_id();
        let Ok(Some(mut book)) = book_table::read(text) else {
            let saved = if storage::keep_book_text(&id, text) { Saved::Yes } else { Saved::Full };
            self.reload_books();
            return saved;
        };
        let name = book.name.clone();
        let more = (1..).map(|count: usize| if count == 1 { name.clone() } else { format!("{name} {count}") });
        book.name = self.books.with_untracked(|books| books.free_name(more));
        let text = if book.name == name { text.to_owned() } else { book_table::write(&book) };
        self.put_book(KeptBook { id, text, book })
    }

    /// Keeps a book; what found no room is not on the list either.
    pub fn put_book(self, kept: KeptBook) -> Saved {
        let mut books = self.books.get_untracked();
        books.put(kept.clone());
        let saved = storage::save_book(&kept, &books.ids());
        if saved != Saved::Full {
            self.books.set(books);
        }
        saved
    }

    /// Takes a book off this device and offers to bring it back.
    pub fn remove_book(self, id: &str, message: impl FnOnce(&str) -> String) {
        let removed = self.books.try_update(|books| {
            let place = books.kept.iter().position(|kept| kept.id == id)?;
            Some(books.kept.remove(place))
        });
        let Some(removed) = removed.flatten() else { return };
        storage::delete_book(id);
        let text = message(&removed.book.name);
        self.toast.set(Some(Toast { text, bring_back: Some(Back::Book(removed)) }));
    }

    /// Deletes a stored text that is no book.
    pub fn delete_aside_book(self, id: &str) {
        storage::delete_book(id);
        self.books.update(|books| books.set_aside.retain(|entry| entry.id != id));
    }

    /// Reads the books anew; where the browser keeps nothing they stay.
    pub fn reload_books(self) {
        if let Some(books) = storage::load_books() {
            self.books.set(books);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn kept(id: &str, name: &str) -> KeptBook {
        let mut book = PriceBook::invented();
        name.clone_into(&mut book.name);
        KeptBook { id: id.to_owned(), text: book_table::write(&book), book }
    }

    #[test]
    fn a_book_takes_the_place_of_its_id_and_names_stay_apart() {
        let mut books = Books::default();
        for book in [kept("1", "A"), kept("2", "B"), kept("1", "C")] {
            books.put(book);
        }
        assert_eq!(books.ids(), ["1", "2"]);
        assert_eq!(books.named("C").map(|kept| kept.id.as_str()), Some("1"));
        assert_eq!((books.named("A"), books.named("")), (None, None));
        assert_eq!(books.free_name(["B", "C", "D"].into_iter().map(str::to_owned)), "D");
    }
}
