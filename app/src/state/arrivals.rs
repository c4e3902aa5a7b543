//! Jobs that came from a file, a link or a code, before they are on the shelf.

use super::{Sheet, Shelf};
use wellwright_core::job::wire;
use wellwright_core::passing::Part;

/// What becomes of an arrival that has the name of a job on the shelf.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fate {
    /// Both are kept.
    Both,
    /// The one on the shelf goes.
    Replace,
    /// It is left out.
    Skip,
}

/// A job that came.
#[derive(Debug, Clone, PartialEq)]
pub struct Arrival {
    /// The job, and what is no number in it yet.
    pub sheet: Sheet,
    /// The job of the same name on the shelf.
    pub twin: Option<Twin>,
    /// What becomes of it.
    pub fate: Fate,
}

/// A job on the shelf that has an arrival's name.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Twin {
    /// Its id.
    pub id: String,
    /// Whether it says the same in everything.
    pub same: bool,
    /// Visits whose readings it holds: they would go with it.
    pub visits: usize,
}

/// Everything that waits to be looked at.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Arrivals {
    /// Jobs.
    pub jobs: Vec<Arrival>,
    /// Sentences on what could not be read.
    pub refused: Vec<String>,
    /// Parts of a series that are here, and how many there are.
    pub parts: Option<(usize, usize)>,
}

impl Arrival {
    /// A job beside the shelf; without a twin it is kept, one that is here already is left out.
    #[must_use]
    pub fn of(sheet: Sheet, shelf: &Shelf) -> Self {
        let same_name = |name: &str| !name.trim().is_empty() && name.trim() == sheet.job.name.trim();
        let named = || shelf.jobs.iter().filter(|kept| same_name(&kept.sheet.job.name));
        let same = named().find(|kept| alike(&kept.sheet, &sheet));
        let twin = same.or_else(|| named().next()).map(|kept| Twin {
            id: kept.id.clone(),
            same: same.is_some(),
            visits: kept.sheet.job.record.visits().len(),
        });
        let fate = if twin.as_ref().is_some_and(|twin| twin.same) { Fate::Skip } else { Fate::Both };
        Self { sheet, twin, fate }
    }
}

/// Whether two sheets say the same: what is no number is told by its text.
fn alike(one: &Sheet, other: &Sheet) -> bool {
    wire::write(&one.job) == wire::write(&other.job) && one.drafts == other.drafts
}

impl Arrivals {
    /// What waits from before: parts of a series that is not whole yet.
    #[must_use]
    pub fn begun(parts: &[Part]) -> Self {
        Self { parts: parts.first().map(|first| (parts.len(), first.of)), ..Self::default() }
    }

    /// Whether nothing waits.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }

    /// Whether somebody must be asked: there are many, a twin is on the shelf, or something could not be read.
    #[must_use]
    pub fn ask(&self) -> bool {
        !self.refused.is_empty() || self.jobs.len() > 1 || self.jobs.iter().any(|arrival| arrival.twin.is_some())
    }

    /// How many would be on the shelf anew.
    #[must_use]
    pub fn taken(&self) -> usize {
        self.jobs.iter().filter(|arrival| arrival.fate != Fate::Skip).count()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::state::Kept;
    use wellwright_core::job::Job;

    fn shelf(jobs: &[&Job]) -> Shelf {
        let kept = |(place, job): (usize, &&Job)| Kept { id: place.to_string(), sheet: Sheet::of((*job).clone()) };
        Shelf { jobs: jobs.iter().enumerate().map(kept).collect(), set_aside: Vec::new() }
    }

    #[test]
    fn a_name_that_is_here_is_asked_about_and_the_very_same_is_left_out() {
        let (well, other) = (Job::named("Well"), Job::named("Other"));
        let mut changed = well.clone();
        changed.note = "drier".into();
        let shelf = shelf(&[&other, &well]);
        let twin = |job: &Job| Arrival::of(Sheet::of(job.clone()), &shelf);
        assert_eq!(
            twin(&well),
            Arrival {
                sheet: Sheet::of(well.clone()),
                twin: Some(Twin { id: "1".into(), same: true, visits: 0 }),
                fate: Fate::Skip
            }
        );
        assert_eq!(twin(&changed).twin, Some(Twin { id: "1".into(), same: false, visits: 0 }));
        assert_eq!(twin(&changed).fate, Fate::Both);
        assert_eq!(twin(&Job::named("New")).twin, None);
        // Jobs without a name are not one another.
        assert_eq!(Arrival::of(Sheet::default(), &shelf_of_nameless()).twin, None);
        let arrivals = Arrivals { jobs: vec![twin(&well), twin(&Job::named("New"))], ..Arrivals::default() };
        assert!(arrivals.ask());
        assert_eq!(arrivals.taken(), 1);
        assert!(!Arrivals { jobs: vec![twin(&Job::named("New"))], ..Arrivals::default() }.ask());
    }

    fn shelf_of_nameless() -> Shelf {
        shelf(&[&Job::default()])
    }
}
