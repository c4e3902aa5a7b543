//! An evaluation as JSON, for other programs: every figure with its unit.

mod findings;
mod money;
mod water;
mod ways;

use super::{Basis, BreakEven, DepthRun, Evaluation, Here, Outfit, Sweep, WayHere, WaySweep, payback};
use crate::error::InputError;
use crate::job::Way;
use crate::quantity::{
    ElectricCurrent, ElectricPotential, Entry, Length, Mass, Money, Power, Unit, in_amperes, in_feet, in_horsepower,
    in_pounds, in_pounds_per_foot, in_volts, in_watts,
};
use findings::finding;
use serde_json::{Value, json};

/// The evaluation of one job as JSON.
///
/// # Units
/// Each figure is an object of `value` and `unit`.
#[must_use]
pub fn report(name: &str, answer: &Evaluation) -> Value {
    json!({
        "evaluation": 1,
        "job": name,
        "errors": answer.errors.iter().map(error).collect::<Vec<_>>(),
        "findings": answer.findings.iter().map(finding).collect::<Vec<_>>(),
        "prices": book(answer),
        "year": answer.year.as_ref().map(money::year),
        "saving_range": money::range(answer),
        "payback": payback(answer).map(money::payback),
        "levels": water::levels(&answer.water),
        "water": water::water(&answer.water),
        "motor": answer.motor.as_ref().map(water::motor),
        "power": ways::ways(&answer.ways),
        "at_depth": answer.here.as_ref().map(|here| at_depth(here, answer.sweep.as_ref())),
        "in_service": Way::ALL.map(|way| answer.service[way as usize].as_ref().map(ways::service)),
        "ways": answer.sweep.as_ref().map(|sweep| sweep.ways.iter().map(way).collect::<Vec<_>>()),
        "ways_in_deeper_water": answer.deeper.as_ref().map(|sweep| sweep.ways.iter().map(way).collect::<Vec<_>>()),
        "break_even": answer.sweep.as_ref().map(evens),
    })
}

/// What an answer comes to, for a page around it: both ways at the depth, the saving, where both cost the same, and what
/// stands in the way.
///
/// # Units
/// Each figure is an object of `value` and `unit`.
#[must_use]
pub fn brief(answer: &Evaluation) -> Value {
    json!({
        "errors": answer.errors.iter().map(error).collect::<Vec<_>>(),
        "findings": answer.findings.iter().map(finding).collect::<Vec<_>>(),
        "prices": book(answer),
        "at_depth": answer.here.as_ref().map(|here| at_depth(here, answer.sweep.as_ref())),
        "break_even": answer.sweep.as_ref().map(evens),
    })
}

/// An input error as JSON: code, field, what was given, what is accepted.
#[must_use]
pub fn error(error: &InputError) -> Value {
    let accepted = error.accepted();
    json!({
        "code": error.code(),
        "field": error.field().path(),
        "given": error.given(),
        "accepted": {"min": accepted.min, "max": accepted.max, "unit": accepted.unit},
    })
}

/// The price book that the costs go by.
fn book(answer: &Evaluation) -> Value {
    let Ok(prices) = &answer.inputs.prices else { return Value::Null };
    let book = &prices.book;
    json!({
        "book": book.name, "source": book.source, "currency": book.currency.code(), "date": book.date.text(),
        "invented": book.is_invented(),
    })
}

fn way(sweep: &WaySweep) -> Value {
    json!({
        "way": sweep.way,
        "motor_current": amps(sweep.current.sizing),
        "required_ampacity": amps(sweep.required),
        "equipment_place": sweep.place,
        "outfits": outfits(sweep),
        "runs": sweep.runs.iter().map(run_json).collect::<Vec<_>>(),
    })
}

/// What a way needs beyond its lead, stretch by stretch of the depths at which it stays the same.
fn outfits(sweep: &WaySweep) -> Value {
    let mut found: Vec<(Length, Outfit)> = Vec::new();
    for piece in &sweep.pieces {
        match found.last_mut().filter(|(_, last)| (last.remedy, last.cost) == (piece.outfit.remedy, piece.outfit.cost))
        {
            Some((to, _)) => *to = piece.to,
            None => found.push((piece.to, piece.outfit)),
        }
    }
    found.into_iter().map(|(to, outfit)| json!({"to": feet(to), "needs": outfit_json(&outfit)})).collect()
}

fn outfit_json(outfit: &Outfit) -> Value {
    let cost = outfit.cost;
    json!({
        "remedy": outfit.remedy, "equipment": money(cost.equipment), "between": money(cost.remedy),
        "transformer": money(cost.transformer), "supply": money(cost.supply), "line": money(cost.line),
        "labor": money(cost.labor), "entered": money(cost.extra),
        "total": money(cost.total()),
    })
}

fn run_json(run: &DepthRun) -> Value {
    json!({
        "sets": run.run.conductor.sets,
        "size": run.run.conductor.size,
        "ground": run.run.ground,
        "governs": run.run.governs,
        "ampacity": amps(run.run.ampacity),
        "motor": horsepower(run.motor),
        "from": feet(run.from),
        "to": feet(run.to),
        "price": figure(run.price.per_foot(), Unit::DollarPerFoot),
        "metal": figure(in_pounds_per_foot(run.metal), Unit::PoundPerFoot),
    })
}

fn at_depth(here: &Here, sweep: Option<&Sweep>) -> Value {
    let lead = |way: Way| here.way(way).map(|lead| lead_json(lead, sweep.map(|sweep| sweep.way(way))));
    json!({
        "depth": feet(here.depth),
        "lead": feet(here.lead),
        "order": feet(here.order),
        "240 V": lead(Way::V240),
        "480 V": lead(Way::V480),
        "saving": here.saving.map(|saving| json!({
            "cable": money(saving.cable),
            "net": money(saving.net),
            "lifetime": saving.lifetime.map(money),
            "metal": pounds(saving.metal),
        })),
    })
}

fn lead_json(lead: &WayHere, sweep: Option<&WaySweep>) -> Value {
    let mut value = run_json(&lead.run);
    value["motor_current"] = json!(sweep.map(|sweep| amps(sweep.current.sizing)));
    value["drop"] = volts(lead.drop);
    value["drop_share"] = figure(100.0 * lead.drop_share, Unit::Percent);
    value["loss"] = figure(in_watts(lead.loss), Unit::Watt);
    value["metal_in_lead"] = pounds(lead.metal);
    value["cable"] = money(lead.cable);
    value["installed"] = money(lead.installed);
    value["lifetime"] = json!(lead.lifetime.map(money));
    value["beyond"] = outfit_json(&lead.outfit);
    value
}

/// Where both ways cost the same, on every basis.
fn evens(sweep: &Sweep) -> Value {
    json!({
        "cable": break_even(sweep.break_even(Basis::Cable)),
        "installed": break_even(sweep.break_even(Basis::Installed)),
        "lifetime": sweep.has_lifetime().then(|| break_even(sweep.break_even(Basis::Lifetime))),
    })
}

fn break_even(found: &BreakEven) -> Value {
    json!({
        "cheaper_first": found.first,
        "changes": found.crossings.iter().map(|crossing| json!({
            "depth": feet(crossing.depth), "cheaper_below": crossing.below, "place": crossing.place,
        })).collect::<Vec<_>>(),
    })
}

fn horsepower(power: Power) -> Value {
    figure(in_horsepower(power), Unit::Horsepower)
}
fn feet(length: Length) -> Value {
    figure(in_feet(length), Unit::Foot)
}
fn amps(current: ElectricCurrent) -> Value {
    figure(in_amperes(current), Unit::Ampere)
}
fn volts(potential: ElectricPotential) -> Value {
    figure(in_volts(potential), Unit::Volt)
}
fn pounds(mass: Mass) -> Value {
    figure(in_pounds(mass), Unit::Pound)
}
fn money(money: Money) -> Value {
    figure(money.0, Unit::Dollar)
}
fn figure(value: f64, unit: Unit) -> Value {
    json!(Entry::new(value, unit))
}
