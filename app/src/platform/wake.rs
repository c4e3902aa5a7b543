//! Keeps the screen awake while it is wanted, where the browser can.

use js_sys::{Function, Promise, Reflect};
use std::cell::{Cell, RefCell};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};

thread_local! {
    static WANTED: Cell<bool> = const { Cell::new(false) };
    static LOCK: RefCell<Option<JsValue>> = const { RefCell::new(None) };
}

fn get(of: &JsValue, name: &str) -> Option<JsValue> {
    Reflect::get(of, &name.into()).ok().filter(|found| !found.is_undefined() && !found.is_null())
}

fn method(of: &JsValue, name: &str) -> Option<Function> {
    get(of, name)?.dyn_into().ok()
}

/// Asks that the screen stays awake; asked again it takes a lock anew that the browser let go, as it does when the page
/// is out of sight for a while.
pub fn ask() {
    WANTED.set(true);
    let held = LOCK.with_borrow(|lock| lock.as_ref().is_some_and(|lock| get(lock, "released") == Some(false.into())));
    let promise = || -> Option<Promise> {
        let locks = get(leptos::prelude::window().navigator().as_ref(), "wakeLock")?;
        method(&locks, "request")?.call1(&locks, &"screen".into()).ok()?.dyn_into().ok()
    };
    let Some(promise) = (!held).then(promise).flatten() else { return };
    spawn_local(async move {
        // A browser may say no: the screen then goes dark as it always does.
        if let Ok(lock) = JsFuture::from(promise).await {
            LOCK.set(Some(lock));
            if !WANTED.get() {
                release();
            }
        }
    });
}

/// Lets the screen go dark again.
pub fn release() {
    WANTED.set(false);
    if let Some(lock) = LOCK.take()
        && let Some(release) = method(&lock, "release")
    {
        let _ = release.call0(&lock);
    }
}
