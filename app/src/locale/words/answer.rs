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
    pub depth_means: Text,
    pub longer_lead: Text,
    pub deeper_water: Text,
    pub cable_only: Text,
    pub with_equipment: Text,
    pub with_years: Text,
    pub even_at: Text,
    pub then_cheaper: fn(Way) -> Text,
    pub always_cheaper: fn(Way) -> Text,
    pub never_differs: Text,
    pub also_even_at: fn(&str) -> String,
    pub cable_less_equipment: fn(&str, &str) -> String,
    /// What 480 V saves or costs at first, and on energy over the years.
    pub first_and_energy: fn((bool, &str), (bool, &str)) -> String,
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
    pub figures_wrong: Text,
    pub wrong: Text,
    pub provisional: fn(&str) -> String,
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
    saved: |way, amount| format!("{amount} with {}", volts(way)),
    no_saving: "No saving to show",
    depth_means: "Depth means",
    longer_lead: "Longer lead",
    deeper_water: "Deeper water",
    count_in: "Count in",
    cable_only: "Cable",
    with_equipment: "Installed",
    with_years: "Over the years",
    even_at: "Break-even",
    then_cheaper: |way| match way {
        Way::V240 => "deeper, 240\u{a0}V costs less",
        Way::V480 => "deeper, 480\u{a0}V costs less",
    },
    always_cheaper: |way| match way {
        Way::V240 => "240\u{a0}V costs less wherever both serve",
        Way::V480 => "480\u{a0}V costs less wherever both serve",
    },
    never_differs: "both cost the same wherever both serve",
    also_even_at: |depths| format!("also changes at {depths}"),
    cable_less_equipment: |cable, equipment| format!("480\u{a0}V: {cable} off the cable, {equipment} more equipment"),
    first_and_energy: |(saves, first), (less, energy)| {
        let first = if saves { format!("{first} less at first") } else { format!("{first} more at first") };
        let energy = if less { format!("{energy} less for energy") } else { format!("{energy} more for energy") };
        format!("480\u{a0}V: {first}, {energy}")
    },
    metal_not_bought: |mass| format!("{mass} of metal not bought"),
    metal_more: |mass| format!("{mass} more metal"),
    sets_of: |sets, size| format!("{sets} sets of {size}"),
    three_of,
    drop_of: |share| format!("drop\u{a0}{share}"),
    governs_ampacity: "ampacity governs",
    governs_drop: "voltage drop governs",
    no_size: "No size serves",
    waiting_for: "Waiting for",
    findings: "Findings",
    severity: |severity| match severity {
        Severity::Note => "Note",
        Severity::Caution => "Caution",
        Severity::Stop => "Stop",
    },
    fine: "Within limit",
    missing: "missing",
    figures_wrong: "Figures wrong",
    wrong: "wrong",
    provisional: |value| format!("{value}, provisional"),
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
    depth_means: "La profundidad es",
    longer_lead: "Cable más largo",
    deeper_water: "Agua más honda",
    count_in: "Incluir",
    cable_only: "Cable",
    with_equipment: "Instalado",
    with_years: "En los años",
    even_at: "Equilibrio",
    then_cheaper: |way| match way {
        Way::V240 => "más abajo, 240\u{a0}V cuesta menos",
        Way::V480 => "más abajo, 480\u{a0}V cuesta menos",
    },
    always_cheaper: |way| match way {
        Way::V240 => "240\u{a0}V cuesta menos donde ambas alcanzan",
        Way::V480 => "480\u{a0}V cuesta menos donde ambas alcanzan",
    },
    never_differs: "ambas cuestan lo mismo donde alcanzan",
    also_even_at: |depths| format!("también cambia a {depths}"),
    cable_less_equipment: |cable, equipment| format!("480\u{a0}V: {cable} menos en cable, {equipment} más en equipo"),
    first_and_energy: |(saves, first), (less, energy)| {
        let first = if saves { format!("{first} menos al inicio") } else { format!("{first} más al inicio") };
        let energy = if less { format!("{energy} menos en energía") } else { format!("{energy} más en energía") };
        format!("480\u{a0}V: {first}, {energy}")
    },
    metal_not_bought: |mass| format!("{mass} de metal que no se compra"),
    metal_more: |mass| format!("{mass} más de metal"),
    sets_of: |sets, size| format!("{sets} juegos de {size}"),
    three_of,
    drop_of: |share| format!("caída\u{a0}{share}"),
    governs_ampacity: "rige la ampacidad",
    governs_drop: "rige la caída de voltaje",
    no_size: "Ningún calibre sirve",
    waiting_for: "Falta",
    findings: "Observaciones",
    severity: |severity| match severity {
        Severity::Note => "Nota",
        Severity::Caution => "Precaución",
        Severity::Stop => "Alto",
    },
    fine: "Cumple",
    missing: "falta",
    figures_wrong: "Datos equivocados",
    wrong: "mal",
    provisional: |value| format!("{value}, provisional"),
};

pub(super) fn volts(way: Way) -> Text {
    match way {
        Way::V240 => "240\u{a0}V",
        Way::V480 => "480\u{a0}V",
    }
}

fn three_of(size: &str) -> String {
    format!("3\u{a0}×\u{a0}{size}")
}
