//! The theme on the page's root, where the style sheets look for it.

use crate::state::Theme;
use leptos::prelude::document;

/// Marks the page with a theme; the system's choice leaves no mark.
pub fn mark(theme: Theme) {
    let Some(root) = document().document_element() else { return };
    let _ = match theme.name() {
        "" => root.remove_attribute("data-theme"),
        name => root.set_attribute("data-theme", name),
    };
}
