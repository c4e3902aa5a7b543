//! The well section: formation and water, casing, lead, pump and motor, what stands above ground, and the rod.
//!
//! Depths are to scale, widths are not; the pump is drawn larger than scale with its intake at the true depth.

use super::facts::{Facts, described};
use super::frame::{Frame, Pump};
use super::layout::Layout;
use super::mark::Rect;
use super::shapes::{Strokes, Texts};
use super::spec::{View, rod_step};
use super::well_words::{Words, words_of};
use super::{casing, head, water};
use leptos::prelude::*;
use std::fmt::Write as _;
use wellwright_core::evaluate::Evaluation;

/// A drawn thing: the class of its pen, and its path.
pub type Stroke = (&'static str, String);

/// The ground that the well stands in, its strokes off the words.
#[must_use]
pub fn ground(frame: &Frame, words: &[Rect]) -> Vec<Stroke> {
    let Layout { ground, rod, .. } = frame.layout;
    let mut out = vec![("f-earth", format!("M0 {ground}H{rod}V{:.1}H0z", frame.floor))];
    water::in_ground(frame, words, &mut out);
    let mut hachure = String::new();
    let mut x = 8.0;
    while x < rod {
        if x < frame.sides.0 - 1.0 || x > frame.sides.1 + 6.0 {
            let _ = write!(hachure, "M{x} {ground}l-5 7");
        }
        x += 8.0;
    }
    out.push(("l-hair", hachure));
    out
}

/// The well in its ground, lowest stroke first.
#[must_use]
pub fn well(frame: &Frame, view: &View) -> Vec<Stroke> {
    let mut out = Vec::with_capacity(32);
    casing::strokes(frame, &mut out);
    if let Some(drawn) = frame.pump {
        pump(frame, drawn, &mut out);
    }
    head::strokes(frame, &mut out);
    rod(frame, view, &mut out);
    out
}

/// Without a well: the rod, along which the lead is told.
fn rod_alone(frame: &Frame, view: &View) -> Vec<Stroke> {
    let mut out = Vec::new();
    rod(&Frame { pump: None, ..*frame }, view, &mut out);
    out
}

/// Pipe, check valve, lead, pump and motor.
fn pump(frame: &Frame, drawn: Pump, out: &mut Vec<Stroke>) {
    let (axis, cap, lead) = (frame.layout.axis, frame.cap, frame.lead());
    let (pipe, pump, motor) = frame.halves();
    let Pump { top, intake, end, .. } = drawn;
    if top > cap {
        let (left, right) = (axis - pipe, axis + pipe);
        out.push(("f-void", format!("M{left:.1} {cap}H{right:.1}V{top:.1}H{left:.1}z")));
        out.push(("l-pipe", format!("M{left:.1} {cap}V{top:.1}M{right:.1} {cap}V{top:.1}")));
        out.push(("l-tie", ties(frame, top)));
    }
    let start = (cap - 4.0).min(top - 8.0);
    let out_by = pump - pipe - 0.4;
    out.push((
        "w480 lead",
        format!(
            "M{lead:.1} {start:.1}V{:.1}q0 4 {out_by:.1} 6V{:.1}q0 4 -2 6",
            top - 6.0,
            (intake + 4.0).min(end - 6.0).max(top)
        ),
    ));
    if let Some(middle) = frame.check_valve() {
        check_valve(frame, middle, out);
    }
    let shoulder = pump - pipe;
    out.push((
        "part",
        format!(
            "M{:.1} {:.1}q0 -5 {shoulder:.1} -6h{:.1}q{shoulder:.1} 1 {shoulder:.1} 6V{:.1}h{:.1}z",
            axis - pump,
            top + 4.0,
            2.0 * pipe,
            intake - 4.0,
            -2.0 * pump
        ),
    ));
    let stages = ((intake - 8.0 - top) / 5.5).floor().clamp(1.0, 4.0);
    let lines: String = (1..stages as u32).fold(String::new(), |mut path, stage| {
        let y = top + 4.0 + (intake - 8.0 - top) / stages * f64::from(stage);
        let _ = write!(path, "M{:.1} {y:.1}h{:.1}", axis - pump, 2.0 * pump);
        path
    });
    out.push(("l-thin", lines));
    let (left, right) = (axis - motor, axis + motor);
    out.push(("l-screen", format!("M{left:.1} {:.1}v8M{right:.1} {:.1}v8", intake - 4.0, intake - 4.0)));
    let (from, round) = ((intake + 4.0).min(end - 4.0), 4.0_f64.min((end - intake) / 2.0));
    out.push((
        "f-ink",
        format!(
            "M{left:.1} {from:.1}H{right:.1}V{:.1}q0 {round} -{round} {round}H{:.1}q-{round} 0 -{round} -{round}z",
            end - round,
            left + round
        ),
    ));
}

/// The check valve in the pipe: a box with a disk that lifts.
fn check_valve(frame: &Frame, middle: f64, out: &mut Vec<Stroke>) {
    let (axis, pipe, size) = (frame.layout.axis, frame.halves().0, frame.size);
    let (half, tall) = (pipe + 1.4, 7.0 * size);
    out.push((
        "valve",
        format!("M{:.1} {:.1}h{:.1}v{:.1}h{:.1}z", axis - half, middle - tall, 2.0 * half, 2.0 * tall, -2.0 * half),
    ));
    let foot = middle + 4.0 * size;
    out.push(("f-ink", format!("M{:.1} {foot:.1}h{:.1}L{axis} {:.1}z", axis - pipe, 2.0 * pipe, foot - 7.0 * size)));
    out.push(("l-thin", format!("M{:.1} {:.1}h{:.1}", axis - pipe, middle - 3.6 * size, 2.0 * pipe)));
}

/// Ties that hold the lead to the pipe.
fn ties(frame: &Frame, pump_top: f64) -> String {
    let (pipe, ..) = frame.halves();
    let mut path = String::new();
    let mut y = frame.cap + 26.0;
    while y < pump_top - 14.0 {
        let _ = write!(path, "M{:.1} {y:.1}h{:.1}", frame.layout.axis - pipe - 1.5, 2.0 * pipe + 6.6);
        y += 26.0;
    }
    path
}

/// The depth line up to the rod, and the rod: blocks of half a figure's step.
fn rod(frame: &Frame, view: &View, out: &mut Vec<Stroke>) {
    let scale = frame.layout.scale(view.end);
    let Layout { axis, rod, rod_width, ground, bottom, .. } = frame.layout;
    if let Some(Pump { depth, .. }) = frame.pump {
        out.push(("l-act", format!("M{:.1} {depth:.1}H{rod}", axis + frame.halves().2 + 3.0)));
    }
    out.push(("rod", format!("M{rod} {ground}h{rod_width}V{bottom}h{}z", -rod_width)));
    let block = rod_step(view) * 0.5;
    let mut blocks = String::new();
    for depth in scale.multiples(block * 2.0) {
        let (top, end) = (scale.y(depth), scale.y((depth + block).min(scale.end)));
        if end > top {
            let _ = write!(blocks, "M{rod} {top:.1}h{rod_width}V{end:.1}h{}z", -rod_width);
        }
    }
    out.push(("f-ink", blocks));
}

/// The well section. It is one picture to a reader, described whole.
#[component]
pub fn Well(
    /// What the job says, with its pump where a finger holds it.
    facts: Memo<Facts>,
    /// What is told of it.
    told: Memo<Facts>,
    /// How the picture is looked at.
    view: Memo<View>,
    /// The evaluation, for the words of the picture.
    answer: Memo<Evaluation>,
) -> impl IntoView {
    let frame = Memo::new(move |_| Frame::of(&facts.get(), &view.get()));
    let on_surface = Memo::new(move |_| facts.get().on_surface);
    let drawn = Memo::new(move |_| {
        let (frame, view) = (frame.get(), view.get());
        if on_surface.get() { rod_alone(&frame, &view) } else { well(&frame, &view) }
    });
    let lettered = Memo::new(move |_| match on_surface.get() {
        true => Words::default(),
        false => words_of(&facts.get(), &view.get()),
    });
    let earth = Memo::new(move |_| {
        if on_surface.get() {
            return Vec::new();
        }
        let rects = lettered.with(|words| words.rects(view.get().lettering.small));
        ground(&frame.get(), &rects)
    });
    let whole = move || {
        let View { basis, system, money, .. } = view.get();
        answer.with(|answer| described(&told.get(), answer, money.then_some(basis), system))
    };
    let leaders = Memo::new(move |_| lettered.with(|words| words.leaders.clone()));
    let texts = Memo::new(move |_| lettered.with(|words| words.words.clone()));
    view! {
        <svg
            class="well"
            data-drawn=""
            role="img"
            aria-label=whole
            width=move || view.get().layout.width
            height=move || view.get().layout.height
        >
            <g aria-hidden="true">
                <Strokes all=earth />
                <Strokes all=drawn />
                <Strokes all=leaders />
                <Texts all=texts />
            </g>
        </svg>
    }
}
