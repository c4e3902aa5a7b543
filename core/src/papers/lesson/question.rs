//! The question after each step: what is offered as its answer, worked out from the learner's numbers.

use super::{Lesson, LessonStep};
use crate::cable::lead::Conductor;
use crate::job::Way;
use crate::numeric::order::by_number;
use crate::quantity::{Entry, Money, Unit, in_amperes, in_circular_mils, in_volts};
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
    let (amps, kcmil) = (in_amperes(low.by_power), in_circular_mils(low.area) / 1000.0);
    let percent = |ratio: f64| (100.0 * ratio, Unit::Percent);
    match step {
        LessonStep::Power => figures((2.0 * amps, Unit::Ampere), &[amps, amps / 2.0, 4.0 * amps]),
        LessonStep::Amps => figures((amps / 3.0, Unit::Ampere), &[amps, 3.0 * amps, amps / 9.0]),
        LessonStep::Share => {
            let now = percent(high.lost_share).0;
            figures((now / 4.0, Unit::Percent), &[now / 2.0, now, 2.0 * now])
        }
        LessonStep::Area => figures((2.0 * kcmil, Unit::Kcmil), &[kcmil, kcmil / 2.0, 4.0 * kcmil]),
        LessonStep::Quarter => figures((kcmil / 9.0, Unit::Kcmil), &[kcmil / 3.0, kcmil / 6.0, kcmil / 2.0]),
        LessonStep::Sizes => wires(lesson.other.conductor),
        LessonStep::Heat => {
            let drawn = in_amperes(lesson.larger_motor());
            figures((1.25 * drawn, Unit::Ampere), &[drawn, drawn / 1.25, 2.0 * drawn])
        }
        LessonStep::Pays => {
            let other = lesson.other;
            let (saved, extra) = (other.cables[0] - other.cables[1], other.extra);
            let wrong = [saved, Money(-extra.0), saved + extra];
            figures((other.net.0, Unit::Dollar), &wrong.map(|amount| amount.0))
        }
        LessonStep::Peak => high.pulses.map_or_else(Vec::new, |pulses| {
            let bus = in_volts(pulses.bus);
            figures((2.0 * bus, Unit::Volt), &[bus, 1.5 * bus, 3.0 * bus])
        }),
        LessonStep::Home => figures(percent(lesson.metal_ratio()), &[25.0, 50.0, 100.0, 200.0]),
    }
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
    by_number(&mut found, |(_, value)| *value);
    found.into_iter().map(|(key, value)| Choice { key, offered: Offered::Figure(Entry::new(value, unit)) }).collect()
}

/// The chosen size and those around it.
fn wires(chosen: Conductor) -> Vec<Choice> {
    let place = chosen.size as usize;
    let around = [(3, place.checked_sub(2)), (1, place.checked_sub(1)), (0, Some(place)), (2, Some(place + 1))];
    let size = |place: Option<usize>| place.and_then(|place| Size::ALL.get(place)).copied();
    around.into_iter().filter_map(|(key, place)| Some(Choice { key, offered: Offered::Wire(size(place)?) })).collect()
}
