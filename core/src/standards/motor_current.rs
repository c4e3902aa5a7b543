//! NEC table 430.250: full-load current, three-phase alternating-current induction motors. Source: [nec-2023-430.250].

/// One row: rated horsepower and full-load amperes at the rated motor voltages.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Rated horsepower.
    pub hp: f64,
    /// Amperes at 200 V.
    pub v200: f64,
    /// Amperes at 208 V.
    pub v208: f64,
    /// Amperes at 230 V.
    pub v230: f64,
    /// Amperes at 460 V.
    pub v460: f64,
}

/// The rated voltage of a motor, and the column of table 430.250 that goes with it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RatedVoltage {
    /// 200 V motors.
    V200,
    /// 208 V motors.
    V208,
    /// 230 V motors, on 220 to 240 V systems.
    V230,
    /// 460 V motors, on 440 to 480 V systems.
    V460,
}

impl Row {
    /// Amperes at a rated voltage.
    #[must_use]
    pub fn amperes(&self, voltage: RatedVoltage) -> f64 {
        match voltage {
            RatedVoltage::V200 => self.v200,
            RatedVoltage::V208 => self.v208,
            RatedVoltage::V230 => self.v230,
            RatedVoltage::V460 => self.v460,
        }
    }
}

const fn row(hp: f64, v200: f64, v208: f64, v230: f64, v460: f64) -> Row {
    Row { hp, v200, v208, v230, v460 }
}

/// Table 430.250, 1/2 to 200 hp: the rows that list every one of these voltages.
pub const TABLE: [Row; 21] = [
    row(0.5, 2.5, 2.4, 2.2, 1.1),
    row(0.75, 3.7, 3.5, 3.2, 1.6),
    row(1.0, 4.8, 4.6, 4.2, 2.1),
    row(1.5, 6.9, 6.6, 6.0, 3.0),
    row(2.0, 7.8, 7.5, 6.8, 3.4),
    row(3.0, 11.0, 10.6, 9.6, 4.8),
    row(5.0, 17.5, 16.7, 15.2, 7.6),
    row(7.5, 25.3, 24.2, 22.0, 11.0),
    row(10.0, 32.2, 30.8, 28.0, 14.0),
    row(15.0, 48.3, 46.2, 42.0, 21.0),
    row(20.0, 62.1, 59.4, 54.0, 27.0),
    row(25.0, 78.2, 74.8, 68.0, 34.0),
    row(30.0, 92.0, 88.0, 80.0, 40.0),
    row(40.0, 120.0, 114.0, 104.0, 52.0),
    row(50.0, 150.0, 143.0, 130.0, 65.0),
    row(60.0, 177.0, 169.0, 154.0, 77.0),
    row(75.0, 221.0, 211.0, 192.0, 96.0),
    row(100.0, 285.0, 273.0, 248.0, 124.0),
    row(125.0, 359.0, 343.0, 312.0, 156.0),
    row(150.0, 414.0, 396.0, 360.0, 180.0),
    row(200.0, 552.0, 528.0, 480.0, 240.0),
];

/// Amperes at a rated horsepower, on a straight line between two rows; `None` outside 0.5 to 200 hp.
#[must_use]
pub fn amperes_at(hp: f64, voltage: RatedVoltage) -> Option<f64> {
    let pair = TABLE.windows(2).find(|pair| hp >= pair[0].hp && hp <= pair[1].hp)?;
    let (least, most) = (pair[0].amperes(voltage), pair[1].amperes(voltage));
    Some(least + (most - least) * (hp - pair[0].hp) / (pair[1].hp - pair[0].hp))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_keep_the_ratios_of_their_voltages() {
        for row in TABLE {
            assert!((row.v230 / row.v460 - 2.0).abs() < 1e-12, "{row:?}");
            assert!((row.v200 / row.v230 / 1.15 - 1.0).abs() < 0.015, "{row:?}");
            assert!((row.v208 / row.v230 / 1.10 - 1.0).abs() < 0.015, "{row:?}");
        }
        for pair in TABLE.windows(2) {
            assert!(pair[0].hp < pair[1].hp && pair[0].v460 < pair[1].v460);
        }
    }
    #[test]
    fn rows_are_met_and_between_them_the_line_is_straight() {
        for row in TABLE {
            assert_eq!(amperes_at(row.hp, RatedVoltage::V460), Some(row.v460));
        }
        assert_eq!(amperes_at(12.5, RatedVoltage::V230), Some(35.0));
        for hp in [0.49, 200.1, f64::NAN] {
            assert_eq!(amperes_at(hp, RatedVoltage::V230), None, "{hp}");
        }
    }
}
