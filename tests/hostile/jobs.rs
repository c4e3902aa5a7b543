//! Good jobs to be spoiled.

use wellwright_core::job::{DemandBy, DepthOf, DrawdownBy, Field, Job, wire};
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::{Entry, Unit};
use wellwright_core::water::line::FrictionMethod;

/// A job of which every figure is good.
pub fn house() -> Job {
    wire::read_text(include_str!("../../core/examples/jobs/house_and_stock_well.json")).unwrap()
}

/// A good job in which a field counts: the house's, or the house's with other choices.
pub fn counting(field: Field) -> Job {
    for motor_kind in [MotorKind::Submersible, MotorKind::Surface] {
        for demand in [DemandBy::Flow, DemandBy::Land, DemandBy::PeopleAndStock] {
            for drawdown in [DrawdownBy::SpecificCapacity, DrawdownBy::Measured, DrawdownBy::Aquifer] {
                for friction in [FrictionMethod::DarcyWeisbach, FrictionMethod::HazenWilliams] {
                    let mut job = house();
                    let choices = &mut job.choices;
                    (choices.motor_kind, choices.demand) = (Some(motor_kind), Some(demand));
                    (choices.drawdown, choices.friction) = (Some(drawdown), Some(friction));
                    choices.depth_of = Some(DepthOf::Net);
                    choices.shaded = None;
                    job.set(Field::SeasonMonths, Some(Entry::new(4.0, Unit::Month)));
                    if field.counts(&job) {
                        return job;
                    }
                }
            }
        }
    }
    panic!("{field:?} counts nowhere");
}
