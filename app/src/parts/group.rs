//! Figures that belong together, under a heading; those that few need are folded away until one asks for them.

use leptos::prelude::*;

/// Figures that belong together.
#[component]
pub fn Group(
    /// The heading.
    title: &'static str,
    /// The figures.
    children: Children,
) -> impl IntoView {
    view! {
        <section class="group" aria-label=title>
            <h3>{title}</h3>
            {children()}
        </section>
    }
}

/// Figures that are folded away.
#[component]
pub fn Fold(
    /// The heading, which opens and closes them.
    title: &'static str,
    /// What is said of them while they are folded.
    #[prop(into)]
    note: Signal<String>,
    /// Whether they must be seen; once seen they stay.
    #[prop(into)]
    must: Signal<bool>,
    /// The figures.
    children: Children,
) -> impl IntoView {
    let open = Memo::new(move |before: Option<&bool>| before.copied().unwrap_or_default() || must.get());
    view! {
        <details class="group fold" open=move || open.get()>
            <summary><h3>{title}</h3><small>{note}</small></summary>
            {children()}
        </details>
    }
}
