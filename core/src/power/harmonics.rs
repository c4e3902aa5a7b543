//! Harmonic current at the point of common coupling, against what a user may draw.

use crate::error::OutsideRange;
use crate::quantity::{ElectricCurrent, amperes, in_amperes};
use crate::standards::ieee_519::{Row, limits};

/// Fundamental of a distorted current: I_1 = I/√(1 + THD²).
///
/// # Units
/// `current` rms, harmonics in; `distortion` as a share; the result rms amperes.
/// # Range
/// Current 0 to 100,000 A; distortion 0 to 3.
/// # Errors
/// [`OutsideRange`] names `current` (A) or `distortion`.
/// # Source
/// [ieee-1459-2010].
pub fn fundamental(current: ElectricCurrent, distortion: f64) -> Result<ElectricCurrent, OutsideRange> {
    let amps = OutsideRange::check("current", in_amperes(current), 0.0, 1e5)?;
    let distortion = OutsideRange::check("distortion", distortion, 0.0, 3.0)?;
    Ok(amperes(amps / (1.0 + distortion * distortion).sqrt()))
}

/// Total distortion of a set of harmonics, each a share of the fundamental: √(Σ h²).
///
/// # Units
/// Shares.
/// # Range
/// Each 0 to 3.
/// # Errors
/// [`OutsideRange`] names `harmonic` that is outside.
/// # Source
/// [ieee-519-2022].
pub fn total_distortion(harmonics: &[f64]) -> Result<f64, OutsideRange> {
    let squares = harmonics.iter().map(|share| OutsideRange::check("harmonic", *share, 0.0, 3.0).map(|h| h * h));
    squares.sum::<Result<f64, _>>().map(f64::sqrt)
}

/// What stands at the point of common coupling.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coupling {
    /// Largest fault current there.
    pub short_circuit: ElectricCurrent,
    /// Fundamental of the equipment's current.
    pub equipment: ElectricCurrent,
    /// Fundamental of other load of the same user at its maximum demand; zero while unknown.
    pub other: ElectricCurrent,
}

/// Distortion against its limit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Distortion {
    /// Fault current over maximum demand current.
    pub ratio: f64,
    /// Harmonic current over maximum demand current.
    pub distortion: f64,
    /// The most that it may be.
    pub limit: f64,
    /// Limit less distortion; below zero where it is passed.
    pub margin: f64,
}

impl Distortion {
    /// Whether the limit is kept; equality keeps it.
    ///
    /// # Units
    /// None.
    /// # Range
    /// Any.
    /// # Source
    /// [ieee-519-2022] table 2.
    #[must_use]
    pub fn keeps(self) -> bool {
        self.distortion <= self.limit
    }
}

impl Coupling {
    /// Maximum demand current and the row of the table that goes with it.
    fn row(self) -> Result<(f64, f64, Row), OutsideRange> {
        let own = OutsideRange::check("equipment", in_amperes(self.equipment), 1e-3, 1e5)?;
        let demand = own + OutsideRange::check("other", in_amperes(self.other), 0.0, 1e5)?;
        let ratio = OutsideRange::check("short_circuit", in_amperes(self.short_circuit), 1.0, 1e6)? / demand;
        let outside = OutsideRange { argument: "ratio", given: ratio, min: 0.0, max: f64::MAX };
        Ok((demand, ratio, limits(ratio).ok_or(outside)?))
    }

    /// Total demand distortion, TDD = THD I_1/I_L with I_L the equipment's and the other load's fundamental, against the
    /// limit by I_SC/I_L. Other load is counted without harmonics of its own.
    ///
    /// # Units
    /// `distortion` of the equipment's current, a share of its fundamental; results shares.
    /// # Range
    /// Distortion 0 to 3; equipment 0.001 to 100,000 A, other 0 to 100,000 A, fault 1 to 1,000,000 A; 120 V to 69 kV.
    /// # Errors
    /// [`OutsideRange`] names `distortion`, `equipment`, `other` or `short_circuit` (A).
    /// # Source
    /// [ieee-519-2022] table 2.
    pub fn total(self, distortion: f64) -> Result<Distortion, OutsideRange> {
        let (demand, ratio, row) = self.row()?;
        let distortion = OutsideRange::check("distortion", distortion, 0.0, 3.0)?;
        // The share first: it is 1 where the equipment is all that there is, and rounding passes no limit that it equals.
        let distortion = distortion * (in_amperes(self.equipment) / demand);
        let limit = row.total / 100.0;
        Ok(Distortion { ratio, distortion, limit, margin: limit - distortion })
    }

    /// One harmonic of the equipment against its own limit; `None` for orders that the table does not list.
    ///
    /// # Units
    /// `share` of the equipment's fundamental; results shares of the demand current.
    /// # Range
    /// Orders 2 to 50; share 0 to 3; the rest as [`Coupling::total`].
    /// # Errors
    /// [`OutsideRange`] names `share`, `equipment`, `other` or `short_circuit` (A).
    /// # Source
    /// [ieee-519-2022] table 2; even orders to 6 have half the limit, those above all of it.
    pub fn single(self, order: u32, share: f64) -> Result<Option<Distortion>, OutsideRange> {
        let (demand, ratio, row) = self.row()?;
        let distortion = OutsideRange::check("share", share, 0.0, 3.0)? * (in_amperes(self.equipment) / demand);
        Ok(row.of_order(order).map(|percent| {
            let limit = percent / 100.0;
            Distortion { ratio, distortion, limit, margin: limit - distortion }
        }))
    }
}
