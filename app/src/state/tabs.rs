//! Other tabs of this page: what they did to the jobs is taken over, and nothing of theirs is written over unseen.

use super::{App, Kept, SetAside};
use crate::locale::words;
use crate::platform::storage::{self, Found};
use leptos::prelude::*;

impl App {
    /// Keeps the jobs as other tabs leave them, as long as the page stands.
    pub fn follow_tabs(self) {
        storage::follow_jobs(move |id| self.take_over(id), move || self.take_order());
    }

    /// The list stands as another tab put it.
    fn take_order(self) {
        if let Some(order) = storage::order() {
            self.shelf.update(|shelf| shelf.put_in_order(&order));
        }
    }

    /// Takes over what another tab did under an id.
    fn take_over(self, id: &str) {
        let found = storage::find(id);
        // The way back of this tab would lead past what the other did.
        self.forget_history(id);
        self.shelf.update(|shelf| {
            shelf.set_aside.retain(|entry| entry.id != id);
            match found {
                Some(Found::Job(kept)) => match shelf.find_mut(id) {
                    Some(ours) => ours.sheet = kept.sheet,
                    None => shelf.insert(0, *kept),
                },
                Some(Found::Aside(entry)) => {
                    shelf.remove(id);
                    shelf.set_aside.push(entry);
                }
                None => {
                    shelf.remove(id);
                }
            }
        });
    }

    /// Before a job is written: what another tab wrote in the same moment is kept beside it, and that is said. `false`
    /// where there is no room for it: then it must not be written over.
    #[must_use]
    pub(super) fn keep_theirs(self, id: &str) -> bool {
        match storage::written_elsewhere(id) {
            None => true,
            Some(Found::Job(theirs)) => {
                let mut sheet = theirs.sheet;
                let name = sheet.job.name.clone();
                sheet.job.name = (words().list.from_other_tab)(&name);
                let place = self.shelf.with_untracked(|shelf| shelf.jobs.iter().position(|kept| kept.id == id));
                let beside = storage::new_id();
                self.insert(place.map_or(0, |place| place + 1), Kept { id: beside.clone(), sheet });
                if !self.is_kept(&beside) {
                    // It stands where it stood, and one copy is enough.
                    self.forget_unsaved(&beside);
                    return false;
                }
                self.tell((words().list.both_kept)(&name));
                true
            }
            Some(Found::Aside(entry)) => {
                let entry = SetAside { id: storage::new_id(), ..entry };
                let kept = storage::keep_text(&entry.id, &entry.text);
                if kept {
                    self.shelf.update(|shelf| shelf.set_aside.push(entry));
                }
                kept
            }
        }
    }
}
