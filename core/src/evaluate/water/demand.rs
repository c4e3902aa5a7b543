//! What is asked for: as a flow, for land, or for people and stock.

use crate::error::OutsideRange;
use crate::job::{Choices, DemandBy, DepthOf, Entered, Field, Known};
use crate::quantity::{Area, Length, Volume, VolumeRate, acres, gallons, gpm, hours, inches, liters_per_second};
use crate::standards::water_use::User;
use crate::water::demand::{Depth, flow_for, household_volume, irrigation_volume, weekly_volume};

/// What is asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Demand {
    /// The flow.
    pub flow: Known<VolumeRate>,
    /// Water of a day, where the flow was worked out from it.
    pub daily: Option<Volume>,
    /// Most water of a week, at this flow over the hours that are pumped.
    pub weekly: Option<Volume>,
}

/// Every kind of user, with the fields of their number and of what one uses.
pub const USERS: [(User, Field, Field); 4] = [
    (User::Person, Field::People, Field::PersonDaily),
    (User::Beef, Field::BeefCattle, Field::BeefDaily),
    (User::Dairy, Field::DairyCows, Field::DairyDaily),
    (User::Horse, Field::Horses, Field::HorseDaily),
];

/// What is asked for; nothing while a figure that it needs is missing or wrong, or where nothing is asked for.
///
/// # Errors
/// As the formulas: more water in a day than they hold for.
pub(super) fn demand(choices: &Choices, entered: &Entered) -> Result<Option<Demand>, OutsideRange> {
    let pumping = entered.get(Field::PumpingHours, hours);
    let weekly = |flow| weekly_volume(flow, pumping?).ok();
    let daily = match choices.demand() {
        DemandBy::Flow => {
            let flow = entered.take(Field::Flow, gpm).ok().flatten();
            return Ok(flow.map(|flow| Demand { flow, daily: None, weekly: weekly(flow.value) }));
        }
        DemandBy::Land => land(choices, entered).map(|(area, depth)| irrigation_volume(area, depth)),
        DemandBy::PeopleAndStock => people(entered).map(|users| household_volume(&users)),
    };
    let (Some(daily), Some(pumping)) = (daily.transpose()?, pumping) else { return Ok(None) };
    let flow = Known::worked_out(flow_for(daily, pumping)?);
    let some = flow.value > liters_per_second(0.0);
    Ok(some.then(|| Demand { flow, daily: Some(daily), weekly: weekly(flow.value) }))
}

/// Area and depth of irrigation.
fn land(choices: &Choices, entered: &Entered) -> Option<(Area, Depth)> {
    let area = entered.get(Field::IrrigatedArea, acres)?;
    let depth: Length = entered.get(Field::WaterDepth, inches)?;
    let efficiency = || entered.get(Field::ApplicationEfficiency, |share| share);
    Some(match choices.depth_of() {
        DepthOf::Gross => (area, Depth::Gross(depth)),
        DepthOf::Net => (area, Depth::Net { depth, efficiency: efficiency()? }),
    })
}

fn people(entered: &Entered) -> Option<Vec<(User, f64, Volume)>> {
    let mut users = Vec::with_capacity(USERS.len());
    for (user, number, daily) in USERS {
        // A number that can't be used blocks the sum; one that was not entered is none.
        if let Some(number) = entered.take(number, |number| number).ok()? {
            users.push((user, number.value, entered.get(daily, gallons)?));
        }
    }
    Some(users)
}
