//! The rules of the house, checked over the source tree. Each rule is a function from text to problems, and each is
//! shown beside it to fail on a made-up snippet.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "tidy/colors.rs"]
mod colors;
#[path = "tidy/crates.rs"]
mod crates;
#[path = "tidy/formulas.rs"]
mod formulas;
#[path = "tidy/imports.rs"]
mod imports;
#[path = "tidy/index.rs"]
mod index;
#[path = "tidy/literals.rs"]
mod literals;
#[path = "tidy/locale.rs"]
mod locale;
#[path = "tidy/panics.rs"]
mod panics;
#[path = "tidy/parts.rs"]
mod parts;
#[path = "tidy/planted.rs"]
mod planted;
#[path = "tidy/sizes.rs"]
mod sizes;
#[path = "tidy/sources.rs"]
mod sources;
#[path = "tidy/style.rs"]
mod style;
#[path = "tidy/top.rs"]
mod top;
#[path = "tidy/tree.rs"]
mod tree;
#[path = "tidy/unused.rs"]
mod unused;
#[path = "tidy/words.rs"]
mod words;

/// Fails with every problem on a line of its own.
fn none(problems: Vec<String>) {
    assert!(problems.is_empty(), "{} problems:\n{}", problems.len(), problems.join("\n"));
}
