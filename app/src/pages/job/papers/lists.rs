//! Lists of the installer's pages: settings, wiring, parts. Pure, from the job and its evaluation.

use crate::locale::{self, device, lead_size, line_volts, order, percent, result, series_name, words};
use crate::pages::job::headline::phases;
use crate::pages::job::startup::settings::lines;
use crate::pages::job::ways;
use crate::parts::table::{Cell, Grid};
use wellwright_core::evaluate::Evaluation;
use wellwright_core::job::{Job, Part, Reading};
use wellwright_core::papers::{PartLine, PartName, PartSize, parts};
use wellwright_core::quantity::{Entry, UnitSystem};
use wellwright_core::startup::{judge, predicted, wanted};

/// What is entered at the drive.
pub fn settings(job: &Job, answer: &Evaluation, system: UnitSystem) -> Option<Grid> {
    let (words, papers) = (words(), &words().papers);
    let row = |line: crate::pages::job::startup::settings::Line| {
        let value = if line.unit.is_empty() { line.value } else { format!("{}\u{a0}{}", line.value, line.unit) };
        let from = if line.assumed { words.fields.assumed } else { "" };
        vec![
            Cell::words((words.startup.setting)(line.code)),
            Cell::words(value),
            Cell::words(line.safe),
            Cell::words(from),
        ]
    };
    let rows: Vec<_> = lines(job, answer, system).into_iter().map(row).collect();
    (!rows.is_empty())
        .then(|| Grid { columns: vec![papers.setting, words.tables.value, papers.safe, words.tables.origin], rows })
}

/// From the supply to the motor: what lies between, and over what length.
pub fn wiring(answer: &Evaluation, system: UnitSystem) -> Option<Grid> {
    let (papers, tables) = (&words().papers, &words().tables);
    let way = answer.ways.picked()?;
    let length = |length| Cell::Figure(locale::depth(length, system));
    let mut rows = Vec::new();
    if let (Some(run), Some(draw)) = (way.supply, way.draw) {
        rows.push(vec![
            Cell::words(papers.to_equipment),
            Cell::words(ways::wires(way, run.run.conductor)),
            Cell::words(lead_size(run.run.ground)),
            length(run.length),
            Cell::Figure(device(draw.device)),
            Cell::words((papers.drop_of)(&line_volts(run.drop).text(), &percent(run.share, 1).text())),
        ]);
    }
    if let Some(lead) = way.lead {
        rows.push(vec![
            Cell::words(papers.to_motor),
            Cell::words(phases(lead.run.conductor)),
            Cell::words(lead_size(lead.run.ground)),
            length(lead.length),
            Cell::words("–"),
            Cell::words((papers.drop_of)(&line_volts(lead.drop).text(), &percent(lead.drop_share, 1).text())),
        ]);
    }
    let columns = vec![papers.run, papers.wires, tables.ground, papers.length, words().ways.device, tables.drop];
    (!rows.is_empty()).then_some(Grid { columns, rows })
}

/// What is bought and brought along.
pub fn shopping(job: &Job, answer: &Evaluation, system: UnitSystem) -> Option<Grid> {
    let papers = &words().papers;
    let row = |line: PartLine| {
        let from = if line.assumed { words().fields.assumed } else { "" };
        let length = line.length.map_or_else(|| Cell::words("–"), |length| Cell::Figure(order(length, system)));
        vec![
            Cell::words(part_name(line.name)),
            Cell::words(size(line.size, answer, line.name, system)),
            Cell::words(line.count.to_string()),
            length,
            Cell::words(from),
        ]
    };
    let rows: Vec<_> = parts(job, answer).into_iter().map(row).collect();
    (!rows.is_empty()).then(|| Grid {
        columns: vec![papers.part, words().tables.size, papers.count, papers.length_each, words().tables.origin],
        rows,
    })
}

fn part_name(name: PartName) -> &'static str {
    let papers = &words().papers;
    match name {
        PartName::Remedy(remedy) => (words().ways.remedy)(remedy),
        PartName::Pipe(Part::Drop) => papers.drop_pipe,
        PartName::Pipe(Part::Suction) => papers.suction_pipe,
        PartName::Pipe(Part::Surface) => papers.surface_pipe,
        other => (papers.part_name)(other),
    }
}

fn size(size: PartSize, answer: &Evaluation, name: PartName, system: UnitSystem) -> String {
    let figure = |entry: Entry| result(entry.shown_in(system)).text();
    let text = match size {
        PartSize::Figures(first, second) => {
            let both: Vec<String> = [Some(first), second].into_iter().flatten().map(figure).collect();
            both.join(", ")
        }
        PartSize::Conductor(size) => lead_size(size),
        PartSize::Pipe(Some(pipe), _) => {
            let nominal = (words().papers.nominal)(pipe.nominal);
            format!("{}, {nominal}", series_name(pipe.series))
        }
        PartSize::Pipe(None, inside) => (words().papers.inside)(&figure(inside)),
        PartSize::Plain => String::new(),
    };
    match (name, answer.ways.picked()) {
        (PartName::Equipment, Some(way)) => format!("{}, {text}", ways::name_of(way)),
        _ => text,
    }
}

/// Readings of the last visit, or lines to write them on.
pub fn readings(job: &Job, answer: &Evaluation, system: UnitSystem, blank: bool) -> Option<Grid> {
    let (words, papers) = (words(), &words().papers);
    let visit = judge(job, answer).pop().filter(|_| !blank);
    let shown = |entry: Entry| result(entry.shown_in(system));
    let row = |reading: Reading| {
        let expected =
            predicted(job, answer, reading).map_or_else(|| Cell::words("–"), |entry| Cell::Figure(shown(entry)));
        let judged = visit.as_ref().and_then(|visit| visit.readings.iter().find(|judged| judged.reading == reading));
        let measured = judged.map_or_else(|| Cell::words(""), |judged| Cell::Figure(shown(judged.value)));
        let note = judged.and_then(|judged| judged.severity).map_or_else(String::new, |_| papers.look.to_owned());
        vec![Cell::words((words.startup.reading)(reading)), expected, measured, Cell::words(note)]
    };
    let rows: Vec<_> = wanted(job, answer).into_iter().map(row).collect();
    (!rows.is_empty())
        .then(|| Grid { columns: vec![papers.reading, papers.expected, papers.measured, papers.remark], rows })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::platform::storage::demo_jobs;
    use wellwright_core::evaluate::evaluate;

    #[test]
    fn every_part_of_every_demo_job_has_a_name_and_no_figure_without_a_unit() {
        for job in demo_jobs() {
            let answer = evaluate(&job);
            let grid = shopping(&job, &answer, UnitSystem::Us).unwrap();
            for row in &grid.rows {
                let [name, size, count, ..] = row.as_slice() else { panic!("{row:?}") };
                assert!(!name.text().is_empty() && !count.text().is_empty(), "{row:?}");
                let bare = size.text().ends_with(|letter: char| letter.is_ascii_digit());
                assert!(!bare || size.text().contains("AWG"), "{row:?}");
            }
        }
    }
}
