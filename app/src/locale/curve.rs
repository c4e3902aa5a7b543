//! What is read of a pump's curve, and why it can't be.

use super::quantity::unit_name;
use super::words;
use wellwright_core::evaluate::{CurveProblem, CurveRead};
use wellwright_core::pump::curve::CurveError;
use wellwright_core::pump::paste::{Column, ColumnUnit, MOST_POINTS, PasteError, PasteFault};
use wellwright_core::quantity::Unit;

/// What was read: how many points, and what each column holds.
#[must_use]
pub fn curve_read_text(read: &CurveRead) -> String {
    let words = &words().curve;
    let column = |column: &Column| (words.column)(column.unit.quantity(), column_unit(column.unit), column.told);
    let columns: Vec<String> = read.columns.iter().map(column).collect();
    (words.read)(read.curve.points().len(), &columns.join(", "))
}

fn column_unit(unit: ColumnUnit) -> &'static str {
    unit_name(match unit {
        ColumnUnit::Gpm => Unit::GallonPerMinute,
        ColumnUnit::LiterPerSecond => Unit::LiterPerSecond,
        ColumnUnit::CubicMeterPerHour => Unit::CubicMeterPerHour,
        ColumnUnit::Foot => Unit::Foot,
        ColumnUnit::Meter => Unit::Meter,
        ColumnUnit::Percent => Unit::Percent,
        ColumnUnit::Horsepower => Unit::Horsepower,
        ColumnUnit::Kilowatt => Unit::Kilowatt,
    })
}

/// Why a text makes no curve.
#[must_use]
pub fn curve_problem_text(problem: &CurveProblem) -> String {
    match problem {
        CurveProblem::Text(error) => paste(error),
        CurveProblem::Points(error) => points(error),
    }
}

fn paste(error: &PasteError) -> String {
    let words = &words().curve;
    let why = match &error.fault {
        PasteFault::NoPoints => words.no_points.to_owned(),
        PasteFault::TooManyPoints => (words.too_many)(MOST_POINTS),
        PasteFault::Cells { given, wanted } => (words.cells)(*given, *wanted),
        PasteFault::NotANumber { cell } => (words.not_number)(cell),
        PasteFault::Ambiguous { cell } => (words.two_ways)(cell),
        PasteFault::Unit { cell } => (words.unit)(cell),
        _ => words.columns.to_owned(),
    };
    (words.at)(error.line, error.column, &why)
}

fn points(error: &CurveError) -> String {
    let words = &words().curve;
    let at = |point: usize, why| (words.point)(point + 1, why);
    match error {
        CurveError::TooFew { given } => (words.few)(*given),
        CurveError::Figure { point, .. } => at(*point, words.figure),
        CurveError::FlowNotRising { point, .. } => at(*point, words.flow_not_rising),
        CurveError::HeadNeverFalls { .. } => words.never_falls.to_owned(),
        CurveError::Gap { point, .. } => at(*point, words.gap),
        CurveError::EfficiencyAgainstHead { point, .. } | CurveError::EfficiencyFlat { point } => {
            at(*point, words.efficiency)
        }
        CurveError::PowerShort { point, .. } => at(*point, words.power_short),
        _ => super::words().found.curve_unusable.to_owned(),
    }
}
