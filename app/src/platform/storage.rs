//! Jobs in the browser's local storage: one entry a job, under the job's id, in the job file's format.
//!
//! An entry that can't be read stays as it is and is reported; nothing writes over it, since ids are never used twice.

mod books;
mod parts;

pub use books::{delete_book, follow_books, load_books, save_book};
pub use parts::{forget_parts, keep_part};

use crate::state::{Kept, Seller, SetAside, Settings, Sheet, Shelf};
use gloo_storage::{LocalStorage, Storage as _};
use leptos::prelude::window;
use serde_json::{Map, Value, json};
use std::collections::BTreeMap;
use wellwright_core::job::wire::{self, WireError};
use wellwright_core::job::{Field, Job};

const JOB: &str = "wellwright.job.";
const ORDER: &str = "wellwright.order";
const SETTINGS: &str = "wellwright.settings";
const SELLER: &str = "wellwright.seller";

/// Whether what the user did is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Saved {
    /// Kept.
    Yes,
    /// The last write failed; what is on the screen is newer than what is kept.
    Full,
    /// The browser keeps nothing for this page.
    Nowhere,
}

/// The invented jobs that a first visit finds.
const DEMO_JOBS: [&str; 3] = [
    include_str!("../demo/house_and_stock.json"),
    include_str!("../demo/stock_tank.json"),
    include_str!("../demo/north_pivot.json"),
];

/// Fresh copies of the demo jobs.
#[must_use]
pub fn demo_jobs() -> Vec<Job> {
    DEMO_JOBS.iter().filter_map(|text| wire::read_text(text).ok()).collect()
}

/// Everything that is kept; on a first visit the demo jobs.
#[must_use]
pub fn load() -> (Shelf, Saved) {
    if !there() {
        return (demo_shelf(), Saved::Nowhere);
    }
    let order: Option<Vec<String>> = LocalStorage::get(ORDER).ok();
    let mut shelf = Shelf::default();
    for (id, text) in entries() {
        match read(&text) {
            Ok(sheet) => shelf.jobs.push(Kept { id, sheet }),
            Err(why) => shelf.set_aside.push(SetAside { id, text, why }),
        }
    }
    if order.is_none() && shelf.jobs.is_empty() && shelf.set_aside.is_empty() {
        return first_visit();
    }
    let order = order.unwrap_or_default();
    let place = |id: &String| order.iter().position(|other| other == id).unwrap_or(usize::MAX);
    shelf.jobs.sort_by(|a, b| place(&a.id).cmp(&place(&b.id)).then_with(|| a.id.cmp(&b.id)));
    (shelf, Saved::Yes)
}

fn demo_shelf() -> Shelf {
    let jobs = demo_jobs().into_iter().map(|job| Kept { id: new_id(), sheet: Sheet::of(job) }).collect();
    Shelf { jobs, set_aside: Vec::new() }
}

fn first_visit() -> (Shelf, Saved) {
    let shelf = demo_shelf();
    let full = shelf.jobs.iter().any(|kept| save(kept) != Saved::Yes);
    save_order(&shelf.ids());
    (shelf, if full { Saved::Full } else { Saved::Yes })
}

/// Keeps a job.
pub fn save(kept: &Kept) -> Saved {
    if !there() {
        return Saved::Nowhere;
    }
    match LocalStorage::set(format!("{JOB}{}", kept.id), write(&kept.sheet)) {
        Ok(()) => Saved::Yes,
        Err(_) => Saved::Full,
    }
}

/// Deletes a job, or an entry that can't be read.
pub fn delete(id: &str) {
    if there() {
        LocalStorage::delete(format!("{JOB}{id}"));
    }
}

/// Keeps the order of the list. A lost order loses no job, so a full storage is not reported here.
pub fn save_order(ids: &[String]) {
    if there() {
        let _ = LocalStorage::set(ORDER, ids);
    }
}

/// The settings of the screen, or the usual ones.
#[must_use]
pub fn load_settings() -> Settings {
    if there() { LocalStorage::get(SETTINGS).unwrap_or_default() } else { Settings::default() }
}

/// Keeps the settings of the screen.
pub fn save_settings(settings: Settings) {
    if there() {
        let _ = LocalStorage::set(SETTINGS, settings);
    }
}

/// What stands of the seller; nothing where nothing was kept.
#[must_use]
pub fn load_seller() -> Seller {
    if there() { LocalStorage::get::<Seller>(SELLER).unwrap_or_default().checked() } else { Seller::default() }
}

/// Keeps what stands of the seller; `false` where there was no room.
#[must_use]
pub fn save_seller(seller: &Seller) -> bool {
    there() && LocalStorage::set(SELLER, seller).is_ok()
}

/// An id that no job on this device has: the time in milliseconds and a random tail.
#[must_use]
pub fn new_id() -> String {
    let time = js_sys::Date::now() as u64;
    let tail = (js_sys::Math::random() * f64::from(1u32 << 30)) as u32;
    format!("{time:x}-{tail:08x}")
}

/// Whether the browser lets this page keep anything. A frame may be refused even the question.
fn there() -> bool {
    matches!(window().local_storage(), Ok(Some(_)))
}

/// Every stored job's id and text.
fn entries() -> Vec<(String, String)> {
    let storage = LocalStorage::raw();
    let count = storage.length().unwrap_or(0);
    (0..count)
        .filter_map(|index| {
            let key = storage.key(index).ok().flatten()?;
            let id = key.strip_prefix(JOB)?.to_owned();
            let text = storage.get_item(&key).ok().flatten()?;
            Some((id, text))
        })
        .collect()
}

/// A sheet as it is kept: the job file, and the texts that are no numbers yet.
fn write(sheet: &Sheet) -> Value {
    let drafts: Map<String, Value> =
        sheet.drafts.iter().map(|(field, text)| (field.path().to_owned(), json!(text))).collect();
    json!({ "job": wire::write(&sheet.job), "drafts": drafts })
}

/// Reads what [`write`] wrote. A draft of a field that is not known is left out: it never was a figure.
fn read(text: &str) -> Result<Sheet, WireError> {
    let value = wire::parse(text)?;
    let mut sheet = Sheet::of(wire::read(value.get("job").unwrap_or(&Value::Null))?);
    let drafts: BTreeMap<String, String> =
        value.get("drafts").and_then(|drafts| serde_json::from_value(drafts.clone()).ok()).unwrap_or_default();
    for field in Field::ALL {
        if let Some(text) = drafts.get(field.path()) {
            sheet.set_draft(field, text.clone());
        }
    }
    Ok(sheet)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_sheet_reads_back_as_written() {
        for job in demo_jobs() {
            let mut sheet = Sheet::of(job);
            assert!(read(&write(&sheet).to_string()).is_ok_and(|again| again == sheet));
            sheet.set_draft(Field::Ambient, "warm".into());
            let again = read(&write(&sheet).to_string()).unwrap_or_default();
            assert_eq!(again.drafts, sheet.drafts);
            assert!(again.job.get(Field::Ambient).is_some_and(|entry| entry.value.is_nan()));
        }
    }

    #[test]
    fn all_demo_jobs_can_be_read_and_say_what_they_are() {
        let jobs = demo_jobs();
        assert_eq!(jobs.len(), DEMO_JOBS.len());
        for job in jobs {
            assert!(job.demo && !job.name.is_empty());
            assert!(wellwright_core::evaluate::evaluate(&job).errors.is_empty(), "{}", job.name);
        }
    }

    #[test]
    fn broken_entries_are_refused_by_reason() {
        for (text, code) in [
            ("", "not_json"),
            ("{\"job\":{\"schema\":1", "not_json"),
            ("null", "no_schema"),
            ("{}", "no_schema"),
            ("{\"job\":{\"schema\":99}}", "newer_schema"),
            ("{\"job\":{\"schema\":1,\"cable\":{\"metal\":\"gold\"}}}", "bad_field"),
        ] {
            assert_eq!(read(text).err().map(|error| error.code()), Some(code), "{text}");
        }
    }
}
