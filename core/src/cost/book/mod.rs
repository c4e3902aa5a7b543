//! A price book: prices as data, each for one thing and in the unit that it was quoted in.
//!
//! A book holds no price twice, and none that the sums do not hold for. What is not in it has no price: nothing is made
//! up in its place, but for labor, which is counted only where the book has it. Prices are in the book's currency, which
//! its units write as `$`, whatever it is.

use crate::error::OutsideRange;

mod date;
mod invented;
mod item;
mod lookup;
#[cfg(test)]
mod tests;
mod unit;
mod words;

pub use date::{Currency, Date};
use item::Order;
pub use item::{Cable, Item, Piece, Rating};
pub use lookup::LineExtension;
pub use unit::BookUnit;
pub(crate) use words::words;
pub use words::{Build, Equipment, Remedy};

/// Prices that somebody quoted.
#[derive(Debug, Clone, PartialEq)]
pub struct PriceBook {
    /// What the book is called.
    pub name: String,
    /// What its prices are in.
    pub currency: Currency,
    /// The day that its prices are of.
    pub date: Date,
    /// Who quoted them; blank where nobody did.
    pub source: String,
    rows: Vec<Row>,
    /// Where each row stands, by which they are in order: a search asks for it again and again.
    orders: Vec<Order>,
}

/// One price of a book.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// What it is for.
    pub item: Item,
    /// What that costs.
    pub price: Price,
}

/// An amount in the unit that it was quoted in; of a length or a factor, that itself.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Price {
    /// The number.
    pub amount: f64,
    /// Its unit.
    pub unit: BookUnit,
}

/// Why a price can't stand in a book.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PriceFault {
    /// A unit that does not measure what it stands at.
    Unit {
        /// `price` or `size`.
        argument: &'static str,
        /// The unit.
        given: BookUnit,
        /// Those that do.
        accepted: &'static [BookUnit],
    },
    /// A `price` or a `size` outside its range, in its own unit.
    Outside(OutsideRange),
}

impl PriceBook {
    /// A book without prices.
    ///
    /// # Units
    /// None.
    /// # Range
    /// Any.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn new(currency: Currency, date: Date) -> Self {
        Self { name: String::new(), currency, date, source: String::new(), rows: Vec::new(), orders: Vec::new() }
    }

    /// Whether nobody stands behind the prices: the book tells no source. The built-in one tells none, nor does one that
    /// began as it until its source is told.
    ///
    /// # Units
    /// None.
    /// # Range
    /// Any book.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn is_invented(&self) -> bool {
        self.source.trim().is_empty()
    }

    /// Every price, in a fixed order.
    ///
    /// # Units
    /// As each price tells.
    /// # Range
    /// Any book.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn rows(&self) -> &[Row] {
        &self.rows
    }

    /// The price of an item; `None` where the book has none.
    ///
    /// # Units
    /// As the price tells.
    /// # Range
    /// Any item; sizes are the same where they are within 10⁻⁹ of each other, whatever their units.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn get(&self, item: Item) -> Option<Price> {
        // Rows stand in order: those before can't be the item, nor can those behind it.
        let own = item.order();
        let from = self.orders.partition_point(|order| own.is_well_behind(*order));
        let mut near = self.orders.iter().skip(from).take_while(|order| !order.is_well_behind(own));
        let place = from + near.position(|order| order.is(own))?;
        self.rows.get(place).map(|row| row.price)
    }

    /// Puts a price in, in place of the one that the item had.
    ///
    /// # Units
    /// Those of [`Item::units`].
    /// # Range
    /// As [`Item::check`].
    /// # Errors
    /// [`PriceFault`], as [`Item::check`]; the book stays as it was.
    /// # Source
    /// Definition.
    pub fn set(&mut self, item: Item, price: Price) -> Result<(), PriceFault> {
        item.check(price)?;
        self.remove(item);
        let own = item.order();
        let place = self.orders.iter().position(|order| order.is_behind(own)).unwrap_or(self.orders.len());
        self.rows.insert(place, Row { item, price });
        self.orders.insert(place, own);
        Ok(())
    }

    /// Takes a price out.
    ///
    /// # Units
    /// None.
    /// # Range
    /// Any item; one that has no price is passed over.
    /// # Source
    /// Definition.
    pub fn remove(&mut self, item: Item) {
        let own = item.order();
        while let Some(place) = self.orders.iter().position(|order| order.is(own)) {
            self.rows.remove(place);
            self.orders.remove(place);
        }
    }

    /// The price of an item in the first of its kind's units: money, per meter, kilogram, horsepower or kilovolt-ampere.
    pub(super) fn amount(&self, item: Item) -> Option<f64> {
        self.get(item).map(Price::plain)
    }
}

impl Price {
    /// A price.
    ///
    /// # Units
    /// The unit that is given.
    /// # Range
    /// Any; [`Item::check`] refuses those that no item has.
    /// # Source
    /// Definition.
    #[must_use]
    pub const fn new(amount: f64, unit: BookUnit) -> Self {
        Self { amount, unit }
    }

    fn plain(self) -> f64 {
        self.unit.to_plain(self.amount)
    }
}
