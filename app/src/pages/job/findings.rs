//! What is unwise or unsafe: stops above the picture, where nobody passes them by; the rest beneath it.

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
    /// Whether those that say stop are shown, or the others.
    stops: bool,
) -> impl IntoView {
    let found = Memo::new(move |_| {
        let wanted = |finding: &Finding| (finding.severity() == Severity::Stop) == stops;
        open.answer.with(|answer| answer.findings.iter().copied().filter(wanted).collect::<Vec<_>>())
    });
    let label = if stops { (words().answer.severity)(Severity::Stop) } else { words().answer.findings };
    let row = move |finding: Finding| {
        let reason = finding_text(&finding, open.system.get());
        view! { <li><Verdict level=Level::Found(finding.severity()) reason=reason /></li> }
    };
    view! {
        <ul class="findings" aria-label=label aria-live="polite">
            {move || found.get().into_iter().map(row).collect_view()}
        </ul>
    }
}
