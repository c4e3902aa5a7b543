//! `cargo bench -p wellwright-core`: one evaluation, with and without a curve, one full sweep, deeper water, many jobs.
#![allow(missing_docs, clippy::unwrap_used)]

use criterion::{Criterion, criterion_group, criterion_main};
use std::hint::black_box;
use wellwright_core::evaluate::range::saving_range;
use wellwright_core::evaluate::ranking::ranking;
use wellwright_core::evaluate::{Basis, Evaluation, Sense, evaluate};
use wellwright_core::job::{Field, Job, Way, wire};
use wellwright_core::pump::demo::HOUSE_WELL;
use wellwright_core::quantity::{Entry, Unit, feet};

fn job() -> Job {
    wire::read_text(include_str!("../examples/jobs/house_and_stock_well.json")).unwrap()
}

/// What both ways cost at 200 depths of the water, as a picture of it asks.
fn read_deeper(answer: &Evaluation) -> f64 {
    let sweep = answer.deeper.as_ref().unwrap();
    let depths = (0..200).map(|step| feet(200.0 + 14.0 * f64::from(step)));
    let both = |depth| Way::ALL.map(|way| sweep.way(way).cost_at(depth, Basis::Installed).map_or(0.0, |cost| cost.0));
    depths.map(|depth| both(depth).iter().sum::<f64>()).sum()
}

fn benches(c: &mut Criterion) {
    let whole = job();
    c.bench_function("one evaluation", |b| b.iter(|| evaluate(black_box(&whole))));

    // The operating point, the speed and the largest power on the curve come on top.
    let mut curved = job();
    curved.curve = HOUSE_WELL.text();
    c.bench_function("one evaluation with a curve", |b| b.iter(|| evaluate(black_box(&curved))));

    let answer = evaluate(&whole);
    c.bench_function("deeper water read at 200 depths", |b| b.iter(|| read_deeper(black_box(&answer))));
    c.bench_function("deeper water evaluated and read", |b| b.iter(|| read_deeper(&evaluate(black_box(&whole)))));

    // Without a depth the evaluation is the checks and the sweep of both ways, 0 to 3,000 ft, with their break-evens.
    let mut no_depth = job();
    no_depth.set(Field::PumpSetting, None);
    c.bench_function("one full sweep, both ways", |b| b.iter(|| evaluate(black_box(&no_depth))));

    // Four more ways along the curve, 0 to 3,000 ft: what they need beyond the lead, every step, energy of the years.
    let keys: Vec<_> = answer.can_be_beside().iter().take(4).map(|place| answer.ways.all[*place].key()).collect();
    let four = |answer: &Evaluation| answer.with_beside(&whole, Sense::LongerLead, &keys);
    assert_eq!(four(&answer).sweep.unwrap().beside.len(), 4);
    c.bench_function("a sweep of four ways", |b| b.iter(|| four(black_box(&answer))));

    let asked = four(&answer).sweep.unwrap();
    let pairs = || asked.beside.iter().flat_map(|one| asked.ways.iter().map(move |other| (one, other)));
    let even = || pairs().map(|(one, other)| one.even_with(other, Basis::Lifetime).crossings.len()).sum::<usize>();
    c.bench_function("break-evens of eight pairs over the years", |b| b.iter(even));
    c.bench_function("the range of the saving", |b| b.iter(|| saving_range(black_box(&answer)).is_ok()));
    c.bench_function("the ranking of the assumptions", |b| b.iter(|| ranking(black_box(&whole), &answer)));

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
