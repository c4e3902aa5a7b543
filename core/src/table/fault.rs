//! What a table of its own calls the faults that every table can have.

/// Makes a table's error of a fault at a place, and both of the faults of rows, columns and numbers. The error has the
/// fields `row`, `column` and `what`; the fault has variants of the names that are used here.
macro_rules! faults {
    ($error:ident, $fault:ident) => {
        impl $fault {
            fn at(self, row: usize, column: Option<&'static str>) -> $error {
                $error { row, column, what: self }
            }
        }

        impl From<$crate::table::Unreadable> for $error {
            fn from(row: $crate::table::Unreadable) -> Self {
                $fault::Unreadable.at(row.line, None)
            }
        }

        impl From<$crate::table::ColumnError> for $error {
            fn from(error: $crate::table::ColumnError) -> Self {
                use $crate::table::ColumnFault;
                match error.what {
                    ColumnFault::NoHeader => $fault::NoHeader.at(error.line, None),
                    ColumnFault::Unknown(name) => $fault::UnknownColumn(name).at(error.line, None),
                    ColumnFault::Twice(name) => $fault::ColumnTwice.at(error.line, Some(name)),
                    ColumnFault::Missing(name) => $fault::MissingColumn.at(error.line, Some(name)),
                }
            }
        }

        impl From<$crate::table::NumberFault> for $fault {
            fn from(fault: $crate::table::NumberFault) -> Self {
                match fault {
                    $crate::table::NumberFault::NotANumber(cell) => Self::NotANumber(cell),
                    $crate::table::NumberFault::Ambiguous(cell) => Self::Ambiguous(cell),
                }
            }
        }
    };
}
pub(crate) use faults;
