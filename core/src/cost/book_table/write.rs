//! A book written as a table.

use super::line::{METALS, size_word};
use super::{COLUMNS, Word};
use crate::cost::book::{Item, Piece, PriceBook, Rating};
use crate::standards::conductor::Metal;
use crate::table::{cell_of, plain};

/// A book as a table that [`read`](super::read()) takes, a row for each price in the unit that it was quoted in. A blank
/// name or source has no row. Numbers are the shortest that are read back bit for bit.
///
/// # Units
/// As the rows tell.
/// # Range
/// Every book is read back the same within the limits of the table, where its texts hold no control characters and no
/// spaces around them.
/// # Source
/// The form of the text; no formula.
/// # Example
/// ```
/// # use wellwright_core::cost::{book::*, book_table::*};
/// let mut book = PriceBook::invented();
/// book.name = "=mine".to_owned();
/// let text = write(&book);
/// let head = "item,kind,metal,size,unit,price\nname,'=mine,,,,\ncurrency,USD,,,,\ndate,2026-11-01,,,,\n";
/// assert!(text.starts_with(&format!("{head}cable_fixed,,,,$/ft,0.5\n")));
/// assert_eq!(read(&text), Ok(Some(book)));
/// ```
#[must_use]
pub fn write(book: &PriceBook) -> String {
    let mut rows = vec![COLUMNS.map(str::to_owned)];
    let texts = [
        (Word::Name, cell_of(&book.name, ',')),
        (Word::Source, cell_of(&book.source, ',')),
        (Word::Currency, book.currency.code()),
        (Word::Date, book.date.text()),
    ];
    for (word, text) in texts {
        if !text.is_empty() {
            let mut cells = [const { String::new() }; 6];
            cells[0] = word.word().to_owned();
            cells[1] = text;
            rows.push(cells);
        }
    }
    for row in book.rows() {
        let [kind, metal, size] = what(row.item);
        let word = Word::of(row.item).word().to_owned();
        rows.push([word, kind, metal, size, row.price.unit.word().to_owned(), plain(row.price.amount, 0)]);
    }
    rows.iter().map(|cells| cells.join(",") + "\n").collect()
}

/// Kind, metal and size of an item.
pub(super) fn what(item: Item) -> [String; 3] {
    let none = String::new;
    match item {
        Item::Metal(metal) => [none(), metal_word(metal), none()],
        Item::Cable(cable) => [cable.build.word().to_owned(), metal_word(cable.metal), size_word(cable.size)],
        Item::Fixed(piece) | Item::PerSize(piece) => [kind(piece), none(), none()],
        Item::Sized(piece, size) => [kind(piece), none(), rating(size)],
        Item::CableFixed
        | Item::CableFactor
        | Item::LineFixed
        | Item::LinePerLength
        | Item::LineFree
        | Item::LaborFixed
        | Item::LaborPerLength => [none(), none(), none()],
    }
}

fn metal_word(metal: Metal) -> String {
    METALS.into_iter().find(|(one, _)| *one == metal).map_or_else(String::new, |(_, word)| word.to_owned())
}

fn kind(piece: Piece) -> String {
    match piece {
        Piece::Equipment(kind) => kind.word().to_owned(),
        Piece::Remedy(remedy) => remedy.word().to_owned(),
        Piece::Transformer => String::new(),
    }
}

fn rating(size: Rating) -> String {
    format!("{} {}", plain(size.value, 0), size.unit.word())
}
