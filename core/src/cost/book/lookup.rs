//! What things cost by a book.

use super::item::same_size;
use super::{Cable, Item, Piece, PriceBook, Row};
use crate::error::OutsideRange;
use crate::quantity::{
    Length, MassPerLength, Money, MoneyPerLength, MoneyPerMass, Power, in_horsepower, in_kilovolt_amperes, in_meters,
    meters,
};
use crate::standards::conductor::Metal;

/// Largest price of a metal, per kilogram.
const MOST_METAL: f64 = 1e6;

/// What is asked for a line extension.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineExtension {
    /// Whatever its length.
    pub fixed: Money,
    /// For each length beyond the free one.
    pub per_length: MoneyPerLength,
    /// Length that nothing is asked for.
    pub free: Length,
}

impl PriceBook {
    /// The book's price of a metal as cable; `None` where it has none.
    ///
    /// # Units
    /// Money per mass.
    /// # Range
    /// Both metals.
    /// # Source
    /// The book.
    #[must_use]
    pub fn metal_price(&self, metal: Metal) -> Option<MoneyPerMass> {
        self.amount(Item::Metal(metal)).map(MoneyPerMass)
    }

    /// The part of a cable's price that does not depend on its metal; `None` where the book has none.
    ///
    /// # Units
    /// Money per length.
    /// # Range
    /// Any book.
    /// # Source
    /// The book.
    #[must_use]
    pub fn fixed_part(&self) -> Option<MoneyPerLength> {
        self.amount(Item::CableFixed).map(MoneyPerLength)
    }

    /// What the metal's price is multiplied by in a cable; 1 where the book tells nothing else.
    ///
    /// # Units
    /// None.
    /// # Range
    /// 0.1 to 10.
    /// # Source
    /// The book.
    #[must_use]
    pub fn cable_factor(&self) -> f64 {
        self.amount(Item::CableFactor).unwrap_or(1.0)
    }

    /// Price of a whole cable, at the book's price p_m of its metal or at one that is asked.
    ///
    /// c = c_0 + m p k_m; of a cable that has a row of its own, c = c_b + m (p − p_m) k_m, and c_b itself where no price
    /// is asked. A row is a quote at the book's price of metal, so only what metal has become dearer or cheaper is added.
    ///
    /// `None` where the book does not tell enough: no row, and no fixed part or no price of the metal; or a row, but no
    /// price of the metal that the one asked could be compared with.
    ///
    /// # Units
    /// `mass` of all conductors of the cable per length, ground included; `asked` money per mass of metal as cable.
    /// # Range
    /// Mass 0 to 1,000 kg/m; asked 0 to 10⁶ per kilogram, and not so low that the metal alone takes more off a quoted
    /// cable than it costs, p ≥ p_m − c_b/(m k_m): below that the quote tells nothing, and no price is made of it.
    /// # Errors
    /// [`OutsideRange`] names `mass` (kg/m) or `metal_price` (per kg).
    /// # Source
    /// A model of a price list; the prices are the book's.
    pub fn cable_price(
        &self,
        cable: Cable,
        mass: MassPerLength,
        asked: Option<MoneyPerMass>,
    ) -> Result<Option<MoneyPerLength>, OutsideRange> {
        let m = OutsideRange::check("mass", mass.value, 0.0, 1000.0)?;
        let asked = asked.map(|price| OutsideRange::check("metal_price", price.0, 0.0, MOST_METAL)).transpose()?;
        let of_book = self.amount(Item::Metal(cable.metal));
        let k = self.cable_factor();
        let price = match (self.amount(Item::Cable(cable)), asked) {
            (Some(row), None) => Some(row),
            (Some(row), Some(p)) => {
                let Some(p_m) = of_book else { return Ok(None) };
                let price = row + m * (p - p_m) * k;
                // Only a metal that has become cheaper can take the price below nothing, so there is a mass.
                let least = || p_m - row / m / k;
                if price < 0.0 {
                    let (argument, min) = ("metal_price", least());
                    return Err(OutsideRange { argument, given: p, min, max: MOST_METAL });
                }
                Some(price)
            }
            (None, asked) => asked.or(of_book).zip(self.amount(Item::CableFixed)).map(|(p, c_0)| c_0 + m * p * k),
        };
        Ok(price.map(MoneyPerLength))
    }

    /// Price of a piece by its size: that of a row of just this size, else the fixed part and one for each horsepower or
    /// kilovolt-ampere. A part that the book lacks counts nothing beside the other; `None` where it has neither.
    ///
    /// # Units
    /// `size` a rated power, of a transformer an apparent one.
    /// # Range
    /// 0 to 1,000 hp, 0 to 10,000 kVA.
    /// # Errors
    /// [`OutsideRange`] names `size` (hp or kVA).
    /// # Source
    /// A model of a price list; the prices are the book's.
    pub fn piece_price(&self, piece: Piece, size: Power) -> Result<Option<Money>, OutsideRange> {
        let size = match piece {
            Piece::Equipment(_) | Piece::Remedy(_) => in_horsepower(size),
            Piece::Transformer => in_kilovolt_amperes(size),
        };
        let size = OutsideRange::check("size", size, 0.0, piece.largest())?;
        let of_size =
            |row: &&Row| matches!(row.item, Item::Sized(one, own) if one == piece && same_size(own.plain(), size));
        if let Some(row) = self.rows.iter().find(of_size) {
            return Ok(Some(Money(row.price.plain())));
        }
        let (fixed, per_size) = (self.amount(Item::Fixed(piece)), self.amount(Item::PerSize(piece)));
        let parts = fixed.is_some() || per_size.is_some();
        Ok(parts.then(|| Money(fixed.unwrap_or(0.0) + per_size.unwrap_or(0.0) * size)))
    }

    /// The fixed part of a piece's price and the one for each horsepower or kilovolt-ampere of its size, where no row of just
    /// this size stands before them; `None` where one does, or the book has neither.
    ///
    /// # Units
    /// As [`PriceBook::piece_price`].
    /// # Range
    /// As [`PriceBook::piece_price`].
    /// # Source
    /// The book.
    #[must_use]
    pub fn piece_parts(&self, piece: Piece, size: Power) -> Option<(Money, Money)> {
        let size = match piece {
            Piece::Equipment(_) | Piece::Remedy(_) => in_horsepower(size),
            Piece::Transformer => in_kilovolt_amperes(size),
        };
        let sized =
            |row: &Row| matches!(row.item, Item::Sized(one, own) if one == piece && same_size(own.plain(), size));
        if self.rows.iter().any(sized) {
            return None;
        }
        let (fixed, per_size) = (self.amount(Item::Fixed(piece)), self.amount(Item::PerSize(piece)));
        let parts = fixed.is_some() || per_size.is_some();
        parts.then(|| (Money(fixed.unwrap_or(0.0)), Money(per_size.unwrap_or(0.0))))
    }

    /// What is asked for a line extension; `None` where the book has neither a fixed part nor one for its length. A part
    /// that it lacks counts nothing beside the other, and no length is free then.
    ///
    /// # Units
    /// Money, money per length, a length.
    /// # Range
    /// As [`Item::check`].
    /// # Source
    /// The book.
    #[must_use]
    pub fn line_extension(&self) -> Option<LineExtension> {
        let (fixed, per_length) = (self.amount(Item::LineFixed), self.amount(Item::LinePerLength));
        (fixed.is_some() || per_length.is_some()).then(|| LineExtension {
            fixed: Money(fixed.unwrap_or(0.0)),
            per_length: MoneyPerLength(per_length.unwrap_or(0.0)),
            free: meters(self.amount(Item::LineFree).unwrap_or(0.0)),
        })
    }

    /// Labor for each length of a lead; nothing where the book tells nothing.
    ///
    /// # Units
    /// Money per length.
    /// # Range
    /// Any book.
    /// # Source
    /// The book.
    #[must_use]
    pub fn labor_per_length(&self) -> MoneyPerLength {
        MoneyPerLength(self.amount(Item::LaborPerLength).unwrap_or(0.0))
    }

    /// Labor for a lead: fixed sum + price per length · length. Nothing where the book tells nothing.
    ///
    /// # Units
    /// `length` one way.
    /// # Range
    /// Length 0 to 1,000 km.
    /// # Errors
    /// [`OutsideRange`] names `length` (m).
    /// # Source
    /// A model of a quote; the prices are the book's.
    pub fn labor_price(&self, length: Length) -> Result<Money, OutsideRange> {
        let length = OutsideRange::check("length", in_meters(length), 0.0, 1e6)?;
        let [fixed, per_length] = [Item::LaborFixed, Item::LaborPerLength].map(|item| self.amount(item).unwrap_or(0.0));
        Ok(Money(fixed + per_length * length))
    }
}
