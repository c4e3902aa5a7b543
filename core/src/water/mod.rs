//! The water in the well.

pub mod level;
