//! From the pole to the equipment: conductors, transformer, start, generator.

use super::equipment::{Draw, locked_rotor};
use super::motor::MotorHere;
use super::{Base, PoweredWay};
use crate::cable::ampacity::{Setting, terminal_rating};
use crate::cable::conductor::resistance_at;
use crate::cable::drop::Phases;
use crate::cable::feeder::{Feeder, fed};
use crate::cable::lead::{Laying, Run, impedance};
use crate::evaluate::runs::cable_metal;
use crate::power::family::{Feed, Kind};
use crate::power::fit::{ShortCircuitFit, short_circuit_fit, unmarked_short_circuit_rating};
use crate::power::generator::{Hookup, SetVerdict, judge_set, running_rating, starting_rating};
use crate::power::harmonics::{Coupling, Distortion, fundamental};
use crate::power::impedance::{Impedance, Sag, fault_current, feeder, sag};
use crate::power::start::{StartDip, StartVerdict, judge_start, locked_rotor_input, start_dip};
use crate::power::transformer::{Loading, Transformer, next_size};
use crate::quantity::{Celsius, ElectricCurrent, ElectricPotential, Length, Mass, Power};

/// The supply conductors of a way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SupplyRun {
    /// Their length, one way.
    pub length: Length,
    /// The conductors, their ground and why.
    pub run: Run,
    /// Drop at the input current.
    pub drop: ElectricPotential,
    /// The drop as a share of the supply.
    pub share: f64,
    /// Their impedance, warm as in service.
    pub impedance: Impedance,
    /// The same of conductors that are cold: what a fault meets.
    pub cold: Impedance,
    /// Metal in them.
    pub metal: Mass,
    /// What their choice depended on.
    pub demands: Feeder,
}

/// The transformer of a way, and what it feels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pole {
    /// The transformer.
    pub transformer: Transformer,
    /// Whether its rating stands in for one that is not known: the smallest usual one for the load.
    pub assumed: bool,
    /// Its load.
    pub loading: Loading,
    /// Fault current at its terminals.
    pub fault: ElectricCurrent,
    /// Fault current at the equipment through cold conductors; at the terminals until the conductors are known.
    pub fault_here: ElectricCurrent,
    /// Short-circuit rating of the equipment.
    pub marked: ElectricCurrent,
    /// The fault against it.
    pub short_circuit: ShortCircuitFit,
    /// Sag of the volts while the motor runs; nothing without conductors, or where they can't be fed.
    pub sag: Option<Sag>,
    /// Harmonic current at the transformer, where others may be coupled.
    pub harmonics: Option<Distortion>,
}

/// A motor put on full volts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Starting {
    /// Current of the standing motor, as the supply would give it at its full volts.
    pub locked_rotor: ElectricCurrent,
    /// The dips.
    pub dip: StartDip,
    /// How they come out.
    pub verdict: StartVerdict,
}

/// The generator set that a way takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SetNeed {
    /// How the set feeds the equipment.
    pub hookup: Hookup,
    /// For running.
    pub running: Power,
    /// For starting, where the motor is put on full volts.
    pub starting: Option<Power>,
    /// Against the set that was entered.
    pub verdict: Option<SetVerdict>,
}

impl SetNeed {
    /// What the set must give.
    #[must_use]
    pub fn needed(&self) -> Power {
        self.starting.map_or(self.running, |starting| starting.max(self.running))
    }
}

/// Temperature of conductors that carried nothing before a fault: the colder, the more they let pass. Common practice, no
/// single source.
pub(crate) const COLD: Celsius = Celsius(25.0);

fn phases(feed: Feed) -> Phases {
    match feed {
        Feed::SinglePhase => Phases::Single,
        Feed::ThreePhase => Phases::Three,
    }
}

impl Base<'_> {
    pub(super) fn supply(&self, powered: &PoweredWay, draw: &Draw) -> Option<SupplyRun> {
        let length = self.site.distance?;
        let feed = powered.family.supply.feed;
        let setting = Setting {
            metal: self.choices.feeder_metal(),
            insulation: self.choices.insulation(),
            terminals: terminal_rating(draw.ampacity, self.choices.terminals_marked_75()),
            ambient: self.site.feeder_ambient,
        };
        let conductors = Feeder {
            supply: powered.fed.1,
            phases: phases(feed),
            // The rule that gave the ampacity is undone by the feeder's own quarter.
            rated_input: draw.ampacity / 1.25,
            running: draw.current,
            power_factor: draw.power_factor,
            setting,
            build: self.choices.feeder_build(),
            laying: Laying::Together,
            most_sets: self.choices.feeder_sets(),
            allowed_drop: self.site.allowed_drop,
            device: draw.device,
        };
        let found = fed(&conductors, length).ok()??;
        let (r, x) = impedance(found.run.conductor, setting.metal, conductors.build);
        Some(SupplyRun {
            length,
            run: found.run,
            drop: found.drop,
            share: found.share,
            impedance: feeder(r, x, length, feed).ok()?,
            cold: feeder(resistance_at(r, setting.metal, COLD).ok()?, x, length, feed).ok()?,
            metal: cable_metal(setting.metal, &found.run, conductors.phases) * length,
            demands: conductors,
        })
    }

    pub(super) fn pole(&self, powered: &PoweredWay, draw: &Draw) -> Option<Pole> {
        let (family, (_, voltage)) = (&powered.family, powered.fed);
        // A set of one's own has no transformer, and no neighbors.
        if family.kind == Kind::ThreePhaseGenerator {
            return None;
        }
        let feed = family.supply.feed;
        let entered = self.site.transformer.filter(|_| feed == Feed::SinglePhase);
        let other = self.site.other;
        let rating = match entered {
            Some(rating) => rating,
            None => next_size(draw.apparent + other, feed).ok()??,
        };
        let transformer = Transformer { rating, voltage, impedance: self.site.impedance, feed };
        let other: ElectricCurrent = other / voltage / feed.factor();
        let source = transformer.as_impedance().ok()?;
        let fault = transformer.fault_current().ok()?;
        let fault_here = match powered.supply {
            Some(run) => fault_current(voltage, source + run.cold).ok()?,
            None => fault,
        };
        let marked = family.marking.short_circuit.or(self.site.marked);
        let marked = match marked {
            Some(marked) => marked,
            None => unmarked_short_circuit_rating(super::equipment::size(powered, powered.motor.as_ref()?)).ok()?,
        };
        let equipment = fundamental(draw.current, family.input.distortion).ok()?;
        let coupling = Coupling { short_circuit: fault, equipment, other };
        let sag = |run: super::SupplyRun| sag(voltage, draw.current, draw.power_factor, source, run.impedance).ok()?;
        Some(Pole {
            transformer,
            assumed: entered.is_none(),
            loading: transformer.loading(draw.current + other).ok()?,
            fault,
            fault_here,
            marked,
            short_circuit: short_circuit_fit(fault_here, marked).ok()?,
            sag: powered.supply.and_then(sag),
            harmonics: coupling.total(family.input.distortion).ok(),
        })
    }

    pub(super) fn start(&self, powered: &PoweredWay, motor: &MotorHere) -> Option<Starting> {
        let family = &powered.family;
        let multiple = locked_rotor(family)?;
        let locked_rotor = locked_rotor_input(motor.nameplate, multiple, family.supply.feed, family.motor).ok()?;
        let source = powered.pole?.transformer.as_impedance().ok()?;
        let dip = start_dip(powered.fed.1, locked_rotor, source, powered.supply?.impedance).ok()?;
        Some(Starting { locked_rotor, dip, verdict: judge_start(dip, self.site.dips).ok()? })
    }

    pub(super) fn set(&self, powered: &PoweredWay, draw: &Draw) -> Option<SetNeed> {
        let family = &powered.family;
        let feed = family.supply.feed;
        let hookup = if feed == Feed::SinglePhase { self.choices.hookup() } else { Hookup::AsBuilt };
        let running = running_rating(draw.apparent, family.input.distortion, hookup).ok()?;
        let starting = match (locked_rotor(family), powered.motor) {
            (Some(multiple), Some(motor)) => {
                let current = locked_rotor_input(motor.nameplate, multiple, feed, family.motor).ok()?;
                Some(starting_rating(powered.fed.1, current, feed, hookup).ok()?)
            }
            _ => None,
        };
        let mut need = SetNeed { hookup, running, starting, verdict: None };
        need.verdict = match self.site.set {
            Some(set) => Some(judge_set(set, self.site.set_share, need.needed()).ok()?),
            None => None,
        };
        Some(need)
    }
}
