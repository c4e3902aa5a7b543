//! Cost against depth, exact at every depth: each way is a list of pieces that end where its conductor grows or what it
//! needs beyond its lead changes.

use super::break_even::{BreakEven, Whose, break_even};
use super::ways::{EnergyPrices, Outfit};
use crate::cable::lead::{Demands, Run};
use crate::cost::price::lead_price;
use crate::job::Way;
use crate::numeric::quadratic::Quadratic;
use crate::quantity::{Celsius, ElectricCurrent, Length, MassPerLength, Money, MoneyPerLength, Power, feet, in_meters};
use serde::Serialize;

pub use crate::job::MotorCurrent;

/// Deepest pump setting that the sweep covers, feet: the limit of the field.
pub const DEEPEST_FEET: f64 = 3000.0;

/// What a cost counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Basis {
    /// The lead alone.
    Cable,
    /// The lead and what its way needs beyond it.
    #[default]
    Installed,
    /// That, and the energy of the years by its worth today.
    Lifetime,
}

impl Basis {
    /// All, each counting what the one before does.
    pub const ALL: [Self; 3] = [Self::Cable, Self::Installed, Self::Lifetime];
}

/// One conductor over a stretch of depths.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DepthRun {
    /// The conductor and why.
    pub run: Run,
    /// Depth above which the run before serves; this run begins just below it (at ground for the first).
    pub from: Length,
    /// Deepest setting that it serves; at this very depth it still does.
    pub to: Length,
    /// Price of its cable.
    pub price: MoneyPerLength,
    /// Metal in its cable, ground included.
    pub metal: MassPerLength,
    /// Rated power of the motor that it feeds.
    pub motor: Power,
    /// The surroundings that its ampacity counts with.
    pub ambient: Celsius,
    /// Energy of a year over the length of the lead in meters, Wh; nothing where it is not known.
    pub energy: Option<Quadratic>,
    /// What a year's energy costs over that length.
    pub yearly: Option<Quadratic>,
}

/// A stretch of depths on which a way's cost makes no step.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Piece {
    /// Its conductor.
    pub run: DepthRun,
    /// What the way needs beyond the lead.
    pub outfit: Outfit,
    /// Depth below which it begins.
    pub from: Length,
    /// Depth where it ends; at this very depth it still holds.
    pub to: Length,
}

/// One way over all depths.
#[derive(Debug, Clone, PartialEq)]
pub struct WaySweep {
    /// The way.
    pub way: Way,
    /// Its equipment, as its place among all ways; nothing where none is known.
    pub place: Option<usize>,
    /// Whether what it needs beyond its lead has a price; else that is left out.
    pub priced: bool,
    /// Current of the motor.
    pub current: MotorCurrent,
    /// Ampacity that the phases need.
    pub required: ElectricCurrent,
    /// What the choice depended on; where the water counts, with the surroundings of the run.
    pub demands: Demands,
    /// The runs from ground down. They end where no listed conductor serves, or at [`DEEPEST_FEET`].
    pub runs: Vec<DepthRun>,
    /// The pieces from ground down.
    pub pieces: Vec<Piece>,
    /// What energy costs; nothing where a figure of it can't be used.
    pub energy: Option<EnergyPrices>,
    /// Labor by the length of the lead.
    pub labor: MoneyPerLength,
    pub(super) surface_run: Length,
}

impl WaySweep {
    /// The run that serves a depth, or `None` where no listed conductor does, and above the shallowest depth.
    #[must_use]
    pub fn run_at(&self, depth: Length) -> Option<&DepthRun> {
        self.runs.iter().find(|run| run.to >= depth).filter(|_| depth >= self.start())
    }

    /// The piece of a depth, or `None` where no listed conductor serves.
    #[must_use]
    pub fn piece_at(&self, depth: Length) -> Option<&Piece> {
        self.pieces.iter().find(|piece| piece.to >= depth).filter(|_| depth >= self.start())
    }

    /// Cost of a piece at a depth, carried on beyond its ends.
    #[must_use]
    pub fn cost_on(&self, piece: &Piece, depth: Length, basis: Basis) -> Money {
        Money(self.over_lead(piece, basis).at(in_meters(depth + self.surface_run)))
    }

    /// Cost of a piece over the length of the lead in meters.
    pub(super) fn over_lead(&self, piece: &Piece, basis: Basis) -> Quadratic {
        let cable = Quadratic::line(0.0, piece.run.price.0);
        let installed = || cable + Quadratic::line(piece.outfit.cost.total().0, self.labor.0);
        match (basis, self.energy, piece.run.yearly) {
            (Basis::Cable, ..) => cable,
            (Basis::Lifetime, Some(prices), Some(yearly)) => installed() + yearly * prices.worth,
            (Basis::Installed | Basis::Lifetime, ..) => installed(),
        }
    }

    /// Cost at a depth, or `None` where no listed conductor serves.
    #[must_use]
    pub fn cost_at(&self, depth: Length, basis: Basis) -> Option<Money> {
        self.piece_at(depth).map(|piece| self.cost_on(piece, depth, basis))
    }

    /// Price of the lead alone at a depth.
    #[must_use]
    pub fn cable_at(&self, run: &DepthRun, depth: Length) -> Money {
        lead_price(run.price, depth + self.surface_run, Money(0.0))
    }

    /// What the way needs beyond its lead at a depth.
    #[must_use]
    pub fn beyond_at(&self, depth: Length) -> Option<Money> {
        self.piece_at(depth).map(|piece| piece.outfit.cost.total())
    }

    /// Whether the energy of every run is known, so that a lifetime can be told.
    #[must_use]
    pub fn has_lifetime(&self) -> bool {
        self.energy.is_some() && !self.runs.is_empty() && self.runs.iter().all(|run| run.yearly.is_some())
    }

    /// Where the cheaper of this way and another changes; nothing of the years where they are not known of both.
    #[must_use]
    pub fn even_with(&self, other: &Self, basis: Basis) -> BreakEven<Whose> {
        match basis {
            Basis::Lifetime if !(self.has_lifetime() && other.has_lifetime()) => BreakEven::default(),
            _ => break_even([self, other], [Whose::This, Whose::Other], basis),
        }
    }

    /// The deepest setting that any listed conductor serves; zero where none does even at ground.
    #[must_use]
    pub fn reach(&self) -> Length {
        self.runs.last().map_or(feet(0.0), |run| run.to)
    }

    /// The shallowest depth that is swept.
    #[must_use]
    pub fn start(&self) -> Length {
        self.runs.first().map_or(feet(0.0), |run| run.from)
    }

    /// What the choice of a run depended on.
    #[must_use]
    pub fn demands_of(&self, run: &DepthRun) -> Demands {
        self.demands.around(run.ambient)
    }
}

/// What a way's sweep is made of.
pub(super) struct Parts {
    pub way: Way,
    pub place: Option<usize>,
    pub priced: bool,
    pub current: MotorCurrent,
    pub demands: Demands,
    pub energy: Option<EnergyPrices>,
    pub surface_run: Length,
    pub labor: MoneyPerLength,
    pub runs: Vec<DepthRun>,
    /// By depth.
    pub outfits: Vec<Outfit>,
}

impl WaySweep {
    pub(super) fn of(parts: Parts) -> Self {
        let Parts { way, place, priced, current, demands, energy, surface_run, labor, runs, outfits } = parts;
        let required = demands.required;
        let pieces = pieces(&runs, &outfits);
        Self { way, place, priced, current, required, demands, runs, pieces, energy, labor, surface_run }
    }
}

/// The pieces of runs and outfits; where no outfit is known a way needs nothing beyond its lead.
fn pieces(runs: &[DepthRun], outfits: &[Outfit]) -> Vec<Piece> {
    let mut found = Vec::new();
    for run in runs {
        let mut from = run.from;
        let mut left = outfits.iter().skip_while(|outfit| outfit.to <= run.from && outfit.to < run.to);
        loop {
            let outfit = left.next().copied().unwrap_or(Outfit::nothing(run.to));
            let to = outfit.to.min(run.to);
            found.push(Piece { run: *run, outfit, from, to });
            if to >= run.to {
                break;
            }
            from = to;
        }
    }
    found
}

/// Both ways over all depths, and others that are drawn beside them.
#[derive(Debug, Clone, PartialEq)]
pub struct Sweep {
    /// The 240 V way and the 480 V way.
    pub ways: [WaySweep; 2],
    /// Lead on the surface.
    pub surface_run: Length,
    /// Where the cheaper way changes, by [`Basis`].
    pub break_even: [BreakEven; 3],
    /// Further ways that were asked for; none in an evaluation.
    pub beside: Vec<WaySweep>,
}

impl Sweep {
    /// A sweep of both ways, with the depths where the cheaper one changes.
    pub(super) fn of(ways: [WaySweep; 2], surface_run: Length) -> Self {
        let break_even = Basis::ALL.map(|basis| match basis {
            Basis::Lifetime if !ways.iter().all(WaySweep::has_lifetime) => BreakEven::default(),
            _ => break_even([&ways[0], &ways[1]], Way::ALL, basis),
        });
        Self { ways, surface_run, break_even, beside: Vec::new() }
    }

    /// A way's sweep.
    #[must_use]
    pub fn way(&self, way: Way) -> &WaySweep {
        &self.ways[way as usize]
    }

    /// Where the cheaper way changes.
    #[must_use]
    pub fn break_even(&self, basis: Basis) -> &BreakEven {
        &self.break_even[basis as usize]
    }

    /// Whether a lifetime can be told of both ways.
    #[must_use]
    pub fn has_lifetime(&self) -> bool {
        self.ways.iter().all(WaySweep::has_lifetime)
    }
}
