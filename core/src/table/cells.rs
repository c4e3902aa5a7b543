//! A table as cells, so that one can be changed while the others stay as they were written.

use super::{Row, Rows, Unreadable, is_control, quoted};
use core::ops::Range;

/// The cells of a table, trimmed. Places of rows are counted from 0.
#[derive(Debug, Clone, PartialEq)]
pub struct Cells {
    separator: char,
    columns: Vec<String>,
    rows: Vec<Vec<String>>,
    lines: Vec<usize>,
}

impl Cells {
    /// The cells of a text; none for a blank one.
    ///
    /// # Errors
    /// [`Unreadable`] where the text can't be taken apart.
    pub fn of(text: &str) -> Result<Self, Unreadable> {
        let mut rows = Rows::of(text);
        let owned = |row: &Row| row.cells().map(str::to_owned).collect::<Vec<_>>();
        let mut cells = Self { separator: rows.separator(), columns: Vec::new(), rows: Vec::new(), lines: Vec::new() };
        match rows.next()? {
            Some(first) => cells.columns = owned(&first),
            None => cells.separator = ',',
        }
        while let Some(row) = rows.next()? {
            cells.rows.push(owned(&row));
            cells.lines.push(row.line);
        }
        Ok(cells)
    }

    /// The text of the cells, a line for each row; nothing where there is no row.
    #[must_use]
    pub fn text(&self) -> String {
        if self.rows.is_empty() {
            return String::new();
        }
        let cell = |cell: &String| quoted(cell, self.separator);
        let line =
            |cells: &Vec<String>| cells.iter().map(cell).collect::<Vec<_>>().join(&self.separator.to_string()) + "\n";
        core::iter::once(&self.columns).chain(&self.rows).map(line).collect()
    }

    /// How many rows there are, the first aside.
    #[must_use]
    pub fn count(&self) -> usize {
        self.rows.len()
    }

    /// A cell; blank where there is none.
    #[must_use]
    pub fn get(&self, row: usize, column: &str) -> &str {
        let cell = self.place(column).and_then(|place| self.rows.get(row)?.get(place));
        cell.map_or("", String::as_str)
    }

    /// The line of the text that a row begins on, as an error tells it; nothing for a row that is not there.
    #[must_use]
    pub fn line(&self, row: usize) -> Option<usize> {
        self.lines.get(row).copied()
    }

    /// Changes a cell; a column that was not there is added. A row that is not there is left alone.
    pub fn set(&mut self, row: usize, column: &'static str, value: &str) {
        let place = self.column(column);
        if let Some(cell) = self.rows.get_mut(row).and_then(|cells| cells.get_mut(place)) {
            value.replace(is_control, " ").trim().clone_into(cell);
        }
    }

    /// Puts a row of these cells ahead of a row, the others of it blank; at the end where there is no such row.
    pub fn insert(&mut self, row: usize, cells: &[(&'static str, &str)]) {
        for (column, _) in cells {
            self.column(column);
        }
        let row = row.min(self.rows.len());
        self.rows.insert(row, vec![String::new(); self.columns.len()]);
        for (column, value) in cells {
            self.set(row, column, value);
        }
    }

    /// Takes rows out.
    pub fn remove(&mut self, rows: Range<usize>) {
        let rows = rows.start.min(self.rows.len())..rows.end.min(self.rows.len());
        if rows.start < rows.end {
            self.rows.drain(rows);
        }
    }

    fn place(&self, column: &str) -> Option<usize> {
        self.columns.iter().position(|name| name.eq_ignore_ascii_case(column))
    }

    fn column(&mut self, column: &str) -> usize {
        self.place(column).unwrap_or_else(|| {
            self.columns.push(column.to_owned());
            for row in &mut self.rows {
                row.push(String::new());
            }
            self.columns.len() - 1
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cells_stay_as_they_were_written() {
        let mut cells = Cells::of("a;b\n\n 1,5 ;\"x;\"\"y\"\n").unwrap();
        assert_eq!((cells.count(), cells.line(0), cells.line(1)), (1, Some(3), None));
        assert_eq!(
            (cells.get(0, "A"), cells.get(0, "b"), cells.get(0, "c"), cells.get(1, "a")),
            ("1,5", "x;\"y", "", "")
        );
        cells.set(0, "c", " \u{202e}z ");
        cells.insert(0, &[("b", "2")]);
        cells.insert(9, &[("d", "3")]);
        assert_eq!(cells.text(), "a;b;c;d\n;2;;\n1,5;\"x;\"\"y\";z;\n;;;3\n");
        cells.remove(1..9);
        cells.remove(7..8);
        assert_eq!((cells.count(), cells.text().as_str()), (1, "a;b;c;d\n;2;;\n"));
        cells.remove(0..1);
        assert_eq!((cells.text().as_str(), Cells::of(" \n").unwrap().count()), ("", 0));
        assert_eq!(Cells::of("a,b\n1\n"), Err(Unreadable { line: 2 }));
    }
}
