//! Where a lead lies in two surroundings: which of its two ampacities counts.
//!
//! The lowest ampacity counts for the whole of it, but for a short stretch in the warmer surroundings: no more than
//! 10 ft, and no more than a tenth of the rest.

use crate::quantity::{Length, feet};

/// Longest stretch in the warmer surroundings beside which the other ampacity counts.
const LONGEST_WARM_FEET: f64 = 10.0;
/// How often the rest must hold it.
const TENTHS: f64 = 10.0;

/// Shortest cooler stretch whose ampacity counts beside a warmer one; nothing beside one that is too long.
///
/// # Units
/// Two lengths.
/// # Range
/// Any length; equality passes.
/// # Source
/// [nec-2023-310.14]: the exception to the rule that the lowest ampacity counts. The tenth is taken of the cooler
/// stretch, as it was written before; later editions take it of the whole circuit, which allows a little more.
/// # Example
/// ```
/// # use wellwright_core::{cable::stretches::least_cool, quantity::feet};
/// assert_eq!(least_cool(feet(10.0)), Some(feet(100.0)));
/// assert_eq!(least_cool(feet(10.1)), None);
/// ```
#[must_use]
pub fn least_cool(warm: Length) -> Option<Length> {
    (warm <= feet(LONGEST_WARM_FEET)).then(|| TENTHS * warm)
}

/// Longest warmer stretch beside which the ampacity of a cooler one counts.
///
/// # Units
/// Two lengths.
/// # Range
/// Any length; equality passes.
/// # Source
/// [nec-2023-310.14]; as [`least_cool`].
#[must_use]
pub fn most_warm(cool: Length) -> Length {
    (cool / TENTHS).min(feet(LONGEST_WARM_FEET))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_is_the_other_read_backward() {
        for cool in [20.0, 55.0, 99.0, 100.0, 101.0, 1000.0] {
            let most = most_warm(feet(cool));
            assert!(least_cool(most * (1.0 - 1e-12)).unwrap() <= feet(cool), "{cool} ft");
            assert!(least_cool(most * (1.0 + 1e-12)).is_none_or(|least| least > feet(cool)), "{cool} ft");
        }
        assert_eq!((least_cool(feet(0.0)), most_warm(feet(0.0))), (Some(feet(0.0)), feet(0.0)));
    }
}
