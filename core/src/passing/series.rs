//! Letters that are too many for one code, split over a series: each part says which it is, of how many, and of what.
//!
//! A part is `1.SUM.PLACE.OF.LETTERS`: the sum tells the parts of one job from those of another, the place counts from 1.

use super::sum::sum;
use core::fmt;

/// The version of the form that this build writes.
const VERSION: &str = "1";
/// Most parts of a series: more is no work for hands.
pub const MOST_PARTS: usize = 40;
/// Most letters of a part: a QR code holds 7,089 digits at most (ISO/IEC 18004).
pub const MOST_OF_PART: usize = 8000;

/// One part of a series.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Part {
    /// What tells the series.
    pub sum: u32,
    /// Its place, from 1.
    pub place: usize,
    /// How many there are.
    pub of: usize,
    /// Its letters.
    pub letters: String,
}

/// Why parts make no whole.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SeriesError {
    /// So many are still missing.
    Missing(usize),
    /// All are there, and they are not what was split.
    Altered,
}

impl fmt::Display for Part {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{VERSION}.{:08x}.{}.{}.{}", self.sum, self.place, self.of, self.letters)
    }
}

/// Splits letters into parts of at most so many letters; `None` where that takes too many parts.
#[must_use]
pub fn split(letters: &str, most: usize) -> Option<Vec<Part>> {
    let all: Vec<char> = letters.chars().collect();
    let of = all.len().div_ceil(most.max(1));
    if of > MOST_PARTS {
        return None;
    }
    // Parts of one length: none is a short rest.
    let each = all.len().div_ceil(of.max(1)).max(1);
    let sum = sum(letters.as_bytes());
    let chunks = all.chunks(each).zip(1..);
    let part = |(chunk, place): (&[char], usize)| Part { sum, place, of, letters: chunk.iter().collect() };
    Some(chunks.map(part).collect())
}

/// Reads a part; `None` for anything else, a whole link too.
#[must_use]
pub fn part(text: &str) -> Option<Part> {
    let mut pieces = text.trim().splitn(5, '.');
    let mut next = || pieces.next();
    let (version, sum, place, of, letters) = (next()?, next()?, next()?, next()?, next()?);
    if version != VERSION || sum.len() != 8 {
        return None;
    }
    let part = Part {
        sum: u32::from_str_radix(sum, 16).ok()?,
        place: place.parse().ok()?,
        of: of.parse().ok()?,
        letters: letters.to_owned(),
    };
    let fits = part.letters.len() <= MOST_OF_PART;
    (fits && (1..=MOST_PARTS).contains(&part.of) && (1..=part.of).contains(&part.place)).then_some(part)
}

/// Joins the parts of one series, in any order, each once or more.
///
/// # Errors
/// How many are missing, or that what was joined is not what was split.
pub fn join(parts: &[Part]) -> Result<String, SeriesError> {
    let of = parts.first().map_or(1, |part| part.of);
    let at = |place: usize| parts.iter().find(|part| part.place == place);
    let missing = (1..=of).filter(|place| at(*place).is_none()).count();
    if missing > 0 {
        return Err(SeriesError::Missing(missing));
    }
    let whole: String = (1..=of).filter_map(at).map(|part| part.letters.as_str()).collect();
    let same = parts.iter().all(|part| (part.sum, part.of) == (sum(whole.as_bytes()), of));
    if same { Ok(whole) } else { Err(SeriesError::Altered) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn parts_join_in_any_order_once_or_more() {
        let letters = "1.abcdefghijklmnopqrstuvwxyz";
        let mut parts = split(letters, 8).unwrap_or_default();
        assert_eq!(parts.len(), 4);
        assert!(parts.iter().all(|part| part.letters.len() == 7));
        for one in &parts {
            assert_eq!(part(&one.to_string()).as_ref(), Some(one));
        }
        assert_eq!(join(&parts[1..]), Err(SeriesError::Missing(1)));
        assert_eq!(join(&[]), Err(SeriesError::Missing(1)));
        parts.reverse();
        parts.push(parts[2].clone());
        assert_eq!(join(&parts).as_deref(), Ok(letters));
        parts[0].letters.push('x');
        assert_eq!(join(&parts), Err(SeriesError::Altered));
        assert_eq!(split(letters, 100).map(|parts| parts.len()), Some(1));
        assert_eq!(split(&"x".repeat(401), 10), None);
    }

    #[test]
    fn a_whole_link_and_nonsense_are_no_parts() {
        for odd in [
            "",
            "1.abc",
            "1.0.1.2.x",
            "2.00000000.1.2.x",
            "1.0000000g.1.2.x",
            "1.00000000.0.2.x",
            "1.00000000.3.2.x",
            "1.00000000.1.41.x",
            "1.00000000.1.2",
        ] {
            assert_eq!(part(odd), None, "{odd}");
        }
    }
}
