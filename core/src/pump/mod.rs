//! The pump's motor.

pub mod motor;
