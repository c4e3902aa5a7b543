//! Errors and findings in words.

use super::quantity::entry_text;
use super::reading::NotRead;
use super::words;
use wellwright_core::error::InputError;
use wellwright_core::job::wire::WireError;
use wellwright_core::quantity::{Entry, UnitSystem};

/// What is wrong with a figure and what would be right.
#[must_use]
pub fn error_text(error: &InputError, system: UnitSystem) -> String {
    let range = error.accepted();
    let [from, to] = [range.min, range.max].map(|end| entry_text(Entry::new(end, range.unit), system));
    let say = &words().say;
    match error {
        InputError::Missing { .. } => (say.enter_value)(&from, &to),
        InputError::OutOfRange { given, .. } => (say.outside)(&entry_text(*given, system), &from, &to),
        InputError::WrongUnit { .. } => (say.wrong_unit)(&from, &to),
        _ => (say.enter_number)(&from, &to),
    }
}

/// Why what was typed is not a number.
#[must_use]
pub fn not_read_text(typed: &str, reason: &NotRead) -> String {
    let short: String = typed.chars().take(24).collect();
    let say = &words().say;
    match reason {
        NotRead::TwoWays => (say.two_ways)(&short),
        NotRead::NotANumber => (say.not_a_number)(&short),
        NotRead::TooLarge => (say.too_large)(&short),
        NotRead::DividesByZero => (say.by_zero)(&short),
        NotRead::Unit(unit) => (say.unit_misfit)(&short, unit),
    }
}

/// Why a job file or a stored job can't be read, as the end of a sentence.
#[must_use]
pub fn file_text(error: &WireError, system: UnitSystem) -> String {
    let say = &words().say;
    match error {
        WireError::NotJson { line, column } => (say.file_not_json)(*line, *column),
        WireError::NoSchema => say.file_no_schema.to_owned(),
        WireError::Newer { schema } => (say.file_newer)(*schema),
        WireError::Altered => say.file_altered.to_owned(),
        WireError::BadField { path, .. } => (say.file_bad_field)(path),
        WireError::Figure(error) => {
            let text = error_text(error, system);
            format!("{}: {}", (words().fields.label)(error.field()), text.trim_end_matches('.'))
        }
        _ => say.file_unknown.to_owned(),
    }
}
