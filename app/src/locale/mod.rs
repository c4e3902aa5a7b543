//! Every word and every number that a person sees.
//!
//! Words stand in one table ([`words`](mod@words)) that the compiler checks for completeness; numbers, units and money
//! are written and read here and nowhere else.

mod arithmetic;
mod book;
mod currency;
mod curve;
mod equipment;
mod finding;
mod finding_power;
mod language;
mod number;
mod power;
mod quantity;
mod reading;
mod say;
mod source;
mod water;
mod words;

pub use book::{
    book_error_text, book_fault_text, build_name, cell_shown, cell_typed, day, day_of, equipment_name, remedy_name,
    unit_word,
};
pub use currency::{count_in, counting_in, currency_of};
pub use curve::{curve_problem_text, curve_read_text};
pub use equipment::{column_name, fault_text, table_error_text};
pub use finding::finding_text;
pub use language::{Decimals, Language, decimals, speak, words};
pub use power::{device, energy, kiloamperes, kilovolt_amperes, kilowatts, line_volts, metal, peak_volts, temperature};
pub use quantity::{
    Shown, amperes, conductor, depth, depth_in_tenths, entry, entry_in, entry_text, in_digits, lead_size, mass,
    measured, money, money_alike, money_shown, order, percent, power, reach, result, shown, unit_name, units_of,
};
pub use reading::{NotRead, read};
pub use say::{error_text, file_text, not_read_text};
pub use source::source_text;
pub use water::{
    diameter, flow, frequency, head, per_hour, plain_figure, pressure, seconds, series_name, shaft, size_name,
    velocity, volume, weight, whole,
};
pub use words::Words;
pub use words::fields::rating;
#[cfg(test)]
pub use words::first;

#[cfg(test)]
mod fuzz;
#[cfg(test)]
mod tests;
