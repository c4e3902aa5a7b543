//! The living picture: the well and the cost of both ways on one depth scale, depth down, money right.
//!
//! What is drawn is worked out first, in pixels of the page, by plain functions ([`spec`]); then it is put on a canvas
//! ([`draw`], [`canvas`]). The well is an SVG of its own ([`well`]) on the same [`scale`]. The pump has a picture of its
//! own, head against flow ([`pump`](mod@pump)), and so has the peak voltage at the motor ([`peak`](mod@peak)).

mod axis;
mod batch;
mod beside;
mod canvas;
mod casing;
mod curve;
mod draw;
mod facts;
mod frame;
mod head;
mod here;
mod ink;
mod labels;
mod layout;
mod lesson;
mod mark;
mod moving;
mod names;
mod pace;
mod parts;
mod peak;
mod plate;
mod probe;
mod pump;
mod room;
mod saving;
mod scale;
mod shapes;
mod sizes;
mod spec;
mod spread;
mod svg;
mod target;
#[cfg(feature = "timed")]
mod timed;
mod vector;
mod water;
mod well;
mod well_mark;
mod well_words;

#[cfg(test)]
mod first;
#[cfg(test)]
mod tests;
#[cfg(test)]
mod well_tests;

pub use beside::letter;
pub use lesson::{Shaped, Stairs, boxes, cuts, stairs};
pub use peak::PeakPicture;
pub use plate::Plate;
pub use pump::{PumpPicture, curve_table};
pub use target::depth_after;
#[cfg(feature = "timed")]
pub use timed::offer;
pub use well_mark::WellMark;
