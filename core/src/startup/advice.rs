//! What is likely behind a reading, and what is looked at next.

use serde::Serialize;

/// A likely cause, or the next thing to look at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Advice {
    /// Lock off, wait for the discharge, test dead.
    LockOff,
    /// The splice takes water.
    Splice,
    /// The lead was hurt on the way down.
    LeadHurt,
    /// The winding is wet or burnt.
    Winding,
    /// Part cable and motor, and test each.
    TestApart,
    /// Test again with a dry, clean, discharged lead.
    TestAgain,
    /// The motor does more than its rating: sand, a tight pump, too much flow.
    Overload,
    /// The volts are low.
    LowVolts,
    /// The motor is connected for the other voltage.
    Connection,
    /// Move all three lines one place: what moves with the line is the supply, what stays is the motor.
    RollLines,
    /// A loose or burnt connection.
    LooseConnection,
    /// The conductors are too small or too long.
    Conductors,
    /// The transformer, or what else hangs on it.
    Transformer,
    /// Ask the utility.
    Utility,
    /// The well gives less than it did, or the drawdown was told too small.
    WellFalls,
    /// The screen or the perforations are plugged.
    Screen,
    /// Less flow, or a lower pump.
    LessFlow,
    /// The pump is worn.
    Worn,
    /// A valve that is not fully open, a plugged strainer.
    Valve,
    /// A leak in the line.
    Leak,
    /// It turns the wrong way.
    Rotation,
    /// The gauge or the instrument is wrong for this.
    Instrument,
    /// Wiring, span or line of the transducer.
    Transducer,
    /// The tank lost its air, or it was set with water in it.
    TankAir,
    /// The settings of the drive.
    Settings,
}
