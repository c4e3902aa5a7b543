//! Depths where the cheaper way changes.
//!
//! Between two steps both costs are smooth and turn at most once together, so no crossing is missed; at a step the costs
//! jump and the cheaper way may change there.

use super::sweep::{Basis, WaySweep};
use crate::job::Way;
use crate::numeric::order::by_number;
use crate::numeric::root::bracketed_root;
use crate::quantity::{Length, Money, meters};
use core::cmp::Ordering;
use serde::Serialize;

/// Where on the curves a change happens.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Place {
    /// The lines cross.
    Run,
    /// A way steps past the other.
    Step,
}

/// Which of two ways, as the one that is asked about sees it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Whose {
    /// The one.
    This,
    /// The other.
    Other,
}

/// A depth where the cheaper way changes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Crossing<W = Way> {
    /// The depth.
    pub depth: Length,
    /// The way that is cheaper below it.
    pub below: W,
    /// On a run or at a step.
    pub place: Place,
}

/// All changes of the cheaper way, from ground down, over the depths that both ways serve.
#[derive(Debug, Clone, PartialEq)]
pub struct BreakEven<W = Way> {
    /// Every change.
    pub crossings: Vec<Crossing<W>>,
    /// The way that is cheaper first, before any change; `None` where the costs never differ.
    pub first: Option<W>,
}

impl<W> Default for BreakEven<W> {
    fn default() -> Self {
        Self { crossings: Vec::new(), first: None }
    }
}

impl<W> BreakEven<W> {
    /// The change after which one way stays ahead: the last one.
    #[must_use]
    pub fn lasting(&self) -> Option<&Crossing<W>> {
        self.crossings.last()
    }
}

/// Finds every change of the cheaper of two ways, which are called by these names.
pub(super) fn break_even<W: Copy + PartialEq>(
    [one, other]: [&WaySweep; 2],
    names: [W; 2],
    basis: Basis,
) -> BreakEven<W> {
    let mut found = BreakEven::default();
    let mut ahead: Option<W> = None;
    let mut start = one.start().max(other.start());
    let cheaper = |gap: Money| cheaper(gap, names);
    for end in pieces(one, other) {
        let (Some(a), Some(b)) = (one.piece_at(end), other.piece_at(end)) else { break };
        // The one less the other: above zero the other is cheaper. On the piece it has no step.
        let gap = |depth: Length| one.cost_on(a, depth, basis) - other.cost_on(b, depth, basis);
        let bend = one.over_lead(a, basis) + other.over_lead(b, basis) * -1.0;
        // Between the ends of a part the gap only rises, or only falls.
        let turn = bend.turn().map(|lead| meters(lead) - one.surface_run).filter(|turn| *turn > start && *turn < end);
        for end in turn.into_iter().chain([end]) {
            let (at_start, at_end) = (gap(start), gap(end));
            let slope = Money(at_end.0 - at_start.0);
            if let Some(way) = cheaper(at_start).or_else(|| cheaper(slope)) {
                change(&mut found, &mut ahead, way, start, if at_start.0 == 0.0 { Place::Run } else { Place::Step });
            }
            if let (Some(before), Some(after)) = (cheaper(at_start), cheaper(at_end))
                && before != after
            {
                change(&mut found, &mut ahead, after, crossing(start, end, gap), Place::Run);
            }
            start = end;
        }
    }
    found
}

/// Where the gap is none, between two depths at which its signs differ: by the straight line between them, and from there
/// as near as it can be told.
fn crossing(start: Length, end: Length, gap: impl Fn(Length) -> Money) -> Length {
    let (at_start, at_end) = (gap(start).0, gap(end).0);
    let straight = start + (end - start) * (at_start / (at_start - at_end));
    let over = |share: f64| gap(start + (end - start) * share).0;
    if gap(straight).0 == 0.0 {
        return straight;
    }
    bracketed_root(over, 0.0, 1.0, 0.0).map_or(straight, |share| start + (end - start) * share)
}

fn change<W: Copy + PartialEq>(found: &mut BreakEven<W>, ahead: &mut Option<W>, way: W, depth: Length, place: Place) {
    match *ahead {
        None => found.first = Some(way),
        Some(before) if before != way => found.crossings.push(Crossing { depth, below: way, place }),
        Some(_) => {}
    }
    *ahead = Some(way);
}

fn cheaper<W>(gap: Money, [one, other]: [W; 2]) -> Option<W> {
    match gap.0.partial_cmp(&0.0)? {
        Ordering::Greater => Some(other),
        Ordering::Less => Some(one),
        Ordering::Equal => None,
    }
}

/// Ends of the pieces on which neither way steps, ascending, as deep as both ways reach.
fn pieces(one: &WaySweep, other: &WaySweep) -> Vec<Length> {
    let (start, reach) = (one.start().max(other.start()), one.reach().min(other.reach()));
    let mut ends: Vec<Length> =
        one.pieces.iter().chain(&other.pieces).map(|piece| piece.to).filter(|to| *to > start && *to <= reach).collect();
    by_number(&mut ends, |end| end.value);
    ends.dedup();
    ends
}
