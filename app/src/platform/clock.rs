//! The clock.

use js_sys::Date;

/// The moment that it is where the user is, as `2026-11-01T07:05:00-06:00`.
#[must_use]
pub fn now() -> String {
    let now = Date::new_0();
    let (hours, minutes, seconds) = (now.get_hours(), now.get_minutes(), now.get_seconds());
    // Minutes that the place is behind, below zero where it is ahead.
    let behind = now.get_timezone_offset();
    let (sign, off) = if behind > 0.0 { ('-', behind) } else { ('+', -behind) };
    let (over, rest) = ((off / 60.0) as u32, (off % 60.0) as u32);
    let time = format!("{hours:02}:{minutes:02}:{seconds:02}{sign}{over:02}:{rest:02}");
    [today(), time].join("T")
}

/// Milliseconds since some moment: to tell how long something took.
#[must_use]
pub fn milliseconds() -> f64 {
    Date::now()
}

/// The day that it is where the user is, as `2026-11-01`.
#[must_use]
pub fn today() -> String {
    let now = Date::new_0();
    format!("{:04}-{:02}-{:02}", now.get_full_year(), now.get_month() + 1, now.get_date())
}
