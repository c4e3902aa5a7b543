//! What a price is for, the units that it may be in, and its range.

use super::unit::{EACH, KVA, LENGTH, ONE, PER_KVA, PER_LENGTH, PER_MASS, PER_POWER, POWER};
use super::{BookUnit, Build, Equipment, Price, PriceFault, Remedy};
use crate::error::OutsideRange;
use crate::standards::conductor::{Metal, Size};
use core::cmp::Ordering;

/// Sizes that are no further apart are the same.
const APART: f64 = 1e-9;

/// What a price is for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Item {
    /// The part of a cable's price that does not depend on its metal.
    CableFixed,
    /// What the metal's price is multiplied by in a cable.
    CableFactor,
    /// A metal as cable.
    Metal(Metal),
    /// A whole three-phase cable with its ground, at the book's price of its metal.
    Cable(Cable),
    /// A piece, whatever its size, beside what each unit of the size costs.
    Fixed(Piece),
    /// Each unit of a piece's size.
    PerSize(Piece),
    /// A piece of just this size.
    Sized(Piece, Rating),
    /// A line extension, whatever its length.
    LineFixed,
    /// A line extension, by its length beyond the free one.
    LinePerLength,
    /// The length of a line extension that nothing is asked for.
    LineFree,
    /// Labor, whatever the length of the lead.
    LaborFixed,
    /// Labor, by the length of the lead.
    LaborPerLength,
}

/// A cable that is bought by the length.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Cable {
    /// How it is built.
    pub build: Build,
    /// Metal of its conductors.
    pub metal: Metal,
    /// Size of its phase conductors.
    pub size: Size,
}

/// What is bought by the piece.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Piece {
    /// Equipment, by horsepower.
    Equipment(Equipment),
    /// A remedy for a long lead, by horsepower of the motor.
    Remedy(Remedy),
    /// A transformer, by kilovolt-amperes.
    Transformer,
}

/// The size of a piece.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rating {
    /// The number.
    pub value: f64,
    /// Horsepower, kilowatt or kilovolt-ampere.
    pub unit: BookUnit,
}

impl Piece {
    /// Units that its size may be in; the first is the one that it is looked up by.
    ///
    /// # Units
    /// None.
    /// # Range
    /// Every piece.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn size_units(self) -> &'static [BookUnit] {
        match self {
            Self::Equipment(_) | Self::Remedy(_) => POWER,
            Self::Transformer => KVA,
        }
    }

    /// The largest size, in horsepower or kilovolt-amperes.
    pub(super) fn largest(self) -> f64 {
        match self {
            Self::Equipment(_) | Self::Remedy(_) => 1000.0,
            Self::Transformer => 10_000.0,
        }
    }

    fn order(self) -> [u8; 2] {
        match self {
            Self::Equipment(kind) => [0, kind as u8],
            Self::Remedy(remedy) => [1, remedy as u8],
            Self::Transformer => [2, 0],
        }
    }
}

impl Rating {
    pub(super) fn plain(self) -> f64 {
        self.unit.to_plain(self.value)
    }
}

/// Whether two sizes, in the plain unit, are one.
pub(super) fn same_size(a: f64, b: f64) -> bool {
    (a - b).abs() <= APART * a.abs().max(b.abs())
}

impl Item {
    /// Units that its price may be in, the usual one first.
    ///
    /// # Units
    /// None.
    /// # Range
    /// Every item.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn units(self) -> &'static [BookUnit] {
        match self {
            Self::CableFixed | Self::Cable(_) | Self::LinePerLength | Self::LaborPerLength => PER_LENGTH,
            Self::CableFactor => ONE,
            Self::Metal(_) => PER_MASS,
            Self::Fixed(_) | Self::Sized(..) | Self::LineFixed | Self::LaborFixed => EACH,
            Self::PerSize(Piece::Transformer) => PER_KVA,
            Self::PerSize(_) => PER_POWER,
            Self::LineFree => LENGTH,
        }
    }

    /// Least and largest price, in the plain unit.
    fn range(self) -> (f64, f64) {
        match self {
            Self::CableFactor => (0.1, 10.0),
            Self::LineFixed | Self::LaborFixed => (0.0, 1e9),
            Self::Fixed(_) | Self::Sized(..) => (0.0, 1e7),
            Self::CableFixed
            | Self::Cable(_)
            | Self::Metal(_)
            | Self::PerSize(_)
            | Self::LinePerLength
            | Self::LaborPerLength
            | Self::LineFree => (0.0, 1e6),
        }
    }

    /// Lets a price through that the sums hold for.
    ///
    /// # Units
    /// Those of [`Item::units`]; of a size, those of [`Piece::size_units`].
    /// # Range
    /// Prices 0 to 10⁶ for a meter, a kilogram, a horsepower or a kilovolt-ampere, 0 to 10⁷ for a piece, 0 to 10⁹ for a
    /// line extension or labor; the factor 0.1 to 10; the free length 0 to 1,000 km. Sizes 0.1 to 1,000 hp, 0.1 to
    /// 10,000 kVA.
    /// # Errors
    /// [`PriceFault`] names `size` or `price`, and its unit or its range in that unit.
    /// # Source
    /// Limits of common practice, no single source.
    pub fn check(self, price: Price) -> Result<(), PriceFault> {
        if let Self::Sized(piece, size) = self {
            let range = (0.1, piece.largest());
            check("size", Price::new(size.value, size.unit), piece.size_units(), range)?;
        }
        check("price", price, self.units(), self.range())
    }

    /// Whether two items are the same thing.
    pub(crate) fn is(self, other: Self) -> bool {
        self.order().is(other.order())
    }

    /// Where it stands in a book.
    pub(super) fn order(self) -> Order {
        let piece = |piece: Piece, part: u8| {
            let [group, one] = piece.order();
            [4 + group, one, part, 0]
        };
        let key = match self {
            Self::CableFixed => [0, 0, 0, 0],
            Self::CableFactor => [1, 0, 0, 0],
            Self::Metal(metal) => [2, metal as u8, 0, 0],
            Self::Cable(cable) => [3, cable.build as u8, cable.metal as u8, cable.size as u8],
            Self::Fixed(one) => piece(one, 0),
            Self::PerSize(one) => piece(one, 1),
            Self::Sized(one, _) => piece(one, 2),
            Self::LineFixed => [7, 0, 0, 0],
            Self::LinePerLength => [7, 1, 0, 0],
            Self::LineFree => [7, 2, 0, 0],
            Self::LaborFixed => [8, 0, 0, 0],
            Self::LaborPerLength => [8, 1, 0, 0],
        };
        Order(u32::from_be_bytes(key), if let Self::Sized(_, size) = self { size.plain() } else { 0.0 })
    }
}

/// Where an item stands in a book: its kind and what it is, as one number, and its size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Order(u32, f64);

impl Order {
    /// Whether the same thing stands there.
    pub(super) fn is(self, other: Self) -> bool {
        self.0 == other.0 && same_size(self.1, other.1)
    }

    /// Whether it is behind another, and not of its size within what makes two sizes one.
    pub(super) fn is_well_behind(self, other: Self) -> bool {
        self.0 > other.0 || self.0 == other.0 && self.1 > other.1 && !same_size(self.1, other.1)
    }

    /// Whether it is behind another.
    pub(super) fn is_behind(self, other: Self) -> bool {
        self.0.cmp(&other.0).then(self.1.total_cmp(&other.1)) == Ordering::Greater
    }
}

fn check(
    argument: &'static str,
    given: Price,
    accepted: &'static [BookUnit],
    (min, max): (f64, f64),
) -> Result<(), PriceFault> {
    if !accepted.contains(&given.unit) {
        return Err(PriceFault::Unit { argument, given: given.unit, accepted });
    }
    let [min, max] = [min, max].map(|limit| given.unit.of_plain(limit));
    OutsideRange::check(argument, given.amount, min, max).map(drop).map_err(PriceFault::Outside)
}
