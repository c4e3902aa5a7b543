//! A smooth curve through points that never overshoots them.

/// A piecewise cubic through points, rising or falling between two points only as those two do (PCHIP).
///
/// On a piece of width h from (x₀, y₀) to (x₁, y₁) with slopes d₀ and d₁ and t = (x − x₀)/h:
/// y = (1 + 2t)(1 − t)² y₀ + t(1 − t)² h d₀ + t²(3 − 2t) y₁ + t²(t − 1) h d₁
///
/// The slope at an inner point is zero where the straight pieces beside it differ in direction, and else their weighted
/// harmonic mean; at an end it is the three-point estimate, held so that the curve keeps its shape. With two points the
/// curve is the straight line.
///
/// # Source
/// [fritsch-carlson-1980] for the condition of monotony, [fritsch-butland-1984] for the inner slopes, [moler-2004] for
/// the ends.
/// # Example
/// ```
/// # use wellwright_core::numeric::pchip::Pchip;
/// let curve = Pchip::through(&[(0.0, 4.0), (1.0, 3.0), (2.0, 0.0)]);
/// assert_eq!(curve.and_then(|curve| curve.value(1.0)), Some(3.0));
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Pchip {
    knots: Vec<Knot>,
}

#[derive(Debug, Clone, Copy, PartialEq)]
struct Knot {
    x: f64,
    y: f64,
    slope: f64,
}

impl Pchip {
    /// The curve through these points of x and y, or `None` where there is none: fewer than two points, x that does not
    /// rise from point to point, or numbers that are not finite or too large to take slopes of.
    #[must_use]
    pub fn through(points: &[(f64, f64)]) -> Option<Self> {
        let steps: Vec<Step> = points.windows(2).map(|pair| Step::between(pair[0], pair[1])).collect();
        let usable = steps.iter().all(|step| step.width > 0.0 && step.width.is_finite() && step.slope.is_finite());
        if steps.is_empty() || !usable {
            return None;
        }
        let knots: Vec<Knot> = points.iter().zip(slopes(&steps)).map(|(&(x, y), slope)| Knot { x, y, slope }).collect();
        knots.iter().all(|knot| knot.y.is_finite() && knot.slope.is_finite()).then_some(Self { knots })
    }

    /// The value at x, or `None` outside the points.
    #[must_use]
    pub fn value(&self, x: f64) -> Option<f64> {
        let (left, right) = self.piece(x)?;
        let width = right.x - left.x;
        let t = (x - left.x) / width;
        let rest = 1.0 - t;
        Some(
            rest * rest * ((1.0 + 2.0 * t) * left.y + t * width * left.slope)
                + t * t * ((3.0 - 2.0 * t) * right.y - rest * width * right.slope),
        )
    }

    /// The slope at x, or `None` outside the points.
    #[must_use]
    pub fn slope(&self, x: f64) -> Option<f64> {
        let (left, right) = self.piece(x)?;
        let width = right.x - left.x;
        let t = (x - left.x) / width;
        let rest = 1.0 - t;
        Some(
            6.0 * t * rest * (right.y - left.y) / width
                + rest * (1.0 - 3.0 * t) * left.slope
                + t * (3.0 * t - 2.0) * right.slope,
        )
    }

    /// The two knots that x lies between, ends included.
    fn piece(&self, x: f64) -> Option<(Knot, Knot)> {
        let (first, last) = (self.knots.first()?, self.knots.last()?);
        // Written so that NaN is outside.
        if !(x >= first.x && x <= last.x) {
            return None;
        }
        let right = self.knots.partition_point(|knot| knot.x <= x).clamp(1, self.knots.len() - 1);
        Some((self.knots[right - 1], self.knots[right]))
    }
}

/// A straight piece between two points.
#[derive(Debug, Clone, Copy)]
struct Step {
    width: f64,
    slope: f64,
}

impl Step {
    fn between(from: (f64, f64), to: (f64, f64)) -> Self {
        let width = to.0 - from.0;
        Self { width, slope: (to.1 - from.1) / width }
    }
}

/// The slope at each point, one more than there are steps.
fn slopes(steps: &[Step]) -> Vec<f64> {
    let [first, .., last] = steps else {
        return steps.iter().flat_map(|step| [step.slope; 2]).collect();
    };
    let inner = steps.windows(2).map(|pair| inner_slope(pair[0], pair[1]));
    let start = end_slope(*first, steps[1]);
    let end = end_slope(*last, steps[steps.len() - 2]);
    core::iter::once(start).chain(inner).chain(core::iter::once(end)).collect()
}

fn inner_slope(before: Step, after: Step) -> f64 {
    if !same_direction(before.slope, after.slope) {
        return 0.0;
    }
    let (w1, w2) = (2.0 * after.width + before.width, after.width + 2.0 * before.width);
    (w1 + w2) / (w1 / before.slope + w2 / after.slope)
}

fn end_slope(at_end: Step, next: Step) -> f64 {
    let estimate =
        ((2.0 * at_end.width + next.width) * at_end.slope - at_end.width * next.slope) / (at_end.width + next.width);
    if !same_direction(estimate, at_end.slope) {
        0.0
    } else if !same_direction(at_end.slope, next.slope) && estimate.abs() > 3.0 * at_end.slope.abs() {
        3.0 * at_end.slope
    } else {
        estimate
    }
}

/// True where both rise or both fall.
fn same_direction(a: f64, b: f64) -> bool {
    (a > 0.0 && b > 0.0) || (a < 0.0 && b < 0.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_no_curve_is_none() {
        let bad: [&[(f64, f64)]; 8] = [
            &[],
            &[(0.0, 1.0)],
            &[(0.0, 1.0), (0.0, 2.0)],
            &[(1.0, 1.0), (0.0, 2.0)],
            &[(0.0, f64::NAN), (1.0, 2.0)],
            &[(0.0, 1.0), (f64::INFINITY, 2.0)],
            &[(f64::MIN, 1.0), (f64::MAX, 2.0)],
            &[(0.0, f64::MIN), (1.0, f64::MAX)],
        ];
        for points in bad {
            assert_eq!(Pchip::through(points), None, "{points:?}");
        }
    }

    // Slopes by hand: the two straight pieces fall by 1 and by 3, so the middle is 2/(1 + 1/3) = 1.5.
    #[test]
    fn a_small_curve_by_hand() {
        let curve = Pchip::through(&[(0.0, 4.0), (1.0, 3.0), (2.0, 0.0)]).unwrap();
        assert_eq!(curve.slope(1.0), Some(-1.5));
        assert_eq!((curve.slope(0.0), curve.slope(2.0)), (Some(0.0), Some(-4.0)));
        // (1/4)(2·4 + 0) + (1/4)(2·3 + 1.5/2)
        assert_eq!(curve.value(0.5), Some(3.6875));
        assert_eq!(curve.value(-1e-9), None);
        assert_eq!(curve.value(2.0 + 1e-9), None);
        assert_eq!(curve.value(f64::NAN), None);
    }

    #[test]
    fn two_points_are_a_straight_line() {
        let curve = Pchip::through(&[(1.0, 2.0), (3.0, 8.0)]).unwrap();
        assert_eq!((curve.value(2.0), curve.slope(2.5)), (Some(5.0), Some(3.0)));
    }
}
