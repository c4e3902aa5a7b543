//! Stored jobs of every file version: each must open, and evaluate the same, for good.
//!
//! The stored evaluations are what this program gave on the day that they were stored. They freeze its behavior; they
//! do not prove it. What is right is proved by the published values of `reference` and the laws of `properties`. Where
//! one of those shows an evaluation to be wrong, it is stored anew by hand, and the change log says so.
//!
//! A job file of a released version is never edited: people hold files like it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod schema;
mod startup;
mod told;

use serde_json::Value;
use std::path::{Path, PathBuf};
use wellwright_core::evaluate::{evaluate, report};
use wellwright_core::job::{Field, Job, wire};
use wellwright_tests::difference;

/// The jobs of every version, by path, in order.
fn stored() -> Vec<PathBuf> {
    let mut found = Vec::new();
    for version in 1..=wire::CURRENT {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("golden/v{version}"));
        let before = found.len();
        let entries = std::fs::read_dir(&folder).unwrap().map(|entry| entry.unwrap().path());
        found.extend(entries.filter(|path| path.to_str().is_some_and(|path| path.ends_with(".job.json"))));
        assert!(found.len() - before >= 4, "version {version} has {} stored jobs", found.len() - before);
    }
    found.sort();
    found
}

fn text(path: &Path) -> String {
    std::fs::read_to_string(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

fn job(path: &Path) -> Job {
    wire::read_text(&text(path)).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// How the evaluation of a job differs from the stored one.
fn moved(job: &Job, stored: &Value) -> Option<String> {
    difference(&report(&job.name, &evaluate(job)), stored, 1e-9, 0.0)
}

#[test]
fn stored_jobs_evaluate_as_they_did() {
    for path in stored() {
        let kept = path.to_str().unwrap().replace(".job.json", ".evaluation.json");
        let kept: Value = serde_json::from_str(&text(Path::new(&kept))).unwrap();
        assert_eq!(moved(&job(&path), &kept), None, "{}", path.display());
    }
}

#[test]
fn a_moved_figure_is_noticed() {
    let path = stored().into_iter().find(|path| path.ends_with("house_and_stock_well.job.json")).unwrap();
    let job = job(&path);
    let mut kept = report(&job.name, &evaluate(&job));
    assert_eq!(moved(&job, &kept), None);
    let drop = kept.pointer_mut("/at_depth/240 V/drop/value").unwrap();
    *drop = (drop.as_f64().unwrap() * (1.0 + 2e-9)).into();
    assert!(moved(&job, &kept).is_some_and(|text| text.contains("drop")));
}

#[test]
fn what_is_read_and_written_reads_the_same() {
    for path in stored() {
        let first = job(&path);
        let written = wire::write(&first);
        assert_eq!(written["schema"], wire::CURRENT, "{}", path.display());
        let second = wire::read_text(&written.to_string()).unwrap();
        assert_eq!(first, second, "{}", path.display());
        assert_eq!(written, wire::write(&second), "{}", path.display());
    }
}

/// A job that sets everything keeps everything: no place is forgotten on the way through the file.
#[test]
fn a_job_with_every_place_loses_none() {
    let path = stored().into_iter().find(|path| path.ends_with("every_place_with_supply_in_si.job.json")).unwrap();
    let job = job(&path);
    for field in Field::ALL {
        assert!(job.get(field).is_some(), "{}", field.path());
    }
    let original: Value = serde_json::from_str(&text(&path)).unwrap();
    let written = wire::write(&job);
    assert_eq!(difference(&written, &original, 0.0, 0.0), None);
    for (group, held) in written.as_object().unwrap() {
        for (name, value) in held.as_object().into_iter().flatten() {
            assert!(!value.is_null() && value != "", "{group}.{name} is not set");
        }
    }
    assert!(!job.name.is_empty() && !job.note.is_empty() && job.demo);
}

/// The places that were there at first, and those that came with the water, still read as they did, and leave the later
/// ones empty.
#[test]
fn a_job_of_earlier_places_reads_as_it_did() {
    let later_groups: [(&str, &[&str]); 2] = [
        ("every_field_in_si.job.json", &["demand", "well", "line", "pump", "supply", "energy", "range", "startup"]),
        ("every_place_in_si.job.json", &["supply", "energy", "range", "startup"]),
    ];
    let is_text = |name: &str| ["curve", "families", "book", "duty"].contains(&name);
    for (name, groups) in later_groups {
        let path = stored().into_iter().find(|path| path.ends_with(name)).unwrap();
        let original: Value = serde_json::from_str(&text(&path)).unwrap();
        let written = wire::write(&job(&path));
        for (group, held) in original.as_object().unwrap() {
            let Some(held) = held.as_object() else {
                assert_eq!(written[group], *held, "{group}");
                continue;
            };
            for (name, value) in held {
                assert_eq!(difference(&written[group][name], value, 0.0, 0.0), None, "{group}.{name}");
            }
            let later = written[group].as_object().unwrap().iter().filter(|(name, _)| !held.contains_key(*name));
            assert!(later.into_iter().all(|(name, value)| value.is_null() || is_text(name) && value == ""), "{group}");
        }
        for group in groups {
            let held = written[group].as_object().unwrap();
            assert!(held.iter().all(|(name, value)| value.is_null() || is_text(name) && value == ""), "{group}");
        }
    }
}

/// What each stored job is kept for.
#[test]
fn the_stored_jobs_cover_what_they_are_named_for() {
    let kept = |name: &str| -> Value {
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("golden/v1/{name}.evaluation.json"));
        serde_json::from_str(&text(&path)).unwrap()
    };
    let codes = |value: &Value, list: &str| -> Vec<String> {
        let found = value[list].as_array().unwrap().iter();
        found.map(|entry| entry["code"].as_str().unwrap().to_owned()).collect()
    };
    assert_eq!(codes(&kept("empty"), "errors"), ["missing", "missing"]);
    let surface = kept("surface_motor_parallel_sets");
    assert!(surface.pointer("/at_depth/240 V/sets").and_then(Value::as_u64).unwrap() > 1);
    let beyond = kept("beyond_every_size");
    assert!(beyond.pointer("/at_depth/240 V").unwrap().is_null());
    assert!(codes(&beyond, "findings").contains(&"CABLE_NO_SIZE".to_owned()));
    let shallow = codes(&kept("pump_set_too_shallow"), "findings");
    for code in ["PUMPING_LEVEL_AT_PUMP", "PUMP_NEAR_BOTTOM", "BEYOND_USUAL"] {
        assert!(shallow.contains(&code.to_owned()), "{shallow:?}");
    }
    let dry = kept("water_below_the_pump_and_the_bottom");
    assert!(dry.pointer("/levels/pumping_level").unwrap().is_null());
    let stops = dry["findings"].as_array().unwrap().iter().filter(|finding| finding["severity"] == "stop");
    let stops: Vec<_> = stops.map(|finding| finding["code"].as_str().unwrap()).collect();
    assert_eq!(stops, ["PUMPING_LEVEL_AT_PUMP", "LEVEL_BELOW_BOTTOM"]);
    assert!(codes(&kept("aluminum_down_the_hole"), "findings").contains(&"ALUMINIUM_IN_WELL".to_owned()));
    assert_eq!(codes(&kept("aluminum_on_a_surface_motor"), "findings"), ["BEYOND_USUAL"]);
    let unusable = codes(&kept("figures_that_no_sum_can_use"), "errors");
    for code in ["missing", "out_of_range", "wrong_unit"] {
        assert!(unusable.contains(&code.to_owned()), "{unusable:?}");
    }
}

/// What the stored jobs with water, line and pump are kept for.
#[test]
fn the_stored_jobs_run_from_the_water_to_the_money() {
    for (name, well, curve, motor, deeper) in [
        ("house_and_stock_well_in_whole", true, false, true, true),
        ("field_surface_pump", false, false, true, false),
        ("pump_curve_on_off", true, true, false, true),
        ("land_and_aquifer", true, false, false, true),
        ("every_place_in_si", true, true, true, true),
    ] {
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("golden/v1/{name}.evaluation.json"));
        let kept: Value = serde_json::from_str(&text(&path)).unwrap();
        let at = |pointer: &str| kept.pointer(pointer).unwrap_or_else(|| panic!("{name}: {pointer}"));
        assert_eq!(*at("/errors"), serde_json::json!([]), "{name}");
        for pointer in ["/water/head/total", "/water/pump/duty/shaft", "/motor/of_rating", "/at_depth/saving/net"] {
            assert!(at(pointer)["value"].is_number(), "{name}: {pointer}");
        }
        assert_eq!(at("/levels/pumping_level").is_object(), well, "{name}");
        assert_eq!(at("/water/suction_head").is_object(), !well, "{name}");
        assert_eq!(at("/water/pump/frequency").is_object(), curve, "{name}");
        assert_eq!(at("/ways_in_deeper_water").is_array(), deeper, "{name}");
        let job = job(&Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("golden/v1/{name}.job.json")));
        assert_eq!(job.get(Field::MotorPower).is_some(), motor, "{name}");
    }
}

/// What the stored jobs with a supply are kept for.
#[test]
fn the_stored_jobs_run_from_the_motor_to_the_pole() {
    for (name, picked, chosen, own) in [
        ("house_and_stock_well_on_its_supply", serde_json::json!({"kind": "doubling"}), false, 0),
        ("field_surface_pump_on_its_supply", serde_json::json!({"kind": "large_low_harmonic"}), false, 0),
        ("every_place_with_supply_in_si", serde_json::json!({"own": "Variador 1"}), true, 2),
    ] {
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("golden/v1/{name}.evaluation.json"));
        let kept: Value = serde_json::from_str(&text(&path)).unwrap();
        let at = |pointer: &str| kept.pointer(pointer).unwrap_or_else(|| panic!("{name}: {pointer}"));
        assert_eq!((at("/errors"), at("/power/waits_for")), (&serde_json::json!([]), &serde_json::json!([])), "{name}");
        assert_eq!((at("/power/picked"), at("/power/chosen")), (&picked, &Value::Bool(chosen)), "{name}");
        let ways = at("/power/ways").as_array().unwrap();
        assert_eq!(ways.len(), 14 + own, "{name}");
        let fits: std::collections::BTreeSet<_> = ways.iter().map(|way| way["fits"].as_str().unwrap()).collect();
        assert_eq!(fits.into_iter().collect::<Vec<_>>(), ["no", "with_care"], "{name}");
        let way = ways.iter().find(|way| way["way"] == picked).unwrap();
        for part in ["frame", "input", "supply", "pole", "generator", "lead", "volts", "cost"] {
            assert!(way[part].is_object(), "{name}: {part}");
        }
    }
}
