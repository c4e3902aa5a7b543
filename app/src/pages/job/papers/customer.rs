//! The customer's page: one sheet that says what is proposed, what it saves and what that rests on.

use super::frame::{Foot, Seller};
use crate::locale::{depth, entry, flow, lead_size, mass, money_shown, pressure, words};
use crate::pages::job::findings::Findings;
use crate::pages::job::grids::cost_decimals;
use crate::pages::job::headline::{headline, phases, reason};
use crate::pages::job::{Desk, outlook};
use crate::parts::table::{Cell, Grid, Table};
use leptos::prelude::*;
use wellwright_core::evaluate::{Basis, Evaluation};
use wellwright_core::finding::Severity;
use wellwright_core::job::{Field, Job, Way};
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{UnitSystem, psi};

/// Size of the picture on this paper, in pixels of the page: the whole must fit on one.
const PICTURE: (f64, f64) = (690.0, 336.0);

/// Figures that the customer knows, or that move the answer most.
const TOLD: [Field; 10] = [
    Field::StaticLevel,
    Field::Drawdown,
    Field::Flow,
    Field::Pressure,
    Field::MotorPower,
    Field::AllowedDrop,
    Field::CableFixed,
    Field::CableMetal,
    Field::EnergyPrice,
    Field::YearlyHours,
];

/// The customer's page.
#[component]
pub fn Customer(desk: Desk) -> impl IntoView {
    let words = words();
    let papers = &words.papers;
    let open = desk.open;
    let said = Memo::new(move |_| open.answer.with(|answer| headline(answer, open.system.get(), Basis::Installed)));
    let title = move || {
        let system = open.system.get();
        open.answer
            .with(|answer| heading(answer, system))
            .unwrap_or_else(|| open.sheet.with(|sheet| sheet.job.name.clone()))
    };
    let sum = move || {
        let says = said.get();
        let [low, high] = says.ways;
        let one = |class, says: crate::parts::big_answer::Says| {
            view! { <div class=class><dt>{says.title}</dt><dd>{says.figure}<small>{says.note}</small></dd></div> }
        };
        [one("first", says.saving), one("by-480", high), one("by-240", low)].collect_view()
    };
    let why = move || open.answer.with(|answer| reason(answer, open.system.get()));
    let ways = Memo::new(move |_| open.answer.with(|answer| ways(answer, open.system.get())));
    let rests =
        move || open.sheet.with(|sheet| open.answer.with(|answer| rests(answer, &sheet.job, open.system.get())));
    let sure = move || open.answer.with(sure);
    view! {
        <header class="paper-head">
            <div><p class="note">{papers.for_your_well}</p><h3 class="chapter">{title}</h3></div>
            <Seller />
        </header>
        <dl class="sum">{sum}</dl>
        <p class="paper-answer">{why}</p>
        // What stops a job is told to who pays for it, too.
        <Findings open=open least=Severity::Stop />
        <crate::pages::job::Picture desk=desk paper=PICTURE />
        <Table title=words.tables.costs grid=ways />
        <div class="two one-sheet">
            <div>
                <h4>{papers.rests_on}</h4>
                {move || rests().into_iter().map(|text| view! { <p class="note">{text}</p> }).collect_view()}
                <p class="note">{sure}</p>
            </div>
            <div>
                <h4>{papers.before_work}</h4>
                <p class="note">{papers.before_work_text}</p>
                <p class="note">{papers.code}</p>
                <p class="note"><b>{words.tables.not_a_permit}</b></p>
            </div>
        </div>
        <crate::pages::job::book::OnPaper open=open />
        <Foot desk=desk paper=papers.customer />
    }
}

/// The site in words, where flow, pressure and depth are known.
fn heading(answer: &Evaluation, system: UnitSystem) -> Option<String> {
    let water = answer.water.demand?.flow.value;
    let held = answer.inputs.entered.take(Field::Pressure, psi).ok()??;
    let (water, held) = (flow(water, system).text(), pressure(held.value, system).text());
    let papers = &words().papers;
    Some(match answer.kind {
        MotorKind::Submersible => (papers.from_well)(&water, &held, &depth(answer.here.as_ref()?.depth, system).text()),
        MotorKind::Surface => (papers.from_surface)(&water, &held),
    })
}

/// Within what the saving lies, and whether the thinner lead gives off more heat.
fn sure(answer: &Evaluation) -> String {
    let first = outlook::sentences(answer).into_iter().next().map(|(text, _)| text);
    first.into_iter().chain(outlook::losses(answer)).collect::<Vec<_>>().join(" ")
}

/// Both ways, side by side.
fn ways(answer: &Evaluation, system: UnitSystem) -> Option<Grid> {
    let here = answer.here.as_ref()?;
    let (papers, tables) = (&words().papers, &words().tables);
    let decimals = cost_decimals(here);
    let row = |way: Way| {
        let name = Cell::words((words().answer.way_short)(way));
        let none = || Cell::words("–");
        let Some(lead) = here.way(way) else { return vec![name, none(), none(), none(), none(), none()] };
        let wires = (papers.and_ground)(&phases(lead.run.run.conductor), &lead_size(lead.run.run.ground));
        vec![
            name,
            Cell::words(wires),
            Cell::Figure(mass(lead.metal, system)),
            Cell::Figure(money_shown(lead.cable, decimals)),
            Cell::Figure(money_shown(lead.outfit.cost.total(), decimals)),
            Cell::Figure(money_shown(lead.installed, decimals)),
        ]
    };
    Some(Grid {
        columns: vec![tables.way, papers.wires, tables.metal, tables.cable, tables.equipment, tables.installed],
        rows: vec![row(Way::V480), row(Way::V240)],
    })
}

/// What was entered and what is assumed, of the figures that count most.
fn rests(answer: &Evaluation, job: &Job, system: UnitSystem) -> Vec<String> {
    let papers = &words().papers;
    let told = |field: Field, given| format!("{} {}", (words().fields.label)(field), entry(given, system).text());
    let typed = |field: Field| job.get(field).filter(|given| given.value.is_finite());
    let counting = || TOLD.into_iter().filter(|field| field.counts(job));
    let entered: Vec<String> = counting().filter_map(|field| Some(told(field, typed(field)?))).collect();
    let assumed: Vec<String> = counting()
        .filter(|field| typed(*field).is_none())
        .filter_map(|field| Some(told(field, answer.inputs.stand_in(field)?)))
        .collect();
    let mut said = Vec::new();
    if !entered.is_empty() {
        said.push((papers.entered)(&entered.join(", ")));
    }
    if !assumed.is_empty() {
        said.push((papers.assumed)(&assumed.join(", ")));
    }
    said
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::platform::storage::demo_jobs;
    use wellwright_core::evaluate::evaluate;

    #[test]
    fn the_first_demo_job_in_words() {
        let job = demo_jobs().remove(0);
        let answer = evaluate(&job);
        let said = heading(&answer, UnitSystem::Us).unwrap_or_default();
        assert!(said.contains("620\u{a0}ft"), "{said}");
        assert_eq!(ways(&answer, UnitSystem::Us).map(|grid| grid.rows.len()), Some(2));
        let rests = rests(&answer, &job, UnitSystem::Us);
        assert!(rests[0].contains("Static level 430\u{a0}ft"), "{rests:?}");
        assert!(reason(&answer, UnitSystem::Us).contains("426\u{a0}ft"));
    }
}
