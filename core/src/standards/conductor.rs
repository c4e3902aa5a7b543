//! NEC chapter 9, table 8: conductor properties, uncoated stranded conductors, direct-current resistance at 75 °C.
//!
//! Source: [nec-2023-ch9-t8]. Insulation thickness: type THW, NEC table 310.4(A) [nec-2023-310.4], from memory.

use crate::quantity::{Area, Celsius, Length, OhmsPerLength, circular_mils, inches, ohms_per_kilofoot};
use serde::{Deserialize, Serialize};

/// Metal of a conductor.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Metal {
    /// Annealed copper.
    Copper,
    /// Aluminum.
    Aluminum,
}

/// A conductor size that the tables list, 14 AWG to 500 kcmil.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[allow(missing_docs)] // the names say it all
pub enum Size {
    #[serde(rename = "14 AWG")]
    Awg14,
    #[serde(rename = "12 AWG")]
    Awg12,
    #[serde(rename = "10 AWG")]
    Awg10,
    #[serde(rename = "8 AWG")]
    Awg8,
    #[serde(rename = "6 AWG")]
    Awg6,
    #[serde(rename = "4 AWG")]
    Awg4,
    #[serde(rename = "3 AWG")]
    Awg3,
    #[serde(rename = "2 AWG")]
    Awg2,
    #[serde(rename = "1 AWG")]
    Awg1,
    #[serde(rename = "1/0 AWG")]
    Awg1_0,
    #[serde(rename = "2/0 AWG")]
    Awg2_0,
    #[serde(rename = "3/0 AWG")]
    Awg3_0,
    #[serde(rename = "4/0 AWG")]
    Awg4_0,
    #[serde(rename = "250 kcmil")]
    Kcmil250,
    #[serde(rename = "300 kcmil")]
    Kcmil300,
    #[serde(rename = "350 kcmil")]
    Kcmil350,
    #[serde(rename = "400 kcmil")]
    Kcmil400,
    #[serde(rename = "500 kcmil")]
    Kcmil500,
}

impl Size {
    /// Every listed size, ascending.
    pub const ALL: [Self; 18] = [
        Self::Awg14,
        Self::Awg12,
        Self::Awg10,
        Self::Awg8,
        Self::Awg6,
        Self::Awg4,
        Self::Awg3,
        Self::Awg2,
        Self::Awg1,
        Self::Awg1_0,
        Self::Awg2_0,
        Self::Awg3_0,
        Self::Awg4_0,
        Self::Kcmil250,
        Self::Kcmil300,
        Self::Kcmil350,
        Self::Kcmil400,
        Self::Kcmil500,
    ];

    /// The size's bare name as the trade writes it: `14`, `4/0`, `250`.
    #[must_use]
    pub fn designation(self) -> &'static str {
        ["14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0", "250", "300", "350", "400", "500"]
            [self as usize]
    }

    /// What the designation counts in: `AWG` or `kcmil`.
    #[must_use]
    pub fn gauge(self) -> &'static str {
        if self <= Self::Awg4_0 { "AWG" } else { "kcmil" }
    }

    /// The row of table 8.
    #[must_use]
    pub fn row(self) -> &'static Row {
        &TABLE_8[self as usize]
    }

    /// The smallest listed size whose table 8 area is at least this, or `None` beyond the list.
    #[must_use]
    pub fn with_area_at_least(cmil: f64) -> Option<Self> {
        Self::ALL.into_iter().find(|size| size.row().cmil >= cmil)
    }
}

/// One row of table 8.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Area, circular mils.
    pub cmil: f64,
    /// Wires in the strand.
    pub wires: u8,
    /// Overall diameter of the bare strand, inches.
    pub diameter_in: f64,
    /// Resistance, uncoated copper, Ω/1000 ft at 75 °C.
    pub copper: f64,
    /// Resistance, aluminum, Ω/1000 ft at 75 °C.
    pub aluminum: f64,
    /// Insulation thickness, type THW, inches.
    pub insulation_in: f64,
}

impl Row {
    /// Area of metal.
    #[must_use]
    pub fn area(&self) -> Area {
        circular_mils(self.cmil)
    }
    /// Resistance at 75 °C.
    #[must_use]
    pub fn resistance(&self, metal: Metal) -> OhmsPerLength {
        ohms_per_kilofoot(match metal {
            Metal::Copper => self.copper,
            Metal::Aluminum => self.aluminum,
        })
    }
    /// Diameter of the bare strand.
    #[must_use]
    pub fn diameter(&self) -> Length {
        inches(self.diameter_in)
    }
    /// Diameter over the insulation.
    #[must_use]
    pub fn insulated_diameter(&self) -> Length {
        inches(self.diameter_in + 2.0 * self.insulation_in)
    }
}

const fn row(cmil: f64, wires: u8, diameter_in: f64, copper: f64, aluminum: f64, insulation_in: f64) -> Row {
    Row { cmil, wires, diameter_in, copper, aluminum, insulation_in }
}

/// Resistances of solid copper, Ω/1000 ft at 75 °C, 14 to 8 AWG. Drop cable is stranded; these only show how far off a
/// solid value would be.
pub const SOLID_COPPER: [(Size, f64); 4] =
    [(Size::Awg14, 3.07), (Size::Awg12, 1.93), (Size::Awg10, 1.21), (Size::Awg8, 0.764)];

/// Temperature of the conductors that the table's resistances hold for.
pub const TABLE_8_AT: Celsius = Celsius(75.0);

/// Table 8, in the order of [`Size::ALL`].
#[allow(clippy::approx_constant)] // 3.14 is 14 AWG's resistance
pub const TABLE_8: [Row; 18] = [
    row(4_110.0, 7, 0.073, 3.14, 5.17, 0.045),
    row(6_530.0, 7, 0.092, 1.98, 3.25, 0.045),
    row(10_380.0, 7, 0.116, 1.24, 2.04, 0.045),
    row(16_510.0, 7, 0.146, 0.778, 1.28, 0.060),
    row(26_240.0, 7, 0.184, 0.491, 0.808, 0.060),
    row(41_740.0, 7, 0.232, 0.308, 0.508, 0.060),
    row(52_620.0, 7, 0.260, 0.245, 0.403, 0.060),
    row(66_360.0, 7, 0.292, 0.194, 0.319, 0.060),
    row(83_690.0, 19, 0.332, 0.154, 0.253, 0.080),
    row(105_600.0, 19, 0.372, 0.122, 0.201, 0.080),
    row(133_100.0, 19, 0.418, 0.0967, 0.159, 0.080),
    row(167_800.0, 19, 0.470, 0.0766, 0.126, 0.080),
    row(211_600.0, 19, 0.528, 0.0608, 0.100, 0.080),
    row(250_000.0, 37, 0.575, 0.0515, 0.0847, 0.095),
    row(300_000.0, 37, 0.630, 0.0429, 0.0707, 0.095),
    row(350_000.0, 37, 0.681, 0.0367, 0.0605, 0.095),
    row(400_000.0, 37, 0.728, 0.0321, 0.0529, 0.095),
    row(500_000.0, 37, 0.813, 0.0258, 0.0424, 0.095),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_is_whole_and_ordered() {
        assert_eq!(TABLE_8.len(), Size::ALL.len());
        for (index, size) in Size::ALL.into_iter().enumerate() {
            assert_eq!(size as usize, index);
        }
        for pair in TABLE_8.windows(2) {
            assert!(pair[0].cmil < pair[1].cmil && pair[0].diameter_in < pair[1].diameter_in);
            assert!(pair[0].copper > pair[1].copper && pair[0].aluminum > pair[1].aluminum);
        }
        let sum: f64 = TABLE_8.iter().map(|row| row.cmil).sum();
        assert!((sum - 2_726_280.0).abs() < 0.5, "{sum}");
    }

    // Resistance times area is a property of the metal alone, so each cell proves its neighbors: IACS copper at 75 °C
    // with 2 % lay is 12.86 Ω·kcmil/kft, 61 % IACS aluminum 21.18. The printed three figures leave 0.6 %.
    #[test]
    fn each_row_has_the_resistivity_of_its_metal() {
        for row in TABLE_8 {
            let (copper, aluminum) = (row.copper * row.cmil / 1e3, row.aluminum * row.cmil / 1e3);
            assert!((copper / 12.865 - 1.0).abs() < 0.006, "{row:?}: {copper}");
            assert!((aluminum / 21.185 - 1.0).abs() < 0.006, "{row:?}: {aluminum}");
        }
    }

    #[test]
    fn equality_of_area_passes_and_a_hair_more_does_not() {
        assert_eq!(Size::with_area_at_least(52_620.0), Some(Size::Awg3));
        assert_eq!(Size::with_area_at_least(52_620.1), Some(Size::Awg2));
        assert_eq!(Size::with_area_at_least(500_001.0), None);
    }
}
