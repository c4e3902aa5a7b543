//! NEC tables 310.15(B)(1)(1) and 310.15(C)(1): ambient temperature correction on a 30 °C base, and adjustment for more
//! than three current-carrying conductors. Sources: [nec-2023-310.15b], [nec-2023-310.15c].

use super::ampacity::Rating;
use crate::quantity::Celsius;

/// Ambient correction factor of the band that the ambient falls in, or `None` where the table allows no current.
///
/// Between whole degrees the hotter band holds. Below the first band its factor holds.
#[must_use]
pub fn ambient_factor(ambient: Celsius, rating: Rating) -> Option<f64> {
    BANDS.iter().find(|band| ambient.0 <= band.up_to).and_then(|band| band.factors[rating as usize])
}

/// Adjustment factor for the number of current-carrying conductors together.
#[must_use]
pub fn bundle_factor(conductors: usize) -> f64 {
    match conductors {
        0..=3 => 1.0,
        4..=6 => 0.80,
        7..=9 => 0.70,
        10..=20 => 0.50,
        21..=30 => 0.45,
        31..=40 => 0.40,
        _ => 0.35,
    }
}

/// One row of the ambient table.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Band {
    /// Warmest ambient of the band, °C.
    pub up_to: f64,
    /// Factors for 60, 75 and 90 °C insulation.
    pub factors: [Option<f64>; 3],
}

const fn band(up_to: f64, c60: Option<f64>, c75: Option<f64>, c90: Option<f64>) -> Band {
    Band { up_to, factors: [c60, c75, c90] }
}

/// Table 310.15(B)(1)(1), up to 70 °C.
pub const BANDS: [Band; 13] = [
    band(10.0, Some(1.29), Some(1.20), Some(1.15)),
    band(15.0, Some(1.22), Some(1.15), Some(1.12)),
    band(20.0, Some(1.15), Some(1.11), Some(1.08)),
    band(25.0, Some(1.08), Some(1.05), Some(1.04)),
    band(30.0, Some(1.00), Some(1.00), Some(1.00)),
    band(35.0, Some(0.91), Some(0.94), Some(0.96)),
    band(40.0, Some(0.82), Some(0.88), Some(0.91)),
    band(45.0, Some(0.71), Some(0.82), Some(0.87)),
    band(50.0, Some(0.58), Some(0.75), Some(0.82)),
    band(55.0, Some(0.41), Some(0.67), Some(0.76)),
    band(60.0, None, Some(0.58), Some(0.71)),
    band(65.0, None, Some(0.47), Some(0.65)),
    band(70.0, None, Some(0.33), Some(0.58)),
];

#[cfg(test)]
mod tests {
    use super::*;

    // NEC equation 310.15(B)(1): F = √((Tc − Ta)/(Tc − 30)). The table rounds it at the hot end of each band.
    #[test]
    fn the_table_is_the_printed_rounding_of_its_own_formula() {
        for band in BANDS {
            for rating in [Rating::C60, Rating::C75, Rating::C90] {
                if let Some(factor) = band.factors[rating as usize] {
                    let formula = ((rating.celsius() - band.up_to) / (rating.celsius() - 30.0)).sqrt();
                    assert!((factor - formula).abs() <= 0.0055, "{band:?} {rating:?}: {formula}");
                }
            }
        }
    }

    #[test]
    fn bands_end_where_they_are_printed_to_end() {
        assert_eq!(ambient_factor(Celsius(40.0), Rating::C75), Some(0.88));
        assert_eq!(ambient_factor(Celsius(40.1), Rating::C75), Some(0.82));
        assert_eq!(ambient_factor(Celsius(-40.0), Rating::C75), Some(1.20));
        assert_eq!(ambient_factor(Celsius(60.0), Rating::C60), None);
        assert_eq!(ambient_factor(Celsius(70.1), Rating::C90), None);
    }
}
