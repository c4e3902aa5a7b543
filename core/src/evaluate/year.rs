//! A year of the way that the job goes by: where its power goes, what it takes, costs and gives.

use super::duty::{DutyHours, NoYear, rows, shares};
use super::water::Water;
use super::ways::{Base, LoadHours, PowerFlow, PoweredWay, Running, one_of_each};
use crate::cable::lead::impedance;
use crate::cost::criteria::{Energy, performance, rating};
use crate::cost::tariff::Bill;
use crate::job::{Control, Field, Inputs, Job};
use crate::quantity::{Mass, Money, Power, Volume, VolumeRate, hours, in_watts, pounds, watts};

/// A row of the year.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct YearRow {
    /// What is drawn of water; nothing where the motor's rating stands for its load.
    pub drawn: Option<DutyHours>,
    /// Where the power goes.
    pub power: PowerFlow,
}

/// A year's water under one control of the pump.
#[derive(Debug, Clone, PartialEq)]
pub struct Controlled {
    /// Where the power of each row goes.
    pub rows: Vec<PowerFlow>,
    /// Energy, kWh.
    pub energy: f64,
}

/// A year of the way that the job goes by.
#[derive(Debug, Clone, PartialEq)]
pub struct Year {
    /// Each row.
    pub rows: Vec<YearRow>,
    /// Energy, kWh.
    pub energy: f64,
    /// What the utility bills.
    pub bill: Bill,
    /// Water pumped.
    pub volume: Option<Volume>,
    /// Water horsepower-hours for a kilowatt-hour, and that over the criterion of Nebraska.
    pub performance: Option<(f64, f64)>,
    /// The same water run at the speed that it asks for, and run at full speed.
    pub by_control: Option<[Controlled; 2]>,
    /// Carbon dioxide, where its amount for a kilowatt-hour was entered.
    pub carbon: Option<Mass>,
}

/// The year of a job: nothing while its way, its lead or a price is not known.
pub(super) fn year(
    job: &Job,
    base: Option<&Base>,
    inputs: &Inputs,
    water: &Water,
    way: Option<&PoweredWay>,
) -> Option<Year> {
    let (base, way) = (base?, way?);
    let running = base.running(way, way.motor.as_ref()?)?;
    let told = match rows(job, inputs, water, job.choices.control()) {
        Some(Ok(rows)) => rows,
        Some(Err(_)) => return None,
        None => Vec::new(),
    };
    let at = At { base, way, running };
    let mut drawn = told.iter().copied().map(Some).chain(core::iter::repeat(None));
    let found: Option<Vec<YearRow>> =
        at.running.loads().iter().map(|load| Some(YearRow { drawn: drawn.next()?, power: at.flow(*load)? })).collect();
    let rows = found?;
    let energy: f64 = rows.iter().map(|row| kilowatt_hours(row.power.metered, row.power.load.hours)).sum();
    let most = rows.iter().map(|row| in_watts(row.power.metered)).fold(0.0, f64::max) / 1000.0;
    let one = one_of_each(&inputs.entered)?.ok()?;
    let bill = Bill {
        energy: Money(one.energy.0 * energy),
        demand: Money(one.demand.0 * most),
        standing: one.standing,
        total: Money(one.energy.0 * energy + one.demand.0 * most + one.standing.0),
    };
    let carbon = inputs.entered.get(Field::Carbon, pounds);
    Some(Year {
        volume: (!told.is_empty()).then(|| volume(&told)),
        performance: at.performance(&told, energy),
        by_control: at.by_control(job, inputs, water),
        carbon: carbon.map(|each| each * energy),
        rows,
        energy,
        bill,
    })
}

fn kilowatt_hours(power: Power, hours: f64) -> f64 {
    in_watts(power) * hours / 1000.0
}

fn volume(rows: &[DutyHours]) -> Volume {
    rows.iter().map(|row| row.flow * hours(row.hours)).fold(Volume::default(), |sum, one| sum + one)
}

/// A way with its lead, through a year.
struct At<'a> {
    base: &'a Base<'a>,
    way: &'a PoweredWay,
    running: Running,
}

impl At<'_> {
    fn flow(&self, load: LoadHours) -> Option<PowerFlow> {
        let lead = self.way.lead?;
        let (resistance, _) = impedance(lead.run.conductor, self.base.choices().metal(), self.base.choices().build());
        self.running.flow(load, resistance, lead.length)
    }

    /// Water power over the power drawn, each over the hours of the year.
    fn performance(&self, rows: &[DutyHours], energy: f64) -> Option<(f64, f64)> {
        let work: f64 = rows.iter().map(|row| in_watts(row.duty.water) * row.running()).sum();
        let hours: f64 = rows.iter().map(DutyHours::running).sum();
        let found = performance(watts(work / hours), energy / hours).ok()?;
        Some((found, rating(Energy::Electric, found).ok()?))
    }

    /// The water of the duty at the speed that it asks for, and at full speed; the pump's curve tells both.
    fn by_control(&self, job: &Job, inputs: &Inputs, water: &Water) -> Option<[Controlled; 2]> {
        water.pump.as_ref()?.curve.as_ref()?;
        let motor = self.way.motor?.power;
        let by = |control| {
            let rows = rows(job, inputs, water, control)?.ok()?;
            let flows: Option<Vec<PowerFlow>> =
                shares(&rows, motor, water)?.into_iter().map(|load| self.flow(load)).collect();
            let rows = flows?;
            Some(Controlled {
                energy: rows.iter().map(|flow| kilowatt_hours(flow.metered, flow.load.hours)).sum(),
                rows,
            })
        };
        Some([by(Control::ConstantPressure)?, by(Control::OnOff)?])
    }
}

/// Why a year's duty can't be told, where it can't.
pub(super) fn trouble(job: &Job, inputs: &Inputs, water: &Water) -> Option<NoYear> {
    rows(job, inputs, water, job.choices.control())?.err()
}

/// The largest flow of a duty that the pump can't give.
pub(super) fn not_given(trouble: &NoYear) -> Option<VolumeRate> {
    match trouble {
        NoYear::Text(_) => None,
        NoYear::Flow { flow, .. } => Some(*flow),
    }
}
