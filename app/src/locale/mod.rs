//! Every word and every number that a person sees.
//!
//! Words stand in one table ([`words`](mod@words)) that the compiler checks for completeness; numbers, units and money
//! are written and read here and nowhere else.

mod arithmetic;
mod language;
mod number;
mod quantity;
mod reading;
mod say;
mod source;
mod water;
mod words;

pub use language::{Decimals, Language, speak, words};
pub use quantity::{
    Shown, conductor, depth, entry, entry_in, entry_text, lead_size, mass, measured, money, money_alike, money_shown,
    percent, power, reach, result, shown, unit_name, units_of,
};
pub use reading::{NotRead, read};
pub use say::{error_text, file_text, finding_text, not_read_text};
pub use source::source_text;
pub use water::{flow, frequency, head, pressure};
pub use words::fields::rating;

#[cfg(test)]
mod tests;
