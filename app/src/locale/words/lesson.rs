//! The lesson: why twice the voltage needs a quarter of the metal.

use super::Text;
use super::cautions::Caution;
use wellwright_core::cable::filter::Remedy;
use wellwright_core::job::Way;

/// Words of the lesson.
pub struct Lesson {
    pub word: Text,
    pub title: Text,
    pub lead_in: Text,
    pub link: Text,
    pub steps: [Text; 10],
    pub steps_label: Text,
    pub step_of: fn(usize, usize) -> String,
    pub answered: Text,
    pub own: Text,
    pub own_now: fn(&str, &str, &str, Text) -> String,
    pub example: Text,
    pub example_again: Text,
    pub lead_label: Text,
    pub lead_hint: Text,
    pub take: Text,
    pub take_none: Text,
    pub take_not: Text,
    pub cannot: Text,
    pub sums: Text,
    pub question: Text,
    pub right: Text,
    pub wrong: fn(&str) -> String,
    pub worked: Text,
    pub back: Text,
    pub next: Text,
    pub first_again: Text,
    pub print: Text,
    pub handout_answers: Text,
    pub unread: Text,

    // What each step says.
    pub power: fn(&str, &str) -> String,
    pub power_rule: Text,
    pub power_table: fn(&str, &str) -> String,
    pub amps: fn(&str, &str) -> String,
    pub amps_saved: Text,
    pub share: fn(&str, &str) -> String,
    pub share_same: fn(&str, &str) -> String,
    pub area: Text,
    pub area_asks: fn(&str, &str, &str, &str) -> String,
    pub quarter: fn(&str) -> String,
    pub quarter_is: fn(&str, &str) -> String,
    pub sizes: fn(&str, &str, &str, &str) -> String,
    pub sizes_real: fn(&str) -> String,
    pub heat: fn(&str, &str) -> String,
    pub heat_sizes: fn(&str, &str, &str) -> String,
    pub heat_until: fn(&str, &str) -> String,
    pub pays: fn(&str, &str, &str) -> String,
    pub pays_left: fn(&str, &str) -> String,
    pub pays_from: fn(Way, &str) -> String,
    pub pays_always: Text,
    pub peak: fn(&str) -> String,
    pub peak_here: fn(&str, &str, &str, &str) -> String,
    pub peak_limit: fn(&str) -> String,
    pub peak_remedy: fn(Remedy) -> Text,
    pub peak_own: Text,
    pub peak_none: Text,
    pub home: Text,
    pub home_here: fn(&str, &str, &str, &str) -> String,
    pub home_money: fn(&str) -> String,
    pub home_own: Text,
    pub home_job: fn(&str) -> String,

    // The questions, and why the right answer is right.
    pub ask_power: fn(&str, &str) -> String,
    pub why_power: Text,
    pub ask_amps: fn(&str) -> String,
    pub why_amps: Text,
    pub ask_share: fn(&str) -> String,
    pub why_share: Text,
    pub ask_area: fn(&str, &str) -> String,
    pub why_area: Text,
    pub ask_quarter: fn(&str) -> String,
    pub why_quarter: Text,
    pub ask_sizes: fn(&str) -> String,
    pub why_sizes: fn(&str, &str, &str) -> String,
    pub below_drops: fn(&str, &str) -> String,
    pub below_heats: fn(&str) -> String,
    pub ask_heat: fn(&str) -> String,
    pub why_heat: Text,
    pub ask_pays: fn(&str, &str, &str, &str) -> String,
    pub why_pays: Text,
    pub ask_peak: fn(&str) -> String,
    pub why_peak: Text,
    pub ask_home: Text,
    pub why_home: fn(&str, &str) -> String,

    // Under the pictures.
    pub box_hint: Text,
    pub lost_of: fn(&str, &str) -> String,
    pub wire_hint: Text,
    pub quarter_hint: Text,
    pub asked_hint: Text,
    pub stairs_hint: fn(&str) -> String,
    pub cable: Text,
    pub equipment: Text,
    pub bus: Text,
    pub at_motor: Text,
    pub stands: Text,

    pub connect: Caution,
    pub hot: Caution,
    pub no_design: Caution,
}

/// US English.
pub const ENGLISH: Lesson = Lesson {
    word: "Lesson",
    title: "Twice the voltage, a quarter of the copper",
    lead_in: "Ten short steps with your own numbers. What you answer is kept on this device.",
    link: "Lesson: why twice the voltage needs a quarter of the copper",
    steps: [
        "Power, volts and amps",
        "Twice the volts, half the amps",
        "The drop counts as a share",
        "Copper by its cross-section",
        "Why it becomes a quarter",
        "Wire is sold in steps",
        "Heat is the other limit",
        "Where it pays",
        "The price of a long lead",
        "What to take home",
    ],
    steps_label: "All ten steps",
    step_of: |step, of| format!("Step {step} of {of}"),
    answered: "answered",
    own: "Your numbers",
    own_now: |power, lead, drop, metal| format!("{power}, {lead}, {drop}, {metal}"),
    example: "An invented example. Put in your own.",
    example_again: "Back to the example",
    lead_label: "Length of the lead",
    lead_hint: "from the drive down to the motor",
    take: "Take the numbers of a job",
    take_none: "Choose a job",
    take_not: "That job lacks a motor, a depth or a wire.",
    cannot: "With these numbers the lesson can’t go on: one is missing or wrong, or no listed wire serves so long a lead on one of both voltages. Change them and it goes on.",
    sums: "The sum, with your numbers",
    question: "Your turn",
    right: "Right.",
    wrong: |answer| format!("Not this one. It is {answer}."),
    worked: "Worked out",
    back: "Back",
    next: "Next",
    first_again: "From the beginning",
    print: "Print as a handout",
    handout_answers: "Answers, worked out",
    unread: "What was kept of this lesson can’t be read. It stays on this device as it was, and the lesson begins anew.",

    power: |power, input| {
        format!(
            "A {power} motor at full load takes in {input} of electric power. The shaft gets its share; the rest turns into heat."
        )
    },
    power_rule: "Three wires carry that power. It is √3 × volts × amps × power factor. Turned around, the same rule gives the amps.",
    power_table: |amps, table| {
        format!(
            "The sum gives {amps} at 230\u{a0}V. The code’s table of motors says {table}: wire is sized by the table, or by the nameplate where that says more."
        )
    },
    amps: |low, high| {
        format!(
            "The motor does the same work, so it takes the same watts. On twice the volts every amp carries twice as much: {high} at 460\u{a0}V do what {low} do at 230\u{a0}V."
        )
    },
    amps_saved: "No power is saved. What is saved is current, and current is what wire is bought for.",
    share: |lost, share| {
        format!(
            "Wire takes some volts on the way: amps times its resistance. What the motor feels is the share. In the wire of the 240\u{a0}V lead {lost} are lost, {share} of what is sent."
        )
    },
    share_same: |lost, share| {
        format!(
            "The same wire on 480\u{a0}V: half the amps lose half the volts, {lost}. And they are lost from twice the volts: {share}, a quarter of the share."
        )
    },
    area: "Resistance follows the cross-section: twice the metal, half the resistance. And it follows the length: twice as long, twice the resistance.",
    area_asks: |allowed, lost, lead, area| {
        format!(
            "Now turn it around. {allowed} of 240\u{a0}V may be lost, {lost}. Over {lead} that asks for {area} in each wire, no less."
        )
    },
    quarter: |allowed| {
        format!(
            "Two halves meet. Half the amps need half the area. And {allowed} of twice the volts are twice as many volts to lose: that halves the area again."
        )
    },
    quarter_is: |low, high| format!("½ × ½ = ¼: from {low} to {high} in each wire."),
    sizes: |low_area, low, high_area, high| {
        format!(
            "Nobody sells just the area that you need. You take the first size that keeps the drop and the heat: for {low_area} it is {low}, for {high_area} it is {high}."
        )
    },
    sizes_real: |share| {
        format!(
            "What is left is {share} of the area, not 25\u{a0}%. Along the lead it jumps, as one wire steps up before the other."
        )
    },
    heat: |low, high| {
        format!(
            "However short it is, a wire must carry its amps without getting too hot. The code asks for 125\u{a0}% of the motor’s current: {low} at 240\u{a0}V, {high} at 480\u{a0}V."
        )
    },
    heat_sizes: |low, high, share| format!("That alone asks for {low} and {high}: {share} of the area, not 25\u{a0}%."),
    heat_until: |low, high| {
        format!("Only beyond {low} at 240\u{a0}V and {high} at 480\u{a0}V does the drop ask for more.")
    },
    pays: |low, high, saved| {
        format!("The cable costs {low} for 240\u{a0}V and {high} for 480\u{a0}V. The difference is {saved}.")
    },
    pays_left: |extra, net| {
        format!("The other equipment for 480\u{a0}V costs {extra} more. What 480\u{a0}V saves in all: {net}.")
    },
    pays_from: |way, lead| match way {
        Way::V480 => format!("Break-even: from a lead of {lead} on, 480\u{a0}V stays the cheaper one."),
        Way::V240 => format!("From a lead of {lead} on, 240\u{a0}V stays the cheaper one."),
    },
    pays_always: "With these prices one voltage is the cheaper one at any length.",
    peak: |bus| {
        format!(
            "The higher voltage has a price. A drive makes its output of short pulses, each as high as its bus: {bus} here. A pulse runs down the lead like a wave, and the motor sends most of it back. Both add up."
        )
    },
    peak_here: |lead, peak, low_peak, critical| {
        format!(
            "With nothing in between, {lead} of lead bring {peak} to the motor; at 240\u{a0}V it would be {low_peak}. A lead of {critical} is enough for it."
        )
    },
    peak_limit: |limit| format!("This motor stands {limit}."),
    peak_remedy: |remedy| match remedy {
        Remedy::NoneNeeded => "So nothing is needed in between.",
        Remedy::OutputReactor => {
            "So an output reactor stands between drive and lead. Its price belongs to the equipment."
        }
        Remedy::DvDtFilter => "So a dV/dt filter stands between drive and lead. Its price belongs to the equipment.",
        Remedy::SineFilter => "So a sine filter stands between drive and lead. Its price belongs to the equipment.",
    },
    peak_own: "The drive for 480\u{a0}V therefore has a sine filter built in. Its price belongs to the equipment.",
    peak_none: "With this equipment no pulses reach the motor. Behind others they do: a long lead can double the voltage at the motor.",
    home: "Half the amps, a quarter of the share, a quarter of the area: that is the law.",
    home_here: |low, high, metal_low, metal_high| {
        format!(
            "Here {low} becomes {high}, and {metal_low} of metal become {metal_high}. Steps, heat and the ground wire make the difference to a quarter."
        )
    },
    home_money: |net| format!("In money, with the equipment: {net} on the side of 480\u{a0}V."),
    home_own: "Your own job has more to it: nameplate, surroundings, prices, the supply. Look at its costs:",
    home_job: |name| format!("Costs of {name}"),

    ask_power: |power, amps| {
        format!(
            "A motor of {power} takes {amps} at 230\u{a0}V. How much does one of twice the power take, all else alike?"
        )
    },
    why_power: "Twice the watts at the same volts: twice the amps.",
    ask_amps: |amps| format!("At 230\u{a0}V the motor takes {amps}. How much would it take on three times the volts?"),
    why_amps: "The same watts on three times the volts: a third of the amps, in every wire.",
    ask_share: |share| {
        format!(
            "On 480\u{a0}V this wire loses {share}. What share would it lose on twice the volts once more, for the same motor?"
        )
    },
    why_share: "Half the amps lose half the volts, and from twice the volts: again a quarter.",
    ask_area: |area, lead| {
        format!("{area} do for a lead of {lead}. How much for a lead twice as long, with the same motor and drop?")
    },
    why_area: "Twice the length is twice the resistance; twice the area makes up for it.",
    ask_quarter: |area| format!("And on three times the volts? At 240\u{a0}V it was {area} in each wire."),
    why_quarter: "A third of the amps, and three times the volts to lose: a third of a third is a ninth.",
    ask_sizes: |lead| format!("Which wire does a lead of {lead} take at 480\u{a0}V?"),
    why_sizes: |size, share, allowed| format!("Over it {size} loses {share}; {allowed} are allowed."),
    below_drops: |size, share| format!("{size} would lose {share}."),
    below_heats: |size| format!("{size} may not carry the current."),
    ask_heat: |amps| {
        format!("A motor draws {amps}. For how many amps must its wire be good, however short the lead is?")
    },
    why_heat: "The code asks for 125\u{a0}% of the motor’s current.",
    ask_pays: |lead, low, high, extra| {
        format!(
            "On a lead of {lead} the leads cost {low} for 240\u{a0}V and {high} for 480\u{a0}V; the other equipment costs {extra} more. What does 480\u{a0}V save there?"
        )
    },
    why_pays: "The saving on the cable, less what the equipment costs more. Below zero the lower voltage is the cheaper one.",
    ask_peak: |bus| format!("If the motor sent all of a pulse of {bus} back, how high would it get at the motor?"),
    why_peak: "What comes and what goes back add up: twice the bus. Motors send nearly all of it back.",
    ask_home: "How much of the metal is left in this lead at 480\u{a0}V, ground wire and all?",
    why_home: |low, high| {
        format!(
            "{high} instead of {low}. The law says a quarter; the sizes that are sold, heat and the ground wire have the last word."
        )
    },

    box_hint: "As wide as the volts, as high as the amps: the area is the power.",
    lost_of: |lost, sent| format!("{lost} of {sent}"),
    wire_hint: "One wire cut through, to one scale.",
    quarter_hint: "Dotted: a quarter of the 240\u{a0}V area.",
    asked_hint: "Dotted: what the drop asks for.",
    stairs_hint: |lead| {
        format!(
            "To the right the length of the lead, to {lead}; the upright line is yours. Upward the area of one wire, in the sizes that are sold."
        )
    },
    cable: "cable",
    equipment: "equipment",
    bus: "the drive’s bus",
    at_motor: "at the motor",
    stands: "the motor stands",

    connect: (
        "A motor takes the volts that it is connected for",
        "Its nameplate says which. A licensed electrician reconnects it, locked off and tested dead, by local code and the motor’s manual.",
    ),
    hot: (
        "A wire that is too small burns",
        "The tables hold for their own surroundings, bundling and terminals. Local code, the equipment’s marking and a licensed electrician decide.",
    ),
    no_design: (
        "A lesson is no design and no permit",
        "Before anything is bought or wired: local code, the equipment’s manuals, a licensed electrician. Lock off, wait, test.",
    ),
};

/// Spanish.
pub const SPANISH: Lesson = Lesson {
    word: "Lección",
    title: "El doble de voltaje, la cuarta parte del cobre",
    lead_in: "Diez pasos cortos con sus propios números. Lo que responda se guarda en este dispositivo.",
    link: "Lección: por qué el doble de voltaje pide la cuarta parte del cobre",
    steps: [
        "Potencia, volts y amperes",
        "El doble de volts, la mitad de amperes",
        "La caída cuenta como porcentaje",
        "El cobre, por su sección",
        "Por qué queda la cuarta parte",
        "El conductor se vende por calibres",
        "El calor es el otro límite",
        "Desde dónde conviene",
        "Lo que cuesta el cable largo",
        "Lo que hay que recordar",
    ],
    steps_label: "Los diez pasos",
    step_of: |step, of| format!("Paso {step} de {of}"),
    answered: "respondida",
    own: "Sus números",
    own_now: |power, lead, drop, metal| format!("{power}; {lead}; {drop}; {metal}"),
    example: "Un ejemplo inventado. Ponga los suyos.",
    example_again: "Volver al ejemplo",
    lead_label: "Largo del cable",
    lead_hint: "del variador hasta el motor",
    take: "Tomar los números de un trabajo",
    take_none: "Elija un trabajo",
    take_not: "A ese trabajo le falta motor, profundidad o conductor.",
    cannot: "Con estos números la lección no puede seguir: falta uno o no vale, o ningún calibre listado sirve para un cable tan largo en uno de los dos voltajes. Cámbielos y sigue.",
    sums: "La cuenta, con sus números",
    question: "Ahora usted",
    right: "Correcto.",
    wrong: |answer| format!("Ésa no. Es {answer}."),
    worked: "Resuelto",
    back: "Atrás",
    next: "Siguiente",
    first_again: "Desde el principio",
    print: "Imprimir para repartir",
    handout_answers: "Respuestas, resueltas",
    unread: "Lo que se guardó de esta lección no se puede leer. Queda en este dispositivo como estaba, y la lección empieza de nuevo.",

    power: |power, input| {
        format!(
            "Un motor de {power} a plena carga toma {input} de potencia eléctrica. La flecha recibe su parte; lo demás se vuelve calor."
        )
    },
    power_rule: "Tres conductores llevan esa potencia. Es √3 × volts × amperes × factor de potencia. Al revés, la misma regla da los amperes.",
    power_table: |amps, table| {
        format!(
            "La cuenta da {amps} a 230\u{a0}V. La tabla de motores del código dice {table}: el calibre se elige por la tabla, o por la placa si ésta dice más."
        )
    },
    amps: |low, high| {
        format!(
            "El motor hace el mismo trabajo y toma los mismos watts. Con el doble de volts cada ampere lleva el doble: {high} a 460\u{a0}V hacen lo que {low} a 230\u{a0}V."
        )
    },
    amps_saved: "No se ahorra potencia. Se ahorra corriente, y por la corriente se compra el conductor.",
    share: |lost, share| {
        format!(
            "El conductor se queda con unos volts en el camino: amperes por su resistencia. Lo que siente el motor es el porcentaje. En el conductor del cable de 240\u{a0}V se pierden {lost}, {share} de lo que se manda."
        )
    },
    share_same: |lost, share| {
        format!(
            "El mismo conductor a 480\u{a0}V: la mitad de amperes pierde la mitad de volts, {lost}. Y se pierden del doble de volts: {share}, la cuarta parte del porcentaje."
        )
    },
    area: "La resistencia sigue a la sección: el doble de metal, la mitad de resistencia. Y sigue al largo: el doble de largo, el doble de resistencia.",
    area_asks: |allowed, lost, lead, area| {
        format!(
            "Ahora al revés. De 240\u{a0}V se puede perder {allowed}, {lost}. En {lead} eso pide {area} en cada conductor, no menos."
        )
    },
    quarter: |allowed| {
        format!(
            "Se juntan dos mitades. La mitad de amperes pide la mitad del área. Y {allowed} del doble de volts es el doble de volts que se pueden perder: eso parte el área otra vez a la mitad."
        )
    },
    quarter_is: |low, high| format!("½ × ½ = ¼: de {low} a {high} en cada conductor."),
    sizes: |low_area, low, high_area, high| {
        format!(
            "El conductor se vende por calibres. Se toma el primero que cumple con la caída y el calor: para {low_area} es {low}, para {high_area} es {high}."
        )
    },
    sizes_real: |share| {
        format!(
            "Así la parte real es {share}, no 25\u{a0}%. A lo largo del cable salta, según cuál sube de calibre primero."
        )
    },
    heat: |low, high| {
        format!(
            "Por corto que sea, un conductor debe llevar sus amperes sin calentarse de más. El código pide 125\u{a0}% de la corriente del motor: {low} a 240\u{a0}V, {high} a 480\u{a0}V."
        )
    },
    heat_sizes: |low, high, share| format!("Eso solo ya pide {low} y {high}: {share} del área, no 25\u{a0}%."),
    heat_until: |low, high| format!("Sólo después de {low} a 240\u{a0}V y de {high} a 480\u{a0}V la caída pide más."),
    pays: |low, high, saved| {
        format!("El cable cuesta {low} para 240\u{a0}V y {high} para 480\u{a0}V. La diferencia es {saved}.")
    },
    pays_left: |extra, net| {
        format!("El otro equipo de 480\u{a0}V cuesta {extra} más. Lo que 480\u{a0}V ahorra en total: {net}.")
    },
    pays_from: |way, lead| match way {
        Way::V480 => format!("Punto de equilibrio: desde un cable de {lead}, 480\u{a0}V sale más barato y así sigue."),
        Way::V240 => format!("Desde un cable de {lead}, 240\u{a0}V sale más barato y así sigue."),
    },
    pays_always: "Con estos precios un mismo voltaje sale más barato con cualquier largo.",
    peak: |bus| {
        format!(
            "El voltaje más alto tiene su precio. Un variador arma su salida con pulsos cortos, cada uno tan alto como su bus: {bus} aquí. El pulso corre por el cable como una ola y el motor regresa casi todo. Los dos se suman."
        )
    },
    peak_here: |lead, peak, low_peak, critical| {
        format!(
            "Sin nada de por medio, {lead} de cable llevan {peak} al motor; con 240\u{a0}V serían {low_peak}. Basta un cable de {critical}."
        )
    },
    peak_limit: |limit| format!("Este motor aguanta {limit}."),
    peak_remedy: |remedy| match remedy {
        Remedy::NoneNeeded => "Así que no hace falta nada de por medio.",
        Remedy::OutputReactor => {
            "Por eso va un reactor de salida entre variador y cable. Su precio es parte del equipo."
        }
        Remedy::DvDtFilter => "Por eso va un filtro dV/dt entre variador y cable. Su precio es parte del equipo.",
        Remedy::SineFilter => "Por eso va un filtro senoidal entre variador y cable. Su precio es parte del equipo.",
    },
    peak_own: "Por eso el variador para 480\u{a0}V trae un filtro senoidal. Su precio es parte del equipo.",
    peak_none: "Con este equipo no llegan pulsos al motor. Con otros sí: un cable largo puede duplicar el voltaje en el motor.",
    home: "La mitad de amperes, la cuarta parte del porcentaje, la cuarta parte del área: ésa es la ley.",
    home_here: |low, high, metal_low, metal_high| {
        format!(
            "Aquí {low} pasa a {high}, y {metal_low} de metal pasan a {metal_high}. Los calibres, el calor y la tierra física hacen la diferencia con la cuarta parte."
        )
    },
    home_money: |net| format!("En dinero, con el equipo: {net} a favor de 480\u{a0}V."),
    home_own: "Su propio trabajo tiene más: placa, ambiente, precios, suministro. Vea sus costos:",
    home_job: |name| format!("Costos de {name}"),

    ask_power: |power, amps| {
        format!(
            "Un motor de {power} toma {amps} a 230\u{a0}V. ¿Cuánto toma uno del doble de potencia, con lo demás igual?"
        )
    },
    why_power: "El doble de watts a los mismos volts: el doble de amperes.",
    ask_amps: |amps| format!("A 230\u{a0}V el motor toma {amps}. ¿Cuánto tomaría con el triple de volts?"),
    why_amps: "Los mismos watts con el triple de volts: la tercera parte de los amperes, en cada conductor.",
    ask_share: |share| {
        format!(
            "A 480\u{a0}V este conductor pierde {share}. ¿Qué porcentaje perdería con otra vez el doble de volts, con el mismo motor?"
        )
    },
    why_share: "La mitad de amperes pierde la mitad de volts, y del doble de volts: otra vez la cuarta parte.",
    ask_area: |area, lead| {
        format!(
            "{area} bastan para un cable de {lead}. ¿Cuánto para uno del doble de largo, con el mismo motor y la misma caída?"
        )
    },
    why_area: "El doble de largo es el doble de resistencia; el doble de área lo compensa.",
    ask_quarter: |area| format!("¿Y con el triple de volts? A 240\u{a0}V eran {area} en cada conductor."),
    why_quarter: "La tercera parte de los amperes, y el triple de volts que perder: un tercio de un tercio es un noveno.",
    ask_sizes: |lead| format!("¿Qué conductor lleva un cable de {lead} a 480\u{a0}V?"),
    why_sizes: |size, share, allowed| format!("En él, {size} pierde {share}; se permite {allowed}."),
    below_drops: |size, share| format!("{size} perdería {share}."),
    below_heats: |size| format!("{size} no puede llevar la corriente."),
    ask_heat: |amps| {
        format!("Un motor toma {amps}. ¿Para cuántos amperes debe servir su conductor, por corto que sea el cable?")
    },
    why_heat: "El código pide 125\u{a0}% de la corriente del motor.",
    ask_pays: |lead, low, high, extra| {
        format!(
            "Con {lead} los cables cuestan {low} para 240\u{a0}V y {high} para 480\u{a0}V; el otro equipo cuesta {extra} más. ¿Cuánto ahorra ahí 480\u{a0}V?"
        )
    },
    why_pays: "Lo que se ahorra en el cable, menos lo que el equipo cuesta de más. Bajo cero sale más barato el voltaje menor.",
    ask_peak: |bus| format!("Si el motor regresara completo un pulso de {bus}, ¿hasta cuánto llegaría en el motor?"),
    why_peak: "Lo que llega y lo que regresa se suman: el doble del bus. Los motores reales regresan casi todo.",
    ask_home: "¿Qué parte del metal queda en este cable a 480\u{a0}V, con todo y tierra física?",
    why_home: |low, high| {
        format!(
            "{high} en vez de {low}. La ley dice la cuarta parte; los calibres, el calor y la tierra física tienen la última palabra."
        )
    },

    box_hint: "De ancho los volts, de alto los amperes: el área es la potencia.",
    lost_of: |lost, sent| format!("{lost} de {sent}"),
    wire_hint: "Un conductor cortado, a una sola escala.",
    quarter_hint: "Punteado: la cuarta parte del área de 240\u{a0}V.",
    asked_hint: "Punteado: lo que pide la caída.",
    stairs_hint: |lead| {
        format!(
            "A la derecha el largo del cable, hasta {lead}; la línea vertical es el suyo. Hacia arriba el área de un conductor, en los calibres que se venden."
        )
    },
    cable: "el cable",
    equipment: "equipo",
    bus: "bus del variador",
    at_motor: "en el motor",
    stands: "el motor aguanta",

    connect: (
        "El motor lleva el voltaje para el que está conectado",
        "La placa dice cuál. Lo reconecta un electricista con licencia o calificado, bloqueado y verificado sin voltaje, según el código local y el manual del motor.",
    ),
    hot: (
        "Un conductor muy chico se quema",
        "Las tablas valen para su ambiente, su agrupamiento y sus terminales. Mandan el código local, el marcado del equipo y un electricista con licencia o calificado.",
    ),
    no_design: (
        "Una lección no es un proyecto ni un permiso",
        "Antes de comprar o conectar: el código local, los manuales del equipo y un electricista con licencia o calificado. Bloquee, espere, verifique.",
    ),
};
