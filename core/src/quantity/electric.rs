//! Apparent power, and impedance as plain ohms.

use super::{ElectricalResistance, Power, in_watts, watts};
use uom::si::electrical_resistance::ohm;

/// An apparent power from kilovolt-amperes. It has the dimension of a power, and is held as one.
#[must_use]
pub fn kilovolt_amperes(value: f64) -> Power {
    watts(1000.0 * value)
}
/// An apparent power in kilovolt-amperes.
#[must_use]
pub fn in_kilovolt_amperes(power: Power) -> f64 {
    in_watts(power) / 1000.0
}
/// A resistance or reactance from ohms.
#[must_use]
pub fn ohms(value: f64) -> ElectricalResistance {
    ElectricalResistance::new::<ohm>(value)
}
/// A resistance or reactance in ohms.
#[must_use]
pub fn in_ohms(value: ElectricalResistance) -> f64 {
    value.get::<ohm>()
}
