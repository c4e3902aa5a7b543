//! What a value is.

use super::conversion::Conversion;
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
    /// How many of one unit make another, in a system of units.
    Conversion(Conversion, UnitSystem),
}
