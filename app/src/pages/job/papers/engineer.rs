//! The engineer's pages: every figure with where it comes from, every table, every working, every source.

use super::frame::Foot;
use crate::locale::{depth, source_text, words};
use crate::pages::job::findings::Findings;
use crate::pages::job::{Desk, grids, ways};
use crate::parts::caution::CautionBoxes;
use crate::parts::head_bar::{HeadBar, head_parts};
use crate::parts::table::{Grid, Table};
use crate::parts::working::body;
use leptos::prelude::*;
use wellwright_core::evaluate::{Basis, Evaluation};
use wellwright_core::numeric::order::by_text;
use wellwright_core::papers::{Topic, Working, working};
use wellwright_core::quantity::UnitSystem;

/// The engineer's pages.
#[component]
pub fn Engineer(desk: Desk) -> impl IntoView {
    let words = words();
    let (papers, tables) = (&words.papers, &words.tables);
    let open = desk.open;
    let system = open.system;
    let name = move || open.sheet.with(|sheet| sheet.job.name.clone());
    let said = move || {
        open.answer.with(|answer| crate::pages::job::headline::sentence(answer, system.get(), Basis::Installed))
    };
    let of = move |grid: fn(&Evaluation, UnitSystem) -> Option<Grid>| {
        Memo::new(move |_| open.answer.with(|answer| grid(answer, system.get())))
    };
    let figures = Memo::new(move |_| {
        open.sheet.with(|sheet| open.answer.with(|answer| Some(grids::figures(answer, &sheet.job, system.get()))))
    });
    let parts = Memo::new(move |_| open.answer.with(|answer| head_parts(&answer.water, system.get())));
    let costs = Memo::new(move |_| open.answer.with(grids::costs));
    let lead = move || {
        open.answer.with(|answer| {
            let here = answer.here.as_ref()?;
            let [lead, order] = [here.lead, here.order].map(|length| depth(length, system.get()).text());
            Some((tables.lead)(&lead, &order))
        })
    };
    let steps = of(|answer, system| grids::steps(answer, system, Basis::Installed));
    let workings = Memo::new(move |_| open.answer.with(|answer| all(answer, system.get())));
    let sheet = move |working: Working| {
        let title = (words.working.title)(working.topic);
        view! { <section class="working"><h4>{title}</h4>{body(working)}</section> }
    };
    let sources = move || sources(&workings.get()).into_iter().map(|text| view! { <li>{text}</li> }).collect_view();
    view! {
        <header class="paper-head">
            <div><p class="note">{papers.engineer}</p><h3 class="chapter">{name}</h3><p class="paper-answer">{said}</p></div>
        </header>
        <crate::pages::job::Picture desk=desk paper=(690.0, 420.0) />
        <Findings open=open />
        <Table title=tables.figures hint=Signal::stored(papers.figures_hint.to_owned()) grid=figures />
        <HeadBar parts=parts />
        <Table title=words.flow.water_and_pump grid=of(grids::flow) />
        <Table title=words.ways.title hint=Signal::stored(words.ways.hint.to_owned()) grid=of(ways::table) />
        <Table title=tables.at_this_depth hint=Signal::derive(move || lead().unwrap_or_default()) grid=of(grids::here) />
        <Table title=words.ways.in_service grid=of(grids::service) />
        <crate::pages::job::book::OnPaper open=open />
        <Table title=tables.costs hint=Signal::stored(tables.costs_hint.to_owned()) grid=costs />
        <Table title=tables.steps hint=Signal::stored(tables.steps_hint.to_owned()) grid=steps />
        <h3>{papers.workings}</h3>
        <p class="note">{papers.workings_hint}</p>
        <div class="workings">{move || workings.get().into_iter().map(sheet).collect_view()}</div>
        <CautionBoxes cautions=[
            &words.cautions.water[..],
            &words.cautions.pump[..],
            &words.cautions.power[..],
            &words.cautions.cable[..],
        ]
            .concat() />
        <h3>{tables.sources}</h3>
        <ul class="note sources">{sources}</ul>
        <p class="note">{tables.code_edition}</p>
        <p class="note"><b>{tables.not_a_permit}</b></p>
        <Foot desk=desk paper=papers.engineer />
    }
}

/// Every working of a job: of the way that it goes by, and of both voltages along the curve.
pub fn all(answer: &Evaluation, system: UnitSystem) -> Vec<Working> {
    Topic::all(answer.ways.pick).into_iter().filter_map(|topic| working(answer, topic, system)).collect()
}

/// Every source of these workings, each once.
fn sources(workings: &[Working]) -> Vec<String> {
    let mut keys: Vec<&str> = workings.iter().flat_map(|working| working.sources.iter().copied()).collect();
    by_text(&mut keys, |key| key);
    keys.dedup();
    keys.into_iter().map(source_text).collect()
}
