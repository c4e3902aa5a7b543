//! The table as cells, so that one can be changed while the others stay as they were written.

use super::column::{Column, FIGURES, KIND, NAME};
use super::{TableError, word};
use crate::power::family::Kind;
use crate::power::generic::generic;
use crate::table::{self, plain};
use core::ops::{Deref, DerefMut, Range};

/// The cells of a table of families.
#[derive(Debug, Clone, PartialEq)]
pub struct Cells(table::Cells);

impl Deref for Cells {
    type Target = table::Cells;

    fn deref(&self) -> &table::Cells {
        &self.0
    }
}

impl DerefMut for Cells {
    fn deref_mut(&mut self) -> &mut table::Cells {
        &mut self.0
    }
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
        Ok(Self(table::Cells::of(text)?))
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
        for row in 0..self.count() {
            match found.last_mut() {
                Some(last) if self.get(last.start, NAME) == self.get(row, NAME) => last.end = row + 1,
                _ => found.push(row..row + 1),
            }
        }
        found
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
        let end = self.count();
        self.insert(end, &[(NAME, name), (KIND, word(kind))]);
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
        if row < self.count() {
            let [name, kind] = [NAME, KIND].map(|column| self.get(row, column).to_owned());
            self.insert(row + 1, &[(NAME, &name), (KIND, &kind)]);
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
