//! What is left of a failure of the program: a line in the console, and one in the storage, for who looks into it. The
//! page itself gives way to another (`app/offline/crash.js`).

use super::clock;
use gloo_storage::{LocalStorage, Storage as _};
use std::panic;

const ERRORS: &str = "wellwright.errors";
/// Failures that are kept, the last ones.
const MOST: usize = 20;

/// Notes every failure from here on.
pub fn note_failures() {
    panic::set_hook(Box::new(|info| {
        console_error_panic_hook::hook(info);
        if matches!(leptos::prelude::window().local_storage(), Ok(Some(_))) {
            let mut errors: Vec<String> = LocalStorage::get(ERRORS).unwrap_or_default();
            errors.push(format!("{} {info}", clock::now()));
            let first = errors.len().saturating_sub(MOST);
            let _ = LocalStorage::set(ERRORS, &errors[first..]);
        }
    }));
}
