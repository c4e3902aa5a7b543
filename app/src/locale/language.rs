//! The language of the page and the way its numbers are written. One of each is in force; the page is drawn anew when
//! they change.

use super::words::{ENGLISH, SPANISH, Words};
use serde::{Deserialize, Serialize};
use std::cell::Cell;

/// A language that the page speaks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Language {
    /// US English.
    #[default]
    #[serde(rename = "en")]
    English,
    /// Spanish as the trade speaks it in the western US and in Mexico.
    #[serde(rename = "es")]
    Spanish,
}

impl Language {
    /// Every language.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// The language's tag, as in the page's `lang`.
    #[must_use]
    pub fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }

    /// The first language of a browser's list that the page speaks, else English. Tags are as `es-MX`.
    #[must_use]
    pub fn first_of<'a>(mut tags: impl Iterator<Item = &'a str>) -> Self {
        let known = |tag: &str| {
            let main = tag.split(['-', '_']).next().unwrap_or_default().to_ascii_lowercase();
            Self::ALL.into_iter().find(|language| language.tag() == main)
        };
        tags.find_map(known).unwrap_or_default()
    }

    fn words(self) -> &'static Words {
        match self {
            Self::English => &ENGLISH,
            Self::Spanish => &SPANISH,
        }
    }
}

/// The sign before decimals; the other of the two marks off thousands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Decimals {
    /// `1,234.5`, as in the US, Mexico and Central America.
    #[default]
    Point,
    /// `1.234,5`, as in Spain and most of South America.
    Comma,
}

impl Decimals {
    /// The sign before decimals.
    #[must_use]
    pub fn sign(self) -> char {
        match self {
            Self::Point => '.',
            Self::Comma => ',',
        }
    }

    /// The sign between thousands.
    #[must_use]
    pub fn thousands(self) -> char {
        match self {
            Self::Point => ',',
            Self::Comma => '.',
        }
    }
}

thread_local! {
    static IN_FORCE: Cell<(Language, Decimals)> = const { Cell::new((Language::English, Decimals::Point)) };
}

/// Puts a language and a way to write numbers in force.
pub fn speak(language: Language, decimals: Decimals) {
    IN_FORCE.set((language, decimals));
}

/// The words in force.
pub fn words() -> &'static Words {
    IN_FORCE.get().0.words()
}

/// The way to write numbers that is in force.
#[must_use]
pub fn decimals() -> Decimals {
    IN_FORCE.get().1
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_language_that_the_page_speaks_wins() {
        let first = |tags: &[&str]| Language::first_of(tags.iter().copied());
        assert_eq!(first(&["es-MX", "en-US"]), Language::Spanish);
        assert_eq!(first(&["fr-CA", "ES"]), Language::Spanish);
        assert_eq!(first(&["en-GB", "es"]), Language::English);
        assert_eq!(first(&["de"]), Language::English);
        assert_eq!(first(&[]), Language::English);
        assert_eq!(first(&["est-EE", ""]), Language::English);
    }
}
