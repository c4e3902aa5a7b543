//! The readings of all visits as a table: a row a visit, each figure that counts.

use super::when;
use crate::locale::{self, words};
use crate::parts::table::{Cell, Grid};
use wellwright_core::job::record::Visit;
use wellwright_core::job::{Job, Reading};
use wellwright_core::quantity::{Entry, UnitSystem};
use wellwright_core::startup::trend;

/// The readings; nothing before there are some.
pub fn grid(job: &Job, system: UnitSystem) -> Option<Grid> {
    let visits = job.record.visits();
    let read = |reading: &Reading| visits.iter().any(|visit| visit.value(*reading).is_some());
    let readings: Vec<Reading> = Reading::ALL.into_iter().filter(read).collect();
    if readings.is_empty() {
        return None;
    }
    let cell = |visit: &Visit, reading: Reading| {
        visit.value(reading).map_or_else(
            || Cell::words("–"),
            |value| Cell::Figure(locale::result(Entry::new(value, reading.unit()).shown_in(system))),
        )
    };
    let row = |visit: &Visit| {
        let head = Cell::words(head(&visit.at, &visit.by));
        core::iter::once(head).chain(readings.iter().map(|reading| cell(visit, *reading))).collect()
    };
    let words = &words().startup;
    let columns = core::iter::once(words.visit).chain(readings.iter().map(|reading| (words.reading)(*reading)));
    Some(Grid { columns: columns.collect(), rows: visits.iter().map(row).collect() })
}

/// How each reading went over the visits: its figures, and all of them in words; only where there are two or more.
pub fn trends(job: &Job, system: UnitSystem) -> Vec<(Reading, Vec<f64>, String)> {
    let one = |reading: Reading| {
        let entries: Vec<Entry> = trend(job, reading).into_iter().map(|(_, entry)| entry).collect();
        let told: Vec<String> = entries.iter().map(|entry| locale::result(entry.shown_in(system)).text()).collect();
        let values = entries.iter().map(|entry| entry.value).collect();
        (entries.len() > 1).then(|| (reading, values, told.join(", ")))
    };
    Reading::ALL.into_iter().filter_map(one).collect()
}

fn head(at: &str, by: &str) -> String {
    if by.is_empty() { when(at) } else { format!("{}, {by}", when(at)) }
}
