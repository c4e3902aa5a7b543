//! The table as cells, so that one can be changed while the others stay as they were written.

use super::column::{Column, FIGURES, KIND, NAME};
use super::number::plain;
use super::rows::Rows;
use super::{TableError, word};
use crate::power::family::Kind;
use crate::power::generic::generic;
use core::ops::Range;

/// The cells of a table, trimmed.
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
    /// # Units
    /// As the columns tell.
    /// # Range
    /// Any text whose rows are alike long, whatever stands in them.
    /// # Errors
    /// [`TableError`] where the text can't be taken apart.
    /// # Source
    /// The form of the text; no formula.
    pub fn of(text: &str) -> Result<Self, TableError> {
        let mut rows = Rows::of(text);
        let owned = |row: &super::rows::Row| row.cells().map(str::to_owned).collect::<Vec<_>>();
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

    /// The text of the cells, a line for each row.
    ///
    /// # Units
    /// As the columns tell.
    /// # Range
    /// Any cells.
    /// # Source
    /// The form of the text; no formula.
    #[must_use]
    pub fn text(&self) -> String {
        if self.rows.is_empty() {
            return String::new();
        }
        let quoted = |cell: &String| {
            if cell.contains([self.separator, '"', '\n', '\r']) {
                format!("\"{}\"", cell.replace('"', "\"\""))
            } else {
                cell.clone()
            }
        };
        let line =
            |cells: &Vec<String>| cells.iter().map(quoted).collect::<Vec<_>>().join(&self.separator.to_string()) + "\n";
        core::iter::once(&self.columns).chain(&self.rows).map(line).collect()
    }

    /// The rows of each family: those of one name that stand together.
    ///
    /// # Units
    /// Places of rows, from 0.
    /// # Range
    /// Any cells.
    /// # Source
    /// The form of the text; no formula.
    #[must_use]
    pub fn families(&self) -> Vec<Range<usize>> {
        let mut found: Vec<Range<usize>> = Vec::new();
        for row in 0..self.rows.len() {
            match found.last_mut() {
                Some(last) if self.get(last.start, NAME) == self.get(row, NAME) => last.end = row + 1,
                _ => found.push(row..row + 1),
            }
        }
        found
    }

    /// A cell; blank where there is none.
    ///
    /// # Units
    /// As the column tells.
    /// # Range
    /// Any row, any column.
    /// # Source
    /// The form of the text; no formula.
    #[must_use]
    pub fn get(&self, row: usize, column: &str) -> &str {
        let cell = self.place(column).and_then(|place| self.rows.get(row)?.get(place));
        cell.map_or("", String::as_str)
    }

    /// The line of the text that a row begins on, as an error tells it.
    ///
    /// # Units
    /// A count from 1; nothing for a row that is not there.
    /// # Range
    /// Any row.
    /// # Source
    /// The form of the text; no formula.
    #[must_use]
    pub fn line(&self, row: usize) -> Option<usize> {
        self.lines.get(row).copied()
    }

    /// Changes a cell; a column that was not there is added. A row that is not there is left alone.
    ///
    /// # Units
    /// As the columns tell; places of rows from 0.
    /// # Range
    /// Any row.
    /// # Source
    /// The form of the text; no formula.
    pub fn set(&mut self, row: usize, column: &'static str, value: &str) {
        let place = self.column(column);
        if let Some(cell) = self.rows.get_mut(row).and_then(|cells| cells.get_mut(place)) {
            value.replace(super::is_control, " ").trim().clone_into(cell);
        }
    }

    /// Adds a family with the generic figures of a kind.
    ///
    /// # Units
    /// As the columns tell; places of rows from 0.
    /// # Range
    /// Any row.
    /// # Source
    /// The form of the text; no formula.
    pub fn add(&mut self, kind: Kind, name: &str) {
        let row = self.rows.len();
        for column in [NAME, KIND] {
            self.column(column);
        }
        self.rows.push(vec![String::new(); self.columns.len()]);
        self.set(row, NAME, name);
        self.set(row, KIND, word(kind));
    }

    /// Adds a frame to the family of a row, behind that row.
    ///
    /// # Units
    /// As the columns tell; places of rows from 0.
    /// # Range
    /// Any row.
    /// # Source
    /// The form of the text; no formula.
    pub fn add_frame(&mut self, row: usize) {
        let head = [NAME, KIND].map(|column| (column, self.get(row, column).to_owned()));
        if row < self.rows.len() {
            self.rows.insert(row + 1, vec![String::new(); self.columns.len()]);
            for (column, value) in head {
                self.set(row + 1, column, &value);
            }
        }
    }

    /// Takes rows out.
    ///
    /// # Units
    /// As the columns tell; places of rows from 0.
    /// # Range
    /// Any row.
    /// # Source
    /// The form of the text; no formula.
    pub fn remove(&mut self, rows: Range<usize>) {
        let rows = rows.start.min(self.rows.len())..rows.end.min(self.rows.len());
        if rows.start < rows.end {
            self.rows.drain(rows);
        }
    }

    /// The kind of a row, where it is one.
    ///
    /// # Units
    /// None.
    /// # Range
    /// Any row.
    /// # Source
    /// The form of the text; no formula.
    #[must_use]
    pub fn kind(&self, row: usize) -> Option<Kind> {
        let given = self.get(row, KIND);
        Kind::ALL.into_iter().find(|kind| word(*kind).eq_ignore_ascii_case(given))
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

/// What stands in a figure's blank cell for a kind: the generic figure; nothing where the kind has none, or it is none
/// of a whole family.
///
/// # Units
/// As the column tells.
/// # Range
/// Any kind, any column.
/// # Source
/// As [`generic`].
#[must_use]
pub fn stand_in(kind: Kind, column: &str) -> Option<String> {
    let Some(Column::Figure(figure)) = Column::named(column) else { return None };
    (figure.of)(&generic(kind)).map(|value| plain(value, -figure.places))
}

/// The columns of a whole family's figures that a kind has, or that its data sheet may tell.
///
/// # Units
/// Names of columns.
/// # Range
/// Any kind.
/// # Source
/// The form of the text; no formula.
#[must_use]
pub fn columns_of(kind: Kind) -> Vec<&'static str> {
    let usual = generic(kind);
    let has = |figure: &&super::column::Figure| {
        let mut family = usual.clone();
        let value = (figure.of)(&usual).unwrap_or(10_000.0);
        (figure.set)(&mut family, value)
    };
    FIGURES.iter().filter(has).map(|figure| figure.name).collect()
}

#[cfg(test)]
mod tests {
    use super::super::{COLUMNS, FRAME, read, write};
    use super::*;

    #[test]
    fn a_family_is_added_changed_and_taken_out() {
        let mut cells = Cells::of("").unwrap();
        cells.add(Kind::Doubling, "Mine");
        cells.set(0, "hp", "10");
        cells.set(0, "rated_c", "50");
        cells.add_frame(0);
        cells.set(1, "hp", "15");
        cells.add(Kind::LargeEconomy, "Other, \"big\"");
        assert_eq!(cells.families(), [0..2, 2..3]);
        let read_back = read(&cells.text()).unwrap();
        assert_eq!(read_back.iter().map(|family| family.name.as_str()).collect::<Vec<_>>(), ["Mine", "Other, \"big\""]);
        assert_eq!(read_back[0].steps.iter().map(|step| step.hp).collect::<Vec<_>>(), [10.0, 15.0]);
        assert_eq!(read_back[0].rating.ambient.0, 50.0);
        // What is written is what core itself writes, but for the order of columns.
        assert_eq!(read(&write(&read_back)), Ok(read_back));
        assert_eq!(Cells::of(&cells.text()).unwrap().text(), cells.text());
        assert_eq!(
            (cells.kind(0), cells.kind(2), cells.kind(9)),
            (Some(Kind::Doubling), Some(Kind::LargeEconomy), None)
        );
        cells.remove(0..2);
        assert_eq!((cells.families().len(), cells.get(0, "kind")), (1, "large_economy"));
        cells.remove(0..9);
        assert_eq!((cells.text(), cells.get(3, "hp")), (String::new(), ""));
    }

    // A text that the sums can't use stays as it was typed, and the error names its line.
    #[test]
    fn a_wrong_cell_stays_and_is_named() {
        let mut cells = Cells::of("name;kind;thd_pct\n\nMine;doubling;10,5\n").unwrap();
        assert_eq!((cells.line(0), cells.get(0, "THD_PCT")), (Some(3), "10,5"));
        cells.set(0, "efficiency_pct", " ninety ");
        assert_eq!(cells.text(), "name;kind;thd_pct;efficiency_pct\nMine;doubling;10,5;ninety\n");
        let error = read(&cells.text()).unwrap_err();
        assert_eq!((error.row, error.column), (2, Some("efficiency_pct")));
        assert_eq!(Cells::of(&cells.text()).unwrap().line(0), Some(2));
        assert!(Cells::of("a,b\n1\n").is_err());
        cells.set(7, "thd_pct", "1");
        cells.add_frame(7);
        assert_eq!((cells.families().len(), cells.get(0, "name")), (1, "Mine"));
    }

    #[test]
    fn every_column_is_listed_once() {
        assert!(COLUMNS.iter().all(|name| Column::named(name).is_some()));
        assert_eq!(COLUMNS.len(), FRAME.len() + FIGURES.len() + 1);
        assert!(COLUMNS.iter().enumerate().all(|(place, name)| !COLUMNS[..place].contains(name)));
        assert!(FIGURES.iter().all(|figure| COLUMNS.contains(&figure.name)));
    }

    #[test]
    fn a_blank_cell_is_the_generic_figure() {
        assert_eq!(stand_in(Kind::ConvertingPassive, "thd_pct").as_deref(), Some("80"));
        assert_eq!(stand_in(Kind::ConvertingPassive, "filter_drop_pct"), None);
        assert_eq!(stand_in(Kind::Doubling, "hp"), None);
        assert_eq!(stand_in(Kind::Doubling, "nothing"), None);
        let has = |kind, column| columns_of(kind).contains(&column);
        assert!(has(Kind::Doubling, "filter_drop_pct") && !has(Kind::Doubling, "bus_rise"));
        assert!(has(Kind::LargeEconomy, "bus_rise") && !has(Kind::LargeEconomy, "locked_rotor"));
        assert!(Kind::ALL.into_iter().all(|kind| has(kind, "short_circuit_ka") && has(kind, "price_usd")));
    }
}
