//! The figures of a job: what each accepts, what is usual, and where it stands in a file.

use crate::error::{InputError, Range};
use crate::quantity::{Entry, Kind, Unit};

/// A figure that a person enters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub enum Field {
    /// Depth of the pump below ground.
    PumpSetting,
    /// Depth of the water with the pump at rest.
    StaticLevel,
    /// How far the water falls while the pump runs.
    Drawdown,
    /// Depth of the well's bottom.
    WellDepth,
    /// Least depth of water above the pump while it runs.
    MinimumSubmergence,
    /// Length of lead from the drive to the well head.
    SurfaceRun,
    /// Rated power of the motor.
    MotorPower,
    /// Nameplate amperes connected for 230 V.
    NameplateAmps230,
    /// Nameplate amperes connected for 460 V.
    NameplateAmps460,
    /// Power factor of the motor.
    MotorPowerFactor,
    /// Efficiency of the motor.
    MotorEfficiency,
    /// Warmest surroundings along the lead.
    Ambient,
    /// Largest voltage drop along the lead.
    AllowedDrop,
    /// Rating of the overcurrent device ahead of the drive.
    DeviceAmps,
    /// Part of the cable's price that does not depend on metal.
    CableFixed,
    /// Price of the metal as cable.
    CableMetal,
    /// What the equipment of the 480 V way costs beyond that of the 240 V way.
    ExtraEquipment,
}

/// What a field accepts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spec {
    /// Accepted range, ends included.
    pub accepted: Range,
    /// Bounds beyond which a value is unusual, in the unit of `accepted`.
    pub usual: (f64, f64),
    /// What stands in until a figure is entered: a fixed value, or worked out from others, or nothing.
    pub default: Stand,
}

/// What stands in for an empty field.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Stand {
    /// Nothing: the figure must be entered.
    Nothing,
    /// This value, shown as assumed.
    Assumed(Entry),
    /// A value that follows from other figures, shown as assumed.
    Follows,
    /// No value is needed.
    Optional,
}

impl Field {
    /// Every field, in the order of the page.
    pub const ALL: [Self; 17] = [
        Self::PumpSetting,
        Self::StaticLevel,
        Self::Drawdown,
        Self::WellDepth,
        Self::MinimumSubmergence,
        Self::SurfaceRun,
        Self::MotorPower,
        Self::NameplateAmps230,
        Self::NameplateAmps460,
        Self::MotorPowerFactor,
        Self::MotorEfficiency,
        Self::Ambient,
        Self::AllowedDrop,
        Self::DeviceAmps,
        Self::CableFixed,
        Self::CableMetal,
        Self::ExtraEquipment,
    ];

    /// Where the field stands in a job file.
    #[must_use]
    pub fn path(self) -> &'static str {
        match self {
            Self::PumpSetting => "site.pump_setting",
            Self::StaticLevel => "site.static_level",
            Self::Drawdown => "site.drawdown",
            Self::WellDepth => "site.well_depth",
            Self::MinimumSubmergence => "site.minimum_submergence",
            Self::SurfaceRun => "site.surface_run",
            Self::MotorPower => "motor.power",
            Self::NameplateAmps230 => "motor.nameplate_amps_230",
            Self::NameplateAmps460 => "motor.nameplate_amps_460",
            Self::MotorPowerFactor => "motor.power_factor",
            Self::MotorEfficiency => "motor.efficiency",
            Self::Ambient => "site.ambient",
            Self::AllowedDrop => "cable.allowed_drop",
            Self::DeviceAmps => "cable.device",
            Self::CableFixed => "prices.cable_fixed",
            Self::CableMetal => "prices.cable_metal",
            Self::ExtraEquipment => "prices.extra_equipment",
        }
    }

    /// The kind of quantity that it holds.
    #[must_use]
    pub fn kind(self) -> Kind {
        self.spec().accepted.unit.kind()
    }

    /// What it accepts and what stands in for it. Limits mark where the tables end, or physics; defaults are common
    /// practice, no single source, and always shown as assumed.
    #[must_use]
    pub fn spec(self) -> Spec {
        const ANY: (f64, f64) = (f64::NEG_INFINITY, f64::INFINITY);
        let spec = |min, max, unit, usual, default| Spec { accepted: Range { min, max, unit }, usual, default };
        let assumed = |value, unit| Stand::Assumed(Entry::new(value, unit));
        match self {
            Self::PumpSetting => spec(0.0, 3000.0, Unit::Foot, ANY, Stand::Nothing),
            Self::StaticLevel | Self::Drawdown => spec(0.0, 3000.0, Unit::Foot, ANY, Stand::Optional),
            Self::WellDepth => spec(0.0, 5000.0, Unit::Foot, ANY, Stand::Optional),
            Self::MinimumSubmergence => spec(0.0, 200.0, Unit::Foot, (5.0, f64::INFINITY), assumed(10.0, Unit::Foot)),
            Self::SurfaceRun => spec(0.0, 3000.0, Unit::Foot, ANY, assumed(20.0, Unit::Foot)),
            Self::MotorPower => spec(0.5, 200.0, Unit::Horsepower, (0.0, 20.0), Stand::Nothing),
            Self::NameplateAmps230 | Self::NameplateAmps460 => spec(0.5, 800.0, Unit::Ampere, ANY, Stand::Optional),
            Self::MotorPowerFactor | Self::MotorEfficiency => spec(0.4, 0.98, Unit::One, ANY, Stand::Follows),
            Self::Ambient => spec(-40.0, 60.0, Unit::DegreeCelsius, (-10.0, 40.0), assumed(40.0, Unit::DegreeCelsius)),
            Self::AllowedDrop => spec(0.5, 15.0, Unit::Percent, (0.0, 5.0), assumed(5.0, Unit::Percent)),
            Self::DeviceAmps => spec(15.0, 2000.0, Unit::Ampere, ANY, Stand::Follows),
            Self::CableFixed => spec(0.0, 1000.0, Unit::DollarPerFoot, ANY, assumed(0.5, Unit::DollarPerFoot)),
            Self::CableMetal => spec(0.0, 1000.0, Unit::DollarPerPound, ANY, assumed(9.0, Unit::DollarPerPound)),
            Self::ExtraEquipment => spec(-1e6, 1e6, Unit::Dollar, ANY, assumed(900.0, Unit::Dollar)),
        }
    }

    /// Checks an entry and returns its value in the unit of the accepted range.
    ///
    /// A value within 10⁻⁹ of an end of the range is that end, so that an end entered in another unit is inside it.
    ///
    /// # Errors
    /// Names the field, what was given and what is accepted; NaN and infinity fail too.
    pub fn check(self, given: Entry) -> Result<f64, InputError> {
        let accepted = self.spec().accepted;
        let Some(value) = given.to(accepted.unit) else {
            return Err(InputError::WrongUnit { field: self, given, accepted });
        };
        if !value.is_finite() {
            return Err(InputError::NotFinite { field: self, accepted });
        }
        let slack = 1e-9 * value.abs();
        if value < accepted.min - slack || value > accepted.max + slack {
            return Err(InputError::OutOfRange { field: self, given, accepted });
        }
        Ok(value.clamp(accepted.min, accepted.max))
    }
}
