//! The question after each step: what is offered as its answer, worked out from the learner's numbers.

use super::{Lesson, LessonStep};
use crate::cable::lead::Conductor;
use crate::job::Way;
use crate::quantity::{Entry, Money, Unit, in_amperes, in_circular_mils, in_volts, in_watts};
use crate::standards::conductor::Size;

/// What is offered as an answer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Offered {
    /// A figure.
    Figure(Entry),
    /// A size of wire.
    Wire(Size),
}

/// An answer to choose.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Choice {
    /// What it says, whatever the numbers are: 0 is the right one, others each a mistake of their own.
    pub key: u8,
    /// What is offered.
    pub offered: Offered,
}

impl Choice {
    /// Whether it is the right one.
    #[must_use]
    pub fn is_right(self) -> bool {
        self.key == 0
    }
}

/// Most answers to choose from.
const MOST: usize = 4;
/// Least difference of two answers, as a share of the larger: closer ones could be taken for one another.
const APART: f64 = 0.04;

/// The answers to choose from after a step, in ascending order; none where the numbers leave nothing to ask.
#[must_use]
pub fn question(lesson: &Lesson, step: LessonStep) -> Vec<Choice> {
    let (low, high) = (lesson.way(Way::V240), lesson.way(Way::V480));
    let kcmil = in_circular_mils(low.area) / 1000.0;
    let percent = |ratio: f64| (100.0 * ratio, Unit::Percent);
    match step {
        LessonStep::Power => by_power(lesson),
        LessonStep::Amps => {
            let now = in_amperes(low.by_power);
            figures((in_amperes(high.by_power), Unit::Ampere), &[now, 2.0 * now, now / 4.0])
        }
        LessonStep::Share => {
            let now = percent(low.lost_share).0;
            figures(percent(high.lost_share), &[now / 2.0, now, 2.0 * now])
        }
        LessonStep::Area => figures((2.0 * kcmil, Unit::Kcmil), &[kcmil, kcmil / 2.0, 4.0 * kcmil]),
        LessonStep::Quarter => figures((kcmil / 9.0, Unit::Kcmil), &[kcmil / 3.0, kcmil / 6.0, kcmil / 2.0]),
        LessonStep::Sizes => wires(high.here.run.run.conductor),
        LessonStep::Heat => figures(percent(lesson.least_ratio()), &[25.0, 50.0, 100.0, 200.0]),
        LessonStep::Pays => {
            let (saved, extra) = (lesson.saving.cable, lesson.extra);
            let wrong: [Money; 3] = [saved, Money(-extra.0), saved + extra];
            figures((lesson.saving.net.0, Unit::Dollar), &wrong.map(|amount| amount.0))
        }
        LessonStep::Peak => high.stress.map_or_else(Vec::new, |stress| {
            let bus = in_volts(stress.bus);
            figures((in_volts(stress.peak), Unit::Volt), &[bus, bus / 2.0, 3.0 * bus])
        }),
        LessonStep::Home => figures(percent(lesson.metal_ratio()), &[25.0, 50.0, 100.0, 200.0]),
    }
}

/// The current by the power, and what comes out without the power factor, the factor of three phases or the efficiency.
fn by_power(lesson: &Lesson) -> Vec<Choice> {
    let low = lesson.way(Way::V240);
    let rated = Way::V240.rated_volts();
    let right = in_amperes(low.by_power);
    let plain = in_watts(lesson.input) / rated;
    let of_shaft = right * (lesson.motor / lesson.input).value;
    figures((right, Unit::Ampere), &[plain / 3f64.sqrt(), plain, of_shaft])
}

/// Figures of one unit: the right one and those wrong ones that can be told from it and from one another.
fn figures((right, unit): (f64, Unit), wrong: &[f64]) -> Vec<Choice> {
    let mut found = vec![(0u8, right)];
    for (key, value) in (1..).zip(wrong) {
        let alike = |other: f64| (value - other).abs() <= APART * value.abs().max(other.abs());
        if value.is_finite() && found.len() < MOST && !found.iter().any(|(_, other)| alike(*other)) {
            found.push((key, *value));
        }
    }
    found.sort_by(|(_, one), (_, other)| one.total_cmp(other));
    found.into_iter().map(|(key, value)| Choice { key, offered: Offered::Figure(Entry::new(value, unit)) }).collect()
}

/// The chosen size and those around it.
fn wires(chosen: Conductor) -> Vec<Choice> {
    let place = chosen.size as usize;
    let around = [(3, place.checked_sub(2)), (1, place.checked_sub(1)), (0, Some(place)), (2, Some(place + 1))];
    let size = |place: Option<usize>| place.and_then(|place| Size::ALL.get(place)).copied();
    around.into_iter().filter_map(|(key, place)| Some(Choice { key, offered: Offered::Wire(size(place)?) })).collect()
}
