//! Tables that come from a file and go to one.

use crate::locale::{Decimals, decimals, words};
use crate::parts::file_drop::FileDrop;
use crate::parts::table::{Grid, lines};
use crate::platform::files::{self, Reading};
use crate::state::app;
use leptos::prelude::*;
use wellwright_core::table::quoted;

/// A table from a file.
#[component]
pub fn TakeTable(
    /// The word on the button.
    label: &'static str,
    /// Why a file that is too large is not read.
    too_large: &'static str,
    /// Called with the name of the file and its text, or with the sentence that says why there is none.
    on_table: Callback<Result<(String, String), String>>,
) -> impl IntoView {
    let list = &words().list;
    let take = move |(name, reading): (String, Reading)| {
        on_table.run(match reading {
            Reading::Text(text) => Ok((name, text)),
            Reading::TooLarge => Err((list.not_opened)(&name, too_large)),
            Reading::Failed => Err((list.not_opened)(&name, list.unreadable_file)),
        });
    };
    view! { <FileDrop label=label accept=".csv,.txt,.tsv" on_file=Callback::new(take) /> }
}

/// Tables as the text of a CSV file, each under its title; parted as spreadsheets of this way to write numbers do.
#[must_use]
pub fn table_text(tables: &[(&'static str, Grid)]) -> String {
    let separator = match decimals() {
        Decimals::Point => ',',
        Decimals::Comma => ';',
    };
    let mut out = String::new();
    for (place, (title, grid)) in tables.iter().enumerate() {
        if tables.len() > 1 {
            out += if place > 0 { "\r\n" } else { "" };
            out += &quoted(title, separator);
            out += "\r\n";
        }
        for cells in lines(grid) {
            let cells: Vec<String> = cells.iter().map(|cell| quoted(cell, separator)).collect();
            out += &cells.join(&separator.to_string());
            out += "\r\n";
        }
    }
    // Blanks that hold a figure and its unit together are for the eye.
    out.replace('\u{a0}', " ")
}

/// Saves a table as a file that is called after a title.
pub fn give_table(title: &str, text: &str) {
    let words = words();
    let name = files::file_name(title, words.list.nameless, "csv");
    if files::save(&name, "text/csv", text) {
        app().tell((words.tables.saved_as)(&name));
    }
}
