//! Says a changed answer to who can't see it, once the changes rest.

use leptos::prelude::*;
use std::time::Duration;

/// How long a change must rest before it is said: a drag says only where it ends.
const RESTS: Duration = Duration::from_millis(700);

/// Says each new text once it rests; the first one, which the page shows as it opens, is not said.
#[component]
pub fn Announcer(
    /// The text.
    text: Memo<String>,
) -> impl IntoView {
    let said = RwSignal::new(String::new());
    let waiting = StoredValue::new(None::<TimeoutHandle>);
    let stop = move || {
        if let Some(Some(handle)) = waiting.try_update_value(Option::take) {
            handle.clear();
        }
    };
    Effect::new(move |before: Option<String>| {
        let now = text.get();
        if before.is_some_and(|before| before != now) {
            stop();
            let say = now.clone();
            waiting.set_value(set_timeout_with_handle(move || said.set(say), RESTS).ok());
        }
        now
    });
    on_cleanup(stop);
    view! { <p class="sr" role="status">{move || said.get()}</p> }
}
