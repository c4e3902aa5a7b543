//! A job told in a few words, as in the query of an address: `motor=5hp&depth=620ft&price=4.5`.
//!
//! A word is a short name or a place of the job file; a figure is a number and, if it is another than the screen's, its
//! unit as in a job file. What a word says is read as a job file is, so nothing gets in here that could not stand there.

use super::link::{self, LinkError};
use crate::job::wire::{self, WireError};
use crate::job::{Field, Job};
use crate::quantity::{Entry, Unit, UnitSystem};
use serde_json::{Value, json};

/// Short names of places.
pub const SHORT: [(&str, &str); 7] = [
    ("depth", "site.pump_setting"),
    ("motor", "motor.power"),
    ("price", "prices.cable_metal"),
    ("drop", "cable.allowed_drop"),
    ("metal", "cable.metal"),
    ("way240", "prices.way_240"),
    ("way480", "prices.way_480"),
];
/// The word that stands for a whole job: the letters of a link.
pub const WHOLE: &str = "job";
/// Most letters of a value; a whole job is as long as its link may be.
pub const MOST: usize = 100;

/// Why a word tells nothing. The value is repeated by its first letters only.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum PresetError {
    /// No word that is known.
    Unknown,
    /// Longer than any value.
    TooLong,
    /// A figure that does not begin with a number.
    NotANumber,
    /// Its unit does not measure this.
    OtherUnit {
        /// Units that do.
        accepted: Vec<Unit>,
    },
    /// The letters of a whole job hold none.
    Link(LinkError),
    /// What the place can't hold.
    Place(WireError),
}

impl PresetError {
    /// A short stable code.
    #[must_use]
    pub fn code(&self) -> &'static str {
        match self {
            Self::Unknown => "unknown_word",
            Self::TooLong => "too_long",
            Self::NotANumber => "not_a_number",
            Self::OtherUnit { .. } => "other_unit",
            Self::Link(_) => "no_job",
            Self::Place(error) => error.code(),
        }
    }
}

/// The job after one word: its name, and what it says; an empty value empties the place.
///
/// # Errors
/// See [`PresetError`]; a figure out of its range is read, and refused by the evaluation, which names the range.
pub fn preset(job: &Job, word: &str, value: &str, system: UnitSystem) -> Result<Job, PresetError> {
    let value = value.trim();
    if word == WHOLE {
        return link::read(value).map_err(PresetError::Link);
    }
    if value.len() > MOST {
        return Err(PresetError::TooLong);
    }
    let path = SHORT.iter().find(|(short, _)| *short == word).map_or(word, |(_, path)| path);
    let told = match Field::at(path) {
        _ if value.is_empty() => Value::Null,
        Some(field) => json!(figure(field, value, system)?),
        None if SHORT.iter().any(|(_, known)| *known == path) => json!(value),
        None => return Err(PresetError::Unknown),
    };
    let mut file = wire::write(job);
    let place = file.pointer_mut(&format!("/{}", path.replace('.', "/"))).ok_or(PresetError::Unknown)?;
    *place = told;
    wire::read(&file).map_err(PresetError::Place)
}

/// A number with its unit; without one in that of the screen.
fn figure(field: Field, text: &str, system: UnitSystem) -> Result<Entry, PresetError> {
    let kind = field.kind();
    let end = text.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | '-' | '+'))).unwrap_or(text.len());
    let (number, name) = text.split_at(end);
    let value: f64 = number.parse().map_err(|_| PresetError::NotANumber)?;
    if name.trim().is_empty() {
        return Ok(Entry::new(value, system.unit(kind)));
    }
    let accepted: Vec<Unit> = Unit::ALL.into_iter().filter(|unit| unit.kind() == kind).collect();
    let unit = accepted.iter().find(|unit| json!(unit) == json!(name.trim()));
    match unit {
        Some(unit) => Ok(Entry::new(value, *unit)),
        None => Err(PresetError::OtherUnit { accepted }),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::{Choices, WayKey};
    use crate::power::family::Kind;
    use crate::standards::conductor::Metal;

    fn told(words: &[(&str, &str)], system: UnitSystem) -> Result<Job, PresetError> {
        words.iter().try_fold(Job::default(), |job, (word, value)| preset(&job, word, value, system))
    }

    #[test]
    fn words_fill_the_places_they_name() {
        let job = told(
            &[
                ("motor", "5hp"),
                ("depth", " 620 ft "),
                ("price", "4.5$/lb"),
                ("metal", "aluminum"),
                ("way480", "doubling"),
                ("site.static_level", "120 m"),
            ],
            UnitSystem::Us,
        )
        .unwrap();
        assert_eq!(job.get(Field::MotorPower), Some(Entry::new(5.0, Unit::Horsepower)));
        assert_eq!(job.get(Field::PumpSetting), Some(Entry::new(620.0, Unit::Foot)));
        assert_eq!(job.get(Field::CableMetal), Some(Entry::new(4.5, Unit::DollarPerPound)));
        assert_eq!(job.get(Field::StaticLevel), Some(Entry::new(120.0, Unit::Meter)));
        assert_eq!(job.choices.metal, Some(Metal::Aluminum));
        assert_eq!(job.pair, [None, Some(WayKey::Generic(Kind::Doubling))]);
        let empty = preset(&job, "depth", "", UnitSystem::Us).unwrap();
        assert_eq!((empty.get(Field::PumpSetting), empty.choices), (None, job.choices));
    }

    #[test]
    fn a_figure_without_a_unit_is_in_the_unit_of_the_screen() {
        let depth = |system| told(&[("depth", "200")], system).unwrap().get(Field::PumpSetting);
        assert_eq!(depth(UnitSystem::Us), Some(Entry::new(200.0, Unit::Foot)));
        assert_eq!(depth(UnitSystem::Si), Some(Entry::new(200.0, Unit::Meter)));
    }

    #[test]
    fn a_whole_job_comes_first_and_words_change_it() {
        let mut whole = Job::named("Ford");
        whole.choices = Choices { metal: Some(Metal::Aluminum), ..Choices::default() };
        let job = told(&[(WHOLE, &link::write(&whole)), ("depth", "300ft")], UnitSystem::Us).unwrap();
        assert_eq!((job.name.as_str(), job.choices.metal), ("Ford", Some(Metal::Aluminum)));
        assert_eq!(job.get(Field::PumpSetting), Some(Entry::new(300.0, Unit::Foot)));
    }

    #[test]
    fn what_tells_nothing_says_why() {
        let code = |word: &str, value: &str| told(&[(word, value)], UnitSystem::Us).map_err(|error| error.code());
        for word in ["", "site", "name", "record", "schema", "site.pump_setting.value", "../depth", "depth "] {
            assert_eq!(code(word, "5"), Err("unknown_word"), "{word}");
        }
        assert_eq!(code("depth", "deep"), Err("not_a_number"));
        assert_eq!(code("depth", "1-2"), Err("not_a_number"));
        assert_eq!(code("depth", "NaN"), Err("not_a_number"));
        assert_eq!(code("depth", "-inf"), Err("not_a_number"));
        assert_eq!(code("depth", "620 hp"), Err("other_unit"));
        assert_eq!(code("depth", "620 FT"), Err("other_unit"));
        assert_eq!(code("metal", "gold"), Err("bad_field"));
        assert_eq!(code("way240", "own"), Err("bad_field"));
        assert_eq!(code("depth", &"9".repeat(MOST + 1)), Err("too_long"));
        assert_eq!(code(WHOLE, "1.x"), Err("no_job"));
    }

    // Every place that a short name stands for is a place of the file.
    #[test]
    fn short_names_stand_for_places() {
        for (short, path) in SHORT {
            let file = wire::write(&Job::default());
            assert!(file.pointer(&format!("/{}", path.replace('.', "/"))).is_some(), "{short}");
        }
    }
}
