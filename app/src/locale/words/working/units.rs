//! How many of one unit make another.

use super::Text;
use wellwright_core::papers::Conversion;
use wellwright_core::quantity::UnitSystem;
use wellwright_core::quantity::UnitSystem::{Si, Us};

/// Names of what makes units agree.
pub struct Units {
    pub of: fn(Conversion, UnitSystem) -> Text,
}

/// US English.
pub const ENGLISH: Units = Units {
    of: |conversion, system| match (conversion, system) {
        (Conversion::Diameter, Us) => "Inches in a foot",
        (Conversion::Diameter, Si) => "Millimeters in a meter",
        (Conversion::TradeDiameter, Us) => "Inches in an inch",
        (Conversion::TradeDiameter, Si) => "Millimeters in an inch",
        (Conversion::Flow, Us) => "Gallons a minute in a cubic foot a second",
        (Conversion::Flow, Si) => "Liters a second in a cubic meter a second",
        (Conversion::TradeFlow, Us) => "Gallons a minute in a gallon a minute",
        (Conversion::TradeFlow, Si) => "Gallons a minute in a liter a second",
        (Conversion::DailyFlow, Us) => "Gallons a day in a gallon a minute",
        (Conversion::DailyFlow, Si) => "Cubic meters a day in a liter a second",
        (Conversion::Viscosity, Us) => "Square millimeters in a square foot",
        (Conversion::Viscosity, Si) => "Square millimeters in a square meter",
        (Conversion::Pressure, Us) => "Square inches in a square foot",
        (Conversion::Pressure, Si) => "Pascals in a kilopascal",
        (Conversion::Power, Us) => "Foot-pounds a second in a horsepower of 745.7\u{a0}W",
        (Conversion::Power, Si) => "Watts in a kilowatt",
        (Conversion::Watts, Us) => "Watts in a horsepower",
        (Conversion::Watts, Si) => "Watts in a kilowatt",
        (Conversion::Volume, Us) => "Gallons in a cubic foot",
        (Conversion::Volume, Si) => "Cubic meters in a cubic meter",
        (Conversion::Spread, Us) => "Gallons in an inch of water on an acre",
        (Conversion::Spread, Si) => "Liters in a millimeter of water on a hectare",
        (Conversion::Hour, Us) => "Minutes in an hour",
        (Conversion::Hour, Si) => "Seconds in an hour",
        (Conversion::Gravity, Us) => "Standard gravity, ft/s²",
        (Conversion::Gravity, Si) => "Standard gravity, m/s²",
        (Conversion::Warming, Us) => "Fahrenheit degrees in a kelvin",
        (Conversion::Warming, Si) => "Kelvins in a kelvin",
        (Conversion::HundredMeters, Us) => "Feet in a hundred meters",
        (Conversion::HundredMeters, Si) => "Meters in a hundred meters",
        (Conversion::Horsepower, Us) => "Horsepower in a horsepower",
        (Conversion::Horsepower, Si) => "Horsepower in a kilowatt",
        (Conversion::Kilofoot, Us) => "Meters in a thousand feet",
        (Conversion::Kilofoot, Si) => "Meters in a kilometer",
    },
};

/// Spanish.
pub const SPANISH: Units = Units {
    of: |conversion, system| match (conversion, system) {
        (Conversion::Diameter, Us) => "Pulgadas en un pie",
        (Conversion::Diameter, Si) => "Milímetros en un metro",
        (Conversion::TradeDiameter, Us) => "Pulgadas en una pulgada",
        (Conversion::TradeDiameter, Si) => "Milímetros en una pulgada",
        (Conversion::Flow, Us) => "Galones por minuto en un pie cúbico por segundo",
        (Conversion::Flow, Si) => "Litros por segundo en un metro cúbico por segundo",
        (Conversion::TradeFlow, Us) => "Galones por minuto en un galón por minuto",
        (Conversion::TradeFlow, Si) => "Galones por minuto en un litro por segundo",
        (Conversion::DailyFlow, Us) => "Galones al día en un galón por minuto",
        (Conversion::DailyFlow, Si) => "Metros cúbicos al día en un litro por segundo",
        (Conversion::Viscosity, Us) => "Milímetros cuadrados en un pie cuadrado",
        (Conversion::Viscosity, Si) => "Milímetros cuadrados en un metro cuadrado",
        (Conversion::Pressure, Us) => "Pulgadas cuadradas en un pie cuadrado",
        (Conversion::Pressure, Si) => "Pascales en un kilopascal",
        (Conversion::Power, Us) => "Pie-libras por segundo en un caballo de 745.7\u{a0}W",
        (Conversion::Power, Si) => "Watts en un kilowatt",
        (Conversion::Watts, Us) => "Watts en un caballo de fuerza",
        (Conversion::Watts, Si) => "Watts en un kilowatt",
        (Conversion::Volume, Us) => "Galones en un pie cúbico",
        (Conversion::Volume, Si) => "Metros cúbicos en un metro cúbico",
        (Conversion::Spread, Us) => "Galones en una pulgada de agua sobre un acre",
        (Conversion::Spread, Si) => "Litros en un milímetro de agua sobre una hectárea",
        (Conversion::Hour, Us) => "Minutos en una hora",
        (Conversion::Hour, Si) => "Segundos en una hora",
        (Conversion::Gravity, Us) => "Gravedad normal, ft/s²",
        (Conversion::Gravity, Si) => "Gravedad normal, m/s²",
        (Conversion::Warming, Us) => "Grados Fahrenheit en un kelvin",
        (Conversion::Warming, Si) => "Kelvins en un kelvin",
        (Conversion::HundredMeters, Us) => "Pies en cien metros",
        (Conversion::HundredMeters, Si) => "Metros en cien metros",
        (Conversion::Horsepower, Us) => "Caballos de fuerza en un caballo de fuerza",
        (Conversion::Horsepower, Si) => "Caballos de fuerza en un kilowatt",
        (Conversion::Kilofoot, Us) => "Metros en mil pies",
        (Conversion::Kilofoot, Si) => "Metros en un kilómetro",
    },
};
