//! Fresh water between freezing and 60 °C, and the weight of the air above it.
//!
//! Water at a tenth of a megapascal; the pressure of a deep well makes it 0.05 % denser for each 10 bar, which is left
//! out. Dissolved salt is left out too: 1 g/l makes it 0.08 % denser.

use crate::error::OutsideRange;
use crate::quantity::{
    Celsius, DynamicViscosity, KinematicViscosity, Length, MassDensity, Pressure, kilograms_per_cubic_meter,
};
use uom::si::{dynamic_viscosity::pascal_second, length::meter, pressure::pascal};

/// Kelvins at 0 °C.
const ICE_POINT: f64 = 273.15;

/// What the sums need to know of the water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Water {
    /// Mass per volume.
    pub density: MassDensity,
    /// Viscosity over density.
    pub viscosity: KinematicViscosity,
    /// Pressure at which it boils.
    pub vapor_pressure: Pressure,
}

/// All properties of water at a temperature.
///
/// # Units
/// Temperature in degrees Celsius; the results typed.
/// # Range
/// 0 to 60 °C.
/// # Errors
/// [`OutsideRange`] names `temperature` (°C).
/// # Source
/// [`density`], [`dynamic_viscosity`], [`vapor_pressure`].
pub fn water(temperature: Celsius) -> Result<Water, OutsideRange> {
    let density = density(temperature)?;
    Ok(Water {
        density,
        viscosity: dynamic_viscosity(temperature)? / density,
        vapor_pressure: vapor_pressure(temperature)?,
    })
}

fn kelvins(temperature: Celsius) -> Result<f64, OutsideRange> {
    OutsideRange::check("temperature", temperature.0, 0.0, 60.0).map(|celsius| celsius + ICE_POINT)
}

/// Density of water: 1/ρ = (R T_r / p_0)(a_5 + Σ a_i α^n_i + Σ b_i β^m_i), with α = T_r/(593 − T), β = T_r/(T − 232).
///
/// # Units
/// Temperature in degrees Celsius; the result a density. Inside: kelvins, R = 461.518 05 J/(kg K), T_r = 10 K,
/// p_0 = 0.1 MPa.
/// # Range
/// 0 to 60 °C, 0.1 MPa; there within 0.0001 % of IAPWS-95.
/// # Errors
/// [`OutsideRange`] names `temperature` (°C).
/// # Source
/// [iapws-sr6-08] equation 2.
pub fn density(temperature: Celsius) -> Result<MassDensity, OutsideRange> {
    const A: [(f64, i32); 5] =
        [(6.744_584_46e3, 4), (-2.225_216_04e5, 5), (1.002_312_47e8, 7), (-1.635_521_18e9, 8), (8.322_996_58e9, 9)];
    const B: [(f64, i32); 6] = [
        (5.785_452_92e-3, 1),
        (-1.531_956_65e-2, 2),
        (3.113_378_59e-2, 3),
        (-4.235_462_41e-2, 4),
        (3.387_135_07e-2, 5),
        (-1.199_467_61e-2, 6),
    ];
    const A_5: f64 = 1.937_631_57e-2;
    let t = kelvins(temperature)?;
    let (alpha, beta) = (10.0 / (593.0 - t), 10.0 / (t - 232.0));
    let sum = |terms: &[(f64, i32)], base: f64| terms.iter().map(|(k, n)| k * base.powi(*n)).sum::<f64>();
    let volume = 461.518_05 * 10.0 / 1e5 * (A_5 + sum(&A, alpha) + sum(&B, beta));
    Ok(kilograms_per_cubic_meter(1.0 / volume))
}

/// Viscosity of water: μ = 10⁻⁶ Σ c_i (T/300 K)^d_i Pa·s.
///
/// # Units
/// Temperature in degrees Celsius; the result a dynamic viscosity.
/// # Range
/// 0 to 60 °C, 0.1 MPa; 1 % uncertain, and there within 0.01 % of the full formulation IAPWS R12-08.
/// # Errors
/// [`OutsideRange`] names `temperature` (°C).
/// # Source
/// [iapws-sr6-08] equation 7.
pub fn dynamic_viscosity(temperature: Celsius) -> Result<DynamicViscosity, OutsideRange> {
    const TERMS: [(f64, f64); 4] = [(280.68, -1.9), (511.45, -7.7), (61.131, -19.6), (0.459_03, -40.0)];
    let share = kelvins(temperature)? / 300.0;
    let sum: f64 = TERMS.iter().map(|(c, d)| c * share.powf(*d)).sum();
    Ok(DynamicViscosity::new::<pascal_second>(1e-6 * sum))
}

/// Vapor pressure of water: ln(p/p_c) = (T_c/T)(a_1 τ + a_2 τ^1.5 + a_3 τ³ + a_4 τ^3.5 + a_5 τ⁴ + a_6 τ^7.5), τ = 1 − T/T_c.
///
/// # Units
/// Temperature in degrees Celsius; the result an absolute pressure. Inside: T_c = 647.096 K, p_c = 22.064 MPa.
/// # Range
/// 0 to 60 °C; there within 0.01 % of IAPWS-95.
/// # Errors
/// [`OutsideRange`] names `temperature` (°C).
/// # Source
/// [iapws-sr1-86] equation 1.
pub fn vapor_pressure(temperature: Celsius) -> Result<Pressure, OutsideRange> {
    const TERMS: [(f64, f64); 6] = [
        (-7.859_517_83, 1.0),
        (1.844_082_59, 1.5),
        (-11.786_649_7, 3.0),
        (22.680_741_1, 3.5),
        (-15.961_871_9, 4.0),
        (1.801_225_02, 7.5),
    ];
    let share = kelvins(temperature)? / 647.096;
    let sum: f64 = TERMS.iter().map(|(a, n)| a * (1.0 - share).powf(*n)).sum();
    Ok(Pressure::new::<pascal>(22.064e6 * (sum / share).exp()))
}

/// Radius of the earth of the standard atmosphere, m.
pub(crate) const EARTH_RADIUS: f64 = 6_356_766.0;
/// Fall of temperature with height of the standard atmosphere, K/m.
const LAPSE: f64 = 0.0065;
/// Temperature at sea level of the standard atmosphere, K.
const SEA_LEVEL_KELVINS: f64 = 288.15;
/// The same over the fall with height, m.
pub(crate) const LAPSE_HEIGHT: f64 = SEA_LEVEL_KELVINS / LAPSE;
/// Exponent of the standard atmosphere, g M/(R L).
pub(crate) const BAROMETRIC_EXPONENT: f64 = crate::quantity::STANDARD_GRAVITY * 28.9644 / (8314.32 * LAPSE);

/// Pressure at sea level of the standard atmosphere.
pub(crate) fn sea_level() -> Pressure {
    Pressure::new::<pascal>(101_325.0)
}

/// Pressure of the standard atmosphere: p = p_0 (1 − L h/T_0)^(g M / R L), with the geopotential height h = r z/(r + z).
///
/// # Units
/// `altitude` above sea level; the result an absolute pressure. Inside: p_0 = 101,325 Pa, T_0 = 288.15 K, L = 6.5 K/km,
/// M = 28.9644 kg/kmol, R = 8,314.32 J/(kmol K), r = 6,356.766 km.
/// # Range
/// −500 to 11,000 m. Weather moves the true pressure by some 3 %.
/// # Errors
/// [`OutsideRange`] names `altitude` (m).
/// # Source
/// [us-standard-atmosphere-1976], the same as ISO 2533 to 11 km.
/// # Example
/// ```
/// # use wellwright_core::{quantity::*, water::properties::*};
/// assert!((in_psi(barometric_pressure(meters(1400.0))?) - 12.416).abs() < 0.0005);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn barometric_pressure(altitude: Length) -> Result<Pressure, OutsideRange> {
    let z = OutsideRange::check("altitude", altitude.get::<meter>(), -500.0, 11_000.0)?;
    let height = EARTH_RADIUS * z / (EARTH_RADIUS + z);
    Ok(sea_level() * (1.0 - LAPSE * height / SEA_LEVEL_KELVINS).powf(BAROMETRIC_EXPONENT))
}
