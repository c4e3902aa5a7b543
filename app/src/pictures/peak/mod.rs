//! The picture of the peak voltage at the motor: length of the lead across, volts upward. The peak, the motor's limit,
//! the bus, and the job's lead.
//!
//! What is drawn is worked out first, in pixels of the page, by plain functions: quantities ([`chart`]), places ([`map`]),
//! words ([`letters`]), strokes ([`drawing`]).

mod chart;
mod drawing;
mod letters;
mod map;
mod told;
mod writer;

#[cfg(test)]
mod tests;

use super::mark::Lettering;
use super::room::{follow_size, pens, printing};
use super::svg::written;
use crate::locale::words;
use crate::state::Theme;
use chart::Chart;
use drawing::{Drawing, drawing};
use leptos::html::Div;
use leptos::prelude::*;
use map::View;
use told::described;
use wellwright_core::evaluate::Stress;
use wellwright_core::job::Way;
use wellwright_core::quantity::UnitSystem;

/// Size of the picture on paper, in pixels of the page: it fits Letter and A4 between usual margins.
const PAPER: (f64, f64) = (680.0, 320.0);

/// The picture of what a drive's pulses come to at the motor of a way; nothing where none reach it.
#[component]
pub fn PeakPicture(
    /// The stress on the motor.
    stress: Memo<Option<Stress>>,
    /// The way whose lead it is.
    way: Signal<Option<Way>>,
    /// Units.
    system: Signal<UnitSystem>,
    /// Theme: the words are placed again when it changes.
    theme: Signal<Theme>,
) -> impl IntoView {
    let chart = Memo::new(move |_| stress.with(|stress| Chart::of(stress.as_ref()?, way.get())));
    let known = Memo::new(move |_| chart.with(Option::is_some));
    view! {
        <Show when=move || known.get()>
            <Drawn chart=chart system=system theme=theme />
        </Show>
    }
}

/// Strokes and words, one picture to a reader, described whole.
#[component]
fn Drawn(chart: Memo<Option<Chart>>, system: Signal<UnitSystem>, theme: Signal<Theme>) -> impl IntoView {
    let room = NodeRef::<Div>::new();
    let size = RwSignal::new((0.0, 0.0));
    let printing = printing();
    follow_size(room, size, printing, PAPER);
    let paper = move |length: f64| printing.get().then(|| format!("{length}px"));
    let pens = pens(theme, size);
    let lettering = Memo::new(move |_| pens.with(|ink| ink.as_ref().map_or(Lettering::USUAL, |ink| ink.lettering)));
    // Nothing is drawn before the style sheets are there.
    let shown = move || size.get().0 >= 1.0 && pens.with(Option::is_some);
    let drawn = Memo::new(move |_| {
        let view = View { size: size.get(), lettering: lettering.get(), units: system.get() };
        chart.get().filter(|_| shown()).map(|chart| drawing(&chart, &view))
    });
    let whole = move || chart.get().map(|chart| described(&chart, system.get())).unwrap_or_default();
    let of = move |drawn: &Drawing| {
        let strokes = drawn.strokes.clone().into_iter().map(|(class, d)| view! { <path class=class d=d /> });
        (strokes.collect_view(), drawn.letters.clone().into_iter().map(written).collect_view())
    };
    view! {
        <div
            class="peak-picture"
            style:width=move || paper(PAPER.0)
            style:height=move || paper(PAPER.1)
            node_ref=room
            role="group"
            aria-label=words().peak.label
        >
            <svg role="img" aria-label=whole width=move || size.get().0 height=move || size.get().1>
                <g aria-hidden="true">{move || drawn.with(|drawn| drawn.as_ref().map(of))}</g>
            </svg>
        </div>
    }
}
