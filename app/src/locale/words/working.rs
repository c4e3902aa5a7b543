//! The working behind an answer.

/// Words of the working.
pub struct Working {
    pub open: fn(&str) -> String,
}

/// US English.
pub const ENGLISH: Working = Working { open: |what| format!("Working of {what}") };

/// Spanish.
pub const SPANISH: Working = Working { open: |what| format!("Desarrollo de {what}") };
