//! Numerical methods that know nothing of wells and units, and numbers in text.

pub mod cells;
pub mod pcg;
pub mod pchip;
pub mod quadratic;
pub mod root;
