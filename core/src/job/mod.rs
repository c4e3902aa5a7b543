//! The job: what a person enters, what is accepted, what is assumed, and how it is filed.

mod choice;
mod counts;
mod entered;
mod field;
mod inputs;
mod model;
mod place;
pub mod record;
mod spec;
pub mod wire;

pub use choice::{Choices, Control, DemandBy, DepthOf, DrawdownBy, Part, PipePick, Sets};
pub use entered::{Checked, Entered, Known, Maybe, Origin};
pub use field::Field;
pub(crate) use inputs::provisional;
pub use inputs::{Inputs, MotorCurrent};
pub use model::{Job, Way};
pub use place::{Grounding, Place, WayKey};
pub use record::{Check, Reading, Record};
pub use spec::{Spec, Stand};
