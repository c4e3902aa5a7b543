//! The working behind one answer: values, steps, result, limit and sources, in one family of units.

use super::math::{Math, Measured, Symbol, filled};
use super::{cost, lead, water};
use crate::cable::lead::Conductor;
use crate::cable::reactance::Build;
use crate::evaluate::{Basis, Evaluation};
use crate::finding::Severity;
use crate::job::{Origin, Part, Way};
use crate::quantity::{ElectricCurrent, Entry, Length, Money, Unit, UnitSystem, in_amperes, in_feet};
use crate::standards::ampacity::Rating;
use crate::standards::conductor::{Metal, Size};

/// An answer that can be opened.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Topic {
    /// The current that sizes the lead of a way.
    MotorCurrent(Way),
    /// The ampacity of the lead at the job's depth.
    Ampacity(Way),
    /// The voltage drop along it.
    Drop(Way),
    /// What it costs: the cable alone, or with the equipment that its way needs beyond the other.
    CableCost(Way, Basis),
    /// What 480 V saves.
    Saving(Basis),
    /// The depth after which one way stays cheaper.
    BreakEven(Basis),
    /// Depth of the water while the pump runs.
    PumpingLevel,
    /// Depth of water above the pump while it runs.
    Submergence,
    /// The flow that is asked for, where it follows from land, people or stock.
    Demand,
    /// How far the water falls.
    Drawdown,
    /// The flow that draws the water down to the pump.
    WellGives,
    /// What the pump works against.
    TotalHead,
    /// Straight pipe of a part of the line.
    Friction(Part),
    /// Fittings of a part of the line.
    Fittings(Part),
    /// Pressure at the gauge, as head.
    PressureHead,
    /// What the water still carries past the gauge.
    VelocityHead,
    /// Net positive suction head available.
    SuctionHead,
    /// Pressure at the gauge against a shut valve.
    DeadHead,
    /// Speed of the water past the motor.
    Cooling,
    /// The flow that cools the motor.
    CoolingFlow,
    /// Water that the tank gives.
    Tank,
    /// Rise of the pressure when the flow stops at once.
    Surge,
    /// What hangs in the well.
    Hanging,
    /// Power at the pump's shaft.
    ShaftPower,
    /// Frequency at which the pump gives what is asked for.
    PumpSpeed,
    /// Frequency at which it just holds the pressure.
    LowestSpeed,
    /// The motor's load as a share of its rating.
    MotorLoad,
    /// What the motor draws at that load.
    RunningCurrent(Way),
}

/// The working behind an answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Working {
    /// The answer.
    pub topic: Topic,
    /// Its figure.
    pub result: Measured,
    /// The same said otherwise, or what goes with it: the drop as a share, the metal in the lead.
    pub more: Vec<Measured>,
    /// The sums, in order; each may use the results of those before it.
    pub steps: Vec<Step>,
    /// What was put in.
    pub values: Vec<Put>,
    /// What the tables were entered with, beside the values.
    pub entered: Vec<Entered>,
    /// Sources, by their keys in `SOURCES.md`.
    pub sources: Vec<&'static str>,
    /// What the result must keep to.
    pub limit: Option<Limit>,
}

/// One sum: symbol = formula = formula with numbers = result.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// What the step works out.
    pub symbol: Symbol,
    /// The right-hand side.
    pub formula: Vec<Math>,
    /// The same with numbers in the place of its symbols.
    pub filled: Vec<Math>,
    /// The result.
    pub result: Measured,
}

/// A value that was put into the formulas.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Put {
    /// Its symbol.
    pub symbol: Symbol,
    /// What it is.
    pub name: Name,
    /// Its value.
    pub value: Measured,
    /// Where it comes from.
    pub origin: Origin,
}

/// What a table was entered with; no symbol of a formula stands for it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Entered {
    /// What it is.
    pub name: Name,
    /// Its value.
    pub value: EnteredValue,
}

/// The value that a table was entered with.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum EnteredValue {
    /// Size of a conductor.
    Size(Size),
    /// Its metal.
    Metal(Metal),
    /// A column of the ampacity table.
    Rating(Rating),
    /// A temperature.
    Temperature(Measured),
    /// How the lead is built.
    Build(Build),
    /// Sets in parallel.
    Sets(u8),
}

/// Which side of a limit a result must keep to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LimitKind {
    /// The limit or more.
    AtLeast,
    /// The limit or less.
    AtMost,
}

/// A result and the limit that it is held to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limit {
    /// Which side is the good one.
    pub kind: LimitKind,
    /// The result.
    pub actual: Measured,
    /// The limit.
    pub limit: Measured,
    /// True where it is kept; equality keeps it, but a pump with no water above it never does.
    pub holds: bool,
    /// How grave it is where it is not kept, as its finding says.
    pub severity: Option<Severity>,
}

/// What a value is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[non_exhaustive]
pub enum Name {
    /// Rated power of the motor.
    MotorPower,
    /// Rated power of a row of the motor table: the one below, then the one above.
    TablePower,
    /// Current of a row of the motor table.
    TableCurrent,
    /// Nameplate current at the voltage of the way.
    NameplateCurrent,
    /// Nameplate current at the voltage of the other way.
    OtherNameplateCurrent,
    /// Rated voltage of the motor on the way.
    RatedVoltage,
    /// Rated voltage of the motor on the other way.
    OtherRatedVoltage,
    /// Current that sizes the lead.
    MotorCurrent,
    /// Ampacity of the size by its insulation.
    InsulationAmpacity,
    /// Ampacity of the size by the terminals.
    TerminalAmpacity,
    /// Correction for the surroundings.
    AmbientFactor,
    /// Adjustment for conductors that lie together.
    BundleFactor,
    /// Warmest surroundings along the lead.
    Ambient,
    /// Sets in parallel.
    ParallelSets,
    /// Size of the phase conductors.
    ConductorSize,
    /// Size of the equipment ground.
    GroundSize,
    /// Metal of the conductors.
    ConductorMetal,
    /// Temperature rating of the insulation.
    InsulationRating,
    /// Temperature rating of the terminals.
    TerminalRating,
    /// Temperature of the conductor that its resistance holds for.
    ConductorTemperature,
    /// How the lead is built.
    LeadBuild,
    /// Line-to-line drop per conductor drop.
    PhaseFactor,
    /// Resistance of a conductor.
    Resistance,
    /// Reactance of a conductor.
    Reactance,
    /// Depth of the pump.
    PumpSetting,
    /// Lead on the surface.
    SurfaceRun,
    /// Voltage at the sending end.
    SendingVoltage,
    /// Power factor of the motor.
    PowerFactor,
    /// Largest drop, as a share.
    AllowedDrop,
    /// Part of the cable's price that does not depend on metal.
    CableFixed,
    /// Price of the metal as cable.
    MetalPrice,
    /// Cross-section of a phase conductor.
    PhaseArea,
    /// Cross-section of the equipment ground.
    GroundArea,
    /// Density of the metal.
    MetalDensity,
    /// Price of the cable of a way per length, above a step where there is one.
    CablePrice(Way),
    /// Price of the cable of a way per length, below a step.
    NextCablePrice(Way),
    /// Price of the cable of a way.
    CableCost(Way),
    /// What the 480 V way needs beyond the 240 V way.
    ExtraEquipment,
    /// Depth where the cheaper way changes.
    BreakEvenDepth,
    /// Water with the pump at rest.
    StaticLevel,
    /// How far it falls while the pump runs.
    Drawdown,
    /// Least depth of water above the pump.
    MinimumSubmergence,
}

/// The working behind an answer, or `None` where the evaluation does not hold the answer.
///
/// # Units
/// All of it in the units of `system`, those that are put into the formulas too: a resistance in ohms in a thousand feet
/// or in a kilometer with a length in feet or meters, divided by a thousand.
#[must_use]
pub fn working(evaluation: &Evaluation, topic: Topic, system: UnitSystem) -> Option<Working> {
    let sheet = Sheet { topic, system, values: Vec::new(), entered: Vec::new(), steps: Vec::new() };
    match topic {
        Topic::MotorCurrent(way) => lead::motor_current(evaluation, way, sheet),
        Topic::Ampacity(way) => lead::ampacity(evaluation, way, sheet),
        Topic::Drop(way) => lead::drop(evaluation, way, sheet),
        Topic::CableCost(way, basis) => cost::cable_cost(evaluation, way, basis, sheet),
        Topic::Saving(basis) => cost::saving(evaluation, basis, sheet),
        Topic::BreakEven(basis) => cost::break_even(evaluation, basis, sheet),
        Topic::PumpingLevel => water::pumping_level(evaluation, sheet),
        Topic::Submergence => water::submergence(evaluation, sheet),
        _ => None,
    }
}

pub(super) const LEAD: Symbol = Symbol::plain("L");
pub(super) const DEPTH: Symbol = Symbol::plain("D");
pub(super) const SURFACE: Symbol = Symbol::of("L", "s");
pub(super) const SETS: Symbol = Symbol::plain("n");

/// A working while it is written.
pub(super) struct Sheet {
    topic: Topic,
    system: UnitSystem,
    values: Vec<Put>,
    entered: Vec<Entered>,
    steps: Vec<Step>,
}

impl Sheet {
    /// A quantity in the units of the sheet.
    pub fn shown(&self, value: f64, unit: Unit) -> Measured {
        Entry::new(value, unit).shown_in(self.system)
    }

    /// Puts a value in.
    pub fn put(&mut self, symbol: Symbol, name: Name, (value, unit): (f64, Unit), origin: Origin) {
        let value = self.shown(value, unit);
        self.values.push(Put { symbol, name, value, origin });
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

    /// Writes a step. Its numbers are those of the values and of the steps before it.
    pub fn step(&mut self, symbol: Symbol, formula: Vec<Math>, (value, unit): (f64, Unit)) -> Measured {
        let known = |symbol: Symbol| {
            let step = self.steps.iter().rev().find(|step| step.symbol == symbol).map(|step| step.result);
            step.or_else(|| self.values.iter().find(|put| put.symbol == symbol).map(|put| put.value))
        };
        let filled = filled(&formula, &known);
        let result = self.shown(value, unit);
        self.steps.push(Step { symbol, formula, filled, result });
        result
    }

    /// The length of the lead, from the depth that was put in and the surface run.
    pub fn lead(&mut self, depth: Length, surface: Length, origin: Origin) {
        self.put(SURFACE, Name::SurfaceRun, length(surface), origin);
        self.step(LEAD, super::math::formula![DEPTH, "+", SURFACE], length(depth + surface));
    }

    pub fn done(self, result: Measured, sources: &[&'static str]) -> Working {
        Working {
            topic: self.topic,
            result,
            more: Vec::new(),
            steps: self.steps,
            values: self.values,
            entered: self.entered,
            sources: sources.to_vec(),
            limit: None,
        }
    }
}

pub(super) fn length(length: Length) -> (f64, Unit) {
    (in_feet(length), Unit::Foot)
}
pub(super) fn current(current: ElectricCurrent) -> (f64, Unit) {
    (in_amperes(current), Unit::Ampere)
}
pub(super) fn money(money: Money) -> (f64, Unit) {
    (money.0, Unit::Dollar)
}
