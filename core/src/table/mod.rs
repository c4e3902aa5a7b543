//! Tables of text, as a spreadsheet writes them: rows and cells, numbers, and words that are no formula.
//!
//! The first row names the columns, in any order and in small or large letters. Cells are parted by tabs where that row
//! holds one, else by semicolons where it holds one, else by commas. A mark of the byte order ahead of the text is
//! passed over, and so is a row of blank cells.
//!
//! Numbers are plain or with an exponent. Where commas do not part the cells, a comma is a decimal comma, but one that
//! may part thousands, as in `1,200`, is refused. A quote stands around a whole cell or, within one, twice.
//!
//! A spreadsheet takes a cell that begins with `=`, `+`, `-` or `@`, plain or full-width, for a formula. Free text that
//! begins so is written with an apostrophe ahead of it, as is one that begins so behind apostrophes; one apostrophe
//! ahead of either is taken off when it is read. So every text is read back as it was, and none is a formula.

mod cells;
#[cfg(test)]
pub(crate) mod chance;
mod columns;
mod fault;
mod number;
mod rows;

pub use cells::Cells;
pub use columns::{ColumnError, ColumnFault, columns};
pub(crate) use fault::faults;
pub use number::{NumberFault, number, plain, shifted};
pub use rows::{Row, Rows, Unreadable};

/// Most characters of a cell that an error repeats.
const MOST_REPEATED: usize = 40;

/// As much of a cell as an error repeats.
#[must_use]
pub fn repeated(cell: &str) -> String {
    cell.chars().take(MOST_REPEATED).collect()
}

/// A character that may not stand in free text: it is not seen, and breaks the line or turns its direction.
#[must_use]
pub fn is_control(c: char) -> bool {
    c.is_control()
        || matches!(c, '\u{2028}' | '\u{2029}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}')
}

/// Whether a cell, behind any apostrophes, begins as a formula does.
fn like_a_formula(cell: &str) -> bool {
    cell.trim_start_matches('\'').starts_with(['=', '+', '-', '@', '＝', '＋', '－', '＠'])
}

/// The free text of a trimmed cell: without the apostrophe that keeps it from being a formula.
#[must_use]
pub fn text_of(cell: &str) -> &str {
    if like_a_formula(cell) { cell.strip_prefix('\'').unwrap_or(cell) } else { cell }
}

/// Free text on one line that is no formula to a spreadsheet.
#[must_use]
pub fn harmless(text: &str) -> String {
    let text = text.replace(is_control, " ");
    let text = text.trim();
    if like_a_formula(text) { format!("'{text}") } else { text.to_owned() }
}

/// The same as a cell, in quotes where it needs them.
#[must_use]
pub fn cell_of(text: &str, separator: char) -> String {
    quoted(&harmless(text), separator)
}

/// A cell, in quotes where the separator, a quote or the end of a line stands in it.
#[must_use]
pub fn quoted(cell: &str, separator: char) -> String {
    if cell.contains([separator, '"', '\n', '\r']) {
        format!("\"{}\"", cell.replace('"', "\"\""))
    } else {
        cell.to_owned()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn free_text_is_read_back_and_is_no_formula() {
        for text in ["=1+1", "+A", "-A", "@A", "＝A", "'=A", "''@A"] {
            let cell = cell_of(text, ',');
            assert_eq!((cell.as_str(), text_of(&cell)), (format!("'{text}").as_str(), text));
        }
        for text in ["'A", "A=1", "''", "a;b", "ñandú", ""] {
            assert_eq!((cell_of(text, ',').as_str(), text_of(text)), (text, text));
        }
        assert_eq!(cell_of(" =\"a\",\u{202e}b\n", ','), "\"'=\"\"a\"\", b\"");
        assert_eq!((cell_of("a,b", ';'), cell_of("a;b", ';')), ("a,b".to_owned(), "\"a;b\"".to_owned()));
        assert_eq!(repeated(&"é".repeat(99)), "é".repeat(40));
    }
}
