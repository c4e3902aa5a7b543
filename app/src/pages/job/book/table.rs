//! The table of a price book, a row for each price, in groups that are folded away.

use super::add::AddPrice;
use super::rows::{self, Group, Section};
use super::{Book, Unfolded};
use crate::locale::{book_fault_text, cell_shown, cell_typed, unit_word, words};
use crate::pages::job::cell::CellField;
use crate::parts::icon::Icon;
use crate::platform::{focus, forms};
use crate::state::app;
use leptos::prelude::*;
use wellwright_core::cost::book_table::{BookFault, MOST_TEXT, PRICE, UNIT, Word};

/// Rows of a group that are shown at first, and that are shown more at a time.
const AT_FIRST: usize = 60;
const MORE: usize = 200;
/// The texts of a book.
const TEXTS: [Word; 4] = [Word::Name, Word::Currency, Word::Date, Word::Source];
/// The place of what is about the book among what can be unfolded.
const ABOUT: usize = Group::ALL.len();

/// The table.
#[component]
pub fn PriceTable(book: Book, unfolded: Unfolded) -> impl IntoView {
    let words = &words().book;
    let count = Memo::new(move |_| book.told(rows::count));
    // What is wrong is brought to sight.
    Effect::new(move |_| {
        let Some(Err(error)) = book.own.get() else { return };
        let row = book.told(|cells| (0..cells.count()).find(|row| cells.line(*row) == Some(error.row)));
        let section = row.and_then(|row| book.told(|cells| Section::of(cells, row)));
        let place = section.map_or(ABOUT, |section| section.group() as usize);
        unfolded.table.set(true);
        unfolded.groups.update(|open| open[place] = true);
    });
    view! {
        <details
            class="group fold"
            open=move || unfolded.table.get()
            on:toggle=move |event| unfolded.table.set(forms::is_open(&event))
        >
            <summary><h3>{words.edit}</h3><small>{move || (words.count)(count.get())}</small></summary>
            <Show when=move || unfolded.table.get()>
                <p class="note">{words.edit_hint}</p>
                {Group::ALL.map(|group| view! { <GroupFold group=group book=book unfolded=unfolded /> }).into_iter().collect_view()}
                <Folded name=words.about place=ABOUT unfolded=unfolded note=Signal::stored(String::new())>
                    {TEXTS.map(|word| view! { <TextField word=word book=book /> }).into_iter().collect_view()}
                </Folded>
                <AddPrice book=book />
            </Show>
        </details>
    }
}

/// A part of the table that is folded away; it is made when it is opened.
#[component]
fn Folded(
    name: &'static str,
    place: usize,
    unfolded: Unfolded,
    note: Signal<String>,
    children: ChildrenFn,
) -> impl IntoView {
    let is_open = Memo::new(move |_| unfolded.groups.with(|open| open.get(place).copied().unwrap_or_default()));
    let toggle = move |event| {
        let now = forms::is_open(&event);
        if now != is_open.get_untracked() {
            unfolded.groups.update(|open| open[place.min(ABOUT)] = now);
        }
    };
    let children = StoredValue::new(children);
    view! {
        <details class="family prices" open=move || is_open.get() on:toggle=toggle>
            <summary id=fold_id(place)><b>{name}</b><small>{note}</small></summary>
            <Show when=move || is_open.get()>{children.with_value(|children| children())}</Show>
        </details>
    }
}

fn fold_id(place: usize) -> String {
    format!("book.group.{place}")
}

/// The rows of a group; nothing where it has none.
#[component]
fn GroupFold(group: Group, book: Book, unfolded: Unfolded) -> impl IntoView {
    let words = &words().book;
    let most = RwSignal::new(AT_FIRST);
    let found = Memo::new(move |_| book.told(|cells| rows::sections(cells, group, most.get())));
    let left = move || found.with(|(_, left)| *left);
    let count =
        Memo::new(move |_| left() + found.with(|(found, _)| found.iter().map(|(_, rows)| rows.len()).sum::<usize>()));
    let sections = move || found.with(|(found, _)| found.iter().map(|(section, _)| *section).collect::<Vec<_>>());
    let rows_of = move |section: Section| {
        found.with(|(found, _)| {
            found.iter().find(|(one, _)| *one == section).map(|(_, rows)| rows.clone()).unwrap_or_default()
        })
    };
    let row = move |row: usize| view! { <PriceRow row=row book=book place=group as usize /> };
    let section = move |section: Section| {
        view! {
            <section class="priced">
                {(section != Section::Unknown).then(|| view! { <h4>{section.name()}</h4> })}
                <For each=move || rows_of(section) key=|row| *row children=row />
            </section>
        }
    };
    view! {
        <Show when=move || count.get() != 0>
            <Folded
                name=group.name()
                place=group as usize
                unfolded=unfolded
                note=Signal::derive(move || (words.count)(count.get()))
            >
                <For each=sections key=|section| *section children=section />
                <Show when=move || left() != 0>
                    <button class="btn quiet" on:click=move |_| most.update(|most| *most += MORE)>
                        {move || (words.more_rows)(left().min(MORE))}
                    </button>
                </Show>
            </Folded>
        </Show>
    }
}

/// One price.
#[component]
fn PriceRow(row: usize, book: Book, place: usize) -> impl IntoView {
    let words = &words().book;
    let name = Memo::new(move |_| book.told(|cells| rows::full_name(cells, row)));
    let heading = move || book.told(|cells| Section::of(cells, row)).map(|section| section.name().to_owned());
    let set = move |given: String| book.change(|cells| cells.set(row, PRICE, &cell_typed(&given)));
    let take_out = move |_| {
        let name = name.get_untracked();
        book.change(|cells| cells.remove(row..row + 1));
        app().tell((words.taken_out)(&name));
        // The row beneath has the button now; the last of a group leaves the focus to its heading.
        request_animation_frame(move || {
            let _ = focus::take(&row_id(row, "out")) || focus::take(&fold_id(place));
        });
    };
    view! {
        <CellField
            id=row_id(row, "price")
            label=Signal::derive(move || book.told(|cells| rows::part_name(cells, row)))
            of=Signal::derive(move || heading().unwrap_or_default())
            usual=words.no_price
            value=Signal::derive(move || cell_shown(&book.get(row, PRICE)))
            fault=Memo::new(move |_| book.fault(row))
            on_change=Callback::new(set)
        >
            <UnitOf row=row book=book name=name />
            <button
                id=row_id(row, "out")
                class="btn quiet take-out"
                type="button"
                aria-label=move || (words.take_out)(&name.get())
                on:click=take_out
            >
                <Icon name="close" />
            </button>
        </CellField>
    }
}

fn row_id(row: usize, part: &str) -> String {
    format!("book.{row}.{part}")
}

/// The unit of a price; a list where there are others for the same price.
#[component]
fn UnitOf(row: usize, book: Book, name: Memo<String>) -> impl IntoView {
    let words = &words().book;
    let now = Memo::new(move |_| book.get(row, UNIT));
    let all = Memo::new(move |_| book.told(|cells| rows::units(cells, row)));
    let choose = move |event| {
        let unit = event_target_value(&event);
        book.change(|cells| cells.set(row, UNIT, &unit));
    };
    let option = move |unit: String| {
        let (word, value) = (unit_word(&unit), unit.clone());
        let chosen = move || now.with(|now| now.eq_ignore_ascii_case(&unit));
        view! { <option value=value prop:selected=chosen>{word}</option> }
    };
    move || match all.get() {
        all if all.len() > 1 => view! {
            <select class="unit-list" aria-label=move || (words.unit_of)(&name.get()) on:change=choose>
                {all.into_iter().map(option).collect_view()}
            </select>
        }
        .into_any(),
        all => view! { <span class="u">{all.first().map(|unit| unit_word(unit))}</span> }.into_any(),
    }
}

/// A text of the book.
#[component]
fn TextField(word: Word, book: Book) -> impl IntoView {
    let words = &words().book;
    let id = format!("book.{}", word.word());
    let says = format!("{id}-says");
    let fault = Memo::new(move |_| {
        let row = book.told(|cells| (0..cells.count()).find(|row| cells.word(*row) == Some(word)));
        let missing = book.own.with(|own| match own {
            Some(Err(error)) => error.what == BookFault::Missing(word),
            _ => false,
        });
        match row {
            None if missing => Some(book_fault_text(&BookFault::Missing(word))),
            row => book.fault(row?),
        }
    });
    let wrong = move || fault.with(Option::is_some);
    let set = move |event| {
        let given = event_target_value(&event);
        let given = if word == Word::Currency { given.trim().to_uppercase() } else { given };
        book.change(|cells| cells.tell(word, &given));
    };
    let kind = if word == Word::Date { "date" } else { "text" };
    view! {
        <div class="field line" data-state=move || if wrong() { "error" } else { "typed" }>
            <label for=id.clone()>{(words.item)(word)}</label>
            <input
                id=id
                type=kind
                maxlength=MOST_TEXT.to_string()
                autocomplete="off"
                aria-invalid=move || wrong().then_some("true")
                aria-describedby=says.clone()
                prop:value=move || book.told(|cells| cells.told(word).to_owned())
                on:change=set
            />
            <p class="msg" id=says>
                <Show when=wrong><Icon name="error" /></Show>
                <span>{move || fault.get()}</span>
            </p>
        </div>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use wellwright_core::cost::book_table::columns_of;

    #[test]
    fn every_text_of_a_book_has_its_field() {
        let texts: Vec<Word> = Word::ALL.into_iter().filter(|word| !columns_of(*word).contains(&PRICE)).collect();
        assert!(texts.iter().all(|word| TEXTS.contains(word)) && texts.len() == TEXTS.len());
    }
}
