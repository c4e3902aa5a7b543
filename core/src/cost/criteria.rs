//! How a pumping plant does beside the Nebraska pumping plant performance criteria: the water horsepower-hours that a
//! good plant gets of a unit of energy.

use crate::error::OutsideRange;
use crate::quantity::{
    Length, MassDensity, Power, Pressure, Volume, acres, in_horsepower, in_kilograms_per_cubic_meter, inches,
    standard_gravity, watts,
};

/// Seconds in an hour: work over them is the power that does it in an hour.
const SECONDS_IN_AN_HOUR: f64 = 3600.0;

/// What turns the pump.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Energy {
    /// Electricity, by the kilowatt-hour.
    Electric,
    /// Diesel fuel, by the US gallon.
    Diesel,
}

impl Energy {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Electric, Self::Diesel];

    /// What a plant that meets the criteria gets of a unit of energy.
    ///
    /// # Units
    /// Water horsepower-hours for a kilowatt-hour or for a gallon.
    /// # Range
    /// A pump of 75 % efficiency. Other fuels are not held.
    /// # Source
    /// [nebraska-criteria].
    #[must_use]
    pub fn criterion(self) -> f64 {
        match self {
            Self::Electric => 0.885,
            Self::Diesel => 12.5,
        }
    }
}

/// Work that lifting water takes up: ρ g V H.
///
/// # Units
/// `density` of the water, `volume`, `head`; the result water horsepower-hours, of 745.7 Wh.
/// # Range
/// Density 500 to 1,500 kg/m³; volume 0 to 10⁹ m³; head 0 to 10 km.
/// # Errors
/// [`OutsideRange`] names `density`, `volume` or `head` (SI units).
/// # Source
/// First principles; standard gravity of [nist-sp-811].
pub fn water_horsepower_hours(density: MassDensity, volume: Volume, head: Length) -> Result<f64, OutsideRange> {
    let density = OutsideRange::check("density", in_kilograms_per_cubic_meter(density), 500.0, 1500.0)?;
    let volume = OutsideRange::check("volume", volume.value, 0.0, 1e9)?;
    let head = OutsideRange::check("head", head.value, 0.0, 1e4)?;
    let joules = density * standard_gravity().value * volume * head;
    Ok(in_horsepower(watts(joules / SECONDS_IN_AN_HOUR)))
}

/// What a plant gets of a unit of energy: P_water over the energy that it uses in an hour.
///
/// # Units
/// `water` a power; `hourly` kilowatt-hours or gallons an hour; the result water horsepower-hours for one of them.
/// # Range
/// Water power 0 to 10 MW; hourly use 10⁻⁶ to 10⁶.
/// # Errors
/// [`OutsideRange`] names `water` (W) or `hourly`.
/// # Source
/// [nebraska-criteria].
pub fn performance(water: Power, hourly: f64) -> Result<f64, OutsideRange> {
    let water = OutsideRange::check("water", water.value, 0.0, 1e7)?;
    let hourly = OutsideRange::check("hourly", hourly, 1e-6, 1e6)?;
    Ok(in_horsepower(watts(water)) / hourly)
}

/// A plant's performance over the criterion.
///
/// # Units
/// `performance` water horsepower-hours for a unit of energy; the result a share, 1 where the criteria are met and more
/// where they are passed.
/// # Range
/// Performance 0 to 10⁴.
/// # Errors
/// [`OutsideRange`] names `performance`.
/// # Source
/// [nebraska-criteria].
pub fn rating(energy: Energy, performance: f64) -> Result<f64, OutsideRange> {
    Ok(OutsideRange::check("performance", performance, 0.0, 1e4)? / energy.criterion())
}

/// Efficiency from the meter to the water at a performance of an electric plant.
///
/// # Units
/// `performance` water horsepower-hours for a kilowatt-hour; the result a share.
/// # Range
/// Performance 0 to 1000/745.7, where nothing would be lost.
/// # Errors
/// [`OutsideRange`] names `performance`.
/// # Source
/// Definition of efficiency.
pub fn electric_efficiency(performance: f64) -> Result<f64, OutsideRange> {
    let most = in_horsepower(watts(1000.0));
    Ok(OutsideRange::check("performance", performance, 0.0, most)? / most)
}

/// Energy that a plant of a rating takes for water: ρ g V H over rating and criterion.
///
/// # Units
/// `rating` a share, 1 at the criteria; the rest as [`water_horsepower_hours`]; the result kilowatt-hours or gallons.
/// # Range
/// Rating 0.01 to 2; the rest as [`water_horsepower_hours`].
/// # Errors
/// [`OutsideRange`] names `rating`, or as [`water_horsepower_hours`].
/// # Source
/// [nebraska-criteria].
pub fn energy_for(
    energy: Energy,
    rating: f64,
    density: MassDensity,
    volume: Volume,
    head: Length,
) -> Result<f64, OutsideRange> {
    let rating = OutsideRange::check("rating", rating, 0.01, 2.0)?;
    Ok(water_horsepower_hours(density, volume, head)? / (rating * energy.criterion()))
}

/// Energy that a plant of a rating takes for an inch of water on an acre, by its lift and the pressure at the pump.
///
/// # Units
/// `lift` from the water up to the pump's outlet, `pressure` there; the rest as [`energy_for`].
/// # Range
/// Pressure 0 to 10 MPa; lift 0 to 10 km, and no more together with the head of the pressure; the rest as
/// [`energy_for`].
/// # Errors
/// [`OutsideRange`] names `lift` (m), `pressure` (Pa), `head` (m, both together), or as [`energy_for`].
/// # Source
/// [unl-fuel-table].
/// # Example
/// ```
/// # use wellwright_core::{cost::criteria::*, quantity::*};
/// let water = kilograms_per_cubic_meter(999.0);
/// let gallons = energy_per_acre_inch(Energy::Diesel, 1.0, water, feet(125.0), psi(35.0))?;
/// assert!((gallons - 1.88).abs() < 0.005);
/// # Ok::<(), wellwright_core::error::OutsideRange>(())
/// ```
pub fn energy_per_acre_inch(
    energy: Energy,
    rating: f64,
    density: MassDensity,
    lift: Length,
    pressure: Pressure,
) -> Result<f64, OutsideRange> {
    OutsideRange::check("density", in_kilograms_per_cubic_meter(density), 500.0, 1500.0)?;
    OutsideRange::check("lift", lift.value, 0.0, 1e4)?;
    OutsideRange::check("pressure", pressure.value, 0.0, 1e7)?;
    let head = lift + pressure / (density * standard_gravity());
    energy_for(energy, rating, density, acres(1.0) * inches(1.0), head)
}

/// Energy that a plant would save if it met the criteria: E (1 − rating).
///
/// # Units
/// `used` energy in any unit, and so the result; below zero where the plant does better than the criteria. `rating` a
/// share.
/// # Range
/// Energy 0 to 10¹²; rating 0 to 2.
/// # Errors
/// [`OutsideRange`] names `used` or `rating`.
/// # Source
/// The same water takes E · rating at the criteria; definition of the rating.
pub fn potential_saving(used: f64, rating: f64) -> Result<f64, OutsideRange> {
    let used = OutsideRange::check("used", used, 0.0, 1e12)?;
    Ok(used * (1.0 - OutsideRange::check("rating", rating, 0.0, 2.0)?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{feet, gallons, horsepower, kilograms_per_cubic_meter, psi};

    // Definitions: a horsepower lifts 33,000 ft·lb in a minute, within the rounding of 745.7 W.
    #[test]
    fn a_horsepower_hour_is_33_000_pounds_lifted_a_foot_in_each_of_60_minutes() {
        let density = kilograms_per_cubic_meter(1000.0);
        let pounds_in_a_gallon = 3.785_411_784 / 0.453_592_37;
        let found = water_horsepower_hours(density, gallons(1000.0 / pounds_in_a_gallon), feet(1980.0)).unwrap();
        assert!((found - 1.0).abs() < 1e-6, "{found}");
    }

    #[test]
    fn a_plant_at_the_criteria_has_nothing_to_save() {
        for energy in Energy::ALL {
            let hourly = 10.0 / energy.criterion();
            let share = rating(energy, performance(horsepower(10.0), hourly).unwrap()).unwrap();
            assert!((share - 1.0).abs() < 1e-12);
            assert!(potential_saving(5000.0, share).unwrap().abs() < 1e-8);
        }
        assert!((potential_saving(5000.0, 0.77).unwrap() - 1150.0).abs() < 1e-9);
        assert!((potential_saving(5000.0, 1.1).unwrap() + 500.0).abs() < 1e-9);
    }

    // What is saved is what the plant uses less what it would use at the criteria.
    #[test]
    fn the_saving_is_the_difference() {
        let (water, volume, head) = (kilograms_per_cubic_meter(998.0), gallons(1e6), feet(240.0));
        let [now, then] = [0.7, 1.0].map(|share| energy_for(Energy::Electric, share, water, volume, head).unwrap());
        assert!((potential_saving(now, 0.7).unwrap() - (now - then)).abs() < 1e-9);
        assert!((electric_efficiency(0.885).unwrap() - 0.659_944_5).abs() < 1e-7);
    }

    #[test]
    fn arguments_outside_are_named() {
        let (water, volume, head) = (kilograms_per_cubic_meter(998.0), gallons(1.0), feet(1.0));
        let lifted = |density, volume, head| water_horsepower_hours(density, volume, head).unwrap_err().argument;
        assert_eq!(lifted(kilograms_per_cubic_meter(2.0), volume, head), "density");
        assert_eq!(lifted(water, gallons(f64::NAN), head), "volume");
        assert_eq!(lifted(water, volume, feet(-1.0)), "head");
        assert_eq!(performance(horsepower(-1.0), 1.0).unwrap_err().argument, "water");
        assert_eq!(performance(horsepower(1.0), 0.0).unwrap_err().argument, "hourly");
        assert_eq!(rating(Energy::Diesel, f64::NAN).unwrap_err().argument, "performance");
        assert_eq!(electric_efficiency(1.4).unwrap_err().argument, "performance");
        assert_eq!(energy_for(Energy::Diesel, 0.0, water, volume, head).unwrap_err().argument, "rating");
        let inch = |lift, pressure| energy_per_acre_inch(Energy::Diesel, 1.0, water, lift, pressure).unwrap_err();
        assert_eq!(inch(feet(-1.0), psi(1.0)).argument, "lift");
        assert_eq!(inch(feet(1.0), psi(-1.0)).argument, "pressure");
        assert_eq!(inch(feet(32_800.0), psi(500.0)).argument, "head");
        assert_eq!(potential_saving(-1.0, 1.0).unwrap_err().argument, "used");
        assert_eq!(potential_saving(1.0, 2.1).unwrap_err().argument, "rating");
    }
}
