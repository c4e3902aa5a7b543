//! Formulas that no row of a table tells: each worked by hand from its equation, with the figures beside it.

mod power;
mod water;

#[track_caller]
fn near(found: f64, expected: f64, off: f64) {
    assert!((found - expected).abs() <= off, "{found}, by hand {expected}");
}
