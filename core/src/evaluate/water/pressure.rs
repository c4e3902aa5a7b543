//! What is unwise or unsafe about the pressure: a shut valve, the setpoint, a house, and the pipes that hold it.

use super::findings::SLACK;
use super::line::Pipework;
use super::{Surge, Water};
use crate::finding::Finding;
use crate::job::{DemandBy, Field, Inputs, Job, Part};
use crate::quantity::{Pressure, psi};
use crate::water::dead_head::house_limit;
use crate::water::head::pressure_of_head;
use crate::water::pipe_rating::rating_in_service;

pub(super) fn findings(job: &Job, inputs: &Inputs, water: &Water) -> Vec<Finding> {
    let mut found = of_the_pipes(inputs, water);
    found.extend(against_a_shut_valve(inputs, water));
    found.extend(of_the_setpoint(inputs));
    found.extend(of_a_house(job, inputs, water));
    found
}

/// The pump against a shut valve; that it is not known counts where there is a pump at all.
fn against_a_shut_valve(inputs: &Inputs, water: &Water) -> Option<Finding> {
    if let Some(dead) = water.dead_head {
        return dead.over.then_some(Finding::DeadheadOverRating { gauge: dead.gauge, rating: dead.rating.value });
    }
    let rating = inputs.entered.get(Field::PressureRating, psi)?;
    let unknown =
        water.pump.as_ref()?.shut_off.is_none() && inputs.entered.take(Field::ShutOffHead, |head| head).is_ok();
    unknown.then_some(Finding::DeadheadUnknown { rating })
}

/// A setpoint that reaches the rating leaves nothing for a valve to open at.
fn of_the_setpoint(inputs: &Inputs) -> Option<Finding> {
    let (setpoint, rating) =
        (inputs.entered.get(Field::Pressure, psi)?, inputs.entered.get(Field::PressureRating, psi)?);
    (setpoint >= rating).then_some(Finding::SetpointOverRating { setpoint, rating })
}

/// People are served: what is held, and what a shut valve builds, against the most that is let into a house.
fn of_a_house(job: &Job, inputs: &Inputs, water: &Water) -> Option<Finding> {
    if job.choices.demand() != DemandBy::PeopleAndStock {
        return None;
    }
    let limit = house_limit();
    let setpoint = inputs.entered.get(Field::Pressure, psi);
    let most = [setpoint, water.dead_head.map(|dead| dead.gauge)].into_iter().flatten().reduce(Pressure::max)?;
    (most > limit * (1.0 + SLACK)).then_some(Finding::HousePressureHigh { pressure: most, limit })
}

/// Each plastic pipe by what is left of its rating in this water: against a shut valve, and where the water stops at once.
fn of_the_pipes(inputs: &Inputs, water: &Water) -> Vec<Finding> {
    let Some(system) = &water.system else { return Vec::new() };
    let Some(warm) = inputs.entered.get(Field::WaterTemperature, |degrees| degrees) else {
        return Vec::new();
    };
    system.pipes.iter().filter_map(|pipe| of_a_pipe(pipe, warm, inputs, water)).flatten().collect()
}

fn of_a_pipe(pipe: &Pipework, warm: f64, inputs: &Inputs, water: &Water) -> Option<Vec<Finding>> {
    let part = pipe.part;
    let rating = rating_of(pipe, warm)?;
    let over = |pressure: Pressure| pressure > rating * (1.0 + SLACK);
    let [at_rest, running] = pressures(part, inputs, water);
    let mut found = Vec::new();
    found.extend(at_rest.filter(|held| over(*held)).map(|pressure| Finding::PipeOverRating { part, pressure, rating }));
    let surge: Option<Surge> = water.surge.filter(|surge| surge.part == part);
    let stopped = running.zip(surge).map(|(running, surge)| running + surge.rise);
    found.extend(stopped.filter(|held| over(*held)).map(|pressure| Finding::SurgeOverRating {
        part,
        pressure,
        rating,
    }));
    Some(found)
}

/// What is left of a pipe's rating in this water. A drop pipe of schedule 80 is taken as threaded: most are, and where it
/// is not that is the safe side.
fn rating_of(pipe: &Pipework, warm: f64) -> Option<Pressure> {
    rating_in_service(pipe.size?, warm, pipe.part == Part::Drop).ok()?
}

/// What a part of the line holds back at most: against a shut valve or at the setpoint, and while the pump runs.
fn pressures(part: Part, inputs: &Inputs, water: &Water) -> [Option<Pressure>; 2] {
    let setpoint = inputs.entered.get(Field::Pressure, psi);
    match part {
        Part::Drop => {
            let density = water.system.as_ref().map(|system| system.liquid.density);
            let duty = water.pump.as_ref().and_then(|pump| pump.duty.ok());
            // At the pump inside and outside differ by its head.
            let running = duty.zip(density).and_then(|(duty, density)| pressure_of_head(duty.head, density).ok());
            [water.dead_head.and_then(|dead| dead.on_pipe).or(running), running]
        }
        Part::Suction => [None, None],
        Part::Surface => {
            let dead = water.dead_head.map(|dead| dead.gauge);
            let most: Vec<Pressure> = [dead, setpoint].into_iter().flatten().collect();
            [most.iter().copied().reduce(Pressure::max), setpoint]
        }
    }
}
