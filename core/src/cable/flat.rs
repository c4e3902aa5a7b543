//! Flat cable: three conductors side by side are not alike, so the motor's voltages are not either.

use super::drop::{Load, Phases, voltage_drop};
use super::reactance::{Build, from_spacing, geometric_mean_distance, geometric_mean_radius};
use crate::error::OutsideRange;
use crate::quantity::{ElectricPotential, Frequency, Length, OhmsPerLength, in_hertz, in_volts, volts};
use crate::standards::conductor::Size;
use core::ops::{Mul, Sub};

/// Reactance per length of a flat cable's conductors, each with currents of three equal phases.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlatReactance {
    /// Of each outer conductor: distances of one and two pitches.
    pub outer: OhmsPerLength,
    /// Of the middle conductor: a pitch to either side.
    pub middle: OhmsPerLength,
    /// The mean of the three, as [`super::reactance::reactance`] gives it at 60 Hz.
    pub mean: OhmsPerLength,
    /// What the outer conductor of the leading phase seems to resist more, and that of the lagging phase less: power
    /// that the one hands to the other.
    pub transfer: OhmsPerLength,
}

/// Reactances of a flat cable's conductors.
///
/// With k = 2πf · 2·10⁻⁷ H/m and pitch s: middle k ln(s/GMR), outer k ln(√2 s/GMR), mean k ln(∛2 s/GMR); transfer
/// k (√3/2) ln 2.
///
/// # Units
/// Ohms per length.
/// # Range
/// 14 AWG to 500 kcmil with THW-thick insulation, conductors touching; 0 to 1,000 Hz.
/// # Errors
/// [`OutsideRange`] names `frequency` (Hz).
/// # Source
/// [grainger-stevenson-1994] chapter 4: flux linkages of three conductors whose currents sum to zero; pitch
/// [nec-2023-310.4].
pub fn flat_reactance(size: Size, frequency: Frequency) -> Result<FlatReactance, OutsideRange> {
    let pitch = geometric_mean_distance(size, Build::Twisted);
    let gmr = geometric_mean_radius(size);
    let hz = in_hertz(frequency);
    let at = |gmd: Length| from_spacing(gmd, gmr, hz);
    let (outer, middle) = (at(pitch * 2f64.sqrt())?, at(pitch)?);
    // k ln 2 is twice what the step from one pitch to √2 pitches adds.
    let transfer = 3f64.sqrt() * (outer - middle);
    Ok(FlatReactance { outer, middle, mean: at(pitch * 2f64.cbrt())?, transfer })
}

/// What a flat lead leaves at the motor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlatDrop {
    /// Volts to neutral lost along the lead: outer conductor of the leading phase, middle, outer of the lagging phase.
    pub drops: [ElectricPotential; 3],
    /// Mean of the three.
    pub mean_drop: ElectricPotential,
    /// Largest deviation of a phase's drop from the mean, over the mean.
    pub drop_unbalance: f64,
    /// Line voltages at the motor: leading outer to middle, middle to lagging outer, outer to outer.
    pub lines: [ElectricPotential; 3],
    /// Largest deviation of a line voltage from their mean, over the mean.
    pub voltage_unbalance: f64,
}

/// Voltages at the end of a flat lead, phase by phase, where the currents are equal.
///
/// The mean impedance leaves V_r to neutral on each phase, exact; each phase then differs by what its own impedance
/// differs from the mean: V_i = V_r,i − ΔZ_i I_i ℓ, with ΔZ = (√3/2 + j/6) k ln 2, −(j/3) k ln 2, (−√3/2 + j/6) k ln 2.
///
/// # Units
/// `resistance` ohms per length of one conductor; `length` one way; `load.sending` line to line.
/// `None` where the load can't be fed at all.
/// # Range
/// Three phases; as [`flat_reactance`] and [`voltage_drop`].
/// # Errors
/// [`OutsideRange`] names `phases`, `frequency` (Hz), or as [`voltage_drop`].
/// # Source
/// Phasor algebra on [grainger-stevenson-1994] chapter 4; unbalance [nema-mg1-14.36].
pub fn flat_drop(
    load: Load,
    size: Size,
    resistance: OhmsPerLength,
    length: Length,
    frequency: Frequency,
) -> Result<Option<FlatDrop>, OutsideRange> {
    if load.phases != Phases::Three {
        return Err(OutsideRange { argument: "phases", given: 1.0, min: 3.0, max: 3.0 });
    }
    let x = flat_reactance(size, frequency)?;
    let Some(drop) = voltage_drop(load, resistance, x.mean, length)? else { return Ok(None) };
    let sending = in_volts(load.sending) / 3f64.sqrt();
    let received = (in_volts(load.sending) - in_volts(drop)) / 3f64.sqrt();
    let cos = load.power_factor;
    let current = Phasor(cos, -(1.0 - cos * cos).sqrt()) * load.current.value;
    let apart = [
        Phasor((x.transfer * length).value, ((x.outer - x.mean) * length).value),
        Phasor(0.0, ((x.middle - x.mean) * length).value),
        Phasor(-(x.transfer * length).value, ((x.outer - x.mean) * length).value),
    ];
    let turns = [Phasor(1.0, 0.0), Phasor(-0.5, -0.75f64.sqrt()), Phasor(-0.5, 0.75f64.sqrt())];
    let left: [Phasor; 3] = core::array::from_fn(|i| (Phasor(received, 0.0) - apart[i] * current) * turns[i]);
    let drops = left.map(|phase| sending - phase.size());
    let lines = [(left[0] - left[1]).size(), (left[1] - left[2]).size(), (left[2] - left[0]).size()];
    Ok(Some(FlatDrop {
        drops: drops.map(volts),
        mean_drop: volts(mean(drops)),
        drop_unbalance: unbalance(drops),
        lines: lines.map(volts),
        voltage_unbalance: unbalance(lines),
    }))
}

fn mean(three: [f64; 3]) -> f64 {
    three.iter().sum::<f64>() / 3.0
}

/// The largest deviation from the mean over the mean; 0 where nothing deviates, as on a lead of no length.
fn unbalance(three: [f64; 3]) -> f64 {
    let middle = mean(three);
    let most = three.iter().map(|one| (one - middle).abs()).fold(0.0, f64::max);
    if most == 0.0 { 0.0 } else { most / middle.abs().max(f64::MIN_POSITIVE) }
}

/// A complex number.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Phasor(f64, f64);

impl Phasor {
    fn size(self) -> f64 {
        self.0.hypot(self.1)
    }
}

impl Sub for Phasor {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0, self.1 - other.1)
    }
}
impl Mul for Phasor {
    type Output = Self;
    fn mul(self, other: Self) -> Self {
        Self(self.0 * other.0 - self.1 * other.1, self.0 * other.1 + self.1 * other.0)
    }
}
impl Mul<f64> for Phasor {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self(self.0 * factor, self.1 * factor)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cable::conductor::table_resistance;
    use crate::cable::reactance::reactance;
    use crate::quantity::{amperes, feet, hertz, in_ohms_per_kilofoot};
    use crate::standards::conductor::Metal;

    fn load(sending: f64, current: f64) -> Load {
        Load { sending: volts(sending), current: amperes(current), power_factor: 0.84, phases: Phases::Three }
    }

    #[test]
    fn the_mean_is_the_mean_of_the_three_and_what_sizes_a_lead() {
        for size in Size::ALL {
            let x = flat_reactance(size, hertz(60.0)).unwrap();
            assert!((((2.0 * x.outer + x.middle) / (3.0 * x.mean)).value - 1.0).abs() < 1e-12);
            assert!(((x.mean / reactance(size, Build::FlatJacketed)).value - 1.0).abs() < 1e-12);
            assert!(x.outer > x.mean && x.mean > x.middle);
            // Half of k ln 2 lies between outer and middle whatever the size: 7.5398e-5 · 0.346574 Ω/m.
            assert!(((x.outer - x.middle).value - 2.613_1e-5).abs() < 1e-9);
            assert!((in_ohms_per_kilofoot(x.transfer) - 0.013_795).abs() < 1e-6);
        }
    }

    #[test]
    fn a_lead_of_no_length_is_balanced_and_a_longer_one_less_so() {
        let size = Size::Kcmil250;
        let r = table_resistance(size, Metal::Copper);
        let at = |length: f64| flat_drop(load(480.0, 150.0), size, r, feet(length), hertz(60.0)).unwrap().unwrap();
        assert_eq!((at(0.0).voltage_unbalance, at(0.0).drop_unbalance), (0.0, 0.0));
        let mut last = 0.0;
        for length in [100.0, 200.0, 400.0, 800.0] {
            let now = at(length);
            assert!(now.voltage_unbalance > last);
            last = now.voltage_unbalance;
            // The exact drop by the mean impedance, line to line, is √3 times the mean of the three to first order.
            let by_mean = voltage_drop(load(480.0, 150.0), r, reactance(size, Build::FlatJacketed), feet(length));
            let by_mean = in_volts(by_mean.unwrap().unwrap());
            assert!((3f64.sqrt() * in_volts(now.mean_drop) / by_mean - 1.0).abs() < 0.01, "{length}");
        }
    }

    #[test]
    fn at_no_frequency_all_phases_drop_alike() {
        let r = table_resistance(Size::Awg2, Metal::Copper);
        let still = flat_drop(load(240.0, 60.0), Size::Awg2, r, feet(500.0), hertz(0.0)).unwrap().unwrap();
        assert!(still.voltage_unbalance < 1e-12 && still.drop_unbalance < 1e-12);
    }

    #[test]
    fn arguments_outside_are_named() {
        let r = table_resistance(Size::Awg2, Metal::Copper);
        let single = Load { phases: Phases::Single, ..load(240.0, 10.0) };
        assert_eq!(flat_drop(single, Size::Awg2, r, feet(1.0), hertz(60.0)).unwrap_err().argument, "phases");
        assert_eq!(flat_reactance(Size::Awg2, hertz(1001.0)).unwrap_err().argument, "frequency");
        assert_eq!(flat_drop(load(240.0, 500.0), Size::Awg14, r * 50.0, feet(900.0), hertz(60.0)), Ok(None));
    }
}
