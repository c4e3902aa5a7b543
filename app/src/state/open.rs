//! A job as the parts of a page see it: what it says, what follows, and the one way to change it.

use super::{App, Edit, Sheet};
use leptos::prelude::*;
use wellwright_core::evaluate::{Evaluation, evaluate};
use wellwright_core::quantity::UnitSystem;

/// An open job.
#[derive(Clone, Copy)]
pub struct Open {
    /// The job and its drafts.
    pub sheet: Memo<Sheet>,
    /// What follows from it, recomputed whole on every change.
    pub answer: Memo<Evaluation>,
    /// Units on the screen.
    pub system: Signal<UnitSystem>,
    /// Changes it.
    pub edit: Callback<Edit>,
    /// Ends a run of changes, so that the next is undone apart.
    pub pause: Callback<()>,
}

impl Open {
    /// A job on the shelf.
    #[must_use]
    pub fn on_shelf(app: App, id: StoredValue<String>) -> Self {
        let sheet = Memo::new(move |_| id.with_value(|id| app.sheet(id)).unwrap_or_default());
        Self::of(
            app,
            sheet,
            Callback::new(move |edit| id.with_value(|id| app.edit(id, edit))),
            Callback::new(move |()| id.with_value(|id| app.pause(id))),
        )
    }

    /// A sheet kept anywhere.
    #[must_use]
    pub fn of(app: App, sheet: Memo<Sheet>, edit: Callback<Edit>, pause: Callback<()>) -> Self {
        Self {
            sheet,
            answer: Memo::new(move |_| sheet.with(|sheet| evaluate(&sheet.job))),
            system: Signal::derive(move || app.settings.with(|settings| settings.units)),
            edit,
            pause,
        }
    }
}
