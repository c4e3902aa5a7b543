//! NEC table 310.16: ampacity of insulated conductors, not more than three current-carrying conductors in raceway,
//! cable or earth, ambient 30 °C. Source: [nec-2023-310.16].
//!
//! A cable that hangs in a well is none of these exactly; the table is the usual conservative stand-in (practice).

use super::conductor::{Metal, Size};
use serde::{Deserialize, Serialize};

/// Temperature rating of insulation or of a terminal: a column of the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Rating {
    /// 60 °C.
    #[serde(rename = "60 degC")]
    C60,
    /// 75 °C.
    #[serde(rename = "75 degC")]
    C75,
    /// 90 °C.
    #[serde(rename = "90 degC")]
    C90,
}

impl Rating {
    /// The rating in degrees Celsius.
    #[must_use]
    pub fn celsius(self) -> f64 {
        [60.0, 75.0, 90.0][self as usize]
    }
}

/// Table ampacity, A, or `None` where the table lists no such conductor.
#[must_use]
pub fn table_310_16(size: Size, metal: Metal, rating: Rating) -> Option<f64> {
    match metal {
        Metal::Copper => Some(COPPER[size as usize][rating as usize]),
        Metal::Aluminum => (size as usize).checked_sub(1).map(|row| ALUMINUM[row][rating as usize]),
    }
}

/// Copper, 14 AWG to 500 kcmil; columns 60, 75, 90 °C.
pub const COPPER: [[f64; 3]; 18] = [
    [15.0, 20.0, 25.0],
    [20.0, 25.0, 30.0],
    [30.0, 35.0, 40.0],
    [40.0, 50.0, 55.0],
    [55.0, 65.0, 75.0],
    [70.0, 85.0, 95.0],
    [85.0, 100.0, 115.0],
    [95.0, 115.0, 130.0],
    [110.0, 130.0, 145.0],
    [125.0, 150.0, 170.0],
    [145.0, 175.0, 195.0],
    [165.0, 200.0, 225.0],
    [195.0, 230.0, 260.0],
    [215.0, 255.0, 290.0],
    [240.0, 285.0, 320.0],
    [260.0, 310.0, 350.0],
    [280.0, 335.0, 380.0],
    [320.0, 380.0, 430.0],
];

/// Aluminum, 12 AWG to 500 kcmil; columns 60, 75, 90 °C.
pub const ALUMINUM: [[f64; 3]; 17] = [
    [15.0, 20.0, 25.0],
    [25.0, 30.0, 35.0],
    [35.0, 40.0, 45.0],
    [40.0, 50.0, 55.0],
    [55.0, 65.0, 75.0],
    [65.0, 75.0, 85.0],
    [75.0, 90.0, 100.0],
    [85.0, 100.0, 115.0],
    [100.0, 120.0, 135.0],
    [115.0, 135.0, 150.0],
    [130.0, 155.0, 175.0],
    [150.0, 180.0, 205.0],
    [170.0, 205.0, 230.0],
    [195.0, 230.0, 260.0],
    [210.0, 250.0, 280.0],
    [225.0, 270.0, 305.0],
    [260.0, 310.0, 350.0],
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ampacity_rises_with_size_rating_and_from_aluminum_to_copper() {
        for table in [&COPPER[..], &ALUMINUM[..]] {
            for pair in table.windows(2) {
                assert!(pair[0].iter().zip(pair[1]).all(|(small, large)| *small < large));
            }
            for row in table {
                assert!(row[0] < row[1] && row[1] < row[2]);
            }
        }
        for (index, row) in ALUMINUM.iter().enumerate() {
            assert!(row.iter().zip(COPPER[index + 1]).all(|(aluminum, copper)| *aluminum < copper));
        }
    }

    #[test]
    fn column_sums_are_as_typed() {
        let sum = |table: &[[f64; 3]], column: usize| table.iter().map(|row| row[column]).sum::<f64>();
        assert_eq!([0, 1, 2].map(|c| sum(&COPPER, c)), [2465.0, 2945.0, 3330.0]);
        assert_eq!([0, 1, 2].map(|c| sum(&ALUMINUM, c)), [1950.0, 2325.0, 2625.0]);
    }
}
