//! Passing a job on: through a file, a link and QR codes it comes out the same, and what was cut or altered does not.

use super::jobs::supplied;
use super::record::{act, make};
use super::tried;
use proptest::prelude::*;
use wellwright_core::job::{Job, wire};
use wellwright_core::passing::{self, Code, LinkError};
use wellwright_core::quantity::UnitSystem;

/// Digits of a code on a telephone's screen, as the page makes them.
const DIGITS: usize = 1900;

/// Jobs with everything that one can hold: figures, choices, texts in any script, what was done and measured.
fn jobs() -> impl Strategy<Value = Job> {
    (supplied(), any::<bool>(), ".{0,40}", prop::collection::vec(act(), 0..12)).prop_map(|(plain, us, text, acts)| {
        let mut job = plain.job(if us { UnitSystem::Us } else { UnitSystem::Si });
        job.name.clone_from(&text);
        job.note = text;
        for (moment, act) in acts.iter().enumerate() {
            assert!(make(&mut job.record, act, &moment.to_string()).is_ok());
        }
        job
    })
}

/// What an independent reader sees in a code, drawn with three dots a square and the quiet zone around it.
fn seen(code: &Code) -> String {
    let (dots, quiet) = (3, 4);
    let side = (code.side + 2 * quiet) * dots;
    let dark = |at: usize| (at / dots).checked_sub(quiet).filter(|at| *at < code.side);
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(side, side, |x, y| match (dark(x), dark(y)) {
        (Some(x), Some(y)) if code.dark[y * code.side + x] => 0,
        _ => 255,
    });
    let grids = image.detect_grids();
    assert_eq!(grids.len(), 1, "codes seen");
    grids[0].decode().unwrap().1
}

proptest! {
    #![proptest_config(tried(1000))]

    #[test]
    fn a_job_comes_out_the_same_of_a_file_a_link_and_codes(job in jobs()) {
        prop_assert_eq!(&wire::read_text(&wire::write(&job).to_string()).unwrap(), &job);
        let letters = passing::write(&job);
        prop_assert_eq!(&passing::read(&letters).unwrap(), &job);
        let parts = passing::split(&passing::as_digits(&letters).unwrap(), DIGITS).unwrap();
        let read: Vec<_> =
            parts.iter().map(|part| passing::part(&seen(&passing::code(&part.to_string()).unwrap())).unwrap()).collect();
        prop_assert_eq!(&passing::read(&passing::join(&read).unwrap()).unwrap(), &job);
    }

    #[test]
    fn a_link_that_is_cut_or_altered_gives_no_job(job in jobs(), at in any::<prop::sample::Index>(), other in "[A-Za-z0-9_-]") {
        let letters = passing::write(&job);
        // Behind the version.
        let at = 2 + at.index(letters.len() - 2);
        prop_assert_eq!(passing::read(&letters[..at]), Err(LinkError::Cut));
        let altered = format!("{}{other}{}", &letters[..at], &letters[at + 1..]);
        prop_assert!(altered == letters || passing::read(&altered).is_err(), "{}", altered);
    }
}
