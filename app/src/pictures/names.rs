//! Names of the ways under the ends of their lines, swatch first; where a line ends early, the reason at its end.

use super::curve::WayLine;
use super::labels::{Board, text_width};
use super::layout::Layout;
use super::mark::{Anchor, Dash, Hand, Label, Letters, Mark, Pen, Point, Tint};
use crate::locale::{self, words};
use wellwright_core::numeric::order::by_number;
use wellwright_core::quantity::UnitSystem;

/// Length of a swatch, its distance from the name, and from name to name.
const SWATCH: f64 = 28.0;
const AFTER_SWATCH: f64 = 6.0;
const APART: f64 = 16.0;
/// A name in the row.
const NAME: Hand = Hand { letters: Letters::Small, bold: true, tint: Tint::Ink };

struct Name<'a> {
    line: &'a WayLine,
    text: &'static str,
    note: &'static str,
    width: f64,
    left: f64,
}

impl Name<'_> {
    /// Leaves the note out.
    fn drop_note(&mut self, board: &Board) {
        self.note = "";
        self.width = SWATCH + AFTER_SWATCH + text_width(self.text, board.lettering().small, true);
    }
}

/// Writes both names in one row under the scale and draws their swatches.
pub fn write(board: &mut Board, marks: &mut Vec<Mark>, ways: &[WayLine; 2], layout: &Layout) {
    let y = layout.bottom + 15.5 + 0.58 * board.lettering().small;
    let mut names: Vec<Name<'_>> = ways.iter().map(|line| name(board, line, layout)).collect();
    by_number(&mut names, |name| name.left + name.width / 2.0);
    let room = names.iter().map(|name| name.width).sum::<f64>() + APART;
    if room > layout.width {
        names.iter_mut().for_each(|name| name.drop_note(board));
    }
    spread(&mut names, layout);
    for name in &names {
        let swatch = [Point::new(name.left, y), Point::new(name.left + SWATCH, y)];
        marks.push(Mark::Line {
            points: swatch.to_vec(),
            pen: Pen::Way,
            tint: Tint::Way(name.line.way),
            dash: Dash::Way(name.line.way),
        });
        let words_at = name.left + SWATCH + AFTER_SWATCH;
        let rect = board.write(board.label(name.text, Point::new(words_at, y), Anchor::Start, NAME));
        if !name.note.is_empty() {
            board.write(board.label(name.note, Point::new(rect.right + 4.0, y), Anchor::Start, Hand::SMALL));
        }
        if let Some(end) = name.line.end().filter(|_| name.line.ends_at.is_none()) {
            let from = Point::new(end.x, layout.bottom + 2.0);
            marks.push(Mark::line(from, Point::new(end.x, layout.bottom + 10.0), Pen::Hair, Tint::Ink));
        }
    }
}

fn name<'a>(board: &Board, line: &'a WayLine, layout: &Layout) -> Name<'a> {
    let words = words();
    let text = if layout.compact { (words.answer.way_short)(line.way) } else { (words.answer.way)(line.way) };
    let note = if line.runs.is_empty() { words.answer.no_size } else { "" };
    let size = board.lettering().small;
    let note_width = if note.is_empty() { 0.0 } else { 4.0 + text_width(note, size, false) };
    let width = SWATCH + AFTER_SWATCH + text_width(text, size, true) + note_width;
    let middle = line.end().map_or(layout.chart, |end| end.x);
    Name { line, text, note, width, left: middle - width / 2.0 }
}

/// Pushes the names apart and inside the picture.
fn spread(names: &mut [Name<'_>], layout: &Layout) {
    let mut edge = layout.width - 1.0;
    for name in names.iter_mut().rev() {
        name.left = name.left.min(edge - name.width);
        edge = name.left - APART;
    }
    let mut edge = if layout.compact { 0.0 } else { layout.rod_right() };
    for name in names.iter_mut() {
        name.left = name.left.max(edge);
        edge = name.left + name.width + APART;
    }
}

/// Marks the end of a line that ends early and writes the reason, on a phone in two lines.
pub fn write_ends(board: &mut Board, marks: &mut Vec<Mark>, ways: &[WayLine; 2], system: UnitSystem, compact: bool) {
    for line in ways {
        let (Some(end), Some(depth)) = (line.end(), line.ends_at) else { continue };
        let ends = [Point::new(end.x - 7.0, end.y), Point::new(end.x + 7.0, end.y)];
        marks.push(Mark::line(ends[0], ends[1], Pen::Mid, Tint::Way(line.way)));
        let text = (words().picture.no_size_below)(&locale::reach(depth, system).text());
        let lines = if compact { halves(&text) } else { vec![text.as_str()] };
        let step = board.lettering().small * 1.25;
        let block = |x: f64, y: f64, anchor| -> Vec<Label> {
            let at = |index: usize| Point::new(x, y + step * index as f64);
            lines.iter().enumerate().map(|(index, text)| board.label(text, at(index), anchor, Hand::SMALL)).collect()
        };
        let tall = step * (lines.len() - 1) as f64;
        let candidates: Vec<Vec<Label>> = [0.0, 14.0, 30.0, 50.0]
            .into_iter()
            .flat_map(|down| {
                [
                    block(end.x, end.y + 14.0 + down, Anchor::Middle),
                    block(end.x + 4.0, end.y + 14.0 + down, Anchor::Start),
                    block(end.x + 6.0, end.y + 14.0 + down, Anchor::End),
                    block(end.x + 12.0, end.y + down, Anchor::Start),
                    block(end.x - 12.0, end.y + 14.0 + down, Anchor::End),
                    block(end.x, end.y - 14.0 - tall - down, Anchor::Start),
                ]
            })
            .collect();
        board.offer_lines(candidates);
    }
}

/// A text in two lines, parted at the space nearest its middle.
#[must_use]
pub fn halves(text: &str) -> Vec<&str> {
    let middle = text.len() / 2;
    match text.match_indices(' ').min_by_key(|(at, _)| at.abs_diff(middle)) {
        Some((at, _)) => vec![&text[..at], &text[at + 1..]],
        None => vec![text],
    }
}
