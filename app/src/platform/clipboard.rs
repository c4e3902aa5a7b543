//! The clipboard.

use leptos::prelude::window;

/// Copies a text; nothing happens where the browser does not let a page do so.
pub fn copy(text: &str) {
    let _ = window().navigator().clipboard().write_text(text);
}
