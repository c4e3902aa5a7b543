//! The pump, what it asks of its shaft, and its motor.

pub mod affinity;
pub mod curve;
pub mod demo;
pub mod motor;
pub mod operating_point;
pub mod paste;
pub mod power;
pub mod unbalance;
