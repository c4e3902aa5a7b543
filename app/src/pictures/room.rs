//! The room that a picture has on the screen or on paper, and the pens of its theme.

use super::ink::Ink;
use crate::state::Theme;
use leptos::html::Div;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;

/// Colors and pens, read again once the theme that was chosen, the system's, or the paper's is in force, and when the
/// size of the picture shows that style sheets came or that letters grew. The last that could be read stays.
#[must_use]
pub fn pens(theme: Signal<Theme>, size: RwSignal<(f64, f64)>) -> RwSignal<Option<Ink>> {
    let ink = RwSignal::new(Ink::read());
    // A frame may come after the picture is gone.
    let read = move || {
        let now = Ink::read();
        if now.is_some() && ink.try_with_untracked(|before| *before != now) == Some(true) {
            let _ = ink.try_set(now);
        }
    };
    Effect::new(move |_| {
        theme.track();
        size.track();
        // The frame after the theme is marked on the page.
        request_animation_frame(read);
    });
    for query in ["(prefers-color-scheme: dark)", "print"] {
        let Ok(Some(list)) = window().match_media(query) else { continue };
        let changed = Closure::<dyn FnMut()>::new(read);
        let call = changed.as_ref().unchecked_ref::<js_sys::Function>().clone();
        let _ = list.add_event_listener_with_callback("change", &call);
        let kept = StoredValue::new_local((list, call, changed));
        on_cleanup(move || {
            kept.with_value(|(list, call, _)| {
                let _ = list.remove_event_listener_with_callback("change", call);
            });
        });
    }
    ink
}

/// Whether the page is being printed: then the picture has the paper's size, whatever the screen's.
#[must_use]
pub fn printing() -> RwSignal<bool> {
    let printing = RwSignal::new(false);
    for (event, state) in [("beforeprint", true), ("afterprint", false)] {
        let handle = window_event_listener_untyped(event, move |_| printing.set(state));
        on_cleanup(move || handle.remove());
    }
    printing
}

/// Keeps the size of an element in a signal; while the page is printed, the size on paper.
pub fn follow_size(room: NodeRef<Div>, size: RwSignal<(f64, f64)>, printing: RwSignal<bool>, paper: (f64, f64)) {
    let measure = move || {
        if printing.try_get_untracked() != Some(false) {
            return;
        }
        if let Some(Some(room)) = room.try_get_untracked() {
            let now = (f64::from(room.client_width()), f64::from(room.client_height()));
            if size.try_get_untracked().is_some_and(|before| before != now) {
                let _ = size.try_set(now);
            }
        }
    };
    let watch = Closure::<dyn FnMut()>::new(measure);
    Effect::new(move |_| if printing.get() { size.set(paper) } else { measure() });
    let Ok(observer) = web_sys::ResizeObserver::new(watch.as_ref().unchecked_ref()) else { return };
    let kept = StoredValue::new_local((observer, watch));
    Effect::new(move |_| {
        if let Some(room) = room.get() {
            measure();
            kept.with_value(|(observer, _)| observer.observe(&room));
        }
    });
    on_cleanup(move || kept.with_value(|(observer, _)| observer.disconnect()));
}
