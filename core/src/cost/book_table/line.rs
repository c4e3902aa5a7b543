//! One row of the table: what it is for, and its price.

use super::{BookError, BookFault, ITEM, KIND, METAL, PRICE, SIZE, UNIT, Word};
use crate::cost::book::{BookUnit, Build, Cable, Equipment, Item, Piece, Price, Rating, Remedy};
use crate::standards::conductor::{Metal, Size};
use crate::table::{Row, number, repeated};

/// The metals and their words.
pub(super) const METALS: [(Metal, &str); 2] = [(Metal::Copper, "copper"), (Metal::Aluminum, "aluminum")];

/// A conductor's size as it is written.
pub(super) fn size_word(size: Size) -> String {
    format!("{} {}", size.designation(), size.gauge())
}

/// A row, its cells by their columns.
pub(super) struct Line<'a> {
    pub row: &'a Row,
    pub columns: &'a [&'static str],
    pub decimal_comma: bool,
}

/// What a row is for, but for what its unit tells.
enum What {
    Plain(Item),
    /// A fixed part and one for each length.
    Length(Item, Item),
    Piece(Piece),
}

impl Line<'_> {
    /// The cell of a column; blank where there is none.
    pub(super) fn cell(&self, column: &str) -> &str {
        let mut cells = self.columns.iter().zip(self.row.cells());
        cells.find(|(name, _)| **name == column).map_or("", |(_, cell)| cell)
    }

    pub(super) fn fault(&self, column: &'static str, what: BookFault) -> BookError {
        what.at(self.row.line, Some(column))
    }

    /// The word of the row's item, whose other cells are blank.
    pub(super) fn word(&self) -> Result<Word, BookError> {
        let cell = self.cell(ITEM);
        let word = Word::named(cell);
        let word = word.ok_or_else(|| self.fault(ITEM, BookFault::UnknownItem(repeated(cell))))?;
        let filled = |column: &&&'static str| !word.columns().contains(*column) && !self.cell(column).is_empty();
        match self.columns.iter().find(filled) {
            Some(column) => Err(self.fault(column, BookFault::DoesNotApply)),
            None => Ok(word),
        }
    }

    /// What the row is for, and its price; `None` where that is blank.
    pub(super) fn priced(&self, word: Word) -> Result<Option<(Item, Price)>, BookError> {
        let what = self.what(word)?;
        let size = if let What::Piece(piece) = what { self.rating(piece)? } else { None };
        let unit = self.unit(word.units(size.is_some()))?;
        let cell = self.cell(PRICE);
        if cell.is_empty() {
            return Ok(None);
        }
        let amount = number(cell, self.decimal_comma, 0).map_err(|fault| self.fault(PRICE, fault.into()))?;
        let each = unit == BookUnit::Each;
        let item = match what {
            What::Plain(item) => item,
            What::Length(fixed, per_length) => {
                if each {
                    fixed
                } else {
                    per_length
                }
            }
            What::Piece(piece) => match size {
                Some(size) => Item::Sized(piece, size),
                None => {
                    if each {
                        Item::Fixed(piece)
                    } else {
                        Item::PerSize(piece)
                    }
                }
            },
        };
        let price = Price::new(amount, unit);
        item.check(price).map_err(|fault| BookError::of_price(fault, self.row.line))?;
        Ok(Some((item, price)))
    }

    fn what(&self, word: Word) -> Result<What, BookError> {
        Ok(match word {
            Word::CableFixed => What::Plain(Item::CableFixed),
            Word::CableFactor => What::Plain(Item::CableFactor),
            Word::Metal => What::Plain(Item::Metal(self.metal()?)),
            Word::Cable => {
                let build = self.kind(Build::named)?;
                What::Plain(Item::Cable(Cable { build, metal: self.metal()?, size: self.size()? }))
            }
            Word::Equipment => What::Piece(Piece::Equipment(self.kind(Equipment::named)?)),
            Word::Remedy => What::Piece(Piece::Remedy(self.kind(Remedy::named)?)),
            Word::Transformer => What::Piece(Piece::Transformer),
            Word::Line => What::Length(Item::LineFixed, Item::LinePerLength),
            Word::LineFree => What::Plain(Item::LineFree),
            Word::Labor => What::Length(Item::LaborFixed, Item::LaborPerLength),
            Word::Name | Word::Source | Word::Currency | Word::Date => {
                return Err(self.fault(ITEM, BookFault::DoesNotApply));
            }
        })
    }

    fn kind<T>(&self, named: fn(&str) -> Option<T>) -> Result<T, BookError> {
        let cell = self.cell(KIND);
        named(cell).ok_or_else(|| self.fault(KIND, BookFault::UnknownKind(repeated(cell))))
    }

    fn metal(&self) -> Result<Metal, BookError> {
        let cell = self.cell(METAL);
        let metal = METALS.into_iter().find(|(_, word)| word.eq_ignore_ascii_case(cell));
        metal.map(|(metal, _)| metal).ok_or_else(|| self.fault(METAL, BookFault::UnknownMetal(repeated(cell))))
    }

    fn size(&self) -> Result<Size, BookError> {
        let cell = self.cell(SIZE);
        let is = |size: &Size| size.designation() == cell || size_word(*size).eq_ignore_ascii_case(cell);
        let size = Size::ALL.into_iter().find(is);
        size.ok_or_else(|| self.fault(SIZE, BookFault::UnknownSize(repeated(cell))))
    }

    /// The size of a piece; `None` where the row holds for every size.
    fn rating(&self, piece: Piece) -> Result<Option<Rating>, BookError> {
        let cell = self.cell(SIZE);
        if cell.is_empty() {
            return Ok(None);
        }
        let figure = cell.trim_end_matches(|c: char| c.is_ascii_alphabetic());
        let word = &cell[figure.len()..];
        let accepted = piece.size_units();
        let unit = match accepted.first() {
            Some(usual) if word.is_empty() => *usual,
            _ => BookUnit::named(word).ok_or_else(|| self.fault(SIZE, BookFault::UnknownUnit(repeated(word))))?,
        };
        if !accepted.contains(&unit) {
            return Err(self.fault(SIZE, BookFault::WrongUnit { given: unit, accepted }));
        }
        let value = number(figure.trim_end(), self.decimal_comma, 0).map_err(|fault| self.fault(SIZE, fault.into()))?;
        Ok(Some(Rating { value, unit }))
    }

    /// The unit of the row's price; the only one that it can be where that is a plain number.
    fn unit(&self, accepted: &'static [BookUnit]) -> Result<BookUnit, BookError> {
        let cell = self.cell(UNIT);
        match (BookUnit::named(cell), accepted) {
            (Some(unit), _) if accepted.contains(&unit) => Ok(unit),
            (Some(given), _) => Err(self.fault(UNIT, BookFault::WrongUnit { given, accepted })),
            (None, [BookUnit::One]) if cell.is_empty() => Ok(BookUnit::One),
            // Without a price a row needs no unit.
            (None, [usual, ..]) if cell.is_empty() && self.cell(PRICE).is_empty() => Ok(*usual),
            (None, _) if cell.is_empty() => Err(self.fault(UNIT, BookFault::NoUnit(accepted))),
            (None, _) => Err(self.fault(UNIT, BookFault::UnknownUnit(repeated(cell)))),
        }
    }
}
