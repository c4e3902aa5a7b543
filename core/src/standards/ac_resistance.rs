//! NEC chapter 9, table 9: alternating-current resistance to neutral at 60 Hz and 75 °C, three single conductors in
//! conduit, Ω/1000 ft. Source: [nec-2023-ch9-t9]. Printed to two figures; for beside the sums, which go by table 8.

use super::conductor::{Metal, Size};

/// One row of table 9's resistances.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// In PVC conduit, Ω/1000 ft.
    pub plastic: f64,
    /// In steel conduit, Ω/1000 ft.
    pub steel: f64,
}

const fn row(plastic: f64, steel: f64) -> Row {
    Row { plastic, steel }
}

/// The row of a size and metal; `None` for 14 AWG aluminum, which the table does not list.
#[must_use]
pub fn ac_resistance(size: Size, metal: Metal) -> Option<Row> {
    match metal {
        Metal::Copper => Some(COPPER[size as usize]),
        Metal::Aluminum => (size as usize).checked_sub(1).map(|row| ALUMINUM[row]),
    }
}

/// Uncoated copper, 14 AWG to 500 kcmil.
#[allow(clippy::approx_constant)] // 0.31 is 4 AWG's resistance
pub const COPPER: [Row; 18] = [
    row(3.1, 3.1),
    row(2.0, 2.0),
    row(1.2, 1.2),
    row(0.78, 0.78),
    row(0.49, 0.49),
    row(0.31, 0.31),
    row(0.25, 0.25),
    row(0.19, 0.20),
    row(0.15, 0.16),
    row(0.12, 0.12),
    row(0.10, 0.10),
    row(0.077, 0.079),
    row(0.062, 0.063),
    row(0.052, 0.054),
    row(0.044, 0.045),
    row(0.038, 0.039),
    row(0.033, 0.035),
    row(0.027, 0.029),
];

/// Aluminum, 12 AWG to 500 kcmil.
pub const ALUMINUM: [Row; 17] = [
    row(3.2, 3.2),
    row(2.0, 2.0),
    row(1.3, 1.3),
    row(0.81, 0.81),
    row(0.51, 0.51),
    row(0.40, 0.40),
    row(0.32, 0.32),
    row(0.25, 0.25),
    row(0.20, 0.20),
    row(0.16, 0.16),
    row(0.13, 0.13),
    row(0.10, 0.10),
    row(0.085, 0.086),
    row(0.071, 0.072),
    row(0.061, 0.063),
    row(0.054, 0.055),
    row(0.043, 0.045),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn resistance_falls_with_size_and_steel_never_lowers_it() {
        for table in [&COPPER[..], &ALUMINUM[..]] {
            for pair in table.windows(2) {
                assert!(pair[0].plastic > pair[1].plastic && pair[0].steel > pair[1].steel, "{pair:?}");
            }
            assert!(table.iter().all(|row| row.steel >= row.plastic && row.steel < 1.08 * row.plastic));
        }
        let sum = |table: &[Row]| table.iter().map(|row| row.plastic + row.steel).sum::<f64>();
        assert!((sum(&COPPER) - 18.077).abs() < 1e-9, "{}", sum(&COPPER));
        assert!((sum(&ALUMINUM) - 19.395).abs() < 1e-9, "{}", sum(&ALUMINUM));
    }

    // Alternating current is never resisted less than direct current; two printed figures leave up to 4.5 %.
    #[test]
    fn no_value_lies_below_the_direct_current_resistance_but_by_its_rounding() {
        for size in Size::ALL {
            for (metal, direct) in [(Metal::Copper, size.row().copper), (Metal::Aluminum, size.row().aluminum)] {
                if let Some(row) = ac_resistance(size, metal) {
                    assert!(row.plastic > 0.955 * direct && row.plastic < 1.06 * direct, "{size:?} {metal:?}");
                }
            }
        }
        assert_eq!(ac_resistance(Size::Awg14, Metal::Aluminum), None);
    }
}
