//! The list of jobs, each hanging from the ground at its own depth.

mod row;
mod search;

pub use row::{facts, line};

use super::arrivals::{Arrived, take_pasted, take_text};
use crate::locale::{self, words};
use crate::parts::device::OnDevice;
use crate::parts::empty::Empty;
use crate::parts::file_drop::FileDrop;
use crate::parts::notice::{BooksAsideNotice, SetAsideNotice, StorageNotice};
use crate::parts::screen_settings::{SettingsMenu, Units};
use crate::platform::clipboard;
use crate::platform::files::{self, Reading};
use crate::platform::storage;
use crate::routes::{Page, Route};
use crate::state::{App, Sheet, app};
use leptos::prelude::*;
use row::Row;
use search::{Search, found};
use wellwright_core::job::{Field, Job};
use wellwright_core::quantity::{Length, feet};

/// Id of the list's heading, which takes the focus when a row is gone.
const TITLE: &str = "jobs-title";

/// Rows that are drawn at a time: a list of thousands opens as soon as a short one.
const AT_A_TIME: usize = 100;
/// Jobs from which on the list can be searched.
const SEARCHED_FROM: usize = 8;

/// The list of jobs.
#[component]
pub fn Jobs() -> impl IntoView {
    let app = app();
    let words = words();
    document().set_title(words.frame.app);
    let (asked, rows) = (RwSignal::new(String::new()), RwSignal::new(AT_A_TIME));
    let count = Memo::new(move |_| app.shelf.with(|shelf| shelf.jobs.len()));
    let any = move || count.get() != 0;
    // Once there the field stays: jobs that it hides could not be brought back without it.
    let long = Memo::new(move |before| before == Some(&true) || count.get() >= SEARCHED_FROM);
    let ids = Memo::new(move |_| app.shelf.with(|shelf| asked.with(|asked| found(shelf, asked))));
    let drawn = move || ids.with(|ids| ids.iter().take(rows.get()).cloned().collect::<Vec<_>>());
    let more = Memo::new(move |_| ids.with(Vec::len).saturating_sub(rows.get()).min(AT_A_TIME));
    let deepest = Memo::new(move |_| app.shelf.with(|shelf| deepest(shelf.jobs.iter().map(|kept| &kept.sheet.job))));
    let new_job = move |_| {
        Route::Job(app.add(Sheet::of(Job::named(words.list.new_job_name))), Page::Water).go();
    };
    let add_demo = move |_| {
        for job in storage::demo_jobs().into_iter().rev() {
            app.add(Sheet::of(job));
        }
    };
    clipboard::follow_pastes(move |text| take_pasted(app, &text));
    let paste = move |_| {
        clipboard::paste(move |text| match text {
            Some(text) => take_pasted(app, &text),
            None => app.tell(words.passing.not_pasted.to_owned()),
        });
    };
    let save_all = move |_| {
        let name = files::file_name(
            &format!("{} {}", words.frame.app, words.passing.save_all_name),
            words.list.nameless,
            "json",
        );
        if files::save(&name, "application/json", &storage::everything()) {
            app.tell((words.tables.saved_as)(&name));
        }
    };
    let units = move || app.settings.get().units;
    let scale = move || locale::depth(deepest.get(), units()).text();
    let any_demo = move || app.shelf.with(|shelf| shelf.jobs.iter().any(|kept| kept.sheet.job.demo));
    view! {
        <header class="bar">
            <div class="name"><b>{words.frame.app}</b><span class="note">{words.frame.app_line}</span></div>
            <span class="only-desk"><Units place="bar" /></span>
            <SettingsMenu>
                <button class="btn" title=words.passing.paste_hint on:click=paste>{words.passing.paste}</button>
                <button class="btn" on:click=save_all>{words.passing.save_all}</button>
            </SettingsMenu>
        </header>
        <main class="page">
            <StorageNotice />
            <SetAsideNotice />
            <BooksAsideNotice />
            <Arrived />
            <div class="head">
                <h1 id=TITLE class="chapter" tabindex="-1">{words.frame.jobs}</h1>
                <div class="row">
                    <FileDrop
                        label=words.list.open_file
                        accept=".json,application/json"
                        most=files::MOST_WHOLE
                        on_file=Callback::new(move |(name, reading): (String, Reading)| take_file(app, &name, reading))
                    />
                    <button class="btn act" on:click=new_job>{words.list.new_job}</button>
                </div>
            </div>
            <Show
                when=any
                fallback=move || view! {
                    <Empty title=words.list.no_jobs hint=words.list.no_jobs_hint>
                        <button class="btn" on:click=add_demo>{words.list.add_demo_jobs}</button>
                    </Empty>
                }
            >
                <Show when=move || long.get()>
                    <Search asked=asked found=Signal::derive(move || ids.with(Vec::len)) count=count.into() />
                </Show>
                <ol class="jobs">
                    <For each=drawn key=Clone::clone let:id><Row id=id deepest=deepest /></For>
                </ol>
                <Show when=move || more.get() != 0>
                    <p class="more-jobs">
                        <button class="btn" on:click=move |_| rows.update(|rows| *rows += AT_A_TIME)>
                            {move || (words.list.show_more)(more.get())}
                        </button>
                    </p>
                </Show>
                <footer class="foot note">
                    <span>{move || (words.list.kept_here)(count.get())}" "{move || (words.list.well_scale)(&scale())}</span>
                    <Show when=any_demo><span>{words.list.demo_foot}</span></Show>
                    <OnDevice />
                </footer>
            </Show>
            <p class="lesson-link"><a class="btn quiet" href=Route::Lesson(0).href()>{words.lesson.link}</a></p>
        </main>
    }
}

/// Takes what a file holds, or says why not; nothing else changes.
fn take_file(app: App, name: &str, reading: Reading) {
    let list = &words().list;
    match reading {
        Reading::Text(text) => take_text(app, name, &text),
        Reading::TooLarge => app.tell((list.not_opened)(name, list.too_large)),
        Reading::Failed => app.tell((list.not_opened)(name, list.unreadable_file)),
    }
}

/// The deepest setting of a list, at least 100 ft, so that all wells hang on one scale.
fn deepest<'a>(jobs: impl Iterator<Item = &'a Job>) -> Length {
    let depth = |job: &Job| {
        let entry = job.get(Field::PumpSetting)?;
        Field::PumpSetting.check(entry).ok().map(feet)
    };
    jobs.filter_map(depth).fold(feet(100.0), Length::max)
}
