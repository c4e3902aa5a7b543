//! Figures over time as a small line: what it is, the line, the first and the last in words.

use leptos::prelude::*;

/// Width and height of the line's room, and the room around it for its dots.
const ROOM: (f64, f64) = (160.0, 40.0);
const EDGE: f64 = 5.0;

/// A small line.
#[component]
pub fn Trend(
    /// What it is.
    label: &'static str,
    /// The figures, the first first.
    values: Vec<f64>,
    /// All of them in words.
    said: String,
) -> impl IntoView {
    let points = points(&values);
    let line = points.iter().map(|(x, y)| format!("{x:.1},{y:.1}")).collect::<Vec<_>>().join(" ");
    let dot = |(x, y): &(f64, f64)| view! { <circle cx=x.to_string() cy=y.to_string() r="3" /> };
    let dots = points.iter().map(dot).collect_view();
    view! {
        <li class="trend">
            <span>{label}</span>
            <svg viewBox=format!("0 0 {} {}", ROOM.0, ROOM.1) aria-hidden="true">
                <polyline points=line />
                {dots}
            </svg>
            <span class="said">{said}</span>
        </li>
    }
}

/// Where the figures stand: evenly across, the largest at the top; level in the middle where all are the same.
fn points(values: &[f64]) -> Vec<(f64, f64)> {
    let least = values.iter().copied().fold(f64::INFINITY, f64::min);
    let most = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let (wide, high) = (ROOM.0 - 2.0 * EDGE, ROOM.1 - 2.0 * EDGE);
    let last = values.len().saturating_sub(1).max(1) as f64;
    let place = |(index, value): (usize, &f64)| {
        let share = if most > least { (most - value) / (most - least) } else { 0.5 };
        (EDGE + wide * index as f64 / last, EDGE + high * share)
    };
    values.iter().enumerate().map(place).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_fills_its_room_and_a_level_one_lies_in_the_middle() {
        assert_eq!(points(&[1.0, 3.0, 2.0]), [(5.0, 35.0), (80.0, 5.0), (155.0, 20.0)]);
        assert_eq!(points(&[7.0, 7.0]), [(5.0, 20.0), (155.0, 20.0)]);
        assert_eq!(points(&[7.0]), [(5.0, 20.0)]);
        assert!(points(&[]).is_empty());
    }
}
