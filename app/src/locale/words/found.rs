//! What is found about the water and the pump, and what to do.

use super::Text;
use wellwright_core::finding::Supplier;
use wellwright_core::job::Part;

/// Words of findings.
pub struct Found {
    pub demand_not_met: fn(Supplier, &str, &str) -> String,
    pub beyond_curve: fn(&str) -> String,
    pub curve_unusable: Text,
    pub droop: Text,
    pub no_shut_off: Text,
    pub best_unlikely: fn(&str) -> String,
    pub efficiency_against_power: fn(usize) -> String,
    pub far_from_best: fn(&str) -> String,
    pub npsh_short: fn(&str, &str) -> String,
    pub over_rating: fn(&str, &str) -> String,
    pub pipe: fn(Part) -> Text,
    pub pipe_over_rating: fn(Text, &str, &str) -> String,
    pub surge_over_rating: fn(Text, &str, &str) -> String,
    pub dead_head_unknown: fn(&str) -> String,
    pub setpoint_over_rating: fn(&str, &str) -> String,
    pub house_pressure: fn(&str, &str) -> String,
    pub does_not_fit: fn(&str, &str) -> String,
    pub day_average: fn(&str) -> String,
    pub runs_by_itself: fn(&str) -> String,
    pub cools_above: fn(&str) -> String,
    pub cooling_low: fn(&str, &str, &str, &str) -> String,
    pub cooling_low_no_sleeve: fn(&str, &str, &str) -> String,
    pub overloaded: fn(&str, &str) -> String,
    pub in_service_factor: fn(&str, &str) -> String,
    pub band_narrow: fn(&str, &str) -> String,
    pub band_low: fn(&str, &str) -> String,
    pub pipe_fast: fn(Part, &str, &str) -> String,
    pub in_screen: fn(&str) -> String,
    pub beyond_formulas: Text,
    pub nameplate_disagrees: fn(Text, &str, &str) -> String,
}

/// US English.
pub const ENGLISH: Found = Found {
    demand_not_met: |by, gives, asked| match by {
        Supplier::Pump => format!(
            "The pump gives at most {gives} of {asked} asked for. A larger pump, less pressure, wider pipe, or storage and more hours."
        ),
        Supplier::Well => format!(
            "The well gives at most {gives} of {asked} asked for before it is drawn down to the pump. Storage, more hours, a lower pump, or a second source."
        ),
        Supplier::Test => {
            format!("The well was tested at {gives}, and {asked} is asked for. Test it at that flow first.")
        }
    },
    beyond_curve: |most| {
        format!("The pump would run past the end of its curve, {most} at full speed. Use a larger pump or less flow.")
    },
    curve_unusable: "The pump’s curve can’t be used as it is; the reason stands beside it.",
    droop: "The curve droops toward shut-off: at low flow the pump may hunt between two flows.",
    no_shut_off: "The curve does not begin at zero flow, so nothing is known of a shut valve.",
    best_unlikely: |best| format!("A best efficiency of {best} is hardly a pump’s. Check the units."),
    efficiency_against_power: |point| {
        format!("Point {point} of the curve: efficiency and power disagree by more than a tenth; power is used.")
    },
    far_from_best: |share| {
        format!(
            "The pump works at {share} of its best-efficiency flow; usual is 70 to 120\u{a0}%. Look for another pump."
        )
    },
    npsh_short: |available, required| {
        format!(
            "The suction has {available} of head, {required} needed with its margin: it would cavitate. Less lift, or a wider suction."
        )
    },
    over_rating: |gauge, rating| {
        format!(
            "Against a shut valve the pump builds {gauge}, the weakest part is rated {rating}. Fit a relief valve for full flow, with no valve before it; cap the speed; or use stronger parts."
        )
    },
    pipe: |part| match part {
        Part::Drop => "Drop pipe",
        Part::Suction => "Suction pipe",
        Part::Surface => "Surface pipe",
    },
    pipe_over_rating: |part, pressure, rating| {
        format!(
            "{part}: it holds back {pressure}, against a shut valve where that is known, and {rating} of its rating are left in this water, threads of schedule 80 counted. Take a stronger pipe, or cap the speed."
        )
    },
    surge_over_rating: |part, pressure, rating| {
        format!(
            "{part}: water that stops at once brings {pressure}, and {rating} of its rating are left in this water. Stop it slowly, place a check valve at the pump, or take a stronger pipe."
        )
    },
    dead_head_unknown: |rating| {
        format!(
            "What the pump builds against a shut valve is not known. Enter its curve or its shut-off head, and hold it against the {rating} of the weakest part; fit a relief valve for full flow, with no valve before it."
        )
    },
    setpoint_over_rating: |setpoint, rating| {
        format!(
            "The pressure of {setpoint} is no less than the {rating} that the weakest part is rated for. Hold less, or use stronger parts."
        )
    },
    house_pressure: |pressure, limit| {
        format!(
            "People are served and up to {pressure} may stand at the house: plumbing codes ask for a pressure-reducing valve above {limit}."
        )
    },
    does_not_fit: |inner, outer| {
        format!(
            "What hangs is {inner} wide, and there is {outer} of room: it does not fit. Check motor, sleeve and casing."
        )
    },
    day_average: |flow| {
        format!(
            "{flow} is the average of a day and takes a tank that holds a day’s use, 30\u{a0}% more in hot weather. Without one, enter the peak flow."
        )
    },
    runs_by_itself: |head| {
        format!(
            "The total head is {head}: by these figures the water runs by itself and a pump has nothing to lift. Check levels, rise and pressure."
        )
    },
    cools_above: |flow| {
        format!(
            "The water cools the motor from {flow} up. If less is drawn for long, enter that least flow, or fit a flow sleeve."
        )
    },
    cooling_low: |speed, advised, flow, sleeve| {
        format!(
            "Water passes the motor at {speed}, {advised} advised. Keep at least {flow}, or fit a flow sleeve of {sleeve} inside or less."
        )
    },
    cooling_low_no_sleeve: |speed, advised, flow| {
        format!(
            "Water passes the motor at {speed}, {advised} advised, and no sleeve is narrow enough. Keep at least {flow}."
        )
    },
    overloaded: |shaft, rated| {
        format!(
            "The pump takes up to {shaft}, more than a {rated} motor carries. Take the next motor, or cap the speed."
        )
    },
    in_service_factor: |shaft, rated| {
        format!("The pump takes up to {shaft}: a {rated} motor runs into its service factor.")
    },
    band_narrow: |lowest, most| {
        format!(
            "The pressure is held from {lowest} up, full speed is {most}: little is left to control by. Less pressure or another pump."
        )
    },
    band_low: |lowest, least| {
        format!(
            "At low flow the pressure is held at {lowest}, below the motor’s lowest, {least}. Set {least} as the lowest."
        )
    },
    pipe_fast: |part, velocity, usual| {
        let pipe = match part {
            Part::Drop => "drop pipe",
            Part::Suction => "suction pipe",
            Part::Surface => "surface pipe",
        };
        format!("Water runs at {velocity} in the {pipe}, usual is up to {usual}. Take a wider pipe.")
    },
    in_screen: |top| {
        format!(
            "The pump hangs in the screen or below its top, {top}: it draws sand that wears pump and screen, and water from above does not cool the motor: fit a flow sleeve."
        )
    },
    beyond_formulas: "These figures lie beyond what the formulas hold for. Check flow, pipe size and lengths.",
    nameplate_disagrees: |way, nameplate, expected| {
        format!(
            "{way}: the nameplate says {nameplate}, power, efficiency and power factor make {expected}. Read the plate again."
        )
    },
};

/// Spanish.
pub const SPANISH: Found = Found {
    demand_not_met: |by, gives, asked| match by {
        Supplier::Pump => format!(
            "La bomba da cuando más {gives} de {asked} que se piden. Una bomba mayor, menos presión, tubo de mayor diámetro, o almacenamiento y más horas."
        ),
        Supplier::Well => format!(
            "El pozo da cuando más {gives} de {asked} que se piden antes de abatirse hasta la bomba. Almacenamiento, más horas, bomba más abajo u otra fuente."
        ),
        Supplier::Test => format!("El pozo se aforó a {gives} y se piden {asked}. Afórelo primero a ese gasto."),
    },
    beyond_curve: |most| {
        format!(
            "La bomba trabajaría más allá del final de su curva, {most} a plena velocidad. Use una bomba mayor o menos gasto."
        )
    },
    curve_unusable: "La curva de la bomba no se puede usar así; el motivo está junto a ella.",
    droop: "La curva cae hacia válvula cerrada: a bajo gasto la bomba puede oscilar entre dos gastos.",
    no_shut_off: "La curva no empieza en gasto cero: no se sabe qué pasa con la válvula cerrada.",
    best_unlikely: |best| format!("Una mejor eficiencia de {best} no parece de bomba. Revise las unidades."),
    efficiency_against_power: |point| {
        format!("Punto {point} de la curva: eficiencia y potencia difieren más de un décimo; se usa la potencia.")
    },
    far_from_best: |share| {
        format!(
            "La bomba trabaja al {share} de su gasto de mejor eficiencia; lo usual es de 70 a 120\u{a0}%. Busque otra bomba."
        )
    },
    npsh_short: |available, required| {
        format!(
            "La succión tiene {available} de carga y se requieren {required} con su margen: cavitaría. Menos altura de succión, o succión de mayor diámetro."
        )
    },
    over_rating: |gauge, rating| {
        format!(
            "Contra válvula cerrada la bomba da {gauge}; la parte más débil es de {rating}. Ponga válvula de alivio para todo el gasto, sin válvula antes; limite la velocidad; o use partes de mayor presión nominal."
        )
    },
    pipe: |part| match part {
        Part::Drop => "Columna",
        Part::Suction => "Succión",
        Part::Surface => "Tubería en superficie",
    },
    pipe_over_rating: |part, pressure, rating| {
        format!(
            "{part}: retiene {pressure}, contra válvula cerrada donde se sabe, y en esta agua le quedan {rating} de su presión nominal, contando roscas en cédula 80. Use un tubo más fuerte o limite la velocidad."
        )
    },
    surge_over_rating: |part, pressure, rating| {
        format!(
            "{part}: si el agua se para de golpe llega a {pressure}, y en esta agua le quedan {rating} de su presión nominal. Párela despacio, ponga una válvula de retención en la bomba, o use un tubo más fuerte."
        )
    },
    dead_head_unknown: |rating| {
        format!(
            "No se sabe qué presión da la bomba contra válvula cerrada. Escriba su curva o su carga a válvula cerrada y compárela con los {rating} de la parte más débil; ponga una válvula de alivio para todo el gasto, sin válvula antes de ella."
        )
    },
    setpoint_over_rating: |setpoint, rating| {
        format!(
            "La presión de {setpoint} no es menor que los {rating} que aguanta la parte más débil. Mantenga menos o use partes más fuertes."
        )
    },
    house_pressure: |pressure, limit| {
        format!(
            "Se da servicio a personas y en la casa puede haber hasta {pressure}: los códigos de plomería piden una válvula reductora de presión arriba de {limit}."
        )
    },
    does_not_fit: |inner, outer| {
        format!("Lo que cuelga mide {inner} y hay {outer} de espacio: no cabe. Revise motor, camisa y ademe.")
    },
    day_average: |flow| {
        format!(
            "{flow} es el promedio del día y pide un tanque que guarde el uso de un día, 30\u{a0}% más con calor. Sin él, capture el gasto máximo."
        )
    },
    runs_by_itself: |head| {
        format!(
            "La carga dinámica total es {head}: según estos datos el agua corre sola y la bomba no tiene nada que elevar. Revise niveles, desnivel y presión."
        )
    },
    cools_above: |flow| {
        format!(
            "El agua enfría el motor desde {flow}. Si por largo tiempo se saca menos, capture ese gasto mínimo o ponga camisa de flujo."
        )
    },
    cooling_low: |speed, advised, flow, sleeve| {
        format!(
            "El agua pasa junto al motor a {speed}, se recomienda {advised}. Mantenga al menos {flow}, o ponga camisa de flujo de {sleeve} de interior o menos."
        )
    },
    cooling_low_no_sleeve: |speed, advised, flow| {
        format!(
            "El agua pasa junto al motor a {speed}, se recomienda {advised}, y ninguna camisa es tan angosta. Mantenga al menos {flow}."
        )
    },
    overloaded: |shaft, rated| {
        format!(
            "La bomba toma hasta {shaft}, más de lo que carga un motor de {rated}. Use el motor siguiente o limite la velocidad."
        )
    },
    in_service_factor: |shaft, rated| {
        format!("La bomba toma hasta {shaft}: un motor de {rated} entra en su factor de servicio.")
    },
    band_narrow: |lowest, most| {
        format!(
            "La presión se mantiene desde {lowest} y la velocidad plena es {most}: queda poco para controlar. Menos presión u otra bomba."
        )
    },
    band_low: |lowest, least| {
        format!(
            "A bajo gasto la presión se mantiene a {lowest}, menos que la mínima del motor, {least}. Fije {least} como mínima."
        )
    },
    pipe_fast: |part, velocity, usual| {
        let pipe = match part {
            Part::Drop => "la columna",
            Part::Suction => "la succión",
            Part::Surface => "la tubería en superficie",
        };
        format!("El agua corre a {velocity} en {pipe}; lo usual es hasta {usual}. Use un tubo de mayor diámetro.")
    },
    in_screen: |top| {
        format!(
            "La bomba está en el cedazo o abajo de su inicio, {top}: jala arena, que desgasta la bomba y el cedazo, y el agua de arriba no enfría el motor: ponga camisa de flujo."
        )
    },
    beyond_formulas: "Estos datos están más allá de lo que cubren las fórmulas. Revise gasto, diámetro y longitudes.",
    nameplate_disagrees: |way, nameplate, expected| {
        format!(
            "{way}: la placa dice {nameplate}; potencia, eficiencia y factor de potencia dan {expected}. Lea otra vez la placa."
        )
    },
};
