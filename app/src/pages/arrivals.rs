//! What came in and waits to be looked at: jobs of a link, of codes, of a file with questions.

use crate::locale::{file_text, words};
use crate::pages::jobs::{facts, line};
use crate::parts::segmented::Segmented;
use crate::platform::files;
use crate::platform::storage::{self, Found, Saved};
use crate::state::{App, Arrival, Arrivals, Fate, Kept, Seller, Sheet, app};
use leptos::prelude::*;
use wellwright_core::evaluate::evaluate;
use wellwright_core::job::wire;
use wellwright_core::passing::{self, LinkError, Part, SeriesError};
use wellwright_core::quantity::UnitSystem;

/// Takes the letters of a link: a whole job, or a part of one. Nothing is added before somebody agrees.
pub fn take_link(app: App, letters: &str) {
    let words = &words().passing;
    let read = match passing::part(letters) {
        Some(part) => join(app, part),
        None => Some(passing::read(letters)),
    };
    match read {
        None => {}
        Some(Ok(job)) => app.arrivals.update(|arrivals| {
            arrivals.parts = None;
            app.shelf.with_untracked(|shelf| arrivals.jobs.push(Arrival::of(Sheet::of(job), shelf)));
        }),
        Some(Err(error)) => {
            let why = link_text(&error, app.settings.with_untracked(|settings| settings.units));
            app.arrivals.update(|arrivals| {
                arrivals.parts = None;
                arrivals.refused.push((words.link_refused)(&why));
            });
        }
    }
}

/// Adds a part to its series; the job once it is whole.
fn join(app: App, part: Part) -> Option<Result<wellwright_core::job::Job, LinkError>> {
    let of = part.of;
    let parts = storage::keep_part(part);
    match passing::join(&parts) {
        Err(SeriesError::Missing(missing)) => {
            app.arrivals.update(|arrivals| arrivals.parts = Some((of - missing, of)));
            None
        }
        whole => {
            storage::forget_parts();
            Some(whole.map_err(|_| LinkError::Altered).and_then(|letters| passing::read(&letters)))
        }
    }
}

/// Why a link holds no job, as the end of a sentence.
fn link_text(error: &LinkError, system: UnitSystem) -> String {
    let words = &words().passing;
    match error {
        LinkError::Newer { version } => (words.link_newer)(*version),
        LinkError::Cut => words.link_cut.to_owned(),
        LinkError::TooLarge => crate::locale::words().list.too_large.to_owned(),
        LinkError::Job(error) => file_text(error, system),
        LinkError::NoJob => words.link_no_job.to_owned(),
        _ => words.link_altered.to_owned(),
    }
}

/// Most jobs of one text, most bytes of it (a job with its visits takes some thousand), and most faults that are told one
/// by one.
const MOST_JOBS: usize = 500;
const MOST_TEXT: usize = 5_000_000;
const MOST_FAULTS: usize = 20;

/// Takes the text of a file or of the clipboard: one job or many. Those that nobody must be asked about are added at
/// once.
pub fn take_text(app: App, name: &str, text: &str) {
    let list = &words().list;
    let system = app.settings.with_untracked(|settings| settings.units);
    if text.len() > files::MOST_WHOLE {
        return app.tell((list.not_opened)(name, list.too_large));
    }
    if let Some(backup) = storage::Backup::of(text) {
        return restore(app, backup);
    }
    if text.len() > MOST_TEXT {
        return app.tell((list.not_opened)(name, list.too_large));
    }
    let read = match wire::read_many(text) {
        Ok(read) => read,
        Err(error) => return app.tell((list.not_opened)(name, &file_text(&error, system))),
    };
    if read.len() > MOST_JOBS {
        return app.tell((list.not_opened)(name, &(words().passing.too_many)(read.len(), MOST_JOBS)));
    }
    let many = read.len() > 1;
    let (mut new, mut unsaid) = (Arrivals::default(), 0_usize);
    for (place, job) in read.into_iter().enumerate() {
        match job {
            Ok(job) => app.shelf.with_untracked(|shelf| new.jobs.push(Arrival::of(Sheet::of(job), shelf))),
            Err(_) if new.refused.len() >= MOST_FAULTS => unsaid += 1,
            Err(error) => {
                let line = wire::line_of(text, place, error.path()).unwrap_or(1);
                let why = file_text(&error, system);
                let words = &words().passing;
                new.refused.push(match many {
                    true => (words.job_refused)(name, (place + 1, line), &why),
                    false => (list.not_opened)(name, &(words.at_line)(line, &why)),
                });
            }
        }
    }
    if unsaid > 0 {
        new.refused.push((words().passing.more_refused)(unsaid));
    }
    match (new.jobs.as_slice(), new.refused.as_slice()) {
        ([], []) => app.tell((list.not_opened)(name, words().passing.no_jobs)),
        // One file, one fault: said in passing, as nothing came of it.
        ([], [only]) if !many => app.tell(only.clone()),
        _ if new.ask() => app.arrivals.update(|arrivals| {
            arrivals.jobs.extend(new.jobs);
            arrivals.refused.extend(new.refused);
        }),
        _ => add(app, new.jobs),
    }
}

/// Takes what was saved of a whole device: its jobs are looked at, its price books and what can't be read are kept
/// beside those that are here.
fn restore(app: App, backup: storage::Backup) {
    let (mut new, mut unkept) = (Arrivals::default(), 0_usize);
    for found in backup.jobs {
        match found {
            Found::Job(kept) => app.shelf.with_untracked(|shelf| new.jobs.push(Arrival::of(kept.sheet, shelf))),
            Found::Aside(entry) => {
                let known = |shelf: &crate::state::Shelf| shelf.set_aside.iter().any(|other| other.text == entry.text);
                if !app.shelf.with_untracked(known) {
                    if storage::keep_text(&entry.id, &entry.text) {
                        app.shelf.update(|shelf| shelf.set_aside.push(entry));
                    } else {
                        unkept += 1;
                    }
                }
            }
        }
    }
    unkept += backup.books.iter().filter(|text| app.keep_book_beside(text) == Saved::Full).count();
    // The seller of this device stays where there is one.
    if let Some(seller) = backup.seller.filter(|_| app.seller.with_untracked(|seller| *seller == Seller::default()))
        && !app.sell_as(|own| *own = seller)
    {
        unkept += 1;
    }
    if unkept > 0 {
        new.refused.push((words().passing.unkept)(unkept));
    }
    app.arrivals.update(|arrivals| {
        arrivals.jobs.extend(new.jobs);
        arrivals.refused.extend(new.refused);
    });
    if app.arrivals.with_untracked(Arrivals::is_empty) {
        app.tell(words().passing.nothing_new.to_owned());
    }
}

/// Takes what was pasted: a link that carries a job, or the text of a job file.
pub fn take_pasted(app: App, text: &str) {
    match text.split_once("#/add/") {
        Some((_, letters)) => take_link(app, letters),
        None => take_text(app, words().passing.pasted, text),
    }
}

/// Puts a job in the place of another, which is returned with the place that it had; `None` where there is no room for it
/// even without the other: then the other stays.
fn replace(app: App, old: &str, sheet: Sheet) -> Option<Option<(usize, Kept)>> {
    let id = app.add(sheet);
    let gone = app.take_off(old);
    if app.is_kept(&id) {
        return Some(gone);
    }
    app.take_off(&id);
    if let Some((place, kept)) = gone {
        app.insert(place.saturating_sub(1), kept);
    }
    None
}

/// Puts arrivals on the shelf, each as it was decided, the first on top.
fn add(app: App, jobs: Vec<Arrival>) {
    let words = words();
    let (mut told, mut gone, mut stayed) = (Vec::new(), Vec::new(), Vec::new());
    for arrival in jobs.into_iter().rev() {
        let Arrival { mut sheet, twin, fate } = arrival;
        let replaced = twin.as_ref().filter(|_| fate == Fate::Replace).map(|twin| twin.id.clone());
        match (fate, twin) {
            (Fate::Skip, _) => continue,
            (Fate::Both, Some(_)) => sheet.job.name = (words.list.copy_name)(&sheet.job.name),
            _ => {}
        }
        let name = sheet.job.name.clone();
        match replaced {
            None => {
                app.add(sheet);
            }
            Some(old) => match replace(app, &old, sheet) {
                Some(old) => gone.extend(old),
                None => {
                    stayed.push((words.passing.not_replaced)(&name));
                    continue;
                }
            },
        }
        told.push((words.list.opened)(&name));
    }
    app.arrivals.update(|arrivals| arrivals.refused.extend(stayed));
    let text = match told.as_slice() {
        [] => return,
        [one] => one.clone(),
        many => (words.passing.added)(many.len()),
    };
    app.tell_gone(text, gone);
}

/// What waits to be looked at, on top of the list.
#[component]
pub fn Arrived() -> impl IntoView {
    let app = app();
    let words = &words().passing;
    let here = Memo::new(move |_| !app.arrivals.with(Arrivals::is_empty));
    let jobs = Memo::new(move |_| app.arrivals.with(|arrivals| arrivals.jobs.len()));
    let refused = move || app.arrivals.with(|arrivals| arrivals.refused.clone());
    let parts = Memo::new(move |_| app.arrivals.with(|arrivals| arrivals.parts));
    let taken = Memo::new(move |_| app.arrivals.with(Arrivals::taken));
    let clear = move |_| {
        if parts.get_untracked().is_some() {
            storage::forget_parts();
        }
        app.arrivals.set(Arrivals::default());
    };
    let agree = move |_| {
        let jobs = app.arrivals.with_untracked(|arrivals| arrivals.jobs.clone());
        app.arrivals.set(Arrivals::default());
        add(app, jobs);
    };
    view! {
        <div role="status">
            <Show when=move || here.get()>
                <section class="arrived" aria-label=words.arrived>
                    <h2>{words.arrived}</h2>
                    {move || refused().into_iter().map(|text| view! { <p class="msg">{text}</p> }).collect_view()}
                    {move || parts.get().map(|(there, of)| view! { <p>{(words.parts)(there, of)}</p> })}
                    <ol>{move || (0..jobs.get()).map(|place| view! { <One place=place /> }).collect_view()}</ol>
                    <p class="note">{move || (jobs.get() > 0).then_some(words.nothing_yet)}</p>
                    <div class="row">
                        <Show when=move || jobs.get() != 0>
                            <button class="btn act" disabled=move || taken.get() == 0 on:click=agree>
                                {move || (words.add)(taken.get())}
                            </button>
                        </Show>
                        <button class="btn" on:click=clear>
                            {move || if jobs.get() > 0 { words.add_none } else { crate::locale::words().frame.close }}
                        </button>
                    </div>
                </section>
            </Show>
        </div>
    }
}

/// One job that came: its name and site, its answer, and what becomes of it where its name is taken.
#[component]
fn One(place: usize) -> impl IntoView {
    let app = app();
    let words = &words().passing;
    let arrival = app.arrivals.with_untracked(|arrivals| arrivals.jobs.get(place).cloned());
    arrival.map(|arrival| {
        let (figure, note, _) = line(&evaluate(&arrival.sheet.job));
        let facts = facts(&arrival.sheet.job, app.settings.get_untracked().units);
        let visits = arrival.sheet.job.record.visits().len();
        let brings = (visits > 0).then(|| (words.visits)(visits));
        let told = [facts, [figure, note].join(": ").trim_end_matches(": ").to_owned(), brings.unwrap_or_default()];
        let told = told.into_iter().filter(|text| !text.trim().is_empty()).collect::<Vec<_>>().join(" · ");
        let fate = Signal::derive(move || {
            app.arrivals.with(|arrivals| arrivals.jobs.get(place).map_or(Fate::Skip, |arrival| arrival.fate))
        });
        let choose = Callback::new(move |fate| {
            app.arrivals.update(|arrivals| {
                if let Some(arrival) = arrivals.jobs.get_mut(place) {
                    arrival.fate = fate;
                }
            });
        });
        let twin = arrival.twin.map(|twin| {
            let said = if twin.same { words.same_here } else { words.name_here };
            let holds = (twin.visits > 0).then(|| (words.here_holds)(twin.visits));
            view! {
                <p>{said}" "{holds}</p>
                <Segmented
                    label=words.what_becomes
                    name=format!("fate-{place}")
                    options=vec![(Fate::Both, words.keep_both), (Fate::Replace, words.replace), (Fate::Skip, words.skip)]
                    value=fate
                    on_choose=choose
                />
            }
        });
        view! { <li><b>{arrival.sheet.job.name}</b><p class="note">{told}</p>{twin}</li> }
    })
}
