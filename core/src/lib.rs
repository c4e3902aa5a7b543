//! Every sum of a pump power system for a deep well on a single-phase line.
//!
//! The road through the crate, each word a module that reads only what stands to its right:
//! {`papers`, `startup`} → `evaluate` → `job` → {`water`, `pump`, `power`, `cable`, `cost`} → {`numeric`, `quantity`,
//! `error`, `finding`, `standards`, `table`}.
//! The chapters do not read one another; [`evaluate::evaluate`] carries the motor's current to the cable and
//! the cable's size to its price. `passing` reads the `job` alone: it carries a job from one device to another.
//!
//! What always holds:
//! * no browser, clock, storage, locale or random source; builds for native and wasm32 alike;
//! * no panic that input can reach, no NaN or infinity in a result, no clamping in silence;
//! * quantities that cross a module edge are typed ([`quantity`]);
//! * no sentences: errors and findings are codes with quantities, the page has the words.
//!
//! ```
//! use wellwright_core::{evaluate::evaluate, job::Job, quantity::{Entry, Unit}, job::Field};
//!
//! let mut job = Job::default();
//! job.set(Field::MotorPower, Some(Entry::new(7.5, Unit::Horsepower)));
//! job.set(Field::PumpSetting, Some(Entry::new(620.0, Unit::Foot)));
//! let answer = evaluate(&job);
//! assert!(answer.errors.is_empty());
//! assert!(answer.here.is_some_and(|here| here.saving.is_some()));
//! ```
#![deny(missing_docs)]
#![cfg_attr(test, allow(clippy::unwrap_used, clippy::expect_used, clippy::panic))]

pub mod cable;
pub mod cost;
pub mod error;
pub mod evaluate;
pub mod finding;
pub mod job;
pub mod numeric;
pub mod papers;
pub mod passing;
pub mod power;
pub mod pump;
pub mod quantity;
pub mod standards;
pub mod startup;
pub mod table;
pub mod water;
