//! Tables in pasted text: lines of cells, and the numbers and heading words in them.
//!
//! Columns stand apart by tabs, else semicolons, else commas, else spaces. A comma in a number is a decimal comma where
//! it can't part columns. Lines that begin with `#` and empty lines are passed over.

/// Most characters of a cell that an error repeats.
const MOST_REPEATED: usize = 40;

/// Why a cell is no number. Cells are repeated up to 40 characters.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum CellFault {
    /// It is no number.
    NotANumber {
        /// The cell.
        cell: String,
    },
    /// Its comma may part thousands or decimals.
    Ambiguous {
        /// The cell.
        cell: String,
    },
}

/// The text, what parts its cells, and how its commas read.
#[derive(Debug, Clone, Copy)]
pub struct Cells<'a> {
    text: &'a str,
    separator: Option<char>,
    /// True where some number holds a comma that can't part thousands.
    decimal_comma: bool,
}

impl<'a> Cells<'a> {
    /// Looks how a text parts its cells.
    #[must_use]
    pub fn of(text: &'a str) -> Self {
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        let separator = ['\t', ';', ','].into_iter().find(|mark| lines(text).any(|(_, line)| line.contains(*mark)));
        let mut cells = Self { text, separator, decimal_comma: false };
        cells.decimal_comma =
            separator != Some(',') && cells.rows().any(|(_, row)| row.iter().any(|cell| decimal_for_sure(cell)));
        cells
    }

    /// What parts the cells; `None` where spaces do.
    #[must_use]
    pub fn separator(&self) -> Option<char> {
        self.separator
    }

    /// Lines of cells, numbered from 1, the cells trimmed.
    pub fn rows(&self) -> impl Iterator<Item = (usize, Vec<&'a str>)> + use<'a> {
        let separator = self.separator;
        lines(self.text).map(move |(number, line)| {
            let cells = match separator {
                Some(mark) => line.split(mark).map(str::trim).collect(),
                None => line.split_whitespace().collect(),
            };
            (number, cells)
        })
    }

    /// The number in a cell, plain or with an exponent.
    ///
    /// # Errors
    /// [`CellFault`] repeats the cell; so does a number that is not finite.
    pub fn number(&self, cell: &str) -> Result<f64, CellFault> {
        let not_a_number = || CellFault::NotANumber { cell: repeated(cell) };
        // What a float may be written as beside this, such as words, is no figure of a data sheet.
        if !cell.chars().all(|c| c.is_ascii_digit() || matches!(c, '+' | '-' | '.' | ',' | 'e' | 'E')) {
            return Err(not_a_number());
        }
        let value: f64 = match cell.split_once(',') {
            None => cell.parse().map_err(|_| not_a_number())?,
            Some(_) if cell.contains('.') || cell.matches(',').count() > 1 => return Err(not_a_number()),
            Some(_) if !self.decimal_comma && !decimal_for_sure(cell) => {
                return Err(CellFault::Ambiguous { cell: repeated(cell) });
            }
            Some((whole, part)) => format!("{whole}.{part}").parse().map_err(|_| not_a_number())?,
        };
        if value.is_finite() { Ok(value) } else { Err(not_a_number()) }
    }
}

/// The lines that are neither empty nor a note, numbered from 1.
fn lines(text: &str) -> impl Iterator<Item = (usize, &str)> {
    let numbered = text.lines().enumerate().map(|(index, line)| (index + 1, line));
    numbered.filter(|(_, line)| !line.trim().is_empty() && !line.trim_start().starts_with('#'))
}

/// True for a cell that begins as a number does; a line without such a cell is a heading.
#[must_use]
pub fn begins_a_number(cell: &str) -> bool {
    cell.trim_start_matches(['+', '-', '.', ',']).starts_with(|c: char| c.is_ascii_digit())
}

/// True for a number whose only comma can't part thousands: not three digits after it, or a leading zero before it.
fn decimal_for_sure(cell: &str) -> bool {
    let Some((whole, part)) = cell.split_once(',') else { return false };
    let digits = |text: &str| text.chars().all(|c| c.is_ascii_digit());
    let whole = whole.trim_start_matches(['+', '-']);
    digits(whole) && digits(part) && (part.len() != 3 || whole.len() > 3 || whole.is_empty() || whole.starts_with('0'))
}

/// The start of a cell, as long as an error repeats it.
#[must_use]
pub fn repeated(cell: &str) -> String {
    cell.chars().take(MOST_REPEATED).collect()
}

/// The cell of a heading in small letters, with a plain 3 for the power, as units are looked for in it.
#[must_use]
pub fn lowered(cell: &str) -> String {
    cell.to_lowercase().replace('³', "3").replace('^', "")
}

/// The words of a lowered heading, without brackets and quotes.
#[must_use]
pub fn words(lowered: &str) -> Vec<&str> {
    lowered.split(|c: char| c.is_whitespace() || "()[]{},:=\"'".contains(c)).filter(|word| !word.is_empty()).collect()
}

/// True for a lowered heading that is a bare name and can't hide a unit.
#[must_use]
pub fn is_bare(lowered: &str) -> bool {
    lowered.chars().all(|c| c.is_alphabetic() || c.is_whitespace() || matches!(c, '.' | '-' | '_'))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cells_part_by_the_first_mark_that_stands() {
        let cells = |text: &'static str| Cells::of(text).rows().map(|(_, row)| row.len()).collect::<Vec<_>>();
        assert_eq!(cells("a\tb;c\n\n# note\nd;e\tf"), [2, 2]);
        assert_eq!(cells("1,5;2,5\n3;4"), [2, 2]);
        assert_eq!(cells("1,5\n 3 , 4 "), [2, 2]);
        assert_eq!(cells("1 5\n 3   4 "), [2, 2]);
        assert_eq!(Cells::of("\u{feff}1 2").rows().next(), Some((1, vec!["1", "2"])));
    }

    #[test]
    fn a_number_is_read_or_refused() {
        let read = |text: &str, cell: &str| Cells::of(text).number(cell);
        assert_eq!(read("1;2", "-2.5e1"), Ok(-25.0));
        assert_eq!(read("1;2,5", "1,200"), Ok(1.2));
        assert_eq!(read("1;2", "1,200"), Err(CellFault::Ambiguous { cell: "1,200".into() }));
        for cell in ["", "x", "1e999", "NaN", "1,2,3", "1,2.3", "٣"] {
            assert_eq!(read("1;2", cell), Err(CellFault::NotANumber { cell: cell.into() }), "{cell}");
        }
    }

    #[test]
    fn headings_are_words() {
        assert_eq!(words(&lowered("Flow [M³/h]")), ["flow", "m3/h"]);
        assert!(is_bare(&lowered("Caudal máx.")) && !is_bare("q (psi)"));
        assert!(begins_a_number("-.5") && !begins_a_number("gpm 5"));
    }
}
