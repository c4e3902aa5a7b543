//! Numbers as people type them: with thousands marked off, a decimal comma, fractions, small sums, a unit behind.

use super::arithmetic::sum;
use super::currency::{in_currency, without_sign};
use super::language::{Decimals, decimals};
use super::quantity::unit_name;
use wellwright_core::quantity::{Kind, Unit};

/// Why a text is not a number.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum NotRead {
    /// Marks that could be read as decimals or as thousands.
    TwoWays,
    /// Letters or signs that are no number.
    NotANumber,
    /// A number too large for any computer to hold.
    TooLarge,
    /// A division by zero.
    DividesByZero,
    /// A unit, known or not, that does not measure this.
    Unit(String),
}

/// What was read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Read {
    /// The number.
    pub value: f64,
    /// The unit typed behind it.
    pub unit: Option<Unit>,
    /// Whether the number was worked out, so that the result should be shown.
    pub worked_out: bool,
}

/// Longest text that is looked at.
const LONGEST: usize = 200;

/// Reads a figure of a kind; `None` for an empty field.
///
/// The sign before decimals is the one in force, yet where marks can be meant in one way only they are read so:
/// `12,5` is twelve and a half everywhere, and so is `1.234,5` one thousand and some. A unit of the kind may stand
/// behind the number.
pub fn read(text: &str, kind: Kind) -> Result<Option<Read>, NotRead> {
    if text.len() > LONGEST {
        return Err(NotRead::NotANumber);
    }
    let plain = typeset(text);
    let (number, unit) = split_unit(plain.trim(), kind)?;
    if number.is_empty() {
        return if unit.is_some() { Err(NotRead::NotANumber) } else { Ok(None) };
    }
    let with_point = with_point(number, decimals())?;
    let value = sum(&with_point)?;
    let worked_out = with_point.trim().parse::<f64>().is_err();
    Ok(Some(Read { value, unit, worked_out }))
}

/// The text in plain signs: typographic minus, times and divided, fractions in one letter, no-break spaces.
fn typeset(text: &str) -> String {
    let mut out = String::with_capacity(text.len() + 8);
    for letter in text.chars() {
        match letter {
            '\u{2212}' | '\u{2013}' => out.push('-'),
            '×' | '·' => out.push('*'),
            '÷' | '\u{2044}' | '\u{2215}' => out.push('/'),
            '¼' => out.push_str(" 1/4 "),
            '½' => out.push_str(" 1/2 "),
            '¾' => out.push_str(" 3/4 "),
            letter if letter.is_whitespace() => out.push(' '),
            letter => out.push(letter),
        }
    }
    out
}

/// Parts a number from the unit behind it, or before it where it is money.
fn split_unit(text: &str, kind: Kind) -> Result<(&str, Option<Unit>), NotRead> {
    let money = matches!(kind, Kind::Money | Kind::MoneyPerLength | Kind::MoneyPerMass);
    let dollars = if money { without_sign(text) } else { None };
    let text = dollars.unwrap_or(text);
    let starts = |letter: char| letter.is_alphabetic() || matches!(letter, '%' | '°' | '$');
    // The letter of an exponent stands between digits and belongs to the number.
    let exponent = |at: usize| {
        let (before, after) = (&text[..at], &text[at + 1..]);
        before.ends_with(|c: char| c.is_ascii_digit() || c == '.')
            && after.trim_start_matches(['+', '-']).starts_with(|c: char| c.is_ascii_digit())
    };
    let found =
        text.char_indices().find(|(at, letter)| starts(*letter) && !(matches!(letter, 'e' | 'E') && exponent(*at)));
    let Some((at, _)) = found else { return Ok((text, None)) };
    let (number, name) = (text[..at].trim_end(), text[at..].trim());
    if !number.contains(|c: char| c.is_ascii_digit()) {
        return Err(NotRead::NotANumber);
    }
    // `$9/lb`: the slash belongs to the unit.
    let (number, whole) = match (dollars, number.strip_suffix('/')) {
        (Some(_), Some(number)) => (number.trim_end(), format!("$/{name}")),
        _ => (number, name.to_owned()),
    };
    let mut units = Unit::ALL.into_iter().filter(|unit| unit.kind() == kind);
    match units.find(|unit| same_unit(unit_name(*unit), &in_currency(&whole))) {
        Some(unit) => Ok((number, Some(unit))),
        None if name.chars().all(|c| c.is_alphanumeric() || matches!(c, '%' | '°' | '$' | '/')) => {
            Err(NotRead::Unit(name.chars().take(12).collect()))
        }
        None => Err(NotRead::NotANumber),
    }
}

/// Whether two names stand for one unit: capitals and the degree sign do not matter.
fn same_unit(name: &str, typed: &str) -> bool {
    let bare = |text: &str| text.trim_start_matches('°').to_lowercase().replace('²', "2").replace('³', "3");
    !name.is_empty() && bare(name) == bare(typed)
}

/// Each number of a text with a point before its decimals and no marks between thousands.
fn with_point(text: &str, decimals: Decimals) -> Result<String, NotRead> {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    // Whether a space and three digits more would go on with the number before.
    let mut goes_on = false;
    while let Some(first) = rest.chars().next() {
        let length = rest.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ','))).unwrap_or(rest.len());
        if length > 0 {
            let number = &rest[..length];
            let digits = number.bytes().all(|byte| byte.is_ascii_digit());
            goes_on = digits && (goes_on || number.len() <= 3 && !number.starts_with('0'));
            out.push_str(&one_number(number, decimals)?);
            rest = &rest[length..];
            continue;
        }
        rest = &rest[first.len_utf8()..];
        let joins = first == ' ' && three_digits(rest);
        if joins && goes_on {
            continue;
        }
        // Three digits behind a space that mark no thousands: two numbers, or one with a slip.
        if joins && out.ends_with(|c: char| c.is_ascii_digit()) {
            return Err(NotRead::TwoWays);
        }
        goes_on = false;
        out.push(first);
    }
    Ok(out)
}

/// Whether a text begins with exactly three digits that are no part of a fraction.
fn three_digits(text: &str) -> bool {
    let digits = text.bytes().take_while(u8::is_ascii_digit).count();
    digits == 3 && !text[digits..].trim_start().starts_with('/')
}

/// One number, of digits, points and commas, with a point before its decimals.
fn one_number(text: &str, decimals: Decimals) -> Result<String, NotRead> {
    let (points, commas) = (text.matches('.').count(), text.matches(',').count());
    let (own, other) = (decimals.sign(), decimals.thousands());
    let thousands = |mark: char| marks_thousands(text.split(own).next().unwrap_or_default(), mark);
    match (points, commas) {
        (0, 0) => Ok(text.to_owned()),
        // Both signs: the one that comes last and once stands before decimals.
        (1.., 1..) => {
            let last = if text.rfind('.') > text.rfind(',') { '.' } else { ',' };
            let first = if last == '.' { ',' } else { '.' };
            let (whole, fraction) = text.split_once(last).unwrap_or((text, ""));
            if fraction.contains(['.', ',']) || !marks_thousands(whole, first) {
                return Err(NotRead::TwoWays);
            }
            Ok(format!("{}.{fraction}", whole.replace(first, "")))
        }
        // Only the sign in force before decimals.
        _ if text.contains(own) => {
            if text.matches(own).count() == 1 {
                Ok(text.replace(own, "."))
            } else if marks_thousands(text, own) {
                Err(NotRead::TwoWays)
            } else {
                Err(NotRead::NotANumber)
            }
        }
        // Only the other sign: thousands where it can mark them, decimals where it can't.
        _ if thousands(other) => Ok(text.replace(other, "")),
        _ if text.matches(other).count() == 1 => Ok(text.replace(other, ".")),
        _ => Err(NotRead::TwoWays),
    }
}

/// Whether a mark parts digits into thousands: one to three first, not starting with zero, then threes.
fn marks_thousands(text: &str, mark: char) -> bool {
    let mut groups = text.split(mark);
    let first = groups.next().unwrap_or_default();
    let digits = |group: &str| group.bytes().all(|byte| byte.is_ascii_digit());
    (1..=3).contains(&first.len())
        && digits(first)
        && !first.starts_with('0')
        && groups.all(|group| group.len() == 3 && digits(group))
}

#[cfg(test)]
mod tests {
    use super::super::language::{Language, speak};
    use super::*;

    fn value(text: &str) -> Result<Option<f64>, NotRead> {
        read(text, Kind::Length).map(|read| read.map(|read| read.value))
    }

    #[test]
    fn numbers_are_read() {
        let cases = [
            ("620", 620.0),
            (" 7.5 ", 7.5),
            ("1,234.5", 1234.5),
            ("12,000", 12_000.0),
            ("12,5", 12.5),
            ("0,125", 0.125),
            ("1.234,5", 1234.5),
            ("1,234,567", 1_234_567.0),
            ("\u{2212}40", -40.0),
            ("-3", -3.0),
            ("+5", 5.0),
            (".5", 0.5),
            ("5.", 5.0),
            ("1e3", 1000.0),
            ("1e308", 1e308),
            ("1\u{a0}000", 1000.0),
            ("3/4", 0.75),
            ("12.5*2", 25.0),
            ("12,5 × 2", 25.0),
            ("7½", 7.5),
            ("½", 0.5),
            ("7 1/2", 7.5),
            ("430+41,7", 471.7),
            ("7-1/2", 7.5),
            ("12 345 678", 12_345_678.0),
            ("1 234,5", 1234.5),
        ];
        for (text, expected) in cases {
            assert_eq!(value(text), Ok(Some(expected)), "{text}");
        }
        assert_eq!(value(""), Ok(None));
        assert_eq!(value("   "), Ok(None));
    }

    #[test]
    fn with_the_decimal_comma_in_force_a_point_marks_thousands() {
        speak(Language::Spanish, Decimals::Comma);
        for (text, expected) in [
            ("1.234", 1234.0),
            ("1,234", 1.234),
            ("1.234,5", 1234.5),
            ("1,234.5", 1234.5),
            ("7.5", 7.5),
            ("12,5*2", 25.0),
        ] {
            assert_eq!(value(text), Ok(Some(expected)), "{text}");
        }
        speak(Language::English, Decimals::Point);
    }

    #[test]
    fn a_unit_behind_is_read() {
        let read = |text, kind| super::read(text, kind).map(|read| read.map(|read| (read.value, read.unit)));
        assert_eq!(read("620 ft", Kind::Length), Ok(Some((620.0, Some(Unit::Foot)))));
        assert_eq!(read("189m", Kind::Length), Ok(Some((189.0, Some(Unit::Meter)))));
        assert_eq!(read("7 1/2 HP", Kind::Power), Ok(Some((7.5, Some(Unit::Horsepower)))));
        assert_eq!(read("45 c", Kind::Temperature), Ok(Some((45.0, Some(Unit::DegreeCelsius)))));
        assert_eq!(read("90 m3/h", Kind::Flow), Ok(Some((90.0, Some(Unit::CubicMeterPerHour)))));
        assert_eq!(read("4.1 bar", Kind::Pressure), Ok(Some((4.1, Some(Unit::Bar)))));
        assert_eq!(read("$900", Kind::Money), Ok(Some((900.0, None))));
        assert_eq!(read("$0.5/ft", Kind::MoneyPerLength), Ok(Some((0.5, Some(Unit::DollarPerFoot)))));
        assert_eq!(read("0.5 $/ft", Kind::MoneyPerLength), Ok(Some((0.5, Some(Unit::DollarPerFoot)))));
        assert_eq!(read("5 %", Kind::Share), Ok(Some((5.0, Some(Unit::Percent)))));
        assert_eq!(read("620 A", Kind::Length), Err(NotRead::Unit("A".into())));
        assert_eq!(read("12 furlongs", Kind::Length), Err(NotRead::Unit("furlongs".into())));
    }

    #[test]
    fn a_result_is_told_from_a_plain_number() {
        let worked = |text| read(text, Kind::Length).map(|read| read.is_some_and(|read| read.worked_out));
        for (text, out) in [
            ("620", false),
            ("-5", false),
            ("1e-3", false),
            ("3/4", true),
            ("7-1", true),
            ("7½", true),
            ("1,234", false),
        ] {
            assert_eq!(worked(text), Ok(out), "{text}");
        }
    }

    #[test]
    fn what_is_no_number_is_refused_by_reason() {
        let cases = [
            ("abc", NotRead::NotANumber),
            ("nan", NotRead::NotANumber),
            ("NaN", NotRead::NotANumber),
            ("inf", NotRead::NotANumber),
            ("1.2.3", NotRead::NotANumber),
            ("e", NotRead::NotANumber),
            (".", NotRead::NotANumber),
            ("1,23,456", NotRead::TwoWays),
            ("1.234.567", NotRead::TwoWays),
            ("1234,567.8", NotRead::TwoWays),
            ("a,b", NotRead::NotANumber),
            ("22.5 230", NotRead::TwoWays),
            ("0 500", NotRead::TwoWays),
            ("1234 567", NotRead::TwoWays),
            ("½½", NotRead::NotANumber),
            ("½7", NotRead::NotANumber),
            ("12 500/3", NotRead::NotANumber),
            ("1e999", NotRead::TooLarge),
            ("3/0", NotRead::DividesByZero),
            ("<script>", NotRead::NotANumber),
            ("<b>9</b>", NotRead::NotANumber),
        ];
        for (text, reason) in cases {
            assert_eq!(value(text), Err(reason), "{text}");
        }
        assert_eq!(value(&"9".repeat(1000)), Err(NotRead::NotANumber));
    }
}
