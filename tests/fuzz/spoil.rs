//! Texts spoiled at random: letters, stretches, numbers, and pieces of other texts.

use std::time::{Duration, Instant};
use wellwright_core::numeric::pcg::Pcg32;

/// What stands where a reader does not expect it.
const ODD: [&str; 30] = [
    "",
    "\"",
    "\\",
    "{",
    "}",
    "[",
    "]",
    ",",
    ";",
    "\t",
    "\n",
    "\r\n",
    "\u{feff}",
    "\u{0}",
    "null",
    "true",
    "NaN",
    "-0",
    "1e999",
    "1e-400",
    "-1e308",
    "9007199254740993",
    "0.1",
    "1,5",
    "1.234,5",
    "½",
    "℃",
    "💧",
    "=1+1",
    "A\u{301}",
];

/// Places at which a text may be cut.
fn place(text: &str, chance: &mut Pcg32) -> usize {
    let mut at = chance.below(text.len() as u32 + 1) as usize;
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    at
}

/// A stretch of a text, at most some letters long.
fn stretch(text: &str, most: u32, chance: &mut Pcg32) -> (usize, usize) {
    let from = place(text, chance);
    let mut to = (from + chance.below(most + 1) as usize).min(text.len());
    while !text.is_char_boundary(to) {
        to -= 1;
    }
    (from, to.max(from))
}

/// A number that stands in a text, if one does.
fn number(text: &str, chance: &mut Pcg32) -> Option<(usize, usize)> {
    let from = place(text, chance);
    let digit = |c: char| c.is_ascii_digit();
    let start = from + text[from..].find(digit)?;
    let length = text[start..].find(|c: char| !(digit(c) || ".eE+-".contains(c))).unwrap_or(text.len() - start);
    Some((start, start + length))
}

fn one<'a>(things: &[&'a str], chance: &mut Pcg32) -> &'a str {
    things[chance.below(things.len() as u32) as usize]
}

/// Any letter of those that texts hold, now and then one of another alphabet.
fn letter(chance: &mut Pcg32) -> String {
    let most = if chance.below(8) == 0 { 0x3000 } else { 0x7f };
    char::from_u32(chance.below(most)).unwrap_or('.').to_string()
}

/// One text of those that are kept, spoiled in one to four places.
pub fn spoiled(kept: &[String], chance: &mut Pcg32) -> String {
    let any = |chance: &mut Pcg32| &kept[chance.below(kept.len() as u32) as usize];
    let mut text = any(chance).clone();
    for _ in 0..=chance.below(4) {
        let (from, to) = stretch(&text, 12, chance);
        let put = match chance.below(8) {
            0 => String::new(),
            1 => one(&ODD, chance).to_owned(),
            2 => text[from..to].repeat(1 + chance.below(3) as usize),
            3 => {
                let other = any(chance);
                let (from, to) = stretch(other, 60, chance);
                other[from..to].to_owned()
            }
            4 => {
                text.truncate(from);
                continue;
            }
            5 => {
                if let Some((from, to)) = number(&text, chance) {
                    let put = match chance.below(3) {
                        0 => one(&ODD, chance).to_owned(),
                        1 => format!("{}", (chance.share() - 0.3) * 10f64.powi(chance.below(12) as i32 - 4)),
                        _ => chance.below(4000).to_string(),
                    };
                    text.replace_range(from..to, &put);
                }
                continue;
            }
            _ => letter(chance),
        };
        text.replace_range(from..to, &put);
    }
    // A text that only grows says no more.
    let mut most = text.len().min(20_000);
    while !text.is_char_boundary(most) {
        most -= 1;
    }
    text.truncate(most);
    text
}

/// The texts that are kept for a door, in the order of their names.
pub fn corpus(name: &str) -> Vec<String> {
    let folder = format!("{}/../tests/fuzz/corpus/{name}", env!("CARGO_MANIFEST_DIR"));
    let mut paths: Vec<_> = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    paths.sort();
    assert!(!paths.is_empty(), "no corpus for {name}");
    paths.iter().map(|path| std::fs::read_to_string(path).unwrap()).collect()
}

/// How long a door is tried: so many texts, or the seconds of `WELLWRIGHT_FUZZ_SECONDS`.
pub struct Trial {
    tries: u64,
    end: Option<Instant>,
    pub tried: u64,
}

impl Trial {
    pub fn of(tries: u64) -> Self {
        let seconds = std::env::var("WELLWRIGHT_FUZZ_SECONDS").ok().map(|text| text.parse().unwrap());
        Self { tries, end: seconds.map(|seconds| Instant::now() + Duration::from_secs(seconds)), tried: 0 }
    }

    /// True where one more text is due.
    pub fn goes_on(&mut self) -> bool {
        let more = self.end.map_or(self.tried < self.tries, |end| Instant::now() < end);
        self.tried += u64::from(more);
        more
    }
}
