//! A job and the texts in its fields that are no numbers yet.

use std::collections::BTreeMap;
use wellwright_core::job::{Field, Job};
use wellwright_core::quantity::Entry;

/// What one job page shows and keeps.
///
/// A field whose text can't be read holds the text in `drafts` and a not-a-number figure in the job, so that nothing
/// which depends on it is worked out from an older value.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Sheet {
    /// The job.
    pub job: Job,
    /// Texts that can't be read, kept as typed.
    pub drafts: BTreeMap<Field, String>,
}

impl Sheet {
    /// A sheet of a job without drafts.
    #[must_use]
    pub fn of(job: Job) -> Self {
        Self { job, drafts: BTreeMap::new() }
    }

    /// Enters a figure or clears the field; a draft in it is gone.
    pub fn set(&mut self, field: Field, entry: Option<Entry>) {
        self.drafts.remove(&field);
        self.job.set(field, entry);
    }

    /// Keeps a text that can't be read.
    pub fn set_draft(&mut self, field: Field, text: String) {
        self.job.set(field, Some(Entry::new(f64::NAN, field.spec().accepted.unit)));
        self.drafts.insert(field, text);
    }
}
