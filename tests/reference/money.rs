//! What a first cost is worth, bills, a year's duty, the pumping plant criteria, and estimates.

use super::inputs::Inputs;
use super::{Answer, Answered};
use wellwright_core::cost::criteria::{
    Energy, electric_efficiency, energy_for, energy_per_acre_inch, performance, rating, water_horsepower_hours,
};
use wellwright_core::cost::duty::{Duty, DutyRow};
use wellwright_core::cost::spread::{Estimate, Spread, percentiles, range_of};
use wellwright_core::cost::tariff::{Bill, Season, Tariff, Use, bill};
use wellwright_core::cost::worth::{discounted_payback, net_present_value, simple_payback};
use wellwright_core::quantity::{
    MassDensity, Money, acres, feet, gallons, gpm, hours, inches, kilograms_per_cubic_meter, kilowatts, psi,
    standard_gravity,
};

type Number = Result<f64, String>;

fn said<T>(result: Result<T, impl std::fmt::Debug>) -> Result<T, String> {
    result.map_err(|e| format!("{e:?}"))
}

/// The answer to a quantity of this file, or `None` where it is not one.
pub fn answer(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Answered> {
    let payback = match (quantity, unit) {
        ("simple payback", "years") => Some(simple(inputs)),
        ("discounted payback", "years") => Some(discounted(inputs)),
        _ => None,
    };
    if let Some(years) = payback {
        return Some(years.map(|years| years.map_or_else(|| Answer::Text("none".into()), Answer::Number)));
    }
    let number = plant(quantity, unit, inputs).or_else(|| estimates(quantity, unit, inputs)).or_else(|| {
        Some(match (quantity, unit) {
            ("net present value of a series", "$") => series(inputs),
            ("bill", "$") => billed(inputs).map(|bill| bill.total.0),
            ("bill for demand", "$") => billed(inputs).map(|bill| bill.demand.0),
            ("water of a year", "acre ft") => volume(inputs),
            ("energy of a year", "kWh") => energy(inputs),
            _ => return None,
        })
    })?;
    Some(number.map(Answer::Number))
}

/// Numbers that stand apart by strokes.
fn numbers(inputs: &Inputs, name: &str) -> Result<Vec<f64>, String> {
    inputs.text(name)?.split('/').map(|number| said(number.parse())).collect()
}

fn rate(inputs: &Inputs) -> Number {
    Ok(inputs.number("rate_percent")? / 100.0)
}

fn series(inputs: &Inputs) -> Number {
    let yearly: Vec<Money> = numbers(inputs, "yearly")?.into_iter().map(Money).collect();
    said(net_present_value(Money(inputs.number("cost")?), &yearly, rate(inputs)?)).map(|worth| worth.0)
}

fn simple(inputs: &Inputs) -> Result<Option<f64>, String> {
    said(simple_payback(Money(inputs.number("cost")?), Money(inputs.number("saving")?)))
}

fn discounted(inputs: &Inputs) -> Result<Option<f64>, String> {
    let (first, saving) = (Money(inputs.number("cost")?), Money(inputs.number("saving")?));
    said(discounted_payback(first, saving, rate(inputs)?))
}

fn whole(inputs: &Inputs, name: &str) -> Result<u8, String> {
    said(inputs.text(name)?.parse())
}

fn billed(inputs: &Inputs) -> Result<Bill, String> {
    let money = |name: &str| inputs.number(name).map(Money);
    let season = match whole(inputs, "season_months")? {
        0 => None,
        months => Some(Season {
            months,
            energy: money("season_energy_price")?,
            demand: money("season_demand_price")?,
            billed_months: whole(inputs, "season_billed_months")?,
        }),
    };
    let tariff = Tariff {
        energy: money("energy_price")?,
        demand: money("demand_price")?,
        billed_months: whole(inputs, "billed_months")?,
        standing: money("standing")?,
        season,
    };
    let (months_in_season, share_in_season) = match season {
        None => (0, 0.0),
        Some(_) => (whole(inputs, "months_in_season")?, inputs.number("share_in_season")?),
    };
    let use_ = Use {
        energy: inputs.number("kwh")?,
        largest: kilowatts(inputs.number("kw")?),
        months: whole(inputs, "months")?,
        months_in_season,
        share_in_season,
    };
    said(bill(&tariff, &use_))
}

fn volume(inputs: &Inputs) -> Number {
    let row = DutyRow { flow: gpm(inputs.number("flow_gpm")?), time: hours(inputs.number("hours")?) };
    Ok((said(Duty::new(vec![row]))?.volume() / (acres(1.0) * feet(1.0))).value)
}

fn energy(inputs: &Inputs) -> Number {
    let row = |time| DutyRow { flow: gpm(100.0), time: hours(time) };
    let duty = said(Duty::new(numbers(inputs, "hours")?.into_iter().map(row).collect()))?;
    let powers: Vec<_> = numbers(inputs, "kw")?.into_iter().map(kilowatts).collect();
    said(duty.energy(&powers))
}

fn source(inputs: &Inputs) -> Result<Energy, String> {
    match inputs.text("energy")? {
        "electric" => Ok(Energy::Electric),
        "diesel" => Ok(Energy::Diesel),
        other => Err(format!("energy {other}")),
    }
}

fn density(inputs: &Inputs) -> Result<MassDensity, String> {
    inputs.number("density").map(kilograms_per_cubic_meter)
}

fn plant(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("pumping plant criterion", "whp-h/unit") => source(inputs).map(Energy::criterion),
        ("power unit at the criterion", "hp-h/unit") => source(inputs)
            .and_then(|energy| inputs.number("pump_efficiency").map(|efficiency| energy.criterion() / efficiency)),
        ("efficiency at the electric criterion", "1") => {
            inputs.number("performance").and_then(|performance| said(electric_efficiency(performance)))
        }
        ("pumping plant rating", "%") => rated(inputs),
        ("energy per acre-inch", "gal" | "kWh") => acre_inch(inputs),
        ("work per acre-inch", "whp-h") => work(inputs),
        ("energy per 1000 gal and foot", "kWh") => thousand_gallons(inputs),
        _ => return None,
    })
}

fn rated(inputs: &Inputs) -> Number {
    use wellwright_core::pump::power::water_power;
    let (flow, head) = (gpm(inputs.number("flow_gpm")?), feet(inputs.number("head_ft")?));
    let water = said(water_power(density(inputs)?, flow, head))?;
    let found = said(performance(water, inputs.number("hourly")?))?;
    said(rating(source(inputs)?, found)).map(|share| 100.0 * share)
}

fn acre_inch(inputs: &Inputs) -> Number {
    let (lift, pressure) = (feet(inputs.number("lift_ft")?), psi(inputs.number("psi")?));
    let share = inputs.number("rating_percent")? / 100.0;
    said(energy_per_acre_inch(source(inputs)?, share, density(inputs)?, lift, pressure))
}

fn work(inputs: &Inputs) -> Number {
    let water = density(inputs)?;
    let head = feet(inputs.number("lift_ft")?) + psi(inputs.number("psi")?) / (water * standard_gravity());
    said(water_horsepower_hours(water, acres(1.0) * inches(1.0), head))
}

/// Without losses a kilowatt-hour gives 1000/745.7 water horsepower-hours: that rating of the criterion.
fn thousand_gallons(inputs: &Inputs) -> Number {
    let lossless = 1000.0 / 745.7 / Energy::Electric.criterion();
    said(energy_for(Energy::Electric, lossless, density(inputs)?, gallons(1000.0), feet(1.0)))
}

fn estimate(inputs: &Inputs, which: &str) -> Result<Estimate, String> {
    let figure = |name: &str| inputs.number(&format!("{name}{which}"));
    said(Estimate::new(figure("low")?, figure("expected")?, figure("high")?))
}

fn estimates(quantity: &str, unit: &str, inputs: &Inputs) -> Option<Number> {
    Some(match (quantity, unit) {
        ("triangular quantile", "1") => estimate(inputs, "")
            .and_then(|estimate| inputs.number("share").and_then(|share| said(estimate.quantile(share)))),
        ("triangular mean", "1") => estimate(inputs, "").map(Estimate::mean),
        ("percentile", "1") => percentile(inputs),
        ("product of estimates, low10", "$") => product(inputs).map(|spread| spread.low10),
        ("product of estimates, median", "$") => product(inputs).map(|spread| spread.median),
        ("product of estimates, high90", "$") => product(inputs).map(|spread| spread.high90),
        ("product of estimates, mean", "$") => product(inputs).map(|spread| spread.mean),
        _ => return None,
    })
}

fn percentile(inputs: &Inputs) -> Number {
    let share = inputs.number("percent")? / 100.0;
    said(percentiles(&numbers(inputs, "numbers")?, [share])).map(|[found]| found)
}

fn product(inputs: &Inputs) -> Result<Spread, String> {
    let three = ["_1", "_2", "_3"].map(|which| estimate(inputs, which)).into_iter().collect::<Result<Vec<_>, _>>()?;
    said(range_of(&three, 1000, 1, |point| Ok(point.iter().product())))
}
