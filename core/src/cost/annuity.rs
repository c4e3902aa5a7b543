//! What a yearly sum is worth today.

use crate::error::OutsideRange;
use crate::quantity::Money;

/// Worth today of one unit of money at the end of each year: (1 − (1 + i)⁻ⁿ)/i; n where i is 0.
///
/// # Units
/// `rate` discount as a share a year, 0.06 for 6 %; `years` a time in years; the result years.
/// # Range
/// Rate 0 to 1; years 0 to 100, parts of a year too.
/// # Errors
/// [`OutsideRange`] names `rate` or `years`.
/// # Source
/// [nist-hb-135]: uniform present value.
/// # Example
/// ```
/// # use wellwright_core::cost::annuity::annuity_factor;
/// assert!((annuity_factor(0.03, 20.0)? - 14.877).abs() < 5e-4);
/// assert_eq!(annuity_factor(0.0, 15.0)?, 15.0);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn annuity_factor(rate: f64, years: f64) -> Result<f64, OutsideRange> {
    let i = OutsideRange::check("rate", rate, 0.0, 1.0)?;
    let n = OutsideRange::check("years", years, 0.0, 100.0)?;
    // The form by logarithms loses no digits where the rate is next to nothing.
    Ok(if i == 0.0 { n } else { -(-n * i.ln_1p()).exp_m1() / i })
}

/// Level yearly sum that a unit of money spent today comes to: i/(1 − (1 + i)⁻ⁿ).
///
/// # Units
/// As [`annuity_factor`]; the result 1/years.
/// # Range
/// Rate 0 to 1; years 0.01 to 100.
/// # Errors
/// [`OutsideRange`] names `rate` or `years`.
/// # Source
/// [nist-hb-135]: uniform capital recovery.
pub fn capital_recovery(rate: f64, years: f64) -> Result<f64, OutsideRange> {
    OutsideRange::check("years", years, 0.01, 100.0)?;
    Ok(1.0 / annuity_factor(rate, years)?)
}

/// Worth today of a yearly sum whose amount stays the same, prices of energy included.
///
/// # Units
/// `yearly` money at the end of each year; the result money.
/// # Range
/// Yearly sum to 10¹² either way; the rest as [`annuity_factor`].
/// # Errors
/// [`OutsideRange`] names `yearly`, or as [`annuity_factor`].
/// # Source
/// [nist-hb-135].
pub fn present_value(yearly: Money, rate: f64, years: f64) -> Result<Money, OutsideRange> {
    let yearly = OutsideRange::check("yearly", yearly.0, -1e12, 1e12)?;
    Ok(Money(yearly * annuity_factor(rate, years)?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_the_sum_of_the_single_years() {
        for percent in [0.0, 0.25, 3.0, 6.0, 12.5, 100.0] {
            let rate: f64 = percent / 100.0;
            let mut sum = 0.0;
            for year in 1..=60 {
                sum += (1.0 + rate).powi(-year);
                let factor = annuity_factor(rate, f64::from(year)).unwrap();
                assert!((factor / sum - 1.0).abs() < 1e-12, "{percent} % {year}: {factor} {sum}");
                assert!((capital_recovery(rate, f64::from(year)).unwrap() * factor - 1.0).abs() < 1e-12);
            }
        }
    }

    #[test]
    fn a_rate_next_to_nothing_comes_to_no_rate() {
        for rate in [1e-300, 1e-16, 1e-12] {
            assert!((annuity_factor(rate, 15.0).unwrap() - 15.0).abs() < 1e-9, "{rate}");
        }
        assert_eq!(annuity_factor(0.06, 0.0), Ok(0.0));
        // A long life comes to 1/i.
        assert!((annuity_factor(0.5, 100.0).unwrap() - 2.0).abs() < 1e-12);
    }

    #[test]
    fn it_falls_with_the_rate_and_rises_with_the_years() {
        for step in 1..100 {
            let at = |rate: f64, years: f64| annuity_factor(rate, years).unwrap();
            assert!(at(f64::from(step) / 100.0, 15.0) < at(f64::from(step - 1) / 100.0, 15.0));
            assert!(at(0.06, f64::from(step)) > at(0.06, f64::from(step - 1)));
        }
    }

    #[test]
    fn arguments_outside_are_named() {
        assert_eq!(annuity_factor(-0.01, 15.0).unwrap_err().argument, "rate");
        assert_eq!(annuity_factor(0.06, f64::NAN).unwrap_err().argument, "years");
        assert_eq!(capital_recovery(0.06, 0.0).unwrap_err().argument, "years");
        assert_eq!(present_value(Money(950.0), 2.0, 10.0).unwrap_err().argument, "rate");
        assert_eq!(present_value(Money(f64::NAN), 0.06, 10.0).unwrap_err().argument, "yearly");
    }
}
