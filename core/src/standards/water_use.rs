//! Water used in a day: people and stock.
//!
//! Source: [practice]; within what extension services print ([kstate-livestock]), where a warm day may ask 30 % more.

use crate::quantity::{Volume, gallons};

/// Who uses water.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum User {
    /// A person, all uses of a house.
    Person,
    /// Beef cattle, a head.
    Beef,
    /// A dairy cow in milk, with washing.
    Dairy,
    /// A horse.
    Horse,
}

impl User {
    /// All users.
    pub const ALL: [Self; 4] = [Self::Person, Self::Beef, Self::Dairy, Self::Horse];

    /// Water used by one in a day, unless the job says otherwise.
    #[must_use]
    pub fn daily(self) -> Volume {
        gallons(match self {
            Self::Person => 75.0,
            Self::Beef => 15.0,
            Self::Dairy => 35.0,
            Self::Horse => 12.0,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::in_gallons;

    // Ranges for nursing beef cows 11 to 18, dairy cows 15 to 40 gal/day: [kstate-livestock] table 1; a horse "10 gallons a
    // day" and more at work; people 50 to 100, practice.
    #[test]
    fn figures_lie_within_what_is_printed() {
        for (user, least, most) in [
            (User::Person, 50.0, 100.0),
            (User::Beef, 11.0, 18.0),
            (User::Dairy, 15.0, 40.0),
            (User::Horse, 10.0, 20.0),
        ] {
            let daily = in_gallons(user.daily());
            assert!(daily >= least && daily <= most, "{user:?}");
        }
        let sum: f64 = User::ALL.iter().map(|user| in_gallons(user.daily())).sum();
        assert!((sum - 137.0).abs() < 1e-9);
    }
}
