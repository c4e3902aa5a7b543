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
    let words = &words().flow;
    let column = |column: &Column| (words.column)(column.unit.quantity(), column_unit(column.unit), column.told);
    let columns: Vec<String> = read.columns.iter().map(column).collect();
    (words.curve_points)(read.curve.points().len(), &columns.join(", "))
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
    let words = &words().flow;
    let why = match &error.fault {
        PasteFault::NoPoints => words.curve_no_points.to_owned(),
        PasteFault::TooManyPoints => (words.curve_too_many)(MOST_POINTS),
        PasteFault::Cells { given, wanted } => (words.curve_cells)(*given, *wanted),
        PasteFault::NotANumber { cell } => (words.curve_not_number)(cell),
        PasteFault::Ambiguous { cell } => (words.curve_two_ways)(cell),
        PasteFault::Unit { cell } => (words.curve_unit)(cell),
        _ => words.curve_columns.to_owned(),
    };
    (words.curve_at)(error.line, error.column, &why)
}

fn points(error: &CurveError) -> String {
    let words = &words().flow;
    let at = |point: usize, why| (words.curve_point)(point + 1, why);
    match error {
        CurveError::TooFew { given } => (words.curve_few)(*given),
        CurveError::Figure { point, .. } => at(*point, words.curve_figure),
        CurveError::FlowNotRising { point, .. } => at(*point, words.curve_flow_not_rising),
        CurveError::HeadNeverFalls { .. } => words.curve_never_falls.to_owned(),
        CurveError::Gap { point, .. } => at(*point, words.curve_gap),
        CurveError::EfficiencyAgainstHead { point, .. } | CurveError::EfficiencyFlat { point } => {
            at(*point, words.curve_efficiency)
        }
        CurveError::PowerShort { point, .. } => at(*point, words.curve_power_short),
        _ => words.curve_unusable.to_owned(),
    }
}
