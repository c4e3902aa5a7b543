//! A family of equipment that powers a motor, as data: what it is fed with, what it gives, wastes and stands.

use crate::error::OutsideRange;
use crate::quantity::{
    Celsius, ElectricCurrent, ElectricPotential, Length, PieceAndSize, in_amperes, in_meters, volts,
};
use crate::standards::enclosure::EnclosureType;
use crate::standards::motor_current::RatedVoltage;
use serde::{Deserialize, Serialize};

/// The kinds of equipment that a motor can be powered by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// Phase-converting drive with an active front end.
    ConvertingActive,
    /// Phase-converting drive with a passive front end.
    ConvertingPassive,
    /// Phase-converting drive that doubles the voltage, regulated.
    Doubling,
    /// Large phase-converting drive of low harmonic current.
    LargeLowHarmonic,
    /// Large phase-converting drive without a choke.
    LargeEconomy,
    /// The same with a choke ahead of it.
    LargeEconomyChoke,
    /// Solid-state phase converter: the motor runs at full speed.
    SolidStateConverter,
    /// Rotary phase converter: the motor runs at full speed.
    RotaryConverter,
    /// Three-phase drive on two lines, derated.
    DeratedDrive,
    /// Active low-voltage drive and a transformer up to the motor's voltage.
    StepUpActive,
    /// Passive low-voltage drive and a transformer up to the motor's voltage.
    StepUpPassive,
    /// Three-phase line, extended to the well, and a plain drive.
    ThreePhaseLine,
    /// Three-phase generator set straight to a plain drive.
    ThreePhaseGenerator,
    /// Single-phase motor, nothing converted.
    SinglePhaseMotor,
}

impl Kind {
    /// All kinds.
    pub const ALL: [Self; 14] = [
        Self::ConvertingActive,
        Self::ConvertingPassive,
        Self::Doubling,
        Self::LargeLowHarmonic,
        Self::LargeEconomy,
        Self::LargeEconomyChoke,
        Self::SolidStateConverter,
        Self::RotaryConverter,
        Self::DeratedDrive,
        Self::StepUpActive,
        Self::StepUpPassive,
        Self::ThreePhaseLine,
        Self::ThreePhaseGenerator,
        Self::SinglePhaseMotor,
    ];
}

/// Lines of a supply or of a motor.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Feed {
    /// Two lines.
    SinglePhase,
    /// Three lines, balanced.
    ThreePhase,
}

impl Feed {
    /// Apparent power over line voltage times line current: 1 for two lines, √3 for three.
    ///
    /// # Units
    /// Dimensionless.
    /// # Range
    /// Three lines balanced.
    /// # Source
    /// Circuit geometry.
    #[must_use]
    pub fn factor(self) -> f64 {
        match self {
            Self::SinglePhase => 1.0,
            Self::ThreePhase => 3f64.sqrt(),
        }
    }
}

/// Voltage class of a supply or an output.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Class {
    /// 240 V systems, 230 V motors.
    Low,
    /// 480 V systems, 460 V motors.
    High,
}

/// Volts above which a supply counts as one of 480 V.
const HIGH_ABOVE: f64 = 300.0;
/// Largest supply over the nominal volts of its class.
const MOST_OF_NOMINAL: f64 = 1.1;
/// How far from its nominal volts a supply usually is, as a share: range A of the service voltage.
pub const USUAL_SUPPLY_BAND: f64 = 0.05;

impl Class {
    /// The class that a supply counts as: of 480 V above 300 V.
    ///
    /// # Units
    /// Line to line.
    /// # Range
    /// Any voltage.
    /// # Source
    /// Practice: halfway between the systems of [ansi-c84.1], or so.
    #[must_use]
    pub fn of_supply(supply: ElectricPotential) -> Self {
        if supply > volts(HIGH_ABOVE) { Self::High } else { Self::Low }
    }

    /// Whether equipment of the class takes a supply: up to 1.1 times its nominal volts.
    ///
    /// # Units
    /// Line to line.
    /// # Range
    /// Any voltage; low volts are judged by what reaches the motor.
    /// # Source
    /// Practice: makers commonly allow 10 % over nominal; [ansi-c84.1] ends range B at 5.8 % over.
    #[must_use]
    pub fn takes(self, supply: ElectricPotential) -> bool {
        supply <= MOST_OF_NOMINAL * self.nominal()
    }

    /// Nominal voltage of the system: 240 or 480 V.
    ///
    /// # Units
    /// Line to line.
    /// # Range
    /// Systems of North America.
    /// # Source
    /// [ansi-c84.1].
    #[must_use]
    pub fn nominal(self) -> ElectricPotential {
        volts(match self {
            Self::Low => 240.0,
            Self::High => 480.0,
        })
    }

    /// Rated voltage of the motors on such a system: the column of the motor table.
    ///
    /// # Units
    /// A column: 230 or 460 V.
    /// # Range
    /// Systems of North America.
    /// # Source
    /// [nec-2023-430.250].
    #[must_use]
    pub fn motor_column(self) -> RatedVoltage {
        match self {
            Self::Low => RatedVoltage::V230,
            Self::High => RatedVoltage::V460,
        }
    }
}

/// What a family takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Supply {
    /// Lines that it takes.
    pub feed: Feed,
    /// Whether it is made for 240 V.
    pub low: bool,
    /// Whether it is made for 480 V.
    pub high: bool,
}

/// How the class changes from supply to motor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Change {
    /// It does not.
    None,
    /// From 240 to 480 V within the drive.
    Doubled,
    /// From 240 to 480 V in a transformer behind the drive.
    SteppedUp {
        /// Share of the volts that the transformer's impedance takes.
        drop: f64,
    },
}

/// What the input draws.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// Power factor of the fundamental.
    pub displacement: f64,
    /// Total harmonic distortion of the current, as a share of the fundamental.
    pub distortion: f64,
    /// Power out over power in.
    pub efficiency: f64,
    /// Whether a filter or choke at the input is part of it.
    pub filtered: bool,
}

/// A frame: its size, and its amperes where a data sheet gives them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    /// Horsepower that it is sold by.
    pub hp: f64,
    /// Continuous output amperes on a 240 V class output, typed from a data sheet.
    pub low: Option<f64>,
    /// The same on a 480 V class output.
    pub high: Option<f64>,
    /// Rated input amperes, typed from a data sheet.
    pub input: Option<f64>,
    /// Largest overcurrent device ahead of it that is marked, amperes.
    pub device: Option<f64>,
}

impl Step {
    /// A frame of which nothing but its size is known.
    ///
    /// # Units
    /// Horsepower.
    /// # Range
    /// Any.
    /// # Source
    /// Definition.
    #[must_use]
    pub const fn sized(hp: f64) -> Self {
        Self { hp, low: None, high: None, input: None, device: None }
    }
}

/// What is marked on the equipment beside its amperes.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Marking {
    /// Short-circuit current rating.
    pub short_circuit: Option<ElectricCurrent>,
    /// Type of its enclosure.
    pub enclosure: Option<EnclosureType>,
}

/// What stands between the output and the lead.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Filter {
    /// Nothing: pulses go to the lead.
    None,
    /// A sine filter.
    Sine {
        /// Share of the volts that it takes.
        share: f64,
        /// Part of the equipment, or bought besides.
        built_in: bool,
    },
    /// Two lines pass straight through and the made one is filtered.
    MadeLine,
}

/// Voltage of the direct-current bus, for the stress on the motor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Bus {
    /// Held by the front end, by the class of the drive's output.
    Held {
        /// On a 240 V class output, V.
        low: f64,
        /// On a 480 V class output, V.
        high: f64,
    },
    /// Charged to the peak of the supply, times a rise for high line: √2 V_in · rise.
    Peak {
        /// Rise.
        rise: f64,
    },
    /// Mean of a six-pulse bridge, times a rise for high line: 3√2/π V_in · rise.
    Mean {
        /// Rise.
        rise: f64,
    },
    /// No bus that feeds the motor.
    None,
}

/// Volts of the output at full speed, before filter and transformer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum OutputRule {
    /// Nominal while the input is at least this share of its nominal, below that in proportion.
    Held {
        /// Least share of the nominal input.
        floor: f64,
    },
    /// A share of the input.
    Follows {
        /// Share.
        share: f64,
    },
}

/// How the motor starts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Start {
    /// Ramped up by a drive, at any speed after.
    Ramp,
    /// At once onto full volts, at full speed after.
    AcrossTheLine {
        /// Locked-rotor current over full-load current.
        multiple: f64,
    },
}

/// Surroundings that the output amperes hold for, and what is taken off beyond.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rating {
    /// Warmest ambient without derating.
    pub ambient: Celsius,
    /// Share taken off for each degree above.
    pub per_degree: f64,
    /// Degrees above within which that holds; beyond, the maker is asked.
    pub degrees: f64,
    /// Altitude without derating.
    pub altitude: Length,
    /// Share taken off for each 100 m above.
    pub per_100_m: f64,
    /// Altitude to which that holds; beyond, the maker is asked.
    pub highest: Length,
}

/// A family of equipment. Every figure can be replaced by that of a data sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct Family {
    /// What the user calls it; empty for a generic family.
    pub name: String,
    /// Kind.
    pub kind: Kind,
    /// What it takes.
    pub supply: Supply,
    /// Lines of the motor.
    pub motor: Feed,
    /// Change of class.
    pub change: Change,
    /// What it draws.
    pub input: Input,
    /// Frames, by rising size.
    pub steps: Vec<Step>,
    /// Share of a frame's amperes and horsepower that may be used on this supply.
    pub capacity: f64,
    /// What stands between output and lead.
    pub filter: Filter,
    /// Bus.
    pub bus: Bus,
    /// Output volts.
    pub output: OutputRule,
    /// Start.
    pub start: Start,
    /// Surroundings.
    pub rating: Rating,
    /// What it costs, filter and transformer that belong to it included; nothing where a price book has to tell it.
    pub price: Option<PieceAndSize>,
    /// Markings.
    pub marking: Marking,
}

impl Family {
    /// Class of the motor on a supply of a class; `None` where the family does not take that supply.
    ///
    /// # Units
    /// Classes.
    /// # Range
    /// Any.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn motor_class(&self, supply: Class) -> Option<Class> {
        let taken = match supply {
            Class::Low => self.supply.low,
            Class::High => self.supply.high,
        };
        match (taken, self.change, supply) {
            (false, ..) => None,
            (true, Change::None, class) => Some(class),
            (true, _, Class::Low) => Some(Class::High),
            (true, _, Class::High) => None,
        }
    }

    /// Whether pulses of the bus reach the lead and the motor.
    ///
    /// # Units
    /// None.
    /// # Range
    /// Any.
    /// # Source
    /// A sine filter or a transformer behind one passes the fundamental only; common practice.
    #[must_use]
    pub fn pulses_reach_the_motor(&self) -> bool {
        self.filter == Filter::None && self.change_keeps_pulses() && self.bus != Bus::None
    }

    /// Whether it makes pulses of its output's height, which a filter of its own may keep from the lead.
    ///
    /// # Units
    /// A truth.
    /// # Range
    /// Every family.
    /// # Source
    /// As [`Self::pulses_reach_the_motor`].
    #[must_use]
    pub fn makes_pulses(&self) -> bool {
        self.filter != Filter::MadeLine && self.change_keeps_pulses() && self.bus != Bus::None
    }

    fn change_keeps_pulses(&self) -> bool {
        !matches!(self.change, Change::SteppedUp { .. })
    }

    /// Voltage of the drive's bus; `None` where the family has none or does not take the supply.
    ///
    /// Held: by the class of the drive's own output. Peak: √2 V_in · rise. Mean: (3√2/π) V_in · rise.
    ///
    /// # Units
    /// `at_drive` line voltage at the drive; the result a direct voltage.
    /// # Range
    /// 50 to 1,000 V.
    /// # Errors
    /// [`OutsideRange`] names `at_drive` (V).
    /// # Source
    /// Ideal rectifiers, [mohan-2003]; the held volts and the rise for high line are common practice.
    pub fn bus_volts(
        &self,
        supply: Class,
        at_drive: ElectricPotential,
    ) -> Result<Option<ElectricPotential>, OutsideRange> {
        let v = OutsideRange::check("at_drive", at_drive.value, 50.0, 1000.0)?;
        let Some(motor) = self.motor_class(supply) else { return Ok(None) };
        let drive = if self.change_keeps_pulses() { motor } else { supply };
        Ok(match (self.bus, drive) {
            (Bus::Held { low, .. }, Class::Low) => Some(volts(low)),
            (Bus::Held { high, .. }, Class::High) => Some(volts(high)),
            (Bus::Peak { rise }, _) => Some(volts(2f64.sqrt() * v * rise)),
            (Bus::Mean { rise }, _) => Some(volts(3.0 * 2f64.sqrt() / core::f64::consts::PI * v * rise)),
            (Bus::None, _) => None,
        })
    }

    /// The family, where every figure of it is one that the sums hold for.
    ///
    /// # Units
    /// As the fields.
    /// # Range
    /// Displacement 0.1 to 1; distortion 0 to 3; efficiency 0.5 to 1; capacity 0.1 to 1; 1 to 100 frames of 0.25 to 250
    /// hp, rising, with 0.1 to 2,000 A; volts of filter and transformer to 0.2; bus 100 to 2,000 V, rise 1 to 1.3; output
    /// share and floor 0.5 to 1.1; locked rotor 1 to 12; ambient 20 to 60 °C, 0 to 0.1 for each of 0 to 25 degrees;
    /// altitude 0 to 5,000 m, 0 to 0.05 for 100 m; prices 0 to 10⁷, 0 to 10⁶ for a horsepower; short-circuit rating 1 to
    /// 200 kA.
    /// # Errors
    /// [`OutsideRange`] names the first field outside.
    /// # Source
    /// Limits of common practice, no single source.
    pub fn checked(self) -> Result<Self, OutsideRange> {
        let check = OutsideRange::check;
        check("displacement", self.input.displacement, 0.1, 1.0)?;
        check("distortion", self.input.distortion, 0.0, 3.0)?;
        check("efficiency", self.input.efficiency, 0.5, 1.0)?;
        check("capacity", self.capacity, 0.1, 1.0)?;
        check_steps(&self.steps)?;
        if let Filter::Sine { share, .. } = self.filter {
            check("filter_share", share, 0.0, 0.2)?;
        }
        if let Change::SteppedUp { drop } = self.change {
            check("transformer_drop", drop, 0.0, 0.2)?;
        }
        match self.bus {
            Bus::Held { low, high } => {
                check("bus_low", low, 100.0, 2000.0)?;
                check("bus_high", high, 100.0, 2000.0)?;
            }
            Bus::Peak { rise } | Bus::Mean { rise } => {
                check("bus_rise", rise, 1.0, 1.3)?;
            }
            Bus::None => {}
        }
        match self.output {
            OutputRule::Held { floor } => check("output_floor", floor, 0.5, 1.1)?,
            OutputRule::Follows { share } => check("output_share", share, 0.5, 1.1)?,
        };
        if let Start::AcrossTheLine { multiple } = self.start {
            check("locked_rotor", multiple, 1.0, 12.0)?;
        }
        check_rating(self.rating)?;
        if let Some(price) = self.price {
            check("price", price.fixed.0, 0.0, 1e7)?;
            check("price_per_hp", price.per_hp.0, 0.0, 1e6)?;
        }
        if let Some(marked) = self.marking.short_circuit {
            check("short_circuit", in_amperes(marked), 1000.0, 200_000.0)?;
        }
        Ok(self)
    }
}

fn check_steps(steps: &[Step]) -> Result<(), OutsideRange> {
    OutsideRange::check("step_count", steps.len() as f64, 1.0, 100.0)?;
    let mut last = Step::sized(0.25);
    for (place, step) in steps.iter().enumerate() {
        // A frame is larger than the one before it.
        let least = if place == 0 { last.hp } else { last.hp * (1.0 + 1e-9) };
        OutsideRange::check("step_hp", step.hp, least, 250.0)?;
        for amps in [step.low, step.high, step.input, step.device].into_iter().flatten() {
            OutsideRange::check("step_amperes", amps, 0.1, 2000.0)?;
        }
        last = *step;
    }
    Ok(())
}

fn check_rating(rating: Rating) -> Result<(), OutsideRange> {
    OutsideRange::check("rated_ambient", rating.ambient.0, 20.0, 60.0)?;
    OutsideRange::check("per_degree", rating.per_degree, 0.0, 0.1)?;
    // Nothing may be left below zero at the end of the range.
    let degrees = if rating.per_degree > 0.04 { 1.0 / rating.per_degree } else { 25.0 };
    OutsideRange::check("degrees", rating.degrees, 0.0, degrees)?;
    let from = OutsideRange::check("rated_altitude", in_meters(rating.altitude), 0.0, 5000.0)?;
    OutsideRange::check("per_100_m", rating.per_100_m, 0.0, 0.05)?;
    let highest = if rating.per_100_m > 0.02 { from + 100.0 / rating.per_100_m } else { 5000.0 };
    OutsideRange::check("highest", in_meters(rating.highest), from, highest.min(5000.0))?;
    Ok(())
}
