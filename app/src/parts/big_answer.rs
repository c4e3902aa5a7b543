//! An answer in large figures, with the words above and beneath it, and the sign that opens its working.

use super::equals::Equals;
use leptos::prelude::*;

/// A figure with the words above and beneath it.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Says {
    /// Above.
    pub title: String,
    /// The figure.
    pub figure: String,
    /// The unit, in grey.
    pub unit: &'static str,
    /// Beneath.
    pub note: String,
}

/// A big answer: a term and its description inside a list of them.
#[component]
pub fn BigAnswer(
    /// What it says.
    #[prop(into)]
    says: Signal<Says>,
    /// What stands beside the title, as the mark of a stop.
    #[prop(optional)]
    mark: Option<Children>,
    /// Class of a way's line before the title, or nothing.
    #[prop(default = "")]
    swatch: &'static str,
    /// Opens the working; no sign where there is none.
    #[prop(optional, into)]
    on_working: Option<Callback<()>>,
    /// Whether there is a working to open now.
    #[prop(default = Signal::stored(true))]
    has_working: Signal<bool>,
) -> impl IntoView {
    let title = move || says.with(|says| says.title.clone());
    // Figures with cents are set smaller, so that they fit.
    let long = move || says.with(|says| says.figure.contains(['.', ',']) && says.figure.len() > 8).then_some("");
    let opens = on_working.map(|open| {
        view! {
            <Show when=move || has_working.get()>
                <Equals of=Signal::derive(title) on_open=open />
            </Show>
        }
    });
    view! {
        <dt>{(!swatch.is_empty()).then(|| view! { <Swatch class=swatch /> })}<span>{title}</span>{mark.map(|mark| mark())}{opens}</dt>
        <dd>
            <span class="figure" data-long=long>
                {move || says.with(|says| says.figure.clone())}
                <span class="unit">{move || says.with(|says| says.unit)}</span>
            </span>
            <p>{move || says.with(|says| says.note.clone())}</p>
        </dd>
    }
}

/// The line of a way, as it is drawn in the picture.
#[component]
pub fn Swatch(
    /// Class of the way's line: `w240` or `w480`.
    class: &'static str,
) -> impl IntoView {
    view! {
        <svg class="swatch" viewBox="0 0 30 10" aria-hidden="true"><path class=format!("{class} run") d="M0 5h30" /></svg>
    }
}
