//! Reads one job, or an array of jobs, as JSON and prints the evaluation(s) as JSON.
//!
//! `cargo run -q --release -p wellwright-core --example evaluate -- FILE`; `-` reads standard input.
//! Exit status 2 and a JSON error that names the field where a job can't be used; nothing else is printed then.

use serde_json::{Value, json};
use std::io::{Read as _, Write as _};
use std::process::ExitCode;
use wellwright_core::evaluate::{error_report, evaluate, report};
use wellwright_core::job::wire::{self, WireError};

fn main() -> ExitCode {
    let Some(path) = std::env::args().nth(1) else {
        return refuse(&json!({"code": "no_file", "detail": "name a job file, or - for standard input"}));
    };
    match text(&path) {
        Ok(text) => match answer(&text) {
            Ok(value) => {
                print(&value);
                ExitCode::SUCCESS
            }
            Err(error) => refuse(&error),
        },
        Err(error) => refuse(&json!({"code": "not_read", "file": path, "detail": error.to_string()})),
    }
}

fn text(path: &str) -> std::io::Result<String> {
    if path == "-" {
        let mut text = String::new();
        std::io::stdin().read_to_string(&mut text).map(|_| text)
    } else {
        std::fs::read_to_string(path)
    }
}

fn answer(text: &str) -> Result<Value, Value> {
    match wire::parse(text).map_err(|error| wire_error(&error, None))? {
        Value::Array(jobs) => many(&jobs).map(Value::Array),
        job => one(&job, None),
    }
}

/// Evaluates jobs on every core; the answers keep the jobs' order, and the first bad job decides.
fn many(jobs: &[Value]) -> Result<Vec<Value>, Value> {
    let cores = std::thread::available_parallelism().map_or(1, usize::from);
    let size = jobs.len().div_ceil(cores).max(1);
    std::thread::scope(|scope| {
        let parts: Vec<_> = jobs
            .chunks(size)
            .enumerate()
            .map(|(part, chunk)| {
                scope.spawn(move || {
                    let numbered = chunk.iter().enumerate();
                    numbered.map(|(index, job)| one(job, Some(part * size + index))).collect::<Result<Vec<_>, _>>()
                })
            })
            .collect();
        let mut answers = Vec::with_capacity(jobs.len());
        for part in parts {
            answers.extend(part.join().map_err(|_| json!({"code": "internal"}))??);
        }
        Ok(answers)
    })
}

fn one(value: &Value, index: Option<usize>) -> Result<Value, Value> {
    let job = wire::read(value).map_err(|error| wire_error(&error, index))?;
    let answer = evaluate(&job);
    match answer.errors.first() {
        None => Ok(report(&job.name, &answer)),
        Some(error) => Err(numbered(error_report(error), index)),
    }
}

fn wire_error(error: &WireError, index: Option<usize>) -> Value {
    numbered(json!({"code": error.code(), "field": error.path(), "detail": error.to_string()}), index)
}

fn numbered(mut error: Value, index: Option<usize>) -> Value {
    if let Some(index) = index {
        error["job"] = json!(index);
    }
    error
}

fn refuse(error: &Value) -> ExitCode {
    print(&json!({ "error": error }));
    ExitCode::from(2)
}

/// Prints a value; a reader that has gone away, as `| head` does, is no error of ours.
fn print(value: &Value) {
    let _ = writeln!(std::io::stdout().lock(), "{value:#}");
}
