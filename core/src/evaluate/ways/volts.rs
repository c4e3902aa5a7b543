//! The volts of a way, from the supply to the motor.

use super::motor::MotorHere;
use super::{Base, PoweredWay, RATED_HERTZ};
use crate::cable::filter::{Practice, Remedy};
use crate::job::Field;
use crate::power::family::{Filter, Start};
use crate::power::volts::{Budget, VoltsVerdict, budget, judge_volts, runs_out_at};
use crate::quantity::{Frequency, hertz};

/// The volts of a way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WayVolts {
    /// Station by station.
    pub budget: Budget,
    /// Frequency at which the volts run out.
    pub runs_out: Frequency,
    /// The highest frequency that is needed.
    pub needed: Frequency,
    /// Whether they suffice there.
    pub verdict: VoltsVerdict,
}

impl Base<'_> {
    pub(super) fn volts(&self, powered: &PoweredWay, motor: &MotorHere) -> Option<WayVolts> {
        let (class, supply) = powered.fed;
        let lead = powered.lead?;
        let left = match powered.pole {
            Some(pole) => pole.sag?.left,
            None => supply - powered.supply?.drop,
        };
        let mut family = powered.family.clone();
        // A remedy of its own takes its volts as a filter does.
        if let Some(stress) = powered.stress.filter(|stress| stress.fitted != Remedy::NoneNeeded) {
            family.filter = Filter::Sine { share: Practice::default().of(stress.fitted).cost, built_in: false };
        }
        let budget = budget(&family, class, left, lead.drop).ok()??;
        let rated = hertz(RATED_HERTZ);
        let needed = self.needed(powered)?;
        Some(WayVolts {
            budget,
            runs_out: runs_out_at(budget.at_motor, motor.rated, rated).ok()?,
            needed,
            verdict: judge_volts(budget.at_motor, motor.rated, rated, needed).ok()?,
        })
    }

    /// The highest frequency that a way needs: the one that the duty takes, and until a curve tells it the highest that
    /// the motor may run at; a motor put on full volts runs at its rating. Nothing where a figure can't be used.
    pub(super) fn needed(&self, powered: &PoweredWay) -> Option<Frequency> {
        if powered.family.start != Start::Ramp {
            return Some(hertz(RATED_HERTZ));
        }
        let duty = self.water.pump.as_ref().and_then(|pump| pump.frequency());
        duty.or_else(|| self.inputs.entered.get(Field::MostFrequency, hertz))
    }
}
