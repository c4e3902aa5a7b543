//! The parts that pages are made of: one a file, none with a formula.

pub mod choice;
pub mod icon;
pub mod notice;
pub mod quantity_field;
pub mod screen_settings;
pub mod segmented;
pub mod toast;
