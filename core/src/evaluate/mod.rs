//! The one road from a job to its answer.
//!
//! The answer keeps what does not depend on a bad figure: without a depth the curves still stand, without a motor the
//! errors still say what is missing.

mod beside;
mod break_even;
mod cooler;
mod deeper;
mod duty;
mod here;
mod motor;
mod pair;
mod payback;
pub(crate) mod priced;
pub mod range;
pub mod ranking;
mod report;
mod runs;
mod service;
mod sweep;
mod water;
mod ways;
mod year;

pub use break_even::{BreakEven, Crossing, Place, Whose};
pub use duty::{DutyHours, NoYear};
pub use here::{Here, ORDER_SPARE, Saving, WayHere};
pub use motor::MotorLoad;
pub use payback::{Payback, payback};
pub use report::{brief, error as error_report, report};
pub use service::LeadInService;
pub use sweep::{Basis, DEEPEST_FEET, DepthRun, Piece, Sweep, WaySweep};
pub use water::*;
pub(crate) use water::{LEAST_BAND, SENSOR_SHARE, counted_service_factor, largest_load};
pub use ways::*;
pub(crate) use ways::{BOOST, COLD, RATED_HERTZ};
use ways::{Base, one_of_each, usual_share, whole};
pub use year::{Controlled, Year, YearRow};

use crate::error::InputError;
use crate::finding::Finding;
use crate::job::{Checked, Entered, Field, Inputs, Job, Way};
use crate::numeric::order::by_number;
use crate::power::family::{Class, USUAL_SUPPLY_BAND};
use crate::pump::motor::MotorKind;
use crate::quantity::{Entry, Length, Unit, feet, in_volts, volts};
use crate::standards::conductor::Metal;
use cooler::Cooler;
use runs::Swept;

/// What depth means along the curve of cost.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Sense {
    /// The lead is longer; the motor stays.
    #[default]
    LongerLead,
    /// The water is deeper; head, power and motor follow.
    DeeperWater,
}

/// Everything that follows from a job.
#[derive(Debug, Clone, PartialEq)]
pub struct Evaluation {
    /// Where the motor works.
    pub kind: MotorKind,
    /// The job's figures after checking.
    pub inputs: Inputs,
    /// Figures that can't be used, in the order of the page.
    pub errors: Vec<InputError>,
    /// The water, the head and the pump.
    pub water: Water,
    /// The motor's load; `None` while the power at the shaft is not known.
    pub motor: Option<MotorLoad>,
    /// Every way to run the motor.
    pub ways: Ways,
    /// Cost against depth; `None` while a figure that it needs is missing or wrong.
    pub sweep: Option<Sweep>,
    /// Cost against the depth of the water; `None` while the power at the shaft is not known.
    pub deeper: Option<Sweep>,
    /// The job's place on the curve of cost: the depth of a pump in a well, or the length of the lead to a motor on the
    /// surface.
    pub depth: Option<Length>,
    /// The lead at the job's depth; `None` without a sweep or a depth.
    pub here: Option<Here>,
    /// A year of the way that the job goes by.
    pub year: Option<Year>,
    /// Why the year's duty can't be told.
    pub no_year: Option<NoYear>,
    /// The 240 V and the 480 V lead in service.
    pub service: [Option<LeadInService>; 2],
    /// What is unwise or unsafe, gravest first.
    pub findings: Vec<Finding>,
}

impl Evaluation {
    /// The evaluation as it is seen in a sense of depth: the cost against depth is that of the sense. Where deeper water is
    /// not known it stays as it is.
    #[must_use]
    pub fn in_sense(&self, sense: Sense) -> Self {
        let mut seen = self.clone();
        if let (Sense::DeeperWater, Some(deeper)) = (sense, &self.deeper) {
            seen.sweep = Some(deeper.clone());
        }
        seen
    }
}

/// Evaluates a job.
///
/// # Range
/// Any job; what can't be used is an [`InputError`] in the answer.
#[must_use]
pub fn evaluate(job: &Job) -> Evaluation {
    let entered = Entered::of(job);
    let water = water::water(job, &entered);
    let factor = water::counted_service_factor(&entered, job.choices.motor_kind());
    let mut inputs = Inputs::of(job, entered, factor.and_then(|factor| water.motor_for(factor)));
    water::follows(&mut inputs, job, &water);
    let motor = motor::motor_load(job, &inputs, &water);
    let kind = job.choices.motor_kind();
    let (depth, surface) = lead(kind, &inputs);
    let cooler = Cooler::of(&job.choices, &inputs, &water);
    let laid = depth.zip(surface).map(|(depth, surface)| Laid { depth, surface, cooler });
    let loads = duty::loads(job, &inputs, &water);
    let base = Base::of(&job.choices, &inputs, &water, laid, loads.clone());
    let ways = ways::ways(job, base.as_ref());
    ways::follows(&mut inputs, &job.choices, &ways);
    // What follows from the job's way counts from here on.
    let base = Base::of(&job.choices, &inputs, &water, laid, loads.clone());
    let pair = pair::pair(job, &ways);
    let swept = |surface_run| {
        let (inputs, choices, base) = (&inputs, &job.choices, base.as_ref());
        Swept { inputs, choices, base, ways: &ways, pair, surface_run, cooler }
    };
    let swept = surface.map(swept);
    let sweep = swept.as_ref().and_then(Swept::longer);
    let here = sweep.as_ref().and_then(|sweep| Some(here::here(sweep, depth?)));
    let deeper = swept.as_ref().and_then(|swept| deeper::deeper(swept, &water));
    let no_year = year::trouble(job, &inputs, &water);
    let year = year::year(job, base.as_ref(), &inputs, &water, ways.picked());
    prices_follow(&mut inputs);
    inputs.follow(Field::ExtraEquipment, here.as_ref().and_then(Here::extra));
    let service = service::service(job, &inputs, &water, motor.as_ref(), here.as_ref(), loads.as_deref());
    let mut findings = water::findings(job, &inputs, &water);
    findings.extend(in_the_lead(job, here.as_ref()));
    findings.extend(cooler.zip(depth).and_then(|(cooler, depth)| cooler.not_counted(depth)));
    findings.extend(unpriced(&inputs, sweep.as_ref()));
    findings.extend(of_the_year(&inputs, no_year.as_ref()));
    // A lead without a conductor may be told twice, by its voltage and by the way that it belongs to.
    findings.extend(motor.filter(|motor| motor.light).map(|motor| Finding::MotorLight { load: motor.load() }));
    let of_ways = ways::of_job(job, &ways).into_iter().filter(|finding| !findings.contains(finding));
    findings.extend(of_ways.collect::<Vec<_>>());
    gravest_first(&mut findings);
    let errors = inputs.errors.clone();
    Evaluation {
        errors,
        kind,
        inputs,
        water,
        motor,
        ways,
        sweep,
        deeper,
        depth,
        here,
        year,
        no_year,
        service,
        findings,
    }
}

/// Depth of the job, and the lead on the surface beyond it. The lead of a motor on the surface is told whole as a
/// surface run: along its curve depth stands for the length of the lead.
fn lead(kind: MotorKind, inputs: &Inputs) -> (Option<Length>, Option<Length>) {
    let value = |length: &Checked<Length>| length.as_ref().ok().map(|known| known.value);
    let surface = value(&inputs.surface_run);
    match kind {
        MotorKind::Submersible => (value(&inputs.pump_setting), surface),
        MotorKind::Surface => (surface, surface.map(|_| feet(0.0))),
    }
}

/// How the lead is laid: the depth of the pump, what lies on the surface, and whether the water cools it.
#[derive(Debug, Clone, Copy)]
struct Laid {
    depth: Length,
    surface: Length,
    cooler: Option<Cooler>,
}

fn in_the_lead(job: &Job, here: Option<&Here>) -> Vec<Finding> {
    let mut found = Vec::new();
    for way in Way::ALL {
        match here.map(|here| &here.ways[way as usize]) {
            Some(None) => found.push(Finding::CableNoSize { way }),
            Some(Some(lead)) if lead.run.run.ground_grew => found.push(Finding::GroundWireGrew { way }),
            _ => {}
        }
    }
    if job.choices.metal() == Metal::Aluminum && job.choices.motor_kind() == MotorKind::Submersible {
        found.push(Finding::AluminumInWell);
    }
    found.extend(Field::ALL.into_iter().filter_map(|field| beyond_usual(job, field)));
    found
}

/// Volts that a supply usually has: near its nominal ones.
fn usual_supply(supply: f64) -> (f64, f64) {
    let nominal = in_volts(Class::of_supply(volts(supply)).nominal());
    (nominal * (1.0 - USUAL_SUPPLY_BAND), nominal * (1.0 + USUAL_SUPPLY_BAND))
}

/// A price book that can't be read, and equipment that it has no price for.
fn unpriced(inputs: &Inputs, sweep: Option<&Sweep>) -> Vec<Finding> {
    let mut found = Vec::new();
    if inputs.book.is_err() {
        found.push(Finding::BookUnreadable);
    }
    for way in sweep.iter().flat_map(|sweep| &sweep.ways) {
        if way.place.is_some() && !way.priced {
            found.push(Finding::PriceMissing { way: way.way });
        }
    }
    found
}

/// A duty that can't be read or given, and a tariff whose months or shares contradict one another.
fn of_the_year(inputs: &Inputs, no_year: Option<&NoYear>) -> Vec<Finding> {
    let mut found = Vec::new();
    match no_year.map(year::not_given) {
        Some(Some(flow)) => found.push(Finding::DutyNotMet { flow }),
        Some(None) => found.push(Finding::DutyUnreadable),
        None => {}
    }
    if matches!(one_of_each(&inputs.entered), Some(Err(_))) {
        found.push(Finding::TariffContradicts);
    }
    found
}

/// Notes in the inputs what stands in the fields of the tariff and of what prices and hours may turn out.
fn prices_follow(inputs: &mut Inputs) {
    use Field as F;
    let figure = |inputs: &Inputs, field| inputs.entered.get(field, |figure: f64| figure);
    let energy = figure(inputs, F::EnergyPrice);
    let hours = figure(inputs, F::YearlyHours);
    let metal = inputs.prices.as_ref().ok().map(|prices| prices.cable_metal.per_pound());
    let months = |field| figure(inputs, field).and_then(whole);
    let share = months(F::SeasonMonths).zip(months(F::MonthsOfUse)).map(|(season, used)| usual_share(season, used));
    let per_hour = |price| Entry::new(price, Unit::DollarPerKilowattHour);
    let demand = figure(inputs, F::DemandPrice).unwrap_or(0.0);
    let spread = |value: Option<f64>, by: f64, unit| value.map(|value| Entry::new(value * by, unit));
    let found = [
        (F::SeasonPrice, energy.map(per_hour)),
        (F::SeasonDemandPrice, Some(Entry::new(demand, Unit::DollarPerKilowatt))),
        (F::SeasonShare, share.map(|share| Entry::new(share, Unit::Percent))),
        (F::MetalLow, spread(metal, 1.0 - METAL_SPREAD, Unit::DollarPerPound)),
        (F::MetalHigh, spread(metal, 1.0 + METAL_SPREAD, Unit::DollarPerPound)),
        (F::HoursLow, spread(hours, 1.0 - HOURS_SPREAD, Unit::Hour)),
        (F::HoursHigh, spread(hours, 1.0 + HOURS_SPREAD, Unit::Hour).map(within_a_year)),
        (F::EnergyLow, spread(energy, 1.0 - ENERGY_SPREAD, Unit::DollarPerKilowattHour)),
        (F::EnergyHigh, spread(energy, 1.0 + ENERGY_SPREAD, Unit::DollarPerKilowattHour)),
    ];
    for (field, entry) in found {
        inputs.follow(field, entry);
    }
}

/// How far the metal's price, the hours and the price of energy may turn out from what is counted, as shares, until it is
/// entered: common practice, no single source.
const METAL_SPREAD: f64 = 0.25;
const HOURS_SPREAD: f64 = 0.30;
const ENERGY_SPREAD: f64 = 0.20;

/// No more hours than a year has.
fn within_a_year(hours: Entry) -> Entry {
    Entry { value: hours.value.min(Field::HoursHigh.spec().accepted.max), ..hours }
}

fn beyond_usual(job: &Job, field: Field) -> Option<Finding> {
    let spec = field.spec();
    let value = field.check(job.get(field).filter(|_| field.counts(job))?).ok()?;
    let (least, most) = match field {
        Field::SupplyVolts => usual_supply(value),
        _ => spec.usual,
    };
    // A change of units may move a value off a bound by its last digits.
    let slack = 1e-9 * value.abs();
    let bound = if value > most + slack {
        most
    } else if value < least - slack {
        least
    } else {
        return None;
    };
    Some(Finding::BeyondUsual { field, usual: Entry::new(bound, spec.accepted.unit) })
}

/// Puts findings in the order that they are told in: the gravest first, as they were found among those as grave.
fn gravest_first(findings: &mut Vec<Finding>) {
    by_number(findings, |finding| -f64::from(finding.severity() as u8));
}
