//! A figure that follows from others, among the fields: no rule, since nothing can be typed.

use super::equals::Equals;
use crate::locale::words;
use leptos::prelude::*;

/// A figure that was worked out.
#[component]
pub fn WorkedOut(
    /// Its name.
    label: &'static str,
    /// How it follows.
    #[prop(default = "")]
    hint: &'static str,
    /// Figure and unit, or why there is none.
    #[prop(into)]
    shown: Signal<Option<crate::locale::Shown>>,
    /// Opens its working; no sign where there is none.
    #[prop(optional, into)]
    on_working: Option<Callback<()>>,
) -> impl IntoView {
    let figure = move || shown.with(|shown| shown.as_ref().map(|shown| shown.figure.clone()));
    let unit = move || shown.with(|shown| shown.as_ref().map_or("", |shown| shown.unit));
    view! {
        <div class="field out" data-state=move || if shown.with(Option::is_some) { "known" } else { "unknown" }>
            <span class="label">{label}<small>{hint}</small></span>
            <output>{move || figure().unwrap_or_else(|| words().tables.not_known.to_owned())}</output>
            <span class="u">{unit}</span>
            {on_working.map(|open| view! {
                <Show when=move || shown.with(Option::is_some)>
                    <Equals of=label.to_owned() on_open=open />
                </Show>
            })}
        </div>
    }
}
