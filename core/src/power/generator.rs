//! A generator set in place of the line: how large it has to be.

use super::family::Feed;
use crate::error::OutsideRange;
use crate::quantity::{
    ElectricCurrent, ElectricPotential, Power, in_amperes, in_kilovolt_amperes, in_volts, in_watts, watts,
};
use serde::{Deserialize, Serialize};

/// Transient reactance of a usual set, per unit of its rating.
pub const TRANSIENT_REACTANCE: f64 = 0.20;
/// Dip that a set alone may show at a start.
pub const START_DIP: f64 = 0.30;

/// How the set feeds the equipment.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Hookup {
    /// As it was built: a single-phase set on two lines, or a three-phase set on three.
    AsBuilt,
    /// Three-phase set reconnected in double delta for two lines.
    DoubleDelta,
    /// Two lines of a three-phase set.
    TwoLines,
}

impl Hookup {
    /// Share of the set's rating that is left: 1, 2/3 or 1/√3.
    ///
    /// # Units
    /// Dimensionless.
    /// # Range
    /// Sets that their maker lets be reconnected or loaded so.
    /// # Source
    /// Winding currents held at their rating; the trade rounds to 0.667 and 0.577.
    #[must_use]
    pub fn share(self) -> f64 {
        match self {
            Self::AsBuilt => 1.0,
            Self::DoubleDelta => 2.0 / 3.0,
            Self::TwoLines => 3f64.sqrt().recip(),
        }
    }
}

/// Room that a distorted current asks of a set: 1.25 to 15 % distortion, 1.5 to 45 %, 2.0 above.
///
/// # Units
/// `distortion` of the current as a share; the result a factor on the input's apparent power.
/// # Range
/// Distortion 0 to 3.
/// # Errors
/// [`OutsideRange`] names `distortion`.
/// # Source
/// Common practice, no single source; a maker's sizing program comes first.
pub fn distortion_factor(distortion: f64) -> Result<f64, OutsideRange> {
    Ok(match OutsideRange::check("distortion", distortion, 0.0, 3.0)? {
        share if share <= 0.15 => 1.25,
        share if share <= 0.45 => 1.5,
        _ => 2.0,
    })
}

/// Apparent power that a set needs while the motor runs: S_in · factor/share.
///
/// # Units
/// `input` apparent power of the equipment; the result an apparent power.
/// # Range
/// Input 0 to 100 MVA; distortion 0 to 3.
/// # Errors
/// [`OutsideRange`] names `input` (VA) or `distortion`.
/// # Source
/// [`distortion_factor`] and [`Hookup::share`].
pub fn running_rating(input: Power, distortion: f64, hookup: Hookup) -> Result<Power, OutsideRange> {
    let input = OutsideRange::check("input", in_watts(input), 0.0, 1e8)?;
    Ok(watts(input * distortion_factor(distortion)? / hookup.share()))
}

/// Apparent power that a set needs to start a motor at once: S_LR · X′_d (1 − d)/d /share, S_LR = k V I_LR, with the
/// transient reactance 0.20 and the dip d = 0.30.
///
/// # Units
/// `locked_rotor` line current at full voltage; the result an apparent power.
/// # Range
/// Supply 1 to 1,000 V; locked rotor 0 to 100,000 A.
/// # Errors
/// [`OutsideRange`] names `supply` (V) or `locked_rotor` (A).
/// # Source
/// Voltage divider of the set's reactance and the standing motor, both taken as reactances; figures common practice.
pub fn starting_rating(
    supply: ElectricPotential,
    locked_rotor: ElectricCurrent,
    feed: Feed,
    hookup: Hookup,
) -> Result<Power, OutsideRange> {
    let v = OutsideRange::check("supply", in_volts(supply), 1.0, 1000.0)?;
    let amps = OutsideRange::check("locked_rotor", in_amperes(locked_rotor), 0.0, 1e5)?;
    let room = TRANSIENT_REACTANCE * (1.0 - START_DIP) / START_DIP;
    Ok(watts(feed.factor() * v * amps * room / hookup.share()))
}

/// A set against what is needed, both in kVA.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SetVerdict {
    /// It serves; needed over what the site leaves of its rating.
    Serves(f64),
    /// Too small; the same share.
    Short(f64),
}

/// Whether a set serves where it stands.
///
/// # Units
/// `rating` by its nameplate; `site` the share that heat and altitude leave of it, by its maker; `needed` an apparent
/// power.
/// # Range
/// Rating 0.5 to 100,000 kVA; site 0.1 to 1; needed 0 to 10⁶ kVA. Equality serves.
/// # Errors
/// [`OutsideRange`] names `rating`, `needed` (kVA) or `site`.
/// # Source
/// Definition.
pub fn judge_set(rating: Power, site: f64, needed: Power) -> Result<SetVerdict, OutsideRange> {
    let rating = OutsideRange::check("rating", in_kilovolt_amperes(rating), 0.5, 1e5)?;
    let site = OutsideRange::check("site", site, 0.1, 1.0)?;
    let share = OutsideRange::check("needed", in_kilovolt_amperes(needed), 0.0, 1e6)? / (rating * site);
    Ok(if share > 1.0 { SetVerdict::Short(share) } else { SetVerdict::Serves(share) })
}
