//! NEC 240.6(A): standard ampere ratings of fuses and inverse-time circuit breakers. Source: [nec-2023-240.6].

/// The standard ratings, A.
pub const STANDARD_RATINGS: [f64; 37] = [
    15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0, 110.0, 125.0, 150.0, 175.0, 200.0,
    225.0, 250.0, 300.0, 350.0, 400.0, 450.0, 500.0, 600.0, 700.0, 800.0, 1000.0, 1200.0, 1600.0, 2000.0, 2500.0,
    3000.0, 4000.0, 5000.0, 6000.0,
];

/// The next standard rating at or above this many amperes, or `None` beyond 6,000 A.
#[must_use]
pub fn next_standard_rating(amperes: f64) -> Option<f64> {
    STANDARD_RATINGS.into_iter().find(|rating| *rating >= amperes)
}

/// The largest standard rating at or below this many amperes, or `None` below 15 A.
#[must_use]
pub fn standard_rating_below(amperes: f64) -> Option<f64> {
    STANDARD_RATINGS.into_iter().rev().find(|rating| *rating <= amperes)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ratings_ascend_and_equality_passes() {
        assert!(STANDARD_RATINGS.windows(2).all(|pair| pair[0] < pair[1]));
        assert_eq!(next_standard_rating(60.0), Some(60.0));
        assert_eq!(next_standard_rating(60.01), Some(70.0));
        assert_eq!(next_standard_rating(6000.1), None);
        assert_eq!(next_standard_rating(f64::NAN), None);
        assert_eq!(standard_rating_below(60.0), Some(60.0));
        assert_eq!(standard_rating_below(999.0), Some(800.0));
        assert_eq!(standard_rating_below(14.9), None);
        assert_eq!(standard_rating_below(f64::NAN), None);
    }
}
