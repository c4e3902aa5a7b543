//! The pictures of the lesson: power as a box of volts and amps, wires cut through, sizes along the lead. They hold no
//! words, so that they may grow with the page; what they show is said beside them.

use leptos::prelude::*;
use wellwright_core::evaluate::Sweep;
use wellwright_core::job::Way;
use wellwright_core::papers::Lesson;
use wellwright_core::quantity::{
    Area, ElectricCurrent, ElectricPotential, Length, circular_mils, in_circular_mils, in_feet, volts,
};

/// Size of a picture under a figure, and of the picture of sizes.
const ROOM: (f64, f64) = (150.0, 132.0);
const WIDE: (f64, f64) = (320.0, 190.0);
/// Room that pens take at an edge.
const EDGE: f64 = 3.0;

/// What stands under a figure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Shape {
    /// A wire cut through: its radius, and that of what is drawn beside it for comparison.
    Cut(f64, Option<f64>),
    /// A box: its width and its height.
    Box(f64, f64),
}

/// Wires cut through, to one scale, each perhaps with an area to compare with.
#[must_use]
pub fn cuts(areas: &[(Area, Option<Area>)]) -> Vec<Shape> {
    let largest =
        areas.iter().flat_map(|(area, other)| [Some(*area), *other]).flatten().fold(circular_mils(1.0), Area::max);
    let most = ROOM.1 / 2.0 - EDGE;
    let radius = |area: Area| most * (area / largest).value.sqrt();
    areas.iter().map(|(area, other)| Shape::Cut(radius(*area), other.map(radius))).collect()
}

/// Boxes as wide as their volts and as high as their amps, to one scale.
#[must_use]
pub fn boxes(powers: &[(ElectricPotential, ElectricCurrent)]) -> Vec<Shape> {
    let widest = powers.iter().map(|(volts, _)| *volts).fold(volts(1.0), ElectricPotential::max);
    let highest = powers.iter().map(|(_, amps)| amps.value).fold(f64::MIN_POSITIVE, f64::max);
    let (width, height) = (ROOM.0 - 2.0 * EDGE, ROOM.1 - 2.0 * EDGE);
    powers
        .iter()
        .map(|(volts, amps)| Shape::Box(width * (*volts / widest).value, height * amps.value / highest))
        .collect()
}

/// A picture under a figure.
#[component]
pub fn Shaped(shape: Shape, way: Way) -> impl IntoView {
    let (middle, foot) = (ROOM.0 / 2.0, ROOM.1 - EDGE);
    let paths = match shape {
        Shape::Cut(radius, other) => {
            let round = |radius: f64| {
                let across = 2.0 * radius;
                format!(
                    "M{:.1} {:.1}a{radius:.1} {radius:.1} 0 1 0 {across:.1} 0a{radius:.1} {radius:.1} 0 1 0 -{across:.1} 0z",
                    middle - radius,
                    ROOM.1 / 2.0
                )
            };
            (round(radius), other.map(round))
        }
        Shape::Box(width, height) => {
            (format!("M{:.1} {foot:.1}h{width:.1}v-{height:.1}h-{width:.1}z", middle - width / 2.0), None)
        }
    };
    view! {
        <svg class="shape" aria-hidden="true" viewBox=format!("0 0 {} {}", ROOM.0, ROOM.1)>
            <path class=pen(way) d=paths.0 />
            {paths.1.map(|d| view! { <path class="l-compare" d=d /> })}
        </svg>
    }
}

fn pen(way: Way) -> &'static str {
    match way {
        Way::V240 => "w240",
        Way::V480 => "w480",
    }
}

/// Sizes along the lead: for each way the steps that are sold and the straight line that the drop asks for; and the lead.
#[derive(Debug, Clone, PartialEq)]
pub struct Stairs {
    /// Longest lead that is drawn.
    pub span: Length,
    /// The steps of each way.
    steps: [String; 2],
    /// The straight lines.
    lines: [String; 2],
    /// The lead.
    here: String,
}

/// The picture of sizes along the lead, to twice its length.
#[must_use]
pub fn stairs(lesson: &Lesson, sweep: &Sweep) -> Stairs {
    let span = lesson.lead * 2.0;
    let runs =
        |way: Way| sweep.way(way).runs.iter().map(|run| (run.run.longest, circular_mils(run.run.conductor.cmil())));
    let reached = |way: Way| {
        let mut from = Length::default();
        runs(way).take_while(move |(longest, _)| std::mem::replace(&mut from, *longest) < span).last()
    };
    let asked = Way::ALL.map(|way| lesson.area_at(way, span));
    let sold = Way::ALL.into_iter().filter_map(reached).map(|(_, area)| area);
    let most = in_circular_mils(asked.into_iter().chain(sold).fold(circular_mils(1.0), Area::max));
    let x = |lead: Length| EDGE + (WIDE.0 - 2.0 * EDGE) * (in_feet(lead) / in_feet(span)).clamp(0.0, 1.0);
    let y = |area: Area| WIDE.1 - EDGE - (WIDE.1 - 2.0 * EDGE) * in_circular_mils(area) / most;
    let steps = Way::ALL.map(|way| {
        let mut from = Length::default();
        let mut path = String::new();
        for (longest, area) in runs(way) {
            if from >= span {
                break;
            }
            let start = if path.is_empty() { "M" } else { "L" };
            path.push_str(&format!("{start}{:.1} {:.1}H{:.1}", x(from), y(area), x(longest)));
            from = longest;
        }
        path
    });
    let foot = y(Area::default());
    let lines = Way::ALL.map(|way| {
        format!("M{:.1} {foot:.1}L{:.1} {:.1}", x(Length::default()), x(span), y(lesson.area_at(way, span)))
    });
    Stairs { span, steps, lines, here: format!("M{:.1} {foot:.1}V{EDGE:.1}", x(lesson.lead)) }
}

impl Stairs {
    /// The picture.
    pub fn drawn(self) -> impl IntoView {
        let foot = format!("M{EDGE} {:.1}H{:.1}M{EDGE} {EDGE}V{:.1}", WIDE.1 - EDGE, WIDE.0 - EDGE, WIDE.1 - EDGE);
        let lines = self.lines.map(|d| view! { <path class="l-compare" d=d /> });
        let steps = Way::ALL.into_iter().zip(self.steps).map(|(way, d)| view! { <path class=pen(way) d=d /> });
        view! {
            <svg class="stairs" aria-hidden="true" preserveAspectRatio="none" viewBox=format!("0 0 {} {}", WIDE.0, WIDE.1)>
                <path class="l-axis" d=foot />
                {lines.collect_view()}
                {steps.collect_view()}
                <path class="l-here" d=self.here />
            </svg>
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use wellwright_core::evaluate::evaluate;
    use wellwright_core::papers::{example, lesson};
    use wellwright_core::quantity::amperes;

    #[test]
    fn a_quarter_of_the_area_is_half_the_width() {
        let areas = [(circular_mils(40_000.0), None), (circular_mils(10_000.0), Some(circular_mils(40_000.0)))];
        let most = ROOM.1 / 2.0 - EDGE;
        assert_eq!(cuts(&areas), [Shape::Cut(most, None), Shape::Cut(most / 2.0, Some(most))]);
    }

    #[test]
    fn boxes_of_one_power_have_one_area() {
        let found = boxes(&[(volts(230.0), amperes(22.0)), (volts(460.0), amperes(11.0))]);
        let area = |shape: &Shape| match shape {
            Shape::Box(width, height) => width * height,
            Shape::Cut(..) => 0.0,
        };
        assert!((area(&found[0]) - area(&found[1])).abs() < 1e-9, "{found:?}");
    }

    #[test]
    fn no_step_lies_below_what_the_drop_asks_for() {
        let answer = evaluate(&example());
        let (lesson, sweep) = (lesson(&answer).unwrap(), answer.sweep.unwrap());
        for way in Way::ALL {
            for run in &sweep.way(way).runs {
                assert!(run.run.conductor.cmil() > 0.995 * in_circular_mils(lesson.area_at(way, run.run.longest)));
            }
        }
        let drawn = stairs(&lesson, &sweep);
        assert_eq!(drawn.span, lesson.lead * 2.0);
        // 10 AWG, 8 AWG, 6 AWG, 4 AWG, 3 AWG, 2 AWG carry 240 V to 1,240 ft.
        assert!(drawn.steps[0].matches('H').count() > drawn.steps[1].matches('H').count() / 2, "{drawn:?}");
        assert!(drawn.steps.iter().all(|path| path.ends_with("317.0")), "both reach the side: {drawn:?}");
    }
}
