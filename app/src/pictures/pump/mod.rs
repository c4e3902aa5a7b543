//! The picture of the pump: flow across, head upward. The pump at several speeds, the system, where they meet, and a
//! handle that sets the pressure at the gauge.
//!
//! What is drawn is worked out first, in pixels of the page, by plain functions: quantities ([`chart`]), places ([`map`]),
//! words ([`letters`]), strokes ([`drawing`]).

mod chart;
mod drawing;
mod letters;
mod map;
mod setpoint;
mod told;
mod writer;

#[cfg(test)]
mod tests;

pub use told::curve_table;

use super::mark::Lettering;
use super::room::{follow_size, pens, printing};
use super::svg::written;
use crate::locale::words;
use crate::state::Theme;
use chart::{Chart, Extent};
use drawing::{Drawing, drawing};
use leptos::html::Div;
use leptos::prelude::*;
use map::View;
use setpoint::Setpoint;
use told::described;
use wellwright_core::evaluate::Evaluation;
use wellwright_core::job::Control;
use wellwright_core::quantity::{Entry, UnitSystem};

/// Size of the picture on paper, in pixels of the page: it fits Letter and A4 between usual margins.
const PAPER: (f64, f64) = (680.0, 380.0);

/// The picture of a job's pump.
#[component]
pub fn PumpPicture(
    /// The evaluation; nothing is drawn before the system is known, and without a curve the system alone.
    answer: Memo<Evaluation>,
    /// How the pump is run.
    control: Signal<Control>,
    /// Units.
    system: Signal<UnitSystem>,
    /// Theme: the words are placed again when it changes.
    theme: Signal<Theme>,
    /// Called when a drag or a run of key presses begins.
    on_grab: Callback<()>,
    /// Called with a new pressure at the gauge.
    on_pressure: Callback<Entry>,
) -> impl IntoView {
    let room = NodeRef::<Div>::new();
    let size = RwSignal::new((0.0, 0.0));
    let held = RwSignal::new(false);
    let printing = printing();
    follow_size(room, size, printing, PAPER);
    let paper = move |length: f64| printing.get().then(|| format!("{length}px"));
    let pens = pens(theme, size);
    let lettering = Memo::new(move |_| pens.with(|ink| ink.as_ref().map_or(Lettering::USUAL, |ink| ink.lettering)));
    let chart = Memo::new(move |_| answer.with(|answer| Chart::of(answer, control.get())));
    let extent = Memo::new(move |before: Option<&Extent>| match before {
        Some(before) if held.get() => *before,
        _ => chart.with(Extent::of),
    });
    let view = move || View { size: size.get(), lettering: lettering.get(), extent: extent.get(), units: system.get() };
    let drawn = Memo::new(move |_| chart.with(|chart| drawing(chart, &view())));
    let map = Memo::new(move |_| drawn.with(|drawn| drawn.map));
    let foot = Memo::new(move |_| chart.with(|chart| chart.foot));
    let known = Memo::new(move |_| chart.with(|chart| !chart.is_empty()));
    // Nothing is drawn before the style sheets are there.
    let shown = Memo::new(move |_| size.get().0 >= 1.0 && pens.with(Option::is_some));
    let whole = move || answer.with(|answer| described(answer, control.get(), system.get()));
    view! {
        <div
            class="pump-picture"
            style:width=move || paper(PAPER.0)
            style:height=move || paper(PAPER.1)
            node_ref=room
            role="group"
            aria-label=words().charts.pump
        >
            <Show when=move || shown.get()>
                <Show when=move || known.get() fallback=|| view! { <p class="no-curves">{words().charts.nothing}</p> }>
                    <Drawn drawn=drawn size=size whole=Signal::derive(whole) />
                    <Show when=move || foot.with(Option::is_some)>
                        <Setpoint foot=foot map=map units=system held=held on_grab=on_grab on_pressure=on_pressure />
                    </Show>
                </Show>
            </Show>
        </div>
    }
}

/// Strokes and words, one picture to a reader, described whole.
#[component]
fn Drawn(drawn: Memo<Drawing>, size: RwSignal<(f64, f64)>, whole: Signal<String>) -> impl IntoView {
    let strokes = move || {
        let strokes = drawn.with(|drawn| drawn.strokes.clone());
        strokes.into_iter().map(|(class, d)| view! { <path class=class d=d /> }).collect_view()
    };
    let letters = move || drawn.with(|drawn| drawn.letters.clone()).into_iter().map(written).collect_view();
    view! {
        <svg role="img" aria-label=move || whole.get() width=move || size.get().0 height=move || size.get().1>
            <g aria-hidden="true">{strokes}{letters}</g>
        </svg>
    }
}
