//! What the browser keeps for this page in its local storage: jobs ([`entries`]), price books, settings, the seller's
//! own. What can't be read stays as it is and is reported.

mod backup;
mod books;
mod entries;
mod lesson;
mod parts;
mod place;

pub use backup::{Backup, everything};
pub use books::{delete_book, follow_books, keep_book_text, load_books, save_book};
pub use entries::{Found, before, delete, find, follow_jobs, keep_text, room, save, written_elsewhere};
pub use lesson::{follow_lesson, load_lesson, save_lesson};
pub use parts::{forget_parts, keep_part, parts};

use crate::state::{Kept, Seller, Settings, Sheet, Shelf};
use gloo_storage::{LocalStorage, Storage as _};
use leptos::prelude::window;
use wellwright_core::job::Job;
use wellwright_core::job::wire;

const ORDER: &str = "wellwright.order";
const SETTINGS: &str = "wellwright.settings";
const SELLER: &str = "wellwright.seller";

/// Whether what the user did is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Saved {
    /// Kept.
    Yes,
    /// Kept, and there is little room left.
    Nearly,
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
    let order = order();
    let mut shelf = Shelf::default();
    for found in entries::all() {
        match found {
            Found::Job(kept) => shelf.jobs.push(*kept),
            Found::Aside(entry) => shelf.set_aside.push(entry),
        }
    }
    if order.is_none() && shelf.jobs.is_empty() && shelf.set_aside.is_empty() {
        return first_visit();
    }
    shelf.put_in_order(&order.unwrap_or_default());
    (shelf, room())
}

/// The order of the list as it is kept.
#[must_use]
pub fn order() -> Option<Vec<String>> {
    if there() { LocalStorage::get(ORDER).ok() } else { None }
}

/// The same ids on every device: two tabs that open at once for the first time write the same entries.
fn demo_shelf() -> Shelf {
    let kept = |(place, job)| Kept { id: format!("demo-{place}"), sheet: Sheet::of(job) };
    Shelf { jobs: demo_jobs().into_iter().enumerate().map(kept).collect(), set_aside: Vec::new() }
}

fn first_visit() -> (Shelf, Saved) {
    let shelf = demo_shelf();
    let full = shelf.jobs.iter().any(|kept| save(kept) == Saved::Full);
    save_order(&shelf.ids());
    (shelf, if full { Saved::Full } else { Saved::Yes })
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
pub fn there() -> bool {
    matches!(window().local_storage(), Ok(Some(_)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn all_demo_jobs_can_be_read_and_say_what_they_are() {
        let jobs = demo_jobs();
        assert_eq!(jobs.len(), DEMO_JOBS.len());
        for job in jobs {
            assert!(job.demo && !job.name.is_empty());
            assert!(wellwright_core::evaluate::evaluate(&job).errors.is_empty(), "{}", job.name);
        }
    }
}
