//! The leads in service: how warm they get, what alternating current and flat laying add, and the size that pays.

use super::runs::{cable_metal, demands};
use super::{Here, LoadHours, MotorLoad, Water, priced};
use crate::cable::drop::{Load, Phases, lead_loss};
use crate::cable::economic::{Candidate, Choice, Duty, choose};
use crate::cable::flat::{FlatDrop, flat_drop};
use crate::cable::lead::{Conductor, Demands, Run, runs};
use crate::cable::reactance::Build;
use crate::cable::skin::alternating_share;
use crate::cable::temperature::{InService, Service, in_service};
use crate::cost::annuity::annuity_factor;
use crate::job::{Field, Inputs, Job, Way};
use crate::quantity::{ElectricCurrent, Frequency, Length, Money, Power, amperes, hertz};
use crate::standards::ambient::bundle_factor;
use crate::standards::ampacity::table_310_16;

/// A lead in service.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeadInService {
    /// Current that it carries: at the pump's duty, or that which sizes it until the duty is known.
    pub current: ElectricCurrent,
    /// Whether that is the duty's.
    pub at_duty: bool,
    /// Its temperature and resistance; sets in parallel share the current.
    pub warm: InService,
    /// Heat that it gives off by that resistance.
    pub loss: Power,
    /// Frequency of the current.
    pub frequency: Frequency,
    /// Share that alternating current adds to its resistance; nothing in steel conduit, whose own loss is not in it.
    pub alternating: Option<f64>,
    /// Volts phase by phase, where the conductors lie flat.
    pub flat: Option<FlatDrop>,
    /// The smallest conductor that may be laid, and the one that pays.
    pub choice: Option<Choice>,
    /// Length.
    pub length: Length,
    /// What heats it in a year: hours of running, and the current that heats it in them as much as the loads do.
    pub year: Option<(ElectricCurrent, f64)>,
}

impl LeadInService {
    /// What the conductor that pays saves over the years.
    #[must_use]
    pub fn saving(&self) -> Option<Money> {
        self.choice.map(|choice| choice.saving(self.length))
    }
}

/// Both leads at the job's depth in service.
pub(super) fn service(
    job: &Job,
    inputs: &Inputs,
    water: &Water,
    motor: Option<&MotorLoad>,
    here: Option<&Here>,
    loads: Option<&[LoadHours]>,
) -> [Option<LeadInService>; 2] {
    Way::ALL.map(|way| {
        let here = here?;
        let demands = demands(way, inputs, &job.choices)?.around(here.way(way)?.run.ambient);
        let running = motor.and_then(|motor| motor.running[way as usize]);
        let current = running.unwrap_or(demands.load.current);
        let frequency = water.pump.as_ref().and_then(|pump| pump.frequency()).unwrap_or(hertz(60.0));
        let lead =
            Lead { inputs, demands, current, frequency, length: here.lead, year: year(way, inputs, loads, current) };
        lead.in_service(&here.way(way)?.run.run, running.is_some())
    })
}

/// Hours of running in a year, and the steady current that heats the lead in them as much as the loads do.
fn year(
    way: Way,
    inputs: &Inputs,
    loads: Option<&[LoadHours]>,
    current: ElectricCurrent,
) -> Option<(ElectricCurrent, f64)> {
    if let Some(hours) = inputs.entered.get(Field::YearlyHours, |hours| hours) {
        return Some((current, hours));
    }
    let motor = inputs.motor_current[way as usize].as_ref().ok()?;
    let rated = motor.nameplate.map_or(motor.table, |known| known.value);
    let loads = loads?;
    let hours: f64 = loads.iter().map(|load| load.hours).sum();
    let heating: f64 = loads.iter().map(|load| load.hours * load.current().powi(2)).sum();
    // A year without running heats nothing.
    let mean = if hours > 0.0 { (heating / hours).sqrt() } else { 0.0 };
    Some((rated * mean, hours))
}

struct Lead<'a> {
    inputs: &'a Inputs,
    demands: Demands,
    current: ElectricCurrent,
    frequency: Frequency,
    length: Length,
    /// As [`LeadInService::year`].
    year: Option<(ElectricCurrent, f64)>,
}

impl Lead<'_> {
    fn in_service(&self, run: &Run, at_duty: bool) -> Option<LeadInService> {
        let Demands { setting, load, build, .. } = self.demands;
        let warm = self.warm(run.conductor)?;
        let sets = f64::from(run.conductor.sets);
        let carried = Load { current: self.current, ..load };
        let alternating = match build {
            Build::SteelConduit => None,
            _ => {
                let size = run.conductor.size;
                alternating_share(size, setting.metal, warm.temperature, self.frequency, Phases::Three).ok()
            }
        };
        let flat = match build {
            Build::FlatJacketed => {
                let share = Load { current: self.current / sets, ..load };
                flat_drop(share, run.conductor.size, warm.at_75, self.length, self.frequency).ok().flatten()
            }
            _ => None,
        };
        Some(LeadInService {
            current: self.current,
            at_duty,
            loss: lead_loss(carried, warm.resistance / sets, self.length),
            warm,
            frequency: self.frequency,
            alternating,
            flat,
            choice: self.choice(),
            length: self.length,
            year: self.year,
        })
    }

    /// Temperature and resistance of one conductor of a set.
    fn warm(&self, conductor: Conductor) -> Option<InService> {
        let setting = self.demands.setting;
        let together = usize::from(Phases::Three.conductors()) * usize::from(conductor.sets);
        let rated = table_310_16(conductor.size, setting.metal, setting.insulation)? * bundle_factor(together);
        let service = Service {
            ambient: setting.ambient,
            insulation: setting.insulation,
            current: self.current / f64::from(conductor.sets),
            rated_at_30: amperes(rated),
        };
        in_service(conductor.size, setting.metal, service).ok()
    }

    /// The smallest conductor and the one that pays, among those that may be laid at this length.
    fn choice(&self) -> Option<Choice> {
        let entered = &self.inputs.entered;
        let figure = |field| entered.get(field, |figure| figure);
        let prices = self.inputs.prices.as_ref().ok()?;
        let setting = self.demands.setting;
        let candidate = |run: &Run| {
            let warm = self.warm(run.conductor)?;
            let sets = f64::from(run.conductor.sets);
            let metal = cable_metal(setting.metal, run, Phases::Three);
            let price = priced::cable(prices, run.conductor, (setting.metal, self.demands.build), metal)?;
            Some(Candidate { conductor: run.conductor, resistance: warm.resistance / sets, price })
        };
        let all = runs(&self.demands).ok()?;
        let legal: Vec<Candidate> = all.iter().filter(|run| run.longest >= self.length).filter_map(candidate).collect();
        let (current, hours) = self.year?;
        let duty = Duty {
            current,
            phases: Phases::Three,
            hours,
            kilowatt_hour: Money(figure(Field::EnergyPrice)?),
            present_worth: annuity_factor(figure(Field::Discount)? / 100.0, figure(Field::Years)?).ok()?,
        };
        choose(&legal, duty).ok()?
    }
}
