//! A price that the book does not have yet: what it is for is chosen, and it is checked before it goes in.

use super::Book;
use super::rows::{choice_name, full_name};
use crate::locale::{book_fault_text, cell_typed, words};
use crate::parts::icon::Icon;
use crate::state::app;
use leptos::prelude::*;
use wellwright_core::cost::book_table::{Cells, ITEM, KIND, METAL, PRICE, SIZE, UNIT, Word, choices, columns_of, read};

/// What stands in the row so far.
#[derive(Debug, Clone, PartialEq, Default)]
struct Draft {
    word: Option<Word>,
    kind: String,
    metal: String,
    size: String,
    unit: String,
    price: String,
}

impl Draft {
    /// A row of an item, with the first of each list.
    fn of(word: Word) -> Self {
        let first = |column| choices(word, column).into_iter().next().unwrap_or_default();
        Self {
            word: Some(word),
            kind: first(KIND),
            metal: first(METAL),
            size: first(SIZE),
            unit: first(UNIT),
            price: String::new(),
        }
    }

    fn cell(&self, column: &str) -> &str {
        match column {
            KIND => &self.kind,
            METAL => &self.metal,
            SIZE => &self.size,
            UNIT => &self.unit,
            _ => &self.price,
        }
    }

    fn set(&mut self, column: &str, value: String) {
        let cell = match column {
            KIND => &mut self.kind,
            METAL => &mut self.metal,
            SIZE => &mut self.size,
            UNIT => &mut self.unit,
            _ => &mut self.price,
        };
        *cell = value;
    }

    /// Puts the row at the end of a table.
    fn put(&self, cells: &mut Cells) {
        let Some(word) = self.word else { return };
        let row: Vec<_> = columns_of(word)
            .iter()
            .map(|column| (*column, if *column == ITEM { word.word() } else { self.cell(column) }))
            .collect();
        let end = cells.count();
        cells.insert(end, &row);
    }

    /// What is wrong with the row in a table. A row without a price is checked as if it had one, so that none stands
    /// there twice.
    fn fault(&self, cells: &Cells) -> Option<String> {
        let mut trial = cells.clone();
        let mut draft = self.clone();
        if draft.price.is_empty() {
            "1".clone_into(&mut draft.price);
        }
        draft.put(&mut trial);
        let text = trial.text();
        let line = Cells::of(&text).ok().and_then(|cells| cells.line(cells.count().checked_sub(1)?));
        let error = read(&text).err()?;
        (Some(error.row) == line || line.is_none()).then(|| book_fault_text(&error.what))
    }
}

/// The form.
#[component]
pub fn AddPrice(book: Book) -> impl IntoView {
    let words = &words().book;
    let draft = RwSignal::new(Draft::default());
    let said = RwSignal::new(None::<String>);
    let word = Memo::new(move |_| draft.with(|draft| draft.word));
    let choose = move |event| {
        let word = Word::named(&event_target_value(&event));
        said.set(None);
        draft.set(word.map(Draft::of).unwrap_or_default());
    };
    let add = move |_| {
        let row = draft.get_untracked();
        let Some(fault) = book.cells.with_untracked(|cells| cells.as_ref().map(|cells| row.fault(cells))) else {
            return;
        };
        said.set(fault.clone());
        if fault.is_none() {
            book.change(|cells| row.put(cells));
            let name = untrack(|| book.told(|cells| full_name(cells, cells.count().saturating_sub(1))));
            app().tell((words.added)(&name));
            draft.update(|draft| draft.price.clear());
        }
    };
    let items = || Word::ALL.into_iter().filter(|word| columns_of(*word).contains(&PRICE));
    let item = move |word: Word| view! { <option value=word.word()>{(words.item)(word)}</option> };
    let fields = move || {
        word.get().map(|word| {
            let columns = columns_of(word).iter().filter(|column| **column != ITEM);
            columns.map(|column| view! { <Part word=word column=column draft=draft /> }).collect_view()
        })
    };
    view! {
        <section class="add-price" aria-label=words.add>
            <h4>{words.add}</h4>
            <div class="field pick">
                <label for="book.add">{words.add_what}</label>
                <select id="book.add" on:change=choose>
                    <option value="">{words.choose}</option>
                    {items().map(item).collect_view()}
                </select>
            </div>
            {fields}
            <div role="alert">
                {move || said.get().map(|said| view! { <p class="msg wrong"><Icon name="error" /><span>{said}</span></p> })}
            </div>
            <Show when=move || word.get().is_some()>
                <button class="btn" type="button" on:click=add>{words.add_now}</button>
            </Show>
        </section>
    }
}

/// A cell of the row: one of a list, or typed.
#[component]
fn Part(word: Word, column: &'static str, draft: RwSignal<Draft>) -> impl IntoView {
    let words = &words().book;
    let label = match column {
        KIND => words.kind,
        METAL => words.metal,
        SIZE => words.size,
        UNIT => words.unit,
        _ => words.price,
    };
    let id = format!("book.add.{column}");
    let all = choices(word, column);
    let choose = move |event| draft.update(|draft| draft.set(column, event_target_value(&event)));
    let typed = move |event| draft.update(|draft| draft.set(column, cell_typed(&event_target_value(&event))));
    if all.is_empty() {
        let hint = (column == SIZE).then_some(words.size_hint);
        return view! {
            <div class="field" data-state="typed">
                <label for=id.clone()>{label}{hint.map(|hint| view! { <small>{hint}</small> })}</label>
                <input
                    id=id
                    inputmode=if column == SIZE { "text" } else { "decimal" }
                    autocomplete="off"
                    prop:value=move || draft.with(|draft| draft.cell(column).to_owned())
                    on:change=typed
                />
            </div>
        }
        .into_any();
    }
    // A plain number is the only unit there is.
    if all.len() == 1 {
        return ().into_any();
    }
    let option =
        move |choice: String| view! { <option value=choice.clone()>{choice_name(word, column, &choice)}</option> };
    view! {
        <div class="field pick">
            <label for=id.clone()>{label}</label>
            <select id=id on:change=choose>{all.into_iter().map(option).collect_view()}</select>
        </div>
    }
    .into_any()
}

#[cfg(test)]
mod tests {
    use super::*;
    use wellwright_core::cost::book::PriceBook;

    #[test]
    fn a_row_of_every_item_goes_in_once() {
        let mut cells = Cells::of_book(&PriceBook::invented()).unwrap();
        for row in (0..cells.count()).rev().filter(|row| *row > 1) {
            cells.remove(row..row + 1);
        }
        for word in Word::ALL.into_iter().filter(|word| columns_of(*word).contains(&PRICE)) {
            let draft = Draft { price: "5".to_owned(), ..Draft::of(word) };
            assert_eq!(draft.fault(&cells), None, "{word:?}");
            draft.put(&mut cells);
            assert!(read(&cells.text()).is_ok(), "{}", cells.text());
            let again = Draft { price: String::new(), ..draft };
            assert!(again.fault(&cells).is_some_and(|said| said.ends_with("says this already")), "{word:?}");
        }
    }

    #[test]
    fn a_wrong_row_is_told() {
        let cells = Cells::of_book(&PriceBook::invented()).unwrap();
        let draft = Draft { price: "five".to_owned(), size: "10 hp".to_owned(), ..Draft::of(Word::Equipment) };
        assert_eq!(draft.fault(&cells).as_deref(), Some("“five” is not a number"));
        let draft = Draft { price: "5".to_owned(), size: "9999".to_owned(), ..Draft::of(Word::Equipment) };
        assert_eq!(draft.fault(&cells).as_deref(), Some("9,999 is outside 0.1 to 1,000"));
    }
}
