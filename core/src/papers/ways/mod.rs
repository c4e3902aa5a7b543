//! The workings of a way to run the motor, from its frame to what it costs.

pub(super) mod cost;
mod device;
mod extras;
mod frame;
mod input;
mod peak;
mod pole;
mod settings;
mod start;
mod supply;
mod volts;
mod year;

use super::lead::NAMEPLATE;
use super::math::{Math, Measured, Symbol, formula};
use super::name::Name;
use super::sheet::{Sheet, current, percent, plain, volts as volts_of};
use super::topic::Topic;
use super::working::Working;
use crate::evaluate::{Draw, Evaluation, MotorHere, PoweredWay, Site};
use crate::finding::{Finding, Severity};
use crate::job::{Field, Inputs, Origin};
use crate::power::family::Feed;
use crate::quantity::in_horsepower;
use crate::standards::single_phase_motor::amperes_at_230;

const SUPPLY: Symbol = Symbol::plain("V");
const DISPLACEMENT: Symbol = Symbol::of("cos φ", "1");
const DISTORTION: Symbol = Symbol::plain("THD");
const TRUE_FACTOR: Symbol = Symbol::plain("PF");
const EFFICIENCY: Symbol = Symbol::of("η", "d");
const INPUT: Symbol = Symbol::of("I", "in");

/// The working behind an answer of a way.
pub(super) fn working(evaluation: &Evaluation, topic: Topic, sheet: Sheet) -> Option<Working> {
    let case = |place: usize| Case::at(evaluation, place);
    match topic {
        Topic::WayFrame(place) => frame::frame(&case(place)?, sheet),
        Topic::WayInput(place) => input::input(&case(place)?, sheet),
        Topic::WaySupply(place) => supply::ampacity(&case(place)?, sheet),
        Topic::WaySupplyDrop(place) => supply::drop(&case(place)?, sheet),
        Topic::WayDevice(place) => device::device(&case(place)?, sheet),
        Topic::WayVolts(place) => volts::at_motor(&case(place)?, sheet),
        Topic::WayPeak(place) => peak::peak(&case(place)?, sheet),
        Topic::WaySag(place) => pole::sag(&case(place)?, sheet),
        Topic::WayLoading(place) => pole::loading(&case(place)?, sheet),
        Topic::WayHarmonics(place) => pole::harmonics(&case(place)?, sheet),
        Topic::WayFault(place) => pole::fault(&case(place)?, sheet),
        Topic::WayStart(place) => start::start(&case(place)?, sheet),
        Topic::WayGenerator(place) => start::generator(&case(place)?, sheet),
        Topic::WayCost(place) => cost::cost(&case(place)?, sheet),
        Topic::WayRequired(place) => frame::required(&case(place)?, sheet),
        Topic::WayLead(place) => extras::lead(&case(place)?, sheet),
        Topic::WayMetal(place) => extras::metal(&case(place)?, sheet),
        Topic::WayStepUp(place) => extras::step_up(&case(place)?, sheet),
        Topic::WayIdler(place) => extras::idler(&case(place)?, sheet),
        Topic::Year(of) => year::working(evaluation, of, sheet),
        Topic::Setting(code) => settings::setting(evaluation, code, sheet),
        _ => None,
    }
}

/// The peak of a way's pulses without a filter of its equipment's own.
pub(super) fn bare_peak(evaluation: &Evaluation, place: usize, sheet: Sheet) -> Option<Working> {
    peak::bare(&Case::at(evaluation, place)?, sheet)
}

/// A way of a job, with what all of its workings ask for.
struct Case<'a> {
    evaluation: &'a Evaluation,
    inputs: &'a Inputs,
    site: &'a Site,
    way: &'a PoweredWay,
    motor: MotorHere,
}

impl<'a> Case<'a> {
    fn at(evaluation: &'a Evaluation, place: usize) -> Option<Self> {
        Self::of(evaluation, evaluation.ways.all.get(place)?)
    }

    /// The way that the job goes by.
    fn picked(evaluation: &'a Evaluation) -> Option<Self> {
        Self::of(evaluation, evaluation.ways.picked()?)
    }

    fn of(evaluation: &'a Evaluation, way: &'a PoweredWay) -> Option<Self> {
        let (inputs, site) = (&evaluation.inputs, evaluation.ways.site.as_ref()?);
        Some(Self { evaluation, inputs, site, way, motor: way.motor? })
    }

    fn draw(&self) -> Option<Draw> {
        self.way.draw
    }

    fn feed(&self) -> Feed {
        self.way.family.supply.feed
    }

    /// Where the figures of the equipment come from: the user's own, or those of its kind.
    fn of_family(&self) -> Origin {
        if self.way.family.name.is_empty() { Origin::Assumed } else { Origin::Typed }
    }

    /// How grave a finding of the way is, where it holds it.
    fn found(&self, is: impl Fn(&Finding) -> bool) -> Option<Severity> {
        self.way.findings.iter().find(|finding| is(finding)).map(Finding::severity)
    }

    fn put_supply_volts(&self, sheet: &mut Sheet) -> Measured {
        let origin = match self.feed() {
            Feed::SinglePhase => self.inputs.origin(Field::SupplyVolts),
            Feed::ThreePhase => Origin::Definition,
        };
        sheet.put(SUPPLY, Name::SupplyVolts, volts_of(self.way.fed.1), origin)
    }

    fn put_distortion(&self, sheet: &mut Sheet) {
        let distortion = percent(self.way.family.input.distortion);
        sheet.put(DISTORTION, Name::Distortion, distortion, self.of_family());
    }

    /// The true power factor, from the displacement and the distortion.
    fn put_power_factor(&self, draw: &Draw, sheet: &mut Sheet) -> Measured {
        sheet.put(DISPLACEMENT, Name::Displacement, plain(self.way.family.input.displacement), self.of_family());
        self.put_distortion(sheet);
        let formula = vec![Math::Fraction(formula![DISPLACEMENT], formula![with_harmonics()])];
        sheet.step(TRUE_FACTOR, formula, plain(draw.power_factor))
    }

    /// The nameplate's current; that of a single-phase motor stands in a table, or beyond it follows from its power.
    fn put_nameplate(&self, sheet: &mut Sheet) -> Option<Measured> {
        let origin = match self.way.family.motor {
            Feed::ThreePhase => self.inputs.origin(self.way.way?.nameplate_field()),
            Feed::SinglePhase if amperes_at_230(in_horsepower(self.motor.power)).is_some() => Origin::Table,
            Feed::SinglePhase => Origin::WorkedOut,
        };
        Some(sheet.put(NAMEPLATE, Name::NameplateCurrent, current(self.motor.nameplate), origin))
    }

    fn put_true_factor(&self, draw: &Draw, sheet: &mut Sheet) {
        sheet.put(TRUE_FACTOR, Name::TrueFactor, plain(draw.power_factor), Origin::WorkedOut);
    }
}

/// √(1 + THD²).
fn with_harmonics() -> Math {
    let share = Math::Fraction(formula![DISTORTION], formula![100.0]);
    Math::Root(formula![1.0, "+", Math::Power(vec![share], 2.0)])
}

/// A product, on three lines with √3 before it.
fn on_lines(feed: Feed, product: Vec<Math>) -> Vec<Math> {
    match feed {
        Feed::SinglePhase => product,
        Feed::ThreePhase => [formula![Math::Root(formula![3.0]), "·"], product].concat(),
    }
}
