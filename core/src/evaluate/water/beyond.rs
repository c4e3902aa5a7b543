//! An answer that is missing though each figure that it needs can be used by itself: together they lie beyond the
//! formulas, or contradict one another. Nothing is left out in silence.

use super::Water;
use crate::job::{Entered, Field};
use crate::quantity::feet;

/// Whether an answer is missing without a reason that is told elsewhere. `told` where another finding says why the pump
/// can't do what is asked.
pub(super) fn beyond(entered: &Entered, water: &Water, told: bool) -> bool {
    water.outside || no_duty(entered, water, told) || no_dead_head(entered, water) || no_tank(entered, water)
}

fn usable(entered: &Entered, fields: &[Field]) -> bool {
    fields.iter().all(|field| entered.take(*field, |_| ()).is_ok())
}

/// No speed or no power serves, or the curve can't be carried to the highest speed.
fn no_duty(entered: &Entered, water: &Water, told: bool) -> bool {
    let Some(pump) = &water.pump else { return false };
    let by_speed = pump.curve.is_some() || entered.get(Field::ShutOffHead, feet).is_some();
    (pump.duty.is_err() && !told) || (by_speed && pump.ratio(pump.band.1).is_err())
}

fn no_dead_head(entered: &Entered, water: &Water) -> bool {
    let shut_off = water.pump.as_ref().and_then(|pump| pump.shut_off);
    shut_off.is_some() && usable(entered, &[Field::PressureRating]) && water.dead_head.is_none()
}

/// More air than at cut-in, or a cut-in above the cut-out.
fn no_tank(entered: &Entered, water: &Water) -> bool {
    let needed = [Field::TankPrecharge, Field::CutIn, Field::Pressure, Field::Altitude];
    entered.get(Field::TankVolume, |_| ()).is_some() && usable(entered, &needed) && water.tank.is_none()
}
