//! Published sources by their keys, as a reader would look for them.

use super::words;

/// A source in words.
#[must_use]
pub fn source_text(key: &str) -> String {
    if let Some(part) = key.strip_prefix("nec-2023-") {
        return (words().working.nec)(&part.replace("ch9-t", "9, T"));
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

#[cfg(test)]
mod tests {
    use super::source_text;

    #[test]
    fn keys_read_as_titles() {
        assert_eq!(source_text("nec-2023-310.16"), "NEC (NFPA 70), 2023 edition, 310.16");
        assert_eq!(source_text("nec-2023-ch9-t8"), "NEC (NFPA 70), 2023 edition, 9, T8");
        assert_eq!(source_text("ieee-141-1993"), "IEEE 141-1993");
        assert_eq!(source_text("astm-b230"), "ASTM B230");
        assert_eq!(source_text("iec-60028"), "IEC 60028");
        assert_eq!(source_text("practice"), "Common practice, no single source");
    }
}
