//! Which figures of a job count, by what is chosen: the others are kept, but neither shown nor judged.

use super::{Choices, DemandBy, DepthOf, DrawdownBy, Field, Job, Part};
use crate::pump::curve::Quantity;
use crate::pump::motor::MotorKind;
use crate::pump::paste::{Column, ColumnUnit, read};
use crate::water::line::FrictionMethod;

impl Field {
    /// Whether the figure counts in a job.
    #[must_use]
    pub fn counts(self, job: &Job) -> bool {
        let choices = &job.choices;
        let submersible = choices.motor_kind() == MotorKind::Submersible;
        match self {
            Self::PumpSetting
            | Self::StaticLevel
            | Self::WellDepth
            | Self::MinimumSubmergence
            | Self::TestedYield
            | Self::CasingInside
            | Self::ScreenTop
            | Self::MotorDiameter
            | Self::SleeveInside
            | Self::LeastFlow
            | Self::PumpMass => submersible,
            Self::Drawdown => submersible && choices.drawdown() == DrawdownBy::Measured,
            Self::SpecificCapacity => submersible && choices.drawdown() == DrawdownBy::SpecificCapacity,
            Self::Transmissivity | Self::Storage | Self::BoreDiameter | Self::AquiferTime | Self::WellLoss => {
                submersible && choices.drawdown() == DrawdownBy::Aquifer
            }
            Self::SuctionLift | Self::SuctionLength | Self::NpshRequired | Self::NpshMargin => !submersible,
            Self::PumpEfficiency => !tells_power(&job.curve),
            Self::ShutOffHead => !tells_shut_off(&job.curve),
            Self::YearlyHours | Self::HoursLow | Self::HoursHigh => job.duty.trim().is_empty(),
            Self::SeasonPrice | Self::SeasonDemandPrice | Self::SeasonShare => {
                job.get(Self::SeasonMonths).is_some_and(|months| months.value > 0.0)
            }
            Self::SunRise => !choices.out_of_the_sun(),
            _ => in_the_demand(self, choices) && in_the_line(self, choices),
        }
    }
}

/// Whether a curve tells the head against a shut valve: it does where it begins at zero flow. A text that can't be read is
/// no pump at all, and no figure counts beside it.
fn tells_shut_off(curve: &str) -> bool {
    let told = || {
        read(curve, ColumnUnit::Gpm, ColumnUnit::Foot)
            .map_or(true, |read| read.points.first().is_none_or(|point| point.flow.value == 0.0))
    };
    !curve.trim().is_empty() && told()
}

/// Whether a curve tells the power at the shaft: one of flow and head alone does not. A text that can't be read is no pump
/// at all, and no figure counts beside it.
fn tells_power(curve: &str) -> bool {
    let of_power = |column: &Column| matches!(column.unit.quantity(), Quantity::Efficiency | Quantity::Power);
    let told = || read(curve, ColumnUnit::Gpm, ColumnUnit::Foot).map_or(true, |read| read.columns.iter().any(of_power));
    !curve.trim().is_empty() && told()
}

fn in_the_demand(field: Field, choices: &Choices) -> bool {
    match field {
        Field::Flow => choices.demand() == DemandBy::Flow,
        Field::IrrigatedArea | Field::WaterDepth => choices.demand() == DemandBy::Land,
        Field::ApplicationEfficiency => choices.demand() == DemandBy::Land && choices.depth_of() == DepthOf::Net,
        Field::People
        | Field::BeefCattle
        | Field::DairyCows
        | Field::Horses
        | Field::PersonDaily
        | Field::BeefDaily
        | Field::DairyDaily
        | Field::HorseDaily => choices.demand() == DemandBy::PeopleAndStock,
        _ => true,
    }
}

fn in_the_line(field: Field, choices: &Choices) -> bool {
    let Some(part) = Part::ALL.into_iter().find(|part| part.fields().contains(&field)) else { return true };
    let [_, roughness, hazen_williams, _] = part.fields();
    let used = match part {
        Part::Drop => choices.motor_kind() == MotorKind::Submersible,
        Part::Suction => choices.motor_kind() == MotorKind::Surface,
        Part::Surface => true,
    };
    let method = choices.friction();
    let other = (field == roughness && method == FrictionMethod::HazenWilliams)
        || (field == hazen_williams && method == FrictionMethod::DarcyWeisbach);
    used && !other
}
