//! A choice from a short list; until one is made the assumed one stands, and is marked so.

use crate::locale::words;
use leptos::prelude::*;

/// A choice from a short list.
#[component]
pub fn ChoiceField<T: Copy + PartialEq + Send + Sync + 'static>(
    /// Its label.
    label: &'static str,
    /// Id of the control, unique on the page.
    id: &'static str,
    /// Values and words.
    options: Vec<(T, String)>,
    /// What stands while nothing is chosen, as far as it is known.
    #[prop(into)]
    assumed: Signal<Option<T>>,
    /// What is chosen.
    value: Signal<Option<T>>,
    /// Called with the new choice, `None` for the assumed one.
    on_choose: Callback<Option<T>>,
) -> impl IntoView {
    let values: Vec<T> = options.iter().map(|(value, _)| *value).collect();
    let place = {
        let values = values.clone();
        move || value.get().and_then(|value| values.iter().position(|other| *other == value))
    };
    let chosen = Memo::new(move |_| place().map_or_else(String::new, |place| place.to_string()));
    let state = move || if value.get().is_some() { "typed" } else { "assumed" };
    let words_of = options.clone();
    let assumed_word = words().fields.assumed;
    let stands = move || match words_of.iter().find(|(value, _)| Some(*value) == assumed.get()) {
        Some((_, word)) => format!("{word}, {assumed_word}"),
        None => assumed_word.to_owned(),
    };
    let choose = move |event| {
        let place = event_target_value(&event).parse::<usize>().ok();
        on_choose.run(place.and_then(|place| values.get(place)).copied());
    };
    let option = |(place, (_, word)): (usize, (T, String))| {
        view! { <option value=place.to_string()>{word}</option> }
    };
    view! {
        <div class="field pick" data-state=state>
            <label for=id>
                {label}
                <Show when=move || value.get().is_none()><small><em>{assumed_word}</em></small></Show>
            </label>
            <select id=id prop:value=chosen on:change=choose>
                <option value="">{stands}</option>
                {options.into_iter().enumerate().map(option).collect_view()}
            </select>
        </div>
    }
}
