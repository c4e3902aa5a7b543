//! The lesson: ten steps on why twice the voltage needs a quarter of the metal, with the learner's own numbers. One step
//! a screen; on paper all of them.

mod ask;
mod handout;
mod own;
mod said;
mod step;

use crate::locale::words;
use crate::parts::icon::Icon;
use crate::parts::screen_settings::{SettingsMenu, Units};
use crate::parts::working::body as worked_out;
use crate::platform::storage::{Saved, follow_lesson};
use crate::platform::{files, focus};
use crate::routes::{Page, Route};
use crate::state::learning::within;
use crate::state::{Open, app};
use ask::Ask;
use handout::{Handout, numbered};
use leptos::html;
use leptos::prelude::*;
use own::Own;
use said::{Known, Teller, workings};
use step::body;
use wellwright_core::papers::{LessonStep, Working, lesson, working};
use wellwright_core::quantity::UnitSystem;

/// The page.
#[component]
pub fn LessonPage() -> impl IntoView {
    let app = app();
    let words = words();
    document().set_title(&format!("{} · {}", words.lesson.title, words.frame.app));
    app.reload_lesson();
    follow_lesson(move || app.reload_lesson());
    let sheet = Memo::new(move |_| app.learning.with(|learning| learning.progress.sheet.clone()));
    let edit = Callback::new(move |edit| app.edit_lesson(edit));
    let open = Open::of(app, sheet, edit, Callback::new(|()| ()));
    let known =
        Memo::new(move |_| open.answer.with(|answer| Some(Known { lesson: lesson(answer)?, answer: answer.clone() })));
    let here = Memo::new(move |before: Option<&usize>| match app.route.get() {
        Route::Lesson(step) if step > 0 => within(step),
        Route::Lesson(_) => app.learning.with_untracked(|learning| learning.progress.step),
        _ => before.copied().unwrap_or(1),
    });
    Effect::new(move |_| {
        let step = here.get();
        app.learn(|progress| progress.step = step);
        if app.route.get_untracked() == Route::Lesson(0) {
            Route::Lesson(step).take_place();
        }
    });
    let numbers = Signal::derive(move || {
        known.with(|known| known.as_ref().map_or_else(String::new, |known| numbers(known, open.system.get())))
    });
    view! {
        <header class="bar">
            <a class="back" href=Route::Jobs.href()><Icon name="back" /><span>{words.frame.jobs}</span></a>
            <div class="name"><b>{words.lesson.word}</b><span class="note">{words.lesson.title}</span></div>
            <span class="only-desk"><Units place="bar" /></span>
            <SettingsMenu>
                <button class="btn" on:click=move |_| files::print()>{words.lesson.print}</button>
            </SettingsMenu>
        </header>
        <main class="lesson">
            <div class="lesson-side">
                <Notices />
                <Own open=open says=numbers />
                <Steps here=here />
            </div>
            <Screen known=known here=here system=open.system />
        </main>
        <Handout known=known numbers=numbers system=open.system />
    }
}

/// The learner's numbers in one line.
fn numbers(known: &Known, system: UnitSystem) -> String {
    let teller = Teller { lesson: &known.lesson, system };
    let metal = (words().fields.metal)(known.lesson.metal);
    (words().lesson.own_now)(&teller.motor(), &teller.lead(), &teller.allowed(), metal)
}

/// What is wrong with what is kept.
#[component]
fn Notices() -> impl IntoView {
    let app = app();
    let words = words();
    let text = move || {
        app.learning.with(|learning| match learning.saved {
            _ if learning.unread.is_some() => Some(words.lesson.unread),
            Saved::Full => Some(words.frame.not_saved),
            Saved::Nowhere => Some(words.frame.no_storage),
            Saved::Yes | Saved::Nearly => None,
        })
    };
    view! {
        <div role="alert">
            {move || text().map(|text| view! { <p class="notice caution"><Icon name="caution" />{text}</p> })}
        </div>
    }
}

/// All ten steps, each with whether it was answered.
#[component]
fn Steps(here: Memo<usize>) -> impl IntoView {
    let app = app();
    let words = &words().lesson;
    let one = |step: LessonStep| {
        let place = step as usize + 1;
        let current = move || here.get() == place;
        let answered = move || app.learning.with(|learning| learning.progress.answers.contains_key(&place));
        let mark = move || match (current(), answered()) {
            (true, _) => "#s-here",
            (false, true) => "#s-done",
            (false, false) => "#s-open",
        };
        view! {
            <li>
                <a href=Route::Lesson(place).href() aria-current=move || current().then_some("step")>
                    <svg class="icon" aria-hidden="true"><use href=mark /></svg>
                    <span>{numbered(step)}</span>
                    {move || answered().then(|| view! { <span class="sr">{words.answered}</span> })}
                </a>
            </li>
        }
    };
    view! {
        <nav class="lesson-steps" aria-label=words.steps_label>
            <h2>{words.steps_label}</h2>
            <ol>{LessonStep::ALL.map(one).into_iter().collect_view()}</ol>
            <button class="btn quiet" on:click=move |_| files::print()>{words.print}</button>
        </nav>
    }
}

/// The step in sight.
#[component]
fn Screen(known: Memo<Option<Known>>, here: Memo<usize>, system: Signal<UnitSystem>) -> impl IntoView {
    let lesson = &words().lesson;
    let some = Memo::new(move |_| known.with(Option::is_some));
    let turned = StoredValue::new(false);
    let step = move || LessonStep::ALL.get(here.get().saturating_sub(1)).copied().unwrap_or(LessonStep::Power);
    let share = move || format!("{}%", here.get() * 100 / LessonStep::ALL.len());
    let progress = move || (lesson.step_of)(here.get(), LessonStep::ALL.len());
    let whole = move || {
        let step = step();
        let own_jobs = (step == LessonStep::Home).then(|| view! { <OwnJobs /> });
        let shown = move || known.with(|known| known.as_ref().map(|known| body(known, step, system.get())));
        view! {
            <Heading step=step turned=turned />
            <Show when=move || some.get() fallback=move || view! { <p class="lesson-says">{lesson.cannot}</p> }>
                {shown}
                <Ask known=known step=step system=system />
                <Workings known=known step=step system=system />
            </Show>
            {own_jobs}
        }
    };
    view! {
        <article class="lesson-main">
            <div class="lesson-progress">
                <p class="note">{progress}</p>
                <div class="lesson-track" aria-hidden="true"><span style:width=share></span></div>
            </div>
            {whole}
            <Turn here=here />
        </article>
    }
}

/// The heading of a step; it takes the focus when the step was turned to.
#[component]
fn Heading(step: LessonStep, turned: StoredValue<bool>) -> impl IntoView {
    let lesson = &words().lesson;
    let heading = NodeRef::<html::H1>::new();
    Effect::new(move |_| {
        let Some(heading) = heading.get() else { return };
        if turned.try_update_value(|turned| std::mem::replace(turned, true)) == Some(true) {
            focus::arrive(&heading);
        }
    });
    let first =
        (step == LessonStep::Power).then(|| view! { <p class="lesson-in">{lesson.title}". "{lesson.lead_in}</p> });
    view! {
        {first}
        <h1 class="chapter" tabindex="-1" node_ref=heading>{lesson.steps[step as usize]}</h1>
    }
}

/// The workings behind the figures of a step, folded away.
#[component]
fn Workings(known: Memo<Option<Known>>, step: LessonStep, system: Signal<UnitSystem>) -> impl IntoView {
    let one = |working: Working| {
        let title = (words().working.title)(working.topic);
        view! { <details class="fold lesson-fold-working"><summary><h3>{title}</h3></summary><div class="working">{worked_out(working)}</div></details> }
    };
    let found = Memo::new(move |_| {
        known.with(|known| {
            let of = |topic| working(&known.as_ref()?.answer, topic, system.get());
            workings(step).into_iter().filter_map(of).collect::<Vec<_>>()
        })
    });
    view! { <section class="lesson-workings" aria-label=words().lesson.worked>{move || found.get().into_iter().map(one).collect_view()}</section> }
}

/// The jobs on this device, each with the way to its costs.
#[component]
fn OwnJobs() -> impl IntoView {
    let app = app();
    let lesson = &words().lesson;
    let jobs = move || {
        let one = |kept: &crate::state::Kept| {
            let href = Route::Job(kept.id.clone(), Page::Cost).href();
            view! { <li><a href=href>{(lesson.home_job)(&kept.sheet.job.name)}</a></li> }
        };
        app.shelf.with(|shelf| shelf.jobs.iter().map(one).collect_view())
    };
    view! {
        <section class="lesson-jobs">
            <p>{lesson.home_own}</p>
            <ul>{jobs}</ul>
        </section>
    }
}

/// To the step before and to the step after.
#[component]
fn Turn(here: Memo<usize>) -> impl IntoView {
    let lesson = &words().lesson;
    let first = move || here.get() == 1;
    let last = move || here.get() == LessonStep::ALL.len();
    let to = |step: usize| Route::Lesson(within(step)).href();
    let before = move || to(here.get().saturating_sub(1));
    let after = move || to(here.get() + 1);
    view! {
        <nav class="lesson-turn" aria-label=lesson.word>
            {move || (!first()).then(|| view! { <a class="btn" href=before()>{lesson.back}</a> })}
            {move || match last() {
                false => view! { <a class="btn act" href=after()>{lesson.next}</a> }.into_any(),
                true => view! { <a class="btn" href=to(1)>{lesson.first_again}</a> }.into_any(),
            }}
        </nav>
    }
}
