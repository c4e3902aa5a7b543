//! What goes on paper: the working behind each answer, as structure. Symbols, numbers and codes, no sentences.

mod cost;
mod lead;
mod math;
mod water;
mod working;

pub use math::{Math, Measured, Symbol};
pub use working::{Entered, EnteredValue, Limit, LimitKind, Name, Put, Step, Topic, Working, working};
