//! Pages: they lay out parts and pictures, nothing else.

pub mod job;
pub mod jobs;
