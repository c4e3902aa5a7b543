//! Papers: the job on a sheet, to print and to hand on.

use super::{Desk, Heading, Picture, findings::Findings, grids};
use crate::locale::{depth, words};
use crate::parts::caution::CautionBoxes;
use crate::parts::head_bar::{HeadBar, head_parts};
use crate::parts::table::Table;
use crate::platform::files;
use crate::routes::Page;
use crate::state::app;
use leptos::prelude::*;
use wellwright_core::evaluate::Basis;
use wellwright_core::job::wire;

/// The sheet.
#[component]
pub fn Papers(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let app = app();
    let open = desk.open;
    let words = words();
    let tables = &words.tables;
    let save = move |_| {
        let (name, text) = open.sheet.with_untracked(|sheet| {
            let name = files::file_name(&sheet.job.name, words.list.nameless, "json");
            (name, format!("{:#}\n", wire::write(&sheet.job)))
        });
        if files::save(&name, "application/json", &text) {
            app.tell((tables.saved_as)(&name));
        }
    };
    let title = move || open.sheet.with(|sheet| sheet.job.name.clone());
    let demo = move || open.sheet.with(|sheet| sheet.job.demo.then_some(words.list.demo_note));
    let said = Memo::new(move |_| {
        open.answer.with(|answer| super::headline::sentence(answer, open.system.get(), Basis::Installed))
    });
    let figures = Memo::new(move |_| {
        let system = open.system.get();
        open.sheet.with(|sheet| open.answer.with(|answer| Some(grids::figures(answer, &sheet.job, system))))
    });
    let here = Memo::new(move |_| open.answer.with(|answer| grids::here(answer, open.system.get())));
    let costs = Memo::new(move |_| open.answer.with(grids::costs));
    let flow = Memo::new(move |_| open.answer.with(|answer| grids::flow(answer, open.system.get())));
    let parts = Memo::new(move |_| open.answer.with(|answer| head_parts(&answer.water, open.system.get())));
    let ways = Memo::new(move |_| open.answer.with(|answer| super::ways::table(answer, open.system.get())));
    let lead = move || {
        open.answer.with(|answer| {
            let here = answer.here.as_ref()?;
            let [lead, order] = [here.lead, here.order].map(|length| depth(length, open.system.get()).text());
            Some((tables.lead)(&lead, &order))
        })
    };
    view! {
        <article class="paper">
            <Heading page=Page::Papers desk=desk />
            <div class="row screen">
                <button class="btn act" disabled=move || open.answer.with(|answer| answer.here.is_none()) on:click=move |_| files::print()>{tables.print}</button>
                <button class="btn" on:click=save>{tables.save_file}</button>
                <p class="note">{tables.save_hint}</p>
            </div>
            <p class="paper-title">{title}</p>
            <p class="note">{demo}</p>
            <p class="paper-answer">{said}</p>
            <Picture desk=desk />
            <Findings open=open />
            <HeadBar parts=parts />
            <Table title=words.flow.water_and_pump grid=flow />
            <Table title=words.ways.title hint=Signal::stored(words.ways.hint.to_owned()) grid=ways />
            <Table title=tables.at_this_depth hint=Signal::derive(move || lead().unwrap_or_default()) grid=here />
            <super::book::OnPaper open=open />
            <Table title=tables.costs hint=Signal::stored(tables.costs_hint.to_owned()) grid=costs />
            <Table title=tables.figures grid=figures />
            <CautionBoxes cautions=[
                &words.cautions.startup[..],
                &words.cautions.water[..],
                &words.cautions.pump[..],
                &words.cautions.power[1..],
                &words.cautions.cable[..],
            ]
                .concat() />
            <h3>{tables.sources}</h3>
            <p class="note">{tables.code_edition}</p>
            <p class="note"><b>{tables.not_a_permit}</b></p>
        </article>
    }
}
