//! The JSON Schema of a job against the stored jobs, the examples and files that the reader refuses.

use super::{stored, text};
use boon::{Compiler, Schemas};
use serde_json::{Value, json};
use std::path::PathBuf;
use wellwright_core::job::wire;
use wellwright_tests::root;

/// A compiled schema of a job.
struct Checker {
    schemas: Schemas,
    index: boon::SchemaIndex,
}

impl Checker {
    fn new() -> Self {
        let (mut schemas, mut compiler) = (Schemas::new(), Compiler::new());
        compiler.add_resource("urn:job", wire::schema()).unwrap();
        let index = compiler.compile("urn:job", &mut schemas).unwrap();
        Self { schemas, index }
    }

    fn fault(&self, job: &Value) -> Option<String> {
        self.schemas.validate(job, self.index).err().map(|error| error.to_string())
    }
}

fn examples() -> Vec<PathBuf> {
    let folder = root().join("core/examples/jobs");
    let entries = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    let found: Vec<_> = entries.filter(|path| path.extension().is_some_and(|end| end == "json")).collect();
    assert!(!found.is_empty());
    found
}

#[test]
fn every_example_and_stored_job_fits_the_schema() {
    let checker = Checker::new();
    for path in stored().into_iter().chain(examples()) {
        let file: Value = serde_json::from_str(&text(&path)).unwrap();
        // A figure in the wrong unit is the reader's to keep and the sums' to refuse; the schema is the stricter.
        if path.ends_with("figures_that_no_sum_can_use.job.json") {
            assert!(checker.fault(&file).is_some_and(|fault| fault.contains("/motor/power/unit")));
            continue;
        }
        assert_eq!(checker.fault(&file), None, "{}", path.display());
        let written = wire::write(&wire::read(&file).unwrap());
        assert_eq!(checker.fault(&written), None, "{} as written", path.display());
    }
}

#[test]
fn every_example_opens_and_evaluates() {
    for path in examples() {
        let job = wire::read_text(&text(&path)).unwrap();
        let answer = wellwright_core::evaluate::evaluate(&job);
        assert!(answer.errors.is_empty() && answer.here.is_some(), "{}: {:?}", path.display(), answer.errors);
    }
}

fn bad_supplies() -> Vec<Value> {
    let supply = |name: &str, value: Value| json!({"schema": 1, "supply": {name: value}});
    vec![
        supply("volts", json!(240)),
        supply("volts", json!({"value": 240, "unit": "kV"})),
        supply("place", json!("outside")),
        supply("shaded", json!("yes")),
        supply("enclosure", json!("3r")),
        supply("grounding", json!("corner")),
        supply("most_sets", json!(0)),
        supply("three_phase", json!("480")),
        supply("hookup", json!("zigzag")),
        supply("families", json!(null)),
        supply("families", json!("x".repeat(50_001))),
        supply("way", json!(7)),
        supply("waystation", json!(null)),
        json!({"schema": 1, "energy": {"years": 12}}),
        json!({"schema": 1, "motor": {"inverter_duty": 1}}),
    ]
}

/// Files that both the schema and the reader refuse: a program that checks by the schema is not surprised by us.
#[test]
fn what_the_reader_refuses_the_schema_refuses() {
    let checker = Checker::new();
    let motor = |power: Value| json!({"schema": 1, "motor": {"power": power}});
    let cable = |name: &str, value: Value| json!({"schema": 1, "cable": {name: value}});
    let bad = [
        json!(null),
        json!([]),
        json!([{"schema": 1}]),
        json!({}),
        json!({"schema": 0}),
        json!({"schema": 2}),
        json!({"schema": "1"}),
        json!({"schema": 1, "depth": 620}),
        json!({"schema": 1, "name": 7}),
        json!({"schema": 1, "site": null}),
        json!({"schema": 1, "site": []}),
        json!({"schema": 1, "site": [null, null, null]}),
        json!({"schema": 1, "demo": "yes"}),
        motor(json!(7.5)),
        motor(json!([7.5, "hp"])),
        motor(json!({"value": 7.5})),
        motor(json!({"unit": "hp"})),
        motor(json!({"value": "7.5", "unit": "hp"})),
        motor(json!({"value": 7.5, "unit": "furlong"})),
        motor(json!({"value": 7.5, "unit": {"hp": null}})),
        motor(json!({"value": 7.5, "unit": "hp", "note": "x"})),
        cable("metal", json!("gold")),
        cable("metal", json!({"copper": null})),
        cable("terminals_marked_75", json!("yes")),
        json!({"schema": 1, "demand": {"flow": [25, "gpm"]}}),
        json!({"schema": 1, "demand": {"flow": {"value": 25, "unit": "gal"}, "by": "flows"}}),
        json!({"schema": 1, "well": {"drawdown_by": "Measured"}}),
        json!({"schema": 1, "line": {"drop_series": "steel_schedule_80"}}),
        json!({"schema": 1, "line": {"surface_series": ["pvc_sdr_26"]}}),
        json!({"schema": 1, "line": {"drop_size": 2}}),
        json!({"schema": 1, "line": {"friction": "darcy"}}),
        json!({"schema": 1, "pump": {"control": "on-off"}}),
        json!({"schema": 1, "pump": {"curve": null}}),
        json!({"schema": 1, "pump": {"curve": [[0, 820], [25, 676]]}}),
        json!({"schema": 1, "pump": {"curve": "0,820\n".repeat(9000)}}),
        json!({"schema": 1, "pump": {"best": null}}),
        cable("most_sets", json!(0)),
        cable("most_sets", json!(5)),
        cable("most_sets", json!(1.5)),
        cable("remedy", json!("reactor")),
    ];
    for file in bad.into_iter().chain(bad_supplies()) {
        assert!(wire::read(&file).is_err(), "the reader takes {file}");
        assert!(checker.fault(&file).is_some(), "the schema takes {file}");
    }
}
