//! The frame that serves, the enclosure for the place, the short-circuit rating.

use super::derating::Derated;
use super::family::{Class, Family};
use crate::error::OutsideRange;
use crate::quantity::{ElectricCurrent, Power, amperes, horsepower, in_amperes, in_horsepower};
use crate::standards::enclosure::{Demand, EnclosureType, Row, TABLE};
use crate::standards::motor_current::amperes_at;

/// Output current that equipment must give for good: the service-factor current of a submersible motor, the nameplate's
/// of a surface motor; never less than the nameplate's.
///
/// # Units
/// Currents at the motor's connected voltage; `None` for a surface motor, whose service factor counts as 1 on a drive.
/// # Range
/// Any.
/// # Source
/// Common practice, no single source.
#[must_use]
pub fn required_output(nameplate: ElectricCurrent, service_factor: Option<ElectricCurrent>) -> ElectricCurrent {
    service_factor.map_or(nameplate, |current| current.max(nameplate))
}

/// Service-factor current until the nameplate tells it: nameplate · SF.
///
/// # Units
/// Currents; service factor dimensionless.
/// # Range
/// Nameplate 0 to 10,000 A; service factor 1 to 1.4. The current grows a little less than the load, so it errs high.
/// # Errors
/// [`OutsideRange`] names `nameplate` (A) or `service_factor`.
/// # Source
/// Common practice, no single source.
pub fn assumed_service_factor_current(
    nameplate: ElectricCurrent,
    service_factor: f64,
) -> Result<ElectricCurrent, OutsideRange> {
    let amps = OutsideRange::check("nameplate", in_amperes(nameplate), 0.0, 1e4)?;
    Ok(amperes(amps * OutsideRange::check("service_factor", service_factor, 1.0, 1.4)?))
}

/// A frame with what it gives where it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Frame {
    /// Size that it is sold by.
    pub power: Power,
    /// Motor that it may carry: its size times the family's capacity on this supply.
    pub carries: Power,
    /// Continuous output current on this supply, before heat and altitude.
    pub rated: ElectricCurrent,
    /// The same where it stands.
    pub derated: ElectricCurrent,
}

/// The frames of a family on an output of a class: table or data-sheet amperes, times capacity, times derating.
///
/// # Units
/// `class` of the drive's own output, before any transformer; `factor` of heat and altitude dimensionless.
/// # Range
/// Factor 0 to 1; frames without amperes of their own 0.5 to 200 hp.
/// # Errors
/// [`OutsideRange`] names `factor`, `capacity` or `step_hp` (hp).
/// # Source
/// [nec-2023-430.250] for the amperes of a frame until a data sheet gives them (common practice), interpolated in a
/// straight line between rows.
pub fn frames(family: &Family, class: Class, factor: f64) -> Result<Vec<Frame>, OutsideRange> {
    let factor = OutsideRange::check("factor", factor, 0.0, 1.0)?;
    let capacity = OutsideRange::check("capacity", family.capacity, 0.0, 1.0)?;
    let frame = |step: &super::family::Step| {
        let typed = match class {
            Class::Low => step.low,
            Class::High => step.high,
        };
        let outside = OutsideRange { argument: "step_hp", given: step.hp, min: 0.5, max: 200.0 };
        let amps = typed.or_else(|| amperes_at(step.hp, class.motor_column())).ok_or(outside)?;
        let rated = amperes(amps * capacity);
        let power = horsepower(step.hp);
        Ok(Frame { power, carries: power * capacity, rated, derated: rated * factor })
    };
    family.steps.iter().map(frame).collect()
}

/// What decided on a frame.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Decides {
    /// A smaller frame has the size, but not the current.
    Current,
    /// The current of a smaller frame would do; its size would not.
    Size,
    /// The smallest frame serves.
    Smallest,
    /// Both rule the smaller frame out.
    Both,
}

/// Whether a family has a frame for a motor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum FrameFit {
    /// This frame serves.
    Serves {
        /// The frame.
        frame: Frame,
        /// Required over derated current.
        share: f64,
        /// What ruled the next smaller one out.
        decides: Decides,
    },
    /// No frame gives the current.
    CurrentShort {
        /// Largest derated current of the family.
        most: ElectricCurrent,
        /// What is required.
        required: ElectricCurrent,
    },
    /// No frame that gives the current has the size.
    SizeShort {
        /// Largest motor that a frame may carry.
        most: Power,
        /// The motor.
        motor: Power,
    },
    /// Heat or altitude beyond the family's rule.
    AskMaker(Derated),
}

/// The smallest frame whose derated current is at least the required one, and whose size is at least the motor's.
///
/// # Units
/// `class` of the drive's own output; `required` current of that output; `motor` rated power.
/// # Range
/// Required 0 to 10,000 A; motor above 0 to 250 hp. Equality serves.
/// # Errors
/// [`OutsideRange`] names `required` (A), `motor` (hp), or what [`frames`] names.
/// # Source
/// Common practice, no single source: current first, size after.
pub fn fit_frame(
    family: &Family,
    class: Class,
    required: ElectricCurrent,
    motor: Power,
    derated: Derated,
) -> Result<FrameFit, OutsideRange> {
    let amps = OutsideRange::check("required", in_amperes(required), 0.0, 1e4)?;
    let hp = OutsideRange::check("motor", in_horsepower(motor), 1e-3, 250.0)?;
    let Some(factor) = derated.factor() else { return Ok(FrameFit::AskMaker(derated)) };
    let frames = frames(family, class, factor)?;
    let gives = |frame: &Frame| in_amperes(frame.derated) >= amps;
    // Powers pass through watts; a part in 10⁹ is that rounding and no size.
    let holds = |frame: &Frame| in_horsepower(frame.carries) * (1.0 + 1e-9) >= hp;
    let most = |figure: fn(&Frame) -> f64| frames.iter().map(figure).fold(0.0, f64::max);
    let Some(place) = frames.iter().position(|frame| gives(frame) && holds(frame)) else {
        return Ok(if frames.iter().any(gives) {
            FrameFit::SizeShort { most: horsepower(most(|frame| in_horsepower(frame.carries))), motor }
        } else {
            FrameFit::CurrentShort { most: amperes(most(|frame| in_amperes(frame.derated))), required }
        });
    };
    let decides = match place.checked_sub(1).map(|before| (gives(&frames[before]), holds(&frames[before]))) {
        None => Decides::Smallest,
        Some((false, true)) => Decides::Current,
        Some((true, _)) => Decides::Size,
        Some((false, false)) => Decides::Both,
    };
    let frame = frames[place];
    let share = if amps == 0.0 { 0.0 } else { amps / in_amperes(frame.derated) };
    Ok(FrameFit::Serves { frame, share, decides })
}

/// The smallest size of a family at or above a motor's power, current left aside, as for a single-phase motor, which is
/// itself the equipment; `None` beyond the largest.
///
/// # Units
/// Powers.
/// # Range
/// Motor above 0 to 250 hp.
/// # Errors
/// [`OutsideRange`] names `motor` (hp).
/// # Source
/// Common practice, no single source.
pub fn next_size(family: &Family, motor: Power) -> Result<Option<Power>, OutsideRange> {
    let hp = OutsideRange::check("motor", in_horsepower(motor), 1e-3, 250.0)?;
    let size = family.steps.iter().map(|step| step.hp).find(|size| size * (1.0 + 1e-9) >= hp);
    Ok(size.map(horsepower))
}

/// Whether a type of enclosure suits a place.
#[derive(Debug, Clone, PartialEq)]
pub enum EnclosureFit {
    /// It meets every demand.
    Serves,
    /// It does not meet these.
    Lacks(Vec<Demand>),
}

/// Whether a type of enclosure meets what the place asks.
///
/// # Units
/// None.
/// # Range
/// Nonhazardous places; more may be asked by the maker's manual.
/// # Source
/// [nema-250].
#[must_use]
pub fn enclosure_fit(kind: EnclosureType, place: &[Demand]) -> EnclosureFit {
    let lacks: Vec<Demand> = place.iter().copied().filter(|demand| !kind.row().meets.contains(demand)).collect();
    if lacks.is_empty() { EnclosureFit::Serves } else { EnclosureFit::Lacks(lacks) }
}

/// The plainest type that meets what the place asks: an indoor type where weather is not asked, then the one that meets the
/// fewest other demands; `None` where no type meets all.
///
/// # Units
/// None.
/// # Range
/// Nonhazardous places.
/// # Source
/// [nema-250].
#[must_use]
pub fn plainest_enclosure(place: &[Demand]) -> Option<EnclosureType> {
    let serves = |row: &&Row| enclosure_fit(row.kind, place) == EnclosureFit::Serves;
    let cost = |row: &&Row| (row.meets.contains(&Demand::Weather), row.meets.len());
    TABLE.iter().filter(serves).min_by_key(cost).map(|row| row.kind)
}

/// Short-circuit current rating of equipment that has none marked: 5 kA to 50 hp, 10 kA above.
///
/// # Units
/// `power` the frame's size; the result a current, symmetrical rms.
/// # Range
/// Above 0 to 200 hp.
/// # Errors
/// [`OutsideRange`] names `power` (hp).
/// # Source
/// [ul-508a] table SB4.1.
pub fn unmarked_short_circuit_rating(power: Power) -> Result<ElectricCurrent, OutsideRange> {
    let hp = OutsideRange::check("power", in_horsepower(power), 1e-3, 200.0 * (1.0 + 1e-9))?;
    Ok(amperes(if hp <= 50.0 * (1.0 + 1e-9) { 5000.0 } else { 10_000.0 }))
}

/// Available fault current against a marking; the share is fault over marking.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ShortCircuitFit {
    /// Well within.
    Serves(f64),
    /// Within, by less than a fifth.
    Close(f64),
    /// Above the marking.
    Short(f64),
}

/// Share of the marking above which the fault current is called close.
pub const CLOSE: f64 = 0.80;

/// Whether the marked short-circuit rating covers the fault current that the supply can drive.
///
/// # Units
/// Currents, symmetrical rms.
/// # Range
/// Fault 0 to 1,000,000 A; marking 100 to 1,000,000 A. Equality serves.
/// # Errors
/// [`OutsideRange`] names `fault` or `marking` (A).
/// # Source
/// [nec-2023-110.9-10]; the caution at 80 % is common practice.
pub fn short_circuit_fit(fault: ElectricCurrent, marking: ElectricCurrent) -> Result<ShortCircuitFit, OutsideRange> {
    let fault = OutsideRange::check("fault", in_amperes(fault), 0.0, 1e6)?;
    let share = fault / OutsideRange::check("marking", in_amperes(marking), 100.0, 1e6)?;
    Ok(match share {
        share if share > 1.0 => ShortCircuitFit::Short(share),
        share if share > CLOSE => ShortCircuitFit::Close(share),
        share => ShortCircuitFit::Serves(share),
    })
}
