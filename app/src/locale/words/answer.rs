//! The answer above the picture.

use super::Text;
use wellwright_core::finding::Severity;
use wellwright_core::job::Way;

/// Words of the answer.
pub struct Answer {
    pub label: Text,
    pub way: fn(Way) -> Text,
    pub way_short: fn(Way) -> Text,
    pub saves_at: fn(Way, &str) -> String,
    pub same_at: fn(&str) -> String,
    pub saves: fn(Way) -> Text,
    pub saved: fn(Way, &str) -> String,
    pub no_saving: Text,
    pub count_in: Text,
    pub cable_only: Text,
    pub with_equipment: Text,
    pub even_at: Text,
    pub then_cheaper: fn(Way) -> Text,
    pub always_cheaper: fn(Way) -> Text,
    pub never_differs: Text,
    pub also_even_at: fn(&str) -> String,
    pub cable_less_equipment: fn(&str, &str) -> String,
    pub metal_not_bought: fn(&str) -> String,
    pub metal_more: fn(&str) -> String,
    pub sets_of: fn(u8, &str) -> String,
    pub three_of: fn(&str) -> String,
    pub drop_of: fn(&str) -> String,
    pub governs_ampacity: Text,
    pub governs_drop: Text,
    pub no_size: Text,
    pub waiting_for: Text,
    pub findings: Text,
    pub severity: fn(Severity) -> Text,
    pub fine: Text,
    pub missing: Text,
}

/// US English.
pub const ENGLISH: Answer = Answer {
    label: "Answer and picture",
    way: |way| match way {
        Way::V240 => "240\u{a0}V way",
        Way::V480 => "480\u{a0}V way",
    },
    way_short: volts,
    saves_at: |way, depth| format!("{} saves, at {depth}", volts(way)),
    same_at: |depth| format!("Both cost the same, at {depth}"),
    saves: |way| match way {
        Way::V240 => "240\u{a0}V saves",
        Way::V480 => "480\u{a0}V saves",
    },
    saved: |way, amount| format!("{amount} by {}", volts(way)),
    no_saving: "No saving to show",
    count_in: "Count in",
    cable_only: "Cable",
    with_equipment: "Cable and equipment",
    even_at: "Even at",
    then_cheaper: |way| match way {
        Way::V240 => "deeper, 240\u{a0}V costs less",
        Way::V480 => "deeper, 480\u{a0}V costs less",
    },
    always_cheaper: |way| match way {
        Way::V240 => "240\u{a0}V costs less at every depth",
        Way::V480 => "480\u{a0}V costs less at every depth",
    },
    never_differs: "both cost the same at every depth",
    also_even_at: |depths| format!("also even at {depths}"),
    cable_less_equipment: |cable, equipment| format!("480\u{a0}V: {cable} off the cable, {equipment} more equipment"),
    metal_not_bought: |mass| format!("{mass} of metal not bought"),
    metal_more: |mass| format!("{mass} of metal more"),
    sets_of: |sets, size| format!("{sets} sets of {size}"),
    three_of,
    drop_of: |share| format!("drop {share}"),
    governs_ampacity: "current governs",
    governs_drop: "voltage drop governs",
    no_size: "No size serves",
    waiting_for: "Waiting for",
    findings: "Findings",
    severity: |severity| match severity {
        Severity::Note => "Note",
        Severity::Caution => "Care",
        Severity::Stop => "Stop",
    },
    fine: "Within",
    missing: "missing",
};

/// Spanish.
pub const SPANISH: Answer = Answer {
    label: "Respuesta y dibujo",
    way: |way| match way {
        Way::V240 => "Opción de 240\u{a0}V",
        Way::V480 => "Opción de 480\u{a0}V",
    },
    way_short: volts,
    saves_at: |way, depth| format!("{} ahorra, a {depth}", volts(way)),
    same_at: |depth| format!("Ambas cuestan lo mismo, a {depth}"),
    saves: |way| match way {
        Way::V240 => "ahorra 240\u{a0}V",
        Way::V480 => "ahorra 480\u{a0}V",
    },
    saved: |way, amount| format!("{amount} con {}", volts(way)),
    no_saving: "No hay ahorro que mostrar",
    count_in: "Incluir",
    cable_only: "Cable",
    with_equipment: "Cable y equipo",
    even_at: "Igual a",
    then_cheaper: |way| match way {
        Way::V240 => "más hondo, 240\u{a0}V cuesta menos",
        Way::V480 => "más hondo, 480\u{a0}V cuesta menos",
    },
    always_cheaper: |way| match way {
        Way::V240 => "240\u{a0}V cuesta menos a toda profundidad",
        Way::V480 => "480\u{a0}V cuesta menos a toda profundidad",
    },
    never_differs: "ambas cuestan lo mismo a toda profundidad",
    also_even_at: |depths| format!("también igual a {depths}"),
    cable_less_equipment: |cable, equipment| format!("480\u{a0}V: {cable} menos en cable, {equipment} más en equipo"),
    metal_not_bought: |mass| format!("{mass} de metal que no se compra"),
    metal_more: |mass| format!("{mass} más de metal"),
    sets_of: |sets, size| format!("{sets} juegos de {size}"),
    three_of,
    drop_of: |share| format!("caída {share}"),
    governs_ampacity: "rige la corriente",
    governs_drop: "rige la caída de voltaje",
    no_size: "Ningún calibre sirve",
    waiting_for: "Falta",
    findings: "Observaciones",
    severity: |severity| match severity {
        Severity::Note => "Nota",
        Severity::Caution => "Cuidado",
        Severity::Stop => "Alto",
    },
    fine: "Cumple",
    missing: "falta",
};

fn volts(way: Way) -> Text {
    match way {
        Way::V240 => "240\u{a0}V",
        Way::V480 => "480\u{a0}V",
    }
}

fn three_of(size: &str) -> String {
    format!("3\u{a0}×\u{a0}{size}")
}
