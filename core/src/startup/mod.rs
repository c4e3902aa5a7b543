//! The installer's half: settings worked out from the job, the check list, readings judged against what the job predicts.
//!
//! Formulas stand in files of their own and know no job; settings, checks and readings read a job and its evaluation.

mod advice;
mod checks;
pub mod insulation;
mod judge;
pub mod protection;
mod readings;
mod settings;
pub mod transducer;

pub use advice::Advice;
pub use checks::checks;
pub use readings::{Balance, Judged, VisitJudged, judge, predicted, stops, trend, wanted};
pub use settings::{Setting, SettingCode, Value, Word, settings};
