//! Records that can't be read: each trouble is named by its place, and nothing of the file is taken.

use wellwright_core::job::record::{Taken, Visit};
use wellwright_core::job::wire::{self, WireError};
use wellwright_core::job::{Reading, Record};
use wellwright_core::quantity::Entry;

fn refused(record: &str) -> String {
    match wire::read_text(&format!("{{\"schema\": 1, \"record\": {record}}}")) {
        Err(WireError::BadField { path, detail }) => {
            assert!(!detail.is_empty(), "{path}");
            path
        }
        other => panic!("{record}: {other:?}"),
    }
}

const TAKEN: &str =
    r#"{"reading": "flow", "text": "25", "entry": {"value": 25.0, "unit": "gpm"}, "at": "a", "open": false}"#;

fn visit(taken: &str) -> String {
    format!(r#"{{"visits": [{{"at": "a", "by": "RG", "taken": [{taken}]}}]}}"#)
}

#[test]
fn every_place_is_named() {
    for (record, path) in [
        ("[]", "record"),
        ("5", "record"),
        (r#"{"notes": []}"#, "record.notes"),
        (r#"{"ticks": {}}"#, "record.ticks"),
        (r#"{"ticks": [5]}"#, "record.ticks[0]"),
        (r#"{"ticks": [["rotation", true, "a"]]}"#, "record.ticks[0]"),
        (r#"{"ticks": [{"check": "warp", "done": true, "at": "a"}]}"#, "record.ticks[0].check"),
        (r#"{"ticks": [{"check": "rotation", "done": 1, "at": "a"}]}"#, "record.ticks[0].done"),
        (r#"{"ticks": [{"check": "rotation", "done": true, "at": "a", "by": "b"}]}"#, "record.ticks[0].by"),
        (r#"{"visits": null}"#, "record.visits"),
        (r#"{"visits": [{"at": 5}]}"#, "record.visits[0].at"),
        (r#"{"visits": [{"when": "a"}]}"#, "record.visits[0].when"),
        (&visit("5"), "record.visits[0].taken[0]"),
        (&visit(&TAKEN.replace("flow", "warp")), "record.visits[0].taken[0].reading"),
        (&visit(&TAKEN.replace("gpm", "A")), "record.visits[0].taken[0].entry"),
        (&visit(&TAKEN.replace("false", "0")), "record.visits[0].taken[0].open"),
        (&visit(&TAKEN.replace("\"25\"", "25")), "record.visits[0].taken[0].text"),
    ] {
        assert_eq!(refused(record), path, "{record}");
    }
}

#[test]
fn a_record_that_is_too_much_is_refused() {
    let many = |one: &str, count: usize| vec![one; count].join(",");
    let tick = r#"{"check": "rotation", "done": true, "at": "a"}"#;
    assert_eq!(refused(&format!("{{\"ticks\": [{}]}}", many(tick, Record::MOST_TICKS + 1))), "record.ticks");
    assert_eq!(refused(&visit(&many(TAKEN, Record::MOST_TAKEN + 1))), "record.visits[0].taken");
    let long = TAKEN.replace("\"25\"", &format!("\"{}\"", "9".repeat(Record::MOST_TEXT + 1)));
    assert_eq!(refused(&visit(&long)), "record");
}

#[test]
fn a_good_one_is_read_and_nothing_in_it_is_more_than_text() {
    let text = TAKEN.replace("\"25\"", "\"<img src=x onerror=alert(1)>=SUM(A1)\"");
    let job = wire::read_text(&format!("{{\"schema\": 1, \"record\": {}}}", visit(&text))).unwrap();
    assert_eq!(job.record.visits()[0].taken[0].text, "<img src=x onerror=alert(1)>=SUM(A1)");
    assert_eq!(wire::read(&wire::write(&job)).unwrap(), job);
    let empty = wire::read_text(r#"{"schema": 1, "record": null}"#).unwrap();
    assert!(empty.record.is_empty());
}

/// What an instrument can't show was mistyped: it stands in the record and counts for nothing. Ends of each range count.
#[test]
fn a_reading_that_no_instrument_shows_counts_for_nothing() {
    for (reading, low, high) in [
        (Reading::InsulationBefore, 0.0, 1e6),
        (Reading::WindingTemperature, -40.0, 400.0),
        (Reading::StaticLevel, -100.0, 5000.0),
        (Reading::Pressure, -15.0, 2000.0),
        (Reading::SupplyIdle, 0.0, 10_000.0),
        (Reading::Amps1, 0.0, 10_000.0),
        (Reading::Frequency, 0.0, 200.0),
        (Reading::Flow, 0.0, 50_000.0),
        (Reading::Signal, 0.0, 30.0),
    ] {
        for (value, counts) in [(low, true), (high, true), (low - 1.0, false), (high + 1.0, false), (f64::NAN, false)] {
            let entry = Entry::new(value, reading.unit());
            let taken = Taken { reading, text: "x".to_owned(), entry: Some(entry), at: "a".to_owned(), open: false };
            let visit = Visit { at: "a".to_owned(), by: "RG".to_owned(), taken: vec![taken] };
            assert_eq!(visit.value(reading), counts.then_some(value), "{reading:?} {value}");
        }
    }
}
