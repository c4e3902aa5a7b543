//! Methods on plain numbers, without units.

pub mod pchip;
