//! Every place of a job file held wrong in turn: none is taken for something else, and each is named.

use serde_json::{Map, Value, json};
use wellwright_core::job::wire::{self, WireError};
use wellwright_core::job::{Field, Job, WayKey};

/// The house's job as a file with every place in it, and a place set to a value.
fn with(place: &str, value: Value) -> Value {
    let mut file = wire::write(&super::jobs::house());
    let (group, name) = place.split_once('.').unwrap();
    file[group][name] = value;
    file
}

/// Reads a file that must be refused as a bad field; gives where the trouble stands.
fn refused(file: &Value) -> String {
    match wire::read(file) {
        Err(WireError::BadField { path, detail }) => {
            assert!(!detail.is_empty(), "{path}");
            path
        }
        other => panic!("{other:?}"),
    }
}

/// Places that hold a word, with one that they take.
const WORDS: [(&str, &str); 26] = [
    ("motor.kind", "surface"),
    ("cable.metal", "copper"),
    ("cable.build", "twisted"),
    ("cable.insulation", "90 degC"),
    ("demand.by", "people_and_stock"),
    ("demand.depth_of", "net"),
    ("well.drawdown_by", "aquifer"),
    ("line.friction", "hazen_williams"),
    ("pump.control", "on_off"),
    ("line.drop_series", "pvc_schedule_80"),
    ("line.suction_series", "pvc_sdr_21"),
    ("line.surface_series", "pe_dr_13.5"),
    ("line.drop_size", "2"),
    ("line.suction_size", "3-1/2"),
    ("line.surface_size", "1-1/4"),
    ("supply.place", "outdoors_dusty"),
    ("supply.enclosure", "3RX"),
    ("supply.grounding", "one_line"),
    ("supply.metal", "aluminum"),
    ("supply.build", "steel_conduit"),
    ("supply.three_phase", "high"),
    ("supply.hookup", "double_delta"),
    ("supply.way", "solid_state_converter"),
    ("prices.way_240", "converting_passive"),
    ("prices.way_480", "large_economy"),
    ("cable.remedy", "none_needed"),
];

/// Places that hold a truth value.
const TRUTHS: [&str; 6] = [
    "cable.terminals_marked_75",
    "cable.cooler_water",
    "supply.shaded",
    "motor.inverter_duty",
    "startup.restart",
    "startup.freezing",
];
/// Places that hold a number of parallel sets.
const SETS: [&str; 2] = ["cable.most_sets", "supply.most_sets"];

/// Every place of the file beside the figures is among the words, the plain texts, or held by a test of its own.
#[test]
fn no_place_is_forgotten() {
    let file = wire::write(&Job::default());
    let groups = file.as_object().unwrap().iter().filter_map(|(group, held)| Some((group, held.as_object()?)));
    let places = groups.flat_map(|(group, held): (_, &Map<String, Value>)| {
        held.keys().map(move |name| format!("{group}.{name}")).collect::<Vec<_>>()
    });
    let other = ["pump.curve", "prices.source", "prices.book", "energy.duty", "supply.families"];
    let other = other.iter().chain(&TRUTHS).chain(&SETS);
    for place in places {
        let known = Field::at(&place).is_some()
            || WORDS.iter().any(|(word, _)| *word == place)
            || other.clone().any(|other| *other == place);
        assert!(known, "{place}");
    }
}

#[test]
fn a_figure_that_is_none_is_named_in_every_field() {
    let unit = |field: Field| json!(field.spec().accepted.unit);
    for field in Field::ALL {
        let place = field.path();
        for value in [json!(7.5), json!("7.5"), json!(true), json!([7.5, unit(field)]), json!([]), json!([null])] {
            assert_eq!(refused(&with(place, value.clone())), place, "{value}");
        }
        for value in [json!({}), json!({"value": 7.5}), json!({"unit": unit(field)})] {
            assert_eq!(refused(&with(place, value.clone())), place, "{value}");
        }
        for value in [json!("7.5"), json!(null), json!(true), json!([7.5]), json!({"of": 7.5})] {
            let told = refused(&with(place, json!({"value": value, "unit": unit(field)})));
            assert_eq!(told, format!("{place}.value"), "{value}");
        }
        for word in [json!("furlong"), json!(null), json!(1), json!(["ft"]), json!({"ft": null})] {
            let told = refused(&with(place, json!({"value": 7.5, "unit": word})));
            assert_eq!(told, format!("{place}.unit"), "{word}");
        }
        let told = refused(&with(place, json!({"value": 7.5, "unit": unit(field), "note": "x"})));
        assert_eq!(told, format!("{place}.note"));
        // Nothing entered is no fault.
        assert_eq!(wire::read(&with(place, Value::Null)).unwrap().get(field), None);
    }
}

#[test]
fn a_word_that_is_none_is_named_in_every_place() {
    for (place, word) in WORDS {
        assert!(wire::read(&with(place, json!(word))).is_ok(), "{place} takes {word}");
        let misspelled = format!("{word}s");
        let others = [misspelled.clone(), format!(" {word}"), format!("{word} "), String::new(), "none".into()];
        for other in others {
            assert_eq!(refused(&with(place, json!(other))), place, "{other:?}");
        }
        // What has no capitals at all is spelled right in them.
        if word.to_uppercase() != word {
            assert_eq!(refused(&with(place, json!(word.to_uppercase()))), place);
        }
        for other in [json!(1), json!(true), json!([]), json!([word]), json!({}), json!({word: null})] {
            assert_eq!(refused(&with(place, other.clone())), place, "{other}");
        }
    }
}

#[test]
fn a_truth_value_or_a_number_of_sets_that_is_none_is_named() {
    for place in TRUTHS {
        for good in [json!(true), json!(false), json!(null)] {
            assert!(wire::read(&with(place, good.clone())).is_ok(), "{place} takes {good}");
        }
        for bad in [json!(0), json!("true"), json!([true]), json!({}), json!({"true": null})] {
            assert_eq!(refused(&with(place, bad.clone())), place, "{bad}");
        }
    }
    for place in SETS {
        for good in [json!(1), json!(4), json!(null)] {
            assert!(wire::read(&with(place, good.clone())).is_ok(), "{place} takes {good}");
        }
        for bad in
            [json!(0), json!(5), json!(-1), json!(1.5), json!(257), json!("2"), json!(true), json!([2]), json!({})]
        {
            assert_eq!(refused(&with(place, bad.clone())), place, "{bad}");
        }
    }
}

/// The table of the user's own equipment is a text as the curve is; the way by a name of the user's own is any text.
#[test]
fn own_equipment_is_a_text_and_a_name() {
    for bad in [json!(null), json!(7), json!(true), json!({}), json!([]), json!(["name,kind"])] {
        assert_eq!(refused(&with("supply.families", bad.clone())), "supply.families", "{bad}");
    }
    assert!(wire::read(&with("supply.families", json!("x".repeat(Job::MOST_FAMILIES)))).is_ok());
    assert_eq!(refused(&with("supply.families", json!("x".repeat(Job::MOST_FAMILIES + 1)))), "supply.families");
    for name in ["", " ", "Mine", "own: x", "doubling", "\u{1f4a7}\"\\\0"] {
        let job = wire::read(&with("supply.way", json!(format!("own: {name}")))).unwrap();
        assert_eq!(job.way, Some(WayKey::Own(name.into())));
        assert_eq!(wire::read_text(&wire::write(&job).to_string()).unwrap(), job);
    }
    // Without the words ahead of it, a name is a kind, and this is none.
    for bad in ["Mine", "own:Mine", "Own: Mine", "Doubling"] {
        assert_eq!(refused(&with("supply.way", json!(bad))), "supply.way", "{bad}");
    }
}

#[test]
fn a_place_that_is_not_there_is_named_in_every_group() {
    for group in ["site", "demand", "well", "line", "pump", "motor", "cable", "prices", "supply", "energy", "range"] {
        let place = format!("{group}.no_such_place");
        for value in [json!(null), json!({"value": 1, "unit": "ft"})] {
            assert_eq!(refused(&with(&place, value)), place);
        }
        for held in [json!(null), json!([]), json!([null]), json!(7), json!("x"), json!(true)] {
            let mut file = wire::write(&Job::default());
            file[group] = held;
            assert_eq!(refused(&file), group);
        }
    }
}

#[test]
fn a_size_that_its_series_does_not_have_is_no_pipe() {
    let line = |held: Value| json!({"schema": 1, "line": held});
    for (held, place) in [
        // SDR 26 begins at 1 in; polyethylene has no 3-1/2 in, and by inside diameter ends at 6 in.
        (json!({"surface_series": "pvc_sdr_26", "surface_size": "3/4"}), "line.surface_size"),
        (json!({"surface_size": "3/4", "surface_series": "pvc_sdr_26"}), "line.surface_size"),
        (json!({"drop_series": "pe_dr_9", "drop_size": "3-1/2"}), "line.drop_size"),
        (json!({"suction_series": "pe_sidr_7", "suction_size": "8"}), "line.suction_size"),
        (json!({"drop_series": "steel_schedule_40", "drop_size": "7"}), "line.drop_size"),
        (json!({"drop_series": "steel_schedule_80", "drop_size": "2"}), "line.drop_series"),
        (json!({"surface_size": "1½"}), "line.surface_size"),
    ] {
        assert_eq!(refused(&line(held.clone())), place, "{held}");
    }
    // The assumed series has every size; a series without a size waits for one.
    for held in [json!({"surface_size": "3-1/2"}), json!({"drop_size": "12"}), json!({"drop_series": "pe_dr_9"})] {
        assert!(wire::read(&line(held.clone())).is_ok(), "{held}");
    }
}

#[test]
fn a_curve_is_a_text_of_so_many_bytes() {
    let pump = |curve: Value| json!({"schema": 1, "pump": {"curve": curve}});
    for curve in [json!(null), json!(7), json!(true), json!({}), json!([]), json!(["0 820"]), json!([[0, 820]])] {
        assert_eq!(refused(&pump(curve.clone())), "pump.curve", "{curve}");
    }
    let row = "0,820,0\n";
    for (text, fits) in [
        (row.repeat(6250), true),
        (row.repeat(6250) + "\n", false),
        // Bytes, not characters: 25,000 of two bytes each, and one more.
        ("é".repeat(25_000), true),
        ("é".repeat(25_001), false),
        ("é".repeat(24_999) + "abc", false),
        ("x".repeat(1_000_000), false),
    ] {
        let read = wire::read(&pump(json!(text)));
        if fits {
            assert_eq!(read.unwrap().curve, text);
        } else {
            let error = read.unwrap_err();
            assert_eq!((error.code(), error.path()), ("bad_field", "pump.curve"));
            assert!(error.to_string().contains("50000"), "{error}");
        }
    }
}

/// A curve is kept as it was typed, whatever is in it; whether it makes a curve is for the sums to say.
#[test]
fn a_curve_is_kept_byte_for_byte() {
    for text in ["", " ", "\u{feff}gpm\tft\r\n0\t820\r\n", "\0\u{1f4a7}\"\\", "no curve at all", "0;820\n25;676,5"] {
        let job = wire::read(&with("pump.curve", json!(text))).unwrap();
        assert_eq!(job.curve, text);
        assert_eq!(wire::read_text(&wire::write(&job).to_string()).unwrap(), job);
    }
}
