//! What stands on the page until the program has come (`app/first`): it goes as soon as the program has made its own page,
//! and shows the next time how the open job's answer was.

use super::storage::there;
use gloo_storage::{LocalStorage, Storage as _};
use leptos::prelude::*;
use serde::Serialize;

/// Where the last answer is kept.
const LAST: &str = "wellwright.last";

/// Takes it away.
pub fn leave() {
    if let Some(first) = document().get_element_by_id("first") {
        first.remove();
    }
}

/// A job's answer in a sentence.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Last {
    /// The job's id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// The answer.
    pub told: String,
}

/// Forgets the answer, as its job may be gone.
pub fn forget_last() {
    if there() {
        LocalStorage::delete(LAST);
    }
}

/// Keeps the answer when the page goes out of sight, until the owner is gone. Where there is no room for it, nothing is
/// lost.
pub fn keep_last(last: impl Fn() -> Last + 'static) {
    let listener = window_event_listener_untyped("visibilitychange", move |_| {
        if document().hidden() && there() {
            let _ = LocalStorage::set(LAST, last());
        }
    });
    on_cleanup(move || listener.remove());
}
