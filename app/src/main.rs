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
    platform::note_failures();
    // Inside a page of somebody else nothing that is stored is touched.
    if pages::embed::is_asked_for() {
        leptos::mount::mount_to_body(pages::embed::Embed);
    } else {
        leptos::mount::mount_to_body(Page);
    }
    platform::first::leave();
    #[cfg(feature = "timed")]
    pictures::offer();
}

/// A screen: it stays while the pages of one job are turned.
#[derive(Clone, PartialEq)]
enum Screen {
    Jobs,
    Job(String),
    Show(String),
    Lesson,
    Gallery,
}

/// The page: what the address asks for, in the language in force; another language draws it anew.
#[component]
fn Page() -> impl IntoView {
    let app = state::App::load();
    provide_context(app);
    routes::follow(app.route);
    platform::storage::follow_books(move || app.reload_books());
    app.follow_tabs();
    let speech = Memo::new(move |_| app.speech());
    let screen = Memo::new(move |_| match app.route.get() {
        Route::Jobs | Route::Add(_) => Screen::Jobs,
        Route::Job(id, _) => Screen::Job(id),
        Route::Show(id) => Screen::Show(id),
        Route::Lesson(_) => Screen::Lesson,
        Route::Gallery => Screen::Gallery,
    });
    // What a link brings is looked at on the list; its letters do not stay in the address.
    Effect::new(move |_| {
        if let Route::Add(letters) = app.route.get() {
            let (language, decimals) = app.speech();
            locale::speak(language, decimals);
            // First out of the address: letters that break the page would break it again at every reload.
            Route::Jobs.take_place();
            pages::arrivals::take_link(app, &letters);
        }
    });
    Effect::new(move |_| platform::theme::mark(app.settings.get().theme));
    let whole = move || {
        let (language, decimals) = speech.get();
        locale::speak(language, decimals);
        platform::language::mark(language);
        view! {
            <parts::crashed::Crashed />
            <parts::device::NewerBuild />
            {move || match screen.get() {
                Screen::Jobs => view! { <pages::jobs::Jobs /> }.into_any(),
                Screen::Job(id) => view! { <pages::job::JobPage id=id /> }.into_any(),
                Screen::Show(id) => view! { <pages::show::ShowPage id=id /> }.into_any(),
                Screen::Lesson => view! { <pages::lesson::LessonPage /> }.into_any(),
                Screen::Gallery => view! { <pages::gallery::Gallery /> }.into_any(),
            }}
        }
    };
    view! {
        <parts::icon::Sprite />
        {whole}
        <parts::toast::Toasts />
    }
}
