//! The lead at the job's own depth.

use super::sweep::{Basis, DepthRun, Sweep, WaySweep};
use super::ways::Outfit;
use crate::cable::drop::lead_loss;
use crate::cable::lead::{drop_over, impedance};
use crate::job::Way;
use crate::quantity::{ElectricPotential, Entry, Length, Mass, Money, Power, Unit};

/// Share to order beyond the lead's length, for splices and slack: common practice.
pub const ORDER_SPARE: f64 = 0.03;

/// One way at the job's depth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WayHere {
    /// The conductor, why, and over which depths.
    pub run: DepthRun,
    /// Voltage drop at the motor's current, line to line.
    pub drop: ElectricPotential,
    /// The drop as a share of the sending voltage.
    pub drop_share: f64,
    /// Heat in the lead at the motor's current.
    pub loss: Power,
    /// Metal in the lead, ground included.
    pub metal: Mass,
    /// Price of the lead.
    pub cable: Money,
    /// Price of the lead and of what the way needs beyond it.
    pub installed: Money,
    /// That, and the energy of the years by its worth today; nothing where it is not known.
    pub lifetime: Option<Money>,
    /// What the way needs beyond its lead.
    pub outfit: Outfit,
}

impl WayHere {
    /// The cost on a basis; nothing where it is not known.
    #[must_use]
    pub fn cost(&self, basis: Basis) -> Option<Money> {
        match basis {
            Basis::Cable => Some(self.cable),
            Basis::Installed => Some(self.installed),
            Basis::Lifetime => self.lifetime,
        }
    }
}

/// What 480 V saves over 240 V; below zero it costs more.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Saving {
    /// On the cable.
    pub cable: Money,
    /// On the cable, less the extra equipment.
    pub net: Money,
    /// That, and what the energy of the years saves by its worth today; nothing where it is not known.
    pub lifetime: Option<Money>,
    /// Metal not bought.
    pub metal: Mass,
}

impl Saving {
    /// The saving on a basis; nothing where it is not known.
    #[must_use]
    pub fn on(&self, basis: Basis) -> Option<Money> {
        match basis {
            Basis::Cable => Some(self.cable),
            Basis::Installed => Some(self.net),
            Basis::Lifetime => self.lifetime,
        }
    }
}

/// Both ways at the job's depth.
#[derive(Debug, Clone, PartialEq)]
pub struct Here {
    /// Depth of the pump.
    pub depth: Length,
    /// The lead, one way: depth and surface run.
    pub lead: Length,
    /// Length to order, the lead and its spare.
    pub order: Length,
    /// The 240 V and the 480 V way; `None` where no listed conductor serves.
    pub ways: [Option<WayHere>; 2],
    /// What 480 V saves, where both ways have a conductor.
    pub saving: Option<Saving>,
}

impl Here {
    /// A way at this depth.
    #[must_use]
    pub fn way(&self, way: Way) -> Option<&WayHere> {
        self.ways[way as usize].as_ref()
    }

    /// How much less the cheaper way costs, as a share of what the other costs, with its way; nothing where a cost is not
    /// known or both are alike.
    ///
    /// `s = (C_dear − C_cheap) / C_dear`
    ///
    /// # Units
    /// A share: dimensionless, above 0 and at most 1.
    /// # Range
    /// Costs above zero; a share of nothing is none.
    /// # Source
    /// What a share is; no source needed.
    #[must_use]
    pub fn share_saved(&self, basis: Basis) -> Option<(Way, f64)> {
        let [low, high] = Way::ALL.map(|way| self.way(way).and_then(|lead| lead.cost(basis)));
        let (low, high) = (low?, high?);
        let (cheap, saved, dear) =
            if high.0 < low.0 { (Way::V480, low - high, low) } else { (Way::V240, high - low, high) };
        (saved.0 > 0.0 && dear.0 > 0.0).then(|| (cheap, saved.0 / dear.0))
    }

    /// What the 480 V way needs beyond its lead, over what the other does.
    pub(super) fn extra(&self) -> Option<Entry> {
        let [low, high] = Way::ALL.map(|way| self.way(way).map(|lead| lead.outfit.cost.total()));
        Some(Entry::new((high? - low?).0, Unit::Dollar))
    }
}

/// The leads at a depth.
pub(super) fn here(sweep: &Sweep, depth: Length) -> Here {
    let lead = depth + sweep.surface_run;
    let ways = Way::ALL.map(|way| way_here(sweep.way(way), depth, lead));
    let saving = match ways {
        [Some(low), Some(high)] => Some(Saving {
            cable: low.cable - high.cable,
            net: low.installed - high.installed,
            lifetime: low.lifetime.zip(high.lifetime).map(|(low, high)| low - high),
            metal: low.metal - high.metal,
        }),
        _ => None,
    };
    Here { depth, lead, order: lead * (1.0 + ORDER_SPARE), ways, saving }
}

fn way_here(sweep: &WaySweep, depth: Length, lead: Length) -> Option<WayHere> {
    let piece = sweep.piece_at(depth)?;
    let run = piece.run;
    let drop = drop_over(&sweep.demands, run.run.conductor, lead).ok()??;
    let (resistance, _) = impedance(run.run.conductor, sweep.demands.setting.metal, sweep.demands.build);
    Some(WayHere {
        run,
        drop,
        drop_share: (drop / sweep.demands.load.sending).value,
        loss: lead_loss(sweep.demands.load, resistance, lead),
        metal: run.metal * lead,
        cable: sweep.cable_at(&run, depth),
        installed: sweep.cost_on(piece, depth, Basis::Installed),
        lifetime: sweep.has_lifetime().then(|| sweep.cost_on(piece, depth, Basis::Lifetime)),
        outfit: piece.outfit,
    })
}
