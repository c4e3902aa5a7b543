//! Numerical methods that know nothing of wells and units.

pub mod pchip;
pub mod root;
