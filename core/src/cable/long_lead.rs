//! Long leads behind a drive: the wave that the motor sends back, and the peak at its terminals.

use crate::error::OutsideRange;
use crate::quantity::{
    ElectricPotential, ElectricalResistance, Length, Power, Time, Velocity, in_horsepower, in_meters, in_volts, meters,
    seconds, volts,
};
use uom::si::electrical_resistance::ohm;

/// Critical lengths beyond which pulses can meet on an unfiltered lead and pass twice the bus voltage: practice.
pub const OVERLAP: f64 = 5.0;
/// Peak over rated voltage that an inverter-duty motor stands: 1.1 · 2 · √2, as the standard rounds it.
pub const INVERTER_DUTY_RATIO: f64 = 3.1;

/// What a lead and its motor are to a pulse.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wave {
    /// Speed of the pulse along the lead.
    pub speed: Velocity,
    /// Time in which the drive's pulse rises.
    pub rise: Time,
    /// Surge impedance of the lead.
    pub cable: ElectricalResistance,
    /// Surge impedance of the motor.
    pub motor: ElectricalResistance,
}

/// The surge impedance that stands in for a lead until it is known: 80 Ω.
///
/// # Units
/// The result is a resistance.
/// # Range
/// Three-conductor power cable; makers' figures run from 20 to 300 Ω.
/// # Source
/// [practice]; on the safe side for most.
#[must_use]
pub fn usual_cable_impedance() -> ElectricalResistance {
    ElectricalResistance::new::<ohm>(80.0)
}

/// The surge impedance that stands in for a motor until it is known: 3,000 Ω to 25 hp, 1,500 Ω to 75 hp, 700 Ω above.
///
/// # Units
/// `power` the motor's rated power; the result a resistance.
/// # Range
/// Any power; measured motors differ by a factor of two.
/// # Source
/// [practice].
#[must_use]
pub fn usual_motor_impedance(power: Power) -> ElectricalResistance {
    let hp = in_horsepower(power);
    // A power that a change of units moved by a rounding still is the rating.
    let within = |rating: f64| hp <= rating * (1.0 + 1e-9);
    ElectricalResistance::new::<ohm>(if within(25.0) {
        3000.0
    } else if within(75.0) {
        1500.0
    } else {
        700.0
    })
}

/// The critical length: a longer lead brings the reflected wave to its full height. ℓ_c = v t_r / 2
///
/// The wave runs out and back while the pulse rises.
///
/// # Units
/// A speed, a time; the result a length.
/// # Range
/// Speed 10 to 300 m/µs, the speed of light; rise 0.001 to 100 µs.
/// # Errors
/// [`OutsideRange`] names `speed` (m/s) or `rise` (s).
/// # Source
/// Theory of traveling waves; [saunders-1996]. Others put the limit at v t_r / 3, from where a lead counts as long.
/// # Example
/// ```
/// # use wellwright_core::{cable::long_lead::critical_length, quantity::*};
/// let length = critical_length(meters_per_second(150e6), seconds(0.1e-6))?;
/// assert!((in_meters(length) - 7.5).abs() < 1e-9);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn critical_length(speed: Velocity, rise: Time) -> Result<Length, OutsideRange> {
    let v = OutsideRange::check("speed", speed.value, 1e7, 3e8)?;
    let t = OutsideRange::check("rise", rise.value, 1e-9, 1e-4)?;
    Ok(meters(0.5 * v * t))
}

/// The share of a pulse that the motor sends back: Γ = (Z_m − Z_c)/(Z_m + Z_c).
///
/// # Units
/// Resistances; the result dimensionless, below zero where the motor's impedance is the smaller.
/// # Range
/// Impedances 1 to 100,000 Ω.
/// # Errors
/// [`OutsideRange`] names `motor` or `cable` (Ω).
/// # Source
/// Theory of traveling waves; [saunders-1996].
pub fn reflection(motor: ElectricalResistance, cable: ElectricalResistance) -> Result<f64, OutsideRange> {
    let m = OutsideRange::check("motor", motor.value, 1.0, 1e5)?;
    let c = OutsideRange::check("cable", cable.value, 1.0, 1e5)?;
    Ok((m - c) / (m + c))
}

/// The peak at the motor's terminals: V = V_dc (1 + Γ min(1, ℓ/ℓ_c)).
///
/// No ceiling: see [`pulses_can_meet`]. Below the critical length an estimate.
///
/// # Units
/// `bus` the drive's DC voltage; `length` one way; the result a voltage, line to line.
/// # Range
/// Bus 1 to 10,000 V; length 0 to 10⁶ m; the rest as [`critical_length`] and [`reflection`].
/// # Errors
/// [`OutsideRange`] names the argument (SI units).
/// # Source
/// Theory of traveling waves; [saunders-1996].
pub fn peak(bus: ElectricPotential, wave: Wave, length: Length) -> Result<ElectricPotential, OutsideRange> {
    let bus = OutsideRange::check("bus", in_volts(bus), 1.0, 1e4)?;
    let length = OutsideRange::check("length", in_meters(length), 0.0, 1e6)?;
    let grown = (length / in_meters(critical_length(wave.speed, wave.rise)?)).min(1.0);
    Ok(volts(bus * (1.0 + reflection(wave.motor, wave.cable)? * grown)))
}

/// True where a lead without a filter is so long that pulses can meet on it, and the peak pass twice the bus voltage.
///
/// # Units
/// Lengths one way.
/// # Range
/// Any length; `critical` as [`critical_length`] gives it.
/// # Source
/// [practice]: [`OVERLAP`] critical lengths; that it happens at all [saunders-1996].
#[must_use]
pub fn pulses_can_meet(length: Length, critical: Length) -> bool {
    length > OVERLAP * critical
}

/// A point of the curve of peak over length.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Corner {
    /// Length of the lead.
    pub length: Length,
    /// Peak at the motor.
    pub peak: ElectricPotential,
}

/// The corners of the curve of peak over length, from no lead to the longest; between them it runs straight.
///
/// # Units
/// Lengths one way, peaks line to line.
/// # Range
/// As [`peak`]. Two corners where the longest lead is not longer than the critical length, else three.
/// # Errors
/// As [`peak`].
/// # Source
/// The form of [`peak`].
pub fn corners(bus: ElectricPotential, wave: Wave, longest: Length) -> Result<Vec<Corner>, OutsideRange> {
    let critical = critical_length(wave.speed, wave.rise)?;
    let mut lengths = vec![meters(0.0)];
    if longest > critical {
        lengths.push(critical);
    }
    lengths.push(longest);
    lengths.into_iter().map(|length| Ok(Corner { length, peak: peak(bus, wave, length)? })).collect()
}

/// The longest lead whose peak keeps within a limit without a filter; infinite where no length passes it.
///
/// ℓ = ℓ_c (limit/V_dc − 1)/Γ, where that is not beyond ℓ_c. No length serves, so zero, where the bus alone passes.
///
/// # Units
/// `limit` a voltage; the result a length, one way.
/// # Range
/// Limit 1 to 100,000 V; the rest as [`peak`].
/// # Errors
/// [`OutsideRange`] names `limit` (V); else as [`peak`].
/// # Source
/// Algebra on [`peak`].
pub fn longest_unfiltered(
    bus: ElectricPotential,
    wave: Wave,
    limit: ElectricPotential,
) -> Result<Length, OutsideRange> {
    let most = OutsideRange::check("limit", in_volts(limit), 1.0, 1e5)?;
    let critical = critical_length(wave.speed, wave.rise)?;
    let full = in_volts(peak(bus, wave, critical)?);
    let bus = in_volts(bus);
    Ok(if bus > most {
        meters(0.0)
    } else if full <= most {
        meters(f64::INFINITY)
    } else {
        critical * ((most - bus) / (full - bus))
    })
}

/// What a motor's winding stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Limit {
    /// A general-purpose motor, to 600 V: 1,000 V, 2 µs of rise. A submersible counts so until its nameplate says more.
    GeneralPurpose,
    /// An inverter-duty motor of this rated voltage: 3.1 times that, 0.1 µs of rise.
    InverterDuty(ElectricPotential),
    /// As the nameplate or the maker says, or the curve of [iec-60034-25] at the pulse's rise: no figure of that curve is
    /// held here.
    Typed(ElectricPotential),
}

impl Limit {
    /// The largest peak.
    ///
    /// # Units
    /// The result is a voltage, line to line.
    /// # Range
    /// Motors rated to 600 V.
    /// # Source
    /// [nema-mg1-30], [nema-mg1-31].
    #[must_use]
    pub fn peak(self) -> ElectricPotential {
        match self {
            Self::GeneralPurpose => volts(1000.0),
            Self::InverterDuty(rated) => INVERTER_DUTY_RATIO * rated,
            Self::Typed(most) => most,
        }
    }

    /// The shortest rise that the limit holds for; `None` where nothing is said about it.
    ///
    /// No drive of today rises as slowly as a general-purpose motor asks: that is worth a note and decides nothing.
    ///
    /// # Units
    /// The result is a time.
    /// # Range
    /// Motors rated to 600 V.
    /// # Source
    /// [nema-mg1-30], [nema-mg1-31].
    #[must_use]
    pub fn shortest_rise(self) -> Option<Time> {
        match self {
            Self::GeneralPurpose => Some(seconds(2e-6)),
            Self::InverterDuty(_) => Some(seconds(0.1e-6)),
            Self::Typed(_) => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{horsepower, meters_per_second};

    fn wave(motor: f64, cable: f64) -> Wave {
        let ohms = ElectricalResistance::new::<ohm>;
        Wave { speed: meters_per_second(150e6), rise: seconds(0.1e-6), cable: ohms(cable), motor: ohms(motor) }
    }

    #[test]
    fn a_matched_motor_sends_nothing_back_and_an_open_end_doubles() {
        assert_eq!(in_volts(peak(volts(648.0), wave(80.0, 80.0), meters(100.0)).unwrap()), 648.0);
        let open = in_volts(peak(volts(648.0), wave(1e5, 1.0), meters(100.0)).unwrap());
        assert!((open / 648.0 - 2.0).abs() < 3e-5 && open < 2.0 * 648.0);
        assert!(reflection(wave(40.0, 80.0).motor, wave(40.0, 80.0).cable).unwrap() < 0.0);
    }

    #[test]
    fn the_corners_are_the_whole_curve() {
        let wave = wave(3000.0, 80.0);
        let corners = corners(volts(720.0), wave, meters(200.0)).unwrap();
        assert_eq!(corners.len(), 3);
        for pair in corners.windows(2) {
            for step in 0..=10 {
                let share = f64::from(step) / 10.0;
                let length = pair[0].length + share * (pair[1].length - pair[0].length);
                let straight = pair[0].peak + share * (pair[1].peak - pair[0].peak);
                assert!((peak(volts(720.0), wave, length).unwrap() - straight).value.abs() < 1e-9);
            }
        }
        assert_eq!(super::corners(volts(720.0), wave, meters(7.5)).unwrap().len(), 2);
    }

    #[test]
    fn the_longest_lead_without_a_filter_has_the_limit_as_its_peak() {
        let wave = wave(3000.0, 80.0);
        let longest = longest_unfiltered(volts(720.0), wave, volts(1000.0)).unwrap();
        assert!((in_volts(peak(volts(720.0), wave, longest).unwrap()) - 1000.0).abs() < 1e-9);
        // 7.5 m · 280/682.6
        assert!((in_meters(longest) - 3.0765).abs() < 1e-4, "{longest:?}");
        let within = longest_unfiltered(volts(370.0), wave, volts(1000.0)).unwrap();
        assert!(within.value.is_infinite());
        assert_eq!(in_meters(longest_unfiltered(volts(1100.0), wave, volts(1000.0)).unwrap()), 0.0);
    }

    #[test]
    fn ratings_keep_their_impedance_after_a_change_of_units() {
        let of = |hp: f64| usual_motor_impedance(horsepower(hp)).value;
        assert_eq!([of(0.5), of(25.0), of(30.0), of(75.0), of(100.0)], [3000.0, 3000.0, 1500.0, 1500.0, 700.0]);
        assert_eq!(usual_motor_impedance(crate::quantity::watts(25.0 * 745.7)).value, 3000.0);
    }

    #[test]
    fn pulses_meet_beyond_five_critical_lengths() {
        let critical = critical_length(meters_per_second(150e6), seconds(0.1e-6)).unwrap();
        assert!(!pulses_can_meet(5.0 * critical, critical));
        assert!(pulses_can_meet(meters(37.6), critical));
    }

    #[test]
    fn arguments_outside_are_named() {
        let argument = |result: Result<ElectricPotential, OutsideRange>| result.unwrap_err().argument;
        assert_eq!(argument(peak(volts(f64::NAN), wave(3000.0, 80.0), meters(1.0))), "bus");
        assert_eq!(argument(peak(volts(370.0), wave(3000.0, 80.0), meters(-1.0))), "length");
        assert_eq!(argument(peak(volts(370.0), wave(0.0, 80.0), meters(1.0))), "motor");
        assert_eq!(argument(peak(volts(370.0), wave(3000.0, 0.0), meters(1.0))), "cable");
        let fast = Wave { speed: meters_per_second(4e8), ..wave(3000.0, 80.0) };
        assert_eq!(argument(peak(volts(370.0), fast, meters(1.0))), "speed");
        let slow = Wave { rise: seconds(1.0), ..wave(3000.0, 80.0) };
        assert_eq!(argument(peak(volts(370.0), slow, meters(1.0))), "rise");
        assert_eq!(longest_unfiltered(volts(370.0), slow, volts(0.0)).unwrap_err().argument, "limit");
    }
}
