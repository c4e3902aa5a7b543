//! Job files that can't be read.

use wellwright_core::evaluate::{evaluate, report};
use wellwright_core::job::wire::{self, WireError};
use wellwright_core::job::{Field, Job};

/// Reads a text that must be refused; gives its code and where the trouble stands.
fn refused(text: &str) -> (&'static str, String) {
    let error = wire::read_text(text).expect_err(&text[..text.len().min(80)]);
    assert!(!error.to_string().is_empty());
    (error.code(), error.path().to_owned())
}

/// A job of version 1 with this inside.
fn with(inside: &str) -> String {
    format!("{{\"schema\": 1, {inside}}}")
}

#[test]
fn what_is_not_json_is_said_to_be_none_with_line_and_column() {
    let cases = [
        ("", (1, 0)),
        (" \n ", (2, 1)),
        ("hello", (1, 1)),
        ("{\"schema\": 1,", (1, 13)),
        ("{\"schema\": 1, \"site\": {\"pump_set", (1, 32)),
        ("{\"schema\": 1}\n{}", (2, 1)),
        ("\u{feff}{\"schema\": 1}", (1, 1)),
        ("{'schema': 1}", (1, 2)),
        // No sum can hold these: JSON has no NaN, and a float ends at 1.8e308.
        ("{\"schema\": 1,\n \"motor\": {\"power\": {\"value\": NaN, \"unit\": \"hp\"}}}", (2, 31)),
        ("{\"schema\": 1,\n \"motor\": {\"power\": {\"value\": 1e999, \"unit\": \"hp\"}}}", (2, 35)),
    ];
    for (text, (line, column)) in cases {
        let error = wire::read_text(text).unwrap_err();
        let shown = &text[..text.len().min(80)];
        assert_eq!(error, WireError::NotJson { line, column }, "{shown:?}");
        assert_eq!((error.code(), error.path()), ("not_json", ""), "{shown:?}");
    }
}

/// Nested deeper than any job: refused within the first few hundred brackets, before the stack runs out.
#[test]
fn a_file_nested_without_end_is_refused() {
    for (open, close) in [("[", "]"), ("{\"a\":", "}")] {
        let nested = format!("{{\"schema\": 1, \"name\": {}1{}}}", open.repeat(100_000), close.repeat(100_000));
        let error = wire::read_text(&nested).unwrap_err();
        assert!(matches!(error, WireError::NotJson { line: 1, column: 100..1000 }), "{error:?}");
    }
}

#[test]
fn a_file_cut_short_anywhere_is_refused() {
    let whole = include_str!("../../core/examples/jobs/house_and_stock_well.json").trim_end();
    assert!(wire::read_text(whole).is_ok());
    for end in (0..whole.len()).filter(|end| whole.is_char_boundary(*end)) {
        assert_eq!(refused(&whole[..end]), ("not_json", String::new()), "cut after {end} bytes");
    }
}

#[test]
fn a_file_must_say_a_version_that_is_known() {
    for schema in ["0", "\"1\"", "1.5", "-1", "null", "true", "[1]", "{}", "1e30"] {
        assert_eq!(refused(&format!("{{\"schema\": {schema}}}")), ("no_schema", "schema".into()), "{schema}");
    }
    for text in ["{}", "{\"name\": \"x\"}", "[]", "[[[[{\"schema\": 1}]]]]", "null", "7", "\"schema\"", "true"] {
        assert_eq!(refused(text), ("no_schema", "schema".into()), "{text}");
    }
    for schema in [2, 99, u64::MAX] {
        let text = format!("{{\"schema\": {schema}, \"unknown\": [1, 2]}}");
        assert_eq!(wire::read_text(&text), Err(WireError::Newer { schema }));
        assert_eq!(refused(&text), ("newer_schema", "schema".into()));
    }
}

#[test]
fn a_field_that_is_unknown_or_of_the_wrong_type_is_named() {
    let cases = [
        ("\"depth\": 620", "depth"),
        ("\"Site\": {}", "Site"),
        ("\"site\": {\"depth\": null}", "site.depth"),
        ("\"motor\": {\"power\": {\"value\": 1, \"unit\": \"hp\", \"note\": 1}}", "motor.power.note"),
        ("\"name\": 7", "name"),
        ("\"name\": null", "name"),
        ("\"note\": [\"x\"]", "note"),
        ("\"demo\": 1", "demo"),
        ("\"site\": 7", "site"),
        ("\"site\": null", "site"),
        ("\"site\": []", "site"),
        ("\"site\": [null, null, null]", "site"),
        ("\"motor\": {\"power\": 7.5}", "motor.power"),
        ("\"motor\": {\"power\": [7.5, \"hp\"]}", "motor.power"),
        ("\"motor\": {\"power\": \"7.5 hp\"}", "motor.power"),
        ("\"motor\": {\"power\": {\"value\": 7.5}}", "motor.power"),
        ("\"motor\": {\"power\": {\"unit\": \"hp\"}}", "motor.power"),
        ("\"motor\": {\"power\": {\"value\": \"7.5\", \"unit\": \"hp\"}}", "motor.power.value"),
        ("\"motor\": {\"power\": {\"value\": null, \"unit\": \"hp\"}}", "motor.power.value"),
        ("\"motor\": {\"power\": {\"value\": 7.5, \"unit\": \"HP\"}}", "motor.power.unit"),
        ("\"motor\": {\"power\": {\"value\": 7.5, \"unit\": null}}", "motor.power.unit"),
        ("\"motor\": {\"power\": {\"value\": 7.5, \"unit\": {\"hp\": null}}}", "motor.power.unit"),
        ("\"motor\": {\"kind\": \"jet\"}", "motor.kind"),
        ("\"motor\": {\"kind\": {\"surface\": null}}", "motor.kind"),
        ("\"cable\": {\"metal\": \"gold\"}", "cable.metal"),
        ("\"cable\": {\"build\": 1}", "cable.build"),
        ("\"cable\": {\"insulation\": 75}", "cable.insulation"),
        ("\"cable\": {\"terminals_marked_75\": \"yes\"}", "cable.terminals_marked_75"),
        ("\"cable\": {\"most_sets\": \"1\"}", "cable.most_sets"),
        ("\"prices\": {\"source\": 1}", "prices.source"),
    ];
    for (inside, path) in cases {
        assert_eq!(refused(&with(inside)), ("bad_field", path.into()), "{inside}");
    }
}

#[test]
fn sets_beyond_what_can_be_asked_for_are_refused_and_not_clamped() {
    for (sets, accepted) in
        [("0", "1 to 4"), ("5", "1 to 4"), ("255", "1 to 4"), ("256", "u8"), ("-1", "u8"), ("1.5", "u8")]
    {
        let text = with(&format!("\"cable\": {{\"most_sets\": {sets}}}"));
        let error = wire::read_text(&text).unwrap_err();
        assert_eq!((error.code(), error.path()), ("bad_field", "cable.most_sets"), "{sets}");
        assert!(error.to_string().contains(accepted), "{error}");
    }
}

/// A figure that only the sums can judge is kept by the reader and refused by the checks.
#[test]
fn a_figure_that_no_sum_can_use_is_kept_and_named() {
    let cases = [
        ("\"motor\": {\"power\": {\"value\": 7.5, \"unit\": \"ft\"}}", Field::MotorPower, "wrong_unit"),
        ("\"motor\": {\"power\": {\"value\": 1e308, \"unit\": \"kW\"}}", Field::MotorPower, "out_of_range"),
        ("\"motor\": {\"power\": {\"value\": -7.5, \"unit\": \"hp\"}}", Field::MotorPower, "out_of_range"),
        ("\"motor\": {\"power\": {\"value\": 5600, \"unit\": \"W\"}}", Field::MotorPower, "wrong_unit"),
        ("\"site\": {\"pump_setting\": {\"value\": -1e-300, \"unit\": \"ft\"}}", Field::PumpSetting, "out_of_range"),
        ("\"site\": {\"pump_setting\": {\"value\": 3000.001, \"unit\": \"ft\"}}", Field::PumpSetting, "out_of_range"),
        ("\"site\": {\"static_level\": {\"value\": 3000.1, \"unit\": \"ft\"}}", Field::StaticLevel, "out_of_range"),
        ("\"site\": {\"drawdown\": {\"value\": -1, \"unit\": \"m\"}}", Field::Drawdown, "out_of_range"),
        ("\"site\": {\"well_depth\": {\"value\": 40, \"unit\": \"A\"}}", Field::WellDepth, "wrong_unit"),
        ("\"cable\": {\"allowed_drop\": {\"value\": 0, \"unit\": \"%\"}}", Field::AllowedDrop, "out_of_range"),
        ("\"prices\": {\"cable_metal\": {\"value\": 9, \"unit\": \"$\"}}", Field::CableMetal, "wrong_unit"),
    ];
    for (inside, field, code) in cases {
        let job = wire::read_text(&with(inside)).unwrap();
        let answer = evaluate(&job);
        let error = answer.errors.iter().find(|error| error.field() == field).unwrap_or_else(|| panic!("{inside}"));
        assert_eq!(error.code(), code, "{inside}");
        assert_eq!(error.given(), job.get(field), "{inside}");
        assert_eq!(error.accepted(), field.spec().accepted, "{inside}");
        let told = report("", &answer);
        let told = told["errors"].as_array().unwrap().iter().find(|error| error["field"] == field.path()).unwrap();
        assert_eq!((&told["code"], &told["accepted"]["min"]), (&code.into(), &field.spec().accepted.min.into()));
    }
}

#[test]
fn a_name_of_a_megabyte_changes_nothing_else() {
    let name = "pozo \u{1f4a7} \"\\ ".repeat(80_000);
    let mut job = wire::read_text(include_str!("../../core/examples/jobs/house_and_stock_well.json")).unwrap();
    let short = evaluate(&job);
    job.name.clone_from(&name);
    job.note = name;
    assert!(job.name.len() > 1_000_000);
    assert_eq!(evaluate(&job), short);
    assert_eq!(wire::read_text(&wire::write(&job).to_string()), Ok(job));
}

#[test]
fn an_array_is_no_job_but_each_of_its_jobs_is() {
    let value = wire::parse("[{\"schema\": 1}, {\"schema\": 1, \"name\": \"b\"}]").unwrap();
    assert_eq!(wire::read(&value).unwrap_err(), WireError::NoSchema);
    let jobs: Vec<Job> = value.as_array().unwrap().iter().map(|job| wire::read(job).unwrap()).collect();
    assert_eq!(jobs[1].name, "b");
}

/// A file of many jobs: each is read or refused by itself.
#[test]
fn a_file_of_many_jobs_is_read_one_by_one() {
    let job = |name: &str| format!(r#"{{"schema": 1, "name": "{name}"}}"#);
    let names = |text: &str| -> Vec<Option<String>> {
        wire::read_many(text).unwrap().into_iter().map(|job| job.ok().map(|job| job.name)).collect()
    };
    assert_eq!(names(&job("A")), [Some("A".to_owned())]);
    let many = format!("[{}, {{\"schema\": 99}}, {}]", job("A"), job("B"));
    assert_eq!(names(&many), [Some("A".to_owned()), None, Some("B".to_owned())]);
    assert!(names("[]").is_empty());
    assert!(wire::read_many("x").is_err());
}
