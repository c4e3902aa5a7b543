//! Cost against depth, exact at every depth: each way is a list of runs that end where the conductor grows.

use super::break_even::{BreakEven, break_even};
use super::cooler::Cooler;
use crate::cable::ampacity::{Setting, required_ampacity, terminal_rating};
use crate::cable::conductor::{STRAND_LAY, metal_mass};
use crate::cable::drop::{Load, Phases};
use crate::cable::lead::{Demands, Run, runs};
use crate::cost::price::{Prices, cable_price, lead_price};
use crate::job::{Choices, Inputs, Way};
use crate::quantity::{
    Celsius, ElectricCurrent, Length, MassPerLength, Money, MoneyPerLength, Power, circular_mils, feet,
};
use crate::standards::conductor::{Metal, Size};
use serde::Serialize;

pub use crate::job::MotorCurrent;

/// Deepest pump setting that the sweep covers, feet: the limit of the field.
pub const DEEPEST_FEET: f64 = 3000.0;

/// What a cost counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Basis {
    /// The lead alone.
    Cable,
    /// The lead and the equipment that its way needs beyond the other.
    Installed,
}

impl Basis {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Cable, Self::Installed];
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
}

/// One way over all depths.
#[derive(Debug, Clone, PartialEq)]
pub struct WaySweep {
    /// The way.
    pub way: Way,
    /// Current of the motor.
    pub current: MotorCurrent,
    /// Ampacity that the phases need.
    pub required: ElectricCurrent,
    /// What the choice depended on; where the water counts, with the surroundings of the run.
    pub demands: Demands,
    /// Equipment of this way beyond the other.
    pub equipment: Money,
    /// The runs from ground down. They end where no listed conductor serves, or at [`DEEPEST_FEET`].
    pub runs: Vec<DepthRun>,
    surface_run: Length,
}

impl WaySweep {
    /// The run that serves a depth, or `None` where no listed conductor does, and above the shallowest depth.
    #[must_use]
    pub fn run_at(&self, depth: Length) -> Option<&DepthRun> {
        self.runs.iter().find(|run| run.to >= depth).filter(|_| depth >= self.start())
    }

    /// Cost of a run at a depth.
    #[must_use]
    pub fn cost_on(&self, run: &DepthRun, depth: Length, basis: Basis) -> Money {
        let equipment = match basis {
            Basis::Cable => Money(0.0),
            Basis::Installed => self.equipment,
        };
        lead_price(run.price, depth + self.surface_run, equipment)
    }

    /// Cost at a depth, or `None` where no listed conductor serves.
    #[must_use]
    pub fn cost_at(&self, depth: Length, basis: Basis) -> Option<Money> {
        self.run_at(depth).map(|run| self.cost_on(run, depth, basis))
    }

    /// The deepest setting that any listed conductor serves; zero where none does even at ground.
    #[must_use]
    pub fn reach(&self) -> Length {
        self.runs.last().map_or(feet(0.0), |run| run.to)
    }
}

/// Both ways over all depths.
#[derive(Debug, Clone, PartialEq)]
pub struct Sweep {
    /// The 240 V way and the 480 V way.
    pub ways: [WaySweep; 2],
    /// Lead on the surface.
    pub surface_run: Length,
    /// Where the cheaper way changes, by [`Basis`].
    pub break_even: [BreakEven; 2],
}

impl Sweep {
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
}

/// What is asked of the depths: where they begin and end, and the lead on the surface.
#[derive(Debug, Clone, Copy)]
pub(super) struct Stretch {
    pub from: Length,
    pub to: Length,
    pub surface_run: Length,
}

/// Sweeps both ways with one motor, or `None` while a figure is missing or wrong.
pub(super) fn sweep(inputs: &Inputs, choices: &Choices, surface_run: Length, cooler: Option<Cooler>) -> Option<Sweep> {
    let prices = inputs.prices.as_ref().ok()?;
    let motor = inputs.motor_power.as_ref().ok()?.value;
    let deepest = feet(DEEPEST_FEET);
    let begins = cooler.and_then(|cooler| Some((cooler.begins()?.min(deepest), cooler.water)));
    let one = |way| {
        let demands = demands(way, inputs, choices)?;
        let current = *inputs.motor_current[way as usize].as_ref().ok()?;
        let to = begins.map_or(deepest, |(depth, _)| depth);
        let mut runs = depth_runs(&demands, prices, motor, Stretch { from: feet(0.0), to, surface_run })?;
        if let Some((from, water)) = begins.filter(|(from, _)| *from < deepest) {
            let below = Stretch { from, to: deepest, surface_run };
            runs.extend(depth_runs(&demands.around(water), prices, motor, below)?);
        }
        Some(WaySweep::of(way, current, demands, prices, surface_run, runs))
    };
    Some(Sweep::of([one(Way::V240)?, one(Way::V480)?], surface_run))
}

impl Sweep {
    /// A sweep of both ways, with the depths where the cheaper one changes.
    pub(super) fn of(ways: [WaySweep; 2], surface_run: Length) -> Self {
        let break_even = Basis::ALL.map(|basis| break_even(&ways[0], &ways[1], basis));
        Self { ways, surface_run, break_even }
    }
}

impl WaySweep {
    pub(super) fn of(
        way: Way,
        current: MotorCurrent,
        demands: Demands,
        prices: &Prices,
        surface_run: Length,
        runs: Vec<DepthRun>,
    ) -> Self {
        let equipment = match way {
            Way::V240 => Money(0.0),
            Way::V480 => prices.extra_equipment,
        };
        Self { way, current, required: demands.required, demands, equipment, runs, surface_run }
    }

    /// What the choice of a run depended on.
    #[must_use]
    pub fn demands_of(&self, run: &DepthRun) -> Demands {
        self.demands.around(run.ambient)
    }

    /// The shallowest depth that is swept.
    #[must_use]
    pub fn start(&self) -> Length {
        self.runs.first().map_or(feet(0.0), |run| run.from)
    }
}

/// What the choice of a way's lead depends on, with the job's own motor.
pub(super) fn demands(way: Way, inputs: &Inputs, choices: &Choices) -> Option<Demands> {
    let current = inputs.motor_current[way as usize].as_ref().ok()?;
    let power_factor = inputs.power_factor.as_ref().ok()?.value;
    demands_of(way, inputs, choices, current.sizing, power_factor, inputs.device.as_ref().ok()?.value)
}

/// As [`demands`], with any motor.
pub(super) fn demands_of(
    way: Way,
    inputs: &Inputs,
    choices: &Choices,
    current: ElectricCurrent,
    power_factor: f64,
    device: ElectricCurrent,
) -> Option<Demands> {
    let required = required_ampacity(current);
    Some(Demands {
        load: Load { sending: way.sending(), current, power_factor, phases: Phases::Three },
        required,
        setting: Setting {
            metal: choices.metal(),
            insulation: choices.insulation(),
            terminals: terminal_rating(required, choices.terminals_marked_75()),
            ambient: inputs.ambient.as_ref().ok()?.value,
        },
        build: choices.build(),
        allowed_drop: inputs.allowed_drop.as_ref().ok()?.value,
        most_sets: choices.most_sets(),
        device,
    })
}

impl Demands {
    /// The same in other surroundings.
    pub(super) fn around(self, ambient: Celsius) -> Self {
        Self { setting: Setting { ambient, ..self.setting }, ..self }
    }
}

/// The runs of a motor's lead over a stretch of depths.
pub(super) fn depth_runs(demands: &Demands, prices: &Prices, motor: Power, stretch: Stretch) -> Option<Vec<DepthRun>> {
    let Stretch { from, to: deepest, surface_run } = stretch;
    let mut depth = from;
    let mut found = Vec::new();
    for run in runs(demands).ok()? {
        let to = (run.longest - surface_run).min(deepest);
        if to < from || (to <= depth && !found.is_empty()) {
            continue;
        }
        let metal = cable_metal(demands.setting.metal, &run, demands.load.phases);
        let ambient = demands.setting.ambient;
        found.push(DepthRun { from: depth, to, price: cable_price(prices, metal), metal, motor, ambient, run });
        depth = to;
    }
    Some(found)
}

/// Metal in a length of cable: the conductors of the current and a ground in each set, by table 8 areas and strand lay.
pub(super) fn cable_metal(metal: Metal, run: &Run, phases: Phases) -> MassPerLength {
    let sets = f64::from(run.conductor.sets);
    let mass = |size: Size| metal_mass(metal, circular_mils(size.row().cmil), STRAND_LAY);
    (mass(run.conductor.size) * f64::from(phases.conductors()) + mass(run.ground)) * sets
}
