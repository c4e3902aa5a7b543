//! Figures and choices of a job.

use super::{Text, labels};
use wellwright_core::cable::reactance::Build;
use wellwright_core::job::Field;
use wellwright_core::standards::ampacity::Rating;
use wellwright_core::standards::conductor::Metal;

/// Words of the fields.
pub struct Fields {
    pub label: fn(Field) -> Text,
    pub hint: fn(Field) -> Text,
    pub figures_label: Text,
    pub assumed: Text,
    pub worked_out: Text,
    pub from_table: Text,
    pub from_book: Text,
    pub accepted: fn(&str, &str) -> String,
    pub equals: fn(&str) -> String,
    pub other_unit: fn(&str, &str, &str) -> String,
    pub metal_label: Text,
    pub metal: fn(Metal) -> Text,
    pub build_label: Text,
    pub build: fn(Build) -> Text,
    pub insulation_label: Text,
    pub terminals_label: Text,
    pub terminals_hint: Text,
    pub cooler_label: Text,
    pub cooler_hint: Text,
    pub sets_label: Text,
    pub sets: fn(u8) -> Text,
    pub price_source: Text,
    /// The unit of a life.
    pub years: Text,
    pub months: Text,
    pub per_month: Text,
}

/// An insulation rating; the same in every language.
#[must_use]
pub fn rating(rating: Rating) -> Text {
    match rating {
        Rating::C60 => "60\u{a0}°C",
        Rating::C75 => "75\u{a0}°C",
        Rating::C90 => "90\u{a0}°C",
    }
}

/// US English.
pub const ENGLISH: Fields = Fields {
    label: labels::ENGLISH.label,
    hint: labels::ENGLISH.hint,
    figures_label: "Figures of the job",
    assumed: "assumed",
    worked_out: "worked out",
    from_table: "from the code table",
    from_book: "from the price book",
    accepted: |from, to| format!("{from} to {to}"),
    equals: |value| format!("= {value}"),
    other_unit: |field, unit, other| format!("{field} in {unit}; switch to {other}"),
    metal_label: "Metal",
    metal: |metal| match metal {
        Metal::Copper => "Copper",
        Metal::Aluminum => "Aluminum",
    },
    build_label: "Cable type",
    build: |build| match build {
        Build::PlasticConduit => "Singles in plastic conduit",
        Build::SteelConduit => "Singles in steel conduit",
        Build::FlatJacketed => "Flat jacketed cable",
        Build::Twisted => "Twisted singles",
    },
    insulation_label: "Insulation",
    terminals_label: "Terminals marked 75\u{a0}°C",
    terminals_hint: "at both ends; if not marked, 60\u{a0}°C applies up to 100\u{a0}A",
    cooler_label: "Count the water as cooler",
    cooler_hint: "for ampacity, and only where at most 10\u{a0}ft (3\u{a0}m) of the lead, and a tenth of the rest, lie in the warmer air",
    sets_label: "Parallel sets",
    sets: |sets| match sets {
        1 => "One set only",
        2 => "Up to 2 sets",
        3 => "Up to 3 sets",
        _ => "Up to 4 sets",
    },
    price_source: "Where the prices come from",
    years: "yr",
    months: "months",
    per_month: "$/month",
};

/// Spanish.
pub const SPANISH: Fields = Fields {
    label: labels::SPANISH.label,
    hint: labels::SPANISH.hint,
    figures_label: "Datos del trabajo",
    assumed: "supuesto",
    worked_out: "calculado",
    from_table: "de la tabla del código",
    from_book: "de la lista de precios",
    accepted: |from, to| format!("{from} a {to}"),
    equals: |value| format!("= {value}"),
    other_unit: |field, unit, other| format!("{field} en {unit}; cambiar a {other}"),
    metal_label: "Metal",
    metal: |metal| match metal {
        Metal::Copper => "Cobre",
        Metal::Aluminum => "Aluminio",
    },
    build_label: "Tipo de cable",
    build: |build| match build {
        Build::PlasticConduit => "Conductores en conduit de PVC",
        Build::SteelConduit => "Conductores en conduit de acero",
        Build::FlatJacketed => "Cable plano sumergible",
        Build::Twisted => "Conductores torcidos",
    },
    insulation_label: "Aislamiento",
    terminals_label: "Terminales marcadas 75\u{a0}°C",
    terminals_hint: "en ambos extremos; sin la marca rigen 60\u{a0}°C hasta 100\u{a0}A",
    cooler_label: "Contar el agua como más fresca",
    cooler_hint: "para la ampacidad, y solo si a lo más 3\u{a0}m (10\u{a0}ft) del cable, y un décimo del resto, van en el aire más caliente",
    sets_label: "Juegos en paralelo",
    sets: |sets| match sets {
        1 => "Un solo juego",
        2 => "Hasta 2 juegos",
        3 => "Hasta 3 juegos",
        _ => "Hasta 4 juegos",
    },
    price_source: "De dónde vienen los precios",
    years: "años",
    months: "meses",
    per_month: "$/mes",
};
