//! Why something can't be computed: the field, what was given, what is accepted.

use crate::job::Field;
use crate::quantity::{Entry, Unit};

/// The closed range that a figure is accepted in, with its unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Range {
    /// Least accepted value.
    pub min: f64,
    /// Largest accepted value.
    pub max: f64,
    /// Unit of both.
    pub unit: Unit,
}

/// A figure that the sums can't use.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum InputError {
    /// Nothing was entered and no default may stand in for it.
    Missing {
        /// The empty field.
        field: Field,
        /// What it accepts.
        accepted: Range,
    },
    /// The number is not finite.
    NotFinite {
        /// The field.
        field: Field,
        /// What it accepts.
        accepted: Range,
    },
    /// The number lies outside what the sums or tables hold for.
    OutOfRange {
        /// The field.
        field: Field,
        /// What was entered.
        given: Entry,
        /// What it accepts.
        accepted: Range,
    },
    /// The unit measures something else.
    WrongUnit {
        /// The field.
        field: Field,
        /// What was entered.
        given: Entry,
        /// What it accepts.
        accepted: Range,
    },
}

impl InputError {
    /// The field that the error is about.
    #[must_use]
    pub fn field(&self) -> Field {
        match self {
            Self::Missing { field, .. }
            | Self::NotFinite { field, .. }
            | Self::OutOfRange { field, .. }
            | Self::WrongUnit { field, .. } => *field,
        }
    }

    /// A short stable code for files.
    #[must_use]
    pub fn code(&self) -> &'static str {
        match self {
            Self::Missing { .. } => "missing",
            Self::NotFinite { .. } => "not_finite",
            Self::OutOfRange { .. } => "out_of_range",
            Self::WrongUnit { .. } => "wrong_unit",
        }
    }

    /// The range that the field accepts.
    #[must_use]
    pub fn accepted(&self) -> Range {
        match self {
            Self::Missing { accepted, .. }
            | Self::NotFinite { accepted, .. }
            | Self::OutOfRange { accepted, .. }
            | Self::WrongUnit { accepted, .. } => *accepted,
        }
    }

    /// What was entered, where there was a number.
    #[must_use]
    pub fn given(&self) -> Option<Entry> {
        match self {
            Self::OutOfRange { given, .. } | Self::WrongUnit { given, .. } => Some(*given),
            Self::Missing { .. } | Self::NotFinite { .. } => None,
        }
    }
}

/// An argument outside the range that a formula or table holds for.
///
/// Formulas know arguments, not fields; whoever calls one with a field's value reports the field.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OutsideRange {
    /// Name of the argument, as in the formula's documentation.
    pub argument: &'static str,
    /// What was given, in the unit that the documentation names.
    pub given: f64,
    /// Least accepted value.
    pub min: f64,
    /// Largest accepted value.
    pub max: f64,
}

impl OutsideRange {
    /// Lets a finite value inside `min..=max` through; NaN fails too.
    ///
    /// # Errors
    /// Names the argument, the value and the range.
    pub fn check(argument: &'static str, given: f64, min: f64, max: f64) -> Result<f64, Self> {
        if given >= min && given <= max { Ok(given) } else { Err(Self { argument, given, min, max }) }
    }
}
