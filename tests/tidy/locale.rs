//! The words of both languages, side by side: none left untranslated, none empty, no gap lost.

use super::literals::{Literal, Source, gaps, gaps_as, past, source};
use super::none;
use super::tree::{File, rust};
use std::collections::BTreeMap;

const LANGUAGES: [&str; 2] = ["ENGLISH", "SPANISH"];

/// Phrases that read the same in both languages.
const SAME: &[&str] = &[
    // The program's own name.
    "Wellwright",
    // One word in both, as the trade says it.
    "Cable",
    "Auto",
    "Metal",
    "{value}, provisional",
    "Control",
    "Motor",
    // Formulas by their authors.
    "Darcy-Weisbach",
    "Hazen-Williams",
    // Each language by its own name, for those who speak it.
    "English",
    "Español",
];

/// Where the constant of a language begins and ends in a mask, its braces included.
fn span(mask: &str, language: &str) -> Option<(usize, usize)> {
    let head = mask.find(&format!("pub const {language}: "))?;
    let open = head + mask[head..].find('{')?;
    Some((open, past(mask.as_bytes(), open)))
}

/// The literals of each phrase of a constant, by the phrase's name.
fn phrases(source: &Source, (open, close): (usize, usize)) -> BTreeMap<String, Vec<&Literal>> {
    let mut found = BTreeMap::new();
    let mut from = open + 1;
    let (mut depth, mut in_arguments) = (0_usize, false);
    for at in open + 1..close - 1 {
        match source.mask.as_bytes()[at] {
            b'(' | b'[' | b'{' => depth += 1,
            b')' | b']' | b'}' => depth -= 1,
            b'|' if depth == 0 => in_arguments = !in_arguments,
            b',' if depth == 0 && !in_arguments => {
                let name = source.mask[from..at].split(':').next().unwrap_or_default().trim().to_owned();
                let inside = source.literals.iter().filter(|literal| (from..at).contains(&literal.from));
                found.insert(name, inside.collect());
                from = at + 1;
            }
            _ => {}
        }
    }
    found
}

/// Whether a text holds a word: three letters together, outside its gaps.
fn has_a_word(text: &str) -> bool {
    gaps_as(" ", text).split(|c: char| !c.is_alphabetic()).any(|word| word.chars().count() >= 3)
}

/// What is wrong with a pair of phrases.
fn wrong(english: &str, spanish: &str) -> Option<&'static str> {
    if english.trim().is_empty() != spanish.trim().is_empty() {
        Some("one is empty")
    } else if gaps(english) != gaps(spanish) {
        Some("the gaps differ")
    } else if english == spanish && has_a_word(english) && !SAME.contains(&english) {
        Some("both are the same")
    } else {
        None
    }
}

fn problems(file: &File) -> Vec<String> {
    let path = &file.path;
    let source = source(&file.text);
    let [Some(english), Some(spanish)] = LANGUAGES.map(|language| span(&source.mask, language)) else {
        return vec![format!("{path}: one of {LANGUAGES:?} is not there")];
    };
    let mut found = Vec::new();
    let translated = phrases(&source, spanish);
    for (name, here) in phrases(&source, english) {
        let there = translated.get(&name).map_or(&[][..], Vec::as_slice);
        if here.len() != there.len() {
            found.push(format!("{path}: {name}: {} texts in one, {} in the other", here.len(), there.len()));
        }
        for (a, b) in here.iter().zip(there) {
            let lines = format!("{path}:{} and {}", a.line, b.line);
            found.extend(wrong(&a.text, &b.text).map(|what| format!("{lines}: {name}: {what}: {:?}", b.text)));
        }
    }
    let outside = |at: usize| ![english, spanish].iter().any(|(open, close)| (*open..*close).contains(&at));
    let shared = source.literals.iter().filter(|literal| outside(literal.from) && has_a_word(&literal.text));
    let shared = shared.filter(|literal| !SAME.contains(&literal.text.as_str()));
    found.extend(shared.map(|literal| format!("{path}:{}: for both languages: {:?}", literal.line, literal.text)));
    found
}

fn words() -> Vec<File> {
    let is_list = |file: &File| file.path != "app/src/locale/words/mod.rs";
    rust("app/src/locale/words").into_iter().filter(is_list).collect()
}

#[test]
fn every_phrase_is_translated() {
    let names = |file: &File| {
        let source = source(&file.text);
        span(&source.mask, LANGUAGES[1]).map_or(0, |span| phrases(&source, span).len())
    };
    let count: usize = words().iter().map(names).sum();
    assert!(count >= 200, "only {count} phrases are found");
    none(words().iter().flat_map(problems).collect());
}

#[test]
fn no_phrase_is_listed_in_vain() {
    let all: Vec<Source> = words().iter().map(|file| source(&file.text)).collect();
    let stands = |text: &str| all.iter().flat_map(|source| &source.literals).any(|literal| literal.text == text);
    none(SAME.iter().filter(|text| !stands(text)).map(|text| format!("{text} is listed and not used")).collect());
}

#[test]
fn a_phrase_that_is_not_translated_is_found() {
    let file = |english: &str, spanish: &str| {
        let text = format!(
            "pub struct A {{\n    b: Text,\n}}\npub const ENGLISH: A = A {{\n    {english},\n}};\n\
             pub const SPANISH: A = A {{\n    {spanish},\n}};\nfn volts() -> Text {{\n    \"240 V\"\n}}\n"
        );
        problems(&File::new("app/src/locale/words/a.rs", &text))
    };
    for (english, spanish) in [
        ("b: \"Depth\"", "b: \"Profundidad\""),
        ("b: |a, b| format!(\"{a} of {b:.1}\")", "b: |a, b| format!(\"{b}, {a}\")"),
        ("b: |c| match c {\n C::D => \"depth\",\n _ => \"\",\n}", "b: |c| match c { C::D => \"hondo\", _ => \"\" }"),
        ("volts", "volts"),
        ("b: \"SI\"", "b: \"SI\""),
        ("b: \"Cable\", c: [\"One\", \"Two\"]", "c: [\"Uno\", \"Dos\"], b: \"Cable\""),
    ] {
        assert_eq!(file(english, spanish), Vec::<String>::new(), "{english}");
    }
    for (english, spanish) in [
        ("b: \"Depth\"", "b: \"Depth\""),
        ("b: \"Depth\"", "b: \"\""),
        ("b: |a, b| format!(\"{a} of {b}\")", "b: |a, b| format!(\"{a}\")"),
        ("b: |a, b| format!(\"{a} of {b}\")", "b: |a, b| format!(\"{a} de {a}\")"),
        ("b: |a| format!(\"at {}\", a)", "b: |_| format!(\"a\")"),
        ("b: |c| match c { 1 => \"one\", _ => \"two\" }", "b: |c| \"uno\""),
        ("b: [\"One\", \"Two\"]", "b: [\"Uno\", \"Two\"]"),
        ("b: \"A\"", "b: \"B\",\n};\nfn c() {\n    \"depth\""),
    ] {
        assert_eq!(file(english, spanish).len(), 1, "{spanish}");
    }
    assert_eq!(problems(&File::new("a.rs", "pub const ENGLISH: A = A { b: \"C\", };\n")).len(), 1);
}
