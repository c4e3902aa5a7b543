//! The water, the pump and the motor as JSON.

use super::{amps, feet, figure, horsepower, pounds};
use crate::evaluate::{Duty, MotorLoad, NoDuty, Pumping, Water};
use crate::job::Way;
use crate::quantity::{
    Pressure, Unit, Velocity, VolumeRate, in_feet_per_second, in_gallons, in_gpm, in_hertz, in_minutes, in_psi,
};
use crate::water::head::TotalHead;
use serde_json::{Value, json};

fn gpm(flow: VolumeRate) -> Value {
    figure(in_gpm(flow), Unit::GallonPerMinute)
}
fn psi(pressure: Pressure) -> Value {
    figure(in_psi(pressure), Unit::PoundPerSquareInch)
}
fn speed(velocity: Velocity) -> Value {
    figure(in_feet_per_second(velocity), Unit::FootPerSecond)
}
fn share(share: f64) -> Value {
    figure(100.0 * share, Unit::Percent)
}

pub(super) fn levels(water: &Water) -> Value {
    json!({
        "static_level": water.static_level.map(feet),
        "drawdown": water.drawdown.map(feet),
        "pumping_level": water.pumping_level.map(feet),
        "submergence": water.submergence.map(feet),
        "well_depth": water.well_depth.map(feet),
    })
}

pub(super) fn water(water: &Water) -> Value {
    json!({
        "flow": water.demand.map(|demand| gpm(demand.flow.value)),
        "well_gives": water.well_gives.map(gpm),
        "head": water.head.as_ref().map(head),
        "suction_head": water.suction.map(|suction| json!({
            "barometric": feet(suction.barometric), "vapor": feet(suction.vapor), "lift": feet(suction.lift),
            "pipe": feet(suction.pipe), "fittings": feet(suction.fittings), "available": feet(suction.available()),
        })),
        "pump": water.pump.as_ref().map(pump),
        "dead_head": water.dead_head.map(|dead| json!({
            "shut_off": feet(dead.shut_off.value), "gauge": psi(dead.gauge), "at_pump": dead.pump.map(psi),
            "rating": psi(dead.rating.value), "over": dead.over, "relief": dead.relief.map(gpm),
        })),
        "cooling": water.cooling.map(|cooling| json!({
            "flow": gpm(cooling.flow), "speed": speed(cooling.speed), "advised": speed(cooling.advised),
            "least_flow": gpm(cooling.least_flow),
            "widest_sleeve": figure(crate::quantity::in_inches(cooling.widest_sleeve), Unit::Inch),
        })),
        "tank": water.tank.map(|tank| json!({
            "precharge": psi(tank.band.precharge), "cut_in": psi(tank.band.cut_in),
            "drawdown": figure(in_gallons(tank.drawdown), Unit::Gallon),
            "run_time": tank.run_time.map(|time| figure(in_minutes(time) / 60.0, Unit::Hour)),
        })),
        "surge": water.surge.map(|surge| json!({
            "velocity": speed(surge.velocity), "wave": speed(surge.wave), "rise": psi(surge.rise),
        })),
        "hanging": water.hanging.map(|hanging| json!({
            "pipe": pounds(hanging.pipe), "water": pounds(hanging.water), "pump": pounds(hanging.pump),
            "total": pounds(hanging.total()),
        })),
    })
}

fn head(head: &TotalHead) -> Value {
    json!({
        "lift": feet(head.lift), "rise": feet(head.rise), "pipe": feet(head.pipe), "fittings": feet(head.fittings),
        "pressure": feet(head.pressure), "velocity": feet(head.velocity), "total": feet(head.total()),
    })
}

fn pump(pump: &Pumping) -> Value {
    json!({
        "duty": pump.duty.ok().map(duty),
        "no_duty": pump.duty.err().map(|why| match why {
            NoDuty::Faster { .. } => "faster",
            NoDuty::NoPoint(_) => "no_point",
        }),
        "frequency": pump.frequency().map(|frequency| figure(in_hertz(frequency), Unit::Hertz)),
        "lowest_frequency": pump.lowest.map(|frequency| figure(in_hertz(frequency), Unit::Hertz)),
        "most_flow": pump.most.and_then(Result::ok).map(|point| gpm(point.flow)),
        "share_of_best": pump.share_of_best.map(share),
        "largest_power": pump.largest.map(|(_, power)| horsepower(power)),
    })
}

fn duty(duty: Duty) -> Value {
    json!({
        "flow": gpm(duty.flow), "head": feet(duty.head), "efficiency": share(duty.efficiency.value),
        "water": horsepower(duty.water), "shaft": horsepower(duty.shaft),
    })
}

pub(super) fn motor(motor: &MotorLoad) -> Value {
    json!({
        "shaft": horsepower(motor.shaft), "standard": motor.standard.map(horsepower),
        "of_rating": share(motor.share.of_rating), "of_service_factor": share(motor.share.of_service_factor),
        "frequency": motor.frequency.map(|at| figure(in_hertz(at), Unit::Hertz)), "light": motor.light,
        "running_240": motor.running[Way::V240 as usize].map(amps),
        "running_480": motor.running[Way::V480 as usize].map(amps),
    })
}
