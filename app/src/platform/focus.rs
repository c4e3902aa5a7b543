//! Where the focus goes, and what lies inside what.

use leptos::prelude::window;
use std::cell::RefCell;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, FocusEvent, FocusOptions, HtmlElement, KeyboardEvent, Node};

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

/// The id of what has the focus, where it has one.
#[must_use]
pub fn holder() -> Option<String> {
    leptos::prelude::document().active_element().map(|element| element.id()).filter(|id| !id.is_empty())
}

/// Takes the focus from the element of an event, which puts a phone's keyboard away.
pub fn leave(event: &Event) {
    if let Some(element) = event.target().and_then(|target| target.dyn_into::<HtmlElement>().ok()) {
        let _ = element.blur();
    }
}

/// Turns Tab back at the ends of an element that covers the page; beside the page it may leave.
pub fn stay_inside(event: &KeyboardEvent, element: &HtmlElement) {
    let covers = window().get_computed_style(element).ok().flatten();
    let covers = covers.and_then(|style| style.get_property_value("position").ok()).is_some_and(|it| it == "fixed");
    let Some(stops) = element.query_selector_all("button, [tabindex='0']").ok().filter(|_| covers) else { return };
    let at = |index: u32| stops.item(index).and_then(|stop| stop.dyn_into::<HtmlElement>().ok());
    let [Some(first), Some(last)] = [at(0), at(stops.length().saturating_sub(1))] else { return };
    let now = leptos::prelude::document().active_element();
    let is_now = |stop: &HtmlElement| now.as_ref().is_some_and(|now| now.is_same_node(Some(stop)));
    let inside_stop = now.as_ref().is_some_and(|now| now.matches("button, [tabindex='0']").unwrap_or(false));
    let next = match event.shift_key() {
        true if is_now(&first) || !inside_stop => last,
        false if is_now(&last) => first,
        _ => return,
    };
    event.prevent_default();
    let _ = next.focus();
}

/// Whether the keys of an event mean something to what has the focus: arrows turn radio buttons and menus.
#[must_use]
pub fn has_own_keys(event: &Event) -> bool {
    let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
    target.is_some_and(|target| target.closest("input, .menu, [role=group]").ok().flatten().is_some())
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
