//! The answers that can be opened.

use crate::evaluate::Basis;
use crate::job::{Part, Way};

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
    /// Temperature of the lead in service.
    LeadTemperature(Way),
    /// Heat that it gives off in service.
    LeadLoss(Way),
    /// What alternating current adds to its resistance.
    Alternating(Way),
    /// Unbalance of the volts behind a flat cable.
    FlatUnbalance(Way),
    /// Cost of the conductor that pays over the years.
    EconomicSize(Way),
}
