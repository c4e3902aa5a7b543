//! Wellwright's page: pump power for deep wells on a single-phase line.
//!
//! Data flows one way: the job, its evaluation (a memo), the views. Only `state::edits` writes a job.
#![cfg_attr(test, allow(clippy::unwrap_used, clippy::expect_used, clippy::panic))]

mod locale;
mod pages;
mod parts;
mod pictures;
mod platform;
mod routes;
mod state;

use leptos::prelude::*;
use routes::Route;

fn main() {
    console_error_panic_hook::set_once();
    leptos::mount::mount_to_body(Page);
}

/// The page: what the address asks for.
#[component]
fn Page() -> impl IntoView {
    let app = state::App::load();
    provide_context(app);
    routes::follow(app.route);
    Effect::new(move |_| platform::theme::mark(app.settings.get().theme));
    view! {
        <parts::icon::Sprite />
        {move || match app.route.get() {
            Route::Jobs => view! { <pages::jobs::Jobs /> }.into_any(),
            Route::Job(id) => view! { <pages::job::JobPage id=id /> }.into_any(),
        }}
        <parts::toast::Toasts />
    }
}
