//! The well section: formation, casing, lead, pump and motor, and what stands above ground.
//!
//! Depths are to scale, widths are not; the pump is drawn larger than scale with its intake at the true depth.

use super::layout::Layout;
use super::scale::Scale;
use super::spec::{View, rod_step};
use super::well_words::{Word, words_of};
use leptos::prelude::*;
use std::fmt::Write as _;
use wellwright_core::cable::lead::Conductor;
use wellwright_core::evaluate::Evaluation;
use wellwright_core::job::Way;
use wellwright_core::quantity::{Length, Power};
use wellwright_core::standards::conductor::Size;

/// Pump above the intake, and motor below it.
const PUMP: f64 = 30.0;
const MOTOR: f64 = 34.0;

/// What a job says about its well.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Facts {
    /// Depth of the pump.
    pub depth: Option<Length>,
    /// Lead on the surface.
    pub surface: Option<Length>,
    /// Rated power of the motor.
    pub power: Option<Power>,
    /// Conductor and ground of the 480 V way.
    pub lead: Option<(Conductor, Size)>,
}

impl Facts {
    /// The facts of an evaluation.
    #[must_use]
    pub fn of(answer: &Evaluation) -> Self {
        let way = answer.here.as_ref().and_then(|here| here.way(Way::V480));
        Self {
            depth: answer.inputs.pump_setting.as_ref().ok().map(|known| known.value),
            surface: answer.inputs.surface_run.as_ref().ok().map(|known| known.value),
            power: answer.inputs.motor_power.as_ref().ok().map(|known| known.value),
            lead: way.map(|way| (way.run.run.conductor, way.run.run.ground)),
        }
    }
}

/// Measures of the section that several parts share.
#[derive(Debug, Clone, Copy)]
pub struct Frame {
    /// Places of the parts.
    pub layout: Layout,
    /// Left and right side of the casing.
    pub sides: (f64, f64),
    /// Upper end of the casing.
    pub cap: f64,
    /// Left side of the drive, and its width.
    pub drive: (f64, f64),
    /// Lower and upper end of the drive.
    pub drive_ends: (f64, f64),
    /// Place of the pole, and its upper end.
    pub pole: (f64, f64),
    /// Height of the pump's intake.
    pub pump: Option<f64>,
    /// Size of the pump against the desk's.
    pub size: f64,
}

impl Frame {
    /// The frame of a well.
    #[must_use]
    pub fn of(facts: &Facts, view: &View, scale: &Scale) -> Self {
        let layout = view.layout;
        let ground = layout.ground;
        let (drive, drive_ends, pole) = if layout.compact {
            ((17.0, 18.0), (ground - 12.0, ground - 33.0), (5.0, ground - 50.0))
        } else {
            ((56.0, 30.0), (ground - 15.0, ground - 43.0), (14.0, ground - 76.0))
        };
        Self {
            layout,
            sides: (layout.axis - layout.casing, layout.axis + layout.casing),
            cap: ground - 7.0,
            drive,
            drive_ends,
            pole,
            pump: facts.depth.map(|depth| scale.y(depth)),
            size: if layout.compact { 0.8 } else { 1.0 },
        }
    }

    /// Half the width of the pipe, the pump and the motor.
    fn halves(&self) -> (f64, f64, f64) {
        (4.2 * self.size, 8.5 * self.size, 7.0 * self.size)
    }

    /// Upper end of the pump.
    #[must_use]
    pub fn pump_top(&self, intake: f64) -> f64 {
        intake - PUMP * self.size
    }

    /// Lower end of what is drawn of the ground: the scale's end, or a little below a motor that hangs past it.
    #[must_use]
    pub fn floor(&self) -> f64 {
        self.pump.map_or(self.layout.bottom, |intake| self.layout.bottom.max(self.motor_end(intake) + 3.0))
    }

    /// Lower end of the motor.
    #[must_use]
    pub fn motor_end(&self, intake: f64) -> f64 {
        intake + MOTOR * self.size
    }
}

/// Every stroke of the section, lowest first: the class of its pen, and its path.
#[must_use]
pub fn strokes(facts: &Facts, view: &View) -> Vec<(&'static str, String)> {
    let scale = view.layout.scale(view.end);
    let frame = Frame::of(facts, view, &scale);
    let mut out = Vec::with_capacity(32);
    ground(&frame, &mut out);
    casing(&frame, &mut out);
    if let Some(intake) = frame.pump {
        pump(&frame, intake, &mut out);
    }
    surface(&frame, &mut out);
    rod(&frame, view, &scale, &mut out);
    out
}

fn ground(frame: &Frame, out: &mut Vec<(&'static str, String)>) {
    let Layout { ground, rod, .. } = frame.layout;
    out.push(("f-earth", format!("M0 {ground}H{rod}V{:.1}H0z", frame.floor())));
    let mut hachure = String::new();
    let mut x = 8.0;
    while x < rod {
        if x < frame.sides.0 - 1.0 || x > frame.sides.1 + 6.0 {
            let _ = write!(hachure, "M{x} {ground}l-5 7");
        }
        x += 8.0;
    }
    out.push(("l-hair", hachure));
}

/// The casing: drawn out down to the motor, dashed below, where the job says nothing.
fn casing(frame: &Frame, out: &mut Vec<(&'static str, String)>) {
    let ((left, right), cap, bottom) = (frame.sides, frame.cap, frame.floor());
    let known = frame.pump.map_or(frame.layout.ground, |intake| frame.motor_end(intake) + 12.0).min(bottom);
    out.push(("f-void", format!("M{left} {cap}H{right}V{bottom:.1}H{left}z")));
    out.push(("l-casing", format!("M{left} {cap}V{known:.1}M{right} {cap}V{known:.1}")));
    if known < bottom {
        out.push((
            "l-unknown",
            format!("M{left} {:.1}V{bottom:.1}M{right} {:.1}V{bottom:.1}", known + 4.0, known + 4.0),
        ));
    }
    out.push(("f-ink", format!("M{} {}H{}v5H{}z", left - 4.0, cap - 5.0, right + 4.0, left - 4.0)));
}

fn pump(frame: &Frame, intake: f64, out: &mut Vec<(&'static str, String)>) {
    let (axis, cap) = (frame.layout.axis, frame.cap);
    let (pipe, pump, motor) = frame.halves();
    let (top, end) = (frame.pump_top(intake), frame.motor_end(intake));
    if top > cap {
        let (left, right) = (axis - pipe, axis + pipe);
        out.push(("f-void", format!("M{left:.1} {cap}H{right:.1}V{top:.1}H{left:.1}z")));
        out.push(("l-pipe", format!("M{left:.1} {cap}V{top:.1}M{right:.1} {cap}V{top:.1}")));
        out.push(("l-tie", ties(frame, top)));
    }
    let lead = axis + pipe + 2.6;
    let start = (cap - 4.0).min(top - 8.0);
    let out_by = pump - pipe + 0.6;
    out.push((
        "w480 lead",
        format!("M{lead:.1} {start:.1}V{:.1}q0 4 {out_by:.1} 6V{:.1}q0 4 -2 6", top - 6.0, intake + 4.0),
    ));
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
    let mut stages = String::new();
    for stage in 1..4 {
        let y = top + 4.0 + (intake - 8.0 - top) / 4.0 * f64::from(stage);
        let _ = write!(stages, "M{:.1} {y:.1}h{:.1}", axis - pump, 2.0 * pump);
    }
    out.push(("l-thin", stages));
    let (left, right) = (axis - motor, axis + motor);
    out.push(("l-screen", format!("M{left:.1} {:.1}v8M{right:.1} {:.1}v8", intake - 4.0, intake - 4.0)));
    out.push((
        "f-ink",
        format!("M{left:.1} {:.1}H{right:.1}V{:.1}q0 4 -4 4H{:.1}q-4 0 -4 -4z", intake + 4.0, end - 4.0, left + 4.0),
    ));
}

/// Ties that hold the lead to the pipe.
fn ties(frame: &Frame, pump_top: f64) -> String {
    let (pipe, ..) = frame.halves();
    let mut path = String::new();
    let mut y = frame.cap + 26.0;
    while y < pump_top - 14.0 {
        let _ = write!(path, "M{:.1} {y:.1}h{:.1}", frame.layout.axis - pipe - 1.5, 2.0 * pipe + 6.0);
        y += 26.0;
    }
    path
}

/// Pole, drive, the buried supply, and the lead from the drive to the well head.
fn surface(frame: &Frame, out: &mut Vec<(&'static str, String)>) {
    let Layout { ground, axis, compact, .. } = frame.layout;
    let ((pole, pole_top), (drive, width), (low, high)) = (frame.pole, frame.drive, frame.drive_ends);
    let arm = if compact { 5.0 } else { 8.0 };
    out.push(("l-pole", format!("M{pole} {ground}V{pole_top}")));
    out.push((
        "l-mid",
        format!(
            "M{} {}h{}M{} {}v-4M{} {}v-4",
            pole - arm,
            pole_top + 7.0,
            2.0 * arm,
            pole - 3.0,
            pole_top + 7.0,
            pole + 3.0,
            pole_top + 7.0
        ),
    ));
    out.push(("l-buried", format!("M{} {ground}v11H{}V{low}", pole + 1.0, drive + width * 0.3)));
    let (pipe, ..) = frame.halves();
    let (from, before, lead) = (drive + width * 0.7, frame.sides.0 - 10.0, axis + pipe + 2.6);
    let over = frame.cap - 13.0;
    out.push((
        "w480 lead",
        format!(
            "M{from:.1} {low}V{}q0 4 4 4H{:.1}q4 0 4 -4V{}q0 -4 4 -4H{:.1}q4 0 4 4V{}",
            ground + 7.0,
            before - 4.0,
            over + 4.0,
            lead - 4.0,
            frame.cap - 3.0
        ),
    ));
    out.push(("l-mid", format!("M{} {ground}V{high}M{} {ground}V{high}", drive + 2.0, drive + width - 2.0)));
    out.push(("l-roof", format!("M{} {}h{}", drive - 5.0, high - 4.0, width + 10.0)));
    out.push(("part", format!("M{drive} {high}h{width}V{low}h{}z", -width)));
    let (middle, wave) = ((low + high) / 2.0, width * 0.3);
    out.push((
        "l-mid",
        format!(
            "M{:.1} {middle:.1}q{:.1} {:.1} {wave:.1} 0t{wave:.1} 0",
            drive + width * 0.2,
            wave / 2.0,
            -(low - high) * 0.4
        ),
    ));
    let right = frame.layout.rod;
    out.push(("l-ground", format!("M0 {ground}H{}M{} {ground}H{right}", frame.sides.0, frame.sides.1)));
}

/// The depth line up to the rod, and the rod: blocks of half a figure's step.
fn rod(frame: &Frame, view: &View, scale: &Scale, out: &mut Vec<(&'static str, String)>) {
    let Layout { axis, rod, rod_width, ground, bottom, .. } = frame.layout;
    if let Some(intake) = frame.pump {
        out.push(("l-act", format!("M{:.1} {intake:.1}H{rod}", axis + frame.halves().2 + 3.0)));
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

/// The well section; the curve beside it says the same in words, so it is hidden from readers.
#[component]
pub fn Well(
    /// What the job says.
    facts: Memo<Facts>,
    /// How the picture is looked at.
    view: Memo<View>,
) -> impl IntoView {
    let drawn = Memo::new(move |_| strokes(&facts.get(), &view.get()));
    let lettered = Memo::new(move |_| words_of(&facts.get(), &view.get()));
    let path = |(class, d): (&'static str, String)| view! { <path class=class d=d /> };
    let word = |word: Word| {
        let anchor = if word.end { "end" } else { "start" };
        view! { <text class=word.class x=word.x y=word.y text-anchor=anchor>{word.text}</text> }
    };
    view! {
        <svg class="well" aria-hidden="true" width=move || view.get().layout.width height=move || view.get().layout.height>
            {move || drawn.get().into_iter().map(path).collect_view()}
            {move || lettered.with(|words| words.leaders.clone()).into_iter().map(path).collect_view()}
            {move || lettered.with(|words| words.words.clone()).into_iter().map(word).collect_view()}
        </svg>
    }
}
