//! The conductor from the drive to the motor: geometry, resistance, reactance, ampacity, drop, ground, choice.

pub mod ampacity;
pub mod conductor;
pub mod drop;
pub mod ground;
pub mod lead;
pub mod reactance;
