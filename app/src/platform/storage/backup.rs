//! Everything that is kept, as one file: each entry under its key, as it is. The page that is shown when the program
//! failed writes the same form (`app/offline/crash.js`).

use super::entries::{self, Found};
use super::place::{Browser, Place};
use super::{new_id, there};
use crate::state::Seller;
use serde_json::{Map, Value, json};
use std::collections::BTreeMap;

/// What stands ahead of every key of this page.
const OWN: &str = "wellwright.";
const JOB: &str = "wellwright.job.";
const BOOK: &str = "wellwright.book.";
const SELLER: &str = "wellwright.seller";
/// Entries that are of use on their own device alone: what jobs were before, what failed, what was seen last.
const LEFT_OUT: [&str; 3] = ["wellwright.before.", "wellwright.errors", "wellwright.last"];
/// What tells such a file, and the version of its form.
const SIGN: &str = "wellwright_backup";
const VERSION: u64 = 1;

/// What a file of a whole device holds.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Backup {
    /// Its jobs, those that can't be read too, each under an id that is new here.
    pub jobs: Vec<Found>,
    /// Its price books, as tables, those that can't be read too.
    pub books: Vec<String>,
    /// Its seller's own.
    pub seller: Option<Seller>,
}

/// Everything that is kept, as the text of a file.
#[must_use]
pub fn everything() -> String {
    if there() { written(&Browser) } else { String::new() }
}

fn written(place: &impl Place) -> String {
    let kept = |key: &String| key.starts_with(OWN) && !LEFT_OUT.iter().any(|left| key.starts_with(left));
    let own = place.keys().into_iter().filter(kept);
    let entries: Map<String, Value> = own.filter_map(|key| Some((key.clone(), json!(place.get(&key)?)))).collect();
    json!({ SIGN: VERSION, "entries": entries }).to_string()
}

impl Backup {
    /// Reads such a file; nothing where the text is none.
    #[must_use]
    pub fn of(text: &str) -> Option<Self> {
        Self::read(text, new_id)
    }

    fn read(text: &str, id: impl Fn() -> String) -> Option<Self> {
        let file: Value = serde_json::from_str(text).ok()?;
        if file.get(SIGN)?.as_u64()? != VERSION {
            return None;
        }
        let entries: BTreeMap<String, String> = serde_json::from_value(file.get("entries")?.clone()).ok()?;
        let mut backup = Self::default();
        for (key, text) in entries {
            if key.starts_with(JOB) {
                backup.jobs.push(entries::found(&id(), text));
            } else if key.starts_with(BOOK) {
                backup.books.push(text);
            } else if key == SELLER {
                backup.seller = serde_json::from_str(&text).ok().map(Seller::checked);
            }
        }
        Some(backup)
    }
}

#[cfg(test)]
mod tests {
    use super::super::place::Room;
    use super::*;
    use wellwright_core::cost::book::PriceBook;
    use wellwright_core::cost::book_table::write;

    #[test]
    fn jobs_books_and_what_can_t_be_read_come_back() {
        let book = write(&PriceBook::invented());
        let room = Room::of(
            1_000_000,
            &[
                (
                    "wellwright.job.1",
                    "{\"job\":{\"schema\":1,\"name\":\"Well\"},\"drafts\":{\"site.ambient\":\"warm\"}}",
                ),
                ("wellwright.job.2", "{\"job\":{\"schema\":1"),
                ("wellwright.book.a", &book),
                ("wellwright.book.b", "no book"),
                ("wellwright.before.1", "yesterday"),
                ("wellwright.errors", "[\"failed\"]"),
                ("wellwright.last", "{\"id\":\"1\"}"),
                ("wellwright.seller", "{\"name\":\"Pumps\"}"),
                ("wellwright.order", "[]"),
                ("somebody.else", "secret"),
            ],
        );
        let text = written(&room);
        assert!(!text.contains("secret") && !text.contains("yesterday") && !text.contains("failed"));
        let backup = Backup::read(&text, || "new".to_owned()).unwrap();
        assert_eq!(backup.books, [book, "no book".to_owned()]);
        assert_eq!(backup.seller.map(|seller| seller.name), Some("Pumps".to_owned()));
        let [Found::Job(job), Found::Aside(aside)] = backup.jobs.as_slice() else { panic!("{:?}", backup.jobs) };
        assert_eq!((job.id.as_str(), job.sheet.job.name.as_str(), job.sheet.drafts.len()), ("new", "Well", 1));
        assert_eq!(aside.text, "{\"job\":{\"schema\":1");
    }

    #[test]
    fn other_files_are_no_backup() {
        for odd in [
            "",
            "{}",
            "[]",
            "{\"wellwright_backup\":2,\"entries\":{}}",
            "{\"wellwright_backup\":1}",
            "{\"wellwright_backup\":1,\"entries\":{\"a\":1}}",
            "{\"schema\":1}",
        ] {
            assert_eq!(Backup::read(odd, String::new), None, "{odd}");
        }
        assert_eq!(Backup::read("{\"wellwright_backup\":1,\"entries\":{}}", String::new), Some(Backup::default()));
    }
}
