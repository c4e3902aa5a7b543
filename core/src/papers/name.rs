//! What a value is.

use super::conversion::Conversion;
use crate::evaluate::range::Uncertain;
use crate::job::{Part, Way};
use crate::quantity::UnitSystem;
use crate::standards::water_use::User;

/// What a value is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Name {
    /// Rated power of the motor.
    MotorPower,
    /// Rated power of a row of the motor table: the one below, then the one above.
    TablePower,
    /// Current of a row of the motor table.
    TableCurrent,
    /// Nameplate current at the voltage of the way.
    NameplateCurrent,
    /// Nameplate current at the voltage of the other way.
    OtherNameplateCurrent,
    /// Rated voltage of the motor on the way.
    RatedVoltage,
    /// Rated voltage of the motor on the other way.
    OtherRatedVoltage,
    /// Current that sizes the lead.
    MotorCurrent,
    /// Ampacity of the size by its insulation.
    InsulationAmpacity,
    /// Ampacity of the size by the terminals.
    TerminalAmpacity,
    /// Correction for the surroundings.
    AmbientFactor,
    /// Adjustment for conductors that lie together.
    BundleFactor,
    /// Warmest surroundings along the lead.
    Ambient,
    /// Sets in parallel.
    ParallelSets,
    /// Size of the phase conductors.
    ConductorSize,
    /// Size of the equipment ground.
    GroundSize,
    /// Metal of the conductors.
    ConductorMetal,
    /// Temperature rating of the insulation.
    InsulationRating,
    /// Temperature rating of the terminals.
    TerminalRating,
    /// Temperature of the conductor that its resistance holds for.
    ConductorTemperature,
    /// How the lead is built.
    LeadBuild,
    /// Line-to-line drop per conductor drop.
    PhaseFactor,
    /// Resistance of a conductor.
    Resistance,
    /// Reactance of a conductor.
    Reactance,
    /// Depth of the pump.
    PumpSetting,
    /// Lead on the surface.
    SurfaceRun,
    /// Voltage at the sending end.
    SendingVoltage,
    /// Power factor of the motor.
    PowerFactor,
    /// Largest drop, as a share.
    AllowedDrop,
    /// Part of the cable's price that does not depend on metal.
    CableFixed,
    /// Price of the metal as cable.
    MetalPrice,
    /// Cross-section of a phase conductor.
    PhaseArea,
    /// Cross-section of the equipment ground.
    GroundArea,
    /// Density of the metal.
    MetalDensity,
    /// Price of the cable of a way per length, above a step where there is one.
    CablePrice(Way),
    /// Price of the cable of a way per length, below a step.
    NextCablePrice(Way),
    /// Price of the cable of a way.
    CableCost(Way),
    /// What the 480 V way needs beyond the 240 V way.
    ExtraEquipment,
    /// What a way needs beyond its lead.
    BeyondLead(Way),
    /// That nothing is known that a way needs beyond its lead.
    NothingBeyond,
    /// Price of the equipment.
    EquipmentCost,
    /// Price of what stands between equipment and lead.
    RemedyCost,
    /// Price of the supply conductors.
    SupplyCost,
    /// Price of the extension of a line.
    LineCost,
    /// Energy of a year, row by row of its duty.
    YearlyEnergy,
    /// Price of energy, mean over the seasons.
    MeanEnergyPrice,
    /// The largest power of a year, kilowatts.
    LargestPower,
    /// Price of a kilowatt of the months' largest power, over a year.
    DemandPrice,
    /// What the utility bills in a year whatever is used.
    StandingCharge,
    /// Price of the transformer behind a drive.
    TransformerCost,
    /// Labor, whatever the length of the lead.
    LaborFixed,
    /// Labor for each length of the lead.
    LaborPerLength,
    /// What a metal's price is multiplied by in a cable.
    CableFactor,
    /// Price of a cable that was quoted.
    CableQuote,
    /// Price of the metal that the quote was made at.
    BookMetalPrice,
    /// Price of the frame of just this size.
    PieceQuote,
    /// What the energy of a way costs in a year.
    YearlyCost(Way),
    /// Cost of a way with the energy of the years.
    LifetimeCost(Way),
    /// Depth where the cheaper way changes.
    BreakEvenDepth,
    /// Water with the pump at rest.
    StaticLevel,
    /// How far it falls while the pump runs.
    Drawdown,
    /// Least depth of water above the pump.
    MinimumSubmergence,
    /// Flow that is asked for.
    Flow,
    /// Drawdown that was measured.
    MeasuredDrawdown,
    /// Flow that it was measured at: the one that is asked for.
    MeasuredAt,
    /// Flow of the well per length of drawdown.
    SpecificCapacity,
    /// Transmissivity of the aquifer.
    Transmissivity,
    /// Storage coefficient of the aquifer.
    Storage,
    /// Diameter of the hole.
    BoreDiameter,
    /// Time of pumping that the drawdown is told for.
    PumpingTime,
    /// The well function at its argument, from its table.
    WellFunction,
    /// Euler's constant.
    EulerGamma,
    /// Circumference of a circle over its diameter.
    Pi,
    /// Loss of the well itself for the square of the flow.
    WellLoss,
    /// Land that is irrigated.
    IrrigatedArea,
    /// Depth of water as pumped in a day.
    GrossDepth,
    /// Depth of water that the crop needs in a day.
    NetDepth,
    /// Share of the pumped water that reaches the roots.
    ApplicationEfficiency,
    /// Hours in a day that are pumped.
    PumpingHours,
    /// How many there are.
    Users(User),
    /// What one uses in a day.
    DailyUse(User),
    /// Length of a part of the line.
    PipeLength(Part),
    /// True inside diameter of a part of the line.
    InsideDiameter(Part),
    /// Nominal size of a pipe.
    NominalSize,
    /// Roughness of its wall.
    Roughness,
    /// Its coefficient of Hazen and Williams.
    HazenWilliams,
    /// Sum of the loss coefficients of its fittings.
    FittingSum,
    /// Darcy's friction factor that satisfies its equation.
    FrictionFactor,
    /// Temperature of the water.
    WaterTemperature,
    /// Density of the water.
    WaterDensity,
    /// Viscosity of the water over its density.
    Viscosity,
    /// Pressure at which the water boils.
    VaporPressure,
    /// Water while the pump runs.
    PumpingLevel,
    /// From the ground up to the gauge or outlet.
    Rise,
    /// From open water up to the pump.
    SuctionLift,
    /// Head lost in the straight pipe of a part of the line.
    PipeLoss(Part),
    /// Head lost in its fittings.
    FittingLoss(Part),
    /// Pressure at the gauge, as head.
    PressureHead,
    /// Head that the water carries past the gauge.
    VelocityHead,
    /// Pressure at the gauge.
    GaugePressure,
    /// Height of the site above sea level.
    Altitude,
    /// Radius of the earth, of the standard atmosphere.
    EarthRadius,
    /// Pressure at sea level, of the standard atmosphere.
    SeaLevelPressure,
    /// Temperature at sea level over its fall with height, of the standard atmosphere.
    LapseHeight,
    /// Net positive suction head that the pump requires.
    NpshRequired,
    /// Margin above it.
    NpshMargin,
    /// Head against a shut valve at the highest frequency.
    ShutOffHead,
    /// The same at the frequency of the curve.
    RatedShutOffHead,
    /// Frequency of the curve.
    CurveFrequency,
    /// Highest frequency that the motor may run at.
    MostFrequency,
    /// Lowest.
    LeastFrequency,
    /// Least pressure rating at the gauge.
    PressureRating,
    /// Inside diameter of the casing, or of the sleeve where there is one.
    AroundMotor,
    /// Outside diameter of the motor.
    MotorDiameter,
    /// Flow past the motor that is judged.
    FlowPastMotor,
    /// Speed past the motor that is advised.
    AdvisedSpeed,
    /// Volume of the tank.
    TankVolume,
    /// Pressure of the air in the drained tank.
    Precharge,
    /// Pressure at which the pump starts.
    CutIn,
    /// Pressure at which it stops.
    CutOut,
    /// Bulk modulus of water.
    BulkModulus,
    /// Modulus of elasticity of a pipe's wall.
    PipeModulus,
    /// Wall of a pipe.
    PipeWall,
    /// How a pipe is held: 1 with expansion joints throughout.
    PipeRestraint,
    /// Mass of a pipe per length.
    PipeMass,
    /// Mass of pump and motor.
    PumpMass,
    /// Flow that the pump gives.
    PumpFlow,
    /// Head that it works against.
    PumpHead,
    /// Efficiency of the pump.
    PumpEfficiency,
    /// Flow of best efficiency on the pump's curve.
    BestFlow,
    /// Head that the line takes at the flow that was found.
    LineHead,
    /// Flow on the pump's curve at its own frequency.
    CurveFlow,
    /// Head of the curve there.
    CurveHead,
    /// Power of the curve there.
    CurvePower,
    /// Speed over that of the curve.
    SpeedRatio,
    /// Power at the pump's shaft.
    ShaftPower,
    /// The largest anywhere on the curve at the highest frequency.
    LargestShaftPower,
    /// Service factor of the motor.
    ServiceFactor,
    /// Efficiency of the motor.
    MotorEfficiency,
    /// Nameplate service-factor current at the voltage of the way.
    ServiceCurrent,
    /// Volts of the supply.
    SupplyVolts,
    /// Power factor of the fundamental of an input.
    Displacement,
    /// Total harmonic distortion of an input current.
    Distortion,
    /// True power factor of an input.
    TrueFactor,
    /// Power out of equipment over power in.
    EquipmentEfficiency,
    /// Current that a way draws.
    InputCurrent,
    /// Size of the frame.
    FrameSize,
    /// Size of the largest frame that there is.
    LargestFrame,
    /// Continuous output current of the frame.
    FrameCurrent,
    /// Share of a frame that may be used on the supply.
    Capacity,
    /// Air around the equipment.
    EquipmentAir,
    /// The same in the shade.
    EquipmentAmbient,
    /// What the sun adds to it.
    SunRise,
    /// Warmest air that the frame's current holds for.
    RatedAir,
    /// Share taken off for a kelvin above.
    LossPerDegree,
    /// Highest altitude that the frame's current holds for.
    RatedAltitude,
    /// Share taken off for a hundred meters above.
    LossPerHundred,
    /// Nameplate service-factor current at the voltage of the other way.
    OtherServiceCurrent,
    /// Length of the lead.
    LeadLength,
    /// Length of the supply conductors.
    SupplyLength,
    /// Warmest surroundings along the supply conductors.
    FeederAmbient,
    /// Rated input current of the equipment.
    RatedInput,
    /// Overcurrent device that was entered.
    DeviceEntered,
    /// The largest that is marked on the equipment.
    DeviceMarked,
    /// Next standard rating of a device.
    NextRating,
    /// Volts that the supply leaves at the equipment.
    VoltsAtEquipment,
    /// Nominal volts of the supply's class.
    NominalSupply,
    /// Nominal volts of the motor's class.
    NominalOutput,
    /// Least share of its nominal input at which equipment gives its nominal output.
    OutputFloor,
    /// Output over input.
    OutputShare,
    /// Share of the volts that a filter takes.
    FilterShare,
    /// Share of the volts that a transformer behind the drive takes.
    TransformerShare,
    /// Drop along the lead.
    LeadDrop,
    /// Temperature of conductors before a fault.
    ColdTemperature,
    /// Frequency at which the pump does what is asked.
    DutyFrequency,
    /// Frequency that the motor is rated at.
    RatedFrequency,
    /// Volts of a drive's bus.
    BusVolts,
    /// Rise of the bus at high line.
    BusRise,
    /// Speed of a pulse along the lead.
    PulseSpeed,
    /// Time in which a pulse rises.
    RiseTime,
    /// Surge impedance of the lead.
    CableImpedance,
    /// Surge impedance of the motor.
    MotorImpedance,
    /// Peak that the motor stands.
    MotorStands,
    /// Rating of the transformer.
    TransformerRating,
    /// Its impedance.
    TransformerImpedance,
    /// What else it feeds.
    OtherLoad,
    /// Short-circuit rating of the equipment.
    MarkedShortCircuit,
    /// Current of the standing motor over that of the nameplate.
    LockedRotor,
    /// Room that a distorted current asks of a set.
    DistortionRoom,
    /// Share of a set's rating that its hookup leaves.
    HookupShare,
    /// Rating of the generator set.
    SetRating,
    /// Share of it that the site leaves.
    SetShare,
    /// Metal of the lead per length.
    LeadMetal,
    /// Metal of the supply conductors per length.
    SupplyMetal,
    /// Price of the equipment, for the piece.
    EquipmentFixed,
    /// The same for each horsepower.
    EquipmentPerHorsepower,
    /// Price of what stands between equipment and lead, for the piece.
    RemedyFixed,
    /// The same for each horsepower.
    RemedyPerHorsepower,
    /// Charge for a line extension that does not depend on its length.
    LineFixed,
    /// Charge for its length.
    LinePrice,
    /// Distance of the line.
    LineLength,
    /// Length that is brought free of charge.
    LineFree,
    /// Power that a way draws.
    InputPower,
    /// Hours of pumping in a year.
    YearlyHours,
    /// Price of energy.
    EnergyPrice,
    /// Discount rate.
    Discount,
    /// Life in years.
    Years,
    /// Current that the lead carries in service.
    ServiceLoad,
    /// Temperature of the ampacity table's surroundings.
    TableAmbient,
    /// Temperature rating of the insulation.
    RatedTemperature,
    /// Temperature coefficient of resistance at 75 °C.
    TemperatureCoefficient,
    /// Temperature that a table's resistance holds for.
    TableTemperature,
    /// Resistance of a conductor in service.
    ServiceResistance,
    /// Frequency of the lead's current.
    LeadFrequency,
    /// Diameter of a conductor.
    ConductorDiameter,
    /// Distance between the axes of two conductors.
    AxisDistance,
    /// Size of the smallest conductor that may be laid.
    SmallestSize,
    /// Price of its cable.
    SmallestPrice,
    /// Its resistance in service, all sets together.
    SmallestResistance,
    /// Price of the cable that pays.
    EconomicPrice,
    /// Its resistance in service, all sets together.
    EconomicResistance,
    /// What a way costs more than the other at first.
    MoreAtFirst(Way),
    /// Heat of a way's lead at the current that sizes it.
    FullLoadHeat(Way),
    /// The saving with everything as it is counted.
    SavingCounted,
    /// The saving that a tenth of the points stay below.
    SavingLow,
    /// That half of them stay below.
    SavingMedian,
    /// That nine tenths stay below.
    SavingHigh,
    /// The saving for one more of what may turn out otherwise.
    Slope(Uncertain),
    /// Its figure that is counted.
    Expected(Uncertain),
    /// Its lowest figure.
    Lowest(Uncertain),
    /// Its highest figure.
    Highest(Uncertain),
    /// Depth where a piece of the curve begins.
    PieceFrom,
    /// Depth where it ends because something else changes there.
    PieceTo,
    /// The deepest setting that is worked out.
    DeepestSwept,
    /// What a year's energy of a way costs with the lead to an end of the piece.
    YearlyCostAt(Way),
    /// Power at the transformer in a row of the year.
    MeteredPower,
    /// Hours of the row.
    RowHours,
    /// Hours that the pump runs for it.
    RunHours,
    /// Steady current that heats a lead as much as the loads of a year do in the same hours.
    HeatingCurrent,
    /// Flow that is drawn in it.
    DrawnFlow,
    /// Power that the water takes up in it.
    WaterPower,
    /// Work on the water that the criterion asks for each kilowatt-hour.
    Criterion,
    /// Carbon dioxide of a kilowatt-hour.
    CarbonOfEnergy,
    /// What a motor may take for good.
    OutputCurrent,
    /// Metal of the whole lead.
    LeadMetalAll,
    /// Metal of all supply conductors.
    SupplyMetalAll,
    /// Volts at standstill over rated volts that a drive adds.
    Boost,
    /// Most flux in a core over its rated flux.
    MostFlux,
    /// Power of an idler over that of the motor.
    IdlerRatio,
    /// Share of its power that an idler takes while nothing runs.
    IdleShare,
    /// What an overload device may be set to, over the nameplate's current.
    OverloadShare,
    /// Pressure at which the transducer gives 20 mA.
    TransducerSpan,
    /// What the motor draws at its load.
    RunningCurrent,
    /// Share of it below which the pump is taken for dry.
    DryShare,
    /// Share of the way from the setpoint to the rating at which high pressure stops the pump.
    TripShare,
    /// Drop as a share of what is sent.
    DropShare,
    /// Area of metal that the drop asks for.
    NeededArea,
    /// Area of the wire that others are compared with.
    ComparedArea,
    /// Its resistance at 75 °C.
    ComparedResistance,
    /// How many of one unit make another, in a system of units.
    Conversion(Conversion, UnitSystem),
}
