//! Lists that a choice is taken from at once, and folds.

use leptos::prelude::event_target;
use web_sys::{Event, HtmlDetailsElement, HtmlSelectElement};

/// The place of what was chosen in a list whose first line invites to choose; the list goes back to that line.
#[must_use]
pub fn taken(event: &Event) -> Option<usize> {
    let list: HtmlSelectElement = event_target(event);
    let place = list.value().parse().ok();
    list.set_value("");
    place
}

/// Whether a fold was opened.
#[must_use]
pub fn is_open(event: &Event) -> bool {
    let fold: HtmlDetailsElement = event_target(event);
    fold.open()
}
