//! What moves the saving most: each assumption as a bar from the saving at its one end to that at the other.

use super::{Desk, Opened};
use crate::locale::{self, finding_text, money, words};
use crate::parts::equals::Equals;
use crate::parts::verdict::{Level, Verdict};
use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;
use std::time::Duration;
use wellwright_core::evaluate::ranking::{Rank, Ranked, Ranking, ranking};
use wellwright_core::evaluate::{Basis, Evaluation};
use wellwright_core::finding::Finding;
use wellwright_core::papers::Topic;
use wellwright_core::quantity::{Entry, Money, UnitSystem};

/// So many bars are shown.
const MOST: usize = 10;
/// The job is worked some dozens of times: only once it has been left alone so long.
const PAUSE: Duration = Duration::from_millis(350);

/// The ranked assumptions.
#[component]
pub fn Ranks(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let (open, words) = (desk.open, &words().cost);
    let found = RwSignal::new(None::<Ranking>);
    let pending = StoredValue::new(None::<TimeoutHandle>);
    let stop = move || {
        if let Some(handle) = pending.try_update_value(Option::take).flatten() {
            handle.clear();
        }
    };
    Effect::new(move |_| {
        open.answer.track();
        stop();
        found.set(None);
        let work = move || {
            let job = open.sheet.with_untracked(|sheet| sheet.job.clone());
            let ranked = open.answer.with_untracked(|answer| ranking(&job, answer));
            let _ = found.try_set(Some(ranked));
        };
        pending.set_value(set_timeout_with_handle(work, PAUSE).ok());
    });
    on_cleanup(stop);
    let bars = Memo::new(move |_| {
        let (basis, system) = (desk.basis.get(), open.system.get());
        let now = open.answer.with(|answer| saving(answer, basis));
        found.with(|found| found.as_ref().zip(now).map(|(found, now)| bars(found, now, basis, system)))
    });
    let flips = Memo::new(move |_| found.with(|found| found.as_ref().map(Ranking::findings).unwrap_or_default()));
    let known = Memo::new(move |_| open.answer.with(|answer| saving(answer, Basis::Installed).is_some()));
    view! {
        <Show when=move || known.get()>
            <section class="ranks" aria-label=words.ranks>
                <h3>{words.ranks}</h3>
                <p class="note">{words.ranks_hint}</p>
                {move || match bars.get() {
                    None => view! { <p class="note" role="status">{words.working}</p> }.into_any(),
                    Some(bars) if bars.is_empty() => view! { <p>{words.ranks_none}</p> }.into_any(),
                    Some(bars) => view! { <ol>{bars.into_iter().map(|one| bar(one, desk)).collect_view()}</ol> }.into_any(),
                }}
                {move || {
                    let system = open.system.get();
                    let reason = |finding: &Finding| finding_text(finding, system);
                    let told = flips.get();
                    told.iter().map(|finding| view! { <Verdict level=Level::Found(finding.severity()) reason=reason(finding) /> }).collect_view()
                }}
            </section>
        </Show>
    }
}

fn saving(answer: &Evaluation, basis: Basis) -> Option<Money> {
    answer.here.as_ref()?.saving.as_ref()?.on(basis)
}

/// One bar: its name, its ends in words, the saving at each, and its place in percent of the widest.
#[derive(Debug, Clone, PartialEq)]
pub struct Bar {
    name: String,
    ends: String,
    savings: [String; 2],
    opens: [(Ranked, Entry, Basis); 2],
    left: f64,
    width: f64,
    now: f64,
    decides: bool,
}

/// The widest bars.
pub fn bars(found: &Ranking, now: Money, basis: Basis, system: UnitSystem) -> Vec<Bar> {
    let ranks: Vec<&Rank> = found.on(basis).into_iter().take(MOST).collect();
    let ends = |rank: &Rank| {
        let [low, high] = rank.saving[basis as usize];
        Some((low?.0, high?.0))
    };
    let all: Vec<f64> = ranks.iter().filter_map(|rank| ends(rank)).flat_map(|(a, b)| [a, b]).chain([now.0]).collect();
    let (least, most) =
        (all.iter().copied().fold(f64::INFINITY, f64::min), all.iter().copied().fold(f64::NEG_INFINITY, f64::max));
    let place = |value: f64| 100.0 * (value - least) / (most - least).max(1.0);
    let bar = |rank: &&Rank| {
        let (low, high) = ends(rank)?;
        let [from, to] = rank.ends.map(|end| locale::entry(end, system).text());
        Some(Bar {
            name: name(rank.what).to_owned(),
            ends: (words().cost.moves)(&from, &to),
            savings: [low, high].map(|saving| money(Money(saving), 0)),
            opens: rank.ends.map(|end| (rank.what, end, basis)),
            left: place(low.min(high)),
            width: (place(low.max(high)) - place(low.min(high))).max(0.5),
            now: place(now.0),
            decides: rank.decides,
        })
    };
    ranks.iter().filter_map(bar).collect()
}

fn name(what: Ranked) -> &'static str {
    match what {
        Ranked::Assumed(field) => (words().fields.label)(field),
        Ranked::Uncertain(what) => (words().cost.uncertain)(what),
    }
}

/// The working of the saving at an end.
fn opens((what, end, basis): (Ranked, Entry, Basis)) -> Opened {
    match what {
        Ranked::Assumed(field) => Opened::With(field, end, Topic::Saving(basis)),
        // All that may turn out otherwise stands in one working.
        Ranked::Uncertain(_) => Opened::Fixed(Topic::SavingRange(basis)),
    }
}

fn bar(bar: Bar, desk: Desk) -> impl IntoView {
    let (name, savings) = (bar.name.clone(), bar.savings);
    let ends = savings.into_iter().zip(bar.opens).map(move |(saving, end)| {
        let opened = opens(end);
        let of = format!("{name}, {saving}");
        view! { <span>{saving}<Equals of=of on_open=Callback::new(move |()| desk.show_working(opened)) /></span> }
    });
    view! {
        <li>
            <span class="what">{bar.name}<small>{bar.ends}</small></span>
            <span class="line" aria-hidden="true">
                <i style:left=format!("{:.2}%", bar.left) style:width=format!("{:.2}%", bar.width)></i>
                <b style:left=format!("{:.2}%", bar.now)></b>
            </span>
            <span class="to">{ends.collect_view()}</span>
            {bar.decides.then(|| view! { <em>{words().cost.decides}</em> })}
        </li>
    }
}
