//! Figures of a page in their order, those that count in the job; and answers among them, where there are any.

use super::Desk;
use crate::locale::{Shown, Words, words};
use crate::parts::quantity_field::QuantityField;
use crate::parts::worked_out::WorkedOut;
use crate::state::Open;
use leptos::prelude::*;
use wellwright_core::evaluate::Evaluation;
use wellwright_core::job::Field;
use wellwright_core::papers::{Topic, working};
use wellwright_core::quantity::UnitSystem;

/// An answer of a page: its name among the words, and its figure.
pub type Told = (fn(&'static Words) -> &'static str, fn(&Evaluation, UnitSystem) -> Option<Shown>);

/// The figures that count.
#[component]
pub fn Figures(
    /// In the order of the page.
    fields: &'static [Field],
    /// The open job.
    open: Open,
) -> impl IntoView {
    let figure = |field: Field| {
        let counts = Memo::new(move |_| open.sheet.with(|sheet| field.counts(&sheet.job)));
        view! { <Show when=move || counts.get()><QuantityField field=field open=open /></Show> }
    };
    fields.iter().map(|field| figure(*field)).collect_view()
}

/// An answer among the figures; nothing where there is none.
#[component]
pub fn Answer(
    /// Its name.
    label: &'static str,
    /// How it follows.
    #[prop(default = "")]
    hint: &'static str,
    /// The answer.
    of: fn(&Evaluation, UnitSystem) -> Option<Shown>,
    /// Its working.
    #[prop(optional, into)]
    topic: Option<Topic>,
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let shown = Memo::new(move |_| open.answer.with(|answer| of(answer, open.system.get())));
    let there = Memo::new(move |_| shown.with(Option::is_some));
    let worked = Memo::new(move |_| {
        let system = open.system.get();
        topic.is_some_and(|topic| open.answer.with(|answer| working(answer, topic, system).is_some()))
    });
    let plain = move || view! { <WorkedOut label=label hint=hint shown=shown /> };
    let opens = move || {
        topic.map(|topic| view! { <WorkedOut label=label hint=hint shown=shown on_working=desk.opens(topic) /> })
    };
    view! {
        <Show when=move || there.get()>
            <Show when=move || worked.get() fallback=plain>{opens}</Show>
        </Show>
    }
}

/// How many of the figures that are folded away were typed.
pub fn typed_note(fields: &'static [Field], open: Open) -> Signal<String> {
    Signal::derive(move || {
        let typed = open.sheet.with(|sheet| {
            let counts = |field: &&Field| field.counts(&sheet.job) && sheet.job.get(**field).is_some();
            fields.iter().filter(counts).count()
        });
        (words().flow.typed)(typed)
    })
}

/// Whether one of the figures can't be used.
pub fn any_wrong(fields: &'static [Field], open: Open) -> Signal<bool> {
    Signal::derive(move || open.answer.with(|answer| answer.errors.iter().any(|error| fields.contains(&error.field()))))
}
