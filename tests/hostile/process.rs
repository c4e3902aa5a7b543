//! The `evaluate` example of core, run as another program would run it.

use serde_json::{Value, json};
use std::io::Write as _;
use std::path::PathBuf;
use std::process::{Command, Output, Stdio};
use wellwright_core::evaluate::{evaluate, report};
use wellwright_core::job::wire;
use wellwright_tests::root;

/// The example, built by this package from its source in core.
fn program() -> Command {
    Command::new(env!("CARGO_BIN_EXE_evaluate"))
}

/// Runs the example with this on its standard input.
fn fed(input: &[u8]) -> Output {
    let mut command = program();
    command.arg("-").stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped());
    let mut child = command.spawn().unwrap();
    child.stdin.take().unwrap().write_all(input).unwrap();
    child.wait_with_output().unwrap()
}

fn example() -> PathBuf {
    root().join("core/examples/jobs/house_and_stock_well.json")
}

fn house() -> Value {
    serde_json::from_str(&std::fs::read_to_string(example()).unwrap()).unwrap()
}

fn named(name: &str, depth: f64) -> Value {
    let mut job = house();
    job["name"] = json!(name);
    job["site"]["pump_setting"]["value"] = json!(depth);
    job
}

fn answered(output: &Output) -> Value {
    assert_eq!(output.status.code(), Some(0), "{output:?}");
    assert!(output.stderr.is_empty(), "{output:?}");
    serde_json::from_slice(&output.stdout).unwrap()
}

/// The error that a refusal prints: status 2, JSON on standard output, nothing else.
fn refused(output: &Output) -> Value {
    assert_eq!(output.status.code(), Some(2), "{output:?}");
    assert!(output.stderr.is_empty(), "{output:?}");
    let told: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!(told.as_object().unwrap().len(), 1, "{told}");
    told["error"].clone()
}

#[test]
fn one_job_gives_its_evaluation() {
    let told = answered(&program().arg(example()).output().unwrap());
    let job = wire::read(&house()).unwrap();
    assert_eq!(told, report(&job.name, &evaluate(&job)));
    assert_eq!(told, answered(&fed(house().to_string().as_bytes())));
}

#[test]
fn many_jobs_keep_their_order() {
    let jobs: Vec<Value> = (0..23).map(|i| named(&format!("well {i}"), 100.0 + 100.0 * f64::from(i))).collect();
    let told = answered(&fed(json!(jobs).to_string().as_bytes()));
    let told = told.as_array().unwrap();
    assert_eq!(told.len(), jobs.len());
    for (i, (told, job)) in told.iter().zip(&jobs).enumerate() {
        assert_eq!(told["job"], json!(format!("well {i}")));
        let job = wire::read(job).unwrap();
        assert_eq!(told, &report(&job.name, &evaluate(&job)), "job {i}");
    }
    assert_eq!(answered(&fed(b"[]")), json!([]));
}

#[test]
fn a_bad_figure_is_named_with_its_range_and_job() {
    let error = refused(&fed(named("deep", 3001.0).to_string().as_bytes()));
    let accepted = json!({"min": 0.0, "max": 3000.0, "unit": "ft"});
    let given = json!({"value": 3001.0, "unit": "ft"});
    let expected = json!({"code": "out_of_range", "field": "site.pump_setting", "given": given, "accepted": accepted});
    assert_eq!(error, expected);

    let jobs = json!([named("a", 1.0), named("b", 2.0), named("c", -1.0), named("d", 4.0), {"schema": 99}]);
    let error = refused(&fed(jobs.to_string().as_bytes()));
    assert_eq!((&error["field"], &error["job"]), (&json!("site.pump_setting"), &json!(2)), "the first bad job decides");
}

#[test]
fn a_bad_file_is_named_with_its_field_and_job() {
    let mut job = house();
    job["cable"]["metal"] = json!("gold");
    let error = refused(&fed(json!([house(), job]).to_string().as_bytes()));
    assert_eq!(
        (&error["code"], &error["field"], &error["job"]),
        (&json!("bad_field"), &json!("cable.metal"), &json!(1))
    );
    for (text, code, field) in [
        (&b""[..], "not_json", ""),
        (b"{\"schema\": 1", "not_json", ""),
        (b"{}", "no_schema", "schema"),
        (b"{\"schema\": 2}", "newer_schema", "schema"),
        (b"{\"schema\": 1}", "missing", "site.pump_setting"),
    ] {
        let error = refused(&fed(text));
        assert_eq!((&error["code"], &error["field"]), (&json!(code), &json!(field)), "{error}");
        assert_eq!(error["job"], Value::Null);
    }
}

/// Runs the example on lines.
fn lines(input: String, more: &[&str]) -> Output {
    let mut command = program();
    command.arg("--lines").args(more).stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped());
    let mut child = command.spawn().unwrap();
    let mut pipe = child.stdin.take().unwrap();
    let feeding = std::thread::spawn(move || pipe.write_all(input.as_bytes()));
    let output = child.wait_with_output().unwrap();
    feeding.join().unwrap().unwrap();
    output
}

#[test]
fn jobs_by_the_line_keep_their_order_and_a_bad_one_its_place() {
    let count = 1100;
    let line = |i: u32| match i {
        7 => "{\"schema\": 1".to_owned(),
        1099 => named("deep", 3001.0).to_string(),
        _ if i.is_multiple_of(100) => named(&format!("well {i}"), 100.0 + f64::from(i)).to_string(),
        _ => "{\"schema\": 1}".to_owned(),
    };
    let output = lines((0..count).map(|i| line(i) + "\n").collect(), &[]);
    assert_eq!(output.status.code(), Some(2));
    let text = String::from_utf8(output.stdout).unwrap();
    let told: Vec<Value> = text.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    assert_eq!(told.len(), count as usize);
    for (i, told) in told.iter().enumerate() {
        match i {
            7 => assert_eq!((&told["error"]["code"], &told["error"]["job"]), (&json!("not_json"), &json!(7))),
            1099 => assert_eq!(told["error"]["field"], "site.pump_setting"),
            _ if i.is_multiple_of(100) => assert_eq!(told["job"], json!(format!("well {i}"))),
            _ => assert_eq!((&told["error"]["code"], &told["error"]["job"]), (&json!("missing"), &json!(i))),
        }
    }
    assert_eq!(told[0], answered(&fed(line(0).as_bytes())));
    let output = lines(String::new(), &[]);
    assert!(output.status.success() && output.stdout.is_empty());
}

/// In short an evaluation says what it says at length.
#[test]
fn jobs_by_the_line_are_told_in_short() {
    let depths = [620.0, 200.0, 1400.0];
    let jobs: String = depths.map(|depth| named("well", depth).to_string() + "\n").concat();
    let told = |more: &[&str]| -> Vec<Value> {
        let output = lines(jobs.clone(), more);
        assert!(output.status.success());
        let text = String::from_utf8(output.stdout).unwrap();
        text.lines().map(|line| serde_json::from_str(line).unwrap()).collect()
    };
    let (whole, brief) = (told(&[]), told(&["--brief"]));
    assert_eq!((whole.len(), brief.len()), (3, 3));
    for (whole, brief) in whole.iter().zip(&brief) {
        for part in ["job", "findings", "at_depth", "break_even"] {
            assert_eq!(whole[part], brief[part], "{part}");
        }
        assert!(brief.get("power").is_none() && brief["at_depth"]["saving"].is_object(), "{brief}");
    }
    assert_eq!(refused(&lines(String::new(), &["--short"]))["code"], "unknown_option");
}

#[test]
fn a_file_that_is_not_there_or_not_text_is_refused() {
    let missing = root().join("core/examples/jobs/no_such_job.json");
    let error = refused(&program().arg(&missing).output().unwrap());
    assert_eq!((&error["code"], &error["file"]), (&json!("not_read"), &json!(missing.to_str().unwrap())));
    assert_eq!(refused(&program().arg(root()).output().unwrap())["code"], "not_read", "a folder");
    assert_eq!(refused(&fed(&[0xff, 0xfe, 0x7b]))["code"], "not_read", "not UTF-8");
    assert_eq!(refused(&program().output().unwrap())["code"], "no_file");
}
