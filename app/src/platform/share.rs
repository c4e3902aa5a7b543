//! The system's own way to hand something to another program or person, where the browser has it.

use js_sys::{Function, Object, Reflect};
use leptos::prelude::window;
use wasm_bindgen::{JsCast, JsValue};

fn function() -> Option<(JsValue, Function)> {
    let navigator: JsValue = window().navigator().into();
    let found = Reflect::get(&navigator, &"share".into()).ok()?.dyn_into().ok()?;
    Some((navigator, found))
}

/// Whether there is such a way.
#[must_use]
pub fn can() -> bool {
    function().is_some()
}

/// Offers a link. Whoever is asked may say no, which is no fault.
pub fn link(title: &str, address: &str) {
    let Some((navigator, share)) = function() else { return };
    let what = Object::new();
    let _ = Reflect::set(&what, &"title".into(), &title.into());
    let _ = Reflect::set(&what, &"url".into(), &address.into());
    if let Ok(promise) = share.call1(&navigator, &what)
        && let Ok(promise) = promise.dyn_into::<js_sys::Promise>()
    {
        leptos::task::spawn_local(async move {
            let _ = wasm_bindgen_futures::JsFuture::from(promise).await;
        });
    }
}
