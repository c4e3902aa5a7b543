//! Errors and findings in sentences.

use super::Text;
use wellwright_core::job::Way;

/// Sentences with gaps.
pub struct Say {
    pub enter_value: fn(&str, &str) -> String,
    pub outside: fn(&str, &str, &str) -> String,
    pub wrong_unit: fn(&str, &str) -> String,
    pub enter_number: fn(&str, &str) -> String,
    pub not_a_number: fn(&str) -> String,
    pub two_ways: fn(&str) -> String,
    pub too_large: fn(&str) -> String,
    pub by_zero: fn(&str) -> String,
    pub unit_misfit: fn(&str, &str) -> String,
    pub no_size: fn(Text) -> String,
    pub aluminum_in_well: Text,
    pub ground_grew: fn(Text) -> String,
    pub pump_dry: fn(&str) -> String,
    pub little_water: fn(&str, &str) -> String,
    pub pump_below_bottom: Text,
    pub level_below_bottom: fn(&str, &str) -> String,
    pub near_bottom: fn(&str) -> String,
    pub beyond_usual: fn(Text, &str) -> String,
    pub file_not_json: fn(usize, usize) -> String,
    pub file_no_schema: Text,
    pub file_newer: fn(u64) -> String,
    pub file_bad_field: fn(&str) -> String,
    pub file_altered: Text,
    pub file_unknown: Text,
    pub saving_now: fn(Way, &str, &str) -> String,
}

/// US English.
pub const ENGLISH: Say = Say {
    enter_value: |from, to| format!("Enter a value, {from} to {to}."),
    outside: |given, from, to| format!("{given} is outside {from} to {to}."),
    wrong_unit: |from, to| format!("The unit does not fit here. Enter {from} to {to}."),
    enter_number: |from, to| format!("Enter a number, {from} to {to}."),
    not_a_number: |typed| format!("“{typed}” is not a number."),
    two_ways: |typed| format!("“{typed}” can be read two ways. Write it without marks between thousands."),
    too_large: |typed| format!("“{typed}” is too large for a number."),
    by_zero: |typed| format!("“{typed}” divides by zero."),
    unit_misfit: |typed, unit| format!("“{typed}”: {unit} does not fit here."),
    no_size: |way| {
        format!(
            "No listed size carries the current and keeps the drop on the {way}. Use a shorter lead, allow more drop, better insulation, or parallel sets."
        )
    },
    aluminum_in_well: "Aluminum does not belong down a well. Use copper.",
    ground_grew: |way| format!("On the {way} the ground grew with the phase conductors, NEC 250.122(B). Order it so."),
    pump_dry: |short| {
        format!("The water stands {short} below the pump: it would run dry. Set the pump lower, or take less water.")
    },
    little_water: |above, least| {
        format!("Only {above} of water above the pump, least {least}. Set the pump lower, or take less water.")
    },
    pump_below_bottom: "The pump is set at the well’s bottom or deeper. Check both depths.",
    level_below_bottom: |level, bottom| {
        format!("The water stands at {level}, the well’s bottom at {bottom}: check the levels and the well’s depth.")
    },
    near_bottom: |above| format!("The pump hangs {above} above the well’s bottom: sand and silt. Set it higher."),
    beyond_usual: |field, usual| format!("{field}: beyond the usual {usual}. Check it."),
    file_not_json: |line, column| format!("it is cut short or no job file (line {line}, column {column})"),
    file_no_schema: "it does not say that it is a job file",
    file_newer: |schema| format!("a newer version of this page wrote it (format {schema}); load this page again"),
    file_bad_field: |path| format!("the entry {path} is not one that a job has"),
    file_altered: "it is not what was written: something changed it",
    file_unknown: "it is no job file that this page knows",
    saving_now: |way, amount, depth| match way {
        Way::V240 => format!("At {depth}, 240\u{a0}V saves {amount}."),
        Way::V480 => format!("At {depth}, 480\u{a0}V saves {amount}."),
    },
};

/// Spanish.
pub const SPANISH: Say = Say {
    enter_value: |from, to| format!("Escriba un valor, {from} a {to}."),
    outside: |given, from, to| format!("{given} está fuera de {from} a {to}."),
    wrong_unit: |from, to| format!("La unidad no va aquí. Escriba de {from} a {to}."),
    enter_number: |from, to| format!("Escriba un número, {from} a {to}."),
    not_a_number: |typed| format!("«{typed}» no es un número."),
    two_ways: |typed| format!("«{typed}» se puede leer de dos maneras. Escríbalo sin separar los miles."),
    too_large: |typed| format!("«{typed}» es demasiado grande para un número."),
    by_zero: |typed| format!("«{typed}» divide entre cero."),
    unit_misfit: |typed, unit| format!("«{typed}»: {unit} no va aquí."),
    no_size: |way| {
        format!(
            "{way}: ningún calibre de la tabla cumple a la vez con ampacidad y caída. Use un cable más corto, permita más caída, mejor aislamiento o juegos en paralelo."
        )
    },
    aluminum_in_well: "El aluminio no va dentro de un pozo. Use cobre.",
    ground_grew: |way| {
        format!("{way}: la tierra física se aumentó con los conductores de fase, NEC 250.122(B). Pídala así.")
    },
    pump_dry: |short| {
        format!("El agua queda {short} por debajo de la bomba: trabajaría en seco. Bájela o saque menos agua.")
    },
    little_water: |above, least| {
        format!("Sólo {above} de agua sobre la bomba, mínimo {least}. Bájela o saque menos agua.")
    },
    pump_below_bottom: "La bomba está en el fondo del pozo o más abajo. Revise ambas profundidades.",
    level_below_bottom: |level, bottom| {
        format!("El agua está a {level} y el fondo del pozo a {bottom}: revise los niveles y la profundidad del pozo.")
    },
    near_bottom: |above| format!("La bomba cuelga a {above} del fondo del pozo: arena y lodo. Súbala."),
    beyond_usual: |field, usual| format!("{field}: más allá de lo usual, {usual}. Revíselo."),
    file_not_json: |line, column| {
        format!("está cortado o no es un archivo de trabajo (línea {line}, columna {column})")
    },
    file_no_schema: "no dice que sea un archivo de trabajo",
    file_newer: |schema| {
        format!("lo escribió una versión más nueva de esta página (formato {schema}); cárguela de nuevo")
    },
    file_bad_field: |path| format!("el dato {path} no es de un trabajo"),
    file_altered: "no es lo que se escribió: algo lo cambió",
    file_unknown: "no es un archivo de trabajo que esta página conozca",
    saving_now: |way, amount, depth| match way {
        Way::V240 => format!("A {depth}, 240\u{a0}V ahorra {amount}."),
        Way::V480 => format!("A {depth}, 480\u{a0}V ahorra {amount}."),
    },
};
