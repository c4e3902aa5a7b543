//! What a way costs, at first and over the years.

use super::motor::MotorHere;
use super::outfit::Beyond;
use super::{Base, PoweredWay};
use crate::cable::filter::Remedy;
use crate::cable::lead::impedance;
use crate::power::family::Kind;
use crate::quantity::{Mass, Money, Power, in_meters, watts};

/// What a way costs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WayCost {
    /// The lead.
    pub lead: Money,
    /// What it needs beyond the lead.
    pub beyond: Beyond,
    /// What stands between equipment and lead and is paid for: the last remedy where none helps.
    pub remedy: Remedy,
    /// Labor by the length of the lead.
    pub labor: Money,
    /// All of it.
    pub first: Money,
    /// Energy of a year from the transformer on, kWh; nothing where a set of one's own makes it.
    pub energy: Option<f64>,
    /// The largest power in it, at the transformer.
    pub largest: Option<Power>,
    /// What that costs in a year.
    pub yearly: Option<Money>,
    /// First cost, and the energy of the years by its worth today.
    pub lifetime: Option<Money>,
    /// Metal in lead and supply conductors.
    pub metal: Mass,
}

impl Base<'_> {
    pub(super) fn cost(&self, powered: &PoweredWay, motor: &MotorHere) -> Option<WayCost> {
        let (lead, supply) = (powered.lead?, powered.supply?);
        // Beyond the reach of the last remedy none helps; its price stands, as along the curve, and a finding stops.
        let remedy = powered
            .stress
            .map_or(Remedy::NoneNeeded, |stress| self.choices.remedy.or(stress.least).unwrap_or(Remedy::SineFilter));
        let beyond = self.beyond(powered, remedy)?;
        let kind = (self.choices.metal(), self.choices.build());
        let price = self.cable(lead.run.conductor, kind, lead.metal, lead.length)?;
        let labor = self.labor(lead.length)?;
        let mut cost = WayCost {
            lead: price,
            beyond,
            remedy,
            first: price + beyond.total() + labor,
            labor,
            energy: None,
            largest: None,
            yearly: None,
            lifetime: None,
            metal: lead.metal + supply.metal,
        };
        if powered.family.kind != Kind::ThreePhaseGenerator {
            let running = self.running(powered, motor)?;
            let prices = self.energy_prices()?;
            let (resistance, _) = impedance(lead.run.conductor, self.choices.metal(), self.choices.build());
            let year = running.year(resistance)?;
            let length = in_meters(lead.length);
            let yearly = Money(year.cost(prices).at(length));
            cost.energy = Some(year.energy.at(length) / 1000.0);
            cost.largest = Some(watts(year.most.at(length)));
            cost.yearly = Some(yearly);
            cost.lifetime = Some(Money(cost.first.0 + yearly.0 * prices.worth));
        }
        Some(cost)
    }
}
