//! The water: how much is asked for, how the well gives it, what head it takes to lift it.

pub mod cooling;
pub mod dead_head;
pub mod demand;
pub mod fittings;
pub mod friction;
pub mod hazen_williams;
pub mod head;
pub mod level;
pub mod line;
pub mod pipe_rating;
pub mod properties;
pub mod string;
pub mod surge;
pub mod tank;
pub mod well;
