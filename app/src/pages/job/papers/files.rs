//! The job as files: for this page, for a spreadsheet, for another program, as a picture.

use super::lists;
use crate::locale::{currency_of, words};
use crate::pages::job::exchange::table_text;
use crate::pages::job::{Desk, grids, ways};
use crate::parts::group::Fold;
use crate::parts::table::Grid;
use crate::platform::{files, pictures};
use crate::state::app;
use leptos::prelude::*;
use wellwright_core::evaluate::report;
use wellwright_core::job::wire;

/// Dots of a picture in a pixel of the page.
const DOTS: f64 = 2.0;

/// The job as files.
#[component]
pub fn Files(desk: Desk) -> impl IntoView {
    let app = app();
    let words = words();
    let papers = &words.papers;
    let open = desk.open;
    let name = move || open.sheet.with_untracked(|sheet| sheet.job.name.clone());
    let keep = move |what: &'static str, ending: &'static str, kind: &'static str, text: String| {
        let title = format!("{} {what}", name());
        let file = files::file_name(&title, words.list.nameless, ending);
        if files::save(&file, kind, &text) {
            app.tell((words.tables.saved_as)(&file));
        }
    };
    let job = move |_| {
        let text = open.sheet.with_untracked(|sheet| format!("{:#}\n", wire::write(&sheet.job)));
        keep("", "json", "application/json", text);
    };
    let evaluation = move |_| {
        let text = open.answer.with_untracked(|answer| format!("{:#}\n", report(&name(), answer)));
        keep(papers.evaluation, "json", "application/json", text);
    };
    let table = move |title: &'static str, grid: Option<Grid>| {
        if let Some(grid) = grid {
            keep(title, "csv", "text/csv", table_text(&[(title, grid)]));
        }
    };
    let curve = move |_| {
        table(
            words.tables.steps,
            desk.seen
                .with_untracked(|answer| grids::steps(answer, open.system.get_untracked(), desk.basis.get_untracked())),
        );
    };
    let parts = move |_| {
        let system = open.system.get_untracked();
        let grid = open
            .sheet
            .with_untracked(|sheet| open.answer.with_untracked(|answer| lists::shopping(&sheet.job, answer, system)));
        table(papers.parts, grid);
    };
    let tables = move |_| keep(papers.tables, "csv", "text/csv", table_text(&every(desk)));
    let drawing = move || document().query_selector(PICTURE).ok().flatten().and_then(|plate| pictures::drawing(&plate));
    let vector = move |_| {
        if let Some((text, _)) = drawing() {
            keep(papers.picture, "svg", "image/svg+xml", text);
        }
    };
    let dots = move |_| {
        let Some((text, size)) = drawing() else { return };
        let file = files::file_name(&format!("{} {}", name(), papers.picture), words.list.nameless, "png");
        pictures::as_dots(text, size, DOTS, move |blob| {
            let done = blob.is_some_and(|blob| files::save_blob(&file, &blob));
            app.tell(if done { (words.tables.saved_as)(&file) } else { papers.no_picture.to_owned() });
        });
    };
    let nothing = move || open.answer.with(|answer| answer.here.is_none());
    let no_picture = move || nothing() || desk.paper.get() == super::Paper::Installer;
    view! {
        <Fold title=papers.files note=Signal::stored(papers.files_note.to_owned()) must=Signal::stored(false)>
            <ul class="files">
                <li><button class="btn" on:click=job>{words.tables.save_file}</button><span class="note">{words.tables.save_hint}</span></li>
                <li><button class="btn" disabled=nothing on:click=curve>{papers.save_curve}</button><span class="note">{papers.csv_hint}</span></li>
                <li><button class="btn" disabled=nothing on:click=tables>{papers.save_tables}</button><span class="note">{papers.csv_hint}</span></li>
                <li><button class="btn" disabled=nothing on:click=parts>{papers.save_parts}</button><span class="note">{papers.csv_hint}</span></li>
                <li><button class="btn" disabled=no_picture on:click=vector>{papers.save_vector}</button><span class="note">{papers.vector_hint}</span></li>
                <li><button class="btn" disabled=no_picture on:click=dots>{papers.save_dots}</button><span class="note">{papers.dots_hint}</span></li>
                <li><button class="btn" on:click=evaluation>{papers.save_evaluation}</button><span class="note">{papers.evaluation_hint}</span></li>
            </ul>
        </Fold>
    }
}

/// The picture of the paper in sight.
const PICTURE: &str = ".paper .plate";

/// Every table of the engineer's pages.
fn every(desk: Desk) -> Vec<(&'static str, Grid)> {
    let words = words();
    let tables = &words.tables;
    let system = desk.open.system.get_untracked();
    desk.open.sheet.with_untracked(|sheet| {
        desk.open.answer.with_untracked(|answer| {
            crate::locale::counting_in(currency_of(answer), || {
                let all = [
                    (tables.figures, Some(grids::figures(answer, &sheet.job, system))),
                    (words.flow.water_and_pump, grids::flow(answer, system)),
                    (words.ways.title, ways::table(answer, system)),
                    (tables.at_this_depth, grids::here(answer, system)),
                    (words.ways.in_service, grids::service(answer, system)),
                    (tables.costs, grids::costs(answer)),
                    (tables.steps, grids::steps(answer, system, desk.basis.get_untracked())),
                    (words.startup.settings, lists::settings(&sheet.job, answer, system)),
                    (words.papers.wiring, lists::wiring(answer, system)),
                    (words.papers.parts, lists::shopping(&sheet.job, answer, system)),
                ];
                all.into_iter().filter_map(|(title, grid)| Some((title, grid?))).collect()
            })
        })
    })
}
