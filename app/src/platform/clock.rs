//! The clock.

use js_sys::Date;

/// The day that it is where the user is, as `2026-11-01`.
#[must_use]
pub fn today() -> String {
    let now = Date::new_0();
    format!("{:04}-{:02}-{:02}", now.get_full_year(), now.get_month() + 1, now.get_date())
}
