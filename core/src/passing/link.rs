//! A job as the letters of a link: its file, without what is empty, compressed, with what tells a cut or altered one.
//!
//! The letters are `1.` and, in the alphabet of base64 for addresses (RFC 4648), four bytes that count the packed bytes,
//! four of CRC-32 over those (as in RFC 1952), then the packed bytes: the file, deflated (RFC 1951). The number ahead is the version of this form; the version of the job is
//! inside, as in any job file. In a QR code, which packs digits closer than letters, `1d.` and the same bytes as digits.

use super::digits;
use super::sum::sum;
use crate::job::Job;
use crate::job::wire::{self, WireError};
use base64::Engine as _;
use base64::engine::general_purpose::URL_SAFE_NO_PAD as ALPHABET;
use core::fmt;
use miniz_oxide::deflate::compress_to_vec;
use miniz_oxide::inflate::{TINFLStatus, decompress_to_vec_with_limit};
use serde_json::{Map, Value};

/// The version of the form that this build writes, in letters and in digits.
const VERSION: &str = "1";
const DIGITS: &str = "1d";
/// Most letters of a link that is read; a job with its own prices takes some thousand.
pub const MOST_LETTERS: usize = 400_000;
/// Most bytes of the file inside, as of any job file.
const MOST_BYTES: usize = 1_000_000;
/// The hardest that the compressor tries.
const LEVEL: u8 = 10;
/// Bytes of the count, and of the sum behind it.
const WORD: usize = 4;

/// Why a link holds no job.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum LinkError {
    /// Not the letters of a job at all.
    NoJob,
    /// Written by a newer build.
    Newer {
        /// The version that it says.
        version: u32,
    },
    /// The end is missing.
    Cut,
    /// Some letters are not those that were written.
    Altered,
    /// Larger than any job.
    TooLarge,
    /// The letters are whole, and the job inside can't be read.
    Job(WireError),
}

impl fmt::Display for LinkError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoJob => write!(f, "no job"),
            Self::Newer { version } => write!(f, "version {version} is newer than {VERSION}"),
            Self::Cut => write!(f, "cut short"),
            Self::Altered => write!(f, "altered"),
            Self::TooLarge => write!(f, "too large"),
            Self::Job(error) => write!(f, "{error}"),
        }
    }
}

impl std::error::Error for LinkError {}

/// The letters of a link that carries a job.
#[must_use]
pub fn write(job: &Job) -> String {
    let text = without_empty(wire::write(job)).to_string();
    format!("{VERSION}.{}", ALPHABET.encode(sealed(compress_to_vec(text.as_bytes(), LEVEL))))
}

/// Packed bytes behind their count and their sum.
fn sealed(packed: Vec<u8>) -> Vec<u8> {
    let count = u32::try_from(packed.len()).unwrap_or(u32::MAX);
    let mut bytes = count.to_be_bytes().to_vec();
    bytes.extend(sum(&packed).to_be_bytes());
    bytes.extend(packed);
    bytes
}

/// The same link in digits, for a code; nothing where it is none.
#[must_use]
pub fn as_digits(letters: &str) -> Option<String> {
    Some(format!("{DIGITS}.{}", digits::write(&bytes_of(letters).ok()?)))
}

/// Reads the job that a link carries, in letters or in digits.
///
/// # Errors
/// Says whether the letters are cut, altered, too many, newer, or no job at all; see [`LinkError`].
pub fn read(letters: &str) -> Result<Job, LinkError> {
    let letters = letters.trim();
    if letters.len() > MOST_LETTERS {
        return Err(LinkError::TooLarge);
    }
    let packed = bytes_of(letters)?;
    let Some((head, packed)) = packed.split_at_checked(2 * WORD) else { return Err(LinkError::Cut) };
    let number = |bytes: &[u8]| bytes.iter().fold(0_u32, |sum, byte| sum << 8 | u32::from(*byte));
    let (count, told) = head.split_at(WORD);
    match u32::try_from(packed.len()) {
        Ok(length) if length < number(count) => return Err(LinkError::Cut),
        Ok(length) if length == number(count) && sum(packed) == number(told) => {}
        _ => return Err(LinkError::Altered),
    }
    let bytes = decompress_to_vec_with_limit(packed, MOST_BYTES).map_err(|error| match error.status {
        TINFLStatus::HasMoreOutput => LinkError::TooLarge,
        _ => LinkError::Altered,
    })?;
    let text = String::from_utf8(bytes).map_err(|_| LinkError::Altered)?;
    wire::read_text(&text).map_err(LinkError::Job)
}

/// The bytes behind the version.
fn bytes_of(letters: &str) -> Result<Vec<u8>, LinkError> {
    let (version, rest) = letters.split_once('.').ok_or(LinkError::NoJob)?;
    if version == DIGITS {
        return digits::read(rest).ok_or(LinkError::Altered);
    }
    if version != VERSION {
        let newer = version.trim_end_matches('d').parse::<u32>().ok().filter(|version| *version > 1);
        return Err(newer.map_or(LinkError::NoJob, |version| LinkError::Newer { version }));
    }
    // What no letter of the alphabet follows may be a cut end, or a sign that was put there on the way.
    ALPHABET.decode(rest).map_err(|error| match error {
        base64::DecodeError::InvalidByte(..) => LinkError::Altered,
        _ => LinkError::Cut,
    })
}

/// A file without its empty places, which read as nothing anyway. What was done and measured stays as it is.
fn without_empty(file: Value) -> Value {
    let Value::Object(members) = file else { return file };
    let told = members.into_iter().filter_map(|(name, member)| {
        let member = match member {
            Value::Object(group) if name != "record" => Value::Object(full(group)),
            member => member,
        };
        (!is_empty(&member) && member != Value::Bool(false)).then_some((name, member))
    });
    Value::Object(told.collect())
}

fn full(group: Map<String, Value>) -> Map<String, Value> {
    group.into_iter().filter(|(_, member)| !is_empty(member)).collect()
}

fn is_empty(value: &Value) -> bool {
    match value {
        Value::Null => true,
        Value::String(text) => text.is_empty(),
        Value::Object(members) => members.is_empty(),
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::Field;
    use crate::quantity::{Entry, Unit};

    fn job() -> Job {
        let mut job = Job::named("Pozo Ñandú, «7»");
        job.set(Field::PumpSetting, Some(Entry::new(620.0, Unit::Foot)));
        job.set(Field::MotorPower, Some(Entry::new(0.1 + 0.2, Unit::Kilowatt)));
        job
    }

    #[test]
    fn a_job_reads_back_as_written() {
        let letters = write(&job());
        assert_eq!(read(&letters), Ok(job()));
        assert_eq!(read(&format!("\n {letters} ")), Ok(job()));
        assert!(letters.bytes().all(|byte| byte.is_ascii_alphanumeric() || b"-_.".contains(&byte)));
        assert!(letters.len() < 260, "{}", letters.len());
        assert_eq!(read(&write(&Job::default())), Ok(Job::default()));
        let digits = as_digits(&letters).unwrap();
        assert_eq!(read(&digits), Ok(job()));
        // A digit takes 10/3 bits in a code, a letter 8.
        assert!((digits.len() as f64) * 10.0 / 3.0 < 0.8 * (letters.len() as f64) * 8.0);
        assert_eq!(as_digits("hello"), None);
    }

    #[test]
    fn digits_that_are_cut_or_altered_give_no_job() {
        let digits = as_digits(&write(&job())).unwrap();
        for end in 3..digits.len() {
            assert!(read(&digits[..end]).is_err(), "{end}");
        }
        for at in 3..digits.len() {
            for other in ["0", "9", "x"] {
                let altered = format!("{}{other}{}", &digits[..at], &digits[at + 1..]);
                assert!(altered == digits || read(&altered).is_err(), "{altered}");
            }
        }
    }

    #[test]
    fn a_cut_one_is_told_at_every_length() {
        let letters = write(&job());
        for end in 2..letters.len() {
            assert_eq!(read(&letters[..end]), Err(LinkError::Cut), "{end}");
        }
        assert_eq!(read("1"), Err(LinkError::NoJob));
        assert_eq!(read(""), Err(LinkError::NoJob));
    }

    #[test]
    fn an_altered_one_is_told_at_every_letter() {
        let letters = write(&job());
        for at in 2..letters.len() {
            for other in ["A", "z", "!", "é"] {
                if !letters[at..].starts_with(other) {
                    let altered = format!("{}{other}{}", &letters[..at], &letters[at + 1..]);
                    assert!(read(&altered).is_err(), "{altered}");
                }
            }
        }
        assert_eq!(read(&format!("{letters}AAAA")), Err(LinkError::Altered));
    }

    #[test]
    fn a_sign_that_no_link_has_is_not_taken_for_a_cut() {
        let letters = write(&job());
        for sign in ["!", " ", "%"] {
            assert_eq!(
                read(&format!("{}{sign}{}", &letters[..9], &letters[10..])),
                Err(LinkError::Altered),
                "{sign:?}"
            );
        }
    }

    #[test]
    fn only_what_is_told_is_carried() {
        let bytes = bytes_of(&write(&job())).unwrap();
        let text = String::from_utf8(decompress_to_vec_with_limit(&bytes[2 * WORD..], MOST_BYTES).unwrap()).unwrap();
        let carried: Value = serde_json::from_str(&text).unwrap();
        let groups: Vec<&str> = carried.as_object().unwrap().keys().map(String::as_str).collect();
        assert_eq!(groups, ["motor", "name", "schema", "site"]);
        assert_eq!(carried["site"].as_object().unwrap().keys().collect::<Vec<_>>(), ["pump_setting"]);
        assert_eq!(carried["motor"].as_object().unwrap().keys().collect::<Vec<_>>(), ["power"]);
    }

    #[test]
    fn each_trouble_says_what_it_is() {
        let newer = LinkError::Newer { version: 2 };
        let told = [LinkError::NoJob, newer, LinkError::Cut, LinkError::Altered, LinkError::TooLarge];
        let words = ["no job", "version 2 is newer than 1", "cut short", "altered", "too large"];
        assert_eq!(told.map(|error| error.to_string()), words);
    }

    #[test]
    fn a_newer_one_is_left_alone() {
        assert_eq!(read("2.AAAA"), Err(LinkError::Newer { version: 2 }));
        for odd in ["0.AAAA", "x.AAAA", "-1.AAAA", "1AAAA", "."] {
            assert_eq!(read(odd), Err(LinkError::NoJob), "{odd}");
        }
        let letters = format!("1.{}", ALPHABET.encode(sealed(compress_to_vec(br#"{"schema":9}"#, LEVEL))));
        assert_eq!(read(&letters), Err(LinkError::Job(WireError::Newer { schema: 9 })));
    }

    #[test]
    fn one_that_would_fill_the_memory_is_refused() {
        let long = "A".repeat(MOST_LETTERS);
        assert_eq!(read(&format!("1.{long}")), Err(LinkError::TooLarge));
        // Megabytes of blanks in some kilobytes.
        let bytes = sealed(compress_to_vec(&vec![b' '; 2_000_000], LEVEL));
        assert_eq!(read(&format!("1.{}", ALPHABET.encode(bytes))), Err(LinkError::TooLarge));
    }
}
