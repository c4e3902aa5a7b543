//! Tables that come from a file and go to one.

use crate::locale::words;
use crate::parts::file_drop::FileDrop;
use crate::platform::files::{self, Reading};
use crate::state::app;
use leptos::prelude::*;

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

/// Saves a table as a file that is called after a title.
pub fn give_table(title: &str, text: &str) {
    let words = words();
    let name = files::file_name(title, words.list.nameless, "csv");
    if files::save(&name, "text/csv", text) {
        app().tell((words.tables.saved_as)(&name));
    }
}
