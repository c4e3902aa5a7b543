//! Every source key in core stands in `core/SOURCES.md` with what was taken and how it was read, and none there is idle.

use super::none;
use super::tree::{File, rust};
use std::collections::{BTreeMap, BTreeSet};
use wellwright_tests::root;

/// True for the form of a key: lower-case words and numbers, joined by hyphens and dots.
fn is_key(text: &str) -> bool {
    text.contains('-')
        && text.starts_with(|c: char| c.is_ascii_lowercase())
        && text.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || matches!(c, '-' | '.'))
}

/// Keys in brackets in comments, the words that a `source` function gives, and every key that the papers name.
fn used(file: &File) -> BTreeSet<String> {
    let comments = file.text.lines().filter_map(|line| line.split_once("//").map(|(_, comment)| comment));
    let bracketed = comments.flat_map(|comment| comment.split('[').skip(1).filter_map(|rest| rest.split(']').next()));
    let mut keys: BTreeSet<String> = bracketed.filter(|key| is_key(key)).map(str::to_owned).collect();
    if let Some((_, body)) = file.text.split_once("pub fn source(&self) -> &'static str {") {
        let body = body.split("\n    }").next().unwrap_or("");
        keys.extend(body.split('"').skip(1).step_by(2).map(str::to_owned));
    }
    if file.path.starts_with("core/src/papers/") {
        keys.extend(file.text.split('"').skip(1).step_by(2).filter(|word| is_key(word)).map(str::to_owned));
    }
    keys
}

/// The entries of the list: key, and the text below it.
fn listed(text: &str) -> BTreeMap<String, String> {
    let sections = text.split("\n## ").skip(1).filter_map(|section| section.split_once('\n'));
    sections.map(|(key, text)| (key.trim().to_owned(), text.to_owned())).collect()
}

fn problems(files: &[File], list: &str) -> Vec<String> {
    let used: BTreeSet<String> = files.iter().flat_map(used).collect();
    let listed = listed(list);
    let unlisted = used.iter().filter(|key| !listed.contains_key(*key)).map(|key| format!("{key} is not listed"));
    let idle = listed.keys().filter(|key| !used.contains(*key)).map(|key| format!("{key} is listed and not used"));
    let short = listed.iter().flat_map(|(key, text)| {
        let lacks = |word: &&str| !text.lines().any(|line| line.strip_prefix(word).is_some_and(|rest| rest.len() > 8));
        ["Title: ", "Taken: ", "Read: "].into_iter().filter(lacks).map(move |word| format!("{key} lacks {word:?}"))
    });
    unlisted.chain(idle).chain(short).collect()
}

#[test]
fn every_source_is_listed_and_none_is_idle() {
    let list = std::fs::read_to_string(root().join("core/SOURCES.md")).unwrap();
    assert!(listed(&list).len() >= 20, "the list is not read");
    none(problems(&rust("core/src"), &list));
}

#[test]
fn a_source_without_a_list_and_a_list_without_a_source_are_found() {
    let entry =
        |key: &str| format!("# Sources\n\n## {key}\nTitle: a long title.\nTaken: a long table.\nRead: from memory.\n");
    let file = |text: &str| [File::new("core/src/cable/a.rs", text)];
    assert!(problems(&file("/// [nec-2023-310.16], [`code`], [Item], [a]\n"), &entry("nec-2023-310.16")).is_empty());
    assert_eq!(problems(&file("/// [nec-2023-310.16]\n"), "").len(), 1);
    assert_eq!(problems(&file(""), &entry("nec-2023-310.16")).len(), 1);
    assert_eq!(problems(&file("/// [a-1]\n"), "\n## a-1\nTitle: a long title.\nTaken: a long table.\n").len(), 1);
    let papers = [File::new("core/src/papers/a.rs", "done(result, &[\"a-1\", \"practice\"])\n")];
    assert_eq!(problems(&papers, ""), ["a-1 is not listed"]);
    let given = "pub fn source(&self) -> &'static str {\n        match self {\n            _ => \"practice\",\n        }\n    }\n";
    assert_eq!(problems(&file(given), ""), ["practice is not listed"]);
}
