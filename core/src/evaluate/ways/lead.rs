//! The lead of a way: its conductor, and the pulses along it.

use super::motor::MotorHere;
use super::{Base, PoweredWay};
use crate::cable::ampacity::{Setting, required_ampacity, terminal_rating};
use crate::cable::drop::{Load, Phases};
use crate::cable::filter::{Practice, Remedy, remedy};
use crate::cable::lead::{Demands, Run, drop_over, run_for, runs};
use crate::cable::long_lead::{
    Limit, Wave, critical_length, longest_unfiltered, peak, pulses_can_meet, reflection, usual_motor_impedance,
};
use crate::evaluate::cooler::around;
use crate::evaluate::runs::cable_metal;
use crate::job::{Field, Way};
use crate::quantity::{
    ElectricCurrent, ElectricPotential, Length, Mass, in_horsepower, meters_per_second, ohms, seconds, volts,
};

/// The lead of a way at the job's depth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WayLead {
    /// Its length, one way.
    pub length: Length,
    /// Its conductor, ground and why.
    pub run: Run,
    /// Drop at the current that sizes it.
    pub drop: ElectricPotential,
    /// The drop as a share of the sending voltage.
    pub drop_share: f64,
    /// Metal in it.
    pub metal: Mass,
    /// What its choice depended on.
    pub demands: Demands,
}

/// What the pulses of a drive come to at the motor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stress {
    /// Voltage of the drive's bus.
    pub bus: ElectricPotential,
    /// The lead and the motor to a pulse.
    pub wave: Wave,
    /// Share of a pulse that the motor sends back.
    pub reflection: f64,
    /// Length from which a lead brings the wave to its full height.
    pub critical: Length,
    /// Length of the lead.
    pub length: Length,
    /// Peak at the motor with nothing in between.
    pub peak: ElectricPotential,
    /// What the motor stands.
    pub limit: Limit,
    /// Longest lead without a remedy.
    pub bare: Length,
    /// Whether pulses can meet on a lead without a remedy, and pass twice the bus.
    pub meet: bool,
    /// The least remedy that helps; nothing where no usual one reaches so far.
    pub least: Option<Remedy>,
    /// The remedy that is counted with: the one that was chosen, else the least that helps.
    pub fitted: Remedy,
    /// Whether it keeps the motor within its limit.
    pub cured: bool,
}

/// Conductors that go down to the motor: a single-phase motor beyond 1.5 hp has a start winding with a conductor of its
/// own from the control box above; common practice.
pub(crate) fn wires(motor: &MotorHere) -> Phases {
    let two = motor.phases == Phases::Single && in_horsepower(motor.power) <= TWO_WIRE * (1.0 + 1e-9);
    if two { Phases::Single } else { Phases::Three }
}

/// Largest single-phase motor with two wires, horsepower: common practice.
const TWO_WIRE: f64 = 1.5;

impl Base<'_> {
    pub(super) fn lead(&self, way: Way, motor: &MotorHere, device: ElectricCurrent) -> Option<WayLead> {
        let (laid, length) = (self.laid?, self.lead?);
        let required = required_ampacity(motor.sizing);
        let demands = Demands {
            load: Load {
                sending: way.sending(),
                current: motor.sizing,
                power_factor: motor.power_factor,
                phases: motor.phases,
            },
            required,
            setting: Setting {
                metal: self.choices.metal(),
                insulation: self.choices.insulation(),
                terminals: terminal_rating(required, self.choices.terminals_marked_75()),
                ambient: around(laid.cooler, self.inputs.ambient.as_ref().ok()?.value, laid.depth),
            },
            build: self.choices.build(),
            allowed_drop: self.inputs.allowed_drop.as_ref().ok()?.value,
            most_sets: self.choices.most_sets(),
            device,
        };
        let runs = runs(&demands).ok()?;
        let run = *run_for(&runs, length)?;
        let drop = drop_over(&demands, run.conductor, length).ok()??;
        let metal = cable_metal(demands.setting.metal, &run, wires(motor)) * length;
        Some(WayLead { length, run, drop, drop_share: (drop / way.sending()).value, metal, demands })
    }

    pub(super) fn stress(&self, powered: &PoweredWay, motor: &MotorHere) -> Option<Stress> {
        self.bare(powered, motor).filter(|_| powered.family.pulses_reach_the_motor())
    }

    /// What the pulses would come to without a filter of the equipment's own.
    pub(super) fn bare(&self, powered: &PoweredWay, motor: &MotorHere) -> Option<Stress> {
        if !powered.family.makes_pulses() {
            return None;
        }
        let length = self.lead?;
        let (bus, wave, limit) = self.pulses(powered, motor)?;
        let practice = Practice::default();
        let peak = peak(bus, wave, length).ok()?;
        let least = remedy((peak, bus), limit.peak(), length, &practice).ok()?;
        let fitted = self.choices.remedy.or(least).unwrap_or(Remedy::NoneNeeded);
        let critical = critical_length(wave.speed, wave.rise).ok()?;
        let reaches = length <= practice.of(fitted).longest;
        Some(Stress {
            bus,
            reflection: reflection(wave.motor, wave.cable).ok()?,
            critical,
            length,
            peak,
            limit,
            bare: longest_unfiltered(bus, wave, limit.peak()).ok()?,
            meet: pulses_can_meet(length, critical),
            least,
            fitted,
            // A peak within the limit asks for nothing, whatever is fitted besides.
            cured: least.is_some_and(|least| least == Remedy::NoneNeeded || (reaches && fitted >= least)),
            wave,
        })
    }

    /// The bus of a way whose pulses reach the motor, how they run, and what the motor stands.
    pub(super) fn pulses(&self, powered: &PoweredWay, motor: &MotorHere) -> Option<(ElectricPotential, Wave, Limit)> {
        let (class, supply) = powered.fed;
        let entered = &self.inputs.entered;
        let typed = entered.take(Field::MotorImpedance, ohms).ok()?.map(|known| known.value);
        let wave = Wave {
            speed: meters_per_second(1e6 * entered.get(Field::WaveSpeed, |speed| speed)?),
            rise: seconds(1e-6 * entered.get(Field::RiseTime, |rise| rise)?),
            cable: entered.get(Field::CableImpedance, ohms)?,
            motor: typed.unwrap_or_else(|| usual_motor_impedance(motor.power)),
        };
        let limit = match entered.take(Field::MotorPeakLimit, volts).ok()? {
            Some(typed) => Limit::Typed(typed.value),
            None if self.choices.inverter_duty() => Limit::InverterDuty(motor.rated),
            None => Limit::GeneralPurpose,
        };
        Some((powered.family.bus_volts(class, supply).ok()??, wave, limit))
    }
}
