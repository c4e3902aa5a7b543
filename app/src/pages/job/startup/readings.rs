//! Readings of the last visit: typed one by one, each judged at once against what the job predicts.

use super::reading::{AtHand, last_visit, said, uneven};
use super::when;
use crate::locale::{finding_text, unit_name, words};
use crate::pages::job::Desk;
use crate::parts::equals::Equals;
use crate::parts::group::Group;
use crate::parts::icon::Icon;
use crate::parts::verdict::{Level, Verdict};
use crate::platform::clock;
use crate::state::Noted;
use leptos::html;
use leptos::prelude::*;
use wellwright_core::job::Reading;
use wellwright_core::startup::{Balance, VisitJudged, stops, wanted};

/// The readings of the last visit, and the way to begin one.
#[component]
pub fn Readings(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let words = &words().startup;
    let judged = last_visit(open);
    // Nothing is being typed yet, whatever was when the page was left.
    Effect::new(move |_| open.note.run(Noted::Close));
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
                <Stop desk=desk />
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

/// A plate across the page where readings stop the work, and which they are.
#[component]
fn Stop(desk: Desk) -> impl IntoView {
    let open = desk.open;
    let found = Memo::new(move |_| open.sheet.with(|sheet| open.answer.with(|answer| stops(&sheet.job, answer))));
    let row = move |finding| view! { <p>{finding_text(&finding, open.system.get())}</p> };
    view! {
        <div role="alert">
            <Show when=move || found.with(|found| !found.is_empty())>
                <p class="stop-plate"><Icon name="stop" /><b>{words().startup.stop}</b></p>
                {move || found.get().into_iter().map(row).collect_view()}
            </Show>
        </div>
    }
}

/// One reading: what is typed, what the job predicts, the verdict, what stood there before.
#[component]
fn OneReading(reading: Reading, desk: Desk, judged: Memo<Option<VisitJudged>>) -> impl IntoView {
    let open = desk.open;
    let words = words();
    let AtHand { unit, text, verdict, fault, expects, opens, before, write, .. } = AtHand::of(open, reading, judged);
    let id = format!("reading.{}", reading as usize);
    let says = format!("{id}-says");
    let leave = move |_| {
        let _ = open.note.try_run(Noted::Close);
    };
    let state = move || match (fault.with(Option::is_some), text.with(String::is_empty)) {
        (true, _) => "error",
        (false, true) => "rest",
        (false, false) => "typed",
    };
    let judgement = move || {
        verdict.get().and_then(|judged| said(&judged, open.system.get())).map(|(level, reason)| {
            view! { <Verdict level=level reason=reason /> }
        })
    };
    let equals = move || {
        let of = format!("{}, {}", (words.startup.reading)(reading), expects.get().unwrap_or_default());
        opens.get().map(|topic| view! { <Equals of=of on_open=desk.opens(topic) /> })
    };
    view! {
        <div class="reading">
            <div class="field" data-state=state>
                <label for=id.clone()>{(words.startup.reading)(reading)}<small>{expects}</small></label>
                <input
                    id=id
                    inputmode="decimal"
                    autocomplete="off"
                    spellcheck="false"
                    enterkeyhint="done"
                    maxlength="60"
                    aria-describedby=says.clone()
                    aria-invalid=move || fault.with(Option::is_some).then_some("true")
                    prop:value=text
                    on:input=move |event| write.run(event_target_value(&event))
                    on:blur=leave
                />
                <span class="u" aria-hidden="true">{move || unit_name(unit.get())}</span>
                {equals}
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
