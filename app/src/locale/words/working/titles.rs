//! Titles of the workings.

use super::Text;
use wellwright_core::job::{Part, Way};
use wellwright_core::papers::Topic;

/// Titles.
pub struct Titles {
    pub of: fn(Topic) -> String,
}

/// US English.
pub const ENGLISH: Titles = Titles {
    of: |topic| match topic {
        Topic::MotorCurrent(way) => format!("Current that sizes the {} lead", volts(way)),
        Topic::Ampacity(way) => format!("Ampacity of the {} lead", volts(way)),
        Topic::Drop(way) => format!("Drop in the {} lead", volts(way)),
        Topic::CableCost(way, _) => format!("Cost of the {} way", volts(way)),
        Topic::Saving(_) => "What 480\u{a0}V saves".to_owned(),
        Topic::BreakEven(_) => "Depth where the cheaper way changes".to_owned(),
        Topic::PumpingLevel => "Pumping level".to_owned(),
        Topic::Submergence => "Submergence".to_owned(),
        Topic::Demand => "Flow asked for".to_owned(),
        Topic::Drawdown => "Drawdown".to_owned(),
        Topic::WellGives => "What the well gives".to_owned(),
        Topic::TotalHead => "Total dynamic head".to_owned(),
        Topic::Friction(Part::Drop) => "Friction in the drop pipe".to_owned(),
        Topic::Friction(Part::Suction) => "Friction in the suction pipe".to_owned(),
        Topic::Friction(Part::Surface) => "Friction in the surface pipe".to_owned(),
        Topic::Fittings(Part::Drop) => "Fittings of the drop pipe".to_owned(),
        Topic::Fittings(Part::Suction) => "Fittings of the suction pipe".to_owned(),
        Topic::Fittings(Part::Surface) => "Fittings of the surface pipe".to_owned(),
        Topic::PressureHead => "Pressure at the gauge, as head".to_owned(),
        Topic::VelocityHead => "Velocity head".to_owned(),
        Topic::SuctionHead => "Net positive suction head (NPSH)".to_owned(),
        Topic::DeadHead => "Pressure against a shut valve".to_owned(),
        Topic::Cooling => "Speed of the water past the motor".to_owned(),
        Topic::CoolingFlow => "Flow that cools the motor".to_owned(),
        Topic::FullSpeed => "Flow at full speed".to_owned(),
        Topic::ShareOfBest => "Share of the best-efficiency flow".to_owned(),
        Topic::Relief => "Flow of the relief valve".to_owned(),
        Topic::OnPipe => "What the drop pipe holds back".to_owned(),
        Topic::WidestSleeve => "Widest flow sleeve".to_owned(),
        Topic::Weekly => "Water in a week".to_owned(),
        Topic::Tank => "Drawdown of the pressure tank".to_owned(),
        Topic::Surge => "Water hammer".to_owned(),
        Topic::Hanging => "What hangs in the well".to_owned(),
        Topic::ShaftPower => "Power at the shaft".to_owned(),
        Topic::PumpSpeed => "Speed of the pump".to_owned(),
        Topic::LowestSpeed => "Lowest useful speed".to_owned(),
        Topic::MotorLoad => "Load of the motor".to_owned(),
        Topic::RunningCurrent(way) => format!("Running current, {}", volts(way)),
    },
};

/// Spanish.
pub const SPANISH: Titles = Titles {
    of: |topic| match topic {
        Topic::MotorCurrent(way) => format!("Corriente que define el cable de {}", volts(way)),
        Topic::Ampacity(way) => format!("Ampacidad del cable de {}", volts(way)),
        Topic::Drop(way) => format!("Caída en el cable de {}", volts(way)),
        Topic::CableCost(way, _) => format!("Costo de la opción de {}", volts(way)),
        Topic::Saving(_) => "Lo que ahorra 480\u{a0}V".to_owned(),
        Topic::BreakEven(_) => "Profundidad en que cambia la opción más barata".to_owned(),
        Topic::PumpingLevel => "Nivel dinámico".to_owned(),
        Topic::Submergence => "Sumergencia".to_owned(),
        Topic::Demand => "Gasto requerido".to_owned(),
        Topic::Drawdown => "Abatimiento".to_owned(),
        Topic::WellGives => "Lo que da el pozo".to_owned(),
        Topic::TotalHead => "Carga dinámica total".to_owned(),
        Topic::Friction(Part::Drop) => "Fricción en la tubería de columna".to_owned(),
        Topic::Friction(Part::Suction) => "Fricción en la tubería de succión".to_owned(),
        Topic::Friction(Part::Surface) => "Fricción en la tubería en superficie".to_owned(),
        Topic::Fittings(Part::Drop) => "Conexiones de la tubería de columna".to_owned(),
        Topic::Fittings(Part::Suction) => "Conexiones de la tubería de succión".to_owned(),
        Topic::Fittings(Part::Surface) => "Conexiones de la tubería en superficie".to_owned(),
        Topic::PressureHead => "Presión en el manómetro, como carga".to_owned(),
        Topic::VelocityHead => "Carga de velocidad".to_owned(),
        Topic::SuctionHead => "Carga neta positiva de succión (NPSH)".to_owned(),
        Topic::DeadHead => "Presión a válvula cerrada".to_owned(),
        Topic::Cooling => "Velocidad del agua junto al motor".to_owned(),
        Topic::CoolingFlow => "Gasto que enfría el motor".to_owned(),
        Topic::FullSpeed => "Gasto a plena velocidad".to_owned(),
        Topic::ShareOfBest => "Parte del gasto de mejor eficiencia".to_owned(),
        Topic::Relief => "Gasto de la válvula de alivio".to_owned(),
        Topic::OnPipe => "Lo que retiene la columna".to_owned(),
        Topic::WidestSleeve => "Camisa de flujo más ancha".to_owned(),
        Topic::Weekly => "Agua a la semana".to_owned(),
        Topic::Tank => "Agua útil del tanque hidroneumático".to_owned(),
        Topic::Surge => "Golpe de ariete".to_owned(),
        Topic::Hanging => "Lo que cuelga en el pozo".to_owned(),
        Topic::ShaftPower => "Potencia en la flecha".to_owned(),
        Topic::PumpSpeed => "Velocidad de la bomba".to_owned(),
        Topic::LowestSpeed => "Velocidad mínima útil".to_owned(),
        Topic::MotorLoad => "Carga del motor".to_owned(),
        Topic::RunningCurrent(way) => format!("Corriente en marcha, {}", volts(way)),
    },
};

fn volts(way: Way) -> Text {
    match way {
        Way::V240 => "240\u{a0}V",
        Way::V480 => "480\u{a0}V",
    }
}
