//! What a year of running takes from the supply, over the length of the lead.

use super::motor::MotorHere;
use super::{Base, PoweredWay};
use crate::cable::drop::{Load, lead_loss};
use crate::cable::lead::impedance;
use crate::cost::annuity::annuity_factor;
use crate::cost::tariff::{Bill, Season, Tariff, Use, bill};
use crate::error::OutsideRange;
use crate::job::{Entered, Field};
use crate::numeric::quadratic::Quadratic;
use crate::power::family::{Family, Kind, Start};
use crate::power::supply::{input_current, input_power, true_power_factor};
use crate::quantity::{
    ElectricPotential, Frequency, Length, Money, OhmsPerLength, Power, in_meters, in_watts, kilowatts, meters, watts,
};

/// Hours of a year at a load, which is told as a share of the motor's rating, and the speed at which it is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LoadHours {
    /// Hours.
    pub hours: f64,
    /// Power at the shaft over the motor's rating.
    pub share: f64,
    /// Frequency at which the pump runs for it, where its curve tells it.
    pub frequency: Option<Frequency>,
    /// Share of its rated volts that a motor on a drive has there.
    pub volts: f64,
}

impl LoadHours {
    /// The motor's rating at its rated speed for some hours.
    pub(in crate::evaluate) fn rated(hours: f64) -> Self {
        Self { hours, share: 1.0, frequency: None, volts: 1.0 }
    }

    /// Current of the motor over its nameplate's: with constant volts per hertz a motor that turns slower draws more for
    /// the same power. Under three quarters of the load that its rating is at those volts it draws more than this.
    #[must_use]
    pub fn current(&self) -> f64 {
        self.share / self.volts
    }

    /// The same load of a motor that has its rated volts whatever the pump asks for.
    fn at_full_volts(self) -> Self {
        Self { frequency: None, volts: 1.0, ..self }
    }
}

/// Where the power goes at a load: from the meter to the shaft.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PowerFlow {
    /// The load, and hours of a year at it.
    pub load: LoadHours,
    /// At the motor's shaft.
    pub shaft: Power,
    /// Lost in the motor.
    pub motor: Power,
    /// Lost in the lead.
    pub lead: Power,
    /// Lost in the equipment.
    pub equipment: Power,
    /// Lost in the supply conductors.
    pub supply: Power,
    /// All of it, at the transformer.
    pub metered: Power,
}

/// The energy of a year and the largest power in it, each over the length of the lead in meters: the lead's heat grows
/// with its length, the heat of the supply conductors with the square of what both take.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::evaluate) struct Year {
    /// Watt-hours.
    pub energy: Quadratic,
    /// Watts.
    pub most: Quadratic,
}

impl Year {
    /// What it costs.
    pub fn cost(&self, price: EnergyPrices) -> Quadratic {
        let drawn = self.energy * (price.kilowatt_hour.0 / 1000.0) + self.most * (price.kilowatt.0 / 1000.0);
        drawn + Quadratic::constant(price.standing.0)
    }
}

/// What energy costs, and what a yearly sum is worth today.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EnergyPrices {
    /// One kilowatt-hour, over all seasons.
    pub kilowatt_hour: Money,
    /// One kilowatt of the months' largest power, over a year.
    pub kilowatt: Money,
    /// What stands in a year.
    pub standing: Money,
    /// Present worth of one unit of money in each of the years.
    pub worth: f64,
}

/// A way with a motor, as a year of running asks for it.
#[derive(Debug, Clone)]
pub(in crate::evaluate) struct Running {
    motor: MotorHere,
    sending: ElectricPotential,
    efficiency: f64,
    /// Heat of the supply conductors over the square of what is drawn, 1/W.
    supply: f64,
    loads: Vec<LoadHours>,
}

impl Running {
    /// The year with a lead of this resistance.
    pub fn year(&self, resistance: OhmsPerLength) -> Option<Year> {
        let mut found = Year { energy: Quadratic::default(), most: Quadratic::default() };
        let mut largest = -1.0;
        for load in self.loads.iter().copied() {
            let LoadHours { hours, share, .. } = load;
            let (at_equipment, per_meter) = self.drawn(load, resistance)?;
            let heat = Quadratic::square_of_line(at_equipment, per_meter) * self.supply;
            let power = Quadratic::line(at_equipment, per_meter) + heat;
            found.energy = found.energy + power * hours;
            if share > largest {
                (largest, found.most) = (share, power);
            }
        }
        Some(found)
    }

    /// What is drawn at a load with a lead of this resistance and length, and where it goes.
    pub fn flow(&self, load: LoadHours, resistance: OhmsPerLength, length: Length) -> Option<PowerFlow> {
        let motor = self.motor;
        let shaft = motor.power * load.share;
        let (at_equipment, per_meter) = self.drawn(load, resistance)?;
        let drawn = at_equipment + per_meter * in_meters(length);
        let lead = per_meter * in_meters(length) * self.efficiency;
        Some(PowerFlow {
            load,
            shaft,
            motor: shaft * (1.0 / motor.efficiency - 1.0),
            lead: watts(lead),
            equipment: watts(drawn * (1.0 - self.efficiency)),
            supply: watts(self.supply * drawn * drawn),
            metered: watts(drawn + self.supply * drawn * drawn),
        })
    }

    /// The loads of the year.
    pub fn loads(&self) -> &[LoadHours] {
        &self.loads
    }

    /// Watts that the equipment draws at a load, without a lead and for each meter of it.
    fn drawn(&self, at: LoadHours, resistance: OhmsPerLength) -> Option<(f64, f64)> {
        let motor = self.motor;
        let load = Load {
            sending: self.sending,
            current: motor.nameplate * at.current(),
            power_factor: motor.power_factor,
            phases: motor.phases,
        };
        let input = |power, heat| input_power(power, motor.efficiency, heat, self.efficiency).ok().map(in_watts);
        let of_a_meter = lead_loss(load, resistance, meters(1.0));
        Some((input(motor.power * at.share, watts(0.0))?, input(watts(0.0), of_a_meter)?))
    }
}

impl Base<'_> {
    /// How a way runs through a year; nothing where a set of one's own feeds it, or a figure is missing.
    pub(in crate::evaluate) fn running(&self, powered: &PoweredWay, motor: &MotorHere) -> Option<Running> {
        let family = &powered.family;
        if family.kind == Kind::ThreePhaseGenerator {
            return None;
        }
        Some(Running {
            motor: *motor,
            sending: powered.way?.sending(),
            efficiency: family.input.efficiency,
            supply: self.supply_heat(powered)?,
            loads: self.loads_of(family)?,
        })
    }

    /// The loads of a year; equipment that runs the motor at full speed alone gives it full volts.
    fn loads_of(&self, family: &Family) -> Option<Vec<LoadHours>> {
        let loads = self.loads.clone()?;
        Some(match family.start {
            Start::Ramp => loads,
            Start::AcrossTheLine { .. } => loads.into_iter().map(LoadHours::at_full_volts).collect(),
        })
    }

    /// Heat of the supply conductors over the square of what is drawn; none until they are known.
    fn supply_heat(&self, powered: &PoweredWay) -> Option<f64> {
        let Some(run) = powered.supply else { return Some(0.0) };
        let family = &powered.family;
        let power_factor = true_power_factor(family.input.displacement, family.input.distortion).ok()?;
        let drawn = watts(1000.0);
        let current = input_current(drawn, powered.fed.1, power_factor, family.supply.feed).ok()?;
        let load = Load { sending: powered.fed.1, current, power_factor, phases: run.demands.phases };
        let (resistance, _) = impedance(run.run.conductor, run.demands.setting.metal, run.demands.build);
        let heat = in_watts(lead_loss(load, resistance, run.length));
        Some(heat / (in_watts(drawn) * in_watts(drawn)))
    }

    /// What energy costs; nothing where a figure can't be used.
    pub(in crate::evaluate) fn energy_prices(&self) -> Option<EnergyPrices> {
        let figure = |field| self.inputs.entered.get(field, |figure| figure);
        let worth = annuity_factor(figure(Field::Discount)? / 100.0, figure(Field::Years)?).ok()?;
        let one = one_of_each(&self.inputs.entered)?.ok()?;
        Some(EnergyPrices { kilowatt_hour: one.energy, kilowatt: one.demand, standing: one.standing, worth })
    }
}

/// The bill of one kilowatt-hour and one kilowatt: what each costs over the months and seasons. Nothing where a figure
/// can't be used, and an error where its months or its shares contradict one another.
pub(in crate::evaluate) fn one_of_each(entered: &Entered) -> Option<Result<Bill, OutsideRange>> {
    let figure = |field| entered.get(field, |figure| figure);
    let optional =
        |field| entered.take(field, |figure| figure).ok().map(|known| known.map_or(0.0, |known| known.value));
    let [season, billed, used] =
        [optional(Field::SeasonMonths)?, optional(Field::BilledMonths)?, figure(Field::MonthsOfUse)?];
    let [Some(season), Some(billed), Some(used)] = [season, billed, used].map(whole) else {
        return Some(Err(OutsideRange { argument: "months", given: used, min: 0.0, max: 12.0 }));
    };
    let (energy, demand) = (figure(Field::EnergyPrice)?, optional(Field::DemandPrice)?);
    let or =
        |field, usual: f64| entered.take(field, |figure| figure).ok().map(|known| known.map_or(usual, |k| k.value));
    let within = season.min(used);
    let tariff = Tariff {
        energy: Money(energy),
        demand: Money(demand),
        // Months of the season are billed first.
        billed_months: billed.saturating_sub(season),
        standing: Money(optional(Field::StandingCharge)?),
        season: match season {
            0 => None,
            _ => Some(Season {
                months: season,
                energy: Money(or(Field::SeasonPrice, energy)?),
                demand: Money(or(Field::SeasonDemandPrice, demand)?),
                billed_months: billed.min(season),
            }),
        },
    };
    let share = or(Field::SeasonShare, usual_share(season, used))? / 100.0;
    let drawn =
        Use { energy: 1.0, largest: kilowatts(1.0), months: used, months_in_season: within, share_in_season: share };
    Some(bill(&tariff, &drawn))
}

/// Share of the energy in a season, percent, until it is entered: by its months of use.
pub(in crate::evaluate) fn usual_share(season: u8, used: u8) -> f64 {
    if used == 0 { 0.0 } else { 100.0 * f64::from(season.min(used)) / f64::from(used) }
}

/// A whole number of months.
pub(in crate::evaluate) fn whole(months: f64) -> Option<u8> {
    ((0.0..=12.0).contains(&months) && months.fract() == 0.0).then_some(months as u8)
}
