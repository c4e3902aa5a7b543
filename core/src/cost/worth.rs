//! Whether a first cost pays: what it and its yearly sums are worth today, and when it has come back.

use super::annuity::present_value;
use crate::error::OutsideRange;
use crate::quantity::Money;

/// Longest series of years.
const MOST_YEARS: usize = 100;
/// Largest sum of money, either way.
const MOST_MONEY: f64 = 1e12;

/// Worth today of a first cost and a series of yearly sums: −C + Σ S_t/(1 + i)ᵗ.
///
/// # Units
/// `first` money spent today, below zero where money comes in; `yearly` money that comes in at the end of each year,
/// from the first on; `rate` discount as a share a year; the result money.
/// # Range
/// Sums to 10¹² either way; rate 0 to 1; to 100 years.
/// # Errors
/// [`OutsideRange`] names `first`, `yearly` (the sum at fault), `rate` or `years` (how many there are).
/// # Source
/// [nist-hb-135]: single present value of each year's sum.
/// # Example
/// ```
/// # use wellwright_core::{cost::worth::net_present_value, quantity::Money};
/// let worth = net_present_value(Money(83.0), &[44.0, 68.0, 135.0].map(Money), 0.20)?;
/// assert!((worth.0 - 79.01).abs() < 0.005);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn net_present_value(first: Money, yearly: &[Money], rate: f64) -> Result<Money, OutsideRange> {
    let first = OutsideRange::check("first", first.0, -MOST_MONEY, MOST_MONEY)?;
    let rate = OutsideRange::check("rate", rate, 0.0, 1.0)?;
    OutsideRange::check("years", yearly.len() as f64, 0.0, MOST_YEARS as f64)?;
    // From the last year back: each step brings what has gathered one year nearer.
    let mut worth = 0.0;
    for sum in yearly.iter().rev() {
        worth = (worth + OutsideRange::check("yearly", sum.0, -MOST_MONEY, MOST_MONEY)?) / (1.0 + rate);
    }
    Ok(Money(worth - first))
}

/// The same where every year brings the same sum: −C + S (1 − (1 + i)⁻ⁿ)/i.
///
/// # Units
/// As [`net_present_value`]; `years` a time in years, parts of a year too.
/// # Range
/// First cost to 10¹² either way; the rest as [`present_value`].
/// # Errors
/// [`OutsideRange`] names `first`, or as [`present_value`].
/// # Source
/// [nist-hb-135]: uniform present value.
pub fn level_net_present_value(first: Money, yearly: Money, rate: f64, years: f64) -> Result<Money, OutsideRange> {
    let first = OutsideRange::check("first", first.0, -MOST_MONEY, MOST_MONEY)?;
    Ok(present_value(yearly, rate, years)? - Money(first))
}

/// Years after which a level saving has brought back a first cost, interest left out: C/S; `None` where there is no
/// saving, or one so small that the years pass what a number holds.
///
/// # Units
/// `first` money spent today; `saving` money a year, below zero where the years cost more; the result years, which may
/// be more than the equipment lasts.
/// # Range
/// First cost 0 to 10¹²; saving to 10¹² either way.
/// # Errors
/// [`OutsideRange`] names `first` or `saving`.
/// # Source
/// [nist-hb-135]: simple payback.
pub fn simple_payback(first: Money, saving: Money) -> Result<Option<f64>, OutsideRange> {
    let first = OutsideRange::check("first", first.0, 0.0, MOST_MONEY)?;
    let saving = OutsideRange::check("saving", saving.0, -MOST_MONEY, MOST_MONEY)?;
    Ok((saving > 0.0).then(|| first / saving).filter(|years| years.is_finite()))
}

/// Years after which a level saving has brought back a first cost with its interest: −ln(1 − C i/S)/ln(1 + i), C/S
/// where i is 0; `None` where it never does: the saving does not come to the interest of the cost.
///
/// # Units
/// As [`simple_payback`]; `rate` discount as a share a year. The saving counts as it does in an annuity of parts of a
/// year, so that the worth of the whole is zero at the result.
/// # Range
/// As [`simple_payback`]; rate 0 to 1.
/// # Errors
/// [`OutsideRange`] names `first`, `saving` or `rate`.
/// # Source
/// [nist-hb-135]: discounted payback; the closed form follows from the uniform present value.
/// # Example
/// ```
/// # use wellwright_core::{cost::worth::discounted_payback, quantity::Money};
/// let years = discounted_payback(Money(55_000.0), Money(9_000.0), 0.05)?;
/// assert!(years.is_some_and(|years| (years - 7.47).abs() < 0.005));
/// assert_eq!(discounted_payback(Money(55_000.0), Money(2_750.0), 0.05)?, None);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn discounted_payback(first: Money, saving: Money, rate: f64) -> Result<Option<f64>, OutsideRange> {
    let i = OutsideRange::check("rate", rate, 0.0, 1.0)?;
    let Some(simple) = simple_payback(first, saving)? else { return Ok(None) };
    let interest = i * simple;
    if interest >= 1.0 {
        return Ok(None);
    }
    // Both factors come to 1 where the rate comes to nothing, and lose no digits on the way.
    let lost = if interest == 0.0 { 1.0 } else { -(-interest).ln_1p() / interest };
    let per_year = if i == 0.0 { 1.0 } else { i.ln_1p() / i };
    Ok(Some(simple * lost / per_year))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cost::annuity::annuity_factor;

    #[test]
    fn a_series_is_the_sum_of_its_years() {
        let sums = [-120.0, 300.0, 0.0, 250.0, 1e3];
        let plain: f64 = (1..).zip(sums).map(|(year, sum)| sum / 1.08_f64.powi(year)).sum();
        let worth = net_present_value(Money(400.0), &sums.map(Money), 0.08).unwrap();
        assert!((worth.0 - (plain - 400.0)).abs() < 1e-9, "{worth:?}");
        assert_eq!(net_present_value(Money(-5.0), &[], 0.08), Ok(Money(5.0)));
        assert_eq!(net_present_value(Money(3.0), &[Money(1.0); 3], 0.0), Ok(Money(0.0)));
    }

    // Definition: at the payback the annuity of the saving is worth the first cost.
    #[test]
    fn at_the_payback_nothing_is_left() {
        for percent in [1e-9, 0.25, 3.0, 6.0, 12.5] {
            let years = discounted_payback(Money(6000.0), Money(950.0), percent / 100.0).unwrap().unwrap();
            let factor = annuity_factor(percent / 100.0, years).unwrap();
            assert!((factor * 950.0 - 6000.0).abs() < 1e-8, "{percent} %: {years}");
            let left = level_net_present_value(Money(6000.0), Money(950.0), percent / 100.0, years).unwrap();
            assert!(left.0.abs() < 1e-8, "{left:?}");
        }
    }

    #[test]
    fn what_does_not_pay_says_so() {
        assert_eq!(simple_payback(Money(4000.0), Money(0.0)), Ok(None));
        assert_eq!(simple_payback(Money(4000.0), Money(-1.0)), Ok(None));
        assert_eq!(simple_payback(Money(1e12), Money(1e-320)), Ok(None));
        assert_eq!(simple_payback(Money(0.0), Money(10.0)), Ok(Some(0.0)));
        assert_eq!(discounted_payback(Money(1000.0), Money(100.0), 0.1), Ok(None));
        assert_eq!(discounted_payback(Money(1000.0), Money(100.0), 0.0), Ok(Some(10.0)));
        assert_eq!(discounted_payback(Money(1000.0), Money(100.0), 1e-320), Ok(Some(10.0)));
        assert_eq!(discounted_payback(Money(0.0), Money(100.0), 0.1), Ok(Some(0.0)));
        // Just above the interest it still pays, far out.
        assert!(discounted_payback(Money(1000.0), Money(100.001), 0.1).unwrap().is_some_and(|years| years > 100.0));
    }

    #[test]
    fn arguments_outside_are_named() {
        assert_eq!(net_present_value(Money(f64::NAN), &[], 0.1).unwrap_err().argument, "first");
        assert_eq!(net_present_value(Money(0.0), &[Money(f64::INFINITY)], 0.1).unwrap_err().argument, "yearly");
        assert_eq!(net_present_value(Money(0.0), &[Money(1.0); 101], 0.1).unwrap_err().argument, "years");
        assert_eq!(net_present_value(Money(0.0), &[], -0.1).unwrap_err().argument, "rate");
        assert_eq!(level_net_present_value(Money(1e13), Money(1.0), 0.1, 1.0).unwrap_err().argument, "first");
        assert_eq!(simple_payback(Money(-1.0), Money(1.0)).unwrap_err().argument, "first");
        assert_eq!(simple_payback(Money(1.0), Money(f64::NAN)).unwrap_err().argument, "saving");
        assert_eq!(discounted_payback(Money(1.0), Money(1.0), 1.1).unwrap_err().argument, "rate");
    }
}
