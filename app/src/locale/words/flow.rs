//! The water and the pump: what is chosen, what follows, what is found.

use super::Text;
use wellwright_core::finding::Supplier;
use wellwright_core::job::{Control, DemandBy, DepthOf, DrawdownBy, Part};
use wellwright_core::pump::curve::Quantity;
use wellwright_core::pump::motor::MotorKind;
use wellwright_core::standards::fittings::Fitting;
use wellwright_core::water::line::FrictionMethod;

/// Words of the pages Water and Pump.
pub struct Flow {
    // Groups of figures.
    pub asked: Text,
    pub well: Text,
    pub open_water: Text,
    pub more_of_well: Text,
    pub line: Text,
    pub more_of_line: Text,
    pub tank: Text,
    pub curve: Text,
    pub speed: Text,
    pub band: Text,
    pub motor: Text,
    pub more_of_motor: Text,
    pub cooling: Text,
    pub string: Text,
    pub suction: Text,

    // Choices.
    pub where_label: Text,
    pub demand_label: Text,
    pub demand: fn(DemandBy) -> Text,
    pub depth_of_label: Text,
    pub depth_of: fn(DepthOf) -> Text,
    pub drawdown_label: Text,
    pub drawdown: fn(DrawdownBy) -> Text,
    pub friction_label: Text,
    pub friction: fn(FrictionMethod) -> Text,
    pub control_label: Text,
    pub control: fn(Control) -> Text,
    pub series_label: fn(Part) -> Text,
    pub size_label: fn(Part) -> Text,
    pub steel: fn(&str) -> String,
    pub pvc_schedule: fn(&str) -> String,
    pub pvc_sdr: fn(&str) -> String,
    pub pe_dr: fn(&str) -> String,
    pub pe_sidr: fn(&str) -> String,
    pub add_fitting: Text,
    pub add_to: fn(Part) -> Text,
    pub fitting: fn(Text, &str) -> String,
    pub fitting_name: fn(Fitting) -> Text,
    pub place: fn(MotorKind) -> Text,
    pub typed: fn(usize) -> String,

    // Answers.
    pub flow_worked_out: Text,
    pub flow_hint: Text,
    pub daily: Text,
    pub weekly: Text,
    pub weekly_hint: Text,
    pub drawdown_worked_out: Text,
    pub well_gives: Text,
    pub well_gives_hint: Text,
    pub tank_gives: Text,
    pub tank_gives_hint: Text,
    pub run_time: Text,
    pub run_time_hint: Text,
    pub starts: Text,
    pub starts_hint: Text,
    pub per_hour: Text,
    pub pump_speed: Text,
    pub pump_speed_hint: Text,
    pub lowest_speed: Text,
    pub lowest_speed_hint: Text,
    pub most_flow: Text,
    pub most_flow_hint: Text,
    pub shaft: Text,
    pub shaft_hint: Text,
    pub of_best: Text,
    pub of_best_hint: Text,
    pub dead_head: Text,
    pub dead_head_hint: Text,
    pub relief: Text,
    pub relief_hint: Text,
    pub load: Text,
    pub load_hint: Text,
    pub running_230: Text,
    pub running_460: Text,
    pub past_motor: Text,
    pub past_motor_hint: Text,
    pub cooling_flow: Text,
    pub cooling_flow_hint: Text,
    pub widest_sleeve: Text,
    pub widest_sleeve_hint: Text,
    pub hanging: Text,
    pub hanging_hint: Text,
    pub surge: Text,
    pub surge_hint: Text,
    pub npsh: Text,
    pub npsh_hint: Text,

    // The first thing that is said.
    pub gives: fn(&str, &str) -> String,
    pub gives_head: fn(&str, &str) -> String,
    pub enter_for_head: Text,

    // The curve as text.
    pub curve_hint: Text,
    pub curve_points: fn(usize, &str) -> String,
    pub column: fn(Quantity, &str, bool) -> String,
    pub curve_file: Text,
    pub curve_demo: Text,
    pub curve_demo_hint: Text,
    pub curve_demo_names: [Text; 3],
    pub curve_demo_none: Text,
    pub points: Text,
    pub curve_in_liters: Text,
    pub curve_in_cubic_meters: Text,
    pub curve_clear: Text,
    pub curve_at: fn(usize, usize, &str) -> String,
    pub curve_no_points: Text,
    pub curve_too_many: fn(usize) -> String,
    pub curve_cells: fn(usize, usize) -> String,
    pub curve_not_number: fn(&str) -> String,
    pub curve_two_ways: fn(&str) -> String,
    pub curve_unit: fn(&str) -> String,
    pub curve_columns: Text,
    pub curve_few: fn(usize) -> String,
    pub curve_point: fn(usize, &str) -> String,
    pub curve_figure: Text,
    pub curve_flow_not_rising: Text,
    pub curve_never_falls: Text,
    pub curve_gap: Text,
    pub curve_efficiency: Text,
    pub curve_power_short: Text,

    // What is found.
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
    pub cooling_low: fn(&str, &str, &str, &str) -> String,
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
pub const ENGLISH: Flow = Flow {
    asked: "What is asked for",
    well: "The well",
    open_water: "Open water",
    more_of_well: "More about the well",
    line: "Pipe line and pressure",
    more_of_line: "Pipe details",
    tank: "Pressure tank",
    curve: "The pump’s curve",
    speed: "Speed",
    band: "Frequencies",
    motor: "The motor",
    more_of_motor: "More from the nameplate",
    cooling: "Motor cooling",
    string: "What hangs in the well",
    suction: "Suction",
    where_label: "Where the pump works",
    demand_label: "Told as",
    demand: |by| match by {
        DemandBy::Flow => "Flow",
        DemandBy::Land => "Land",
        DemandBy::PeopleAndStock => "People, stock",
    },
    depth_of_label: "That depth is",
    depth_of: |of| match of {
        DepthOf::Gross => "As pumped",
        DepthOf::Net => "At the roots",
    },
    drawdown_label: "Drawdown",
    drawdown: |by| match by {
        DrawdownBy::Measured => "Measured at this flow",
        DrawdownBy::SpecificCapacity => "By specific capacity",
        DrawdownBy::Aquifer => "By the aquifer",
    },
    friction_label: "Friction by",
    friction: |method| match method {
        FrictionMethod::DarcyWeisbach => "Darcy-Weisbach",
        FrictionMethod::HazenWilliams => "Hazen-Williams",
    },
    control_label: "Control",
    control: |control| match control {
        Control::ConstantPressure => "The drive holds the pressure",
        Control::OnOff => "On and off at full speed",
    },
    series_label: |part| match part {
        Part::Drop => "Drop pipe, made of",
        Part::Suction => "Suction pipe, made of",
        Part::Surface => "Surface pipe, made of",
    },
    size_label: |part| match part {
        Part::Drop => "Drop pipe, size",
        Part::Suction => "Suction pipe, size",
        Part::Surface => "Surface pipe, size",
    },
    steel: |schedule| format!("Steel, schedule {schedule}"),
    pvc_schedule: |schedule| format!("PVC, schedule {schedule}"),
    pvc_sdr: |ratio| format!("PVC, ratio SDR {ratio}"),
    pe_dr: |ratio| format!("Polyethylene, DR {ratio}"),
    pe_sidr: |ratio| format!("Polyethylene, SIDR {ratio}"),
    add_fitting: "Add a fitting",
    add_to: |part| match part {
        Part::Drop => "Fittings of the drop pipe",
        Part::Suction => "Fittings of the suction pipe",
        Part::Surface => "Fittings of the surface pipe",
    },
    fitting: |name, k| format!("{name}, adds K {k}"),
    fitting_name: |fitting| match fitting {
        Fitting::Elbow90Threaded => "90° elbow, threaded",
        Fitting::Elbow90Flanged => "90° elbow, flanged or welded",
        Fitting::Elbow45Threaded => "45° elbow, threaded",
        Fitting::TeeRunThreaded => "Tee, straight through",
        Fitting::TeeBranchThreaded => "Tee, through the branch",
        Fitting::GateValve => "Gate valve, open",
        Fitting::BallValve => "Ball valve, open",
        Fitting::GlobeValve => "Globe valve, open",
        Fitting::SwingCheck => "Swing check valve",
        Fitting::FootValveHinged => "Foot valve, hinged",
        Fitting::FootValvePoppet => "Foot valve, poppet",
        Fitting::EntranceSharp => "Sharp entrance from a tank",
        Fitting::Exit => "Exit into a tank",
    },
    place: |kind| match kind {
        MotorKind::Submersible => "In the well",
        MotorKind::Surface => "On the surface",
    },
    typed: |count| match count {
        0 => String::new(),
        1 => format!("{count} figure"),
        count => format!("{count} figures"),
    },
    flow_worked_out: "Flow",
    flow_hint: "the day’s water over the pumping hours",
    daily: "Water in a day",
    weekly: "Water in a week",
    weekly_hint: "at this flow, all the pumping hours",
    drawdown_worked_out: "Drawdown worked out",
    well_gives: "The well gives",
    well_gives_hint: "drawn down to the pump",
    tank_gives: "The tank gives",
    tank_gives_hint: "between cut-out and cut-in",
    run_time: "Run time to fill it",
    run_time_hint: "with nothing drawn",
    starts: "Starts at worst",
    starts_hint: "half of the flow drawn",
    per_hour: "per hour",
    pump_speed: "Frequency",
    pump_speed_hint: "at which it gives the flow",
    lowest_speed: "Lowest useful frequency",
    lowest_speed_hint: "just holds the pressure, nothing drawn",
    most_flow: "Flow at full speed",
    most_flow_hint: "through this line",
    shaft: "Power at the shaft",
    shaft_hint: "at the flow asked for",
    of_best: "Share of best-efficiency flow",
    of_best_hint: "at that speed",
    dead_head: "Against a shut valve",
    dead_head_hint: "at the gauge, full speed",
    relief: "Relief valve passes",
    relief_hint: "set to the least rating",
    load: "Motor load",
    load_hint: "of its rating",
    running_230: "Running current, 230\u{a0}V",
    running_460: "Running current, 460\u{a0}V",
    past_motor: "Water past the motor",
    past_motor_hint: "at the least flow, else the flow asked for",
    cooling_flow: "Flow that cools the motor",
    cooling_flow_hint: "unless its manual says otherwise",
    widest_sleeve: "Widest flow sleeve",
    widest_sleeve_hint: "that keeps the water fast enough",
    hanging: "Hangs in the well",
    hanging_hint: "pipe full of water, cable not counted",
    surge: "Surge on a sudden stop",
    surge_hint: "on top of the pressure before",
    npsh: "NPSH available",
    npsh_hint: "head at the pump’s suction",
    gives: |flow, pressure| format!("Pump and well give {flow} at {pressure}."),
    gives_head: |flow, head| format!("{flow} takes {head} of head; enter the pump to see whether it gives that."),
    enter_for_head: "Not known yet whether pump and well give what is asked. Enter",
    curve_hint: "One point a line: flow, head, efficiency or power. Flow in gpm, head in ft, efficiency in %, unless a first line names the units.",
    curve_points: |count, columns| format!("{count} points: {columns}"),
    column: |quantity, unit, told| {
        let name = match quantity {
            Quantity::Flow => "flow",
            Quantity::Head => "head",
            Quantity::Efficiency => "efficiency",
            Quantity::Power => "power",
        };
        if told { format!("{name} in {unit}") } else { format!("{name} in {unit} (assumed)") }
    },
    curve_file: "Drop a text or CSV file here, or choose one",
    curve_demo: "Try an invented curve",
    curve_demo_hint: "No pump that can be bought has it.",
    curve_demo_names: ["House well, 25\u{a0}gpm", "Field well, 250\u{a0}gpm", "Surface, 800\u{a0}gpm"],
    curve_demo_none: "Choose one",
    points: "Points",
    curve_in_liters: "My points are in L/s and m",
    curve_in_cubic_meters: "My points are in m³/h and m",
    curve_clear: "Remove the curve",
    curve_at: |line, column, why| format!("Line {line}, column {column}: {why}"),
    curve_no_points: "no number found.",
    curve_too_many: |most| format!("more than {most} points."),
    curve_cells: |given, wanted| format!("{given} numbers, {wanted} needed."),
    curve_not_number: |cell| format!("“{cell}” is not a number."),
    curve_two_ways: |cell| format!("“{cell}” can be read two ways; write decimals with a point."),
    curve_unit: |cell| format!("“{cell}” is no unit known here."),
    curve_columns: "flow and head are needed, each once.",
    curve_few: |given| format!("{given} points; at least 3 are needed."),
    curve_point: |point, why| format!("Point {point}: {why}"),
    curve_figure: "a figure is below zero or beyond what a pump gives.",
    curve_flow_not_rising: "the flow must rise from point to point.",
    curve_never_falls: "The head never falls; columns may be swapped.",
    curve_gap: "efficiency or power is missing; give it for all points or none.",
    curve_efficiency: "this efficiency can’t be: zero only where no water is lifted.",
    curve_power_short: "less power at the shaft than in the water.",
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
    cooling_low: |speed, advised, flow, sleeve| {
        format!(
            "Water passes the motor at {speed}, {advised} advised. Keep at least {flow}, or fit a flow sleeve of {sleeve} inside or less."
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
        format!("The pump hangs in the screen or below its top, {top}: it draws sand and can wear through.")
    },
    beyond_formulas: "These figures lie beyond what the formulas hold for. Check flow, pipe size and lengths.",
    nameplate_disagrees: |way, nameplate, expected| {
        format!(
            "{way}: the nameplate says {nameplate}, power, efficiency and power factor make {expected}. Read the plate again."
        )
    },
};

/// Spanish.
pub const SPANISH: Flow = Flow {
    asked: "Lo que se pide",
    well: "El pozo",
    open_water: "Agua abierta",
    more_of_well: "Más del pozo",
    line: "Tubería y presión",
    more_of_line: "Detalle de las tuberías",
    tank: "Tanque hidroneumático",
    curve: "La curva de la bomba",
    speed: "Velocidad",
    band: "Frecuencias",
    motor: "El motor",
    more_of_motor: "Más de la placa",
    cooling: "Enfriamiento del motor",
    string: "Lo que cuelga en el pozo",
    suction: "Succión",
    where_label: "Dónde trabaja la bomba",
    demand_label: "Dado como",
    demand: |by| match by {
        DemandBy::Flow => "Gasto",
        DemandBy::Land => "Riego",
        DemandBy::PeopleAndStock => "Gente, ganado",
    },
    depth_of_label: "Esa lámina es",
    depth_of: |of| match of {
        DepthOf::Gross => "Bombeada",
        DepthOf::Net => "En las raíces",
    },
    drawdown_label: "Abatimiento",
    drawdown: |by| match by {
        DrawdownBy::Measured => "Medido a este gasto",
        DrawdownBy::SpecificCapacity => "Por capacidad específica",
        DrawdownBy::Aquifer => "Por el acuífero",
    },
    friction_label: "Fricción por",
    friction: |method| match method {
        FrictionMethod::DarcyWeisbach => "Darcy-Weisbach",
        FrictionMethod::HazenWilliams => "Hazen-Williams",
    },
    control_label: "Control",
    control: |control| match control {
        Control::ConstantPressure => "El variador mantiene la presión",
        Control::OnOff => "Arranque y paro a plena velocidad",
    },
    series_label: |part| match part {
        Part::Drop => "Columna, material",
        Part::Suction => "Succión, material",
        Part::Surface => "Tubería en superficie, material",
    },
    size_label: |part| match part {
        Part::Drop => "Columna, diámetro",
        Part::Suction => "Succión, diámetro",
        Part::Surface => "Tubería en superficie, diámetro",
    },
    steel: |schedule| format!("Acero, cédula {schedule}"),
    pvc_schedule: |schedule| format!("PVC, cédula {schedule}"),
    pvc_sdr: |ratio| format!("PVC, relación SDR {ratio}"),
    pe_dr: |ratio| format!("Polietileno, DR {ratio}"),
    pe_sidr: |ratio| format!("Polietileno, SIDR {ratio}"),
    add_fitting: "Agregar una conexión",
    add_to: |part| match part {
        Part::Drop => "Conexiones de la columna",
        Part::Suction => "Conexiones de la succión",
        Part::Surface => "Conexiones en superficie",
    },
    fitting: |name, k| format!("{name}, suma K {k}"),
    fitting_name: |fitting| match fitting {
        Fitting::Elbow90Threaded => "Codo de 90°, roscado",
        Fitting::Elbow90Flanged => "Codo de 90°, bridado o soldado",
        Fitting::Elbow45Threaded => "Codo de 45°, roscado",
        Fitting::TeeRunThreaded => "Te, paso recto",
        Fitting::TeeBranchThreaded => "Te, por el ramal",
        Fitting::GateValve => "Válvula de compuerta, abierta",
        Fitting::BallValve => "Válvula de bola, abierta",
        Fitting::GlobeValve => "Válvula de globo, abierta",
        Fitting::SwingCheck => "Válvula check de columpio",
        Fitting::FootValveHinged => "Válvula de pie, de charnela",
        Fitting::FootValvePoppet => "Válvula de pie, de pistón",
        Fitting::EntranceSharp => "Entrada viva desde un tanque",
        Fitting::Exit => "Descarga a un tanque",
    },
    place: |kind| match kind {
        MotorKind::Submersible => "En el pozo",
        MotorKind::Surface => "En superficie",
    },
    typed: |count| match count {
        0 => String::new(),
        1 => format!("{count} dato"),
        count => format!("{count} datos"),
    },
    flow_worked_out: "Gasto",
    flow_hint: "agua del día entre las horas de bombeo",
    daily: "Agua al día",
    weekly: "Agua a la semana",
    weekly_hint: "a este gasto, todas las horas de bombeo",
    drawdown_worked_out: "Abatimiento calculado",
    well_gives: "El pozo da",
    well_gives_hint: "abatido hasta la bomba",
    tank_gives: "El tanque da",
    tank_gives_hint: "entre paro y arranque",
    run_time: "Tiempo para llenarlo",
    run_time_hint: "sin sacar agua",
    starts: "Arranques, peor caso",
    starts_hint: "sacando la mitad del gasto",
    per_hour: "por hora",
    pump_speed: "Frecuencia",
    pump_speed_hint: "a la que da el gasto",
    lowest_speed: "Frecuencia útil más baja",
    lowest_speed_hint: "apenas mantiene la presión, sin sacar agua",
    most_flow: "Gasto a plena velocidad",
    most_flow_hint: "por esta tubería",
    shaft: "Potencia en la flecha",
    shaft_hint: "al gasto requerido",
    of_best: "Parte del gasto de mejor eficiencia",
    of_best_hint: "a esa velocidad",
    dead_head: "Contra válvula cerrada",
    dead_head_hint: "en el manómetro, a plena velocidad",
    relief: "La válvula de alivio pasa",
    relief_hint: "ajustada a la presión nominal menor",
    load: "Carga del motor",
    load_hint: "de su potencia nominal",
    running_230: "Corriente de trabajo, 230\u{a0}V",
    running_460: "Corriente de trabajo, 460\u{a0}V",
    past_motor: "Agua junto al motor",
    past_motor_hint: "al gasto mínimo, o si no al requerido",
    cooling_flow: "Gasto que enfría el motor",
    cooling_flow_hint: "salvo que su manual diga otra cosa",
    widest_sleeve: "Camisa de flujo más ancha",
    widest_sleeve_hint: "que mantiene el agua con velocidad",
    hanging: "Cuelga en el pozo",
    hanging_hint: "columna llena de agua, sin contar el cable",
    surge: "Golpe de ariete al parar de golpe",
    surge_hint: "sobre la presión anterior",
    npsh: "NPSH disponible",
    npsh_hint: "carga en la succión de la bomba",
    gives: |flow, pressure| format!("Bomba y pozo dan {flow} a {pressure}."),
    gives_head: |flow, head| format!("{flow} requiere {head} de carga; capture la bomba para ver si la da."),
    enter_for_head: "Aún no se sabe si bomba y pozo dan lo que se pide. Capture",
    curve_hint: "Un punto por renglón: gasto, carga, eficiencia o potencia. Gasto en gpm, carga en ft, eficiencia en %, si el primer renglón no da otras unidades.",
    curve_points: |count, columns| format!("{count} puntos: {columns}"),
    column: |quantity, unit, told| {
        let name = match quantity {
            Quantity::Flow => "gasto",
            Quantity::Head => "carga",
            Quantity::Efficiency => "eficiencia",
            Quantity::Power => "potencia",
        };
        if told { format!("{name} en {unit}") } else { format!("{name} en {unit} (supuesto)") }
    },
    curve_file: "Suelte aquí un archivo de texto o CSV, o elija uno",
    curve_demo: "Probar una curva inventada",
    curve_demo_hint: "Ninguna bomba que se venda la tiene.",
    curve_demo_names: ["Pozo de casa, 25\u{a0}gpm", "Pozo de riego, 250\u{a0}gpm", "De superficie, 800\u{a0}gpm"],
    curve_demo_none: "Elija una",
    points: "Puntos",
    curve_in_liters: "Mis puntos están en L/s y m",
    curve_in_cubic_meters: "Mis puntos están en m³/h y m",
    curve_clear: "Quitar la curva",
    curve_at: |line, column, why| format!("Renglón {line}, columna {column}: {why}"),
    curve_no_points: "no hay ningún número.",
    curve_too_many: |most| format!("más de {most} puntos."),
    curve_cells: |given, wanted| format!("{given} números, se requieren {wanted}."),
    curve_not_number: |cell| format!("«{cell}» no es un número."),
    curve_two_ways: |cell| format!("«{cell}» se puede leer de dos maneras; use punto decimal."),
    curve_unit: |cell| format!("«{cell}» no es una unidad conocida aquí."),
    curve_columns: "se requieren gasto y carga, una vez cada uno.",
    curve_few: |given| format!("{given} puntos; se requieren al menos 3."),
    curve_point: |point, why| format!("Punto {point}: {why}"),
    curve_figure: "un dato es menor que cero o más de lo que da una bomba.",
    curve_flow_not_rising: "el gasto debe subir de punto a punto.",
    curve_never_falls: "La carga nunca baja; quizá las columnas están cambiadas.",
    curve_gap: "falta eficiencia o potencia; dela en todos los puntos o en ninguno.",
    curve_efficiency: "esta eficiencia no puede ser: cero sólo donde no se sube agua.",
    curve_power_short: "menos potencia en la flecha que en el agua.",
    demand_not_met: |by, gives, asked| match by {
        Supplier::Pump => format!(
            "La bomba da cuando más {gives} de {asked} que se piden. Una bomba mayor, menos presión, tubo más ancho, o almacenamiento y más horas."
        ),
        Supplier::Well => format!(
            "El pozo da cuando más {gives} de {asked} que se piden antes de abatirse hasta la bomba. Almacenamiento, más horas, bomba más abajo u otra fuente."
        ),
        Supplier::Test => format!("El pozo se aforó a {gives} y se piden {asked}. Aforelo primero a ese gasto."),
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
            "La succión tiene {available} de carga y se requieren {required} con su margen: cavitaría. Menos altura, o succión más ancha."
        )
    },
    over_rating: |gauge, rating| {
        format!(
            "Contra válvula cerrada la bomba da {gauge}; la parte más débil es de {rating}. Ponga válvula de alivio para todo el gasto, sin válvula antes; limite la velocidad; o use partes más fuertes."
        )
    },
    cooling_low: |speed, advised, flow, sleeve| {
        format!(
            "El agua pasa junto al motor a {speed}, se recomienda {advised}. Mantenga al menos {flow}, o ponga camisa de flujo de {sleeve} de interior o menos."
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
        format!("El agua corre a {velocity} en {pipe}; lo usual es hasta {usual}. Use un tubo más ancho.")
    },
    in_screen: |top| format!("La bomba está en el cedazo o abajo de su inicio, {top}: jala arena y lo puede gastar."),
    beyond_formulas: "Estos datos están más allá de lo que cubren las fórmulas. Revise gasto, diámetro y longitudes.",
    nameplate_disagrees: |way, nameplate, expected| {
        format!(
            "{way}: la placa dice {nameplate}; potencia, eficiencia y factor de potencia dan {expected}. Lea otra vez la placa."
        )
    },
};
