//! Readings of the last visit: typed one by one, each judged at once against what the job predicts.

use super::when;
use crate::locale::{self, not_read_text, percent, unit_name, words};
use crate::pages::job::Desk;
use crate::parts::group::Group;
use crate::parts::icon::Icon;
use crate::parts::verdict::{Level, Verdict};
use crate::platform::clock;
use crate::state::Noted;
use leptos::html;
use leptos::prelude::*;
use wellwright_core::finding::Severity;
use wellwright_core::job::record::Visit;
use wellwright_core::job::{Reading, Record};
use wellwright_core::quantity::{Entry, UnitSystem};
use wellwright_core::startup::{Balance, Judged, VisitJudged, judge, predicted, wanted};

/// The readings of the last visit, and the way to begin one.
#[component]
pub fn Readings(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let words = &words().startup;
    let judged =
        Memo::new(move |_| open.sheet.with(|sheet| open.answer.with(|answer| judge(&sheet.job, answer).pop())));
    let asked = Memo::new(move |_| open.sheet.with(|sheet| open.answer.with(|answer| wanted(&sheet.job, answer))));
    let begun =
        Memo::new(move |_| judged.with(|visit| visit.as_ref().map(|visit| (words.begun)(&when(&visit.at), &visit.by))));
    let row = move |reading: Reading| view! { <OneReading reading=reading desk=desk judged=judged /> };
    view! {
        <Group title=words.readings>
            <p class="note">{words.readings_hint}</p>
            <NewVisit desk=desk id="visit.by" />
            <Show when=move || begun.with(Option::is_some) fallback=move || view! { <p class="note">{words.no_visit}</p> }>
                <h4>{move || begun.get()}</h4>
                <Stop judged=judged />
                <div class="readings">{move || asked.get().into_iter().map(row).collect_view()}</div>
                <Balances judged=judged />
            </Show>
        </Group>
    }
}

/// Begins a visit.
#[component]
pub fn NewVisit(
    /// What the pages share.
    desk: Desk,
    /// Id of the field, unique on the page.
    id: &'static str,
) -> impl IntoView {
    let words = &words().startup;
    let input = NodeRef::<html::Input>::new();
    let begin = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let by = input.get_untracked().map(|input| input.value().trim().to_owned()).unwrap_or_default();
        desk.open.note.run(Noted::Begin(by, clock::now()));
        if let Some(input) = input.get_untracked() {
            input.set_value("");
        }
    };
    view! {
        <form class="new-visit" on:submit=begin>
            <div class="field line">
                <label for=id>{words.by}</label>
                <input id=id node_ref=input maxlength="60" autocomplete="name" />
            </div>
            <button class="btn" type="submit">{words.begin}</button>
        </form>
    }
}

/// A plate across the page where a reading stops the work.
#[component]
fn Stop(judged: Memo<Option<VisitJudged>>) -> impl IntoView {
    let stops =
        Memo::new(move |_| judged.with(|visit| visit.as_ref().and_then(VisitJudged::gravest) == Some(Severity::Stop)));
    view! {
        <div role="alert">
            <Show when=move || stops.get()>
                <p class="stop-plate"><Icon name="stop" /><b>{words().startup.stop}</b></p>
            </Show>
        </div>
    }
}

/// One reading: what is typed, what the job predicts, the verdict, what stood there before.
#[component]
fn OneReading(reading: Reading, desk: Desk, judged: Memo<Option<VisitJudged>>) -> impl IntoView {
    let open = desk.open;
    let words = words();
    let unit = Memo::new(move |_| open.system.get().unit(reading.kind()));
    let typed = Memo::new(move |_| open.sheet.with(|sheet| last(&sheet.job.record, reading)).unwrap_or_default());
    let verdict = Memo::new(move |_| {
        judged.with(|visit| visit.as_ref()?.readings.iter().find(|judged| judged.reading == reading).cloned())
    });
    let fault = Memo::new(move |_| typed.with(|text| fault(reading, text, verdict.with(Option::is_some))));
    let before = Memo::new(move |_| open.sheet.with(|sheet| before(&sheet.job.record, reading)));
    let id = format!("reading.{}", reading as usize);
    let says = format!("{id}-says");
    let input = move |event| {
        let text: String = event_target_value(&event);
        let entry = match locale::read(&text, reading.kind()) {
            Ok(Some(read)) => Some(Entry::new(read.value, read.unit.unwrap_or_else(|| unit.get_untracked()))),
            Ok(None) | Err(_) => None,
        };
        open.note.run(Noted::Type(reading, text, entry, clock::now()));
    };
    let leave = move |_| {
        let _ = open.note.try_run(Noted::Close);
    };
    let state = move || match (fault.with(Option::is_some), typed.with(String::is_empty)) {
        (true, _) => "error",
        (false, true) => "rest",
        (false, false) => "typed",
    };
    let judgement = move || {
        verdict.get().and_then(|judged| said(&judged, open.system.get())).map(|(level, reason)| {
            view! { <Verdict level=level reason=reason /> }
        })
    };
    let wanted =
        Memo::new(move |_| open.sheet.with(|sheet| open.answer.with(|answer| predicted(&sheet.job, answer, reading))));
    let predicts = move || wanted.get().map(|entry| (words.startup.predicted)(&shown(entry, open.system.get())));
    view! {
        <div class="reading">
            <div class="field" data-state=state>
                <label for=id.clone()>{(words.startup.reading)(reading)}<small>{predicts}</small></label>
                <input
                    id=id
                    inputmode="decimal"
                    autocomplete="off"
                    spellcheck="false"
                    enterkeyhint="done"
                    maxlength="60"
                    aria-describedby=says.clone()
                    aria-invalid=move || fault.with(Option::is_some).then_some("true")
                    prop:value=typed
                    on:input=input
                    on:blur=leave
                />
                <span class="u" aria-hidden="true">{move || unit_name(unit.get())}</span>
                <p class="msg" id=says>
                    <Show when=move || fault.with(Option::is_some)><Icon name="error" /></Show>
                    <span>{move || fault.get()}</span>
                </p>
            </div>
            <div aria-live="polite">{judgement}</div>
            <p class="note" hidden=move || before.with(String::is_empty)>{before}</p>
        </div>
    }
}

/// What stands for a reading of the last visit, as it was typed.
pub fn last(record: &Record, reading: Reading) -> Option<String> {
    Some(record.visits().last()?.last(reading)?.text.clone())
}

/// What stood there before a correction.
pub fn before(record: &Record, reading: Reading) -> String {
    let words = &words().startup;
    let Some(visit) = record.visits().last() else { return String::new() };
    let told = told(visit, reading);
    if told.is_empty() { String::new() } else { (words.before)(&told.join("; ")) }
}

fn told(visit: &Visit, reading: Reading) -> Vec<String> {
    let all: Vec<_> = visit.history(reading).collect();
    let corrected = all.iter().rev().skip(1).rev();
    let time = |at: &str| at.split_once('T').map_or("", |(_, time)| time).chars().take(5).collect::<String>();
    corrected.map(|taken| (words().startup.corrected)(&taken.text, &time(&taken.at))).collect()
}

/// Why what is typed is no reading.
pub fn fault(reading: Reading, text: &str, judged: bool) -> Option<String> {
    match locale::read(text, reading.kind()) {
        Err(reason) => Some(not_read_text(text, &reason)),
        Ok(Some(_)) if !judged => Some(words().startup.out_of_range.to_owned()),
        Ok(_) => None,
    }
}

/// A figure in the units of the screen.
pub fn shown(entry: Entry, system: UnitSystem) -> String {
    locale::result(entry.shown_in(system)).text()
}

/// The verdict of a reading: the limit that it passed and what to look at, the likeliest first.
pub fn said(judged: &Judged, system: UnitSystem) -> Option<(Level, String)> {
    let words = &words().startup;
    let severity = judged.severity?;
    let limit = judged.limit?;
    let text = shown(limit, system);
    let passed = if judged.value.value > limit.value { (words.over)(&text) } else { (words.under)(&text) };
    let advice = judged.advice.iter().map(|advice| (words.advice)(*advice));
    let whole: Vec<&str> = core::iter::once(passed.as_str()).chain(advice).collect();
    Some((Level::Found(severity), whole.join(" ")))
}

/// How far the three lines differ.
#[component]
fn Balances(judged: Memo<Option<VisitJudged>>) -> impl IntoView {
    let words = &words().startup;
    let row = move |(name, found): (&'static str, Balance)| {
        let level = found.severity.map_or(Level::Fine, Level::Found);
        view! { <div class="reading"><h4>{name}</h4><Verdict level=level reason=uneven(&found) /></div> }
    };
    let rows = move || {
        let found = judged.with(|visit| visit.as_ref().map(|visit| (visit.amps, visit.volts)));
        let (amps, volts) = found.unwrap_or_default();
        let both = [(words.unbalance_amps, amps), (words.unbalance_volts, volts)];
        both.into_iter().filter_map(|(name, found)| Some((name, found?))).map(row).collect_view()
    };
    view! { <div aria-live="polite">{rows}</div> }
}

fn uneven(found: &Balance) -> String {
    let words = &words().startup;
    let share = percent(found.share, 1).text();
    let Some(limit) = found.limit else { return (words.unbalance_fine)(&share) };
    let line = (words.reading)(found.farthest);
    let mut text = (words.unbalance)(&share, line, &percent(limit, 0).text());
    let less = found.left.filter(|left| *left < 1.0).map(|left| (words.left)(&percent(left, 0).text()));
    let next = (words.advice)(wellwright_core::startup::Advice::RollLines);
    for more in less.as_deref().into_iter().chain([next]) {
        text = format!("{text} {more}");
    }
    text
}
