//! The user's own equipment: added as a kind, changed figure by figure, brought in and given out as a table.

use super::Desk;
use super::cell::CellField;
use super::exchange::{TakeTable, give_table};
use crate::locale::{column_name, fault_text, table_error_text, words};
use crate::parts::group::Fold;
use crate::parts::icon::Icon;
use crate::platform::forms;
use crate::state::{Edit, app};
use leptos::prelude::*;
use std::ops::Range;
use wellwright_core::job::Job;
use wellwright_core::power::family::Kind;
use wellwright_core::power::family_table::{
    Cells, ENCLOSURE, FRAME, HP, NAME, TableError, columns_of, read, stand_in, write,
};

/// The user's own equipment.
#[component]
pub fn Equipment(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let (open, words) = (desk.open, &words().equipment);
    let table = Table::of(desk);
    let families =
        Memo::new(move |_| table.cells.with(|cells| cells.as_ref().map_or(0, |cells| cells.families().len())));
    let wrong = Memo::new(move |_| open.answer.with(|answer| answer.ways.table.clone()));
    let unplaced = move || {
        let said = wrong.with(|wrong| wrong.as_ref().map(table_error_text))?;
        Some(view! { <p class="msg wrong"><Icon name="error" /><span>{said}</span></p> })
    };
    view! {
        <Fold title=words.title note=Signal::derive(move || (words.count)(families.get())) must=Signal::derive(move || wrong.with(Option::is_some))>
            <p class="note">{words.hint}</p>
            <div aria-live="polite">{unplaced}</div>
            {move || (0..families.get()).map(|place| view! { <Family place=place table=table /> }).collect_view()}
            <Add table=table />
            <Exchange desk=desk table=table />
        </Fold>
    }
}

/// The table as cells, and the way to change it.
#[derive(Clone, Copy)]
struct Table {
    desk: Desk,
    /// Nothing where the text can't be taken apart.
    cells: Memo<Option<Cells>>,
    wrong: Memo<Option<TableError>>,
}

impl Table {
    fn of(desk: Desk) -> Self {
        let text = Memo::new(move |_| desk.open.sheet.with(|sheet| sheet.job.families.clone()));
        Self {
            desk,
            cells: Memo::new(move |_| text.with(|text| Cells::of(text).ok())),
            wrong: Memo::new(move |_| desk.open.answer.with(|answer| answer.ways.table.clone())),
        }
    }

    fn change(self, change: impl FnOnce(&mut Cells)) {
        let Some(mut cells) = self.cells.get_untracked() else { return };
        change(&mut cells);
        self.put(cells.text());
    }

    /// A longer text would be kept in no file.
    fn put(self, text: String) {
        if text.len() <= Job::MOST_FAMILIES {
            self.desk.open.edit.run(Edit::Equipment(text));
        } else {
            app().tell(words().list.too_large.to_owned());
        }
    }

    fn rows(self, place: usize) -> Option<Range<usize>> {
        self.cells.with(|cells| cells.as_ref()?.families().get(place).cloned())
    }

    fn rows_untracked(self, place: usize) -> Option<Range<usize>> {
        self.cells.with_untracked(|cells| cells.as_ref()?.families().get(place).cloned())
    }

    fn get(self, row: usize, column: &str) -> String {
        self.cells.with(|cells| cells.as_ref().map_or_else(String::new, |cells| cells.get(row, column).to_owned()))
    }

    /// What is wrong with a cell.
    fn fault(self, row: usize, column: &str) -> Option<String> {
        let line = self.cells.with(|cells| cells.as_ref()?.line(row))?;
        self.wrong.with(|wrong| {
            let wrong = wrong.as_ref().filter(|wrong| wrong.row == line && wrong.column == Some(column))?;
            Some(fault_text(&wrong.what))
        })
    }
}

/// One family.
#[component]
fn Family(place: usize, table: Table) -> impl IntoView {
    let words = words();
    let own = &words.equipment;
    let rows = Memo::new(move |_| table.rows(place).unwrap_or_default());
    let first = move || rows.get().start;
    let kind = Memo::new(move |_| table.cells.with(|cells| cells.as_ref()?.kind(rows.get().start)));
    let name = move || table.get(first(), NAME);
    let rename = move |event| {
        let name = event_target_value(&event);
        table.change(|cells| rows.get_untracked().for_each(|row| cells.set(row, NAME, &name)));
    };
    let take_out = move |_| {
        if let Some(rows) = table.rows_untracked(place) {
            table.change(|cells| cells.remove(rows));
        }
    };
    let figures = move || {
        let kind = kind.get()?;
        let columns = columns_of(kind).into_iter().chain([ENCLOSURE]);
        Some(
            columns
                .map(|column| view! { <Cell row=Signal::derive(first) column=column kind=Some(kind) table=table /> })
                .collect_view(),
        )
    };
    let kind_word = move || kind.get().map(|kind| (words.ways.name)(kind));
    view! {
        <details class="family">
            <summary><b>{name}</b><small>{kind_word}</small></summary>
            <div class="field line">
                <label for=format!("own.{place}.name")>{own.name}</label>
                <input id=format!("own.{place}.name") maxlength="60" autocomplete="off" prop:value=name on:change=rename />
            </div>
            <h4>{own.frames}</h4>
            <p class="note">{own.frames_hint}</p>
            {move || rows.get().map(|row| view! { <Frame row=row table=table /> }).collect_view()}
            <button class="btn quiet" on:click=move |_| table.change(|cells| cells.add_frame(rows.get_untracked().end.saturating_sub(1)))>{own.add_frame}</button>
            {figures}
            <button class="btn danger" aria-label=move || (own.remove_ask)(&name()) on:click=take_out>{own.remove}</button>
        </details>
    }
}

/// One frame.
#[component]
fn Frame(row: usize, table: Table) -> impl IntoView {
    let own = &words().equipment;
    let cell = |column: &'static str| view! { <Cell row=Signal::stored(row) column=column kind=None table=table /> };
    let take_out = move |_| table.change(|cells| cells.remove(row..row + 1));
    let many = move || {
        table.cells.with(|cells| {
            cells
                .as_ref()
                .is_some_and(|cells| cells.families().iter().any(|rows| rows.contains(&row) && rows.len() > 1))
        })
    };
    view! {
        <div class="frame">
            {FRAME.map(cell).into_iter().collect_view()}
            <Show when=many>
                <button class="btn quiet" on:click=take_out>{move || (own.remove_frame)(&table.get(row, HP))}</button>
            </Show>
        </div>
    }
}

/// One cell.
#[component]
fn Cell(row: Signal<usize>, column: &'static str, kind: Option<Kind>, table: Table) -> impl IntoView {
    let (label, unit) = column_name(column);
    let usual = kind.and_then(|kind| stand_in(kind, column)).unwrap_or_default();
    let set = move |given: String| table.change(|cells| cells.set(row.get_untracked(), column, &given));
    view! {
        <CellField
            id=Signal::derive(move || format!("own.{}.{column}", row.get()))
            label=label.to_owned()
            usual=usual
            value=Signal::derive(move || table.get(row.get(), column))
            fault=Memo::new(move |_| table.fault(row.get(), column))
            on_change=Callback::new(set)
        >
            <span class="u">{unit}</span>
        </CellField>
    }
}

/// Adds a family that begins as a kind.
#[component]
fn Add(table: Table) -> impl IntoView {
    let words = words();
    let own = &words.equipment;
    let add = move |event: leptos::ev::Event| {
        let Some(kind) = forms::taken(&event).and_then(|place| Kind::ALL.get(place)) else { return };
        table.change(|cells| {
            let taken = |name: &String| cells.families().iter().any(|rows| cells.get(rows.start, NAME) == name);
            let free = (1..).map(own.new_name).find(|name| !taken(name));
            cells.add(*kind, &free.unwrap_or_default());
        });
    };
    let option = |(place, kind): (usize, Kind)| {
        view! { <option value=place.to_string()>{(words.ways.name)(kind)}</option> }
    };
    view! {
        <Show when=move || table.cells.with(Option::is_some)>
            <div class="field pick">
                <label for="own.add">{own.add}<small>{own.add_hint}</small></label>
                <select id="own.add" on:change=add>
                    <option value="">{own.add_none}</option>
                    {Kind::ALL.into_iter().enumerate().map(option).collect_view()}
                </select>
            </div>
        </Show>
    }
}

/// The table as a file.
#[component]
fn Exchange(desk: Desk, table: Table) -> impl IntoView {
    let (app, open, words) = (app(), desk.open, words());
    let own = &words.equipment;
    let any = move || open.sheet.with(|sheet| !sheet.job.families.is_empty());
    // A table that can't be read leaves the one that is there untouched.
    let take = move |given: Result<(String, String), String>| match given {
        Ok((_, text)) => match read(&text) {
            Ok(families) => {
                table.put(text);
                app.tell((own.imported)(families.len()));
            }
            Err(error) => app.tell((own.not_imported)(&table_error_text(&error))),
        },
        Err(why) => app.tell(why),
    };
    // Written anew: free text of a table that came from elsewhere may be a formula to a spreadsheet.
    let give = move |_| match open.sheet.with_untracked(|sheet| read(&sheet.job.families)) {
        Ok(families) => give_table(own.title, &write(&families)),
        Err(error) => app.tell(table_error_text(&error)),
    };
    view! {
        <TakeTable label=own.import too_large=words.list.too_large on_table=Callback::new(take) />
        <Show when=any>
            <div class="row">
                <button class="btn" on:click=give>{own.export}</button>
                <button class="btn quiet" on:click=move |_| open.edit.run(Edit::Equipment(String::new()))>{own.clear}</button>
            </div>
        </Show>
    }
}
