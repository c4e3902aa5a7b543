//! Which equipment stands for a voltage along the curve of cost.

use super::ways::{Fits, PoweredWay, Ways};
use crate::finding::Finding;
use crate::job::{Job, Way};
use crate::power::family::Feed;
use core::cmp::Ordering;

/// For 240 V and for 480 V: the way that was chosen to stand for it, else the way that the job goes by where it has that voltage, else the cheapest that serves, else
/// the one that comes nearest. The curve is that of a three-phase motor, so equipment for another does not count.
pub(super) fn pair(job: &Job, ways: &Ways) -> [Option<usize>; 2] {
    Way::ALL.map(|voltage| {
        let stands = |place: &usize| ways.all.get(*place).is_some_and(|way| way.stands_for(voltage));
        let chosen = job.pair[voltage as usize].as_ref();
        let chosen = chosen.and_then(|key| ways.all.iter().position(|way| way.key() == *key)).filter(stands);
        chosen.or_else(|| ways.pick.filter(stands)).or_else(|| {
            let all = (0..ways.all.len()).filter(stands);
            all.min_by(|one, other| nearer(&ways.all[*one], &ways.all[*other]))
        })
    })
}

impl PoweredWay {
    /// Whether it can stand for a voltage along the curve of cost, which is that of a three-phase motor.
    #[must_use]
    pub fn stands_for(&self, voltage: Way) -> bool {
        self.way == Some(voltage) && self.family.motor == Feed::ThreePhase && self.draw.is_some()
    }
}

/// Which of two ways comes nearer to serving, the cheaper first where both are as near.
fn nearer(one: &PoweredWay, other: &PoweredWay) -> Ordering {
    let rank = |way: &PoweredWay| match way.fits {
        Fits::Serves | Fits::WithCare => 0,
        Fits::Waits => 1,
        Fits::No => 2,
    };
    let lacks = |way: &PoweredWay| way.findings.contains(&Finding::FullSpeedOnly);
    let first = |way: &PoweredWay| way.cost.map_or(f64::INFINITY, |cost| cost.first.0);
    let stops = |way: &PoweredWay| way.findings.iter().filter(|finding| finding.stops()).count();
    rank(one)
        .cmp(&rank(other))
        .then(stops(one).cmp(&stops(other)))
        .then(lacks(one).cmp(&lacks(other)))
        .then(first(one).total_cmp(&first(other)))
}
