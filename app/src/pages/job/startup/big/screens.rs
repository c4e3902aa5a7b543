//! The screens: a setting, a step of the check list, who measures, a reading with its number pad.

use super::Walk;
use crate::locale::{decimals, unit_name, words};
use crate::pages::job::startup::reading::{AtHand, last_visit, said, uneven};
use crate::pages::job::startup::readings::NewVisit;
use crate::pages::job::startup::settings::line_of;
use crate::pages::job::startup::when;
use crate::parts::icon::Icon;
use crate::parts::verdict::{Level, Verdict};
use crate::platform::clock;
use crate::state::Noted;
use leptos::prelude::*;
use wellwright_core::job::{Check, Reading};
use wellwright_core::startup::SettingCode;

/// The keys under the thumb: back, and what goes on.
#[component]
fn Thumb(walk: Walk, children: Children) -> impl IntoView {
    view! {
        <footer>
            <button class="btn" type="button" aria-label=words().startup.big_back on:click=move |_| walk.go(-1)>
                <Icon name="back" />
            </button>
            {children()}
        </footer>
    }
}

/// A setting, as large as it goes.
#[component]
pub fn SettingScreen(code: SettingCode, walk: Walk) -> impl IntoView {
    let words = words();
    let open = walk.desk.open;
    let line = Memo::new(move |_| {
        open.sheet.with(|sheet| open.answer.with(|answer| line_of(code, &sheet.job, answer, open.system.get())))
    });
    let part = move |pick: fn(&crate::pages::job::startup::settings::Line) -> String| {
        move || line.with(|line| line.as_ref().map(pick))
    };
    let assumed = move || line.with(|line| line.as_ref().is_some_and(|line| line.assumed));
    view! {
        <div class="one">
            <h2 class="what">{(words.startup.setting)(code)}</h2>
            <p class="val">{part(|line| line.value.clone())}<span class="unit">{part(|line| line.unit.to_owned())}</span></p>
            <p>{(words.startup.why)(code)}"."</p>
            <p class="note">{part(|line| line.safe.clone())}" "<Show when=assumed><em>{words.fields.assumed}</em></Show></p>
        </div>
        <Thumb walk=walk>
            <button class="btn act" type="button" on:click=move |_| walk.go(1)>{words.startup.is_set}</button>
        </Thumb>
    }
}

/// A step of the check list.
#[component]
pub fn CheckScreen(check: Check, walk: Walk) -> impl IntoView {
    let words = &words().startup;
    let open = walk.desk.open;
    let at = Memo::new(move |_| open.sheet.with(|sheet| sheet.job.record.ticked(check).map(|tick| tick.at.clone())));
    let tick = move |done| open.note.run(Noted::Tick(check, done, clock::now()));
    let done = move |_| {
        tick(true);
        walk.go(1);
    };
    view! {
        <div class="one">
            <h2 class="what">{(words.check)(check)}</h2>
            <Show when=move || at.with(Option::is_some)>
                <p>{move || at.get().map(|at| (words.done_at)(&when(&at)))}</p>
                <button class="btn" type="button" on:click=move |_| tick(false)>{words.take_back}</button>
            </Show>
        </div>
        <Thumb walk=walk>
            <button class="btn" type="button" on:click=move |_| walk.go(1)>{words.later}</button>
            <button class="btn act" type="button" on:click=done>{words.done}</button>
        </Thumb>
    }
}

/// Who measures: a visit is begun, or the last one gone on with.
#[component]
pub fn VisitScreen(walk: Walk) -> impl IntoView {
    let words = &words().startup;
    let open = walk.desk.open;
    let visit = Memo::new(move |_| {
        open.sheet
            .with(|sheet| sheet.job.record.visits().last().map(|visit| (words.begun)(&when(&visit.at), &visit.by)))
    });
    view! {
        <div class="one">
            <h2 class="what">{words.readings}</h2>
            <p class="val small">{move || visit.get().unwrap_or_else(|| words.no_visit.to_owned())}</p>
            <NewVisit desk=walk.desk id="big.by" />
        </div>
        <Thumb walk=walk>
            <button class="btn act" type="button" disabled=move || visit.with(Option::is_none) on:click=move |_| walk.go(1)>
                {words.next}
            </button>
        </Thumb>
    }
}

/// A reading: its figure, what the job predicts, the verdict, and a pad of large keys. Where it stops the work nothing
/// here goes on.
#[component]
pub fn ReadingScreen(reading: Reading, walk: Walk) -> impl IntoView {
    let words = &words().startup;
    let open = walk.desk.open;
    let at_hand = AtHand::of(open, reading, last_visit(open));
    let AtHand { unit, text, verdict, balance, fault, expects, before, write, .. } = at_hand;
    let stops = Memo::new(move |_| at_hand.stops());
    // What to do takes the place of the keys; they stay while the 0 of 0.8 is typed.
    let is_zero = move || verdict.with(|judged| judged.as_ref().is_some_and(|judged| judged.value.value == 0.0));
    let pads = move || !stops.get() || is_zero();
    // Done with, the lines are compared: then it may stop after all.
    let next = move |_| {
        open.note.run(Noted::Close);
        if !stops.get_untracked() {
            walk.go(1);
        }
    };
    let judgement = move || {
        let judged = verdict.get()?;
        let (level, reason) = said(&judged, open.system.get()).unwrap_or((Level::Fine, String::new()));
        Some(view! { <Verdict level=level reason=reason /> })
    };
    let lines = move || {
        let found = balance.get()?;
        Some(view! { <Verdict level=Level::Found(found.severity?) reason=uneven(&found) /> })
    };
    view! {
        <div class="one">
            <h2 class="what">{(words.reading)(reading)}</h2>
            <div class="typed">
                <input
                    class="val"
                    id="big.reading"
                    inputmode="none"
                    autocomplete="off"
                    maxlength="60"
                    aria-label=(words.reading)(reading)
                    prop:value=text
                    on:input=move |event| write.run(event_target_value(&event))
                />
                <span class="unit">{move || unit_name(unit.get())}</span>
            </div>
            <p class="note">{expects}</p>
            <p class="note">{before}</p>
            <p class="msg">{fault}</p>
            <div role="alert">
                <Show when=move || stops.get()><p class="stop-plate"><Icon name="stop" /><b>{words.stop}</b></p></Show>
            </div>
            <div aria-live="polite">{judgement}{lines}</div>
        </div>
        <Show when=pads><Pad text=text write=write /></Show>
        <Show
            when=move || stops.get()
            fallback=move || view! {
                <Thumb walk=walk>
                    <button class="btn act" type="button" on:click=next>{words.next}</button>
                </Thumb>
            }
        >
            <footer>
                <button class="btn" type="button" on:click=move |_| {
                    open.note.run(Noted::Close);
                    write.run(String::new());
                }>{words.retype}</button>
                <button class="btn danger" type="button" on:click=move |_| walk.close()>{words.keep_and_stop}</button>
            </footer>
        </Show>
    }
}

/// Large keys for figures.
#[component]
fn Pad(text: Memo<String>, write: Callback<String>) -> impl IntoView {
    let words = &words().startup;
    let add = move |letter: char| {
        let mut now = text.get_untracked();
        now.push(letter);
        write.run(now);
    };
    let digits = ('1'..='9')
        .map(|digit| view! { <button class="btn" type="button" on:click=move |_| add(digit)>{digit}</button> });
    let point = decimals().sign();
    let shorter = move |_| {
        let mut now = text.get_untracked();
        now.pop();
        write.run(now);
    };
    view! {
        <div class="pad" role="group" aria-label=words.pad>
            {digits.collect_view()}
            <button class="btn" type="button" on:click=move |_| add(point)>{point}</button>
            <button class="btn" type="button" on:click=move |_| add('0')>"0"</button>
            <button class="btn" type="button" aria-label=words.erase on:click=shorter><Icon name="close" /></button>
        </div>
    }
}
