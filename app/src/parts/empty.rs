//! An empty place: what belongs here, and what to do.

use leptos::prelude::*;

/// An empty place.
#[component]
pub fn Empty(
    /// What is not here.
    title: &'static str,
    /// What belongs here.
    #[prop(default = "")]
    hint: &'static str,
    /// What can be done.
    children: Children,
) -> impl IntoView {
    view! {
        <div class="empty">
            <h2>{title}</h2>
            {(!hint.is_empty()).then(|| view! { <p>{hint}</p> })}
            <div class="row">{children()}</div>
        </div>
    }
}
