//! The lesson: why twice the voltage needs a quarter of the metal, step by step, with a learner's own few numbers.
//!
//! Everything is read from the evaluation of a job that holds those numbers, so that the lesson says what the pages say.

mod question;
mod sums;

pub use question::{Choice, Offered, question};
pub(super) use sums::sum;

use crate::cable::ampacity::ampacity;
use crate::cable::drop::approximate_drop;
use crate::cable::lead::{Conductor, Demands, drop_over, impedance};
use crate::cable::needed::needed_area;
use crate::evaluate::{Basis, Evaluation, Saving, Stress, Sweep, WayHere};
use crate::job::{Field, Job, Way};
use crate::pump::motor::running_current;
use crate::quantity::{
    Area, ElectricCurrent, ElectricPotential, Entry, Length, Money, Power, Unit, UnitSystem, in_feet, in_horsepower,
    volts,
};
use crate::standards::conductor::{Metal, Size};

/// A step of the lesson.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum LessonStep {
    /// Power, volts and amps.
    Power,
    /// Twice the volts, half the amps.
    Amps,
    /// The drop as a share of the voltage.
    Share,
    /// Metal by its area.
    Area,
    /// Why it becomes a quarter.
    Quarter,
    /// Real sizes come in steps.
    Sizes,
    /// Heat, the other limit.
    Heat,
    /// Where it pays.
    Pays,
    /// Pulses on a long lead.
    Peak,
    /// What to take home.
    Home,
}

impl LessonStep {
    /// Every step, in order.
    pub const ALL: [Self; 10] = [
        Self::Power,
        Self::Amps,
        Self::Share,
        Self::Area,
        Self::Quarter,
        Self::Sizes,
        Self::Heat,
        Self::Pays,
        Self::Peak,
        Self::Home,
    ];
}

/// A sum of the lesson alone; others are those of the pages.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum LessonSum {
    /// The motor's current by its power.
    Current(Way),
    /// The drop in the wire of the 240 V lead, on either way.
    SameWire(Way),
    /// The area that the drop asks for.
    Area(Way),
    /// Both areas, one over the other.
    Ratio,
    /// The smallest size that carries the current.
    Least(Way),
    /// The peak at the motor, without a filter of the equipment's own.
    Peak(Way),
    /// Metal of both leads, one over the other.
    Metal,
    /// The right answer to the question of a step, where it is a sum.
    Answer(LessonStep),
}

/// The size below the one that was chosen, and why it does not serve.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Below {
    /// The size.
    pub size: Size,
    /// Its drop as a share of the sending voltage; nothing where it could not feed the motor at all.
    pub share: Option<f64>,
    /// Whether it may carry the current.
    pub carries: bool,
}

/// One voltage in the lesson.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LessonWay {
    /// Current by the motor's power, at its rated voltage.
    pub by_power: ElectricCurrent,
    /// Current that sizes the lead.
    pub current: ElectricCurrent,
    /// Drop in the wire of the 240 V lead, by the usual approximation.
    pub lost: ElectricPotential,
    /// The same as a share of the sending voltage.
    pub lost_share: f64,
    /// The drop that is allowed.
    pub allowed: ElectricPotential,
    /// Area that the drop asks for, before real sizes.
    pub area: Area,
    /// Current that the code asks the lead to carry.
    pub required: ElectricCurrent,
    /// The smallest size that carries it.
    pub least: Conductor,
    /// The longest lead that it serves.
    pub least_serves: Length,
    /// The lead as it is chosen.
    pub here: WayHere,
    /// Its equipment, as a place among the ways.
    pub place: Option<usize>,
    /// The peak at the motor with nothing in between, where its equipment makes pulses.
    pub pulses: Option<Stress>,
    /// Whether a filter of the equipment's own keeps them from the lead.
    pub filtered: bool,
}

/// A lead of another length, for a question: twice as long, else half as long, else the same.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OtherLead {
    /// Its length.
    pub lead: Length,
    /// Its conductor at 480 V.
    pub conductor: Conductor,
    /// Its drop at 480 V, as a share.
    pub share: f64,
    /// The size below.
    pub below: Option<Below>,
    /// Price of the cable at 240 V and at 480 V.
    pub cables: [Money; 2],
    /// What 480 V costs more beside the lead.
    pub extra: Money,
    /// What 480 V saves in all.
    pub net: Money,
}

/// The figures of the lesson.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lesson {
    /// The lead, one way.
    pub lead: Length,
    /// Rated power of the motor.
    pub motor: Power,
    /// Electric power that it takes in at that power.
    pub input: Power,
    /// Power factor of the motor.
    pub power_factor: f64,
    /// Largest drop, as a share of the sending voltage.
    pub allowed: f64,
    /// Metal of the lead.
    pub metal: Metal,
    /// The 240 V and the 480 V way.
    pub ways: [LessonWay; 2],
    /// What 480 V saves.
    pub saving: Saving,
    /// What 480 V costs more beside the lead.
    pub extra: Money,
    /// A lead of another length.
    pub other: OtherLead,
    /// The longest lead after which one way stays cheaper, and that way; nothing where the cheaper never changes.
    pub even: Option<(Length, Way)>,
}

impl Lesson {
    /// A way.
    #[must_use]
    pub fn way(&self, way: Way) -> &LessonWay {
        &self.ways[way as usize]
    }

    /// The 480 V area of the sizes that carry the current over that of 240 V.
    #[must_use]
    pub fn least_ratio(&self) -> f64 {
        let [low, high] = self.ways.map(|way| way.least.cmil());
        high / low
    }

    /// The same of the sizes that are chosen.
    #[must_use]
    pub fn size_ratio(&self) -> f64 {
        let [low, high] = self.ways.map(|way| way.here.run.run.conductor.cmil());
        high / low
    }

    /// The same of the metal in both leads, ground included.
    #[must_use]
    pub fn metal_ratio(&self) -> f64 {
        let [low, high] = self.ways.map(|way| way.here.metal);
        (high / low).value
    }

    /// Current of a motor that draws twice as much at 240 V, for a question.
    #[must_use]
    pub fn larger_motor(&self) -> ElectricCurrent {
        self.way(Way::V240).current * 2.0
    }

    /// The area that a lead of another length asks for on a way.
    #[must_use]
    pub fn area_at(&self, way: Way, lead: Length) -> Area {
        self.way(way).area * (lead / self.lead).value
    }
}

/// The figures of the lesson; nothing while the job lacks one, or where no listed conductor serves one of both ways.
#[must_use]
pub fn lesson(evaluation: &Evaluation) -> Option<Lesson> {
    let here = evaluation.here.as_ref()?;
    let inputs = &evaluation.inputs;
    let motor = inputs.motor_power.as_ref().ok()?.value;
    let [low, high] = Way::ALL.map(|way| lesson_way(evaluation, way));
    let ways = [low?, high?];
    let [between_low, between_high] = ways.map(|way| way.here.outfit.cost.total());
    let sweep = evaluation.sweep.as_ref()?;
    let demands = &sweep.way(Way::V240).demands;
    Some(Lesson {
        lead: here.lead,
        motor,
        input: motor / inputs.efficiency.as_ref().ok()?.value,
        power_factor: demands.load.power_factor,
        allowed: demands.allowed_drop,
        metal: demands.setting.metal,
        ways,
        saving: here.saving?,
        extra: between_high - between_low,
        other: [2.0, 0.5, 1.0].into_iter().find_map(|times| other(sweep, here.lead * times))?,
        even: sweep.break_even(Basis::Installed).lasting().map(|at| (at.depth + sweep.surface_run, at.below)),
    })
}

fn lesson_way(evaluation: &Evaluation, way: Way) -> Option<LessonWay> {
    let (here, sweep) = (evaluation.here.as_ref()?, evaluation.sweep.as_ref()?);
    let (lead, swept) = (*here.way(way)?, sweep.way(way));
    let demands = swept.demands;
    let inputs = &evaluation.inputs;
    let first = swept.runs.first()?.run;
    let wire = here.way(Way::V240)?.run.run.conductor;
    let (r, x) = impedance(wire, demands.setting.metal, demands.build);
    let lost = approximate_drop(demands.load, r, x, here.lead).ok()?;
    let (motor, efficiency) = (inputs.motor_power.as_ref().ok()?.value, inputs.efficiency.as_ref().ok()?.value);
    let rated = volts(way.rated_volts());
    let powered = swept.place.and_then(|place| evaluation.ways.all.get(place));
    Some(LessonWay {
        by_power: running_current(motor, rated, efficiency, demands.load.power_factor).ok()?,
        current: demands.load.current,
        lost,
        lost_share: (lost / demands.load.sending).value,
        allowed: demands.load.sending * demands.allowed_drop,
        area: needed_area(demands.load, here.lead, demands.allowed_drop, demands.setting.metal).ok()?,
        required: demands.required,
        least: first.conductor,
        least_serves: first.longest,
        here: lead,
        place: swept.place,
        pulses: powered.and_then(|powered| powered.bare),
        filtered: powered.is_some_and(|powered| powered.bare.is_some() && powered.stress.is_none()),
    })
}

fn other(sweep: &Sweep, lead: Length) -> Option<OtherLead> {
    let depth = lead - sweep.surface_run;
    let high = sweep.way(Way::V480);
    let conductor = high.run_at(depth)?.run.conductor;
    let share = drop_over(&high.demands, conductor, lead).ok()??;
    let [low_cable, high_cable] = Way::ALL.map(|way| sweep.way(way).cost_at(depth, Basis::Cable));
    let [low_more, high_more] = Way::ALL.map(|way| sweep.way(way).beyond_at(depth));
    let [low_all, high_all] = Way::ALL.map(|way| sweep.way(way).cost_at(depth, Basis::Installed));
    Some(OtherLead {
        lead,
        conductor,
        share: (share / high.demands.load.sending).value,
        below: below(&high.demands, conductor, lead),
        cables: [low_cable?, high_cable?],
        extra: high_more? - low_more?,
        net: low_all? - high_all?,
    })
}

/// The listed size below a single conductor.
fn below(demands: &Demands, chosen: Conductor, lead: Length) -> Option<Below> {
    let size = (chosen.size as usize).checked_sub(1).and_then(|place| Size::ALL.get(place)).copied()?;
    let carried = ampacity(size, demands.setting, usize::from(demands.load.phases.conductors()));
    let drop = drop_over(demands, Conductor { sets: chosen.sets, size }, lead).ok()?;
    Some(Below {
        size,
        share: drop.map(|drop| (drop / demands.load.sending).value),
        carries: carried.is_some_and(|carried| carried * f64::from(chosen.sets) >= demands.required),
    })
}

/// The fields that the lesson asks for.
const LESSON_FIELDS: [Field; 3] = [Field::MotorPower, Field::PumpSetting, Field::AllowedDrop];

/// The job that the lesson works with: a motor at the end of a lead, and nothing of a well.
fn job(power: Entry, lead: Entry, drop: Entry, metal: Option<Metal>) -> Job {
    let mut job = Job::default();
    let none = Entry::new(0.0, lead.unit);
    let figures = LESSON_FIELDS.into_iter().zip([power, lead, drop]);
    for (field, entry) in figures.chain([(Field::SurfaceRun, none)]) {
        job.set(field, Some(entry));
    }
    job.choices.metal = metal;
    job
}

/// An invented example to begin with: a motor of 7.5 hp on a lead of 620 ft, 5 % of drop.
#[must_use]
pub fn example() -> Job {
    let [power, lead, drop] = [(7.5, Unit::Horsepower), (620.0, Unit::Foot), (5.0, Unit::Percent)];
    let entry = |(value, unit)| Entry::new(value, unit);
    job(entry(power), entry(lead), entry(drop), None)
}

/// The lesson's job with the motor, the lead, the allowed drop and the metal of another job; nothing while that lacks one.
#[must_use]
pub fn with_numbers_of(of: &Job, evaluation: &Evaluation, system: UnitSystem) -> Option<Job> {
    let inputs = &evaluation.inputs;
    let power = inputs.motor_power.as_ref().ok()?.value;
    // To a millionth: a change of units leaves no crumbs in a field.
    let known = |value: f64, unit| {
        let entry = Entry::new(value, unit).shown_in(system);
        Entry { value: (1e6 * entry.value).round() / 1e6, ..entry }
    };
    let entered =
        |field: Field, otherwise: Entry| of.get(field).filter(|_| inputs.entered.is_typed(field)).unwrap_or(otherwise);
    let lead = known(in_feet(evaluation.here.as_ref()?.lead), Unit::Foot);
    let percent = 100.0 * inputs.allowed_drop.as_ref().ok()?.value;
    Some(job(
        entered(Field::MotorPower, known(in_horsepower(power), Unit::Horsepower)),
        lead,
        entered(Field::AllowedDrop, known(percent, Unit::Percent)),
        of.choices.metal,
    ))
}
