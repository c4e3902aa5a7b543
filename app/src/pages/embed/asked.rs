//! What the page around asks for, in the words of an address or of a message.

use crate::locale::Language;
use crate::state::Theme;
use wellwright_core::evaluate::{Basis, Sense};
use wellwright_core::job::Job;
use wellwright_core::numeric::order::by_number;
use wellwright_core::passing::preset::{self, PresetError};
use wellwright_core::quantity::UnitSystem;

/// How the page looks and speaks.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Look {
    /// Units.
    pub units: UnitSystem,
    /// Language; the browser's where none is asked for.
    pub language: Option<Language>,
    /// Theme.
    pub theme: Theme,
    /// What is counted in.
    pub basis: Basis,
    /// What depth means.
    pub sense: Sense,
    /// Whether money is hidden.
    pub money_hidden: bool,
}

/// What a visitor may change.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Change {
    /// The depth, on the rod.
    Depth,
    /// Power of the motor.
    Motor,
    /// Price of the metal.
    Price,
    /// Units.
    Units,
    /// What is counted in.
    Count,
    /// What depth means.
    Sense,
}

impl Change {
    const NAMED: [(&str, Self); 6] = [
        ("depth", Self::Depth),
        ("motor", Self::Motor),
        ("price", Self::Price),
        ("units", Self::Units),
        ("count", Self::Count),
        ("sense", Self::Sense),
    ];
}

/// A word that could not be taken.
#[derive(Debug, Clone, PartialEq)]
pub struct Refused {
    /// The word, its first letters.
    pub word: String,
    /// What it said, its first letters.
    pub value: String,
    /// Why.
    pub why: Why,
}

/// Why a word could not be taken.
#[derive(Debug, Clone, PartialEq)]
pub enum Why {
    /// Not one of those that the word knows.
    Choice,
    /// As a job's own places say.
    Preset(PresetError),
}

impl Why {
    /// A short stable code.
    #[must_use]
    pub fn code(&self) -> &'static str {
        match self {
            Self::Choice => "other_choice",
            Self::Preset(error) => error.code(),
        }
    }
}

/// Everything that is asked for.
#[derive(Debug, Clone, PartialEq)]
pub struct Asked {
    /// The job.
    pub job: Job,
    /// How it looks.
    pub look: Look,
    /// What may be changed.
    pub change: Vec<Change>,
    /// Origins that may talk with the page.
    pub hosts: Vec<String>,
    /// What could not be taken.
    pub refused: Vec<Refused>,
}

impl Default for Asked {
    fn default() -> Self {
        Self {
            job: Job::default(),
            look: Look::default(),
            change: vec![Change::Depth],
            hosts: Vec::new(),
            refused: Vec::new(),
        }
    }
}

/// The word that asks for this page.
pub const EMBED: &str = "embed";
/// Most words that are taken at once, and most letters of one that are repeated.
const MOST: usize = 100;
const REPEATED: usize = 40;

impl Asked {
    /// Everything that the words of an address ask for; `is_origin` knows an origin.
    #[must_use]
    pub fn of_address(words: &[(String, String)], is_origin: fn(&str) -> bool) -> Self {
        let mut asked = Self::default();
        let own = |word: &str| matches!(word, EMBED | "host" | "change");
        for (word, value) in words {
            match word.as_str() {
                "host" => {
                    let (known, others): (Vec<&str>, Vec<&str>) = parts(value).partition(|host| is_origin(host));
                    asked.hosts.extend(known.into_iter().map(str::to_owned));
                    others.into_iter().for_each(|host| asked.refuse(word, host, Why::Choice));
                }
                "change" => {
                    let named = |name: &str| Change::NAMED.iter().find(|(known, _)| *known == name);
                    asked.change = parts(value).filter_map(named).map(|(_, change)| *change).collect();
                    let others: Vec<&str> =
                        parts(value).filter(|name| *name != "nothing" && named(name).is_none()).collect();
                    others.into_iter().for_each(|name| asked.refuse(word, name, Why::Choice));
                }
                _ => {}
            }
        }
        let others: Vec<(String, String)> = words.iter().filter(|(word, _)| !own(word)).cloned().collect();
        asked.take(&others);
        asked
    }

    /// Takes words that change the job or its look, whatever their order: what others rest on comes first.
    pub fn take(&mut self, words: &[(String, String)]) {
        let rank = |word: &str| match word {
            "units" => 0.0,
            preset::WHOLE => 1.0,
            _ => 2.0,
        };
        let mut sorted: Vec<&(String, String)> = words.iter().take(MOST).collect();
        by_number(&mut sorted, |(word, _)| rank(word));
        for (word, value) in sorted {
            if let Err(why) = self.take_one(word, value.trim()) {
                self.refuse(word, value, why);
            }
        }
    }

    fn take_one(&mut self, word: &str, value: &str) -> Result<(), Why> {
        let look = &mut self.look;
        match word {
            "units" => look.units = one_of(value, &[("us", UnitSystem::Us), ("si", UnitSystem::Si)])?,
            "lang" => {
                let tags = Language::ALL.map(|language| (language.tag(), language));
                look.language = Some(one_of(value, &tags)?);
            }
            "theme" => {
                let themes =
                    [("system", Theme::System), ("light", Theme::Light), ("dark", Theme::Dark), ("sun", Theme::Sun)];
                look.theme = one_of(value, &themes)?;
            }
            "count" => {
                let all = [("cable", Basis::Cable), ("installed", Basis::Installed), ("lifetime", Basis::Lifetime)];
                look.basis = one_of(value, &all)?;
            }
            "sense" => {
                look.sense = one_of(value, &[("lead", Sense::LongerLead), ("water", Sense::DeeperWater)])?;
            }
            "prices" => look.money_hidden = one_of(value, &[("shown", false), ("hidden", true)])?,
            _ => self.job = preset::preset(&self.job, word, value, self.look.units).map_err(Why::Preset)?,
        }
        Ok(())
    }

    fn refuse(&mut self, word: &str, value: &str, why: Why) {
        let first = |text: &str| text.chars().take(REPEATED).collect();
        self.refused.push(Refused { word: first(word), value: first(value), why });
    }
}

fn parts(value: &str) -> impl Iterator<Item = &str> {
    value.split(',').map(str::trim).filter(|part| !part.is_empty())
}

fn one_of<T: Copy>(value: &str, all: &[(&str, T)]) -> Result<T, Why> {
    all.iter().find(|(name, _)| *name == value).map(|(_, found)| *found).ok_or(Why::Choice)
}

#[cfg(test)]
mod tests {
    use super::*;
    use wellwright_core::job::Field;
    use wellwright_core::quantity::{Entry, Unit};

    fn words(pairs: &[(&str, &str)]) -> Vec<(String, String)> {
        pairs.iter().map(|(word, value)| ((*word).to_owned(), (*value).to_owned())).collect()
    }

    fn asked(pairs: &[(&str, &str)]) -> Asked {
        Asked::of_address(&words(pairs), |text| text.starts_with("https://"))
    }

    #[test]
    fn an_address_says_all_of_it_in_any_order() {
        let asked = asked(&[
            ("embed", ""),
            ("depth", "200"),
            ("motor", "5hp"),
            ("change", "depth, motor"),
            ("lang", "es"),
            ("theme", "sun"),
            ("count", "cable"),
            ("sense", "water"),
            ("prices", "hidden"),
            ("host", "https://a.example,https://b.example"),
            ("units", "si"),
        ]);
        assert_eq!(asked.refused, []);
        assert_eq!(asked.job.get(Field::PumpSetting), Some(Entry::new(200.0, Unit::Meter)));
        assert_eq!(asked.change, [Change::Depth, Change::Motor]);
        assert_eq!(asked.hosts, ["https://a.example", "https://b.example"]);
        let look = asked.look;
        assert_eq!((look.language, look.theme, look.basis), (Some(Language::Spanish), Theme::Sun, Basis::Cable));
        assert_eq!((look.sense, look.money_hidden, look.units), (Sense::DeeperWater, true, UnitSystem::Si));
    }

    #[test]
    fn nothing_may_be_changed_where_that_is_asked_and_the_depth_where_nothing_is() {
        assert_eq!(asked(&[]).change, [Change::Depth]);
        assert_eq!(asked(&[("change", "nothing")]), Asked { change: Vec::new(), ..Asked::default() });
    }

    #[test]
    fn what_can_not_be_taken_is_named_and_changes_nothing() {
        let asked = asked(&[
            ("units", "furlongs"),
            ("host", "*"),
            ("host", "null"),
            ("change", "everything"),
            ("depth", "deep"),
            ("colour", "red"),
            ("job", &"x".repeat(500)),
        ]);
        let told: Vec<(&str, &str)> = asked.refused.iter().map(|one| (one.word.as_str(), one.why.code())).collect();
        let expected = [
            ("host", "other_choice"),
            ("host", "other_choice"),
            ("change", "other_choice"),
            ("units", "other_choice"),
            ("job", "no_job"),
            ("depth", "not_a_number"),
            ("colour", "unknown_word"),
        ];
        assert_eq!(told, expected);
        assert!(asked.refused.iter().all(|one| one.value.len() <= REPEATED));
        assert_eq!((asked.job, asked.hosts.len()), (Job::default(), 0));
    }

    #[test]
    fn a_message_names_no_host_and_changes_no_rights() {
        let mut asked = Asked::default();
        asked.take(&words(&[("host", "https://a.example"), ("change", "motor"), ("depth", "5ft")]));
        assert_eq!(asked.refused.len(), 2);
        assert_eq!((asked.hosts.len(), asked.change), (0, vec![Change::Depth]));
        assert!(asked.job.get(Field::PumpSetting).is_some());
    }
}
