//! Records that can't be read: each trouble is named by its place, and nothing of the file is taken.

use wellwright_core::job::Record;
use wellwright_core::job::wire::{self, WireError};

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
