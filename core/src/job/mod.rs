//! The job: what a person enters, what is accepted, what is assumed, and how it is filed.

mod field;
mod inputs;
mod model;
pub mod wire;

pub use field::{Field, Spec, Stand};
pub use inputs::{Checked, Inputs, Known, Levels, MotorCurrent, Origin};
pub use model::{Choices, Job, Sets, Way};
