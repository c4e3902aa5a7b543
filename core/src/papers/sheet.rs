//! A working while it is written.

use super::conversion::Conversion;
use super::math::{Math, Measured, Symbol, filled, formula};
use super::name::Name;
use super::topic::Topic;
use super::working::{Caveat, Entered, EnteredValue, Put, Step, Working};
use crate::cable::lead::Conductor;
use crate::evaluate::Evaluation;
use crate::job::{Field, Inputs, Origin};
use crate::pump::motor::MotorKind;
use crate::quantity::{
    ElectricCurrent, ElectricPotential, Entry, Length, Money, Power, Pressure, Unit, UnitSystem, Velocity, VolumeRate,
    in_amperes, in_feet, in_feet_per_second, in_gpm, in_horsepower, in_inches, in_kilovolt_amperes, in_psi, in_volts,
    in_watts,
};
use crate::standards::conductor::Metal;
use core::f64::consts::PI;

pub(super) const LEAD: Symbol = Symbol::plain("L");
pub(super) const DEPTH: Symbol = Symbol::plain("D");
pub(super) const SURFACE: Symbol = Symbol::of("L", "s");
pub(super) const SETS: Symbol = Symbol::plain("n");
const CIRCLE: Symbol = Symbol::plain("π");

/// A working while it is written.
pub(super) struct Sheet {
    topic: Topic,
    system: UnitSystem,
    values: Vec<Put>,
    entered: Vec<Entered>,
    steps: Vec<Step>,
    sources: Vec<&'static str>,
    caveats: Vec<Caveat>,
}

impl Sheet {
    pub fn new(topic: Topic, system: UnitSystem) -> Self {
        let (values, entered, steps) = (Vec::new(), Vec::new(), Vec::new());
        Self { topic, system, values, entered, steps, sources: Vec::new(), caveats: Vec::new() }
    }

    /// True for the units of the United States, in which some formulas of the trade need fewer conversions, or others.
    pub fn is_us(&self) -> bool {
        self.system == UnitSystem::Us
    }

    /// A quantity in the units of the sheet.
    pub fn shown(&self, (value, unit): (f64, Unit)) -> Measured {
        Entry::new(value, unit).shown_in(self.system)
    }

    /// Puts a value in; the same symbol for the same thing once.
    pub fn put(&mut self, symbol: Symbol, name: Name, value: (f64, Unit), origin: Origin) -> Measured {
        let value = self.shown(value);
        if !self.values.iter().any(|put| (put.symbol, put.name) == (symbol, name)) {
            self.values.push(Put { symbol, name, value, origin });
        }
        value
    }

    /// Puts a figure of the job in, entered or fixed; nothing where there is none.
    pub fn take(&mut self, inputs: &Inputs, symbol: Symbol, name: Name, field: Field) -> Option<Measured> {
        let known = inputs.entered.take(field, |value| value).ok()??;
        Some(self.put(symbol, name, (known.value, field.spec().accepted.unit), known.origin))
    }

    /// Puts a conversion of units in.
    pub fn unit(&mut self, conversion: Conversion) -> Symbol {
        let name = Name::Conversion(conversion, self.system);
        self.put(conversion.symbol(), name, plain(conversion.value(self.system)), Origin::Definition);
        conversion.symbol()
    }

    /// Puts π in.
    pub fn pi(&mut self) -> Symbol {
        self.put(CIRCLE, Name::Pi, plain(PI), Origin::Definition);
        CIRCLE
    }

    /// Notes what a table was entered with.
    pub fn enter(&mut self, name: Name, value: EnteredValue) {
        self.entered.push(Entered { name, value });
    }

    /// Notes the conductor that the tables were read for. Several sets stand among the values.
    pub fn enter_conductor(&mut self, conductor: Conductor, metal: Metal) {
        self.enter(Name::ConductorSize, EnteredValue::Size(conductor.size));
        self.enter(Name::ConductorMetal, EnteredValue::Metal(metal));
        if conductor.sets == 1 {
            self.enter(Name::ParallelSets, EnteredValue::Sets(conductor.sets));
        }
    }

    /// Notes sources, each once, in the order of their use.
    pub fn cite(&mut self, sources: &[&'static str]) {
        for source in sources {
            if !self.sources.contains(source) {
                self.sources.push(source);
            }
        }
    }

    /// Notes what the result has to be taken with.
    pub fn warn(&mut self, caveat: Caveat) {
        self.caveats.push(caveat);
    }

    /// Writes a step. Its numbers are those of the values and of the steps before it.
    pub fn step(&mut self, symbol: Symbol, formula: Vec<Math>, value: (f64, Unit)) -> Measured {
        let known = |symbol: Symbol| {
            let step = self.steps.iter().rev().find(|step| step.symbol == symbol).map(|step| step.result);
            step.or_else(|| self.values.iter().find(|put| put.symbol == symbol).map(|put| put.value))
        };
        let filled = filled(&formula, &known);
        let result = self.shown(value);
        self.steps.push(Step { symbol, formula, filled, result });
        result
    }

    /// The length of the lead at the job's depth: with its surface run, or for a motor on the surface that run alone.
    pub fn lead_here(&mut self, evaluation: &Evaluation) -> Option<()> {
        let (here, inputs) = (evaluation.here.as_ref()?, &evaluation.inputs);
        let surface = inputs.surface_run.as_ref().ok()?;
        if evaluation.kind == MotorKind::Surface {
            self.put(LEAD, Name::SurfaceRun, length(here.lead), surface.origin);
            return Some(());
        }
        self.put(DEPTH, Name::PumpSetting, length(here.depth), inputs.origin(Field::PumpSetting));
        self.lead(here.depth, surface.value, surface.origin);
        Some(())
    }

    /// The length of the lead, from the depth that was put in and the surface run.
    pub fn lead(&mut self, depth: Length, surface: Length, origin: Origin) {
        self.put(SURFACE, Name::SurfaceRun, length(surface), origin);
        self.step(LEAD, formula![DEPTH, "+", SURFACE], length(depth + surface));
    }

    pub fn done(mut self, result: Measured, sources: &[&'static str]) -> Working {
        self.cite(sources);
        Working {
            topic: self.topic,
            result,
            more: Vec::new(),
            steps: self.steps,
            values: self.values,
            entered: self.entered,
            sources: self.sources,
            caveats: self.caveats,
            limit: None,
        }
    }
}

pub(super) fn plain(number: f64) -> (f64, Unit) {
    (number, Unit::One)
}
pub(super) fn percent(share: f64) -> (f64, Unit) {
    (100.0 * share, Unit::Percent)
}
pub(super) fn length(length: Length) -> (f64, Unit) {
    (in_feet(length), Unit::Foot)
}
pub(super) fn diameter(length: Length) -> (f64, Unit) {
    (in_inches(length), Unit::Inch)
}
pub(super) fn current(current: ElectricCurrent) -> (f64, Unit) {
    (in_amperes(current), Unit::Ampere)
}
pub(super) fn money(money: Money) -> (f64, Unit) {
    (money.0, Unit::Dollar)
}
pub(super) fn flow(flow: VolumeRate) -> (f64, Unit) {
    (in_gpm(flow), Unit::GallonPerMinute)
}
pub(super) fn speed(speed: Velocity) -> (f64, Unit) {
    (in_feet_per_second(speed), Unit::FootPerSecond)
}
pub(super) fn pressure(pressure: Pressure) -> (f64, Unit) {
    (in_psi(pressure), Unit::PoundPerSquareInch)
}
pub(super) fn power(power: Power) -> (f64, Unit) {
    (in_horsepower(power), Unit::Horsepower)
}
pub(super) fn volts(potential: ElectricPotential) -> (f64, Unit) {
    (in_volts(potential), Unit::Volt)
}
pub(super) fn heat(power: Power) -> (f64, Unit) {
    (in_watts(power), Unit::Watt)
}
pub(super) fn apparent(power: Power) -> (f64, Unit) {
    (in_kilovolt_amperes(power), Unit::KilovoltAmpere)
}
