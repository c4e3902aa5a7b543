//! What helps a motor behind a long lead, what that costs in volts, and how far the lead may reach with it.

use super::drop::{Load, longest_lead};
use super::long_lead::{Wave, longest_unfiltered};
use crate::error::OutsideRange;
use crate::quantity::{ElectricPotential, Length, OhmsPerLength, feet, in_meters, in_volts, meters, volts};
use serde::{Deserialize, Serialize};

/// Share of its volts that a sine filter costs where it is built into the drive: practice.
pub const SINE_BUILT_IN: f64 = 0.03;
/// Share of its volts that a sine filter of its own costs: practice.
pub const SINE_SEPARATE: f64 = 0.05;

/// What stands between the drive and the lead.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Remedy {
    /// Nothing.
    NoneNeeded,
    /// A coil in each line.
    OutputReactor,
    /// Coils with a network that holds the pulse's steepness down.
    DvDtFilter,
    /// A filter that leaves little but the sine.
    SineFilter,
}

/// A remedy's figures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reach {
    /// Usual longest lead behind it.
    pub longest: Length,
    /// Share of the volts that it costs at full load.
    pub cost: f64,
}

/// Figures of the remedies, all practice, all to be set otherwise by a data sheet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Practice {
    /// The reactor.
    pub reactor: Reach,
    /// Share of the peak that is left behind a reactor.
    pub reactor_leaves: f64,
    /// The dV/dt filter.
    pub dv_dt: Reach,
    /// Peak that is left behind it, over the bus.
    pub dv_dt_leaves: f64,
    /// The sine filter.
    pub sine: Reach,
    /// Peak that is left behind it, over the bus.
    pub sine_leaves: f64,
}

impl Default for Practice {
    /// Common practice, no single source, on the safe side: makers print 100 to 300 ft for a reactor, 300 to 1,000 ft
    /// for a dV/dt filter, 5,000 ft and more for a sine filter; a reactor is said to take off 20 to 30 % of the peak; a
    /// reactor of 3 % and a dV/dt filter of 1.5 % impedance cost no more than that. Behind a dV/dt filter makers print peaks
    /// of 1,000 V on lines of 480 V, whose bus is 747 V at high line: 1.33 times that; behind a sine filter the crest of a
    /// full sine, which is the bus, and a tenth of ripple. Both from memory.
    fn default() -> Self {
        Self {
            reactor: Reach { longest: feet(150.0), cost: 0.03 },
            reactor_leaves: 0.80,
            dv_dt: Reach { longest: feet(500.0), cost: 0.015 },
            dv_dt_leaves: 1.33,
            sine: Reach { longest: feet(5000.0), cost: SINE_SEPARATE },
            sine_leaves: 1.10,
        }
    }
}

impl Practice {
    /// The usual longest lead and the cost of a remedy. Nothing costs nothing, and the peak alone ends its reach.
    ///
    /// # Units
    /// A length, one way, and a share.
    /// # Range
    /// As they were set.
    /// # Source
    /// [practice].
    #[must_use]
    pub fn of(&self, remedy: Remedy) -> Reach {
        match remedy {
            Remedy::NoneNeeded => Reach { longest: meters(f64::INFINITY), cost: 0.0 },
            Remedy::OutputReactor => self.reactor,
            Remedy::DvDtFilter => self.dv_dt,
            Remedy::SineFilter => self.sine,
        }
    }
}

/// The least remedy that a lead needs; `None` where no usual one reaches as far.
///
/// Nothing where the peak keeps within the limit; a reactor where what it leaves does and the lead is not too long for
/// it; else a dV/dt filter, else a sine filter, each as far as it usually serves and where what it leaves of the bus keeps
/// within the limit. Equality passes.
///
/// # Units
/// `peak` at the motor without a remedy, `bus` of the drive, `limit` of the motor: voltages; `length` one way.
/// # Range
/// Peak, bus and limit 1 to 100,000 V; length 0 to 10⁶ m.
/// # Errors
/// [`OutsideRange`] names `peak`, `bus` or `limit` (V) or `length` (m).
/// # Source
/// [practice].
pub fn remedy(
    (peak, bus): (ElectricPotential, ElectricPotential),
    limit: ElectricPotential,
    length: Length,
    practice: &Practice,
) -> Result<Option<Remedy>, OutsideRange> {
    let peak = OutsideRange::check("peak", in_volts(peak), 1.0, 1e5)?;
    let bus = OutsideRange::check("bus", in_volts(bus), 1.0, 1e5)?;
    let limit = OutsideRange::check("limit", in_volts(limit), 1.0, 1e5)?;
    OutsideRange::check("length", in_meters(length), 0.0, 1e6)?;
    let helps = |remedy: &Remedy| match remedy {
        Remedy::NoneNeeded => peak <= limit,
        Remedy::OutputReactor => peak * practice.reactor_leaves <= limit,
        Remedy::DvDtFilter => peak.min(bus * practice.dv_dt_leaves) <= limit,
        Remedy::SineFilter => peak.min(bus * practice.sine_leaves) <= limit,
    };
    let all = [Remedy::NoneNeeded, Remedy::OutputReactor, Remedy::DvDtFilter, Remedy::SineFilter];
    Ok(all.into_iter().find(|one| helps(one) && length <= practice.of(*one).longest))
}

/// The least remedy over the length of the lead: each with the longest lead that it serves, shortest first. The last one
/// is told without end: beyond its usual reach, and where it leaves more than the limit, none helps.
///
/// # Units
/// `bus` and `limit` voltages; lengths one way.
/// # Range
/// As [`longest_unfiltered`]; the figures of `practice` not below zero.
/// # Errors
/// As [`longest_unfiltered`].
/// # Source
/// [practice]; the rule of [`remedy`], solved for the length.
pub fn remedies(
    bus: ElectricPotential,
    wave: Wave,
    limit: ElectricPotential,
    practice: &Practice,
) -> Result<Vec<(Length, Remedy)>, OutsideRange> {
    let reactor = longest_unfiltered(bus * practice.reactor_leaves, wave, limit)?;
    let dv_dt = if bus * practice.dv_dt_leaves <= limit { practice.dv_dt.longest } else { meters(0.0) };
    let reaches = [
        (longest_unfiltered(bus, wave, limit)?, Remedy::NoneNeeded),
        (reactor.min(practice.reactor.longest), Remedy::OutputReactor),
        (dv_dt, Remedy::DvDtFilter),
        (meters(f64::INFINITY), Remedy::SineFilter),
    ];
    let mut found: Vec<(Length, Remedy)> = Vec::new();
    for (to, remedy) in reaches {
        if found.last().map_or(to > meters(0.0), |(last, _)| to > *last) {
            found.push((to, remedy));
        }
    }
    Ok(found)
}

/// The voltage that is left behind a filter: V (1 − c).
///
/// # Units
/// `drive` the drive's output voltage; `cost` a share; the result a voltage.
/// # Range
/// Drive 1 to 100,000 V; cost 0 to 0.5.
/// # Errors
/// [`OutsideRange`] names `drive` (V) or `cost`.
/// # Source
/// Definition; the costs [practice].
pub fn behind_filter(drive: ElectricPotential, cost: f64) -> Result<ElectricPotential, OutsideRange> {
    let drive = OutsideRange::check("drive", in_volts(drive), 1.0, 1e5)?;
    Ok(volts(drive * (1.0 - OutsideRange::check("cost", cost, 0.0, 0.5)?)))
}

/// The longest lead by volts: what the filter leaves, less the lead's drop, is still what the motor needs.
///
/// With V′ = V (1 − c) the lead may drop 1 − needed/V′ of V′. Zero where nothing is left to drop.
///
/// # Units
/// `load.sending` the drive's output; `needed` at the motor; `cost` a share; the result a length, one way.
/// # Range
/// Needed 1 to 100,000 V; the rest as [`behind_filter`] and [`longest_lead`].
/// # Errors
/// [`OutsideRange`] names `needed` (V), or as those.
/// # Source
/// Algebra on [`super::drop::voltage_drop`].
pub fn longest_by_volts(
    load: Load,
    resistance: OhmsPerLength,
    reactance: OhmsPerLength,
    needed: ElectricPotential,
    cost: f64,
) -> Result<Length, OutsideRange> {
    let needed = OutsideRange::check("needed", in_volts(needed), 1.0, 1e5)?;
    let sending = behind_filter(load.sending, cost)?;
    let allowed = 1.0 - needed / in_volts(sending);
    if allowed < 1e-9 {
        return Ok(meters(0.0));
    }
    longest_lead(Load { sending, ..load }, resistance, reactance, allowed)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cable::drop::{Phases, voltage_drop};
    use crate::quantity::{amperes, ohms_per_kilofoot};

    fn verdict(peak: f64, limit: f64, length_ft: f64) -> Option<Remedy> {
        remedy((volts(peak), volts(720.0)), volts(limit), feet(length_ft), &Practice::default()).unwrap()
    }

    /// A dV/dt filter leaves 1.33 of the bus: 1,000 V of 752 V.
    #[test]
    fn a_filter_that_leaves_too_much_is_none_of_them() {
        let wave = Wave {
            speed: crate::quantity::meters_per_second(150e6),
            rise: crate::quantity::seconds(0.1e-6),
            cable: crate::quantity::ohms(80.0),
            motor: crate::quantity::ohms(3000.0),
        };
        let helps = |bus: f64| {
            let all = remedies(volts(bus), wave, volts(1000.0), &Practice::default()).unwrap();
            all.iter().any(|(_, remedy)| *remedy == Remedy::DvDtFilter)
        };
        assert!(helps(751.0) && !helps(753.0));
    }

    #[test]
    fn the_remedy_grows_with_the_length_and_equality_passes() {
        assert_eq!(verdict(1000.0, 1000.0, 3000.0), Some(Remedy::NoneNeeded));
        assert_eq!(verdict(1250.0, 1000.0, 150.0), Some(Remedy::OutputReactor));
        assert_eq!(verdict(1250.0, 1000.0, 150.1), Some(Remedy::DvDtFilter));
        assert_eq!(verdict(1251.0, 1000.0, 30.0), Some(Remedy::DvDtFilter));
        assert_eq!(verdict(1403.0, 1000.0, 500.0), Some(Remedy::DvDtFilter));
        assert_eq!(verdict(1403.0, 1000.0, 500.1), Some(Remedy::SineFilter));
        assert_eq!(verdict(1403.0, 1000.0, 5000.1), None);
        let mut last = Some(Remedy::NoneNeeded);
        for length in 1..=5000 {
            let now = verdict(1200.0, 1000.0, f64::from(length));
            assert!(now >= last, "{length} ft");
            last = now;
        }
    }

    #[test]
    fn a_filter_that_leaves_more_than_the_motor_stands_does_not_help() {
        // Of a bus of 720 V a dV/dt filter leaves 957.6 V, a sine filter 792 V.
        assert_eq!(verdict(1403.0, 957.7, 100.0), Some(Remedy::DvDtFilter));
        assert_eq!(verdict(1403.0, 957.5, 100.0), Some(Remedy::SineFilter));
        assert_eq!(verdict(1403.0, 792.1, 100.0), Some(Remedy::SineFilter));
        assert_eq!(verdict(1403.0, 791.9, 100.0), None);
        // A short lead that never comes to so much is none the worse for it.
        assert_eq!(verdict(700.0, 690.0, 200.0), None);
        assert_eq!(verdict(700.0, 700.0, 200.0), Some(Remedy::NoneNeeded));
    }

    #[test]
    fn practice_can_be_set_otherwise() {
        let mut practice = Practice::default();
        practice.dv_dt.longest = feet(1000.0);
        let now = remedy((volts(1403.0), volts(720.0)), volts(1000.0), feet(660.0), &practice).unwrap();
        assert_eq!(now, Some(Remedy::DvDtFilter));
        assert_eq!(practice.of(Remedy::SineFilter).cost, SINE_SEPARATE);
    }

    #[test]
    fn at_the_longest_lead_the_motor_has_just_what_it_needs() {
        let load = Load { sending: volts(480.0), current: amperes(11.3), power_factor: 0.8, phases: Phases::Three };
        let (r, x) = (ohms_per_kilofoot(1.98), ohms_per_kilofoot(0.054));
        let mut last = f64::INFINITY;
        for cost in [0.0, 0.015, SINE_BUILT_IN, SINE_SEPARATE] {
            let longest = longest_by_volts(load, r, x, volts(437.0), cost).unwrap();
            assert!(in_meters(longest) < last, "a filter that costs more reaches less far");
            last = in_meters(longest);
            let sending = behind_filter(load.sending, cost).unwrap();
            let drop = voltage_drop(Load { sending, ..load }, r, x, longest).unwrap().unwrap();
            assert!((in_volts(sending - drop) - 437.0).abs() < 1e-9);
        }
        assert_eq!(in_meters(longest_by_volts(load, r, x, volts(470.0), SINE_SEPARATE).unwrap()), 0.0);
    }

    #[test]
    fn arguments_outside_are_named() {
        let practice = Practice::default();
        let name = |peak: f64, limit: f64, length: f64| {
            remedy((volts(peak), volts(720.0)), volts(limit), feet(length), &practice).unwrap_err().argument
        };
        assert_eq!([name(f64::NAN, 1.0, 1.0), name(1.0, 0.0, 1.0), name(1.0, 1.0, -1.0)], ["peak", "limit", "length"]);
        assert_eq!(behind_filter(volts(480.0), 0.6).unwrap_err().argument, "cost");
        assert_eq!(behind_filter(volts(f64::NAN), 0.1).unwrap_err().argument, "drive");
    }
}
