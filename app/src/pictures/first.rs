//! What stands on the page before the program has come: a few words, and the picture of the first demo job as the program
//! draws it, in the colors of the page's theme. It is kept as a file beside the script that shows it (`app/first`).
#![allow(clippy::unwrap_used)]

use super::facts::Facts;
use super::frame::Frame;
use super::ink::{COLORS, Ink};
use super::layout::Layout;
use super::mark::Lettering;
use super::scale::scale_end;
use super::spec::{View, picture};
use super::vector::markup;
use super::well::{ground, well};
use super::well_words::words_of;
use crate::locale::first::{self, First};
use crate::locale::{Decimals, Language, speak, words};
use crate::platform::storage::demo_jobs;
use std::fmt::Write as _;
use wellwright_core::evaluate::{Basis, Evaluation, evaluate};
use wellwright_core::quantity::UnitSystem;

/// Its size: a phone's.
const SIZE: (f64, f64) = (344.0, 430.0);

/// What says nothing in the file: the face is the page's, the rest is so anyhow.
const PLAIN: [&str; 4] = [r#" font-family="sans-serif""#, r#" opacity="1""#, r#" stroke="none""#, "\n"];

/// A color that stands for a custom property, by its place.
fn stand_in(place: usize) -> String {
    format!("#0101{place:02x}")
}

/// Ink whose colors stand for the theme's.
fn ink() -> Ink {
    Ink::from(&|name| COLORS.iter().position(|one| *one == name).map(stand_in).unwrap_or_default()).unwrap()
}

/// The well, with the classes of the style sheet.
fn section(answer: &Evaluation, view: &View) -> String {
    let facts = Facts::of(answer);
    let frame = Frame::of(&facts, view);
    let words = words_of(&facts, view);
    let rects = words.rects(view.lettering.small);
    let strokes = ground(&frame, &rects).into_iter().chain(well(&frame, view)).chain(words.leaders.iter().cloned());
    let mut out = format!(r#"<svg class="well" viewBox="0 0 {} {}">"#, SIZE.0, SIZE.1);
    for (class, path) in strokes.filter(|(_, path)| !path.is_empty()) {
        let _ = write!(out, r#"<path class="{class}" d="{path}"/>"#);
    }
    for word in &words.words {
        let anchor = if word.end { r#" text-anchor="end""# } else { "" };
        let (class, text) = (word.class(), &word.text);
        let _ = write!(out, r#"<text class="{class}" x="{:.1}" y="{:.1}"{anchor}>{text}</text>"#, word.x, word.y);
    }
    out + "</svg>"
}

/// The costs, in the theme's colors.
fn costs(answer: &Evaluation, view: &View) -> String {
    let mut out = markup(SIZE, &picture(answer, view, None), &ink()).unwrap();
    for (place, name) in COLORS.iter().enumerate() {
        out = out.replace(&stand_in(place).to_uppercase(), &format!("var({name})"));
    }
    PLAIN.iter().fold(out, |out, plain| out.replace(plain, ""))
}

fn drawn() -> String {
    let answer = evaluate(&demo_jobs().remove(0));
    let (system, basis, lettering) = (UnitSystem::Us, Basis::Installed, Lettering::USUAL);
    let end = scale_end(&Facts::of(&answer), basis, system);
    let view = View { layout: Layout::of(SIZE.0, SIZE.1, lettering), end, lettering, system, basis, money: true };
    costs(&answer, &view) + &section(&answer, &view)
}

/// The words and the picture in one language.
fn told(language: Language, first: &First) -> String {
    speak(language, Decimals::Point);
    let First { lead, coming, example, as_it_was, failed, again } = first;
    let (app, line, tag) = (words().frame.app, words().frame.app_line, language.tag());
    let picture = drawn();
    format!(
        r#"<div lang="{tag}"><header class="bar"><div class="name"><b>{app}</b><span class="note">{line}</span></div></header>
<main class="page"><p class="lead">{lead}</p>
<p class="note coming">{coming}</p>
<p class="last" hidden><b></b><span></span><small class="note">{as_it_was}</small></p>
<div class="failed" role="alert"><p>{failed}</p><p><button class="btn act">{again}</button></p></div>
<figure><div class="drawn" aria-hidden="true">{picture}</div><figcaption class="note">{example}</figcaption></figure></main></div>
"#
    )
}

/// Written anew where `WELLWRIGHT_WRITE` is set.
#[test]
fn the_first_page_is_what_the_program_draws_and_says() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/first/page.html");
    let both = [(Language::English, first::ENGLISH), (Language::Spanish, first::SPANISH)];
    let now: String = both.iter().map(|(language, words)| told(*language, words)).collect();
    speak(Language::English, Decimals::Point);
    if std::env::var_os("WELLWRIGHT_WRITE").is_some() {
        std::fs::write(path, &now).unwrap();
    }
    let kept = std::fs::read_to_string(path).unwrap_or_default();
    assert!(kept == now, "{path} is out of date: run this test with WELLWRIGHT_WRITE=1, and look at the page");
}
