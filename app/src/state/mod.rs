//! What the page holds: the shelf of jobs, the open job, and the settings of the screen.
//!
//! Only [`edits`] writes a job, so undo, storage and every view see each change.

pub mod arrivals;
pub mod books;
pub mod edits;
pub mod learning;
pub mod open;
pub mod seller;
pub mod settings;
pub mod sheet;
pub mod shelf;
mod tabs;

pub use arrivals::{Arrival, Arrivals, Fate};
pub use books::{AsideBook, Books, KeptBook};
pub use edits::{Choice, Edit};
pub use learning::{Learning, Progress};
pub use open::{Noted, Open};
pub use seller::Seller;
pub use settings::{PaperSize, Settings, Theme};
pub use sheet::Sheet;
pub use shelf::{Kept, SetAside, Shelf};

use crate::locale::{Decimals, Language};
use crate::platform::storage::{self, Saved};
use crate::routes::Route;
use edits::History;
use leptos::prelude::*;
use std::collections::{BTreeMap, BTreeSet};
use wellwright_core::job::Record;
use wellwright_core::job::record::Full;

/// The signals of the page; one copy, handed down as context.
#[derive(Clone, Copy)]
pub struct App {
    /// Every job, in the order of the list.
    pub shelf: RwSignal<Shelf>,
    /// Every price book that is kept.
    pub books: RwSignal<Books>,
    /// Units, theme, language.
    pub settings: RwSignal<Settings>,
    /// What came in and waits to be looked at.
    pub arrivals: RwSignal<Arrivals>,
    /// The seller's own, for the customer's page.
    pub seller: RwSignal<Seller>,
    /// How far the lesson went.
    pub learning: RwSignal<Learning>,
    /// The address.
    pub route: RwSignal<Route>,
    /// Whether the last write to storage worked.
    pub saved: RwSignal<Saved>,
    /// Jobs whose last write found no room: what is on the screen of them is newer than what is kept.
    unsaved: StoredValue<BTreeSet<String>>,
    /// The language and the numbers of the browser.
    browser: (Language, Decimals),
    /// A message that passes, with an offer to undo.
    pub toast: RwSignal<Option<Toast>>,
    /// Undo and redo, by job.
    histories: StoredValue<BTreeMap<String, History>>,
    /// Bumped when a history changes, so that buttons follow.
    history_changed: RwSignal<u32>,
}

/// A message that passes.
#[derive(Clone, PartialEq)]
pub struct Toast {
    /// What happened.
    pub text: String,
    /// What undo brings back.
    pub bring_back: Option<Back>,
}

/// What was taken away and can be brought back.
#[derive(Clone, PartialEq)]
pub enum Back {
    /// Jobs, each with the place that it had in the list.
    Jobs(Vec<(usize, Kept)>),
    /// A price book.
    Book(KeptBook),
}

impl App {
    /// Loads everything that is kept.
    #[must_use]
    pub fn load() -> Self {
        let (shelf, saved) = storage::load();
        let settings = storage::load_settings();
        let browser = crate::platform::language::of_browser();
        Self {
            browser,
            shelf: RwSignal::new(shelf),
            books: RwSignal::new(storage::load_books().unwrap_or_default()),
            settings: RwSignal::new(settings),
            arrivals: RwSignal::new(Arrivals::begun(&storage::parts())),
            seller: RwSignal::new(storage::load_seller()),
            learning: RwSignal::new(storage::load_lesson()),
            route: RwSignal::new(Route::current()),
            saved: RwSignal::new(saved),
            unsaved: StoredValue::new(BTreeSet::new()),
            toast: RwSignal::new(None),
            histories: StoredValue::new(BTreeMap::new()),
            history_changed: RwSignal::new(0),
        }
    }

    /// The sheet of a job, or `None` where it is not on the shelf.
    #[must_use]
    pub fn sheet(self, id: &str) -> Option<Sheet> {
        self.shelf.with(|shelf| shelf.find(id).map(|kept| kept.sheet.clone()))
    }

    /// Changes a job and keeps the change at once.
    pub fn edit(self, id: &str, edit: Edit) {
        let Some(before) = self.sheet_untracked(id) else { return };
        let after = edit.apply(before.clone());
        if after == before {
            return;
        }
        self.history(id, |history| history.push(before, edit.topic()));
        self.put(id, after);
    }

    /// Adds to what was done and measured, and keeps it at once. No undo takes it back: it is a record.
    pub fn record(self, id: &str, change: impl FnOnce(&mut Record) -> Result<(), Full>) -> Result<(), Full> {
        let Some(mut sheet) = self.sheet_untracked(id) else { return Ok(()) };
        let before = sheet.job.record.clone();
        change(&mut sheet.job.record)?;
        if sheet.job.record != before {
            self.put(id, sheet);
        }
        Ok(())
    }

    /// Ends a run of edits to one field, so that the next is undone apart.
    pub fn pause(self, id: &str) {
        self.history(id, History::pause);
    }

    /// Takes back the last change.
    pub fn undo(self, id: &str) {
        self.travel(id, History::undo);
    }

    /// Does again what was taken back.
    pub fn redo(self, id: &str) {
        self.travel(id, History::redo);
    }

    /// Whether there is a change to take back, and one to do again.
    #[must_use]
    pub fn can_travel(self, id: &str) -> (bool, bool) {
        self.history_changed.track();
        self.histories.with_value(|all| all.get(id).map_or((false, false), History::ways))
    }

    /// Adds a job at the top of the list and returns its id.
    pub fn add(self, sheet: Sheet) -> String {
        let kept = Kept { id: storage::new_id(), sheet };
        let id = kept.id.clone();
        self.insert(0, kept);
        id
    }

    /// Puts a job at a place in the list.
    pub fn insert(self, place: usize, kept: Kept) {
        self.shelf.update(|shelf| shelf.insert(place, kept.clone()));
        self.save(&kept);
        self.save_order();
    }

    /// Whether what is on the screen of a job is kept, or nothing is kept at all.
    #[must_use]
    pub fn is_kept(self, id: &str) -> bool {
        !self.unsaved.with_value(|unsaved| unsaved.contains(id))
    }

    /// Keeps a job, and those that found no room before: it may be smaller than it was.
    fn save(self, kept: &Kept) {
        self.note_saved(&kept.id, storage::save(kept));
        self.save_the_others(&kept.id);
    }

    /// Takes a job off the screen that never found room.
    fn forget_unsaved(self, id: &str) {
        self.shelf.update(|shelf| {
            shelf.remove(id);
        });
        self.unsaved.update_value(|unsaved| {
            unsaved.remove(id);
        });
        self.save_order();
    }

    fn note_saved(self, id: &str, saved: Saved) {
        self.unsaved.update_value(|unsaved| match saved {
            Saved::Full => {
                unsaved.insert(id.to_owned());
            }
            _ => {
                unsaved.remove(id);
            }
        });
        self.saved.set(saved);
    }

    /// Tries again to keep the jobs that found no room, all but one; while one finds none that is said.
    fn save_the_others(self, but: &str) {
        let ids: Vec<String> = self.unsaved.with_value(|unsaved| unsaved.iter().cloned().collect());
        for id in ids.iter().filter(|id| *id != but) {
            match self.shelf.with_untracked(|shelf| shelf.find(id).cloned()) {
                // What another tab wrote is not written over: its own change comes over first.
                Some(kept) if storage::written_elsewhere(id).is_none() => self.note_saved(id, storage::save(&kept)),
                Some(_) => {}
                None => {
                    self.unsaved.update_value(|unsaved| {
                        unsaved.remove(id);
                    });
                }
            }
        }
        if self.unsaved.with_value(|unsaved| !unsaved.is_empty()) {
            self.saved.set(Saved::Full);
        }
    }

    /// Brings back what was taken away.
    pub fn bring_back(self, back: Back) {
        match back {
            Back::Jobs(jobs) => {
                for (place, kept) in jobs.into_iter().rev() {
                    self.insert(place, kept);
                }
            }
            Back::Book(kept) => {
                self.put_book(kept);
            }
        }
    }

    /// Takes a job off the shelf and offers to bring it back.
    pub fn delete(self, id: &str, message: impl FnOnce(&str) -> String) {
        let Some(gone) = self.take_off(id) else { return };
        self.tell_gone(message(&gone.1.sheet.job.name), vec![gone]);
    }

    /// Takes a job off the shelf; it is returned with the place that it had.
    pub fn take_off(self, id: &str) -> Option<(usize, Kept)> {
        // What another tab made of it in the same moment goes beside it, not with it.
        if !self.keep_theirs(id) {
            self.saved.set(Saved::Full);
            return None;
        }
        let gone = self.shelf.try_update(|shelf| shelf.remove(id)).flatten()?;
        storage::delete(id);
        self.unsaved.update_value(|unsaved| {
            unsaved.remove(id);
        });
        if self.saved.get_untracked() != Saved::Nowhere {
            self.saved.set(storage::room());
            self.save_the_others("");
        }
        self.save_order();
        Some(gone)
    }

    /// Shows a message that passes, with an offer to bring back the jobs that went, if any.
    pub fn tell_gone(self, text: String, gone: Vec<(usize, Kept)>) {
        let bring_back = (!gone.is_empty()).then_some(Back::Jobs(gone));
        self.toast.set(Some(Toast { text, bring_back }));
    }

    /// Changes the settings of the screen and keeps them.
    pub fn set(self, change: impl FnOnce(&mut Settings)) {
        self.settings.update(change);
        storage::save_settings(self.settings.get_untracked());
    }

    /// Changes what stands of the seller and keeps it; `false` where there was no room.
    pub fn sell_as(self, change: impl FnOnce(&mut Seller)) -> bool {
        self.seller.update(change);
        storage::save_seller(&self.seller.get_untracked())
    }

    /// The language in force, and the way to write numbers: the browser's where the language is the browser's too.
    #[must_use]
    pub fn speech(self) -> (Language, Decimals) {
        let (language, decimals) = self.browser;
        match self.settings.with(|settings| settings.language) {
            Some(chosen) if chosen != language => (chosen, Decimals::default()),
            _ => (language, decimals),
        }
    }

    /// Shows a message that passes.
    pub fn tell(self, text: String) {
        self.toast.set(Some(Toast { text, bring_back: None }));
    }

    /// As [`Self::sheet`], for one look.
    #[must_use]
    pub fn sheet_untracked(self, id: &str) -> Option<Sheet> {
        self.shelf.with_untracked(|shelf| shelf.find(id).map(|kept| kept.sheet.clone()))
    }

    fn put(self, id: &str, sheet: Sheet) {
        // There is something to lose from here on.
        crate::platform::device::ask_to_last();
        let theirs_are_kept = self.keep_theirs(id);
        let kept = Kept { id: id.to_owned(), sheet };
        self.shelf.update(|shelf| {
            if let Some(there) = shelf.find_mut(id) {
                there.sheet = kept.sheet.clone();
            }
        });
        if theirs_are_kept {
            self.save(&kept);
        } else {
            // There is no room for both: what stands there stays, and this waits on the screen.
            self.note_saved(id, Saved::Full);
        }
    }

    fn travel(self, id: &str, step: impl FnOnce(&mut History, Sheet) -> Option<Sheet>) {
        let Some(now) = self.sheet_untracked(id) else { return };
        let record = now.job.record.clone();
        if let Some(mut then) = self.history(id, |history| step(history, now)).flatten() {
            // What was done and measured stays, whatever else is taken back.
            then.job.record = record;
            self.put(id, then);
        }
    }

    fn history<T>(self, id: &str, change: impl FnOnce(&mut History) -> T) -> Option<T> {
        let out = self.histories.try_update_value(|all| change(all.entry(id.to_owned()).or_default()));
        self.history_changed.update(|count| *count = count.wrapping_add(1));
        out
    }

    /// Nothing can be taken back of a job that another tab changed.
    fn forget_history(self, id: &str) {
        self.histories.update_value(|all| {
            all.remove(id);
        });
        self.history_changed.update(|count| *count = count.wrapping_add(1));
    }

    fn save_order(self) {
        storage::save_order(&self.shelf.with_untracked(Shelf::ids));
    }
}

/// The page's state, from context.
#[must_use]
pub fn app() -> App {
    expect_context()
}
