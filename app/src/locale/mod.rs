//! Every word and every number that a person sees.
//!
//! Words stand in one table ([`Words`]) that the compiler checks for completeness; numbers, units and money are written
//! and read here and nowhere else.

mod english;
mod number;
mod quantity;
mod reading;
mod say;
mod words;

pub use english::ENGLISH;
pub use quantity::{
    conductor, depth, entry, entry_text, lead_size, mass, money, money_alike, percent, shown, unit_name,
};
pub use reading::read;
pub use say::{error_text, finding_text, not_read_text};
pub use words::Words;

/// The words in use.
pub fn words() -> &'static Words {
    &ENGLISH
}
