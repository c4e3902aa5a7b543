//! Bad files, bad figures and bad calls: each gets an error that says what, where and what is accepted; none gets a
//! panic, a wrong answer or silence.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod counts;
mod duty;
mod figures;
mod files;
mod jobs;
mod passing;
mod places;
mod process;
mod record;
mod verdicts;
