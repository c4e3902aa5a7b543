//! The built-in book: every price is invented, in the order of what the trade asks, nobody's list.

use super::BookUnit::{Each, Foot, One, PerFoot, PerHorsepower, PerKilovoltAmpere, PerPound};
use super::{Currency, Date, Equipment, Item, Piece, Price, PriceBook, Remedy, Row};
use crate::standards::conductor::Metal;

/// Fixed part and part for each horsepower.
fn equipment(kind: Equipment) -> (f64, f64) {
    match kind {
        Equipment::ConvertingActive => (700.0, 140.0),
        Equipment::ConvertingPassive => (500.0, 110.0),
        Equipment::Doubling => (1600.0, 140.0),
        Equipment::LargeLowHarmonic => (2500.0, 150.0),
        Equipment::LargeEconomy => (1500.0, 95.0),
        Equipment::LargeEconomyChoke => (1700.0, 105.0),
        Equipment::SolidStateConverter => (1500.0, 120.0),
        Equipment::RotaryConverter => (500.0, 90.0),
        Equipment::DeratedDrive | Equipment::ThreePhaseLine => (300.0, 75.0),
        Equipment::StepUpActive => (1300.0, 180.0),
        Equipment::StepUpPassive => (1100.0, 150.0),
        Equipment::ThreePhaseGenerator => (8000.0, 500.0),
        Equipment::SinglePhaseMotor => (150.0, 30.0),
    }
}

fn remedy(remedy: Remedy) -> (f64, f64) {
    match remedy {
        Remedy::OutputReactor => (150.0, 15.0),
        Remedy::DvDtFilter => (300.0, 30.0),
        Remedy::SineFilter => (500.0, 60.0),
    }
}

impl PriceBook {
    /// The built-in book, all of it invented, until a quote replaces it: [`PriceBook::is_invented`] says so.
    ///
    /// # Units
    /// US dollars of 2026-11-01.
    /// # Range
    /// Cable by its metal, equipment, remedies, transformer, line extension; labor at nothing.
    /// # Source
    /// [practice]: in the order of makers' lists, no list's figures.
    #[must_use]
    pub fn invented() -> Self {
        let of = |item: Item, amount: f64, unit| Row { item, price: Price::new(amount, unit) };
        let mut rows = vec![
            of(Item::CableFixed, 0.5, PerFoot),
            of(Item::CableFactor, 1.0, One),
            of(Item::Metal(Metal::Copper), 9.0, PerPound),
            of(Item::Metal(Metal::Aluminum), 3.0, PerPound),
        ];
        let equipment = Equipment::ALL.into_iter().map(|kind| (Piece::Equipment(kind), equipment(kind)));
        let remedies = Remedy::ALL.into_iter().map(|one| (Piece::Remedy(one), remedy(one)));
        rows.extend(equipment.chain(remedies).flat_map(|(piece, (fixed, per_hp))| {
            [of(Item::Fixed(piece), fixed, Each), of(Item::PerSize(piece), per_hp, PerHorsepower)]
        }));
        rows.extend([
            of(Item::Fixed(Piece::Transformer), 400.0, Each),
            of(Item::PerSize(Piece::Transformer), 40.0, PerKilovoltAmpere),
            of(Item::LineFixed, 5000.0, Each),
            of(Item::LinePerLength, 25.0, PerFoot),
            of(Item::LineFree, 0.0, Foot),
            of(Item::LaborFixed, 0.0, Each),
            of(Item::LaborPerLength, 0.0, PerFoot),
        ]);
        let orders = rows.iter().map(|row| row.item.order()).collect();
        Self { rows, orders, ..Self::new(Currency::USD, Date { year: 2026, month: 11, day: 1 }) }
    }
}
