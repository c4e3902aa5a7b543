//! A job as the parts of a page see it: what it says, what follows, and the one way to change it.

use super::{App, Edit, Sheet};
use leptos::prelude::*;
use wellwright_core::evaluate::{Evaluation, evaluate};
use wellwright_core::job::record::Full;
use wellwright_core::job::{Check, Reading, Record};
use wellwright_core::quantity::{Entry, UnitSystem};

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
    /// Adds to what was done and measured.
    pub note: Callback<Noted>,
}

/// Something done or measured, with the moment.
#[derive(Debug, Clone, PartialEq)]
pub enum Noted {
    /// A step of the check list ticked, or its tick taken back.
    Tick(Check, bool, String),
    /// A visit begun by someone.
    Begin(String, String),
    /// What is typed for a reading.
    Type(Reading, String, Option<Entry>, String),
    /// What is being typed is done.
    Close,
}

impl Noted {
    fn into(self, record: &mut Record) -> Result<(), Full> {
        match self {
            Self::Tick(check, done, at) => record.tick(check, done, &at),
            Self::Begin(by, at) => record.begin(&by, &at),
            Self::Type(reading, text, entry, at) => record.type_in(reading, &text, entry, &at),
            Self::Close => {
                record.close();
                Ok(())
            }
        }
    }
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
        .noting(app, id)
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
            note: Callback::new(|_| ()),
        }
    }

    /// With a record that is kept.
    fn noting(self, app: App, id: StoredValue<String>) -> Self {
        let note = move |noted: Noted| {
            if id.with_value(|id| app.record(id, |record| noted.into(record))).is_err() {
                app.tell(crate::locale::words().startup.full.to_owned());
            }
        };
        Self { note: Callback::new(note), ..self }
    }
}
