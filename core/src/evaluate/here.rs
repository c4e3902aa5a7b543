//! The lead at the job's own depth.

use super::sweep::{Basis, DepthRun, Sweep, WaySweep};
use crate::cable::drop::lead_loss;
use crate::cable::lead::{drop_over, impedance};
use crate::job::Way;
use crate::quantity::{ElectricPotential, Length, Mass, Money, Power};

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
    /// Price of the lead and the equipment of the way.
    pub installed: Money,
}

/// What 480 V saves over 240 V; below zero it costs more.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Saving {
    /// On the cable.
    pub cable: Money,
    /// On the cable, less the extra equipment.
    pub net: Money,
    /// Metal not bought.
    pub metal: Mass,
}

impl Saving {
    /// The saving on a basis.
    #[must_use]
    pub fn on(&self, basis: Basis) -> Money {
        match basis {
            Basis::Cable => self.cable,
            Basis::Installed => self.net,
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
}

/// The leads at a depth.
pub(super) fn here(sweep: &Sweep, depth: Length) -> Here {
    let lead = depth + sweep.surface_run;
    let ways = Way::ALL.map(|way| way_here(sweep.way(way), depth, lead));
    let saving = match ways {
        [Some(low), Some(high)] => Some(Saving {
            cable: low.cable - high.cable,
            net: low.installed - high.installed,
            metal: low.metal - high.metal,
        }),
        _ => None,
    };
    Here { depth, lead, order: lead * (1.0 + ORDER_SPARE), ways, saving }
}

fn way_here(sweep: &WaySweep, depth: Length, lead: Length) -> Option<WayHere> {
    let run = *sweep.run_at(depth)?;
    let drop = drop_over(&sweep.demands, run.run.conductor, lead).ok()??;
    let (resistance, _) = impedance(run.run.conductor, sweep.demands.setting.metal, sweep.demands.build);
    Some(WayHere {
        run,
        drop,
        drop_share: (drop / sweep.demands.load.sending).value,
        loss: lead_loss(sweep.demands.load, resistance, lead),
        metal: run.metal * lead,
        cable: sweep.cost_on(&run, depth, Basis::Cable),
        installed: sweep.cost_on(&run, depth, Basis::Installed),
    })
}
