//! Numbers as people write them.

use super::language;

/// A space that does not break a figure from its unit.
pub const NO_BREAK: char = '\u{a0}';
const MINUS: char = '\u{2212}';

/// A number with this many decimals and thousands marked off, by the way that is in force: `-1234.5` becomes
/// `−1,234.50`.
#[must_use]
pub fn grouped(value: f64, decimals: usize) -> String {
    let signs = language::decimals();
    let text = format!("{:.decimals$}", value.abs());
    let (whole, fraction) = text.split_once('.').map_or((text.as_str(), None), |(whole, rest)| (whole, Some(rest)));
    let mut out = String::with_capacity(text.len() + whole.len() / 3 + 4);
    let rounds_to_zero = text.bytes().all(|byte| matches!(byte, b'0' | b'.'));
    if value < 0.0 && !rounds_to_zero {
        out.push(MINUS);
    }
    for (index, digit) in whole.chars().enumerate() {
        if index > 0 && (whole.len() - index).is_multiple_of(3) {
            out.push(signs.thousands());
        }
        out.push(digit);
    }
    if let Some(fraction) = fraction {
        out.push(signs.sign());
        out.push_str(fraction);
    }
    out
}

/// A figure as it stands in a field: up to six significant digits, no trailing zeros, thousands marked off; from 1e9
/// up and below 1e-6 in powers of ten.
#[must_use]
pub fn figure(value: f64) -> String {
    figure_of(value, 6)
}

/// As [`figure`], with so many significant digits.
#[must_use]
pub fn figure_of(value: f64, digits: i32) -> String {
    if !value.is_finite() {
        return String::new();
    }
    let sign = language::decimals().sign();
    let size = value.abs();
    if size != 0.0 && !(1e-6..1e9).contains(&size) {
        let places = usize::try_from(digits - 1).unwrap_or(0);
        let text = format!("{value:.places$e}").replace('.', &sign.to_string()).replace('-', &MINUS.to_string());
        return match text.split_once('e') {
            Some((figure, power)) => format!("{}e{power}", without_last_zeros(figure, sign)),
            None => text,
        };
    }
    let magnitude = if size == 0.0 { 0 } else { size.log10().floor() as i32 };
    let decimals = usize::try_from(digits - 1 - magnitude).unwrap_or(0);
    without_last_zeros(&grouped(value, decimals), sign)
}

fn without_last_zeros(text: &str, sign: char) -> String {
    match text.split_once(sign) {
        Some((whole, fraction)) => {
            let fraction = fraction.trim_end_matches('0');
            if fraction.is_empty() { whole.to_owned() } else { format!("{whole}{sign}{fraction}") }
        }
        None => text.to_owned(),
    }
}

/// A number for another program: no marks between thousands, a plain minus, the decimal sign in force.
#[must_use]
pub fn plain(value: f64, decimals: usize) -> String {
    format!("{value:.decimals$}").replace('.', &language::decimals().sign().to_string())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_read_as_people_write_them() {
        let cases = [
            (1_234_567.0, 0, "1,234,567"),
            (999.995, 2, "1,000.00"),
            (-545.9, 0, "\u{2212}546"),
            (-0.2, 0, "0"),
            (0.0, 2, "0.00"),
            (100.0, 0, "100"),
        ];
        for (value, decimals, text) in cases {
            assert_eq!(grouped(value, decimals), text);
        }
    }

    #[test]
    fn figures_keep_what_was_typed() {
        let cases = [
            (620.0, "620"),
            (22.5, "22.5"),
            (0.78, "0.78"),
            (7.5, "7.5"),
            (1234.5, "1,234.5"),
            (188.976, "188.976"),
            (619.999_999_999_9, "620"),
            (0.0, "0"),
            (1e308, "1e308"),
            (-3.0, "\u{2212}3"),
            (1e-7, "1e\u{2212}7"),
            (6.000_000_000_000_001e-5, "0.00006"), // the roughness of plastic pipe, in inches
            (1.234_567_89e-8, "1.23457e\u{2212}8"),
            (1.234_567_89e12, "1.23457e12"),
        ];
        for (value, text) in cases {
            assert_eq!(figure(value), text);
        }
        assert_eq!(figure(f64::NAN), "");
    }
}
