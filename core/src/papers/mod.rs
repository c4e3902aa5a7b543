//! What goes on paper: the working behind each answer, as structure. Symbols, numbers and codes, no sentences.

mod air;
mod break_even;
mod conversion;
mod cooling;
mod cost;
mod curve;
mod demand;
mod fall;
mod flat;
mod full_speed;
mod head;
mod lead;
mod lesson;
mod level;
mod math;
mod motor;
mod name;
mod outlook;
mod parts;
mod pipe;
mod pump;
mod safety;
mod service;
mod sheet;
mod steps;
mod suction;
mod topic;
mod ways;
mod working;

pub use conversion::Conversion;
pub use lesson::{
    Below, Choice, Lesson, LessonStep, LessonSum, LessonWay, Offered, OtherLead, example, lesson, question,
    with_numbers_of,
};
pub use math::{Math, Measured, Symbol};
pub use name::Name;
pub use parts::{PartLine, PartName, PartSize, parts};
pub use topic::{OfYear, Topic};
pub use working::{Caveat, Entered, EnteredValue, Limit, LimitKind, Put, Step, Working, working};
