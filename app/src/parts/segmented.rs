//! A choice of a few, all in sight: radio buttons in one frame.

use leptos::prelude::*;

/// A choice of a few.
#[component]
pub fn Segmented<T: Copy + PartialEq + Send + Sync + 'static>(
    /// What is chosen, for who can't see it.
    label: &'static str,
    /// Name of the group, unique on the page.
    name: String,
    /// Values and words.
    options: Vec<(T, &'static str)>,
    /// The value now.
    value: Signal<T>,
    /// Called with the chosen value.
    on_choose: Callback<T>,
) -> impl IntoView {
    let option = |(option, word): (T, &'static str)| {
        let name = name.clone();
        view! {
            <label>
                <input
                    type="radio"
                    name=name
                    prop:checked=move || value.get() == option
                    on:change=move |_| on_choose.run(option)
                />
                {word}
            </label>
        }
    };
    view! { <fieldset class="seg" aria-label=label>{options.into_iter().map(option).collect_view()}</fieldset> }
}
