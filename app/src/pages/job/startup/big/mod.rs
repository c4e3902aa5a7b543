//! One thing a screen, in large type, for one hand in a glove: each setting, each step of the check list, each reading.

mod screens;

use crate::locale::words;
use crate::pages::job::Desk;
use crate::parts::icon::Icon;
use crate::platform::wake;
use crate::state::Noted;
use leptos::html;
use leptos::prelude::*;
use screens::{CheckScreen, ReadingScreen, SettingScreen, VisitScreen};
use wellwright_core::job::{Check, Reading};
use wellwright_core::startup::{SettingCode, checks, settings, wanted};

/// What a screen is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Step {
    Setting(SettingCode),
    Check(Check),
    Visit,
    Reading(Reading),
}

/// The way through the screens.
#[derive(Clone, Copy)]
struct Walk {
    desk: Desk,
    /// The screen that is shown; nothing while all are closed.
    at: RwSignal<Option<usize>>,
    steps: Memo<Vec<Step>>,
}

impl Walk {
    /// Goes forward or back; past either end the screens close.
    fn go(self, by: isize) {
        self.desk.open.note.run(Noted::Close);
        wake::ask();
        let count = self.steps.with_untracked(Vec::len);
        self.at.update(|at| *at = at.and_then(|at| at.checked_add_signed(by)).filter(|at| *at < count));
    }

    fn close(self) {
        self.at.set(None);
    }
}

/// The button that opens the screens, and the screens.
#[component]
pub fn Big(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let words = &words().startup;
    let steps = Memo::new(move |_| {
        open.sheet.with(|sheet| {
            open.answer.with(|answer| {
                let job = &sheet.job;
                let settings = settings(job, answer).into_iter().map(|setting| Step::Setting(setting.code));
                let checks = checks(job, answer).into_iter().map(Step::Check);
                let readings = wanted(job, answer).into_iter().map(Step::Reading);
                settings.chain(checks).chain([Step::Visit]).chain(readings).collect::<Vec<_>>()
            })
        })
    });
    let walk = Walk { desk, at: RwSignal::new(None), steps };
    let dialog = NodeRef::<html::Dialog>::new();
    Effect::new(move |_| {
        let Some(dialog) = dialog.get() else { return };
        let shown = walk.at.with(Option::is_some);
        if shown && !dialog.open() {
            wake::ask();
            let _ = dialog.show_modal();
        } else if !shown && dialog.open() {
            wake::release();
            dialog.close();
        }
    });
    on_cleanup(wake::release);
    let step = Memo::new(move |_| steps.with(|steps| steps.get(walk.at.get()?).copied()));
    let screen = move || {
        step.get().map(|step| match step {
            Step::Setting(code) => view! { <SettingScreen code=code walk=walk /> }.into_any(),
            Step::Check(check) => view! { <CheckScreen check=check walk=walk /> }.into_any(),
            Step::Visit => view! { <VisitScreen walk=walk /> }.into_any(),
            Step::Reading(reading) => view! { <ReadingScreen reading=reading walk=walk /> }.into_any(),
        })
    };
    let place = move || {
        let at = walk.at.get().unwrap_or_default() + 1;
        (words.check_count)(at, steps.with(Vec::len))
    };
    view! {
        <button class="btn act to-big" type="button" on:click=move |_| walk.at.set(Some(0))>{words.big}</button>
        <dialog node_ref=dialog class="big" aria-label=words.big on:close=move |_| {
            open.note.run(Noted::Close);
            walk.close();
        }>
            <header>
                <button class="btn quiet" type="button" on:click=move |_| walk.close()>
                    <Icon name="back" />{words.big_close}
                </button>
                <b aria-live="polite">{place}</b>
            </header>
            <progress
                aria-label=words.big
                max=move || steps.with(Vec::len).to_string()
                prop:value=move || f64::from(u32::try_from(walk.at.get().unwrap_or_default() + 1).unwrap_or(0))
            ></progress>
            {screen}
        </dialog>
    }
}
