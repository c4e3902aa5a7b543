//! The small well of a row in the list of jobs.

use leptos::prelude::*;
use wellwright_core::quantity::{Length, feet};

/// Size of the drawing, and room for the well's full depth.
const WIDTH: f64 = 44.0;
const HEIGHT: f64 = 66.0;
const DEPTH_ROOM: f64 = 58.0;

/// Height of the pump's intake under the ground line.
fn drop_of(depth: Length, deepest: Length) -> f64 {
    let deepest = deepest.max(depth).max(feet(1.0));
    (depth / deepest).value.clamp(0.0, 1.0) * DEPTH_ROOM
}

/// A well that hangs from the ground line above it, its depth to the scale of the deepest.
#[component]
pub fn WellMark(
    /// Depth of the pump; only the ground without one.
    depth: Option<Length>,
    /// Depth that takes the full height.
    deepest: Length,
) -> impl IntoView {
    let ground: String = (0..5).filter(|n| *n != 2).map(|n| format!("M{} 0l-5 6", 9 + 8 * n)).collect();
    let well = depth.map(|depth| {
        let pump = drop_of(depth, deepest);
        let (casing, pipe) = (pump + 5.0, (pump - 7.0).max(0.0));
        let motor = 5.0_f64.min(HEIGHT - pump);
        view! {
            <path class="f-void" d=format!("M16 0H28V{casing:.1}H16z") />
            <path class="l-casing" d=format!("M16 0V{casing:.1}M28 0V{casing:.1}") />
            <path class="l-thin" d=format!("M22 0V{pipe:.1}") />
            <path class="f-ink" d=format!("M19.5 {pipe:.1}h5V{:.1}h-5z", pump + motor) />
        }
    });
    view! {
        <svg class="well-mark" aria-hidden="true" width=WIDTH height=HEIGHT viewBox=format!("0 0 {WIDTH} {HEIGHT}")>
            <path class="l-hair" d=ground />
            {well}
        </svg>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn depths_are_to_one_scale() {
        assert_eq!(drop_of(feet(500.0), feet(1000.0)), DEPTH_ROOM / 2.0);
        assert_eq!(drop_of(feet(1000.0), feet(1000.0)), DEPTH_ROOM);
        assert_eq!(drop_of(feet(0.0), feet(0.0)), 0.0);
    }
}
