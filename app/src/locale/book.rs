//! What stands in a price book, and why a table of prices can't be used, in words.

use super::currency::in_currency;
use super::language::{Decimals, decimals};
use super::number::{figure, grouped};
use super::reading::read;
use super::words;
use wellwright_core::cost::book::{BookUnit, Build, Date, Equipment, Remedy};
use wellwright_core::cost::book_table::{BookError, BookFault};
use wellwright_core::power::family::Kind as Family;
use wellwright_core::quantity::Kind;

/// Why a table can't be used, and where.
#[must_use]
pub fn book_error_text(error: &BookError) -> String {
    (words().equipment.at)(error.row, error.column.unwrap_or(""), &book_fault_text(&error.what))
}

/// What is wrong, without the place.
#[must_use]
pub fn book_fault_text(fault: &BookFault) -> String {
    let (words, any) = (&words().book, &words().equipment);
    match fault {
        BookFault::TooLong { given, most } => (words.too_long)(&kilobytes(*given), &kilobytes(*most)),
        BookFault::TooMany(most) => (words.too_many)(&whole(*most)),
        BookFault::NoHeader => any.no_header.to_owned(),
        BookFault::MissingColumn => any.missing_column.to_owned(),
        BookFault::UnknownColumn(name) => (any.unknown_column)(name),
        BookFault::ColumnTwice => any.column_twice.to_owned(),
        BookFault::Unreadable => any.unreadable.to_owned(),
        BookFault::UnknownItem(given) => (words.unknown_item)(given),
        BookFault::UnknownKind(given) => (words.unknown_kind)(given),
        BookFault::UnknownMetal(given) => (words.unknown_metal)(given),
        BookFault::UnknownSize(given) => (words.unknown_size)(given),
        BookFault::UnknownUnit(given) => (words.unknown_unit)(given),
        BookFault::NoUnit(accepted) => (words.no_unit)(&list(accepted)),
        BookFault::WrongUnit { given, accepted } => (words.wrong_unit)(given.word(), &list(accepted)),
        BookFault::NotANumber(given) => (any.not_a_number)(given),
        BookFault::Ambiguous(given) => (any.ambiguous)(given),
        BookFault::OutOfRange { given, min, max } => (any.out_of_range)(&figure(*given), &figure(*min), &figure(*max)),
        BookFault::DoesNotApply => words.does_not_apply.to_owned(),
        BookFault::Twice { first } => (words.twice)(*first),
        BookFault::NotACurrency(given) => (words.not_a_currency)(given),
        BookFault::NotADate(given) => (words.not_a_date)(given),
        BookFault::TextTooLong { given, most } => (words.text_too_long)(&whole(*given), &whole(*most)),
        BookFault::ControlInText => words.control_in_text.to_owned(),
        BookFault::Missing(word) => (words.missing)((words.item)(*word)),
    }
}

fn whole(count: usize) -> String {
    grouped(count as f64, 0)
}

/// Rounded up, so that what is too long is not shown as just long enough.
fn kilobytes(bytes: usize) -> String {
    whole(bytes.div_ceil(1000))
}

/// Units as they are written in the table.
fn list(units: &[BookUnit]) -> String {
    units.iter().map(|unit| unit.word()).collect::<Vec<_>>().join(", ")
}

/// Equipment of a price book.
#[must_use]
pub fn equipment_name(equipment: Equipment) -> &'static str {
    (words().ways.name)(match equipment {
        Equipment::ConvertingActive => Family::ConvertingActive,
        Equipment::ConvertingPassive => Family::ConvertingPassive,
        Equipment::Doubling => Family::Doubling,
        Equipment::LargeLowHarmonic => Family::LargeLowHarmonic,
        Equipment::LargeEconomy => Family::LargeEconomy,
        Equipment::LargeEconomyChoke => Family::LargeEconomyChoke,
        Equipment::SolidStateConverter => Family::SolidStateConverter,
        Equipment::RotaryConverter => Family::RotaryConverter,
        Equipment::DeratedDrive => Family::DeratedDrive,
        Equipment::StepUpActive => Family::StepUpActive,
        Equipment::StepUpPassive => Family::StepUpPassive,
        Equipment::ThreePhaseLine => Family::ThreePhaseLine,
        Equipment::ThreePhaseGenerator => Family::ThreePhaseGenerator,
        Equipment::SinglePhaseMotor => Family::SinglePhaseMotor,
    })
}

/// What stands between a drive and a long lead.
#[must_use]
pub fn remedy_name(remedy: Remedy) -> &'static str {
    use wellwright_core::cable::filter::Remedy as Fitted;
    (words().ways.remedy)(match remedy {
        Remedy::OutputReactor => Fitted::OutputReactor,
        Remedy::DvDtFilter => Fitted::DvDtFilter,
        Remedy::SineFilter => Fitted::SineFilter,
    })
}

/// How a cable of a price book is built.
#[must_use]
pub fn build_name(build: Build) -> &'static str {
    use wellwright_core::cable::reactance::Build as Laid;
    (words().fields.build)(match build {
        Build::PlasticConduit => Laid::PlasticConduit,
        Build::SteelConduit => Laid::SteelConduit,
        Build::FlatJacketed => Laid::FlatJacketed,
        Build::Twisted => Laid::Twisted,
    })
}

/// The day of a text such as `2026-11-01`, as people write it; another text as it stands.
#[must_use]
pub fn day_of(text: &str) -> String {
    Date::of(text).map_or_else(|| text.to_owned(), day)
}

/// A day as people write it.
#[must_use]
pub fn day(date: Date) -> String {
    let (words, text) = (&words().book, date.text());
    let mut parts = text.split('-').filter_map(|part| part.parse::<u16>().ok());
    let (Some(year), Some(month), Some(day)) = (parts.next(), parts.next(), parts.next()) else { return text };
    let month = words.months.get(usize::from(month).saturating_sub(1)).copied().unwrap_or_default();
    (words.day)(month, &day.to_string(), year)
}

/// A unit of the table as it stands beside a figure; nothing for a plain number.
#[must_use]
pub fn unit_word(word: &str) -> String {
    if word == BookUnit::One.word() { String::new() } else { in_currency(word) }
}

/// A number of the table as it stands in a field.
#[must_use]
pub fn cell_shown(cell: &str) -> String {
    let is_plain = cell.chars().all(|c| c.is_ascii_digit() || c == '.');
    if is_plain && decimals() == Decimals::Comma { cell.replace('.', ",") } else { cell.to_owned() }
}

/// What was typed in a field, as the table writes numbers; what is no number stays as it was typed.
#[must_use]
pub fn cell_typed(text: &str) -> String {
    let text = text.trim();
    let is_plain = text.chars().all(|c| c.is_ascii_digit() || c == '.');
    if is_plain && decimals() == Decimals::Point {
        return text.to_owned();
    }
    match read(text, Kind::Money) {
        Ok(Some(read)) => format!("{}", read.value),
        _ => text.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::super::language::{Language, speak};
    use super::*;
    use std::collections::BTreeSet;
    use wellwright_core::cost::book_table::{self, Word};

    /// A fault of every kind; a new kind does not compile until it stands here.
    fn all() -> Vec<BookFault> {
        let given = || "=1+1".to_owned();
        let accepted: &[BookUnit] = &[BookUnit::PerFoot, BookUnit::PerMeter];
        let faults = vec![
            BookFault::TooLong { given: 2_000_001, most: book_table::MOST_BYTES },
            BookFault::TooMany(book_table::MOST_ROWS),
            BookFault::NoHeader,
            BookFault::MissingColumn,
            BookFault::UnknownColumn(given()),
            BookFault::ColumnTwice,
            BookFault::Unreadable,
            BookFault::UnknownItem(given()),
            BookFault::UnknownKind(given()),
            BookFault::UnknownMetal(given()),
            BookFault::UnknownSize(given()),
            BookFault::UnknownUnit(given()),
            BookFault::NoUnit(accepted),
            BookFault::WrongUnit { given: BookUnit::PerPound, accepted },
            BookFault::NotANumber(given()),
            BookFault::Ambiguous("1,200".to_owned()),
            BookFault::OutOfRange { given: -1.0, min: 0.0, max: 453_592.37 },
            BookFault::DoesNotApply,
            BookFault::Twice { first: 7 },
            BookFault::NotACurrency(given()),
            BookFault::NotADate(given()),
            BookFault::TextTooLong { given: 1400, most: 120 },
            BookFault::ControlInText,
            BookFault::Missing(Word::Currency),
        ];
        for fault in &faults {
            match fault {
                BookFault::TooLong { .. } | BookFault::TooMany(_) | BookFault::NoHeader => {}
                BookFault::MissingColumn | BookFault::UnknownColumn(_) | BookFault::ColumnTwice => {}
                BookFault::Unreadable | BookFault::UnknownItem(_) | BookFault::UnknownKind(_) => {}
                BookFault::UnknownMetal(_) | BookFault::UnknownSize(_) | BookFault::UnknownUnit(_) => {}
                BookFault::NoUnit(_) | BookFault::WrongUnit { .. } | BookFault::NotANumber(_) => {}
                BookFault::Ambiguous(_) | BookFault::OutOfRange { .. } | BookFault::DoesNotApply => {}
                BookFault::Twice { .. } | BookFault::NotACurrency(_) | BookFault::NotADate(_) => {}
                BookFault::TextTooLong { .. } | BookFault::ControlInText | BookFault::Missing(_) => {}
            }
        }
        faults
    }

    #[test]
    fn every_fault_has_its_own_sentence_in_every_language() {
        let mut said = BTreeSet::new();
        for language in Language::ALL {
            speak(language, Decimals::Point);
            said.extend(all().iter().map(book_fault_text).filter(|text| !text.is_empty()));
        }
        speak(Language::English, Decimals::Point);
        assert_eq!(said.len(), Language::ALL.len() * all().len(), "{said:#?}");
    }

    #[test]
    fn a_fault_names_its_place_and_what_would_be_right() {
        let said = |text: &str| book_error_text(&book_table::read(text).unwrap_err());
        let rows =
            |row: &str| format!("item,kind,metal,size,unit,price\ncurrency,USD,,,,\ndate,2026-11-01,,,,\n{row}\n");
        assert_eq!(
            said(&rows("metal,,copper,,$/ft,9")),
            "Line 4, column unit: $/ft does not fit here; it may be $/lb, $/kg"
        );
        assert_eq!(said(&rows("metal,,copper,,$/lb,-9")), "Line 4, column price: \u{2212}9 is outside 0 to 453,592");
        assert_eq!(
            said("item,kind,unit,price\ndate,2026-11-01,,\n"),
            "Line 1, column item: no row tells this: Currency, by its code"
        );
        assert_eq!(said(&"x".repeat(100_001)), "Line 1: the table is 101\u{a0}kB long, at most 100\u{a0}kB are read");
    }

    #[test]
    fn numbers_of_a_cell_are_written_and_read_by_the_way_in_force() {
        assert_eq!(
            ["1250.50", " 1,250.5 ", "$5", "1/4", "one", "-5", ""].map(cell_typed),
            ["1250.50", "1250.5", "5", "0.25", "one", "-5", ""]
        );
        assert_eq!(["1250.50", "one", "1,5"].map(cell_shown), ["1250.50", "one", "1,5"]);
        speak(Language::Spanish, Decimals::Comma);
        assert_eq!(["1250,5", "1.250,5", "12,50"].map(cell_typed), ["1250.5", "1250.5", "12.5"]);
        assert_eq!(["1250.50", "1.a"].map(cell_shown), ["1250,50", "1.a"]);
        assert_eq!(Date::of("2026-02-05").map(day).as_deref(), Some("5 de febrero de 2026"));
        speak(Language::English, Decimals::Point);
        assert_eq!(Date::of("2026-02-05").map(day).as_deref(), Some("February 5, 2026"));
    }
}
