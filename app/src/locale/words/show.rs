//! The page for the customer's side of the table.

use super::Text;
use wellwright_core::job::Way;
use wellwright_core::standards::conductor::Metal;

/// Words of the page.
pub struct Show {
    pub title: Text,
    pub open: Text,
    pub close: Text,
    pub hide_prices: Text,
    pub full_screen: Text,
    pub leave_full_screen: Text,
    pub back_to: fn(&str) -> String,
    pub costs_less: fn(Way, &str) -> String,
    /// A metal, and whether it is not bought or bought beside.
    pub metal_not_bought: fn(Metal, bool) -> Text,
    /// What the 480 V and the 240 V lead hold.
    pub metal_of: fn(&str, &str) -> String,
    pub invented: Text,
    pub foot: Text,
}

/// US English.
pub const ENGLISH: Show = Show {
    title: "Show",
    open: "Show the customer",
    close: "Back to the job",
    hide_prices: "Hide prices",
    full_screen: "Full screen",
    leave_full_screen: "Leave full screen",
    back_to: |depth| format!("Back to {depth}"),
    costs_less: |way, depth| match way {
        Way::V240 => format!("240\u{a0}V costs less, at {depth}"),
        Way::V480 => format!("480\u{a0}V costs less, at {depth}"),
    },
    metal_not_bought: |metal, less| match (metal, less) {
        (Metal::Copper, true) => "Copper not bought",
        (Metal::Copper, false) => "More copper to buy",
        (Metal::Aluminum, true) => "Aluminum not bought",
        (Metal::Aluminum, false) => "More aluminum to buy",
    },
    metal_of: |high, low| format!("{high} in the 480\u{a0}V lead, {low} in the 240\u{a0}V lead"),
    invented: "The prices are invented.",
    foot: "An estimate, before local code, the equipment’s manual and a licensed electrician.",
};

/// Spanish.
pub const SPANISH: Show = Show {
    title: "Mostrar",
    open: "Mostrar al cliente",
    close: "Volver al trabajo",
    hide_prices: "Ocultar precios",
    full_screen: "Pantalla completa",
    leave_full_screen: "Salir de pantalla completa",
    back_to: |depth| format!("Volver a {depth}"),
    costs_less: |way, depth| match way {
        Way::V240 => format!("240\u{a0}V cuesta menos, a {depth}"),
        Way::V480 => format!("480\u{a0}V cuesta menos, a {depth}"),
    },
    metal_not_bought: |metal, less| match (metal, less) {
        (Metal::Copper, true) => "Cobre que no se compra",
        (Metal::Copper, false) => "Cobre que se compra de más",
        (Metal::Aluminum, true) => "Aluminio que no se compra",
        (Metal::Aluminum, false) => "Aluminio que se compra de más",
    },
    metal_of: |high, low| format!("{high} en el cable de 480\u{a0}V, {low} en el de 240\u{a0}V"),
    invented: "Los precios son inventados.",
    foot: "Una estimación, antes del código local, el manual del equipo y un electricista con licencia.",
};
