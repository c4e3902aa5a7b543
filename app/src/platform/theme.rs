//! The theme on the page's root, where the style sheets look for it.

use crate::state::Theme;
use leptos::prelude::document;

/// Marks the page as one that is looked at from across a table, with larger lettering where there is room.
pub fn stage(on: bool) {
    let Some(root) = document().document_element() else { return };
    let _ = if on { root.set_attribute("data-stage", "") } else { root.remove_attribute("data-stage") };
}

/// Marks the page as one inside another, as high as what stands in it.
pub fn embed() {
    if let Some(root) = document().document_element() {
        let _ = root.set_attribute("data-embed", "");
    }
}

/// Marks the page with a theme; the system's choice leaves no mark.
pub fn mark(theme: Theme) {
    let Some(root) = document().document_element() else { return };
    let _ = match theme.name() {
        "" => root.remove_attribute("data-theme"),
        name => root.set_attribute("data-theme", name),
    };
}
