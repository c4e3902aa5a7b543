//! Published tables as data, each with its source on top. Edition of the electrical ones: NFPA 70 (NEC), 2023.
//!
//! Numbers were typed from memory of the code and read against the reproductions that `SOURCES.md` names; before a
//! design is relied on, read them against the edition that is adopted where the well is.

pub mod ac_resistance;
pub mod ambient;
pub mod ampacity;
pub mod conductor;
pub mod enclosure;
pub mod fittings;
pub mod ground;
pub mod ieee_519;
pub mod motor_current;
pub mod overcurrent;
pub mod pipe;
pub mod reactance;
pub mod single_phase_motor;
pub mod transformer;
pub mod unbalance;
pub mod water_use;
