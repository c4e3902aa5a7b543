//! The conductors from the service to the drive and on to the motor: geometry, resistance cold, warm and alternating,
//! reactance, ampacity, drop, ground, choice by law and by cost; and the pulses that run along a long lead.

pub mod ampacity;
pub mod conductor;
pub mod drop;
pub mod economic;
pub mod feeder;
pub mod filter;
pub mod flat;
pub mod ground;
pub mod lead;
pub mod long_lead;
pub mod needed;
pub mod reactance;
pub mod skin;
pub mod stretches;
pub mod temperature;
