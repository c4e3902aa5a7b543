//! What is chosen rather than measured.

use crate::cable::filter::Remedy;
use crate::cable::reactance::Build;
use crate::power::family::Class;
use crate::power::generator::Hookup;
use crate::pump::motor::MotorKind;
use crate::standards::ampacity::Rating;
use crate::standards::conductor::Metal;
use crate::standards::enclosure::EnclosureType;
use crate::standards::pipe::{Nominal, Series};
use crate::water::line::FrictionMethod;
use serde::{Deserialize, Serialize};

use super::{Field, Grounding, Place};

/// How the demand is told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DemandBy {
    /// As a flow.
    #[default]
    Flow,
    /// As land that is irrigated.
    Land,
    /// As people and stock.
    PeopleAndStock,
}

/// What the depth of irrigation counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DepthOf {
    /// Water as pumped.
    #[default]
    Gross,
    /// Water that reaches the roots.
    Net,
}

/// How the drawdown is told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DrawdownBy {
    /// As measured at the flow asked for.
    #[default]
    Measured,
    /// By the specific capacity of a test.
    SpecificCapacity,
    /// By the aquifer.
    Aquifer,
}

/// How the pump is run.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Control {
    /// The drive holds the pressure.
    #[default]
    ConstantPressure,
    /// At full speed between cut-in and cut-out.
    OnOff,
}

/// A part of the line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Part {
    /// Down the well.
    Drop,
    /// From open water to a surface pump.
    Suction,
    /// On the surface.
    Surface,
}

impl Part {
    /// Every part.
    pub const ALL: [Self; 3] = [Self::Drop, Self::Suction, Self::Surface];

    /// Its fields: inside diameter, roughness, coefficient of Hazen and Williams, loss coefficients of the fittings.
    #[must_use]
    pub fn fields(self) -> [Field; 4] {
        match self {
            Self::Drop => [Field::DropInside, Field::DropRoughness, Field::DropHazenWilliams, Field::DropFittings],
            Self::Suction => {
                [Field::SuctionInside, Field::SuctionRoughness, Field::SuctionHazenWilliams, Field::SuctionFittings]
            }
            Self::Surface => {
                [Field::SurfaceInside, Field::SurfaceRoughness, Field::SurfaceHazenWilliams, Field::SurfaceFittings]
            }
        }
    }

    /// The field of its length; the drop pipe is as long as the pump is deep.
    #[must_use]
    pub fn length(self) -> Option<Field> {
        match self {
            Self::Drop => None,
            Self::Suction => Some(Field::SuctionLength),
            Self::Surface => Some(Field::SurfaceLength),
        }
    }

    /// The series that is assumed.
    #[must_use]
    pub fn assumed(self) -> Series {
        match self {
            Self::Drop | Self::Suction => Series::SteelSchedule40,
            Self::Surface => Series::PvcSchedule40,
        }
    }
}

/// The pipe of a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct PipePick {
    /// Its series. Assumed: steel down the well and at the suction, PVC on the surface, schedule 40.
    pub series: Option<Series>,
    /// Its size. Assumed: the smallest in which the water stays slow.
    pub size: Option<Nominal>,
}

/// Parallel sets of conductors that may be asked for: 1 to [`Sets::LIMIT`], never anything else.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Sets(u8);

impl Sets {
    /// Most parallel sets that can be asked for.
    pub const LIMIT: u8 = 4;
    /// One set: an ordinary lead.
    pub const ONE: Self = Self(1);

    /// A number of sets, or `None` outside 1 to [`Self::LIMIT`].
    #[must_use]
    pub fn new(sets: u8) -> Option<Self> {
        (1..=Self::LIMIT).contains(&sets).then_some(Self(sets))
    }

    /// The number.
    #[must_use]
    pub fn get(self) -> u8 {
        self.0
    }
}

/// What is chosen rather than measured; `None` until the user chooses, and the assumed choice stands in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Choices {
    /// Where the motor works. Assumed: submersible.
    pub motor_kind: Option<MotorKind>,
    /// Metal of the lead. Assumed: copper.
    pub metal: Option<Metal>,
    /// Build of the lead. Assumed: plastic conduit, the safe side for reactance.
    pub build: Option<Build>,
    /// Insulation rating of the lead. Assumed: 75 °C.
    pub insulation: Option<Rating>,
    /// True where the terminals at both ends are marked 75 °C. Assumed: not marked.
    pub terminals_marked_75: Option<bool>,
    /// True where the part of the lead that hangs in the water counts with the water's temperature, as far as the code
    /// lets it. Assumed: it does not.
    pub cooler_water: Option<bool>,
    /// Whether the motor starts by itself after a power cut; assumed not.
    pub restart: Option<bool>,
    /// Whether the transducer and its line can freeze; assumed not.
    pub freezing: Option<bool>,
    /// Most parallel sets of conductors. Assumed: 1.
    pub most_sets: Option<Sets>,
    /// How the demand is told. Assumed: as a flow.
    pub demand: Option<DemandBy>,
    /// What the depth of irrigation counts. Assumed: water as pumped.
    pub depth_of: Option<DepthOf>,
    /// How the drawdown is told. Assumed: as measured.
    pub drawdown: Option<DrawdownBy>,
    /// How friction is worked out. Assumed: Darcy-Weisbach.
    pub friction: Option<FrictionMethod>,
    /// How the pump is run. Assumed: the drive holds the pressure.
    pub control: Option<Control>,
    /// The pipes, in the order of [`Part::ALL`].
    pub pipes: [PipePick; 3],
    /// Where the equipment stands. Assumed: outdoors.
    pub place: Option<Place>,
    /// True where it stands in the shade. Assumed: it does not.
    pub shaded: Option<bool>,
    /// Type of its enclosure. Assumed: 3R.
    pub enclosure: Option<EnclosureType>,
    /// How the supply is grounded. Nothing is assumed.
    pub grounding: Option<Grounding>,
    /// Metal of the supply conductors. Assumed: copper.
    pub feeder_metal: Option<Metal>,
    /// Build of the supply conductors. Assumed: plastic conduit.
    pub feeder_build: Option<Build>,
    /// Most parallel sets of supply conductors. Assumed: 1.
    pub feeder_sets: Option<Sets>,
    /// Class of a three-phase line or set that might be had. Assumed: 480 V.
    pub three_phase: Option<Class>,
    /// How a generator set feeds two lines. Assumed: as it was built, a single-phase set.
    pub hookup: Option<Hookup>,
    /// True where the motor's nameplate says inverter duty. Assumed: it does not.
    pub inverter_duty: Option<bool>,
    /// What stands between drive and lead. Assumed: the least that the motor needs.
    pub remedy: Option<Remedy>,
}

impl Choices {
    /// Most parallel sets that can be asked for.
    pub const SETS_LIMIT: u8 = Sets::LIMIT;

    /// Where the motor works.
    #[must_use]
    pub fn motor_kind(&self) -> MotorKind {
        self.motor_kind.unwrap_or(MotorKind::Submersible)
    }
    /// Metal of the lead.
    #[must_use]
    pub fn metal(&self) -> Metal {
        self.metal.unwrap_or(Metal::Copper)
    }
    /// Build of the lead.
    #[must_use]
    pub fn build(&self) -> Build {
        self.build.unwrap_or(Build::PlasticConduit)
    }
    /// Insulation rating of the lead.
    #[must_use]
    pub fn insulation(&self) -> Rating {
        self.insulation.unwrap_or(Rating::C75)
    }
    /// Whether the terminals are marked 75 °C.
    #[must_use]
    pub fn terminals_marked_75(&self) -> bool {
        self.terminals_marked_75.unwrap_or(false)
    }
    /// Whether the motor starts by itself after a power cut.
    #[must_use]
    pub fn restart(&self) -> bool {
        self.restart.unwrap_or(false)
    }

    /// Whether the transducer can freeze.
    #[must_use]
    pub fn freezing(&self) -> bool {
        self.freezing.unwrap_or(false)
    }

    /// Whether the cooler water counts.
    #[must_use]
    pub fn cooler_water(&self) -> bool {
        self.cooler_water.unwrap_or(false)
    }
    /// Most parallel sets, 1 to [`Self::SETS_LIMIT`].
    #[must_use]
    pub fn most_sets(&self) -> u8 {
        self.most_sets.unwrap_or(Sets::ONE).get()
    }

    /// How the demand is told.
    #[must_use]
    pub fn demand(&self) -> DemandBy {
        self.demand.unwrap_or_default()
    }
    /// What the depth of irrigation counts.
    #[must_use]
    pub fn depth_of(&self) -> DepthOf {
        self.depth_of.unwrap_or_default()
    }
    /// How the drawdown is told.
    #[must_use]
    pub fn drawdown(&self) -> DrawdownBy {
        self.drawdown.unwrap_or_default()
    }
    /// How friction is worked out.
    #[must_use]
    pub fn friction(&self) -> FrictionMethod {
        self.friction.unwrap_or_default()
    }
    /// How the pump is run.
    #[must_use]
    pub fn control(&self) -> Control {
        self.control.unwrap_or_default()
    }
    /// Where the equipment stands.
    #[must_use]
    pub fn place(&self) -> Place {
        self.place.unwrap_or_default()
    }
    /// Whether the sun is kept off the cabinet: by shade, or indoors.
    #[must_use]
    pub fn out_of_the_sun(&self) -> bool {
        !self.place().outdoors() || self.shaded.unwrap_or(false)
    }
    /// Type of the equipment's enclosure.
    #[must_use]
    pub fn enclosure(&self) -> EnclosureType {
        self.enclosure.unwrap_or(EnclosureType::T3R)
    }
    /// Metal of the supply conductors.
    #[must_use]
    pub fn feeder_metal(&self) -> Metal {
        self.feeder_metal.unwrap_or(Metal::Copper)
    }
    /// Build of the supply conductors.
    #[must_use]
    pub fn feeder_build(&self) -> Build {
        self.feeder_build.unwrap_or(Build::PlasticConduit)
    }
    /// Most parallel sets of supply conductors.
    #[must_use]
    pub fn feeder_sets(&self) -> u8 {
        self.feeder_sets.unwrap_or(Sets::ONE).get()
    }
    /// Class of a three-phase line or set.
    #[must_use]
    pub fn three_phase(&self) -> Class {
        self.three_phase.unwrap_or(Class::High)
    }
    /// How a generator set feeds two lines.
    #[must_use]
    pub fn hookup(&self) -> Hookup {
        self.hookup.unwrap_or(Hookup::AsBuilt)
    }
    /// Whether the motor is made for inverter duty.
    #[must_use]
    pub fn inverter_duty(&self) -> bool {
        self.inverter_duty.unwrap_or(false)
    }
    /// The pipe that was picked for a part.
    #[must_use]
    pub fn pipe(&self, part: Part) -> PipePick {
        self.pipes[part as usize]
    }
    /// The series of a part.
    #[must_use]
    pub fn series(&self, part: Part) -> Series {
        self.pipe(part).series.unwrap_or(part.assumed())
    }
}
