//! How grave a finding is, its stable code, and the rule behind it.

use super::{Finding, Severity, Supplier};
use crate::power::volts::LEAST_SHARE;
use crate::quantity::feet;

impl Finding {
    /// How grave it is.
    #[must_use]
    pub fn severity(&self) -> Severity {
        match self {
            _ if self.stops() => Severity::Stop,
            Self::GroundWireGrew { .. }
            | Self::CoolsAbove { .. }
            | Self::MotorLight { .. }
            | Self::AssumptionDecides { .. }
            | Self::CoolerWaterIdle { .. } => Severity::Note,
            _ => Severity::Caution,
        }
    }

    /// Whether nobody should go on.
    pub(crate) fn stops(&self) -> bool {
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
            | Self::SetpointOverRating { .. }
            | Self::MotorDoesNotFit { .. }
            | Self::MotorOverloaded { beyond_service_factor: true, .. }
            | Self::SupplyNotTaken { .. }
            | Self::DriveAmpsShort { .. }
            | Self::DriveSizeShort { .. }
            | Self::HeatOrAltitude { left: None, .. }
            | Self::EnclosureWrong { .. }
            | Self::NoVoltsLeft
            | Self::ReadingStop { .. }
            | Self::LeadPeakHigh { .. }
            | Self::SupplyNoSize
            | Self::DeviceOver { .. }
            | Self::UtilityPassed { .. }
            | Self::StartDipHigh { at_motor: true, .. }
            | Self::HarmonicsOver { .. }
            | Self::GeneratorShort { .. }
            | Self::UnbalanceDerates { beyond_service_factor: true, .. }
            | Self::NoWayServes
            | Self::BeyondFormulas => true,
            Self::MotorVoltsLow { share, .. } => *share < LEAST_SHARE,
            Self::TransformerLoaded { share } => *share > 1.0,
            Self::FaultOverSccr { fault, marked } => fault > marked,
            Self::PumpingLevelAtPump { submergence, .. } => *submergence <= feet(0.0),
            Self::PumpNearBottom { off_bottom } => *off_bottom <= feet(0.0),
            _ => false,
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
            Self::SurgeOverRating { .. } => "SURGE_OVER_RATING",
            Self::DeadheadUnknown { .. } => "DEADHEAD_UNKNOWN",
            Self::SetpointOverRating { .. } => "SETPOINT_OVER_RATING",
            Self::HousePressureHigh { .. } => "HOUSE_PRESSURE_HIGH",
            Self::MotorDoesNotFit { .. } => "MOTOR_DOES_NOT_FIT",
            Self::DayAverage { .. } => "DAY_AVERAGE",
            Self::RunsByItself { .. } => "RUNS_BY_ITSELF",
            Self::CoolsAbove { .. } => "COOLS_ABOVE",
            Self::MotorCoolingLow { .. } => "MOTOR_COOLING_LOW",
            Self::MotorOverloaded { .. } => "MOTOR_OVERLOADED",
            Self::SpeedBandNarrow { .. } => "SPEED_BAND_NARROW",
            Self::PipeFast { .. } => "PIPE_FAST",
            Self::PumpInScreen { .. } => "PUMP_IN_SCREEN",
            Self::BeyondFormulas => "BEYOND_FORMULAS",
            Self::NameplateDisagrees { .. } => "NAMEPLATE_DISAGREES",
            Self::BeyondUsual { .. } => "BEYOND_USUAL",
            _ => self.code_of_power(),
        }
    }

    /// The code of what is found about the supply and the ways.
    fn code_of_power(&self) -> &'static str {
        match self {
            Self::SupplyNotTaken { .. } => "SUPPLY_NOT_TAKEN",
            Self::DriveAmpsShort { .. } => "DRIVE_AMPS_SHORT",
            Self::DriveSizeShort { .. } => "DRIVE_SIZE_SHORT",
            Self::HeatOrAltitude { .. } => "HEAT_OR_ALTITUDE",
            Self::EnclosureWrong { .. } => "ENCLOSURE_WRONG",
            Self::MotorVoltsLow { .. } => "MOTOR_VOLTS_LOW",
            Self::NoVoltsLeft => "NO_VOLTS_LEFT",
            Self::LeadNeedsFilter { .. } => "LEAD_NEEDS_FILTER",
            Self::LeadPeakHigh { .. } => "LEAD_PEAK_HIGH",
            Self::PulsesCanMeet { .. } => "PULSES_CAN_MEET",
            Self::SupplyNoSize => "SUPPLY_NO_SIZE",
            Self::CoolerWaterIdle { .. } => "COOLER_WATER_IDLE",
            Self::SupplyDropHigh { .. } => "SUPPLY_DROP_HIGH",
            Self::TransformerLoaded { .. } | Self::UtilityUnknown | Self::UtilityPassed { .. } => {
                "TRANSFORMER_OR_UTILITY"
            }
            Self::StartDipHigh { .. } => "START_DIP_HIGH",
            Self::HarmonicsOver { .. } => "HARMONICS_OVER",
            Self::FaultOverSccr { .. } => "FAULT_OVER_SCCR",
            Self::DeviceProvisional { .. } | Self::DeviceSmall { .. } | Self::DeviceLarge { .. } => {
                "DEVICE_PROVISIONAL"
            }
            Self::DeviceOver { .. } => "DEVICE_OVER",
            Self::FaultAssumed { .. } => "FAULT_ASSUMED",
            Self::MotorLight { .. } => "MOTOR_LIGHT",
            Self::GeneratorShort { .. } => "GENERATOR_SHORT",
            Self::SupplyGrounding { .. } => "SUPPLY_GROUNDING",
            Self::FullSpeedOnly => "FULL_SPEED_ONLY",
            Self::UnbalanceDerates { .. } => "UNBALANCE_DERATES",
            Self::NoWayServes => "NO_WAY_SERVES",
            Self::WayGone => "WAY_GONE",
            Self::EquipmentUnreadable => "EQUIPMENT_UNREADABLE",
            Self::BookUnreadable => "BOOK_UNREADABLE",
            Self::SensorRange { .. } => "SENSOR_RANGE",
            Self::SensorFreezes => "SENSOR_FREEZES",
            Self::ReadingStop { .. } => "READING_STOP",
            Self::AssumptionDecides { .. } => "ASSUMPTION_DECIDES",
            Self::DutyUnreadable => "DUTY_UNREADABLE",
            Self::DutyNotMet { .. } => "DUTY_NOT_MET",
            Self::TariffContradicts => "TARIFF_CONTRADICTS",
            Self::PriceMissing { .. } => "PRICE_MISSING",
            _ => Default::default(),
        }
    }

    /// The rule behind it, a key of `SOURCES.md`.
    #[must_use]
    pub fn source(&self) -> &'static str {
        match self {
            Self::CableNoSize { .. } => "nec-2023-310.16",
            Self::GroundWireGrew { .. } => "nec-2023-250.122",
            Self::NpshShort { .. } => "hi-9.6.1",
            Self::MotorOverloaded { .. } | Self::UnbalanceDerates { .. } | Self::MotorVoltsLow { .. } => {
                "nema-mg1-2016"
            }
            Self::EnclosureWrong { .. } => "nema-250",
            Self::PipeOverRating { .. } => "astm-d1785",
            Self::SurgeOverRating { .. } => "joukowsky-1898",
            Self::HousePressureHigh { .. } => "upc-608.2",
            Self::LeadPeakHigh { .. } | Self::LeadNeedsFilter { .. } => "nema-mg1-30",
            Self::CoolerWaterIdle { .. } => "nec-2023-310.14",
            Self::SupplyNoSize => "nec-2023-430.122",
            Self::DeviceProvisional { .. } | Self::DeviceSmall { .. } | Self::DeviceLarge { .. } => "nec-2023-430.122",
            Self::HarmonicsOver { .. } => "ieee-519-2022",
            Self::DeviceOver { .. } => "nec-2023-430.52",
            Self::FaultOverSccr { .. } | Self::FaultAssumed { .. } => "nec-2023-110.9-10",
            Self::PumpBeyondCurve { .. } | Self::DemandNotMet { .. } | Self::CurveUnusable => "pump-handbook",
            _ => "practice",
        }
    }
}
