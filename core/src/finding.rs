//! What is computed but unwise or unsafe: codes and quantities, no sentences.

use crate::job::{Field, Part, Way};
use crate::pump::curve::CurveWarning;
use crate::quantity::{ElectricCurrent, Entry, Frequency, Length, Power, Pressure, Velocity, VolumeRate, feet};
use serde::Serialize;

/// How grave a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Severity {
    /// Worth knowing.
    Note,
    /// Look before going on.
    Caution,
    /// Do not go on.
    Stop,
}

/// Who does not give what is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Supplier {
    /// The pump, at its highest speed.
    Pump,
    /// The well, drawn down to the pump.
    Well,
    /// The well, as it was tested.
    Test,
}

/// What was found.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Finding {
    /// No listed size meets ampacity and voltage drop on this way at this depth.
    CableNoSize {
        /// The way concerned.
        way: Way,
    },
    /// Aluminum chosen for a lead that hangs in the well.
    AluminumInWell,
    /// The equipment ground grew with the phase conductors (NEC 250.122(B)).
    GroundWireGrew {
        /// The way concerned.
        way: Way,
    },
    /// The water above the pump is less than the least: while it runs, or at rest where the drawdown is not known. At
    /// zero and below, the pump hangs dry.
    PumpingLevelAtPump {
        /// Depth of water above the pump.
        submergence: Length,
        /// The least.
        minimum: Length,
    },
    /// The pump hangs near the well's bottom, or is set at it or deeper.
    PumpNearBottom {
        /// Distance above the bottom; zero or below, the setting reaches the bottom.
        off_bottom: Length,
    },
    /// The water stands at the well's bottom or below it: at rest, or while the pump runs.
    LevelBelowBottom {
        /// Depth of the water below ground.
        level: Length,
        /// Depth of the bottom.
        bottom: Length,
    },
    /// More is asked for than the pump or the well gives.
    DemandNotMet {
        /// Flow asked for.
        asked: VolumeRate,
        /// Flow that is given.
        gives: VolumeRate,
        /// By whom.
        by: Supplier,
    },
    /// At every speed that gives the flow, the pump runs past the end of its curve.
    PumpBeyondCurve {
        /// The largest flow of the curve.
        most: VolumeRate,
    },
    /// The text of the pump's curve makes no curve.
    CurveUnusable,
    /// The curve can be used, but something is odd about it.
    CurveOdd {
        /// What.
        warning: CurveWarning,
    },
    /// The pump works far from its best efficiency.
    FarFromBest {
        /// Its flow as a share of the flow of best efficiency.
        share: f64,
    },
    /// A surface pump finds too little head at its suction.
    NpshShort {
        /// Head available.
        available: Length,
        /// Head required, margin included.
        required: Length,
    },
    /// Against a shut valve the pump alone passes the least rating at the gauge.
    DeadheadOverRating {
        /// Pressure at the gauge.
        gauge: Pressure,
        /// The rating.
        rating: Pressure,
    },
    /// Against a shut valve the pump alone passes what a pipe is rated for.
    PipeOverRating {
        /// The part of the line.
        part: Part,
        /// What the pipe holds back.
        pressure: Pressure,
        /// Its rating.
        rating: Pressure,
    },
    /// The motor, or the sleeve around it, is no narrower than what it hangs in.
    MotorDoesNotFit {
        /// Outside diameter of what hangs.
        inner: Length,
        /// Inside diameter around it.
        outer: Length,
    },
    /// What is asked for is the average of a day: it takes a tank that holds a day's use.
    DayAverage {
        /// That flow.
        flow: VolumeRate,
    },
    /// The drive lets the flow fall below the one that cools the motor, and no least flow was entered.
    CoolsAbove {
        /// The flow that cools the motor.
        least_flow: VolumeRate,
    },
    /// The water past the motor is slow.
    MotorCoolingLow {
        /// Its speed.
        speed: Velocity,
        /// The speed that is advised.
        advised: Velocity,
        /// The flow that gives it.
        least_flow: VolumeRate,
        /// Inside diameter of the widest sleeve that gives it at the flow that is judged; nothing where no sleeve fits.
        sleeve: Option<Length>,
    },
    /// The pump loads the motor beyond its rating: at the flow that is asked for, or anywhere on its curve.
    MotorOverloaded {
        /// The largest power at the shaft.
        shaft: Power,
        /// The rating, without the service factor.
        rated: Power,
        /// True where it passes the rating with the service factor that counts.
        beyond_service_factor: bool,
    },
    /// Little is left between the lowest useful frequency and the highest, or the lowest is too low for the motor.
    SpeedBandNarrow {
        /// The frequency that just holds the pressure.
        lowest: Frequency,
        /// The highest frequency.
        most: Frequency,
        /// The lowest that the motor may run at.
        least: Frequency,
    },
    /// The water runs fast in a pipe.
    PipeFast {
        /// The part of the line.
        part: Part,
        /// Its speed.
        velocity: Velocity,
        /// The usual most.
        usual: Velocity,
    },
    /// The pump hangs in the screen or below its top.
    PumpInScreen {
        /// Depth of the top of the screen.
        top: Length,
    },
    /// The figures of the water or the pump lie beyond what the formulas hold for, or contradict one another.
    BeyondFormulas,
    /// Nameplate amperes and the motor's power, efficiency and power factor disagree.
    NameplateDisagrees {
        /// The way concerned.
        way: Way,
        /// Amperes by power, efficiency and power factor.
        expected: ElectricCurrent,
        /// Amperes entered.
        nameplate: ElectricCurrent,
    },
    /// An entry beyond what is usual, though inside what the sums hold for.
    BeyondUsual {
        /// The field.
        field: Field,
        /// The usual bound that was passed.
        usual: Entry,
    },
}

impl Finding {
    /// How grave it is.
    #[must_use]
    pub fn severity(&self) -> Severity {
        match self {
            Self::CableNoSize { .. }
            | Self::AluminumInWell
            | Self::LevelBelowBottom { .. }
            | Self::DemandNotMet { by: Supplier::Pump | Supplier::Well, .. }
            | Self::PumpBeyondCurve { .. }
            | Self::CurveUnusable
            | Self::NpshShort { .. }
            | Self::DeadheadOverRating { .. }
            | Self::PipeOverRating { .. }
            | Self::MotorDoesNotFit { .. }
            | Self::MotorOverloaded { beyond_service_factor: true, .. }
            | Self::BeyondFormulas => Severity::Stop,
            Self::PumpingLevelAtPump { submergence, .. } if *submergence <= feet(0.0) => Severity::Stop,
            Self::PumpNearBottom { off_bottom } if *off_bottom <= feet(0.0) => Severity::Stop,
            Self::GroundWireGrew { .. } | Self::CoolsAbove { .. } => Severity::Note,
            Self::PumpingLevelAtPump { .. }
            | Self::PumpNearBottom { .. }
            | Self::DemandNotMet { by: Supplier::Test, .. }
            | Self::CurveOdd { .. }
            | Self::FarFromBest { .. }
            | Self::DayAverage { .. }
            | Self::MotorCoolingLow { .. }
            | Self::MotorOverloaded { .. }
            | Self::SpeedBandNarrow { .. }
            | Self::PipeFast { .. }
            | Self::PumpInScreen { .. }
            | Self::NameplateDisagrees { .. }
            | Self::BeyondUsual { .. } => Severity::Caution,
        }
    }

    /// A stable code for files.
    #[must_use]
    pub fn code(&self) -> &'static str {
        match self {
            Self::CableNoSize { .. } => "CABLE_NO_SIZE",
            Self::AluminumInWell => "ALUMINIUM_IN_WELL",
            Self::GroundWireGrew { .. } => "GROUND_WIRE_GREW",
            Self::PumpingLevelAtPump { .. } => "PUMPING_LEVEL_AT_PUMP",
            Self::PumpNearBottom { .. } => "PUMP_NEAR_BOTTOM",
            Self::LevelBelowBottom { .. } => "LEVEL_BELOW_BOTTOM",
            Self::DemandNotMet { .. } => "DEMAND_NOT_MET",
            Self::PumpBeyondCurve { .. } => "PUMP_BEYOND_CURVE",
            Self::CurveUnusable => "CURVE_UNUSABLE",
            Self::CurveOdd { .. } => "CURVE_ODD",
            Self::FarFromBest { .. } => "FAR_FROM_BEST",
            Self::NpshShort { .. } => "NPSH_SHORT",
            Self::DeadheadOverRating { .. } => "DEADHEAD_OVER_RATING",
            Self::PipeOverRating { .. } => "PIPE_OVER_RATING",
            Self::MotorDoesNotFit { .. } => "MOTOR_DOES_NOT_FIT",
            Self::DayAverage { .. } => "DAY_AVERAGE",
            Self::CoolsAbove { .. } => "COOLS_ABOVE",
            Self::MotorCoolingLow { .. } => "MOTOR_COOLING_LOW",
            Self::MotorOverloaded { .. } => "MOTOR_OVERLOADED",
            Self::SpeedBandNarrow { .. } => "SPEED_BAND_NARROW",
            Self::PipeFast { .. } => "PIPE_FAST",
            Self::PumpInScreen { .. } => "PUMP_IN_SCREEN",
            Self::BeyondFormulas => "BEYOND_FORMULAS",
            Self::NameplateDisagrees { .. } => "NAMEPLATE_DISAGREES",
            Self::BeyondUsual { .. } => "BEYOND_USUAL",
        }
    }

    /// The rule behind it, a key of `SOURCES.md`.
    #[must_use]
    pub fn source(&self) -> &'static str {
        match self {
            Self::CableNoSize { .. } => "nec-2023-310.16",
            Self::GroundWireGrew { .. } => "nec-2023-250.122",
            Self::NpshShort { .. } => "hi-9.6.1",
            Self::MotorOverloaded { .. } => "nema-mg1-2016",
            Self::PumpBeyondCurve { .. } | Self::DemandNotMet { .. } | Self::CurveUnusable => "pump-handbook",
            _ => "practice",
        }
    }
}
