//! What the prices of a job come to: the price book's, and those that were entered in their place.

use super::book::{Cable, Item, PriceBook};
use crate::quantity::{Length, MassPerLength, Money, MoneyPerLength, MoneyPerMass};
use crate::standards::conductor::Metal;

/// Prices of one job.
#[derive(Debug, Clone, PartialEq)]
pub struct Prices {
    /// The price book.
    pub book: PriceBook,
    /// Part of the cable's price that does not depend on its metal.
    pub cable_fixed: MoneyPerLength,
    /// Price of the lead's metal as cable.
    pub cable_metal: MoneyPerMass,
    /// That metal.
    pub metal: Metal,
    /// What the drive, filter and protection of the 480 V way cost beyond those of the 240 V way, where it was entered.
    pub extra_equipment: Option<Money>,
}

/// How the price of a cable comes about.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CablePrice {
    /// By its metal: fixed part and price of the metal as cable, with the book's factor in it.
    Modeled {
        /// Fixed part.
        fixed: MoneyPerLength,
        /// The metal.
        metal: MoneyPerMass,
    },
    /// As it was quoted, moved by what the metal has become dearer or cheaper, with the book's factor in it.
    Quoted {
        /// The quote.
        quote: MoneyPerLength,
        /// How much dearer the metal is than the book's.
        dearer: MoneyPerMass,
    },
}

impl CablePrice {
    /// The price of a cable with so much metal: c₀ + p m, or of a quote c_b + (p − p_m) m.
    ///
    /// # Units
    /// `metal` the mass of all conductors of the cable per length, ground included.
    /// # Range
    /// Prices and masses not below zero.
    /// # Source
    /// A model of a price list; the prices are the user's.
    #[must_use]
    pub fn of(self, metal: MassPerLength) -> MoneyPerLength {
        match self {
            Self::Modeled { fixed, metal: price } => fixed + price * metal,
            Self::Quoted { quote, dearer } => quote + dearer * metal,
        }
    }
}

impl Prices {
    /// Price of a metal as cable, the book's factor left out: that of the lead as entered, of another as the book has it.
    ///
    /// # Units
    /// Money per mass.
    /// # Range
    /// Both metals; `None` where neither tells it.
    /// # Source
    /// The job and its book.
    #[must_use]
    pub fn metal_price(&self, metal: Metal) -> Option<MoneyPerMass> {
        if metal == self.metal { Some(self.cable_metal) } else { self.book.metal_price(metal) }
    }

    /// How the price of a cable comes about: by the book's row for it, else by the model. A row that so cheap a metal would
    /// take below nothing tells nothing: the model stands in.
    ///
    /// # Units
    /// `metal` the mass of all conductors of the cable per length, ground included.
    /// # Range
    /// Any listed cable; `None` where no price of its metal is known.
    /// # Source
    /// [`PriceBook::cable_price`].
    #[must_use]
    pub fn cable(&self, cable: Cable, metal: MassPerLength) -> Option<CablePrice> {
        let (factor, price) = (self.book.cable_factor(), self.metal_price(cable.metal)?);
        let times = |price: f64| MoneyPerMass(price * factor);
        let quoted = self.book.quote(cable).filter(|_| {
            let moved = self.book.cable_price(cable, metal, Some(price));
            moved.is_ok_and(|price| price.is_some())
        });
        Some(match quoted.and_then(|quote| Some((quote, self.book.metal_price(cable.metal)?))) {
            Some((quote, of_book)) => CablePrice::Quoted { quote, dearer: times(price.0 - of_book.0) },
            None => CablePrice::Modeled { fixed: self.cable_fixed, metal: times(price.0) },
        })
    }
}

impl PriceBook {
    /// The book's own price of a cable; `None` where it has no row for it.
    ///
    /// # Units
    /// Money per length.
    /// # Range
    /// Any listed cable.
    /// # Source
    /// The book.
    #[must_use]
    pub fn quote(&self, cable: Cable) -> Option<MoneyPerLength> {
        self.amount(Item::Cable(cable)).map(MoneyPerLength)
    }
}

/// Price of a lead with what belongs to it: cable price · length + equipment.
///
/// # Units
/// `length` one way, as the cable runs.
/// # Range
/// Length not below zero.
/// # Source
/// Definition.
#[must_use]
pub fn lead_price(cable: MoneyPerLength, length: Length, equipment: Money) -> Money {
    cable * length + equipment
}
