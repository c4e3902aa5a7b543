//! The price of cable by its metal, and of a lead with the equipment that its way needs.

use crate::quantity::{Length, MassPerLength, Money, MoneyPerLength, MoneyPerMass};

/// Prices of one job.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Prices {
    /// Part of the cable's price that does not depend on its metal.
    pub cable_fixed: MoneyPerLength,
    /// Price of the metal as cable.
    pub cable_metal: MoneyPerMass,
    /// What the drive, filter and protection of the 480 V way cost beyond those of the 240 V way.
    pub extra_equipment: Money,
}

/// Price of cable per length: fixed part + metal mass · price of metal as cable.
///
/// # Units
/// `metal` the mass of all conductors of the cable per length, ground included.
/// # Range
/// Prices and masses not below zero.
/// # Source
/// A model of a price list; the prices are the user's.
#[must_use]
pub fn cable_price(prices: &Prices, metal: MassPerLength) -> MoneyPerLength {
    prices.cable_fixed + prices.cable_metal * metal
}

/// Price of a lead with its equipment: cable price · length + equipment.
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
