//! Passing a job on without a server: the whole job in a link, in codes that another telephone photographs, and in a few
//! words of an address.

mod code;
mod digits;
mod link;
pub mod preset;
mod series;
mod sum;

pub use code::{Code, code};
pub use link::{LinkError, MOST_LETTERS, as_digits, read, write};
pub use series::{Part, SeriesError, join, part, split};
pub use sum::sum;
