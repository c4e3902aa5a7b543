//! What the lead and the equipment cost, what a year's power costs, and what yearly sums are worth today.

pub mod annuity;
pub mod book;
pub mod book_table;
pub mod criteria;
pub mod duty;
pub mod duty_text;
pub mod equipment;
pub mod price;
pub mod spread;
pub mod tariff;
pub mod worth;
