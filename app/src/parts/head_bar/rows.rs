//! The parts of the total dynamic head, in the order in which they add up: pure, from the evaluation.

use crate::locale::{Shown, head, pressure, shown, unit_name, words};
use wellwright_core::evaluate::{Law, Lift, System, Water};
use wellwright_core::job::Part;
use wellwright_core::papers::Topic;
use wellwright_core::quantity::{Length, Unit, UnitSystem, feet, in_feet, in_meters};

/// What a part of the head is; each has its own pattern.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fill {
    /// From the water at rest up to the ground.
    StaticLevel,
    /// As far as the water falls.
    Drawdown,
    /// From open water up to a surface pump.
    Suction,
    /// From the ground or the pump to the outlet.
    Rise,
    /// Straight pipe.
    Pipe(Part),
    /// Fittings.
    Fittings(Part),
    /// Pressure at the gauge.
    Pressure,
    /// What the water still carries.
    Velocity,
}

impl Fill {
    /// Its class in the style sheet.
    #[must_use]
    pub fn class(self) -> &'static str {
        match self {
            Self::StaticLevel => "fill-static",
            Self::Drawdown => "fill-drawdown",
            Self::Suction => "fill-suction",
            Self::Rise => "fill-rise",
            Self::Pipe(Part::Drop) => "fill-pipe-drop",
            Self::Pipe(Part::Suction) => "fill-pipe-suction",
            Self::Pipe(Part::Surface) => "fill-pipe-surface",
            Self::Fittings(Part::Drop) => "fill-fit-drop",
            Self::Fittings(Part::Suction) => "fill-fit-suction",
            Self::Fittings(Part::Surface) => "fill-fit-surface",
            Self::Pressure => "fill-pressure",
            Self::Velocity => "fill-velocity",
        }
    }
}

/// One part.
#[derive(Debug, Clone, PartialEq)]
pub struct HeadRow {
    /// What it is.
    pub fill: Fill,
    /// Its name.
    pub label: String,
    /// Its length.
    pub shown: Shown,
    /// Where it begins, as a share of the bar.
    pub from: f64,
    /// How long it is, as a share of the bar.
    pub share: f64,
    /// Whether it takes from the total: then it stands on the other side of zero.
    pub takes: bool,
    /// Its working, where there is one.
    pub topic: Option<Topic>,
}

/// The total and its parts.
#[derive(Debug, Clone, PartialEq)]
pub struct HeadParts {
    /// The total.
    pub total: Shown,
    /// The parts, in the order of the water.
    pub rows: Vec<HeadRow>,
    /// Where zero stands on the bar, as a share of it; above 0 where a part takes from the total.
    pub zero: f64,
    /// Where the total ends.
    pub end: f64,
}

/// A part before it has its place.
type Piece = (Fill, String, Length, Option<Topic>);

/// The parts of the head at the flow that is asked for; nothing where there is no head.
///
/// A length of pipe or fittings that takes nothing is left out; every other part is told even where it is zero.
#[must_use]
pub fn head_parts(water: &Water, units: UnitSystem) -> Option<HeadParts> {
    let (system, total) = (water.system.as_ref()?, water.head.as_ref()?);
    let words = &words().charts;
    let nothing = feet(0.0);
    let mut pieces = lifts(water, system, total.lift);
    let rise = if total.rise < nothing { words.fall } else { words.rise };
    pieces.push((Fill::Rise, rise.to_owned(), total.rise, None));
    for (pipe, loss) in system.pipes.iter().zip(&total.sections) {
        let part = pipe.part;
        let of_part = [
            (Fill::Pipe(part), (words.friction)(part), loss.pipe(system.method), Topic::Friction(part)),
            (Fill::Fittings(part), (words.fittings)(part), loss.fittings, Topic::Fittings(part)),
        ];
        let losing = of_part.into_iter().filter(|(_, _, length, _)| *length > nothing);
        pieces.extend(losing.map(|(fill, label, length, topic)| (fill, label.to_owned(), length, Some(topic))));
    }
    let held = (words.pressure)(&pressure(system.pressure, units).text());
    pieces.push((Fill::Pressure, held, total.pressure, Some(Topic::PressureHead)));
    pieces.push((Fill::Velocity, words.velocity_head.to_owned(), total.velocity, Some(Topic::VelocityHead)));
    Some(placed(pieces, total.total(), units))
}

/// From the water's surface: of a well its level at rest and what it falls, of open water one lift.
fn lifts(water: &Water, system: &System, lift: Length) -> Vec<Piece> {
    let words = &words().charts;
    match (system.lift, water.static_level) {
        (Lift::Well(_, law), Some(level)) => {
            // A drawdown as it was measured has no sum behind it.
            let measured = matches!(law, Law::Fixed(_) | Law::Measured { .. });
            let drawdown = (!measured).then_some(Topic::Drawdown);
            vec![
                (Fill::StaticLevel, words.static_level.to_owned(), level, Some(Topic::PumpingLevel)),
                (Fill::Drawdown, words.drawdown.to_owned(), lift - level, drawdown),
            ]
        }
        (Lift::Well(..), None) => {
            vec![(Fill::StaticLevel, words.static_level.to_owned(), lift, Some(Topic::PumpingLevel))]
        }
        (Lift::Open(_), _) => vec![(Fill::Suction, words.suction_lift.to_owned(), lift, None)],
    }
}

/// Gives each part its place: those that add up from zero on, those that take from zero back.
fn placed(pieces: Vec<Piece>, total: Length, units: UnitSystem) -> HeadParts {
    let nothing = feet(0.0);
    let sum = |takes: bool| -> Length {
        let lengths = pieces.iter().map(|piece| piece.2);
        lengths.filter(|length| (*length < nothing) == takes).map(|length| length.abs()).sum()
    };
    let (adds, takes) = (sum(false), sum(true));
    let whole = (adds + takes).max(feet(1e-9));
    let share = |length: Length| (length / whole).value;
    let zero = share(takes);
    let (mut up, mut down) = (zero, zero);
    let row = |(fill, label, length, topic): Piece| {
        let (takes, long) = (length < nothing, share(length.abs()));
        let from = if takes {
            down -= long;
            down
        } else {
            up += long;
            up - long
        };
        HeadRow { fill, label, shown: part(length, units), from, share: long, takes, topic }
    };
    let rows = pieces.into_iter().map(row).collect();
    HeadParts { total: head(total, units), rows, zero, end: zero + share(total) }
}

/// A part, one digit finer than the total.
fn part(length: Length, units: UnitSystem) -> Shown {
    match units {
        UnitSystem::Us => shown(in_feet(length), 1, unit_name(Unit::Foot)),
        UnitSystem::Si => shown(in_meters(length), 2, unit_name(Unit::Meter)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use wellwright_core::evaluate::evaluate;
    use wellwright_core::job::{DrawdownBy, Field, Job};
    use wellwright_core::pump::motor::MotorKind;
    use wellwright_core::quantity::Entry;

    /// A well of 430 ft at rest that gives 0.6 gpm a foot, asked for 25 gpm.
    fn well(rise: f64) -> Job {
        let mut job = Job::named("");
        job.choices.drawdown = Some(DrawdownBy::SpecificCapacity);
        for (field, value, unit) in [
            (Field::PumpSetting, 620.0, Unit::Foot),
            (Field::StaticLevel, 430.0, Unit::Foot),
            (Field::Flow, 25.0, Unit::GallonPerMinute),
            (Field::SpecificCapacity, 0.6, Unit::GallonPerMinutePerFoot),
            (Field::DropFittings, 9.0, Unit::One),
            (Field::SurfaceLength, 80.0, Unit::Foot),
            (Field::Rise, rise, Unit::Foot),
            (Field::Pressure, 60.0, Unit::PoundPerSquareInch),
        ] {
            job.set(field, Some(Entry::new(value, unit)));
        }
        job
    }

    fn parts(job: &Job) -> HeadParts {
        head_parts(&evaluate(job).water, UnitSystem::Us).unwrap()
    }

    fn row(parts: &HeadParts, fill: Fill) -> &HeadRow {
        parts.rows.iter().find(|row| row.fill == fill).unwrap()
    }

    #[test]
    fn parts_follow_one_another_and_add_up_to_the_total() {
        for units in [UnitSystem::Us, UnitSystem::Si] {
            let parts = head_parts(&evaluate(&well(4.0)).water, units).unwrap();
            let sum: f64 = parts.rows.iter().map(|row| row.shown.value).sum();
            assert!((sum - parts.total.value).abs() < 1e-9, "{sum}");
            let mut at = 0.0;
            for row in &parts.rows {
                assert!((row.from - at).abs() < 1e-12 && !row.takes, "{row:?}");
                at += row.share;
            }
            assert!((at - 1.0).abs() < 1e-12 && parts.zero == 0.0 && (parts.end - 1.0).abs() < 1e-12);
        }
    }

    // 430 ft at rest; 25 gpm of 0.6 gpm a foot are 41.67 ft; 60 psi of water at 60 °F are 60 · 144 / 62.367 = 138.5 ft.
    #[test]
    fn a_part_has_its_own_length_and_working() {
        let parts = parts(&well(4.0));
        let text = |fill| row(&parts, fill).shown.text();
        let read = [Fill::StaticLevel, Fill::Drawdown, Fill::Rise, Fill::Pressure].map(text);
        assert_eq!(read, ["430.0\u{a0}ft", "41.7\u{a0}ft", "4.0\u{a0}ft", "138.5\u{a0}ft"]);
        assert_eq!(row(&parts, Fill::Drawdown).topic, Some(Topic::Drawdown));
        assert_eq!(row(&parts, Fill::Pipe(Part::Drop)).topic, Some(Topic::Friction(Part::Drop)));
        assert_eq!(row(&parts, Fill::Fittings(Part::Drop)).topic, Some(Topic::Fittings(Part::Drop)));
        assert!(row(&parts, Fill::Pressure).label.contains("60\u{a0}psi"));
        // No fittings on the surface.
        assert!(!parts.rows.iter().any(|row| row.fill == Fill::Fittings(Part::Surface)));
    }

    #[test]
    fn water_that_runs_down_to_the_outlet_takes_from_the_total() {
        let parts = parts(&well(-150.0));
        let fall = row(&parts, Fill::Rise);
        assert!(fall.takes && fall.from == 0.0 && fall.share == parts.zero && parts.zero > 0.0);
        assert_eq!(fall.label, words().charts.fall);
        assert_eq!(fall.shown.text(), "\u{2212}150.0\u{a0}ft");
        // The total ends as much before the end of the bar as the fall is long.
        assert!((1.0 - parts.end - fall.share).abs() < 1e-12);
        let sum: f64 = parts.rows.iter().map(|row| row.shown.value).sum();
        assert!((sum - parts.total.value).abs() < 1e-9);
    }

    #[test]
    fn a_total_below_zero_ends_on_the_other_side() {
        let parts = parts(&well(-1000.0));
        assert!(parts.total.value < 0.0 && parts.end < parts.zero && parts.end >= 0.0);
    }

    #[test]
    fn a_drawdown_as_measured_has_no_working() {
        let mut job = well(4.0);
        job.choices.drawdown = None;
        job.set(Field::Drawdown, Some(Entry::new(42.0, Unit::Foot)));
        assert_eq!(row(&parts(&job), Fill::Drawdown).topic, None);
    }

    #[test]
    fn a_surface_pump_lifts_from_open_water() {
        let mut job = well(4.0);
        job.choices.motor_kind = Some(MotorKind::Surface);
        job.set(Field::SuctionLift, Some(Entry::new(-8.0, Unit::Foot)));
        job.set(Field::SuctionLength, Some(Entry::new(20.0, Unit::Foot)));
        let parts = parts(&job);
        assert!(row(&parts, Fill::Suction).takes);
        assert!(parts.rows.iter().any(|row| row.fill == Fill::Pipe(Part::Suction)));
        assert!(!parts.rows.iter().any(|row| row.fill == Fill::StaticLevel));
    }

    #[test]
    fn without_a_head_there_are_no_parts() {
        assert_eq!(head_parts(&evaluate(&Job::named("")).water, UnitSystem::Us), None);
    }
}
