//! What the lead and the equipment cost, and what a yearly sum is worth today.

pub mod annuity;
pub mod equipment;
pub mod price;
