//! The frame that carries the motor, and what it draws from the supply.

use super::motor::MotorHere;
use super::{Base, PoweredWay};
use crate::cable::drop::Load;
use crate::cable::drop::lead_loss;
use crate::cable::lead::impedance;
use crate::job::{Field, Way};
use crate::power::converter;
use crate::power::family::{Change, Class, Family, Feed, Kind, Start, Step};
use crate::power::fit::{FrameFit, fit_frame};
use crate::power::rotary::{IDLER_RATIO, idler_power};
use crate::power::step_up::drive_current;
use crate::power::supply::{
    drive_input_current, input_current, input_power, provisional_device, supply_ampacity, true_power_factor,
};
use crate::power::transformer::apparent_power;
use crate::quantity::{ElectricCurrent, Power, amperes, in_amperes, in_horsepower, watts};
use crate::standards::overcurrent::next_standard_rating;

/// What the overcurrent device goes by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "snake_case")]
pub enum DeviceBy {
    /// It was entered.
    Entered,
    /// The maximum that is marked on the equipment.
    Marked,
    /// The next standard rating for the input, until the marking is known.
    Provisional,
    /// The article on phase converters.
    Converters,
    /// The largest that a motor's branch circuit may have.
    MotorBranch,
}

/// What a way draws from its supply.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Draw {
    /// Displacement over √(1 + THD²).
    pub power_factor: f64,
    /// Rated input current of the equipment: its conductors and its device go by it.
    pub rated: ElectricCurrent,
    /// Whether that stands in a data sheet; else it is worked out from the frame.
    pub rated_typed: bool,
    /// Ampacity that the supply conductors need.
    pub ampacity: ElectricCurrent,
    /// The overcurrent device.
    pub device: ElectricCurrent,
    /// What it goes by.
    pub device_by: DeviceBy,
    /// The largest that a data sheet allows.
    pub marked: Option<ElectricCurrent>,
    /// The largest that a rule lets any device be, whatever was entered.
    pub most: ElectricCurrent,
    /// Heat of the lead at the nameplate's current.
    pub lead_loss: Power,
    /// Input power with the motor at its rating.
    pub input: Power,
    /// Input current with the motor at its rating, harmonics in.
    pub current: ElectricCurrent,
    /// Apparent power of that.
    pub apparent: Power,
}

/// The rated input, and what follows from it alone.
pub(super) struct Rated {
    current: ElectricCurrent,
    typed: bool,
    ampacity: ElectricCurrent,
    pub device: (ElectricCurrent, DeviceBy),
    marked: Option<ElectricCurrent>,
    most: ElectricCurrent,
}

/// Largest inverse-time breaker ahead of a motor, over its full-load current.
const BRANCH_BREAKER: f64 = 2.5;

impl Base<'_> {
    pub(super) fn frame(&self, powered: &PoweredWay, motor: &MotorHere) -> Option<FrameFit> {
        let family = &powered.family;
        // A single-phase motor is itself the equipment.
        if family.motor == Feed::SinglePhase {
            return None;
        }
        let (class, required) = drive_side(family, powered.way?, motor.required)?;
        let rotary = family.kind == Kind::RotaryConverter;
        let power = if rotary { idler_power(motor.power, IDLER_RATIO).ok()? } else { motor.power };
        match fit_frame(family, class, required, power, powered.derated?).ok()? {
            // What it is short of is told by the motor that it may carry, not by its idler.
            FrameFit::SizeShort { most, .. } if rotary => {
                Some(FrameFit::SizeShort { most: most / IDLER_RATIO, motor: motor.power })
            }
            fit => Some(fit),
        }
    }

    /// The rated input of the frame that serves; where none does, of the motor itself, so that the rest can be told.
    pub(super) fn rated(&self, powered: &PoweredWay, motor: &MotorHere) -> Option<Rated> {
        let family = &powered.family;
        let (carries, step) = match powered.frame {
            // A rotary converter is sized by its idler, and carries a motor that is smaller by so much.
            Some(FrameFit::Serves { frame, .. }) if family.kind == Kind::RotaryConverter => {
                (frame.carries / IDLER_RATIO, step_of(family, frame.power))
            }
            Some(FrameFit::Serves { frame, .. }) => (frame.carries, step_of(family, frame.power)),
            _ => (motor.power, None),
        };
        let typed = step.and_then(|step| step.input).map(amperes);
        let current = match typed {
            Some(typed) => typed,
            None if family.motor == Feed::SinglePhase => motor.nameplate,
            None => self.frame_input(powered, motor, carries)?,
        };
        // Two lines pass straight through a converter: its output volts are its input's.
        let ampacity = match family.kind {
            Kind::SolidStateConverter | Kind::RotaryConverter => {
                converter::supply_ampacity(current, Some(motor.sizing), powered.fed.1, powered.fed.1).ok()?
            }
            _ => supply_ampacity(current).ok()?,
        };
        let marked = step.and_then(|step| step.device).map(amperes);
        let most = largest_device(family, motor, (current, ampacity), marked)?;
        let device = self.device(family, motor, (current, ampacity), marked)?;
        Some(Rated { current, typed: typed.is_some(), ampacity, device, marked, most })
    }

    fn frame_input(&self, powered: &PoweredWay, motor: &MotorHere, carries: Power) -> Option<ElectricCurrent> {
        let input = powered.family.input;
        let power_factor = true_power_factor(input.displacement, input.distortion).ok()?;
        let current =
            drive_input_current(carries, motor.efficiency, input.efficiency, powered.fed.1, power_factor).ok()?;
        Some(current / powered.family.supply.feed.factor())
    }

    fn device(
        &self,
        family: &Family,
        motor: &MotorHere,
        (input, ampacity): (ElectricCurrent, ElectricCurrent),
        marked: Option<ElectricCurrent>,
    ) -> Option<(ElectricCurrent, DeviceBy)> {
        // Nothing stands in for an entry that can't be used.
        if let Some(entered) = self.inputs.entered.take(Field::DeviceAmps, amperes).ok()? {
            return Some((entered.value, DeviceBy::Entered));
        }
        if let Some(marked) = marked {
            return Some((marked, DeviceBy::Marked));
        }
        match family.kind {
            Kind::SolidStateConverter | Kind::RotaryConverter => {
                Some((converter::device(input, ampacity).ok()?, DeviceBy::Converters))
            }
            Kind::SinglePhaseMotor => Some((branch_breaker(motor.nameplate)?, DeviceBy::MotorBranch)),
            _ => Some((provisional_device(input).ok()?, DeviceBy::Provisional)),
        }
    }

    pub(super) fn draw(&self, powered: &PoweredWay, motor: &MotorHere, rated: Rated) -> Option<Draw> {
        let (family, (_, volts)) = (&powered.family, powered.fed);
        let power_factor = true_power_factor(family.input.displacement, family.input.distortion).ok()?;
        let lead_loss = powered.lead.map_or(watts(0.0), |lead| {
            let load = Load {
                sending: volts,
                current: motor.nameplate,
                power_factor: motor.power_factor,
                phases: motor.phases,
            };
            let (resistance, _) = impedance(lead.run.conductor, self.choices.metal(), self.choices.build());
            lead_loss(load, resistance, lead.length)
        });
        let input = input_power(motor.power, motor.efficiency, lead_loss, family.input.efficiency).ok()?;
        let current = input_current(input, volts, power_factor, family.supply.feed).ok()?;
        Some(Draw {
            power_factor,
            rated: rated.current,
            rated_typed: rated.typed,
            ampacity: rated.ampacity,
            device: rated.device.0,
            device_by: rated.device.1,
            marked: rated.marked,
            most: rated.most,
            lead_loss,
            input,
            current,
            apparent: apparent_power(volts, current, family.supply.feed).ok()?,
        })
    }
}

/// The largest inverse-time breaker of a motor's branch circuit: the next standard rating at 250 % of its current.
fn branch_breaker(current: ElectricCurrent) -> Option<ElectricCurrent> {
    next_standard_rating(BRANCH_BREAKER * in_amperes(current)).map(amperes)
}

/// The largest device ahead of equipment: its marking; a converter's article; else the breaker that its input would have
/// were it a motor, which is no leave to take it, as the marking is still to be read.
fn largest_device(
    family: &Family,
    motor: &MotorHere,
    (input, ampacity): (ElectricCurrent, ElectricCurrent),
    marked: Option<ElectricCurrent>,
) -> Option<ElectricCurrent> {
    match (marked, family.kind) {
        (Some(marked), _) => Some(marked),
        (None, Kind::SolidStateConverter | Kind::RotaryConverter) => converter::device(input, ampacity).ok(),
        (None, Kind::SinglePhaseMotor) => branch_breaker(motor.nameplate),
        (None, _) => branch_breaker(input),
    }
}

/// Class and current of the drive's own output: ahead of a transformer twice the motor's current at half its voltage.
fn drive_side(family: &Family, way: Way, required: ElectricCurrent) -> Option<(Class, ElectricCurrent)> {
    match (family.change, way) {
        (Change::SteppedUp { .. }, _) => Some((Class::Low, drive_current(required, 2.0).ok()?)),
        (_, Way::V240) => Some((Class::Low, required)),
        (_, Way::V480) => Some((Class::High, required)),
    }
}

/// A frame's line of the data sheet.
fn step_of(family: &Family, power: Power) -> Option<&Step> {
    let hp = in_horsepower(power);
    family.steps.iter().find(|step| (step.hp / hp - 1.0).abs() < 1e-9)
}

/// Size that the price goes by: of the frame, or of the motor itself.
pub(super) fn size(powered: &PoweredWay, motor: &MotorHere) -> Power {
    match powered.frame {
        Some(FrameFit::Serves { frame, .. }) => frame.power,
        _ => motor.power,
    }
}

/// Whether the motor is put on full volts at once.
pub(super) fn locked_rotor(family: &Family) -> Option<f64> {
    match family.start {
        Start::AcrossTheLine { multiple } => Some(multiple),
        Start::Ramp => None,
    }
}
