//! The total dynamic head and its parts: one bar of them all, and a row for each with its own piece of the bar. Parts are
//! told apart by pattern, color and name together; one that takes from the total stands on the other side of zero.

mod rows;

pub use rows::{HeadParts, head_parts};

use super::equals::Equals;
use crate::locale::words;
use leptos::prelude::*;
use rows::{Fill, HeadRow};
use wellwright_core::papers::Topic;

/// The head and its parts; nothing where there are none.
#[component]
pub fn HeadBar(
    /// The total and its parts, as [`head_parts`] gives them.
    parts: Memo<Option<HeadParts>>,
    /// Opens the working of the total or of a part; without it rows are plain.
    #[prop(optional, into)]
    on_working: Option<Callback<Topic>>,
) -> impl IntoView {
    let charts = &words().charts;
    let total = move || parts.with(|parts| parts.as_ref().map(|parts| parts.total.clone()));
    let figure = move || total().map_or_else(String::new, |total| total.figure);
    let unit = move || total().map_or("", |total| total.unit);
    let opens = move || {
        on_working.map(|open| {
            let total = Callback::new(move |()| open.run(Topic::TotalHead));
            view! { <Equals of=charts.total_head.to_owned() on_open=total /> }
        })
    };
    // A row stays while its part does, so that the focus stays, too.
    let keys = move || {
        let key = |row: &HeadRow| (row.fill.class(), row.fill, row.topic.filter(|_| on_working.is_some()));
        parts.with(|parts| parts.as_ref().map_or_else(Vec::new, |parts| parts.rows.iter().map(key).collect()))
    };
    view! {
        <Show when=move || parts.with(Option::is_some)>
            <section class="head-bar">
                <div class="head-total">
                    <h3>{charts.total_head}</h3>
                    {opens}
                    <span class="figure">{figure}<span class="unit">{unit}</span></span>
                </div>
                <Stack parts=parts />
                <ul aria-label=charts.head_parts>
                    <For
                        each=keys
                        key=|(class, _, topic)| (*class, topic.is_some())
                        children=move |(_, fill, topic)| view! { <li><Row parts=parts fill=fill opens=on_working.zip(topic) /></li> }
                    />
                </ul>
            </section>
        </Show>
    }
}

/// All parts in one bar, and under it the total where it is shorter than the bar.
#[component]
fn Stack(parts: Memo<Option<HeadParts>>) -> impl IntoView {
    let pieces = move || {
        let rows = parts.with(|parts| parts.as_ref().map_or_else(Vec::new, |parts| parts.rows.clone()));
        rows.into_iter().map(|row| piece(row.fill, row.from, row.share)).collect_view()
    };
    let zero = Memo::new(move |_| parts.with(|parts| parts.as_ref().map(|parts| (parts.zero, parts.end))));
    let crossed = move || zero.get().filter(|(zero, _)| *zero > 0.0);
    view! {
        <div class="head-stack" class:split=move || crossed().is_some() aria-hidden="true">
            <div class="bar-line">{pieces}</div>
            {move || crossed().map(|(zero, end)| view! {
                <span class="head-zero" style:left=percent(zero)></span>
                <span class="head-span" style:left=percent(zero.min(end)) style:width=percent((end - zero).abs())></span>
            })}
        </div>
    }
}

/// A part: its pattern, name, length and its piece of the bar.
#[component]
fn Row(parts: Memo<Option<HeadParts>>, fill: Fill, opens: Option<(Callback<Topic>, Topic)>) -> impl IntoView {
    let row = Memo::new(move |before: Option<&Option<HeadRow>>| {
        let found = parts.with(|parts| parts.as_ref()?.rows.iter().find(|row| row.fill == fill).cloned());
        // While the row is being taken away it says what it said.
        found.or_else(|| before.cloned().flatten())
    });
    let label = move || row.with(|row| row.as_ref().map_or_else(String::new, |row| row.label.clone()));
    let figure = move || row.with(|row| row.as_ref().map_or_else(String::new, |row| row.shown.figure.clone()));
    let unit = move || row.with(|row| row.as_ref().map_or("", |row| row.shown.unit));
    let part = move || row.get().map(|row| piece(fill, row.from, row.share));
    let inside = move || {
        view! {
            <span class=format!("pattern {}", fill.class()) aria-hidden="true"></span>
            <span class="part-name">{label}</span>
            <span class="amount">{figure}" "<span class="unit">{unit}</span></span>
            <span class="bar-line" aria-hidden="true">{part}</span>
        }
    };
    match opens {
        Some((open, topic)) => {
            let spoken = move || {
                let text = row.with(|row| row.as_ref().map_or_else(String::new, |row| row.shown.text()));
                (words().working.open)(&format!("{}, {text}", label()))
            };
            view! {
                <button class="head-row" aria-label=spoken on:click=move |_| open.run(topic)>
                    {inside()}
                    <span class="equals" aria-hidden="true">"="</span>
                </button>
            }
            .into_any()
        }
        None => view! { <div class="head-row">{inside()}</div> }.into_any(),
    }
}

/// A piece of the bar; none where it has no length.
fn piece(fill: Fill, from: f64, share: f64) -> Option<impl IntoView> {
    let class = fill.class();
    // A piece at the end grows to the left where it is drawn longer than it is, so as to stay on the bar.
    let at_end = from + share > 0.5;
    let left = (!at_end).then(|| percent(from));
    let right = at_end.then(|| percent((1.0 - from - share).max(0.0)));
    (share > 0.0)
        .then(|| view! { <span class=class style:left=left style:right=right style:width=percent(share)></span> })
}

fn percent(share: f64) -> String {
    format!("{:.3}%", 100.0 * share)
}
