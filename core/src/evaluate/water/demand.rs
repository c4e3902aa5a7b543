//! What is asked for: as a flow, for land, or for people and stock.

use crate::job::{Choices, DemandBy, DepthOf, Entered, Field, Known, Origin};
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

pub(super) fn demand(choices: &Choices, entered: &Entered) -> Option<Demand> {
    let pumping = entered.take(Field::PumpingHours, hours);
    let weekly = |flow| weekly_volume(flow, pumping.as_ref().ok()?.as_ref()?.value).ok();
    let daily = match choices.demand() {
        DemandBy::Flow => {
            let flow = entered.take(Field::Flow, gpm).ok()??;
            return Some(Demand { flow, daily: None, weekly: weekly(flow.value) });
        }
        DemandBy::Land => land(choices, entered)?,
        DemandBy::PeopleAndStock => people(entered)?,
    };
    let flow = flow_for(daily, pumping.as_ref().ok()?.as_ref()?.value).ok()?;
    let known = Known { value: flow, origin: Origin::WorkedOut };
    (flow > liters_per_second(0.0)).then_some(Demand { flow: known, daily: Some(daily), weekly: weekly(flow) })
}

/// Area and depth of irrigation.
fn land_of(choices: &Choices, entered: &Entered) -> Option<(Area, Depth)> {
    let area = entered.get(Field::IrrigatedArea, acres)?;
    let depth: Length = entered.get(Field::WaterDepth, inches)?;
    Some((
        area,
        match choices.depth_of() {
            DepthOf::Gross => Depth::Gross(depth),
            DepthOf::Net => Depth::Net { depth, efficiency: entered.get(Field::ApplicationEfficiency, |share| share)? },
        },
    ))
}

fn land(choices: &Choices, entered: &Entered) -> Option<Volume> {
    let (area, depth) = land_of(choices, entered)?;
    irrigation_volume(area, depth).ok()
}

fn people(entered: &Entered) -> Option<Volume> {
    let mut users = Vec::with_capacity(USERS.len());
    for (user, number, daily) in USERS {
        // A number that can't be used blocks the sum; one that was not entered is none.
        if let Some(number) = entered.take(number, |number| number).ok()? {
            users.push((user, number.value, entered.get(daily, gallons)?));
        }
    }
    household_volume(&users).ok()
}
