//! Cautions beside the steps: a title and what to do. They defer to local code, the manual and licensed practice.

use super::Text;

/// A caution: what it is about, and what to do.
pub type Caution = (Text, Text);

/// Cautions by page, in the order of the pages; none on Papers but the line that stands on each sheet.
pub struct Cautions {
    pub water: [Caution; 2],
    pub pump: [Caution; 2],
    pub power: [Caution; 2],
    pub cable: [Caution; 3],
    pub cost: [Caution; 1],
    pub startup: [Caution; 4],
}

/// US English.
pub const ENGLISH: Cautions = Cautions {
    water: [
        ("Never enter a well or a pit", "Gas gathers there and there is no air."),
        ("Ask before you drill or pump", "Water rights and the sanitary seal are local law."),
    ],
    pump: [
        (
            "The string weighs tons",
            "Use a rated rig and clamps, and let nobody stand under it. Look up: power lines kill rig crews.",
        ),
        (
            "A shut valve can burst the tank",
            "Against it a pump can build more pressure than tank or pipe will bear: fit the relief valve first, with no valve before it.",
        ),
    ],
    power: [
        (
            "The drive holds a charge",
            "Licensed electrician, local code. Lock off, wait the time marked on the drive, then test: capacitors hold a deadly charge. The equipment’s manual and marking win over this page.",
        ),
        (
            "A generator needs a transfer switch",
            "Without one it feeds back into the line and kills those who work on it.",
        ),
    ],
    cable: [
        ("Bond what can be touched", "Bond the metal casing and the pump to the circuit’s ground."),
        (
            "A long lead on a drive can double the voltage at the motor",
            "The extra equipment must hold the filter that the drive’s manual asks for.",
        ),
        (
            "480\u{a0}V saves copper, not always losses",
            "Look at the heat in the lead. Meters for plain 60\u{a0}Hz mislead at a drive’s output.",
        ),
    ],
    cost: [("Prices are examples", "They are invented until you enter your own; get quotes.")],
    startup: [
        (
            "It can start by itself",
            "After a power cut the pump may start without warning: post a sign, guard the shaft.",
        ),
        (
            "Lock off, wait, then test",
            "Licensed electrician, local code. Capacitors hold a deadly charge: wait the time marked on the drive, then prove it dead before you touch a terminal.",
        ),
        ("Take the drive off before insulation tests", "Afterwards discharge the cable."),
        ("Release a tank’s pressure before you open it", "Set its precharge while it is drained."),
    ],
};

/// Spanish.
pub const SPANISH: Cautions = Cautions {
    water: [
        ("Nunca entre en un pozo ni en una fosa", "Ahí se junta gas y no hay aire."),
        ("Pregunte antes de perforar o bombear", "La concesión de agua y el sello sanitario son ley local."),
    ],
    pump: [
        (
            "La columna pesa toneladas",
            "Use grúa y abrazaderas de capacidad probada, y que nadie se pare debajo. Mire hacia arriba: las líneas eléctricas matan cuadrillas.",
        ),
        (
            "Una válvula cerrada puede reventar el tanque",
            "Contra ella la bomba puede dar más presión de la que aguantan el tanque o la tubería: ponga primero la válvula de alivio, sin ninguna válvula antes.",
        ),
    ],
    power: [
        (
            "El variador guarda carga",
            "Electricista con licencia, código local. Bloquee, espere el tiempo marcado en el variador y luego pruebe: los capacitores guardan una carga mortal. El manual y el marcado del equipo mandan sobre esta página.",
        ),
        (
            "Una planta de luz necesita interruptor de transferencia",
            "Sin él alimenta la línea al revés y mata a quien trabaja en ella.",
        ),
    ],
    cable: [
        (
            "Aterrice todo lo que se pueda tocar",
            "Una el ademe metálico y la bomba al conductor de puesta a tierra del circuito.",
        ),
        (
            "Un cable largo tras un variador puede duplicar el voltaje en el motor",
            "El equipo adicional debe incluir el filtro que pida el manual del variador.",
        ),
        (
            "480\u{a0}V ahorra cobre, no siempre pérdidas",
            "Vea el calor en el cable. Los medidores para 60\u{a0}Hz puros engañan a la salida de un variador.",
        ),
    ],
    cost: [("Los precios son ejemplos", "Son inventados hasta que usted escriba los suyos; pida cotizaciones.")],
    startup: [
        (
            "Puede arrancar solo",
            "Después de un apagón la bomba puede arrancar sin aviso: ponga un letrero y guarda en la flecha.",
        ),
        (
            "Bloquee, espere y luego pruebe",
            "Electricista con licencia, código local. Los capacitores guardan una carga mortal: espere el tiempo marcado en el variador y compruebe que no hay voltaje antes de tocar una terminal.",
        ),
        ("Desconecte el variador antes de probar el aislamiento", "Después descargue el cable."),
        ("Saque la presión del tanque antes de abrirlo", "Ajuste su precarga con el tanque vacío de agua."),
    ],
};
