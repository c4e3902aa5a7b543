//! Every way to run the motor from the supply, each judged by the same sums.

mod cost;
mod equipment;
mod extras;
mod findings;
mod lead;
mod motor;
mod outfit;
mod pole;
mod site;
mod volts;
mod year;

pub use cost::WayCost;
pub use equipment::{DeviceBy, Draw};
pub(crate) use extras::BOOST;
pub use extras::{Idler, StepUp};
pub(crate) use lead::wires;
pub use lead::{Stress, WayLead};
pub use motor::MotorHere;
pub use outfit::{Beyond, Outfit};
pub(crate) use pole::COLD;
pub use pole::{Pole, SetNeed, Starting, SupplyRun};
pub use site::Site;
pub use volts::WayVolts;
pub use year::{LoadHours, PowerFlow};

pub(super) use findings::of_job;
pub(super) use motor::is_same;
pub(super) use outfit::Fitted;
pub use year::EnergyPrices;
pub(super) use year::{Running, one_of_each, usual_share, whole};

use super::{Laid, Water};
use crate::cable::long_lead::Limit;
use crate::cable::long_lead::usual_motor_impedance;
use crate::cost::book::PriceBook;
use crate::finding::{Finding, Severity};
use crate::job::{Choices, Field, Inputs, Job, Way, WayKey};
use crate::power::derating::{Derated, derate};
use crate::power::family::{Class, Family, Kind};
use crate::power::family_table::{TableError, read};
use crate::power::fit::FrameFit;
use crate::power::generic::generic;
use crate::quantity::{ElectricPotential, Entry, Length, Unit, in_amperes, in_kilovolt_amperes, in_ohms, in_volts};

/// Frequency that motors of the trade are rated at.
pub(crate) const RATED_HERTZ: f64 = 60.0;

/// All ways to run the motor.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Ways {
    /// The supply and the place.
    pub site: Option<Site>,
    /// Each way, the generic ones first, then the user's own.
    pub all: Vec<PoweredWay>,
    /// The way that the job goes by, as its place among all.
    pub pick: Option<usize>,
    /// Whether the user chose it; else it is the cheapest that serves.
    pub chosen: bool,
    /// Why the table of the user's own equipment can't be read.
    pub table: Option<TableError>,
    /// Figures that the ways wait for.
    pub waits_for: Vec<Field>,
}

impl Ways {
    /// The way that the job goes by.
    #[must_use]
    pub fn picked(&self) -> Option<&PoweredWay> {
        self.all.get(self.pick?)
    }
}

/// How a way comes out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, serde::Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Fits {
    /// Nothing stands against it.
    Serves,
    /// It serves, and something wants looking after.
    WithCare,
    /// It does not serve.
    No,
    /// A figure is missing.
    Waits,
}

/// One way to run the motor, from the supply to the motor's terminals. Each part is nothing where what it needs was not
/// entered or can't be used.
#[derive(Debug, Clone, PartialEq)]
pub struct PoweredWay {
    /// Its equipment.
    pub family: Family,
    /// Class and voltage of what feeds it.
    pub fed: (Class, ElectricPotential),
    /// The voltage of its lead; nothing where it does not take the supply.
    pub way: Option<Way>,
    /// The motor as this way runs it.
    pub motor: Option<MotorHere>,
    /// What heat and altitude leave of the equipment.
    pub derated: Option<Derated>,
    /// Whether it has a frame for the motor; a single-phase motor needs none.
    pub frame: Option<FrameFit>,
    /// What it draws.
    pub draw: Option<Draw>,
    /// The lead to the motor.
    pub lead: Option<WayLead>,
    /// The supply conductors.
    pub supply: Option<SupplyRun>,
    /// The transformer, and what it feels.
    pub pole: Option<Pole>,
    /// The start of a motor that is put on full volts.
    pub start: Option<Starting>,
    /// The generator set that it would take.
    pub set: Option<SetNeed>,
    /// Volts from the supply to the motor.
    pub volts: Option<WayVolts>,
    /// The peak at the motor, where pulses reach it.
    pub stress: Option<Stress>,
    /// What the peak would be without a filter of the equipment's own; the same where it has none.
    pub bare: Option<Stress>,
    /// A transformer behind its drive.
    pub step_up: Option<StepUp>,
    /// The idler of a rotary converter.
    pub idler: Option<Idler>,
    /// What it costs.
    pub cost: Option<WayCost>,
    /// What is unwise or unsafe about it, gravest first.
    pub findings: Vec<Finding>,
    /// How it comes out.
    pub fits: Fits,
}

impl PoweredWay {
    /// How it is named in a job.
    #[must_use]
    pub fn key(&self) -> WayKey {
        match self.family.name.as_str() {
            "" => WayKey::Generic(self.family.kind),
            name => WayKey::Own(name.to_owned()),
        }
    }
}

/// What the sums of all ways share.
pub(super) struct Base<'a> {
    choices: &'a Choices,
    inputs: &'a Inputs,
    water: &'a Water,
    site: Site,
    laid: Option<Laid>,
    lead: Option<Length>,
    /// The loads of a year; nothing where they can't be told.
    loads: Option<Vec<LoadHours>>,
}

impl<'a> Base<'a> {
    /// What the sums of the ways share; nothing where a figure of the supply or the place can't be used.
    pub(super) fn of(
        choices: &'a Choices,
        inputs: &'a Inputs,
        water: &'a Water,
        laid: Option<Laid>,
        loads: Option<Vec<LoadHours>>,
    ) -> Option<Self> {
        let site = match &inputs.book {
            Ok(book) => Site::of(choices, &inputs.entered, book)?,
            Err(_) => Site::of(choices, &inputs.entered, &PriceBook::invented())?,
        };
        let lead = laid.map(|laid| laid.depth + laid.surface);
        Some(Self { choices, inputs, water, site, laid, lead, loads })
    }

    /// What was chosen.
    pub(super) fn choices(&self) -> &Choices {
        self.choices
    }
}

/// All ways of a job.
pub(super) fn ways(job: &Job, base: Option<&Base>) -> Ways {
    let (own, table) = match read(&job.families) {
        Ok(own) => (own, None),
        Err(error) => (Vec::new(), Some(error)),
    };
    let Some(base) = base else {
        return Ways { table, ..Ways::default() };
    };
    let families = Kind::ALL.map(generic).into_iter().chain(own);
    let all: Vec<PoweredWay> = families.map(|family| base.powered(family)).collect();
    let chosen = job.way.as_ref().and_then(|key| all.iter().position(|way| way.key() == *key));
    let pick = chosen.or_else(|| cheapest(&all));
    let waits_for = match base.inputs.motor_power {
        Ok(_) if base.site.distance.is_none() => vec![Field::PoleDistance],
        _ => Vec::new(),
    };
    Ways { site: Some(base.site), all, pick, chosen: chosen.is_some(), table, waits_for }
}

/// The cheapest way that serves; one that can't do what the drive was to do only where no other is.
fn cheapest(all: &[PoweredWay]) -> Option<usize> {
    let serving = all.iter().enumerate().filter(|(_, way)| matches!(way.fits, Fits::Serves | Fits::WithCare));
    let priced = serving.filter_map(|(place, way)| {
        let lacks = way.findings.contains(&Finding::FullSpeedOnly);
        Some((place, lacks, way.cost?.first.0))
    });
    priced.min_by(|a, b| a.1.cmp(&b.1).then(a.2.total_cmp(&b.2))).map(|(place, ..)| place)
}

impl Base<'_> {
    fn powered(&self, family: Family) -> PoweredWay {
        let mut powered = self.filled(self.empty(family));
        powered.findings = self.findings(&powered);
        powered.fits = fits(&powered);
        powered
    }

    /// A way of which nothing is known but its supply and what heat and altitude leave.
    fn empty(&self, family: Family) -> PoweredWay {
        let fed = self.site.fed(family.supply.feed);
        // Volts beyond what equipment of the class is made for are none that it takes.
        let class = family.motor_class(fed.0).filter(|_| fed.0.takes(fed.1));
        let way = class.map(|class| match class {
            Class::Low => Way::V240,
            Class::High => Way::V480,
        });
        let derated = derate(family.rating, self.site.ambient, self.site.altitude).ok();
        PoweredWay {
            fed,
            way,
            derated,
            motor: None,
            frame: None,
            draw: None,
            lead: None,
            supply: None,
            pole: None,
            start: None,
            set: None,
            volts: None,
            stress: None,
            bare: None,
            step_up: None,
            idler: None,
            cost: None,
            findings: Vec::new(),
            fits: Fits::Waits,
            family,
        }
    }

    /// The parts in the order of the current's need: from the motor to its frame, its lead, and back to the pole.
    fn filled(&self, mut powered: PoweredWay) -> PoweredWay {
        powered.motor = powered.way.and_then(|way| self.motor(&powered.family, way));
        let (Some(way), Some(motor)) = (powered.way, powered.motor) else { return powered };
        powered.frame = self.frame(&powered, &motor);
        let Some(rated) = self.rated(&powered, &motor) else { return powered };
        powered.lead = self.lead(way, &motor, rated.device.0);
        powered.draw = self.draw(&powered, &motor, rated);
        let Some(draw) = powered.draw else { return powered };
        powered.supply = self.supply(&powered, &draw);
        powered.pole = self.pole(&powered, &draw);
        powered.start = self.start(&powered, &motor);
        powered.set = self.set(&powered, &draw);
        powered.stress = self.stress(&powered, &motor);
        powered.bare = self.bare(&powered, &motor);
        powered.volts = self.volts(&powered, &motor);
        powered.step_up = self.step_up(&powered, &motor);
        powered.idler = self.idler(&powered, &motor);
        powered.cost = self.cost(&powered, &motor);
        powered
    }
}

fn fits(powered: &PoweredWay) -> Fits {
    let gravest = powered.findings.iter().map(Finding::severity).max();
    match gravest {
        Some(Severity::Stop) => Fits::No,
        _ if powered.volts.is_none() || unjudged(powered) => Fits::Waits,
        Some(Severity::Caution) => Fits::WithCare,
        Some(Severity::Note) | None => Fits::Serves,
    }
}

/// Whether the pulses or the transformer could not be judged: a figure of theirs can't be used, or no usual transformer is
/// so large and none was entered.
fn unjudged(powered: &PoweredWay) -> bool {
    let pulses = powered.family.pulses_reach_the_motor() && powered.stress.is_none();
    pulses || (powered.family.kind != Kind::ThreePhaseGenerator && powered.pole.is_none())
}

/// Notes in the inputs what stands in the fields of the supply and the equipment, by the way that the job goes by.
pub(super) fn follows(inputs: &mut Inputs, choices: &Choices, ways: &Ways) {
    use Field as F;
    let lead = inputs.ambient.as_ref().ok().map(|known| Entry::new(known.value.0, Unit::DegreeCelsius));
    inputs.follow(F::FeederAmbient, lead);
    inputs.follow(F::DriveAmbient, lead);
    if let Ok(power) = &inputs.motor_power {
        let ohms = in_ohms(usual_motor_impedance(power.value));
        inputs.follow(F::MotorImpedance, Some(Entry::new(ohms, Unit::Ohm)));
    }
    let picked = ways.picked();
    inputs.follow(F::MotorPeakLimit, peak_limit(choices, picked).map(|most| Entry::new(in_volts(most), Unit::Volt)));
    let Some(way) = picked else { return };
    if let Some(pole) = way.pole {
        let kva = in_kilovolt_amperes(pole.transformer.rating);
        inputs.follow(F::TransformerRating, Some(Entry::new(kva, Unit::KilovoltAmpere)));
        let kiloamperes = in_amperes(pole.marked) / 1000.0;
        inputs.follow(F::MarkedShortCircuit, Some(Entry::new(kiloamperes, Unit::Kiloampere)));
    }
    // What was entered stays, a figure that can't be used too: its error is not hidden.
    let entered = inputs.entered.is_typed(F::DeviceAmps);
    if let Some(draw) = way.draw.filter(|draw| !entered && draw.device_by != DeviceBy::Entered) {
        inputs.take_device(draw.device, draw.rated);
    }
}

/// The peak that the motor stands until its maker says more; an inverter-duty motor's goes with its rated volts.
fn peak_limit(choices: &Choices, picked: Option<&PoweredWay>) -> Option<ElectricPotential> {
    if choices.inverter_duty() {
        picked?.motor.map(|motor| Limit::InverterDuty(motor.rated).peak())
    } else {
        Some(Limit::GeneralPurpose.peak())
    }
}
