//! A price book as a table of text, as a spreadsheet writes it: a row for each price.
//!
//! | `item` | `kind` | `metal` | `size` | `unit` | `price` |
//! | --- | --- | --- | --- | --- | --- |
//! | `name`, `source` | what the book is called; who quoted it | | | | |
//! | `currency` | code of three letters, as `USD` | | | | |
//! | `date` | day of the prices, as `2026-11-01` | | | | |
//! | `cable_fixed` | | | | length | part of a cable that does not depend on its metal |
//! | `cable_factor` | | | | `1` or blank | what the metal's price is multiplied by |
//! | `metal` | | yes | | mass | metal as cable |
//! | `cable` | build, as `flat_jacketed` | yes | as `4 AWG` | length | the whole three-phase cable with its ground |
//! | `equipment` | as `large_economy` | | as `15 hp` | `$` | a piece of that size |
//! | `equipment` | as `large_economy` | | | `$` or power | a piece of any size: fixed part, part for each of its size |
//! | `remedy` | as `sine_filter` | | as equipment | as equipment | the same for what stands ahead of a long lead |
//! | `transformer` | | | as `15 kVA` or blank | `$` or `$/kVA` | the same for a transformer |
//! | `line` | | | | `$` or length | line extension: fixed part, part for its length |
//! | `line_free` | | | | `ft`, `m` | length of the extension that nothing is asked for |
//! | `labor` | | | | `$` or length | labor for the lead: fixed part, part for its length |
//!
//! Units: for a length `$/ft`, `$/m`, `$/kft`, `$/km`; for a mass `$/lb`, `$/kg`; for power `$/hp`, `$/kW`. `$` is the
//! book's currency, whatever it is. A size may be in `hp`, in `kW` or in `kVA`, and is in hp or kVA where it tells no
//! unit; a cable's may leave out `AWG` or `kcmil`. Metals are `copper` and `aluminum`. Words are read in small or large
//! letters, those of a currency aside.
//!
//! Columns and rows may stand in any order; `metal` and `size` may be left out. A cell that an item has no use for is
//! blank. A row whose price is blank is checked and has no price: the book does not have it. A book needs its currency and
//! its date, and holds each price once, whatever its unit. Prices keep the number and the unit that they were written in.
//!
//! Cells, numbers and texts, which are no formula to a spreadsheet, are those of [`crate::table`]. Spaces around a text do
//! not belong to it. Characters that break or turn a line, and other control characters, are refused in a text;
//! [`write()`] puts a space in their place.

use super::book::{BookUnit, PriceFault};
use crate::table::faults;

mod cells;
mod line;
mod read;
#[cfg(test)]
mod tests;
mod word;
mod write;

pub use cells::{Cells, choices, columns_of};
pub use read::read;
pub use word::Word;
pub use write::write;

/// The column of what a row is for.
pub const ITEM: &str = "item";
/// The column of a kind of equipment, a remedy, a cable's build, or a text.
pub const KIND: &str = "kind";
/// The column of a metal.
pub const METAL: &str = "metal";
/// The column of a size.
pub const SIZE: &str = "size";
/// The column of a price's unit.
pub const UNIT: &str = "unit";
/// The column of a price.
pub const PRICE: &str = "price";
/// Every column.
pub const COLUMNS: [&str; 6] = [ITEM, KIND, METAL, SIZE, UNIT, PRICE];

/// Most rows that are read.
pub const MOST_ROWS: usize = 2000;
/// Most bytes of a text that is read.
pub const MOST_BYTES: usize = 100_000;
/// Most characters of a name or a source.
pub const MOST_TEXT: usize = 120;

/// Why a table gives no book, and where.
#[derive(Debug, Clone, PartialEq)]
pub struct BookError {
    /// The line of the text, from 1, that the row begins on.
    pub row: usize,
    /// The column; `None` where the whole row is at fault.
    pub column: Option<&'static str>,
    /// What is wrong there.
    pub what: BookFault,
}

/// What is wrong with a table. Cells are repeated up to 40 characters.
#[derive(Debug, Clone, PartialEq)]
pub enum BookFault {
    /// The text is longer than is read.
    TooLong {
        /// Its bytes.
        given: usize,
        /// Most bytes.
        most: usize,
    },
    /// More rows than this.
    TooMany(usize),
    /// The first row names no column that is known.
    NoHeader,
    /// The first row lacks this column.
    MissingColumn,
    /// The first row names a column that is not known: this.
    UnknownColumn(String),
    /// The first row names this column twice.
    ColumnTwice,
    /// A row of more or fewer cells than there are columns, or a quote that is not closed or stands within a cell.
    Unreadable,
    /// An item that is not known: this.
    UnknownItem(String),
    /// Equipment, a remedy or a build that is not known: this.
    UnknownKind(String),
    /// A metal that is not known: this.
    UnknownMetal(String),
    /// A conductor's size that is not listed: this.
    UnknownSize(String),
    /// A unit that is not known: this.
    UnknownUnit(String),
    /// A price without a unit.
    NoUnit(&'static [BookUnit]),
    /// A unit that does not measure what stands there.
    WrongUnit {
        /// The unit.
        given: BookUnit,
        /// Those that do.
        accepted: &'static [BookUnit],
    },
    /// A cell that is no number: this.
    NotANumber(String),
    /// A number whose comma may part thousands or decimals: this.
    Ambiguous(String),
    /// A figure that the sums do not hold for, in its own unit.
    OutOfRange {
        /// The figure.
        given: f64,
        /// Least accepted value.
        min: f64,
        /// Largest accepted value.
        max: f64,
    },
    /// A cell that the row's item has no use for.
    DoesNotApply,
    /// What an earlier row holds already.
    Twice {
        /// The line of that row.
        first: usize,
    },
    /// A code that is none of a currency: this.
    NotACurrency(String),
    /// A text that is no day of the calendar: this.
    NotADate(String),
    /// A text of more characters than are read.
    TextTooLong {
        /// Its characters.
        given: usize,
        /// Most characters.
        most: usize,
    },
    /// A text that holds a character which breaks or turns a line, or another control character.
    ControlInText,
    /// No row tells this, which a book needs.
    Missing(Word),
}

faults!(BookError, BookFault);

impl BookError {
    fn of_price(fault: PriceFault, row: usize) -> Self {
        let column = |argument| Some(if argument == SIZE { SIZE } else { PRICE });
        match fault {
            PriceFault::Unit { argument: SIZE, given, accepted } => {
                BookFault::WrongUnit { given, accepted }.at(row, Some(SIZE))
            }
            PriceFault::Unit { given, accepted, .. } => BookFault::WrongUnit { given, accepted }.at(row, Some(UNIT)),
            PriceFault::Outside(outside) => {
                let what = BookFault::OutOfRange { given: outside.given, min: outside.min, max: outside.max };
                what.at(row, column(outside.argument))
            }
        }
    }
}
