//! A verdict: a mark, a word and its reason, never color alone. Weight grows with severity.

use super::icon::Icon;
use crate::locale::words;
use leptos::prelude::*;
use wellwright_core::finding::Severity;

/// How a verdict comes out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Level {
    /// Within its limit.
    Fine,
    /// As a finding of core.
    Found(Severity),
}

/// A verdict.
#[component]
pub fn Verdict(
    /// How it comes out.
    level: Level,
    /// Why, in a sentence.
    #[prop(into)]
    reason: String,
    /// The word, where it is not that of the level.
    #[prop(optional, into)]
    said: Option<&'static str>,
) -> impl IntoView {
    let (class, icon) = match level {
        Level::Fine => ("verdict fine", "ok"),
        Level::Found(Severity::Note) => ("verdict note-mark", "note"),
        Level::Found(Severity::Caution) => ("verdict caution", "caution"),
        Level::Found(Severity::Stop) => ("verdict stop", "stop"),
    };
    let word = said.unwrap_or_else(|| match level {
        Level::Fine => words().answer.fine,
        Level::Found(severity) => (words().answer.severity)(severity),
    });
    view! {
        <div class="judged">
            <span class=class><Icon name=icon />{word}</span>
            <span>{reason}</span>
        </div>
    }
}
