//! Links, parts of series, digits and files of many jobs, spoiled at random: each gives the job or a reason, and a file
//! whose text is JSON always has a line for its fault.

use super::jobs::house;
use wellwright_core::job::wire;
use wellwright_core::numeric::pcg::Pcg32;
use wellwright_core::passing;

fn spoiled(text: &str, chance: &mut Pcg32) -> String {
    let mut letters: Vec<char> = text.chars().collect();
    for _ in 0..=chance.below(3) {
        let at = chance.below(letters.len().max(1) as u32) as usize;
        match chance.below(4) {
            0 if !letters.is_empty() => {
                letters.remove(at);
            }
            1 => letters.truncate(at),
            2 => letters.insert(at.min(letters.len()), char::from_u32(chance.below(0x500)).unwrap_or('.')),
            _ if !letters.is_empty() => letters[at] = ['0', '.', '9', '{', '"', 'd'][chance.below(6) as usize],
            _ => {}
        }
    }
    letters.into_iter().collect()
}

#[test]
fn ten_thousand_spoiled_links_give_that_job_or_a_reason() {
    let job = house();
    let letters = passing::write(&job);
    let digits = passing::as_digits(&letters).unwrap();
    let parts = passing::split(&digits, 400).unwrap();
    let mut chance = Pcg32::new(4, 2);
    for round in 0..10_000 {
        let text = if round % 2 == 0 { &letters } else { &digits };
        if let Ok(came) = passing::read(&spoiled(text, &mut chance)) {
            assert_eq!(came, job, "round {round}");
        }
        let mut series = parts.clone();
        let at = chance.below(series.len() as u32) as usize;
        if let Some(part) = passing::part(&spoiled(&series[at].to_string(), &mut chance)) {
            series[at] = part;
        }
        if let Ok(whole) = passing::join(&series)
            && let Ok(came) = passing::read(&whole)
        {
            assert_eq!(came, job, "round {round}");
        }
    }
}

#[test]
fn ten_thousand_spoiled_files_are_read_or_refused_with_a_line() {
    let text = format!("[\n{:#},\n{{\"schema\":1}}\n]", wire::write(&house()));
    let mut chance = Pcg32::new(1, 7);
    for round in 0..10_000 {
        let spoiled = spoiled(&text, &mut chance);
        let Ok(jobs) = wire::read_many(&spoiled) else { continue };
        for (place, job) in jobs.iter().enumerate() {
            if let Err(error) = job {
                assert!(wire::line_of(&spoiled, place, error.path()).is_some(), "round {round}: {spoiled}");
            }
        }
    }
}
