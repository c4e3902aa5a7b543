//! A place that takes a file: chosen by a button, or dropped on it.

use super::icon::Icon;
use crate::locale::words;
use crate::platform::files::{self, Reading};
use leptos::ev;
use leptos::prelude::*;

/// A place for files.
#[component]
pub fn FileDrop(
    /// The word on the button.
    label: &'static str,
    /// Kinds of file that the chooser offers, as `.json`.
    accept: &'static str,
    /// Most bytes of a file.
    #[prop(default = files::MOST)]
    most: usize,
    /// Called with each file's name and what was read.
    on_file: Callback<(String, Reading)>,
) -> impl IntoView {
    let over = RwSignal::new(false);
    let take = move |files| files::read(files, most, move |name, reading| on_file.run((name, reading)));
    let drop = move |event: ev::DragEvent| {
        event.prevent_default();
        over.set(false);
        take(files::dropped(&event));
    };
    let hover = move |event: ev::DragEvent| {
        event.prevent_default();
        over.set(true);
    };
    view! {
        <label class="drop" class:over=move || over.get() on:drop=drop on:dragover=hover on:dragleave=move |_| over.set(false)>
            <input type="file" accept=accept multiple on:change=move |event| take(files::chosen(&event)) />
            <span class="btn"><Icon name="file" />{label}</span>
            <span class="note only-desk">{words().list.drop_file}</span>
        </label>
    }
}
