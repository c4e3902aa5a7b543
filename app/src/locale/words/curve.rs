//! The points of a pump's curve as text: how they are told, what was read, why they can't be.

use super::Text;
use wellwright_core::pump::curve::Quantity;

/// Words of a curve.
pub struct Curve {
    pub hint: Text,
    pub read: fn(usize, &str) -> String,
    pub column: fn(Quantity, &str, bool) -> String,
    pub file: Text,
    pub demo: Text,
    pub demo_hint: Text,
    pub demo_names: [Text; 3],
    pub demo_none: Text,
    pub points: Text,
    pub in_liters: Text,
    pub in_cubic_meters: Text,
    pub clear: Text,
    pub at: fn(usize, usize, &str) -> String,
    pub no_points: Text,
    pub too_many: fn(usize) -> String,
    pub cells: fn(usize, usize) -> String,
    pub not_number: fn(&str) -> String,
    pub two_ways: fn(&str) -> String,
    pub unit: fn(&str) -> String,
    pub columns: Text,
    pub few: fn(usize) -> String,
    pub point: fn(usize, &str) -> String,
    pub figure: Text,
    pub flow_not_rising: Text,
    pub never_falls: Text,
    pub gap: Text,
    pub efficiency: Text,
    pub power_short: Text,
}

/// US English.
pub const ENGLISH: Curve = Curve {
    hint: "One point a line: flow, head, efficiency or power. Flow in gpm, head in ft, efficiency in %, unless a first line names the units.",
    read: |count, columns| format!("{count} points: {columns}"),
    column: |quantity, unit, told| {
        let name = match quantity {
            Quantity::Flow => "flow",
            Quantity::Head => "head",
            Quantity::Efficiency => "efficiency",
            Quantity::Power => "power",
        };
        if told { format!("{name} in {unit}") } else { format!("{name} in {unit} (assumed)") }
    },
    file: "Open a text or CSV file",
    demo: "Try an invented curve",
    demo_hint: "No pump that can be bought has it.",
    demo_names: ["House well, 25\u{a0}gpm", "Field well, 250\u{a0}gpm", "Surface, 800\u{a0}gpm"],
    demo_none: "Choose one",
    points: "Points",
    in_liters: "My points are in L/s and m",
    in_cubic_meters: "My points are in m³/h and m",
    clear: "Remove the curve",
    at: |line, column, why| format!("Line {line}, column {column}: {why}"),
    no_points: "no number found.",
    too_many: |most| format!("more than {most} points."),
    cells: |given, wanted| format!("{given} numbers, {wanted} needed."),
    not_number: |cell| format!("“{cell}” is not a number."),
    two_ways: |cell| format!("“{cell}” can be read two ways; write decimals with a point."),
    unit: |cell| format!("“{cell}” is no unit known here."),
    columns: "flow and head are needed, each once.",
    few: |given| format!("{given} points; at least 3 are needed."),
    point: |point, why| format!("Point {point}: {why}"),
    figure: "a figure is below zero or beyond what a pump gives.",
    flow_not_rising: "the flow must rise from point to point.",
    never_falls: "The head never falls; columns may be swapped.",
    gap: "efficiency or power is missing; give it for all points or none.",
    efficiency: "this efficiency can’t be: zero only where no water is lifted.",
    power_short: "less power at the shaft than in the water.",
};

/// Spanish.
pub const SPANISH: Curve = Curve {
    hint: "Un punto por renglón: gasto, carga, eficiencia o potencia. Gasto en gpm, carga en ft, eficiencia en %, si el primer renglón no da otras unidades.",
    read: |count, columns| format!("{count} puntos: {columns}"),
    column: |quantity, unit, told| {
        let name = match quantity {
            Quantity::Flow => "gasto",
            Quantity::Head => "carga",
            Quantity::Efficiency => "eficiencia",
            Quantity::Power => "potencia",
        };
        if told { format!("{name} en {unit}") } else { format!("{name} en {unit} (supuesto)") }
    },
    file: "Abrir archivo de texto o CSV",
    demo: "Probar una curva inventada",
    demo_hint: "Ninguna bomba que se venda la tiene.",
    demo_names: ["Pozo de casa, 25\u{a0}gpm", "Pozo de riego, 250\u{a0}gpm", "De superficie, 800\u{a0}gpm"],
    demo_none: "Elija una",
    points: "Puntos",
    in_liters: "Mis puntos están en L/s y m",
    in_cubic_meters: "Mis puntos están en m³/h y m",
    clear: "Quitar la curva",
    at: |line, column, why| format!("Renglón {line}, columna {column}: {why}"),
    no_points: "no hay ningún número.",
    too_many: |most| format!("más de {most} puntos."),
    cells: |given, wanted| format!("{given} números, se requieren {wanted}."),
    not_number: |cell| format!("«{cell}» no es un número."),
    two_ways: |cell| format!("«{cell}» se puede leer de dos maneras; use punto decimal."),
    unit: |cell| format!("«{cell}» no es una unidad conocida aquí."),
    columns: "se requieren gasto y carga, una vez cada uno.",
    few: |given| format!("{given} puntos; se requieren al menos 3."),
    point: |point, why| format!("Punto {point}: {why}"),
    figure: "un dato es menor que cero o más de lo que da una bomba.",
    flow_not_rising: "el gasto debe subir de punto a punto.",
    never_falls: "La carga nunca baja; quizá las columnas están cambiadas.",
    gap: "falta eficiencia o potencia; dela en todos los puntos o en ninguno.",
    efficiency: "esta eficiencia no puede ser: cero sólo donde no se sube agua.",
    power_short: "menos potencia en la flecha que en el agua.",
};
