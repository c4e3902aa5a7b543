//! A choice between yes and no; until it is set the assumed one stands, and is marked so.

use crate::locale::words;
use leptos::prelude::*;

/// A switch.
#[component]
pub fn Switch(
    /// What is switched.
    label: &'static str,
    /// What it means.
    #[prop(default = "")]
    hint: &'static str,
    /// Id of the control, unique on the page.
    id: &'static str,
    /// What stands while nothing is set.
    assumed: bool,
    /// What is set.
    value: Signal<Option<bool>>,
    /// Called with the new state.
    on_set: Callback<bool>,
) -> impl IntoView {
    let on = move || value.get().unwrap_or(assumed);
    let state = move || if value.get().is_some() { "typed" } else { "assumed" };
    let said = move || if on() { words().frame.on } else { words().frame.off };
    view! {
        <div class="field toggle" data-state=state>
            <label for=id>
                {label}
                <small>
                    {hint}
                    " "
                    <Show when=move || value.get().is_none()><em>{words().fields.assumed}</em></Show>
                </small>
            </label>
            <span class="switch">
                <input id=id type="checkbox" role="switch" prop:checked=on on:change=move |event| on_set.run(event_target_checked(&event)) />
                <span class="track" aria-hidden="true"><b>{said}</b></span>
            </span>
        </div>
    }
}
