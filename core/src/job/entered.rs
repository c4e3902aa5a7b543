//! The figures of a job after checking, each with where it comes from.

use super::{Field, Job, Stand};
use crate::error::{InputError, Range};
use crate::quantity::Entry;
use serde::Serialize;

/// Where a figure comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Origin {
    /// Entered by the user.
    Typed,
    /// A default, until the user sets it.
    Assumed,
    /// Worked out from other figures.
    WorkedOut,
    /// Read from a published table.
    Table,
    /// A price of the price book.
    Book,
    /// True by definition, or nominal for the way.
    Definition,
}

/// A figure and where it comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Known<T> {
    /// The value.
    pub value: T,
    /// Where it comes from.
    pub origin: Origin,
}

impl<T> Known<T> {
    /// The same figure as something else.
    pub fn map<U>(self, make: impl FnOnce(T) -> U) -> Known<U> {
        Known { value: make(self.value), origin: self.origin }
    }

    /// A figure that was worked out from others.
    pub const fn worked_out(value: T) -> Self {
        Self { value, origin: Origin::WorkedOut }
    }

    /// A figure that stands in for others.
    pub const fn assumed(value: T) -> Self {
        Self { value, origin: Origin::Assumed }
    }
}

/// A figure, or why it can't be used.
pub type Checked<T> = Result<Known<T>, InputError>;

/// A figure that may be left out, or why it can't be used.
pub type Maybe<T> = Result<Option<Known<T>>, InputError>;

/// Every figure of a job, checked. A field that does not count holds nothing.
#[derive(Debug, Clone, PartialEq)]
pub struct Entered {
    figures: Vec<Maybe<f64>>,
}

impl Entered {
    /// Checks every figure of a job.
    #[must_use]
    pub fn of(job: &Job) -> Self {
        let figure = |field: Field| if field.counts(job) { checked(job, field) } else { Ok(None) };
        let mut entered = Self { figures: Field::ALL.into_iter().map(figure).collect() };
        entered.in_order(Field::LeastFrequency, Field::MostFrequency);
        entered
    }

    /// A figure that may not pass another of the same unit: beyond it, it is outside a range that ends there.
    fn in_order(&mut self, lesser: Field, greater: Field) {
        if let (Ok(Some(low)), Ok(Some(high))) = (&self.figures[lesser as usize], &self.figures[greater as usize])
            && low.origin == Origin::Typed
            && low.value > high.value
        {
            let accepted = Range { max: high.value, ..lesser.spec().accepted };
            let given = Entry::new(low.value, accepted.unit);
            self.figures[lesser as usize] = Err(InputError::OutOfRange { field: lesser, given, accepted });
        }
    }

    /// A figure as a quantity; `make` takes the unit of the field's accepted range. Nothing where nothing was entered
    /// and nothing fixed stands in.
    ///
    /// # Errors
    /// Why the entry can't be used.
    pub fn take<Q>(&self, field: Field, make: impl FnOnce(f64) -> Q) -> Maybe<Q> {
        let figure = self.figures[field as usize].clone()?;
        Ok(figure.map(|known| known.map(make)))
    }

    /// A figure that is needed.
    ///
    /// # Errors
    /// Why the entry can't be used, or that it is missing.
    pub fn need<Q>(&self, field: Field, make: impl FnOnce(f64) -> Q) -> Checked<Q> {
        self.take(field, make)?.ok_or(InputError::Missing { field, accepted: field.spec().accepted })
    }

    /// A figure, or what follows from others where nothing was entered; nothing where the entry can't be used.
    pub fn or_else<Q>(
        &self,
        field: Field,
        make: impl FnOnce(f64) -> Q,
        follows: impl FnOnce() -> Option<Q>,
    ) -> Option<Known<Q>> {
        match self.take(field, make).ok()? {
            Some(known) => Some(known),
            None => follows().map(Known::assumed),
        }
    }

    /// A figure where there is one that can be used.
    pub fn get<Q>(&self, field: Field, make: impl FnOnce(f64) -> Q) -> Option<Q> {
        self.take(field, make).ok().flatten().map(|known| known.value)
    }

    /// Whether the field holds an entry that counts.
    #[must_use]
    pub fn is_typed(&self, field: Field) -> bool {
        match &self.figures[field as usize] {
            Ok(figure) => figure.is_some_and(|known| known.origin == Origin::Typed),
            Err(error) => !matches!(error, InputError::Missing { .. }),
        }
    }

    /// Every figure that can't be used, in the order of the pages.
    pub fn errors(&self) -> impl Iterator<Item = &InputError> {
        self.figures.iter().filter_map(|figure| figure.as_ref().err())
    }
}

fn checked(job: &Job, field: Field) -> Maybe<f64> {
    let spec = field.spec();
    let value = |entry: Entry, origin| field.check(entry).map(|value| Some(Known { value, origin }));
    match (job.get(field), spec.default) {
        (Some(entry), _) => value(entry, Origin::Typed),
        (None, Stand::Assumed(entry)) => value(entry, Origin::Assumed),
        (None, Stand::Nothing) => Err(InputError::Missing { field, accepted: spec.accepted }),
        (None, Stand::Follows | Stand::Optional) => Ok(None),
    }
}
