//! Words and figures in the well section: flush right on one line, each with a leader to its part.

use super::spec::View;
use super::well::{Facts, Frame};
use crate::locale::{self, words};
use wellwright_core::cable::lead::Conductor;
use wellwright_core::quantity::{Entry, Power, Unit, UnitSystem, in_horsepower, in_watts};

/// A text in the section.
#[derive(Debug, Clone, PartialEq)]
pub struct Word {
    /// Class of its lettering.
    pub class: &'static str,
    /// The text.
    pub text: String,
    /// Left or right end.
    pub x: f64,
    /// Base line.
    pub y: f64,
    /// Whether `x` is the right end.
    pub end: bool,
}

/// All texts, and the leaders from them.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Words {
    /// Texts.
    pub words: Vec<Word>,
    /// Class and path of leaders and their dots.
    pub leaders: Vec<(&'static str, String)>,
}

/// The texts of a well.
#[must_use]
pub fn words_of(facts: &Facts, view: &View) -> Words {
    let scale = view.layout.scale(view.end);
    let frame = Frame::of(facts, view, &scale);
    let mut out = Words::default();
    if view.layout.compact {
        compact(facts, view, &frame, &mut out);
    } else {
        above(facts, view, &frame, &mut out);
        below(facts, view, &frame, &mut out);
    }
    out
}

/// A motor's power: horsepower as entered, kilowatts to tenths.
fn power(power: Power, system: UnitSystem) -> String {
    let text = match system {
        UnitSystem::Us => locale::entry_text(Entry::new(in_horsepower(power), Unit::Horsepower), system),
        UnitSystem::Si => locale::shown(in_watts(power) / 1000.0, 1, locale::unit_name(Unit::Kilowatt)).text(),
    };
    (words().motor_power)(&text)
}

/// Phase conductors as ordered: three of a size, or sets of it.
fn phases(conductor: Conductor) -> String {
    let text = locale::conductor(conductor);
    if conductor.sets > 1 { text } else { (words().three_of)(&text) }
}

/// On a phone only the motor's power, beside the casing.
fn compact(facts: &Facts, view: &View, frame: &Frame, out: &mut Words) {
    let (Some(intake), Some(rated)) = (frame.pump, facts.power) else { return };
    let y = (intake + 18.0).min(view.layout.bottom - 22.0).max(view.layout.ground + 36.0);
    let text = power(rated, view.system);
    // Figure and unit one under the other: the room beside the casing is narrow.
    for (index, part) in text.split('\u{a0}').enumerate() {
        let class = if index == 0 { "t-b halo" } else { "t-s halo" };
        out.words.push(Word { class, text: part.to_owned(), x: frame.sides.0 - 5.0, y: y + 15.0 * index as f64, end: true });
    }
}

/// Supply, drive, and the length of the lead on the surface.
fn above(facts: &Facts, view: &View, frame: &Frame, out: &mut Words) {
    let (words, ground) = (words(), view.layout.ground);
    let start = |class, text: &str, x, y| Word { class, text: text.to_owned(), x, y, end: false };
    out.words.push(start("t-s", words.supply, frame.pole.0 + 14.0, frame.pole.1 + 11.0));
    let (drive, width) = frame.drive;
    let middle = (frame.drive_ends.0 + frame.drive_ends.1) / 2.0;
    out.words.push(start("t-s", words.drive, drive + width + 9.0, middle + 5.0));
    if let Some(surface) = facts.surface {
        let text = locale::depth(surface, view.system).text();
        out.words.push(Word { class: "t-s halo", text, x: frame.sides.0 - 16.0, y: ground + 28.0, end: true });
    }
}

/// Lead, pump and motor.
fn below(facts: &Facts, view: &View, frame: &Frame, out: &mut Words) {
    let Some(intake) = frame.pump else { return };
    let (ground, bottom, line) = (view.layout.ground, view.layout.bottom, view.lettering.plain * 1.25);
    let pump_top = frame.pump_top(intake);
    let lead_at = (ground + (intake - ground) * 0.3).max(ground + 56.0);
    let pump_at = (intake + 14.0).max(if facts.lead.is_some() { lead_at + 2.3 * line } else { ground + 56.0 });
    // Near the end of the scale both labels move up together.
    let pump_at = pump_at.min(bottom - line - 4.0);
    let lead_at = lead_at.min(pump_at - 2.3 * line);
    if let Some((conductor, earth)) = facts.lead {
        let to = (frame.layout.axis + 7.0, lead_at.min(pump_top - 10.0).max(ground + 3.0));
        let lines = [phases(conductor), (words().and_ground)(&locale::lead_size(earth))];
        label(frame, lead_at, to, true, lines.map(Some), out);
    }
    let rated = facts.power.map(|rated| power(rated, view.system));
    let to = (frame.layout.axis - 7.0, intake + 16.0);
    label(frame, pump_at, to, false, [Some(words().pump_and_motor.to_owned()), rated], out);
}

/// A label of up to two lines at the gutter, and its leader: level where the words end, then one slant.
fn label(frame: &Frame, y: f64, to: (f64, f64), dot: bool, lines: [Option<String>; 2], out: &mut Words) {
    let gutter = frame.sides.0 - 30.0;
    for (index, text) in lines.into_iter().flatten().enumerate() {
        let (class, down) = if index == 0 { ("t-b halo", 5.0) } else { ("t-s halo", 22.0) };
        out.words.push(Word { class, text, x: gutter, y: y + down, end: true });
    }
    let bend = if (y - to.1).abs() > 2.0 { frame.sides.0 - 4.0 } else { gutter + 14.0 };
    let path = format!("M{:.1} {y:.1}H{:.1}L{bend:.1} {:.1}H{:.1}", gutter + 5.0, gutter + 13.0, to.1, to.0);
    out.leaders.push(("l-lead", path));
    if dot {
        out.leaders.push(("f-ink", format!("M{:.1} {:.1}a2.6 2.6 0 1 0 5.2 0a2.6 2.6 0 1 0 -5.2 0", to.0 - 2.6, to.1)));
    }
}
