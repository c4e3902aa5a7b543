//! Words and figures in the well section: flush right on one line, each with a leader to its part.

use super::labels::text_width;
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
    match system {
        UnitSystem::Us => locale::entry_text(Entry::new(in_horsepower(power), Unit::Horsepower), system),
        UnitSystem::Si => locale::shown(in_watts(power) / 1000.0, 1, locale::unit_name(Unit::Kilowatt)).text(),
    }
}

/// Phase conductors as ordered: three of a size, or sets of it.
fn phases(conductor: Conductor) -> String {
    let text = locale::conductor(conductor);
    if conductor.sets > 1 { text } else { (words().answer.three_of)(&text) }
}

/// On a phone only the motor's power, beside the casing.
fn compact(facts: &Facts, view: &View, frame: &Frame, out: &mut Words) {
    let (Some(intake), Some(rated)) = (frame.pump, facts.power) else { return };
    let y = (intake + 18.0).min(view.layout.bottom - 22.0).max(view.layout.ground + 36.0);
    let text = power(rated, view.system);
    // Figure and unit one under the other: the room beside the casing is narrow.
    for (index, part) in text.split('\u{a0}').enumerate() {
        let class = if index == 0 { "t-b halo" } else { "t-s halo" };
        out.words.push(Word {
            class,
            text: part.to_owned(),
            x: frame.sides.0 - 5.0,
            y: y + 15.0 * index as f64,
            end: true,
        });
    }
}

/// Supply, drive, and the length of the lead on the surface.
fn above(facts: &Facts, view: &View, frame: &Frame, out: &mut Words) {
    let (words, ground) = (words(), view.layout.ground);
    let start = |class, text: &str, x, y| Word { class, text: text.to_owned(), x, y, end: false };
    out.words.push(start("t-s", words.picture.supply, frame.pole.0 + 14.0, frame.pole.1 + 11.0));
    let (drive, width) = frame.drive;
    let middle = (frame.drive_ends.0 + frame.drive_ends.1) / 2.0;
    out.words.push(start("t-s", words.picture.drive, drive + width + 9.0, middle + 5.0));
    if let Some(surface) = facts.surface {
        let text = locale::depth(surface, view.system).text();
        out.words.push(Word { class: "t-s halo", text, x: frame.sides.0 - 16.0, y: ground + 28.0, end: true });
    }
}

/// Lead, pump and motor.
fn below(facts: &Facts, view: &View, frame: &Frame, out: &mut Words) {
    let Some(intake) = frame.pump else { return };
    let (ground, bottom) = (view.layout.ground, view.layout.bottom);
    let lead = facts.lead.map(|(conductor, earth)| {
        Block::of(&[&phases(conductor), &(words().picture.and_ground)(&locale::lead_size(earth))], view, frame)
    });
    let rated = facts.power.map(|rated| power(rated, view.system)).unwrap_or_default();
    let pump = Block::of(&[words().picture.pump_and_motor, &rated], view, frame);
    let first = ground + 56.0;
    let lead_at = (ground + (intake - ground) * 0.3).max(first);
    let under_lead = lead.as_ref().map_or(first, |lead| lead_at + lead.height());
    // Near the end of the scale both labels move up together.
    let pump_at = (intake + 14.0).max(under_lead).min(bottom - pump.height() + 12.0);
    if let Some(lead) = lead {
        let lead_at = lead_at.min(pump_at - lead.height());
        let to = (frame.layout.axis + 7.0, lead_at.min(frame.pump_top(intake) - 10.0).max(ground + 3.0));
        lead.write(lead_at, to, true, frame, out);
    }
    pump.write(pump_at, (frame.layout.axis - 7.0, intake + 16.0), false, frame, out);
}

/// A label at the gutter: bold first part, lighter second, each in as many lines as the room asks for.
struct Block {
    lines: Vec<(&'static str, String)>,
    step: f64,
}

impl Block {
    fn of(parts: &[&str; 2], view: &View, frame: &Frame) -> Self {
        let size = view.lettering.small;
        let mut lines = Vec::new();
        for (part, class) in parts.iter().zip(["t-b halo", "t-s halo"]) {
            let fits = |text: &str| text_width(text, size, class.starts_with("t-b")) <= gutter(frame) - 2.0;
            lines.extend(wrapped(part, fits).into_iter().map(|line| (class, line)));
        }
        Self { lines, step: size * 1.3 }
    }

    /// Height with the room to the next label.
    fn height(&self) -> f64 {
        self.step * (self.lines.len() as f64 + 0.4)
    }

    /// Writes the lines, the first at a height, and the leader: level where the words end, then one slant.
    fn write(self, y: f64, to: (f64, f64), dot: bool, frame: &Frame, out: &mut Words) {
        let gutter = gutter(frame);
        for (index, (class, text)) in self.lines.into_iter().enumerate() {
            out.words.push(Word { class, text, x: gutter, y: y + 5.0 + self.step * index as f64, end: true });
        }
        let bend = if (y - to.1).abs() > 2.0 { frame.sides.0 - 4.0 } else { gutter + 14.0 };
        let path = format!("M{:.1} {y:.1}H{:.1}L{bend:.1} {:.1}H{:.1}", gutter + 5.0, gutter + 13.0, to.1, to.0);
        out.leaders.push(("l-lead", path));
        if dot {
            let (x, y) = (to.0 - 2.6, to.1);
            out.leaders.push(("f-ink", format!("M{x:.1} {y:.1}a2.6 2.6 0 1 0 5.2 0a2.6 2.6 0 1 0 -5.2 0")));
        }
    }
}

/// Where the words end.
fn gutter(frame: &Frame) -> f64 {
    frame.sides.0 - 30.0
}

/// A text in lines that fit, parted at spaces that may break.
fn wrapped(text: &str, fits: impl Fn(&str) -> bool) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        match lines.last_mut() {
            Some(line) if fits(&format!("{line} {word}")) => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_part_at_spaces_that_may_break() {
        assert_eq!(wrapped("2 sets of 4/0\u{a0}AWG", |text| text.chars().count() <= 10), ["2 sets of", "4/0\u{a0}AWG"]);
        assert_eq!(wrapped("pump and motor", |_| true), ["pump and motor"]);
        assert!(wrapped("", |_| true).is_empty());
    }
}
