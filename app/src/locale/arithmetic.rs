//! Small sums typed into a field: `3/4`, `12.5*2`, `7 1/2`, `7-1/2`, `(430+41.7)`.

use super::reading::NotRead;

/// Deepest nesting of brackets; a person needs two or three.
const DEEPEST: usize = 16;

/// A part of a sum.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Part {
    Number(f64),
    Sign(char),
    /// A minus close to the numbers on both sides.
    Dash,
}

/// The value of a sum whose numbers are written with a point. `+ - * / ( )` in the usual order; a whole number before a
/// proper fraction, as in `7 1/2` or, close together as the trade writes it, `7-1/2`, makes a mixed number.
pub fn sum(text: &str) -> Result<f64, NotRead> {
    let parts = parts(text)?;
    let mut reader = Reader { parts: &parts, at: 0 };
    let value = reader.terms(0)?;
    if reader.at < parts.len() {
        return Err(NotRead::NotANumber);
    }
    if value.is_finite() { Ok(value) } else { Err(NotRead::TooLarge) }
}

fn parts(text: &str) -> Result<Vec<Part>, NotRead> {
    let mut found = Vec::new();
    let mut rest = text.trim_start();
    let mut spaced = true;
    while let Some(first) = rest.chars().next() {
        let used = if first.is_ascii_digit() || first == '.' {
            let length = number_length(rest);
            let value: f64 = rest[..length].parse().map_err(|_| NotRead::NotANumber)?;
            if !value.is_finite() {
                return Err(NotRead::TooLarge);
            }
            found.push(Part::Number(value));
            length
        } else if first == '-' && !spaced && rest[1..].starts_with(|c: char| c.is_ascii_digit()) {
            found.push(Part::Dash);
            1
        } else if matches!(first, '+' | '-' | '*' | '/' | '(' | ')') {
            found.push(Part::Sign(first));
            1
        } else {
            return Err(NotRead::NotANumber);
        };
        let after = &rest[used..];
        rest = after.trim_start();
        spaced = rest.len() < after.len();
    }
    Ok(found)
}

/// Bytes of the number that a text begins with: digits, a point, an exponent that has digits.
fn number_length(text: &str) -> usize {
    let bytes = text.as_bytes();
    let digits = |from: usize| bytes[from..].iter().take_while(|byte| byte.is_ascii_digit()).count();
    let mut end = digits(0);
    if bytes.get(end) == Some(&b'.') {
        end += 1 + digits(end + 1);
    }
    if matches!(bytes.get(end), Some(b'e' | b'E')) {
        let signed = end + 1 + usize::from(matches!(bytes.get(end + 1), Some(b'+' | b'-')));
        let exponent = if signed <= bytes.len() { digits(signed) } else { 0 };
        if exponent > 0 {
            end = signed + exponent;
        }
    }
    end
}

struct Reader<'a> {
    parts: &'a [Part],
    at: usize,
}

impl Reader<'_> {
    fn sign(&mut self, among: &[char]) -> Option<char> {
        match self.parts.get(self.at) {
            Some(Part::Sign(sign)) if among.contains(sign) => {
                self.at += 1;
                Some(*sign)
            }
            Some(Part::Dash) if among.contains(&'-') => {
                self.at += 1;
                Some('-')
            }
            _ => None,
        }
    }

    fn terms(&mut self, depth: usize) -> Result<f64, NotRead> {
        if depth > DEEPEST {
            return Err(NotRead::NotANumber);
        }
        let mut value = self.factors(depth)?;
        while let Some(sign) = self.sign(&['+', '-']) {
            let next = self.factors(depth)?;
            value = if sign == '+' { value + next } else { value - next };
        }
        Ok(value)
    }

    fn factors(&mut self, depth: usize) -> Result<f64, NotRead> {
        let mut value = self.signed(depth, true)?;
        while let Some(sign) = self.sign(&['*', '/']) {
            // Below a stroke a mixed number could be meant in two ways.
            let next = self.signed(depth, sign == '*')?;
            if sign == '/' && next == 0.0 {
                return Err(NotRead::DividesByZero);
            }
            value = if sign == '*' { value * next } else { value / next };
        }
        Ok(value)
    }

    fn signed(&mut self, depth: usize, mixed: bool) -> Result<f64, NotRead> {
        match self.sign(&['+', '-']) {
            Some('-') => Ok(-self.single(depth, mixed)?),
            _ => self.single(depth, mixed),
        }
    }

    fn single(&mut self, depth: usize, mixed: bool) -> Result<f64, NotRead> {
        if self.sign(&['(']).is_some() {
            let value = self.terms(depth + 1)?;
            return self.sign(&[')']).map(|_| value).ok_or(NotRead::NotANumber);
        }
        let Some(Part::Number(value)) = self.parts.get(self.at).copied() else { return Err(NotRead::NotANumber) };
        self.at += 1;
        let fraction = match self.parts.get(self.at..) {
            Some(&[Part::Number(above), Part::Sign('/'), Part::Number(below), ..]) => Some((above, below, 3)),
            Some(&[Part::Dash, Part::Number(above), Part::Sign('/'), Part::Number(below), ..]) => {
                Some((above, below, 4))
            }
            _ => None,
        };
        match fraction.filter(|(above, below, _)| mixed && value.fract() == 0.0 && 0.0 < *above && above < below) {
            Some((above, below, used)) => {
                self.at += used;
                Ok(value + above / below)
            }
            None => Ok(value),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sums_follow_the_usual_order() {
        for (text, value) in [
            ("3/4", 0.75),
            ("12.5*2", 25.0),
            ("7 1/2", 7.5),
            ("-7 1/2", -7.5),
            ("2*7 1/2", 15.0),
            ("1+2*3", 7.0),
            ("(1+2)*3", 9.0),
            ("10-2-3", 5.0),
            ("8/2/2", 2.0),
            ("-3", -3.0),
            ("2*-3", -6.0),
            ("1e3", 1000.0),
            ("1e-3*2", 0.002),
            (".5+5.", 5.5),
            ("430 + 41.7", 471.7),
            ("7-1/2", 7.5),
            ("7 - 1/2", 6.5),
            ("7-3", 4.0),
            ("9-3/2", 7.5),
            ("1/2-1/4", 0.25),
        ] {
            let got = sum(text);
            assert!(got.clone().is_ok_and(|got| (got - value).abs() < 1e-12), "{text}: {got:?}");
        }
    }

    #[test]
    fn what_is_no_sum_is_refused_by_reason() {
        for text in [
            "", "+", "3/", "(3", "3)", "3 4", "1.5 1/2", "3**4", "3e", "e3", "2x3", "1..2", "7 3/2", "1/2 1/2",
            "12 500/3", "7 1/0",
        ] {
            assert_eq!(sum(text), Err(NotRead::NotANumber), "{text}");
        }
        assert_eq!(sum("3/0"), Err(NotRead::DividesByZero));
        assert_eq!(sum("1/(2-2)"), Err(NotRead::DividesByZero));
        assert_eq!(sum("1e999"), Err(NotRead::TooLarge));
        assert_eq!(sum("1e200*1e200"), Err(NotRead::TooLarge));
        assert_eq!(sum(&"(".repeat(10_000)), Err(NotRead::NotANumber));
    }
}
