//! The words of items, and the columns that each fills.

use super::{ITEM, KIND, METAL, PRICE, SIZE, UNIT};
use crate::cost::book::{BookUnit, Item, Piece, words};

words! {
    /// What a row is for.
    Word {
        /// What the book is called.
        Name = "name",
        /// Who quoted its prices.
        Source = "source",
        /// What they are in.
        Currency = "currency",
        /// The day that they are of.
        Date = "date",
        /// Part of a cable's price that does not depend on its metal.
        CableFixed = "cable_fixed",
        /// What a metal's price is multiplied by in a cable.
        CableFactor = "cable_factor",
        /// A metal as cable.
        Metal = "metal",
        /// A whole cable.
        Cable = "cable",
        /// Equipment.
        Equipment = "equipment",
        /// What stands ahead of a long lead.
        Remedy = "remedy",
        /// A transformer.
        Transformer = "transformer",
        /// A line extension.
        Line = "line",
        /// Its length that nothing is asked for.
        LineFree = "line_free",
        /// Labor for the lead.
        Labor = "labor",
    }
}

impl Word {
    /// The word of an item.
    pub(super) fn of(item: Item) -> Self {
        match item {
            Item::CableFixed => Self::CableFixed,
            Item::CableFactor => Self::CableFactor,
            Item::Metal(_) => Self::Metal,
            Item::Cable(_) => Self::Cable,
            Item::Fixed(piece) | Item::PerSize(piece) | Item::Sized(piece, _) => match piece {
                Piece::Equipment(_) => Self::Equipment,
                Piece::Remedy(_) => Self::Remedy,
                Piece::Transformer => Self::Transformer,
            },
            Item::LineFixed | Item::LinePerLength => Self::Line,
            Item::LineFree => Self::LineFree,
            Item::LaborFixed | Item::LaborPerLength => Self::Labor,
        }
    }

    /// Whether it stands for a text of the book, not for a price.
    pub(super) fn is_text(self) -> bool {
        matches!(self, Self::Name | Self::Source | Self::Currency | Self::Date)
    }

    /// The columns that it fills, or may fill.
    pub(super) fn columns(self) -> &'static [&'static str] {
        match self {
            Self::Name | Self::Source | Self::Currency | Self::Date => &[ITEM, KIND],
            Self::CableFixed | Self::CableFactor | Self::Line | Self::LineFree | Self::Labor => &[ITEM, UNIT, PRICE],
            Self::Metal => &[ITEM, METAL, UNIT, PRICE],
            Self::Cable => &[ITEM, KIND, METAL, SIZE, UNIT, PRICE],
            Self::Equipment | Self::Remedy => &[ITEM, KIND, SIZE, UNIT, PRICE],
            Self::Transformer => &[ITEM, SIZE, UNIT, PRICE],
        }
    }

    /// The units that its price may be in; of a text none.
    pub(super) fn units(self, sized: bool) -> &'static [BookUnit] {
        use BookUnit::{
            Each, Foot, Meter, One, PerFoot, PerHorsepower, PerKilofoot, PerKilogram, PerKilometer, PerKilovoltAmpere,
            PerKilowatt, PerMeter, PerPound,
        };
        match self {
            Self::Name | Self::Source | Self::Currency | Self::Date => &[],
            Self::CableFixed | Self::Cable => &[PerFoot, PerMeter, PerKilofoot, PerKilometer],
            Self::CableFactor => &[One],
            Self::Metal => &[PerPound, PerKilogram],
            Self::Equipment | Self::Remedy | Self::Transformer if sized => &[Each],
            Self::Equipment | Self::Remedy => &[Each, PerHorsepower, PerKilowatt],
            Self::Transformer => &[Each, PerKilovoltAmpere],
            Self::Line | Self::Labor => &[Each, PerFoot, PerMeter, PerKilofoot, PerKilometer],
            Self::LineFree => &[Foot, Meter],
        }
    }
}
