//! The file format of a job, apart from the live types: one frozen module per version, one step from each to the next.
//!
//! A file says its version in `schema`. A newer version than this build knows is refused and left alone.

mod line;
mod record;
mod v1;

pub use line::line_of;

use super::Job;
use crate::error::InputError;
use core::fmt;
use serde_json::Value;

/// The version that this build writes.
pub const CURRENT: u64 = 1;

/// Why a job file can't be read.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum WireError {
    /// Not JSON, or JSON cut short.
    NotJson {
        /// Line, counted from 1.
        line: usize,
        /// Column, counted from 1.
        column: usize,
    },
    /// A JSON value that does not say `schema`, or not as a whole number.
    NoSchema,
    /// Written by a newer build.
    Newer {
        /// The version in the file.
        schema: u64,
    },
    /// A field that is unknown, of the wrong type, or not one of the listed words.
    BadField {
        /// Where it stands, as `cable.metal`.
        path: String,
        /// What the reader expected, in English, for a log or a developer.
        detail: String,
    },
    /// A figure that no sum can use.
    Figure(InputError),
    /// Not what was written: the sum that stands with it is another.
    Altered,
}

impl WireError {
    /// Where the trouble stands, as `cable.metal`; empty for the whole file.
    #[must_use]
    pub fn path(&self) -> &str {
        match self {
            Self::BadField { path, .. } => path,
            Self::Figure(error) => error.field().path(),
            Self::NoSchema | Self::Newer { .. } => "schema",
            Self::NotJson { .. } | Self::Altered => "",
        }
    }

    /// A short stable code.
    #[must_use]
    pub fn code(&self) -> &'static str {
        match self {
            Self::NotJson { .. } => "not_json",
            Self::NoSchema => "no_schema",
            Self::Newer { .. } => "newer_schema",
            Self::BadField { .. } => "bad_field",
            Self::Altered => "altered",
            Self::Figure(error) => error.code(),
        }
    }
}

impl fmt::Display for WireError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotJson { line, column } => write!(f, "not JSON, line {line}, column {column}"),
            Self::NoSchema => write!(f, "no schema number"),
            Self::Newer { schema } => write!(f, "schema {schema} is newer than {CURRENT}"),
            Self::BadField { path, detail } => write!(f, "{path}: {detail}"),
            Self::Altered => write!(f, "altered"),
            Self::Figure(error) => write!(f, "{}: {}", error.field().path(), error.code()),
        }
    }
}

impl std::error::Error for WireError {}

/// Parses text into JSON, so that a file of one job and a file of many read alike.
///
/// # Errors
/// [`WireError::NotJson`] with line and column.
pub fn parse(text: &str) -> Result<Value, WireError> {
    serde_json::from_str(text).map_err(|error| WireError::NotJson { line: error.line(), column: error.column() })
}

/// Reads one job of any known version. Figures are taken as they are: [`super::Inputs`] checks them.
///
/// # Errors
/// Names what can't be read; see [`WireError`].
pub fn read(value: &Value) -> Result<Job, WireError> {
    let schema = value.get("schema").and_then(Value::as_u64).ok_or(WireError::NoSchema)?;
    match schema {
        1 => v1::read(value),
        0 => Err(WireError::NoSchema),
        newer => Err(WireError::Newer { schema: newer }),
    }
}

/// Reads one job from text.
///
/// # Errors
/// As [`parse`] and [`read`].
pub fn read_text(text: &str) -> Result<Job, WireError> {
    read(&parse(text)?)
}

/// Reads every job of a text: one, or a list of them, each by itself.
///
/// # Errors
/// As [`parse`]; what is wrong with one job stands in its place.
pub fn read_many(text: &str) -> Result<Vec<Result<Job, WireError>>, WireError> {
    Ok(match parse(text)? {
        Value::Array(jobs) => jobs.iter().map(read).collect(),
        job => vec![read(&job)],
    })
}

/// Writes a job in the current version.
#[must_use]
pub fn write(job: &Job) -> Value {
    v1::write(job)
}

/// The JSON Schema (2020-12) of a job in the current version.
#[must_use]
pub fn schema() -> Value {
    v1::schema()
}
