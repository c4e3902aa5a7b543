//! The parts that pages are made of: one a file, none with a formula. Each stands in the gallery (`?gallery`).

pub mod announcer;
pub mod big_answer;
pub mod caution;
pub mod choice;
pub mod dialog;
pub mod empty;
pub mod file_drop;
pub mod group;
pub mod head_bar;
pub mod icon;
pub mod menu;
pub mod notice;
pub mod one_line;
pub mod quantity_field;
pub mod screen_settings;
pub mod segmented;
pub mod stations;
mod stepping;
pub mod switch;
pub mod table;
pub mod tick;
pub mod toast;
pub mod trend;
pub mod verdict;
pub mod worked_out;
pub mod working;
