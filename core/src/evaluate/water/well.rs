//! The well: how far its water falls, and how much it gives.

use crate::error::OutsideRange;
use crate::job::{Choices, DrawdownBy, Entered, Field};
use crate::quantity::{
    Length, SpecificCapacity, VolumeRate, WellLossCoefficient, feet, feet_per_square_gallon_per_minute,
    gallons_per_day_per_foot, gallons_per_minute_per_foot, hours, inches,
};
use crate::water::well::{
    Aquifer, drawdown_by_capacity, drawdown_in_proportion, flow_for_aquifer_drawdown, flow_for_drawdown,
    theis_drawdown, well_loss,
};

/// How far the water falls at a flow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Law {
    /// As measured, whatever the flow: no flow was told with it.
    Fixed(Length),
    /// In proportion to a drawdown measured at a flow.
    Measured {
        /// The drawdown.
        drawdown: Length,
        /// Its flow.
        at: VolumeRate,
    },
    /// By a specific capacity.
    Capacity(SpecificCapacity),
    /// By the aquifer, and the loss of the well.
    Aquifer {
        /// The aquifer.
        aquifer: Aquifer,
        /// The well's loss.
        loss: WellLossCoefficient,
    },
}

impl Law {
    /// The drawdown at a flow.
    ///
    /// # Errors
    /// As the formulas.
    pub fn drawdown(self, flow: VolumeRate) -> Result<Length, OutsideRange> {
        match self {
            Self::Fixed(drawdown) => Ok(drawdown),
            Self::Measured { drawdown, at } => drawdown_in_proportion(drawdown, at, flow),
            Self::Capacity(capacity) => drawdown_by_capacity(flow, capacity),
            Self::Aquifer { aquifer, loss } => Ok(theis_drawdown(flow, aquifer)? + well_loss(loss, flow)?),
        }
    }

    /// The flow that draws the water down so far; nothing where no flow does, or none is known to.
    #[must_use]
    pub fn flow(self, drawdown: Length) -> Option<VolumeRate> {
        match self {
            Self::Fixed(_) => None,
            Self::Measured { drawdown: measured, at } => {
                let share = drawdown / measured;
                share.value.is_finite().then(|| at * share)
            }
            Self::Capacity(capacity) => flow_for_drawdown(drawdown, capacity).ok(),
            Self::Aquifer { aquifer, loss } => flow_for_aquifer_drawdown(drawdown, aquifer, loss).ok(),
        }
    }
}

pub(super) fn law(choices: &Choices, entered: &Entered, flow: Option<VolumeRate>) -> Option<Law> {
    match choices.drawdown() {
        DrawdownBy::Measured => {
            let drawdown = entered.get(Field::Drawdown, feet)?;
            Some(flow.map_or(Law::Fixed(drawdown), |at| Law::Measured { drawdown, at }))
        }
        DrawdownBy::SpecificCapacity => {
            entered.get(Field::SpecificCapacity, gallons_per_minute_per_foot).map(Law::Capacity)
        }
        DrawdownBy::Aquifer => {
            let loss = entered.take(Field::WellLoss, feet_per_square_gallon_per_minute).ok()?;
            Some(Law::Aquifer {
                aquifer: Aquifer {
                    transmissivity: entered.get(Field::Transmissivity, gallons_per_day_per_foot)?,
                    storage: entered.get(Field::Storage, |storage| storage)?,
                    radius: entered.get(Field::BoreDiameter, inches)? * 0.5,
                    time: entered.get(Field::AquiferTime, hours)?,
                },
                loss: loss.map_or(feet_per_square_gallon_per_minute(0.0), |known| known.value),
            })
        }
    }
}
