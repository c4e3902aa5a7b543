//! A caution beside the step it belongs to.

use leptos::prelude::*;

/// Cautions, each with what it is about and what to do.
#[component]
pub fn CautionBoxes(
    /// Title and text of each.
    cautions: Vec<(&'static str, &'static str)>,
) -> impl IntoView {
    let one = |(title, text)| view! { <p class="caution-box"><b>{title}</b><span>{text}</span></p> };
    view! { <div class="cautions">{cautions.into_iter().map(one).collect_view()}</div> }
}
