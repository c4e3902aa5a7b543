//! The probe: a level hair over the curve with both ways' size and cost, by pointer, touch and keys.
//!
//! It lies over the canvas, which is not drawn again for it.

use super::beside::letter;
use super::spec::View;
use crate::locale::{self, words};
use leptos::ev::{KeyboardEvent, PointerEvent};
use leptos::html::Div;
use leptos::prelude::*;
use wellwright_core::evaluate::{Evaluation, Sweep, WaySweep};
use wellwright_core::job::Way;
use wellwright_core::numeric::order::by_number;
use wellwright_core::quantity::{Length, feet};

/// What the probe says of one way.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// The way.
    pub way: Way,
    /// Place of its dot, where a size serves.
    pub x: Option<f64>,
    /// Way, size and cost in words.
    pub text: String,
}

/// The probe at a depth.
#[derive(Debug, Clone, PartialEq)]
pub struct Probed {
    /// Height in the picture.
    pub y: f64,
    /// The depth in words.
    pub depth: String,
    /// Both ways, then the further ones.
    pub ways: Vec<Reading>,
}

/// What the probe shows at a depth.
#[must_use]
pub fn probed(sweep: &Sweep, view: &View, depth: Length) -> Probed {
    let grid = view.grid(sweep);
    let pair = [Way::V480, Way::V240].map(|way| ((words().answer.way_short)(way).to_owned(), sweep.way(way)));
    let beside = sweep.beside.iter().enumerate().map(|(place, line)| (letter(place), line));
    let reading = |(name, line): (String, &WaySweep)| {
        let text = line.piece_at(depth).map_or_else(
            || format!("{name}: {}", words().answer.no_size),
            |piece| {
                let size = locale::conductor(piece.run.run.conductor);
                if !view.money {
                    return format!("{name}: {size}");
                }
                let cost = line.cost_on(piece, depth, view.basis);
                (words().picture.probe_way)(&name, &size, &locale::money(cost, 0))
            },
        );
        Reading { way: line.way, x: grid.at(line, depth).map(|at| at.x), text }
    };
    let ways = pair.into_iter().chain(beside).map(reading).collect();
    Probed { y: grid.scale.y(depth), depth: (words().picture.probe)(&locale::reach(depth, view.system).text()), ways }
}

/// Depths at which keys stop: every end of a size of either way, to the end of the scale.
#[must_use]
pub fn stops(sweep: &Sweep, end: Length) -> Vec<Length> {
    let mut found: Vec<Length> =
        sweep.ways.iter().flat_map(|way| &way.runs).map(|run| run.to.min(end)).filter(|to| *to > feet(0.0)).collect();
    found.push(feet(0.0));
    by_number(&mut found, |depth| depth.value);
    found.dedup();
    found
}

/// The next stop below or above a depth; the last one stays.
#[must_use]
pub fn next_stop(stops: &[Length], from: Length, down: bool) -> Option<Length> {
    let slack = feet(1e-6);
    let found = if down {
        stops.iter().find(|stop| **stop > from + slack).or(stops.last())
    } else {
        stops.iter().rev().find(|stop| **stop < from - slack).or(stops.first())
    };
    found.copied()
}

/// The probe over the curve.
#[component]
pub fn Probe(
    /// The evaluation.
    answer: Memo<Evaluation>,
    /// How the picture is looked at.
    view: Memo<View>,
) -> impl IntoView {
    let at = RwSignal::new(None::<Length>);
    let reach = NodeRef::<Div>::new();
    let shown = Memo::new(move |_| {
        let depth = at.get()?;
        answer.with(|answer| Some(probed(answer.sweep.as_ref()?, &view.get(), depth)))
    });
    let follow = move |event: &PointerEvent| {
        let Some(element) = reach.get_untracked() else { return };
        let y = f64::from(event.client_y()) - element.get_bounding_client_rect().top();
        let scale = view.with_untracked(|view| view.layout.scale(view.end));
        at.set(Some(scale.depth(y + scale.ground)));
    };
    let leave = move |event: PointerEvent| {
        if event.pointer_type() == "mouse" {
            at.set(None);
        }
    };
    let layout = move || view.get().layout;
    // The box stands where the hair is not.
    let low = move || shown.get().is_some_and(|probed| probed.y < layout().ground + 110.0);
    view! {
        <Show when=move || answer.with(|answer| answer.sweep.is_some())>
            <div
                class="curve-reach"
                node_ref=reach
                role="group"
                tabindex="0"
                aria-label=words().picture.curve_alt
                aria-describedby="curve-keys"
                style:left=move || format!("{:.1}px", layout().rod_right() + 18.0)
                style:top=move || format!("{:.1}px", layout().ground)
                style:height=move || format!("{:.1}px", layout().bottom - layout().ground)
                on:pointerdown=move |event| follow(&event)
                on:pointermove=move |event| follow(&event)
                on:pointerleave=leave
                on:blur=move |_| at.set(None)
                on:keydown=move |event| walk(&event, at, answer, view)
            >
                <span id="curve-keys" class="sr">{words().picture.curve_keys}</span>
            </div>
        </Show>
        <svg class="probe" aria-hidden="true">{move || shown.get().map(|probed| marks(&probed, &view.get()))}</svg>
        <div class="readout" class:shown=move || shown.get().is_some() class:low=low aria-live="polite" aria-atomic="true">
            {move || shown.get().map(readout)}
        </div>
    }
}

fn walk(event: &KeyboardEvent, at: RwSignal<Option<Length>>, answer: Memo<Evaluation>, view: Memo<View>) {
    let key = event.key();
    let down = match key.as_str() {
        "ArrowDown" | "ArrowRight" => true,
        "ArrowUp" | "ArrowLeft" => false,
        "Escape" => {
            if at.get_untracked().is_some() {
                event.prevent_default();
            }
            at.set(None);
            return;
        }
        _ => return,
    };
    if event.ctrl_key() || event.meta_key() || event.alt_key() {
        return;
    }
    event.prevent_default();
    answer.with_untracked(|answer| {
        let Some(sweep) = answer.sweep.as_ref() else { return };
        let here = answer.here.as_ref().map_or(feet(0.0), |here| here.depth);
        let from = at.get_untracked().unwrap_or(here);
        at.set(next_stop(&stops(sweep, view.get_untracked().end), from, down));
    });
}

fn marks(probed: &Probed, view: &View) -> impl IntoView + use<> {
    let (y, left, right) = (probed.y, view.layout.rod_right(), view.layout.width);
    let dot = |reading: &Reading| {
        let class = match reading.way {
            Way::V240 => "dot d240",
            Way::V480 => "dot d480",
        };
        reading.x.map(|x| view! { <circle class=class cx=x cy=y r="4.5" /> })
    };
    let dots = probed.ways.iter().map(dot).collect_view();
    view! {
        <path class="l-probe" d=format!("M{left} {y:.1}H{right}") />
        {dots}
    }
}

fn readout(probed: Probed) -> impl IntoView {
    let line = |reading: Reading| {
        let class = match reading.way {
            Way::V240 => "by-240",
            Way::V480 => "by-480",
        };
        view! { <span class=class>{reading.text}</span> }
    };
    view! {
        <b>{probed.depth}</b>
        {probed.ways.into_iter().map(line).collect_view()}
    }
}
