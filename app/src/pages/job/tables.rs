//! The same values as tables, the findings, and the cautions beside the step.

use super::headline::why;
use crate::locale::{self, conductor, depth, finding_text, lead_size, mass, money, percent, shown, words};
use crate::parts::icon::Icon;
use leptos::prelude::*;
use wellwright_core::evaluate::{Basis, DepthRun, Evaluation, Here, Sweep, WayHere, WaySweep};
use wellwright_core::finding::{Finding, Severity};
use wellwright_core::job::Way;
use wellwright_core::quantity::{UnitSystem, in_amperes, in_volts, in_watts};

/// What is unwise or unsafe, gravest first.
#[component]
pub fn Findings(
    /// The evaluation.
    answer: Memo<Evaluation>,
    /// Units.
    system: Signal<UnitSystem>,
) -> impl IntoView {
    let found = Memo::new(move |_| answer.with(|answer| answer.findings.clone()));
    let row = move |finding: Finding| {
        let (class, icon) = match finding.severity() {
            Severity::Stop => ("verdict stop", "stop"),
            Severity::Caution => ("verdict caution", "caution"),
            Severity::Note => ("verdict note-mark", "note"),
        };
        view! {
            <li>
                <span class=class><Icon name=icon />{(words().answer.severity)(finding.severity())}</span>
                <span>{finding_text(&finding, system.get())}</span>
            </li>
        }
    };
    view! {
        <ul class="findings" aria-label=words().answer.findings aria-live="polite">
            {move || found.get().into_iter().map(row).collect_view()}
        </ul>
    }
}

/// Both leads at the job's depth, figure by figure.
#[component]
pub fn HereTable(
    /// The evaluation.
    answer: Memo<Evaluation>,
    /// Units.
    system: Signal<UnitSystem>,
) -> impl IntoView {
    let table =
        move || answer.with(|answer| Some(here_rows(answer.here.as_ref()?, answer.sweep.as_ref()?, system.get())));
    let lead = move || {
        answer.with(|answer| {
            let here = answer.here.as_ref()?;
            let [lead, order] = [here.lead, here.order].map(|length| depth(length, system.get()).text());
            Some((words().tables.lead)(&lead, &order))
        })
    };
    let row = |(name, [low, high]): (&'static str, [String; 2])| {
        view! { <tr><th scope="row">{name}</th><td>{high}</td><td>{low}</td></tr> }
    };
    view! {
        <Show when=move || answer.with(|answer| answer.here.is_some())>
            <section class="table">
                <h2>{words().tables.at_this_depth}</h2>
                <p class="note">{move || lead()}</p>
                <div class="scroll" tabindex="0" role="group" aria-label=words().tables.at_this_depth>
                    <table>
                        <thead>
                            <tr>
                                <td></td>
                                <th scope="col">{(words().answer.way)(Way::V480)}</th>
                                <th scope="col">{(words().answer.way)(Way::V240)}</th>
                            </tr>
                        </thead>
                        <tbody>{move || table().map(|rows| rows.into_iter().map(row).collect_view())}</tbody>
                    </table>
                </div>
            </section>
        </Show>
    }
}

/// Rows of the table: a name, the 240 V and the 480 V figure.
fn here_rows(here: &Here, sweep: &Sweep, system: UnitSystem) -> Vec<(&'static str, [String; 2])> {
    let words = words();
    let both = |name, figure: &dyn Fn(&WayHere, &WaySweep) -> String| {
        let cell = |way| here.way(way).map_or_else(|| "–".to_owned(), |lead| figure(lead, sweep.way(way)));
        (name, Way::ALL.map(cell))
    };
    let amps = |value| shown(value, 1, "A").text();
    vec![
        both(words.tables.size, &|lead, _| (words.answer.three_of)(&conductor(lead.run.run.conductor))),
        both(words.tables.ground, &|lead, _| lead_size(lead.run.run.ground)),
        both(words.tables.why, &|lead, _| why(lead.run.run.governs).to_owned()),
        both(words.tables.motor_amps, &|_, way| amps(in_amperes(way.current.sizing))),
        both(words.tables.required, &|_, way| amps(in_amperes(way.required))),
        both(words.tables.ampacity, &|lead, _| amps(in_amperes(lead.run.run.ampacity))),
        both(words.tables.drop, &|lead, _| {
            format!("{}, {}", shown(in_volts(lead.drop), 2, "V").text(), percent(lead.drop_share, 2).text())
        }),
        both(words.tables.loss, &|lead, _| shown(in_watts(lead.loss), 0, "W").text()),
        both(words.tables.metal, &|lead, _| mass(lead.metal, system).text()),
        both(words.tables.reach, &|lead, _| depth(lead.run.to, system).text()),
        both(words.tables.cable, &|lead, _| money(lead.cable, 2)),
        both(words.tables.equipment, &|_, way| money(way.equipment, 2)),
        both(words.tables.installed, &|lead, _| money(lead.installed, 2)),
    ]
}

/// Every size of both ways and how deep it reaches: the curve as a table.
#[component]
pub fn Steps(
    /// The evaluation.
    answer: Memo<Evaluation>,
    /// Units.
    system: Signal<UnitSystem>,
    /// What is counted in.
    basis: Signal<Basis>,
) -> impl IntoView {
    let rows = Memo::new(move |_| {
        answer.with(|answer| answer.sweep.as_ref().map(|sweep| step_rows(sweep, system.get(), basis.get())))
    });
    let row = |cells: Vec<String>| {
        let cells = cells.into_iter().enumerate().map(|(column, cell)| match column {
            0 => view! { <th scope="row">{cell}</th> }.into_any(),
            _ => view! { <td>{cell}</td> }.into_any(),
        });
        view! { <tr>{cells.collect_view()}</tr> }
    };
    let words = words();
    let heads = [
        words.tables.way,
        words.tables.size,
        words.tables.ground,
        words.tables.from,
        words.tables.to,
        words.tables.why,
        words.tables.cost_from,
        words.tables.cost_to,
    ];
    view! {
        <Show when=move || rows.with(Option::is_some)>
            <section class="table">
                <h2>{words.tables.steps}</h2>
                <p class="note">{words.tables.steps_hint}</p>
                <div class="scroll" tabindex="0" role="group" aria-label=words.tables.steps>
                    <table>
                        <thead><tr>{heads.map(|head| view! { <th scope="col">{head}</th> }).collect_view()}</tr></thead>
                        <tbody>{move || rows.get().map(|rows| rows.into_iter().map(row).collect_view())}</tbody>
                    </table>
                </div>
            </section>
        </Show>
    }
}

fn step_rows(sweep: &Sweep, system: UnitSystem, basis: Basis) -> Vec<Vec<String>> {
    let cells = |way: &WaySweep, run: &DepthRun| {
        vec![
            (words().answer.way)(way.way).to_owned(),
            conductor(run.run.conductor),
            lead_size(run.run.ground),
            locale::depth(run.from, system).text(),
            locale::depth(run.to, system).text(),
            why(run.run.governs).to_owned(),
            money(way.cost_on(run, run.from, basis), 0),
            money(way.cost_on(run, run.to, basis), 0),
        ]
    };
    sweep.ways.iter().rev().flat_map(|way| way.runs.iter().map(move |run| cells(way, run))).collect()
}

/// Cautions, and where the tables come from.
#[component]
pub fn Cautions() -> impl IntoView {
    let words = words();
    let lines = [words.cautions.power, words.cautions.water].concat();
    view! {
        <section class="cautions">
            <h2><Icon name="caution" />{words.frame.pages[5]}</h2>
            <ul>{lines.into_iter().map(|(title, text)| view! { <li><b>{title}</b>" "{text}</li> }).collect_view()}</ul>
            <p class="note">{words.tables.code_edition}</p>
        </section>
    }
}
