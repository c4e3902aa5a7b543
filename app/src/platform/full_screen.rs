//! The whole screen for the page, where the browser can.

use leptos::prelude::*;

/// Whether the browser can.
#[must_use]
pub fn can() -> bool {
    document().fullscreen_enabled()
}

fn is() -> bool {
    document().fullscreen_element().is_some()
}

/// Whether the page has the whole screen, kept on what changes.
#[must_use]
pub fn follow() -> ReadSignal<bool> {
    let (full, set) = signal(is());
    let handle = window_event_listener_untyped("fullscreenchange", move |_| set.set(is()));
    on_cleanup(move || handle.remove());
    full
}

/// Takes the whole screen, or gives it back.
pub fn toggle() {
    match document().document_element() {
        Some(root) if !is() => {
            let _ = root.request_fullscreen();
        }
        _ => leave(),
    }
}

/// Gives the screen back.
pub fn leave() {
    if is() {
        document().exit_fullscreen();
    }
}
