//! The sign behind a figure that opens its working.

use crate::locale::words;
use leptos::prelude::*;

/// An equals sign that opens a working.
#[component]
pub fn Equals(
    /// What the figure is, for who can't see it.
    #[prop(into)]
    of: Signal<String>,
    /// Opens the working.
    on_open: Callback<()>,
) -> impl IntoView {
    let label = move || of.with(|of| (words().working.open)(of));
    view! { <button class="equals" aria-label=label on:click=move |_| on_open.run(())>"="</button> }
}
