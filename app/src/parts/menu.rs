//! A menu behind one button; it closes on Escape, on a press outside and when the focus leaves it.

use super::icon::Icon;
use crate::platform::focus;
use leptos::ev;
use leptos::html;
use leptos::prelude::*;

/// A menu.
#[component]
pub fn Menu(
    /// What the button opens, for who can't see it.
    #[prop(into)]
    label: Signal<String>,
    /// Id of the button, where the focus is to come back to it.
    #[prop(optional)]
    id: Option<&'static str>,
    /// Mark on the button.
    #[prop(default = "more")]
    icon: &'static str,
    /// Whether a press inside closes it, as with actions; settings stay open.
    #[prop(default = false)]
    closes: bool,
    /// What stands in it.
    children: Children,
) -> impl IntoView {
    let menu = NodeRef::<html::Details>::new();
    // An action in the menu may take away the row that the menu belongs to.
    let there = move || menu.try_get_untracked().flatten();
    let close = move || {
        if let Some(menu) = there() {
            menu.set_open(false);
        }
    };
    let outside = window_event_listener(ev::pointerdown, move |event| {
        if there().is_some_and(|menu| menu.open() && !focus::is_inside(&event, &menu)) {
            close();
        }
    });
    on_cleanup(move || outside.remove());
    let escape = move |event: ev::KeyboardEvent| {
        if event.key() == "Escape" && there().is_some_and(|menu| menu.open()) {
            event.stop_propagation();
            close();
            if let Some(button) = there().and_then(|menu| focus::first_child(&menu)) {
                let _ = button.focus();
            }
        }
    };
    let leave = move |event: ev::FocusEvent| {
        if there().is_some_and(|menu| focus::leaves(&event, &menu)) {
            close();
        }
    };
    let pressed = move |_| {
        if closes {
            close();
        }
    };
    view! {
        <details class="more" node_ref=menu on:keydown=escape on:focusout=leave>
            <summary id=id class="btn quiet" role="button" aria-label=move || label.get()><Icon name=icon /></summary>
            <div class="menu" on:click=pressed>{children()}</div>
        </details>
    }
}
