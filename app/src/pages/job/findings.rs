//! What is unwise or unsafe, gravest first.

use crate::locale::{finding_text, words};
use crate::parts::verdict::{Level, Verdict};
use crate::state::Open;
use leptos::prelude::*;
use wellwright_core::finding::{Finding, Severity};

/// Findings of a job.
#[component]
pub fn Findings(
    /// The open job.
    open: Open,
    /// The least grave that is told.
    #[prop(default = Severity::Note)]
    least: Severity,
) -> impl IntoView {
    let grave = move |finding: &Finding| finding.severity() >= least;
    let found = Memo::new(move |_| {
        open.answer.with(|answer| answer.findings.iter().copied().filter(grave).collect::<Vec<_>>())
    });
    let row = move |finding: Finding| {
        let reason = finding_text(&finding, open.system.get());
        view! { <li><Verdict level=Level::Found(finding.severity()) reason=reason /></li> }
    };
    view! {
        <ul class="findings" aria-label=words().answer.findings aria-live="polite">
            {move || found.get().into_iter().map(row).collect_view()}
        </ul>
    }
}
