//! IEEE 519-2022, table 2: how much harmonic current a user may draw at the point of common coupling, 120 V to 69 kV, by
//! the short-circuit ratio ISC/IL; and table 1: harmonic voltage. Source: [ieee-519-2022].

/// One row of table 2, in percent of the maximum demand current.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Largest short-circuit ratio of the row; the ratio itself belongs to the next row, except in the row to 1,000.
    pub up_to: f64,
    /// Limits of single orders, by the bands of [`ORDERS`].
    pub single: [f64; 5],
    /// Total demand distortion.
    pub total: f64,
}

/// The least order of each band, and the end of the last.
pub const ORDERS: [u32; 6] = [2, 11, 17, 23, 35, 51];

const fn row(up_to: f64, single: [f64; 5], total: f64) -> Row {
    Row { up_to, single, total }
}

/// Table 2.
pub const TABLE: [Row; 5] = [
    row(20.0, [4.0, 2.0, 1.5, 0.6, 0.3], 5.0),
    row(50.0, [7.0, 3.5, 2.5, 1.0, 0.5], 8.0),
    row(100.0, [10.0, 4.5, 4.0, 1.5, 0.7], 12.0),
    row(1000.0, [12.0, 5.5, 5.0, 2.0, 1.0], 15.0),
    row(f64::INFINITY, [15.0, 7.0, 6.0, 2.5, 1.4], 20.0),
];

/// The row of a short-circuit ratio: below 20, 20 to below 50, to below 100, 100 to 1,000, above 1,000.
#[must_use]
pub fn limits(ratio: f64) -> Option<Row> {
    let inside = |row: &&Row| if row.up_to == 1000.0 { ratio <= row.up_to } else { ratio < row.up_to };
    if ratio > 0.0 { TABLE.iter().find(inside).copied() } else { None }
}

impl Row {
    /// Limit of one order, percent of the demand current. Even orders to 6 have half of the band's limit, those above
    /// all of it, by the edition of 2022 (a quarter by those before). `None` outside orders 2 to 50.
    #[must_use]
    pub fn of_order(&self, order: u32) -> Option<f64> {
        let band = ORDERS.windows(2).position(|band| order >= band[0] && order < band[1])?;
        let share = if order.is_multiple_of(2) && order <= 6 { 0.5 } else { 1.0 };
        Some(share * self.single[band])
    }
}

/// Table 1: largest voltage of the row in kV, limit of one harmonic and of the total, percent.
pub const VOLTAGE: [(f64, f64, f64); 4] =
    [(1.0, 5.0, 8.0), (69.0, 3.0, 5.0), (161.0, 1.5, 2.5), (f64::INFINITY, 1.0, 1.5)];

#[cfg(test)]
mod tests {
    use super::*;

    // A stronger supply allows more; a higher order less; no single order more than the total.
    #[test]
    fn limits_rise_with_the_ratio_and_fall_with_the_order() {
        for pair in TABLE.windows(2) {
            assert!(pair[0].up_to < pair[1].up_to && pair[0].total < pair[1].total);
            assert!((0..5).all(|band| pair[0].single[band] < pair[1].single[band]), "{pair:?}");
        }
        for row in TABLE {
            assert!(row.single.windows(2).all(|pair| pair[0] > pair[1]) && row.total > row.single[0], "{row:?}");
        }
        assert_eq!(TABLE.iter().map(|row| row.total).sum::<f64>(), 60.0);
        assert!((TABLE.iter().flat_map(|row| row.single).sum::<f64>() - 101.0).abs() < 1e-9);
        assert!(VOLTAGE.windows(2).all(|pair| pair[0].0 < pair[1].0 && pair[0].2 > pair[1].2));
        assert!(VOLTAGE.iter().all(|row| row.1 < row.2));
    }

    #[test]
    fn rows_end_where_they_are_printed_to_end() {
        let total = |ratio| limits(ratio).map(|row| row.total);
        let ends = [(19.9, 5.0), (20.0, 8.0), (50.0, 12.0), (100.0, 15.0), (1000.0, 15.0), (1000.1, 20.0)];
        for (ratio, percent) in ends {
            assert_eq!(total(ratio), Some(percent), "{ratio}");
        }
        for ratio in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert_eq!(total(ratio), None, "{ratio}");
        }
    }

    #[test]
    fn even_orders_to_six_have_half() {
        let row = TABLE[0];
        for (order, percent) in [(2, 2.0), (3, 4.0), (6, 2.0), (8, 4.0), (10, 4.0), (11, 2.0), (12, 2.0), (50, 0.3)] {
            assert_eq!(row.of_order(order), Some(percent), "{order}");
        }
        assert_eq!([0, 1, 51].map(|order| row.of_order(order)), [None; 3]);
    }
}
