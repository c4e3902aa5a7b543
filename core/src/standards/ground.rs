//! NEC table 250.122: least size of equipment grounding conductor by the rating of the overcurrent device ahead.
//! Source: [nec-2023-250.122].

use super::conductor::{Metal, Size};

/// One row: devices up to `amperes` take these sizes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Largest device rating of the row, A.
    pub amperes: f64,
    /// Copper.
    pub copper: Size,
    /// Aluminum.
    pub aluminum: Size,
}

const fn row(amperes: f64, copper: Size, aluminum: Size) -> Row {
    Row { amperes, copper, aluminum }
}

/// The table's size for a device rating, or `None` beyond its last row here (2,000 A).
#[must_use]
pub fn table_250_122(device_amperes: f64, metal: Metal) -> Option<Size> {
    TABLE.iter().find(|row| device_amperes <= row.amperes).map(|row| match metal {
        Metal::Copper => row.copper,
        Metal::Aluminum => row.aluminum,
    })
}

/// Table 250.122, to 2,000 A.
pub const TABLE: [Row; 14] = [
    row(15.0, Size::Awg14, Size::Awg12),
    row(20.0, Size::Awg12, Size::Awg10),
    row(60.0, Size::Awg10, Size::Awg8),
    row(100.0, Size::Awg8, Size::Awg6),
    row(200.0, Size::Awg6, Size::Awg4),
    row(300.0, Size::Awg4, Size::Awg2),
    row(400.0, Size::Awg3, Size::Awg1),
    row(500.0, Size::Awg2, Size::Awg1_0),
    row(600.0, Size::Awg1, Size::Awg2_0),
    row(800.0, Size::Awg1_0, Size::Awg3_0),
    row(1000.0, Size::Awg2_0, Size::Awg4_0),
    row(1200.0, Size::Awg3_0, Size::Kcmil250),
    row(1600.0, Size::Awg4_0, Size::Kcmil350),
    row(2000.0, Size::Kcmil250, Size::Kcmil400),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rows_ascend_and_aluminum_is_the_larger() {
        for pair in TABLE.windows(2) {
            assert!(pair[0].amperes < pair[1].amperes);
            assert!(pair[0].copper < pair[1].copper && pair[0].aluminum < pair[1].aluminum);
        }
        assert!(TABLE.iter().all(|row| row.copper < row.aluminum));
        assert_eq!(table_250_122(60.0, Metal::Copper), Some(Size::Awg10));
        assert_eq!(table_250_122(60.1, Metal::Copper), Some(Size::Awg8));
        assert_eq!(table_250_122(2000.1, Metal::Copper), None);
    }
}
