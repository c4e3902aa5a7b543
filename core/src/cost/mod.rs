//! What the lead costs.

pub mod price;
