//! The same in words and figures: a description of the picture, and points of the curve for a table.

use super::chart::Chart;
use crate::locale::{Shown, flow, frequency, head, percent, pressure, shown, unit_name, words};
use wellwright_core::evaluate::{Evaluation, NoDuty, Pumping, System};
use wellwright_core::job::Control;
use wellwright_core::pump::affinity::efficiency_of;
use wellwright_core::pump::power::shaft_power_of;
use wellwright_core::quantity::{Power, Unit, UnitSystem, VolumeRate, in_horsepower, in_kilowatts};

/// The picture in a few sentences.
#[must_use]
pub fn described(answer: &Evaluation, control: Control, units: UnitSystem) -> String {
    let chart = Chart::of(answer, control);
    let charts = &words().charts;
    if chart.is_empty() {
        return charts.nothing.to_owned();
    }
    let pump = answer.water.pump.as_ref();
    let both = |spot: (VolumeRate, _), say: fn(&str, &str) -> String| {
        say(&flow(spot.0, units).text(), &head(spot.1, units).text())
    };
    let hertz = |value, say: fn(&str) -> String| say(&frequency(value).text());
    let mut said = Vec::new();
    if let Some(asked) = chart.asked {
        said.push(both(asked.spot, if asked.missed { charts.alt_missed } else { charts.asked }));
    }
    if let Some(Err(NoDuty::Faster { needed })) = pump.map(|pump| pump.duty) {
        said.push(hertz(needed, charts.alt_faster));
    }
    said.extend(chart.duty.map(|duty| both(duty, charts.alt_duty)));
    said.extend(pump.and_then(Pumping::frequency).map(|value| hertz(value, charts.alt_speed)));
    if control == Control::ConstantPressure {
        said.extend(chart.full.map(|full| both(full, charts.alt_full)));
        let lowest = pump.and_then(|pump| pump.lowest.filter(|lowest| *lowest < pump.band.1));
        said.extend(lowest.filter(|_| !chart.curves.is_empty()).map(|lowest| hertz(lowest, charts.alt_lowest)));
    }
    said.extend(chart.best.last().map(|best| (charts.alt_best)(&flow(best.0, units).text())));
    said.extend(
        chart
            .foot
            .map(|foot| (charts.alt_foot)(&head(foot.head, units).text(), &pressure(foot.pressure, units).text())),
    );
    if chart.curves.is_empty() {
        said.push(charts.alt_no_curve.to_owned());
    }
    said.join(" ")
}

/// A point of the pump's curve.
#[derive(Debug, Clone, PartialEq)]
pub struct CurveRow {
    /// Flow.
    pub flow: Shown,
    /// Head of the pump.
    pub head: Shown,
    /// Head that the system takes; nothing where its formulas do not hold.
    pub takes: Option<Shown>,
    /// Efficiency; nothing where the curve does not tell it.
    pub efficiency: Option<Shown>,
    /// Power at the shaft; nothing where the curve does not tell it.
    pub shaft: Option<Shown>,
}

/// Points of the pump's curve at one frequency.
#[derive(Debug, Clone, PartialEq)]
pub struct CurveTable {
    /// The frequency.
    pub frequency: Shown,
    /// The points, from the least flow on.
    pub rows: Vec<CurveRow>,
}

/// Points of the curve at the frequency of the duty, or at the highest where there is no duty; nothing without a curve.
#[must_use]
pub fn curve_table(answer: &Evaluation, units: UnitSystem) -> Option<CurveTable> {
    let (pump, system) = (answer.water.pump.as_ref()?, answer.water.system.as_ref()?);
    let (at, points) = pump.points();
    let ratio = pump.ratio(at).ok()?;
    let rows: Vec<CurveRow> = points
        .into_iter()
        .map(|(rate, lift)| CurveRow {
            flow: flow(rate, units),
            head: head(lift, units),
            takes: takes(system, rate, units),
            efficiency: efficiency(pump, rate, ratio),
            shaft: shaft(pump, system, rate, ratio, units),
        })
        .collect();
    (!rows.is_empty()).then(|| CurveTable { frequency: frequency(at), rows })
}

fn takes(system: &System, rate: VolumeRate, units: UnitSystem) -> Option<Shown> {
    system.head(rate).ok().map(|total| head(total.total(), units))
}

fn efficiency(pump: &Pumping, rate: VolumeRate, ratio: f64) -> Option<Shown> {
    efficiency_of(pump.curve.as_ref()?, rate, ratio).ok()?.map(|share| percent(share, 0))
}

fn shaft(pump: &Pumping, system: &System, rate: VolumeRate, ratio: f64, units: UnitSystem) -> Option<Shown> {
    let power = shaft_power_of(pump.curve.as_ref()?, rate, ratio, system.liquid.density).ok()??;
    Some(power_in_tenths(power, units))
}

fn power_in_tenths(power: Power, units: UnitSystem) -> Shown {
    match units {
        UnitSystem::Us => shown(in_horsepower(power), 1, unit_name(Unit::Horsepower)),
        UnitSystem::Si => shown(in_kilowatts(power), 1, unit_name(Unit::Kilowatt)),
    }
}
