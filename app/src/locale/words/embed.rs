//! The curve inside a page of somebody else.

use super::Text;

/// Words of the page.
pub struct Embed {
    pub title: Text,
    pub open_whole: Text,
    pub other_choice: Text,
    pub unknown_word: Text,
    pub too_long: Text,
    pub not_a_number: Text,
    pub other_unit: fn(&str) -> String,
}

/// US English.
pub const ENGLISH: Embed = Embed {
    title: "What 480\u{a0}V saves as the well gets deeper",
    open_whole: "Open this job in Wellwright",
    other_choice: "not one of those that can be asked for",
    unknown_word: "no word that this page knows",
    too_long: "too long",
    not_a_number: "does not begin with a number",
    other_unit: |units| format!("another unit than {units}"),
};

/// Spanish.
pub const SPANISH: Embed = Embed {
    title: "Lo que ahorran 480\u{a0}V cuando el pozo es más profundo",
    open_whole: "Abrir este trabajo en Wellwright",
    other_choice: "no es de lo que se puede pedir",
    unknown_word: "una palabra que esta página no conoce",
    too_long: "demasiado largo",
    not_a_number: "no empieza con un número",
    other_unit: |units| format!("una unidad que no es {units}"),
};
