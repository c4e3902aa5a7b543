//! The check list: each step with the moment at which it was ticked.

use super::when;
use crate::locale::words;
use crate::pages::job::Desk;
use crate::parts::group::Fold;
use crate::parts::tick::Tick;
use crate::platform::clock;
use crate::state::Noted;
use leptos::prelude::*;
use wellwright_core::job::Check;
use wellwright_core::startup::checks;

/// The check list.
#[component]
pub fn CheckList(
    /// What the pages share.
    desk: Desk,
) -> impl IntoView {
    let open = desk.open;
    let words = &words().startup;
    let all = Memo::new(move |_| open.sheet.with(|sheet| open.answer.with(|answer| checks(&sheet.job, answer))));
    let count = Signal::derive(move || {
        let done = all.with(|all| {
            open.sheet.with(|sheet| all.iter().filter(|check| sheet.job.record.ticked(**check).is_some()).count())
        });
        (words.check_count)(done, all.with(Vec::len))
    });
    let row = move |check: Check| {
        let at =
            Memo::new(move |_| open.sheet.with(|sheet| sheet.job.record.ticked(check).map(|tick| tick.at.clone())));
        let note = Signal::derive(move || at.get().map_or_else(String::new, |at| (words.done_at)(&when(&at))));
        view! {
            <Tick
                id=format!("check.{}", check as usize)
                label=(words.check)(check)
                note=note
                ticked=Signal::derive(move || at.with(Option::is_some))
                on_tick=Callback::new(move |done| open.note.run(Noted::Tick(check, done, clock::now())))
            />
        }
    };
    view! {
        <Fold title=words.check_list note=count must=Signal::stored(false)>
            {move || all.get().into_iter().map(row).collect_view()}
        </Fold>
    }
}
