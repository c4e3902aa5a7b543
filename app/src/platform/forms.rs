//! Lists that a choice is taken from at once.

use leptos::prelude::event_target;
use web_sys::{Event, HtmlSelectElement};

/// The place of what was chosen in a list whose first line invites to choose; the list goes back to that line.
#[must_use]
pub fn taken(event: &Event) -> Option<usize> {
    let list: HtmlSelectElement = event_target(event);
    let place = list.value().parse().ok();
    list.set_value("");
    place
}
