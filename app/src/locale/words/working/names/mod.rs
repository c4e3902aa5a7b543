//! What the values of a working are.

mod english;
mod spanish;

use super::Text;
use wellwright_core::papers::Name;

pub use english::ENGLISH;
pub use spanish::SPANISH;

/// Names of values.
pub struct Names {
    pub of: fn(Name) -> Text,
}
