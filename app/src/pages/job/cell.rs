//! A cell of a table in text: typed in ink, or what stands in for it in pencil, and what is wrong with it.

use crate::parts::icon::Icon;
use leptos::prelude::*;

/// A cell.
#[component]
pub fn CellField(
    /// Id of the control, unique on the page.
    #[prop(into)]
    id: Signal<String>,
    /// Its label.
    #[prop(into)]
    label: Signal<String>,
    /// What that belongs to, for who can't see it.
    #[prop(optional, into)]
    of: Option<Signal<String>>,
    /// What stands in while nothing is typed.
    #[prop(into)]
    usual: String,
    /// What is typed.
    #[prop(into)]
    value: Signal<String>,
    /// What is wrong.
    #[prop(into)]
    fault: Signal<Option<String>>,
    /// Called with what was typed.
    on_change: Callback<String>,
    /// The unit, and what else stands behind the figure.
    children: Children,
) -> impl IntoView {
    let says = move || format!("{}-says", id.get());
    let wrong = Memo::new(move |_| fault.with(Option::is_some));
    let state = move || match (wrong.get(), value.with(String::is_empty)) {
        (true, _) => "error",
        (false, true) => "assumed",
        (false, false) => "typed",
    };
    view! {
        <div class="field" data-state=state>
            <label for=move || id.get()>
                {of.map(|of| view! { <span class="sr">{move || of.get()}", "</span> })}
                {move || label.get()}
            </label>
            <input
                id=move || id.get()
                inputmode="decimal"
                autocomplete="off"
                enterkeyhint="done"
                placeholder=usual
                aria-invalid=move || wrong.get().then_some("true")
                aria-describedby=says
                prop:value=move || value.get()
                on:change=move |event| on_change.run(event_target_value(&event))
            />
            {children()}
            <p class="msg" id=says>
                <Show when=move || wrong.get()><Icon name="error" /></Show>
                <span>{move || fault.get()}</span>
            </p>
        </div>
    }
}
