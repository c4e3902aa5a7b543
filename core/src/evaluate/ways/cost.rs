//! What a way costs, at first and over the years.

use super::equipment::{Draw, size};
use super::motor::MotorHere;
use super::{Base, PoweredWay};
use crate::cable::drop::{Load, Phases, lead_loss};
use crate::cable::economic::yearly_energy;
use crate::cable::lead::{Conductor, impedance};
use crate::cost::annuity::present_value;
use crate::cost::equipment::equipment_price;
use crate::cost::price::{cable_price, lead_price};
use crate::job::Field;
use crate::power::family::{Feed, Kind};
use crate::quantity::{Length, Mass, Money, Power};

/// What a way costs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WayCost {
    /// The lead.
    pub lead: Money,
    /// The supply conductors.
    pub supply: Money,
    /// The equipment.
    pub equipment: Money,
    /// What stands between it and the lead, where it is bought besides.
    pub remedy: Money,
    /// The extension of a three-phase line.
    pub line: Money,
    /// All of it.
    pub first: Money,
    /// Energy of a year from the transformer on, kWh; nothing where a set of one's own makes it.
    pub energy: Option<f64>,
    /// What that costs in a year.
    pub yearly: Option<Money>,
    /// First cost, and the energy of the years by its worth today.
    pub lifetime: Option<Money>,
    /// Metal in lead and supply conductors.
    pub metal: Mass,
}

impl Base<'_> {
    pub(super) fn cost(&self, powered: &PoweredWay, motor: &MotorHere, draw: &Draw) -> Option<WayCost> {
        let prices = self.inputs.prices.as_ref().ok()?;
        let (lead, supply) = (powered.lead?, powered.supply?);
        let priced = |metal: Mass, length: Length| {
            if length.value > 0.0 {
                lead_price(cable_price(prices, metal / length), length, Money(0.0))
            } else {
                Money(0.0)
            }
        };
        let family = &powered.family;
        let line = match family.kind {
            Kind::ThreePhaseLine => self.site.tariff.cost(self.site.line?).ok()?,
            _ => Money(0.0),
        };
        let remedy = powered
            .stress
            .map_or(Ok(Money(0.0)), |stress| equipment_price(stress.fitted.invented_price(), motor.power));
        let mut cost = WayCost {
            lead: priced(lead.metal, lead.length),
            supply: priced(supply.metal, supply.length),
            equipment: equipment_price(family.price, size(powered, motor)).ok()?,
            remedy: remedy.ok()?,
            line,
            first: Money(0.0),
            energy: None,
            yearly: None,
            lifetime: None,
            metal: lead.metal + supply.metal,
        };
        cost.first = cost.lead + cost.supply + cost.equipment + cost.remedy + cost.line;
        if family.kind != Kind::ThreePhaseGenerator {
            let wasted = self.supply_loss(supply.run.conductor, supply.length, family.supply.feed, draw);
            self.energy(&mut cost, draw.input + wasted)?;
        }
        Some(cost)
    }

    /// Heat in the supply conductors at the input current.
    fn supply_loss(&self, conductor: Conductor, length: Length, feed: Feed, draw: &Draw) -> Power {
        let phases = if feed == Feed::SinglePhase { Phases::Single } else { Phases::Three };
        let load = Load { sending: self.site.supply, current: draw.current, power_factor: draw.power_factor, phases };
        let (resistance, _) = impedance(conductor, self.choices.feeder_metal(), self.choices.feeder_build());
        lead_loss(load, resistance, length)
    }

    fn energy(&self, cost: &mut WayCost, power: Power) -> Option<()> {
        let entered = &self.inputs.entered;
        let figure = |field| entered.get(field, |figure| figure);
        let energy = yearly_energy(power, figure(Field::YearlyHours)?).ok()?;
        let yearly = Money(energy * figure(Field::EnergyPrice)?);
        let worth = present_value(yearly, figure(Field::Discount)? / 100.0, figure(Field::Years)?).ok()?;
        (cost.energy, cost.yearly) = (Some(energy), Some(yearly));
        cost.lifetime = Some(cost.first + worth);
        Some(())
    }
}
