//! Why a table of equipment can't be used, in a sentence.

use super::currency::named;
use super::water::plain_figure;
use super::words;
use wellwright_core::power::family_table::{COLUMNS, TableError, TableFault};

/// Units of the columns, in their order.
const UNITS: [&str; 26] = [
    "hp", "A", "A", "A", "A", "", "%", "%", "%", "%", "%", "%", "V", "V", "", "", "°C", "%", "°C", "m", "%", "m", "$",
    "$", "kA", "",
];

/// What a column of a table is called, and its unit.
#[must_use]
pub fn column_name(column: &str) -> (&'static str, &'static str) {
    let place = COLUMNS.iter().position(|name| *name == column);
    place.map_or(("", ""), |place| (words().equipment.columns[place], named(UNITS[place])))
}

/// Why a table can't be used, and where.
#[must_use]
pub fn table_error_text(error: &TableError) -> String {
    (words().equipment.at)(error.row, error.column.unwrap_or(""), &fault_text(&error.what))
}

/// What is wrong, without the place.
#[must_use]
pub fn fault_text(fault: &TableFault) -> String {
    let words = &words().equipment;
    match fault {
        TableFault::NoHeader => words.no_header.to_owned(),
        TableFault::MissingColumn => words.missing_column.to_owned(),
        TableFault::UnknownColumn(name) => (words.unknown_column)(name),
        TableFault::ColumnTwice => words.column_twice.to_owned(),
        TableFault::NotANumber(given) => (words.not_a_number)(given),
        TableFault::Ambiguous(given) => (words.ambiguous)(given),
        TableFault::OutOfRange { given, min, max } => {
            (words.out_of_range)(&plain_figure(*given), &plain_figure(*min), &plain_figure(*max))
        }
        TableFault::UnknownKind(given) => (words.unknown_kind)(given),
        TableFault::UnknownEnclosure(given) => (words.unknown_enclosure)(given),
        TableFault::NoName => words.no_name.to_owned(),
        TableFault::NameTooLong => words.name_too_long.to_owned(),
        TableFault::ControlInName => words.control_in_name.to_owned(),
        TableFault::Apart => words.apart.to_owned(),
        TableFault::OtherKind => words.other_kind.to_owned(),
        TableFault::Contradicts => words.contradicts.to_owned(),
        TableFault::FrameTwice => words.frame_twice.to_owned(),
        TableFault::FrameMissing => words.frame_missing.to_owned(),
        TableFault::DoesNotApply => words.does_not_apply.to_owned(),
        TableFault::TooMany => words.too_many.to_owned(),
        TableFault::Unreadable => words.unreadable.to_owned(),
    }
}
