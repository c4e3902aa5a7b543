//! A three-phase line brought to the well: its cost, and the distance at which something else is cheaper.

use crate::error::OutsideRange;
use crate::quantity::{Length, Money, MoneyPerLength, in_meters, meters};

/// What a utility asks for extending its line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tariff {
    /// Charge that does not depend on distance: transformers, meter, service.
    pub fixed: Money,
    /// Charge per length beyond the free one.
    pub per_length: MoneyPerLength,
    /// Length that the utility brings without charge.
    pub free: Length,
}

impl Tariff {
    fn checked(self) -> Result<(f64, f64, f64), OutsideRange> {
        let fixed = OutsideRange::check("fixed", self.fixed.0, 0.0, 1e9)?;
        let rate = OutsideRange::check("per_length", self.per_length.0, 0.0, 1e6)?;
        Ok((fixed, rate, OutsideRange::check("free", in_meters(self.free), 0.0, 1e6)?))
    }

    /// Cost of a line of a length: C = C_fixed + c (L − L_free), nothing for the free part.
    ///
    /// # Units
    /// `distance` from the nearest three-phase line to the well; money of the price book.
    /// # Range
    /// Distance and free length 0 to 1,000 km; charges 0 to 10⁹, per meter 0 to 10⁶.
    /// # Errors
    /// [`OutsideRange`] names `distance`, `free` (m), `fixed` or `per_length` (per m).
    /// # Source
    /// Definition of such tariffs; the utility's quote comes first.
    pub fn cost(self, distance: Length) -> Result<Money, OutsideRange> {
        let (fixed, rate, free) = self.checked()?;
        let distance = OutsideRange::check("distance", in_meters(distance), 0.0, 1e6)?;
        Ok(Money(fixed + rate * (distance - free).max(0.0)))
    }

    /// Distance at which the line costs as much as something else: L = L_free + (C_other − C_fixed)/c; nearer, the line
    /// is the cheaper. `None` where that is so at no distance, or at every one.
    ///
    /// # Units
    /// `other` cost of what the line would save; money of the price book.
    /// # Range
    /// Other 0 to 10⁹; the rest as [`Tariff::cost`].
    /// # Errors
    /// [`OutsideRange`] names `other`, `free` (m), `fixed` or `per_length` (per m).
    /// # Source
    /// Algebra on [`Tariff::cost`].
    pub fn break_even(self, other: Money) -> Result<Option<Length>, OutsideRange> {
        let (fixed, rate, free) = self.checked()?;
        let left = OutsideRange::check("other", other.0, 0.0, 1e9)? - fixed;
        Ok((left >= 0.0 && rate > 0.0).then(|| meters(free + left / rate)))
    }
}
