//! What the lead costs, and what a yearly sum is worth today.

pub mod annuity;
pub mod price;
