//! The user's own families of equipment as a table of text, as a spreadsheet writes it: a row for each frame.
//!
//! Only the columns `name` and `kind` are needed; a blank cell and an absent column keep the figure of [`generic`].
//!
//! | columns | what they hold |
//! | --- | --- |
//! | `name` | what the user calls the family |
//! | `kind` | its kind, as `converting_active` |
//! | `hp` | size of the frame; a family with none keeps the generic frames |
//! | `output_a_240`, `output_a_480`, `input_a`, `device_a` | amperes of the frame |
//! | `displacement`, `thd_pct`, `efficiency_pct` | what the input draws |
//! | `capacity_pct` | share of a frame that may be used |
//! | `filter_drop_pct`, `transformer_drop_pct` | volts that a sine filter and a transformer take |
//! | `output_pct` | least input of a regulated output, or the share that an output which follows gives |
//! | `bus_v_240`, `bus_v_480` | volts of a bus that is held |
//! | `bus_rise` | rise of a bus that is not |
//! | `locked_rotor` | locked-rotor current over full-load current, across the line |
//! | `rated_c`, `per_c_pct`, `to_c_above` | warmest ambient, share off for each degree above, up to how many |
//! | `rated_m`, `per_100_m_pct`, `highest_m` | the same for altitude |
//! | `price_usd`, `price_per_hp_usd` | price |
//! | `short_circuit_ka`, `enclosure` | markings; the enclosure by its type, as `3R` |
//!
//! Rows of one name stand together and are one family. Its figures count from the first row that has them; a later row
//! may repeat them, not change them. Rows are checked one after another; what several figures must be to one another,
//! once the family's last row is read.
//!
//! Cells, numbers and names, which are no formula to a spreadsheet, are those of [`crate::table`]. Spaces around a name do
//! not belong to it. Characters that break or turn a line, and other control characters, are refused in a name;
//! [`write()`] puts a space in their place.

use super::family::{Family, Kind};
use super::generic::generic;
use crate::table::faults;

mod cells;
mod column;
mod read;
#[cfg(test)]
mod tests;
mod write;

pub use cells::{Cells, columns_of, stand_in};
pub use column::{COLUMNS, ENCLOSURE, FRAME, HP, NAME};
pub use read::read;
pub use write::write;

/// Most frames that are read, of all families together: rows of the table.
pub const MOST_FRAMES: usize = 200;
/// Most families that are read.
pub const MOST_FAMILIES: usize = 40;
/// Most characters of a name.
pub const MOST_NAME: usize = 60;

/// Why a table gives no families, and where.
#[derive(Debug, Clone, PartialEq)]
pub struct TableError {
    /// The line of the text, from 1, that the row begins on.
    pub row: usize,
    /// The column; `None` where the whole row is at fault.
    pub column: Option<&'static str>,
    /// What is wrong there.
    pub what: TableFault,
}

/// What is wrong with a table. Cells are repeated up to 40 characters.
#[derive(Debug, Clone, PartialEq)]
pub enum TableFault {
    /// The first row names no column that is known.
    NoHeader,
    /// The first row lacks this column.
    MissingColumn,
    /// The first row names a column that is not known: this.
    UnknownColumn(String),
    /// The first row names this column twice.
    ColumnTwice,
    /// A cell that is no number: this.
    NotANumber(String),
    /// A number whose comma may part thousands or decimals: this.
    Ambiguous(String),
    /// A figure that the sums do not hold for, in the column's own unit.
    OutOfRange {
        /// The figure.
        given: f64,
        /// Least accepted value.
        min: f64,
        /// Largest accepted value.
        max: f64,
    },
    /// A kind that is not known: this.
    UnknownKind(String),
    /// A type of enclosure that is not known: this.
    UnknownEnclosure(String),
    /// A row without a name.
    NoName,
    /// A name of more than [`MOST_NAME`] characters.
    NameTooLong,
    /// A name that holds a character which breaks or turns a line, or another control character.
    ControlInName,
    /// A row of a family whose other rows stand further up, apart from it.
    Apart,
    /// A row of another kind than the family's first.
    OtherKind,
    /// A figure of the family that is not the one which a row before has.
    Contradicts,
    /// A frame of a size that the family has already.
    FrameTwice,
    /// Amperes of a frame whose size is not told.
    FrameMissing,
    /// A figure that equipment of this kind does not have.
    DoesNotApply,
    /// More rows than [`MOST_FRAMES`], families than [`MOST_FAMILIES`], or frames than one family may have.
    TooMany,
    /// A row of more or fewer cells than there are columns, or a quote that is not closed or stands within a cell.
    Unreadable,
}

faults!(TableError, TableFault);

/// A family of the user's own to begin with: the generic one of a kind, under a name.
///
/// # Units
/// As the fields of [`Family`].
/// # Range
/// Every kind, any name.
/// # Source
/// As [`generic`].
#[must_use]
pub fn own(kind: Kind, name: &str) -> Family {
    Family { name: name.to_owned(), ..generic(kind) }
}

/// The word of a kind, the same as in a file.
fn word(kind: Kind) -> &'static str {
    match kind {
        Kind::ConvertingActive => "converting_active",
        Kind::ConvertingPassive => "converting_passive",
        Kind::Doubling => "doubling",
        Kind::LargeLowHarmonic => "large_low_harmonic",
        Kind::LargeEconomy => "large_economy",
        Kind::LargeEconomyChoke => "large_economy_choke",
        Kind::SolidStateConverter => "solid_state_converter",
        Kind::RotaryConverter => "rotary_converter",
        Kind::DeratedDrive => "derated_drive",
        Kind::StepUpActive => "step_up_active",
        Kind::StepUpPassive => "step_up_passive",
        Kind::ThreePhaseLine => "three_phase_line",
        Kind::ThreePhaseGenerator => "three_phase_generator",
        Kind::SinglePhaseMotor => "single_phase_motor",
    }
}
