//! NEC table 430.248: full-load current, single-phase alternating-current motors. Source: [nec-2023-430.248].

/// One row: rated horsepower and full-load amperes at the rated motor voltages.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Rated horsepower.
    pub hp: f64,
    /// Amperes at 115 V.
    pub v115: f64,
    /// Amperes at 200 V.
    pub v200: f64,
    /// Amperes at 208 V.
    pub v208: f64,
    /// Amperes at 230 V.
    pub v230: f64,
}

const fn row(hp: f64, v115: f64, v200: f64, v208: f64, v230: f64) -> Row {
    Row { hp, v115, v200, v208, v230 }
}

/// Table 430.248 from 1/2 to 10 hp, its last row.
pub const TABLE: [Row; 9] = [
    row(0.5, 9.8, 5.6, 5.4, 4.9),
    row(0.75, 13.8, 7.9, 7.6, 6.9),
    row(1.0, 16.0, 9.2, 8.8, 8.0),
    row(1.5, 20.0, 11.5, 11.0, 10.0),
    row(2.0, 24.0, 13.8, 13.2, 12.0),
    row(3.0, 34.0, 19.6, 18.7, 17.0),
    row(5.0, 56.0, 32.2, 30.8, 28.0),
    row(7.5, 80.0, 46.0, 44.0, 40.0),
    row(10.0, 100.0, 57.5, 55.0, 50.0),
];

/// Amperes of a 230 V motor, on a straight line between two rows; `None` outside 0.5 to 10 hp.
#[must_use]
pub fn amperes_at_230(hp: f64) -> Option<f64> {
    let pair = TABLE.windows(2).find(|pair| hp >= pair[0].hp && hp <= pair[1].hp)?;
    let (low, high) = (pair[0], pair[1]);
    Some(low.v230 + (high.v230 - low.v230) * (hp - low.hp) / (high.hp - low.hp))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_keep_the_ratios_of_their_voltages() {
        for row in TABLE {
            assert!((row.v115 / row.v230 / 2.0 - 1.0).abs() < 1e-12, "{row:?}");
            assert!((row.v200 / row.v230 / 1.15 - 1.0).abs() < 0.01, "{row:?}");
            assert!((row.v208 / row.v230 / 1.10 - 1.0).abs() < 0.01, "{row:?}");
        }
        assert!(TABLE.windows(2).all(|pair| pair[0].hp < pair[1].hp && pair[0].v230 < pair[1].v230));
        assert!((TABLE.iter().map(|row| row.v230).sum::<f64>() - 176.8).abs() < 1e-9);
    }

    // A single-phase motor draws more than a three-phase one of its power and voltage, by about √3 and its poorer PF.
    #[test]
    fn one_phase_draws_more_than_three() {
        for row in TABLE {
            let three = crate::standards::motor_current::TABLE.iter().find(|three| three.hp == row.hp).unwrap();
            assert!((1.6..2.3).contains(&(row.v230 / three.v230)), "{row:?}");
        }
    }

    #[test]
    fn rows_are_met_and_the_table_ends() {
        for row in TABLE {
            assert_eq!(amperes_at_230(row.hp), Some(row.v230));
        }
        assert_eq!(amperes_at_230(4.0), Some(22.5));
        for hp in [0.4, 10.1, f64::NAN] {
            assert_eq!(amperes_at_230(hp), None, "{hp}");
        }
    }
}
