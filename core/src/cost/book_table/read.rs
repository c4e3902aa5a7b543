//! A table read to a book.

use super::line::Line;
use super::{BookError, BookFault, COLUMNS, ITEM, KIND, MOST_BYTES, MOST_ROWS, MOST_TEXT, PRICE, UNIT, Word};
use crate::cost::book::{Currency, Date, Item, Price, PriceBook};
use crate::table::{self, Rows, is_control, repeated, text_of};

/// The book of a table; `None` from a text without rows.
///
/// # Units
/// As the rows tell.
/// # Range
/// Up to 2,000 rows and 100,000 bytes, and every price as [`Item::check`] accepts it.
/// # Errors
/// [`BookError`] of the first fault names the line of its row, the column and what is wrong.
/// # Source
/// The form of the text; no formula.
/// # Example
/// ```
/// # use wellwright_core::cost::{book::*, book_table::*};
/// let rows = ["item;kind;unit;price", "currency;USD;;", "date;2026-11-01;;", "equipment;large_economy;$/kW;127,5"];
/// let book = read(&rows.join("\n"))?;
/// let drive = Item::PerSize(Piece::Equipment(Equipment::LargeEconomy));
/// let price = book.and_then(|book| book.get(drive));
/// assert_eq!(price, Some(Price::new(127.5, BookUnit::PerKilowatt)));
/// # Ok::<(), BookError>(())
/// ```
pub fn read(text: &str) -> Result<Option<PriceBook>, BookError> {
    let mut rows = checked_rows(text)?;
    let Some(first) = rows.next()? else { return Ok(None) };
    let named = |cell: &str| COLUMNS.into_iter().find(|name| name.eq_ignore_ascii_case(cell));
    let columns = table::columns(&first, named, |name| name, &[ITEM, KIND, UNIT, PRICE])?;
    let mut found = Found::default();
    let mut count = 0;
    while let Some(row) = rows.next()? {
        count += 1;
        if count > MOST_ROWS {
            return Err(BookFault::TooMany(MOST_ROWS).at(row.line, None));
        }
        found.add(&Line { row: &row, columns: &columns, decimal_comma: rows.decimal_comma() })?;
    }
    if count == 0 { Ok(None) } else { found.close(first.line).map(Some) }
}

/// The rows of a text that is not too long.
pub(super) fn checked_rows(text: &str) -> Result<Rows<'_>, BookError> {
    match text.len() {
        given if given > MOST_BYTES => Err(BookFault::TooLong { given, most: MOST_BYTES }.at(1, None)),
        _ => Ok(Rows::of(text)),
    }
}

/// What the rows have told so far.
#[derive(Default)]
struct Found {
    name: String,
    source: String,
    currency: Option<Currency>,
    date: Option<Date>,
    /// Texts, each with its row.
    texts: Vec<(Word, usize)>,
    /// Prices, each with its row.
    prices: Vec<(Item, Price, usize)>,
}

impl Found {
    fn add(&mut self, line: &Line) -> Result<(), BookError> {
        let word = line.word()?;
        if word.is_text() {
            return self.add_text(word, line);
        }
        let Some((item, price)) = line.priced(word)? else { return Ok(()) };
        if let Some((_, _, first)) = self.prices.iter().find(|(other, ..)| other.is(item)) {
            return Err(line.fault(ITEM, BookFault::Twice { first: *first }));
        }
        self.prices.push((item, price, line.row.line));
        Ok(())
    }

    fn add_text(&mut self, word: Word, line: &Line) -> Result<(), BookError> {
        if let Some((_, first)) = self.texts.iter().find(|(other, _)| *other == word) {
            return Err(line.fault(ITEM, BookFault::Twice { first: *first }));
        }
        self.texts.push((word, line.row.line));
        let cell = line.cell(KIND);
        let at = |fault: BookFault| line.fault(KIND, fault);
        match word {
            Word::Currency => {
                let currency = Currency::of(cell);
                self.currency = Some(currency.ok_or_else(|| at(BookFault::NotACurrency(repeated(cell))))?);
            }
            Word::Date => {
                self.date = Some(Date::of(cell).ok_or_else(|| at(BookFault::NotADate(repeated(cell))))?);
            }
            Word::Name => self.name = text(cell).map_err(at)?,
            _ => self.source = text(cell).map_err(at)?,
        }
        Ok(())
    }

    /// The book, its rows all read.
    fn close(self, head: usize) -> Result<PriceBook, BookError> {
        let missing = |word: Word| BookFault::Missing(word).at(head, Some(ITEM));
        let currency = self.currency.ok_or_else(|| missing(Word::Currency))?;
        let date = self.date.ok_or_else(|| missing(Word::Date))?;
        let mut book = PriceBook::new(currency, date);
        (book.name, book.source) = (self.name, self.source);
        for (item, price, row) in self.prices {
            book.set(item, price).map_err(|fault| BookError::of_price(fault, row))?;
        }
        Ok(book)
    }
}

fn text(cell: &str) -> Result<String, BookFault> {
    let text = text_of(cell);
    let given = text.chars().count();
    if given > MOST_TEXT {
        Err(BookFault::TextTooLong { given, most: MOST_TEXT })
    } else if text.contains(is_control) {
        Err(BookFault::ControlInText)
    } else {
        Ok(text.to_owned())
    }
}
