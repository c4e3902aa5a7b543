//! The language that the browser asks for, and how its region writes numbers.

use crate::locale::{Decimals, Language};
use leptos::prelude::{document, window};
use wasm_bindgen::JsValue;

/// The browser's language and numbers. Numbers follow the region of the first listed language that the page speaks.
#[must_use]
pub fn of_browser() -> (Language, Decimals) {
    let tags: Vec<String> = window().navigator().languages().iter().filter_map(|tag| tag.as_string()).collect();
    let language = Language::first_of(tags.iter().map(String::as_str));
    let own = tags.iter().find(|tag| Language::first_of([tag.as_str()].into_iter()) == language);
    let speaks = own.filter(|tag| tag.to_ascii_lowercase().starts_with(language.tag()));
    (language, speaks.map_or_else(Decimals::default, |tag| decimals_of(tag)))
}

/// The sign before decimals in a region, asked of the browser.
fn decimals_of(tag: &str) -> Decimals {
    let locales = js_sys::Array::of1(&JsValue::from_str(tag));
    let format = js_sys::Intl::NumberFormat::new(&locales, &js_sys::Object::new());
    let written = format.format().call1(&JsValue::UNDEFINED, &JsValue::from_f64(0.5));
    match written.ok().and_then(|text| text.as_string()) {
        Some(text) if text.contains(',') => Decimals::Comma,
        _ => Decimals::Point,
    }
}

/// Tells the page's language, for readers, hyphens and quotes.
pub fn mark(language: Language) {
    if let Some(root) = document().document_element() {
        let _ = root.set_attribute("lang", language.tag());
    }
}
