//! Why a thick conductor resists alternating current more: skin effect, and that of the conductors beside it.

use super::conductor::{resistance_at, table_resistance};
use super::drop::Phases;
use crate::error::OutsideRange;
use crate::quantity::{Celsius, Frequency, OhmsPerLength, in_hertz};
use crate::standards::conductor::{Metal, Size};

/// Coefficients k_s and k_p of round stranded conductors, copper and aluminum: those of a solid rod.
pub const ROUND_STRANDED: f64 = 1.0;

/// The square of the argument: x² = 8π f/R′ · 10⁻⁷ · k, with R′ in Ω/m.
fn square(direct: OhmsPerLength, frequency: Frequency, k: f64) -> Result<f64, OutsideRange> {
    let r = OutsideRange::check("direct", direct.value, 1e-6, 1e3)?;
    let f = OutsideRange::check("frequency", in_hertz(frequency), 0.0, 1000.0)?;
    let k = OutsideRange::check("k", k, 0.0, 1.0)?;
    Ok(8.0 * core::f64::consts::PI * f / r * 1e-7 * k)
}

/// What skin effect adds to a round conductor's resistance, as a share of it.
///
/// y_s = x⁴/(192 + 0.8 x⁴) for x to 2.8; −0.136 − 0.0177 x + 0.0563 x² to 3.8; 0.354 x − 0.733 above;
/// x² = 8π f/R′ · 10⁻⁷ · k_s.
///
/// # Units
/// `direct` the direct-current resistance at the conductor's temperature, ohms per length; `k` the coefficient of the
/// build, [`ROUND_STRANDED`]; the result dimensionless.
/// # Range
/// 0 to 1,000 Hz; R′ 10⁻⁶ to 1,000 Ω/m; k 0 to 1. Within 0.6 % of the exact solution for a rod.
/// # Errors
/// [`OutsideRange`] names `direct` (Ω/m), `frequency` (Hz) or `k`.
/// # Source
/// [iec-60287-1-1].
pub fn skin_effect(direct: OhmsPerLength, frequency: Frequency, k: f64) -> Result<f64, OutsideRange> {
    let x2 = square(direct, frequency, k)?;
    let (x, x4) = (x2.sqrt(), x2 * x2);
    Ok(if x <= 2.8 {
        x4 / (192.0 + 0.8 * x4)
    } else if x <= 3.8 {
        -0.136 - 0.0177 * x + 0.0563 * x2
    } else {
        0.354 * x - 0.733
    })
}

/// What the other conductors of a circuit add to a round conductor's resistance, as a share of it.
///
/// With F = x⁴/(192 + 0.8 x⁴), x² = 8π f/R′ · 10⁻⁷ · k_p and u = (d/s)²: three conductors
/// y_p = F u (0.312 u + 1.18/(F + 0.27)); two y_p = 2.9 F u.
///
/// # Units
/// `direct` as [`skin_effect`]; `nearness` d/s, the conductor's diameter over the distance between axes, dimensionless.
/// # Range
/// x to 2.8; d/s 0 to 1; the rest as [`skin_effect`]. Conductors in a triangle or side by side, not in steel.
/// # Errors
/// [`OutsideRange`] names `x`, `nearness`, or as [`skin_effect`].
/// # Source
/// [iec-60287-1-1].
pub fn proximity_effect(
    direct: OhmsPerLength,
    frequency: Frequency,
    k: f64,
    nearness: f64,
    phases: Phases,
) -> Result<f64, OutsideRange> {
    let x2 = square(direct, frequency, k)?;
    OutsideRange::check("x", x2.sqrt(), 0.0, 2.8)?;
    let near = OutsideRange::check("nearness", nearness, 0.0, 1.0)?;
    let (x4, u) = (x2 * x2, near * near);
    let f = x4 / (192.0 + 0.8 * x4);
    Ok(match phases {
        Phases::Three => f * u * (0.312 * u + 1.18 / (f + 0.27)),
        Phases::Single => 2.9 * f * u,
    })
}

/// What alternating current adds to the resistance of a listed conductor, its neighbors touching, as a share: y_s + y_p.
///
/// # Units
/// Dimensionless.
/// # Range
/// 14 AWG to 500 kcmil with THW-thick insulation; conductor −60 to 150 °C, 0 to 120 Hz; not in steel conduit, whose own
/// loss is not in it.
/// # Errors
/// [`OutsideRange`] names `temperature` (°C) or `frequency` (Hz).
/// # Source
/// [iec-60287-1-1] on [nec-2023-ch9-t8].
pub fn alternating_share(
    size: Size,
    metal: Metal,
    temperature: Celsius,
    frequency: Frequency,
    phases: Phases,
) -> Result<f64, OutsideRange> {
    OutsideRange::check("frequency", in_hertz(frequency), 0.0, 120.0)?;
    let direct = resistance_at(table_resistance(size, metal), metal, temperature)?;
    let skin = skin_effect(direct, frequency, ROUND_STRANDED)?;
    Ok(skin + proximity_effect(direct, frequency, ROUND_STRANDED, nearness(size), phases)?)
}

/// Diameter of a conductor over the distance to the axis of the next, insulations touching.
fn nearness(size: Size) -> f64 {
    (size.row().diameter() / size.row().insulated_diameter()).value
}

/// Resistance of a listed conductor to alternating current, its neighbors touching: R′ (1 + y_s + y_p).
///
/// # Units
/// Ohms per length.
/// # Range
/// As [`alternating_share`].
/// # Errors
/// [`OutsideRange`] names `temperature` (°C) or `frequency` (Hz).
/// # Source
/// [iec-60287-1-1] on [nec-2023-ch9-t8]; within the rounding of the plastic columns of [nec-2023-ch9-t9] from 1/0 to
/// 500 kcmil, but for copper 4/0, where it gives 0.0615 and the table prints 0.062.
pub fn ac_resistance(
    size: Size,
    metal: Metal,
    temperature: Celsius,
    frequency: Frequency,
    phases: Phases,
) -> Result<OhmsPerLength, OutsideRange> {
    let added = alternating_share(size, metal, temperature, frequency, phases)?;
    Ok(resistance_at(table_resistance(size, metal), metal, temperature)? * (1.0 + added))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{hertz, in_ohms_per_kilofoot, ohms_per_kilofoot};
    use crate::standards::ac_resistance::ac_resistance as table_9;

    /// The exact ratio for a rod: with t = x²/4, the field at its surface is the series Σ (jt)^k/(k!)², its current the
    /// slope of that series by jt, and R/R′ the real part of series over slope (Bessel's J₀ and J₁).
    fn rod(x: f64) -> f64 {
        let t = x * x / 4.0;
        let (mut series, mut slope) = ((0.0, 0.0), (0.0, 0.0));
        let mut term = 1.0;
        for k in 0..60u32 {
            if k > 0 {
                term *= t / f64::from(k * k);
            }
            // j^k · term, and k/(jt) times that for the slope by jt.
            let (re, im) = [(1.0, 0.0), (0.0, 1.0), (-1.0, 0.0), (0.0, -1.0)][(k % 4) as usize];
            series = (series.0 + re * term, series.1 + im * term);
            let lower = f64::from(k) / t;
            slope = (slope.0 + im * term * lower, slope.1 - re * term * lower);
        }
        let norm = slope.0 * slope.0 + slope.1 * slope.1;
        (series.0 * slope.0 + series.1 * slope.1) / norm
    }

    fn at_x(x: f64) -> f64 {
        let direct = 8.0 * core::f64::consts::PI * 60.0e-7 / (x * x);
        1.0 + skin_effect(ohms_per_kilofoot(direct * 304.8), hertz(60.0), 1.0).unwrap()
    }

    #[test]
    fn the_formula_follows_the_exact_solution() {
        for tenth in 1..=80 {
            let x = f64::from(tenth) / 10.0;
            let (found, exact) = (at_x(x), rod(x));
            assert!((found / exact - 1.0).abs() < 0.006, "x = {x}: {found}, exact {exact}");
        }
        // Worked apart in complex arithmetic as x e^(−jπ/4)/2 · J₀/J₁; the old printed tables give 1.0782, 1.3181 and
        // 1.6779 for the middle three (from memory).
        for (x, ratio) in [(1.0, 1.005_187), (2.0, 1.078_159), (3.0, 1.318_095), (4.0, 1.677_869), (5.0, 2.042_725)] {
            assert!((rod(x) - ratio).abs() < 1e-6, "x = {x}: {}", rod(x));
        }
    }

    #[test]
    fn it_grows_with_frequency_and_size_and_is_nothing_at_rest() {
        let mut last = 0.0;
        for size in Size::ALL {
            let direct = table_resistance(size, Metal::Copper);
            assert_eq!(skin_effect(direct, hertz(0.0), 1.0), Ok(0.0));
            let now = skin_effect(direct, hertz(60.0), 1.0).unwrap();
            assert!(now > last && skin_effect(direct, hertz(61.0), 1.0).unwrap() > now);
            last = now;
        }
        // The largest listed conductor, by hand: x² = 8π · 60 · 10⁻⁷/(0.0258/304.8) = 1.7815.
        assert!((last - 0.016_316).abs() < 2e-6, "{last}");
    }

    #[test]
    fn from_1_0_to_500_kcmil_it_gives_table_9_within_its_rounding() {
        let mut missed = Vec::new();
        for size in Size::ALL.into_iter().filter(|size| *size >= Size::Awg1_0) {
            for metal in [Metal::Copper, Metal::Aluminum] {
                let found = ac_resistance(size, metal, Celsius(75.0), hertz(60.0), Phases::Three).unwrap();
                let found = in_ohms_per_kilofoot(found);
                let printed = table_9(size, metal).unwrap().plastic;
                let rounding = if printed < 0.0995 { 0.0005 } else { 0.005 };
                if (found - printed).abs() > rounding {
                    missed.push((size, metal, found, printed));
                }
            }
        }
        // 4/0 copper: 0.061 46 by the formula, which rounds to 0.061; the table has 0.062.
        assert_eq!(missed.len(), 1, "{missed:?}");
        let (size, metal, found, printed) = missed[0];
        assert_eq!((size, metal), (Size::Awg4_0, Metal::Copper));
        assert!((found - printed).abs() < 0.000_55, "{found}");
    }

    #[test]
    fn small_conductors_and_low_speed_come_to_direct_current() {
        let direct = table_resistance(Size::Awg6, Metal::Copper);
        let ac = |hz: f64| ac_resistance(Size::Awg6, Metal::Copper, Celsius(75.0), hertz(hz), Phases::Three).unwrap();
        assert!((ac(60.0) / direct).value < 1.0003);
        assert_eq!(ac(0.0), direct);
        // Two conductors crowd the current less than three do.
        let two = ac_resistance(Size::Kcmil500, Metal::Copper, Celsius(75.0), hertz(60.0), Phases::Single).unwrap();
        let three = ac_resistance(Size::Kcmil500, Metal::Copper, Celsius(75.0), hertz(60.0), Phases::Three).unwrap();
        assert!(two < three && two > table_resistance(Size::Kcmil500, Metal::Copper));
    }

    #[test]
    fn arguments_outside_are_named() {
        let direct = ohms_per_kilofoot(0.0258);
        let name = |result: Result<f64, OutsideRange>| result.unwrap_err().argument;
        assert_eq!(name(skin_effect(ohms_per_kilofoot(0.0), hertz(60.0), 1.0)), "direct");
        assert_eq!(name(skin_effect(direct, hertz(f64::NAN), 1.0)), "frequency");
        assert_eq!(name(skin_effect(direct, hertz(60.0), 1.1)), "k");
        assert_eq!(name(proximity_effect(direct, hertz(400.0), 1.0, 0.8, Phases::Three)), "x");
        assert_eq!(name(proximity_effect(direct, hertz(60.0), 1.0, 1.1, Phases::Three)), "nearness");
        let fast = ac_resistance(Size::Awg6, Metal::Copper, Celsius(75.0), hertz(121.0), Phases::Three);
        assert_eq!(fast.unwrap_err().argument, "frequency");
    }
}
