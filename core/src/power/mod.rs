//! From the pole to the drive.

pub mod supply;
