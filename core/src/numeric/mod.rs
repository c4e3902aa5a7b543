//! Numerical methods that know nothing of wells and units, numbers in text, and things in an order.

pub mod cells;
pub mod order;
pub mod pcg;
pub mod pchip;
pub mod quadratic;
pub mod root;
