//! The answer above the picture; on a phone it stays pinned at the top.

use super::headline::{Says, headline};
use leptos::prelude::*;
use wellwright_core::evaluate::{Basis, Evaluation};
use wellwright_core::quantity::UnitSystem;

/// The answer.
#[component]
pub fn Answers(
    /// The evaluation.
    answer: Memo<Evaluation>,
    /// Units.
    system: Signal<UnitSystem>,
    /// What is counted in.
    basis: Signal<Basis>,
) -> impl IntoView {
    let says = Memo::new(move |_| answer.with(|answer| headline(answer, system.get(), basis.get())));
    let [saving, low, high, even] = [
        Memo::new(move |_| says.with(|says| says.saving.clone())),
        Memo::new(move |_| says.with(|says| says.ways[0].clone())),
        Memo::new(move |_| says.with(|says| says.ways[1].clone())),
        Memo::new(move |_| says.with(|says| says.even.clone())),
    ];
    view! {
        <dl class="answers" aria-live="polite" aria-atomic="true">
            <div class="first"><Figure says=saving swatch="" /></div>
            <div class="way"><Figure says=high swatch="w480" /></div>
            <div class="way"><Figure says=low swatch="w240" /></div>
            <div class="even"><Figure says=even swatch="" /></div>
        </dl>
    }
}

/// One figure with its words.
#[component]
fn Figure(
    /// What it says.
    says: Memo<Says>,
    /// Class of the way's line, or nothing.
    swatch: &'static str,
) -> impl IntoView {
    let line = (!swatch.is_empty()).then(|| {
        view! {
            <svg class="swatch" viewBox="0 0 30 10" aria-hidden="true"><path class=format!("{swatch} run") d="M0 5h30" /></svg>
        }
    });
    let long = move || says.with(|says| says.figure.contains('.').then_some(""));
    view! {
        <dt>{line}<span>{move || says.with(|says| says.title.clone())}</span></dt>
        <dd>
            <span class="figure" data-long=long>
                {move || says.with(|says| says.figure.clone())}
                <span class="unit">{move || says.with(|says| says.unit)}</span>
            </span>
            <p>{move || says.with(|says| says.note.clone())}</p>
        </dd>
    }
}
