//! The jobs on this device, in the order of the list.

use super::Sheet;
use std::collections::BTreeMap;
use wellwright_core::job::wire::WireError;
use wellwright_core::numeric::order::{by_number, by_text};

/// A job and the id that it is kept under.
#[derive(Debug, Clone, PartialEq)]
pub struct Kept {
    /// Its id, unique on this device.
    pub id: String,
    /// The job and its drafts.
    pub sheet: Sheet,
}

/// A stored entry that can't be read; it stays in storage as it is.
#[derive(Debug, Clone, PartialEq)]
pub struct SetAside {
    /// Its id.
    pub id: String,
    /// The stored text.
    pub text: String,
    /// Why it can't be read.
    pub why: WireError,
}

/// All jobs.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Shelf {
    /// Jobs that could be read.
    pub jobs: Vec<Kept>,
    /// Entries that could not.
    pub set_aside: Vec<SetAside>,
}

impl Shelf {
    /// A job by its id.
    #[must_use]
    pub fn find(&self, id: &str) -> Option<&Kept> {
        self.jobs.iter().find(|kept| kept.id == id)
    }

    /// A job by its id, to change it.
    pub fn find_mut(&mut self, id: &str) -> Option<&mut Kept> {
        self.jobs.iter_mut().find(|kept| kept.id == id)
    }

    /// Puts a job at a place, or at the end where the list is shorter.
    pub fn insert(&mut self, place: usize, kept: Kept) {
        self.jobs.insert(place.min(self.jobs.len()), kept);
    }

    /// Takes a job off, with the place it had.
    pub fn remove(&mut self, id: &str) -> Option<(usize, Kept)> {
        let place = self.jobs.iter().position(|kept| kept.id == id)?;
        Some((place, self.jobs.remove(place)))
    }

    /// Puts the jobs in an order; those that it does not name go to the end.
    pub fn put_in_order(&mut self, order: &[String]) {
        // The first place of an id that is named twice.
        let places: BTreeMap<&String, usize> = order.iter().enumerate().rev().map(|(place, id)| (id, place)).collect();
        by_text(&mut self.jobs, |kept| &kept.id);
        by_number(&mut self.jobs, |kept| places.get(&kept.id).map_or(f64::INFINITY, |place| *place as f64));
    }

    /// Ids in the order of the list.
    #[must_use]
    pub fn ids(&self) -> Vec<String> {
        self.jobs.iter().map(|kept| kept.id.clone()).collect()
    }
}
