//! Errors and findings in words.

use super::quantity::entry_text;
use super::reading::NotRead;
use super::words;
use wellwright_core::error::InputError;
use wellwright_core::finding::Finding;
use wellwright_core::quantity::{Entry, UnitSystem};

/// What is wrong with a figure and what would be right.
#[must_use]
pub fn error_text(error: &InputError, system: UnitSystem) -> String {
    let range = error.accepted();
    let [from, to] = [range.min, range.max].map(|end| entry_text(Entry::new(end, range.unit), system));
    match error {
        InputError::Missing { .. } => format!("Enter a value, {from} to {to}."),
        InputError::OutOfRange { given, .. } => {
            format!("{} is outside {from} to {to}.", entry_text(*given, system))
        }
        InputError::WrongUnit { .. } => format!("The unit does not fit here. Enter {from} to {to}."),
        _ => format!("Enter a number, {from} to {to}."),
    }
}

/// Why what was typed is not a number.
#[must_use]
pub fn not_read_text(typed: &str, reason: NotRead) -> String {
    let short: String = typed.chars().take(24).collect();
    match reason {
        NotRead::Comma => format!("“{short}” can be read two ways. Use a point for decimals: 12.5."),
        NotRead::NotANumber => format!("“{short}” is not a number."),
        NotRead::TooLarge => format!("“{short}” is too large for a number."),
    }
}

/// A finding in a sentence: what it is, and what to do.
#[must_use]
pub fn finding_text(finding: &Finding, system: UnitSystem) -> String {
    let words = words();
    match finding {
        Finding::CableNoSize { way } => format!(
            "No listed size meets both ampacity and drop on the {}. Take a higher voltage, a shorter lead, or allow more drop.",
            (words.way)(*way)
        ),
        Finding::AluminumInWell => "Aluminum does not belong down a well. Take copper.".to_owned(),
        Finding::GroundWireGrew { way } => format!(
            "On the {} the ground grew with the phase conductors, NEC 250.122(B). Order it so.",
            (words.way)(*way)
        ),
        Finding::BeyondUsual { field, usual } => {
            format!("{}: beyond the usual {}. Check it.", (words.field)(*field), entry_text(*usual, system))
        }
        _ => String::new(),
    }
}
