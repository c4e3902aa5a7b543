//! The working behind an answer.

mod names;
mod spread;
mod titles;
mod units;

use super::Text;
use wellwright_core::job::Origin;
use wellwright_core::papers::{Caveat, Name, Topic};

/// Words of the working.
pub struct Working {
    pub open: fn(&str) -> String,
    pub word: Text,
    pub title: fn(Topic) -> String,
    pub formula: Text,
    pub values: Text,
    pub sources: Text,
    pub at_least: fn(&str, &str) -> String,
    pub at_most: fn(&str, &str) -> String,
    pub entered: Text,
    pub name: fn(Name) -> Text,
    pub origin: fn(Origin) -> Text,
    pub practice: Text,
    pub nec: fn(&str) -> String,
    pub chapter_9: fn(&str) -> String,
    pub definition_only: Text,
    pub caveat: fn(Caveat) -> Text,
    pub larger: Text,
    pub smaller: Text,
}

/// US English.
pub const ENGLISH: Working = Working {
    open: |what| format!("Calculation: {what}"),
    word: "Calculation",
    title: titles::ENGLISH.of,
    formula: "Formula, then your values",
    values: "Values put in",
    sources: "Source",
    at_least: |actual, limit| format!("{actual}, at least {limit} needed."),
    at_most: |actual, limit| format!("{actual}, at most {limit} allowed."),
    entered: "Tables entered with",
    name: names::ENGLISH.of,
    origin: |origin| match origin {
        Origin::Typed => "typed",
        Origin::Assumed => "assumed",
        Origin::WorkedOut => "worked out",
        Origin::Table => "table",
        Origin::Book => "price book",
        Origin::Definition => "by definition",
    },
    practice: "Common practice, no single source",
    nec: |part| format!("NEC (NFPA 70), 2023 edition, {part}"),
    chapter_9: |table| format!("NEC (NFPA 70), 2023 edition, chapter 9, table {table}"),
    definition_only: "Arithmetic on the figures of the job.",
    caveat: |caveat| match caveat {
        Caveat::TransitionFlow => {
            "Between laminar and turbulent flow (Reynolds number 2,000 to 4,000): the friction factor is uncertain."
        }
        Caveat::LightLoad => {
            "Below three quarters of the load that its rating is at these volts, efficiency and power factor of the nameplate do not hold: the motor draws more than this."
        }
        Caveat::Sampled => {
            "The steps move one thing alone. The result moves all at once: 1,000 points of a Latin hypercube, each figure between its lowest and highest as a triangle with its peak at the one that is counted, always the same points; the tenth, the middle and the ninetieth of a hundred."
        }
        Caveat::WholeSteps => "It is entered in whole steps, no higher than the result.",
    },
    larger: "max",
    smaller: "min",
};

/// Spanish.
pub const SPANISH: Working = Working {
    open: |what| format!("Cálculo: {what}"),
    word: "Cálculo",
    title: titles::SPANISH.of,
    formula: "Fórmula, luego sus valores",
    values: "Valores usados",
    sources: "Fuente",
    at_least: |actual, limit| format!("{actual}, se requiere al menos {limit}."),
    at_most: |actual, limit| format!("{actual}, se permite a lo más {limit}."),
    entered: "Con esto se leyeron las tablas",
    name: names::SPANISH.of,
    origin: |origin| match origin {
        Origin::Typed => "escrito",
        Origin::Assumed => "supuesto",
        Origin::WorkedOut => "calculado",
        Origin::Table => "tabla",
        Origin::Book => "lista de precios",
        Origin::Definition => "por definición",
    },
    practice: "Práctica común, sin fuente única",
    nec: |part| format!("NEC (NFPA 70), edición 2023, {part}"),
    chapter_9: |table| format!("NEC (NFPA 70), edición 2023, capítulo 9, tabla {table}"),
    definition_only: "Aritmética con los datos del trabajo.",
    caveat: |caveat| match caveat {
        Caveat::TransitionFlow => {
            "Entre flujo laminar y turbulento (número de Reynolds de 2,000 a 4,000): el factor de fricción es incierto."
        }
        Caveat::LightLoad => {
            "Por debajo de tres cuartos de la carga nominal a estos volts no valen la eficiencia ni el factor de potencia de placa: el motor toma más que esto."
        }
        Caveat::Sampled => {
            "Los pasos mueven una sola cosa. El resultado mueve todas a la vez: 1,000 puntos de un hipercubo latino, cada dato entre el más bajo y el más alto como triángulo con su pico en el que se cuenta, siempre los mismos puntos; el décimo, el de en medio y el nonagésimo de cien."
        }
        Caveat::WholeSteps => "Se escribe en pasos enteros, sin rebasar el resultado.",
    },
    larger: "máx",
    smaller: "mín",
};
