//! The motor as a way runs it: its amperes at that voltage, and what its equipment must give.

use super::Base;
use crate::cable::drop::Phases;
use crate::job::{MotorCurrent, Way};
use crate::power::family::{Family, Feed};
use crate::power::fit::{assumed_service_factor_current, next_size, required_output};
use crate::pump::motor::{MotorKind, assumed_efficiency_and_power_factor, reconnected_current, table_current};
use crate::quantity::{ElectricCurrent, ElectricPotential, Power, amperes, in_horsepower, in_volts, in_watts, volts};
use crate::standards::single_phase_motor::amperes_at_230;

/// Whether two motors are of one size.
pub(in crate::evaluate) fn is_same(one: Power, other: Power) -> bool {
    ((one / other).value - 1.0).abs() < 1e-9
}

/// The motor as a way runs it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MotorHere {
    /// Rated power.
    pub power: Power,
    /// Rated voltage.
    pub rated: ElectricPotential,
    /// Lines.
    pub phases: Phases,
    /// Current of the nameplate, or of the table until it is known.
    pub nameplate: ElectricCurrent,
    /// Current that sizes the lead.
    pub sizing: ElectricCurrent,
    /// Current that the equipment must give for good.
    pub required: ElectricCurrent,
    /// Efficiency.
    pub efficiency: f64,
    /// Power factor.
    pub power_factor: f64,
}

impl Base<'_> {
    pub(super) fn motor(&self, family: &Family, way: Way) -> Option<MotorHere> {
        let power = self.inputs.motor_power.as_ref().ok()?.value;
        let efficiency = self.inputs.efficiency.as_ref().ok()?.value;
        if family.motor == Feed::SinglePhase {
            return self.single_phase(family, power, efficiency);
        }
        let current = *self.inputs.motor_current[way as usize].as_ref().ok()?;
        let nameplate = current.nameplate.map_or(current.table, |known| known.value);
        Some(MotorHere {
            power,
            rated: volts(way.rated_volts()),
            phases: Phases::Three,
            nameplate,
            sizing: current.sizing,
            required: required_output(nameplate, self.service_current(way, &current, nameplate)),
            efficiency,
            power_factor: self.inputs.power_factor.as_ref().ok()?.value,
        })
    }

    /// Another motor than the job's, by the tables and what is assumed.
    pub(super) fn motor_of(&self, family: &Family, way: Way, power: Power) -> Option<MotorHere> {
        let own = self.inputs.motor_power.as_ref().ok()?.value;
        if is_same(own, power) {
            return self.motor(family, way);
        }
        let kind = self.choices.motor_kind();
        let (efficiency, power_factor) = assumed_efficiency_and_power_factor(kind, power);
        if family.motor == Feed::SinglePhase {
            return self.single_phase(family, power, efficiency);
        }
        let table = table_current(power, way.rated()).ok()?;
        let factor = crate::evaluate::water::counted_service_factor(&self.inputs.entered, kind)?;
        let service = assumed_service_factor_current(table, factor).ok().filter(|_| kind == MotorKind::Submersible);
        Some(MotorHere {
            power,
            rated: volts(way.rated_volts()),
            phases: Phases::Three,
            nameplate: table,
            sizing: table,
            required: required_output(table, service),
            efficiency,
            power_factor,
        })
    }

    /// Service-factor current of a submersible motor: by the nameplate at this voltage or the other, else nameplate times
    /// service factor. A motor on the surface has none to spare on a drive.
    fn service_current(&self, way: Way, current: &MotorCurrent, nameplate: ElectricCurrent) -> Option<ElectricCurrent> {
        if self.choices.motor_kind() != MotorKind::Submersible {
            return None;
        }
        let entered = &self.inputs.entered;
        let typed = |way: Way| entered.get(way.service_amps_field(), amperes);
        let other =
            || typed(way.other()).map(|amps| reconnected_current(amps, way.other().rated_volts(), way.rated_volts()));
        let factor = crate::evaluate::water::counted_service_factor(entered, self.choices.motor_kind());
        let assumed = || assumed_service_factor_current(nameplate, factor?).ok();
        typed(way)
            .or_else(other)
            .or_else(assumed)
            .map(|amps| amps.max(current.nameplate.map_or(nameplate, |known| known.value)))
    }

    /// A single-phase motor of the same power: amperes by its table, beyond the table by power, efficiency and power factor.
    fn single_phase(&self, family: &Family, power: Power, efficiency: f64) -> Option<MotorHere> {
        let rated = volts(230.0);
        let power_factor = family.input.displacement;
        let size = next_size(family, power).ok()?.unwrap_or(power);
        let worked_out = in_watts(size) / (in_volts(rated) * efficiency * power_factor);
        let current = amperes(amperes_at_230(in_horsepower(size)).unwrap_or(worked_out));
        Some(MotorHere {
            power: size,
            rated,
            phases: Phases::Single,
            nameplate: current,
            sizing: current,
            required: current,
            efficiency,
            power_factor,
        })
    }
}
