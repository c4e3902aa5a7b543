//! Any text at all at the doors of core: job files, links, tables of prices and of equipment, duties, pump curves.
//!
//! Each door is tried with the texts of its corpus, spoiled at random over and over. A text whose outcome is of a new kind
//! (another error at another place, other findings) joins the corpus of the run, so that the search goes on from there.
//! `WELLWRIGHT_FUZZ_SECONDS` tries each door for as long; else a number of tries that takes some seconds.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::print_stdout)]

mod doors;
mod spoil;

use spoil::{Trial, corpus, spoiled};
use std::collections::BTreeSet;
use std::panic::{AssertUnwindSafe, catch_unwind};
use wellwright_core::numeric::pcg::Pcg32;

/// What comes of a text, in a word; a broken promise is a panic.
type Door = fn(&str) -> String;

/// Most texts that join the corpus of a run.
const MOST_KEPT: usize = 4000;

/// Tries a door with one spoiled text after the other.
fn fuzz(name: &str, tries: u64, door: Door) {
    let mut kept = corpus(name);
    let mut seen: BTreeSet<String> = kept.iter().map(|text| outcome(name, door, text)).collect();
    let mut chance = Pcg32::new(20_261_127, name.len() as u64);
    let mut trial = Trial::of(tries);
    while trial.goes_on() {
        let text = spoiled(&kept, &mut chance);
        if seen.insert(outcome(name, door, &text)) && kept.len() < MOST_KEPT {
            kept.push(text);
        }
    }
    println!("{name}: {} texts, {} kinds of outcome", trial.tried, seen.len());
}

/// What comes of a text; one that breaks the program is shown whole.
fn outcome(name: &str, door: Door, text: &str) -> String {
    catch_unwind(AssertUnwindSafe(|| door(text))).unwrap_or_else(|_| panic!("{name} breaks on {text:?}"))
}

#[test]
fn job_files() {
    fuzz("job", 250, doors::job);
}

#[test]
fn links() {
    fuzz("link", 4000, doors::link);
}

#[test]
fn price_books() {
    fuzz("book", 3000, doors::book);
}

#[test]
fn equipment() {
    fuzz("families", 4000, doors::families);
}

#[test]
fn duties() {
    fuzz("duty", 8000, doors::duty);
}

#[test]
fn curves() {
    fuzz("curve", 4000, doors::curve);
}

/// The search gets somewhere: spoiled texts reach more kinds of outcome than the corpus does.
#[test]
fn spoiled_texts_reach_further_than_the_corpus() {
    let kept = corpus("curve");
    let of = |texts: &[String]| texts.iter().map(|text| doors::curve(text)).collect::<BTreeSet<_>>().len();
    let mut chance = Pcg32::new(1, 1);
    let more: Vec<String> = (0..500).map(|_| spoiled(&kept, &mut chance)).collect();
    assert!(of(&more) > 2 * of(&kept));
}
