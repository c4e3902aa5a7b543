//! Points of a pump curve from pasted text: a table from a data sheet or a spreadsheet.
//!
//! One point a line; columns stand apart by tabs, else semicolons, else commas, else spaces. Lines above the first
//! number may name the columns and their units: gpm, L/s, m3/h; ft, m; %; hp, kW. Where no unit stands, the first column
//! is flow, the second head, both in the units given along, and the third efficiency in percent; the answer says which
//! columns were taken so. A comma in a number is a decimal comma where it can't part columns. Lines that begin with `#`
//! and empty lines are passed over. Whether the points make a curve is for [`super::curve`] to say.

use super::curve::{Point, Quantity};
use crate::numeric::cells::{CellFault, Cells, begins_a_number, is_bare, lowered, repeated, words};
use crate::quantity::{
    Length, Power, VolumeRate, cubic_meters_per_hour, feet, gpm, horsepower, kilowatts, liters_per_second, meters,
};

/// Most points that are read.
pub const MOST_POINTS: usize = 500;
/// Most columns of a line.
pub const MOST_COLUMNS: usize = 4;

/// Unit of a column.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ColumnUnit {
    /// US gallons per minute.
    Gpm,
    /// Liters per second.
    LiterPerSecond,
    /// Cubic meters per hour.
    CubicMeterPerHour,
    /// Feet.
    Foot,
    /// Meters.
    Meter,
    /// Percent.
    Percent,
    /// Horsepower.
    Horsepower,
    /// Kilowatts.
    Kilowatt,
}

impl ColumnUnit {
    /// What the unit measures.
    ///
    /// # Units
    /// None.
    /// # Range
    /// Any unit.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn quantity(self) -> Quantity {
        match self {
            Self::Gpm | Self::LiterPerSecond | Self::CubicMeterPerHour => Quantity::Flow,
            Self::Foot | Self::Meter => Quantity::Head,
            Self::Percent => Quantity::Efficiency,
            Self::Horsepower | Self::Kilowatt => Quantity::Power,
        }
    }
}

impl ColumnUnit {
    /// The unit's name, as a heading tells it.
    fn name(self) -> &'static str {
        match self {
            Self::Gpm => "gpm",
            Self::LiterPerSecond => "L/s",
            Self::CubicMeterPerHour => "m3/h",
            Self::Foot => "ft",
            Self::Meter => "m",
            Self::Percent => "%",
            Self::Horsepower => "hp",
            Self::Kilowatt => "kW",
        }
    }
}

/// A column as it was read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Column {
    /// Its unit.
    pub unit: ColumnUnit,
    /// True where the text told the unit, false where it was assumed.
    pub told: bool,
}

/// Points as they were read.
#[derive(Debug, Clone, PartialEq)]
pub struct Pasted {
    /// The points, one a line.
    pub points: Vec<Point>,
    /// The columns.
    pub columns: Vec<Column>,
}

/// Why text gives no points, and where. Lines and columns count from 1.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PasteError {
    /// The line.
    pub line: usize,
    /// The column among the line's cells.
    pub column: usize,
    /// What is wrong there.
    pub fault: PasteFault,
}

/// What is wrong with pasted text. Cells are repeated up to 40 characters.
#[derive(Debug, Clone, PartialEq, Eq)]
#[non_exhaustive]
pub enum PasteFault {
    /// No line holds a number.
    NoPoints,
    /// More lines than [`MOST_POINTS`].
    TooManyPoints,
    /// A line of more or fewer cells than there are columns.
    Cells {
        /// Cells of the line.
        given: usize,
        /// Columns.
        wanted: usize,
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
    /// A column whose unit is not known, or that names none where one is needed.
    Unit {
        /// The cell of the heading.
        cell: String,
    },
    /// A second column of the same quantity.
    Twice {
        /// What both hold.
        quantity: Quantity,
    },
    /// No column of flow, or none of head.
    Lacks {
        /// What is missing.
        quantity: Quantity,
    },
}

/// Points from pasted text.
///
/// # Units
/// `flow` and `head` the units of columns that tell none.
/// # Range
/// Up to 500 points of 2 to 4 columns. Numbers are plain or with an exponent; parted thousands are refused.
/// # Errors
/// [`PasteError`] names line and column.
/// # Source
/// The form of the text; no formula.
/// # Example
/// ```
/// # use wellwright_core::{pump::paste::*, quantity::*};
/// let pasted = read("Q (L/s); H (m)\n0; 250\n1,5; 210,5\n3; 110", ColumnUnit::Gpm, ColumnUnit::Foot)?;
/// assert!((in_liters_per_second(pasted.points[1].flow) - 1.5).abs() < 1e-12);
/// assert!(pasted.columns.iter().all(|column| column.told));
/// # Ok::<(), PasteError>(())
/// ```
pub fn read(text: &str, flow: ColumnUnit, head: ColumnUnit) -> Result<Pasted, PasteError> {
    let rows = Cells::of(text);
    let mut told: Vec<(usize, Vec<&str>)> = Vec::new();
    let mut columns: Option<Vec<Column>> = None;
    let mut points = Vec::new();
    for (line, cells) in rows.rows() {
        if columns.is_none() && !cells.iter().any(|cell| begins_a_number(cell)) {
            told.push((line, cells));
            continue;
        }
        let known = match columns.take() {
            Some(known) => known,
            None => headed(&told, (line, cells.len()), [flow, head])?,
        };
        if points.len() == MOST_POINTS {
            return Err(PasteError { line, column: 1, fault: PasteFault::TooManyPoints });
        }
        points.push(point(&rows, line, &cells, &known)?);
        columns = Some(known);
    }
    match columns {
        Some(columns) => Ok(Pasted { points, columns }),
        None => Err(PasteError { line: 1, column: 1, fault: PasteFault::NoPoints }),
    }
}

/// The same text under a first line that names the units of flow and head.
///
/// # Units
/// `flow` and `head` the units that the text's first two columns are in.
/// # Range
/// Any text; its columns are parted as they are.
/// # Source
/// The form of the text; no formula.
/// # Example
/// ```
/// # use wellwright_core::pump::paste::*;
/// let text = with_units("0; 250\n3; 110", ColumnUnit::LiterPerSecond, ColumnUnit::Meter);
/// assert_eq!(text, "L/s; m\n0; 250\n3; 110");
/// ```
#[must_use]
pub fn with_units(text: &str, flow: ColumnUnit, head: ColumnUnit) -> String {
    let between = match Cells::of(text).separator() {
        Some('\t') => "\t",
        Some(';') => "; ",
        Some(_) => ", ",
        None => " ",
    };
    format!("{}{between}{}\n{text}", flow.name(), head.name())
}

impl From<CellFault> for PasteFault {
    fn from(fault: CellFault) -> Self {
        match fault {
            CellFault::NotANumber { cell } => Self::NotANumber { cell },
            CellFault::Ambiguous { cell } => Self::Ambiguous { cell },
        }
    }
}

fn point(rows: &Cells, line: usize, cells: &[&str], columns: &[Column]) -> Result<Point, PasteError> {
    let fault = |column: usize, fault| PasteError { line, column: column + 1, fault };
    if cells.len() != columns.len() {
        let wanted = columns.len();
        return Err(fault(cells.len().min(wanted), PasteFault::Cells { given: cells.len(), wanted }));
    }
    let mut point = Point { flow: gpm(0.0), head: feet(0.0), efficiency: None, power: None };
    for (index, (cell, column)) in cells.iter().zip(columns).enumerate() {
        let cell = match column.unit {
            ColumnUnit::Percent => cell.strip_suffix('%').map_or(*cell, str::trim_end),
            _ => cell,
        };
        let value = rows.number(cell).map_err(|trouble| fault(index, trouble.into()))?;
        set(&mut point, column.unit, value);
    }
    Ok(point)
}

/// The columns by the headings above the first point at `first` (line and cells), else as they commonly stand.
fn headed(
    told: &[(usize, Vec<&str>)],
    first: (usize, usize),
    assumed: [ColumnUnit; 2],
) -> Result<Vec<Column>, PasteError> {
    let (line, count) = first;
    if !(2..=MOST_COLUMNS).contains(&count) {
        let wanted = count.clamp(2, MOST_COLUMNS);
        return Err(PasteError {
            line,
            column: count.min(wanted + 1),
            fault: PasteFault::Cells { given: count, wanted },
        });
    }
    let mut units: Vec<Option<ColumnUnit>> = vec![None; count];
    for (line, cells) in told {
        for (index, cell) in cells.iter().enumerate() {
            let fault = |fault| PasteError { line: *line, column: index + 1, fault };
            match unit_of(cell) {
                Ok(None) => {}
                Ok(Some(_)) if index >= count => {
                    return Err(fault(PasteFault::Cells { given: cells.len(), wanted: count }));
                }
                Ok(Some(unit)) => units[index] = Some(unit),
                Err(()) => return Err(fault(PasteFault::Unit { cell: repeated(cell) })),
            }
        }
    }
    let columns = (0..count).map(|index| column(&units, index, told, line, assumed)).collect::<Result<Vec<_>, _>>()?;
    complete(&columns, told.last().map_or(line, |(line, _)| *line))?;
    Ok(columns)
}

fn column(
    units: &[Option<ColumnUnit>],
    index: usize,
    told: &[(usize, Vec<&str>)],
    line: usize,
    assumed: [ColumnUnit; 2],
) -> Result<Column, PasteError> {
    if let Some(unit) = units[index] {
        return Ok(Column { unit, told: true });
    }
    // Beyond flow and head a heading has to tell the unit: it may name anything. Without one, efficiency comes third.
    let heading = told.last().map(|(line, cells)| (*line, cells.get(index).copied().unwrap_or("")));
    let unit = match (index, heading) {
        (0 | 1, _) => assumed[index],
        (2, None) => ColumnUnit::Percent,
        (_, heading) => {
            let (line, cell) = heading.unwrap_or((line, ""));
            return Err(PasteError { line, column: index + 1, fault: PasteFault::Unit { cell: repeated(cell) } });
        }
    };
    Ok(Column { unit, told: false })
}

/// Flow and head are there, and nothing is there twice.
fn complete(columns: &[Column], line: usize) -> Result<(), PasteError> {
    for (index, column) in columns.iter().enumerate() {
        let quantity = column.unit.quantity();
        if columns[..index].iter().any(|before| before.unit.quantity() == quantity) {
            return Err(PasteError { line, column: index + 1, fault: PasteFault::Twice { quantity } });
        }
    }
    for quantity in [Quantity::Flow, Quantity::Head] {
        if !columns.iter().any(|column| column.unit.quantity() == quantity) {
            return Err(PasteError { line, column: 1, fault: PasteFault::Lacks { quantity } });
        }
    }
    Ok(())
}

/// Units that a data sheet may have and that are not read; taken for a name they would be read wrong.
const OTHER_UNITS: [&str; 22] = [
    "lpm", "l/min", "gph", "gpd", "mgd", "cfs", "cfm", "igpm", "imp", "imperial", "uk", "bar", "psi", "kpa", "mpa",
    "in", "cm", "mm", "w", "ps", "cv", "cmd",
];

/// The unit that a heading's cell names, none where it is a bare name, an error where the unit is not known.
fn unit_of(cell: &str) -> Result<Option<ColumnUnit>, ()> {
    let lower = lowered(cell);
    let words = words(&lower);
    if words.iter().any(|word| OTHER_UNITS.contains(word)) {
        return Err(());
    }
    let found = words.iter().rev().find_map(|word| {
        Some(match *word {
            "gpm" | "usgpm" | "gal/min" => ColumnUnit::Gpm,
            "l/s" | "lps" => ColumnUnit::LiterPerSecond,
            "m3/h" | "m3/hr" | "cmh" => ColumnUnit::CubicMeterPerHour,
            "ft" | "feet" => ColumnUnit::Foot,
            "m" => ColumnUnit::Meter,
            "hp" | "bhp" => ColumnUnit::Horsepower,
            "kw" => ColumnUnit::Kilowatt,
            word if word.ends_with('%') => ColumnUnit::Percent,
            _ => return None,
        })
    });
    if found.is_none() && !is_bare(&lower) { Err(()) } else { Ok(found) }
}

fn set(point: &mut Point, unit: ColumnUnit, value: f64) {
    let mut flow = |flow: VolumeRate| point.flow = flow;
    let mut head = |head: Length| point.head = head;
    let mut power = |power: Power| point.power = Some(power);
    match unit {
        ColumnUnit::Gpm => flow(gpm(value)),
        ColumnUnit::LiterPerSecond => flow(liters_per_second(value)),
        ColumnUnit::CubicMeterPerHour => flow(cubic_meters_per_hour(value)),
        ColumnUnit::Foot => head(feet(value)),
        ColumnUnit::Meter => head(meters(value)),
        ColumnUnit::Horsepower => power(horsepower(value)),
        ColumnUnit::Kilowatt => power(kilowatts(value)),
        ColumnUnit::Percent => point.efficiency = Some(value / 100.0),
    }
}
