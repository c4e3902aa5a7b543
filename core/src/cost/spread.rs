//! How far a result may lie from what is expected, when what it rests on is known as low, expected and high.

use crate::error::OutsideRange;
use crate::numeric::pcg::Pcg32;

/// Largest figure, either way.
const MOST: f64 = 1e12;
/// Most estimates of a sample.
pub const MOST_ESTIMATES: usize = 20;
/// Least points of a sample.
pub const LEAST_POINTS: usize = 10;
/// Most points of a sample.
pub const MOST_POINTS: usize = 100_000;
/// Number of the generator's stream.
const STREAM: u64 = 54;

/// A figure as low, expected and high. What lies between is taken for a triangular distribution with its peak at the
/// expected.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Estimate {
    low: f64,
    expected: f64,
    high: f64,
}

impl Estimate {
    /// An estimate of three figures.
    ///
    /// # Units
    /// Any unit, the same for all three.
    /// # Range
    /// Low ≤ expected ≤ high, each to 10¹² either way; all three may be the same.
    /// # Errors
    /// [`OutsideRange`] names `low`, `high` (which bound the expected) or `expected`.
    /// # Source
    /// Definition.
    pub fn new(low: f64, expected: f64, high: f64) -> Result<Self, OutsideRange> {
        OutsideRange::check("low", low, -MOST, MOST)?;
        OutsideRange::check("high", high, low, MOST)?;
        OutsideRange::check("expected", expected, low, high)?;
        Ok(Self { low, expected, high })
    }

    /// The low figure.
    ///
    /// # Units
    /// As given.
    /// # Range
    /// To the expected one.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn low(self) -> f64 {
        self.low
    }

    /// The expected figure.
    ///
    /// # Units
    /// As given.
    /// # Range
    /// Between low and high.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn expected(self) -> f64 {
        self.expected
    }

    /// The high figure.
    ///
    /// # Units
    /// As given.
    /// # Range
    /// From the expected one.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn high(self) -> f64 {
        self.high
    }

    /// Mean of the distribution: (a + c + b)/3.
    ///
    /// # Units
    /// As given.
    /// # Range
    /// Between low and high.
    /// # Source
    /// [kotz-van-dorp-2004].
    #[must_use]
    pub fn mean(self) -> f64 {
        (self.low + self.expected + self.high) / 3.0
    }

    /// The figure that a share of the distribution lies below: a + √(p (b − a)(c − a)) to the peak,
    /// b − √((1 − p)(b − a)(b − c)) beyond.
    ///
    /// # Units
    /// `share` of all chances; the result as given.
    /// # Range
    /// Share 0 to 1.
    /// # Errors
    /// [`OutsideRange`] names `share`.
    /// # Source
    /// [kotz-van-dorp-2004].
    /// # Example
    /// ```
    /// # use wellwright_core::cost::spread::Estimate;
    /// // Half of a symmetric triangle lies below its peak.
    /// assert_eq!(Estimate::new(2.0, 3.0, 4.0)?.quantile(0.5)?, 3.0);
    /// # Ok::<(), wellwright_core::error::OutsideRange>(())
    /// ```
    pub fn quantile(self, share: f64) -> Result<f64, OutsideRange> {
        OutsideRange::check("share", share, 0.0, 1.0).map(|share| self.at(share))
    }

    /// The same for a share that was checked.
    fn at(self, share: f64) -> f64 {
        let Self { low, expected, high } = self;
        let (wide, below) = (high - low, expected - low);
        let found = if share * wide <= below {
            low + (share * wide * below).sqrt()
        } else {
            high - ((1.0 - share) * wide * (high - expected)).sqrt()
        };
        // Rounding may step over an end by the last bit.
        found.max(low).min(high)
    }
}

/// Points drawn from estimates; one number of each estimate a point.
#[derive(Debug, Clone, PartialEq)]
pub struct Sample {
    numbers: Vec<f64>,
    wide: usize,
}

impl Sample {
    /// The points.
    ///
    /// # Units
    /// As the estimates.
    /// # Range
    /// As many as were asked for.
    /// # Source
    /// Definition.
    pub fn points(&self) -> impl Iterator<Item = &[f64]> {
        self.numbers.chunks_exact(self.wide)
    }
}

/// A Latin hypercube sample: each estimate's chances are cut into as many equal parts as there are points, a number is
/// drawn within each part, and the parts of the estimates are matched by chance.
///
/// # Units
/// As the estimates.
/// # Range
/// 1 to 20 estimates, 10 to 100,000 points. The same seed gives the same sample on every machine.
/// # Errors
/// [`OutsideRange`] names `estimates` or `points` (how many).
/// # Source
/// [mckay-1979]; the order of the parts by [durstenfeld-1964]; chance by [oneill-2014].
pub fn latin_hypercube(estimates: &[Estimate], points: usize, seed: u64) -> Result<Sample, OutsideRange> {
    let wide = estimates.len();
    OutsideRange::check("estimates", wide as f64, 1.0, MOST_ESTIMATES as f64)?;
    OutsideRange::check("points", points as f64, LEAST_POINTS as f64, MOST_POINTS as f64)?;
    let mut chance = Pcg32::new(seed, STREAM);
    let mut numbers = vec![0.0; wide * points];
    // Whole numbers to 100,000, which fit.
    let mut parts: Vec<u32> = (0..points as u32).collect();
    for (column, estimate) in estimates.iter().enumerate() {
        for left in (1..points).rev() {
            parts.swap(left, chance.below(left as u32 + 1) as usize);
        }
        for (part, point) in parts.iter().zip(numbers.chunks_exact_mut(wide)) {
            point[column] = estimate.at((f64::from(*part) + chance.share()) / points as f64);
        }
    }
    Ok(Sample { numbers, wide })
}

/// Percentiles of numbers: x₍⌊h⌋₎ + (h − ⌊h⌋)(x₍⌊h⌋₊₁₎ − x₍⌊h⌋₎) with h = (n − 1) p + 1, type 7.
///
/// # Units
/// `numbers` in any unit and order; `shares` of them that lie below; the results as the numbers.
/// # Range
/// 1 number and more, each to 10¹⁵ either way; shares 0 to 1.
/// # Errors
/// [`OutsideRange`] names `numbers` (how many), `number` or `share`.
/// # Source
/// [hyndman-fan-1996], type 7.
pub fn percentiles<const N: usize>(numbers: &[f64], shares: [f64; N]) -> Result<[f64; N], OutsideRange> {
    OutsideRange::check("numbers", numbers.len() as f64, 1.0, 1e9)?;
    for number in numbers {
        check_number(*number)?;
    }
    for share in shares {
        OutsideRange::check("share", share, 0.0, 1.0)?;
    }
    let mut sorted = numbers.to_vec();
    sorted.sort_unstable_by(f64::total_cmp);
    Ok(shares.map(|share| between(&sorted, share)))
}

fn check_number(number: f64) -> Result<f64, OutsideRange> {
    OutsideRange::check("number", number, -1e15, 1e15)
}

/// The percentile of sorted numbers.
fn between(sorted: &[f64], share: f64) -> f64 {
    let last = sorted.len().saturating_sub(1);
    let place = share * last as f64;
    let below = (place.floor() as usize).min(last);
    let above = (below + 1).min(last);
    let [low, high] = [below, above].map(|index| sorted.get(index).copied().unwrap_or(0.0));
    low + (place - below as f64) * (high - low)
}

/// Where a result lies when its estimates vary.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread {
    /// A tenth of the results lie below.
    pub low10: f64,
    /// Half of them do.
    pub median: f64,
    /// Nine tenths do.
    pub high90: f64,
    /// Their mean.
    pub mean: f64,
}

/// Spread of a result over a Latin hypercube sample of its estimates.
///
/// # Units
/// `result` of a point, the estimates in their order; the spread in its unit.
/// # Range
/// As [`latin_hypercube`]; results to 10¹⁵ either way. The estimates count as independent of one another.
/// # Errors
/// [`OutsideRange`] as [`latin_hypercube`], `number` for a result, or what the result itself refuses.
/// # Source
/// [mckay-1979], [hyndman-fan-1996].
/// # Example
/// ```
/// # use wellwright_core::cost::spread::{Estimate, range_of};
/// // Invented: hours a year and kilowatts.
/// let estimates = [Estimate::new(800.0, 1200.0, 2000.0)?, Estimate::new(9.0, 10.0, 12.0)?];
/// let energy = range_of(&estimates, 1000, 1, |point| Ok(point[0] * point[1]))?;
/// assert!(energy.low10 < energy.median && energy.median < energy.high90);
/// // Independent means multiply.
/// assert!((energy.mean / (estimates[0].mean() * estimates[1].mean()) - 1.0).abs() < 0.01);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn range_of(
    estimates: &[Estimate],
    points: usize,
    seed: u64,
    mut result: impl FnMut(&[f64]) -> Result<f64, OutsideRange>,
) -> Result<Spread, OutsideRange> {
    let sample = latin_hypercube(estimates, points, seed)?;
    let results = sample.points().map(|point| result(point).and_then(check_number)).collect::<Result<Vec<_>, _>>()?;
    let [low10, median, high90] = percentiles(&results, [0.1, 0.5, 0.9])?;
    Ok(Spread { low10, median, high90, mean: results.iter().sum::<f64>() / results.len() as f64 })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn estimate(low: f64, expected: f64, high: f64) -> Estimate {
        Estimate::new(low, expected, high).unwrap()
    }

    #[test]
    fn the_ends_and_the_peak_of_a_triangle() {
        for (low, peak, high) in [(0.0, 1.0, 4.0), (-2.0, -2.0, 5.0), (3.0, 7.0, 7.0), (2.0, 2.0, 2.0)] {
            let figure = estimate(low, peak, high);
            assert_eq!((figure.quantile(0.0), figure.quantile(1.0)), (Ok(low), Ok(high)));
            if high > low {
                let share = (peak - low) / (high - low);
                assert!((figure.quantile(share).unwrap() - peak).abs() < 1e-12);
            }
        }
        assert_eq!(estimate(1.0, 2.0, 6.0).mean(), 3.0);
    }

    // The property that names the method: one number of each part for every estimate.
    #[test]
    fn each_part_is_drawn_once() {
        let level = estimate(0.0, 5.0, 10.0);
        let sample = latin_hypercube(&[level, level, level], 50, 9).unwrap();
        for column in 0..3 {
            let mut numbers: Vec<f64> = sample.points().map(|point| point[column]).collect();
            numbers.sort_unstable_by(f64::total_cmp);
            for (part, number) in numbers.into_iter().enumerate() {
                let [from, to] = [part, part + 1].map(|edge| level.quantile(edge as f64 / 50.0).unwrap());
                assert!(number >= from && number <= to, "{number} outside {from} to {to}");
            }
        }
        assert_eq!(sample, latin_hypercube(&[level; 3], 50, 9).unwrap());
        assert_ne!(sample, latin_hypercube(&[level; 3], 50, 10).unwrap());
    }

    // Columns matched by chance: no correlation beyond three times its standard deviation, 1/√(n − 1).
    #[test]
    fn estimates_do_not_follow_one_another() {
        let unit = estimate(0.0, 0.5, 1.0);
        let sample = latin_hypercube(&[unit; 6], 1000, 1).unwrap();
        let mean = |f: &dyn Fn(&[f64]) -> f64| sample.points().map(f).sum::<f64>() / 1000.0;
        for a in 0..6 {
            for b in 0..a {
                let together = mean(&|point| (point[a] - 0.5) * (point[b] - 0.5));
                let [own_a, own_b] = [a, b].map(|c| mean(&|point| (point[c] - 0.5).powi(2)));
                let correlation = together / (own_a * own_b).sqrt();
                assert!(correlation.abs() < 3.0 / 999_f64.sqrt(), "{a}, {b}: {correlation}");
            }
        }
    }

    #[test]
    fn arguments_outside_are_named() {
        let wrong = |low, expected, high| Estimate::new(low, expected, high).unwrap_err().argument;
        assert_eq!(wrong(f64::NAN, 1.0, 2.0), "low");
        assert_eq!(wrong(1.0, 0.5, 2.0), "expected");
        assert_eq!(wrong(1.0, 1.5, 0.5), "high");
        assert_eq!(wrong(1.0, 2.5, 2.0), "expected");
        assert_eq!(wrong(1.0, 2.0, f64::INFINITY), "high");
        let one = [estimate(0.0, 1.0, 2.0)];
        assert_eq!(one[0].quantile(1.01).unwrap_err().argument, "share");
        assert_eq!(latin_hypercube(&[], 100, 1).unwrap_err().argument, "estimates");
        assert_eq!(latin_hypercube(&[one[0]; 21], 100, 1).unwrap_err().argument, "estimates");
        assert_eq!(latin_hypercube(&one, 9, 1).unwrap_err().argument, "points");
        assert_eq!(latin_hypercube(&one, 100_001, 1).unwrap_err().argument, "points");
        assert_eq!(percentiles(&[], [0.5]).unwrap_err().argument, "numbers");
        assert_eq!(percentiles(&[1.0, f64::NAN], [0.5]).unwrap_err().argument, "number");
        assert_eq!(percentiles(&[1.0], [f64::NAN]).unwrap_err().argument, "share");
        assert_eq!(range_of(&one, 100, 1, |_| Ok(f64::NAN)).unwrap_err().argument, "number");
    }
}
