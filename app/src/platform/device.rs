//! What the browser keeps of the page itself: whether it opens without a network, whether a newer build waits, whether
//! it can stand on the home screen. `app/offline/keep.js` finds it out; this reads it and passes on what the user wants.

use js_sys::{Function, Reflect};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};

/// What is known of the device.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Device {
    /// The page opens without a network.
    pub kept: bool,
    /// A newer build waits until it is wanted.
    pub newer: bool,
    /// The browser offers a place on the home screen.
    pub installable: bool,
    /// The browser has promised not to clear what is stored.
    pub lasting: bool,
    /// The browser has such a place, but only its user can take it, by the browser's own menu.
    pub by_hand: bool,
}

fn teller() -> Option<JsValue> {
    Reflect::get(window().as_ref(), &"wellwrightDevice".into()).ok().filter(JsValue::is_object)
}

fn now() -> Device {
    let teller = teller();
    let is = |name: &str| {
        teller
            .as_ref()
            .and_then(|teller| Reflect::get(teller, &name.into()).ok())
            .is_some_and(|value| value.is_truthy())
    };
    Device {
        kept: is("kept"),
        newer: is("newer"),
        installable: is("installable"),
        lasting: is("lasting"),
        by_hand: by_hand(),
    }
}

/// Only a browser of a telephone or tablet that is not on the home screen yet says `standalone: false`.
fn by_hand() -> bool {
    let says = Reflect::get(window().navigator().as_ref(), &"standalone".into()).ok();
    says.and_then(|says| says.as_bool()) == Some(false)
}

/// What is known, kept on what changes.
#[must_use]
pub fn follow() -> ReadSignal<Device> {
    let (device, set) = signal(now());
    let handle = window_event_listener_untyped("wellwright-device", move |_| set.set(now()));
    on_cleanup(move || handle.remove());
    device
}

fn ask(name: &str) {
    let Some(teller) = teller() else { return };
    let function = Reflect::get(&teller, &name.into()).ok().and_then(|found| found.dyn_into::<Function>().ok());
    if let Some(function) = function {
        let _ = function.call0(&teller);
    }
}

/// Takes the newer build: the page loads anew.
pub fn take_newer() {
    ask("takeNewer");
}

/// Asks the browser not to clear what is stored; once is enough.
pub fn ask_to_last() {
    ask("askToLast");
}

/// Has the browser ask whether to put the page on the home screen.
pub fn install() {
    ask("install");
}
