//! How warm a conductor gets in service, and what it resists then.

use super::conductor::{properties, resistance_at, table_resistance};
use crate::error::OutsideRange;
use crate::quantity::{Celsius, ElectricCurrent, OhmsPerLength, in_amperes};
use crate::standards::ampacity::Rating;
use crate::standards::conductor::{Metal, Size, TABLE_8_AT};

/// Ambient that the ampacity table holds for, °C.
pub const TABLE_AMBIENT: f64 = 30.0;

/// Temperature coefficient of resistance on the base of another temperature: α_T = α₂₀/(1 + α₂₀ (T − 20 °C)).
///
/// # Units
/// `at` °C; the result 1/K.
/// # Range
/// −60 to 150 °C, where the linear law holds.
/// # Errors
/// [`OutsideRange`] names `at` (°C).
/// # Source
/// [iec-60028], [astm-b230] for α₂₀; the linear law. At 75 °C it is what [nec-2023-ch9-t8] note 2 rounds to three figures.
pub fn temperature_coefficient(metal: Metal, at: Celsius) -> Result<f64, OutsideRange> {
    let t = OutsideRange::check("at", at.0, -60.0, 150.0)?;
    let base = properties(metal).coefficient_20;
    Ok(base / (1.0 + base * (t - 20.0)))
}

/// Resistance at one temperature from that at another: R₂ = R₁ (1 + α₂₀ (T₂ − 20))/(1 + α₂₀ (T₁ − 20)).
///
/// # Units
/// Ohms per length, °C.
/// # Range
/// −60 to 150 °C; `known` to 1,000 Ω/m.
/// # Errors
/// [`OutsideRange`] names `from` or `to` (°C), or `known` (Ω/m).
/// # Source
/// [iec-60028], [astm-b230].
/// # Example
/// ```
/// # use wellwright_core::{cable::temperature::resistance_moved, quantity::*, standards::conductor::Metal};
/// // 16 mm² of stranded copper: 1.15 Ω/km at 20 °C, 1.376 at 70 °C.
/// let hot = resistance_moved(ohms_per_kilofoot(1.15), Metal::Copper, Celsius(20.0), Celsius(70.0))?;
/// assert!((in_ohms_per_kilofoot(hot) - 1.376).abs() < 5e-4);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn resistance_moved(
    known: OhmsPerLength,
    metal: Metal,
    from: Celsius,
    to: Celsius,
) -> Result<OhmsPerLength, OutsideRange> {
    let from = OutsideRange::check("from", from.0, -60.0, 150.0)?;
    let to = OutsideRange::check("to", to.0, -60.0, 150.0)?;
    OutsideRange::check("known", known.value, 0.0, 1e3)?;
    let base = properties(metal).coefficient_20;
    Ok(known * ((1.0 + base * (to - 20.0)) / (1.0 + base * (from - 20.0))))
}

/// What sets how warm a conductor gets.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Service {
    /// Warmest surroundings.
    pub ambient: Celsius,
    /// Temperature rating of the insulation.
    pub insulation: Rating,
    /// Current that the conductor carries.
    pub current: ElectricCurrent,
    /// Current that brings it to its rating in 30 °C: the table's ampacity by insulation, bundled where it lies in one.
    pub rated_at_30: ElectricCurrent,
}

/// What the current adds to the ambient, were the resistance that at the rated temperature: (T_r − 30)(I/I_r30)².
fn rise(service: Service) -> Result<f64, OutsideRange> {
    OutsideRange::check("ambient", service.ambient.0, -60.0, 90.0)?;
    let rated = OutsideRange::check("rated_at_30", in_amperes(service.rated_at_30), 0.1, 1e5)?;
    let current = OutsideRange::check("current", in_amperes(service.current), 0.0, 1.5 * rated)?;
    let share = current / rated;
    Ok((service.insulation.celsius() - TABLE_AMBIENT) * share * share)
}

/// Temperature of a conductor in service: T = T_a + (T_r − 30 °C)(I/I_r30)².
///
/// At the corrected ampacity it is the rated temperature in any ambient, by the very equation that corrects it. It takes
/// the resistance as that at the rated temperature, so below that temperature it stands on the warm side of
/// [`settled_temperature`].
///
/// # Units
/// °C.
/// # Range
/// Ambient −60 to 90 °C; current 0 to 1.5 times the rated one, beyond the rating too; rated current 0.1 to 100,000 A.
/// # Errors
/// [`OutsideRange`] names `ambient` (°C), `current` or `rated_at_30` (A).
/// # Source
/// Algebra on [nec-2023-310.15b], equation 310.15(B)(1); [bs-7671] appendix 4 has the same law.
pub fn conductor_temperature(service: Service) -> Result<Celsius, OutsideRange> {
    Ok(Celsius(service.ambient.0 + rise(service)?))
}

/// Temperature at which a conductor's heat, by its resistance at that very temperature, is what it gives off.
///
/// T − T_a = q R(T)/R(T_r) with q = (T_r − 30)(I/I_r30)², and R linear in T: T = (T_a + q (1 − β T_r))/(1 − β q), β the
/// temperature coefficient on the base of T_r. Iterating T ← T_a + q R(T)/R(T_r) comes to the same.
///
/// # Units
/// °C.
/// # Range
/// As [`conductor_temperature`]; there β q stays below 0.42, so that the heat never runs away.
/// # Errors
/// As [`conductor_temperature`].
/// # Source
/// [nec-2023-310.15b] for what the rating gives off; [nec-2023-ch9-t8] note 2 for the resistance.
pub fn settled_temperature(metal: Metal, service: Service) -> Result<Celsius, OutsideRange> {
    let q = rise(service)?;
    let rated = service.insulation.celsius();
    let at_75 = properties(metal).coefficient_75;
    let beta = at_75 / (1.0 + at_75 * (rated - TABLE_8_AT.0));
    Ok(Celsius((service.ambient.0 + q * (1.0 - beta * rated)) / (1.0 - beta * q)))
}

/// A conductor's resistance as it is in service, beside the one that sizes it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InService {
    /// Its temperature, by [`conductor_temperature`].
    pub temperature: Celsius,
    /// Its resistance at that temperature: for energy.
    pub resistance: OhmsPerLength,
    /// Its resistance at 75 °C, by the table: for sizing.
    pub at_75: OhmsPerLength,
}

/// Temperature and resistance of a listed conductor in service, and the resistance at 75 °C that sizes it.
///
/// # Units
/// °C, ohms per length.
/// # Range
/// As [`conductor_temperature`], as long as the conductor stays within 150 °C.
/// # Errors
/// As [`conductor_temperature`]; names `temperature` (°C) beyond 150 °C.
/// # Source
/// [`conductor_temperature`]; [nec-2023-ch9-t8] with note 2.
pub fn in_service(size: Size, metal: Metal, service: Service) -> Result<InService, OutsideRange> {
    let temperature = conductor_temperature(service)?;
    let at_75 = table_resistance(size, metal);
    Ok(InService { temperature, resistance: resistance_at(at_75, metal, temperature)?, at_75 })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::amperes;

    fn service(ambient: f64, insulation: Rating, current: f64, rated: f64) -> Service {
        Service { ambient: Celsius(ambient), insulation, current: amperes(current), rated_at_30: amperes(rated) }
    }

    const RATINGS: [Rating; 3] = [Rating::C60, Rating::C75, Rating::C90];

    // NEC equation 310.15(B)(1) is this law put the other way round.
    #[test]
    fn at_the_corrected_ampacity_a_conductor_has_its_rated_temperature() {
        for insulation in RATINGS {
            for ambient in [-10.0, 0.0, 20.0, 30.0, 45.0, 55.0] {
                let rated = insulation.celsius();
                let factor = ((rated - ambient) / (rated - 30.0)).sqrt();
                if factor > 1.5 {
                    continue;
                }
                let service = service(ambient, insulation, 65.0 * factor, 65.0);
                assert!((conductor_temperature(service).unwrap().0 - rated).abs() < 1e-9);
                for metal in [Metal::Copper, Metal::Aluminum] {
                    assert!((settled_temperature(metal, service).unwrap().0 - rated).abs() < 1e-9);
                }
            }
        }
    }

    #[test]
    fn iterating_comes_to_the_closed_form_from_either_side() {
        for metal in [Metal::Copper, Metal::Aluminum] {
            for insulation in RATINGS {
                for share in [0.0, 0.3, 0.8, 1.0, 1.2] {
                    let service = service(40.0, insulation, 100.0 * share, 100.0);
                    let closed = settled_temperature(metal, service).unwrap().0;
                    let table = table_resistance(Size::Awg6, metal);
                    let at = |t: f64| resistance_at(table, metal, Celsius(t)).unwrap().value;
                    let q = (insulation.celsius() - 30.0) * share * share;
                    for start in [-40.0, 140.0] {
                        let mut t: f64 = start;
                        for _ in 0..60 {
                            t = 40.0 + q * at(t) / at(insulation.celsius());
                        }
                        assert!((t - closed).abs() < 1e-9, "{metal:?} {insulation:?} {share}: {t} {closed}");
                    }
                }
            }
        }
    }

    #[test]
    fn below_the_rating_the_simple_law_is_the_warmer_and_above_it_the_cooler() {
        for percent in 1..=140 {
            let service = service(30.0, Rating::C75, f64::from(percent), 100.0);
            let simple = conductor_temperature(service).unwrap().0;
            let settled = settled_temperature(Metal::Copper, service).unwrap().0;
            match percent {
                100 => assert!((simple - settled).abs() < 1e-9),
                ..100 => assert!(settled < simple),
                _ => assert!(settled > simple),
            }
            // Warmer with every ampere.
            let more = conductor_temperature(Service { current: amperes(f64::from(percent) + 1.0), ..service });
            assert!(more.unwrap().0 > simple);
        }
    }

    #[test]
    fn cold_and_idle_a_conductor_has_the_ambient_and_resists_less_than_it_is_sized_with() {
        let idle = in_service(Size::Awg6, Metal::Copper, service(10.0, Rating::C75, 0.0, 65.0)).unwrap();
        assert_eq!(idle.temperature, Celsius(10.0));
        // 0.491 · (1 − 0.003 23 · 65) by hand.
        assert!((crate::quantity::in_ohms_per_kilofoot(idle.resistance) - 0.38791).abs() < 1e-5);
        assert!(idle.resistance < idle.at_75);
    }

    #[test]
    fn moving_a_resistance_there_and_back_leaves_it() {
        let known = table_resistance(Size::Awg2, Metal::Aluminum);
        let there = resistance_moved(known, Metal::Aluminum, Celsius(75.0), Celsius(-20.0)).unwrap();
        let back = resistance_moved(there, Metal::Aluminum, Celsius(-20.0), Celsius(75.0)).unwrap();
        assert!(((back / known).value - 1.0).abs() < 1e-12 && there < known);
    }

    #[test]
    fn arguments_outside_are_named() {
        let name = |service: Service| conductor_temperature(service).unwrap_err().argument;
        assert_eq!(name(service(95.0, Rating::C75, 1.0, 65.0)), "ambient");
        assert_eq!(name(service(30.0, Rating::C75, 98.0, 65.0)), "current");
        assert_eq!(name(service(30.0, Rating::C75, 1.0, f64::NAN)), "rated_at_30");
        let hot = in_service(Size::Awg6, Metal::Copper, service(85.0, Rating::C75, 97.0, 65.0));
        assert_eq!(hot.unwrap_err().argument, "temperature");
        assert_eq!(temperature_coefficient(Metal::Copper, Celsius(151.0)).unwrap_err().argument, "at");
        let moved = |from: f64, to: f64| {
            let known = table_resistance(Size::Awg2, Metal::Copper);
            resistance_moved(known, Metal::Copper, Celsius(from), Celsius(to)).unwrap_err().argument
        };
        assert_eq!([moved(-61.0, 20.0), moved(20.0, 151.0)], ["from", "to"]);
    }
}
