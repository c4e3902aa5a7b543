//! A message that passes, with an offer to undo.

use crate::locale::words;
use crate::state::{Toast, app};
use leptos::prelude::*;
use std::time::Duration;

/// How long a message stays.
const STAYS: Duration = Duration::from_secs(10);

/// The place where messages appear.
#[component]
pub fn Toasts() -> impl IntoView {
    let app = app();
    Effect::new(move |before: Option<Option<TimeoutHandle>>| {
        if let Some(Some(handle)) = before {
            handle.clear();
        }
        app.toast.get()?;
        set_timeout_with_handle(move || app.toast.set(None), STAYS).ok()
    });
    let show = move |toast: Toast| {
        let undo = toast.bring_back.map(|back| {
            let undo = move |_| {
                app.bring_back(back.clone());
                app.toast.set(None);
            };
            view! { <button class="btn" on:click=undo>{words().frame.undo}</button> }
        });
        view! { <div class="toast"><span>{toast.text}</span>{undo}</div> }
    };
    view! { <div class="toasts" role="status">{move || app.toast.get().map(show)}</div> }
}
