//! Usual ratings of transformers, kVA: single-phase distribution, and three-phase for low voltage. Source:
//! [ieee-c57.12].

/// Single-phase distribution transformers, pole and pad, kVA.
pub const SINGLE_PHASE: [f64; 12] = [5.0, 10.0, 15.0, 25.0, 37.5, 50.0, 75.0, 100.0, 167.0, 250.0, 333.0, 500.0];

/// Three-phase transformers, kVA.
pub const THREE_PHASE: [f64; 12] = [3.0, 6.0, 9.0, 15.0, 30.0, 45.0, 75.0, 112.5, 150.0, 225.0, 300.0, 500.0];

/// The least rating of a list at or above this many kVA; equality serves.
#[must_use]
pub fn next_rating(ratings: &[f64], kva: f64) -> Option<f64> {
    ratings.iter().copied().find(|rating| *rating >= kva)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ratings_ascend_by_no_more_than_double_and_equality_serves() {
        for list in [SINGLE_PHASE, THREE_PHASE] {
            assert!(list.windows(2).all(|pair| pair[0] < pair[1] && pair[1] <= 2.0 * pair[0]), "{list:?}");
            assert_eq!(next_rating(&list, 75.0), Some(75.0));
            assert_eq!(next_rating(&list, 500.1), None);
            assert_eq!(next_rating(&list, f64::NAN), None);
        }
        assert_eq!(next_rating(&SINGLE_PHASE, 25.01), Some(37.5));
        assert_eq!(next_rating(&THREE_PHASE, 75.01), Some(112.5));
        // Three of the single-phase ones make a bank; the sums are those of the printed lists.
        assert_eq!(SINGLE_PHASE.iter().sum::<f64>(), 1567.5);
        assert_eq!(THREE_PHASE.iter().sum::<f64>(), 1470.5);
    }
}
