//! Pages: they lay out parts and pictures, nothing else.

pub mod arrivals;
pub mod embed;
pub mod gallery;
pub mod job;
pub mod jobs;
pub mod lesson;
pub mod show;
