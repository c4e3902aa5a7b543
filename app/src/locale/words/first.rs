//! What stands on the page until the program has come.

use super::Text;

/// Words of that page.
pub struct First {
    /// What all of this is for.
    pub lead: Text,
    pub coming: Text,
    pub example: Text,
    pub as_it_was: Text,
    pub failed: Text,
    pub again: Text,
}

/// US English.
pub const ENGLISH: First = First {
    lead: "A deep well on a single-phase line: which pump power system works, and what 480\u{a0}V saves over 240\u{a0}V in copper as the well gets deeper.",
    coming: "Loading. The first time takes a moment; after that it opens at once, without a network too.",
    example: "An example with invented figures. In a moment you can move its depth.",
    as_it_was: "As it was last time",
    failed: "The page did not come through. Look whether there is a network, then try again; what you kept is still there.",
    again: "Try again",
};

/// Spanish.
pub const SPANISH: First = First {
    lead: "Un pozo profundo en una línea monofásica: qué sistema de fuerza para la bomba funciona, y cuánto ahorran en cobre 480\u{a0}V frente a 240\u{a0}V cuando el pozo es más profundo.",
    coming: "Cargando. La primera vez tarda un momento; después se abre al instante, también sin red.",
    example: "Un ejemplo con cifras inventadas. En un momento podrá mover la profundidad.",
    as_it_was: "Como estaba la última vez",
    failed: "La página no llegó completa. Vea si hay red e intente de nuevo; lo que guardó sigue ahí.",
    again: "Intentar de nuevo",
};
