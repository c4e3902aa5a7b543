//! From the pole to the motor's lead: the ways to power the motor, what each draws from the supply and gives to the
//! motor, and whether it serves.

pub mod converter;
pub mod derating;
pub mod family;
pub mod family_table;
pub mod fit;
pub mod generator;
pub mod generic;
pub mod harmonics;
pub mod impedance;
pub mod line_extension;
pub mod rotary;
pub mod start;
pub mod step_up;
pub mod supply;
pub mod transformer;
pub mod volts;
