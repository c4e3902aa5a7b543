//! A quadratic, and where it turns.

use core::ops::{Add, Mul};

/// c₀ + c₁ x + c₂ x².
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Quadratic(pub [f64; 3]);

impl Quadratic {
    /// A constant.
    #[must_use]
    pub const fn constant(value: f64) -> Self {
        Self([value, 0.0, 0.0])
    }

    /// A straight line.
    #[must_use]
    pub const fn line(value: f64, slope: f64) -> Self {
        Self([value, slope, 0.0])
    }

    /// The square of a straight line.
    #[must_use]
    pub fn square_of_line(value: f64, slope: f64) -> Self {
        Self([value * value, 2.0 * value * slope, slope * slope])
    }

    /// Its value.
    #[must_use]
    pub fn at(self, x: f64) -> f64 {
        let [constant, slope, bend] = self.0;
        (bend * x + slope) * x + constant
    }

    /// Where it turns: between there and either end it only rises, or only falls. Nothing for a straight line.
    #[must_use]
    pub fn turn(self) -> Option<f64> {
        let [_, slope, bend] = self.0;
        (bend != 0.0).then(|| -slope / (2.0 * bend)).filter(|at| at.is_finite())
    }
}

impl Add for Quadratic {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        let ([a, b, c], [d, e, f]) = (self.0, other.0);
        Self([a + d, b + e, c + f])
    }
}

impl Mul<f64> for Quadratic {
    type Output = Self;
    fn mul(self, by: f64) -> Self {
        Self(self.0.map(|coefficient| coefficient * by))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn its_values_are_those_of_its_parts() {
        let square = Quadratic::square_of_line(3.0, -2.0);
        let whole = square + Quadratic::line(1.0, 4.0) * 0.5 + Quadratic::constant(7.0);
        for x in [-5.0, 0.0, 1.5, 40.0] {
            assert_eq!(square.at(x), (3.0 - 2.0 * x) * (3.0 - 2.0 * x));
            assert_eq!(whole.at(x), square.at(x) + 0.5 + 2.0 * x + 7.0);
        }
        assert_eq!((square.turn(), Quadratic::line(1.0, 4.0).turn()), (Some(1.5), None));
        // So slight a bend turns nowhere that can be told.
        assert_eq!(Quadratic([0.0, 1e300, 1e-300]).turn(), None);
    }
}
