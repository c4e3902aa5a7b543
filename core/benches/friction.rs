//! `cargo bench -p wellwright-core --bench friction`: the friction factor, alone and in a section's loss.
#![allow(missing_docs, clippy::unwrap_used)]

use criterion::{Criterion, criterion_group, criterion_main};
use std::hint::black_box;
use wellwright_core::quantity::{fahrenheit, feet, gpm, inches};
use wellwright_core::water::friction::{Pipe, colebrook_white};
use wellwright_core::water::line::{Section, section_loss};
use wellwright_core::water::properties::water;

fn benches(c: &mut Criterion) {
    c.bench_function("Colebrook-White", |b| b.iter(|| colebrook_white(black_box(43_763.0), black_box(1.118e-3))));

    let pipe = Pipe { length: feet(620.0), inside_diameter: inches(1.610), roughness: feet(0.00015) };
    let section = Section { pipe, hazen_williams: 120.0, fittings: 9.0 };
    let viscosity = water(fahrenheit(60.0)).unwrap().viscosity;
    let flow = gpm(25.0);
    c.bench_function("one section, both methods", |b| b.iter(|| section_loss(black_box(flow), section, viscosity)));
    c.bench_function("water at a temperature", |b| b.iter(|| water(black_box(fahrenheit(60.0)))));
}

criterion_group!(friction, benches);
criterion_main!(friction);
