//! The page inside a page of somebody else: what its address asks for, and messages with the page around it.
//!
//! Messages come in only from the page around it, and only where that page's origin was named when it loaded. What goes
//! out to nobody in particular is a height and nothing else.

use leptos::html::Main;
use leptos::prelude::*;
use serde_json::Value;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{MessageEvent, Url, UrlSearchParams};

/// Most letters of a message that is read: a whole job's, and some.
const MOST_LETTERS: usize = 500_000;
/// Any origin.
const ANY: &str = "*";

/// The words of a query or of a fragment, in their order.
#[must_use]
pub fn words_of(query: &str) -> Vec<(String, String)> {
    let Ok(found) = UrlSearchParams::new_with_str(query.trim_start_matches(['?', '#'])) else { return Vec::new() };
    let pair = |pair: JsValue| {
        let pair = js_sys::Array::from(&pair);
        Some((pair.get(0).as_string()?, pair.get(1).as_string()?))
    };
    js_sys::Array::from(&found).iter().filter_map(pair).collect()
}

/// The words of this page's address: its query's, then its fragment's.
#[must_use]
pub fn words_of_address() -> Vec<(String, String)> {
    let location = window().location();
    let [query, fragment] = [location.search(), location.hash()].map(Result::unwrap_or_default);
    [words_of(&query), words_of(&fragment)].concat()
}

/// Whether a text is the origin of a page on the web, written as browsers write it.
#[must_use]
pub fn is_origin(text: &str) -> bool {
    let known = text.starts_with("https://") || text.starts_with("http://");
    known && Url::new(text).is_ok_and(|url| url.origin() == text)
}

/// Sends a message to the page around, to each origin that was named.
pub fn send(hosts: &[String], message: &Value) {
    hosts.iter().for_each(|host| post(message, host));
}

/// Tells the page around how high this one is: it needs to know before it says who it is.
pub fn send_height(height: f64) {
    post(&serde_json::json!({ "wellwright": 1, "type": "size", "height": height }), ANY);
}

fn around() -> Option<web_sys::Window> {
    let own: JsValue = window().into();
    window().parent().ok().flatten().filter(|parent| *AsRef::<JsValue>::as_ref(parent) != own)
}

fn post(message: &Value, to: &str) {
    let (Some(around), Ok(message)) = (around(), js_sys::JSON::parse(&message.to_string())) else { return };
    let _ = around.post_message(&message, to);
}

/// Calls back with the JSON of each message of the page around whose origin was named.
pub fn follow(hosts: Vec<String>, heard: impl Fn(String) + 'static) {
    let handle = window_event_listener_untyped("message", move |event| {
        let Some(event) = event.dyn_ref::<MessageEvent>() else { return };
        let source: Option<JsValue> = event.source().map(Into::into);
        let from_around = around().is_some_and(|around| source == Some(around.into()));
        if !from_around || !hosts.contains(&event.origin()) {
            return;
        }
        let text = js_sys::JSON::stringify(&event.data()).ok().and_then(|text| text.as_string());
        if let Some(text) = text.filter(|text| text.len() <= MOST_LETTERS) {
            heard(text);
        }
    });
    on_cleanup(move || handle.remove());
}

/// Calls back with the height of an element, now and whenever it changes.
pub fn follow_height(of: NodeRef<Main>, changed: impl Fn(f64) + 'static) {
    let last = StoredValue::new(0.0);
    let measure = move || {
        let Some(Some(element)) = of.try_get_untracked() else { return };
        let height = element.get_bounding_client_rect().height().ceil();
        if height > 0.0 && last.try_get_value() != Some(height) {
            last.set_value(height);
            changed(height);
        }
    };
    let watch = Closure::<dyn FnMut()>::new(measure);
    let Ok(observer) = web_sys::ResizeObserver::new(watch.as_ref().unchecked_ref()) else { return };
    let kept = StoredValue::new_local((observer, watch));
    Effect::new(move |_| {
        if let Some(element) = of.get() {
            kept.with_value(|(observer, _)| observer.observe(&element));
        }
    });
    on_cleanup(move || kept.with_value(|(observer, _)| observer.disconnect()));
}

/// Opens an address in a tab of its own.
pub fn open_apart(address: &str) {
    let _ = window().open_with_url_and_target_and_features(address, "_blank", "noopener");
}
