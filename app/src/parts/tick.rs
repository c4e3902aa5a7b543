//! A line that is ticked: a box, what it is about, and what is said of it.

use leptos::prelude::*;

/// A tick.
#[component]
pub fn Tick(
    /// Id of the box, unique on the page.
    id: String,
    /// What it is about.
    #[prop(into)]
    label: String,
    /// What is said of it; empty for nothing.
    #[prop(into)]
    note: Signal<String>,
    /// Whether it is ticked.
    #[prop(into)]
    ticked: Signal<bool>,
    /// Called with the new state.
    on_tick: Callback<bool>,
) -> impl IntoView {
    let note_id = format!("{id}-says");
    let has_note = Memo::new(move |_| note.with(|note| !note.is_empty()));
    view! {
        <div class="tick">
            <input
                id=id.clone()
                type="checkbox"
                prop:checked=ticked
                aria-describedby=note_id.clone()
                on:change=move |event| on_tick.run(event_target_checked(&event))
            />
            <label for=id>{label}</label>
            <p class="note" id=note_id hidden=move || !has_note.get()>{note}</p>
        </div>
    }
}
