//! Start-up: the settings sheet, the check list, the readings of each visit, and the cautions of the day.

mod big;
mod checks;
mod reading;
mod readings;
pub mod settings;
mod visits;

use super::{Desk, Heading, grids};
use crate::locale::{self, words};
use crate::parts::caution::CautionBoxes;
use crate::parts::group::Group;
use crate::parts::quantity_field::QuantityField;
use crate::parts::switch::Switch;
use crate::parts::table::Table;
use crate::parts::trend::Trend;
use crate::routes::Page;
use crate::state::Choice;
use leptos::prelude::*;
use wellwright_core::job::{Choices, Field};

/// The inputs of the page.
#[component]
pub fn Inputs(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let words = words();
    let usual = Choices::default();
    let (_, then) = words.cautions.startup.split_at(1);
    view! {
        <Heading page=Page::Startup desk=desk />
        <Group title=words.startup.basis>
            <QuantityField field=Field::TransducerSpan open=open />
            <Switch
                label=words.startup.freezing
                hint=words.startup.freezing_hint
                id="startup.freezing"
                assumed=usual.freezing()
                value=desk.chosen(|choices| choices.freezing)
                on_set=Callback::new(move |on| desk.choose(Choice::Freezing).run(Some(on)))
            />
            <Switch
                label=words.startup.restart
                hint=words.startup.restart_hint
                id="startup.restart"
                assumed=usual.restart()
                value=desk.chosen(|choices| choices.restart)
                on_set=Callback::new(move |on| desk.choose(Choice::Restart).run(Some(on)))
            />
            <QuantityField field=Field::RestartDelay open=open />
        </Group>
        <CautionBoxes cautions=then.to_vec() />
        <checks::CheckList desk=desk />
        <readings::Readings desk=desk />
    }
}

/// What is entered at the drive, where other pages have their picture.
#[component]
pub fn Sheet(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    // What must be done before anyone opens the drive stands before its figures.
    let (first, _) = words().cautions.startup.split_at(1);
    view! {
        <CautionBoxes cautions=first.to_vec() />
        <big::Big desk=desk />
        <settings::Settings desk=desk />
    }
}

/// The tables of the page.
#[component]
pub fn Below(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let tables = &words().tables;
    let plate = Memo::new(move |_| open.answer.with(|answer| grids::plate(answer, open.system.get())));
    let all = Memo::new(move |_| open.sheet.with(|sheet| visits::grid(&sheet.job, open.system.get())));
    view! {
        <Table title=words().startup.visits grid=all />
        <Trends desk=desk />
        <Table title=tables.plate hint=Signal::stored(tables.plate_hint.to_owned()) grid=plate />
    }
}

/// How each reading went over the visits.
#[component]
fn Trends(desk: Desk) -> impl IntoView {
    let open = desk.open;
    let words = &words().startup;
    let all = Memo::new(move |_| open.sheet.with(|sheet| visits::trends(&sheet.job, open.system.get())));
    let each = move || {
        let one = |(reading, values, said)| view! { <Trend label=(words.reading)(reading) values=values said=said /> };
        all.get().into_iter().map(one).collect_view()
    };
    view! {
        <Show when=move || all.with(|all| !all.is_empty())>
            <section aria-label=words.trend>
                <h3>{words.trend}</h3>
                <ul class="trends">{each}</ul>
            </section>
        </Show>
    }
}

/// When something was done, in words: the day, and the time of it.
pub fn when(at: &str) -> String {
    let (day, time) = at.split_once('T').unwrap_or((at, ""));
    let day = locale::day_of(day);
    let time: String = time.chars().take(5).collect();
    if time.is_empty() { day } else { (words().startup.when)(&day, &time) }
}
