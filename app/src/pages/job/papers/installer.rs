//! The installer's pages: cautions, what is entered at the drive, wiring, parts, check list, readings.

use super::frame::Foot;
use super::{Readings, lists};
use crate::locale::words;
use crate::pages::job::findings::Findings;
use crate::pages::job::startup::when;
use crate::pages::job::{Desk, grids};
use crate::parts::caution::CautionBoxes;
use crate::parts::table::Table;
use leptos::prelude::*;
use wellwright_core::job::Check;
use wellwright_core::startup::checks;

/// The installer's pages.
#[component]
pub fn Installer(desk: Desk) -> impl IntoView {
    let words = words();
    let papers = &words.papers;
    let open = desk.open;
    let system = open.system;
    let blank = move || desk.blank.get() == Readings::Blank;
    let name = move || open.sheet.with(|sheet| sheet.job.name.clone());
    let settings = Memo::new(move |_| {
        open.sheet.with(|sheet| open.answer.with(|answer| lists::settings(&sheet.job, answer, system.get())))
    });
    let plate = Memo::new(move |_| open.answer.with(|answer| grids::plate(answer, system.get())));
    let wiring = Memo::new(move |_| open.answer.with(|answer| lists::wiring(answer, system.get())));
    let parts = Memo::new(move |_| {
        open.sheet.with(|sheet| open.answer.with(|answer| lists::shopping(&sheet.job, answer, system.get())))
    });
    let steps = Memo::new(move |_| open.sheet.with(|sheet| open.answer.with(|answer| checks(&sheet.job, answer))));
    let step = move |check: Check| {
        let at =
            open.sheet.with(|sheet| sheet.job.record.ticked(check).map(|tick| tick.at.clone())).filter(|_| !blank());
        let done = at.is_some();
        let note = at.map(|at| (words.startup.done_at)(&when(&at)));
        view! { <li data-done=done.then_some("")>{(words.startup.check)(check)}<small>{note}</small></li> }
    };
    let readings = Memo::new(move |_| {
        let blank = blank();
        open.sheet.with(|sheet| open.answer.with(|answer| lists::readings(&sheet.job, answer, system.get(), blank)))
    });
    let visit = move || {
        let told = |visit: &wellwright_core::job::record::Visit| (words.startup.begun)(&when(&visit.at), &visit.by);
        let last = open.sheet.with(|sheet| sheet.job.record.visits().last().map(told)).filter(|_| !blank());
        last.unwrap_or_else(|| papers.by_and_day.to_owned())
    };
    view! {
        <header class="paper-head"><div><p class="note">{papers.installer}</p><h3 class="chapter">{name}</h3></div></header>
        <CautionBoxes cautions=words.cautions.startup.to_vec() />
        <Findings open=open />
        <Table title=words.startup.settings hint=Signal::stored(words.startup.settings_hint.to_owned()) grid=settings />
        <Table title=words.tables.plate hint=Signal::stored(words.tables.plate_hint.to_owned()) grid=plate />
        <Table title=papers.wiring hint=Signal::stored(papers.wiring_hint.to_owned()) grid=wiring />
        <Table title=papers.parts hint=Signal::stored(papers.parts_hint.to_owned()) grid=parts />
        <section class="table">
            <div class="head"><h3>{words.startup.check_list}</h3></div>
            <ul class="boxes">{move || steps.get().into_iter().map(step).collect_view()}</ul>
        </section>
        <div class="written" data-blank=move || blank().then_some("")>
            <Table title=words.startup.readings hint=Signal::derive(visit) grid=readings />
        </div>
        <p class="note"><b>{words.tables.not_a_permit}</b></p>
        <Foot desk=desk paper=papers.installer />
    }
}
