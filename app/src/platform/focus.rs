//! Where the focus goes, and what lies inside what.

use leptos::prelude::window;
use std::cell::RefCell;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, FocusEvent, FocusOptions, HtmlElement, Node};

/// Moves the focus to a heading that just came up. On a phone it is brought to the top; on a wide screen the page is.
pub fn arrive(heading: &HtmlElement) {
    let options = FocusOptions::new();
    options.set_prevent_scroll(true);
    let _ = heading.focus_with_options(&options);
    let narrow = window().match_media("(max-width: 52em)").ok().flatten().is_some_and(|query| query.matches());
    if narrow {
        heading.scroll_into_view();
    } else {
        window().scroll_to_with_x_and_y(0.0, 0.0);
    }
}

/// Gives the focus to the element of an id.
pub fn take(id: &str) -> bool {
    let found =
        leptos::prelude::document().get_element_by_id(id).and_then(|found| found.dyn_into::<HtmlElement>().ok());
    found.is_some_and(|element| element.focus().is_ok())
}

/// Takes the focus from the element of an event, which puts a phone's keyboard away.
pub fn leave(event: &Event) {
    if let Some(element) = event.target().and_then(|target| target.dyn_into::<HtmlElement>().ok()) {
        let _ = element.blur();
    }
}

/// Whether an event happened inside an element.
#[must_use]
pub fn is_inside(event: &Event, element: &Element) -> bool {
    let target = event.target().and_then(|target| target.dyn_into::<Node>().ok());
    target.is_some_and(|target| element.contains(Some(&target)))
}

/// Whether the focus leaves an element.
#[must_use]
pub fn leaves(event: &FocusEvent, element: &Element) -> bool {
    let next = event.related_target().and_then(|target| target.dyn_into::<Node>().ok());
    next.is_some_and(|next| !element.contains(Some(&next)))
}

thread_local! {
    static HOLDER: RefCell<Option<HtmlElement>> = const { RefCell::new(None) };
}

/// Remembers what has the focus, to give it back later.
pub fn remember() {
    HOLDER.set(leptos::prelude::document().active_element().and_then(|element| element.dyn_into().ok()));
}

/// Gives the focus back to what had it, if that is still there.
pub fn give_back() {
    if let Some(holder) = HOLDER.take() {
        let _ = holder.focus();
    }
}

/// The first element inside another, as the button of a menu.
#[must_use]
pub fn first_child(element: &Element) -> Option<HtmlElement> {
    element.first_element_child().and_then(|child| child.dyn_into().ok())
}
