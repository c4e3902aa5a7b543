//! Units, theme and language, as the bar of every page shows them.

use super::menu::Menu;
use super::segmented::Segmented;
use crate::locale::{Language, words};
use crate::platform::focus;
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
    let frame = &words().frame;
    view! {
        <Segmented
            label=frame.units
            name=format!("{place}-units")
            options=vec![(UnitSystem::Us, frame.us), (UnitSystem::Si, frame.si)]
            value=Signal::derive(move || app.settings.get().units)
            on_choose=Callback::new(move |units| app.set(|settings| settings.units = units))
        />
    }
}

/// Id of the button of the menu.
const BUTTON: &str = "settings-menu";

/// The menu of settings: screen, language, and units where the bar has no room for them.
#[component]
pub fn SettingsMenu(
    /// What else stands in it, before the settings.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    let app = app();
    let frame = &words().frame;
    let (language, _) = app.speech();
    view! {
        <Menu label=Signal::stored(frame.settings.to_owned()) id=BUTTON>
            {children.map(|children| children())}
            <div class="setting only-phone"><span>{frame.units}</span><Units place="menu" /></div>
            <div class="setting">
                <span>{frame.theme}</span>
                <Segmented
                    label=frame.theme
                    name="theme".to_owned()
                    options=vec![
                        (Theme::System, frame.auto),
                        (Theme::Light, frame.light),
                        (Theme::Dark, frame.dark),
                        (Theme::Sun, frame.sun),
                    ]
                    value=Signal::derive(move || app.settings.get().theme)
                    on_choose=Callback::new(move |theme| app.set(|settings| settings.theme = theme))
                />
            </div>
            <div class="setting">
                <span>{frame.language}</span>
                <Segmented
                    label=frame.language
                    name="language".to_owned()
                    options=Language::ALL.map(|language| (language, (frame.language_name)(language))).to_vec()
                    value=Signal::stored(language)
                    on_choose=Callback::new(move |language| {
                        app.set(|settings| settings.language = Some(language));
                        // The page is drawn anew; the focus comes back to where the choice was made.
                        request_animation_frame(|| {
                            let _ = focus::take(BUTTON);
                        });
                    })
                />
            </div>
        </Menu>
    }
}
