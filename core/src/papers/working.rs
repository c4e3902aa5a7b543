//! The working behind one answer: values, steps, result, limit and sources, in one family of units.

use super::math::{Math, Measured, Symbol};
use super::name::Name;
use super::sheet::Sheet;
use super::topic::Topic;
use super::{
    break_even, cooling, cost, curve, demand, fall, flat, full_speed, head, lead, lesson, level, motor, outlook, pipe,
    pump, safety, service, steps, suction, ways,
};
use crate::cable::reactance::Build;
use crate::evaluate::Evaluation;
use crate::finding::{Finding, Severity};
use crate::job::Origin;
use crate::quantity::UnitSystem;
use crate::standards::ampacity::Rating;
use crate::standards::conductor::{Metal, Size};
use crate::standards::pipe::Nominal;

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
    /// What the result has to be taken with.
    pub caveats: Vec<Caveat>,
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
    /// Nominal size of a pipe.
    Nominal(Nominal),
}

/// What a result has to be taken with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Caveat {
    /// The flow is neither laminar nor turbulent for certain; the friction factor is that of turbulent flow.
    TransitionFlow,
    /// The motor runs below three quarters of its rating, where efficiency and power factor of the nameplate do not hold.
    LightLoad,
    /// The range comes from points drawn by chance, with all that may turn out otherwise at once.
    Sampled,
    /// It is entered in whole steps, no higher than it is.
    WholeSteps,
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

impl Limit {
    /// A limit that is kept unless a finding says otherwise.
    pub(super) fn unless(found: Option<Severity>, kind: LimitKind, actual: Measured, limit: Measured) -> Self {
        Self { kind, actual, limit, holds: found.is_none(), severity: found }
    }
}

/// How grave a finding is, where the evaluation holds it.
pub(super) fn found(evaluation: &Evaluation, is: impl Fn(&Finding) -> bool) -> Option<Severity> {
    evaluation.findings.iter().find(|finding| is(finding)).map(Finding::severity)
}

/// The working behind an answer, or `None` where the evaluation does not hold the answer.
///
/// # Units
/// All of it in the units of `system`, those that are put into the formulas too: a resistance in ohms in a thousand feet
/// or in a kilometer with a length in feet or meters, divided by a thousand. Where units of the water do not agree, as
/// gallons, feet and inches do not, a [`super::Conversion`] stands among the values.
#[must_use]
pub fn working(evaluation: &Evaluation, topic: Topic, system: UnitSystem) -> Option<Working> {
    let sheet = Sheet::new(topic, system);
    match topic {
        Topic::MotorCurrent(way) => lead::motor_current(evaluation, way, sheet),
        Topic::Ampacity(way) => lead::ampacity(evaluation, way, sheet),
        Topic::Drop(way) => lead::drop(evaluation, way, sheet),
        Topic::CableCost(way, basis) => cost::cable_cost(evaluation, way, basis, sheet),
        Topic::Saving(basis) => cost::saving(evaluation, basis, sheet),
        Topic::BreakEven(basis) => break_even::break_even(evaluation, basis, sheet),
        Topic::PumpingLevel => level::pumping_level(evaluation, sheet),
        Topic::Submergence => level::submergence(evaluation, sheet),
        Topic::Demand => demand::demand(evaluation, sheet),
        Topic::Drawdown => fall::drawdown(evaluation, sheet),
        Topic::WellGives => fall::well_gives(evaluation, sheet),
        Topic::TotalHead => head::total(evaluation, sheet),
        Topic::Friction(part) => pipe::friction(evaluation, part, sheet),
        Topic::Fittings(part) => pipe::fittings(evaluation, part, sheet),
        Topic::PressureHead => head::of_pressure(evaluation, sheet),
        Topic::VelocityHead => head::of_velocity(evaluation, sheet),
        Topic::SuctionHead => suction::suction_head(evaluation, sheet),
        Topic::DeadHead => safety::dead_head(evaluation, sheet),
        Topic::Cooling => cooling::cooling(evaluation, sheet),
        Topic::CoolingFlow => cooling::least_flow(evaluation, sheet),
        Topic::WidestSleeve => cooling::widest_sleeve(evaluation, sheet),
        Topic::FullSpeed => full_speed::full_speed(evaluation, sheet),
        Topic::ShareOfBest => full_speed::share_of_best(evaluation, sheet),
        Topic::Relief => full_speed::relief(evaluation, sheet),
        Topic::OnPipe => safety::on_pipe(evaluation, sheet),
        Topic::Weekly => demand::weekly(evaluation, sheet),
        Topic::Tank => safety::tank(evaluation, sheet),
        Topic::Surge => safety::surge(evaluation, sheet),
        Topic::Hanging => safety::hanging(evaluation, sheet),
        Topic::ShaftPower => pump::shaft_power(evaluation, sheet),
        Topic::PumpSpeed => pump::speed(evaluation, sheet),
        Topic::LowestSpeed => pump::lowest_speed(evaluation, sheet),
        Topic::MotorLoad => motor::load(evaluation, sheet),
        Topic::RunningCurrent(way) => motor::running_current(evaluation, way, sheet),
        Topic::LeadTemperature(way) => service::temperature(evaluation, way, sheet),
        Topic::FullLoadHeat(way) => lead::full_load_heat(evaluation, way, sheet),
        Topic::LeadLoss(way) => service::loss(evaluation, way, sheet),
        Topic::Alternating(way) => service::alternating(evaluation, way, sheet),
        Topic::FlatUnbalance(way) => flat::unbalance(evaluation, way, sheet),
        Topic::EconomicSize(way) => service::economic(evaluation, way, sheet),
        Topic::CurvePoint(place) => curve::point(evaluation, place, sheet),
        Topic::Piece(way, place, basis) => steps::step(evaluation, (way, place, basis), sheet),
        Topic::SavingRange(basis) => outlook::range(evaluation, basis, sheet),
        Topic::PaysBack => outlook::pays_back(evaluation, sheet),
        Topic::MoreHeat => outlook::more_heat(evaluation, sheet),
        Topic::Lesson(sum) => lesson::sum(evaluation, sum, sheet),
        other => ways::working(evaluation, other, sheet),
    }
}
