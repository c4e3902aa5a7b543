//! A question that must be answered before anything that can't be undone.

use crate::locale::words;
use leptos::html;
use leptos::prelude::*;

/// A dialog; the browser keeps the focus in it and closes it on Escape.
#[component]
pub fn Dialog(
    /// Whether it is open.
    open: RwSignal<bool>,
    /// What it asks.
    text: &'static str,
    /// The word for going on.
    action: &'static str,
    /// Called on going on.
    on_action: Callback<()>,
) -> impl IntoView {
    let dialog = NodeRef::<html::Dialog>::new();
    Effect::new(move |_| {
        let Some(dialog) = dialog.get() else { return };
        if open.get() && !dialog.open() {
            let _ = dialog.show_modal();
        } else if !open.get() && dialog.open() {
            dialog.close();
        }
    });
    let go_on = move |_| {
        open.set(false);
        on_action.run(());
    };
    view! {
        <dialog node_ref=dialog class="ask" aria-label=action on:close=move |_| open.set(false)>
            <p>{text}</p>
            <div class="row">
                <button class="btn" on:click=move |_| open.set(false)>{words().frame.cancel}</button>
                <button class="btn danger" on:click=go_on>{action}</button>
            </div>
        </dialog>
    }
}
