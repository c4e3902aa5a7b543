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
                <span class=class><Icon name=icon />{(words().severity)(finding.severity())}</span>
                <span>{finding_text(&finding, system.get())}</span>
            </li>
        }
    };
    view! {
        <ul class="findings" aria-label=words().findings aria-live="polite">
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
            Some((words().lead)(&lead, &order))
        })
    };
    let row = |(name, [low, high]): (&'static str, [String; 2])| {
        view! { <tr><th scope="row">{name}</th><td>{high}</td><td>{low}</td></tr> }
    };
    view! {
        <Show when=move || answer.with(|answer| answer.here.is_some())>
            <section class="table">
                <h2>{words().at_this_depth}</h2>
                <p class="note">{move || lead()}</p>
                <div class="scroll" tabindex="0" role="group" aria-label=words().at_this_depth>
                    <table>
                        <thead>
                            <tr>
                                <td></td>
                                <th scope="col">{(words().way)(Way::V480)}</th>
                                <th scope="col">{(words().way)(Way::V240)}</th>
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
        both(words.column_size, &|lead, _| (words.three_of)(&conductor(lead.run.run.conductor))),
        both(words.column_ground, &|lead, _| lead_size(lead.run.run.ground)),
        both(words.column_why, &|lead, _| why(lead.run.run.governs).to_owned()),
        both(words.row_motor_amps, &|_, way| amps(in_amperes(way.current.sizing))),
        both(words.row_required, &|_, way| amps(in_amperes(way.required))),
        both(words.row_ampacity, &|lead, _| amps(in_amperes(lead.run.run.ampacity))),
        both(words.row_drop, &|lead, _| {
            format!("{}, {}", shown(in_volts(lead.drop), 2, "V").text(), percent(lead.drop_share, 2).text())
        }),
        both(words.row_loss, &|lead, _| shown(in_watts(lead.loss), 0, "W").text()),
        both(words.row_metal, &|lead, _| mass(lead.metal, system).text()),
        both(words.row_reach, &|lead, _| depth(lead.run.to, system).text()),
        both(words.row_cable, &|lead, _| money(lead.cable, 2)),
        both(words.row_equipment, &|_, way| money(way.equipment, 2)),
        both(words.row_installed, &|lead, _| money(lead.installed, 2)),
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
        words.column_way,
        words.column_size,
        words.column_ground,
        words.column_from,
        words.column_to,
        words.column_why,
        words.column_cost_from,
        words.column_cost_to,
    ];
    view! {
        <Show when=move || rows.with(Option::is_some)>
            <section class="table">
                <h2>{words.steps}</h2>
                <p class="note">{words.steps_hint}</p>
                <div class="scroll" tabindex="0" role="group" aria-label=words.steps>
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
            (words().way)(way.way).to_owned(),
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
    let lines = [
        words.caution_power,
        words.caution_cable,
        words.caution_filter,
        words.caution_meter,
        words.caution_losses,
        words.caution_prices,
    ];
    view! {
        <section class="cautions">
            <h2><Icon name="caution" />{words.cautions}</h2>
            <ul>{lines.map(|line| view! { <li>{line}</li> }).collect_view()}</ul>
            <p class="note">{words.code_edition}</p>
        </section>
    }
}
