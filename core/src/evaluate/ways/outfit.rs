//! What a way needs beyond its lead, over the depths at which that stays the same.

use super::equipment::size;
use super::motor::MotorHere;
use super::year::Running;
use super::{Base, PoweredWay};
use crate::cable::filter::{Practice, Remedy, remedies};
use crate::cable::lead::Conductor;
use crate::cable::reactance::Build;
use crate::cost::book::Piece;
use crate::cost::equipment::equipment_price;
use crate::cost::price::lead_price;
use crate::evaluate::priced;
use crate::job::Way;
use crate::power::family::{Family, Kind};
use crate::quantity::{Length, Mass, Money, Power, meters};
use crate::standards::conductor::Metal;

/// What a way needs beyond its lead.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Beyond {
    /// The equipment.
    pub equipment: Money,
    /// What stands between it and the lead, where it is bought besides.
    pub remedy: Money,
    /// The supply conductors; none until they are known.
    pub supply: Money,
    /// A transformer behind its drive, where the equipment's price does not hold it.
    pub transformer: Money,
    /// The extension of a three-phase line.
    pub line: Money,
    /// Labor, whatever the length of the lead.
    pub labor: Money,
    /// What was entered in place of the 480 V way's own equipment, beyond that of the other.
    pub extra: Money,
}

impl Beyond {
    /// All of it.
    #[must_use]
    pub fn total(&self) -> Money {
        self.equipment + self.transformer + self.remedy + self.supply + self.line + self.labor + self.extra
    }
}

/// What a way needs beyond its lead, down to a depth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outfit {
    /// Deepest setting for which it stays the same; at this very depth it still does.
    pub to: Length,
    /// What stands between equipment and lead.
    pub remedy: Remedy,
    /// What it costs.
    pub cost: Beyond,
}

impl Outfit {
    /// Nothing beyond the lead, down to a depth.
    pub(in crate::evaluate) fn nothing(to: Length) -> Self {
        Self { to, remedy: Remedy::NoneNeeded, cost: Beyond::default() }
    }
}

/// A way fitted out for a motor.
pub(in crate::evaluate) struct Fitted {
    /// What it needs, by the length of its lead.
    pub by_lead: Vec<Outfit>,
    /// How it runs through a year.
    pub running: Option<Running>,
}

impl Base<'_> {
    /// A way fitted out for its own motor; nothing where it has no equipment.
    pub(in crate::evaluate) fn fitted(&self, powered: &PoweredWay) -> Option<Fitted> {
        let motor = powered.motor?;
        let by_lead = self.remedies(powered, &motor).into_iter();
        let by_lead = by_lead.map(|(to, remedy)| Some(Outfit { to, remedy, cost: self.beyond(powered, remedy)? }));
        Some(Fitted { by_lead: by_lead.collect::<Option<_>>()?, running: self.running(powered, &motor) })
    }

    /// A family fitted out for another motor than the job's, its lead not yet known.
    pub(in crate::evaluate) fn fitted_for(&self, family: &Family, way: Way, power: Power) -> Option<Fitted> {
        let mut powered = self.empty(family.clone());
        let motor = self.motor_of(family, way, power)?;
        powered.motor = Some(motor);
        powered.frame = self.frame(&powered, &motor);
        let rated = self.rated(&powered, &motor)?;
        let draw = self.draw(&powered, &motor, rated)?;
        powered.supply = self.supply(&powered, &draw);
        self.fitted(&powered)
    }

    /// What a way needs beyond its lead, with something between.
    pub(super) fn beyond(&self, powered: &PoweredWay, remedy: Remedy) -> Option<Beyond> {
        let (family, motor) = (&powered.family, powered.motor?);
        let line = match family.kind {
            Kind::ThreePhaseLine => self.site.tariff?.cost(self.site.line?).ok()?,
            _ => Money(0.0),
        };
        let book = &self.inputs.prices.as_ref().ok()?.book;
        let piece = |piece, size| book.piece_price(piece, size).ok()?;
        Some(Beyond {
            equipment: match family.price {
                Some(price) => equipment_price(price, size(powered, &motor)).ok()?,
                None => piece(priced::equipment(family.kind), size(powered, &motor))?,
            },
            transformer: match self.step_up(powered, &motor) {
                Some(step_up) if family.price.is_none() => piece(Piece::Transformer, step_up.rating?)?,
                _ => Money(0.0),
            },
            remedy: match priced::remedy(remedy) {
                Some(remedy) => piece(remedy, motor.power)?,
                None => Money(0.0),
            },
            supply: match powered.supply {
                Some(supply) => {
                    let kind = (supply.demands.setting.metal, supply.demands.build);
                    self.cable(supply.run.conductor, kind, supply.metal, supply.length)?
                }
                None => Money(0.0),
            },
            line,
            labor: book.labor_price(meters(0.0)).ok()?,
            extra: Money(0.0),
        })
    }

    /// Labor by the length of a lead, beside what it asks whatever that is.
    pub(super) fn labor(&self, length: Length) -> Option<Money> {
        let book = &self.inputs.prices.as_ref().ok()?.book;
        Some(book.labor_price(length).ok()? - book.labor_price(meters(0.0)).ok()?)
    }

    /// Price of a length of cable.
    pub(super) fn cable(
        &self,
        conductor: Conductor,
        kind: (Metal, Build),
        metal: Mass,
        length: Length,
    ) -> Option<Money> {
        if length.value <= 0.0 {
            return Some(Money(0.0));
        }
        let prices = self.inputs.prices.as_ref().ok()?;
        Some(lead_price(priced::cable(prices, conductor, kind, metal / length)?, length, Money(0.0)))
    }

    /// What stands between equipment and lead, and up to which length of lead.
    fn remedies(&self, powered: &PoweredWay, motor: &MotorHere) -> Vec<(Length, Remedy)> {
        let endless = |remedy| vec![(meters(f64::INFINITY), remedy)];
        if !powered.family.pulses_reach_the_motor() {
            return endless(Remedy::NoneNeeded);
        }
        if let Some(chosen) = self.choices.remedy {
            return endless(chosen);
        }
        let known = self.pulses(powered, motor);
        let found = known.and_then(|(bus, wave, limit)| remedies(bus, wave, limit.peak(), &Practice::default()).ok());
        // Beyond the reach of the last remedy none helps; its price stands, and a finding stops.
        found.unwrap_or_else(|| endless(Remedy::NoneNeeded))
    }
}
