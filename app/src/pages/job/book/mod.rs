//! The prices of a job: which price book it goes by, that book's table, and the books of this device.

mod add;
mod exchange;
mod rows;
mod shelf;
mod table;

use super::Desk;
use crate::locale::{book_error_text, book_fault_text, day, words};
use crate::parts::group::Group;
use crate::parts::icon::Icon;
use crate::parts::notice::BooksAsideNotice;
use crate::platform::clock;
use crate::state::{Edit, Open, app};
use leptos::prelude::*;
use wellwright_core::cost::book::PriceBook;
use wellwright_core::cost::book_table::{self, BookError, Cells, MOST_BYTES, Word};

/// What is open of the table; it stays so while a job is drawn anew.
#[derive(Clone, Copy, Default)]
pub struct Unfolded {
    /// The table.
    table: RwSignal<bool>,
    /// Its groups, in their order, and what is about the book.
    groups: RwSignal<[bool; 6]>,
    /// What makes a book, takes one and gives one out.
    exchange: RwSignal<bool>,
}

/// The price book of a job, and the way to change it.
#[derive(Clone, Copy)]
struct Book {
    open: Open,
    /// Its table; blank for the built-in book.
    text: Memo<String>,
    /// The table's cells, of the built-in book too; nothing where the text can't be taken apart.
    cells: Memo<Option<Cells>>,
    /// What the text holds; nothing for the built-in book.
    own: Memo<Option<Result<PriceBook, BookError>>>,
}

impl Book {
    fn of(open: Open) -> Self {
        let text = Memo::new(move |_| open.sheet.with(|sheet| sheet.job.book.clone()));
        let own = Memo::new(move |_| text.with(|text| book_table::read(text).transpose()));
        let cells = Memo::new(move |_| match own.with(Option::is_some) {
            true => text.with(|text| Cells::of(text).ok()),
            false => Cells::of_book(&built_in()).ok(),
        });
        Self { open, text, cells, own }
    }

    /// Changes the table: one step back. The built-in book stays as it is, and the change goes into a copy of today.
    fn change(self, change: impl FnOnce(&mut Cells)) {
        let Some(mut cells) = self.cells.get_untracked() else { return };
        change(&mut cells);
        if self.own.with_untracked(Option::is_none) {
            let book = built_in();
            let name = self.free_name();
            if cells.told(Word::Name) == book.name {
                cells.tell(Word::Name, &name);
            }
            if cells.told(Word::Date) == book.date.text() {
                cells.tell(Word::Date, &clock::today());
            }
            app().tell((words().book.copied)(cells.told(Word::Name)));
        }
        self.put(cells.text());
    }

    /// Puts a table in; a longer one would be kept in no file.
    fn put(self, text: String) {
        if text.len() > MOST_BYTES {
            app().tell(words().book.too_large.to_owned());
            return;
        }
        self.open.pause.run(());
        self.open.edit.run(Edit::Book(text));
        self.open.pause.run(());
    }

    /// A name that no book of this device has.
    fn free_name(self) -> String {
        app().books.with_untracked(|books| books.free_name((1..).map(words().book.own_name)))
    }

    fn get(self, row: usize, column: &str) -> String {
        self.cells.with(|cells| cells.as_ref().map_or_else(String::new, |cells| cells.get(row, column).to_owned()))
    }

    /// What is told of the cells; nothing where there are none.
    fn told<T: Default>(self, of: impl FnOnce(&Cells) -> T) -> T {
        self.cells.with(|cells| cells.as_ref().map(of).unwrap_or_default())
    }

    /// What is wrong with a row.
    fn fault(self, row: usize) -> Option<String> {
        let line = self.told(|cells| cells.line(row))?;
        self.own.with(|own| match own {
            Some(Err(error)) if error.row == line => Some(book_fault_text(&error.what)),
            _ => None,
        })
    }

    /// What the book is called.
    fn name(self) -> String {
        let name = self.told(|cells| cells.told(Word::Name).to_owned());
        if name.is_empty() { words().book.nameless.to_owned() } else { name }
    }
}

/// The built-in book, by its name.
fn built_in() -> PriceBook {
    let mut book = PriceBook::invented();
    words().book.built_in.clone_into(&mut book.name);
    book
}

/// The prices of the job.
#[component]
pub fn Prices(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let words = &words().book;
    let book = Book::of(desk.open);
    view! {
        <Group title=words.title>
            <shelf::Choice book=book />
            <Facts book=book />
            <shelf::Standing book=book />
            <BooksAsideNotice />
            <table::PriceTable book=book unfolded=desk.book />
            <exchange::Exchange book=book unfolded=desk.book />
        </Group>
    }
}

/// What the book says of itself.
#[component]
fn Facts(book: Book) -> impl IntoView {
    let words = &words().book;
    let said = move || {
        let own = book.own.get();
        match own.unwrap_or_else(|| Ok(built_in())) {
            Err(error) => {
                let why = (words.unreadable)(&book_error_text(&error));
                view! { <p class="msg wrong"><Icon name="error" /><span>{why}</span></p> }.into_any()
            }
            Ok(of) => {
                let stands = (words.stands_for)(&of.currency.code(), &day(of.date));
                let quoted = match of.is_invented() {
                    true => view! { <p class="invented"><Icon name="caution" /><span><b>{words.invented}". "</b>{words.no_source}</span></p> }.into_any(),
                    false => view! { <p>{(words.source_of)(&of.source)}</p> }.into_any(),
                };
                view! { <p>{stands}</p>{quoted} }.into_any()
            }
        }
    };
    view! { <div class="book-facts" aria-live="polite">{said}</div> }
}

/// Which prices the papers go by.
#[component]
pub fn OnPaper(
    /// The open job.
    open: Open,
) -> impl IntoView {
    let words = &words().book;
    let said = move || {
        let own = open.answer.with(|answer| answer.inputs.book.clone());
        let built_in = open.sheet.with(|sheet| !matches!(book_table::read(&sheet.job.book), Ok(Some(_))));
        let of = own.unwrap_or_else(|_| PriceBook::invented());
        let name = match (built_in, of.name.as_str()) {
            (true, _) => words.built_in,
            (false, "") => words.nameless,
            (false, name) => name,
        };
        let stands = (words.stands_for)(&of.currency.code(), &day(of.date));
        let told = if of.is_invented() { words.invented.to_owned() } else { (words.source_of)(&of.source) };
        format!("{}: {name}; {stands}. {told}.", words.title)
    };
    view! { <p class="paper-prices">{said}</p> }
}
