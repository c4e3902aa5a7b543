//! The cost page: the curve's choices, energy and its bill, how sure the saving is, what moves it most.

use super::Text;
use super::answer::volts;
use wellwright_core::evaluate::Whose;
use wellwright_core::evaluate::range::{Band, Uncertain};
use wellwright_core::job::Way;

/// Words of the page.
pub struct Cost {
    pub curve: Text,
    pub band_label: Text,
    pub band: fn(Band) -> Text,
    pub metal_slider: Text,
    pub stands_label: fn(Way) -> Text,
    pub beside: Text,
    pub beside_shown: fn(usize) -> String,
    pub beside_costs: fn(&str, &str) -> String,
    pub beside_against: fn(Way, &str) -> String,
    pub beside_even: fn(&str, Whose) -> String,
    pub beside_always: fn(Whose) -> Text,
    pub beside_same: Text,
    pub energy: Text,
    pub duty: Text,
    pub duty_hint: Text,
    pub duty_says: fn(&str, &str, &str) -> String,
    pub duty_fault: fn(usize, usize) -> String,
    pub duty_not_given: fn(&str) -> String,
    pub tariff: Text,
    pub ranges: Text,
    pub sure: Text,
    pub sure_hint: Text,
    pub range: fn(&str, &str, &str) -> String,
    pub range_of_years: fn(&str, &str, &str) -> String,
    pub range_wrong: fn(Text) -> String,
    pub uncertain: fn(Uncertain) -> Text,
    pub pays: fn(Way, &str, &str, &str) -> String,
    pub pays_discounted: fn(&str) -> String,
    pub never_discounted: Text,
    pub never_pays: fn(Way, &str, &str) -> String,
    pub loses_more: fn(Way, &str) -> String,
    pub ranks: Text,
    pub ranks_hint: Text,
    pub ranks_none: Text,
    pub working: Text,
    pub decides: Text,
    pub moves: fn(&str, &str) -> String,
    pub year: Text,
    pub year_hint: fn(&str) -> String,
    pub flow: Text,
    pub hours: Text,
    pub shaft: Text,
    pub lost_motor: Text,
    pub lost_lead: Text,
    pub lost_equipment: Text,
    pub lost_supply: Text,
    pub metered: Text,
    pub at_rating: Text,
    pub summary: Text,
    pub year_energy: Text,
    pub bill_energy: Text,
    pub bill_demand: Text,
    pub bill_standing: Text,
    pub bill: Text,
    pub volume: Text,
    pub performance: Text,
    pub criterion: Text,
    pub by_speed: Text,
    pub on_off: Text,
    pub carbon: Text,
    pub not_priced: Text,
}

/// US English.
pub const ENGLISH: Cost = Cost {
    curve: "The curve",
    band_label: "Band",
    band: |band| match band {
        Band::None => "None",
        Band::Metal => "Metal price",
        Band::Drop => "Allowed drop 3 to 5\u{a0}%",
    },
    metal_slider: "Slide the metal price",
    stands_label: |way| match way {
        Way::V240 => "Equipment at 240\u{a0}V",
        Way::V480 => "Equipment at 480\u{a0}V",
    },
    beside: "More ways along the curve",
    beside_shown: |count| if count == 0 { String::new() } else { format!("{count} shown") },
    beside_costs: |cost, depth| format!("{cost} at {depth}."),
    beside_against: |way, how| format!("Against {}: {how}", volts(way)),
    beside_even: |depths, below| {
        let then = match below {
            Whose::This => "cheaper",
            Whose::Other => "dearer",
        };
        format!("even at {depths}, {then} below.")
    },
    beside_always: |whose| match whose {
        Whose::This => "cheaper at every depth.",
        Whose::Other => "dearer at every depth.",
    },
    beside_same: "costs the same.",
    energy: "Energy",
    duty: "Duty of a year",
    duty_hint: "one line each: flow, hours; gpm unless a first line names units",
    duty_says: |rows, hours, volume| format!("{rows}, {hours}, {volume} of water"),
    duty_fault: |line, column| {
        format!(
            "Line {line}, cell {column} can’t be used: flow above zero, then hours; no more than 24 lines and 8,784 hours."
        )
    },
    duty_not_given: |flow| format!("The pump can’t give {flow}."),
    tariff: "Demand charge, season, CO₂",
    ranges: "How far prices and hours may move",
    sure: "How sure the saving is",
    sure_hint: "A thousand draws of metal price, equipment, hours and energy price between low and high, the same every time (Latin hypercube, triangles, seed 1). Eight of ten lie between the first and the last figure.",
    range: |low, middle, high| {
        format!(
            "480\u{a0}V saves between {low} and {high} installed, in eight of ten cases; half of them more than {middle}."
        )
    },
    range_of_years: |low, middle, high| {
        format!("Over the years between {low} and {high}; half of them more than {middle}.")
    },
    range_wrong: |what| format!("{what}: what is counted must lie between low and high."),
    uncertain: |what| match what {
        Uncertain::Metal => "Metal price",
        Uncertain::Equipment => "Equipment price",
        Uncertain::Hours => "Hours in a year",
        Uncertain::Energy => "Energy price",
    },
    pays: |way, more, saves, years| {
        let volts = volts(way);
        format!("{volts} costs {more} more installed and saves {saves} of energy a year: paid back in {years}.")
    },
    pays_discounted: |years| format!("With the discount rate, in {years}."),
    never_discounted: "With the discount rate, never.",
    never_pays: |way, more, costs| {
        let volts = volts(way);
        format!("{volts} costs {more} more installed and {costs} more for energy a year: it never pays back.")
    },
    loses_more: |way, watts| {
        let volts = volts(way);
        format!("The {volts} lead saves copper, not losses: it gives off {watts} more heat.")
    },
    ranks: "What moves the saving most",
    ranks_hint: "Each assumption alone at its likely low and high, the rest as they are.",
    ranks_none: "No assumption moves the saving by a dollar.",
    working: "Working it out…",
    decides: "a verdict turns on it",
    moves: |low, high| format!("{low} to {high}"),
    year: "A year, where the power goes",
    year_hint: |name| format!("By the way that the job goes by: {name}."),
    flow: "Flow",
    hours: "Hours run",
    shaft: "At the shaft",
    lost_motor: "Lost in the motor",
    lost_lead: "in the lead",
    lost_equipment: "in the equipment",
    lost_supply: "in the supply",
    metered: "At the meter",
    at_rating: "motor at its rating",
    summary: "The year in all",
    year_energy: "Energy",
    bill_energy: "Bill, energy",
    bill_demand: "Bill, demand",
    bill_standing: "Bill, monthly charges",
    bill: "Bill of the year",
    volume: "Water",
    performance: "Water horsepower-hours for a kWh",
    criterion: "Of the Nebraska criterion, 0.885",
    by_speed: "Same water, speed controlled",
    on_off: "Same water, on and off at full speed",
    carbon: "CO₂ of the year",
    not_priced: "Supply conductors count once the distance to the transformer is known.",
};

/// Spanish.
pub const SPANISH: Cost = Cost {
    curve: "La curva",
    band_label: "Franja",
    band: |band| match band {
        Band::None => "Ninguna",
        Band::Metal => "Precio del metal",
        Band::Drop => "Caída permitida 3 a 5\u{a0}%",
    },
    metal_slider: "Deslizar el precio del metal",
    stands_label: |way| match way {
        Way::V240 => "Equipo a 240\u{a0}V",
        Way::V480 => "Equipo a 480\u{a0}V",
    },
    beside: "Más formas sobre la curva",
    beside_shown: |count| if count == 0 { String::new() } else { format!("{count} a la vista") },
    beside_costs: |cost, depth| format!("{cost} a {depth}."),
    beside_against: |way, how| format!("Frente a {}: {how}", volts(way)),
    beside_even: |depths, below| {
        let then = match below {
            Whose::This => "más barata",
            Whose::Other => "más cara",
        };
        format!("igual a {depths}, {then} de ahí abajo.")
    },
    beside_always: |whose| match whose {
        Whose::This => "más barata a cualquier profundidad.",
        Whose::Other => "más cara a cualquier profundidad.",
    },
    beside_same: "cuesta lo mismo.",
    energy: "Energía",
    duty: "Régimen de un año",
    duty_hint: "una línea cada uno: caudal, horas; en gpm si la primera línea no dice las unidades",
    duty_says: |rows, hours, volume| format!("{rows}, {hours}, {volume} de agua"),
    duty_fault: |line, column| {
        format!(
            "Línea {line}, celda {column}: no se puede usar. Caudal mayor que cero, luego horas; a lo más 24 líneas y 8,784 horas."
        )
    },
    duty_not_given: |flow| format!("La bomba no puede dar {flow}."),
    tariff: "Demanda, temporada, CO₂",
    ranges: "Cuánto pueden cambiar precios y horas",
    sure: "Qué tan seguro es el ahorro",
    sure_hint: "Mil sorteos de precio del metal, equipo, horas y precio de la energía entre bajo y alto, los mismos cada vez (hipercubo latino, triangular, semilla 1). Ocho de cada diez quedan entre la primera y la última cifra.",
    range: |low, middle, high| {
        format!("480\u{a0}V ahorra entre {low} y {high} instalado, en ocho de diez casos; la mitad, más de {middle}.")
    },
    range_of_years: |low, middle, high| format!("En los años, entre {low} y {high}; la mitad, más de {middle}."),
    range_wrong: |what| format!("{what}: lo que se cuenta debe quedar entre bajo y alto."),
    uncertain: |what| match what {
        Uncertain::Metal => "Precio del metal",
        Uncertain::Equipment => "Precio del equipo",
        Uncertain::Hours => "Horas al año",
        Uncertain::Energy => "Precio de la energía",
    },
    pays: |way, more, saves, years| {
        let volts = volts(way);
        format!("{volts} cuesta {more} más instalado y ahorra {saves} de energía al año: se paga en {years}.")
    },
    pays_discounted: |years| format!("Con la tasa de descuento, en {years}."),
    never_discounted: "Con la tasa de descuento, nunca.",
    never_pays: |way, more, costs| {
        let volts = volts(way);
        format!("{volts} cuesta {more} más instalado y {costs} más de energía al año: nunca se paga.")
    },
    loses_more: |way, watts| {
        let volts = volts(way);
        format!("El cable de {volts} ahorra cobre, no pérdidas: disipa {watts} más.")
    },
    ranks: "Qué mueve más el ahorro",
    ranks_hint: "Cada supuesto solo, en su valor bajo y alto probable; lo demás como está.",
    ranks_none: "Ningún supuesto mueve el ahorro en un dólar.",
    working: "Calculando…",
    decides: "de él depende un veredicto",
    moves: |low, high| format!("{low} a {high}"),
    year: "Un año: a dónde va la potencia",
    year_hint: |name| format!("Según la opción del trabajo: {name}."),
    flow: "Caudal",
    hours: "Horas de marcha",
    shaft: "En la flecha",
    lost_motor: "Perdido en el motor",
    lost_lead: "en el cable",
    lost_equipment: "en el equipo",
    lost_supply: "en la alimentación",
    metered: "En el medidor",
    at_rating: "motor a plena carga",
    summary: "El año en total",
    year_energy: "Energía",
    bill_energy: "Recibo, energía",
    bill_demand: "Recibo, demanda",
    bill_standing: "Recibo, cargos fijos",
    bill: "Recibo del año",
    volume: "Agua",
    performance: "Caballos-hora de agua por kWh",
    criterion: "Del criterio de Nebraska, 0.885",
    by_speed: "La misma agua, con control de velocidad",
    on_off: "La misma agua, arranque y paro a plena velocidad",
    carbon: "CO₂ del año",
    not_priced: "Los conductores de alimentación se cuentan cuando se conoce la distancia al transformador.",
};
