//! The clipboard.

use leptos::prelude::{on_cleanup, window, window_event_listener};
use leptos::task::spawn_local;
use wasm_bindgen::{JsCast, JsValue};
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

/// Gives the text that was copied, or nothing where the browser or its user says no.
pub fn paste(done: impl FnOnce(Option<String>) + 'static) {
    let clipboard = js_sys::Reflect::get(&window().navigator(), &JsValue::from_str("clipboard"));
    // Some browsers have a clipboard that can only be written.
    let reads = |clipboard: &JsValue| {
        js_sys::Reflect::get(clipboard, &JsValue::from_str("readText")).is_ok_and(|found| found.is_function())
    };
    if !clipboard.is_ok_and(|clipboard| clipboard.is_object() && reads(&clipboard)) {
        return done(None);
    }
    let read = window().navigator().clipboard().read_text();
    spawn_local(async move { done(JsFuture::from(read).await.ok().and_then(|text| text.as_string())) });
}

/// Calls back with each text that is pasted outside a field, as long as what calls this stands.
pub fn follow_pastes(pasted: impl Fn(String) + 'static) {
    let handle = window_event_listener(leptos::ev::paste, move |event: web_sys::ClipboardEvent| {
        let field = event.target().and_then(|target| target.dyn_into::<web_sys::Element>().ok());
        if field.is_some_and(|field| matches!(field.tag_name().as_str(), "INPUT" | "TEXTAREA" | "SELECT")) {
            return;
        }
        let text = event.clipboard_data().and_then(|data| data.get_data("text/plain").ok());
        if let Some(text) = text.filter(|text| !text.trim().is_empty()) {
            event.prevent_default();
            pasted(text);
        }
    });
    on_cleanup(move || handle.remove());
}
