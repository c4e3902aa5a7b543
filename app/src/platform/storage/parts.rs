//! Parts of a job that came by one code after another, each in a tab of its own: kept until the series is whole.

use super::there;
use gloo_storage::{LocalStorage, Storage as _};
use wellwright_core::passing::{Part, part};

const PARTS: &str = "wellwright.parts";

/// The parts that are here.
#[must_use]
pub fn parts() -> Vec<Part> {
    let kept: Vec<String> = if there() { LocalStorage::get(PARTS).unwrap_or_default() } else { Vec::new() };
    kept.iter().filter_map(|text| part(text)).collect()
}

/// Keeps a part beside those of its series that are here, and returns all of them. Those of another series go.
pub fn keep_part(new: Part) -> Vec<Part> {
    let mut parts = parts();
    parts.retain(|part| (part.sum, part.of) == (new.sum, new.of) && part.place != new.place);
    parts.push(new);
    if there() {
        let texts: Vec<String> = parts.iter().map(ToString::to_string).collect();
        let _ = LocalStorage::set(PARTS, texts);
    }
    parts
}

/// The series is whole, or was given up.
pub fn forget_parts() {
    if there() {
        LocalStorage::delete(PARTS);
    }
}
