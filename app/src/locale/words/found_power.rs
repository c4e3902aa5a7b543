//! What is found about the supply and the ways to run the motor, and what to do.

use super::Text;
use super::answer::volts;
use wellwright_core::job::Way;
use wellwright_core::standards::enclosure::Demand;

/// Words of findings.
pub struct FoundPower {
    pub supply_not_taken: fn(&str) -> String,
    pub amps_short: fn(&str, &str) -> String,
    pub size_short: fn(&str, &str) -> String,
    pub heat: fn(&str, &str, &str) -> String,
    pub too_hot: fn(&str, &str) -> String,
    pub enclosure: fn(&str, Text, Option<&str>) -> String,
    pub demand: fn(Demand) -> Text,
    pub volts_low: fn(&str, &str) -> String,
    pub volts_too_low: fn(&str, &str) -> String,
    pub no_volts: Text,
    pub needs_filter: fn(&str, &str, Text) -> String,
    pub peak_high: fn(&str, &str, Text) -> String,
    pub peak_no_remedy: fn(&str, &str) -> String,
    pub pulses_meet: fn(&str) -> String,
    pub cooler_idle: fn(&str, &str) -> String,
    pub supply_no_size: Text,
    pub supply_drop: fn(&str, &str) -> String,
    pub whole_drop: fn(&str, &str) -> String,
    pub transformer_close: fn(&str) -> String,
    pub transformer_over: fn(&str) -> String,
    pub utility_unknown: Text,
    pub utility_passed: fn(&str, &str) -> String,
    pub start_motor: fn(&str, &str) -> String,
    pub start_pole: fn(&str, &str) -> String,
    pub harmonics: fn(&str, &str) -> String,
    pub fault_close: fn(&str, &str) -> String,
    pub fault_over: fn(&str, &str) -> String,
    pub device_provisional: fn(&str) -> String,
    pub device_small: fn(&str, &str) -> String,
    pub device_large: fn(&str, &str) -> String,
    pub device_over: fn(&str, &str) -> String,
    pub fault_assumed: fn(&str) -> String,
    pub motor_light: fn(&str) -> String,
    pub generator_short: fn(&str, &str) -> String,
    pub grounding_unknown: Text,
    pub grounding_one_line: Text,
    pub full_speed: Text,
    pub unbalance: fn(&str, &str) -> String,
    pub no_way: Text,
    pub sensor_range: fn(&str, &str) -> String,
    pub sensor_freezes: Text,
    pub reading_stop: fn(Text) -> String,
    pub way_gone: Text,
    pub unreadable: Text,
    pub book_unreadable: Text,
    pub price_missing: fn(Way) -> String,
    pub decides: fn(Text) -> String,
    pub duty_unreadable: Text,
    pub duty_not_met: fn(&str) -> String,
    pub tariff: Text,
}

/// US English.
pub const ENGLISH: FoundPower = FoundPower {
    supply_not_taken: |supply| {
        format!("It is not made for a supply of {supply}. Another way, or another service, serves.")
    },
    amps_short: |derated, required| {
        format!(
            "Its largest frame gives {derated} here, the motor takes {required}. Shade or cool it, rate it for more heat, or take a larger family."
        )
    },
    size_short: |most, motor| {
        format!("It is made for motors up to {most}, this one is {motor}. A larger family serves.")
    },
    heat: |ambient, altitude, left| {
        format!("At {ambient} and {altitude} it gives {left} of its rating. Shade it, or take a unit rated for more.")
    },
    too_hot: |ambient, altitude| {
        format!(
            "{ambient} at {altitude} is beyond what its rating holds for. Shade it, take a higher-rated unit, or ask its maker."
        )
    },
    enclosure: |kind, lacks, plainest| {
        let take = plainest.map(|kind| format!(" Take type {kind}.")).unwrap_or_default();
        format!("Type {kind} does not keep out {lacks}.{take}")
    },
    demand: |demand| match demand {
        Demand::Weather => "rain and snow",
        Demand::IceOnHandles => "ice on its handles",
        Demand::Drips => "dripping water",
        Demand::SettlingDust => "settling dust",
        Demand::BlownDust => "blown dust",
        Demand::Hose => "water from a hose",
        Demand::OilSeepage => "seeping oil",
        Demand::OilSpray => "sprayed oil",
        Demand::Corrosion => "corrosion",
        Demand::BriefFlood => "a brief flood",
        Demand::LongFlood => "a long flood",
    },
    volts_low: |share, runs_out| {
        format!(
            "The motor gets {share} of its volts at the speed it needs; they last to {runs_out}. Larger cable, or a regulated output."
        )
    },
    volts_too_low: |share, runs_out| {
        format!(
            "The motor gets only {share} of its volts at the speed it needs; they last to {runs_out}. A regulated output, or larger cable."
        )
    },
    no_volts: "The volts are gone before they reach the motor. Larger conductors, or a nearer pole.",
    needs_filter: |peak, limit, remedy| {
        format!("The motor would see {peak}, it stands {limit}: order it with the {remedy}, which is counted in.")
    },
    peak_high: |peak, limit, remedy| {
        format!("The motor would see {peak} and stands {limit}. Fit a {remedy}, or take an inverter-duty motor.")
    },
    peak_no_remedy: |peak, limit| {
        format!(
            "The motor would see {peak} and stands {limit}, and no usual filter reaches so far. A shorter lead, or another motor."
        )
    },
    pulses_meet: |twice| {
        format!("On so long a lead pulses can meet and pass {twice}. Ask the drive’s maker about a filter.")
    },
    cooler_idle: |warm, most| {
        format!(
            "The cooler water is not counted: {warm} of the lead lie in the air above it, and at most {most} may. The air’s temperature counts for all of it."
        )
    },
    supply_no_size: "No listed size of supply conductors carries the input and keeps the drop. A nearer pole, parallel sets, or another way.",
    supply_drop: |share, limit| {
        format!("The supply conductors lose {share}; {limit} is advised. Larger conductors, or a nearer pole.")
    },
    whole_drop: |share, limit| {
        format!("Supply conductors and lead lose {share} together; {limit} is advised. Larger conductors on either.")
    },
    transformer_close: |share| {
        format!("The transformer carries {share} of its rating. Ask the utility before you order.")
    },
    transformer_over: |share| {
        format!("The transformer would carry {share} of its rating. The utility must set a larger one first.")
    },
    utility_unknown: "What the utility lets a single-phase motor draw is not known. Get its letter first.",
    utility_passed: |current, limit| {
        format!("It draws {current} and the utility allows {limit}. Another way, or the utility’s consent.")
    },
    start_motor: |dip, limit| {
        format!("At the start the motor’s volts dip {dip}, {limit} is borne. A drive, or a larger transformer.")
    },
    start_pole: |dip, limit| {
        format!("At the start the pole’s volts dip {dip}, neighbors bear {limit}. A drive, or a larger transformer.")
    },
    harmonics: |distortion, limit| {
        format!(
            "Harmonics are {distortion} of the demand, IEEE\u{a0}519 allows {limit}. A low-harmonic way, a filter, or the utility’s consent."
        )
    },
    fault_close: |fault, marked| {
        format!("A fault can drive {fault} here, near the {marked} that it is marked for. Read the marking.")
    },
    fault_over: |fault, marked| {
        format!("A fault can drive {fault} here, it is marked for {marked}. Fuses listed to raise it, or another unit.")
    },
    device_provisional: |device| {
        format!(
            "{device} ahead of the drive is provisional: the maximum marked on it decides. Read it before you order."
        )
    },
    device_small: |device, least| {
        format!(
            "The {device} device is less than 125\u{a0}% of the rated input, {least}. Check it against the drive’s marking."
        )
    },
    device_large: |device, marked| {
        format!("The {device} device is more than the {marked} that is marked on the drive. Take a smaller one.")
    },
    device_over: |device, most| {
        format!("The {device} device is more than the {most} that the code allows here. Take a smaller one.")
    },
    fault_assumed: |most| {
        format!(
            "The fault current goes by a transformer that was not entered whole; one of low impedance lets {most} pass. Ask the utility for the fault current before you order."
        )
    },
    motor_light: |load| {
        format!(
            "At this duty the motor carries {load} of what it is rated for at these volts: it draws more amperes than are told here. Let the drive learn the dry-run trip from the healthy pump, or set it by power."
        )
    },
    generator_short: |left, needed| {
        format!("The generator set gives {left} here, {needed} is needed. A larger set, or a low-harmonic way.")
    },
    grounding_unknown: "Ask whether this 480\u{a0}V supply is grounded at the middle or at one line: many drives forbid the second.",
    grounding_one_line: "The supply is grounded at one line: many drives forbid it. Use it only if the drive’s manual allows.",
    full_speed: "It runs the motor at full speed only: no drive holds the pressure. It takes a tank and a pressure switch.",
    unbalance: |shaft, left| {
        format!(
            "Unequal volts leave {left} of the motor and the pump takes {shaft}. Balance the converter, or take the next motor."
        )
    },
    sensor_range: |setpoint, span| {
        format!("The setpoint of {setpoint} lies near the end of the transducer’s {span}. Take a wider span.")
    },
    sensor_freezes: "The transducer can freeze: take one that is filled with oil, on a line that is buried or heated.",
    reading_stop: |reading| format!("{reading}: nobody may go on with that. Lock off and find the cause."),
    no_way: "No way to run this motor serves as things stand; each says why.",
    way_gone: "The way that was chosen is not among the equipment any more. Choose another.",
    unreadable: "The table of your own equipment can’t be read; the place stands beside it.",
    decides: |field| format!("{field} is assumed, and a verdict turns on it: ask for it."),
    duty_unreadable: "The table of the year’s duty can’t be read; the place stands beside it. Nothing over the years is counted.",
    duty_not_met: |flow| {
        format!(
            "The pump can’t give {flow} of the year’s duty. Change that row, or the pump. Nothing over the years is counted."
        )
    },
    tariff: "Months or shares of the tariff contradict one another. Nothing over the years is counted.",
    book_unreadable: "The price book can’t be read, and the invented prices stand in. Open Prices on the Cost page.",
    price_missing: |way| {
        let volts = volts(way);
        format!(
            "The price book has no price for what the {volts} way needs beyond its lead: it is left out. Enter the extra equipment, or add the price."
        )
    },
};

/// Spanish.
pub const SPANISH: FoundPower = FoundPower {
    supply_not_taken: |supply| format!("No es para un suministro de {supply}. Sirve otra forma u otra acometida."),
    amps_short: |derated, required| {
        format!(
            "Su tamaño mayor da {derated} aquí y el motor toma {required}. Póngalo a la sombra o enfríelo, use uno para más calor, o una familia mayor."
        )
    },
    size_short: |most, motor| format!("Es para motores de hasta {most} y éste es de {motor}. Sirve una familia mayor."),
    heat: |ambient, altitude, left| {
        format!("A {ambient} y {altitude} da el {left} de su capacidad. Póngalo a la sombra o use uno para más.")
    },
    too_hot: |ambient, altitude| {
        format!(
            "{ambient} a {altitude} pasa de lo que cubre su capacidad nominal. Sombra, un equipo para más, o pregunte al fabricante."
        )
    },
    enclosure: |kind, lacks, plainest| {
        let take = plainest.map(|kind| format!(" Use tipo {kind}.")).unwrap_or_default();
        format!("El tipo {kind} no protege contra {lacks}.{take}")
    },
    demand: |demand| match demand {
        Demand::Weather => "lluvia y nieve",
        Demand::IceOnHandles => "hielo en sus manijas",
        Demand::Drips => "goteo",
        Demand::SettlingDust => "polvo que se asienta",
        Demand::BlownDust => "polvo con viento",
        Demand::Hose => "chorro de manguera",
        Demand::OilSeepage => "aceite que escurre",
        Demand::OilSpray => "aceite rociado",
        Demand::Corrosion => "corrosión",
        Demand::BriefFlood => "una inundación breve",
        Demand::LongFlood => "una inundación larga",
    },
    volts_low: |share, runs_out| {
        format!(
            "Al motor le llega el {share} de su voltaje a la velocidad que necesita; alcanza hasta {runs_out}. Cable más grueso o salida regulada."
        )
    },
    volts_too_low: |share, runs_out| {
        format!(
            "Al motor le llega sólo el {share} de su voltaje a la velocidad que necesita; alcanza hasta {runs_out}. Salida regulada o cable más grueso."
        )
    },
    no_volts: "El voltaje se acaba antes de llegar al motor. Conductores más gruesos o poste más cerca.",
    needs_filter: |peak, limit, remedy| {
        format!("El motor vería {peak} y aguanta {limit}: pídalo con {remedy}, que ya está contado.")
    },
    peak_high: |peak, limit, remedy| {
        format!("El motor vería {peak} y aguanta {limit}. Ponga {remedy}, o use un motor para variador.")
    },
    peak_no_remedy: |peak, limit| {
        format!(
            "El motor vería {peak} y aguanta {limit}, y ningún filtro usual alcanza tan lejos. Cable más corto u otro motor."
        )
    },
    pulses_meet: |twice| {
        format!(
            "En un cable tan largo los pulsos se pueden juntar y pasar de {twice}. Pregunte al fabricante del variador por un filtro."
        )
    },
    cooler_idle: |warm, most| {
        format!(
            "El agua más fresca no se cuenta: {warm} del cable van en el aire, y a lo más pueden ser {most}. Para todo el cable rige la temperatura del aire."
        )
    },
    supply_no_size: "Ningún calibre de alimentador lleva la entrada con la caída permitida. Poste más cerca, juegos en paralelo u otra forma.",
    supply_drop: |share, limit| {
        format!("El alimentador pierde {share}; se recomienda {limit}. Conductores más gruesos o poste más cerca.")
    },
    whole_drop: |share, limit| {
        format!(
            "Alimentador y cable pierden juntos {share}; se recomienda {limit}. Conductores más gruesos en uno u otro."
        )
    },
    transformer_close: |share| {
        format!("El transformador lleva el {share} de su capacidad. Pregunte a la compañía antes de pedir.")
    },
    transformer_over: |share| {
        format!("El transformador llevaría el {share} de su capacidad. La compañía debe poner antes uno mayor.")
    },
    utility_unknown: "No se sabe cuánto permite la compañía a un motor monofásico. Consiga primero su carta.",
    utility_passed: |current, limit| {
        format!("Toma {current} y la compañía permite {limit}. Otra forma, o el permiso de la compañía.")
    },
    start_motor: |dip, limit| {
        format!(
            "Al arrancar, el voltaje del motor cae {dip} y se acepta {limit}. Un variador o un transformador mayor."
        )
    },
    start_pole: |dip, limit| {
        format!(
            "Al arrancar, el voltaje en el poste cae {dip} y los vecinos aceptan {limit}. Un variador o un transformador mayor."
        )
    },
    harmonics: |distortion, limit| {
        format!(
            "Las armónicas son el {distortion} de la demanda y IEEE\u{a0}519 permite {limit}. Una forma de baja armónica, un filtro, o el permiso de la compañía."
        )
    },
    fault_close: |fault, marked| {
        format!("Una falla puede dar aquí {fault}, cerca de los {marked} que tiene marcados. Lea el marcado.")
    },
    fault_over: |fault, marked| {
        format!(
            "Una falla puede dar aquí {fault} y está marcado para {marked}. Fusibles listados que lo eleven, u otro equipo."
        )
    },
    device_provisional: |device| {
        format!("{device} antes del variador es provisional: manda el máximo marcado en él. Léalo antes de pedir.")
    },
    device_small: |device, least| {
        format!(
            "El dispositivo de {device} es menos que el 125\u{a0}% de la entrada nominal, {least}. Revíselo con el marcado del variador."
        )
    },
    device_large: |device, marked| {
        format!("El dispositivo de {device} pasa de los {marked} marcados en el variador. Ponga uno menor.")
    },
    device_over: |device, most| {
        format!("El dispositivo de {device} pasa de los {most} que la norma permite aquí. Ponga uno menor.")
    },
    fault_assumed: |most| {
        format!(
            "La corriente de falla sale de un transformador sin todos sus datos; uno de baja impedancia deja pasar {most}. Pida la corriente de falla a la compañía antes de pedir el equipo."
        )
    },
    motor_light: |load| {
        format!(
            "En este punto el motor lleva el {load} de su carga nominal a estos volts: toma más amperes que los dichos aquí. Que el variador aprenda el disparo en seco con la bomba sana, o póngalo por potencia."
        )
    },
    generator_short: |left, needed| {
        format!("La planta da aquí {left} y se necesitan {needed}. Una planta mayor o una forma de baja armónica.")
    },
    grounding_unknown: "Pregunte si este suministro de 480\u{a0}V está aterrizado al centro o en una línea: muchos variadores prohíben lo segundo.",
    grounding_one_line: "El suministro está aterrizado en una línea: muchos variadores lo prohíben. Úselo sólo si lo permite el manual del variador.",
    full_speed: "Mueve el motor sólo a plena velocidad: ningún variador mantiene la presión. Necesita tanque e interruptor de presión.",
    unbalance: |shaft, left| {
        format!(
            "Los voltajes desiguales dejan {left} del motor y la bomba toma {shaft}. Balancee el convertidor o use el motor siguiente."
        )
    },
    sensor_range: |setpoint, span| {
        format!(
            "La consigna de {setpoint} queda cerca del final del rango del transductor, {span}. Ponga uno de mayor rango."
        )
    },
    sensor_freezes: "El transductor puede helarse: ponga uno lleno de aceite, con su línea enterrada o con calefacción.",
    reading_stop: |reading| format!("{reading}: así nadie debe seguir. Bloquee y encuentre la causa."),
    no_way: "Ninguna forma de mover este motor sirve tal como está; cada una dice por qué.",
    way_gone: "La forma que se eligió ya no está entre los equipos. Elija otra.",
    unreadable: "No se puede leer la tabla de sus equipos; el lugar está indicado junto a ella.",
    decides: |field| format!("{field} es un supuesto y de él depende un veredicto: pregúntelo."),
    duty_unreadable: "No se puede leer la tabla del régimen anual; el lugar está indicado junto a ella. Nada de los años se cuenta.",
    duty_not_met: |flow| {
        format!(
            "La bomba no puede dar {flow} del régimen anual. Cambie esa fila, o la bomba. Nada de los años se cuenta."
        )
    },
    tariff: "Los meses o las partes de la tarifa se contradicen. Nada de los años se cuenta.",
    book_unreadable: "No se puede leer la lista de precios y rigen los precios inventados. Abra Precios en la página Costo.",
    price_missing: |way| {
        let volts = volts(way);
        format!(
            "La lista no tiene precio para lo que la opción de {volts} necesita además del cable: no se cuenta. Anote el equipo adicional, o agregue el precio."
        )
    },
};
