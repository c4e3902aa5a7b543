//! Numbers of cells. A column may hold another unit than what is read from it: percent for a share, kiloamperes for
//! amperes. The decimal point is moved in the text, so that a figure is rounded once and is read back bit for bit as it
//! was written.

use super::repeated;

/// Why a cell is no number that can be taken. Cells are repeated up to 40 characters.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum NumberFault {
    /// It is none: this.
    NotANumber(String),
    /// Its comma may part thousands or decimals: this.
    Ambiguous(String),
}

/// The number of a cell, its decimal point moved to the right by `places`.
///
/// # Errors
/// [`NumberFault`] repeats the cell.
pub fn number(cell: &str, decimal_comma: bool, places: i32) -> Result<f64, NumberFault> {
    let fault = || NumberFault::NotANumber(repeated(cell));
    // What a float may be written as beside this, such as words, is no figure of a data sheet.
    if !cell.chars().all(|c| c.is_ascii_digit() || matches!(c, '+' | '-' | '.' | ',' | 'e' | 'E')) {
        return Err(fault());
    }
    match cell.split_once(',') {
        None => moved(cell, places).ok_or_else(fault),
        Some((_, part)) if !decimal_comma || part.contains(',') || cell.contains('.') => Err(fault()),
        Some((whole, part)) if may_part_thousands(whole, part) => Err(NumberFault::Ambiguous(repeated(cell))),
        Some((whole, part)) => moved(&format!("{whole}.{part}"), places).ok_or_else(fault),
    }
}

fn may_part_thousands(whole: &str, part: &str) -> bool {
    let whole = whole.trim_start_matches(['+', '-']);
    let digits = |text: &str| text.chars().all(|c| c.is_ascii_digit());
    (1..=3).contains(&whole.len()) && !whole.starts_with('0') && part.len() == 3 && digits(whole) && digits(part)
}

/// The finite number of a text, its decimal point moved to the right by `places`.
fn moved(text: &str, places: i32) -> Option<f64> {
    let (digits, exponent) = text.split_once(['e', 'E']).unwrap_or((text, "0"));
    let exponent = exponent.parse::<i32>().ok()?.checked_add(places)?;
    let value: f64 = format!("{digits}e{exponent}").parse().ok()?;
    value.is_finite().then_some(value)
}

/// A number with its decimal point moved to the right by `places`; one that is not finite stays as it is.
#[must_use]
pub fn shifted(value: f64, places: i32) -> f64 {
    moved(&format!("{value:e}"), places).unwrap_or(value)
}

/// The shortest plain text that is read back as the number, the decimal point moved to the right by `places`.
#[must_use]
pub fn plain(value: f64, places: i32) -> String {
    let text = format!("{value:e}");
    let Some((digits, exponent)) = text.split_once('e') else { return text };
    let (sign, digits) = digits.strip_prefix('-').map_or(("", digits), |digits| ("-", digits));
    let digits = digits.replace('.', "");
    // Digits ahead of the point.
    let point = exponent.parse::<i32>().unwrap_or(0) + places + 1;
    let count = usize::try_from(point).unwrap_or(0);
    if digits == "0" {
        format!("{sign}0")
    } else if point <= 0 {
        format!("{sign}0.{}{digits}", "0".repeat(point.unsigned_abs() as usize))
    } else if count >= digits.len() {
        format!("{sign}{digits}{}", "0".repeat(count - digits.len()))
    } else {
        let (whole, part) = digits.split_at(count);
        format!("{sign}{whole}.{part}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn plain_text_has_no_exponent() {
        let cases: [(f64, i32, &str); 14] = [
            (0.955, 2, "95.5"),
            (0.954, 2, "95.4"),
            (0.07, 2, "7"),
            (0.009, 2, "0.9"),
            (0.0001, 2, "0.01"),
            (1.1, 2, "110"),
            (2.0, 2, "200"),
            (65_000.0, -3, "65"),
            (1.0, -3, "0.001"),
            (22_500.0, -3, "22.5"),
            (0.0, 2, "0"),
            (0.0, -3, "0"),
            (-12.5, 0, "-12.5"),
            (1e7, 0, "10000000"),
        ];
        for (value, places, text) in cases {
            assert_eq!(plain(value, places), text);
            assert_eq!(number(text, false, -places), Ok(value));
        }
        assert_eq!(plain(f64::NAN, 2), "NaN");
        assert_eq!(plain(f64::INFINITY, 2), "inf");
    }

    // Multiplied and divided by a hundred, about one figure in eight is another one after.
    #[test]
    fn every_share_is_read_back_bit_for_bit() {
        let mut share = 0.1;
        for _ in 0..20_000 {
            share = (share * 1.37 + 0.011) % 3.0;
            let text = plain(share, 2);
            assert_eq!(number(&text, false, -2).map(f64::to_bits), Ok(share.to_bits()), "{text}");
            assert_eq!(number(&plain(share, -3), false, 3).map(f64::to_bits), Ok(share.to_bits()));
        }
    }

    #[test]
    fn exponents_and_signs() {
        for (cell, value) in [("1e2", 100.0), ("+5", 5.0), ("5.", 5.0), (".5", 0.5), ("1.5E-1", 0.15), ("1e+1", 10.0)] {
            assert_eq!(number(cell, false, 0), Ok(value), "{cell}");
        }
        assert_eq!(number("9.55e1", false, -2), Ok(0.955));
        for cell in
            ["", ".", "e5", "1e", "1e5e5", "--1", "1-1", "1e999", "1e2147483647", "1e99999999999", "1.2.3", "1_0"]
        {
            assert_eq!(number(cell, true, 3), Err(NumberFault::NotANumber(cell.to_owned())), "{cell}");
        }
    }

    #[test]
    fn a_comma_is_decimal_where_it_can_be_nothing_else() {
        for (cell, value) in
            [("95,5", 95.5), ("0,125", 0.125), (",125", 0.125), ("1200,125", 1200.125), ("-1,5e1", -15.0)]
        {
            assert_eq!(number(cell, true, 0), Ok(value), "{cell}");
            assert_eq!(number(cell, false, 0), Err(NumberFault::NotANumber(cell.to_owned())));
        }
        for cell in ["1,200", "12,000", "-999,999"] {
            assert_eq!(number(cell, true, 0), Err(NumberFault::Ambiguous(cell.to_owned())));
        }
        for cell in ["1,200,000", "1.200,5", "1,200.5", ",", "1,5,"] {
            assert_eq!(number(cell, true, 0), Err(NumberFault::NotANumber(cell.to_owned())));
        }
    }
}
