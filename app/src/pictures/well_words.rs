//! Words and figures in the well section: on the desk flush right on one line, each with a leader to its part; on a
//! phone bare figures, flush to the casing.

use super::facts::Facts;
use super::frame::Frame;
use super::head::Head;
use super::labels::text_width;
use super::mark::Rect;
use super::parts::{items, write};
use super::spec::View;
use super::spread::{Block, spread};
use super::well::Stroke;
use crate::locale::{self, words};
use wellwright_core::quantity::{Entry, Power, Unit, UnitSystem, in_horsepower, in_watts};

/// From line to line, in sizes of the lettering.
pub const LINE: f64 = 1.25;
/// From the ground line to the first words below the buried lead.
pub const UNDER_GROUND: f64 = 15.0;
/// From the words to the casing, on the desk and on a phone.
pub const GUTTER: f64 = 30.0;
pub const BESIDE: f64 = 5.0;
/// Lines that words are driven from their place before drop pipe and check valve give way.
const FAR: f64 = 1.6;

/// Size of words of water against the others, as in the style sheet.
const WATER: f64 = 1.08;

/// How a text in the section is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Style {
    /// Above ground.
    Sky,
    /// Words of parts.
    Small,
    /// Words that carry weight.
    Bold,
    /// Words of water.
    Water,
}

/// A text in the section.
#[derive(Debug, Clone, PartialEq)]
pub struct Word {
    /// Its lettering.
    pub style: Style,
    /// The text.
    pub text: String,
    /// Left or right end.
    pub x: f64,
    /// Base line.
    pub y: f64,
    /// Whether `x` is the right end.
    pub end: bool,
}

impl Word {
    /// A text that ends at a place; one that is too wide for that begins at the picture's edge.
    #[must_use]
    pub fn flush(style: Style, text: String, right: f64, y: f64, size: f64) -> Self {
        let end = width(&text, size, style) <= right;
        Self { style, text, x: if end { right } else { 0.0 }, y, end }
    }

    /// Class of the lettering.
    #[must_use]
    pub fn class(&self) -> &'static str {
        match self.style {
            Style::Sky => "t-s",
            Style::Small => "t-s halo",
            Style::Bold => "t-b halo",
            Style::Water => "t-w halo",
        }
    }

    /// The room that the text takes.
    #[must_use]
    pub fn rect(&self, size: f64) -> Rect {
        let width = width(&self.text, size, self.style);
        let left = if self.end { self.x - width } else { self.x };
        Rect { left, right: left + width, top: self.y - 0.8 * size, bottom: self.y + 0.25 * size }
    }
}

/// Width that a text may take; words of water are a little larger than the rest.
#[must_use]
pub fn width(text: &str, size: f64, style: Style) -> f64 {
    let size = if style == Style::Water { WATER * size } else { size };
    text_width(text, size, style == Style::Bold)
}

/// All texts, and the leaders from them.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Words {
    /// Texts.
    pub words: Vec<Word>,
    /// Class and path of leaders and their dots.
    pub leaders: Vec<Stroke>,
}

impl Words {
    /// The rooms that the texts take.
    #[must_use]
    pub fn rects(&self, size: f64) -> Vec<Rect> {
        self.words.iter().map(|word| word.rect(size)).collect()
    }
}

/// The texts of a well.
#[must_use]
pub fn words_of(facts: &Facts, view: &View) -> Words {
    let frame = Frame::of(facts, view);
    let mut out = Words::default();
    if !view.layout.compact {
        above(view, &frame, &mut out);
    }
    let items = items(facts, view, &frame);
    let blocks: Vec<Block> = items.iter().map(|item| item.block(view)).collect();
    let room = (view.layout.ground + UNDER_GROUND, frame.floor);
    let tops = spread(&blocks, room, FAR * LINE * view.lettering.small);
    let placed = tops.into_iter().zip(items).filter_map(|(top, item)| top.map(|top| (top, item))).collect();
    write(placed, view, &frame, &mut out);
    out
}

/// A motor's power: horsepower as entered, kilowatts to tenths.
#[must_use]
pub fn power(power: Power, system: UnitSystem) -> String {
    match system {
        UnitSystem::Us => locale::entry_text(Entry::new(in_horsepower(power), Unit::Horsepower), system),
        UnitSystem::Si => locale::shown(in_watts(power) / 1000.0, 1, locale::unit_name(Unit::Kilowatt)).text(),
    }
}

/// Supply, drive and tank, where there is room.
fn above(view: &View, frame: &Frame, out: &mut Words) {
    let (picture, head, size) = (&words().picture, Head::of(frame), view.lettering.small);
    let word = |text: &str, x, y| Word { style: Style::Sky, text: text.to_owned(), x, y, end: false };
    let beside = (head.drive_ends.0 + head.drive_ends.1) / 2.0 + 0.36 * size;
    let supply = word(picture.supply, head.pole.0 + 14.0, head.pole.1 + 0.84 * size);
    let drive = word(picture.drive, head.drive.0 + head.drive.1 + 8.0, beside);
    let tank = tank_word(view, frame);
    let free = |word: &Word, right: f64| word.rect(size).right <= right;
    out.words.extend(Some(supply).filter(|word| free(word, head.tank.0 - head.tank.1)));
    out.words.extend(Some(drive).filter(|word| free(word, head.riser + 2.0)));
    out.words.push(tank);
}

/// The word beside the tank.
fn tank_word(view: &View, frame: &Frame) -> Word {
    let (head, size) = (Head::of(frame), view.lettering.small);
    let y = (head.tank_ends.0 + head.tank_ends.1) / 2.0 + 0.36 * size;
    let text = words().picture.tank.to_owned();
    Word { style: Style::Sky, text, x: head.tank.0 + head.tank.1 + 7.0, y, end: false }
}

/// Right end of what stands above ground: the tank, on the desk with its word.
#[must_use]
pub fn head_right(view: &View) -> f64 {
    let frame = Frame::of(&Facts::default(), view);
    let head = Head::of(&frame);
    if view.layout.compact {
        head.tank.0 + head.tank.1
    } else {
        tank_word(view, &frame).rect(view.lettering.small).right
    }
}

/// Base line of a line of words.
#[must_use]
pub fn base(top: f64, size: f64) -> f64 {
    top + 0.95 * size
}
