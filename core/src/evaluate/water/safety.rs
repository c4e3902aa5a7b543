//! What the water does to pump, motor, pipe and tank: a shut valve, a hot motor, a sudden stop, a heavy string.

use super::line::{Lift, System};
use super::pump::Pumping;
use crate::job::{Control, Entered, Field, Known, Part};
use crate::pump::affinity::speed_ratio;
use crate::pump::operating_point::operating_point;
use crate::quantity::{
    Frequency, Length, Mass, MassPerLength, Pressure, Time, Velocity, Volume, VolumeRate, feet, gallons, gpm, inches,
    meters, pounds, psi,
};
use crate::water::cooling::{advised_speed, cooling_speed, least_flow, widest_sleeve};
use crate::water::dead_head::{dead_head_at_gauge, dead_head_at_pump, dead_head_on_pipe, needs_relief, relief_head};
use crate::water::friction::mean_velocity;
use crate::water::head::{SuctionHead, suction_head};
use crate::water::properties::barometric_pressure;
use crate::water::string::{HangingLoad, Hung, hanging_load};
use crate::water::surge::{Shell, bulk_modulus, joukowsky, reflection_time, wave_speed};
use crate::water::tank::{Band, constant_pressure_precharge, most_starts, on_off_precharge, run_time, tank_drawdown};

/// The pump against a shut valve at its highest speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DeadHead {
    /// Its head.
    pub shut_off: Known<Length>,
    /// Pressure at the gauge.
    pub gauge: Pressure,
    /// Pressure in the pipe just above a pump in a well.
    pub pump: Option<Pressure>,
    /// Most that the drop pipe holds back.
    pub on_pipe: Option<Pressure>,
    /// The least rating at the gauge.
    pub rating: Known<Pressure>,
    /// Whether the pump alone can burst what is rated so.
    pub over: bool,
    /// What a relief valve set to the rating has to pass; nothing without a curve.
    pub relief: Option<VolumeRate>,
}

/// Water past a submersible motor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cooling {
    /// Inside diameter of the casing, or of the sleeve where there is one.
    pub outer: Length,
    /// Outside diameter of the motor.
    pub motor: Length,
    /// The flow that is judged: the least that is drawn for long, or what is asked for.
    pub flow: VolumeRate,
    /// Speed of the water at that flow.
    pub speed: Velocity,
    /// The speed that is advised.
    pub advised: Velocity,
    /// The flow that moves the water at that speed.
    pub least_flow: VolumeRate,
    /// The widest sleeve in which the judged flow does.
    pub widest_sleeve: Length,
}

/// The pressure tank.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tank {
    /// Its volume.
    pub volume: Volume,
    /// Its air, by gauge, and its band.
    pub band: Band,
    /// Water between cut-out and cut-in.
    pub drawdown: Volume,
    /// How long the pump runs to fill it with nothing drawn.
    pub run_time: Option<Time>,
    /// Most starts in an hour of a pump that is switched on and off.
    pub starts: Option<Frequency>,
}

/// The flow stops at once.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Surge {
    /// The part of the line.
    pub part: Part,
    /// Speed of the water before.
    pub velocity: Velocity,
    /// Speed of the wave.
    pub wave: Velocity,
    /// Rise of the pressure.
    pub rise: Pressure,
    /// Time in which the wave runs up and back.
    pub reflection: Time,
}

pub(super) fn dead_head(entered: &Entered, system: &System, pumping: &Pumping) -> Option<DeadHead> {
    let shut_off = pumping.shut_off?;
    let density = system.liquid.density;
    let level = system.lift.at_rest();
    let gauge = dead_head_at_gauge(shut_off.value, level, system.rise, density).ok()?;
    let pump = match system.lift {
        Lift::Well(..) => {
            let setting = entered.get(Field::PumpSetting, feet)?;
            Some(dead_head_at_pump(shut_off.value, setting, level, density).ok()?)
        }
        Lift::Open(_) => None,
    };
    let on_pipe = pump.and_then(|_| dead_head_on_pipe(shut_off.value, density).ok());
    let rating = entered.take(Field::PressureRating, psi).ok()??;
    let relief = pumping.curve.as_ref().and_then(|curve| {
        let head = relief_head(level, system.rise, rating.value, density).ok()?;
        let ratio = speed_ratio(pumping.band.1, pumping.curve_frequency).ok()?;
        operating_point(curve, ratio, |_| Ok(head)).ok().map(|point| point.flow)
    });
    Some(DeadHead { shut_off, gauge, pump, on_pipe, rating, over: needs_relief(gauge, rating.value), relief })
}

pub(super) fn cooling(entered: &Entered, flow: VolumeRate) -> Option<Cooling> {
    let motor = entered.get(Field::MotorDiameter, inches)?;
    let sleeve = entered.take(Field::SleeveInside, inches).ok()?;
    let outer = match sleeve {
        Some(sleeve) => sleeve.value,
        None => entered.get(Field::CasingInside, inches)?,
    };
    let flow = entered.take(Field::LeastFlow, gpm).ok()?.map_or(flow, |least| least.value);
    let advised = advised_speed(motor);
    Some(Cooling {
        outer,
        motor,
        flow,
        speed: cooling_speed(flow, outer, motor).ok()?,
        advised,
        least_flow: least_flow(advised, outer, motor).ok()?,
        widest_sleeve: widest_sleeve(flow, advised, motor).ok()?,
    })
}

/// Precharge and cut-in that stand in until they are entered. A pump that is switched keeps 20 psi between cut-in and
/// cut-out, one on a drive starts again 5 psi below its setpoint: common practice, no single source.
pub(super) fn band(entered: &Entered, control: Control) -> Option<(Known<Pressure>, Known<Pressure>)> {
    let setpoint = entered.get(Field::Pressure, psi)?;
    let below = psi(match control {
        Control::ConstantPressure => 5.0,
        Control::OnOff => 20.0,
    });
    let cut_in = entered.or_else(Field::CutIn, psi, || Some((setpoint - below).max(psi(0.0))))?;
    let precharge = entered.or_else(Field::TankPrecharge, psi, || match control {
        // With more air than at cut-in the tank would be empty before the pump starts.
        Control::ConstantPressure => {
            constant_pressure_precharge(setpoint, PRECHARGE_SHARE).ok().map(|charge| charge.min(cut_in.value))
        }
        // Below that cut-in the tank is filled with the air of the place.
        Control::OnOff => Some(on_off_precharge(cut_in.value).unwrap_or(psi(0.0))),
    })?;
    Some((precharge, cut_in))
}

/// Precharge of a constant-pressure system as a share of its setpoint: common practice.
pub const PRECHARGE_SHARE: f64 = 0.70;

pub(super) fn tank(entered: &Entered, control: Control, flow: Option<VolumeRate>) -> Option<Tank> {
    let volume = entered.get(Field::TankVolume, gallons)?;
    let (precharge, cut_in) = band(entered, control)?;
    let cut_out = entered.get(Field::Pressure, psi)?;
    let cut_in = to_the_last_digits(cut_in.value, cut_out);
    let band = Band {
        precharge: to_the_last_digits(precharge.value, cut_in),
        cut_in,
        cut_out,
        barometric: barometric_pressure(entered.get(Field::Altitude, meters)?).ok()?,
    };
    let drawdown = tank_drawdown(volume, band).ok()?;
    let starts = flow.filter(|_| control == Control::OnOff).and_then(|flow| most_starts(drawdown, flow).ok());
    let run_time = flow.and_then(|flow| run_time(drawdown, flow, gpm(0.0)).ok());
    Some(Tank { volume, band, drawdown, run_time, starts })
}

/// A pressure that rounding moved past its limit is the limit.
fn to_the_last_digits(pressure: Pressure, limit: Pressure) -> Pressure {
    if pressure > limit && pressure <= limit * (1.0 + 1e-9) { limit } else { pressure }
}

pub(super) fn surge(system: &System, flow: VolumeRate) -> Option<Surge> {
    let longest = |a: &&super::line::Pipework, b: &&super::line::Pipework| {
        a.section.pipe.length.value.total_cmp(&b.section.pipe.length.value)
    };
    let pipe = system.pipes.iter().filter(|pipe| pipe.size.is_some()).max_by(longest)?;
    let size = pipe.size?;
    let inside_diameter = pipe.inside.value;
    let shell = Shell { inside_diameter, wall: size.wall(), modulus: size.series.material().modulus(), restraint: 1.0 };
    let density = system.liquid.density;
    let wave = wave_speed(bulk_modulus(), density, shell).ok()?;
    let velocity = mean_velocity(flow, inside_diameter).ok()?;
    Some(Surge {
        part: pipe.part,
        velocity,
        wave,
        rise: joukowsky(density, wave, velocity).ok()?,
        reflection: reflection_time(pipe.section.pipe.length, wave).ok()?,
    })
}

/// Drop pipe full of water, and pump and motor where their mass was entered. The cable comes on top.
pub(super) fn hanging(entered: &Entered, system: &System) -> Option<HangingLoad> {
    let drop = system.pipes.iter().find(|pipe| pipe.part == Part::Drop)?;
    let pump: Option<Known<Mass>> = entered.take(Field::PumpMass, pounds).ok()?;
    let hung = Hung {
        length: drop.section.pipe.length,
        pipe: drop.size?.mass_per_length(),
        inside_diameter: drop.inside.value,
        cable: MassPerLength::default(),
        pump: pump.map_or(pounds(0.0), |known| known.value),
    };
    hanging_load(hung, system.liquid.density).ok()
}

pub(super) fn suction(entered: &Entered, system: &System, flow: VolumeRate) -> Option<SuctionHead> {
    let Lift::Open(lift) = system.lift else { return None };
    let barometric = barometric_pressure(entered.get(Field::Altitude, meters)?).ok()?;
    suction_head(flow, barometric, lift, &system.sections_of(Part::Suction), system.method, system.liquid).ok()
}
