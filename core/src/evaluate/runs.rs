//! The runs of the leads with one motor, over a longer lead.

use super::cooler::Cooler;
use super::priced;
use super::sweep::{DEEPEST_FEET, DepthRun, Parts, Sweep, WaySweep};
use super::ways::{Base, EnergyPrices, Fitted, Outfit, Ways};
use crate::cable::ampacity::{Setting, required_ampacity, terminal_rating};
use crate::cable::conductor::{STRAND_LAY, metal_mass};
use crate::cable::drop::{Load, Phases};
use crate::cable::lead::{Demands, Run, impedance, runs};
use crate::cost::price::Prices;
use crate::job::{Choices, Inputs, Way};
use crate::quantity::{Celsius, ElectricCurrent, Length, MassPerLength, Money, Power, circular_mils, feet};
use crate::standards::conductor::{Metal, Size};

/// What is asked of the depths: where they begin and end, and the lead on the surface.
#[derive(Debug, Clone, Copy)]
pub(super) struct Stretch {
    pub from: Length,
    pub to: Length,
    pub surface_run: Length,
}

/// What the sweeps of a job ask for.
pub(super) struct Swept<'a> {
    pub inputs: &'a Inputs,
    pub choices: &'a Choices,
    pub base: Option<&'a Base<'a>>,
    pub ways: &'a Ways,
    /// The equipment that stands for each voltage.
    pub pair: [Option<usize>; 2],
    pub surface_run: Length,
    pub cooler: Option<Cooler>,
}

impl Swept<'_> {
    /// Sweeps both ways with one motor, or `None` while a figure is missing or wrong.
    pub fn longer(&self) -> Option<Sweep> {
        let fitted = self.pair.map(|place| self.base?.fitted(self.ways.all.get(place?)?));
        let [low, high] = &fitted;
        let of = |way: Way, fitted: &Option<Fitted>| self.of_way(way, fitted.as_ref(), low.as_ref());
        Some(Sweep::of([of(Way::V240, low)?, of(Way::V480, high)?], self.surface_run))
    }

    /// Sweeps the one way that stands for a voltage.
    pub fn longer_alone(&self, way: Way) -> Option<WaySweep> {
        let fitted = self.base?.fitted(self.ways.all.get(self.place(way)?)?);
        self.of_way(way, fitted.as_ref(), None)
    }

    fn of_way(&self, way: Way, fitted: Option<&Fitted>, low: Option<&Fitted>) -> Option<WaySweep> {
        let prices = self.inputs.prices.as_ref().ok()?;
        let motor = self.inputs.motor_power.as_ref().ok()?.value;
        let demands = demands(way, self.inputs, self.choices)?;
        let deepest = feet(DEEPEST_FEET);
        let begins = self.cooler.and_then(|cooler| Some((cooler.begins()?.min(deepest), cooler.water)));
        let to = begins.map_or(deepest, |(depth, _)| depth);
        let running = Priced { prices, motor, fitted, energy: self.energy() };
        let stretch = |from, to| Stretch { from, to, surface_run: self.surface_run };
        let mut runs = depth_runs(&demands, running, stretch(feet(0.0), to))?;
        if let Some((from, water)) = begins.filter(|(from, _)| *from < deepest) {
            runs.extend(depth_runs(&demands.around(water), running, stretch(from, deepest))?);
        }
        Some(WaySweep::of(Parts {
            way,
            place: self.place(way),
            priced: self.is_priced(way, fitted, low),
            current: *self.inputs.motor_current[way as usize].as_ref().ok()?,
            demands,
            energy: self.energy(),
            surface_run: self.surface_run,
            labor: prices.book.labor_per_length(),
            runs,
            outfits: self.outfits(way, fitted, low, deepest),
        }))
    }

    /// Whether the price of what a way needs beyond its lead is known, or entered beyond the other's.
    pub fn is_priced(&self, way: Way, fitted: Option<&Fitted>, low: Option<&Fitted>) -> bool {
        match (way, self.extra()) {
            (Way::V480, Some(_)) => low.is_some(),
            _ => fitted.is_some(),
        }
    }

    /// What was entered as the extra equipment of the 480 V way.
    fn extra(&self) -> Option<Money> {
        self.inputs.prices.as_ref().ok()?.extra_equipment
    }

    pub fn place(&self, way: Way) -> Option<usize> {
        self.pair[way as usize]
    }

    pub fn energy(&self) -> Option<EnergyPrices> {
        self.base?.energy_prices()
    }

    /// What a way needs beyond its lead, by depth down to `to`. Where the user tells what the 480 V way costs beyond the
    /// other, it is that; else each way costs what its own equipment does.
    pub fn outfits(&self, way: Way, fitted: Option<&Fitted>, low: Option<&Fitted>, to: Length) -> Vec<Outfit> {
        let extra = self.extra().filter(|_| way == Way::V480);
        let by_lead: &[Outfit] = match (extra, fitted) {
            (Some(_), _) => low.map_or(&[], |low| &low.by_lead),
            (None, fitted) => fitted.map_or(&[], |fitted| &fitted.by_lead),
        };
        let mut found: Vec<Outfit> = Vec::new();
        for outfit in by_lead {
            let depth = (outfit.to - self.surface_run).min(to);
            if depth > found.last().map_or(feet(-1.0), |last| last.to) {
                found.push(Outfit { to: depth, ..*outfit });
            }
        }
        if found.is_empty() {
            found.push(Outfit::nothing(to));
        }
        for outfit in &mut found {
            outfit.cost.extra = extra.unwrap_or(Money(0.0));
        }
        found
    }
}

/// What the runs of a motor's lead are priced with.
#[derive(Clone, Copy)]
pub(super) struct Priced<'a> {
    pub prices: &'a Prices,
    pub motor: Power,
    pub fitted: Option<&'a Fitted>,
    pub energy: Option<EnergyPrices>,
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
pub(super) fn depth_runs(demands: &Demands, prices: Priced, stretch: Stretch) -> Option<Vec<DepthRun>> {
    let Stretch { from, to: deepest, surface_run } = stretch;
    let mut depth = from;
    let mut found = Vec::new();
    for run in runs(demands).ok()? {
        let to = (run.longest - surface_run).min(deepest);
        if to < from || (to <= depth && !found.is_empty()) {
            continue;
        }
        let metal = cable_metal(demands.setting.metal, &run, demands.load.phases);
        let yearly = prices.fitted.zip(prices.energy).and_then(|(fitted, energy)| {
            let (resistance, _) = impedance(run.conductor, demands.setting.metal, demands.build);
            let year = fitted.running.as_ref()?.year(resistance)?;
            Some((year.energy, year.cost(energy)))
        });
        found.push(DepthRun {
            from: depth,
            to,
            price: priced::cable(prices.prices, run.conductor, (demands.setting.metal, demands.build), metal)?,
            metal,
            motor: prices.motor,
            ambient: demands.setting.ambient,
            energy: yearly.map(|(energy, _)| energy),
            yearly: yearly.map(|(_, cost)| cost),
            run,
        });
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
