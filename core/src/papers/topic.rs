//! The answers that can be opened.

use super::lesson::LessonSum;
use crate::cost::duty::MOST_ROWS;
use crate::evaluate::Basis;
use crate::job::{Part, Way};
use crate::startup::SettingCode;

/// An answer that can be opened.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Topic {
    /// The current that sizes the lead of a way.
    MotorCurrent(Way),
    /// The ampacity of the lead at the job's depth.
    Ampacity(Way),
    /// The voltage drop along it.
    Drop(Way),
    /// What it costs: the cable alone, or with the equipment that its way needs beyond the other.
    CableCost(Way, Basis),
    /// What 480 V saves.
    Saving(Basis),
    /// The depth after which one way stays cheaper.
    BreakEven(Basis),
    /// Depth of the water while the pump runs.
    PumpingLevel,
    /// Depth of water above the pump while it runs.
    Submergence,
    /// The flow that is asked for, where it follows from land, people or stock.
    Demand,
    /// How far the water falls.
    Drawdown,
    /// The flow that draws the water down to the pump.
    WellGives,
    /// What the pump works against.
    TotalHead,
    /// Straight pipe of a part of the line.
    Friction(Part),
    /// Fittings of a part of the line.
    Fittings(Part),
    /// Pressure at the gauge, as head.
    PressureHead,
    /// What the water still carries past the gauge.
    VelocityHead,
    /// Net positive suction head available.
    SuctionHead,
    /// Pressure at the gauge against a shut valve.
    DeadHead,
    /// Speed of the water past the motor.
    Cooling,
    /// The flow that cools the motor.
    CoolingFlow,
    /// Water that the tank gives.
    Tank,
    /// Rise of the pressure when the flow stops at once.
    Surge,
    /// What hangs in the well.
    Hanging,
    /// Power at the pump's shaft.
    ShaftPower,
    /// Frequency at which the pump gives what is asked for.
    PumpSpeed,
    /// Frequency at which it just holds the pressure.
    LowestSpeed,
    /// Flow where pump and line meet at the highest frequency.
    FullSpeed,
    /// Flow as a share of the flow of best efficiency.
    ShareOfBest,
    /// Flow that a relief valve passes.
    Relief,
    /// What the drop pipe holds back against a shut valve.
    OnPipe,
    /// The widest sleeve that keeps the water past the motor fast enough.
    WidestSleeve,
    /// Most water of a week.
    Weekly,
    /// The motor's load as a share of its rating.
    MotorLoad,
    /// What the motor draws at that load.
    RunningCurrent(Way),
    /// What the frame of a way gives where it stands; the ways by their place among all.
    WayFrame(usize),
    /// What a way draws.
    WayInput(usize),
    /// Ampacity of its supply conductors.
    WaySupply(usize),
    /// Drop along them.
    WaySupplyDrop(usize),
    /// Overcurrent device ahead of it.
    WayDevice(usize),
    /// Volts at the motor, and the frequency that they last to.
    WayVolts(usize),
    /// Peak of the pulses at the motor.
    WayPeak(usize),
    /// Sag of the supply while it runs.
    WaySag(usize),
    /// Load of its transformer.
    WayLoading(usize),
    /// Harmonic current at the transformer.
    WayHarmonics(usize),
    /// Fault current at its equipment.
    WayFault(usize),
    /// Dips while the motor starts at once.
    WayStart(usize),
    /// Rating of the generator set that it takes.
    WayGenerator(usize),
    /// What it costs at first and over the years.
    WayCost(usize),
    /// What it must give its motor for good.
    WayRequired(usize),
    /// Drop along its lead.
    WayLead(usize),
    /// Metal in its lead and its supply conductors.
    WayMetal(usize),
    /// The transformer behind its drive.
    WayStepUp(usize),
    /// The idler of its converter.
    WayIdler(usize),
    /// Temperature of the lead in service.
    LeadTemperature(Way),
    /// Heat that it gives off in service.
    LeadLoss(Way),
    /// Heat that it gives off at the current that sizes it.
    FullLoadHeat(Way),
    /// What alternating current adds to its resistance.
    Alternating(Way),
    /// Unbalance of the volts behind a flat cable.
    FlatUnbalance(Way),
    /// Cost of the conductor that pays over the years.
    EconomicSize(Way),
    /// A point of the pump's curve, by its place in the table.
    CurvePoint(usize),
    /// How deep a piece of a way's curve reaches, by its place, and what it costs at both ends.
    Piece(Way, usize, Basis),
    /// How far the saving may be off.
    SavingRange(Basis),
    /// When the dearer voltage has paid for itself.
    PaysBack,
    /// How much more heat the lead of 480 V gives off.
    MoreHeat,
    /// What a year of the way that the job goes by comes to.
    Year(OfYear),
    /// A figure that is entered at the drive.
    Setting(SettingCode),
    /// A sum of the lesson, which shows it itself: no answer of a page.
    Lesson(LessonSum),
}

/// An answer of the year.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum OfYear {
    /// Where the power of a row goes, by its place.
    Row(usize),
    /// Energy.
    Energy,
    /// What the utility bills.
    Bill,
    /// Water pumped.
    Water,
    /// Work on the water for a kilowatt-hour.
    Performance,
    /// Energy at the speed that the water asks for.
    BySpeed,
    /// Energy at full speed.
    OnOff,
    /// Carbon dioxide.
    Carbon,
}

impl OfYear {
    /// Those that are sums over the rows.
    const SUMS: [Self; 7] =
        [Self::Energy, Self::Bill, Self::Water, Self::Performance, Self::BySpeed, Self::OnOff, Self::Carbon];
}

impl Topic {
    /// Every answer, in the order of the pages: of the ways to run the motor those of the one at this place.
    #[must_use]
    pub fn all(way: Option<usize>) -> Vec<Self> {
        let of_pipes = Part::ALL.into_iter().flat_map(|part| [Self::Friction(part), Self::Fittings(part)]);
        let of_way = way.into_iter().flat_map(Self::of_way);
        let of_lead = Way::ALL.into_iter().flat_map(Self::of_lead);
        let of_cost = Basis::ALL.into_iter().flat_map(|basis| {
            let costs = Way::ALL.map(|way| Self::CableCost(way, basis));
            costs.into_iter().chain([Self::Saving(basis), Self::BreakEven(basis)])
        });
        let mut all: Vec<Self> = Self::OF_WATER.into_iter().chain(of_pipes).chain(Self::OF_PUMP).collect();
        all.extend(of_way.chain(of_lead).chain(of_cost));
        all.extend(Self::of_years());
        all.extend(Self::OF_SETTINGS.map(Self::Setting));
        all
    }

    /// How sure the saving is, and what a year comes to.
    fn of_years() -> Vec<Self> {
        let ranges = Basis::ALL.map(Self::SavingRange);
        let rows = (0..MOST_ROWS).map(OfYear::Row);
        let of_year = rows.chain(OfYear::SUMS).map(Self::Year);
        ranges.into_iter().chain([Self::PaysBack, Self::MoreHeat]).chain(of_year).collect()
    }

    const OF_SETTINGS: [SettingCode; 5] = [
        SettingCode::CurrentLimit,
        SettingCode::Overload,
        SettingCode::SensorSignal,
        SettingCode::DryRun,
        SettingCode::HighPressure,
    ];

    const OF_WATER: [Self; 10] = [
        Self::Demand,
        Self::Weekly,
        Self::Drawdown,
        Self::PumpingLevel,
        Self::Submergence,
        Self::WellGives,
        Self::TotalHead,
        Self::PressureHead,
        Self::VelocityHead,
        Self::SuctionHead,
    ];

    const OF_PUMP: [Self; 15] = [
        Self::PumpSpeed,
        Self::LowestSpeed,
        Self::FullSpeed,
        Self::ShareOfBest,
        Self::ShaftPower,
        Self::MotorLoad,
        Self::DeadHead,
        Self::OnPipe,
        Self::Relief,
        Self::Tank,
        Self::Surge,
        Self::Cooling,
        Self::CoolingFlow,
        Self::WidestSleeve,
        Self::Hanging,
    ];

    fn of_way(way: usize) -> [Self; 19] {
        [
            Self::WayRequired(way),
            Self::WayFrame(way),
            Self::WayInput(way),
            Self::WaySupply(way),
            Self::WaySupplyDrop(way),
            Self::WayDevice(way),
            Self::WayLead(way),
            Self::WayStepUp(way),
            Self::WayIdler(way),
            Self::WayVolts(way),
            Self::WayPeak(way),
            Self::WaySag(way),
            Self::WayLoading(way),
            Self::WayHarmonics(way),
            Self::WayFault(way),
            Self::WayStart(way),
            Self::WayGenerator(way),
            Self::WayMetal(way),
            Self::WayCost(way),
        ]
    }

    fn of_lead(way: Way) -> [Self; 10] {
        [
            Self::MotorCurrent(way),
            Self::RunningCurrent(way),
            Self::Ampacity(way),
            Self::Drop(way),
            Self::FullLoadHeat(way),
            Self::LeadTemperature(way),
            Self::LeadLoss(way),
            Self::Alternating(way),
            Self::FlatUnbalance(way),
            Self::EconomicSize(way),
        ]
    }
}
