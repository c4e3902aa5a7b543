//! The columns that a table's first row names.

use super::{Row, repeated};

/// What is wrong with the columns that a row names.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ColumnFault {
    /// It names none that is known.
    NoHeader,
    /// It names one that is not known: this.
    Unknown(String),
    /// It names this one twice.
    Twice(&'static str),
    /// It lacks this one.
    Missing(&'static str),
}

/// Why a row names no columns that can be used.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ColumnError {
    /// The line of the text that it begins on, from 1.
    pub line: usize,
    /// What is wrong there.
    pub what: ColumnFault,
}

/// The columns that a row names, in its order.
///
/// `named` finds a column by its cell, `name` tells what a column is called, and `needed` are the names of those that
/// must be there.
///
/// # Errors
/// [`ColumnError`] names the first column at fault.
pub fn columns<C: Copy>(
    row: &Row,
    named: impl Fn(&str) -> Option<C>,
    name: impl Fn(C) -> &'static str,
    needed: &[&'static str],
) -> Result<Vec<C>, ColumnError> {
    let fault = |what| ColumnError { line: row.line, what };
    if !row.cells().any(|cell| named(cell).is_some()) {
        return Err(fault(ColumnFault::NoHeader));
    }
    let mut columns: Vec<C> = Vec::new();
    let there = |columns: &[C], wanted: &str| columns.iter().any(|column| name(*column) == wanted);
    for cell in row.cells() {
        let column = named(cell).ok_or_else(|| fault(ColumnFault::Unknown(repeated(cell))))?;
        if there(&columns, name(column)) {
            return Err(fault(ColumnFault::Twice(name(column))));
        }
        columns.push(column);
    }
    match needed.iter().find(|wanted| !there(&columns, wanted)) {
        Some(missing) => Err(fault(ColumnFault::Missing(missing))),
        None => Ok(columns),
    }
}
