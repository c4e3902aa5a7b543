//! The gallery of parts: a page for those who build the page.

use super::Text;

/// Words of the gallery.
pub struct Gallery {
    pub title: Text,
    pub line: Text,
    pub fields: Text,
    pub choices: Text,
    pub buttons: Text,
    pub verdicts: Text,
    pub table: Text,
    pub answer: Text,
    pub empty: Text,
    pub toast: Text,
    pub show_toast: Text,
    pub dialog: Text,
    pub open_dialog: Text,
    pub file: Text,
    pub caution: Text,
    pub ways: Text,
    pub stations: Text,
    pub working: Text,
    pub notices: Text,
    pub sample: Text,
}

/// US English.
pub const ENGLISH: Gallery = Gallery {
    title: "Parts",
    line: "The same parts on every page",
    fields: "Quantity field: typed, assumed, missing, out of range, no number",
    choices: "Choice, switch, a few in one frame",
    buttons: "Buttons and menu",
    verdicts: "Verdict: a word and its reason",
    table: "Table: sorts, copies",
    answer: "Big answer",
    empty: "Empty state",
    toast: "Message that passes",
    show_toast: "Show a message",
    dialog: "Dialog",
    open_dialog: "Open a dialog",
    file: "File drop",
    caution: "Caution",
    ways: "Ways: color, dash and name",
    stations: "Stations of a job",
    working: "Calculation drawer",
    notices: "Notice",
    sample: "Invented figures, for looking at the parts only.",
};

/// Spanish.
pub const SPANISH: Gallery = Gallery {
    title: "Piezas",
    line: "Las mismas piezas en todas las páginas",
    fields: "Campo de cantidad: escrito, supuesto, faltante, fuera de rango, no numérico",
    choices: "Elección, interruptor, unas pocas en un marco",
    buttons: "Botones y menú",
    verdicts: "Dictamen: una palabra y su razón",
    table: "Tabla: se ordena, se copia",
    answer: "Respuesta grande",
    empty: "Lugar vacío",
    toast: "Mensaje que pasa",
    show_toast: "Mostrar un mensaje",
    dialog: "Diálogo",
    open_dialog: "Abrir un diálogo",
    file: "Soltar un archivo",
    caution: "Precaución",
    ways: "Opciones: color, trazo y nombre",
    stations: "Estaciones de un trabajo",
    working: "Panel de cálculo",
    notices: "Aviso",
    sample: "Datos inventados, sólo para ver las piezas.",
};
