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

/// Whether the system asks for a dark screen.
#[must_use]
pub fn system_is_dark() -> bool {
    let query = leptos::prelude::window().match_media("(prefers-color-scheme: dark)");
    query.ok().flatten().is_some_and(|query| query.matches())
}
