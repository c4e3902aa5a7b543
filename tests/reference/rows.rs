//! A row of a reference file, and how an answer is compared with it.

use super::Answer;

/// One published value.
#[derive(Debug, Clone)]
pub struct Row {
    pub id: String,
    pub quantity: String,
    pub inputs: String,
    pub expected: String,
    pub unit: String,
    pub tolerance: Tolerance,
    pub origin: String,
}

/// How far an answer may lie from the published value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Tolerance {
    /// A table's own figure. Twelve digits, since a change of units may cost the last bits of a float.
    Exact,
    /// In the unit of the value.
    Absolute(f64),
    /// A share of the value.
    Relative(f64),
}

impl Tolerance {
    fn parse(text: &str) -> Result<Self, String> {
        let number = |text: &str| text.trim().parse::<f64>().map_err(|_| format!("tolerance {text:?}"));
        match text.strip_suffix('%') {
            _ if text == "exact" => Ok(Self::Exact),
            Some(percent) => Ok(Self::Relative(number(percent)? / 100.0)),
            None => Ok(Self::Absolute(number(text)?)),
        }
    }

    /// How an answer misses the expected value, or `None` where it does not.
    pub fn miss(self, expected: &str, answer: &Answer) -> Option<String> {
        let number = match answer {
            Answer::Text(text) => {
                return (text != expected).then(|| format!("{text}, expected {expected}"));
            }
            Answer::Number(number) => *number,
        };
        let Ok(target) = expected.parse::<f64>() else {
            return Some(format!("{number}, expected {expected}"));
        };
        let allowed = match self {
            Self::Exact => 1e-12 * target.abs(),
            Self::Absolute(width) => width,
            Self::Relative(share) => share * target.abs(),
        };
        let off = (number - target).abs();
        // Written so that NaN misses.
        if off <= allowed { None } else { Some(format!("{number}, expected {expected}, off by {off:e}")) }
    }
}

/// The rows of a reference file.
pub fn rows(text: &str) -> Result<Vec<Row>, String> {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let columns: Vec<String> = reader.headers().map_err(|e| e.to_string())?.iter().map(str::to_owned).collect();
    if columns != ["id", "quantity", "inputs", "expected", "unit", "tolerance", "origin"] {
        return Err(format!("columns {columns:?}"));
    }
    reader
        .records()
        .map(|record| {
            let record = record.map_err(|e| e.to_string())?;
            let cell = |column: usize| record[column].to_owned();
            Ok(Row {
                id: cell(0),
                quantity: cell(1),
                inputs: cell(2),
                expected: cell(3),
                unit: cell(4),
                tolerance: Tolerance::parse(&record[5])?,
                origin: cell(6),
            })
        })
        .collect()
}

/// The published values that are not walked: id and reason.
pub fn not_walked(text: &str) -> Result<Vec<(String, String)>, String> {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    reader
        .records()
        .map(|record| record.map(|r| (r[0].to_owned(), r[2].to_owned())).map_err(|e| e.to_string()))
        .collect()
}

#[test]
fn each_kind_of_tolerance_can_miss() {
    let two = Answer::Number(2.0);
    assert_eq!(Tolerance::parse("exact").unwrap().miss("2", &two), None);
    assert!(Tolerance::parse("exact").unwrap().miss("2.000000001", &two).is_some());
    assert_eq!(Tolerance::parse("0.1").unwrap().miss("2.09", &two), None);
    assert!(Tolerance::parse("0.1").unwrap().miss("2.11", &two).is_some());
    assert_eq!(Tolerance::parse("1 %").unwrap().miss("2.019", &two), None);
    assert!(Tolerance::parse("1 %").unwrap().miss("2.03", &two).is_some());
    assert!(Tolerance::Absolute(1e9).miss("2", &Answer::Number(f64::NAN)).is_some());
    assert!(Tolerance::Exact.miss("none", &two).is_some());
    assert!(Tolerance::Exact.miss("2", &Answer::Text("none".into())).is_some());
    assert!(Tolerance::parse("about").is_err());
}
