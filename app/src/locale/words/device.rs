//! Words on what the browser keeps of the page itself.

use super::Text;

/// Words on what the browser keeps of the page.
pub struct Device {
    pub kept: Text,
    pub newer: Text,
    pub take_newer: Text,
    pub later: Text,
    pub install: Text,
    pub by_hand: Text,
    pub lasting: Text,
    pub not_lasting: Text,
}

/// US English.
pub const ENGLISH: Device = Device {
    kept: "Opens without a network from now on.",
    newer: "A newer version of the page is ready. Jobs stay as they are.",
    take_newer: "Use it now",
    later: "Later",
    install: "Put on the home screen",
    by_hand: "To put it on the home screen, open the browser’s share menu and add it from there.",
    lasting: "The browser keeps the jobs until you delete them.",
    not_lasting: "A browser may clear jobs when room runs short or after weeks without a visit: save everything as one file now and then.",
};

/// Spanish.
pub const SPANISH: Device = Device {
    kept: "Desde ahora abre sin red.",
    newer: "Hay una versión más nueva de la página. Los trabajos quedan como están.",
    take_newer: "Usarla ahora",
    later: "Más tarde",
    install: "Poner en la pantalla de inicio",
    by_hand: "Para tenerla en la pantalla de inicio, abra el menú para compartir del navegador y agréguela desde ahí.",
    lasting: "El navegador guarda los trabajos hasta que usted los borre.",
    not_lasting: "Un navegador puede borrar trabajos si le falta espacio o tras semanas sin visita: guarde todo en un archivo de vez en cuando.",
};
