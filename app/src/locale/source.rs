//! Published sources by their keys, as a reader would look for them.

use super::words;

/// A source in words.
#[must_use]
pub fn source_text(key: &str) -> String {
    if let Some(part) = key.strip_prefix("nec-2023-") {
        return match part.strip_prefix("ch9-t") {
            Some(table) => (words().working.chapter_9)(table),
            None => (words().working.nec)(&paragraph(part)),
        };
    }
    match key {
        "practice" => words().working.practice.to_owned(),
        "grainger-stevenson-1994" => "Grainger, Stevenson: Power System Analysis, 1994".to_owned(),
        key => {
            let mut parts = key.split('-');
            let body = parts.next().unwrap_or_default().to_uppercase();
            let rest: Vec<&str> = parts.collect();
            match (body.as_str(), rest.as_slice()) {
                ("ASTM", [number]) => format!("{body} {}", number.to_uppercase()),
                (_, rest) => format!("{body} {}", rest.join("-")),
            }
        }
    }
}

/// A paragraph as the code writes it: keys have small letters without brackets.
fn paragraph(part: &str) -> String {
    let place = part.find(|c: char| c.is_ascii_alphabetic()).unwrap_or(part.len());
    let (number, letter) = part.split_at(place);
    match (number, letter) {
        (number, "") => number.to_owned(),
        ("310.15", letter) => format!("{number}({})(1)", letter.to_uppercase()),
        (number, letter) => format!("{number}({})", letter.to_uppercase()),
    }
}

#[cfg(test)]
mod tests {
    use super::source_text;

    #[test]
    fn keys_read_as_titles() {
        assert_eq!(source_text("nec-2023-310.16"), "NEC (NFPA 70), 2023 edition, 310.16");
        assert_eq!(source_text("nec-2023-ch9-t8"), "NEC (NFPA 70), 2023 edition, chapter 9, table 8");
        assert_eq!(source_text("nec-2023-110.14c"), "NEC (NFPA 70), 2023 edition, 110.14(C)");
        assert_eq!(source_text("nec-2023-310.15b"), "NEC (NFPA 70), 2023 edition, 310.15(B)(1)");
        assert_eq!(source_text("ieee-141-1993"), "IEEE 141-1993");
        assert_eq!(source_text("astm-b230"), "ASTM B230");
        assert_eq!(source_text("iec-60028"), "IEC 60028");
        assert_eq!(source_text("practice"), "Common practice, no single source");
    }
}
