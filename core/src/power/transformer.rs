//! The transformer on the pole: how much of it a load takes, its impedance, the next larger size.

use super::family::Feed;
use super::impedance::Impedance;
use crate::error::OutsideRange;
use crate::quantity::{
    ElectricCurrent, ElectricPotential, Power, amperes, in_amperes, in_kilovolt_amperes, in_volts, in_watts,
    kilovolt_amperes, ohms, watts,
};
use crate::standards::transformer::{SINGLE_PHASE, THREE_PHASE, next_rating};

/// A transformer as its nameplate has it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Transformer {
    /// Rated apparent power.
    pub rating: Power,
    /// Secondary voltage without load, line to line.
    pub voltage: ElectricPotential,
    /// Impedance, as a share of its own base: 0.02 for 2 %.
    pub impedance: f64,
    /// Lines.
    pub feed: Feed,
}

/// Resistance over impedance until a test sheet tells it: 1.2 % of 2 %.
pub const RESISTANCE_SHARE: f64 = 0.6;
/// Reactance over impedance that goes with it: 1.6 % of 2 %.
pub const REACTANCE_SHARE: f64 = 0.8;

impl Transformer {
    fn checked(self) -> Result<(f64, f64, f64), OutsideRange> {
        let rating = OutsideRange::check("rating", in_kilovolt_amperes(self.rating), 0.5, 1e5)?;
        let voltage = OutsideRange::check("voltage", in_volts(self.voltage), 100.0, 1000.0)?;
        let impedance = OutsideRange::check("impedance", self.impedance, 0.001, 0.2)?;
        Ok((1000.0 * rating, voltage, impedance))
    }

    /// Its impedance as the load sees it: R = 0.6 z k V²/S, X = 0.8 z k V²/S, k = 1 on two lines and √3 on three.
    ///
    /// # Units
    /// Ohms, line-to-line volts for each ampere of line current.
    /// # Range
    /// Rating 0.5 to 100,000 kVA; voltage 100 to 1,000 V; impedance 0.001 to 0.2.
    /// # Errors
    /// [`OutsideRange`] names `rating` (kVA), `voltage` (V) or `impedance`.
    /// # Source
    /// Per-unit algebra; the split into R and X is common practice for small distribution transformers.
    pub fn as_impedance(self) -> Result<Impedance, OutsideRange> {
        let (va, volts, z) = self.checked()?;
        let base = self.feed.factor() * volts * volts / va;
        Ok(Impedance { resistance: ohms(RESISTANCE_SHARE * z * base), reactance: ohms(REACTANCE_SHARE * z * base) })
    }

    /// Rated current: S/V on two lines, S/(√3 V) on three.
    ///
    /// # Units
    /// A current.
    /// # Range
    /// As [`Transformer::as_impedance`].
    /// # Errors
    /// [`OutsideRange`] names `rating` (kVA), `voltage` (V) or `impedance`.
    /// # Source
    /// Definition.
    pub fn rated_current(self) -> Result<ElectricCurrent, OutsideRange> {
        let (va, volts, _) = self.checked()?;
        Ok(amperes(va / (self.feed.factor() * volts)))
    }

    /// Fault current at its terminals: rated current over impedance.
    ///
    /// # Units
    /// A current, symmetrical rms.
    /// # Range
    /// As [`Transformer::as_impedance`]; the primary is an infinite bus, so the answer is on the safe side.
    /// # Errors
    /// [`OutsideRange`] names `rating` (kVA), `voltage` (V) or `impedance`.
    /// # Source
    /// Per-unit algebra.
    pub fn fault_current(self) -> Result<ElectricCurrent, OutsideRange> {
        Ok(self.rated_current()? / self.impedance)
    }

    /// How much of it a current takes, other load included by the caller.
    ///
    /// # Units
    /// `current` line current, rms; the answer holds the load over the rating.
    /// # Range
    /// Current 0 to 100,000 A; the rest as [`Transformer::as_impedance`].
    /// # Errors
    /// [`OutsideRange`] names `current` (A), `rating` (kVA), `voltage` (V) or `impedance`.
    /// # Source
    /// Definition; the caution at 80 % is common practice.
    pub fn loading(self, current: ElectricCurrent) -> Result<Loading, OutsideRange> {
        let amps = OutsideRange::check("current", in_amperes(current), 0.0, 1e5)?;
        let share = amps / in_amperes(self.rated_current()?);
        Ok(match share {
            share if share > 1.0 => Loading::Over(share),
            share if share > CLOSE => Loading::Close(share),
            share => Loading::Within(share),
        })
    }
}

/// Least impedance of usual single-phase distribution transformers, as a share: what a fault is judged by until the
/// nameplate is read. Common practice, no single source; some are said to go down to 1.2 %.
pub const LEAST_IMPEDANCE: f64 = 0.012;

/// Share of a transformer's rating above which its load is called close.
pub const CLOSE: f64 = 0.80;

/// Load over rating.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Loading {
    /// To 80 %.
    Within(f64),
    /// Above 80 %, to 100 %.
    Close(f64),
    /// Above 100 %.
    Over(f64),
}

/// Apparent power of a load: V I on two lines, √3 V I on three.
///
/// # Units
/// `current` rms, harmonics in; the result an apparent power.
/// # Range
/// Supply 1 to 1,000 V; current 0 to 100,000 A.
/// # Errors
/// [`OutsideRange`] names `supply` (V) or `current` (A).
/// # Source
/// Definition.
pub fn apparent_power(supply: ElectricPotential, current: ElectricCurrent, feed: Feed) -> Result<Power, OutsideRange> {
    let v = OutsideRange::check("supply", in_volts(supply), 1.0, 1000.0)?;
    Ok(watts(feed.factor() * v * OutsideRange::check("current", in_amperes(current), 0.0, 1e5)?))
}

/// The smallest usual rating at or above a load; `None` beyond 500 kVA.
///
/// # Units
/// Apparent powers.
/// # Range
/// Load 0 to 1,000 MVA.
/// # Errors
/// [`OutsideRange`] names `load` (VA).
/// # Source
/// [ieee-c57.12].
pub fn next_size(load: Power, feed: Feed) -> Result<Option<Power>, OutsideRange> {
    let kva = OutsideRange::check("load", in_watts(load), 0.0, 1e9)? / 1000.0;
    let ratings = match feed {
        Feed::SinglePhase => &SINGLE_PHASE,
        Feed::ThreePhase => &THREE_PHASE,
    };
    Ok(next_rating(ratings, kva).map(kilovolt_amperes))
}
