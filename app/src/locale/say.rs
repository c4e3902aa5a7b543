//! Errors and findings in words.

use super::quantity::{depth_in_tenths as depth, entry_text};
use super::reading::NotRead;
use super::words;
use wellwright_core::error::InputError;
use wellwright_core::finding::{Finding, Severity};
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

/// A finding in a sentence: what it is, and what to do.
#[must_use]
pub fn finding_text(finding: &Finding, system: UnitSystem) -> String {
    let (say, way_name) = (&words().say, words().answer.way);
    match finding {
        Finding::CableNoSize { way } => (say.no_size)(way_name(*way)),
        Finding::AluminumInWell => say.aluminum_in_well.to_owned(),
        Finding::GroundWireGrew { way } => (say.ground_grew)(way_name(*way)),
        Finding::PumpingLevelAtPump { submergence, .. } if finding.severity() == Severity::Stop => {
            (say.pump_dry)(&depth(submergence.abs(), system).text())
        }
        Finding::PumpingLevelAtPump { submergence, minimum } => {
            (say.little_water)(&depth(*submergence, system).text(), &depth(*minimum, system).text())
        }
        Finding::LevelBelowBottom { level, bottom } => {
            (say.level_below_bottom)(&depth(*level, system).text(), &depth(*bottom, system).text())
        }
        Finding::PumpNearBottom { .. } if finding.severity() == Severity::Stop => say.pump_below_bottom.to_owned(),
        Finding::PumpNearBottom { off_bottom } => (say.near_bottom)(&depth(*off_bottom, system).text()),
        Finding::BeyondUsual { field, usual } => {
            (say.beyond_usual)((words().fields.label)(*field), &entry_text(*usual, system))
        }
        _ => String::new(),
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
        WireError::BadField { path, .. } => (say.file_bad_field)(path),
        WireError::Figure(error) => {
            let text = error_text(error, system);
            format!("{}: {}", (words().fields.label)(error.field()), text.trim_end_matches('.'))
        }
        _ => say.file_unknown.to_owned(),
    }
}
