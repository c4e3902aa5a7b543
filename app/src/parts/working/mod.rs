//! The working behind an answer: result, verdict, formulas with the values put in, sources. On a wide screen it takes
//! the place of the inputs and the picture stays whole; on a phone it covers the page.

mod formula;

use super::icon::Icon;
use super::verdict::{Level, Verdict};
use crate::locale::{lead_size, measured, rating, result, source_text, unit_name, words};
use crate::platform::{clipboard, focus};
use crate::state::app;
use formula::{equals, line, markup};
use leptos::ev;
use leptos::html;
use leptos::prelude::*;
use wellwright_core::finding::Severity;
use wellwright_core::papers::{Entered, EnteredValue, LimitKind, Put, Step, Working};
use wellwright_core::quantity::Unit;

/// The drawer.
#[component]
pub fn WorkingDrawer(
    /// The working; nothing while figures for it are missing.
    working: Memo<Option<Working>>,
    /// Whether it takes the focus as it opens.
    #[prop(default = true)]
    takes_focus: bool,
    /// Closes the drawer.
    on_close: Callback<()>,
) -> impl IntoView {
    let app = app();
    let words = words();
    let (drawer, heading) = (NodeRef::<html::Section>::new(), NodeRef::<html::H2>::new());
    // Where the drawer covers the page, Tab stays in it.
    let stay = move |event: ev::KeyboardEvent| {
        if let Some(drawer) = drawer.get_untracked().filter(|_| event.key() == "Tab") {
            focus::stay_inside(&event, &drawer);
        }
    };
    Effect::new(move |_| {
        if let Some(heading) = heading.get().filter(|_| takes_focus) {
            let _ = heading.focus();
        }
    });
    let escape = window_event_listener(ev::keydown, move |event| {
        if event.key() == "Escape" && !event.default_prevented() {
            on_close.run(());
        }
    });
    on_cleanup(move || escape.remove());
    let title = move || working.with(|working| working.as_ref().map(|working| (words.working.title)(working.topic)));
    let copy = move |_| {
        let text = working.with_untracked(|working| working.as_ref().map(as_text)).unwrap_or_default();
        clipboard::copy(&text, move |done| {
            app.tell(if done { words.frame.copied } else { words.frame.not_copied }.to_owned());
        });
    };
    view! {
        <section class="working" aria-labelledby="working-title" node_ref=drawer on:keydown=stay>
            <header>
                <div>
                    <p class="note">{words.working.word}</p>
                    <h2 id="working-title" class="chapter" tabindex="-1" node_ref=heading>{title}</h2>
                </div>
                <button class="btn" on:click=copy>{words.frame.copy}</button>
                <button class="btn" aria-label=words.frame.close on:click=move |_| on_close.run(())><Icon name="close" /></button>
            </header>
            {move || working.get().map(body)}
        </section>
    }
}

/// The whole of a working: what it comes to, its sums, its values, its sources.
pub fn body(working: Working) -> impl IntoView {
    let words = &words().working;
    let answer = result(working.result);
    let more = working.more.iter().map(|more| result(*more).text()).collect::<Vec<_>>().join(", ");
    let verdict = working.limit.map(|limit| {
        // A limit is never rounded to its good side: it stands in full.
        let (actual, bound) = (result(limit.actual).text(), measured(limit.limit).text());
        let level = match limit.severity {
            _ if limit.holds => Level::Fine,
            Some(severity) => Level::Found(severity),
            None => Level::Found(Severity::Caution),
        };
        let sentence = match limit.kind {
            LimitKind::AtLeast => (words.at_least)(&actual, &bound),
            LimitKind::AtMost => (words.at_most)(&actual, &bound),
        };
        view! { <Verdict level=level reason=sentence /> }
    });
    let sources = working.sources.iter().map(|key| view! { <li>{source_text(key)}</li> }).collect_view();
    let no_sources = working.sources.is_empty().then(|| view! { <li>{words.definition_only}</li> });
    view! {
        <p class="worked">
            <span class="figure">{answer.figure}<span class="unit">{answer.unit}</span></span>
            <b>{more}</b>
        </p>
        {verdict}
        {working.caveats.into_iter().map(|caveat| view! { <p class="note">{(words.caveat)(caveat)}</p> }).collect_view()}
        {(!working.steps.is_empty()).then(|| view! {
            <h3>{words.formula}</h3>
            <div>{working.steps.into_iter().map(step).collect_view()}</div>
        })}
        <h3>{words.values}</h3>
        <table class="values"><tbody>{working.values.into_iter().map(value).collect_view()}</tbody></table>
        {(!working.entered.is_empty()).then(|| view! {
            <h3>{words.entered}</h3>
            <table class="values"><tbody>{working.entered.into_iter().map(entered).collect_view()}</tbody></table>
        })}
        <h3>{words.sources}</h3>
        <ul class="note">{sources}{no_sources}</ul>
    }
}

/// A step: the formula, then the same with numbers, then the result, on one line where there is room. What is put in is
/// the program's own, never a user's text.
pub fn step(step: Step) -> impl IntoView {
    let formula = markup(step.symbol, &step.formula);
    let filled = (step.formula != step.filled).then(|| {
        let numbers = markup(step.symbol, &step.filled);
        view! { <div class="filled"><span inner_html=numbers></span><span inner_html=equals(step.result)></span></div> }
    });
    view! {
        <div class="formula" tabindex="0" role="group" aria-label=step.symbol.text()>
            <div inner_html=formula></div>
            {filled}
        </div>
    }
}

fn value(put: Put) -> impl IntoView {
    let words = &words().working;
    view! {
        <tr>
            <th scope="row"><i>{put.symbol.letter}<sub>{put.symbol.index}</sub></i><span>{(words.name)(put.name)}</span></th>
            <td>{measured(put.value).text()}</td>
            <td class="origin" data-origin=(put.origin == wellwright_core::job::Origin::Assumed).then_some("assumed")>
                {(words.origin)(put.origin)}
            </td>
        </tr>
    }
}

fn entered(entered: Entered) -> impl IntoView {
    view! {
        <tr>
            <th scope="row"><i></i><span>{(words().working.name)(entered.name)}</span></th>
            <td>{entered_text(entered.value)}</td>
        </tr>
    }
}

/// What a table was entered with, in words.
fn entered_text(value: EnteredValue) -> String {
    let fields = &words().fields;
    match value {
        EnteredValue::Size(size) => lead_size(size),
        EnteredValue::Metal(metal) => (fields.metal)(metal).to_owned(),
        EnteredValue::Rating(column) => rating(column).to_owned(),
        EnteredValue::Temperature(temperature) => measured(temperature).text(),
        EnteredValue::Build(build) => (fields.build)(build).to_owned(),
        EnteredValue::Sets(sets) => sets.to_string(),
        EnteredValue::Nominal(size) => format!("{}\u{a0}{}", size.name(), unit_name(Unit::Inch)),
        _ => String::new(),
    }
}

/// The working as text, for a message or a file.
fn as_text(working: &Working) -> String {
    let words = &words().working;
    let mut lines = vec![format!("{}: {}", (words.title)(working.topic), measured(working.result).text())];
    lines.extend(working.caveats.iter().map(|caveat| (words.caveat)(*caveat).to_owned()));
    lines.extend(working.steps.iter().map(|step| line(step.symbol, &step.formula, None)));
    lines.extend(working.steps.iter().map(|step| line(step.symbol, &step.filled, Some(step.result))));
    let value = |put: &Put| {
        let (name, origin) = ((words.name)(put.name), (words.origin)(put.origin));
        format!("{} = {}, {name}, {origin}", put.symbol.text(), measured(put.value).text())
    };
    lines.extend(working.values.iter().map(value));
    lines.extend(
        working
            .entered
            .iter()
            .map(|entered| format!("{}: {}", (words.name)(entered.name), entered_text(entered.value))),
    );
    lines.extend(working.sources.iter().map(|key| source_text(key)));
    lines.join("\n")
}
