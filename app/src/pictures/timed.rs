//! For the benches alone (feature `timed`): the curve of the first demo job, worked and drawn on demand. A page built so has
//! `window.timed` with
//! - `work(feet)`: the whole evaluation with the pump at a depth;
//! - `draw(canvas, width, height)`: the picture of it, laid out and painted anew;
//! - `costs(count)`: what each way costs at so many depths from 0 to the end of the scale, one way after the other, and
//!   first the depths.

use super::canvas::paint;
use super::facts::Facts;
use super::ink::Ink;
use super::layout::Layout;
use super::scale::scale_end;
use super::spec::{View, picture};
use crate::platform::storage::demo_jobs;
use leptos::prelude::window;
use std::cell::{OnceCell, RefCell};
use std::rc::Rc;
use wasm_bindgen::JsValue;
use wasm_bindgen::closure::Closure;
use web_sys::HtmlCanvasElement;
use wellwright_core::evaluate::{Basis, Evaluation, WaySweep, evaluate};
use wellwright_core::job::{Field, Job};
use wellwright_core::quantity::{Entry, Length, Unit, UnitSystem, in_feet};

const SYSTEM: UnitSystem = UnitSystem::Us;
const BASIS: Basis = Basis::Installed;

fn worked(job: &Job, feet: f64) -> Evaluation {
    let mut job = job.clone();
    job.set(Field::PumpSetting, Some(Entry::new(feet, Unit::Foot)));
    evaluate(&job)
}

fn end(answer: &Evaluation) -> Length {
    scale_end(&Facts::of(answer), BASIS, SYSTEM)
}

fn drawn(answer: &Evaluation, canvas: &HtmlCanvasElement, size: (f64, f64), ink: &Ink) {
    let (lettering, end) = (ink.lettering, end(answer));
    let layout = Layout::of(size.0, size.1, lettering);
    let view = View { layout, end, lettering, system: SYSTEM, basis: BASIS, money: true };
    paint(canvas, size, &picture(answer, &view, None), ink);
}

fn costs(answer: &Evaluation, count: u32) -> Vec<f64> {
    let end = end(answer);
    let depths: Vec<Length> = (0..count).map(|at| end * (f64::from(at) / f64::from(count - 1))).collect();
    let ways = answer.sweep.iter().flat_map(|sweep| &sweep.ways);
    let along = |way: &WaySweep| {
        depths.iter().map(|depth| way.cost_at(*depth, BASIS).map_or(f64::NAN, |cost| cost.0)).collect::<Vec<_>>()
    };
    depths.iter().map(|depth| in_feet(*depth)).chain(ways.flat_map(along)).collect()
}

/// Puts the functions on the window.
pub fn offer() {
    let Some(job) = demo_jobs().into_iter().next() else { return };
    let now = Rc::new(RefCell::new(worked(&job, 620.0)));
    let (kept, told) = (now.clone(), now.clone());
    let work = Closure::<dyn Fn(f64)>::new(move |feet| *kept.borrow_mut() = worked(&job, feet));
    // The page too reads its style sheets once per theme.
    let ink = OnceCell::new();
    let draw = Closure::<dyn Fn(HtmlCanvasElement, f64, f64)>::new(move |canvas, width, height| {
        if let Some(ink) = ink.get_or_init(Ink::read) {
            drawn(&now.borrow(), &canvas, (width, height), ink);
        }
    });
    let costs = Closure::<dyn Fn(u32) -> Vec<f64>>::new(move |count| costs(&told.borrow(), count));
    let all = js_sys::Object::new();
    let functions = [("work", work.into_js_value()), ("draw", draw.into_js_value()), ("costs", costs.into_js_value())];
    for (name, function) in functions {
        let _ = js_sys::Reflect::set(&all, &JsValue::from_str(name), &function);
    }
    let _ = js_sys::Reflect::set(&window(), &JsValue::from_str("timed"), &all);
}
