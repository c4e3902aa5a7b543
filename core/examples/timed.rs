//! Times what a drag asks for, without a bench's statistics, so that it runs in a WebAssembly engine too:
//! `cargo run -q --release -p wellwright-core --example timed`, or `tests/bench/wasm.sh` for the engine of a browser.
#![allow(clippy::unwrap_used)]

use std::hint::black_box;
use std::io::Write as _;
use std::time::Instant;
use wellwright_core::evaluate::range::saving_range;
use wellwright_core::evaluate::{Sense, evaluate};
use wellwright_core::job::wire;
use wellwright_core::water::friction::colebrook_white;

/// The best of several rounds, in microseconds for one call.
fn best(calls: u32, mut call: impl FnMut()) -> f64 {
    let round = |call: &mut dyn FnMut()| {
        let started = Instant::now();
        (0..calls).for_each(|_| call());
        started.elapsed().as_secs_f64() * 1e6 / f64::from(calls)
    };
    (0..12).map(|_| round(&mut call)).fold(f64::INFINITY, f64::min)
}

fn main() {
    let job = wire::read_text(include_str!("jobs/house_and_stock_well.json")).unwrap();
    let answer = evaluate(&job);
    let keys: Vec<_> = answer.can_be_beside().iter().take(4).map(|place| answer.ways.all[*place].key()).collect();
    let factors = || (0..1000).map(|i| colebrook_white(4e3 + 37.0 * f64::from(i), 1.2e-4).unwrap()).sum::<f64>();
    let figures = [
        ("a thousand friction factors", best(200, || _ = black_box(factors()))),
        ("one evaluation", best(200, || drop(black_box(evaluate(black_box(&job)))))),
        ("a sweep of four ways", best(500, || drop(black_box(answer.with_beside(&job, Sense::LongerLead, &keys))))),
        ("the range of the saving", best(100, || drop(black_box(saving_range(black_box(&answer)))))),
    ];
    let mut out = std::io::stdout().lock();
    for (what, microseconds) in figures {
        let _ = writeln!(out, "{what}: {microseconds:.1} µs");
    }
}
