//! Every change that can be made to a job, and the way back.

use super::Sheet;
use wellwright_core::cable::filter::Remedy;
use wellwright_core::cable::reactance::Build;
use wellwright_core::job::{
    Choices, Control, DemandBy, DepthOf, DrawdownBy, Field, Grounding, Part, Place, Sets, Way as Voltage, WayKey,
};
use wellwright_core::power::family::Class;
use wellwright_core::power::generator::Hookup;
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::quantity::Entry;
use wellwright_core::standards::ampacity::Rating;
use wellwright_core::standards::conductor::Metal;
use wellwright_core::standards::enclosure::EnclosureType;
use wellwright_core::standards::pipe::{Nominal, Series};
use wellwright_core::water::line::FrictionMethod;

/// One change.
#[derive(Debug, Clone, PartialEq)]
pub enum Edit {
    /// A figure entered, or the field cleared.
    Figure(Field, Option<Entry>),
    /// A text in a field that can't be read.
    Draft(Field, String),
    /// A choice made.
    Choice(Choice),
    /// The job's name.
    Name(String),
    /// Where its prices come from.
    PriceSource(String),
    /// Points of the pump's curve, as text.
    Curve(String),
    /// The price book, as a table in text; an empty one goes back to the built-in book.
    Book(String),
    /// The table of the user's own equipment, as text.
    Equipment(String),
    /// The way to run the motor that is chosen; `None` goes back to the cheapest that serves.
    Way(Option<WayKey>),
    /// The way that stands for a voltage along the curve of cost; `None` goes back to the one that follows.
    Stands(Voltage, Option<WayKey>),
    /// The year's duty, as text.
    Duty(String),
    /// A fitting of this loss coefficient added to those of a part of the line.
    Fitting(Part, f64),
}

/// One choice; `None` goes back to the assumed one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Choice {
    /// Metal of the lead.
    Metal(Option<Metal>),
    /// Build of the lead.
    Build(Option<Build>),
    /// Insulation rating.
    Insulation(Option<Rating>),
    /// Terminals marked 75 °C.
    Terminals(Option<bool>),
    /// Whether the motor starts by itself after a power cut.
    Restart(Option<bool>),
    /// Whether the transducer can freeze.
    Freezing(Option<bool>),
    /// Whether the water around the lead counts as cooler.
    CoolerWater(Option<bool>),
    /// Most parallel sets.
    Sets(Option<Sets>),
    /// Where the motor works.
    MotorKind(Option<MotorKind>),
    /// How the demand is told.
    Demand(Option<DemandBy>),
    /// What the depth of irrigation counts.
    DepthOf(Option<DepthOf>),
    /// How the drawdown is told.
    Drawdown(Option<DrawdownBy>),
    /// How friction is worked out.
    Friction(Option<FrictionMethod>),
    /// How the pump is run.
    Control(Option<Control>),
    /// What a pipe is made of; a size that is not made so goes back to the assumed one.
    Series(Part, Option<Series>),
    /// Size of a pipe.
    Size(Part, Option<Nominal>),
    /// Where the equipment stands.
    Place(Option<Place>),
    /// Whether it stands in the shade.
    Shaded(Option<bool>),
    /// Type of its enclosure.
    Enclosure(Option<EnclosureType>),
    /// How the supply is grounded.
    Grounding(Option<Grounding>),
    /// Metal of the supply conductors.
    FeederMetal(Option<Metal>),
    /// Build of the supply conductors.
    FeederBuild(Option<Build>),
    /// Parallel sets of supply conductors.
    FeederSets(Option<Sets>),
    /// Class of a three-phase line or set.
    ThreePhase(Option<Class>),
    /// How a generator set feeds two lines.
    Hookup(Option<Hookup>),
    /// Whether the motor is made for inverter duty.
    InverterDuty(Option<bool>),
    /// What stands between drive and lead.
    Remedy(Option<Remedy>),
}

/// What a change is about; changes of one topic in a row are undone together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Topic {
    /// A field.
    Field(Field),
    /// A choice, never joined.
    Choice,
    /// The name.
    Name,
    /// The source of prices.
    PriceSource,
    /// The pump's curve.
    Curve,
    /// The year's duty.
    Duty,
    /// The price book.
    Book,
    /// The user's own equipment.
    Equipment,
}

impl Edit {
    /// The sheet after the change.
    #[must_use]
    pub fn apply(&self, mut sheet: Sheet) -> Sheet {
        match self {
            Self::Figure(field, entry) => sheet.set(*field, *entry),
            Self::Draft(field, text) => sheet.set_draft(*field, text.clone()),
            Self::Name(name) => sheet.job.name.clone_from(name),
            Self::PriceSource(source) => sheet.job.price_source.clone_from(source),
            Self::Curve(text) => sheet.job.curve.clone_from(text),
            Self::Stands(voltage, way) => sheet.job.pair[*voltage as usize].clone_from(way),
            Self::Duty(text) => sheet.job.duty.clone_from(text),
            Self::Book(text) => sheet.job.book.clone_from(text),
            Self::Equipment(text) => sheet.job.families.clone_from(text),
            Self::Way(way) => sheet.job.way.clone_from(way),
            Self::Fitting(part, coefficient) => {
                let [.., sum] = part.fields();
                sheet.drafts.remove(&sum);
                sheet.job.add_fitting(*part, *coefficient);
            }
            Self::Choice(choice) => choice.apply(&mut sheet.job.choices),
        }
        sheet
    }

    /// What the change is about.
    #[must_use]
    pub fn topic(&self) -> Topic {
        match self {
            Self::Figure(field, _) | Self::Draft(field, _) => Topic::Field(*field),
            Self::Name(_) => Topic::Name,
            Self::PriceSource(_) => Topic::PriceSource,
            Self::Curve(_) => Topic::Curve,
            Self::Duty(_) => Topic::Duty,
            Self::Book(_) => Topic::Book,
            Self::Equipment(_) => Topic::Equipment,
            Self::Choice(_) | Self::Fitting(..) | Self::Way(_) | Self::Stands(..) => Topic::Choice,
        }
    }
}

impl Choice {
    fn apply(self, choices: &mut Choices) {
        match self {
            Self::Metal(metal) => choices.metal = metal,
            Self::Build(build) => choices.build = build,
            Self::Insulation(rating) => choices.insulation = rating,
            Self::Restart(starts) => choices.restart = starts,
            Self::Freezing(freezes) => choices.freezing = freezes,
            Self::CoolerWater(counts) => choices.cooler_water = counts,
            Self::Terminals(marked) => choices.terminals_marked_75 = marked,
            Self::Sets(sets) => choices.most_sets = sets,
            Self::MotorKind(kind) => choices.motor_kind = kind,
            Self::Demand(by) => choices.demand = by,
            Self::DepthOf(of) => choices.depth_of = of,
            Self::Drawdown(by) => choices.drawdown = by,
            Self::Friction(method) => choices.friction = method,
            Self::Control(control) => choices.control = control,
            Self::Place(place) => choices.place = place,
            Self::Shaded(shaded) => choices.shaded = shaded,
            Self::Enclosure(kind) => choices.enclosure = kind,
            Self::Grounding(grounding) => choices.grounding = grounding,
            Self::FeederMetal(metal) => choices.feeder_metal = metal,
            Self::FeederBuild(build) => choices.feeder_build = build,
            Self::FeederSets(sets) => choices.feeder_sets = sets,
            Self::ThreePhase(class) => choices.three_phase = class,
            Self::Hookup(hookup) => choices.hookup = hookup,
            Self::InverterDuty(duty) => choices.inverter_duty = duty,
            Self::Remedy(remedy) => choices.remedy = remedy,
            Self::Size(part, size) => choices.pipes[part as usize].size = size,
            Self::Series(part, series) => {
                choices.pipes[part as usize].series = series;
                let made = choices.series(part);
                let size = &mut choices.pipes[part as usize].size;
                *size = size.filter(|size| made.named(size.name()).is_some());
            }
        }
    }
}

/// Steps kept for undo.
const KEPT_STEPS: usize = 200;

/// The way back and forth of one job.
#[derive(Debug, Default)]
pub struct History {
    past: Vec<Sheet>,
    future: Vec<Sheet>,
    topic: Option<Topic>,
}

impl History {
    /// Remembers the sheet before a change, unless the change goes on with the last one's topic.
    pub fn push(&mut self, before: Sheet, topic: Topic) {
        let goes_on = self.topic == Some(topic) && topic != Topic::Choice && !self.past.is_empty();
        if !goes_on {
            self.past.push(before);
            if self.past.len() > KEPT_STEPS {
                self.past.remove(0);
            }
        }
        self.topic = Some(topic);
        self.future.clear();
    }

    /// Ends a run of changes of one topic.
    pub fn pause(&mut self) {
        self.topic = None;
    }

    /// One step back.
    pub fn undo(&mut self, now: Sheet) -> Option<Sheet> {
        self.topic = None;
        let then = self.past.pop()?;
        self.future.push(now);
        Some(then)
    }

    /// One step forth.
    pub fn redo(&mut self, now: Sheet) -> Option<Sheet> {
        self.topic = None;
        let then = self.future.pop()?;
        self.past.push(now);
        Some(then)
    }

    /// Whether there is a step back, and one forth.
    #[must_use]
    pub fn ways(&self) -> (bool, bool) {
        (!self.past.is_empty(), !self.future.is_empty())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use wellwright_core::quantity::Unit;

    fn depth(feet: f64) -> Edit {
        Edit::Figure(Field::PumpSetting, Some(Entry::new(feet, Unit::Foot)))
    }

    fn make(history: &mut History, sheet: &mut Sheet, edit: &Edit) {
        history.push(sheet.clone(), edit.topic());
        *sheet = edit.apply(sheet.clone());
    }

    #[test]
    fn a_drag_is_one_step_back_and_another_field_is_its_own() {
        let (mut history, mut sheet) = (History::default(), Sheet::default());
        let start = sheet.clone();
        for feet in [100.0, 200.0, 300.0] {
            make(&mut history, &mut sheet, &depth(feet));
        }
        let dragged = sheet.clone();
        make(&mut history, &mut sheet, &Edit::Name("Well".into()));
        sheet = history.undo(sheet.clone()).unwrap_or_default();
        assert!(sheet == dragged);
        sheet = history.undo(sheet.clone()).unwrap_or_default();
        assert!(sheet == start);
        assert!(history.undo(sheet.clone()).is_none());
        sheet = history.redo(sheet).unwrap_or_default();
        assert!(sheet == dragged);
    }

    #[test]
    fn a_pause_parts_two_drags() {
        let (mut history, mut sheet) = (History::default(), Sheet::default());
        make(&mut history, &mut sheet, &depth(100.0));
        history.pause();
        make(&mut history, &mut sheet, &depth(200.0));
        sheet = history.undo(sheet).unwrap_or_default();
        assert_eq!(sheet.job.get(Field::PumpSetting).map(|entry| entry.value), Some(100.0));
    }

    #[test]
    fn a_size_that_the_new_series_lacks_goes_back_to_the_assumed_one() {
        let size = |name| Edit::Choice(Choice::Size(Part::Drop, Nominal::named(name)));
        let series = Edit::Choice(Choice::Series(Part::Drop, Some(Series::PvcSdr21)));
        let kept = |name| series.apply(size(name).apply(Sheet::default())).job.choices.pipe(Part::Drop).size;
        assert_eq!(kept("2").map(Nominal::name), Some("2"));
        assert_eq!(kept("1/2"), None);
    }

    #[test]
    fn a_draft_takes_the_place_of_the_figure_until_a_number_comes() {
        let sheet = depth(100.0).apply(Sheet::default());
        let drafted = Edit::Draft(Field::PumpSetting, "abc".into()).apply(sheet);
        assert!(drafted.job.get(Field::PumpSetting).is_some_and(|entry| entry.value.is_nan()));
        assert_eq!(drafted.drafts.get(&Field::PumpSetting).map(String::as_str), Some("abc"));
        let mended = depth(200.0).apply(drafted);
        assert!(mended.drafts.is_empty());
    }
}
