//! The table as cells, so that one can be changed while the others stay as they were written.
//!
//! A cell may hold anything; [`read`](super::read()) of the cells' text checks it, and its error names the row by its line.

use super::line::{METALS, size_word};
use super::read::checked_rows;
use super::{BookError, BookFault, COLUMNS, ITEM, KIND, METAL, MOST_ROWS, SIZE, UNIT, Word, write};
use crate::cost::book::{Build, Equipment, Item, PriceBook, Remedy};
use crate::standards::conductor::Size;
use crate::table::{self, harmless, text_of};
use core::ops::{Deref, DerefMut};

/// The cells of a table of prices.
#[derive(Debug, Clone, PartialEq)]
pub struct Cells(table::Cells);

impl Deref for Cells {
    type Target = table::Cells;

    fn deref(&self) -> &table::Cells {
        &self.0
    }
}

impl DerefMut for Cells {
    fn deref_mut(&mut self) -> &mut table::Cells {
        &mut self.0
    }
}

impl Cells {
    /// The cells of a text; none for a blank one.
    ///
    /// # Units
    /// As the rows tell.
    /// # Range
    /// Any text whose rows are alike long, whatever stands in them, up to 2,000 rows and 100,000 bytes.
    /// # Errors
    /// [`BookError`] where the text is too long or can't be taken apart.
    /// # Source
    /// The form of the text; no formula.
    pub fn of(text: &str) -> Result<Self, BookError> {
        checked_rows(text)?;
        let cells = Self(table::Cells::of(text)?);
        match cells.line(MOST_ROWS) {
            Some(line) => Err(BookFault::TooMany(MOST_ROWS).at(line, None)),
            None => Ok(cells),
        }
    }

    /// The cells of a book, each price a row.
    ///
    /// # Units
    /// As the rows tell.
    /// # Range
    /// Books within the limits of the table.
    /// # Errors
    /// As [`Cells::of`].
    /// # Source
    /// The form of the text; no formula.
    pub fn of_book(book: &PriceBook) -> Result<Self, BookError> {
        Self::of(&write::write(book))
    }

    /// What a row is for; `None` where its item is not known.
    ///
    /// # Units
    /// Places of rows, from 0.
    /// # Range
    /// Any row.
    /// # Source
    /// The form of the text; no formula.
    #[must_use]
    pub fn word(&self, row: usize) -> Option<Word> {
        Word::named(self.get(row, ITEM))
    }

    /// Adds a row for an item at the end, in its usual unit and without a price.
    ///
    /// # Units
    /// [`Item::units`].
    /// # Range
    /// Any item.
    /// # Source
    /// The form of the text; no formula.
    pub fn add(&mut self, item: Item) {
        let [kind, metal, size] = write::what(item);
        let unit = item.units().first().map_or("", |unit| unit.word());
        let cells = [Word::of(item).word(), kind.as_str(), metal.as_str(), size.as_str(), unit, ""];
        let cells: Vec<_> = COLUMNS.into_iter().zip(cells).collect();
        let end = self.count();
        self.insert(end, &cells);
    }

    /// A text of the book: its name, source, currency or date; blank where no row tells it.
    ///
    /// # Units
    /// None.
    /// # Range
    /// Any word.
    /// # Source
    /// The form of the text; no formula.
    #[must_use]
    pub fn told(&self, word: Word) -> &str {
        self.row_of(word).map_or("", |row| text_of(self.get(row, KIND)))
    }

    /// Changes a text of the book; a row that was not there is put ahead of the others.
    ///
    /// # Units
    /// None.
    /// # Range
    /// Name, source, currency and date; another word is passed over.
    /// # Source
    /// The form of the text; no formula.
    pub fn tell(&mut self, word: Word, text: &str) {
        if !word.is_text() {
            return;
        }
        let text = harmless(text);
        match self.row_of(word) {
            Some(row) => self.set(row, KIND, &text),
            None => {
                let cells = [word.word(), text.as_str(), "", "", "", ""];
                let cells: Vec<_> = COLUMNS.into_iter().zip(cells).collect();
                self.insert(0, &cells);
            }
        }
    }

    fn row_of(&self, word: Word) -> Option<usize> {
        (0..self.count()).find(|row| self.word(*row) == Some(word))
    }
}

/// The columns that an item fills, or may fill.
///
/// # Units
/// Names of columns.
/// # Range
/// Any word.
/// # Source
/// The form of the text; no formula.
#[must_use]
pub fn columns_of(word: Word) -> &'static [&'static str] {
    word.columns()
}

/// What may stand in a column of an item, where that is one of a list; nothing where it is free.
///
/// # Units
/// None.
/// # Range
/// Any word, any column.
/// # Source
/// The form of the text; no formula.
#[must_use]
pub fn choices(word: Word, column: &str) -> Vec<String> {
    let owned = |words: Vec<&str>| words.into_iter().map(str::to_owned).collect();
    match (word, column) {
        (_, ITEM) => owned(Word::ALL.map(Word::word).to_vec()),
        (Word::Cable, KIND) => owned(Build::ALL.map(Build::word).to_vec()),
        (Word::Equipment, KIND) => owned(Equipment::ALL.map(Equipment::word).to_vec()),
        (Word::Remedy, KIND) => owned(Remedy::ALL.map(Remedy::word).to_vec()),
        (Word::Cable | Word::Metal, METAL) => owned(METALS.map(|(_, word)| word).to_vec()),
        (Word::Cable, SIZE) => Size::ALL.map(size_word).to_vec(),
        (word, UNIT) => owned(word.units(false).iter().map(|unit| unit.word()).collect()),
        _ => Vec::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::super::{PRICE, read};
    use super::*;
    use crate::cost::book::{BookUnit, Cable, Piece, Price, Rating};
    use crate::standards::conductor::Metal;

    #[test]
    fn a_row_is_added_changed_and_taken_out() {
        let mut cells = Cells::of("").unwrap();
        let cable = Item::Cable(Cable { build: Build::Twisted, metal: Metal::Aluminum, size: Size::Awg1_0 });
        let size = Rating { value: 7.5, unit: BookUnit::Horsepower };
        let drive = Item::Sized(Piece::Equipment(Equipment::Doubling), size);
        cells.add(cable);
        cells.add(drive);
        cells.tell(Word::Currency, "MXN");
        cells.tell(Word::Date, "2026-10-05");
        cells.tell(Word::Name, "=1+1");
        cells.tell(Word::Line, "nothing");
        assert_eq!((cells.count(), cells.told(Word::Name), cells.told(Word::Source)), (5, "=1+1", ""));
        assert!(read(&cells.text()).unwrap().unwrap().rows().is_empty(), "a blank price is none");
        let row = (0..cells.count()).find(|row| cells.word(*row) == Some(Word::Cable)).unwrap();
        cells.set(row, PRICE, "1.5");
        cells.tell(Word::Currency, "USD");
        let book = read(&cells.text()).unwrap().unwrap();
        assert_eq!((book.name.as_str(), book.currency.code().as_str()), ("=1+1", "USD"));
        assert_eq!((book.rows().len(), book.get(cable)), (1, Some(Price::new(1.5, BookUnit::PerFoot))));
        assert_eq!(Cells::of(&cells.text()).unwrap().text(), cells.text());
        cells.remove(row..row + 1);
        assert_eq!((cells.count(), cells.word(9)), (4, None));
    }

    #[test]
    fn what_is_one_of_a_list_is_listed() {
        for word in Word::ALL {
            assert_eq!(choices(word, ITEM), Word::ALL.map(Word::word).map(str::to_owned), "{word:?}");
            assert!(choices(word, PRICE).is_empty(), "{word:?}");
        }
        assert_eq!(choices(Word::Metal, METAL), ["copper", "aluminum"]);
        assert_eq!(choices(Word::Metal, UNIT), ["$/lb", "$/kg"]);
        assert_eq!(choices(Word::Cable, SIZE).len(), Size::ALL.len());
        assert_eq!(choices(Word::Cable, KIND).len(), Build::ALL.len());
        assert!(choices(Word::Metal, KIND).is_empty() && choices(Word::Metal, SIZE).is_empty());
    }

    // A text that the sums can't use stays as it was typed, and the error names its line.
    #[test]
    fn a_wrong_cell_stays_and_is_named() {
        let mut cells = Cells::of_book(&PriceBook::invented()).unwrap();
        assert_eq!(read(&cells.text()), Ok(Some(PriceBook::invented())));
        cells.set(3, PRICE, " one ");
        assert_eq!((cells.get(3, PRICE), cells.line(3)), ("one", Some(5)));
        let error = read(&cells.text()).unwrap_err();
        assert_eq!((error.row, error.column), (5, Some(PRICE)));
    }

    #[test]
    fn every_choice_is_one_that_is_read() {
        let mut seen = 0;
        for word in Word::ALL.into_iter().filter(|word| !word.is_text()) {
            assert!(columns_of(word).contains(&PRICE) && !choices(word, UNIT).is_empty());
            for column in [KIND, METAL, SIZE, UNIT] {
                let all = choices(word, column);
                assert!(all.is_empty() || columns_of(word).contains(&column), "{word:?} {column}");
                for choice in all {
                    let mut cells = Cells::of("").unwrap();
                    cells.tell(Word::Currency, "USD");
                    cells.tell(Word::Date, "2026-11-01");
                    cells.insert(9, &[(ITEM, word.word()), (PRICE, "1")]);
                    for other in columns_of(word) {
                        if let Some(first) = choices(word, other).first().filter(|_| *other != ITEM) {
                            cells.set(2, other, first);
                        }
                    }
                    cells.set(2, column, &choice);
                    assert_eq!(read(&cells.text()).unwrap().unwrap().rows().len(), 1, "{}", cells.text());
                    seen += 1;
                }
            }
        }
        assert!(seen > 70, "{seen}");
        assert!(choices(Word::Transformer, SIZE).is_empty() && choices(Word::Name, UNIT).is_empty());
    }
}
