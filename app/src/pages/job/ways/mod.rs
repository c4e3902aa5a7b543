//! Every way to run the motor, side by side: rows on a desk, cards on a phone. Each opens to its figures.

mod details;
mod rows;

use super::Desk;
use crate::locale::words;
use crate::parts::equals::Equals;
use crate::parts::one_line::OneLine;
use crate::parts::segmented::Segmented;
use crate::parts::verdict::{Level, Verdict};
use crate::state::Edit;
pub use details::wires;
pub use rows::{name as name_of, table};

use details::{Detail, details};
use leptos::prelude::*;
use rows::{Sort, WayRow, columns, order, row};
use wellwright_core::evaluate::Fits;
use wellwright_core::finding::Severity;

/// The comparison.
#[component]
pub fn Comparison(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let (open, words) = (desk.open, &words().ways);
    let sort = RwSignal::new(Sort::default());
    let places = Memo::new(move |_| open.answer.with(|answer| order(answer, sort.get())));
    let known = Memo::new(move |_| open.answer.with(|answer| answer.inputs.motor_power.is_ok()));
    let told = Memo::new(move |_| open.answer.with(|answer| rows::picked(answer, open.system.get())));
    let heads = move || columns(sort.get()).map(|name| view! { <span>{name}</span> }).collect_view();
    view! {
        <section class="ways" aria-label=words.title>
            <h3>{words.title}</h3>
            <p class="note">{words.hint}</p>
            <Show when=move || known.get() fallback=move || view! { <p class="note">{words.no_motor}</p> }>
                <p class="sort-row">
                    <span>{words.sort_by}</span>
                    <Segmented
                        label=words.sort_by
                        name="ways".to_owned()
                        options=vec![
                            (Sort::FirstCost, words.first_cost),
                            (Sort::Lifetime, words.lifetime),
                            (Sort::Metal, words.copper),
                            (Sort::Harmonics, words.harmonics),
                        ]
                        value=sort.into()
                        on_choose=Callback::new(move |chosen| sort.set(chosen))
                    />
                </p>
                <p class="sr" aria-live="polite">{move || told.get()}</p>
                <div class="way-heads" aria-hidden="true"><span class="gap"></span>{heads}<span>{words.first_cost}</span></div>
                <ul>
                    <For each=move || places.get() key=|place| *place children=move |place| view! { <Card place=place sort=sort desk=desk /> } />
                </ul>
            </Show>
        </section>
    }
}

/// One way.
#[component]
fn Card(place: usize, sort: RwSignal<Sort>, desk: Desk) -> impl IntoView {
    let open = desk.open;
    let shown = Memo::new(move |_| open.answer.with(|answer| row(answer, place, sort.get(), open.system.get())));
    let class = Memo::new(move |_| shown.with(|row| row.as_ref().map_or("way-card", class_of)));
    let unfolded = RwSignal::new(false);
    let toggled = move |event: leptos::ev::Event| unfolded.set(crate::platform::forms::is_open(&event));
    view! {
        <li class=class>
            <details on:toggle=toggled>
                <summary>
                    {move || shown.get().map(|row| view! { <Face row=row sort=sort.get() /> })}
                </summary>
                <Show when=move || unfolded.get()>
                    <Unfolded place=place shown=shown desk=desk />
                </Show>
            </details>
        </li>
    }
}

fn class_of(row: &WayRow) -> &'static str {
    match (row.picked, row.fits) {
        (true, _) => "way-card picked",
        (false, Fits::No) => "way-card no",
        (false, _) => "way-card",
    }
}

/// What is seen of a way while it is folded.
#[component]
fn Face(row: WayRow, sort: Sort) -> impl IntoView {
    let words = &words().ways;
    let mark = match (row.picked, row.chosen) {
        (true, true) => Some(words.in_use),
        (true, false) => Some(words.assumed),
        (false, _) => None,
    };
    let figure = |(name, shown): (&'static str, Option<crate::locale::Shown>)| {
        let text = shown.map_or_else(|| "–".to_owned(), |shown| shown.text());
        view! { <span class="figure"><small>{name}</small><b>{text}</b></span> }
    };
    let reason = row.reasons.into_iter().next().unwrap_or_default();
    let cost = row.cost.map_or_else(|| "–".to_owned(), |cost| cost.text());
    let none = row.way.is_none();
    view! {
        <span class="drawn"><OneLine kind=row.kind way=row.way /></span>
        <span class="named"><b>{row.name}</b><small>{row.from_to}</small>{mark.map(|mark| view! { <em>{mark}</em> })}</span>
        <span class="figures" hidden=none>{columns(sort).into_iter().zip(row.figures).map(figure).collect_view()}</span>
        <span class="cost" hidden=none><small>{words.first_cost}</small><b>{cost}</b></span>
        <span class="reason"><Verdict level=level(row.fits) said=(words.fits)(row.fits) reason=reason /></span>
    }
}

/// The weight of an outcome.
fn level(fits: Fits) -> Level {
    match fits {
        Fits::Serves => Level::Fine,
        Fits::WithCare => Level::Found(Severity::Caution),
        Fits::No => Level::Found(Severity::Stop),
        Fits::Waits => Level::Found(Severity::Note),
    }
}

/// The reasons and the figures of a way, and the choice of it.
#[component]
fn Unfolded(place: usize, shown: Memo<Option<WayRow>>, desk: Desk) -> impl IntoView {
    let (open, words) = (desk.open, &words().ways);
    let figures = Memo::new(move |_| open.answer.with(|answer| details(answer, place, open.system.get())));
    let more = Memo::new(move |_| {
        shown.with(|row| {
            row.as_ref().map(|row| row.reasons.iter().skip(1).cloned().collect::<Vec<_>>()).unwrap_or_default()
        })
    });
    let chosen = Memo::new(move |_| shown.with(|row| row.as_ref().is_some_and(|row| row.chosen)));
    let choose = move |_| {
        let key = open.answer.with_untracked(|answer| answer.ways.all.get(place).map(|way| way.key()));
        if let Some(key) = key {
            open.edit.run(Edit::Way(Some(key)));
        }
    };
    let detail = move |detail: Detail| {
        let opens = detail.topic.map(|topic| view! { <Equals of=detail.label.to_owned() on_open=desk.opens(topic) /> });
        view! { <div><dt>{detail.label}</dt><dd><b>{detail.text}</b>" "<small>{detail.note}</small>{opens}</dd></div> }
    };
    view! {
        <ul class="reasons">{move || more.get().into_iter().map(|reason| view! { <li>{reason}</li> }).collect_view()}</ul>
        <dl class="way-details">{move || figures.get().into_iter().map(detail).collect_view()}</dl>
        <div class="row">
            <Show
                when=move || chosen.get()
                fallback=move || view! { <button class="btn act" on:click=choose>{words.choose}</button> }
            >
                <button class="btn" on:click=move |_| open.edit.run(Edit::Way(None))>{words.give_up}</button>
            </Show>
        </div>
    }
}
