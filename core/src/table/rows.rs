//! The rows of the text, each with the line that it begins on.

use csv::{Reader, ReaderBuilder, StringRecord};

/// A row that can't be taken apart: it has more or fewer cells than the first, or a quote that is not closed or stands
/// within a cell.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Unreadable {
    /// The line of the text that it begins on, from 1.
    pub line: usize,
}

/// A row that is not blank.
pub struct Row {
    /// The line of the text that it begins on, from 1.
    pub line: usize,
    cells: StringRecord,
}

impl Row {
    /// The cells, trimmed.
    pub fn cells(&self) -> impl Iterator<Item = &str> {
        self.cells.iter().map(str::trim)
    }
}

/// The rows that are still to come.
pub struct Rows<'a> {
    text: &'a str,
    separator: u8,
    /// None for a blank text: most jobs have no tables, and a reader takes longer to make than much else of them.
    reader: Option<Reader<&'a [u8]>>,
    /// Cells of a row, once the first is read.
    width: Option<usize>,
    /// How far lines are counted: the byte, and its line.
    counted: (usize, usize),
}

impl<'a> Rows<'a> {
    /// The rows of a text, whatever its separator.
    #[must_use]
    pub fn of(text: &'a str) -> Self {
        let text = text.trim_start_matches('\u{feff}');
        let first = text.lines().find(|line| !line.trim().is_empty()).unwrap_or("");
        let separator = [b'\t', b';'].into_iter().find(|mark| first.as_bytes().contains(mark)).unwrap_or(b',');
        let reader = (!first.is_empty()).then(|| {
            ReaderBuilder::new().has_headers(false).flexible(true).delimiter(separator).from_reader(text.as_bytes())
        });
        Self { text, separator, reader, width: None, counted: (0, 1) }
    }

    /// The mark between cells.
    #[must_use]
    pub fn separator(&self) -> char {
        char::from(self.separator)
    }

    /// Whether a comma is free to stand in numbers.
    #[must_use]
    pub fn decimal_comma(&self) -> bool {
        self.separator != b','
    }

    /// The next row that is not blank.
    ///
    /// # Errors
    /// [`Unreadable`] names the line of a row that can't be taken apart.
    #[allow(clippy::should_implement_trait)] // it may fail
    pub fn next(&mut self) -> Result<Option<Row>, Unreadable> {
        loop {
            let from = self.at();
            let mut cells = StringRecord::new();
            let Some(reader) = &mut self.reader else { return Ok(None) };
            let more = reader.read_record(&mut cells);
            let raw = self.text.get(from..self.at()).unwrap_or("");
            // The reader passes over empty lines ahead of a row.
            let own = raw.trim_start_matches(['\r', '\n']);
            let line = self.line(from + raw.len() - own.len());
            if !more.map_err(|_| Unreadable { line })? {
                return Ok(None);
            }
            if !quotes_are_whole(own, self.separator) {
                return Err(Unreadable { line });
            }
            if cells.iter().all(|cell| cell.trim().is_empty()) {
                continue;
            }
            if *self.width.get_or_insert(cells.len()) != cells.len() {
                return Err(Unreadable { line });
            }
            return Ok(Some(Row { line, cells }));
        }
    }

    /// The byte that the reader has come to.
    fn at(&self) -> usize {
        let byte = self.reader.as_ref().map_or(0, |reader| reader.position().byte());
        usize::try_from(byte).unwrap_or(self.text.len())
    }

    /// The line of a byte that is not ahead of those asked for before.
    fn line(&mut self, byte: usize) -> usize {
        let bytes = self.text.as_bytes();
        let (from, line) = self.counted;
        let ends = |at: &usize| match bytes.get(*at) {
            Some(b'\n') => true,
            Some(b'\r') => bytes.get(at + 1) != Some(&b'\n'),
            _ => false,
        };
        self.counted = (byte, line + (from..byte).filter(ends).count());
        self.counted.1
    }
}

/// Whether every quote of a row opens a cell, closes it, or is one of two within it. The reader itself takes any.
fn quotes_are_whole(raw: &str, separator: u8) -> bool {
    enum At {
        Start,
        Bare,
        Quoted,
        Closed,
    }
    let mut at = At::Start;
    for byte in raw.bytes() {
        at = match (at, byte) {
            (At::Start | At::Closed, b'"') => At::Quoted,
            (At::Quoted, b'"') => At::Closed,
            (At::Quoted, _) => At::Quoted,
            (At::Bare, b'"') => return false,
            (_, b'\r' | b'\n') => At::Start,
            (_, byte) if byte == separator => At::Start,
            (At::Closed, _) => return false,
            (At::Start | At::Bare, _) => At::Bare,
        };
    }
    !matches!(at, At::Quoted)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn lines(text: &str) -> Vec<(usize, Vec<String>)> {
        let mut rows = Rows::of(text);
        let mut read = Vec::new();
        while let Some(row) = rows.next().unwrap() {
            read.push((row.line, row.cells().map(str::to_owned).collect()));
        }
        read
    }

    #[test]
    fn a_row_knows_its_line() {
        for end in ["\n", "\r\n", "\r"] {
            let text = ["", "a,b", "", "", "c,\"d", "e\"", ",", "f,g", ""].join(end);
            let read = lines(&text);
            let numbers: Vec<usize> = read.iter().map(|(line, _)| *line).collect();
            assert_eq!(numbers, [2, 5, 8], "{text:?}");
            assert_eq!(read[1].1, ["c".to_owned(), format!("d{end}e")]);
        }
        assert_eq!(lines("\u{feff}\u{feff}a\n b \nc")[1..], [(2, vec!["b".to_owned()]), (3, vec!["c".to_owned()])]);
        assert!(lines("").is_empty() && lines("\u{feff}\r\n \n").is_empty());
    }

    #[test]
    fn quotes_open_and_close_cells() {
        for raw in ["a,b", "\"a,b\",c", "\"a\"\"b\"", "\"\"", "\"\"\"\"", "\"a\r\nb\"\r\n", ""] {
            assert!(quotes_are_whole(raw, b','), "{raw}");
        }
        for raw in ["a,\"b", "a\"b\"", "\"a\"b", "\"a\" ,b", "\"\"\"", " \"a\""] {
            assert!(!quotes_are_whole(raw, b','), "{raw}");
        }
    }
}
