//! Break-even depths of ten thousand random jobs, on every basis and in both senses of depth, against a scan of what both
//! ways cost: each depth to a millionth of a foot, and none missed. A part of the jobs is scanned by hand besides.

use super::break_even::{bases, changes_are_true, costs, none_is_missed, reach};
use super::jobs::{Plain, plain, supplied};
use proptest::prelude::*;
use proptest::strategy::ValueTree as _;
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
use wellwright_core::evaluate::{Basis, BreakEven, Evaluation, Piece, Place, Sweep, evaluate};
use wellwright_core::job::{Field, Job, Way};
use wellwright_core::quantity::{Entry, Length, Unit, UnitSystem, feet, in_feet, in_meters, meters};

/// Jobs in all, in so many lots of a seed each.
const JOBS: usize = 10_000;
const LOTS: u8 = 4;
/// One job in so many is scanned by hand besides.
const BY_HAND: usize = 250;
/// Steps of the scan between two piece ends.
const STEPS: u32 = 4;
/// Feet to which a depth must be told.
const NEAR: f64 = 1e-6;

/// What was met, so that no law holds idly.
#[derive(Debug, Default)]
struct Met {
    sweeps: usize,
    deeper: usize,
    lifetimes: usize,
    own_equipment: usize,
    on_runs: usize,
    at_steps: usize,
    by_hand: usize,
    /// Stretches inside which the cheaper way changes twice, most of them of jobs made for it.
    twice: usize,
    faults: Vec<String>,
}

impl Met {
    fn and(mut self, other: Self) -> Self {
        self.sweeps += other.sweeps;
        self.deeper += other.deeper;
        self.lifetimes += other.lifetimes;
        self.own_equipment += other.own_equipment;
        self.on_runs += other.on_runs;
        self.at_steps += other.at_steps;
        self.by_hand += other.by_hand;
        self.twice += other.twice;
        self.faults.extend(other.faults);
        self
    }
}

/// A stretch on which neither way steps: what 240 V costs there less what 480 V does.
struct Stretch<'a> {
    sweep: &'a Sweep,
    basis: Basis,
    pieces: [&'a Piece; 2],
    from: f64,
    to: f64,
}

impl Stretch<'_> {
    fn costs(&self, depth: f64) -> [f64; 2] {
        Way::ALL.map(|way| self.sweep.way(way).cost_on(self.pieces[way as usize], meters(depth), self.basis).0)
    }

    fn gap(&self, depth: f64) -> f64 {
        let [low, high] = self.costs(depth);
        low - high
    }

    /// The cheaper way; nothing where the costs tie to the last digits.
    fn cheaper(&self, depth: f64) -> Option<Way> {
        let [low, high] = self.costs(depth);
        if (low - high).abs() <= 1e-12 * low.abs().max(high.abs()) { None } else { Some(ahead(low - high)) }
    }

    /// Even steps, the turn of the parabola through the ends and the middle, and both sides of each depth that was found.
    fn points(&self, found: &BreakEven) -> Vec<f64> {
        let wide = self.to - self.from;
        let mut points: Vec<f64> =
            (0..=STEPS).map(|step| self.from + wide * f64::from(step) / f64::from(STEPS)).collect();
        let [a, b, c] = [0.0, 0.5, 1.0].map(|share| self.gap(self.from + wide * share));
        let turn = (3.0 * a - 4.0 * b + c) / (4.0 * (a - 2.0 * b + c));
        points.push(self.from + wide * turn);
        for crossing in &found.crossings {
            let beside = in_meters(feet(NEAR));
            points.extend([-beside, beside].map(|side| in_meters(crossing.depth) + side));
        }
        points.retain(|depth| (self.from..=self.to).contains(depth));
        points.sort_by(f64::total_cmp);
        points
    }

    /// The gap in the middle, and how far the mean of its ends lies from there.
    fn shape(&self) -> (f64, f64) {
        let [a, b, c] = [0.0, 0.5, 1.0].map(|share| self.gap(self.from + (self.to - self.from) * share));
        (b, 0.5 * (a + c) - b)
    }

    /// The metal's price at which the gap turns in the middle; nothing where it is hardly bent.
    fn metal_for_a_turn(&self, answer: &Evaluation) -> Option<f64> {
        // So much that a millionth of a foot can be told.
        if self.shape().1.abs() < 1e-6 * self.costs(self.to)[0] {
            return None;
        }
        let [low, high] = self.pieces.map(|piece| piece.run.metal.value / 0.453_592_37);
        let rise = self.gap(self.to) - self.gap(self.from);
        let prices = answer.inputs.prices.as_ref().ok()?;
        Some(prices.cable_metal.per_pound() - rise / ((low - high) * (self.to - self.from)))
    }

    /// Where the cheaper way comes to be this one, between two depths, halved to the last digits.
    fn change(&self, from: f64, to: f64, way: Way) -> f64 {
        let is = |depth: f64| self.gap(depth) != 0.0 && ahead(self.gap(depth)) == way;
        if is(from) {
            return from;
        }
        let (mut low, mut high) = (from, to);
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if is(middle) { high = middle } else { low = middle }
        }
        high
    }
}

fn ahead(gap: f64) -> Way {
    if gap > 0.0 { Way::V480 } else { Way::V240 }
}

fn stretches(sweep: &Sweep, basis: Basis) -> Vec<Stretch<'_>> {
    let ways = Way::ALL.map(|way| sweep.way(way));
    let from = in_meters(ways[0].start().max(ways[1].start()));
    let reach = in_meters(ways[0].reach().min(ways[1].reach()));
    let mut ends: Vec<f64> = ways.iter().flat_map(|way| way.pieces.iter().map(|piece| in_meters(piece.to))).collect();
    ends.retain(|end| *end > from && *end <= reach);
    ends.push(from);
    ends.sort_by(f64::total_cmp);
    ends.dedup();
    let between = ends.windows(2).filter_map(|ends| {
        let middle: Length = meters(0.5 * (ends[0] + ends[1]));
        let pieces = [ways[0].piece_at(middle)?, ways[1].piece_at(middle)?];
        Some(Stretch { sweep, basis, pieces, from: ends[0], to: ends[1] })
    });
    between.collect()
}

/// What is wrong with the changes that were found on a basis.
fn fault(sweep: &Sweep, basis: Basis) -> Option<String> {
    let found = sweep.break_even(basis);
    let mut scanned: Vec<(f64, Way)> = Vec::new();
    let (mut first, mut way) = (None, None);
    for stretch in stretches(sweep, basis) {
        let points = stretch.points(found);
        let mut last = stretch.from;
        for depth in points {
            let Some(now) = stretch.cheaper(depth) else { continue };
            if first.is_none() {
                first = Some(now);
            } else if way != Some(now) {
                scanned.push((in_feet(meters(stretch.change(last, depth, now))), now));
            }
            (way, last) = (Some(now), depth);
        }
    }
    let told: Vec<(f64, Way)> = found.crossings.iter().map(|one| (in_feet(one.depth), one.below)).collect();
    let same = told.len() == scanned.len()
        && told.iter().zip(&scanned).all(|(one, other)| (one.0 - other.0).abs() <= NEAR && one.1 == other.1);
    let at_steps = found.crossings.iter().filter(|one| one.place == Place::Step);
    let is_end = |depth| Way::ALL.iter().any(|way| sweep.way(*way).pieces.iter().any(|piece| piece.to == depth));
    let steps = at_steps.into_iter().all(|one| is_end(one.depth));
    (!same || !steps || first != found.first)
        .then(|| format!("{basis:?}: told {:?} {told:?}, scanned {first:?} {scanned:?}", found.first))
}

/// What is wrong by hand with a job whose extra equipment was entered.
fn fault_by_hand(job: &Plain, answer: &Evaluation, sweep: &Sweep) -> Result<(), TestCaseError> {
    let hand = |depth| costs(job, answer, depth);
    for basis in bases(sweep) {
        changes_are_true(&hand, basis, sweep.break_even(basis))?;
        none_is_missed(&hand, basis, sweep.break_even(basis), reach(sweep))?;
    }
    Ok(())
}

/// The job with the metal's price and the extra equipment so that on one of its stretches the costs over the years run
/// alike in the middle and part to both sides, where they cross twice. Nothing where no stretch is bent enough.
fn touching(job: &Job, answer: &Evaluation) -> Option<Job> {
    let mut made = job.clone();
    let sweep = answer.sweep.as_ref().filter(|sweep| sweep.has_lifetime())?;
    let at = stretches(sweep, Basis::Lifetime).iter().position(|stretch| {
        let metal = stretch.metal_for_a_turn(answer);
        metal.is_some_and(|metal| {
            made.set(Field::CableMetal, Some(Entry::new(metal, Unit::DollarPerPound)));
            (0.0..1000.0).contains(&metal)
        })
    })?;
    made.set(Field::ExtraEquipment, Some(Entry::new(0.0, Unit::Dollar)));
    let turning = evaluate(&made);
    let sweep = turning.sweep.as_ref()?;
    let of_turn = stretches(sweep, Basis::Lifetime);
    let (middle, bend) = of_turn.get(at)?.shape();
    made.set(Field::ExtraEquipment, Some(Entry::new(middle + 0.5 * bend, Unit::Dollar)));
    Some(made)
}

/// Stretches inside which the cheaper way changes twice and more.
fn twice(sweep: &Sweep) -> usize {
    let found = sweep.break_even(Basis::Lifetime);
    let inside = |from: f64, to: f64| {
        let depths = found.crossings.iter().map(|one| in_meters(one.depth));
        depths.filter(|depth| *depth > from && *depth < to).count()
    };
    stretches(sweep, Basis::Lifetime).iter().filter(|stretch| inside(stretch.from, stretch.to) > 1).count()
}

fn lot(seed: u8) -> Met {
    let mut runner =
        TestRunner::new_with_rng(Config::default(), TestRng::from_seed(RngAlgorithm::XorShift, &[seed + 1; 16]));
    let strategies = [plain().boxed(), supplied().boxed()];
    let mut met = Met::default();
    for at in 0..JOBS / usize::from(LOTS) {
        // Of every other job the equipment is priced by its own, and depends on the depth.
        let own_equipment = at % 2 == 1;
        let plain = strategies[at % 2].new_tree(&mut runner).unwrap().current();
        let mut job = plain.job(UnitSystem::Us);
        if own_equipment {
            job.set(Field::ExtraEquipment, None);
        }
        let answer = evaluate(&job);
        let touching = if own_equipment { touching(&job, &answer).map(|job| evaluate(&job)) } else { None };
        let sweep_of_touching = touching.as_ref().and_then(|answer| answer.sweep.as_ref());
        let sweeps = [&answer.sweep, &answer.deeper].into_iter().flatten().chain(sweep_of_touching);
        met.sweeps += usize::from(answer.sweep.is_some());
        met.deeper += usize::from(answer.deeper.is_some());
        for sweep in sweeps {
            met.twice += twice(sweep);
            met.lifetimes += usize::from(sweep.has_lifetime());
            met.own_equipment += usize::from(own_equipment && stretches(sweep, Basis::Installed).len() > 1);
            for basis in bases(sweep) {
                let crossings = &sweep.break_even(basis).crossings;
                met.on_runs += crossings.iter().filter(|one| one.place == Place::Run).count();
                met.at_steps += crossings.iter().filter(|one| one.place == Place::Step).count();
                met.faults.extend(fault(sweep, basis).map(|fault| format!("lot {seed}, job {at}: {fault}\n{plain:?}")));
            }
        }
        if let Some(sweep) = answer.sweep.as_ref().filter(|_| at % BY_HAND == 0) {
            met.by_hand += 1;
            let fault = fault_by_hand(&plain, &answer, sweep).err();
            met.faults.extend(fault.map(|fault| format!("lot {seed}, job {at} by hand: {fault}\n{plain:?}")));
        }
    }
    met
}

#[test]
fn ten_thousand_jobs_change_their_cheaper_way_where_a_scan_says() {
    let met = std::thread::scope(|scope| {
        let lots: Vec<_> = (0..LOTS).map(|seed| scope.spawn(move || lot(seed))).collect();
        lots.into_iter().map(|lot| lot.join().unwrap()).fold(Met::default(), Met::and)
    });
    let faults = &met.faults;
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults[..faults.len().min(5)].join("\n"));
    let Met { sweeps, deeper, lifetimes, own_equipment, on_runs, at_steps, by_hand, twice, .. } = met;
    assert!(sweeps > JOBS * 3 / 4 && by_hand > 30, "{sweeps} sweeps, {by_hand} by hand");
    assert!(deeper > 500 && lifetimes > 1000 && own_equipment > 1000, "{deeper} {lifetimes} {own_equipment}");
    assert!(twice > 30, "{twice} twice");
    assert!(on_runs > 1000 && at_steps > 1000, "{on_runs} on runs, {at_steps} at steps");
}
