//! Quantities of the supply and the ways, as people write them.

use super::quantity::{Shown, shown, unit_name};
use super::water::eased;
use wellwright_core::quantity::{
    Celsius, ElectricCurrent, ElectricPotential, Entry, Mass, Power, Unit, UnitSystem, in_amperes, in_kilovolt_amperes,
    in_volts, in_watts,
};

/// An apparent power.
#[must_use]
pub fn kilovolt_amperes(power: Power) -> Shown {
    eased(in_kilovolt_amperes(power), Unit::KilovoltAmpere)
}

/// The current of a fault.
#[must_use]
pub fn kiloamperes(current: ElectricCurrent) -> Shown {
    shown(in_amperes(current) / 1000.0, 1, unit_name(Unit::Kiloampere))
}

/// The rating of an overcurrent device, as it is marked.
#[must_use]
pub fn device(current: ElectricCurrent) -> Shown {
    let value = in_amperes(current);
    let whole = (value - value.round()).abs() < 0.05;
    shown(value, usize::from(!whole), unit_name(Unit::Ampere))
}

/// Whole volts.
#[must_use]
pub fn peak_volts(potential: ElectricPotential) -> Shown {
    shown(in_volts(potential), 0, unit_name(Unit::Volt))
}

/// Volts to tenths.
#[must_use]
pub fn line_volts(potential: ElectricPotential) -> Shown {
    shown(in_volts(potential), 1, unit_name(Unit::Volt))
}

/// Whole degrees.
#[must_use]
pub fn temperature(temperature: Celsius, system: UnitSystem) -> Shown {
    let entry = Entry::new(temperature.0, Unit::DegreeCelsius).shown_in(system);
    shown(entry.value, 0, unit_name(entry.unit))
}

/// Input power, kilowatts to tenths.
#[must_use]
pub fn kilowatts(power: Power) -> Shown {
    shown(in_watts(power) / 1000.0, 1, unit_name(Unit::Kilowatt))
}

/// Energy, whole kilowatt-hours.
#[must_use]
pub fn energy(kilowatt_hours: f64) -> Shown {
    shown(kilowatt_hours, 0, "kWh")
}

/// Metal, whole pounds or kilograms.
#[must_use]
pub fn metal(mass: Mass, system: UnitSystem) -> Shown {
    let tenths = super::quantity::mass(mass, system);
    shown(tenths.value, 0, tenths.unit)
}
