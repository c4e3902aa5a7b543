//! What may turn out otherwise, as the values of a working name it.

use super::Text;
use wellwright_core::evaluate::range::Uncertain;

/// Names of what may turn out otherwise.
pub struct Spread {
    pub slope: fn(Uncertain) -> Text,
    pub expected: fn(Uncertain) -> Text,
    pub lowest: fn(Uncertain) -> Text,
    pub highest: fn(Uncertain) -> Text,
}

/// US English.
pub const ENGLISH: Spread = Spread {
    slope: |what| match what {
        Uncertain::Metal => "Metal that is saved, as it counts in the price",
        Uncertain::Equipment => "Saving on equipment",
        Uncertain::Hours => "Saving on energy over the years",
        Uncertain::Energy => "Energy saved over the years by its worth today, kWh",
    },
    expected: |what| match what {
        Uncertain::Metal => "Price of the metal that is counted",
        Uncertain::Equipment => "Price of the equipment over what is counted",
        Uncertain::Hours => "Hours over what is counted",
        Uncertain::Energy => "Price of energy that is counted",
    },
    lowest: |what| match what {
        Uncertain::Metal => "Lowest price of the metal",
        Uncertain::Equipment => "Its lowest",
        Uncertain::Hours => "Fewest hours over what is counted",
        Uncertain::Energy => "Lowest price of energy",
    },
    highest: |what| match what {
        Uncertain::Metal => "Highest price of the metal",
        Uncertain::Equipment => "Its highest",
        Uncertain::Hours => "Most hours over what is counted",
        Uncertain::Energy => "Highest price of energy",
    },
};

/// Spanish.
pub const SPANISH: Spread = Spread {
    slope: |what| match what {
        Uncertain::Metal => "Metal que se ahorra, como cuenta en el precio",
        Uncertain::Equipment => "Ahorro en equipo",
        Uncertain::Hours => "Ahorro en energía a lo largo de los años",
        Uncertain::Energy => "Energía ahorrada en los años a valor presente, kWh",
    },
    expected: |what| match what {
        Uncertain::Metal => "Precio del metal que se cuenta",
        Uncertain::Equipment => "Precio del equipo sobre lo contado",
        Uncertain::Hours => "Horas sobre lo contado",
        Uncertain::Energy => "Precio de la energía que se cuenta",
    },
    lowest: |what| match what {
        Uncertain::Metal => "Precio más bajo del metal",
        Uncertain::Equipment => "El más bajo",
        Uncertain::Hours => "Menos horas sobre lo contado",
        Uncertain::Energy => "Precio más bajo de la energía",
    },
    highest: |what| match what {
        Uncertain::Metal => "Precio más alto del metal",
        Uncertain::Equipment => "El más alto",
        Uncertain::Hours => "Más horas sobre lo contado",
        Uncertain::Energy => "Precio más alto de la energía",
    },
};
