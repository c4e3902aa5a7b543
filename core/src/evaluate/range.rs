//! Where the saving may come out when prices and hours turn out otherwise: low, expected and high of each, sampled by a
//! Latin hypercube with a fixed seed, so that the same job has the same range everywhere.

use super::{Basis, Evaluation, WayHere, evaluate};
use crate::cost::spread::{Estimate, Spread, range_of};
use crate::error::OutsideRange;
use crate::job::{Field, Job, Way};
use crate::quantity::{Entry, KILOGRAM_PER_POUND, Money, in_meters};

/// Points of the sample, and the seed that they are drawn with.
pub const POINTS: usize = 1000;
/// See [`POINTS`].
pub const SEED: u64 = 1;

/// What may turn out otherwise.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Uncertain {
    /// Price of the lead's metal, per pound.
    Metal,
    /// Price of the equipment over what is counted.
    Equipment,
    /// Hours of a year over what is counted.
    Hours,
    /// Price of energy, per kilowatt-hour.
    Energy,
}

impl Uncertain {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Metal, Self::Equipment, Self::Hours, Self::Energy];

    /// Its lowest and highest figure.
    #[must_use]
    pub fn fields(self) -> [Field; 2] {
        match self {
            Self::Metal => [Field::MetalLow, Field::MetalHigh],
            Self::Equipment => [Field::EquipmentLow, Field::EquipmentHigh],
            Self::Hours => [Field::HoursLow, Field::HoursHigh],
            Self::Energy => [Field::EnergyLow, Field::EnergyHigh],
        }
    }
}

/// The saving as a range.
#[derive(Debug, Clone, PartialEq)]
pub struct SavingRange {
    /// Low, expected and high of each, in the order of [`Uncertain::ALL`]; metal in money per pound, energy in money per
    /// kilowatt-hour, the others over what is counted.
    pub estimates: [Estimate; 4],
    /// The saving on a basis; nothing of the years where they are not known.
    pub saving: [Option<Spread>; 3],
}

impl SavingRange {
    /// The range on a basis.
    #[must_use]
    pub fn on(&self, basis: Basis) -> Option<Spread> {
        self.saving[basis as usize]
    }
}

/// The range of the saving at the job's depth; nothing without a saving.
///
/// # Errors
/// Names what may turn out otherwise whose expected figure lies outside its lowest and highest.
pub fn saving_range(answer: &Evaluation) -> Result<Option<SavingRange>, Uncertain> {
    let Some(parts) = Parts::of(answer) else { return Ok(None) };
    let mut estimates = Vec::new();
    for what in Uncertain::ALL {
        let Some((low, expected, high)) = figures(answer, what) else { return Ok(None) };
        estimates.push(Estimate::new(low, expected, high).map_err(|_| what)?);
    }
    let Ok(estimates) = <[Estimate; 4]>::try_from(estimates) else { return Ok(None) };
    let saving = Basis::ALL.map(|basis| {
        let unknown = OutsideRange { argument: "basis", given: f64::NAN, min: 0.0, max: 0.0 };
        range_of(&estimates, POINTS, SEED, |point| parts.saving(point, basis).ok_or(unknown)).ok()
    });
    Ok(Some(SavingRange { estimates, saving }))
}

/// The saving with one of what may turn out otherwise at another figure.
pub(super) fn moved(answer: &Evaluation, what: Uncertain, value: f64, basis: Basis) -> Option<Money> {
    let mut point = [0.0; 4];
    for (slot, one) in point.iter_mut().zip(Uncertain::ALL) {
        *slot = if one == what { value } else { figures(answer, one)?.1 };
    }
    Parts::of(answer)?.saving(&point, basis).map(Money)
}

/// One of what may turn out otherwise, alone: its figures, the saving for one more of it, and at both ends.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ends {
    /// Its figures.
    pub estimate: Estimate,
    /// More of the saving for one more of it.
    pub slope: f64,
    /// The saving at its lowest and at its highest.
    pub saving: [Money; 2],
}

/// What one thing alone does to the saving on a basis; nothing where it does nothing.
#[must_use]
pub fn ends(answer: &Evaluation, what: Uncertain, basis: Basis) -> Option<Ends> {
    let parts = Parts::of(answer)?;
    let (low, expected, high) = figures(answer, what)?;
    let slope = parts.slope(what, basis)?;
    let at = |value| moved(answer, what, value, basis);
    let estimate = Estimate::new(low, expected, high).ok()?;
    (slope != 0.0).then_some(Ends { estimate, slope, saving: [at(low)?, at(high)?] })
}

/// Lowest, expected and highest.
pub(super) fn figures(answer: &Evaluation, what: Uncertain) -> Option<(f64, f64, f64)> {
    let inputs = &answer.inputs;
    let figure = |field: Field| match inputs.entered.take(field, |figure| figure).ok()? {
        Some(known) => Some(known.value),
        None => inputs.stand_in(field)?.to(field.spec().accepted.unit),
    };
    let hours = inputs.entered.get(Field::YearlyHours, |hours| hours);
    if let (Uncertain::Hours, None) = (what, hours) {
        // Hours of a duty table vary as a whole.
        return Some((1.0 - super::HOURS_SPREAD, 1.0, 1.0 + super::HOURS_SPREAD));
    }
    let [low, high] = what.fields().map(figure);
    let (low, high) = (low?, high?);
    Some(match what {
        Uncertain::Metal => (low, inputs.prices.as_ref().ok()?.cable_metal.per_pound(), high),
        Uncertain::Equipment => (low / 100.0, 1.0, high / 100.0),
        Uncertain::Energy => (low, figure(Field::EnergyPrice)?, high),
        Uncertain::Hours => match hours {
            Some(hours) if hours > 0.0 => (low / hours, 1.0, high / hours),
            _ => (1.0, 1.0, 1.0),
        },
    })
}

/// What the saving is made of: it is straight in each of what may turn out otherwise.
struct Parts {
    /// The metal's price that is counted.
    metal: f64,
    /// On the cable at that price, and more for each unit of money on a pound.
    cable: (f64, f64),
    /// On the supply conductors.
    supply: (f64, f64),
    /// On the equipment.
    equipment: f64,
    /// On labor and lines, which stay.
    rest: f64,
    /// Worth today of a year's saving on energy alone at the counted price and hours, and of what stays of the bill.
    years: Option<(f64, f64)>,
    energy_price: f64,
}

impl Parts {
    fn of(answer: &Evaluation) -> Option<Self> {
        let here = answer.here.as_ref()?;
        let (low, high) = (here.way(Way::V240)?, here.way(Way::V480)?);
        let (inputs, saving) = (&answer.inputs, here.saving.as_ref()?);
        let prices = inputs.prices.as_ref().ok()?;
        let factor = prices.book.cable_factor();
        let of_metal = |way: &WayHere| way.metal.value / KILOGRAM_PER_POUND * factor;
        let both = |of: &dyn Fn(&WayHere) -> f64| of(low) - of(high);
        let supply = |way: Way| {
            let place = answer.sweep.as_ref()?.way(way).place?;
            let run = answer.ways.all.get(place)?.supply?;
            (run.demands.setting.metal == prices.metal).then(|| run.metal.value / KILOGRAM_PER_POUND * factor)
        };
        let typed = prices.extra_equipment.is_some();
        let supply_metal = |way| if typed { 0.0 } else { supply(way).unwrap_or(0.0) };
        let equipment = |way: &WayHere| {
            let cost = way.outfit.cost;
            (cost.equipment + cost.transformer + cost.remedy + cost.extra).0
        };
        let of_supply = both(&|way| way.outfit.cost.supply.0);
        let equipment = both(&equipment);
        Some(Self {
            metal: prices.cable_metal.per_pound(),
            cable: (saving.cable.0, both(&of_metal)),
            supply: (of_supply, supply_metal(Way::V240) - supply_metal(Way::V480)),
            equipment,
            rest: saving.net.0 - saving.cable.0 - of_supply - equipment,
            years: years(answer, low, high),
            energy_price: inputs.entered.get(Field::EnergyPrice, |price| price)?,
        })
    }

    /// The saving for one more of what may turn out otherwise, all else as counted.
    fn slope(&self, what: Uncertain, basis: Basis) -> Option<f64> {
        let installed = basis != Basis::Cable;
        let of_energy = if basis == Basis::Lifetime { self.years?.0 } else { 0.0 };
        Some(match what {
            Uncertain::Metal => self.cable.1 + if installed { self.supply.1 } else { 0.0 },
            Uncertain::Equipment => {
                if installed {
                    self.equipment
                } else {
                    0.0
                }
            }
            Uncertain::Hours => of_energy,
            Uncertain::Energy => {
                if self.energy_price > 0.0 {
                    of_energy / self.energy_price
                } else {
                    0.0
                }
            }
        })
    }

    /// The saving at a point.
    fn saving(&self, point: &[f64], basis: Basis) -> Option<f64> {
        let [metal, equipment, hours, energy] = *<&[f64; 4]>::try_from(point).ok()?;
        let dearer = metal - self.metal;
        let cable = self.cable.0 + self.cable.1 * dearer;
        let installed = cable + self.supply.0 + self.supply.1 * dearer + self.equipment * equipment + self.rest;
        Some(match basis {
            Basis::Cable => cable,
            Basis::Installed => installed,
            Basis::Lifetime => {
                let (of_energy, stays) = self.years?;
                let price = if self.energy_price > 0.0 { energy / self.energy_price } else { 1.0 };
                installed + of_energy * hours * price + stays
            }
        })
    }
}

/// Worth today of what is saved on energy, and of what is saved on the rest of the bills.
fn years(answer: &Evaluation, low: &WayHere, high: &WayHere) -> Option<(f64, f64)> {
    let sweep = answer.sweep.as_ref()?;
    let lead = in_meters(answer.here.as_ref()?.lead);
    let prices = sweep.way(Way::V240).energy?;
    let whole = |way: &WayHere| Some(way.run.yearly?.at(lead));
    let of_energy = |way: &WayHere| Some(way.run.energy?.at(lead) / 1000.0 * prices.kilowatt_hour.0);
    let saved = Money(whole(low)? - whole(high)?);
    let energy = of_energy(low)? - of_energy(high)?;
    Some((energy * prices.worth, (saved.0 - energy) * prices.worth))
}

/// What a band along the curve shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Band {
    /// No band.
    #[default]
    None,
    /// The metal's price at its lowest and highest.
    Metal,
    /// The drop along the lead that is allowed, from 3 to 5 %.
    Drop,
}

/// Allowed drops of a band, percent: what the code's notes suggest for a branch circuit and in all.
const DROPS: [f64; 2] = [3.0, 5.0];

/// The job at both ends of a band; nothing without a band, or where it has no ends.
#[must_use]
pub fn band(job: &Job, answer: &Evaluation, band: Band) -> Option<[Evaluation; 2]> {
    let (field, ends) = match band {
        Band::None => return None,
        Band::Metal => {
            let (low, _, high) = figures(answer, Uncertain::Metal)?;
            (Field::CableMetal, [low, high])
        }
        Band::Drop => (Field::AllowedDrop, DROPS),
    };
    Some(ends.map(|end| {
        let mut other = job.clone();
        other.set(field, Some(Entry::new(end, field.spec().accepted.unit)));
        evaluate(&other)
    }))
}
