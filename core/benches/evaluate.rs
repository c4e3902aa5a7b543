//! `cargo bench -p wellwright-core`: one evaluation, one full sweep, many jobs.
#![allow(missing_docs, clippy::unwrap_used)]

use criterion::{Criterion, criterion_group, criterion_main};
use std::hint::black_box;
use wellwright_core::evaluate::evaluate;
use wellwright_core::job::{Field, Job, wire};
use wellwright_core::quantity::{Entry, Unit};

fn job() -> Job {
    wire::read_text(include_str!("../examples/jobs/house_and_stock_well.json")).unwrap()
}

fn benches(c: &mut Criterion) {
    let whole = job();
    c.bench_function("one evaluation", |b| b.iter(|| evaluate(black_box(&whole))));

    // Without a depth the evaluation is the checks and the sweep of both ways, 0 to 3,000 ft, with their break-evens.
    let mut no_depth = job();
    no_depth.set(Field::PumpSetting, None);
    c.bench_function("one full sweep, both ways", |b| b.iter(|| evaluate(black_box(&no_depth))));

    let text = include_str!("../examples/jobs/house_and_stock_well.json");
    c.bench_function("read one job file", |b| b.iter(|| wire::read_text(black_box(text))));

    let jobs: Vec<Job> = (0..10_000)
        .map(|i| {
            let mut job = job();
            job.set(Field::PumpSetting, Some(Entry::new(100.0 + f64::from(i % 2000), Unit::Foot)));
            job
        })
        .collect();
    let mut group = c.benchmark_group("many");
    group.sample_size(10);
    group.bench_function("ten thousand jobs, one core", |b| b.iter(|| jobs.iter().map(evaluate).count()));
    group.finish();
}

criterion_group!(evaluation, benches);
criterion_main!(evaluation);
