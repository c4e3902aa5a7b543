//! Units and theme, as the bar of every page shows them.

use super::segmented::Segmented;
use crate::locale::words;
use crate::state::{Theme, app};
use leptos::prelude::*;
use wellwright_core::quantity::UnitSystem;

/// The choice of units.
#[component]
pub fn Units(
    /// Where it stands; two on one page need two names.
    place: &'static str,
) -> impl IntoView {
    let app = app();
    let words = words();
    view! {
        <Segmented
            label=words.frame.units
            name=format!("{place}-units")
            options=vec![(UnitSystem::Us, words.frame.us), (UnitSystem::Si, words.frame.si)]
            value=Signal::derive(move || app.settings.get().units)
            on_choose=Callback::new(move |units| app.set(|settings| settings.units = units))
        />
    }
}

/// The choice of theme; until one is chosen the system decides.
#[component]
pub fn Themes(
    /// Where it stands; two on one page need two names.
    place: &'static str,
) -> impl IntoView {
    let app = app();
    let words = words();
    view! {
        <Segmented
            label=words.frame.theme
            name=format!("{place}-theme")
            options=vec![(Theme::Light, words.frame.light), (Theme::Dark, words.frame.dark), (Theme::Sun, words.frame.sun)]
            value=Signal::derive(move || shown(app.settings.get().theme))
            on_choose=Callback::new(move |theme| app.set(|settings| settings.theme = theme))
        />
    }
}

/// The theme that is seen: the system's own where none was chosen.
fn shown(theme: Theme) -> Theme {
    match theme {
        Theme::System if crate::platform::theme::system_is_dark() => Theme::Dark,
        Theme::System => Theme::Light,
        theme => theme,
    }
}
