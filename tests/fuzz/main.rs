//! Any text at all at the doors of core: job files, links, tables of prices and of equipment, duties, pump curves.
//!
//! Each door is tried with the texts of its corpus, spoiled at random over and over. A text whose outcome is of a new kind
//! (another error at another place, other findings) joins the corpus of the run, so that the search goes on from there.
//! `WELLWRIGHT_FUZZ_SECONDS` tries each door for as long; else a number of tries that takes some seconds.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::print_stdout)]

mod doors;
mod spoil;

use spoil::spoiled;
use std::collections::BTreeSet;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::time::{Duration, Instant};
use wellwright_core::numeric::pcg::Pcg32;
use wellwright_tests::root;

/// What comes of a text, in a word; a broken promise is a panic.
type Door = fn(&str) -> String;

/// Most texts that join the corpus of a run.
const MOST_KEPT: usize = 4000;

/// The texts that are kept for a door, in the order of their names.
fn corpus(name: &str) -> Vec<String> {
    let folder = root().join("tests/fuzz/corpus").join(name);
    let mut paths: Vec<_> = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    paths.sort();
    assert!(!paths.is_empty(), "no corpus for {name}");
    paths.iter().map(|path| std::fs::read_to_string(path).unwrap()).collect()
}

/// Tries a door: so many texts, or for as long as is asked for.
fn fuzz(name: &str, tries: u32, door: Door) {
    let time = std::env::var("WELLWRIGHT_FUZZ_SECONDS").ok().map(|text| Duration::from_secs(text.parse().unwrap()));
    let began = Instant::now();
    let mut kept = corpus(name);
    let mut seen = BTreeSet::new();
    for text in kept.clone() {
        seen.insert(outcome(name, door, &text));
    }
    let mut chance = Pcg32::new(20_261_127, name.len() as u64);
    let mut tried = 0_u64;
    loop {
        let enough = time.map_or(tried >= u64::from(tries), |time| began.elapsed() >= time);
        if enough {
            break;
        }
        let text = spoiled(&kept, &mut chance);
        if seen.insert(outcome(name, door, &text)) && kept.len() < MOST_KEPT {
            kept.push(text);
        }
        tried += 1;
    }
    println!("{name}: {tried} texts, {} kinds of outcome", seen.len());
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
