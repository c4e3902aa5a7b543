//! What each step says: pure, from the figures of the lesson.

use crate::locale::{
    Shown, conductor, depth, in_digits, lead_size, mass, money, money_alike, peak_volts, power, words,
};
use wellwright_core::cable::lead::Conductor;
use wellwright_core::evaluate::{Basis, Evaluation};
use wellwright_core::job::Way;
use wellwright_core::papers::{Choice, Lesson, LessonStep, LessonSum, Offered, Topic};
use wellwright_core::quantity::{
    Area, ElectricCurrent, ElectricPotential, Entry, Length, Money, Power, Unit, UnitSystem, in_amperes,
    in_circular_mils, in_volts, in_watts, volts,
};

/// Digits that figures of the lesson are shown to.
const DIGITS: i32 = 3;

/// A large figure and its unit.
pub struct Large {
    /// The figure.
    pub figure: String,
    /// Its unit; empty for money.
    pub unit: String,
}

/// The figures of the lesson as they are written.
pub struct Teller<'a> {
    /// The figures.
    pub lesson: &'a Lesson,
    /// Units.
    pub system: UnitSystem,
}

impl Teller<'_> {
    /// A figure in the units of the screen.
    fn figure(&self, value: f64, unit: Unit) -> String {
        in_digits(Entry::new(value, unit).shown_in(self.system), DIGITS).text()
    }
    fn amps(&self, current: ElectricCurrent) -> String {
        self.figure(in_amperes(current), Unit::Ampere)
    }
    pub fn volts(&self, potential: ElectricPotential) -> String {
        self.figure(in_volts(potential), Unit::Volt)
    }
    fn share(&self, share: f64) -> String {
        self.figure(100.0 * share, Unit::Percent)
    }
    fn area(&self, area: Area) -> String {
        self.figure(in_circular_mils(area) / 1000.0, Unit::Kcmil)
    }
    fn length(&self, length: Length) -> String {
        depth(length, self.system).text()
    }
    /// Electric power is told in kilowatts everywhere.
    fn kilowatts(&self, power: Power) -> String {
        in_digits(Entry::new(in_watts(power) / 1000.0, Unit::Kilowatt), DIGITS).text()
    }
    /// Money, with cents where whole dollars would not add up.
    pub fn money(&self, amount: Money) -> String {
        let [low, high] = self.lesson.ways.map(|way| way.here.cable);
        let decimals = money_alike(low, high).max(money_alike(self.lesson.saving.cable, self.lesson.extra));
        money(amount, decimals)
    }
    /// The power of the motor.
    pub fn motor(&self) -> String {
        power(self.lesson.motor, self.system).text()
    }
    /// The lead.
    pub fn lead(&self) -> String {
        self.length(self.lesson.lead)
    }
    /// The drop that is allowed.
    pub fn allowed(&self) -> String {
        self.share(self.lesson.allowed)
    }

    /// The paragraphs of a step.
    #[must_use]
    pub fn paragraphs(&self, step: LessonStep) -> Vec<String> {
        let (words, lesson) = (&words().lesson, self.lesson);
        let (low, high) = (lesson.way(Way::V240), lesson.way(Way::V480));
        let text = str::to_owned;
        match step {
            LessonStep::Power => vec![
                (words.power)(&self.motor(), &self.kilowatts(lesson.input)),
                text(words.power_rule),
                (words.power_table)(&self.amps(low.by_power), &self.amps(low.current)),
            ],
            LessonStep::Amps => {
                vec![(words.amps)(&self.amps(low.by_power), &self.amps(high.by_power)), text(words.amps_saved)]
            }
            LessonStep::Share => vec![
                (words.share)(&self.volts(low.lost), &self.share(low.lost_share)),
                (words.share_same)(&self.volts(high.lost), &self.share(high.lost_share)),
            ],
            LessonStep::Area => vec![
                text(words.area),
                (words.area_asks)(&self.allowed(), &self.volts(low.allowed), &self.lead(), &self.area(low.area)),
            ],
            LessonStep::Quarter => {
                vec![(words.quarter)(&self.allowed()), (words.quarter_is)(&self.area(low.area), &self.area(high.area))]
            }
            LessonStep::Sizes => {
                let size = |way: Way| conductor(lesson.way(way).here.run.run.conductor);
                let (low_size, high_size) = (size(Way::V240), size(Way::V480));
                vec![
                    (words.sizes)(&self.area(low.area), &low_size, &self.area(high.area), &high_size),
                    (words.sizes_real)(&self.share(lesson.size_ratio())),
                ]
            }
            LessonStep::Heat => vec![
                (words.heat)(&self.amps(low.required), &self.amps(high.required)),
                (words.heat_sizes)(&conductor(low.least), &conductor(high.least), &self.share(lesson.least_ratio())),
                (words.heat_until)(&self.length(low.least_serves), &self.length(high.least_serves)),
            ],
            LessonStep::Pays => self.pays(),
            LessonStep::Peak => self.peak(),
            LessonStep::Home => {
                let size = |way: Way| conductor(lesson.way(way).here.run.run.conductor);
                let metal = |way: Way| mass(lesson.way(way).here.metal, self.system).text();
                let [(low, metal_low), (high, metal_high)] = Way::ALL.map(|way| (size(way), metal(way)));
                vec![
                    text(words.home),
                    (words.home_here)(&low, &high, &metal_low, &metal_high),
                    (words.home_money)(&self.money(lesson.saving.net)),
                ]
            }
        }
    }

    fn pays(&self) -> Vec<String> {
        let (words, lesson) = (&words().lesson, self.lesson);
        let [low, high] = lesson.ways.map(|way| self.money(way.here.cable));
        let even = lesson.even.map(|(lead, way)| (words.pays_from)(way, &self.length(lead)));
        vec![
            (words.pays)(&low, &high, &self.money(lesson.saving.cable)),
            (words.pays_left)(&self.money(lesson.extra), &self.money(lesson.saving.net)),
            even.unwrap_or_else(|| words.pays_always.to_owned()),
        ]
    }

    fn peak(&self) -> Vec<String> {
        let (words, lesson) = (&words().lesson, self.lesson);
        let high = lesson.way(Way::V480);
        let Some(pulses) = high.pulses else { return vec![words.peak_none.to_owned()] };
        let whole = |potential| peak_volts(potential).text();
        let low = lesson.way(Way::V240).pulses.map_or(pulses.bus, |low| low.peak);
        let guard = if high.filtered { words.peak_own } else { (words.peak_remedy)(pulses.fitted) };
        vec![
            (words.peak)(&whole(pulses.bus)),
            (words.peak_here)(&self.lead(), &whole(pulses.peak), &whole(low), &self.length(pulses.critical)),
            format!("{} {guard}", (words.peak_limit)(&whole(pulses.limit.peak()))),
        ]
    }

    fn bus(&self) -> String {
        let bus = self.lesson.way(Way::V480).pulses.map(|pulses| peak_volts(pulses.bus).text());
        bus.unwrap_or_default()
    }

    /// The question after a step.
    #[must_use]
    pub fn asks(&self, step: LessonStep) -> String {
        let (words, lesson) = (&words().lesson, self.lesson);
        let (low, high) = (lesson.way(Way::V240), lesson.way(Way::V480));
        match step {
            LessonStep::Power => (words.ask_power)(&self.motor(), &self.amps(low.by_power)),
            LessonStep::Amps => (words.ask_amps)(&self.amps(low.by_power)),
            LessonStep::Share => (words.ask_share)(&self.share(high.lost_share)),
            LessonStep::Area => (words.ask_area)(&self.area(low.area), &self.lead()),
            LessonStep::Quarter => (words.ask_quarter)(&self.area(low.area)),
            LessonStep::Sizes => (words.ask_sizes)(&self.length(lesson.other.lead)),
            LessonStep::Heat => (words.ask_heat)(&self.amps(lesson.larger_motor())),
            LessonStep::Pays => {
                let [low, high] = lesson.other.cables.map(|cable| self.money(cable));
                (words.ask_pays)(&self.length(lesson.other.lead), &low, &high, &self.money(lesson.other.extra))
            }
            LessonStep::Peak => (words.ask_peak)(&self.bus()),
            LessonStep::Home => words.ask_home.to_owned(),
        }
    }

    /// Why the right answer is right.
    #[must_use]
    pub fn why(&self, step: LessonStep) -> String {
        let words = &words().lesson;
        let fixed = match step {
            LessonStep::Power => words.why_power,
            LessonStep::Amps => words.why_amps,
            LessonStep::Share => words.why_share,
            LessonStep::Area => words.why_area,
            LessonStep::Quarter => words.why_quarter,
            LessonStep::Heat => words.why_heat,
            LessonStep::Pays => words.why_pays,
            LessonStep::Peak => words.why_peak,
            LessonStep::Sizes => return self.why_sizes(),
            LessonStep::Home => {
                let metal = |way: Way| mass(self.lesson.way(way).here.metal, self.system).text();
                return (words.why_home)(&metal(Way::V240), &metal(Way::V480));
            }
        };
        fixed.to_owned()
    }

    fn why_sizes(&self) -> String {
        let (words, other) = (&words().lesson, self.lesson.other);
        let serves = (words.why_sizes)(&conductor(other.conductor), &self.share(other.share), &self.allowed());
        let below = other.below.map(|below| match below.share {
            Some(share) if below.carries => (words.below_drops)(&lead_size(below.size), &self.share(share)),
            _ => (words.below_heats)(&lead_size(below.size)),
        });
        [Some(serves), below].into_iter().flatten().collect::<Vec<_>>().join(" ")
    }

    /// An answer to choose.
    #[must_use]
    pub fn offered(&self, choice: Choice) -> String {
        match choice.offered {
            Offered::Wire(size) => lead_size(size),
            Offered::Figure(Entry { value, unit: Unit::Dollar }) => self.money(Money(value)),
            Offered::Figure(Entry { value, unit: Unit::Volt }) => peak_volts(volts(value)).text(),
            Offered::Figure(entry) => self.figure(entry.value, entry.unit),
        }
    }

    /// The figures that stand large at the head of a step, each with its way and its unit.
    #[must_use]
    pub fn heads(&self, step: LessonStep) -> Vec<(Way, Large)> {
        let shown = |shown: Shown| Large { figure: shown.figure, unit: shown.unit.to_owned() };
        let short = |value: f64, unit| shown(in_digits(Entry::new(value, unit).shown_in(self.system), DIGITS));
        let size = |conductor: Conductor| match conductor.sets {
            1 => Large { figure: conductor.size.designation().to_owned(), unit: conductor.size.gauge().to_owned() },
            _ => Large { figure: self::conductor(conductor), unit: String::new() },
        };
        let of = |way: Way| {
            let one = self.lesson.way(way);
            Some(match step {
                LessonStep::Power | LessonStep::Amps => short(in_amperes(one.by_power), Unit::Ampere),
                LessonStep::Share => short(100.0 * one.lost_share, Unit::Percent),
                LessonStep::Area | LessonStep::Quarter => short(in_circular_mils(one.area) / 1000.0, Unit::Kcmil),
                LessonStep::Sizes => size(one.here.run.run.conductor),
                LessonStep::Heat => size(one.least),
                LessonStep::Pays => Large { figure: self.money(one.here.cable), unit: String::new() },
                LessonStep::Peak => shown(peak_volts(one.pulses?.peak)),
                LessonStep::Home => shown(mass(one.here.metal, self.system)),
            })
        };
        let alone = matches!(step, LessonStep::Power | LessonStep::Area);
        let ways = Way::ALL.into_iter().filter(|way| !alone || *way == Way::V240);
        ways.filter_map(|way| Some((way, of(way)?))).collect()
    }

    /// The volts that stand over a figure: of the motor where its power is spoken of, else of what is sent.
    #[must_use]
    pub fn volts_of(&self, way: Way, step: LessonStep) -> String {
        match step {
            LessonStep::Power | LessonStep::Amps => self.volts(volts(way.rated_volts())),
            _ => self.volts(way.sending()),
        }
    }
}

/// The sums that are written out in a step.
#[must_use]
pub fn sums(step: LessonStep) -> Vec<Topic> {
    let of = |sums: &[LessonSum]| sums.iter().copied().map(Topic::Lesson).collect();
    match step {
        LessonStep::Power => of(&[LessonSum::Current(Way::V240)]),
        LessonStep::Share => of(&[LessonSum::SameWire(Way::V240)]),
        LessonStep::Area => of(&[LessonSum::Area(Way::V240)]),
        LessonStep::Quarter => of(&[LessonSum::Ratio]),
        LessonStep::Amps
        | LessonStep::Sizes
        | LessonStep::Heat
        | LessonStep::Pays
        | LessonStep::Peak
        | LessonStep::Home => Vec::new(),
    }
}

/// The sums that are written out with the answer.
#[must_use]
pub fn answer_sums(step: LessonStep) -> Vec<Topic> {
    let sum = if step == LessonStep::Home { LessonSum::Metal } else { LessonSum::Answer(step) };
    vec![Topic::Lesson(sum)]
}

/// The workings that a step can open.
#[must_use]
pub fn workings(step: LessonStep) -> Vec<Topic> {
    let both = |topic: fn(Way) -> Topic| Way::ALL.map(topic).to_vec();
    match step {
        LessonStep::Power => both(Topic::MotorCurrent),
        LessonStep::Amps => both(|way| Topic::Lesson(LessonSum::Current(way))),
        LessonStep::Share => both(|way| Topic::Lesson(LessonSum::SameWire(way))),
        LessonStep::Area | LessonStep::Quarter => both(|way| Topic::Lesson(LessonSum::Area(way))),
        LessonStep::Sizes => both(Topic::Drop),
        LessonStep::Heat => both(|way| Topic::Lesson(LessonSum::Least(way))),
        LessonStep::Pays => {
            let costs = both(|way| Topic::CableCost(way, Basis::Cable));
            [costs, vec![Topic::Saving(Basis::Installed), Topic::BreakEven(Basis::Installed)]].concat()
        }
        LessonStep::Peak => both(|way| Topic::Lesson(LessonSum::Peak(way))),
        LessonStep::Home => vec![Topic::Lesson(LessonSum::Metal)],
    }
}

/// The cautions beside a step.
#[must_use]
pub fn cautions(step: LessonStep) -> Vec<(&'static str, &'static str)> {
    let (lesson, all) = (&words().lesson, &words().cautions);
    match step {
        LessonStep::Power | LessonStep::Share | LessonStep::Area | LessonStep::Quarter => Vec::new(),
        LessonStep::Amps => vec![lesson.connect],
        LessonStep::Sizes | LessonStep::Heat => vec![lesson.hot],
        LessonStep::Pays => all.cost.to_vec(),
        LessonStep::Peak => vec![all.cable[1], all.power[0]],
        LessonStep::Home => vec![lesson.no_design],
    }
}

/// What follows from the learner's numbers, whole.
#[derive(Debug, Clone, PartialEq)]
pub struct Known {
    /// The figures.
    pub lesson: Lesson,
    /// What they were read from.
    pub answer: Evaluation,
}
