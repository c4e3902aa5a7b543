//! Cautions beside the steps: a title and what to do. They defer to local code, the manual and licensed practice.

use super::Text;

/// A caution: what it is about, and what to do.
pub type Caution = (Text, Text);

/// Cautions by page, in the order of the pages; none on Papers but the line that stands on each sheet.
pub struct Cautions {
    pub water: [Caution; 2],
    pub pump: [Caution; 2],
    pub power: [Caution; 5],
    pub cable: [Caution; 4],
    pub cost: [Caution; 1],
    pub startup: [Caution; 4],
}

/// US English.
pub const ENGLISH: Cautions = Cautions {
    water: [
        ("Never enter a well or a pit", "Gas gathers there and there is no air."),
        ("Ask before you drill or pump", "Water rights and the sanitary seal are set by the law where you drill."),
    ],
    pump: [
        (
            "The string can weigh tons",
            "Use a rated rig and clamps, and let nobody stand under it. Look up: power lines kill rig crews.",
        ),
        (
            "A shut valve can burst the tank",
            "Against it a pump can build more pressure than tank or pipe will bear: fit the relief valve first, with no valve between it and the pump.",
        ),
    ],
    power: [
        (
            "The drive holds a charge",
            "Use a licensed electrician and follow local code. Lock off, wait the time marked on the drive, then test for voltage: capacitors hold a deadly charge. Use listed equipment as its manual says: manual and marking win over this page.",
        ),
        (
            "Neutral and ground meet at one place",
            "Bond them at the service, or at a generator that is a source of its own, never at the drive. A supply with one line grounded is only for equipment whose manual allows it.",
        ),
        (
            "A converter’s made phase stands high",
            "It is about 1.7 times as far from ground as the other two: never feed single-phase loads from it.",
        ),
        (
            "A disconnect in sight, and room around the drive",
            "Drive and motor each need one (NEC 430.102). Six inches clear on all sides cool a drive unless its manual asks more; the working space of NEC 110.26 comes besides. Outdoor circuits of a dwelling to 50\u{a0}A and 150\u{a0}V to ground need ground-fault protection (NEC 210.8(F)).",
        ),
        (
            "A generator needs a transfer switch",
            "Without one it feeds back into the line and kills those who work on it.",
        ),
    ],
    cable: [
        ("Bond all metal that can be touched", "Bond the metal casing and the pump to the circuit’s ground."),
        (
            "A long lead on a drive can double the voltage at the motor",
            "The extra equipment must include the filter that the drive’s manual asks for.",
        ),
        (
            "480\u{a0}V saves copper, not always losses",
            "Look at the heat in the lead. Meters for plain 60\u{a0}Hz mislead at a drive’s output.",
        ),
        (
            "Pulses drive current through bearings",
            "Ask the maker of a surface motor for a shaft-grounding ring; on large ones ask for an insulated bearing too.",
        ),
    ],
    cost: [("Prices are examples", "They are invented until you enter your own; get quotes.")],
    startup: [
        (
            "Lock off, wait, then test for voltage",
            "Use a licensed electrician and follow local code. Capacitors hold a deadly charge: wait the time marked on the drive, then prove it dead before you touch a terminal.",
        ),
        (
            "It can start by itself",
            "After a power cut the pump may start without warning: post a sign, guard the shaft.",
        ),
        ("Disconnect the drive before insulation tests", "Afterwards discharge the cable."),
        ("Release a tank’s pressure before you open it", "Set its precharge while it is drained."),
    ],
};

/// Spanish.
pub const SPANISH: Cautions = Cautions {
    water: [
        ("Nunca entre en un pozo ni en una fosa", "Ahí se junta gas y no hay aire."),
        (
            "Pregunte antes de perforar o bombear",
            "Los derechos o la concesión de agua y el sello sanitario los fija la ley que rige en el sitio.",
        ),
    ],
    pump: [
        (
            "La columna puede pesar toneladas",
            "Use grúa y abrazaderas con capacidad certificada para el peso, y que nadie se pare debajo. Mire hacia arriba: las líneas eléctricas matan cuadrillas.",
        ),
        (
            "Una válvula cerrada puede reventar el tanque",
            "Contra ella la bomba puede dar más presión de la que aguantan el tanque o la tubería: ponga primero la válvula de alivio, sin ninguna válvula entre ella y la bomba.",
        ),
    ],
    power: [
        (
            "El variador guarda carga",
            "Encargue el trabajo a un electricista con licencia o calificado, según el código o la norma local. Corte, bloquee con candado, espere el tiempo marcado en el variador y luego verifique con medidor que no hay voltaje: los capacitores guardan una carga mortal. Use equipo listado como dice su manual: el manual y el marcado mandan sobre esta página.",
        ),
        (
            "Neutro y tierra se unen en un solo lugar",
            "Únalos en la acometida, o en una planta que sea fuente propia, nunca en el variador. Un suministro con una línea aterrizada es sólo para equipo cuyo manual lo permita.",
        ),
        (
            "La fase creada de un convertidor está más alta",
            "Está unas 1.7 veces más lejos de tierra que las otras dos: nunca alimente de ella cargas monofásicas.",
        ),
        (
            "Desconectador a la vista y espacio alrededor",
            "El variador y el motor necesitan cada uno el suyo (NEC 430.102). Seis pulgadas libres por todos lados enfrían al variador, si su manual no pide más; el espacio de trabajo de NEC 110.26 va aparte. Los circuitos exteriores de una vivienda hasta 50\u{a0}A y 150\u{a0}V a tierra necesitan protección de falla a tierra (NEC 210.8(F)).",
        ),
        (
            "Una planta de luz necesita interruptor de transferencia",
            "Sin él alimenta la línea al revés y mata a quien trabaja en ella.",
        ),
    ],
    cable: [
        (
            "Conecte a tierra física todo metal que se pueda tocar",
            "Conecte el ademe metálico y la bomba al conductor de puesta a tierra del circuito.",
        ),
        (
            "Un cable largo a la salida de un variador puede duplicar el voltaje en el motor",
            "El equipo adicional debe incluir el filtro que pida el manual del variador.",
        ),
        (
            "480\u{a0}V ahorra cobre, no siempre pérdidas",
            "Vea el calor en el cable. Los medidores comunes de 60\u{a0}Hz engañan a la salida de un variador.",
        ),
        (
            "Los pulsos mandan corriente por los rodamientos",
            "Pida al fabricante de un motor de superficie un anillo de puesta a tierra en la flecha; en los grandes, también un rodamiento aislado.",
        ),
    ],
    cost: [("Los precios son ejemplos", "Son inventados hasta que usted escriba los suyos; pida cotizaciones.")],
    startup: [
        (
            "Bloquee, espere y verifique que no hay voltaje",
            "Encargue el trabajo a un electricista con licencia o calificado, según el código o la norma local. Los capacitores guardan una carga mortal: espere el tiempo marcado en el variador y compruebe que no hay voltaje antes de tocar una terminal.",
        ),
        (
            "Puede arrancar sola",
            "Después de un apagón la bomba puede arrancar sin aviso: ponga un letrero y una guarda en la flecha.",
        ),
        ("Desconecte el variador antes de probar el aislamiento", "Después descargue el cable."),
        ("Saque la presión del tanque antes de abrirlo", "Ajuste su precarga con el tanque vacío de agua."),
    ],
};
