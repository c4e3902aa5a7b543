//! The first thing that is said: whether the pump and the well give what is asked for.

use super::chapter::page_of;
use super::{Desk, page_href};
use crate::locale::{finding_text, flow, head, pressure, words};
use crate::parts::verdict::{Level, Verdict};
use crate::routes::Page;
use leptos::prelude::*;
use wellwright_core::evaluate::Evaluation;
use wellwright_core::finding::Finding;
use wellwright_core::job::Field;
use wellwright_core::quantity::UnitSystem;

/// What is said.
#[derive(Debug, Clone, PartialEq)]
pub enum Said {
    /// Something stands against it.
    Against(Finding),
    /// Both give it.
    Gives(String),
    /// The head is known and the pump is not.
    Waits(String),
    /// Figures are missing.
    Missing(Vec<Field>),
}

/// Whether a finding says that what is asked for can't be given.
fn against(finding: &Finding) -> bool {
    let dry = matches!(finding, Finding::PumpingLevelAtPump { .. } | Finding::LevelBelowBottom { .. });
    let water = matches!(
        finding,
        Finding::DemandNotMet { .. }
            | Finding::PumpBeyondCurve { .. }
            | Finding::CurveUnusable
            | Finding::BeyondFormulas
            | Finding::NpshShort { .. }
    );
    water || dry && finding.severity() == wellwright_core::finding::Severity::Stop
}

/// What is said of an evaluation.
#[must_use]
pub fn said(answer: &Evaluation, system: UnitSystem) -> Said {
    if let Some(finding) = answer.findings.iter().find(|finding| against(finding)) {
        return Said::Against(*finding);
    }
    let (Some(demand), Some(total), Some(line)) = (answer.water.demand, &answer.water.head, &answer.water.system)
    else {
        return Said::Missing(answer.water.waits_for.clone());
    };
    // Without the pump's figure nobody knows whether a suction serves.
    if answer.water.suction.is_some() && !answer.inputs.entered.is_typed(Field::NpshRequired) {
        return Said::Missing(vec![Field::NpshRequired]);
    }
    let asked = flow(demand.flow.value, system).text();
    let words = &words().flow;
    let curve = answer.water.pump.as_ref().is_some_and(|pump| pump.curve.is_some() && pump.duty.is_ok());
    if curve {
        Said::Gives((words.gives)(&asked, &pressure(line.pressure, system).text()))
    } else {
        Said::Waits((words.gives_head)(&asked, &head(total.total(), system).text()))
    }
}

/// The verdict.
#[component]
pub fn Supply(
    /// What the pages share.
    desk: Desk,
    /// The job's id, for links to its pages.
    id: StoredValue<String>,
    /// The page that is open: elsewhere only what stands against it is said.
    here: Memo<Page>,
) -> impl IntoView {
    let open = desk.open;
    let said = Memo::new(move |_| open.answer.with(|answer| said(answer, open.system.get())));
    let about = Memo::new(move |_| matches!(here.get(), Page::Water | Page::Pump));
    let link = move |field: Field| {
        view! { <a href=page_href(id, page_of(field))>{(words().fields.label)(field)}</a> }
    };
    let row = move || {
        let quiet = !about.get();
        match said.get() {
            Said::Against(finding) => {
                let reason = finding_text(&finding, open.system.get_untracked());
                view! { <Verdict level=Level::Found(finding.severity()) reason=reason /> }.into_any()
            }
            _ if quiet => ().into_any(),
            Said::Gives(reason) => view! { <Verdict level=Level::Fine reason=reason /> }.into_any(),
            Said::Waits(reason) => view! { <p class="note">{reason}</p> }.into_any(),
            Said::Missing(fields) => {
                let links = fields.into_iter().map(link).collect_view();
                view! { <p class="note waits">{words().flow.enter_for_head}" "{links}</p> }.into_any()
            }
        }
    };
    view! { <div class="supply" aria-live="polite">{row}</div> }
}
