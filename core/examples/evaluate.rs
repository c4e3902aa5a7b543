//! Reads one job, or an array of jobs, as JSON and prints the evaluation(s) as JSON.
//!
//! `cargo run -q --release -p wellwright-core --example evaluate -- FILE`; `-` reads standard input.
//! Exit status 2 and a JSON error that names the field where a job can't be used; nothing else is printed then.
//!
//! `--lines` reads a job a line from standard input, however many, and prints an evaluation a line in their order; with
//! `--brief` behind it only what it comes to: both ways at the depth, the saving, the break-even, the findings. A line that
//! can't be used gives an error in its place, and exit status 2 at the end.

use serde_json::{Value, json};
use std::io::{BufRead as _, BufWriter, Read as _, Write as _};
use std::process::ExitCode;
use wellwright_core::evaluate::{Evaluation, brief, error_report, evaluate, report};
use wellwright_core::job::Job;
use wellwright_core::job::wire::{self, WireError};

/// How an evaluation is told.
type Tell = fn(&Job, &Evaluation) -> Value;
const WHOLE: Tell = |job, answer| report(&job.name, answer);
const BRIEF: Tell = |job, answer| {
    let mut told = brief(answer);
    told["job"] = json!(job.name);
    told
};

fn main() -> ExitCode {
    let Some(path) = std::env::args().nth(1) else {
        return refuse(&json!({"code": "no_file", "detail": "name a job file, or - for standard input"}));
    };
    if path == "--lines" {
        return match std::env::args().nth(2).as_deref() {
            None => lines(WHOLE),
            Some("--brief") => lines(BRIEF),
            Some(other) => refuse(&json!({"code": "unknown_option", "detail": other})),
        };
    }
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

/// Lines that are worked on at a time, for each core.
const AT_A_TIME: usize = 256;

/// Jobs by the line: some at a time on every core, so that memory stays as it is however many come.
fn lines(tell: Tell) -> ExitCode {
    let cores = std::thread::available_parallelism().map_or(1, usize::from);
    let mut out = BufWriter::new(std::io::stdout().lock());
    let (mut coming, mut number, mut all_good) = (std::io::stdin().lock().lines(), 0, true);
    loop {
        let some: Vec<_> = coming.by_ref().take(cores * AT_A_TIME).collect();
        if some.is_empty() {
            break;
        }
        let size = some.len().div_ceil(cores);
        let told: Vec<(bool, String)> = std::thread::scope(|scope| {
            let parts = some.chunks(size).enumerate();
            let parts: Vec<_> =
                parts.map(|(part, chunk)| scope.spawn(move || of_lines(chunk, number + part * size, tell))).collect();
            parts.into_iter().flat_map(|part| part.join().unwrap_or_default()).collect()
        });
        number += some.len();
        for (good, text) in told {
            all_good &= good;
            // A reader that has gone away wants no more.
            if writeln!(out, "{text}").is_err() {
                return ExitCode::SUCCESS;
            }
        }
    }
    if all_good { ExitCode::SUCCESS } else { ExitCode::from(2) }
}

/// What is told of each line, the first of them having this number; whether it is an evaluation.
fn of_lines(lines: &[std::io::Result<String>], first: usize, tell: Tell) -> Vec<(bool, String)> {
    let told = |(at, line): (usize, &std::io::Result<String>)| {
        let index = Some(first + at);
        let read = |text: &String| wire::parse(text).map_err(|error| wire_error(&error, index));
        let answer = match line {
            Ok(text) => read(text).and_then(|job| one(&job, index, tell)),
            Err(error) => Err(numbered(json!({"code": "not_read", "detail": error.to_string()}), index)),
        };
        match answer {
            Ok(value) => (true, value.to_string()),
            Err(error) => (false, json!({ "error": error }).to_string()),
        }
    };
    lines.iter().enumerate().map(told).collect()
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
        job => one(&job, None, WHOLE),
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
                    numbered
                        .map(|(index, job)| one(job, Some(part * size + index), WHOLE))
                        .collect::<Result<Vec<_>, _>>()
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

fn one(value: &Value, index: Option<usize>, tell: Tell) -> Result<Value, Value> {
    let job = wire::read(value).map_err(|error| wire_error(&error, index))?;
    let answer = evaluate(&job);
    match answer.errors.first() {
        None => Ok(tell(&job, &answer)),
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
