//! Numerical methods that know nothing of wells.

pub mod root;
