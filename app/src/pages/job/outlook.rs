//! How sure the saving is: its range, and when the dearer voltage has paid for itself.

use super::Desk;
use crate::locale::{money, shown, unit_name, words};
use crate::parts::equals::Equals;
use leptos::prelude::*;
use wellwright_core::evaluate::range::saving_range;
use wellwright_core::evaluate::{Basis, Evaluation, Payback, payback};
use wellwright_core::job::Way;
use wellwright_core::papers::Topic;
use wellwright_core::quantity::{Money, Unit, in_watts};

/// How sure the saving is, in sentences.
#[component]
pub fn Outlook(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let (open, words) = (desk.open, &words().cost);
    let said = Memo::new(move |_| open.answer.with(sentences));
    let told = move |(text, topic): Said| {
        let opens = topic.map(|topic| {
            let of = (crate::locale::words().working.title)(topic);
            view! { <Equals of=of on_open=desk.opens(topic) /> }
        });
        view! { <p><span>{text}</span>{opens}</p> }
    };
    view! {
        <Show when=move || said.with(|said| !said.is_empty())>
            <section class="outlook" aria-label=words.sure>
                <h3>{words.sure}</h3>
                {move || said.get().into_iter().map(told).collect_view()}
                <p class="note">{words.sure_hint}</p>
            </section>
        </Show>
    }
}

/// A sentence and the working of its figures; none where they can't be told.
pub type Said = (String, Option<Topic>);

/// What is to be said; nothing without a saving.
pub fn sentences(answer: &Evaluation) -> Vec<Said> {
    let words = &words().cost;
    let cash = |amount: f64| money(Money(amount), 0);
    let mut said = Vec::new();
    match saving_range(answer) {
        Ok(Some(range)) => {
            let spread = |basis| range.on(basis).map(|found| [found.low10, found.median, found.high90].map(cash));
            for (basis, text) in [(Basis::Installed, words.range), (Basis::Lifetime, words.range_of_years)] {
                let told = spread(basis).map(|[low, middle, high]| text(&low, &middle, &high));
                said.extend(told.map(|text| (text, Some(Topic::SavingRange(basis)))));
            }
        }
        Ok(None) => {}
        Err(what) => said.push(((words.range_wrong)((words.uncertain)(what)), None)),
    }
    said.extend(payback(answer).map(|found| (paid_back(found), Some(Topic::PaysBack))));
    said.extend(losses(answer).map(|text| (text, Some(Topic::MoreHeat))));
    said
}

fn paid_back(found: Payback) -> String {
    let words = &words().cost;
    let more = money(found.first, 0);
    let years = |years: f64| shown(years, 1, unit_name(Unit::Year)).text();
    match found.simple {
        Some(simple) => {
            let first = (words.pays)(found.way, &more, &money(found.yearly, 0), &years(simple));
            let then = found.discounted.map_or_else(
                || words.never_discounted.to_owned(),
                |discounted| (words.pays_discounted)(&years(discounted)),
            );
            format!("{first} {then}")
        }
        None => (words.never_pays)(found.way, &more, &money(found.yearly.size(), 0)),
    }
}

/// Where the lead of 480 V gives off more heat than that of 240 V.
pub fn losses(answer: &Evaluation) -> Option<String> {
    let here = answer.here.as_ref()?;
    let more = here.way(Way::V480)?.loss - here.way(Way::V240)?.loss;
    let watts = shown(in_watts(more), 0, unit_name(Unit::Watt)).text();
    (in_watts(more) >= 1.0).then(|| (words().cost.loses_more)(Way::V480, &watts))
}
