//! The page that stands ready for a failure of the program: hidden until `app/offline/crash.js` shows it, since nothing
//! of the program can be trusted then.

use crate::locale::words;
use leptos::prelude::*;

/// The page for a failure.
#[component]
pub fn Crashed() -> impl IntoView {
    let frame = &words().frame;
    view! {
        <main id="crashed" class="page crashed" hidden>
            <h1>{frame.crashed}</h1>
            <p>{frame.crashed_hint}</p>
            <div class="row">
                <button type="button" class="btn" data-does="save">{words().passing.save_all}</button>
                <button type="button" class="btn act" data-does="restart">{frame.start_again}</button>
            </div>
        </main>
    }
}
