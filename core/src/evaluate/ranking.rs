//! Which assumption moves the answer most: the job worked again with each at the lowest and the highest that is likely.

use super::range::{Uncertain, figures, moved};
use super::{Basis, Evaluation, evaluate};
use crate::finding::{Finding, Severity};
use crate::job::{Field, Job, Origin, Way};
use crate::numeric::order::by_number;
use crate::quantity::{Entry, Money, Unit};
use std::collections::BTreeSet;

/// How far a figure may be from what is assumed: common practice, no single source.
#[derive(Debug, Clone, Copy)]
enum Likely {
    /// From one figure to another, in the unit of the field's range.
    Between(f64, f64),
    /// Less and more by so much.
    By(f64),
    /// Less and more by such a share.
    Share(f64),
}

use Likely::{Between, By, Share};

/// Figures that are assumed until they are entered, and how far they are likely to be off. The safe side of an assumption
/// is not its middle: where a default errs, the range reaches to the other side.
const LIKELY: [(Field, Likely); 22] = [
    (Field::SurfaceRun, Between(10.0, 100.0)),
    (Field::Ambient, Between(25.0, 50.0)),
    (Field::Altitude, Between(0.0, 1500.0)),
    (Field::WaterTemperature, Between(45.0, 86.0)),
    (Field::Pressure, Between(40.0, 60.0)),
    (Field::PressureRating, Between(100.0, 200.0)),
    (Field::MinimumSubmergence, Between(5.0, 20.0)),
    (Field::Rise, Between(0.0, 10.0)),
    (Field::PumpEfficiency, By(0.08)),
    (Field::MotorPowerFactor, By(0.05)),
    (Field::MotorEfficiency, By(0.05)),
    (Field::AllowedDrop, Between(3.0, 5.0)),
    (Field::SupplyVolts, Share(0.05)),
    (Field::TransformerImpedance, Between(1.5, 4.0)),
    (Field::DriveAmbient, Between(30.0, 50.0)),
    (Field::SunRise, Between(0.0, 15.0)),
    (Field::RiseTime, Between(0.05, 0.3)),
    (Field::CableImpedance, Between(60.0, 100.0)),
    (Field::MotorImpedance, Share(0.5)),
    (Field::Discount, Between(3.0, 10.0)),
    (Field::Years, Between(10.0, 20.0)),
    (Field::MonthsOfUse, Between(4.0, 12.0)),
];

/// What is ranked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ranked {
    /// A figure that is assumed.
    Assumed(Field),
    /// A price, or the hours, between its lowest and highest.
    Uncertain(Uncertain),
}

/// An assumption at both of its ends.
#[derive(Debug, Clone, PartialEq)]
pub struct Rank {
    /// The assumption.
    pub what: Ranked,
    /// Its ends; of the equipment, over what is counted.
    pub ends: [Entry; 2],
    /// The saving at each end, by [`Basis`]; nothing where none can be told.
    pub saving: [[Option<Money>; 2]; 3],
    /// Whether a verdict flips between its ends.
    pub decides: bool,
}

impl Rank {
    /// How far the saving moves between the ends.
    #[must_use]
    pub fn moves(&self, basis: Basis) -> Option<Money> {
        let [low, high] = self.saving[basis as usize];
        Some((high? - low?).size())
    }
}

/// Every assumption of a job, and what moves its saving.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Ranking {
    /// Every one that was tried.
    pub ranks: Vec<Rank>,
}

impl Ranking {
    /// Those that move the saving on a basis, the farthest first.
    #[must_use]
    pub fn on(&self, basis: Basis) -> Vec<&Rank> {
        let moving = |rank: &&Rank| rank.moves(basis).is_some_and(|moves| moves.0 >= LEAST_MOVE);
        let mut found: Vec<&Rank> = self.ranks.iter().filter(moving).collect();
        let moves = |rank: &Rank| rank.moves(basis).map_or(0.0, |moves| moves.0);
        by_number(&mut found, |rank| -moves(rank));
        found
    }

    /// Assumptions within whose range a verdict flips.
    #[must_use]
    pub fn findings(&self) -> Vec<Finding> {
        let field = |rank: &Rank| match rank.what {
            Ranked::Assumed(field) if rank.decides => Some(Finding::AssumptionDecides { field }),
            _ => None,
        };
        self.ranks.iter().filter_map(field).collect()
    }
}

/// Less than this moves nothing worth telling.
const LEAST_MOVE: f64 = 1.0;

/// Ranks the assumptions of a job: some dozens of evaluations.
#[must_use]
pub fn ranking(job: &Job, answer: &Evaluation) -> Ranking {
    let mut ranks: Vec<Rank> =
        LIKELY.iter().filter_map(|(field, likely)| of_field(job, answer, *field, *likely)).collect();
    ranks.extend(Uncertain::ALL.into_iter().filter_map(|what| of_price(answer, what)));
    Ranking { ranks }
}

fn of_field(job: &Job, answer: &Evaluation, field: Field, likely: Likely) -> Option<Rank> {
    let assumed = field.counts(job) && answer.inputs.origin(field) == Origin::Assumed;
    if !assumed || job.get(field).is_some() {
        return None;
    }
    let accepted = field.spec().accepted;
    let now = answer.inputs.stand_in(field)?.to(accepted.unit)?;
    let (low, high) = match likely {
        Between(low, high) => (low.min(now), high.max(now)),
        By(by) => (now - by, now + by),
        Share(share) => (now * (1.0 - share), now * (1.0 + share)),
    };
    // What the field does not accept is no likely figure.
    let ends = [low.max(accepted.min), high.min(accepted.max)].map(|value| Entry::new(value, accepted.unit));
    let tried = ends.map(|end| {
        let mut other = job.clone();
        other.set(field, Some(end));
        evaluate(&other)
    });
    let mut saving = [[None; 2]; 3];
    for basis in Basis::ALL {
        for (end, answer) in tried.iter().enumerate() {
            saving[basis as usize][end] = answer.here.as_ref().and_then(|here| here.saving.as_ref()?.on(basis));
        }
    }
    let before = verdict(answer);
    let decides = tried.iter().any(|answer| verdict(answer) != before);
    Some(Rank { what: Ranked::Assumed(field), ends, saving, decides })
}

/// What a job comes out as: what stops it, whether its way serves, and the cheaper voltage.
fn verdict(answer: &Evaluation) -> (BTreeSet<&'static str>, bool, Option<Way>) {
    let stops = answer.findings.iter().filter(|finding| finding.severity() == Severity::Stop);
    let cheaper = answer.here.as_ref().and_then(|here| here.saving.as_ref()).and_then(|saving| match saving.net.0 {
        net if net > 0.0 => Some(Way::V480),
        net if net < 0.0 => Some(Way::V240),
        _ => None,
    });
    (stops.map(Finding::code).collect(), answer.ways.pick.is_some(), cheaper)
}

fn of_price(answer: &Evaluation, what: Uncertain) -> Option<Rank> {
    let (low, _, high) = figures(answer, what)?;
    let units = what.fields().map(|field| field.spec().accepted.unit);
    let scale = if matches!(what, Uncertain::Equipment) { 100.0 } else { 1.0 };
    let [low_entry, high_entry] =
        [(low, units[0]), (high, units[1])].map(|(value, unit)| Entry::new(value * scale, unit));
    let ends = match what {
        Uncertain::Hours => match answer.inputs.entered.get(Field::YearlyHours, |hours| hours) {
            Some(hours) => [low, high].map(|share| Entry::new(share * hours, units[0])),
            None => [low, high].map(|share| Entry::new(100.0 * share, Unit::Percent)),
        },
        _ => [low_entry, high_entry],
    };
    let saving = Basis::ALL.map(|basis| [low, high].map(|value| moved(answer, what, value, basis)));
    let signs: BTreeSet<bool> =
        saving[Basis::Installed as usize].iter().flatten().map(|saving| saving.0 > 0.0).collect();
    Some(Rank { what: Ranked::Uncertain(what), ends, saving, decides: signs.len() > 1 })
}
