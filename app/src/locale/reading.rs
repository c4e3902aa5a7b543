//! Numbers as people type them.

/// Why a text is not a number.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NotRead {
    /// A comma that could mark decimals or thousands.
    Comma,
    /// Letters or signs that are no number.
    NotANumber,
    /// A number too large for any computer to hold.
    TooLarge,
}

/// Reads a number; `None` for an empty field.
///
/// Spaces are ignored, thousands may be marked off by commas as in `1,234.5`, and a typographic minus counts as a minus.
/// A comma that marks no thousands is refused: `12,5` could be read two ways.
pub fn read(text: &str) -> Result<Option<f64>, NotRead> {
    let plain: String =
        text.chars().filter(|c| !c.is_whitespace()).map(|c| if c == '\u{2212}' { '-' } else { c }).collect();
    if plain.is_empty() {
        return Ok(None);
    }
    let plain = if plain.contains(',') { without_thousands(&plain)? } else { plain };
    // The parser also takes words such as `inf` and `nan`; a person who types letters means something else.
    if !plain.chars().all(|c| matches!(c, '0'..='9' | '.' | '-' | '+' | 'e' | 'E')) {
        return Err(NotRead::NotANumber);
    }
    match plain.parse::<f64>() {
        Ok(value) if value.is_finite() => Ok(Some(value)),
        Ok(_) => Err(NotRead::TooLarge),
        Err(_) => Err(NotRead::NotANumber),
    }
}

fn without_thousands(text: &str) -> Result<String, NotRead> {
    let (whole, fraction) = text.split_once('.').map_or((text, ""), |(whole, rest)| (whole, rest));
    let digits = whole.strip_prefix(['-', '+']).unwrap_or(whole);
    let mut groups = digits.split(',');
    let first = groups.next().unwrap_or_default();
    let all_digits = |group: &str| group.bytes().all(|byte| byte.is_ascii_digit());
    let marked = (1..=3).contains(&first.len())
        && all_digits(first)
        && !fraction.contains(',')
        && groups.all(|group| group.len() == 3 && all_digits(group));
    if marked {
        Ok(text.replace(',', ""))
    } else if text.chars().all(|c| c.is_ascii_digit() || matches!(c, ',' | '.' | '-' | '+')) {
        Err(NotRead::Comma)
    } else {
        Err(NotRead::NotANumber)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_read() {
        let cases = [
            ("620", 620.0),
            (" 7.5 ", 7.5),
            ("1,234.5", 1234.5),
            ("12,000", 12_000.0),
            ("\u{2212}40", -40.0),
            ("-3", -3.0),
            ("+5", 5.0),
            (".5", 0.5),
            ("5.", 5.0),
            ("1e3", 1000.0),
            ("1e308", 1e308),
            ("1\u{a0}000", 1000.0),
        ];
        for (text, value) in cases {
            assert_eq!(read(text), Ok(Some(value)), "{text}");
        }
        assert_eq!(read(""), Ok(None));
        assert_eq!(read("   "), Ok(None));
    }

    #[test]
    fn what_is_no_number_is_refused_by_reason() {
        let cases = [
            ("abc", NotRead::NotANumber),
            ("12 ft", NotRead::NotANumber),
            ("nan", NotRead::NotANumber),
            ("NaN", NotRead::NotANumber),
            ("inf", NotRead::NotANumber),
            ("--3", NotRead::NotANumber),
            ("1.2.3", NotRead::NotANumber),
            ("e", NotRead::NotANumber),
            (".", NotRead::NotANumber),
            ("12,5", NotRead::Comma),
            ("1,23,456", NotRead::Comma),
            ("1234,567.8", NotRead::Comma),
            ("1.234,5", NotRead::Comma),
            ("a,b", NotRead::NotANumber),
            ("1e999", NotRead::TooLarge),
            ("<script>", NotRead::NotANumber),
        ];
        for (text, reason) in cases {
            assert_eq!(read(text), Err(reason), "{text}");
        }
    }
}
