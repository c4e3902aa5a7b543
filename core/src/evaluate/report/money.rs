//! The year's energy, the range of the saving and the payback as JSON.

use super::{figure, horsepower, money, pounds};
use crate::cost::spread::Spread;
use crate::evaluate::range::{POINTS, SEED, saving_range};
use crate::evaluate::{Basis, Evaluation, Payback, Year, YearRow};
use crate::quantity::{Unit, in_gallons, in_gpm, in_watts};
use serde_json::{Value, json};

pub(super) fn year(year: &Year) -> Value {
    json!({
        "rows": year.rows.iter().map(row).collect::<Vec<_>>(),
        "energy": {"value": year.energy, "unit": "kWh"},
        "bill": {
            "energy": money(year.bill.energy), "demand": money(year.bill.demand),
            "standing": money(year.bill.standing), "total": money(year.bill.total),
        },
        "volume": year.volume.map(|volume| figure(in_gallons(volume), Unit::Gallon)),
        "performance": year.performance.map(|(found, _)| json!({"value": found, "unit": "hp h/kWh"})),
        "of_criterion": year.performance.map(|(_, share)| figure(100.0 * share, Unit::Percent)),
        "by_speed_and_on_off": year.by_control.as_ref().map(|both| both.each_ref().map(|by| json!({"value": by.energy, "unit": "kWh"}))),
        "carbon_dioxide": year.carbon.map(pounds),
    })
}

fn row(row: &YearRow) -> Value {
    let heat = |power| figure(in_watts(power), Unit::Watt);
    let flow = row.power;
    json!({
        "flow": row.drawn.map(|drawn| figure(in_gpm(drawn.flow), Unit::GallonPerMinute)),
        "hours": figure(flow.load.hours, Unit::Hour), "shaft": horsepower(flow.shaft),
        "lost": {
            "motor": heat(flow.motor), "lead": heat(flow.lead), "equipment": heat(flow.equipment),
            "supply": heat(flow.supply),
        },
        "metered": heat(flow.metered),
    })
}

pub(super) fn range(answer: &Evaluation) -> Value {
    let Ok(Some(found)) = saving_range(answer) else { return Value::Null };
    let on = |basis| found.on(basis).map(spread);
    json!({
        "method": "latin hypercube", "points": POINTS, "seed": SEED,
        "cable": on(Basis::Cable), "installed": on(Basis::Installed), "lifetime": on(Basis::Lifetime),
    })
}

fn spread(spread: Spread) -> Value {
    let money = |amount| figure(amount, Unit::Dollar);
    json!({
        "low_10": money(spread.low10), "median": money(spread.median), "high_90": money(spread.high90),
        "mean": money(spread.mean),
    })
}

pub(super) fn payback(found: Payback) -> Value {
    let years = |years: Option<f64>| years.map(|years| figure(years, Unit::Year));
    json!({
        "dearer_at_first": found.way, "more": money(found.first), "saved_in_a_year": money(found.yearly),
        "simple": years(found.simple), "discounted": years(found.discounted),
    })
}
