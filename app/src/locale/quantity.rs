//! Quantities with their units, as people write them.

use super::currency::{named, per, sign};
use super::language::decimals;
use super::number::{NO_BREAK, figure, figure_of, grouped, plain};
use super::words;
use wellwright_core::cable::lead::Conductor;
use wellwright_core::quantity::{
    ElectricCurrent, Entry, Kind, Length, Mass, Money, Power, Unit, UnitSystem, in_amperes, in_feet, in_horsepower,
    in_pounds, in_watts,
};
use wellwright_core::standards::conductor::Size;

/// A figure and its unit, to be set side by side.
#[derive(Debug, Clone, PartialEq)]
pub struct Shown {
    /// The figure.
    pub figure: String,
    /// The unit, empty for a plain number and for money, whose sign or code stands in the figure.
    pub unit: &'static str,
    /// The number, to sort and to copy by.
    pub value: f64,
    decimals: usize,
}

impl Shown {
    /// Figure and unit in one unbroken text.
    #[must_use]
    pub fn text(&self) -> String {
        match self.unit {
            "" => self.figure.clone(),
            unit => match per(unit) {
                Some(per) => format!("{}{}{per}", sign(), cents(&self.figure)),
                None => format!("{}{NO_BREAK}{unit}", self.figure),
            },
        }
    }

    /// The figure for another program, its unit apart.
    #[must_use]
    pub fn plain(&self) -> String {
        plain(self.value, self.decimals)
    }

    /// The unit, money's included.
    #[must_use]
    pub fn measure(&self) -> &'static str {
        if self.figure.contains(&sign()) { unit_name(Unit::Dollar) } else { self.unit }
    }
}

/// The unit's name beside a figure; money's in the currency in force.
#[must_use]
pub fn unit_name(unit: Unit) -> &'static str {
    named(of_unit(unit))
}

fn of_unit(unit: Unit) -> &'static str {
    match unit {
        Unit::Horsepower => "hp",
        Unit::Kilowatt => "kW",
        Unit::Ampere => "A",
        Unit::Foot => "ft",
        Unit::Meter => "m",
        Unit::DegreeCelsius => "°C",
        Unit::DegreeFahrenheit => "°F",
        Unit::Percent => "%",
        Unit::Dollar => "$",
        Unit::DollarPerFoot => "$/ft",
        Unit::DollarPerMeter => "$/m",
        Unit::DollarPerPound => "$/lb",
        Unit::DollarPerKilogram => "$/kg",
        Unit::Volt => "V",
        Unit::VoltPerFoot => "V/ft",
        Unit::VoltPerMeter => "V/m",
        Unit::Watt => "W",
        Unit::OhmPerKilofoot => "Ω/1000\u{a0}ft",
        Unit::OhmPerKilometer => "Ω/km",
        Unit::Pound => "lb",
        Unit::Kilogram => "kg",
        Unit::PoundPerFoot => "lb/ft",
        Unit::KilogramPerMeter => "kg/m",
        Unit::Kcmil => "kcmil",
        Unit::SquareMillimeter => "mm²",
        Unit::PoundPerKilofootKcmil => "lb/(1000\u{a0}ft·kcmil)",
        Unit::GramPerCubicCentimeter => "g/cm³",
        Unit::GallonPerMinute => "gpm",
        Unit::LiterPerSecond => "L/s",
        Unit::CubicMeterPerHour => "m³/h",
        Unit::Gallon => "gal",
        Unit::Liter => "L",
        Unit::GallonPerDay => "gal/d",
        Unit::LiterPerDay => "L/d",
        Unit::Hour => "h",
        Unit::Acre => "acre",
        Unit::Hectare => "ha",
        Unit::InchPerDay => "in/d",
        Unit::MillimeterPerDay => "mm/d",
        Unit::GallonPerMinutePerFoot => "gpm/ft",
        Unit::LiterPerSecondPerMeter => "L/(s·m)",
        Unit::GallonPerDayPerFoot => "gal/(d·ft)",
        Unit::SquareMeterPerDay => "m²/d",
        Unit::FootPerSquareGallonPerMinute => "ft/gpm²",
        Unit::SecondSquaredPerMeterToTheFifth => "s²/m⁵",
        Unit::Inch => "in",
        Unit::Millimeter => "mm",
        Unit::PoundPerSquareInch => "psi",
        Unit::Kilopascal => "kPa",
        Unit::Bar => "bar",
        Unit::Hertz => "Hz",
        Unit::FootPerSecond => "ft/s",
        Unit::MeterPerSecond => "m/s",
        Unit::SquareMillimeterPerSecond => "mm²/s",
        Unit::PoundPerCubicFoot => "lb/ft³",
        Unit::KilogramPerCubicMeter => "kg/m³",
        _ => of_power(unit),
    }
}

/// Names of the units of the supply, of pulses and of energy.
fn of_power(unit: Unit) -> &'static str {
    match unit {
        Unit::KilovoltAmpere => "kVA",
        Unit::Kiloampere => "kA",
        Unit::FahrenheitDegree => "°F",
        Unit::Kelvin => "°C",
        Unit::Ohm => "Ω",
        Unit::Microsecond => "µs",
        Unit::Megohm => "MΩ",
        Unit::Milliampere => "mA",
        Unit::Second => "s",
        Unit::FootPerMicrosecond => "ft/µs",
        Unit::MeterPerMicrosecond => "m/µs",
        Unit::DollarPerKilowattHour => "$/kWh",
        Unit::Year => words().fields.years,
        Unit::DollarPerKilowatt => "$/kW",
        Unit::DollarPerMonth => words().fields.per_month,
        Unit::Month => words().fields.months,
        Unit::PoundPerKilowattHour => "lb/kWh",
        Unit::KilogramPerKilowattHour => "kg/kWh",
        _ => "",
    }
}

/// The units in which a figure of a kind can be entered, the US one first.
#[must_use]
pub fn units_of(kind: Kind) -> Vec<Unit> {
    let mut units = vec![UnitSystem::Us.unit(kind), UnitSystem::Si.unit(kind)];
    units.dedup();
    units
}

/// An entry in the units of a system, to the digits that were typed.
#[must_use]
pub fn entry(entry: Entry, system: UnitSystem) -> Shown {
    let unit = system.unit(entry.unit.kind());
    entry_in(entry, unit)
}

/// An entry in a unit of its kind.
#[must_use]
pub fn entry_in(entry: Entry, unit: Unit) -> Shown {
    let value = entry.to(unit).unwrap_or(entry.value);
    // What was typed stands as typed; in another unit five digits are enough to the eye.
    let figure = if unit == entry.unit { figure(value) } else { figure_of(value, 5) };
    let decimals = figure.split_once(decimals().sign()).map_or(0, |(_, fraction)| fraction.len());
    Shown { figure, unit: unit_name(unit), value, decimals }
}

/// As [`entry`], figure and unit in one text.
#[must_use]
pub fn entry_text(given: Entry, system: UnitSystem) -> String {
    entry(given, system).text()
}

/// A plain quantity with a fixed number of decimals.
#[must_use]
pub fn shown(value: f64, decimals: usize, unit: &'static str) -> Shown {
    Shown { figure: grouped(value, decimals), unit, value, decimals }
}

/// A depth or a length along the lead, whole feet or tenths of a meter.
#[must_use]
pub fn depth(length: Length, system: UnitSystem) -> Shown {
    match system {
        UnitSystem::Us => shown(in_feet(length), 0, unit_name(Unit::Foot)),
        UnitSystem::Si => shown(length.value, 1, unit_name(Unit::Meter)),
    }
}

/// How deep a size reaches: rounded down, so that the depth that is shown is inside its reach.
#[must_use]
pub fn reach(length: Length, system: UnitSystem) -> Shown {
    let down = |value: f64, per_unit: f64| ((value * per_unit) * (1.0 + 1e-12) + 1e-9).floor() / per_unit;
    match system {
        UnitSystem::Us => shown(down(in_feet(length), 1.0), 0, unit_name(Unit::Foot)),
        UnitSystem::Si => shown(down(length.value, 10.0), 1, unit_name(Unit::Meter)),
    }
}

/// A length to order, in whole feet or meters: rounded up, so that it is never short.
#[must_use]
pub fn order(length: Entry, system: UnitSystem) -> Shown {
    let length = length.shown_in(system);
    shown((length.value - 1e-9).ceil(), 0, unit_name(length.unit))
}

/// A length to tenths, for differences that matter; whole ones without decimals.
#[must_use]
pub fn depth_in_tenths(length: Length, system: UnitSystem) -> Shown {
    let (value, unit) = match system {
        UnitSystem::Us => (in_feet(length), Unit::Foot),
        UnitSystem::Si => (length.value, Unit::Meter),
    };
    let whole = (value - value.round()).abs() < 0.05 && value.round() != 0.0;
    shown(value, usize::from(!whole), unit_name(unit))
}

/// A motor's power: horsepower as entered, kilowatts to tenths.
#[must_use]
pub fn power(power: Power, system: UnitSystem) -> Shown {
    match system {
        UnitSystem::Us => entry_in(Entry::new(in_horsepower(power), Unit::Horsepower), Unit::Horsepower),
        UnitSystem::Si => shown(in_watts(power) / 1000.0, 1, unit_name(Unit::Kilowatt)),
    }
}

/// A mass of metal, to tenths.
#[must_use]
pub fn mass(mass: Mass, system: UnitSystem) -> Shown {
    match system {
        UnitSystem::Us => shown(in_pounds(mass), 1, "lb"),
        UnitSystem::Si => shown(mass.value, 1, "kg"),
    }
}

/// A share in percent.
#[must_use]
pub fn percent(share: f64, decimals: usize) -> Shown {
    shown(100.0 * share, decimals, "%")
}

/// Money with this many decimals: `−$1,234`, or `−MXN 1,234` where that is the currency in force.
#[must_use]
pub fn money(amount: Money, decimals: usize) -> String {
    let text = grouped(amount.0.abs(), decimals);
    let nothing = text.bytes().all(|byte| matches!(byte, b'0' | b'.' | b','));
    let minus = if amount.0 < 0.0 && !nothing { "\u{2212}" } else { "" };
    format!("{minus}{}{text}", sign())
}

/// Money with one decimal gets its second.
fn cents(figure: &str) -> String {
    match figure.split_once(decimals().sign()) {
        Some((_, fraction)) if fraction.len() == 1 => format!("{figure}0"),
        _ => figure.to_owned(),
    }
}

/// The result of a working: as [`measured`], to four digits.
#[must_use]
pub fn result(value: Entry) -> Shown {
    if value.unit == Unit::Dollar { measured(value) } else { in_digits(value, 4) }
}

/// A figure of a working: money in cents, the rest to seven digits, so that the sums come out as shown.
#[must_use]
pub fn measured(value: Entry) -> Shown {
    if value.unit == Unit::Dollar {
        return money_shown(Money(value.value), 2);
    }
    in_digits(value, 7)
}

/// A current, to tenths.
#[must_use]
pub fn amperes(current: ElectricCurrent) -> Shown {
    shown(in_amperes(current), 1, unit_name(Unit::Ampere))
}

/// A figure to this many digits.
#[must_use]
pub fn in_digits(value: Entry, digits: i32) -> Shown {
    let figure = figure_of(value.value, digits);
    let decimals = figure.split_once(decimals().sign()).map_or(0, |(_, fraction)| fraction.len());
    Shown { figure, unit: unit_name(value.unit), value: value.value, decimals }
}

/// Money as a figure of a table.
#[must_use]
pub fn money_shown(amount: Money, decimals: usize) -> Shown {
    Shown { figure: money(amount, decimals), unit: "", value: amount.0, decimals }
}

/// Decimals that a sum and its difference need so that the rounded figures add up on the screen: 0, else 2.
#[must_use]
pub fn money_alike(larger: Money, smaller: Money) -> usize {
    let difference = (larger - smaller).0.round();
    if (larger.0.round() - smaller.0.round() - difference).abs() < 0.5 { 0 } else { 2 }
}

/// A size with its gauge: `6 AWG`, `250 kcmil`.
#[must_use]
pub fn lead_size(size: Size) -> String {
    format!("{}{NO_BREAK}{}", size.designation(), size.gauge())
}

/// Phase conductors of a lead: `6 AWG`, or `2 sets of 4/0 AWG`.
#[must_use]
pub fn conductor(conductor: Conductor) -> String {
    let size = lead_size(conductor.size);
    if conductor.sets > 1 { (words().answer.sets_of)(conductor.sets, &size) } else { size }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn money_has_its_sign_before_the_currency() {
        assert_eq!(money(Money(-1445.91), 0), "\u{2212}$1,446");
        assert_eq!(money(Money(-0.3), 0), "$0");
        assert_eq!(money(Money(2254.9468), 2), "$2,254.95");
    }

    #[test]
    fn cents_show_only_where_dollars_would_not_add_up() {
        assert_eq!(money_alike(Money(2254.95), Money(809.04)), 0);
        assert_eq!(money_alike(Money(100.5), Money(50.4)), 2); // 101 − 50 ≠ 50
    }

    #[test]
    fn an_entry_shows_in_either_system_and_never_changes() {
        let typed = Entry::new(620.0, Unit::Foot);
        assert_eq!(entry_text(typed, UnitSystem::Us), "620\u{a0}ft");
        assert_eq!(entry_text(typed, UnitSystem::Si), "188.98\u{a0}m");
        assert_eq!(entry_text(Entry::new(0.8, Unit::One), UnitSystem::Us), "0.8");
    }
}
