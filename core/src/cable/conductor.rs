//! Conductor geometry, resistance and mass, from first principles and from table 8.

use crate::error::OutsideRange;
use crate::quantity::{Area, Celsius, ElectricalResistance, Length, MassPerLength, OhmsPerLength, inches};
use crate::standards::conductor::{Metal, Size, TABLE_8_AT};
use core::f64::consts::FRAC_PI_4;
use uom::si::area::square_millimeter;
use uom::si::electrical_resistance::ohm;
use uom::si::f64::Mass;
use uom::si::length::meter;
use uom::si::mass::kilogram;

/// Length of wire in a length of class B concentric strand: 2 % lay (ASTM B8).
pub const STRAND_LAY: f64 = 1.02;

/// What the resistance and mass of a metal follow from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Properties {
    /// Resistivity at 20 °C, Ω·mm²/m.
    pub resistivity: f64,
    /// Temperature coefficient of resistance at 20 °C, 1/K.
    pub coefficient_20: f64,
    /// The coefficient that NEC chapter 9 table 8 note 2 gives at 75 °C, 1/K.
    pub coefficient_75: f64,
    /// Density, g/cm³.
    pub density: f64,
}

/// Copper: International Annealed Copper Standard, 1/58 Ω·mm²/m and 0.003 93 /K (IEC 60028); density 8.89 g/cm³ (ASTM B3).
pub const COPPER: Properties =
    Properties { resistivity: 1.0 / 58.0, coefficient_20: 0.003_93, coefficient_75: 0.003_23, density: 8.89 };

/// Aluminum 1350-H19: 61.0 % IACS and 0.004 03 /K at 20 °C, density 2.705 g/cm³ (ASTM B230, from memory).
pub const ALUMINUM: Properties =
    Properties { resistivity: 1.0 / 58.0 / 0.61, coefficient_20: 0.004_03, coefficient_75: 0.003_30, density: 2.705 };

/// The properties of a metal.
///
/// # Units
/// See [`Properties`].
/// # Range
/// Both metals, any size.
/// # Source
/// [iec-60028], [astm-b230], [nec-2023-ch9-t8].
#[must_use]
pub fn properties(metal: Metal) -> Properties {
    match metal {
        Metal::Copper => COPPER,
        Metal::Aluminum => ALUMINUM,
    }
}

/// Diameter of a solid wire of American Wire Gauge `n`.
///
/// d = 0.005 in · 92^((36 − n)/39); gauges 1/0 to 4/0 are n = 0 to −3.
///
/// # Units
/// `n` is the gauge number; the result is a length.
/// # Range
/// −3 ≤ n ≤ 40.
/// # Errors
/// [`OutsideRange`] names `n` and its limits.
/// # Source
/// [astm-b258].
/// # Example
/// ```
/// # use wellwright_core::cable::conductor::awg_diameter;
/// let d = awg_diameter(10)?.get::<uom::si::length::inch>();
/// assert!((d - 0.1019).abs() < 5e-5);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn awg_diameter(n: i32) -> Result<Length, OutsideRange> {
    let n = OutsideRange::check("n", f64::from(n), -3.0, 40.0)?;
    Ok(inches(0.005 * 92f64.powf((36.0 - n) / 39.0)))
}

/// Cross-section of a round solid wire: A = π d²/4.
///
/// # Units
/// `diameter` a length; the result an area.
/// # Range
/// Any diameter.
/// # Source
/// Geometry.
#[must_use]
pub fn round_area(diameter: Length) -> Area {
    FRAC_PI_4 * diameter * diameter
}

/// Metal area of a listed size from its definition: the gauge rule for AWG, the name itself for kcmil.
///
/// # Units
/// The result is an area.
/// # Range
/// 14 AWG to 500 kcmil. Within 0.15 % of the areas that table 8 prints rounded.
/// # Source
/// [astm-b258]; one kcmil is a thousand circular mils by definition.
#[must_use]
pub fn nominal_area(size: Size) -> Area {
    let gauge = match size {
        Size::Awg14 => 14,
        Size::Awg12 => 12,
        Size::Awg10 => 10,
        Size::Awg8 => 8,
        Size::Awg6 => 6,
        Size::Awg4 => 4,
        Size::Awg3 => 3,
        Size::Awg2 => 2,
        Size::Awg1 => 1,
        Size::Awg1_0 => 0,
        Size::Awg2_0 => -1,
        Size::Awg3_0 => -2,
        Size::Awg4_0 => -3,
        Size::Kcmil250 | Size::Kcmil300 | Size::Kcmil350 | Size::Kcmil400 | Size::Kcmil500 => {
            return size.row().area();
        }
    };
    awg_diameter(gauge).map_or_else(|_| size.row().area(), round_area)
}

/// Direct-current resistance per length of a conductor, from its metal and area.
///
/// R = ρ₂₀ · lay/A · (1 + α₂₀ (T − 20 °C))
///
/// # Units
/// `area` the metal's cross-section; `lay` the wire length per strand length, dimensionless (1 for solid wire,
/// [`STRAND_LAY`] for class B strand); `temperature` of the conductor in °C; the result ohms per length.
/// # Range
/// −60 to 150 °C, where the linear law holds; 1 ≤ lay ≤ 1.1; area above 0.
/// # Errors
/// [`OutsideRange`] names `temperature` (°C), `lay` or `area` (mm²).
/// # Source
/// [iec-60028], [astm-b230], lay [astm-b8]. Within 0.5 % of NEC chapter 9 table 8 at 75 °C for every size listed there.
pub fn resistance_from_geometry(
    metal: Metal,
    area: Area,
    lay: f64,
    temperature: Celsius,
) -> Result<OhmsPerLength, OutsideRange> {
    let t = OutsideRange::check("temperature", temperature.0, -60.0, 150.0)?;
    let lay = OutsideRange::check("lay", lay, 1.0, 1.1)?;
    let square_mm = OutsideRange::check("area", area.get::<square_millimeter>(), 1e-6, 1e6)?;
    let p = properties(metal);
    let per_meter = p.resistivity * lay / square_mm * (1.0 + p.coefficient_20 * (t - 20.0));
    Ok(ElectricalResistance::new::<ohm>(per_meter) / Length::new::<meter>(1.0))
}

/// Resistance at another temperature, from the table's value at 75 °C.
///
/// R₂ = R₁ · (1 + α₇₅ (T − 75 °C)), α₇₅ = 0.003 23 copper, 0.003 30 aluminum
///
/// # Units
/// `at_75` ohms per length; `temperature` °C; the result ohms per length.
/// # Range
/// −60 to 150 °C; `at_75` to 1,000 Ω/m.
/// # Errors
/// [`OutsideRange`] names `temperature` (°C) or `at_75` (Ω/m).
/// # Source
/// [nec-2023-ch9-t8] note 2.
pub fn resistance_at(at_75: OhmsPerLength, metal: Metal, temperature: Celsius) -> Result<OhmsPerLength, OutsideRange> {
    let t = OutsideRange::check("temperature", temperature.0, -60.0, 150.0)?;
    OutsideRange::check("at_75", at_75.value, 0.0, 1e3)?;
    Ok(at_75 * (1.0 + properties(metal).coefficient_75 * (t - TABLE_8_AT.0)))
}

/// Resistance of a listed stranded conductor at 75 °C, as the table prints it: the value used for sizing.
///
/// # Units
/// The result is ohms per length.
/// # Range
/// 14 AWG to 500 kcmil.
/// # Source
/// [nec-2023-ch9-t8].
#[must_use]
pub fn table_resistance(size: Size, metal: Metal) -> OhmsPerLength {
    size.row().resistance(metal)
}

/// Mass of bare metal per length: m = A · density · lay.
///
/// # Units
/// `area` an area; `lay` dimensionless; the result a mass per length.
/// # Range
/// Area ≥ 0, lay ≥ 1. Table 8 area in circular mils gives 0.003 027 lb per foot and kcmil before lay for copper.
/// # Source
/// Density of copper [astm-b3], of aluminum [astm-b230]; lay [astm-b8].
#[must_use]
pub fn metal_mass(metal: Metal, area: Area, lay: f64) -> MassPerLength {
    let kilograms_per_meter = area.get::<square_millimeter>() * properties(metal).density * lay * 1e-3;
    Mass::new::<kilogram>(kilograms_per_meter) / Length::new::<meter>(1.0)
}
