//! A table read to families.

use super::column::{AMPERES, Column, ENCLOSURE, Figure, HP, KIND, NAME};
use super::{MOST_FAMILIES, MOST_FRAMES, MOST_NAME, TableError, TableFault, word};
use crate::error::OutsideRange;
use crate::numeric::order::by_number;
use crate::power::family::{Family, Kind, Step};
use crate::power::generic::generic;
use crate::quantity::meters;
use crate::standards::enclosure::EnclosureType;
use crate::table::{self, Row, Rows, is_control, repeated, shifted, text_of};

/// Frames of one family that are no further apart are the same, as [`Family::checked`] has it.
const APART: f64 = 1e-9;

/// Families from a table; none from a blank text.
///
/// # Units
/// As the columns tell.
/// # Range
/// Up to 200 rows and 40 families, and every figure as [`Family::checked`] accepts it.
/// # Errors
/// [`TableError`] of the first fault names the line of its row, the column and what is wrong.
/// # Source
/// The form of the text; no formula.
/// # Example
/// ```
/// # use wellwright_core::power::family_table::*;
/// let head = "name;kind;hp;output_a_480;efficiency_pct";
/// let rows = [head, "Mine;large_economy;15;22,5;96,2", "Mine;large_economy;20;28;"];
/// let families = read(&rows.join("\n"))?;
/// assert_eq!(families[0].steps[1].high, Some(28.0));
/// assert_eq!(families[0].input.efficiency, 0.962);
/// # Ok::<(), TableError>(())
/// ```
pub fn read(text: &str) -> Result<Vec<Family>, TableError> {
    let mut rows = Rows::of(text);
    let Some(first) = rows.next()? else { return Ok(Vec::new()) };
    let columns = table::columns(&first, Column::named, Column::name, &[NAME, KIND])?;
    let mut families: Vec<Family> = Vec::new();
    let mut open: Option<Group> = None;
    let mut count = 0;
    while let Some(row) = rows.next()? {
        count += 1;
        if count > MOST_FRAMES {
            return Err(TableFault::TooMany.at(row.line, None));
        }
        let (name, kind) = (name(&row, &columns)?, kind(&row, &columns)?);
        let mut group = match open.take() {
            Some(group) if group.family.name == name => group,
            before => {
                families.extend(before.map(Group::close).transpose()?);
                Group::of(name, kind, row.line)
            }
        };
        if families.len() == MOST_FAMILIES {
            return Err(TableFault::TooMany.at(row.line, None));
        }
        if families.iter().any(|family| family.name == group.family.name) {
            return Err(TableFault::Apart.at(row.line, Some(NAME)));
        }
        if group.family.kind != kind {
            return Err(TableFault::OtherKind.at(row.line, Some(KIND)));
        }
        group.add(&row, &columns, rows.decimal_comma())?;
        open = Some(group);
    }
    families.extend(open.map(Group::close).transpose()?);
    Ok(families)
}

/// The cell of a column; blank where there is none.
fn cell<'a>(row: &'a Row, columns: &[Column], name: &str) -> &'a str {
    let mut cells = columns.iter().zip(row.cells());
    cells.find(|(column, _)| column.name() == name).map_or("", |(_, cell)| cell)
}

fn name(row: &Row, columns: &[Column]) -> Result<String, TableError> {
    let name = text_of(cell(row, columns, NAME));
    let fault = if name.is_empty() {
        TableFault::NoName
    } else if name.chars().count() > MOST_NAME {
        TableFault::NameTooLong
    } else if name.contains(is_control) {
        TableFault::ControlInName
    } else {
        return Ok(name.to_owned());
    };
    Err(fault.at(row.line, Some(NAME)))
}

fn kind(row: &Row, columns: &[Column]) -> Result<Kind, TableError> {
    let cell = cell(row, columns, KIND);
    let found = Kind::ALL.into_iter().find(|kind| word(*kind).eq_ignore_ascii_case(cell));
    found.ok_or_else(|| TableFault::UnknownKind(repeated(cell)).at(row.line, Some(KIND)))
}

/// A family whose rows are being read.
struct Group {
    family: Family,
    /// The generic family, in which a figure can be tried alone.
    usual: Family,
    /// Its first row.
    line: usize,
    /// Its frames, each with its row.
    frames: Vec<(usize, Step)>,
    /// Columns beside those of the frames that a row had a figure in, each with its row.
    told: Vec<(&'static str, usize)>,
}

impl Group {
    fn of(name: String, kind: Kind, line: usize) -> Self {
        let mut usual = generic(kind);
        // From the sea up, so that no highest place is below.
        usual.rating.altitude = meters(0.0);
        let family = Family { name, ..generic(kind) };
        Self { family, usual, line, frames: Vec::new(), told: Vec::new() }
    }

    /// Takes the figures of a row.
    fn add(&mut self, row: &Row, columns: &[Column], decimal_comma: bool) -> Result<(), TableError> {
        let number = |cell: &str, places| Ok::<f64, TableFault>(table::number(cell, decimal_comma, places)?);
        let mut hp = None;
        let mut step = Step::sized(0.0);
        for (column, cell) in columns.iter().zip(row.cells()).filter(|(_, cell)| !cell.is_empty()) {
            let at = |fault: TableFault| fault.at(row.line, Some(column.name()));
            match column {
                Column::Name | Column::Kind => {}
                Column::Hp => {
                    let value = number(cell, 0).map_err(at)?;
                    self.check_frame(Step::sized(value)).map_err(at)?;
                    hp = Some(value);
                }
                Column::Amperes(amperes) => {
                    let value = Some(number(cell, 0).map_err(at)?);
                    let mut alone = Step::sized(1.0);
                    *(amperes.slot)(&mut alone) = value;
                    self.check_frame(alone).map_err(at)?;
                    *(amperes.slot)(&mut step) = value;
                }
                Column::Figure(figure) => {
                    let value = number(cell, figure.places).map_err(at)?;
                    self.set(figure, value, row.line).map_err(at)?;
                }
                Column::Enclosure => self.enclose(cell, row.line).map_err(at)?,
            }
        }
        let bare = AMPERES.iter().all(|amperes| (amperes.slot)(&mut step).is_none());
        match hp {
            Some(hp) => self.push(Step { hp, ..step }, row.line),
            None if bare => Ok(()),
            None => Err(TableFault::FrameMissing.at(row.line, Some(HP))),
        }
    }

    fn push(&mut self, step: Step, line: usize) -> Result<(), TableError> {
        let same = |(_, other): &(usize, Step)| step.hp.max(other.hp) < step.hp.min(other.hp) * (1.0 + APART);
        if self.frames.iter().any(same) {
            return Err(TableFault::FrameTwice.at(line, Some(HP)));
        }
        self.frames.push((line, step));
        Ok(())
    }

    fn check_frame(&self, step: Step) -> Result<(), TableFault> {
        check(Family { steps: vec![step], ..self.usual.clone() }, &["step_hp", "step_amperes"], 0)
    }

    fn set(&mut self, figure: &'static Figure, value: f64, line: usize) -> Result<(), TableFault> {
        let mut alone = self.usual.clone();
        if !(figure.set)(&mut alone, value) {
            return Err(TableFault::DoesNotApply);
        }
        check(alone, figure.arguments, figure.places)?;
        if self.is_told(figure.name) {
            let same = (figure.of)(&self.family) == Some(value);
            return if same { Ok(()) } else { Err(TableFault::Contradicts) };
        }
        (figure.set)(&mut self.family, value);
        self.told.push((figure.name, line));
        Ok(())
    }

    fn enclose(&mut self, cell: &str, line: usize) -> Result<(), TableFault> {
        let kind = EnclosureType::named(&cell.to_ascii_uppercase());
        let kind = kind.ok_or_else(|| TableFault::UnknownEnclosure(repeated(cell)))?;
        if self.is_told(ENCLOSURE) {
            let same = self.family.marking.enclosure == Some(kind);
            return if same { Ok(()) } else { Err(TableFault::Contradicts) };
        }
        self.family.marking.enclosure = Some(kind);
        self.told.push((ENCLOSURE, line));
        Ok(())
    }

    fn is_told(&self, name: &str) -> bool {
        self.told.iter().any(|(told, _)| *told == name)
    }

    /// The family, its rows all read.
    fn close(self) -> Result<Family, TableError> {
        let mut family = self.family;
        if !self.frames.is_empty() {
            family.steps = self.frames.iter().map(|(_, step)| *step).collect();
            by_number(&mut family.steps, |step| step.hp);
        }
        let row = |name| self.told.iter().find(|(told, _)| *told == name).map_or(self.line, |(_, line)| *line);
        family.checked().map_err(|outside| match Figure::of_argument(outside.argument) {
            Some(figure) => out_of_range(outside, figure.places).at(row(figure.name), Some(figure.name)),
            // What is left to be wrong with the frames is that there are too many.
            None => {
                let over = self.frames.get(outside.max as usize).or(self.frames.last());
                TableFault::TooMany.at(over.map_or(self.line, |(line, _)| *line), None)
            }
        })
    }
}

/// Whether a family is outside the range of these arguments; others are checked when all figures are known.
fn check(family: Family, arguments: &[&str], places: i32) -> Result<(), TableFault> {
    match family.checked() {
        Err(outside) if arguments.contains(&outside.argument) => Err(out_of_range(outside, places)),
        _ => Ok(()),
    }
}

fn out_of_range(outside: OutsideRange, places: i32) -> TableFault {
    let [given, min, max] = [outside.given, outside.min, outside.max].map(|value| shifted(value, -places));
    TableFault::OutOfRange { given, min, max }
}
