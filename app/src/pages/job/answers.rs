//! The answer above the picture; on a phone it stays pinned at the top.

use super::chapter::{blocks, page_of};
use super::headline::{Headline, headline, sentence};
use super::{Desk, page_href};
use crate::locale::words;
use crate::parts::announcer::Announcer;
use crate::parts::big_answer::{BigAnswer, Says};
use crate::parts::icon::Icon;
use crate::state::Open;
use leptos::prelude::*;
use wellwright_core::evaluate::Basis;
use wellwright_core::finding::Severity;
use wellwright_core::job::{Field, Way};
use wellwright_core::papers::{Topic, working};

/// The answer.
#[component]
pub fn Answers(
    /// What the pages share.
    desk: Desk,
    /// The job's id, for links to its pages.
    id: StoredValue<String>,
) -> impl IntoView {
    let Desk { open, basis, seen, .. } = desk;
    let opens = move |topic| desk.opens_on_basis(topic);
    let there = move |topic: fn(Basis) -> Topic| {
        Signal::derive(move || seen.with(|answer| working(answer, topic(basis.get()), open.system.get()).is_some()))
    };
    let low = |basis| Topic::CableCost(Way::V240, basis);
    let high = |basis| Topic::CableCost(Way::V480, basis);
    let says = Memo::new(move |_| seen.with(|answer| headline(answer, open.system.get(), basis.get())));
    let part = move |pick: fn(&Headline) -> &Says| Memo::new(move |_| says.with(|says| pick(says).clone()));
    let said = Memo::new(move |_| seen.with(|answer| sentence(answer, open.system.get(), basis.get())));
    view! {
        <dl class="answers">
            <div class="first">
                <BigAnswer
                    says=part(|says| &says.saving)
                    mark=Box::new(move || view! { <StopMark open=open /> }.into_any())
                    on_working=opens(Topic::Saving)
                    has_working=there(Topic::Saving)
                />
                <WaitsFor open=open id=id />
            </div>
            <div class="way">
                <BigAnswer says=part(|says| &says.ways[1]) swatch="w480" on_working=opens(high) has_working=there(high) />
            </div>
            <div class="way">
                <BigAnswer says=part(|says| &says.ways[0]) swatch="w240" on_working=opens(low) has_working=there(low) />
            </div>
            <div class="even"><BigAnswer says=part(|says| &says.even) on_working=opens(Topic::BreakEven) has_working=there(Topic::BreakEven) /></div>
        </dl>
        <Announcer text=said />
    }
}

/// Figures that are waited for, each a link to the page where it is entered.
#[component]
fn WaitsFor(open: Open, id: StoredValue<String>) -> impl IntoView {
    let fields = Memo::new(move |_| {
        open.answer.with(|answer| match answer.here {
            Some(_) => Vec::<Field>::new(),
            None => answer.errors.iter().map(|error| error.field()).filter(|field| blocks(*field)).collect(),
        })
    });
    let link = move |field: Field| {
        view! { <a href=page_href(id, page_of(field))>{(words().fields.label)(field)}</a> }
    };
    view! { <dd class="waits">{move || fields.get().into_iter().map(link).collect_view()}</dd> }
}

/// Beside the answer, where nobody passes it by, that a finding says stop; the reason stands under the picture.
#[component]
fn StopMark(open: Open) -> impl IntoView {
    let stops = Memo::new(move |_| {
        open.answer.with(|answer| answer.findings.iter().any(|finding| finding.severity() == Severity::Stop))
    });
    view! {
        <Show when=move || stops.get()>
            <span class="verdict stop"><Icon name="stop" />{(words().answer.severity)(Severity::Stop)}</span>
        </Show>
    }
}
