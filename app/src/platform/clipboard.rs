//! The clipboard.

use leptos::prelude::window;
use leptos::task::spawn_local;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;

/// Copies a text and says whether the browser let it.
pub fn copy(text: &str, done: impl FnOnce(bool) + 'static) {
    // Pages that are not served securely have no clipboard at all.
    let navigator = window().navigator();
    let there = js_sys::Reflect::get(&navigator, &JsValue::from_str("clipboard")).is_ok_and(|found| found.is_object());
    if !there {
        return done(false);
    }
    let written = navigator.clipboard().write_text(text);
    spawn_local(async move { done(JsFuture::from(written).await.is_ok()) });
}
