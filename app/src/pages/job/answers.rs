//! The answer above the picture; on a phone it stays pinned at the top.

use super::chapter::page_of;
use super::headline::{Headline, headline, sentence};
use super::page_href;
use crate::locale::words;
use crate::parts::announcer::Announcer;
use crate::parts::big_answer::{BigAnswer, Says};
use crate::state::Open;
use leptos::prelude::*;
use wellwright_core::evaluate::Basis;
use wellwright_core::job::Field;

/// The answer.
#[component]
pub fn Answers(
    /// The open job.
    open: Open,
    /// The job's id, for links to its pages.
    id: StoredValue<String>,
    /// What is counted in.
    basis: Signal<Basis>,
) -> impl IntoView {
    let says = Memo::new(move |_| open.answer.with(|answer| headline(answer, open.system.get(), basis.get())));
    let part = move |pick: fn(&Headline) -> &Says| Memo::new(move |_| says.with(|says| pick(says).clone()));
    let said = Memo::new(move |_| open.answer.with(|answer| sentence(answer, open.system.get(), basis.get())));
    view! {
        <dl class="answers">
            <div class="first">
                <BigAnswer says=part(|says| &says.saving) />
                <WaitsFor open=open id=id />
            </div>
            <div class="way"><BigAnswer says=part(|says| &says.ways[1]) swatch="w480" /></div>
            <div class="way"><BigAnswer says=part(|says| &says.ways[0]) swatch="w240" /></div>
            <div class="even"><BigAnswer says=part(|says| &says.even) /></div>
        </dl>
        <Announcer text=said />
    }
}

/// Figures that are waited for, each a link to the page where it is entered.
#[component]
fn WaitsFor(open: Open, id: StoredValue<String>) -> impl IntoView {
    let fields = Memo::new(move |_| {
        open.answer.with(|answer| match answer.here {
            Some(_) => Vec::new(),
            None => answer.errors.iter().map(|error| error.field()).collect::<Vec<Field>>(),
        })
    });
    let link = move |field: Field| {
        view! { <a href=page_href(id, page_of(field))>{(words().fields.label)(field)}</a> }
    };
    view! { <dd class="waits">{move || fields.get().into_iter().map(link).collect_view()}</dd> }
}
