//! NEC chapter 9, table 9: reactance to neutral at 60 Hz, three single conductors in conduit, Ω/1000 ft.
//!
//! Source: [nec-2023-ch9-t9]. Printed to two figures. The reactance of copper and aluminum conductors is the same.

use super::conductor::Size;

/// One row of table 9, in the order of [`Size::ALL`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// In PVC or aluminum conduit, Ω/1000 ft.
    pub plastic: f64,
    /// In steel conduit, Ω/1000 ft.
    pub steel: f64,
}

const fn row(plastic: f64, steel: f64) -> Row {
    Row { plastic, steel }
}

/// The row of a size.
#[must_use]
pub fn table_9(size: Size) -> Row {
    TABLE_9[size as usize]
}

/// Table 9, reactance columns.
pub const TABLE_9: [Row; 18] = [
    row(0.058, 0.073),
    row(0.054, 0.068),
    row(0.050, 0.063),
    row(0.052, 0.065),
    row(0.051, 0.064),
    row(0.048, 0.060),
    row(0.047, 0.059),
    row(0.045, 0.057),
    row(0.046, 0.057),
    row(0.044, 0.055),
    row(0.043, 0.054),
    row(0.042, 0.052),
    row(0.041, 0.051),
    row(0.041, 0.052),
    row(0.041, 0.051),
    row(0.040, 0.050),
    row(0.040, 0.049),
    row(0.039, 0.048),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn steel_adds_a_quarter_and_the_sums_are_as_typed() {
        for row in TABLE_9 {
            let ratio = row.steel / row.plastic;
            assert!((1.2..=1.29).contains(&ratio), "{row:?}");
        }
        let plastic: f64 = TABLE_9.iter().map(|row| row.plastic).sum();
        assert!((plastic - 0.822).abs() < 1e-9, "{plastic}");
    }
}
