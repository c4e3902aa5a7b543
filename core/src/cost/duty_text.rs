//! A year's duty from typed or pasted text: one row a line, flow and hours.
//!
//! Columns stand apart by tabs, else semicolons, else commas, else spaces. Lines above the first number may name the
//! columns and their units: gpm, L/s, m3/h; h, hours. Where no unit stands, the first column is flow in the unit given
//! along and the second hours. A comma in a number is a decimal comma where it can't part columns. Lines that begin
//! with `#` and empty lines are passed over.

use super::duty::{Duty, DutyRow, MOST_ROWS};
use crate::error::OutsideRange;
use crate::numeric::cells::{CellFault, Cells, begins_a_number, is_bare, lowered, repeated, words};
use crate::quantity::{VolumeRate, cubic_meters_per_hour, gpm, hours, liters_per_second};

/// Columns of a row.
const COLUMNS: usize = 2;

/// Unit of the flows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum FlowUnit {
    /// US gallons per minute.
    #[default]
    Gpm,
    /// Liters per second.
    LiterPerSecond,
    /// Cubic meters per hour.
    CubicMeterPerHour,
}

impl FlowUnit {
    fn flow(self, value: f64) -> VolumeRate {
        match self {
            Self::Gpm => gpm(value),
            Self::LiterPerSecond => liters_per_second(value),
            Self::CubicMeterPerHour => cubic_meters_per_hour(value),
        }
    }
}

/// A duty as it was read.
#[derive(Debug, Clone, PartialEq)]
pub struct ReadDuty {
    /// The duty.
    pub duty: Duty,
    /// Unit of its flows.
    pub unit: FlowUnit,
    /// True where the text told the unit, false where it was assumed.
    pub told: bool,
}

/// Why text gives no duty, and where. Lines and columns count from 1.
#[derive(Debug, Clone, PartialEq)]
pub struct DutyTextError {
    /// The line.
    pub line: usize,
    /// The column among the line's cells.
    pub column: usize,
    /// What is wrong there.
    pub fault: DutyTextFault,
}

/// What is wrong with the text of a duty. Cells are repeated up to 40 characters.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum DutyTextFault {
    /// No line holds a number.
    NoRows,
    /// More lines than [`MOST_ROWS`].
    TooManyRows,
    /// A line of more or fewer cells than two.
    Cells {
        /// Cells of the line.
        given: usize,
    },
    /// A cell that is no number.
    NotANumber {
        /// The cell.
        cell: String,
    },
    /// A number whose comma may part thousands or decimals.
    Ambiguous {
        /// The cell.
        cell: String,
    },
    /// A heading whose unit is not known, or that stands for the same column twice.
    Unit {
        /// The cell of the heading.
        cell: String,
    },
    /// A figure outside its range; the column is that of the hours where it is their sum.
    Outside(OutsideRange),
}

impl From<CellFault> for DutyTextFault {
    fn from(fault: CellFault) -> Self {
        match fault {
            CellFault::NotANumber { cell } => Self::NotANumber { cell },
            CellFault::Ambiguous { cell } => Self::Ambiguous { cell },
        }
    }
}

/// What a heading says of its column.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Heading {
    Flow(FlowUnit),
    Hours,
}

/// Where the columns stand.
#[derive(Debug, Clone, Copy)]
struct Columns {
    /// 0 where flow comes first, 1 where hours do.
    flow: usize,
    unit: FlowUnit,
    told: bool,
}

/// A duty from text.
///
/// # Units
/// `unit` of the flows where the text tells none; hours a year.
/// # Range
/// 1 to 24 rows of two cells, within the limits of [`Duty::new`]. Numbers are plain or with an exponent; parted
/// thousands are refused.
/// # Errors
/// [`DutyTextError`] names line and column.
/// # Source
/// The form of the text; no formula.
/// # Example
/// ```
/// # use wellwright_core::{cost::{duty::*, duty_text::*}, quantity::*};
/// let read = read_duty("hours; Q (L/s)\n1500; 37,5\n500; 25", FlowUnit::Gpm)?;
/// assert!((in_liters_per_second(read.duty.rows()[0].flow) - 37.5).abs() < 1e-12);
/// assert!((in_hours(read.duty.time()) - 2000.0).abs() < 1e-9 && read.told);
/// # Ok::<(), DutyTextError>(())
/// ```
pub fn read_duty(text: &str, unit: FlowUnit) -> Result<ReadDuty, DutyTextError> {
    let cells = Cells::of(text);
    let mut columns = Columns { flow: 0, unit, told: false };
    let (mut rows, mut lines): (Vec<DutyRow>, Vec<usize>) = (Vec::new(), Vec::new());
    let mut told = [None; COLUMNS];
    for (line, row) in cells.rows() {
        if rows.is_empty() && !row.iter().any(|cell| begins_a_number(cell)) {
            headings(line, &row, &mut told)?;
            continue;
        }
        if rows.is_empty() {
            columns = placed(told, unit);
        } else if rows.len() == MOST_ROWS {
            return Err(DutyTextError { line, column: 1, fault: DutyTextFault::TooManyRows });
        }
        rows.push(duty_row(&cells, line, &row, columns)?);
        lines.push(line);
    }
    if rows.is_empty() {
        return Err(DutyTextError { line: 1, column: 1, fault: DutyTextFault::NoRows });
    }
    let duty = Duty::new(rows).map_err(|fault| DutyTextError {
        line: lines.get(fault.row - 1).copied().unwrap_or(1),
        column: 1 + if fault.error.argument == "flow" { columns.flow } else { 1 - columns.flow },
        fault: DutyTextFault::Outside(fault.error),
    })?;
    Ok(ReadDuty { duty, unit: columns.unit, told: columns.told })
}

fn duty_row(cells: &Cells, line: usize, row: &[&str], columns: Columns) -> Result<DutyRow, DutyTextError> {
    let fault = |index: usize, fault| DutyTextError { line, column: index + 1, fault };
    let &[first, second] = row else {
        return Err(fault(row.len().min(COLUMNS), DutyTextFault::Cells { given: row.len() }));
    };
    let first = cells.number(first).map_err(|trouble| fault(0, trouble.into()))?;
    let second = cells.number(second).map_err(|trouble| fault(1, trouble.into()))?;
    let (flow, time) = if columns.flow == 0 { (first, second) } else { (second, first) };
    Ok(DutyRow { flow: columns.unit.flow(flow), time: hours(time) })
}

/// Notes what a line of headings says.
fn headings(line: usize, row: &[&str], told: &mut [Option<Heading>; COLUMNS]) -> Result<(), DutyTextError> {
    for (index, cell) in row.iter().enumerate() {
        let fault = |fault| DutyTextError { line, column: index + 1, fault };
        let unknown = || fault(DutyTextFault::Unit { cell: repeated(cell) });
        let Some(heading) = heading_of(cell).map_err(|()| unknown())? else { continue };
        let Some(place) = told.get_mut(index) else {
            return Err(fault(DutyTextFault::Cells { given: row.len() }));
        };
        *place = Some(heading);
        // Two columns of flow, or two of hours.
        if let [Some(first), Some(second)] = told
            && matches!(first, Heading::Hours) == matches!(second, Heading::Hours)
        {
            return Err(unknown());
        }
    }
    Ok(())
}

/// Hours first where the headings say so, else flow first.
fn placed(told: [Option<Heading>; COLUMNS], assumed: FlowUnit) -> Columns {
    let unit = told.iter().find_map(|heading| match heading {
        Some(Heading::Flow(unit)) => Some(*unit),
        _ => None,
    });
    let hours_first = matches!(told, [Some(Heading::Hours), _]) || matches!(told, [None, Some(Heading::Flow(_))]);
    Columns { flow: usize::from(hours_first), unit: unit.unwrap_or(assumed), told: unit.is_some() }
}

/// Units that such a table may have and that are not read; taken for a name they would be read wrong.
const OTHER_UNITS: [&str; 24] = [
    "lpm", "l/min", "gph", "gpd", "mgd", "cfs", "cfm", "igpm", "imp", "imperial", "uk", "cmd", "min", "mins",
    "minutes", "minutos", "d", "day", "days", "días", "sec", "share", "parte", "s",
];

/// What a heading's cell says, nothing where it is a bare name, an error where the unit is not known.
fn heading_of(cell: &str) -> Result<Option<Heading>, ()> {
    let lower = lowered(cell);
    let words = words(&lower);
    if words.iter().any(|word| OTHER_UNITS.contains(word)) {
        return Err(());
    }
    let found = words.iter().rev().find_map(|word| {
        Some(match *word {
            "gpm" | "usgpm" | "gal/min" => Heading::Flow(FlowUnit::Gpm),
            "l/s" | "lps" => Heading::Flow(FlowUnit::LiterPerSecond),
            "m3/h" | "m3/hr" | "cmh" => Heading::Flow(FlowUnit::CubicMeterPerHour),
            "h" | "hr" | "hrs" | "hour" | "hours" | "hora" | "horas" | "h/yr" | "h/a" => Heading::Hours,
            _ => return None,
        })
    });
    if found.is_none() && !is_bare(&lower) { Err(()) } else { Ok(found) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{in_gpm, in_hours, in_liters_per_second};

    fn refused(text: &str) -> (usize, usize, DutyTextFault) {
        let error = read_duty(text, FlowUnit::Gpm).unwrap_err();
        (error.line, error.column, error.fault)
    }

    fn rows(text: &str) -> Vec<(f64, f64)> {
        let read = read_duty(text, FlowUnit::Gpm).unwrap();
        read.duty.rows().iter().map(|row| (in_gpm(row.flow).round(), in_hours(row.time).round())).collect()
    }

    #[test]
    fn every_form_of_the_same_table() {
        for text in [
            "600, 1500\n400, 500",
            "600\t1500\r\n400\t500\r\n",
            "\u{feff}# invented\n\n600;1500\n400;500",
            "600 1500\n400 500",
            "Flow (gpm), Hours\n600,1500\n400,500",
            "Hours,Flow\nh,gpm\n1500,600\n500,400",
            "Caudal;Horas\n600,0;1500\n400;500",
        ] {
            assert_eq!(rows(text), [(600.0, 1500.0), (400.0, 500.0)], "{text:?}");
        }
        let read = read_duty("37.5 100", FlowUnit::LiterPerSecond).unwrap();
        assert!((in_liters_per_second(read.duty.rows()[0].flow) - 37.5).abs() < 1e-12 && !read.told);
        let read = read_duty("h\tm³/h\n100\t36", FlowUnit::Gpm).unwrap();
        assert!((in_liters_per_second(read.duty.rows()[0].flow) - 10.0).abs() < 1e-12);
        assert_eq!((read.unit, read.told), (FlowUnit::CubicMeterPerHour, true));
    }

    #[test]
    fn faults_name_line_and_column() {
        let cell = |cell: &str| cell.to_owned();
        assert_eq!(refused(""), (1, 1, DutyTextFault::NoRows));
        assert_eq!(refused("gpm,h\n"), (1, 1, DutyTextFault::NoRows));
        assert_eq!(refused("600,1500\n400,x"), (2, 2, DutyTextFault::NotANumber { cell: cell("x") }));
        assert_eq!(refused("600;1,500"), (1, 2, DutyTextFault::Ambiguous { cell: cell("1,500") }));
        assert_eq!(refused("600"), (1, 2, DutyTextFault::Cells { given: 1 }));
        assert_eq!(refused("600,1500,2"), (1, 3, DutyTextFault::Cells { given: 3 }));
        assert_eq!(refused("gpm,h,gpm\n1,2"), (1, 3, DutyTextFault::Cells { given: 3 }));
        assert_eq!(refused("Flow (cfs),h\n1,2"), (1, 1, DutyTextFault::Unit { cell: cell("Flow (cfs)") }));
        assert_eq!(refused("gpm,min\n1,2"), (1, 2, DutyTextFault::Unit { cell: cell("min") }));
        assert_eq!(refused("gpm,L/s\n1,2"), (1, 2, DutyTextFault::Unit { cell: cell("L/s") }));
        assert_eq!(refused(&"600,10\n".repeat(25)), (25, 1, DutyTextFault::TooManyRows));
        assert_eq!(refused(&format!("1 {}", "z".repeat(99))).2, DutyTextFault::NotANumber { cell: "z".repeat(40) });
    }

    #[test]
    fn figures_outside_are_found_where_they_stand() {
        let outside = |text: &str| match refused(text) {
            (line, column, DutyTextFault::Outside(error)) => (line, column, error.argument),
            other => panic!("{other:?}"),
        };
        assert_eq!(outside("600,10\n\n0,10"), (3, 1, "flow"));
        assert_eq!(outside("h,gpm\n10,-1"), (2, 2, "flow"));
        assert_eq!(outside("600,-10"), (1, 2, "hours"));
        assert_eq!(outside("h,gpm\n-10,600"), (2, 1, "hours"));
        assert_eq!(outside("600,8000\n# note\n500,800"), (3, 2, "total_hours"));
    }
}
