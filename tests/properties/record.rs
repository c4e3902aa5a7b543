//! The record of the site: only ever added to, and the same again from a file.

use proptest::prelude::*;
use wellwright_core::evaluate::evaluate;
use wellwright_core::job::record::{Full, Taken, Tick, Visit};
use wellwright_core::job::{Check, Job, Reading, Record, wire};
use wellwright_core::quantity::{Entry, Unit};
use wellwright_core::startup::{judge, stops, trend};

#[derive(Debug, Clone)]
pub enum Act {
    Tick(usize, bool),
    Begin(String),
    Type(usize, String, Option<f64>),
    Close,
}

pub fn act() -> impl Strategy<Value = Act> {
    prop_oneof![
        (0..Check::ALL.len(), any::<bool>()).prop_map(|(check, done)| Act::Tick(check, done)),
        ".{0,20}".prop_map(Act::Begin),
        (0..Reading::ALL.len(), ".{0,12}", prop::option::of(-50.0..2000.0f64))
            .prop_map(|(one, text, value)| Act::Type(one, text, value)),
        Just(Act::Close),
    ]
}

pub fn make(record: &mut Record, act: &Act, at: &str) -> Result<(), Full> {
    match act {
        Act::Tick(check, done) => record.tick(Check::ALL[*check], *done, at),
        Act::Begin(by) => record.begin(by, at),
        Act::Type(one, text, value) => {
            let reading = Reading::ALL[*one];
            record.type_in(reading, text, value.map(|value| Entry::new(value, reading.unit())), at)
        }
        Act::Close => {
            record.close();
            Ok(())
        }
    }
}

/// Everything closed, in order.
fn closed(record: &Record) -> Vec<(usize, Taken)> {
    let visits = record.visits().iter().enumerate();
    visits
        .flat_map(|(place, visit)| {
            visit.taken.iter().filter(|taken| !taken.open).map(move |taken| (place, taken.clone()))
        })
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, ..ProptestConfig::default() })]

    #[test]
    fn nothing_that_was_closed_is_ever_changed(acts in prop::collection::vec(act(), 0..60)) {
        let mut record = Record::default();
        for (moment, act) in acts.iter().enumerate() {
            let (before, ticks) = (closed(&record), record.ticks().to_vec());
            let told = make(&mut record, act, &moment.to_string());
            prop_assert!(told.is_ok());
            let mut left = closed(&record).into_iter();
            for kept in before {
                prop_assert!(left.any(|taken| taken == kept), "{kept:?} after {act:?}");
            }
            prop_assert_eq!(&record.ticks()[..ticks.len()], &ticks[..]);
        }
    }

    #[test]
    fn a_record_comes_back_the_same_from_a_file(acts in prop::collection::vec(act(), 0..60)) {
        let mut job = Job::named("Well");
        for (moment, act) in acts.iter().enumerate() {
            prop_assert!(make(&mut job.record, act, &moment.to_string()).is_ok());
        }
        let text = wire::write(&job).to_string();
        let back = wire::read_text(&text);
        prop_assert_eq!(back.as_ref().map(|job| &job.record), Ok(&job.record));
        // No reading, however odd, stops the judgement or gives a figure that is none.
        let answer = evaluate(&job);
        for visit in judge(&job, &answer) {
            for judged in visit.readings {
                prop_assert!(judged.value.value.is_finite() && judged.limit.is_none_or(|limit| limit.value.is_finite()));
            }
        }
        let _ = stops(&job, &answer);
        for reading in Reading::ALL {
            prop_assert!(trend(&job, reading).len() <= job.record.visits().len());
        }
    }
}

#[test]
fn a_correction_stands_beside_what_was_there_and_counts() {
    let mut record = Record::default();
    let volt = |value: f64| Some(Entry::new(value, Unit::Volt));
    record.type_in(Reading::SupplyIdle, "1", volt(1.0), "a").unwrap();
    assert!(record.is_empty(), "without a visit there is nothing to write in");
    record.begin("RG", "a").unwrap();
    // Every stroke is kept while it is typed.
    for (text, value) in [("2", 2.0), ("24", 24.0), ("240", 240.0)] {
        record.type_in(Reading::SupplyIdle, text, volt(value), "b").unwrap();
        assert_eq!(record.visits()[0].value(Reading::SupplyIdle), Some(value));
    }
    assert_eq!(record.visits()[0].taken.len(), 1);
    record.close();
    record.type_in(Reading::SupplyIdle, "241", volt(241.0), "c").unwrap();
    record.close();
    let texts: Vec<&str> = record.visits()[0].history(Reading::SupplyIdle).map(|taken| taken.text.as_str()).collect();
    assert_eq!(texts, ["240", "241"]);
    assert_eq!(record.visits()[0].value(Reading::SupplyIdle), Some(241.0));
    // Typed the same again, or begun and left as it was, nothing is added.
    record.type_in(Reading::SupplyIdle, "24", volt(24.0), "d").unwrap();
    record.type_in(Reading::SupplyIdle, "241", volt(241.0), "d").unwrap();
    record.close();
    assert_eq!(record.visits()[0].taken.len(), 2);
    // Emptied, it counts for nothing, and both figures still stand there.
    record.type_in(Reading::SupplyIdle, "", None, "e").unwrap();
    record.close();
    assert_eq!((record.visits()[0].value(Reading::SupplyIdle), record.visits()[0].taken.len()), (None, 3));
    // A figure that no instrument shows, and one of another kind, count for nothing.
    record.type_in(Reading::SupplyLoaded, "-5", volt(-5.0), "f").unwrap();
    record.type_in(Reading::Flow, "5", volt(5.0), "f").unwrap();
    assert_eq!(record.visits()[0].value(Reading::SupplyLoaded), None);
    assert_eq!(record.visits()[0].value(Reading::Flow), None);
    assert_eq!(record.visits()[0].last(Reading::Flow).map(|taken| taken.entry), Some(None));
    record.type_in(Reading::SupplyLoaded, "NaN", volt(f64::NAN), "f").unwrap();
    assert_eq!(record.visits()[0].last(Reading::SupplyLoaded).map(|taken| taken.entry), Some(None));
}

#[test]
fn what_does_not_fit_is_refused_and_changes_nothing() {
    let mut record = Record::default();
    let long = "x".repeat(Record::MOST_TEXT + 1);
    assert_eq!(record.begin(&long, "a"), Err(Full::Text));
    assert_eq!(record.tick(Check::Rotation, true, &long), Err(Full::Text));
    for visit in 0..Record::MOST_VISITS {
        record.begin("", &visit.to_string()).unwrap();
    }
    let before = record.clone();
    assert_eq!(record.begin("", "b"), Err(Full::Many));
    assert_eq!(record.type_in(Reading::Flow, &long, None, "b"), Err(Full::Text));
    assert_eq!(record, before);
    for turn in 0..Record::MOST_TAKEN {
        record.type_in(Reading::Flow, &turn.to_string(), None, "c").unwrap();
        record.close();
    }
    assert_eq!(record.type_in(Reading::Flow, "again", None, "c"), Err(Full::Many));
}

#[test]
fn a_tick_counts_until_it_is_taken_back() {
    let mut record = Record::default();
    let ticked = |record: &Record, check| record.ticked(check).map(|tick| tick.at.clone());
    for (check, done, at) in [
        (Check::Rotation, false, "a"),
        (Check::Rotation, true, "b"),
        (Check::Rotation, true, "c"),
        (Check::GroundFault, true, "d"),
        (Check::Rotation, false, "e"),
    ] {
        record.tick(check, done, at).unwrap();
    }
    assert_eq!((ticked(&record, Check::Rotation), ticked(&record, Check::GroundFault)), (None, Some("d".to_owned())));
    // What changes nothing is no tick.
    let all: Vec<_> = record.ticks().iter().map(|tick| (tick.check, tick.done, tick.at.as_str())).collect();
    assert_eq!(all, [(Check::Rotation, true, "b"), (Check::GroundFault, true, "d"), (Check::Rotation, false, "e")]);
    record.tick(Check::Rotation, true, "f").unwrap();
    assert_eq!(ticked(&record, Check::Rotation), Some("f".to_owned()));
}

#[test]
fn an_empty_text_begins_no_reading() {
    let mut record = Record::default();
    record.begin("RG", "a").unwrap();
    record.type_in(Reading::Flow, "", None, "b").unwrap();
    assert!(record.visits()[0].taken.is_empty());
    let gpm = |value: f64| Some(Entry::new(value, Unit::GallonPerMinute));
    record.type_in(Reading::Flow, "25", gpm(25.0), "b").unwrap();
    record.close();
    // The same again opens no correction.
    record.type_in(Reading::Flow, "25", gpm(25.0), "c").unwrap();
    assert_eq!(record.visits()[0].taken.len(), 1);
    // Another reading of the same text is one of its own.
    record.type_in(Reading::SupplyAmps, "25", Some(Entry::new(25.0, Unit::Ampere)), "d").unwrap();
    assert_eq!(record.visits()[0].taken.len(), 2);
}

/// As much as there may be, and one more of each.
#[test]
fn a_record_is_made_of_no_more_than_it_holds() {
    let text = |letters: usize| "x".repeat(letters);
    let tick = |at: String| Tick { check: Check::Rotation, done: true, at };
    let taken = |letters: [usize; 2]| Taken {
        reading: Reading::Flow,
        text: text(letters[0]),
        entry: None,
        at: text(letters[1]),
        open: false,
    };
    let visit = |letters: [usize; 2], taken: Vec<Taken>| Visit { at: text(letters[0]), by: text(letters[1]), taken };
    let (most, plain) = (Record::MOST_TEXT, [1, 1]);
    let ticks = |count: usize| Record::of(vec![tick(text(1)); count], vec![]).err();
    let visits = |count: usize| Record::of(vec![], vec![visit(plain, vec![]); count]).err();
    let readings = |count: usize| {
        let last = visit(plain, vec![taken(plain); count]);
        Record::of(vec![], vec![visit(plain, vec![]), last]).err()
    };
    assert_eq!([ticks(Record::MOST_TICKS), visits(Record::MOST_VISITS), readings(Record::MOST_TAKEN)], [None; 3]);
    let over = [ticks(Record::MOST_TICKS + 1), visits(Record::MOST_VISITS + 1), readings(Record::MOST_TAKEN + 1)];
    assert_eq!(over, [Some(Full::Many); 3]);
    for letters in [[most, 1], [1, most]] {
        let over = letters.map(|count| if count == most { most + 1 } else { count });
        let of = |letters| Record::of(vec![], vec![visit(letters, vec![taken(letters)])]).err();
        assert_eq!((of(letters), of(over)), (None, Some(Full::Text)));
        let of = |letters| Record::of(vec![], vec![visit(plain, vec![taken(letters)])]).err();
        assert_eq!((of(letters), of(over)), (None, Some(Full::Text)));
    }
    assert_eq!(Record::of(vec![tick(text(most))], vec![]).err(), None);
    assert_eq!(Record::of(vec![tick(text(most + 1))], vec![]).err(), Some(Full::Text));
}
